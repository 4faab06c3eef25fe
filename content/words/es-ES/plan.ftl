### What Spain says in other words than content/words/es/plan.ftl, by the trade's terms; its numbers have a decimal comma.

plan-look-first = Un plan no es permiso para cortar. En cada árbol mire primero hacia arriba y alrededor: ningún cable, sendero, camino o lindero a menos de dos veces su altura. Lo que digan las ordenanzas municipales y un profesional va antes.
