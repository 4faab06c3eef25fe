### El modo de campo: en el bosque con un teléfono, una pregunta por pantalla, árbol por árbol. Sus preguntas son las del formulario.
field-title = Árbol por árbol en el bosque
field-description = En el bosque con un teléfono: una pregunta por pantalla, una respuesta para cada árbol y la lista de todos como un archivo suyo.
field-without-script = Esta página necesita scripts. Sin ellos hay [una tarjeta para llenar a mano](paper/card/).
field-coming = Las preguntas están en camino. [Todos los árboles](species/) y [una tarjeta para llenar a mano](paper/card/) no necesitan ningún archivo de esta página.
field-home = Árbol por árbol en el bosque
field-home-about = Una pregunta por pantalla, teclas grandes, una lista al final.

## Dónde está quien lee
# $tree (Text): its number
# $at (Text): the number of the question
# $all (Text): how many there are
field-question = Árbol { $tree }. Pregunta { $at } de { $all }
# $tree (Text): its number
# $name (Text): its species
field-answered = Árbol { $tree }, { $name }. Respondido
# $tree (Text): its number
# $name (Text): its species
field-tree = Árbol { $tree }: { $name }
field-no-name = no se sabe cuál
field-step-place = lugar
field-step-day = día
field-step-tree = árbol
field-step-size = tamaño
field-step-near = cerca
field-step-line = línea

## Las preguntas
# $tree (Text): its number
# $place (Text)
# $day (Text)
field-same = Como el árbol { $tree }: { $place }. { $day }.
field-no-place = sin lugar dicho
field-change = Cambiar
field-of-list = Árboles de esta lista
field-which = No lo sé: [¿qué árbol es?](key/)
# $tree (Text): its number
# $near (Text): a thing and its distance
# $line (Text): yes, no or can't tell
field-as-tree = Como en el árbol { $tree }: { $near }. Línea eléctrica o telefónica: { $line }
field-not-said = no se dijo
field-keys = Añadir una parte de pulgada
field-quarter = y un cuarto
field-half = y medio
field-three-quarters = y tres cuartos
field-clear = Borrar
field-measured = Cómo se midió
field-stems = ¿Un tallo o varios?
field-one = Un tallo
field-several = Varios tallos
field-largest = Su tallo vivo más grueso: ¿cuánto mide?
field-others-ask = Sus otros tallos vivos: ¿cuánto miden?
field-others-hint = Cada uno medido como el primero, antes los más gruesos, con ; entre dos: 9; 7 1/2. Los muertos no cuentan.
field-another = Otro tallo
# $typed (Text)
field-others-wrong = «{ $typed }» no es una medida que un tallo pueda tener. Escriba cada una así: 9 o 7 1/2.
field-others-none = Escriba al menos una, o vuelva y pulse Un tallo.
field-continue = Continuar
field-back = Atrás
# $tree (Text): its number
field-back-to = Volver al árbol { $tree }
# $tag (Text)
field-tag = Etiqueta { $tag }: cambiarla
field-tag-asks = ¿Qué dice su etiqueta?
field-tag-hint = El número o el nombre que escribe en el árbol. Cada árbol tiene el suyo.
# $tree (Text): its number
field-tag-twice = El árbol { $tree } ya tiene esta etiqueta. Escriba otra.

## La respuesta
field-more = Pasos y precauciones
field-next = Siguiente árbol, mismo lugar

## Lo que se guarda
field-keeps = Desde su primer Continuar, lo que escriba se guarda en este dispositivo. No se envía nada.
# $trees (Text): how many
field-kept = Guardado aquí. Árboles: { $trees }.
field-to-be-sure = Guarde la lista.
field-keeps-nothing = Dentro de la página de otro sitio no se guarda nada. Guarde la lista antes de salir de esta página.
field-list = La lista hasta ahora
field-list-none = Todavía no hay ningún árbol respondido.
field-col-tag = Etiqueta
field-col-tree = Árbol
field-col-answer = Respuesta
field-save = Guardar la lista
field-open = Abrirla en la página de listas
field-new = Empezar otra lista
field-new-sure = La lista cambió desde que se guardó como archivo. Pulse otra vez y se olvida.
field-new-again = Pulse otra vez para olvidar la lista aquí. El archivo que guardó se queda.
field-forgotten = La lista se olvidó aquí.
# $tree (Text): its number
field-open-tree = El árbol { $tree } todavía no está respondido. No está en el archivo.
field-regions = Estos árboles están en más de un estado o país. Una lista tiene uno: guarde una lista para cada uno.
field-program = El programa también responde el archivo:
