### Lo que el programa dice de sus órdenes y opciones.

help-program = Slipbark: un árbol, una respuesta.
help-after = Sin orden, sirve. En la carpeta del proyecto `cargo run --release` hace el programa y lo pone en marcha; lo que sigue a `--` va a él, como en: cargo run --release -- answer question.json --text
help-codes = Códigos de salida: 0 hecho; 1 falló, y el mensaje dice qué hacer; 2 no se entendió la orden o la pregunta.
help-usage = Uso:
help-options = Opciones
help-arguments = Argumentos
help-commands = Órdenes
help-help = Escribe esto
help-help-of = Escribe esto, o lo mismo de una orden
help-version = Escribe la versión
help-unless-said = { $value } si no se dice

help-about =
    .serve = Hace el sitio y lo sirve en este equipo
    .build = Escribe el sitio estático en una carpeta
    .answer = Responde la pregunta de FILE (JSON), o - para la entrada estándar
    .list = Responde cada fila de la lista de árboles de FILE (CSV), o - para la entrada estándar
    .plan = Planifica el trabajo de una temporada para la lista de árboles de FILE (CSV): qué árboles en qué día, y sus visitas
    .settings = Dice en palabras qué está mal en los ajustes de un grupo en FILE (JSON)
    .year = Dice cuándo se desprende la corteza en un lugar, para todas las especies o para una

help-serve =
    .port = El puerto en 127.0.0.1, al que nada fuera de este equipo puede llegar; 0 elige uno libre
    .dir = Sirve una carpeta hecha antes, tal como está
    .base = La ruta bajo la que estará el sitio
    .quiet = Escribe solo la dirección
    .lang = El idioma de las palabras: en, es, o una etiqueta como es-MX

help-build =
    .out = La carpeta para el sitio: vacía o nueva, o una que se hizo antes
    .npm = La carpeta para un paquete de npm: para programas en Node, y para páginas que hace un empaquetador
    .crate = La carpeta para un paquete de Rust con las tablas dentro, para otros programas
    .base = La ruta bajo la que estará el sitio
    .origin = El origen en el que estará, como https://trees.example.org: entonces las páginas dicen sus direcciones enteras, un mapa del sitio las lista, y las respuestas de un paquete para npm enlazan con las fuentes de allí
    .own = La carpeta de un grupo con artículos y fuentes propios: articles/es/NOMBRE.md, sources.csv
    .contact = Dónde avisan los lectores de un error: mailto: o https:
    .no-offline = Un sitio que no guarda nada en el dispositivo, y quita lo que uno anterior guardó
    .wordpress = Un complemento para WordPress con el sitio dentro, para ponerlo en wp-content/plugins
    .quiet = Escribe solo la carpeta
    .lang = El idioma de las palabras: en, es, o una etiqueta como es-MX

help-answer =
    .file = El archivo con la pregunta, o - para la entrada estándar
    .text = Palabras para personas en lugar de JSON: en breve, como la página lo muestra antes de desplegar nada
    .full = Con --text: toda la respuesta, con sus tablas, cálculos y fuentes
    .ics = Las visitas como archivo de calendario
    .settings = Un archivo con los ajustes propios de un grupo, bajo los que se responde
    .lang = El idioma de palabras y problemas: en, es, o una etiqueta como es-MX

help-reading =
    .columns = Un archivo de decisiones (JSON): qué contienen las columnas de la lista, donde ella pregunta; también --decisions
    .place = Dónde está la lista, para filas sin lugar: 42.36,-71.06,15 m, o una ciudad, como "Madison, WI"
    .region = El estado o país de la lista, como US-MA o GB
    .units = Unidades de los tamaños para los que la lista no dice ninguna: us o metric
    .settings = Un archivo con los ajustes propios de un grupo, bajo los que se responde
    .today = El día desde el que se cuentan los días, como 2027-05-01: hoy si no se dice
    .lang = El idioma de palabras y problemas: en, es, o una etiqueta como es-MX

help-list =
    .file = La lista, o - para la entrada estándar
    .csv = La lista como vino, con columnas plan_, en lugar de una línea de JSON por fila
    .whole = Con cada línea de JSON la respuesta entera: 31 kB por fila, 620 MB para 20 000
    .text = Palabras para personas: cuántas filas de cada clase, y qué corregir
    .first-row = El número de la primera fila, para un trozo de un archivo más largo

help-plan =
    .file = La lista
    .out = La carpeta para los archivos del plan
    .from = El primer día de la temporada, como 2027-05-01
    .to = Su último día
    .on = Días de la semana en que trabaja la cuadrilla: sat (sábado), o sat,sun
    .days = Días de trabajo, con una coma entre ellos
    .closed = Días cerrados, con una coma entre ellos
    .crew = Personas en cada día de trabajo; 4 si no se dice
    .teams = Cuadrillas en que trabajan
    .hours = Horas de un día de trabajo, desde llegar hasta irse; 3 si no se dice
    .ready = Minutos de un día de trabajo para llegar, hablar y traer las herramientas; 45 si no se dice, una suposición nuestra
    .pairs = Dos personas en cada árbol
    .slip = Anillar solo donde la corteza se desprende al menos con esta probabilidad, de 0.4 a 0.95; 0.4 si no se dice
    .share = Como mucho esta parte del área basal de cada unidad en la temporada, como 20%
    .area = Cuánta tierra es una parte de la propiedad: "Bosque norte=12 acres", "Bosque norte=5 ha"
    .closure = Cuánto de esa tierra está ahora bajo copas, de todos los árboles: "Bosque norte=85%"; las copas de la lista si no se dice
    .floor = Dejar al menos esta parte de esa tierra bajo copas, y dos quintos de su área basal; 60% si no se nombra
    .spacing = Entre dos árboles que se plantan donde murieron otros: 8 ft, 2.5 m; 10 ft o 3 m si no se dice
    .wage = Lo que cuesta una hora de trabajo: se escribe en el plan
    .nothing-within = Nada que cuente está a menos de una distancia de ningún árbol de una parte de la propiedad: "Old field=230 ft"
    .said-by = Quién lo dijo
    .whole-clone = Si se puede anillar cada tallo de los clones de una especie: "Black locust=yes", o "Black locust@Old field=no"
    .same-genus-near = Si hay cerca otros del género de una especie: "Scots pine=no"
    .keep = El plan.json de un plan anterior: sus días quedan salvo que algo obligue a cambiarlos
    .found = Lo que se encontró en las visitas (CSV: tree_id, visited_on, found, minutes, people, ringed_on, ring_width, note): el plan sigue adelante con ello y se dice qué parte murió
    .own-rate = Planificar con el ritmo propio del grupo, de los anillos cronometrados de --found
    .whole = Con el plan, lo que cada árbol añade a su cota

help-settings =
    .file = El archivo de ajustes
    .lang = El idioma de lo que se dice: en, es, o una etiqueta como es-MX

help-year =
    .place = Latitud, longitud y altitud, como 42.36,-71.06,15 m, o una ciudad, como "Madison, WI"
    .species = Una especie; todas si no se dice
    .year = Qué año, de 1990 a 2100; este si no se dice
    .csv = Una tabla en lugar de texto
    .lang = El idioma de las palabras: en, es, o una etiqueta como es-MX

help-unknown-option = Aquí no hay opción { $argument }.
help-unknown-command = No hay orden { $command }.
help-wrong-value = { $argument } no admite { $value }.
help-refused-value = { $argument } no admite { $value }: { $why }
help-missing-option = Falta: { $arguments }
help-conflict = { $argument } no va junto con { $other }.
help-no-value = { $argument } necesita un valor.
help-twice = { $argument } está dos veces.
help-did-you-mean = ¿Quiso decir { $names }?
help-more = Para más, escriba --help.
help-no-such-language = aquí no hay palabras de él: use { $known }
help-us-or-metric = es us o metric
help-contact-like = escríbala como mailto:arboles@example.org o https://example.org/errores
help-origin-like = escríbalo como https://trees.example.org; la ruta va en --base
help-path-like = empieza y termina con una barra y solo tiene letras, cifras, . _ ~ - entre barras, como /trees/
