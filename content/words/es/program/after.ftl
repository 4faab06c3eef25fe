### Lo que solo el programa dice del tiempo después del trabajo: nombra sus opciones.

after-rate-to-use = Con --own-rate el plan se hace con él.
after-no-own-rate = --own-rate necesita dos anillos en --found con minutos, con el mismo día en ringed_on y en visited_on.
# $typed (Text)
after-not-an-area = --area { $typed }: diga una parte de la propiedad y cuánta tierra es, como "Bosque norte=12 acres" o "Bosque norte=5 ha".
# $typed (Text)
after-not-a-closure = --closure y --floor { $typed }: diga una proporción de 1 a 99 %, como "Bosque norte=85%" para una parte que --area nombra, y --floor 60%.
# $unit (Text)
after-say-closure = Si hay allí otros árboles, diga cuánto cubren todos: --closure "{ $unit }=85%".
after-say-spacing = Esa distancia es un supuesto nuestro: otra con --spacing "8 ft".
# $typed (Text)
after-not-a-spacing = --spacing { $typed }: nombre la distancia entre dos árboles que se plantan, de 0,3 a 30 m, como "8 ft" o "2.5 m".
