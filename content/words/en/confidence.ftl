### How sure the answer is, what would change it, and trees that look like this one.

# Look-alikes.
confidence-is-it = Is it this tree?
# What would change it.
confidence-what-changes = What would change this answer.
# Nothing found.
confidence-nothing-changes = No single change of day, distance, height, herbicide or size near these values does.
# What the answer rests on.
confidence-sure-width = Ring width
# The row of the dates.
confidence-sure-dates = Slip dates
# The row of the height.
confidence-sure-height = Height
# The row of the reach.
confidence-sure-reach = Reach, 1 to 2 heights
# The row of the minutes.
confidence-sure-minutes = Minutes
# The row of the outlook.
confidence-sure-deaths = Share that dies
# The row of the species.
confidence-sure-response = How this species responds
# Beside the ring width.
confidence-widths-differ = ; published widths run from 1 in (2.5 cm) to one full trunk
# Behind the range of a height that was not measured.
confidence-worth-measuring = ; few stand above the height used, most far below it: measuring is worth it
# Beside the reach.
confidence-reach-sources = ; slope and small stems are our own assumption
# Beside the outlook.
confidence-outlook-own = ; counted on this species
# Beside the outlook of a class.
confidence-outlook-class = ; counted on like trees, the rest is our own assumption
# An unknown species.
confidence-unknown-name = You could not name it. Take a twig with leaf, bud and fruit to someone who can, before you kill it.
# The worst mistake.
confidence-mistake = Killing a native tree by mistake is the worst error here. Look for the mark first.
# Folded look-alikes.
confidence-more-alike = More trees like it
# Behind a native look-alike.
confidence-native = { " " }(native)
# How well a value is known.
# $of (Grade)
confidence-grade =
    .measured = measured by you
    .published = published
    .related = related trees
    .derived = worked out from published numbers
    .secondary = quoted elsewhere
    .practice = field practice
    .assumption = our own assumption
    .memory = from memory, no source
# $days (Text)
confidence-take-days = ; give or take { $days } days
# $low (Text)
# $high (Text)
confidence-rows-from = ; eight trees in ten stand { $low } to { $high }

## What would change the answer: the change, then the other answer
# $what (Phrase)
# $then (Phrase)
confidence-change = { $what }: { $then }.
# $day (Date)
confidence-on-day = on { $day }
# $distance (Length)
confidence-all-away = with all that counts at least { $distance } away
# $distance (Length)
confidence-something-near = with something only { $distance } away
# $height (Phrase): confidence-or-more or confidence-or-less
confidence-with-height = with a measured height of { $height }
# $size (Phrase): confidence-or-more or confidence-or-less
confidence-with-trunk = with a trunk of { $size } across
# $length (Length)
confidence-or-more = { $length } or more
# $length (Length)
confidence-or-less = { $length } or less
confidence-with-herbicide = with herbicide by a licensed applicator
confidence-without-herbicide = without herbicide
confidence-whole-clone = if every stem of the clone can be ringed
confidence-part-of-clone = if part of the clone can't be ringed
confidence-then-ring = ring it
confidence-then-wait-ring = wait, then ring it
# $act (Phrase): method-act
confidence-then-wait = wait, then { $act }
confidence-then-professional = leave it to a professional
confidence-then-unknown = we could not tell
