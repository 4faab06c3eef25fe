### The page with all trees.

species-page-title = Qué árboles
species-page-description = Todos los árboles y arbustos de la lista: si a cada uno le sirve un anillo, qué hace después de un corte y qué vale para tres grosores de tronco.
species-page-lede = { $species-count } árboles y arbustos: si a cada uno le sirve un anillo, y qué hace después de un corte.
species-page-find = Parte de un nombre
species-page-find-hint = En inglés, español o latín
species-page-show = ¿Le sirve un anillo?
species-page-letters = Por letra
species-page-tree = Árbol
species-page-after = Después de un corte
species-page-note = Abra un árbol para ver tres grosores de tronco, calculados por el código mismo de la calculadora. Se supone que no hay edificio, camino, sendero, línea eléctrica, lindero ni árbol de un vecino a menos de dos alturas, y un día en que la corteza se despega. La «zona» es una altura y media, con la altura que se usa: lo que está dentro decide antes que cualquier método. El método que se nombra es el primero, sin decir nada de herbicida: donde uno lo necesita, lo hace un aplicador con licencia. Donde falta saber un estado, un clon o un nombre, dice qué vale si se cumple su condición.
filter-told = Se muestran { $shown } de { $all }.
