### La página de una especie.

# $species-name (Text)
species-one-title = { $species-name }: cuándo y con qué ancho anillarlo
# $species-name (Text)
species-one-description = { $species-name }: cómo reconocerlo, si le conviene un anillo, cuándo se desprende la corteza, qué ancho tiene el anillo, hasta dónde puede caer y qué viene después.
# In the list of all trees.
# $tree (Text)
species-one-more = Todo sobre { $tree }
species-one-all = Todos los árboles
# $species-name (Text)
species-one-ask = Pregunte por su { $species-name }
species-one-suits = ¿Le conviene un anillo?
# The same in a word or two.
# $of (Suitability)
species-one-suits-short =
    .suitable = Sí
    .followup = Sí, si
    .conditional = Depende
    .not-alone = No solo
    .not-applicable = No
    .unknown = Primero el nombre
# Behind the word for a tree that asks for visits.
species-one-followup = vuelve: espere rebrotes o puentes
species-one-best = La corteza se desprende mejor
species-one-dead = Muertos en la temporada 3
# $low (Percent)
# $high (Percent)
species-one-dead-of = de { $low } a { $high } de cada 100
species-one-stands = Después, la mitad sigue en pie
# $low (Text)
# $high (Text)
species-one-years = de { $low } a { $high } años
species-one-know = ¿Es este árbol?
species-one-leaf = Hoja
species-one-twig = Ramita
species-one-fruit = Fruto
species-one-bark = Corteza de un tronco viejo
species-one-drawn = Dibujado con las señas de nuestra tabla, no de un árbol concreto. Donde hay dos formas, se dibuja la más común.
species-one-mistaken = Con qué se confunde
species-one-not-sure = Si tiene dudas, déjelo vivo y pregunte a su oficina de extensión.
species-one-no-marks = No tenemos señas de un solo árbol para este grupo: pregunte antes de trabajar.
species-one-wide = ¿Qué ancho, cuánto tiempo, hasta dónde?
species-one-wide-note = Para un tronco solo, sin nada al alcance, en un día en que la corteza se desprende. El terreno que debe quedar despejado después es de una altura y media alrededor. Los minutos son de una persona; la primera mirada va aparte.
species-one-across = Diámetro
species-one-ring = Anillo
species-one-minutes = Minutos
species-one-zone = Despejado después
# $method (Phrase)
species-one-no-ring = sin anillo: { $method }
species-one-near = ¿Y si hay un sendero cerca?
species-one-near-note = Diámetro del tronco y distancia del sendero. No hay cables cerca y el día es bueno.
species-one-by-month = ¿Y si viene en otro mes?
species-one-by-month-key = Cinco troncos, doce meses, nada al alcance
species-one-by-month-note = El día 15 de cada mes, en la mitad norte del mundo y sin lugar indicado. Un estado o una ciudad da fechas.
species-one-by-state = Cuándo se desprende mejor la corteza, estado por estado
species-one-by-state-key = Por el centro de cada estado, desde el más temprano
species-one-state = Estado o provincia
species-one-from-to = Mejores días, por lo general
species-one-state-note = Calculado con el clima de un lugar en el centro de cada uno. Entre sus ciudades puede variar dos semanas o más.
# What an outcome is in a table's cell.
# $of (Outcome)
species-one-outcome =
    .do = hágalo
    .wait = espere
    .other-method = otra manera
    .professional = alto: un profesional
    .cannot-tell = aún no se sabe
