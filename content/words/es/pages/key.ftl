### La clave: ¿qué árbol es?

key-title = ¿Qué árbol es?
key-description = Una clave sin fotos: unas miradas a la hoja, la ramita, el fruto y la corteza, y luego los árboles que concuerdan, con las señas que los distinguen.
# $key-leaves (Text)
key-one-title = ¿Qué árbol es? { $key-leaves }
# $key-leaves (Text)
key-one-description = Una clave de árboles por hoja, ramita, fruto y corteza: { $key-leaves }.
key-lede = Mire una ramita con cuatro hojas o más. Responda lo que ve, nunca lo que espera.
key-home-about = Unas miradas a hoja, ramita y fruto.
key-leaves = ¿Cómo están las hojas en la ramita?
key-leaves-look = Mire donde la hoja se une a la ramita. Ahí la hoja tiene una yema; el folíolo no.
key-kind = ¿Qué es una hoja?
key-kind-look = Todo lo que cuelga junto a una yema es una sola hoja.
# How many trees are left.
# $count (Count)
key-left =
    { $count ->
        [one] { $count } árbol de nuestra tabla concuerda hasta ahora.
        [many] { $count } árboles de nuestra tabla concuerdan hasta ahora.
       *[other] { $count } árboles de nuestra tabla concuerdan hasta ahora.
    }
key-cant-tell = No sé decir
key-none = Ninguna de estas
key-again = Empezar de nuevo
key-touch = Antes de romper o machacar algo: puede ser uno que hace daño. Si no tiene guantes, déjelo.
# $tree (Text)
# $what (Text)
key-hurts = { $tree }: { $what }
# $tree (Text)
key-named = De nuestra tabla solo concuerda: { $tree }
# $count (Count)
key-fit =
    { $count ->
        [one] { $count } árbol de nuestra tabla concuerda
        [many] { $count } árboles de nuestra tabla concuerdan
       *[other] { $count } árboles de nuestra tabla concuerdan
    }
key-named-more = Cada seña que llevó aquí se leyó en una fuente. Otros árboles pueden tenerlas: compare el suyo con todo lo que dice su página antes de trabajar. Si una seña no concuerda, no lo anille.
key-one-more = Algunas señas que llevaron aquí solo las sabemos de memoria. No lo anille por ellas: pregunte en su oficina de extensión.
key-some-more = Las señas hasta aquí no los separan. Mire lo que distingue a cada uno. Si tiene dudas, no lo anille: pregunte en su oficina de extensión.
key-telling = Seña que lo distingue:
key-remembered = * saber general, no leído en una fuente.
key-not-listed = No está en nuestra lista: no respondemos nada sobre él.
key-ask = No lo anille: pregunte
key-ask-more = Nadie debe matar un árbol por adivinar. Pregunte en su oficina de extensión, a un forestal o a un botánico qué árbol es.
key-ask-take = Lleve una ramita con hojas, un fruto y una yema, o una foto clara de cada uno y de la corteza. No toque una planta que pueda ser hiedra venenosa o zumaque venenoso.
