### How answers are made.

method-page-title = Método
method-page-description = Cómo se hace una respuesta, en qué orden y dónde se detiene.
method-page-lede = Una pregunta pasa por nueve pasos, en este orden. El primero que dice alto detiene los demás.
method-page-reach = **Alcance.** Hasta dónde puede caer el árbol, o madera de él, y qué hay dentro. La altura que se usa es la mayor del valor estimado.
method-page-bark = **Corteza.** Su grosor, medido por usted o estimado por especie y tamaño, con un intervalo.
method-page-ring = **Anillo.** Qué ancho tiene por lo menos y cuál es mejor, y dónde va en el tronco.
method-page-timing = **Tiempo.** Si la corteza se despega ese día, y cuándo se despegará la próxima vez.
method-page-method = **Método.** Nueve maneras de tratar un árbol, cada una recomendada, posible, desaconsejada o descartada.
method-page-outlook = **Pronóstico.** Cuántos árboles así habían muerto después de una, dos y tres temporadas, y si es probable que rebrote.
method-page-effort = **Trabajo.** Minutos para una persona: pocos, probables y muchos.
method-page-habitat = **Fauna.** Quién puede usar el árbol en pie, y cuánto tiempo puede durar en pie.
method-page-cautions = **Precauciones.** Qué preguntar, y a quién.
method-page-numbers = De dónde vienen los números
method-page-numbers-are = Cada número está en una tabla con su fuente, el lugar en esa fuente y qué tan firme es. Donde nadie ha publicado nada, la respuesta dice «supuesto nuestro». Todas las fuentes están en la [página de fuentes](sources/).
method-page-stops = Dónde se detiene
method-page-stops-line = Nunca dice que el trabajo puede seguir cerca de una línea, un camino o gente. Dice a quién preguntar.
method-page-stops-law = No conoce las leyes de su lugar. Las reglas locales, los permisos y las temporadas de anidación están por encima de cualquier respuesta de aquí.
method-page-stops-product = No nombra ningún producto ni dosis. Donde la vía es un herbicida, deciden la etiqueta del producto y un aplicador con licencia.
method-page-stops-dead = Un árbol muerto es más débil de lo que parece. Ninguna respuesta de aquí dice cuánto durará uno en pie, solo cuánto duraron otros.
method-page-same = La línea de comandos, la página y la llamada de JavaScript usan el mismo código y dan los mismos números.
