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
after-kill-rate = { $species }, { $size }, end of season { $season }: { $dead } dead of { $looked } looked at.
# $share (Phrase): after-interval
after-kill-share = That is { $share }.
# $trees (Number)
after-not-looked-at = Not looked at: { $trees }.
# $season (Number)
# $trees (Number)
after-nobody-looked = Other species and sizes, end of season { $season }: nobody looked at { $trees }.
# $low (Number)
# $high (Number)
after-outlook = Expected: { $low } to { $high } %.
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
