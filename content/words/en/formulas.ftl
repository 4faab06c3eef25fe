### How each number was made: what it is and how, up to the result, which follows in bold; and what is said behind it.

# Its size follows.
formulas-group-size = A professional's tree, by the group's own rule: over{ " " }
# $clause (Phrase): season-group-months
formulas-sentence = { $clause }.

## The ring
# $girth (Length)
formulas-across = Across = around ÷ 3.1416 = { $girth } ÷ 3.1416 ={ " " }
# $factor (Text)
# $size (Length)
formulas-bark = Bark = { $factor } × { $size } ={ " " }
# $low (Length)
# $high (Length)
formulas-bark-between = ; it lies between { $low } and { $high }
formulas-inside = Inside the bark = across − 2 × bark ={ " " }
# $any (Length)
formulas-least = Ring, at least = { $any } for any tree, rounded up ={ " " }
# $any (Length)
# $species (Length)
formulas-least-species = Ring, at least = { $any } for any tree, { $species } for this species, rounded up ={ " " }
formulas-rule-least = the least width
# $factor (Text)
formulas-rule-callus = wide enough to outlast callus, { $factor } × closure a season × seasons it may live
formulas-rule-half = half the diameter
formulas-rule-whole = the whole diameter, since this species bridges
# $width (Length)
formulas-rule-most = held at { $width }
# $rule (Phrase): one of the rules above
# $width (Length)
formulas-better = Better = { $rule } = { $width }, rounded up ={ " " }
formulas-area = Bark taken off = live share × π × (across − bark) × better width ={ " " }

## Height and reach
formulas-height-measured = Height used = as measured
formulas-height-table = Height used = the tallest of the whole table at this size, since the species is not known
# $factor (Text)
formulas-height-over = Height used = tallest estimate × { $factor }
formulas-height-shrub = Height used = the tallest that this shrub is taken to grow
formulas-height-one-in-ten = Height used = what at most 1 in 10 measured trees of this size pass
formulas-height-shown = Height shown = mean of the rows for this size ={ " " }
# $factor (Text)
formulas-reach = Reach = { $factor } × height ={ " " }
# $factor (Text)
# $reach (Length)
formulas-reach-asked = ; asked about to { $factor } × height = { $reach }

## The season
# $sum (Text)
formulas-degree-days = ; this species needs { $sum } degree-days over 5 °C
# $basis (Phrase): what the dates rest on
formulas-buds = Half the buds open, from { $basis } ={ " " }
# $days (Span)
formulas-best = ; best { $days }
formulas-slips = The bark lets go and binds again ={ " " }
# $day (Date)
formulas-chance = Chance that it slips on { $day } = chance that it has opened × chance that it has not closed ={ " " }
# $share (Percent)
formulas-in-100 = { $share } in 100
formulas-months-north = Months in which bark slips = those of the northern half of the world:{ " " }
formulas-months-south = Months in which bark slips = those of the southern half of the world:{ " " }
formulas-test-first = no number, only “test first”

## What follows
# $minutes (Text)
# $slips (Percent)
formulas-minutes = Minutes = delays × (fixed + limbs + bark work, longer where it is tight) + walk; likely work before delays { $minutes } min, bark slips in { $slips } in 100 ={ " " }
formulas-own-rate = Your own rate = minutes of your own trees over ours, with ours as the starting point ={ " " }
# $visits (Small)
formulas-visits = With { $visits } visits = minutes × (1 + visits × share of a visit) + their walks ={ " " }
# $wood (Phrase): habitat-durability
formulas-standing = Years standing: half-life of { $wood }, × ½ to × 2 ={ " " }
