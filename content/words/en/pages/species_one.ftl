### The page of one species.

# $species-name (Text)
species-one-title = { $species-name }: when and how wide to ring it
# $species-name (Text)
species-one-description = { $species-name }: how to know it, whether a ring suits it, when its bark slips, how wide the ring is, how far it can fall, and what comes after.
# In the list of all trees.
# $tree (Text)
species-one-more = All about { $tree }
species-one-all = All trees
# $species-name (Text)
species-one-ask = Ask about your { $species-name }
species-one-suits = Does a ring suit it?
# The same in a word or two.
# $of (Suitability)
species-one-suits-short =
    .suitable = Yes
    .followup = Yes, if
    .conditional = It depends
    .not-alone = Not alone
    .not-applicable = No
    .unknown = Name first
# Behind the word for a tree that asks for visits.
species-one-followup = you come back: expect sprouts or bridges
species-one-best = Bark slips best
species-one-dead = Dead by season 3
# $low (Percent)
# $high (Percent)
species-one-dead-of = { $low } to { $high } in 100
species-one-stands = Then half still stand
# $low (Text)
# $high (Text)
species-one-years = { $low } to { $high } years
species-one-know = Is it this tree?
species-one-leaf = Leaf
species-one-twig = Twig
species-one-fruit = Fruit
species-one-bark = Bark of an old stem
species-one-drawn = Drawn from the marks in our table, not from one tree. Where two kinds occur, the commoner is drawn.
species-one-mistaken = What it is mistaken for
species-one-not-sure = If you are not sure, leave it alive and ask your extension office.
species-one-no-marks = We have no marks of a single tree for this group: ask before you work.
species-one-wide = How wide, how long, how far?
species-one-wide-note = For a trunk by itself, with nothing in reach, on a day on which bark slips. The ground to keep clear afterwards is one and a half heights round. Minutes are for one person; the first look comes on top.
species-one-across = Trunk across
species-one-ring = Ring
species-one-minutes = Minutes
species-one-zone = Keep clear after
# $method (Phrase)
species-one-no-ring = no ring: { $method }
species-one-near = What if a path is near?
species-one-near-note = Trunk across, and how far the path is from it. No wire is near, and the day is a good one.
species-one-by-month = What if you come in another month?
species-one-by-month-key = Five trunks, twelve months, nothing in reach
species-one-by-month-note = On the 15th of each month, in the northern half of the world and with no place given. A state or a town gives dates.
species-one-by-state = When bark slips best, state by state
species-one-by-state-key = By the middle of each state, from the earliest
species-one-state = State or province
species-one-from-to = Best days, as a rule
species-one-state-note = Worked out from the climate of a place in the middle of each. Between its towns it may differ by two weeks and more.
# What an outcome is in a table's cell.
# $of (Outcome)
species-one-outcome =
    .do = do it
    .wait = wait
    .other-method = another way
    .professional = stop: a professional
    .cannot-tell = can’t tell yet
