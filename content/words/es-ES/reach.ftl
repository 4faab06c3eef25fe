### What Spain says in other words than content/words/es/reach.ftl, by the trade's terms; its numbers have a decimal comma.

reach-from-today = Desde el día del trabajo, ahí no hay sendero, asiento, campamento ni aparcamiento.
reach-crew = Quien trabaja ahí lleva casco, está a más de 15 ft (4,6 m) del otro y solo bajo una copa.
