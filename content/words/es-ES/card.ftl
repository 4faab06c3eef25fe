### What Spain says in other words than content/words/es/card.ftl, by the trade's terms; its numbers have a decimal comma.

card-ring-test = Aníllelo si el { $day } un trozo de prueba se pela.
card-act-saw = haga un anillo con sierra de mano
card-bark-tight = Hoy la corteza está agarrada
card-bark-mostly-tight = La corteza está casi toda agarrada
card-bark-bound = Hoy la corteza está agarrada
card-native = Autóctono de { $place }. ¿Es este árbol, y tiene que morir?
card-pieces = Anillado cae en trozos,
card-pieces-dead = Muerto, cae en trozos,
card-no-ring-now-why = La corteza agarrada se rasga, queda una tira y el árbol puede vivir.
card-test-first = Pruebe primero con un trozo.
card-n-patch = primero un trozo
card-n-tools =
    .saw-ring = con sierra de mano
    .cut-stump = tijeras o sierra de mano
    .repeat-cutting = tijeras o sierra de mano
