### Hojas en papel para una temporada: la portada, las hojas de cuadrilla, las etiquetas. Las letras son de diez puntos: pocas palabras.

## Cada hoja
# $list (Text): el nombre del archivo de la lista
# $day (Text)
sheets-made = De { $list }, planeado el { $day }.
# Desde el lunes.
sheets-week-days = Lunes Martes Miércoles Jueves Viernes Sábado Domingo
sheets-call = Llame:
# No se nombra a nadie: líneas para llenar.
sheets-call-blank = jefe de cuadrilla ___________ · dueño ___________ · emergencias ___________
sheets-call-line = un cable eléctrico: a su dueño; no se acerque más
# De la cintura al pecho (práctica común, sin fuente).
sheets-up-us = 3 a 4½ ft
sheets-up-metric = 0.9 a 1.4 m
sheets-no-tags = En este plan no se anilla ningún árbol.
# $cautions (Text): cada una en dos o tres palabras
sheets-mind-too = Cuide también: { $cautions }.
# $tags (Text)
# $more (Number)
sheets-and-more = { $tags } y { $more } más

## Hojas de cuadrilla
sheets-crew-title = Hojas de cuadrilla
# $team (Number)
# $teams (Number)
# $sheet (Number)
# $sheets (Number)
sheets-crew-of = cuadrilla { $team } de { $teams }, hoja { $sheet } de { $sheets }
# $people (Number)
# $hours (Text)
# $get_ready (Text)
# $trees (Number)
# $minutes (Text)
# $walk (Text)
sheets-people = Personas: { $people }, { $hours } h de trabajo cada una, después de { $get_ready } min para prepararse. En esta hoja: { $trees }, { $minutes } minutos-persona, { $walk } de ellos a pie.
sheets-first = En cada árbol, primero:
sheets-list-says = La lista dice:
sheets-note-of = { $tag }: «{ $note }».
sheets-look = mire arriba y alrededor. ¿Hay un cable, sendero, camino, edificio o lindero dentro de la distancia junto a “Visto”? No lo anille: déjelo y avise. Marque “Visto” si no hay nada. Los demás, fuera hasta “Gente”. “Prueba”: un parche como la mano se despega. “Vuelta”: desnudo alrededor.
sheets-today = Hoy:
sheets-keep-out = No entre debajo de los árboles muertos o ya anillados:
sheets-not-here = No están en esta hoja:
sheets-not-professional = de un profesional
sheets-not-known = aún no se sabe
sheets-not-other = otro método, o se dejan
sheets-not-fixed = por corregir en la lista
sheets-steps = El anillo:
sheets-six-steps = 1 quite ramas y brotes por debajo · 2 abra un parche: si se rasga, pare · 3 marque dos líneas a nivel, solo la corteza · 4 pele todo alrededor · 5 raspe, déjelo desnudo · 6 dé la vuelta: nada de corteza lo cruza. Un anillo más ancho aguanta mejor; nunca más angosto que lo impreso.
# $unit (Text)
# $distance (Text)
# $by (Text)
# $day (Text)
sheets-nothing-within = { $unit }, nada a menos de { $distance }: lo dijo { $by }, { $day }. Nadie lo revisó árbol por árbol: mire.
sheets-not-said = alguien que no dio su nombre
# Una visita después del anillo.
sheets-look-again = raspe el anillo, abra otra vez los puentes

## Cabezas de tabla
sheets-head-done = Hecho
sheets-head-tag = Placa
sheets-head-tree = Árbol
sheets-head-across = Grosor
sheets-head-ring = Anillo
sheets-head-up = Alto
sheets-head-people-off = Gente
sheets-head-looked = Visto
sheets-head-patch = Prueba
sheets-head-round = Vuelta
sheets-head-minutes = Min
sheets-head-note = Nota
sheets-head-look-again = Otra visita
sheets-head-day = Día
sheets-head-rings = Anillos
sheets-head-visits = Otras visitas
sheets-head-hours = Horas-persona

## Etiquetas
sheets-tags-title = Etiquetas
# $width (Text)
sheets-tag-ring = Anillo { $width }
sheets-tag-ringed-on = Anillado ________ por ______
# $zone (Text)
sheets-tag-keep = Árbol muerto en pie: a más de { $zone }

## La portada
sheets-cover-title = Los anillos de una temporada
sheets-cover-days = Días
sheets-cover-call = A quién llamar
sheets-cover-cautions = Precauciones
# $days (Number)
# $hours (Text)
sheets-more-days = Otros días de trabajo: { $days }, con { $hours } horas-persona.
# $now (Text)
# $later (Text)
sheets-hours = Esta temporada: { $now } horas-persona. Otras visitas en los dos años que siguen: { $later } horas-persona, en días que nadie acordó todavía.
