### The key: which tree is it?

key-title = Which tree is it?
key-description = A key without photographs: a few looks at leaf, twig, fruit and bark, then the trees that fit, with the marks that tell them apart.
# $key-leaves (Text)
key-one-title = Which tree is it? { $key-leaves }
# $key-leaves (Text)
key-one-description = A key for trees by leaf, twig, fruit and bark: { $key-leaves }.
key-lede = Look at a twig with four leaves or more. Answer what you see, never what you expect.
key-home-about = A few looks at leaf, twig and fruit.
key-leaves = How do the leaves stand on the twig?
key-leaves-look = Look where leaf and twig meet. A leaf has a bud there, a leaflet has none.
key-kind = What is one leaf?
key-kind-look = All that hangs on one bud is one leaf.
# How many trees are left.
# $count (Count)
key-left =
    { $count ->
        [one] { $count } tree of our table fits so far.
       *[other] { $count } trees of our table fit so far.
    }
key-cant-tell = I can’t tell
key-none = None of these
key-again = Begin again
# Before somebody snaps or crushes anything; behind it the trees and what they do.
key-touch = Before you snap or crush anything: it may be one that harms. Leave this out if you have no gloves.
# $tree (Text)
# $what (Text)
key-hurts = { $tree }: { $what }
# $tree (Text)
key-named = Of our table, only { $tree } fits
# $count (Count)
key-fit =
    { $count ->
        [one] { $count } tree of our table fits
       *[other] { $count } trees of our table fit
    }
key-named-more = Each mark that led here was read in a source. Other trees may share them: hold yours against all that its page says before you work. If one mark is off, do not ring it.
key-one-more = Some marks that led here we know only from memory. Do not ring it on them: ask your extension office.
key-some-more = The marks so far do not part them. Look at what tells each one. If you are not sure, do not ring it: ask your extension office.
key-telling = Telling mark:
key-remembered = * general knowledge, not read in a source.
key-not-listed = Not on our list: we answer nothing for it.
key-ask = Do not ring it: ask
key-ask-more = Nobody should kill a tree on a guess. Ask your extension office, a forester or a botanist which tree it is.
key-ask-take = Take along a twig with leaves, a fruit and a bud, or a clear picture of each and of the bark. Do not touch a plant that may be poison ivy or poison sumac.
