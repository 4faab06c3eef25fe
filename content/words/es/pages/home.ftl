### The first page.

home-title = Mate en pie un árbol no deseado
home-description = Planee un anillo para un árbol no deseado que ha de morir en pie: método, ancho del anillo, día, minutos, alcance y precauciones, cada cosa con su fuente.
home-heading = Mate en pie un árbol no deseado. Déjelo para la fauna.
home-lede = Quite un anillo de corteza en las semanas en que se despega. Diga qué árbol es: aquí salen el anillo, los días, el trabajo y lo que podría golpear.
home-no-script = Aquí los scripts están desactivados, así que el formulario de abajo no puede responder. Guíese por esto:
home-without-script = [Todas las especies en una lista](species/), [un ejemplo resuelto](example/) y [cómo se hacen las respuestas](method/) no necesitan scripts.
home-species = Qué árboles
home-species-about = Cada árbol de la lista, y si le sirve un anillo.
home-articles-about = Qué hace un anillo, y qué aclarar antes de empezar.
home-example-about = Un árbol, de la cinta a la última visita.
home-method-about = Las reglas, en qué se apoyan y qué dejan fuera.
home-embed-about = Para un grupo que responde a sus vecinos.
