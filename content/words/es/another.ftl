### Pruebe con otro: tres marcas que se mueven a mano, y cuál era y cuál es entonces la respuesta.

another-title = Pruebe con otro día, distancia o grosor
another-title-no-day = Pruebe con otra distancia o grosor
another-move = Mueva una marca: la respuesta sigue.
another-back = Dejar como estaba
another-use = Usar estos datos
another-above = La tarjeta cambia ya. Los pasos y dibujos, cuando use estos datos.
another-now = ahora
another-changed = Cambia: { $what }.
another-and = { $first }; { $last }

## The three marks
another-day = Día del trabajo
another-far = { $thing }: distancia al tronco
another-far-if = Un sendero, si lo hubiera
another-nothing = nada cerca
another-size = Diámetro del tronco
another-size-of-several = Diámetro del tronco más grueso
another-year = todo el año

## What changed, from and to
another-day-change = día { $from } → { $to }
another-far-change = { $thing } { $from } → { $to }
another-far-if-change = nada cerca → un sendero a { $to }
another-size-change = tronco { $from } → { $to }
another-ring-change = anillo { $from } → { $to }
another-minutes-change = minutos { $from } → { $to }
another-people-change = gente { $from } → { $to }

## What a mark says to those who listen
another-value = { $value }, { $band }
another-beyond = más allá de la cinta
another-best = lo mejor
another-test = pruebe antes
another-mostly-tight = casi siempre pegada
another-bonding = pegándose
another-does-not-slip = no se despega
another-it-can-land = puede caer aquí
another-it-can-throw = puede lanzar madera aquí
another-keep-out = mantenga fuera a la gente
another-outside = fuera

## On the tapes
another-test-short = pruebe
another-both-ends = casi pegada
another-can-land = puede caer
another-can-throw = puede lanzar
another-can-throw-short = lanza
another-keep-out-short = fuera
another-trunk = tronco
another-look-first = { $topic }: mire antes
another-no-ring = { $topic }: sin anillo
another-year-aria = El año según la corteza: { $days }
another-far-aria = Cinta del alcance: puede caer hasta { $land } y lanzar madera hasta { $throw }
another-size-aria = Cinta del tronco en pulgadas y centímetros
