### The gallery of plates.

gallery-title = Leaves, fruit and bark, drawn
gallery-description = Drawings of the leaf, fruit and bark of every tree of the list, made from its marks, and five trees beside each other that must not be confused.
gallery-lede = Drawn from the marks in our table: no portrait of one tree.
gallery-beside = Five that must not be confused
gallery-blades = Blades, needles, scales, and leaves divided twice
gallery-leaflets = Leaves of leaflets on one stalk
gallery-fruit = Fruit
gallery-bark = Bark of old stems
# $gallery-name (Text)
gallery-one-title = { $gallery-name }, drawn
# $gallery-name (Text)
gallery-one-description = { $gallery-name } of every tree of the list, drawn from its marks, with the marks in words.
