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
trees-stopped = Detenido. La lista está como la dejó.
trees-keep = Guardar aquí un borrador
trees-forget = Olvidar el borrador
trees-go-on = Seguir con él
trees-not-kept = Aquí no se guarda nada: descargue para conservar.
# $time (Text)
trees-kept = Borrador guardado en este dispositivo a las { $time }. Descargue para conservar.
# $time (Text)
# $row (Text): the number of a row
trees-kept-row = Borrador guardado en este dispositivo a las { $time }, hasta la fila { $row }. Descargue para conservar.
trees-may-go = El navegador puede borrarlo cuando necesite espacio.
# $file (Text)
# $time (Text)
trees-draft = Borrador de { $file }, guardado el { $time }.
trees-draft-refused = Este navegador no guarda nada para esta página: una ventana privada, o su configuración. El archivo es la única copia: descargue para conservar.
trees-draft-full = No queda espacio en este dispositivo para el borrador. Descargue para conservar.
# $time (Text)
trees-draft-stays = El borrador de las { $time } se queda.
trees-draft-newer = Una versión más nueva de esta página guardó este borrador. Cargue la página otra vez.
trees-draft-blocked = Otra pestaña tiene una versión anterior de esta página. Ciérrela y pulse otra vez.
trees-draft-other = Otra pestaña guarda el borrador de esta lista, o lo olvidó. Lo que cambie aquí no se guarda.
