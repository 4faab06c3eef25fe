### Each calculator of the family: the question that it is, and its first sentence.

# In place of a part that this answer has not.
calculators-no-such-part = With this answer there is nothing of that to show.

## The question that each is
calculators-tree-plan = Tree plan
calculators-year = When does the bark slip?
calculators-ring = How wide should the ring be?
calculators-reach = How far could it reach?
calculators-effort = How long does it take?
calculators-checks = When do I come back?

## Its first sentence
# $tree (Text): its name
# $place (Text): a state or a country
# $said (Phrase): what the bark does on the day
calculators-year-in = { $tree } in { $place }: { $said }.
# $tree (Text): its name
# $said (Phrase): what the bark does on the day
calculators-year-said = { $tree }: { $said }.
# $width (Length)
calculators-cut-a-ring = Cut a ring { $width } wide.
# $target (Phrase): reach-target-short
# $distance (Length)
# $reach (Length)
calculators-inside = { $target }, { $distance } away: inside the reach used here, { $reach }.
# $target (Phrase): reach-target-short
# $distance (Length)
# $reach (Length)
calculators-outside = { $target }, { $distance } away: outside the reach used here, { $reach }.
# $minutes (Phrase): effort-minutes
calculators-one-person = { $minutes } for one person.
# $visits (Phrase): visits-count
# $first (Span)
calculators-visits = { $visits }, the first { $first }.
# Under the number: the question that may stop it.
calculators-first-check = First check what it could hit.
