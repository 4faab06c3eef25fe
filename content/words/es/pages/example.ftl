### A worked example.

example-title = Un ejemplo resuelto
example-description = Un árbol inventado y su respuesta entera, con dibujos, precauciones y cálculos, como la da la calculadora.
example-lede = El árbol y su seto son inventados. La respuesta es de la calculadora misma, escrita en esta página cuando se hizo el sitio; no necesita scripts.
example-asked = Pregunta: arce noruego, 14 1/2 pulgadas de diámetro, el 12 de junio de 2027; un sendero a 200 pies, ninguna línea eléctrica cerca.
