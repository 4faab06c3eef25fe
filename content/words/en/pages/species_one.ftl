### The page of one species.

# $species-name (Text)
species-one-title = { $species-name }: when and how wide to ring it
# $species-name (Text)
species-one-description = { $species-name }: how to know it, whether a ring suits it, when its bark slips, how wide the ring is, how far it can fall, and what comes after.
# Beside a link to the page, in programs that show a picture of it.
# $species-name (Text)
species-one-picture = { $species-name }: its leaf, its fruit and its bark as line drawings, made from its marks
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
species-one-bark = Old bark
species-one-drawn = Drawn from the marks in our table, not from one tree.
species-one-mistaken = What it is mistaken for
species-one-not-sure = Killing a native tree by mistake is the worst error here. If you are not sure, leave it alive and ask your extension office.
species-one-no-marks = We have no marks of a single tree for this group: ask before you work.
species-one-wide = Ring, minutes, ground
species-one-wide-note = For a trunk by itself on a good day. The ground to keep clear afterwards is one and a half heights round.
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
species-one-by-state = When bark slips best
# Behind the title of the fold: the days of the first band and of the last.
# $first (Text)
# $last (Text)
# $count (Count)
species-one-by-state-key = Band 1: { $first }. Band { $count }: { $last }.
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
species-one-band = Band
# $species-name (Text)
species-one-bands-drawn = { $species-name }: the best days of each band on a year; the table below tells them
# Behind the title of the fold about a path.
# $size (Text)
# $far (Text)
species-one-near-from = { $size } across: a path nearer than { $far } is a professional’s
# $size (Text)
species-one-near-never = { $size } across: at each of these distances a professional’s
species-one-after-cut = What it does after cutting
species-one-stumps = Stumps that sprout
# $shares (Text)
species-one-stumps-of = { $shares } in 100
species-one-stumps-note = From growth models of the United States, for stumps of cut stems: an upper bound for a ring.
species-one-follows = What may follow it
# $light (Text)
# $water (Text)
species-one-wants = These natives do with what it has: { $light }, { $water }.
# $count (Count)
species-one-native-tree =
    { $count ->
        [one] A tree, native in { $count } state or province.
       *[other] A tree, native in { $count } states and provinces.
    }
# $count (Count)
species-one-native-shrub =
    { $count ->
        [one] A shrub, native in { $count } state or province.
       *[other] A shrub, native in { $count } states and provinces.
    }
# Recorded by a list that counts planted ones too.
# $count (Count)
species-one-listed-tree =
    { $count ->
        [one] A tree, recorded in { $count } state or province, planted ones too.
       *[other] A tree, recorded in { $count } states and provinces, planted ones too.
    }
# $count (Count)
species-one-listed-shrub =
    { $count ->
        [one] A shrub, recorded in { $count } state or province, planted ones too.
       *[other] A shrub, recorded in { $count } states and provinces, planted ones too.
    }
# $count (Count)
species-one-branches = Caterpillars on { $count } in 100 branches looked at, mostly in the East.
# $count (Count)
species-one-kinds = Its genus feeds { $count } kinds of moths and butterflies in the mid-Atlantic states.
species-one-follows-note = Those native in most places first. Ask your native plant society which is native where you are: a tree native in a state is not native in all of it, and not each is sold.
species-one-follows-memory = How much light and water the tree itself takes is general knowledge, not read in a source.
species-one-follows-from = Sources:
species-one-instead = Instead of a ring
species-one-zone-note = For a trunk by itself, with nothing in reach. The ground to keep clear afterwards is one and a half heights round.
species-one-states = Which states are in which band
species-one-no-bands = For this tree we have no dates state by state. Before each ring open a test patch as large as your hand: go on only where the bark peels off clean.
