### The bark on a day, and the months of law and biology.

# Who doubts the season.
# $birches (Node): the source
# $oaks (Node): the source
season-contested = Not everyone agrees on the season. In one controlled test winter rings killed all silver birches and spring rings 40 in 100 ({ $birches }), since living wood can regrow bark; the same kind of peel before leaf-out killed 75 in 100 red oaks in 14 months ({ $oaks }). Hence the scrape and the first visit.
# The climate table could not be had.
season-table-missing = The climate table was not at hand, so the place could not be used: the dates are wider.
# The day.
season-when = When
# Year.
season-twin-year = The year tape as a table
# Rules by month.
season-more-rules = All months that law and biology name here
# Year.
season-head-year-from = From
season-head-year-to = To
season-head-year-bark = Bark
season-head-year-rules = Rules
# Rules.
season-head-rules-about = About
season-head-rules-from = From
season-head-rules-to = To
season-head-rules-who-says-so = Who says so
# No rule meets the day.
season-no-rule-on-day = No months of law or biology in our table meet this day. Look for nests and bats all the same.
# All year.
season-all-year = all year
# What the bark does on a day, as a clause about "its bark"; the number in brackets follows.
# $of (Verdict)
season-bark =
    .dormant = does not slip yet
    .too-early = seldom slips so early
    .opening-test = is beginning to slip
    .best = slips
    .closing-test = is beginning to bind again
    .late = has usually bound again
    .bonded = is bound again
    .test-first = slips, as a rule: test first
    .unknown = does not slip, as a rule
# The same in a word or two, for tables and tags.
# $of (Verdict)
season-verdict =
    .dormant = dormant
    .too-early = too early: test
    .opening-test = opening: test first
    .best = best
    .closing-test = closing: test first
    .late = late: usually bonding
    .bonded = bonded
    .test-first = test first
    .unknown = does not slip, as a rule
# Why the dates are less sure, as a sentence.
# $of (Flag)
season-flag =
    .no-place = No place was given: the months of this half of the world are used.
    .region-too-wide = The towns of this state or country differ too much for dates: the months of this half of the world are used. Name a town.
    .region-without-dates = No dates of this state or country are at hand: the months of this half of the world are used. Name a town.
    .far-from-places = The nearest climate station is over 300 km (190 miles) off: the months of this half of the world are used.
    .elevation-assumed = The elevation was not given: that of the stations near is used. 100 m (330 ft) is about 2 days.
    .mild-winter = Winters are mild here: opening dates mean little.
    .no-opening-date = No month is cold here: test in any wet, growing month.
    .early-budbreak = Buds open very early here: the dates are less sure.
    .low-latitude = So near the equator the dates are less sure.
    .high-latitude = So near the pole the dates are less sure.
    .elevation-odd = The elevation is far from that of the stations near: feet or metres? 100 m (330 ft) is about 2 days.
    .estimated-sum = The warmth this species needs is our own estimate.
    .evergreen-broadleaf = An evergreen broadleaf has no dates: its bark slips whenever it grows and is wet. Test.
    .unknown-wood = How this wood grows is not known: the months of this half of the world are used.
    .conifer-needs-place = A conifer's dates come from temperatures: give the place.
    .too-cold = It never gets warm enough here by the table: the months of this half of the world are used.
    .observed-out-of-season = The leaf-out you saw lies outside any spring here. It was not used.
    .observed-far-from-climate = The leaf-out you saw is over 45 days from what the climate gives. It was used: look at it again.
    .observed-too-far = The leaf-out was seen too far away to be carried here. It was not used.
    .observed-needs-elevation = The leaf-out needs both elevations to be carried here. It was not used.
    .observed-needs-place = Give the place of this tree, so that the leaf-out can be carried here.
    .spring-needs-place = This spring's temperatures need a place with a climate station near. They were not used.
    .spring-behind-leaf-out = The leaf-out you saw counts before this spring's temperatures. They were not used.
    .spring-not-used = This spring's temperatures hold no day before leaf-out. They were not used.
    .spring-impossible = This spring's temperatures can't be those of this place: look at unit, place and columns. They were not used.
    .spring-gaps = This spring's temperatures have gaps, filled from ordinary years.
    .spring-far-from-climate = This spring's temperatures are far from ordinary years: look at unit, place and columns. The dates are less sure.
# Knowledge of one spring that the dates of another can't rest on.
season-other-season = What you gave of one spring serves that season alone: the dates here are of another.
# What a rule is about.
# $of (Topic)
season-topic =
    .birds = Nesting birds
    .bats = Bats that roost in trees
    .snags = Snags kept for bats
    .oak-wilt = Oak wilt
    .elm = Elm disease and its beetles
    .pine-beetles = Pine beetles
    .ash-borer = Ash borer
    .laurel-wilt = Laurel wilt
    .group = The group's own months
# What stays true however good the day.
season-always-test = Open a patch the size of your hand first. If it tears, stop. Scrape the wood, and look again in 2 to 6 weeks.
# A short season.
season-short-season = The season is short here: test every time.
# No stretch at all.
season-no-stretch = There is no good stretch in the next two years.
# Sunny side and fire, without a number.
season-sides = The sunny side and old fire scars bind sooner: test there too.
# Guides that disagree with the model on this species.
season-guide-longer = Guides let this tree be ringed from late spring to midsummer; the model ends sooner. Both stand here: test.
# Names of the two lanes, and of what stands on the tape.
season-bark-lane = Bark
# The lane of law and biology.
season-rules-lane = Rules
# A notch.
season-today = today
# Bracket, short.
season-window-short = window
# Key of the year tape.
season-slips = slips
# Hatched.
season-may-slip = may slip: test
# Empty.
season-does-not = does not
# Crossed.
season-closed = closed by a rule
# Dotted.
season-caution = a caution, closes nothing
# Notch.
season-notch = notch
# What it stands for.
season-notch-is = your day
# Pin.
season-pin = pin
# What it stands for.
season-pin-is = a visit
# Beside an empty band.
season-rest-of-year = the rest of the year

## Where the dates come from
# $km (Text)
# $miles (Text)
season-nearest = Climate from the four nearest places, the nearest { $km } km ({ $miles } miles) off.
# $km (Text)
# $miles (Text)
# $elevation (Length)
season-nearest-high = Climate from the four nearest places, the nearest { $km } km ({ $miles } miles) off, for { $elevation } above the sea.
# $lat (Text): degrees
# $lon (Text)
season-meant = No station within 300 km (190 miles) of this point. Did you mean { $lat }, { $lon }? West and south are minus.
# $town (Text)
# $region (Text)
season-region = No town was given: these are the dates of { $town }, in the middle of { $region }. Name a town for its own.
# $town (Text)
# $region (Text)
# $warm (Text): a town
# $warm-day (Date): without its year
# $cold (Text): a town
# $cold-day (Date)
season-region-wide = No town was given: these are the dates of { $town }, in the middle of { $region }: earlier in { $warm } ({ $warm-day }), later in { $cold } ({ $cold-day }). Name a town for its own.
season-seen-here = leaf-out that you saw here this year
# $shift (Text): with its sign
season-seen-elsewhere = leaf-out seen elsewhere this year, carried here: { $shift } days
# $days (Count)
# $share (Percent)
season-own-spring = this spring's own temperatures on { $days } days, { $share } in 100 of the warmth needed; the rest from ordinary years
season-climate = the climate of the place
season-other-year = a leaf-out of another year

## A chance, behind a word
season-hardly-ever = hardly ever
# $years (Count)
season-years-in-ten = { $years ->
    [one] about { $years } year in 10
   *[other] about { $years } years in 10
}
season-nearly-every = nearly every year

## Oak wilt and the ash borer where the tree stands
## $place (Text): a state or a country
## $who (Text): who decides
# $place (Text): a state or a country
# $who (Text): who decides
season-oak-wilt-known = Oak wilt is known in { $place }. Ask { $who }.
season-oak-wilt-near = Oak wilt is near { $place }: ask whether it has arrived; nothing is ruled out by it. Ask { $who }.
season-oak-wilt-unknown = Oak wilt is not known in { $place }.
season-oak-wilt-unknown-ask = Oak wilt is not known in { $place }. Ask { $who }.
season-borer-known = The emerald ash borer is known in { $place }. Ask { $who }.
season-borer-near = The emerald ash borer is near { $place }: ask whether it has arrived; an ash is judged as where it is known. Ask { $who }.
season-borer-unknown = The emerald ash borer is not known in { $place }.
season-borer-unknown-ask = The emerald ash borer is not known in { $place }. Ask { $who }.

## Rules and stretches
season-rule-default = A cautious default of our own: your state or country has no months of its own here, or was not given.
# $whose (Text): as printed
# $force (Text): as printed
season-rule-force = { $whose }: { $force }.
# $first (Span)
season-next-good = The next good stretch, outside the months that rule a ring out: { $first }.
# $first (Span)
# $after (Span)
season-next-two = The next good stretch, outside the months that rule a ring out: { $first }. The one after: { $after }.
# $opens (Text): days
# $closes (Text)
season-give-or-take = Give or take { $opens } days at the opening and { $closes } at the closing.
# $group (Text)
# $months (And): spans of days
season-group-months = { $group } cuts no ring from { $months }
# $days (Span)
season-window-label = your window: { $days }
# For those who do not see the tape; what it shows follows.
# $year (Text)
season-year-aria = The bark in { $year }
# $day (Text)
season-year-asked = your day { $day }
# Folded: how sure the dates are, months of law and biology.
season-more-of-dates = More about these dates, law and biology
# Where the answer waits.
season-until-then = What you can do now
# A tree is hard to find again without leaves.
season-tag-it = Tag the tree, so that you find it again.
# $day (Date)
season-note-the-day = Put the day in a calendar: { $day }.
