### What the form asks.

form-none-alike = No tree here has that name. Try less of it, or pick the last line.
form-which-tree = Which tree?
form-which-tree-hint = Part of a name. Not sure? Leave empty.
form-pick-tree = Names that may be meant
form-none-of-these = None of these, or I don’t know
form-how-thick = How thick, at chest height?
form-measured-as = Measured as
form-which-place = Which town, or state?
form-which-place-hint = Sets the days and the local rules.
form-town-choose = Pick the town for days of its own.
form-nearest = Nearest thing it could hit?
form-nearest-hint = Look all round, two tree heights out.
form-kinds-nothing = Nothing that near, and no line
form-any-line = Any power or phone line that near?
form-line-hint = Look up, too.
form-which-day = Which day?
form-which-day-hint = Or type year to see the whole year.
# What of it may be typed as it stands.
form-which-day-example = year
form-today-alone = Today
form-year-alone = Year
form-start = A size and a day are enough to start. What you leave out is named in the answer.
form-more-used = None needed. Now used: usual bark, tallest height, no damage seen, 1 person.
# The same with how many rows are folded.
# $rows (Count)
form-more-rows = { $rows } more, none needed. Now used: usual bark, tallest height, no damage seen, 1 person.
form-told = You told it.
form-grows = Where and how it grows
form-seen = What you see on it
form-stems = More than one stem
form-things = More it could hit, and slopes
form-leaves = Leaves out this year
form-job = The job, and herbicide
form-crew = Crew and walk
form-used-grows = Used now: woods for effort, the taller for reach, ordinary growth
form-used-signs = Used now: alive, no holes, cracks, fungus, lean or broken limbs
form-used-stems = Used now: one stem
form-used-things = Used now: level ground, nothing else
form-used-place = Used now: no state said, cautious rules
form-used-leaves = Used now: worked out from the climate of the place
form-used-crew = Used now: 1 person, 2 minutes from the last tree, our own assumption
form-used-job = Used now: for wildlife; plans with and without herbicide
form-measured-in-across = inches across
form-measured-in-around = inches around
form-measured-cm-across = cm across
form-measured-cm-around = cm around
# A tree that is known and has no rows of its own.
form-not-listed = not on this list,{ " " }
form-unknown-kind = What kind is it?
form-size-us = 4 ft 6 in up. 14 1/2 is fine.
form-size-metric = 1.3 m up. 36.5 is fine.
# What of the two may be typed as it stands.
form-size-example-us = 14 1/2
form-size-example-metric = 36.5
form-how = How was it measured
# Its number follows.
form-stem = Stem{ " " }
form-add-stem = Add another stem
form-place = State, country, exact place
form-hit-hint = List all within two heights of the tree.
form-kind = What is it?
form-kind-open = Pick one
form-far = How far from the trunk
form-ground = Slope of the ground
form-slope = Slope towards it, in 100
form-slope-hint = Rise over run: 20 is 1 up for 5 along.
form-downhill = It lies downhill of the tree
form-voltage = Voltage of the line, kV, if known
form-add-thing = Add another thing
form-height = Tree height
form-if-measured = , if measured
form-height-empty = Used now: the tallest estimate for species and size
# A trunk wider than almost any.
form-size-sure = I measured again: it is that thick.
form-height-sure = Unusual for its size. I measured again: it is right.
form-bark = Bark thickness
form-bark-empty = Used now: the usual bark of your tree
form-aid = Measure the height from the ground
form-aid-by = How?
form-aid-pick = Pick how you measure, and type the readings.
form-tree-shadow = The tree’s shadow
form-tree-shadow-hint = From the middle of the trunk, on level ground.
form-aid-distance = From your eye to the trunk, level
form-stick = Length of the stick
form-stick-shadow = Shadow of the stick, upright
form-eye-to-stick = From your eye to the stick
form-eye-hint = Held upright so that it just covers the tree.
form-top = Angle up to the top, degrees
form-foot = Angle to the foot, degrees
form-foot-hint = With a minus where the foot is below your eye.
form-aid-fill = Fill in the height
form-aid-filled = Filled in above, where it can be changed.
form-timed = Calibrate on your own trees
form-timed-how = Trees that you ringed while their bark slipped set your own rate.
form-timed-trees-hint = One tree a line, two trees or more.
form-timed-minutes = Person-minutes for all, without walking
form-timed-width = Width of their rings
form-timed-width-hint = Left empty: the least width, about 6 in (15 cm).
form-timed-species = Their species, if they are of one
form-timed-species-hint = Left empty: bark of middling thickness.
form-timed-keep = Keep them on this device
form-timed-forget = Forget them here
form-timed-save = Download them as a file
form-timed-open = Or open a file that was downloaded here
form-day-hint-mdy = For example 6 20 2027, or June 20 2027.
form-day-hint-dmy = For example 20 6 2027, or 20 June 2027.
form-part-day = Day
form-part-month = Month
form-part-year = Year
form-signs = Tick what you see
form-more = Improve the estimate
form-setting = Where did it grow?
form-condition = Is it alive?
form-live-share = Live bark all round, in 100
form-live-hint = 100 if it is alive all the way round.
form-clone = Can every stem of the clone be ringed?
form-clone-hint = It spreads by roots: nearby stems are the same tree.
form-genus = Living pines near it?
form-vigour = How fast does it grow?
form-limbs = Limbs below the ring?
form-region = State or country
form-region-hint = For local law, nesting months and diseases.
form-states = United States
form-provinces = Canada
form-countries = Other countries
form-region-open = Not said: cautious rules
form-where = Where is it?
form-half = Or only the half of the world
form-latitude = Latitude, degrees, north is plus
form-longitude = Longitude, degrees, west is minus
form-elevation = Height above the sea
form-point-hint = Both or neither. They stay on this device.
form-town-country = Country of the town
form-town = Town or place near it
form-town-hint = Two letters are enough. Looked up on this device.
form-town-pick = Pick one
form-town-coming = Fetching the towns of this country …
form-town-failed = The towns could not be fetched. Type latitude and longitude below, or go on typing to try again.
form-town-none = No town here is called that. Try less of it, or type latitude and longitude below.
form-town-filled = Filled in below. It can be changed there.
form-position = Use my position
form-position-hint = Asked for only when pressed. It stays on this device.
form-elevation-empty = Left empty: that of the stations near is used. 100 m (330 ft) is about 2 days.
form-seen-where = Where did you see it?
form-seen-point = The place where you saw it
form-seen-hint = Up to 800 km (500 miles) from the tree.
form-rates = Rates that carry the date here
form-spring = This spring’s own temperatures
form-spring-table = Daily table: date, lowest, highest
form-spring-hint = A line a day from 1 March on: 2027-03-01, 2, 9.
form-spring-file = Or choose a CSV file, or drop it here
form-spring-scale = The numbers are in
form-spring-stays = It needs the place. It stays on this device.
form-leaf = Leaf-out seen this year
form-leaf-on = When did you see it?
form-dry = How long has it been dry?
form-goal = What is it for?
form-spare = Which stem stays alive?
form-herbicide = May herbicide be used?
form-walk = Walk from the last tree, minutes
form-walk-hint = Or a distance, such as 200 ft.
form-practised = A practised crew
form-cannot-wait = It must be done on that day
form-show = Show the plan
form-show-answer = Show the answer
form-soon = The calculator is on its way. It answers as soon as it is here.
form-next = Next tree, same place
form-two = A size is enough to start.
form-inches = inches
form-cm = cm
form-mm = mm
form-feet = feet
form-metres = metres

## Labels with a number or a unit
# $field (Phrase): a label
form-unit-of = Unit of this: { $field }
# $stem (Count): its number
form-stem-number = Stem { $stem }
# Behind a label.
# $stem (Count): its number
form-of-stem = , stem { $stem }
# $stem (Text): its number
form-remove-stem = Remove stem { $stem }
# $thing (Text): its number
form-thing = Thing { $thing }
# $thing (Text): its number
form-remove-thing = Remove thing { $thing }
# $unit (Phrase)
form-timed-trees = Size across of each, { $unit }
# $today (Text)
form-today = Today, { $today }
# $region (Text)
form-near-use = Use { $region }

## Lines that follow what is typed
# $shown (Count)
# $all (Count)
form-shown = { $shown } of { $all } trees shown.
# $reach (Length)
form-two-heights-are = { $reach } is two heights of this tree.
# $days (Text)
form-slips-next = Bark slips next: { $days }.
# $place (Text)
form-place-used = Used now: { $place }.
# $shown (Count)
# $matching (Count)
form-matching-more = { $shown } of { $matching } that match. Type more of it.
# $beside (Count)
form-none-on-list = { $beside } match, none of them on this list
# $matching (Count)
# $all (Count)
form-matching = { $matching } of { $all } match.
# $length (Length)
form-read-as = Read as { $length }.
# $size (Length)
# $girth (Text): without its unit
form-read-across = { $size } across ({ $girth } ÷ 3.1416)
# $height (Length)
form-height-used = Used now: { $height }
# $height (Length)
# $times (Text)
form-height-over = Used now: { $height }, { $times } times the tallest estimate, which hardly any measured tree exceeds
# $height (Length)
form-height-table = Used now: { $height }, the tallest tree of the whole table. Measure it.
# $bark (Length)
# $low (Text)
# $high (Text)
form-bark-used = Used now: { $bark } ({ $low } to { $high }), the usual bark of your tree
# $height (Length)
form-elevation-used = Left empty: { $height } used, that of the stations near. 100 m (330 ft) is about 2 days.
# $height (Length)
form-feet-or-metres = The stations near stand at { $height }: feet or metres?
# $height (Length)
form-aid-press = These make { $height }. Another height stands above: the button puts this one in its place.
# $height (Length)
form-aid-counts = These make { $height }. This counts as the measured height. The button fills it in above.
# $how (Phrase): fields-height-by
form-measured = As measured { $how } below. It can be changed here.
# $towns (Count)
form-towns-match = { $towns ->
    [one] { $towns } town to pick from.
   *[other] { $towns } towns to pick from.
}
# $regions (Or)
form-near-one = By the towns near, this point lies in { $regions }.
# $regions (Or)
form-near-more = This point is near a border: it may lie in { $regions }.
form-near-other = The state or country says otherwise.
form-near-open = The state or country is not said yet.
# $basis (Phrase): season-seen-elsewhere
form-seen-carried = The dates rest on { $basis }.

## Values of choices
form-unknown-names-unknown-broadleaf = A broadleaf tree
form-unknown-names-unknown-conifer = A conifer
form-unknown-names-unknown-shrub = A shrub
form-unknown-names-palm = A palm
form-unknown-names-bamboo = Bamboo

# $of (Value)
form-kinds =
    .unsaid = Pick one
    .building = Building
    .road = Road or street
    .path = Path or place people use
    .line = Power or phone line
    .property-line = Property line or neighbour’s tree
    .fence = Fence or field
    .keep-tree = Tree to keep

# $of (Value)
form-hows =
    .across = Across
    .around = Around

# $of (Value)
form-replies =
    .yes = Yes
    .no = No
    .cant-tell = Can’t tell

# $of (Value)
form-sign-words =
    .cavity = A hole or cavity
    .cracks = Cracks in the trunk
    .conks = Shelf fungus, or fungus at the base
    .hung-limbs = Broken limbs hung in the crown
    .lean-toward = A lean toward something it could hit
    .lean-away = A lean away from it
    .dead-top = A dead top
    .vines = Vines up into the crown

# $of (Value)
form-settings =
    .unsaid = Not said: woods used
    .woods = In the woods, or left over from them
    .open = In the open all its life, live limbs low down

# $of (Value)
form-conditions =
    .unsaid = Not said: alive used
    .alive = Alive
    .declining = Declining
    .dead = Dead

# $of (Value)
form-aid-ways =
    .unsaid = Pick one
    .shadow = By its shadow and that of a stick
    .angles = By a distance and two angles
    .stick = By a stick held upright

# $of (Value)
form-yes-no =
    .unsaid = Not said
    .yes = Yes
    .no = No

# $of (Value)
form-vigours =
    .unsaid = Not said: ordinary used
    .slow = Slowly
    .ordinary = Ordinary
    .fast = Fast

# $of (Value)
form-limb-words =
    .unsaid = Not said: none used
    .none = None
    .some = Some
    .many = Many

# $of (Value)
form-halves =
    .unsaid = Not said: north used
    .north = North of the equator
    .south = South of the equator

# $of (Value)
form-stages =
    .unsaid = Not seen: usual dates
    .buds-open = Half of the buds open
    .leaves-full = Leaves nearly full size
    .first-leaf = The first leaf

# $of (Value)
form-seen-wheres =
    .unsaid = Here, or within a mile or so
    .elsewhere = Elsewhere

# $of (Value)
form-rate-words =
    .unsaid = Fitted to eastern North America
    .hopkins = Hopkins’ rates of 1918

# $of (Value)
form-scales =
    .celsius = °C
    .fahrenheit = °F

# $of (Value)
form-dries =
    .unsaid = Not said: not dry used
    .none = Not dry
    .two-weeks = Two weeks
    .month = A month or more

# $of (Value)
form-goals =
    .unsaid = Not said: for wildlife
    .wildlife = A standing dead tree for wildlife
    .kill = Only to kill it
    .spare-one = To spare one stem of several

# $of (Value)
form-herbicides =
    .unsaid = Not said: both shown
    .no = No
    .licensed = By a licensed applicator
    .yes = Yes
