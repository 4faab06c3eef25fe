### The whole sentence with its reason, and what stands beside it: folded under "How sure", whole in `--text --full`.

## Whether it is native where it stands
# $place (Phrase)
verdict-native-here = Native in { $place }: make sure that it is this tree, and ask why it must go.
# $land (Phrase)
verdict-native-parts = Native in parts of { $land }: make sure that it is this tree, and ask why it must go.
# $land (Phrase)
verdict-native-ask = Whether it is native in { $land } is doubtful: ask there.
# $land (Phrase)
# $place (Phrase)
verdict-native-elsewhere = Native in other parts of { $land }, not in { $place }.
# $land (Phrase)
verdict-native-not = Not native in { $land }.

## What stands beside the sentence
# $limit (Length)
# $act (Phrase)
verdict-near-over = Near a size limit: over { $limit } across, the answer would be to { $act }.
# $limit (Length)
# $act (Phrase)
verdict-near-under = Near a size limit: under { $limit } across, the answer would be to { $act }.
verdict-too-low = So low a height does not fit this trunk, confirmed or not: the taller one rules. Measure it again, or check the diameter.
verdict-ask-again = The height looks odd for this size: feet or metres? Confirm it. Until then the taller rules.
verdict-larger = This is larger than the species grows: check the name.
# $height (Length)
verdict-measure-from = Measure the height first: from { $height } on, this answer changes.
# $height (Length)
verdict-measure-under = Measure the height first: under { $height } this answer changes.
verdict-measure = Measure the height first: it could change this answer.
# $against (Phrase)
verdict-only-possible = A ring is possible here, not recommended: { $against }.
# $act (Phrase): with who does it
verdict-kills-more = More would die by another method: { $act }.
# $act (Phrase)
# $level (Phrase)
verdict-act-level = { $act } ({ $level })
# $act (Phrase)
# $who (Phrase)
# $level (Phrase)
verdict-act-who-level = { $act } (by { $who }, { $level })
# $act (Phrase)
# $level (Phrase)
verdict-act-label-level = { $act } (the product label governs, { $level })
# $act (Phrase)
verdict-otherwise = Otherwise: { $act }.
verdict-without-leave = Without herbicide: leave it as it is.
verdict-today-leave = Until then leave it as it is.
# $act (Phrase)
verdict-today = Today instead: { $act }.
# $act (Phrase)
verdict-without = Without herbicide: { $act }.
# $act (Phrase)
# $stretch (Phrase)
verdict-without-in = Without herbicide: { $act }, { $stretch }.
# $stretch (Phrase)
verdict-ring-later = Or ring it: { $stretch }.
verdict-ring-some-day = Or ring it later.
# $against (Phrase)
verdict-ring-possible = A ring is possible too; against it: { $against }.
verdict-next-leave = If it is not ringed, leave it as it is.
# $act (Phrase)
verdict-next = The next method: { $act }.
verdict-no-ring-here = No ring here: the months in which the bark slips are all ruled out.

## The frame
# $ringed (Phrase)
# $stretch (Phrase)
verdict-ring-in = Ring { $ringed }: { $stretch }.
# $ringed (Phrase)
verdict-ring = Ring { $ringed }.
verdict-wait-slips = Wait until the bark slips.
# $window (Phrase): `verdict-window` or a day
verdict-wait = Wait until { $window }.
# $window (Phrase)
# $ringed (Phrase)
verdict-wait-then = Wait until { $window }, then ring { $ringed }.
# $window (Phrase)
# $act (Phrase)
verdict-wait-other = Wait until { $window }, then use another method: { $act }.
# $day (Date)
# $to (Date)
verdict-window = { $day } (good to { $to })
# $day (Date)
verdict-window-day = { $day }
verdict-leave = Leave this tree as it is.
# $act (Phrase)
verdict-other = Use another method: { $act }.
verdict-professional = Leave this one to a professional.
verdict-cannot-tell = We can't tell yet.
# $frame (Phrase): a sentence
# $reason (Phrase): the start of a sentence
verdict-whole = { $frame } { $reason }.
verdict-while-it-slips = while the bark slips
# $day (Date)
verdict-from-day = from { $day } on

## The reason, a clause
# $day (Date)
# $bark (Phrase)
verdict-bark = on { $day } its bark { $bark }
# $day (Date)
# $bark (Phrase)
# $chance (Phrase)
verdict-bark-chance = on { $day } its bark { $bark } ({ $chance })
# $day (Date)
# $bark (Phrase)
# $chance (Phrase)
verdict-bark-slips = on { $day } its bark { $bark } (slips { $chance })
# $bark (Phrase)
verdict-its-bark = its bark { $bark }
# $months (Phrase)
verdict-oaks = oaks must not be wounded here from { $months }
# $months (Phrase)
verdict-oaks-never = oaks must not be wounded here from { $months }, and the bark slips at no other time
verdict-never = the months in which the bark slips are all ruled out
verdict-no-living-stem = no living stem is left to ring
verdict-dead = it is dead already, so there is nothing to ring
# $signs (Phrase)
# $within (Length)
verdict-hollow = it has { $signs }, and nothing that counts stands within { $within }
# $size (Length)
verdict-not-suited-at = at { $size } across a ring does not suit it
verdict-not-suited = a ring does not suit it
# $size (Length)
verdict-as-well = at { $size } across it does as well as a ring
# $day (Date)
verdict-has-to-wait = a ring has to wait until { $day }
# $away (Phrase)
# $zone (Length)
verdict-inside = { $away }, inside the { $zone } in which this tree can throw wood
verdict-heaven-south = herbicide suits this tree from 15 January to 15 April
# $size (Length)
verdict-under-1 = at { $size } across it is too small to ring
# $size (Length)
verdict-hardly = at { $size } across it is hardly worth a ring
# $size (Length)
verdict-thin-shrub = at { $size } across its stems are too thin or too many to ring
# $size (Length)
verdict-no-snag = at { $size } across it makes no snag; cut it below the lowest branch
