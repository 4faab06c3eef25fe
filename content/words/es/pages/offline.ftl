### With no signal.

offline-description = Cómo funciona este sitio en un bosque sin señal.
offline-lede = Abra aquí una página cualquiera una vez con señal. El sitio se guarda entonces en este aparato, en el idioma que usted lee: la calculadora, la lista, las páginas que las rodean, y las páginas de árboles y los artículos que usted ha leído.
offline-saved = El pie de cada página dice «Guardado en este aparato» solo después de comprobar que están todos los archivos.
offline-language = Un idioma se guarda cuando se ha leído con señal una de sus páginas; los demás no se traen.
offline-once-read = Las páginas de cada árbol, las de la clave después de su primera pregunta, las láminas y los artículos se guardan cuando usted los ha leído con señal, o todos si lo pide más abajo.
offline-update = Una versión nueva espera hasta que usted pulse Actualizar. Hasta entonces se queda la vieja entera, nunca una mezcla.
offline-cleared = Algunos navegadores borran lo que los sitios guardaron cuando pasan unas semanas sin visita. Abra el sitio antes de salir.
offline-embedded = Dentro de la página de otro sitio esto no se promete.
offline-stick = Para una memoria USB hay [un solo archivo](slipbark-single.html) con todo dentro. Tráigalo mientras tenga señal.
offline-absent = Esta página no está en este aparato, porque no se leyó aquí con señal:
offline-kept-title = Páginas guardadas en este aparato
offline-kept-some = De { $pages } páginas de árboles, clave, láminas y artículos en este idioma, { $kept } están en este aparato: { $size } MB. Leídas hasta ahora: { $read }.
offline-kept-whole = Las { $pages } páginas de árboles, clave, láminas y artículos en este idioma están en este aparato: { $size } MB. Leídas hasta ahora: { $read }.
offline-takes = Para guardar todas se traen { $missing } más. Ocupan { $size } MB en este aparato.
offline-keep-all = Guardar todas las páginas
offline-only-read = Guardar solo lo que leí
offline-no-room = No hay espacio en este aparato para todas las páginas. Lo que usted ha leído sigue guardado.
offline-no-room-before = Usted pidió todas las páginas, pero no hubo espacio para todas las de esta versión. Las que ha leído están guardadas.
offline-broke = No llegaron todas las páginas: { $file } no llegó, o fue cambiado en el camino. Lo que llegó queda guardado. Pulse otra vez para el resto.
offline-first-update = Hay una versión nueva. Pulse primero Actualizar; sus páginas se guardan después.
offline-which = Páginas que usted ha leído
