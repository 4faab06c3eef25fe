# La temporada de toda una propiedad: lo que el programa dice de ella.

## La primera frase y lo que queda
# $trees (Number)
# $ready (Number)
# $fix (Number)
plan-trees = { $trees ->
    [one] { $trees } árbol: { $ready } listos, { $fix } por corregir.
   *[other] { $trees } árboles: { $ready } listos, { $fix } por corregir.
}
# $planned (Number)
# $people (Number)
# $days (Number)
plan-can-be-ringed = { $planned ->
    [one] { $planned } árbol se puede anillar esta temporada: personas { $people }, jornadas { $days }.
   *[other] { $planned } árboles se pueden anillar esta temporada: personas { $people }, jornadas { $days }.
}
# $trees (Number)
plan-professional = Van a un profesional: { $trees }.
# $trees (Number)
plan-no-hours = No quedan horas para: { $trees }.
# $trees (Number)
plan-no-day = Ninguna jornada en que la corteza se desprenda lo bastante: { $trees }.
# $trees (Number)
plan-pacing = Quedan para otros años, para que una parte del bosque no se pierda de una vez: { $trees }.
# $trees (Number)
plan-other-method = Otro método: { $trees }.
# $trees (Number)
plan-leave-it = Dejar en paz: { $trees }.
# $trees (Number)
plan-cannot-tell = Algo no se sabe todavía: { $trees }. Diga qué podrían golpear y lo que la lista deja abierto.
# $trees (Number)
plan-dead = Ya muertos: { $trees }.
# $trees (Number)
plan-done = Ya hechos: { $trees }.
# $trees (Number)
plan-skipped = Dejados fuera: { $trees }.
# $people (Number)
# $trees (Number)
plan-binds-people = { $trees ->
    [one] Faltan horas. Con { $people } personas más: { $trees } árbol más.
   *[other] Faltan horas. Con { $people } personas más: { $trees } árboles más.
}
# $day (Text): as 2027-06-12
# $trees (Number)
plan-binds-day = { $trees ->
    [one] Faltan jornadas. Una más, el { $day }: { $trees } árbol más.
   *[other] Faltan jornadas. Una más, el { $day }: { $trees } árboles más.
}
# $trees (Number)
plan-binds-pacing = { $trees ->
    [one] El límite de lo que se mata en un año deja árboles fuera. Sin él: { $trees } árbol más.
   *[other] El límite de lo que se mata en un año deja árboles fuera. Sin él: { $trees } árboles más.
}
# $percent (Text)
plan-gap = Ningún plan con estas horas, jornadas y límites puede valer más de un { $percent } % más que este.
# $charged (Text): horas
# $routed (Text): horas
# $percent (Text)
# $missed (Number)
# $days (Number)
plan-walk = Caminar de árbol en árbol: se cuentan { $charged } h. Por los caminos de las cuadrillas, cada uno de vuelta a su primer árbol, son { $routed } h, el { $percent } % de eso. La jornada de una cuadrilla puede desviarse más de un 10 %: aquí lo hacen { $missed } de { $days }. El camino del coche al primer árbol no se cuenta.
plan-walk-unknown = No se sabe cuánto caminan las cuadrillas: muy pocos árboles tienen un lugar propio.
# $visits (Number)
plan-needs-day = Visitas sin jornada en sus semanas: { $visits }. plan.json nombra un día para cada una.
# $trees (Number)
# $which (Text): some of their tags
plan-pins-refused = Días que usted eligió y que no pueden ser: { $trees } ({ $which }). Un alto, un día cerrado, un día sin jornada o una corteza que no se desprende van antes que una elección.
# $hours (Text)
# $get_ready (Text)
plan-work-hours = Horas de trabajo por persona y jornada: { $hours }, después de { $get_ready } minutos para prepararse.
# $folder (Text)
# $files (Text)
plan-written = Escrito en { $folder }: { $files }.
plan-look-first = Un plan no es permiso para cortar. En cada árbol mire primero hacia arriba y alrededor: ningún cable, sendero, camino o lindero a menos de dos veces su altura. Lo que digan las reglas locales y un profesional va antes.
# $trees (Number)
# $which (Text): algunas de sus placas
plan-moved = Movidos frente al plan anterior: { $trees } ({ $which }). plan.json dice por qué.
# $percent (Text)
plan-fresh = Un plan que no conserve sus días valdría { $percent } % más: quite --keep para verlo.
plan-kept-all = Cada árbol del plan anterior conserva su día.
# $metres (Text)
# $day (Text): as 2027-06-12
plan-unit-said = nada a menos de { $metres } m, dicho el { $day }
# $unit (Text)
# $trees (Number)
# $distance (Text)
plan-ask-within = { $unit } ({ $trees }): ¿hay un cable, sendero, camino, edificio o lindero a menos de { $distance } de alguno de estos árboles, el doble de la altura del más alto? Si no hay nada: --nothing-within "{ $unit }={ $distance }" --said-by NOMBRE
plan-ask-clone = { $species } ({ $trees }): ¿se puede anillar cada tallo de sus clones? Dígalo una vez: --whole-clone "{ $name }=yes", o "{ $name }=no"

## El calendario de una temporada
# $trees (Number)
# $units (Text): nombres de partes de la propiedad
plan-ring-trees = { $trees ->
    [one] Anillar { $trees } árbol: { $units }
   *[other] Anillar { $trees } árboles: { $units }
}
# $trees (Number)
# $units (Text)
plan-visit-trees = { $trees ->
    [one] Volver a mirar { $trees } árbol: { $units }
   *[other] Volver a mirar { $trees } árboles: { $units }
}
# $tags (Text): en el orden en que va un equipo
plan-rings-of = Anillar: { $tags }
# $tags (Text)
plan-visits-of = Volver a mirar: { $tags }
# $what (Text): para qué es la visita
# $trees (Number)
# $unit (Text)
plan-round = Necesita un día: { $unit } ({ $trees }). { $what }

# $past (Number)
# $days (Number)
# $today (Text)
plan-days-past = Jornadas antes de hoy, { $today }: { $past } de { $days }. Si no se trabajó en ellas, nombre otras posteriores con --from.

## Lo que la línea de órdenes no puede usar
# $option (Text)
# $typed (Text)
plan-not-a-day = { $option } { $typed }: escriba días como 2027-06-12, con una coma entre ellos.
plan-to-before-from = --to queda antes de --from.
plan-season-too-long = De --from a --to hay más de 366 días: planifique una temporada cada vez.
# $typed (Text)
plan-not-week-days = --on { $typed }: escriba días de la semana como sat o sat,sun.
plan-no-days = No queda ninguna jornada: nombre días con --on sat, o --days 2027-06-12,2027-06-19, que estén entre --from y --to y no estén cerrados.
# $option (Text)
# $from (Text)
# $to (Text)
# $typed (Text)
plan-out-of-range = { $option } { $typed }: dé un número de { $from } a { $to }.
# $folder (Text)
# $why (Text)
plan-unwritten = { $folder } no se pudo escribir: { $why }
# $option (Text)
# $typed (Text)
plan-not-a-unit = { $option } { $typed }: nombre una parte de la propiedad y una distancia, como "Old field=230 ft".
# $option (Text)
# $typed (Text)
plan-not-a-reply = { $option } { $typed }: nombre una especie y yes o no, como "Black locust=yes" o "Black locust@Old field=no".
# $unit (Text)
# $units (Text)
plan-ringed-before = { $trees ->
    [one] 1 árbol se anilló o trató antes. Sus visitas no ocupan horas aquí: standing.csv dice cuándo se mira otra vez, y --found, con lo que se halló ahí, las incluye.
   *[other] { $trees } árboles se anillaron o trataron antes. Sus visitas no ocupan horas aquí: standing.csv dice cuándo se mira otra vez cada uno, y --found, con lo que se halló ahí, las incluye.
}
plan-no-such-unit = Ninguna parte de la lista se llama { $unit }. Tiene: { $units }.
# $file (Text)
plan-not-a-plan = { $file } no es un plan.json que este programa pueda conservar.
plan-none-planned = Ningún árbol se puede anillar en estos días.
# $days (Text)
plan-nearest-days = Días en que se podrían más de ellos: { $days }.
