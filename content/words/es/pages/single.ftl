### The page that carries everything in one file.

single-title = Un árbol, una respuesta
single-in-one-file = { $title } - Slipbark en un solo archivo
single-lede = Todo está en este solo archivo. No pide nada a ningún servidor y no guarda nada.
single-changed = Esta copia del archivo cambió en el camino, así que la calculadora no puede arrancar. Traiga el archivo otra vez.
single-older = La calculadora no puede arrancar aquí: este navegador no tiene DecompressionStream, que desempaca el archivo. Actualice el navegador, o abra el archivo en otro.
single-version = Versión { $version }, compilación { $build }. Aquí se conocen latitud y longitud; los nombres de poblaciones y la lista de fuentes están solo en el sitio.
single-licences = Código: MIT o Apache-2.0. Clima: WorldClim 1.4 (Hijmans y otros 2005), CC BY-SA 4.0, muestreado en estaciones y redondeado; estaciones: NOAA Integrated Surface Database.
