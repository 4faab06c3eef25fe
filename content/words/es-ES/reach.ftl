### What Spain says in other words than content/words/es/reach.ftl, by the trade's terms; its numbers have a decimal comma.

reach-from-today = Desde ese día, por años, ningún sendero, asiento, campamento ni aparcamiento a menos de { $zone }: muerto, cae cualquier día, se rompe y lanza madera más lejos que su altura.
reach-crew = Quien trabaja ahí lleva casco, está a más de 15 ft (4,6 m) del otro y solo bajo una copa.
