### The page of a group.

local-description = { $local-name }: a quién preguntar, reglas locales, árboles y meses, cada cosa con el día en que se revisó.
local-contacts = A quién preguntar
local-rules = Reglas de aquí
local-stricter = Más estricto aquí
local-months = No se corta ningún anillo en { $months }.
local-farther = Las distancias son para un árbol { $factor } veces más alto.
local-size = Los árboles de más de { $size } se dejan a un profesional.
local-trees = Árboles de aquí
