### The page of a whole list of trees: what it asks, what it says of the season, and its tables.

## While somebody waits
property-reading = Reading the list …
property-looking = Looking at each tree …
property-planning = Planning …
property-writing = Writing each row …
property-stopped = Stopped. What you typed is still there.
# $name (Text): of a file
# $trees (Number)
# $ready (Number)
# $fix (Number)
property-list = { $trees ->
    [one] { $name }: { $trees } tree, { $ready } ready, { $fix } to fix.
   *[other] { $name }: { $trees } trees, { $ready } ready, { $fix } to fix.
}
# $blank (Number)
# $others (Number)
property-other-rows = Rows that are no trees: { $others }. Blank rows: { $blank }.

## What the columns hold
property-columns = What do these columns hold?
property-columns-why = Only you can know. Nothing is guessed.
# $questions (Number)
property-columns-more = More questions after these: { $questions }.
# $questions (Number)
property-columns-asked = { $questions ->
    [one] One question about a column first.
   *[other] { $questions } questions about columns first.
}
property-go-on = Go on
# $across (Text)
# $unit (Text)
property-girth-yes = Around the trunk. The middle tree is { $across } { $unit } across.
# $median (Text)
# $unit (Text)
property-girth-no = Straight across. The middle tree is { $median } { $unit } across.
property-leave-column = Leave this column out
property-codes-plants = Symbols of the plant list: ACPL is Norway maple
property-codes-own = Our own codes, as typed below
property-code-hint = A tree’s name. Empty: its rows are asked one by one.
property-class-hint = The size to use, as 6 in or 15 cm
# $value (Text)
# $rows (Number)
property-value = { $rows ->
    [one] { $value } ({ $rows } row)
   *[other] { $value } ({ $rows } rows)
}
# $value (Text)
property-missing-yes = { $value } stands for nothing
# $columns (Text)
property-key-these = Yes: { $columns }
property-key-alone = No. A tag that stands twice is to fix.
# $header (Text)
property-newest = { $header } is the newest
property-stems = Stems of one tree
property-day-first = The day first
property-month-first = The month first
property-target-yes = Yes: what the tree could hit
property-target-no = No: leave this column out
property-latitude-first = Latitude first
property-longitude-first = Longitude first
property-which-column = Which column?
property-no-column = None
property-every = Or the one species of all rows
property-size-is = It is
# $unit (Text): inches, centimetres, millimetres or metres
property-diameter-in = the diameter in { $unit }
# $unit (Text)
property-girth-in = the girth in { $unit }
# $letter (Text): of a column
# $cell (Text): what stands in it
property-first-cell = Column { $letter }: “{ $cell }”
property-header-hint = As tag, species, dbh_in, girth_cm, unit, target, target_ft. Empty: left alone.

## What could they hit
property-hit = What could they hit?
# $trees (Number)
property-hit-line = Trees that wait for an answer: { $trees }
# $unit (Text): a part of the property
# $trees (Number)
# $within (Text): a distance
property-hit-unit = { $trees ->
    [one] { $unit }, { $trees } tree: is any wire, path, road, building or property line within { $within } of it, twice its height?
   *[other] { $unit }, { $trees } trees: is any wire, path, road, building or property line within { $within } of any of them, twice the height of the tallest?
}
property-hit-none = No, nothing is
property-hit-some = Yes, near some of them
property-hit-wire = Yes, a wire
property-hit-unknown = I can’t tell
property-hit-then-some = Type what it is and how far, for each tree, in the columns target and target_ft of your list.
property-hit-then-wire = Keep off, and call the line’s owner. Rows without a wire can say so in the column target of your list.
property-hit-by = Who says so?
property-hit-by-hint = Kept in the plan with the day and the distance.
# $species (Text)
# $trees (Number)
property-clone = { $trees ->
    [one] { $species }, { $trees } tree: can every stem of its clone be ringed?
   *[other] { $species }, { $trees } trees: can every stem of their clones be ringed?
}
property-yes = Yes
property-no = No
property-hit-say = Say so

## Who and when
property-when = Who and when?
# $people (Text)
# $when (Text): a day, or the next message
property-when-line = { $people } people, { $when }
# $first (Text)
# $last (Text)
property-when-days = { $first } to { $last }
property-people = People
property-hours = Hours a day
property-hours-hint = From arriving to leaving.
property-days = Saturdays on which the bark may slip, each with its trees
property-days-named = Work days:
property-days-none = None was found for these trees. Name days below.
# $day (Text)
# $trees (Number)
property-day = { $day }: { $trees }
property-more-days = Other work days
property-more-days-hint = As 2027-06-12, 2027-06-13
property-place = Place, for trees without one
property-place-hint = Degrees, height: 42.36, -71.50, 120 m
property-region = State or country
property-region-none = Not said
property-plan-it = Plan it
property-no-days = Pick a work day, or name one.
property-too-long = The work days lie more than 366 days apart. Plan one season at a time.
# $typed (Text)
property-no-place = Place { $typed }: type degrees north and east, with a minus for south and west, as in 42.36, -71.50.

## What it comes to
# $trees (Number)
# $ready (Number)
# $fix (Number)
# $planned (Number)
# $people (Number)
# $days (Number)
# $professional (Number)
property-sentence = { $trees ->
    [one] { $trees } tree
   *[other] { $trees } trees
}: { $ready } ready, { $fix } to fix; { $planned } can be ringed this season with { $people ->
    [one] { $people } person
   *[other] { $people } people
} × { $days ->
    [one] { $days } day
   *[other] { $days } days
}; { $professional ->
    [one] { $professional } goes to a professional.
   *[other] { $professional } go to a professional.
}
property-part-planned = ringed this season
property-part-no-hours = no hours left
property-part-no-day = no work day in their weeks
property-part-pacing = left for later years
property-part-other-method = another method
property-part-leave-it = leave alone
property-part-professional = a professional’s
property-part-cannot-tell = can’t tell yet
property-part-dead = dead
property-part-done = done
property-part-skipped = left out
property-part-to-fix = to fix
property-plan-with-it = Plan it so
# $day (Text)
property-next-day = The next work day: { $day }
# $trees (Number)
property-next-day-trees = { $trees ->
    [one] { $trees } tree to ring
   *[other] { $trees } trees to ring
}
# $team (Text)
# $trees (Number)
# $hours (Text)
# $tags (Text)
property-crew-day = { $trees ->
    [one] Crew { $team }: { $trees } tree, { $hours } person-hours. In order: { $tags }.
   *[other] Crew { $team }: { $trees } trees, { $hours } person-hours. In order: { $tags }.
}
# $distance (Text)
property-keep-off = Keep people off while you work: { $distance }.

## Trees to fix
property-fix = Trees to fix
# $rows (Number)
property-fix-rows = { $rows ->
    [one] { $rows } row has no answer yet. The good rows go on without it.
   *[other] { $rows } rows have no answer yet. The good rows go on without them.
}
# $rows (Number)
# $which (Text)
# $what (Text)
property-fix-name = { $rows ->
    [one] { $rows } row ({ $which }): { $what }
   *[other] { $rows } rows ({ $which }): { $what }
}
property-fix-species = Species
property-fix-it = Fix it
property-broadleaf = A broadleaf
property-conifer = A conifer
property-leave-out = Leave out
# $row (Text)
property-fix-look = Row { $row }: look at it in your file.

## What is folded
property-strip = Person-hours a work day: ringing below, visits on it. Dashes: the hours there are.
property-season-by-day = The season by day
# $used (Text)
# $all (Text)
property-hours-used = { $used } of { $all } person-hours used
property-all-to-fix = All that is to fix
# $questions (Number)
property-questions = { $questions ->
    [one] { $questions } question
   *[other] { $questions } questions
}
# $trees (Number)
property-trees = { $trees ->
    [one] { $trees } tree
   *[other] { $trees } trees
}
property-table-planned = Planned
property-table-professional = For a professional
property-table-other-method = Other methods
property-table-cannot-tell = Can’t tell yet
property-table-left = Not planned this season
# $title (Text)
# $from (Text)
# $to (Text)
# $all (Text)
property-shown = { $title }: { $from } to { $to } of { $all }
# $rows (Number)
property-next-rows = Show the next { $rows }
property-rows-before = Show those before
property-head-tag = Tag
property-head-row = Row
property-head-tree = Tree
property-head-why = What
property-head-day = Day
property-head-trees = Trees
property-head-hours = Person-hours
property-head-ring-hours = Ringing, hours
property-head-visit-hours = Visits, hours
property-head-all-hours = There are, hours
property-head-year = Year
property-head-visits = Visits
property-head-no-day = Without a day
# $species (Text)
# $size (Text)
property-tree = { $species }, { $size }
# $day (Text)
# $minutes (Text)
property-on-day = { $day }, { $minutes }
property-visits = Rounds of visits
# $visits (Number)
# $hours (Text)
property-visits-line = { $visits ->
    [one] { $visits } visit, { $hours } person-hours
   *[other] { $visits } visits, { $hours } person-hours
}
property-visits-are = The visits of three seasons. Later years have the same week days until you say otherwise: our own assumption. A visit without a day falls in a week that has no work day; the calendar names a day for it.
property-good = How good is this plan?
property-command = The same plan on the command line:
property-notes = How the columns were read
# $notes (Number)
property-notes-line = { $notes ->
    [one] { $notes } thing to know
   *[other] { $notes } things to know
}
property-files = Files to keep
# $files (Number)
property-files-line = { $files } files: list, sheets, calendar, map
property-files-are = The file is the list: download to keep. trees-plan.csv is your list with its plan, and opens here again.

## What if
property-what-if = What if?
# $day (Text)
property-what-if-line = One more work day: { $day }
# $trees (Number)
property-what-if-was = The plan before: { $trees ->
    [one] { $trees } tree
   *[other] { $trees } trees
}
property-what-if-people = More or fewer people, a day that is closed
property-one-more-person = One more person
property-one-person-fewer = One person fewer
# $day (Text)
property-one-more-day = One more day: { $day }
property-what-if-closed = Close a work day:
property-closed-days = Days that are closed
property-keep-days = Trees keep the days that they have, unless something forces them
property-pin = A tree on a day of its own. It stands in your list’s column for days.
property-pin-tag = Tag of the tree
property-pin-day = Day
property-pin-hint = As 2027-06-12. Empty: any day.
property-pin-it = Keep this day
property-pin-no-column = To keep a tree on a day of its own, your list needs a column called date.
# $tag (Text)
property-pin-no-tree = Tag { $tag }: no tree of this list has it.
# $typed (Text)
property-pin-no-day = Day { $typed }: type a day as 2027-06-12.
# $people (Number)
# $hours (Number)
# $days (Number)
property-crew-of = { $people ->
    [one] { $people } person
   *[other] { $people } people
}, { $hours ->
    [one] { $hours } hour
   *[other] { $hours } hours
}, { $days ->
    [one] { $days } day
   *[other] { $days } days
}
# $before (Number)
# $before-crew (Text)
# $now (Number)
# $now-crew (Text)
property-was = Was: { $before } ringed with { $before-crew }. Now: { $now } with { $now-crew }.
property-put-back = Put it back
# $trees (Number)
# $which (Text)
property-moved = { $trees ->
    [one] { $trees } tree moved: { $which }.
   *[other] { $trees } trees moved: { $which }.
}
property-moved-none = Every tree keeps its day.
# $tag (Text)
# $from (Text)
# $to (Text)
property-moved-tree = { $tag }, { $from } → { $to }
property-moved-no-day = no day
# $percent (Text)
property-fresh = A plan that keeps none of these days would be worth { $percent } % more.

## Where they stand
property-map = Map
# $placed (Number)
# $without (Number)
property-map-line = { $placed ->
    [one] { $placed } tree with a place; without one: { $without }
   *[other] { $placed } trees with a place; without one: { $without }
}
property-map-north = N
property-map-all = The whole list
# $day (Text)
# $trees (Number)
property-map-day = Map of { $day }, { $trees ->
    [one] { $trees } tree, north up
   *[other] { $trees } trees in their order, north up
}
# $trees (Number)
property-map-of = Map of { $trees ->
    [one] { $trees } tree, north up
   *[other] { $trees } trees, north up
}
property-map-circles = Drawn from your list alone, north up. Circles: the ground that stays dangerous round trees that are ringed or stand dead.
property-map-grid = Drawn from your list alone, north up: how many trees stand in each square.
property-map-ring = ringed this season
property-map-professional = a professional’s
property-map-unknown = can’t tell yet
property-map-standing = dead or done
property-map-other = something else
# $trees (Number)
# $which (Text)
property-map-without = { $trees ->
    [one] { $trees } tree has no place in the list: { $which }.
   *[other] { $trees } trees have no place in the list: { $which }.
}
property-places = The map as a table
property-head-east = East of the middle
property-head-north = North of the middle
property-head-zone = Ground that stays dangerous

## What stands
property-stand = What stands in each part
# $ringed (Text): an area
# $all (Text)
property-stand-line = Basal area ringed: { $ringed } of { $all }
property-stand-is = Basal area: the trunks of the trees that a ring suits, cut through at breast height. What another method or a professional does is not in it.
# $area (Text)
property-area-us = { $area } ft²
# $area (Text)
property-area-metric = { $area } m²
property-head-part = Part
property-no-part = No part named
property-head-basal = Basal area
property-head-ringed = Ringed this season
# $percent (Text)
property-good-line = At most { $percent } % under the best
# $day (Text)
property-this-day = Today, { $day }

## After the work
property-found = After the work
property-found-none = A table of visits moves the plan on
# $trees (Number): trees that were ringed or treated before
property-found-before = { $trees } from before: no hours yet
property-found-before-is = Visits of trees that were ringed or treated before this list take no hours of this plan until you open a table of what was found there. standing.csv tells the next look at each.
# $file (Text)
# $looks (Number)
# $fix (Number)
property-found-line = { $looks ->
    [one] { $file }: { $looks } visit; rows to fix: { $fix }
   *[other] { $file }: { $looks } visits; rows to fix: { $fix }
}
property-found-is = A row a tree and day: its tag, the day, what was found, and the minutes if you timed them. Rings that failed are planned again, and visits that are still due take their hours first.
property-found-words = found is one or more of bridge, sprouts, suckers, crown_full, crown_thin, crown_bare, decay, nothing, dead, fallen, with ; between several. Where the list does not say when a tree was ringed, fill in ringed_on.
property-found-open = Open a table of visits
property-found-drop = Or drop it on this page.
property-found-example = Save an empty one with the tags
# $day (Text)
property-found-planned = planned for { $day }
property-found-out = Leave this table out
# $rows (Number)
property-found-to-fix = { $rows ->
    [one] One row to fix in your table. It counts for nothing until then.
   *[other] { $rows } rows to fix in your table. They count for nothing until then.
}
# $more (Number)
property-found-more = More after these: { $more }
property-found-now = What to do now
property-found-nothing-now = Nothing has to be done now.
property-found-shares = What died, and which rings held
property-found-rate = How long the crew takes
property-found-no-minutes = No ring of this table has minutes. Time two rings or more for a rate of this crew’s own.
property-found-own-rate = Plan with your own rate
property-found-trees = Tree by tree
property-head-looked = Looked at
property-head-now = Now
property-head-again = Look again by
property-found-dead = stands dead
property-found-down = is down
property-found-ringed = is ringed
property-found-stopped = keep out from under it; settle its stop first
property-found-list-first = This is a table of visits. Open the list of its trees first.
# $file (Text)
property-found-waits = { $file } is taken up as soon as the list is planned.

## Land and crowns
property-land = Land and crowns
property-land-is = Where a wood must not open too far, say how much land a part is and how much of it lies under crowns now.
property-land-area = Land
property-land-area-hint = 12 acres or 5 ha
property-land-closure = Under crowns, %
property-land-closure-hint = Empty: as listed
property-land-floor = Keep under crowns, %
# $share (Number)
property-land-floor-hint = Of each part with land; two fifths of its basal area stay too. { $share } is published. Empty: no floor.
# $typed (Text)
property-land-no-area = “{ $typed }” is no land that a part can have. Type it as 12 acres or 5 ha.
# $typed (Text)
property-land-no-share = “{ $typed }” is no share. Type a number from 1 to 99.
property-land-area-first = Type first how much land it is.
property-land-no-parts = To say how much land a part is, your list needs a column called unit.
property-land-all-crowns = Where other trees stand there too, type how much all of them cover.

## Replanting
property-replant = Replanting
# $count (Number)
property-replant-line = { $count ->
    [one] { $count } tree fills the gap
   *[other] { $count } trees fill the gaps
}
property-spacing = Between two trees
property-spacing-hint = 8 ft or 2.5 m. Empty: 10 ft or 3 m, our own assumption
# $typed (Text)
property-no-spacing = “{ $typed }” is no distance between trees. Type it as 8 ft or 2.5 m, at most 98 ft.
property-reckon = Reckon again
property-no-natives = The list of natives did not arrive. Open this again with a signal.
