### The bare page that stands in a frame on another site.

frame-full = Open the full page
