### Pages that are printed: the field card and the handout of a volunteer day.

paper-print-it = Made to be printed: two sides of one sheet, Letter or A4. See also
paper-defers = Made by Slipbark. Local codes, permits and the word of a licensed professional stand above this sheet.

## The field card
paper-card-title = Field card: one ring
paper-card-description = A card for the pocket: when to stop, how wide the ring is by size, the patch test, and whom to call.
paper-card-lede = For one living tree, by hand tools, from the ground.
paper-stops = Before anything: stop if one is so
paper-stop-line = **A power or phone line** is nearer than the last column of the table, or you can't tell. Call its owner.
paper-stop-reach = **People, a path, road, building or a neighbour's tree** is nearer than that. A professional decides.
paper-stop-owner = **The owner** has not said yes in writing, or you don't know the line on the ground.
paper-stop-name = **Its name is not sure.** Two marks, not one.
paper-stop-nest = **A nest, a hole in use, loose bark with bats.** Ask the wildlife agency.
paper-stop-defect = **A crack, a hollow, mushrooms at the foot, a hung limb, a dead top, a lean.** Leave it, keep away.
paper-stop-any = No ring on oaks, ashes or elms before you have asked about the months of your state.
paper-sizes = How wide, and how far
paper-col-across = Across, at chest height
paper-col-least = Ring, at least
paper-col-better = Better
paper-col-zone = No people for years within
# $paper-kinds (Text): how many kinds of trees
paper-table-note = Ring: from the width for most trees, to that for Douglas-fir and for trees that bridge, such as maples. Last column: one and a half heights of the tallest of the { $paper-kinds } kinds of trees on our list at that size. A measured height gives less. The page of each tree has its own numbers.
paper-patch = Test patch
paper-patch-cut = Inside the place of the ring, cut a patch the size of your hand through the bark.
paper-patch-lifts = It lifts whole and the wood is wet: go on.
paper-patch-tears = It tears or sticks: stop, not today.
paper-ring = The ring
paper-ring-below = Cut every branch and green shoot below it.
paper-ring-score = Score two level lines through the bark only, never into the wood.
paper-ring-peel = Peel all the way round. A missed strip keeps it alive.
paper-ring-scrape = Scrape the slippery film off. Leave the wood bare.
paper-ring-walk = Walk round once more: no bridge, in folds too. Write down tag, day and width.
paper-after = Come back
paper-after-visits = After 2 to 6 weeks: bridges, new bark, shoots. At the end of the season. Then three times a season for two more years: late spring, midsummer, early autumn. Look up from outside its reach before you go near.
paper-call = Whom to call
paper-call-emergency = Emergency, and where we are
paper-call-line = Owner of the line
paper-call-professional = Arborist
paper-call-owner = Owner of the land
paper-call-wildlife = Wildlife agency, state forester

## The handout of a volunteer day
paper-day-title = Handout for a volunteer day
paper-day-description = Two sides for everyone who comes: roles, what is said aloud, when to stop, and a list of the trees.
paper-day-article = A volunteer day
paper-day-where = Where, and whose land
paper-day-when = Day, from and to
paper-day-leader = Who leads, telephone
paper-day-ambulance = Emergency number, and where an ambulance drives in
paper-day-bring = Bring
paper-day-bring-it = Helmet, eye protection, gloves, long sleeves, stout shoes, water, your own medicine. We have saws, drawknives, bark spuds and scrapers.
paper-day-aloud = We say it aloud
paper-day-pairs = Work in pairs. One cuts, one looks up.
paper-day-up = Look up at each tree: lines, dead limbs, nests. Know two ways out.
paper-day-apart = 15 ft (5 m) between pairs. Nobody under another pair's tree. Bystanders one tree height away.
paper-day-tag = No tag, no ring.
paper-day-water = In the heat a cup of water every 15 to 20 minutes.
paper-day-ivy = Poison ivy: cover up, wash tools, never burn it. Keep sap off skin and eyes.
paper-day-no-saw = No chainsaws, no ladders, no climbing. Nobody works alone.
paper-day-stop = Stop
paper-day-stop-at = At one tree: a line, a nest, a hole, a crack, a hung limb, somebody on the path.
paper-day-stop-all = All of us: wind that moves big limbs, lightning, ice, tired hands, or when the leader says so. Anybody may call it.
paper-day-trees = Trees of the day
paper-day-col-tag = Tag
paper-day-col-tree = Tree
paper-day-col-across = Across
paper-day-col-ring = Ring
paper-day-col-checked = Checked by
paper-day-col-note = Note
paper-day-visits = Who comes back, and when
