### La página de una especie.

# $species-name (Text)
species-one-title = { $species-name }: cuándo y con qué ancho anillarlo
# $species-name (Text)
species-one-description = { $species-name }: cómo reconocerlo, si le conviene un anillo, cuándo se desprende la corteza, qué ancho tiene el anillo, hasta dónde puede caer y qué viene después.
species-one-picture = { $species-name }: su hoja, su fruto y su corteza en dibujos de líneas, hechos a partir de sus rasgos
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
species-one-bark = Corteza vieja
species-one-drawn = Dibujado con las señas de nuestra tabla, no de un árbol.
species-one-mistaken = Con qué se confunde
species-one-not-sure = Matar por equivocación un árbol nativo es el peor error. Si tiene dudas, déjelo vivo y pregunte en su oficina de extensión.
species-one-no-marks = No tenemos señas de un solo árbol para este grupo: pregunte antes de trabajar.
species-one-wide = Anillo, minutos, terreno
species-one-wide-note = Para un tronco solo en un buen día. Deje libre después una altura y media alrededor.
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
species-one-by-state = Cuándo se desprende mejor la corteza
# $first (Text)
# $last (Text)
# $count (Count)
species-one-by-state-key = Franja 1: { $first }. Franja { $count }: { $last }.
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
species-one-band = Franja
# $species-name (Text)
species-one-bands-drawn = { $species-name }: los mejores días de cada franja en un año; la tabla de abajo los dice
# $size (Text)
# $far (Text)
species-one-near-from = { $size } de ancho: un sendero a menos de { $far } es de un profesional
# $size (Text)
species-one-near-never = { $size } de ancho: a cada una de estas distancias es de un profesional
species-one-after-cut = Qué hace después de un corte
species-one-stumps = Tocones que rebrotan
# $shares (Text)
species-one-stumps-of = { $shares } de cada 100
species-one-stumps-note = De modelos de crecimiento de los Estados Unidos, para tocones de tallos cortados: un límite superior para un anillo.
species-one-follows = Qué puede seguirle
# $light (Text)
# $water (Text)
species-one-wants = Estas nativas viven con lo que él tiene: { $light }, { $water }.
# $count (Count)
species-one-native-tree =
    { $count ->
        [one] Árbol, nativo en { $count } estado o provincia.
        [many] Árbol, nativo en { $count } estados y provincias.
       *[other] Árbol, nativo en { $count } estados y provincias.
    }
# $count (Count)
species-one-native-shrub =
    { $count ->
        [one] Arbusto, nativo en { $count } estado o provincia.
        [many] Arbusto, nativo en { $count } estados y provincias.
       *[other] Arbusto, nativo en { $count } estados y provincias.
    }
# $count (Count)
species-one-listed-tree =
    { $count ->
        [one] Árbol, registrado en { $count } estado o provincia, también plantado.
        [many] Árbol, registrado en { $count } estados y provincias, también plantado.
       *[other] Árbol, registrado en { $count } estados y provincias, también plantado.
    }
# $count (Count)
species-one-listed-shrub =
    { $count ->
        [one] Arbusto, registrado en { $count } estado o provincia, también plantado.
        [many] Arbusto, registrado en { $count } estados y provincias, también plantado.
       *[other] Arbusto, registrado en { $count } estados y provincias, también plantado.
    }
# $count (Count)
species-one-branches = Orugas en { $count } de cada 100 ramas vistas, sobre todo en el este.
# $count (Count)
species-one-kinds = Su género alimenta a { $count } clases de mariposas y polillas en los estados del Atlántico medio.
species-one-follows-note = Primero las nativas en más lugares. Pregunte a su sociedad de plantas nativas cuál es nativa donde usted está: un árbol nativo en un estado no lo es en todo el estado, y no todos se venden.
species-one-follows-memory = Cuánta luz y agua toma el árbol mismo es saber general, no leído en una fuente.
species-one-follows-from = Fuentes:
species-one-instead = En vez de un anillo
species-one-zone-note = Para un tronco solo, sin nada a su alcance. El terreno que hay que dejar libre después es de una altura y media alrededor.
species-one-states = Qué estados, qué franja
species-one-no-bands = De este árbol no tenemos fechas por estado. Antes de cada anillo abra un pedazo de prueba del tamaño de la mano: siga solo si la corteza sale limpia.
