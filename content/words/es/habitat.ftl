habitat-durability =
    .a = la madera que más dura
    .b = madera que dura mucho
    .c = madera de duración media
    .d = madera que dura poco
habitat-not-good-for = Un árbol que se muere puede soltar ramas antes de verse muerto. Mantenga lejos los senderos, los asientos y los campamentos.
habitat-snag-guides = ¿Cuántos árboles así por acre? Lo que piden las guías
habitat-head-guides-whose = De quién
habitat-head-guides-snags-an-acre = Árboles muertos en pie por acre
habitat-head-guides-source = Fuente
habitat-users-how = Cómo usa cada uno un árbol muerto
habitat-leaves = Lo que deja
habitat-feeding-only = Madera para buscar comida, sin cavidades: { $size } es menos de 6 in (15 cm), el tamaño con que empiezan las aves más chicas que anidan en cavidades.
habitat-give-the-state = Con { $size } tiene grueso para cavidades. Dé el estado del país, y aquí estarán los animales que pueden usarlo.
habitat-no-user = Con { $size } ningún animal de la tabla que anida en cavidades llega aquí a su tamaño; sigue siendo madera para buscar comida.
habitat-users = { $users ->
    [one] un animal de esta región que usa cavidades puede usar un árbol de este tamaño.
   *[other] { $users } animales de esta región que usan cavidades pueden usar un árbol de este tamaño.
}
habitat-standing = La mitad de estos árboles cae entre { $low } y { $high } años después de morir, en general a los { $likely }. Mueren de 1 a 3 años después del anillo. Supuesto nuestro.
habitat-years-label = { $years } años
habitat-guide = { $whose }: { $snags } árboles muertos en pie por acre.
