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
after-kill-rate = { $species }, { $size }, final de la temporada { $season }: { $dead } muertos de { $looked } visitados.
# $share (Phrase): after-interval
after-kill-share = Es el { $share }.
# $trees (Number)
after-not-looked-at = Sin visitar: { $trees }.
# $season (Number)
# $trees (Number)
after-nobody-looked = Otras especies y tamaños, final de la temporada { $season }: sin visitar { $trees }.
# $low (Number)
# $high (Number)
after-outlook = Lo esperado: de { $low } a { $high } %.
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
