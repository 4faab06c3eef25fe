### What Spain says in other words than content/words/es/form.ftl, by the trade's terms; its numbers have a decimal comma.

form-size-metric = A 1,3 m del suelo. Vale 36.5.
form-timed-keep = Guardarlos en este dispositivo
form-region-hint = Para la ley local, los meses de nidificación y las enfermedades.
form-point-hint = Las dos o ninguna. Se quedan en este dispositivo.
form-town-hint = Bastan dos letras. Se busca en este dispositivo.
form-position-hint = Solo se pide al presionar. Se queda en este dispositivo.
form-spring-stays = Necesita el lugar. Se queda en este dispositivo.
form-read-across = { $size } de diámetro ({ $girth } ÷ 3,1416)
