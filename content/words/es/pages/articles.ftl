### Articles: what stands around their texts, which are in content/articles.

articles-title = Guías
articles-description = Artículos cortos sobre anillos, corteza, árboles muertos y gente, cada afirmación con su fuente.
articles-lede = Artículos cortos. Cada afirmación tiene su fuente, y cada uno dice cuándo lo leyó alguien por última vez.
articles-all = Todos los artículos
articles-inside = En este artículo
articles-own = supuesto nuestro
articles-practice = práctica común, sin fuente
articles-sources = En qué se basa
articles-written = Escrito por
articles-by-the-project = El proyecto, a partir de { $count ->
    [one] { $count } fuente
   *[other] { $count } fuentes
}. Leído entero por última vez el { $read }.
articles-by = { $by }, a partir de { $count ->
    [one] { $count } fuente
   *[other] { $count } fuentes
}. Leído entero por última vez el { $read }.
articles-defers = Las reglas locales, los permisos y la palabra de un profesional con licencia están por encima de lo que aquí se escribe.
articles-other-language = Este artículo aún no está en español.
articles-calculator-later = La calculadora necesita JavaScript y WebAssembly. La página de cada árbol tiene sus números sin ellos.
articles-table = Tabla: { $title }
articles-note-of = Nota local, de { $by }
