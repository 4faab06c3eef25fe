missing-give = Dar
missing-look-this-far = Mire hasta aquí
missing-go-round = Dé toda la vuelta, cuesta arriba y cuesta abajo.
missing-look-up = Mire hacia arriba: los cables se esconden en las copas.
missing-pace-ft = Cuente pasos: unos { $steps } de 2½ ft.
missing-pace-m = Cuente pasos: unos { $steps } de 0.75 m.
missing-what-counts = Cuenta todo lo que esté dentro de { $within } del tronco: edificios, calles, senderos, cables, el terreno y los árboles del vecino.
missing-how-far = ¿Cuánto es { $within }?
missing-if = Si { $conditions }:
missing-only-if = Esto vale solo si es así. Hasta saberlo, no es la respuesta de este árbol.
missing-otherwise-holds = Esto vale si no es así.
missing-or-professional = Si hay algo: déjelo a un profesional o al dueño de la línea.
missing-methods-if-clear = solo si no está cerca nada que pudiera golpear

missing-list = no se revisó qué hay dentro de { $within }
missing-distance = no se sabe a qué distancia está
missing-line = no se contestó si hay una línea aérea dentro de { $within }
missing-height = mida primero la altura: sin ella no se sabe qué podría golpear
missing-under = no se midió si mide menos de { $height }
missing-clone = no se dijo si se pueden anillar todos los troncos del clon
missing-wilt = no se dijo en qué estado o provincia está, y puede haber marchitez del roble
missing-species = no se sabe qué especie es

missing-do-list = Diga lo más cercano que podría golpear, o que no hay { reach-counts } dentro de { $within }.
missing-do-distance = Mida a qué distancia está cada cosa.
missing-do-line = Mire hacia arriba: ¿hay alguna línea aérea dentro de { $within }?
missing-do-height = Mida la altura.
missing-do-clone = Busque todos los troncos del clon y diga si se pueden anillar todos.
missing-do-wilt = Elija el estado o la provincia: con eso se contesta.
missing-do-species = Averigüe la especie.

missing-if-nothing = no hay { reach-counts } dentro de { $within }
missing-if-nothing-else = no hay otra cosa que pudiera golpear dentro de { $within }
missing-if-no-line = no hay línea aérea dentro de { $within }
missing-if-under = el árbol mide menos de { $height }
missing-if-clone = se pueden anillar todos los troncos del clon
missing-if-no-wilt = no hay marchitez del roble donde está
missing-if-suits = es una especie a la que un anillo le sirve
