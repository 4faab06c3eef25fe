### What Spain says in other words than content/words/es/effort.ftl, by the trade's terms; its numbers have a decimal comma.

effort-no-rate-said =
    .too-few-trees = Mida el tiempo de dos árboles al menos: uno solo dice más del árbol que de usted.
effort-for = Para el ancho mejor: { $width }. La corteza agarrada, la corteza gruesa y el mal piso lo hacen más lento.
