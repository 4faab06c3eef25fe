### What a list of trees asks and says: its columns, its rows, and what to type where a row has no answer.

## Where it stands
# $row (Text)
# $column (Text): a letter
# $header (Text)
# $what (Text)
list-at = Row { $row }, column { $column } ({ $header }): { $what }
# $row (Text)
# $what (Text)
list-at-row = Row { $row }: { $what }

## What is wrong with a cell
list-size-missing = no size. Type the diameter, such as 14 or 14 1/2.
list-girth-missing = no size. This column has girths: type the girth, the way round the trunk, as the other rows do.
list-name-missing = no species. Type its name, or “unknown broadleaf” or “unknown conifer”.
# $typed (Text)
list-name-unknown = “{ $typed }” is no tree that we know. Type its scientific or common name in full, or “unknown broadleaf” or “unknown conifer”.
# $name (Text)
# $choose (Text)
list-not-listed = { $name } is not on our list. Decide for all of them: “{ $choose }”, or leave them out.
# $typed (Text)
list-genus-only = “{ $typed }” names a genus, not a species. Type the species.
# $typed (Text)
# $of (Or): names
list-genus-of = “{ $typed }” names a genus, not a species. Type which: { $of }, or another.
# $typed (Text)
# $of (Or): names
list-several-trees = “{ $typed }” means different trees in different countries: { $of }. Type which, or say where the list is from.
# $typed (Text)
list-two-trees = “{ $typed }” names two different trees. Type one.
list-names-disagree = the scientific and the common name are of two trees. Correct one of them.
# $typed (Text)
list-shortened = “{ $typed }” has a shortened first word. Type it in full.
# $typed (Text)
list-doubted = “{ $typed }” has a mark of doubt. It is taken as it stands: look at the tree.
# $typed (Text)
list-code-unknown = “{ $typed }” is in no table of codes that we have. Add it to the codes of this column, or type the name.
# $typed (Text)
list-code-not-listed = “{ $typed }” is a symbol of a tree that is not on our list. Type the name, or “unknown broadleaf” or “unknown conifer”.
# $typed (Text)
list-code-undecided = what “{ $typed }” stands for was not decided. Say it in the codes of this column.
# $decided (Text)
list-decision-unknown = “{ $decided }” was decided for it and is no species that we know. Correct it in the file of decisions.
# $typed (Text)
# $first (Text): a row
list-tag-twice = the tag “{ $typed }” stands in row { $first } too. Give each tree its own.
# $typed (Text)
list-tag-mangled = “{ $typed }” looks like a tag that a spreadsheet changed. Compare it with the tree.
list-broken = the spreadsheet lost the value of a formula. Type the value.
list-formula = a formula stands here as text. Type its value.
list-stem-sizes = several stems and one size. Type the size of each, as in 12; 9; 7.
# $stems (Count)
list-stem-sizes-of = { $stems ->
    [one] { $stems } stem, and not { $stems } size. Type the size of each stem.
   *[other] { $stems } stems, and not { $stems } sizes. Type each, as in 12; 9; 7.
}
# $typed (Text)
list-range = “{ $typed }” is a range. Type one size.
# $typed (Text)
list-open = “{ $typed }” has no end. Type one size.
# $typed (Text)
list-made-a-day = “{ $typed }” is a day: a spreadsheet changed it. Type the size.
# $typed (Text)
list-two-numbers = “{ $typed }” has two numbers. Type one size, or each stem as in 12; 9; 7.
# $typed (Text)
list-year = “{ $typed }” looks like a year. Type the size.
list-estimate = an estimate. It is used as it stands.
# $typed (Text)
list-class-undecided = the size of class “{ $typed }” was not decided. Say it in the classes of this column.
list-sizes-disagree = girth and diameter do not agree. Correct one of them.
# $year (Text)
list-shrunk = the trunk is over a tenth thinner than in { $year }. Measure again.
list-measured-off = not measured at breast height. The size is used as it is.
list-stem-count = this is no count of stems. The size is used.
# $typed (Text)
list-condition-unknown = “{ $typed }” is no condition that we read. Type alive, declining or dead.
# $typed (Text)
list-status-unknown = “{ $typed }” is no status that we read. Type planned, treated, checked, resprouted, dead_standing, fallen or skip.
# $typed (Text)
list-lean-unknown = “{ $typed }” is no lean that we read. Type none, toward or away.
# $typed (Text)
list-target-unknown = “{ $typed }” is no target that we read. Type building, road, path, line, property_line, fence, keep_tree, none or unknown.
# $typed (Text)
list-not-yes-no = “{ $typed }” is neither yes nor no. Type yes, no or unknown.
list-place-swapped = latitude and longitude may have changed places, or lost a minus. This place is not used.
list-not-on-earth = no place on earth. It is not used.
list-not-degrees = this is not a place in degrees. It is kept, and not mapped.
# $typed (Text)
# $known (Text): words that may stand there
# $word (Text)
list-counts-as = “{ $typed }” is none of { $known }. It counts as { $word }.
# $typed (Text)
list-done-day = “{ $typed }” is no past day on which the work was done. Type one such as 2026-06-12, or empty the cell.
# $typed (Text)
list-day-past = “{ $typed }” has passed. A day is chosen anew.
list-note-gone = the note may say that the tree is gone or ringed. Look.
# $typed (Text)
# $us (Length)
# $metric (Length)
# $meant (Text)
# $right (Text)
list-size-wide = “{ $typed }” is { $us } ({ $metric }) across. Did you mean { $meant }? If it is right, type it with its unit: { $right }.
# $typed (Text)
# $us (Length)
# $metric (Length)
list-size-wide-said = “{ $typed }” is { $us } ({ $metric }) across. It is read as it stands: measure again.
list-distance-alone = a distance, and no target that it belongs to. Type what stands there as target, as in path 60 ft.
list-note-wire = it speaks of a wire: the tree is kept out. Type the wire as target, as in line 90 ft, or no as line_within_reach. If no wire is near, write “no wires” here.
list-note-target = it speaks of something near: what is said of the whole unit does not hold here. Type it as target, as in road 90 ft, or none.
list-note-look = it speaks of something that the tree could hit. Look before you ring.
list-note-fault = it speaks of a broken, hung, hollow or rotten part. Type that as condition, as in fair; hung limbs, or fair; cavity. If it is mended, take it out here.
list-note-keep = it asks to leave this tree. Type skip as status; or, if the tree is to die, take that out here.
# $typed (Text)
list-slope-unknown = “{ $typed }” is no slope in percent. Type a number such as 35: what is said of the whole unit does not hold here.
# $typed (Text)
list-steep = the ground is steep ({ $typed }), and a trunk goes farther there. What is said of the whole unit does not hold here: type what lies downhill as target, or none.
list-note-stems = the note tells of several stems. Look.
list-too-long = more cells than the header has. They are kept.
list-cell-too-long = longer than a cell of a spreadsheet can be. Shorten it.
list-quote-open = a quote mark opens here and is never closed: the rows behind it can't be read. Close it.
list-same-place = two other trees or more stand at exactly this place.

## What is said of a column, once
# $header (Text)
# $unit (Text)
# $median (Text)
list-unit-assumed = { $header }: no unit is said. Its numbers are read in { $unit }; the middle one is { $median }.
# $header (Text)
# $unit (Text)
# $by (Text)
list-unit-proven = { $header }: its unit is { $unit }. { $by } proves it.
# $columns (Count)
list-ours-dropped = { $columns ->
    [one] One column that an earlier plan wrote is left out and made anew.
   *[other] { $columns } columns that an earlier plan wrote are left out and made anew.
}
# $header (Text)
# $number (Text)
# $day (Text)
list-days-counted = { $header }: its numbers are days as a spreadsheet counts them. { $number } is read as { $day }.
# $header (Text)
# $height (Text)
list-column-measured-off = { $header }: measured { $height } m up, not at breast height. Its sizes are used as they are.
# $headers (Text)
list-newest = Several sizes of one tree: the newest that is filled is used, in this order: { $headers }.
# $rows (Text)
# $columns (Text)
list-many = { $rows } trees: a page takes 20,000 at once. Choose some by { $columns }.
# $words (Text)
list-old-letters = The letters of this file are of an older encoding. Some words of it, as they are read: { $words }.
# $header (Text)
list-no-stem-count = { $header }: no counts of stems. It is not read.
# $header (Text)
list-height-classes = { $header }: classes, no heights. It is not read.
# $header (Text)
list-past-days = { $header }: most of its days have passed. It is not read as a plan.
# $header (Text)
list-column-not-degrees = { $header }: no degrees. It is kept, and not mapped.
# $header (Text)
list-doubled = { $header }: another column says the same. It is not read.
# $header (Text)
list-no-groups = { $header }: each row has its own. It groups nothing.
# $header (Text)
list-own-words = { $header }: most of its words are its own. Those that we do not know are passed over.
# $header (Text)
list-none-is-nothing = { $header }: “None” stands for an empty cell in this list, and so says nothing here.

## What is asked of a column
# $header (Text)
# $median (Text)
# $unit (Text)
# $across (Text): the middle one as a girth
list-ask-girth = { $header }: is this the girth? The middle one is { $median } { $unit }: so much across, or, as a girth, { $across } across.
# $header (Text)
# $median (Text)
list-ask-metres = { $header }: is this in metres? The middle one is { $median }.
# $header (Text)
# $values (Text)
list-ask-classes = { $header }: these look like classes: { $values }. Which size stands for each?
# $header (Text)
# $codes (Text)
list-ask-codes = { $header }: codes of the plant list would all fit; these do not, or not all: { $codes }. Which tree is each?
# $header (Text)
# $value (Text)
# $rows (Number)
list-ask-missing = { $rows ->
    [one] { $header }: does { $value } stand for nothing? It stands in { $rows } row.
   *[other] { $header }: does { $value } stand for nothing? It stands in { $rows } rows.
}
# $headers (Text)
list-ask-numbered = Which of these is the newest, or are they stems of one tree? { $headers }
# $repeats (Number)
# $columns (Text)
list-ask-key = { $repeats ->
    [one] { $repeats } row repeats a tag. Do these together make the tag? { $columns }
   *[other] { $repeats } rows repeat a tag. Do these together make the tag? { $columns }
}
list-ask-no-species = No column names the trees. Which does, or of which species are all of them?
list-ask-no-size = No column has a size. Which does?
# $first (Text)
list-ask-no-header = The file has no header. What does each column hold? Its first row: { $first }
# $header (Text)
# $example (Text)
list-ask-day-order = { $header }: “{ $example }”: is the day first, or the month?
# $header (Text)
# $example (Text)
list-ask-point-order = { $header }: “{ $example }”: is latitude first, or longitude?
# $header (Text)
# $values (Text)
list-ask-target = { $header }: does it tell what each tree could hit? It holds: { $values }.
# $header (Text)
list-ask-unit-lost = { $header }: its name was cut off, and perhaps its unit. Which is it?
# $questions (Count)
list-asked = { $questions ->
    [one] One question first. Fill in the file of decisions and give it with --columns:
   *[other] { $questions } questions first. Fill in the file of decisions and give it with --columns:
}
# $name (Text)
list-stranger = “{ $name }” in the file of decisions names no column of this list. Check its spelling.

## Why a file is no list
list-empty = The file has nothing in it.
list-workbook = This is a workbook. Open it in a spreadsheet program and save it as CSV.
list-not-text = This is no text: a picture, a PDF or the like. Give a list as CSV.
list-one-column = This looks like one column. Save the list with commas, semicolons or tabs between its cells.
list-header-alone = There is a header and no row below it.
list-sideways = The trees stand side by side. Turn the table, so that each tree is a row.
list-counts = The list counts trees. It needs a row for each tree, with its size.
list-nothing-answered = No row has an answer yet.

## What a row says without an answer
list-row-to-fix = To fix: see its problems.
list-row-left-out = Left out, as decided.
list-row-skip = Left out by its status.
list-row-done = Done before, by its status.
list-row-fallen = Fallen: there is nothing to ring.
list-row-no-tree = No tree stands here.

## The whole list
# $rows (Number)
# $trees (Number)
# $ready (Number)
# $fix (Number)
# $blank (Number)
# $others (Number)
list-counted = { $rows ->
    [one] { $rows } row
   *[other] { $rows } rows
}: { $trees ->
    [one] { $trees } tree
   *[other] { $trees } trees
}, { $ready } ready and { $fix } to fix; { $others ->
    [one] { $others } row
   *[other] { $others } rows
} without a tree; { $blank } blank.
# $outcome (Phrase): card-tag
# $trees (Text)
list-outcome = { $outcome }: { $trees }
# $trees (Text)
list-no-work = Done, left out or fallen: { $trees }
# $rows (Number): how many
# $which (Text): some of them
# $what (Text)
list-group = { $rows ->
    [one] { $rows } × { $what } Row { $which }
   *[other] { $rows } × { $what } Rows { $which }
}

## What the command line can't use
# $file (Text)
list-unreadable = { $file } could not be read. Give the name of a list, or - for standard input
# $file (Text)
list-unreadable-columns = { $file } could not be read. Give the name of a file of decisions (JSON)
list-cut-short = the list could not be read to its end
# $typed (Text)
list-not-a-day = --today { $typed }: type a day such as 2027-06-12.
# $why (Text)
list-no-place = --place: { $why }
# $typed (Text)
list-not-a-region = --region { $typed }: type a code such as US-MA or GB.
