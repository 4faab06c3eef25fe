### What Spain says in other words than content/words/es/confidence.ftl, by the trade's terms; its numbers have a decimal comma.

confidence-widths-differ = ; los anchos publicados van de 1 in (2,5 cm) al diámetro del tronco
confidence-mistake = Matar por equivocación un árbol autóctono es aquí el peor error. Busque antes la seña.
confidence-native = { " " }(autóctono)
confidence-all-away = con todo lo que cuenta a { $distance } al menos
