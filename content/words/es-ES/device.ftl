### What Spain says in other words than content/words/es/device.ftl, by the trade's terms; its numbers have a decimal comma.

device-timed-kept = Guardado en este dispositivo, para todos los árboles de esta página.
device-draft-lead = Borrador en este dispositivo.
device-forgotten-more = No hay borrador en este dispositivo. Lo que siga escribiendo se guarda otra vez.
