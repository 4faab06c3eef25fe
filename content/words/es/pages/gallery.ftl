### La galería de láminas.

gallery-title = Hojas, frutos y corteza, dibujados
gallery-description = Dibujos de la hoja, el fruto y la corteza de cada árbol de la lista, hechos de sus señas, y cinco árboles lado a lado que no se deben confundir.
gallery-lede = Dibujados con las señas de nuestra tabla: no son retratos de un árbol.
gallery-beside = Cinco que no se deben confundir
gallery-blades = Láminas, agujas, escamas y hojas divididas dos veces
gallery-leaflets = Hojas de folíolos en un tallo
gallery-fruit = Fruto
gallery-bark = Corteza de troncos viejos
# $gallery-name (Text)
gallery-one-title = { $gallery-name }: dibujos
# $gallery-name (Text)
gallery-one-description = { $gallery-name } de cada árbol de la lista, dibujos hechos de sus señas, con las señas en palabras.
