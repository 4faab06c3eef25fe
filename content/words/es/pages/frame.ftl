### The bare page that stands in a frame on another site.

frame-full = Abrir la página entera
