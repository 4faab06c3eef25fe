### Accessibility.

accessibility-description = Qué hace este sitio para que todos puedan usarlo, y cómo se comprueba.
accessibility-lede = La meta es WCAG 2.2, nivel AA, con cualquier ancho desde 280 píxeles y con el texto al doble de su tamaño.
accessibility-keyboard = Todo funciona solo con el teclado. Nada exige arrastrar, pasar por encima ni mantener pulsado.
accessibility-drawings = Cada dibujo tiene sus números al lado, en palabras o en una tabla.
accessibility-colour = El color nunca dice nada por sí solo: siempre hay una forma y una palabra.
accessibility-sun = El botón Sol da negro sobre blanco con líneas gruesas, para cuando el sol deslumbra.
accessibility-still = Nada se mueve, y nada se lleva el foco mientras usted escribe.
accessibility-checked = Cada versión se revisa con un comprobador automático y con anchos pequeños en un navegador real. Todavía no la ha probado ninguna persona que dependa de un lector de pantalla.
