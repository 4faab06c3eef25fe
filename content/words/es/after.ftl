### Lo que se dice de las visitas después del trabajo, en la página y por el programa.

## El archivo
# $column (Text)
after-no-column = ninguna columna se llama { $column }. Hacen falta tree_id, visited_on y found.
after-empty = aquí no hay nada. Escríbalo o quite la fila.
# $typed (Text)
after-not-a-day = «{ $typed }» no es un día. Escríbalo así: 2027-06-12.
# $typed (Text)
after-not-a-word = «{ $typed }» no es una palabra conocida. Use bridge, sprouts, suckers, crown_full, crown_thin, crown_bare, decay, nothing, dead o fallen, con ; entre varias.
# $typed (Text)
after-not-a-number = «{ $typed }» no es un número que aquí pueda ser correcto.
# $typed (Text)
after-no-such-tree = la lista no tiene ningún árbol «{ $typed }» que se haya entendido.
after-no-ring-day = nadie dijo cuándo se anilló este árbol. Rellene ringed_on.
after-before-the-ring = la visita es anterior al anillo. Compruebe los dos días.
# $typed (Text)
after-not-yet = { $typed } aún no ha llegado. Compruebe el año.
# $typed (Text)
after-contradiction = «{ $typed }» no puede ser todo a la vez. Deje solo lo que se vio.

## Lo que se encontró
# $looks (Number)
after-looks = { $looks ->
    [one] Encontrado en { $looks } visita:
   *[other] Encontrado en { $looks } visitas:
}
# $act (Phrase): visits-act-now
# $trees (Number)
# $tags (Text)
after-act = Hacer ahora: { $act }. Árboles: { $trees } ({ $tags }).
# $trees (Number)
# $tags (Text)
after-stopped = Árboles bajo los que nadie debe estar y en los que nadie trabaja hasta resolver lo que los detiene: { $trees } ({ $tags }).

## Proporciones
# $share (Number)
# $low (Number)
# $high (Number)
after-interval = { $share } % (intervalo del 95 %: de { $low } a { $high } %)
# $species (Text)
# $size (Phrase): outlook-size-class
# $season (Number)
# $dead (Number)
# $looked (Number)
after-kill-rate = { $species }, { $size }, en la última visita de la temporada { $season }: de { $looked } visitados, muertos { $dead }.
# $share (Phrase): after-interval
after-kill-share = Es el { $share }.
# $trees (Number)
after-not-looked-at = Sin visitar: { $trees }.
# $season (Number)
# $trees (Number)
after-nobody-looked = Otras especies y tamaños, temporada { $season }: sin visitar { $trees }.
# $low (Number)
# $high (Number)
after-outlook = Lo esperado a su final: de { $low } a { $high } %.
# $held (Number)
# $looked (Number)
after-held = Anillos sin puente: { $held } de { $looked } visitados.

## El ritmo del grupo
# $trees (Number)
# $minutes (Number)
# $likely (Number)
# $low (Number)
# $high (Number)
after-rate = Anillos cronometrados: { $trees }, en { $minutes } minutos-persona. Este grupo tarda { $likely } veces lo que calculamos (ocho de cada diez grupos así: de { $low } a { $high }).
after-rate-used = El plan se hace con el ritmo de este grupo.
after-rate-far-off = Los minutos cronometrados están tan lejos de los de cualquier grupo que una unidad o un recuento debe de estar mal: no hay ritmo.
after-rate-too-few = Cronometre dos anillos o más para tener un ritmo propio.

## Suelo bajo las copas
# $unit (Text)
# $now (Number)
# $then (Number)
after-crowns = { $unit }: el { $now } % del suelo está ahora bajo copas, el { $then } % con los árboles de este plan muertos, si las copas están al azar.
# $unit (Text)
# $now (Number)
# $then (Number)
after-crowns-of-list = { $unit }: las copas de los árboles vivos de esta lista cubren ahora el { $now } % del suelo y el { $then } % con los de este plan muertos, si están al azar.

## Lo que puede crecer donde mueren árboles
# $trees (Number)
# $area (Text)
after-gap = { $trees ->
    [one] La copa del árbol que se anilla deja abiertos unos { $area } cuando haya muerto.
   *[other] Las copas de { $trees } árboles que se anillan dejan abiertos unos { $area } cuando hayan muerto.
}
# $spacing (Text): a distance
# $count (Number)
after-plant = { $count ->
    [one] Con { $spacing } entre dos árboles, eso lo llena { $count } árbol.
   *[other] Con { $spacing } entre dos árboles, eso lo llenan { $count } árboles.
}
# $unit (Text)
# $count (Number)
# $area (Text)
after-plant-part = { $count ->
    [one] { $unit }: { $count } árbol para { $area }
   *[other] { $unit }: { $count } árboles para { $area }
}
# $trees (Number)
after-no-crown = Árboles cuya copa no está en nuestras tablas y que aquí no cuentan: { $trees }.
after-plant-when = Desde el día de su anillo, el suelo en torno a un árbol es peligroso hasta que haya caído: plante allí antes, o después, o fuera de su alcance.
after-gap-overlaps = Las copas se calculan por los troncos. Donde se cruzan se abre menos; donde ya crecen árboles jóvenes no hacen falta otros.
after-gap-capped = Una parte no se abre más que su tierra.
# How much light a tree wants, as the table has it.
# $of (Key)
after-light =
    .intolerant = pleno sol
    .intermediate = media sombra
    .tolerant = sombra
# $of (Key)
after-water =
    .low = poca agua
    .medium = algo de agua
    .high = mucha agua
# $names (Text): trees that die
# $light (Text)
# $water (Text)
after-natives = { $names }: { $light }, { $water }.
after-natives-are = Nativos que piden lo que tenían los árboles que mueren, primero los que crecen en más lugares:
# $region (Text)
# $names (Text)
after-natives-both = Nativos en { $region } según una lista nacional y un mapa de distribución: { $names }.
# $region (Text)
# $names (Text)
after-natives-one = Registrados en { $region } por uno de los dos, quizá plantados: { $names }.
after-natives-where = Diga en qué estado o provincia están los árboles y aquí se nombran los nativos.
after-natives-elsewhere = Nuestros nativos son de los Estados Unidos y Canadá: allí no hay nada registrado.
after-natives-none = No conocemos allí ningún nativo que pida la misma luz y agua.
after-natives-memory = Cuánta luz y agua toman los árboles que mueren es conocimiento general, no leído en una fuente.
after-ask-nursery = Las alturas son las de árboles viejos. Pregunte a su vivero o a la oficina de extensión qué conviene a su suelo, qué se vende y qué es nativo justo donde usted está: un árbol nativo de un estado no lo es en todo él. Cerca de una línea, pregunte antes a su dueño.
