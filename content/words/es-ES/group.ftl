### What Spain says in other words than content/words/es/group.ftl, by the trade's terms; its numbers have a decimal comma.

group-settings-left-out = Ahora no se pueden usar los ajustes del grupo de esta página. Lo que sigue no trae nada de sus contactos y ordenanzas municipales.
