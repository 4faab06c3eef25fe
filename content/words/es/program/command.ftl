### What the program says on the command line.

command-stopped = Detenido: { $why }
command-unreadable = { $file } no se puede leer. Dé el nombre de un archivo JSON, o - para la entrada estándar
command-unreadable-settings = { $file } no se puede leer. Dé el nombre de un archivo JSON de ajustes
command-unreadable-input = la entrada estándar no se puede leer

command-not-utf8 = Línea { $line }: el texto no es UTF-8. Guarde el archivo como UTF-8.
command-not-object = Línea 1: una pregunta es un objeto JSON: empieza con { "{" } y tiene nombres y valores.
command-not-json = Línea { $line }, columna { $column }: esto no es JSON: { $why }.
command-no-such-name = Línea { $line }, columna { $column }: aquí no hay `{ $name }`. Quítelo, o use uno de estos: { $known }.
command-wrong-type = Línea { $line }, columna { $column }: { $why }.

command-usable = { $file } sirve para { $group }.
command-outside = species.list: La lista debe estar en la carpeta de los ajustes, o en una de dentro: sin «..», sin ruta desde la raíz, sin un enlace que salga. Póngala allí.
command-warning = { $told } (un aviso)
