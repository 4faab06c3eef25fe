### What changed.

changes-description = Qué cambió en las respuestas y en el sitio, versión por versión.
changes-in-english = Esta lista está en inglés.
changes-none = Todavía no hay otra versión: esta es la primera.
