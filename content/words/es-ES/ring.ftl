### What Spain says in other words than content/words/es/ring.ftl, by the trade's terms; its numbers have a decimal comma.

ring-head-part-standing = Cómo de firme
ring-row-at-least = Anillo, al menos
ring-at-least = al menos
ring-thorns = Quite las espinas de la franja de trabajo. Guantes gruesos y gafas de protección.
ring-step-test = Abra un trozo del tamaño de la mano. Si se rasga, pare: hoy no.
ring-tools = Sierra de mano o cuchilla de dos mangos, espátula para corteza, raspador; casco, guantes y gafas de protección.
ring-tools-thick = Sierra de mano, mazo y formón para corteza, espátula para corteza, raspador; casco, guantes y gafas de protección.
ring-tools-thin = Cuchillo o cuchilla de dos mangos, raspador; casco, guantes y gafas de protección.
ring-where-on-trunk = Al menos { $least }, de 3 a 4½ ft de alto, en un tramo liso debajo de la rama viva más baja.
ring-where-on-trunk-metric = Al menos { $least }, de 0,9 a 1,4 m de alto, en un tramo liso debajo de la rama viva más baja.
ring-crew = A 15 ft (4,6 m) del otro, y solo bajo una copa.
