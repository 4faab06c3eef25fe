### What Spain says in other words than content/words/es/lines.ftl, by the trade's terms; its numbers have a decimal comma.

lines-sure = Cómo de firme y qué la cambia
lines-method =
    .saw-ring = anillo con sierra de mano
lines-alike-native = { $count ->
    [one] Se parece uno, y es autóctono: { $names }.
   *[other] Se parecen { $count }; autóctonos: { $names }.
}
lines-alike-count = { $count ->
    [one] Se parece uno, { $native } autóctono.
   *[other] Se parecen { $count }, { $native } de ellos autóctonos.
}
lines-do-ring = Anillo de { $width }, de 0,9 a 1,4 m (3 a 4½ ft) de alto.
