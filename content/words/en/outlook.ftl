### How many die, and when.

# A class of the outlook table.
# $of (OutlookClass)
outlook-class =
    .suitable-conifer = conifers that a ring suits
    .suitable-hardwood = broadleaves that a ring suits
    .followup = trees that need follow-up
    .red-oak = red oaks
    .white-oak = white oaks
    .clone-or-shrub = stems of clones and shrubs
    .not-alone = stems whose roots live on
    .partial = stems with a bridge of live bark
# A size class.
# $of (SizeClass)
outlook-size-class =
    .all = any size
    .small = under 6 in (15 cm)
    .middle = 6 to 10 in (15 to 25 cm)
    .large = over 10 in (25 cm)
    .under-ten = under 10 in (25 cm)
# What the outlook supposes.
outlook-if = It supposes a ring that is complete and scraped clean, and sprouts taken off. A bridge of live bark, and practically none die. A ring narrower than half the trunk: expect the low end.
# What the shares rest on, folded.
outlook-basis = What these shares rest on
# Outlook.
outlook-how-many-die = How many die, and when
# Outlook.
outlook-twin-outlook = The shares as a table
# Outlook.
outlook-head-outlook-by-the-end-of = By the end of
outlook-head-outlook-low = Low
outlook-head-outlook-likely = Likely
outlook-head-outlook-high = High
# Deaths counted on this species.
outlook-deaths = Deaths counted on this species
# Heads of that table.
outlook-head-deaths-dead-in-100 = Dead, in 100
outlook-head-deaths-after-months-or-seasons = After, months or seasons
outlook-head-deaths-trees = Trees
outlook-head-deaths-across = Across
outlook-head-deaths-ring = Ring
outlook-head-deaths-season = Season
outlook-head-deaths-source = Source

## Shares
# $likely (Percent)
# $range (Text): low to high
outlook-share-about = about { $likely } in 100 ({ $range })
# $range (Text): low to high
outlook-share = { $range } in 100
# Inside a drawing.
# $season (Count)
# $likely (Percent)
# $range (Text): low to high
outlook-season-likely-label = season { $season }: { $likely } ({ $range })
# $season (Count)
# $range (Text): low to high
outlook-season-label = season { $season }: { $range }
# $share (Phrase): as outlook-share-about
outlook-trees = By the end of season 3, { $share } such trees are dead.
# $share (Phrase)
outlook-stems = By the end of season 3, { $share } such stems are dead. It speaks of the stem: the roots live on.
# $share (Phrase)
outlook-poor = Fewer than half are likely to be dead by the end of season 3: { $share }.
# $range (Text)
outlook-second-ring = { $range } in 100 need a second ring.
# $range (Text)
outlook-sprouting = Of stems of this size that are cut, { $range } in 100 sprout: an upper bound for a ring.

## Rows of this species alone
# $when (Phrase): outlook-season, outlook-after or outlook-in-the-end
# $share (Phrase)
# $trees (Text): how many were counted
outlook-own-row = { $when }: { $share } dead; trees: { $trees }
# $season (Text): its number
outlook-season = season { $season }
outlook-in-the-end = in the end
# $time (Text): as printed
outlook-after = after { $time }
# $english-oak (Node): the source
# $sessile-oak (Node): the source
# $red-oak (Node): the source
outlook-oaks = Trials disagree on oaks: English oak 0 dead in five years ({ $english-oak }), sessile oak all in three ({ $sessile-oak }), red oak 75 in 100 in 14 months ({ $red-oak }).

## What the shares rest on
# $class (Phrase): outlook-class
# $size (Phrase): outlook-size-class
outlook-basis-row = From the row for { $class }, { $size }.
# $counts (Text): as printed, in English
outlook-bounded = Bounded by counts: { $counts }.
# $what (Text): as printed, in English
outlook-own = Our own assumption, drawn dashed: { $what }.
