### The command that says when the bark slips at a place, and what it says of a place or a name that it does not know.

# $tree (Text)
# $latin (Text)
# $year (Text)
year-tree = { $tree } ({ $latin }), { $year }
year-no-bark = No bark to slip: there is no ring to cut.
# $from (Text): a date in digits
# $to (Text)
year-span = { $from } to { $to }
# $day (Text): a date in digits
# $open (Text): days
# $close (Text): days
year-half = Half the buds open { $day }; give or take { $open } days at the opening and { $close } at the closing.
# $year (Text)
year-all = When bark slips, { $year }
# Heads of columns of dates: no more than ten letters.
year-opens = opens
year-best-from = best from
year-best-to = best to
year-closes = closes
year-no-dates = no date model: test first
year-no-ring = no ring to cut
# $low (Text)
# $high (Text)
year-days = { $low } to { $high } days
# $open (Phrase): year-days
# $close (Phrase): year-days
year-spread = Give or take { $open } at the opening and { $close } at the closing, by the tree.

## A name that is not known
# $tree (Text)
# $group (Text)
year-not-listed = { $tree } is not on this list. Choose "{ $group }".
# $name (Text)
year-unknown = no species called "{ $name }" is known.
# $name (Text)
year-unknown-type = no species called "{ $name }" is known. Type a common name, a scientific name or a plant code.
# $name (Text)
# $names (Text): with semicolons
year-unknown-like = no species called "{ $name }" is known. Did you mean: { $names }?

## A place that is not known
# $typed (Text)
year-no-town = no town called "{ $typed }" is known. Type latitude, longitude and elevation, as 42.36,-71.06,15 m.
# $typed (Text)
# $names (Text): with semicolons
year-towns = "{ $typed }" is not one town. Add the state, or type one of: { $names }.
# $typed (Text)
year-no-elevation = { $typed } is no elevation: type 15 m or 50 ft
# $typed (Text)
year-off-earth = { $typed } is not on this earth: latitude lies between -90 and 90, longitude between -180 and 180 (west is negative)
