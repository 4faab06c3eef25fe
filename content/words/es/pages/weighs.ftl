### What stands where the calculator can't.

weighs-heading = Qué toma en cuenta el plan
weighs-lede = La calculadora funciona dentro de esta página. Donde los scripts o WebAssembly están apagados no puede, y valen estos puntos.
weighs-reach = **Primero, qué podría golpear.** Un árbol anillado muere en pie y suelta madera durante años. Cerca de edificios, caminos, senderos, líneas eléctricas o el terreno de un vecino, déjelo a un profesional.
weighs-ring = **Anillo:** todo alrededor, entre la cintura y el pecho, sin corteza hasta la madera, y sin ninguna rama viva debajo.
weighs-when = **Cuándo:** mientras la corteza se despega. Corte primero un pedazo del tamaño de la mano. Si se rompe, espere.
weighs-after = **Después:** vuelva este año y el que viene. Quite los brotes de abajo del anillo y la corteza nueva que lo cruce.
weighs-ask = **Pregunte antes:** el dueño, su municipio y las reglas locales deciden si se puede matar un árbol.
