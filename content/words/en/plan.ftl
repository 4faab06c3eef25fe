# The season of a whole property: what the program says of it.

## The first sentence and what is left
# $trees (Number)
# $ready (Number)
# $fix (Number)
plan-trees = { $trees ->
    [one] { $trees } tree: { $ready } ready, { $fix } to fix.
   *[other] { $trees } trees: { $ready } ready, { $fix } to fix.
}
# $planned (Number)
# $people (Number)
# $days (Number)
plan-can-be-ringed = { $planned ->
    [one] { $planned } tree can be ringed this season: people { $people }, work days { $days }.
   *[other] { $planned } trees can be ringed this season: people { $people }, work days { $days }.
}
# $trees (Number)
plan-professional = Go to a professional: { $trees }.
# $trees (Number)
plan-no-hours = No hours left for: { $trees }.
# $trees (Number)
plan-no-day = No work day on which the bark slips well enough: { $trees }.
# $trees (Number)
plan-pacing = Left for later years, so that a part of the wood does not go all at once: { $trees }.
# $trees (Number)
plan-other-method = Another method: { $trees }.
# $trees (Number)
plan-leave-it = Leave alone: { $trees }.
# $trees (Number)
plan-cannot-tell = Something is not known yet: { $trees }. Say what they could hit, and what the list leaves open.
# $trees (Number)
plan-dead = Dead already: { $trees }.
# $trees (Number)
plan-done = Done already: { $trees }.
# $trees (Number)
plan-skipped = Left out: { $trees }.
# $people (Number)
# $trees (Number)
plan-binds-people = { $trees ->
    [one] Hours are short. { $people } more people: { $trees } more tree.
   *[other] Hours are short. { $people } more people: { $trees } more trees.
}
# $day (Text): as 2027-06-12
# $trees (Number)
plan-binds-day = { $trees ->
    [one] Days are short. One more day, { $day }: { $trees } more tree.
   *[other] Days are short. One more day, { $day }: { $trees } more trees.
}
# $trees (Number)
plan-binds-pacing = { $trees ->
    [one] The limit on what goes in a year keeps trees out. Without it: { $trees } more tree.
   *[other] The limit on what goes in a year keeps trees out. Without it: { $trees } more trees.
}
# $percent (Text)
plan-gap = No plan under these hours, days and limits can be worth over { $percent } % more than this one.
# $charged (Text): hours
# $routed (Text): hours
# $percent (Text)
# $missed (Number)
# $days (Number)
plan-walk = Walking from tree to tree: { $charged } h are charged. Along the ways of the crews, each back to its first tree, it is { $routed } h, { $percent } % of that. One day of one crew can be off by more than 10 %: here { $missed } of { $days } are. The way from the car to the first tree is not counted.
plan-walk-unknown = How far the crews walk is not known: too few trees have a place of their own.
# $visits (Number)
plan-needs-day = Visits without a work day in their weeks: { $visits }. plan.json names a day for each.
# $trees (Number)
# $which (Text): some of their tags
plan-pins-refused = Days that you chose and that can't be: { $trees } ({ $which }). A stop, a closed day, a day without work or bark that does not slip goes before a choice.
# $hours (Text)
# $get_ready (Text)
plan-work-hours = Hours of work a person and day: { $hours }, after { $get_ready } minutes to get ready.
# $folder (Text)
# $files (Text)
plan-written = Written to { $folder }: { $files }.
plan-look-first = A plan is no leave to cut. At each tree look up and round first: no wire, path, road or line within twice its height. What your local rules and a professional say goes before it.
# $trees (Number)
# $which (Text): some of their tags
plan-moved = Moved against the earlier plan: { $trees } ({ $which }). plan.json says why.
# $percent (Text)
plan-fresh = A plan that keeps none of its days would be worth { $percent } % more: leave out --keep to see it.
plan-kept-all = Every tree of the earlier plan keeps its day.
# $metres (Text)
# $day (Text): as 2027-06-12
plan-unit-said = nothing within { $metres } m, said on { $day }
# $unit (Text)
# $trees (Number)
# $distance (Text)
plan-ask-within = { $unit } ({ $trees }): is any wire, path, road, building or boundary within { $distance } of any of these trees, twice the height of the tallest? If nothing is: --nothing-within "{ $unit }={ $distance }" --said-by NAME
# $species (Text)
# $trees (Number)
# $name (Text): the scientific one
plan-ask-clone = { $species } ({ $trees }): can every stem of their clones be ringed? Say it once: --whole-clone "{ $name }=yes", or "{ $name }=no"

## The calendar of a season
# $trees (Number)
# $units (Text): names of parts of the property
plan-ring-trees = { $trees ->
    [one] Ring { $trees } tree: { $units }
   *[other] Ring { $trees } trees: { $units }
}
# $trees (Number)
# $units (Text)
plan-visit-trees = { $trees ->
    [one] Look again at { $trees } tree: { $units }
   *[other] Look again at { $trees } trees: { $units }
}
# $tags (Text): in the order in which a crew goes
plan-rings-of = Ring: { $tags }
# $tags (Text)
plan-visits-of = Look again: { $tags }
# $what (Text): what the visit is for
# $trees (Number)
# $unit (Text)
plan-round = Needs a day: { $unit } ({ $trees }). { $what }

# $past (Number)
# $days (Number)
# $today (Text)
plan-days-past = Work days before today, { $today }: { $past } of { $days }. Unless the work was done on them, name later ones by --from.

## What the command line can't use
# $option (Text)
# $typed (Text)
plan-not-a-day = { $option } { $typed }: type days such as 2027-06-12, with a comma between them.
plan-to-before-from = --to lies before --from.
plan-season-too-long = From --from to --to lie more than 366 days: plan one season at a time.
# $typed (Text)
plan-not-week-days = --on { $typed }: type days of the week such as sat or sat,sun.
plan-no-days = No work day is left: name days with --on sat, or --days 2027-06-12,2027-06-19, that lie from --from to --to and are not closed.
# $option (Text)
# $from (Text)
# $to (Text)
# $typed (Text)
plan-out-of-range = { $option } { $typed }: give a number from { $from } to { $to }.
# $folder (Text)
# $why (Text)
plan-unwritten = { $folder } could not be written: { $why }
# $option (Text)
# $typed (Text)
plan-not-a-unit = { $option } { $typed }: name a part of the property and a distance, as "Old field=230 ft".
# $option (Text)
# $typed (Text)
plan-not-a-reply = { $option } { $typed }: name a species and yes or no, as "Black locust=yes", or "Black locust@Old field=no".
# $trees (Count)
plan-ringed-before = { $trees ->
    [one] 1 tree was ringed or treated before. Its visits take no hours here: standing.csv tells its next look, and --found with what was found there plans on.
   *[other] { $trees } trees were ringed or treated before. Their visits take no hours here: standing.csv tells the next look at each, and --found with what was found there plans on.
}
# $unit (Text)
# $units (Text)
plan-no-such-unit = No part of the list is called { $unit }. It has: { $units }.
# $file (Text)
plan-not-a-plan = { $file } is no plan.json that this program can keep.
plan-none-planned = No tree can be ringed on these days.
# $days (Text)
plan-nearest-days = Days on which most of them could be: { $days }.
