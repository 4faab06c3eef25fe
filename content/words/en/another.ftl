### Try another: three marks that are moved by hand, and what the answer then was and is.

another-title = Try another day, distance or size
# Where the bark of a day does not matter.
another-title-no-day = Try another distance or size
another-move = Move a mark. The answer follows.
# The buttons: as it was asked; into the form.
another-back = Put it back
another-use = Use these
# What stands above and below the marks is not drawn anew while they move.
another-above = The card follows. Steps and drawings do when you use these.
# For those who listen, between the old word and the new one.
another-now = now
# $what (Phrase): one or more of the changes below
another-changed = Changed: { $what }.
# Between two changes.
# $first (Phrase): what stands so far
# $last (Phrase)
another-and = { $first }; { $last }

## The three marks
another-day = Day of the work
# $thing (Phrase): reach-target-short, as a heading
another-far = { $thing }, from the trunk
# Where nothing is near: how near could a path be?
another-far-if = A path, if there were one
another-nothing = nothing near
another-size = Trunk, across
another-size-of-several = Thickest trunk, across
# The twelve months were asked about, not a day.
another-year = the whole year

## What changed, from and to
# $from (Text)
# $to (Text)
another-day-change = day { $from } → { $to }
# $thing (Phrase): reach-target-short
# $from (Text)
# $to (Text)
another-far-change = { $thing } { $from } → { $to }
# $to (Text)
another-far-if-change = nothing near → a path at { $to }
# $from (Text)
# $to (Text)
another-size-change = trunk { $from } → { $to }
# $from (Text)
# $to (Text)
another-ring-change = ring { $from } → { $to }
# $from (Text)
# $to (Text)
another-minutes-change = minutes { $from } → { $to }
# $from (Text)
# $to (Text)
another-people-change = people { $from } → { $to }

## What a mark says to those who listen
# $value (Text)
# $band (Phrase): one of the words below
another-value = { $value }, { $band }
another-beyond = beyond the tape
another-best = best
another-test = test first
another-mostly-tight = mostly tight
another-bonding = bonding
another-does-not-slip = does not slip
another-it-can-land = it can land here
another-it-can-throw = it can throw wood here
another-keep-out = keep people out
another-outside = outside

## On the tapes
# Where there is hardly any room.
another-test-short = test
another-both-ends = mostly tight
another-can-land = can land
another-can-throw = can throw
another-can-throw-short = throw
another-keep-out-short = out
another-trunk = trunk
# $topic (Phrase): season-topic
another-look-first = { $topic }: look first
# $topic (Phrase): season-topic
another-no-ring = { $topic }: no ring
# $days (Phrase): a word and its days, several behind commas
another-year-aria = The year by its bark: { $days }
# $land (Text)
# $throw (Text)
another-far-aria = Reach tape: it can land within { $land }, and throw wood as far as { $throw }
another-size-aria = Trunk tape in inches and centimetres
