### La página de toda una lista de árboles, como está antes de abrir una lista.
trees-title = Toda una lista de árboles
trees-description = Abra una hoja de cálculo de árboles, guardada como CSV: cuáles se pueden anillar esta temporada, en qué día, cuáles van a un profesional y qué hay por corregir.
trees-lede = Entra una hoja de cálculo, sale el trabajo de una temporada: qué árboles en qué día, cuáles van a un profesional y qué falta corregir.
trees-open = Abrir una lista
trees-sample = Abrir la muestra
trees-nothing-sent = No se envía nada: su archivo es la única copia.
trees-sample-is = La muestra es una propiedad inventada de 300 árboles.
trees-stop = Detener
trees-without-script = Esta página necesita scripts. Sin ellos, el programa hace lo mismo: slipbark plan trees.csv
trees-crashed = No funcionó: la lista necesita más memoria de la que hay, o algo falló. Su archivo está como lo dejó. Ábralo otra vez.
trees-too-large = Este archivo pasa de 10 MB. Guarde una parte, por sitio o por especie; la línea de comandos lo toma entero.
trees-unreadable = El archivo no se pudo leer.
# $file (Text)
trees-saved = { $file } está en sus descargas.
trees-formats = Una lista es una hoja de cálculo guardada como CSV. Tiene una fila por árbol: la especie, y un diámetro o un contorno. Una etiqueta, el lugar y lo que el árbol podría golpear mejoran el plan. Las demás columnas quedan como están.
trees-home = Toda una lista de árboles
trees-home-about = Entra una hoja de cálculo, sale el trabajo de una temporada.
trees-nav = Lista
