### What is said of visits after the work, on the page and by the program.

## The file
# $column (Text)
after-no-column = no column is called { $column }. It needs tree_id, visited_on and found.
after-empty = nothing stands here. Type it, or leave the row out.
# $typed (Text)
after-not-a-day = “{ $typed }” is no day. Type it as 2027-06-12.
# $typed (Text)
after-not-a-word = “{ $typed }” is no word that is known. Use bridge, sprouts, suckers, crown_full, crown_thin, crown_bare, decay, nothing, dead or fallen, with ; between several.
# $typed (Text)
after-not-a-number = “{ $typed }” is no number that can be right here.
# $typed (Text)
after-no-such-tree = the list has no tree “{ $typed }” that was understood.
after-no-ring-day = nobody said when this tree was ringed. Fill in ringed_on.
after-before-the-ring = the visit is before the ring. Check both days.
# $typed (Text)
after-not-yet = { $typed } has not come yet. Check the year.
# $typed (Text)
after-contradiction = “{ $typed }” can’t all be. Keep only what was seen.

## What was found
# $looks (Number)
after-looks = { $looks ->
    [one] Found at { $looks } visit:
   *[other] Found at { $looks } visits:
}
# $act (Phrase): visits-act-now
# $trees (Number)
# $tags (Text)
after-act = Do now: { $act }. Trees: { $trees } ({ $tags }).
# $trees (Number)
# $tags (Text)
after-stopped = Trees to keep out from under, which nobody works at before their stop is settled: { $trees } ({ $tags }).

## Shares
# $share (Number)
# $low (Number)
# $high (Number)
after-interval = { $share } % (95 % interval: { $low } to { $high } %)
# $species (Text)
# $size (Phrase): outlook-size-class
# $season (Number)
# $dead (Number)
# $looked (Number)
after-kill-rate = { $species }, { $size }, by the last look in season { $season }: { $dead } dead of { $looked } looked at.
# $share (Phrase): after-interval
after-kill-share = That is { $share }.
# $trees (Number)
after-not-looked-at = Not looked at: { $trees }.
# $season (Number)
# $trees (Number)
after-nobody-looked = Other species and sizes, season { $season }: nobody looked at { $trees }.
# $low (Number)
# $high (Number)
after-outlook = Expected at its end: { $low } to { $high } %.
# $held (Number)
# $looked (Number)
after-held = Rings without a bridge: { $held } of { $looked } looked at.

## The crew's rate
# $trees (Number)
# $minutes (Number)
# $likely (Number)
# $low (Number)
# $high (Number)
after-rate = Rings that were timed: { $trees }, in { $minutes } person-minutes. This crew takes { $likely } times what we reckon (eight of ten such crews: { $low } to { $high }).
after-rate-used = The plan is made with this crew’s rate.
after-rate-far-off = The timed minutes are so far from any crew’s that a unit or a count must be wrong: no rate.
after-rate-too-few = Time two rings or more for a rate of this crew’s own.

## Land under crowns
# $unit (Text)
# $now (Number)
# $then (Number)
after-crowns = { $unit }: { $now } % of the land lies under crowns now, { $then } % with the trees of this plan dead, crowns standing at random.
# $unit (Text)
# $now (Number)
# $then (Number)
after-crowns-of-list = { $unit }: crowns of this list’s live trees cover { $now } % of the land now and { $then } % with the trees of this plan dead, standing at random.

## What may stand where trees die
# $trees (Number)
# $area (Text)
after-gap = { $trees ->
    [one] The crown of the tree that is ringed leaves about { $area } open once it is dead.
   *[other] The crowns of { $trees } trees that are ringed leave about { $area } open once they are dead.
}
# $spacing (Text): a distance
# $count (Number)
after-plant = { $count ->
    [one] At { $spacing } between two trees, { $count } tree fills that.
   *[other] At { $spacing } between two trees, { $count } trees fill that.
}
# $unit (Text)
# $count (Number)
# $area (Text)
after-plant-part = { $count ->
    [one] { $unit }: { $count } tree for { $area }
   *[other] { $unit }: { $count } trees for { $area }
}
# $trees (Number)
after-no-crown = Trees whose crown our tables do not have, not counted here: { $trees }.
after-plant-when = From the day of its ring the ground round a tree stays dangerous until it is down: plant there before, or after, or out of its reach.
after-gap-overlaps = Crowns are reckoned from trunks. Where they overlap, less opens; young trees that stand there already need no others.
after-gap-capped = A part opens no wider than its land.
# How much light a tree wants, as the table has it.
# $of (Key)
after-light =
    .intolerant = full light
    .intermediate = half shade
    .tolerant = shade
# $of (Key)
after-water =
    .low = little water
    .medium = some water
    .high = much water
# $names (Text): trees that die
# $light (Text)
# $water (Text)
after-natives = { $names }: { $light }, { $water }.
after-natives-are = Natives that want what the trees that die had, those found in most places first:
# $region (Text)
# $names (Text)
after-natives-both = Native in { $region } by a national list and a range map: { $names }.
# $region (Text)
# $names (Text)
after-natives-one = Recorded in { $region } by one of the two, perhaps planted: { $names }.
after-natives-where = Say in which state or province the trees stand, and natives are named here.
after-natives-elsewhere = Our natives are of the United States and Canada: nothing is recorded there.
after-natives-none = We know of no native there that wants the same light and water.
after-natives-memory = How much light and water the trees that die take is general knowledge, not read in a source.
after-ask-nursery = Heights are those of old trees. Ask your nursery or extension office what suits your soil, what is sold, and what is native just where you are: a tree native in a state is not native in all of it. Near a line ask its owner first.
