### What is not known yet: what to find out, and the answer if it is so.

# Links to an empty field.
missing-give = Give
missing-look-this-far = Look this far
# How the ground is looked over, behind the pacing.
missing-go-round = Go all the way round, uphill and down.
missing-look-up = Look up: lines hide in crowns.
# A step of 2½ ft (common practice, no source).
# $steps (Count)
missing-pace-ft = Pace it: about { $steps } steps of 2½ ft.
# A step of 0.75 m (common practice, no source).
# $steps (Count)
missing-pace-m = Pace it: about { $steps } steps of 0.75 m.
# $within (Length)
missing-what-counts = Everything within { $within } of the trunk counts: buildings, roads, paths, lines, the neighbour’s land and trees.
# $within (Length)
missing-how-far = How far is { $within }?
# $conditions (Phrase)
missing-if = If { $conditions }:
missing-only-if = This holds only if it is so. Until you know, it is not this tree's answer.
missing-otherwise-holds = This stands if it is not so.
missing-or-professional = If something is: leave it to a professional, or to the line's owner.
missing-methods-if-clear = only if nothing that it could hit stands near

## What is missing, a clause
# $within (Length)
missing-list = what stands within { $within } is not checked
missing-distance = how far away it stands is not known
# $within (Length)
missing-line = whether an overhead line is within { $within } is not answered
missing-height = measure its height first: without it we can't tell what it could hit
# $height (Length)
missing-under = whether it is under { $height } tall is not measured
missing-clone = whether every stem of the clone can be ringed is not said
missing-wilt = which state or province it stands in is not said, and oak wilt may be there
missing-species = which species it is, is not known

## What to do about it
# $within (Length)
missing-do-list = List the nearest thing it could hit, or say that no { reach-counts } stands within { $within }.
missing-do-distance = Measure how far away each thing stands.
# $within (Length)
missing-do-line = Look up: is any overhead line within { $within }?
missing-do-height = Measure the height.
missing-do-clone = Find every stem of the clone, and say whether all can be ringed.
missing-do-wilt = Choose the state or province: that answers it.
missing-do-species = Find out the species.

## A condition, behind "If"
# $within (Length)
missing-if-nothing = no { reach-counts } lies within { $within }
# $within (Length)
missing-if-nothing-else = nothing else that it could hit lies within { $within }
# $within (Length)
missing-if-no-line = no overhead line is within { $within }
# $height (Length)
missing-if-under = the tree is under { $height } tall
missing-if-clone = every stem of the clone can be ringed
missing-if-no-wilt = oak wilt is not where it stands
missing-if-suits = it is a species that a ring suits
