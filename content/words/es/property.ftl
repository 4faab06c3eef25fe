### La página de toda una lista de árboles: lo que pregunta, lo que dice de la temporada, y sus tablas.

## Mientras alguien espera
property-reading = Leyendo la lista …
property-looking = Mirando cada árbol …
property-planning = Planificando …
property-writing = Escribiendo cada fila …
property-stopped = Detenido. Lo que escribió sigue ahí.
# $name (Text): of a file
# $trees (Number)
# $ready (Number)
# $fix (Number)
property-list = { $trees ->
    [one] { $name }: { $trees } árbol
   *[other] { $name }: { $trees } árboles
}, { $ready ->
    [one] { $ready } listo, { $fix } por corregir.
   *[other] { $ready } listos, { $fix } por corregir.
}
# $blank (Number)
# $others (Number)
property-other-rows = Filas que no son árboles: { $others }. Filas vacías: { $blank }.

## Lo que contienen las columnas
property-columns = ¿Qué contienen estas columnas?
property-columns-why = Solo usted puede saberlo. No se adivina nada.
# $questions (Number)
property-columns-more = Más preguntas después de estas: { $questions }.
# $questions (Number)
property-columns-asked = { $questions ->
    [one] Primero, una pregunta sobre una columna.
   *[other] Primero, { $questions } preguntas sobre columnas.
}
property-go-on = Continuar
# $across (Text)
# $unit (Text)
property-girth-yes = Alrededor del tronco. El árbol mediano mide { $across } { $unit } de lado a lado.
# $median (Text)
# $unit (Text)
property-girth-no = De lado a lado. El árbol mediano mide { $median } { $unit } de lado a lado.
property-leave-column = Dejar fuera esta columna
property-codes-plants = Símbolos de la lista de plantas: ACPL es el arce de Noruega
property-codes-own = Códigos propios, como se escriben abajo
property-code-hint = El nombre de un árbol. Vacío: se pregunta por sus filas una por una.
property-class-hint = El tamaño que se usa, como 6 in o 15 cm
# $value (Text)
# $rows (Number)
property-value = { $rows ->
    [one] { $value } ({ $rows } fila)
   *[other] { $value } ({ $rows } filas)
}
# $value (Text)
property-missing-yes = { $value } no representa nada
# $columns (Text)
property-key-these = Sí: { $columns }
property-key-alone = No. Una etiqueta repetida queda por corregir.
# $header (Text)
property-newest = { $header } es la más nueva
property-stems = Tallos de un mismo árbol
property-day-first = Primero el día
property-month-first = Primero el mes
property-target-yes = Sí: contra qué podría caer el árbol
property-target-no = No: dejar fuera esta columna
property-latitude-first = Primero la latitud
property-longitude-first = Primero la longitud
property-which-column = ¿Qué columna?
property-no-column = Ninguna
property-every = O la única especie de todas las filas
property-size-is = Es
# $unit (Text): inches, centimetres, millimetres or metres
property-diameter-in = el diámetro en { $unit }
# $unit (Text)
property-girth-in = el contorno en { $unit }
# $letter (Text): of a column
# $cell (Text): what stands in it
property-first-cell = Columna { $letter }: «{ $cell }»
property-header-hint = Como tag, species, dbh_in, girth_cm, unit, target, target_ft. Vacío: no se toca.

## Qué podrían golpear
property-hit = ¿Qué podrían golpear?
# $trees (Number)
property-hit-line = Esperan una respuesta: { $trees }
# $unit (Text): a part of the property
# $trees (Number)
# $within (Text): a distance
property-hit-unit = { $trees ->
    [one] { $unit }, { $trees } árbol: ¿hay un cable, sendero, camino, edificio o lindero a menos de { $within }, el doble de su altura?
   *[other] { $unit }, { $trees } árboles: ¿hay un cable, sendero, camino, edificio o lindero a menos de { $within } de alguno, el doble de la altura del más alto?
}
property-hit-none = No, no hay nada
property-hit-some = Sí, cerca de algunos
property-hit-wire = Sí, un cable
property-hit-unknown = No lo sé
property-hit-then-some = Escriba qué es y a qué distancia, para cada árbol, en las columnas target y target_m de su lista.
property-hit-then-wire = No se acerque, y llame al dueño de la línea. Las filas sin cable pueden decirlo en la columna target de su lista.
property-hit-by = ¿Quién lo dice?
property-hit-by-hint = Queda en el plan con el día y la distancia.
# $species (Text)
# $trees (Number)
property-clone = { $trees ->
    [one] { $species }, { $trees } árbol: ¿se puede anillar cada tallo de su clon?
   *[other] { $species }, { $trees } árboles: ¿se puede anillar cada tallo de sus clones?
}
property-yes = Sí
property-no = No
property-hit-say = Decirlo

## Quién y cuándo
property-when = ¿Quién y cuándo?
# $people (Text)
# $when (Text): a day, or the next message
property-when-line = { $people } personas, { $when }
# $first (Text)
# $last (Text)
property-when-days = { $first } a { $last }
property-people = Personas
property-hours = Horas por día
property-hours-hint = Desde que llegan hasta que se van.
property-days = Sábados en que la corteza puede desprenderse, cada uno con sus árboles
property-days-named = Jornadas:
property-days-none = No se halló ninguno para estos árboles. Nombre días abajo.
# $day (Text)
# $trees (Number)
property-day = { $day }: { $trees }
property-more-days = Otras jornadas
property-more-days-hint = Como 2027-06-12, 2027-06-13
property-place = Lugar, para los árboles que no lo tienen
property-place-hint = Grados, altura: 42.36, -71.50, 120 m
property-region = Estado o país
property-region-none = Sin decir
property-plan-it = Planificar
property-no-days = Marque una jornada, o nombre una.
property-too-long = Entre las jornadas hay más de 366 días. Planifique una temporada a la vez.
# $typed (Text)
property-no-place = Lugar { $typed }: escriba grados al norte y al este, con un menos para el sur y el oeste, como en 42.36, -71.50.

## A qué se llega
# $trees (Number)
# $ready (Number)
# $fix (Number)
# $planned (Number)
# $people (Number)
# $days (Number)
# $professional (Number)
property-sentence = { $trees ->
    [one] { $trees } árbol
   *[other] { $trees } árboles
}: { $ready ->
    [one] { $ready } listo
   *[other] { $ready } listos
}, { $fix } por corregir; { $planned ->
    [one] { $planned } se puede anillar
   *[other] { $planned } se pueden anillar
} esta temporada con { $people ->
    [one] { $people } persona
   *[other] { $people } personas
} × { $days ->
    [one] { $days } jornada
   *[other] { $days } jornadas
}; { $professional ->
    [one] { $professional } va a un profesional.
   *[other] { $professional } van a un profesional.
}
property-part-planned = por anillar
property-part-no-hours = sin horas
property-part-no-day = sin jornada en sus semanas
property-part-pacing = quedan para otros años
property-part-other-method = otro método
property-part-leave-it = dejar en paz
property-part-professional = de un profesional
property-part-cannot-tell = aún no se sabe
property-part-dead = muertos
property-part-done = hechos
property-part-skipped = dejados fuera
property-part-to-fix = por corregir
property-plan-with-it = Planificar así
# $day (Text)
property-next-day = La próxima jornada: { $day }
# $trees (Number)
property-next-day-trees = { $trees ->
    [one] { $trees } árbol para anillar
   *[other] { $trees } árboles para anillar
}
# $team (Text)
# $trees (Number)
# $hours (Text)
# $tags (Text)
property-crew-day = { $trees ->
    [one] Grupo { $team }: { $trees } árbol, { $hours } horas-persona. En orden: { $tags }.
   *[other] Grupo { $team }: { $trees } árboles, { $hours } horas-persona. En orden: { $tags }.
}
# $distance (Text)
property-keep-off = Mientras trabajan, que nadie se acerque a menos de { $distance }.

## Árboles por corregir
property-fix = Árboles por corregir
# $rows (Number)
property-fix-rows = { $rows ->
    [one] { $rows } fila no tiene respuesta todavía. Las filas buenas siguen sin ella.
   *[other] { $rows } filas no tienen respuesta todavía. Las filas buenas siguen sin ellas.
}
# $rows (Number)
# $which (Text)
# $what (Text)
property-fix-name = { $rows ->
    [one] { $rows } fila ({ $which }): { $what }
   *[other] { $rows } filas ({ $which }): { $what }
}
property-fix-species = Especie
property-fix-it = Corregir
property-broadleaf = Latifoliado
property-conifer = Conífera
property-leave-out = Dejar fuera
# $row (Text)
property-fix-look = Fila { $row }: mírela en su archivo.

## Lo que está plegado
property-strip = Horas-persona por día de trabajo: abajo el anillado, encima las visitas. Trazos: las horas que hay.
property-season-by-day = La temporada día por día
# $used (Text)
# $all (Text)
property-hours-used = { $used } de { $all } horas-persona usadas
property-all-to-fix = Todo lo que hay por corregir
# $questions (Number)
property-questions = { $questions ->
    [one] { $questions } pregunta
   *[other] { $questions } preguntas
}
# $trees (Number)
property-trees = { $trees ->
    [one] { $trees } árbol
   *[other] { $trees } árboles
}
property-table-planned = Planificados
property-table-professional = Para un profesional
property-table-other-method = Otros métodos
property-table-cannot-tell = Aún no se puede decir
property-table-left = Sin planificar esta temporada
# $title (Text)
# $from (Text)
# $to (Text)
# $all (Text)
property-shown = { $title }: { $from } a { $to } de { $all }
# $rows (Number)
property-next-rows = Mostrar los { $rows } siguientes
property-rows-before = Mostrar los anteriores
property-head-tag = Etiqueta
property-head-row = Fila
property-head-tree = Árbol
property-head-why = Qué
property-head-day = Día
property-head-trees = Árboles
property-head-hours = Horas-persona
property-head-ring-hours = Anillar, horas
property-head-visit-hours = Visitas, horas
property-head-all-hours = Hay, horas
property-head-year = Año
property-head-visits = Visitas
property-head-no-day = Sin día
# $species (Text)
# $size (Text)
property-tree = { $species }, { $size }
# $day (Text)
# $minutes (Text)
property-on-day = { $day }, { $minutes }
property-visits = Rondas de visitas
# $visits (Number)
# $hours (Text)
property-visits-line = { $visits ->
    [one] { $visits } visita, { $hours } horas-persona
   *[other] { $visits } visitas, { $hours } horas-persona
}
property-visits-are = Son las visitas de tres temporadas. Los años siguientes tienen los mismos días de la semana mientras usted no diga otra cosa: es una suposición nuestra. Una visita sin día cae en una semana sin jornada; el calendario nombra un día para ella.
property-good = ¿Qué tan bueno es este plan?
property-command = El mismo plan en la línea de comandos:
property-notes = Cómo se leyeron las columnas
# $notes (Number)
property-notes-line = { $notes ->
    [one] { $notes } cosa que saber
   *[other] { $notes } cosas que saber
}
property-files = Archivos para guardar
# $files (Number)
property-files-line = { $files } archivos: lista, hojas, mapa …
property-files-are = El archivo es la lista: descargue para conservar. trees-plan.csv es su lista con su plan, y se abre aquí otra vez.

## What if
property-what-if = ¿Y si…?
# $day (Text)
property-what-if-line = Un día de trabajo más: { $day }
# $trees (Number)
property-what-if-was = El plan anterior: { $trees ->
    [one] { $trees } árbol
   *[other] { $trees } árboles
}
property-what-if-people = Más o menos personas, un día cerrado
property-one-more-person = Una persona más
property-one-person-fewer = Una persona menos
# $day (Text)
property-one-more-day = Un día más: { $day }
property-what-if-closed = Cerrar un día de trabajo:
property-closed-days = Días cerrados
property-keep-days = Los árboles conservan los días que tienen, salvo que algo los obligue
property-pin = Un árbol en un día propio. Queda en la columna de días de su lista.
property-pin-tag = Etiqueta del árbol
property-pin-day = Día
property-pin-hint = Como 2027-06-12. Vacío: cualquier día.
property-pin-it = Conservar este día
property-pin-no-column = Para dejar un árbol en un día propio, su lista necesita una columna llamada date.
# $tag (Text)
property-pin-no-tree = Etiqueta { $tag }: ningún árbol de esta lista la tiene.
# $typed (Text)
property-pin-no-day = Día { $typed }: escriba un día como 2027-06-12.
# $people (Text)
# $hours (Text)
# $days (Number)
property-crew-of = { $people ->
    [one] { $people } persona
   *[other] { $people } personas
}, { $hours ->
    [one] { $hours } hora
   *[other] { $hours } horas
}, { $days ->
    [one] { $days } día
   *[other] { $days } días
}
# $before (Number)
# $before-crew (Text)
# $now (Number)
# $now-crew (Text)
property-was = Antes: { $before } anillados con { $before-crew }. Ahora: { $now } con { $now-crew }.
property-put-back = Volver a como estaba
# $trees (Number)
# $which (Text)
property-moved = { $trees ->
    [one] { $trees } árbol cambió de día: { $which }.
   *[other] { $trees } árboles cambiaron de día: { $which }.
}
property-moved-none = Cada árbol conserva su día.
# $tag (Text)
# $from (Text)
# $to (Text)
property-moved-tree = { $tag }, { $from } → { $to }
property-moved-no-day = sin día
# $percent (Text)
property-fresh = Un plan que no conserve ninguno de estos días valdría un { $percent } % más.

## Where they stand
property-map = Mapa
# $placed (Number)
# $without (Number)
property-map-line = { $placed ->
    [one] { $placed } árbol con lugar; sin él: { $without }
   *[other] { $placed } árboles con lugar; sin él: { $without }
}
property-map-north = N
property-map-all = Toda la lista
# $day (Text)
# $trees (Number)
property-map-day = Mapa del { $day }, { $trees ->
    [one] { $trees } árbol, el norte arriba
   *[other] { $trees } árboles en su orden, el norte arriba
}
# $trees (Number)
property-map-of = Mapa de { $trees ->
    [one] { $trees } árbol, el norte arriba
   *[other] { $trees } árboles, el norte arriba
}
property-map-circles = Dibujado solo con su lista, el norte arriba. Círculos: el suelo que sigue siendo peligroso en torno a los árboles que se anillan o están muertos en pie.
property-map-grid = Dibujado solo con su lista, el norte arriba: cuántos árboles hay en cada cuadro.
property-map-ring = se anillan esta temporada
property-map-professional = de un profesional
property-map-unknown = aún no se sabe
property-map-standing = muertos o hechos
property-map-other = otra cosa
# $trees (Number)
# $which (Text)
property-map-without = { $trees ->
    [one] { $trees } árbol no tiene lugar en la lista: { $which }.
   *[other] { $trees } árboles no tienen lugar en la lista: { $which }.
}
property-places = El mapa como tabla
property-head-east = Al este del centro
property-head-north = Al norte del centro
property-head-zone = Suelo que sigue siendo peligroso

## What stands
property-stand = Lo que hay en cada parte
# $ringed (Text): an area
# $all (Text)
property-stand-line = Área basal anillada: { $ringed } de { $all }
property-stand-is = Área basal: los troncos de los árboles a los que conviene un anillo, cortados a la altura del pecho. No incluye lo que hace otro método o un profesional.
# $area (Text)
property-area-us = { $area } ft²
# $area (Text)
property-area-metric = { $area } m²
property-head-part = Parte
property-no-part = Sin parte
property-head-basal = Área basal
property-head-ringed = Se anillan esta temporada
# $percent (Text)
property-good-line = A lo sumo { $percent } % bajo lo mejor
# $day (Text)
property-this-day = Hoy, { $day }

## After the work
property-found = Después del trabajo
property-found-none = Una tabla de visitas mueve el plan
# $trees (Number)
property-found-before = { $trees } de antes: aún sin horas
property-found-before-is = Las visitas de los árboles anillados o tratados antes de esta lista no ocupan horas de este plan hasta que abra una tabla de lo que se halló ahí. standing.csv dice cuándo se mira otra vez cada uno.
# $file (Text)
# $looks (Number)
# $fix (Number)
property-found-line = { $looks ->
    [one] { $file }: { $looks } visita; filas por corregir: { $fix }
   *[other] { $file }: { $looks } visitas; filas por corregir: { $fix }
}
property-found-is = Una fila por árbol y día: su etiqueta, el día, lo que se encontró y los minutos si los cronometró. Los anillos que fallaron se planean otra vez, y las visitas pendientes toman primero sus horas.
property-found-words = found es una o más de bridge, sprouts, suckers, crown_full, crown_thin, crown_bare, decay, nothing, dead, fallen, con ; entre varias. Si la lista no dice cuándo se anilló un árbol, rellene ringed_on.
property-found-open = Abrir una tabla de visitas
property-found-drop = O suéltela sobre esta página.
property-found-example = Guardar una vacía con las etiquetas
# $day (Text)
property-found-planned = previsto para { $day }
property-found-out = Quitar esta tabla
# $rows (Number)
property-found-to-fix = { $rows ->
    [one] Una fila de su tabla por corregir. Hasta entonces no cuenta.
   *[other] { $rows } filas de su tabla por corregir. Hasta entonces no cuentan.
}
# $more (Number)
property-found-more = Más después de estas: { $more }
property-found-now = Qué hacer ahora
property-found-nothing-now = No hay nada que hacer ahora.
property-found-shares = Qué murió y qué anillos resistieron
property-found-rate = Cuánto tarda el grupo
property-found-no-minutes = Ningún anillo de esta tabla tiene minutos. Cronometre dos anillos o más para tener un ritmo propio.
property-found-own-rate = Planear con su propio ritmo
property-found-trees = Árbol por árbol
property-head-looked = Visitado
property-head-now = Ahora
property-head-again = Volver a mirar antes del
property-found-dead = está muerto en pie
property-found-down = está en el suelo
property-found-ringed = está anillado
property-found-stopped = no esté debajo; resuelva antes lo que lo detiene
property-found-list-first = Esta es una tabla de visitas. Abra primero la lista de sus árboles.
# $file (Text)
property-found-waits = { $file } se tendrá en cuenta en cuanto la lista tenga un plan.

## Land and crowns
property-land = Suelo y copas
property-land-is = Si un bosque no debe abrirse demasiado, diga cuánta tierra es una parte y cuánta está ahora bajo copas.
property-land-area = Tierra
property-land-area-hint = 5 ha o 12 acres
property-land-closure = Bajo copas, %
property-land-closure-hint = Vacío: las de la lista
property-land-floor = Dejar bajo copas, %
# $share (Number)
property-land-floor-hint = De cada parte con tierra; quedan también dos quintos de su área basal. Se ha publicado { $share }. Vacío: sin límite.
# $typed (Text)
property-land-no-area = «{ $typed }» no es la tierra que una parte puede tener. Escríbala así: 5 ha o 12 acres.
# $typed (Text)
property-land-no-share = «{ $typed }» no es una proporción. Escriba un número de 1 a 99.
property-land-area-first = Escriba antes cuánta tierra es.
property-land-no-parts = Para decir cuánta tierra es una parte, su lista necesita una columna llamada unit.
property-land-all-crowns = Si hay allí otros árboles, escriba cuánto cubren todos.

## Replanting
property-replant = Volver a plantar
# $count (Number)
property-replant-line = { $count ->
    [one] { $count } árbol llena el hueco
   *[other] { $count } árboles llenan los huecos
}
property-spacing = Entre dos árboles
property-spacing-hint = 8 ft o 2,5 m. Vacío: 10 ft o 3 m, un supuesto nuestro
# $typed (Text)
property-no-spacing = «{ $typed }» no es una distancia entre árboles. Escríbala así: 8 ft o 2,5 m, como mucho 30 m.
property-reckon = Calcular otra vez
property-no-natives = La lista de nativos no llegó. Abra esto otra vez con señal.
