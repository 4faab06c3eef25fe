ring-spared-unproven = La práctica común dice que el tronco que se deja sigue vivo y los anillados mueren. No encontramos ningún ensayo: no está probado.
ring-do = Haga
ring-twin-trunk = El dibujo del tronco en una tabla
ring-head-part-part = Parte
ring-head-part-us = EE. UU.
ring-head-part-metric = Métrico
ring-head-part-standing = Qué tan firme
ring-head-stems-stem = Tronco
ring-head-stems-across = Diámetro
ring-head-stems-ring-at-least = Anillo, mínimo
ring-head-stems-better = Mejor
ring-head-stems-what-to-do = Qué hacer
ring-row-across = Diámetro del tronco
ring-row-bark = Corteza, un lado
ring-row-inside = Bajo la corteza
ring-row-at-least = Anillo, por lo menos
ring-row-better = Anillo, mejor
ring-bark = corteza

## On the drawing of the trunk
ring-bare = pelado
ring-at-least = por lo menos
ring-trunk-across = { $size } de diámetro
ring-up = a { $height }
ring-trunk-aria = Una persona que trabaja junto al tronco, a escala. El anillo mide por lo menos { $least } de alto, mejor { $better }.

## On the drawing of the cut
ring-cut-bark = corteza { $size }
ring-cut-bare = raspado
ring-cut-wood = madera: aquí no se corta
ring-cut-living = la capa viva, que falta en el anillo
ring-cut-aria = El corte visto de lado: por la corteza y la capa viva, sin entrar en la madera

## Stems
ring-stems = Tronco por tronco
ring-keep-stem = déjelo vivo
ring-thorns = Quite las espinas de la franja de trabajo. Guantes gruesos y lentes de seguridad.
ring-step-shoots = Corte todas las ramas y los brotes verdes que haya debajo del anillo.
ring-step-limbs = Corte todas las ramas y los brotes verdes debajo del anillo. Uno que quede lo mantiene vivo.
ring-step-test = Abra un pedazo del tamaño de la mano. Si se rasga, pare: hoy no.
ring-step-score = Marque con corte dos líneas a nivel, separadas { $width }, solo en la corteza.
ring-step-score-thick = Marque con corte dos líneas a nivel, separadas { $width }, solo en la corteza: unos { $bark }, con mazo y formón.
ring-step-peel = Pele la corteza en toda la vuelta. Una tira que quede lo mantiene vivo.
ring-step-peel-live = Pele la corteza viva (unos { $live } de cada 100 de la vuelta) y un poco más allá. La muerta no necesita anillo.
ring-step-scrape = Raspe la capa resbalosa de la madera. Déjela descubierta.
ring-step-check = Revise la vuelta: ningún puente de corteza, ni en grietas ni pliegues.
ring-step-others = Repita en los otros; deje el { $stem }.
ring-step-leave = Deje el tronco { $stem }: es el que se queda.
ring-step-all = { $stems ->
    [one] Haga lo mismo en el único tronco.
   *[other] Haga lo mismo en los { $stems } troncos. Un solo tronco que se deje mantiene vivas las raíces.
}
ring-tools = Serrucho o cuchilla de dos mangos, espátula para corteza, raspador; casco, guantes y lentes de seguridad.
ring-tools-thick = Serrucho, mazo y formón para corteza, espátula para corteza, raspador; casco, guantes y lentes de seguridad.
ring-tools-thin = Cuchillo o cuchilla de dos mangos, raspador; casco, guantes y lentes de seguridad.
ring-estimated-poor = { $estimate }; dato flojo: mídalo
ring-where-on-trunk = Por lo menos { $least }, de 3 a 4½ ft de alto, en un tramo liso debajo de la rama viva más baja.
ring-where-on-trunk-metric = Por lo menos { $least }, de 0.9 a 1.4 m de alto, en un tramo liso debajo de la rama viva más baja.
ring-crew = A 15 ft (4.6 m) del otro, y solo bajo una copa.
