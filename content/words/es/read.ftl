### Enlaces de una parte de la respuesta al artículo que la explica.

read-ring = Qué ancho, y por qué
read-season = Cuándo se despega la corteza
read-visits = Después del anillo
read-alive = ¿Está viva la corteza?
read-sprouts = Qué árboles responden desde las raíces
read-stops = Antes de empezar
read-dead = Árboles muertos en pie y gente
read-plant = Qué plantar después
