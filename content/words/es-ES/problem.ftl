### What Spain says in other words than content/words/es/problem.ftl, by the trade's terms; its numbers have a decimal comma.

problem-example =
    .bark = 0,4 o 1/2
problem-no-stem = Diámetro del tronco: dé un tronco al menos.
problem-height-below-diameter = { $field }: un árbol cuyo diámetro se toma a 4 ft 6 in (1,37 m) no puede ser más bajo que eso. Revise la altura o su unidad.
problem-native = { $name } es una especie autóctona de { $place } y no está en esta lista. Confirme qué es, y pregunte por qué tiene que irse. Si tiene que irse, elija «{ $choose }».
