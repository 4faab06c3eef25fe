### With no signal.

offline-description = Cómo funciona este sitio en un bosque sin señal.
offline-lede = Abra aquí una página cualquiera una vez con señal. El sitio se guarda entonces en este aparato, en el idioma que usted lee, y la calculadora, la lista y las páginas que las rodean funcionan sin ella.
offline-saved = El pie de cada página dice «Guardado en este aparato» solo después de comprobar que están todos los archivos.
offline-language = Un idioma se guarda cuando se ha leído con señal una de sus páginas; los demás no se traen.
offline-not-kept = Las páginas de cada árbol, las de la clave después de su primera pregunta, las láminas y los artículos no se guardan: léalos con señal.
offline-update = Una versión nueva espera hasta que usted pulse Actualizar. Hasta entonces se queda la vieja entera, nunca una mezcla.
offline-cleared = Algunos navegadores borran lo que los sitios guardaron cuando pasan unas semanas sin visita. Abra el sitio antes de salir.
offline-embedded = Dentro de la página de otro sitio esto no se promete.
offline-stick = Para una memoria USB hay [un solo archivo](slipbark-single.html) con todo dentro. Tráigalo mientras tenga señal.
