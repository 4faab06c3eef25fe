### Privacy.

privacy-title = Privacidad
privacy-description = Qué envía y qué guarda este sitio.
privacy-lede = Nada de lo que usted escribe sale de esta página.
privacy-browser = Las respuestas se calculan en su navegador. No hay cuentas ni servidor que calcule nada.
privacy-position = Dónde está usted se le pregunta a su aparato solo cuando pulsa «Usar mi posición». Se pone en el formulario, y ni se envía ni se guarda.
privacy-town = Una población se busca en la lista de su país, que viene de este sitio como archivo entero: el nombre que usted escribe no se envía.
privacy-others = Sin cookies, sin rastreadores, sin letras ni archivos de nadie más. En la página de otro grupo la calculadora puede traer los ajustes de ese grupo, de la dirección que la página nombra; nada de lo que usted escribe va con eso.
privacy-kept = Se guardan en este aparato: los archivos del sitio, para que funcione sin señal; los colores de página, si usted los elige; un borrador de lo que escribe sobre un árbol, un borrador de una lista de árboles y los árboles que usted cronometró, cada cosa solo si pulsa el botón que la guarda; y desde su primer Continuar en el bosque, árbol por árbol, los árboles que escribe allí. La página lo dice, y tiene botones que olvidan cada una.
privacy-kept-without = Se guardan en este aparato: los colores de página, si usted los elige; un borrador de lo que escribe sobre un árbol, un borrador de una lista de árboles y los árboles que usted cronometró, cada cosa solo si pulsa el botón que la guarda; y desde su primer Continuar en el bosque, árbol por árbol, los árboles que escribe allí. La página lo dice, y tiene botones que olvidan cada una.
privacy-link = Un enlace a una pregunta lleva lo que usted escribió y la región: ni posición ni temperaturas. Lo que está detrás del # de una dirección no se envía a ningún servidor.
privacy-forget = Para olvidarlo todo, borre los datos de este sitio en los ajustes de su navegador.
privacy-server = Quien maneja el servidor de donde vienen estos archivos ve, como en cualquier sitio, qué archivos se pidieron y desde qué dirección de red.
