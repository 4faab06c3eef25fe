stop-why = Por qué
stop-sentence = { $clause }.
stop-own-rule = la regla propia del grupo
stop-say = Diga esto por teléfono
stop-what-it-is = Qué:
stop-how-big = Tamaño:
stop-could-hit = Cerca:
stop-can-still = Todavía puede
stop-until-they-come = Hasta que lleguen

stop-tree = { $tree } ({ $latin }), { $life }, { $stems ->
    [one] un tronco
   *[other] { $stems } troncos
}.
stop-tree-signs = { $tree } ({ $latin }), { $life }, { $stems ->
    [one] un tronco
   *[other] { $stems } troncos
}, con { $signs }.
stop-size-measured = { $size } de diámetro. Altura medida, { $height }.
stop-size-used = { $size } de diámetro. Altura sin medir; usamos { $height }.
stop-thing = { $thing }, a { $far }
stop-thing-open = { $thing }, a una distancia que no se sabe
stop-not-checked = Todavía no se revisó: ellos lo verán.

stop-for-professional = Números para darle al profesional
stop-head-what = Qué
stop-head-value = Valor
stop-head-standing = Qué tan firme
stop-row-bark = Corteza, un lado
stop-row-crown = Ancho de la copa
stop-row-height = Altura
stop-row-slips = Se despega la corteza
stop-row-wish = Deseo del dueño
stop-wish-snag = dejar un árbol muerto en pie, tan alto como lo crean bien
stop-wish-dead = el árbol muerto; nada tiene que quedar en pie
stop-your-words = sus palabras
stop-estimated = estimado
stop-estimated-from = estimado, { $low } a { $high }
stop-model = por el clima o la salida de las hojas, 2 a 3 semanas más o menos

stop-measure = Mida la altura: por su sombra, por ángulos o con un palo.
stop-move = ¿Se puede mover lo que está cerca?
stop-pictures = Tome fotos del árbol, de su base y de lo que podría golpear.
stop-hang-tag = Cuelgue la marca, para que también pare la siguiente persona.
stop-line-stay-out = No se ponga debajo, y que nadie más se ponga.
stop-line-look = Mire de lejos: qué línea, qué número de poste, ¿la toca una rama?
stop-line-call = Llame al dueño de la línea y diga lo que ve.
stop-line-tag = Cuelgue la marca por donde llega la gente.

stop-because-line = { $away }; este árbol puede llegar a { $zone }
stop-because-line-open = hay una línea de luz o de teléfono al alcance, y no se sabe a qué distancia
stop-because-steep = { $away }, cuesta abajo con { $slope } de cada 100
stop-because-zone = { $away }, dentro de { $zone }, hasta donde puede lanzar madera, y solo queda talar
stop-because-lands = { $away }; un árbol tan alto puede llegar a { $height }
stop-because-weak = tiene { $signs }, y { $near }
stop-because-unchecked = no se revisó qué podría golpear
