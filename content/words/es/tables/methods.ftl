### De qué se midieron los minutos de otros métodos (content/rules/method_minutes.csv), y los nombres de lo que no es una fuente.

minutes-coronel2014 =
    .of = árboles chicos tumbados con motosierra en un aclareo, de 0.07 metros cúbicos cada uno
minutes-campu2017 =
    .of = píceas y abetos grandes de montaña entre dos personas, de lo que una quinta parte es cortar
source-own =
    .label = supuesto nuestro
source-practice =
    .label = práctica común, sin fuente
source-you =
    .label = lo que usted nos dijo
