### What Spain says in other words than content/words/es/missing.ftl, by the trade's terms; its numbers have a decimal comma.

missing-pace-m = Cuente pasos: unos { $steps } de 0,75 m.
