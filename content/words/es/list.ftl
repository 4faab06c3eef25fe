list-at = Fila { $row }, columna { $column } ({ $header }): { $what }
list-at-row = Fila { $row }: { $what }
list-size-missing = falta el tamaño. Escriba el diámetro, por ejemplo 14 o 14 1/2.
list-girth-missing = falta el tamaño. Esta columna tiene circunferencias: escriba la circunferencia, la vuelta del tronco, como las otras filas.
list-name-missing = falta la especie. Escriba su nombre, o “unknown broadleaf” o “unknown conifer”.
list-name-unknown = «{ $typed }» no es un árbol que conozcamos. Escriba entero su nombre científico o común, o “unknown broadleaf” o “unknown conifer”.
list-not-listed = { $name } no está en nuestra lista. Decida para todos: “{ $choose }”, o dejarlos fuera.
list-genus-only = «{ $typed }» es un género, no una especie. Escriba la especie.
list-genus-of = «{ $typed }» es un género, no una especie. Escriba cuál: { $of }, u otra.
list-several-trees = «{ $typed }» es un árbol distinto según el país: { $of }. Escriba cuál, o diga de dónde es la lista.
list-two-trees = «{ $typed }» nombra dos árboles distintos. Escriba uno.
list-names-disagree = el nombre científico y el común son de dos árboles. Corrija uno.
list-shortened = «{ $typed }» trae la primera palabra cortada. Escríbala entera.
list-doubted = «{ $typed }» trae una señal de duda. Se toma como está: vea el árbol.
list-code-unknown = «{ $typed }» no está en ninguna tabla de claves que tengamos. Añádala a las claves de esta columna, o escriba el nombre.
list-code-not-listed = «{ $typed }» es la clave de un árbol que no está en nuestra lista. Escriba el nombre, o “unknown broadleaf” o “unknown conifer”.
list-code-undecided = no se ha decidido qué es «{ $typed }». Dígalo en las claves de esta columna.
list-decision-unknown = se decidió «{ $decided }», que no es una especie que conozcamos. Corríjalo en el archivo de decisiones.
list-tag-twice = la etiqueta «{ $typed }» también está en la fila { $first }. Dé a cada árbol la suya.
list-tag-mangled = «{ $typed }» parece una etiqueta que cambió la hoja de cálculo. Compárela con el árbol.
list-broken = la hoja de cálculo perdió el valor de una fórmula. Escriba el valor.
list-formula = aquí hay una fórmula como texto. Escriba su valor.
list-stem-sizes = varios troncos y un solo tamaño. Escriba el de cada uno, como en 12; 9; 7.
list-stem-sizes-of = { $stems ->
    [one] es { $stems } tronco, y no es { $stems } tamaño. Escriba el tamaño de cada tronco.
   *[other] son { $stems } troncos, y los tamaños no son { $stems }. Escriba cada uno, como en 12; 9; 7.
}
list-range = «{ $typed }» es un intervalo. Escriba un tamaño.
list-open = «{ $typed }» no tiene fin. Escriba un tamaño.
list-made-a-day = «{ $typed }» es una fecha: la cambió la hoja de cálculo. Escriba el tamaño.
list-two-numbers = «{ $typed }» trae dos números. Escriba un tamaño, o cada tronco como en 12; 9; 7.
list-year = «{ $typed }» parece un año. Escriba el tamaño.
list-estimate = es un cálculo a ojo. Se usa como está.
list-class-undecided = no se ha decidido el tamaño de la clase «{ $typed }». Dígalo en las clases de esta columna.
list-sizes-disagree = la circunferencia y el diámetro no concuerdan. Corrija uno.
list-shrunk = el tronco es más de una décima parte más delgado que en { $year }. Mida otra vez.
list-measured-off = no se midió a la altura del pecho. El tamaño se usa como está.
list-stem-count = esto no es un número de troncos. El tamaño se usa.
list-condition-unknown = «{ $typed }» no es un estado que leamos. Escriba viva, en declive o muerta.
list-status-unknown = «{ $typed }» no es una situación que leamos. Escriba planned, treated, checked, resprouted, dead_standing, fallen o skip.
list-lean-unknown = «{ $typed }» no es una inclinación que leamos. Escriba none, toward o away.
list-target-unknown = «{ $typed }» no es algo que leamos como objetivo. Escriba building, road, path, line, property_line, fence, keep_tree, none o unknown.
list-not-yes-no = «{ $typed }» no es ni sí ni no. Escriba sí, no o no sé.
list-place-swapped = la latitud y la longitud pueden estar cambiadas, o falta un signo menos. Este lugar no se usa.
list-not-on-earth = no es un lugar de la Tierra. No se usa.
list-not-degrees = no es un lugar en grados. Se guarda y no va al mapa.
list-counts-as = «{ $typed }» no es ninguno de estos: { $known }. Cuenta como { $word }.
list-done-day = «{ $typed }» no es un día pasado en que se hizo el trabajo. Escriba uno, como 2026-06-12, o vacíe la celda.
list-day-past = «{ $typed }» ya pasó. Se elige otro día.
list-note-gone = la nota puede decir que el árbol ya no está o ya se anilló. Revise.
list-size-wide = «{ $typed }» es { $us } ({ $metric }) de diámetro. ¿Quiso decir { $meant }? Si es correcto, escríbalo con su unidad: { $right }.
list-size-wide-said = «{ $typed }» es { $us } ({ $metric }) de diámetro. Se lee tal cual: mida otra vez.
list-distance-alone = una distancia sin el objeto al que pertenece. Escriba lo que hay allí como target, por ejemplo path 60 ft.
list-note-wire = habla de un cable: el árbol queda fuera. Escriba el cable como target, por ejemplo line 90 ft, o no como line_within_reach. Si no hay ninguno cerca, escriba aquí «sin cables».
list-note-target = habla de algo cercano: lo dicho de toda la parcela no vale aquí. Escríbalo como target, por ejemplo road 90 ft, o none.
list-note-look = habla de algo que el árbol podría alcanzar. Mire antes de anillar.
list-note-fault = habla de una parte rota, colgada, hueca o podrida. Escríbala como condition, por ejemplo fair; hung limbs, o fair; cavity. Si ya no está, quítela de aquí.
list-note-keep = pide dejar este árbol. Escriba skip como status o, si el árbol debe morir, quítelo de aquí.
list-slope-unknown = «{ $typed }» no es una pendiente en porcentaje. Escriba un número como 35: lo dicho de toda la parcela no vale aquí.
list-steep = el terreno es empinado ({ $typed }) y un tronco llega más lejos. Lo dicho de toda la parcela no vale aquí: escriba como target lo que hay cuesta abajo, o none.
list-note-stems = la nota habla de varios troncos. Revise.
list-too-long = hay más celdas que en el encabezado. Se guardan.
list-cell-too-long = es más larga que una celda de una hoja de cálculo. Acórtela.
list-quote-open = aquí se abre una comilla que no se cierra: las filas de abajo no se pueden leer. Ciérrela.
list-same-place = otros dos árboles o más están exactamente en este lugar.
list-unit-assumed = { $header }: no dice la unidad. Sus números se leen en { $unit }; el de en medio es { $median }.
list-unit-proven = { $header }: su unidad es { $unit }. Lo prueba { $by }.
list-ours-dropped = { $columns ->
    [one] Una columna que escribió un plan anterior se quita y se hace de nuevo.
   *[other] { $columns } columnas que escribió un plan anterior se quitan y se hacen de nuevo.
}
list-days-counted = { $header }: sus números son días como los cuenta una hoja de cálculo. { $number } se lee como { $day }.
list-column-measured-off = { $header }: se midió a { $height } m, no a la altura del pecho. Sus medidas se usan tal cual.
list-newest = Varios tamaños de un árbol: se usa el más nuevo que esté escrito, en este orden: { $headers }.
list-many = { $rows } árboles: una página toma 20,000 a la vez. Elija algunos por { $columns }.
list-old-letters = Las letras de este archivo son de una codificación antigua. Algunas palabras, como se leen: { $words }.
list-no-stem-count = { $header }: no son números de troncos. No se lee.
list-height-classes = { $header }: son clases, no alturas. No se lee.
list-past-days = { $header }: casi todos sus días ya pasaron. No se lee como plan.
list-column-not-degrees = { $header }: no son grados. Se guarda y no va al mapa.
list-doubled = { $header }: otra columna dice lo mismo. No se lee.
list-no-groups = { $header }: cada fila trae el suyo. No agrupa nada.
list-own-words = { $header }: casi todas sus palabras son propias. Las que no conocemos se pasan por alto.
list-none-is-nothing = { $header }: en esta lista “None” es una celda vacía, y aquí no dice nada.
list-ask-girth = { $header }: ¿es la circunferencia? El de en medio es { $median } { $unit }: eso de diámetro o, si es circunferencia, { $across } de diámetro.
list-ask-metres = { $header }: ¿está en metros? El de en medio es { $median }.
list-ask-classes = { $header }: parecen clases: { $values }. ¿Qué tamaño es cada una?
list-ask-codes = { $header }: las claves de la lista de plantas cabrían todas; estas no, o no todas: { $codes }. ¿Qué árbol es cada una?
list-ask-missing = { $rows ->
    [one] { $header }: ¿{ $value } quiere decir que no hay dato? Está en { $rows } fila.
   *[other] { $header }: ¿{ $value } quiere decir que no hay dato? Está en { $rows } filas.
}
list-ask-numbered = ¿Cuál de estas es la más nueva, o son troncos de un mismo árbol? { $headers }
list-ask-key = { $repeats ->
    [one] { $repeats } fila repite una etiqueta. ¿Estas columnas juntas hacen la etiqueta? { $columns }
   *[other] { $repeats } filas repiten una etiqueta. ¿Estas columnas juntas hacen la etiqueta? { $columns }
}
list-ask-no-species = Ninguna columna nombra los árboles. ¿Cuál es, o de qué especie son todos?
list-ask-no-size = Ninguna columna trae un tamaño. ¿Cuál es?
list-ask-no-header = El archivo no tiene encabezado. ¿Qué trae cada columna? Su primera fila: { $first }
list-ask-day-order = { $header }: «{ $example }»: ¿va primero el día o el mes?
list-ask-point-order = { $header }: «{ $example }»: ¿va primero la latitud o la longitud?
list-ask-target = { $header }: ¿dice contra qué podría caer cada árbol? Contiene: { $values }.
list-ask-unit-lost = { $header }: su nombre quedó cortado, y tal vez su unidad. ¿Cuál es?
list-asked = { $questions ->
    [one] Primero una pregunta. Llene el archivo de decisiones y délo con --columns:
   *[other] Primero { $questions } preguntas. Llene el archivo de decisiones y délo con --columns:
}
list-stranger = «{ $name }» en el archivo de decisiones no es una columna de esta lista. Revise cómo está escrito.
list-empty = El archivo está vacío.
list-workbook = Esto es un libro de una hoja de cálculo. Ábralo allí y guárdelo como CSV.
list-not-text = Esto no es texto: es una imagen, un PDF o algo así. Dé una lista en CSV.
list-one-column = Esto parece una sola columna. Guarde la lista con comas, puntos y comas o tabuladores entre sus celdas.
list-header-alone = Hay un encabezado y ninguna fila debajo.
list-sideways = Los árboles están uno al lado del otro. Gire la tabla, para que cada árbol sea una fila.
list-counts = La lista cuenta árboles. Hace falta una fila por árbol, con su tamaño.
list-nothing-answered = Ninguna fila tiene respuesta todavía.
list-row-to-fix = Por corregir: vea sus problemas.
list-row-left-out = Queda fuera, como se decidió.
list-row-skip = Queda fuera por su situación.
list-row-done = Ya hecho, por su situación.
list-row-fallen = Caído: no hay nada que anillar.
list-row-no-tree = Aquí no hay un árbol.
list-counted = { $rows ->
    [one] { $rows } fila
   *[other] { $rows } filas
}: { $trees ->
    [one] { $trees } árbol
   *[other] { $trees } árboles
}, { $ready ->
    [one] { $ready } listo
   *[other] { $ready } listos
} y { $fix } por corregir; { $others ->
    [one] { $others } fila
   *[other] { $others } filas
} sin árbol; { $blank } en blanco.
list-outcome = { $outcome }: { $trees }
list-no-work = Hechos, fuera o caídos: { $trees }
list-group = { $rows ->
    [one] { $rows } × { $what } Fila { $which }
   *[other] { $rows } × { $what } Filas { $which }
}
list-unreadable = no se pudo leer { $file }. Dé el nombre de una lista, o - para la entrada estándar
list-unreadable-columns = no se pudo leer { $file }. Dé el nombre de un archivo de decisiones (JSON)
list-cut-short = la lista no se pudo leer hasta el final
list-not-a-day = --today { $typed }: escriba un día, por ejemplo 2027-06-12.
list-no-place = --place: { $why }
list-not-a-region = --region { $typed }: escriba un código como US-MA o GB.
