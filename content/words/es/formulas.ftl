formulas-group-size = Árbol para un profesional, por la regla del propio grupo: más de{ " " }
formulas-sentence = { $clause }.
formulas-across = Diámetro = circunferencia ÷ 3.1416 = { $girth } ÷ 3.1416 ={ " " }
formulas-bark = Corteza = { $factor } × { $size } ={ " " }
formulas-bark-between = ; está entre { $low } y { $high }
formulas-inside = Bajo la corteza = diámetro − 2 × corteza ={ " " }
formulas-least = Anillo, por lo menos = { $any } para cualquier árbol, redondeado hacia arriba ={ " " }
formulas-least-species = Anillo, por lo menos = { $any } para cualquier árbol, { $species } para esta especie, redondeado hacia arriba ={ " " }
formulas-rule-least = el ancho menor
formulas-rule-callus = tan ancho que el callo no lo cierre, { $factor } × cierre por temporada × temporadas que puede vivir
formulas-rule-half = la mitad del diámetro
formulas-rule-whole = todo el diámetro, porque esta especie forma puentes de corteza
formulas-rule-most = con un tope de { $width }
formulas-better = Mejor = { $rule } = { $width }, redondeado hacia arriba ={ " " }
formulas-area = Corteza que se quita = parte viva × π × (diámetro − corteza) × ancho mejor ={ " " }
formulas-height-measured = Altura usada = la medida
formulas-height-table = Altura usada = la más alta de toda la tabla para este tamaño, porque no se sabe la especie
formulas-height-over = Altura usada = estimación más alta × { $factor }
formulas-height-shrub = Altura usada = lo más que se supone que crece este arbusto
formulas-height-one-in-ten = Altura usada = la que rebasa cuando mucho 1 de cada 10 árboles medidos de este tamaño
formulas-height-shown = Altura que se muestra = promedio de las filas para este tamaño ={ " " }
formulas-reach = Alcance = { $factor } × altura ={ " " }
formulas-reach-asked = ; se pregunta hasta { $factor } × altura = { $reach }
formulas-degree-days = ; esta especie necesita { $sum } grados-día por encima de 5 °C
formulas-buds = La mitad de las yemas abiertas, según { $basis } ={ " " }
formulas-best = ; lo mejor, { $days }
formulas-slips = La corteza se suelta y se pega otra vez ={ " " }
formulas-chance = Probabilidad de que se despegue el { $day } = probabilidad de que ya se abrió × probabilidad de que no se ha cerrado ={ " " }
formulas-in-100 = { $share } de cada 100
formulas-months-north = Meses en que la corteza se despega = los de la mitad norte del mundo:{ " " }
formulas-months-south = Meses en que la corteza se despega = los de la mitad sur del mundo:{ " " }
formulas-test-first = ningún número, solo «pruebe antes»
formulas-minutes = Minutos = demoras × (fijo + ramas + trabajo en la corteza, más largo si está pegada) + caminar; trabajo probable antes de demoras { $minutes } min, la corteza se despega en { $slips } de cada 100 ={ " " }
formulas-own-rate = Su propio ritmo = minutos de sus propios árboles entre los nuestros, con los nuestros como punto de partida ={ " " }
formulas-visits = { $visits ->
    [one] Con una visita = minutos × (1 + visitas × parte de una visita) + su caminata ={ " " }
   *[other] Con { $visits } visitas = minutos × (1 + visitas × parte de una visita) + sus caminatas ={ " " }
}
formulas-standing = Años en pie: vida media de { $wood }, × ½ a × 2 ={ " " }
