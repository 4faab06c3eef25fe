### The page of sources.

sources-page-title = Fuentes
sources-page-description = Cada fuente en que se apoya un número o una precaución, qué parte se leyó y qué tan firme es.
sources-page-lede = { $source-count } fuentes, según para qué se usan. De cada una: qué parte se leyó, y lo más firme que puede ser un número tomado de ella.
sources-page-find = Autor, título u otras palabras
sources-page-groups = Según para qué se usan
sources-page-files = Para programas de referencias: [BibTeX](sources/slipbark.bib), [CSL-JSON](sources/slipbark.json).
sources-page-own = Supuesto nuestro
sources-page-own-is = Un número o una regla que nadie ha publicado. Se dice dondequiera que se usa.
sources-page-practice = Práctica común
sources-page-practice-is = Lo que la gente del oficio hace y enseña, sin una fuente que nombrar.
sources-page-you = Usted
sources-page-you-is = Lo que usted midió o dijo.
sources-page-rules = La tabla que elige un método tiene { $rule-count } filas. Lo que dicen { $rules-print } de ellas está impreso en una fuente; { $rules-practice } son práctica común, sin fuente; { $rules-own } son nuestras, en todo o en parte. Donde una fila se comprueba con una pregunta que repite sus propias celdas, eso muestra un descuido nuestro y no es prueba de fuera.
sources-page-places = Lugares
sources-page-places-are = Dos clases de archivos se traen solo cuando se pregunta por un lugar. Tienen licencias propias.
sources-page-climate = Clima
sources-page-climate-is = WorldClim 1.4, 1960–1990: { $journal }, CC BY-SA 4.0. Cambios: muestreado en { $climate-count } estaciones, redondeado a 0.1 °C, un lugar con fallas quitado. Estaciones: historial de la NOAA Integrated Surface Database, obra del gobierno de los Estados Unidos.
sources-page-towns = Poblaciones
sources-page-towns-are = GeoNames, geonames.org, CC BY 4.0. Cambios: { $town-countries } países, poblaciones de 5,000 habitantes o más (1,000 en los Estados Unidos y Canadá), posiciones a 0.01°, habitantes por clase de tamaño, cuatro nombres locales añadidos, claves de regiones pasadas a ISO 3166-2. No hay altitudes.
