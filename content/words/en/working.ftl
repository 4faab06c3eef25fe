### The inputs as read, what was assumed, and how to keep the answer.

# Inputs and formulas.
working-working = Working
# Inputs as read.
working-told = What you told us
# What was used instead.
working-assumed = What we assumed
# Formulas.
working-made = How the numbers were made
# Copy.
working-copy = Copy as text
# Links to a field.
working-change = Change
# Sources, folded.
working-all-sources = All sources of this answer

# A field that was not given, in the list of assumptions.
# $of (Key): the field
working-assumed-field =
    .bark = Bark, not measured
    .height = Height, not measured
    .setting = Where it grew
    .place = Place, not given
    .region = State or country, not given
    .walk = Walk, not given
    .herbicide = Herbicide, not said
    .targets = What it could hit
# What was used instead.
# $of (Key): the value
working-assumed-word =
    .woods = woods
    .open = open: yard, street or hedgerow
    .north = the northern half of the world
    .south = the southern half of the world
    .cautious_default = the cautious months
    .two_minutes = 2 minutes
    .not_said = only by a licensed applicator, with the best way without beside it
    .not_checked = not checked

## Values as told
# $name (Text)
# $latin (Text)
working-species = { $name } ({ $latin })
# $size (Length)
working-across = { $size } across
# $girth (Length)
# $size (Length)
working-around = { $girth } around, { $size } across
# $share (Percent)
working-live-share = { $share } in 100 of the way round
# $today (Date)
working-the-year = the year, from { $today }
# $slope (Text)
working-slope = slope { $slope } %
working-downhill = downhill
# $distance (Length)
working-within = within { $distance }
# $height (Length)
working-above-sea = { $height } above the sea
# $stage (Phrase): fields-stage
# $day (Date)
working-leaves = { $stage } on { $day }
working-elsewhere = elsewhere
working-hopkins = elsewhere, carried by Hopkins' rates
# $days (Count)
working-spring = { $days } days of temperatures
working-only-kill = only to kill it
# $stem (Count): its number
working-keep-stem = keep stem { $stem }
working-timed = from trees that you timed
# $height (Length)
working-for-reach = { $height } for what it could reach

## Fields left as they are for most trees
# $list (Phrase): those below, a comma between
working-left = Left as for most trees: { $list }.
working-left-alive = condition alive
working-left-no-signs = no signs ticked
working-left-bark = bark alive all round
working-left-growth = ordinary growth
working-left-no-dry-spell = no dry spell
working-left-no-limbs = no limbs below the ring
working-left-goal = goal: a standing dead tree
working-left-no-leaf-out = no leaf-out seen
working-left-one-person = one person, not practised
working-left-can-wait = the work can wait
# On paper: what was used instead of what was not given.
# $used (Phrase)
working-left-empty = Left empty: { $used }
