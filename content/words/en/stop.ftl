### A stop: why a professional is asked for, what to say on the phone, what can still be done.

stop-why = Why
# A sentence from a clause.
# $clause (Phrase): the start of a sentence
stop-sentence = { $clause }.
# In place of what a stop is for, where the group's size makes it one.
stop-own-rule = the group's own rule
stop-say = Say this on the phone
stop-what-it-is = What:
stop-how-big = Size:
stop-could-hit = Near:
stop-can-still = You can still
stop-until-they-come = Until they come

## What it is, how big it is, what it could hit
# $tree (Phrase)
# $latin (Text)
# $life (Phrase)
# $stems (Count)
stop-tree = { $tree } ({ $latin }), { $life }, { $stems ->
    [one] one stem
   *[other] { $stems } stems
}.
# $tree (Phrase)
# $latin (Text)
# $life (Phrase)
# $stems (Count)
# $signs (Phrase)
stop-tree-signs = { $tree } ({ $latin }), { $life }, { $stems ->
    [one] one stem
   *[other] { $stems } stems
}, with { $signs }.
# $size (Length)
# $height (Length)
stop-size-measured = { $size } across. Height measured, { $height }.
# $size (Length)
# $height (Length)
stop-size-used = { $size } across. Height not measured; we used { $height }.
# $thing (Phrase)
# $far (Length)
stop-thing = { $thing }, { $far } away
# $thing (Phrase)
stop-thing-open = { $thing }, distance not known
stop-not-checked = Not checked yet: they will look.

## Numbers for a professional
stop-for-professional = Numbers to hand to your professional
stop-head-what = What
stop-head-value = Value
stop-head-standing = Standing
stop-row-bark = Bark, one side
stop-row-crown = Crown across
stop-row-height = Height
stop-row-slips = Bark slips
stop-row-wish = Wish of the owner
stop-wish-snag = leave a snag, as tall as they judge right
stop-wish-dead = the tree dead; nothing need stay standing
stop-your-words = your words
stop-estimated = estimated
# $low (Text)
# $high (Text)
stop-estimated-from = estimated, { $low } to { $high }
stop-model = from climate or leaf-out, give or take 2 to 3 weeks

## What can be done without touching the tree
stop-measure = Measure the height: by its shadow, by angles or with a stick.
stop-move = Ask whether what is near can move.
stop-pictures = Take pictures of it, its base and what it could hit.
stop-hang-tag = Hang the tag, so that the next person stops too.
stop-line-stay-out = Stay out from under it, and keep others out.
stop-line-look = Look from a distance: which line, which pole number, does a branch touch?
stop-line-call = Call the line's owner, and say what you see.
stop-line-tag = Hang the tag where people come from.

## Why, a clause
# $away (Phrase)
# $zone (Length)
stop-because-line = { $away }; this tree can reach { $zone }
stop-because-line-open = a power or phone line is within reach, and how far is not known
# $away (Phrase)
# $slope (Percent)
stop-because-steep = { $away }, down a slope of { $slope } in 100
# $away (Phrase)
# $zone (Length)
stop-because-zone = { $away }, inside the { $zone } in which it can throw wood, and only felling is left
# $away (Phrase)
# $height (Length)
stop-because-lands = { $away }; a tree this tall can reach { $height }
# $signs (Phrase)
# $near (Phrase)
stop-because-weak = it has { $signs }, and { $near }
stop-because-unchecked = what it could hit is not checked
