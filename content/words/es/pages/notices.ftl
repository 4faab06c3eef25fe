### Whose work is in the calculator beside our own.

notices-title = Licencias de otros
notices-description = El código abierto con el que está hecha la calculadora.
notices-lede = La calculadora lleva código abierto de otros. Se lo agradecemos.
notices-own = El código propio de Slipbark está bajo MIT o Apache-2.0, a elección de usted. [Fuentes](sources/) dice de dónde vienen sus datos.
notices-words = La lista sale del registro de la propia compilación. [Todas las licencias enteras](notices.txt) están en un archivo, con la de la biblioteca estándar de Rust nombrada primero.
notices-table = Tabla: código de otros en la calculadora
notices-crate = Paquete
notices-version = Versión
notices-licence = Licencia
