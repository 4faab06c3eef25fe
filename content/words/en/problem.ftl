### What is wrong with a question, and what to do. Never whose fault it is.

# Why measurements make no height.
# $of (NoHeight)
problem-no-height =
    .not-positive = Every length must be more than 0.
    .bad-angle = Angles lie between −90 and 90 degrees.
    .angles-do-not-meet = The top must be above the foot. Read both angles again.
    .out-of-range = That is beyond any tree. Check units and readings.

# What a number of a field looks like.
# $of (Key): the last name of the field's path
problem-example =
    .diameter = 14 or 14 1/2
    .girth = 44 or 44 1/2
    .bark = 0.4 or 1/2
    .live_share = 75
    .distance = 52
    .height = 52
    .slope = 10
    .voltage = 69
    .latitude = 42.36
    .longitude = -71.06
    .elevation = 300
problem-example-else = 2
# Units that a field may carry.
# $of (Key): the last name of the field's path
problem-unit =
    .live_share = % or leave the unit out
    .slope = % or leave the unit out
    .voltage = V or kV
    .latitude = no unit, degrees only
    .longitude = no unit, degrees only
    .walk = min, ft or m
    .top = no unit, degrees only
    .foot = no unit, degrees only
    .minutes = min or leave the unit out
problem-unit-else = in, ft, mm, cm or m
# $problems (Count)
problem-heading = { $problems ->
    [one] There is one thing to fix
   *[other] There are { $problems } things to fix
}

## What is wrong with what was typed, and what to do
## $field (Phrase): its label
## $typed (Text)
# $field (Phrase): its label
# $typed (Text)
# $example (Phrase): problem-example
problem-not-number = { $field }, “{ $typed }”, is not a number. Type a number such as { $example }.
# $field (Phrase): its label
# $typed (Text)
problem-ambiguous = { $field }, “{ $typed }”, can be read two ways. Type it without a thousands mark, and a point for decimals.
# $field (Phrase): its label
# $example (Phrase): problem-example
problem-too-long = { $field } is too long to read. Type a number such as { $example }.
# $field (Phrase): its label
# $typed (Text)
# $units (Phrase): problem-unit
problem-wrong-unit = { $field }, “{ $typed }”, has a unit that we can't use here. Use { $units }.
# $field (Phrase): its label
# $typed (Text)
# $example (Phrase): problem-example
problem-not-positive = { $field }, “{ $typed }”, must be more than 0. Type a number such as { $example }.
# $field (Phrase): its label
# $typed (Text)
# $range (Text): with its unit
problem-out-of-range = { $field }, “{ $typed }”, must be { $range }.
# $field (Phrase): its label
# $typed (Text)
# $us (Text): across
# $metric (Text)
# $meant (Or): what else it may be
# $tick (Phrase): form-size-sure
problem-size-in-doubt = { $field }, “{ $typed }”, is { $us } ({ $metric }) across. Did you mean { $meant }? If not, tick “{ $tick }”; in a file “size_confirmed”.
problem-both = { $field }: give the size across or around, not both.
problem-neither = Trunk size: type how thick the trunk is, across or around.
# $field (Phrase): its label
# $typed (Text)
# $most (Text): with its unit
problem-bark-too-thick = { $field }, “{ $typed }”, is thicker than half the trunk. It must be under { $most }: measure from the outside to the wood, on one side.
problem-no-stem = Trunk size: give at least one stem.
# $field (Phrase): its label
# $most (Count)
problem-too-many-timed = { $field }: at most { $most }. Give those of one day.
# $field (Phrase): its label
# $most (Count)
problem-too-many-stems = { $field }: at most { $most }. Give the thickest ones.
# $field (Phrase): its label
# $most (Count)
problem-too-many-targets = { $field }: at most { $most }. Give the nearest ones.
problem-day-missing = { $field } must include a day, such as 2027-06-22.
problem-month-missing = { $field } must include a month, 1 to 12 or its name.
problem-year-missing = { $field } must begin with a year of four digits, such as 2027-06-22.
problem-no-such-day = { $field }, “{ $typed }”, is no day of the calendar. Check day and month.
problem-year-out-of-range = { $field }, “{ $typed }”, must be between 1990 and 2100.
# $field (Phrase): its label
# $typed (Text)
# $words (Or)
problem-not-one-of = { $field }, “{ $typed }”, must be { $words }.
problem-unknown-species = { $field }, “{ $typed }”, is no species that we know. Choose one from the list, or “I don’t know”; in a file “unknown broadleaf”, “unknown conifer” or “unknown shrub”.
# $field (Phrase): its label
# $typed (Text)
# $like (Or): names
problem-species-like = { $field }, “{ $typed }”, is no species that we know. Did you mean { $like }? If it is none of these, choose “I don’t know”, or in a file “unknown broadleaf”, “unknown conifer” or “unknown shrub”.
problem-names-not-here = { $field }, “{ $typed }”, is not on this list, and the names of other trees are not here yet. Choose one from the list, or “I don’t know”.
problem-no-such-stem = Stem to keep: choose one of two or more stems.
problem-half-place = { $field }: give both latitude and longitude.
problem-not-region = { $field }, “{ $typed }”, is no state or country that we know. Pick your town from the names that come while you type, or type a state or country; in a file a code such as US-MA or GB.
# $key (Text)
problem-unknown-key = “{ $key }” is no field that we read. Check its spelling, or leave it out.
# $key (Text)
problem-wrong-type = “{ $key }” has the wrong type of value. Give text in quotes, a list or true and false as the format says.
problem-wrong-version = “version” must be 1.
problem-not-json = The question can't be read as JSON. Check quotes, commas and brackets.
problem-not-rate = Your own rate can't be used. Calibrate again on trees that you timed.
problem-height-below-diameter = { $field }: a tree whose diameter is taken at 4 ft 6 in (1.37 m) can't be lower than that. Check the height, or its unit.
# $field (Phrase): its label
# $why (Phrase): problem-no-height
problem-no-height-said = { $field }: { $why }
problem-far-from-any-crew = { $field }, “{ $typed }”, is over 12 times, or under a twelfth of, what we expect. Check the minutes, the sizes and their unit.
problem-no-temperatures = { $field }: no line can be used. Give a day, its lowest and its highest temperature on each line.
problem-other-season = { $field }, “{ $typed }”, is over a year from the day of the work. Give this year's leaf-out, or leave it out.
problem-species-missing = Species: choose one from the list, or “I don't know”.
problem-date-missing = Day of the work: choose today, another day or the year.
problem-spare-missing = Stem to keep: say which one.
problem-kind-missing = What it could hit: choose what it is.
problem-missing = { $field } is needed. Fill it in.
# $field (Phrase): its label
# $target (Phrase): reach-target
# $us (Text): two heights
# $metric (Text)
problem-none-beside = { $field }: { $target } stands within two heights ({ $us }, { $metric }), and “nothing in reach” is ticked too. Take one of them off.
# $field (Phrase): its label
# $target (Phrase): reach-target
problem-none-beside-unknown = { $field }: { $target } is listed, and “nothing in reach” is ticked too. Type its distance, or take one of them off.

## A tree that is known and not on the list
## $name (Text)
## $choose (Text): what to choose instead
# $name (Text)
# $place (Text)
# $choose (Text)
problem-native = { $name } is native in { $place } and is not on this list. Make sure what it is, and ask why it must go. If it must, choose “{ $choose }”.
problem-no-trial = { $name } is not on this list yet: we read no trial of ringing it. Choose “{ $choose }”; the estimates are then wider.
problem-expect-sprouts = Expect sprouts.
problem-not-listed-sure = { $name } is not on this list. Make sure what it is. If it must go, choose “{ $choose }”; the estimates are then wider.
problem-not-listed = { $name } is not on this list. If it must go, choose “{ $choose }”; the estimates are then wider.
# $typed (Text)
problem-typed-day = “{ $typed }” is no day. Type a day such as 12 June 2027, or type year.
# $typed (Text)
problem-typed-no-such-day = “{ $typed }” is no day of the calendar. Check day and month.
# $typed (Text)
problem-typed-place = “{ $typed }” is no state or country, and no town was picked. Pick one of those under it, or leave it empty.
