lines-sure = Qué tan firme y qué la cambia
lines-for-professional = Números para el profesional
lines-for-line-owner = Para la gente del dueño
lines-do-then = Hacer, ese día
lines-check-too = Revise también
lines-only-then = Solo entonces hay un plan. No es la respuesta de este árbol.
lines-otherwise = Si no
lines-if = Si { $conditions }
lines-if-nothing = nada hay dentro de { $within }
lines-if-no-line = no hay línea dentro de { $within }
lines-if-under = mide menos de { $height } de alto
lines-if-clone = se puede anillar todo su clon
lines-if-no-wilt = no hay marchitez del roble ahí
lines-if-suits = un anillo le sirve a su especie

lines-best-spread = Lo mejor: { $days }, ± { $spread }.
lines-best = Lo mejor: { $days }.
lines-ring-days = Para un anillo: { $days }.
lines-next = Próximos días buenos: { $days }.
lines-sentence = { $clause }.
lines-days = { $days } días
lines-weeks = { $weeks } semanas

lines-keep = Gente a { $out } mientras trabaja; puede lanzar madera a { $zone }.
lines-throws = Puede lanzar madera a { $zone }.

lines-long = { $now }; unos { $whole } con { $visits ->
    [one] una visita
   *[other] { $visits } visitas
}.
lines-long-hours = { $now }; unas { $whole } horas con { $visits ->
    [one] una visita
   *[other] { $visits } visitas
}.
lines-work = Unos { $likely } minutos ({ $range }).
lines-ring-work = Sin medir. Para un anillo: { $now }.
lines-work-range = { $range } minutos.

lines-one-look = Una revisión, { $days }.
lines-looks = Primera { $days }; luego { $more ->
    [one] una visita
   *[other] { $more } visitas
} hasta { $year }.

lines-leaves-holes = Sirve para huecos. La mitad cae de { $low } a { $high } años después de morir.
lines-leaves-feeding = Madera para comer, sin huecos. La mitad cae de { $low } a { $high } años después.

lines-stem-ring = { $stem }: anillo de { $ring }
lines-stem-keep = { $stem }: déjelo vivo
lines-stem-other = { $stem }: { $method }
lines-stems-more = { $stems } …

lines-fit-none = Sirven { $fit } de { $all }.
lines-fit = Sirven { $fit } de { $all }: { $names }.
lines-fit-more = Sirven { $fit } de { $all }: { $names } y { $more } más.
lines-method =
    .bark-ring = anillo
    .saw-ring = anillo con serrucho
    .frill = cortes con herbicida (licencia)
    .basal-bark = corteza basal (licencia)
    .cut-stump = tocón tratado (licencia)
    .pull-or-dig = arrancar o cavar
    .fell = talar
    .repeat-cutting = cortar varias veces
    .leave-it = dejarlo

lines-name-open = No se sabe qué árbol es: que se lo nombren antes de matarlo.
lines-alike = { $count ->
    [one] Se parece uno.
   *[other] Se parecen { $count }.
}
lines-alike-native = { $count ->
    [one] Se parece uno, y es nativo: { $names }.
   *[other] Se parecen { $count }; nativos: { $names }.
}
lines-alike-count = { $count ->
    [one] Se parece uno, { $native } nativo.
   *[other] Se parecen { $count }, { $native } de ellos nativos.
}

lines-sure-measured = Altura: medida. { $change }
lines-sure-like-trees = Altura: de árboles parecidos. { $change }
lines-changes = { $count ->
    [one] Un cambio daría otra respuesta.
   *[other] { $count } cambios darían otra respuesta.
}
lines-no-change = Ningún cambio cercano da otra respuesta.

lines-working = { $steps ->
    [one] 1 paso
   *[other] { $steps } pasos
}, { $sources ->
    [one] 1 fuente
   *[other] { $sources } fuentes
}, { $assumed ->
    [one] 1 supuesto.
   *[other] { $assumed } supuestos.
}

lines-do-ring = Anillo de { $width }, de 0.9 a 1.4 m (3 a 4½ ft) de alto.
lines-professional = Alcance { $height } y { $zone }, tronco { $trunk }.
lines-cautions = { $count }: { $names }.
lines-cautions-more = { $count }: { $names } …
