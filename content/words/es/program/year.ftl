### The command that says when the bark slips at a place.

year-tree = { $tree } ({ $latin }), { $year }
year-no-bark = No hay corteza que se despegue: no hay anillo que cortar.
year-span = { $from } a { $to }
year-half = La mitad de las yemas abre el { $day }; { $open } días más o menos al principio y { $close } al final.
year-all = Cuándo se despega la corteza, { $year }
year-opens = empieza
year-best-from = mejor de
year-best-to = mejor a
year-closes = termina
year-no-dates = sin modelo de fechas: pruebe antes
year-no-ring = no hay anillo que cortar
year-days = de { $low } a { $high } días
year-spread = Más o menos { $open } al principio y { $close } al final, según el árbol.

year-not-listed = { $tree } no está en esta lista. Elija «{ $group }».
year-unknown = no se conoce ninguna especie llamada «{ $name }».
year-unknown-type = no se conoce ninguna especie llamada «{ $name }». Escriba un nombre común, un nombre científico o una clave de planta.
year-unknown-like = no se conoce ninguna especie llamada «{ $name }». ¿Quiso decir: { $names }?

year-no-town = no se conoce ninguna población llamada «{ $typed }». Escriba latitud, longitud y altura sobre el mar, como 42.36,-71.06,15 m.
year-towns = «{ $typed }» no es una sola población. Añada el estado, o escriba una de estas: { $names }.
year-no-elevation = { $typed } no es una altura sobre el mar: escriba 15 m o 50 ft
year-off-earth = { $typed } no está en esta tierra: la latitud va de -90 a 90, la longitud de -180 a 180 (el oeste es negativo)
