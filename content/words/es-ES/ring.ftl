### What Spain says in other words than content/words/es/ring.ftl, by the trade's terms; its numbers have a decimal comma.

ring-head-part-standing = Cómo de firme
ring-head-stems-ring-at-least = Anillo, al menos
ring-row-at-least = Anillo, al menos
ring-at-least = al menos
ring-thorns = Quite las espinas de la franja de trabajo. Guantes gruesos y gafas de protección.
ring-step-test = Abra un trozo del tamaño de la mano. Si se rasga, pare: hoy no.
ring-tools = Herramientas: sierra de mano o cuchilla de dos mangos, espátula para corteza, raspador; guantes y gafas de protección.
ring-tools-thick = Herramientas: sierra de mano, mazo y formón para corteza, espátula para corteza, raspador; guantes y gafas de protección.
ring-tools-thin = Herramientas: cuchillo o cuchilla de dos mangos, raspador; guantes y gafas de protección.
ring-where-on-trunk = Al menos { $least }, de 0,9 a 1,4 m (3 a 4½ ft) de alto, en un tramo liso debajo de la rama viva más baja.
