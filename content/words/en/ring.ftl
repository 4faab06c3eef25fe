### The ring: its numbers, its steps, the words of the trunk drawing.

# The stem that is spared.
ring-spared-unproven = Common practice says that the stem you leave lives on and the ringed ones die. We found no trial of it, so it is unproven.
# Numbers to carry.
ring-do = Do
# A drawing as a table.
ring-twin-trunk = The trunk drawing as a table
# Table heads.
ring-head-part-part = Part
ring-head-part-us = US
ring-head-part-metric = Metric
ring-head-part-standing = Standing
# Stems.
ring-head-stems-stem = Stem
ring-head-stems-across = Across
ring-head-stems-ring-at-least = Ring, least
ring-head-stems-better = Better
ring-head-stems-what-to-do = What to do
# Rows of the trunk table.
ring-row-across = Trunk across
# The row of the bark.
ring-row-bark = Bark, one side
# The row of the wood.
ring-row-inside = Inside the bark
# The row of the least ring.
ring-row-at-least = Ring, at least
# The row of the better ring.
ring-row-better = Ring, better
# Bark.
ring-bark = bark

## On the drawing of the trunk
# In the ring.
ring-bare = bare
# Beside the least ring, under its height.
ring-at-least = at least
# $size (Length)
ring-trunk-across = { $size } across
# $height (Length)
ring-up = { $height } up
# $least (Length)
# $better (Length)
ring-trunk-aria = A person at work beside the trunk, to scale. The ring is at least { $least } high, better { $better }.

## On the drawing of the cut
# $size (Length)
ring-cut-bark = bark { $size }
ring-cut-bare = scraped bare
ring-cut-wood = wood: no cut here
# What the coloured line is.
ring-cut-living = the living layer, gone from the ring
ring-cut-aria = The cut from the side: through bark and living layer, and not into the wood

## Stems
# Several stems.
ring-stems = Stem by stem
# The one to keep.
ring-keep-stem = leave alone, to live
# Before any work on a stem with thorns.
ring-thorns = Trim the thorns from the work band. Heavy gloves, eye protection.

## Steps
ring-step-shoots = Cut every branch and green shoot below the ring.
ring-step-limbs = Cut every branch and green shoot below the ring. One left keeps it alive.
ring-step-test = Open a patch the size of your hand. If it tears, stop: not today.
# $width (Length)
ring-step-score = Score two level lines, { $width } apart, through the bark only.
# $width (Length)
# $bark (Length)
ring-step-score-thick = Score two level lines, { $width } apart, through the bark only: about { $bark }, by mallet and chisel.
ring-step-peel = Peel all the way round. A missed strip keeps it alive.
# $live (Percent)
ring-step-peel-live = Peel off the live bark, about { $live } in 100 of the way round, and a little over its edges. Dead bark needs no ring.
ring-step-scrape = Scrape the slippery film off the wood. Leave it bare.
ring-step-check = Walk round again: no bark bridges the ring, in seams and folds too.
# $stem (Count): its number
ring-step-others = Do the same on the other stems. Leave stem { $stem } alone: it is the one to keep.
# $stem (Count): its number
ring-step-leave = Leave stem { $stem } alone: it is the one to keep.
# $stems (Small)
ring-step-all = Do the same on each of the { $stems } stems that are ringed. One left keeps the roots alive.
ring-tools = Hand saw or drawknife, bark spud, scraper; helmet, gloves, eye protection.
ring-tools-thick = Hand saw, mallet and bark chisel, bark spud, scraper; helmet, gloves, eye protection.
ring-tools-thin = Knife or drawknife, scraper; helmet, gloves, eye protection.
# $estimate (Phrase)
ring-estimated-poor = { $estimate }; poor: measure it
# Waist to chest (common practice, no source).
# $least (Length)
ring-where-on-trunk = At least { $least }, 3 to 4½ ft up, on a smooth stretch below the lowest live branch.
# The same for readers of metres.
# $least (Length)
ring-where-on-trunk-metric = At least { $least }, 0.9 to 1.4 m up, on a smooth stretch below the lowest live branch.
# Where others work beside.
ring-crew = Work 15 ft (4.6 m) from the next person, alone under a crown.
