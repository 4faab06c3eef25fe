### Ask a person, report a mistake.

help-title = Preguntar a una persona, avisar de un error
help-description = Quién puede mirar su árbol, y cómo decirnos qué está mal en este sitio.
help-lede = Una página no puede mirar su árbol. Estas personas sí.
help-person = Preguntar a alguien
help-person-line = **Una línea cerca:** la compañía dueña. En muchos sitios viene gratis.
help-person-fall = **Podría golpear algo, o tiene un defecto:** un arborista con licencia o certificado, que pueda verlo.
help-person-name = **¿Es este árbol, tiene que irse?** La oficina de extensión, una sociedad de plantas nativas, un forestal del estado.
help-person-law = **¿Se puede?** Su ciudad o condado en árboles junto a calles y agua, la autoridad de vida silvestre en nidos y murciélagos, y antes el dueño del terreno.
help-person-help = **Hay un herido, una línea en el suelo:** el número de emergencia, antes que nada.
help-mistake = Avisar de un error
help-mistake-say = Diga en qué página, qué dice, qué cree que es lo correcto y cómo lo sabe: una fuente, una cuenta suya, una foto de una cinta métrica. Los números malos y los malos consejos van primero.
help-mistake-data = De una respuesta, mande el enlace de su árbol o el archivo que hace la página. No lleva su nombre ni su lugar, salvo lo que usted escribió.
help-contact-to = Mándelo a
help-no-contact = Quien mantiene esta copia del sitio no ha puesto aquí ninguna dirección. Pregunte donde la encontró.
