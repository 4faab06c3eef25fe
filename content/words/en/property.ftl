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
# $hours (Text)
# $days (Number)
property-when-line = { $days ->
    [one] { $people } people, { $hours } hours, { $days } day
   *[other] { $people } people, { $hours } hours, { $days } days
}
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
    [one] { $trees } tree: { $ready } ready, { $fix } to fix; { $planned } can be ringed this season with { $people } people × { $days } days; { $professional } go to a professional.
   *[other] { $trees } trees: { $ready } ready, { $fix } to fix; { $planned } can be ringed this season with { $people } people × { $days } days; { $professional } go to a professional.
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
    [one] { $visits } visit in three seasons, { $hours } person-hours
   *[other] { $visits } visits in three seasons, { $hours } person-hours
}
property-visits-are = Later years have the same week days until you say otherwise: our own assumption. A visit without a day falls in a week that has no work day; the calendar names a day for it.
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
property-files-line = { $files } files: the list with its plan, sheets, tags, calendar, map
property-files-are = The file is the list: this page keeps nothing. trees-plan.csv is your list with its plan, and opens here again.
