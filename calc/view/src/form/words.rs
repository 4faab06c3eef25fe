//! What the form says, in English.

pub(super) const TREE: &str = "Tree";
pub(super) const SPECIES: &str = "Species";
pub(super) const FILTER: &str = "Type part of a name to shorten the list.";
pub(super) const NONE_ALIKE: &str =
    "No tree here has that name. Try less of it, or pick the last line.";
/// A tree that is known and has no rows of its own.
pub(super) const NOT_LISTED: &str = "not on this list, ";
/// Behind how many of these match.
pub(super) const NOT_ON_LIST: &str = " match, none of them on this list";
pub(super) const UNKNOWN: &str = "I don’t know, or not on this list";
pub(super) const UNKNOWN_KIND: &str = "What kind is it?";

pub(super) const SIZE: &str = "Trunk size";
pub(super) const SIZE_US: &str = "At chest height, 4 ft 6 in up.";
pub(super) const SIZE_METRIC: &str = "At chest height, 1.3 m up.";
pub(super) const UNIT_OF: &str = "Unit of this: ";
pub(super) const HOW: &str = "How was it measured";
pub(super) const HOW_OPEN: &str = "Neither picked: read as across.";
pub(super) const STEM: &str = "Stem ";
pub(super) const ADD_STEM: &str = "Add another stem";
pub(super) const REMOVE_STEM: &str = "Remove stem ";

pub(super) const PLACE: &str = "Place";
pub(super) const HIT: &str = "What could it hit?";
pub(super) const HIT_HINT: &str = "List all within two heights of the tree.";
pub(super) const THING: &str = "Thing ";
pub(super) const KIND: &str = "What is it?";
pub(super) const KIND_OPEN: &str = "Pick one";
pub(super) const FAR: &str = "How far from the trunk";
pub(super) const GROUND: &str = "Slope of the ground";
pub(super) const SLOPE: &str = "Slope towards it, in 100";
pub(super) const SLOPE_HINT: &str = "Rise over run: 20 is 1 up for 5 along.";
pub(super) const DOWNHILL: &str = "It lies downhill of the tree";
pub(super) const VOLTAGE: &str = "Voltage of the line, kV, if known";
pub(super) const ADD_THING: &str = "Add another thing";
pub(super) const REMOVE_THING: &str = "Remove thing ";
pub(super) const TWO_HEIGHTS: &str = "two heights of the tree";
pub(super) const NONE_IN: &str =
    "Nothing in reach: no building, road, path, line, property line or neighbour’s tree within ";
pub(super) const LINE_IN: &str = "Any overhead line within ";
pub(super) const NOT_ASKED: &str = "Left empty: not checked.";
pub(super) const HEIGHT: &str = "Tree height";
pub(super) const IF_MEASURED: &str = ", if measured";
pub(super) const LEFT_EMPTY: &str = "Left empty: ";
pub(super) const HEIGHT_USED: &str = " used: ";
pub(super) const HEIGHT_USED_OVER: &str =
    " times the tallest estimate, which hardly any measured tree exceeds.";
pub(super) const USED_STOP: &str = " used.";
pub(super) const TO: &str = " to ";
pub(super) const CLOSE: &str = ").";
pub(super) const HEIGHT_TABLE: &str = " used, the tallest tree of the whole table. Measure it.";
pub(super) const HEIGHT_EMPTY: &str = "Left empty: estimated from species and size.";
pub(super) const HEIGHT_SURE: &str = "Unusual for its size. I measured again: it is right.";
pub(super) const USED: &str = " used (";
pub(super) const BARK: &str = "Bark thickness";
pub(super) const BARK_EMPTY: &str = "Left empty: estimated from species and size.";

pub(super) const AID: &str = "Measure the height from the ground";
pub(super) const AID_BY: &str = "How?";
pub(super) const AID_PICK: &str = "Pick how you measure, and type the readings.";
pub(super) const TREE_SHADOW: &str = "The tree’s shadow";
pub(super) const TREE_SHADOW_HINT: &str = "From the middle of the trunk, on level ground.";
pub(super) const AID_DISTANCE: &str = "From your eye to the trunk, level";
pub(super) const STICK: &str = "Length of the stick";
pub(super) const STICK_SHADOW: &str = "Shadow of the stick, upright";
pub(super) const EYE_TO_STICK: &str = "From your eye to the stick";
pub(super) const EYE_HINT: &str = "Held upright so that it just covers the tree.";
pub(super) const TOP: &str = "Angle up to the top, degrees";
pub(super) const FOOT: &str = "Angle to the foot, degrees";
pub(super) const FOOT_HINT: &str = "With a minus where the foot is below your eye.";
pub(super) const AID_FILL: &str = "Fill in the height";
pub(super) const AID_MAKES: &str = "These make ";
pub(super) const AID_PRESS: &str =
    ". Another height stands above: the button puts this one in its place.";
pub(super) const AID_COUNTS: &str =
    ". This counts as the measured height. The button fills it in above.";
pub(super) const AID_FILLED: &str = "Filled in above, where it can be changed.";
pub(super) const MEASURED: &str = "As measured ";
pub(super) const MEASURED_END: &str = " below. It can be changed here.";
pub(super) const TIMED: &str = "Calibrate on your own trees";
pub(super) const TIMED_HOW: &str =
    "Trees that you ringed while their bark slipped set your own rate.";
pub(super) const TIMED_TREES: &str = "Size across of each, ";
pub(super) const TIMED_TREES_HINT: &str = "One tree a line, two trees or more.";
pub(super) const TIMED_MINUTES: &str = "Person-minutes for all, without walking";
pub(super) const TIMED_WIDTH: &str = "Width of their rings";
pub(super) const TIMED_WIDTH_HINT: &str = "Left empty: the least width, about 6 in (15 cm).";
pub(super) const TIMED_SPECIES: &str = "Their species, if they are of one";
pub(super) const TIMED_SPECIES_HINT: &str = "Left empty: bark of middling thickness.";
pub(super) const TIMED_KEEP: &str = "Keep them on this device";
pub(super) const TIMED_FORGET: &str = "Forget them here";
pub(super) const TIMED_SAVE: &str = "Download them as a file";
pub(super) const TIMED_OPEN: &str = "Or open a file that was downloaded here";

pub(super) const DATE: &str = "Date";
pub(super) const DAY: &str = "Day of the work";
pub(super) const TODAY: &str = "Today, ";
pub(super) const OTHER_DAY: &str = "Another day";
pub(super) const YEAR_ONLY: &str = "Just show me the year";
pub(super) const DAY_HINT_MDY: &str = "For example 6 20 2027, or June 20 2027.";
pub(super) const DAY_HINT_DMY: &str = "For example 20 6 2027, or 20 June 2027.";
pub(super) const PART_DAY: &str = "Day";
pub(super) const PART_MONTH: &str = "Month";
pub(super) const PART_YEAR: &str = "Year";
pub(super) const SIGNS: &str = "Tick what you see";

pub(super) const MORE: &str = "More about this tree, the place and the job";
pub(super) const MORE_TREE: &str = "The tree";
pub(super) const MORE_PLACE: &str = "The place";
pub(super) const MORE_JOB: &str = "The job";
pub(super) const SETTING: &str = "Where did it grow?";
pub(super) const CONDITION: &str = "Is it alive?";
pub(super) const LIVE_SHARE: &str = "Live bark all round, in 100";
pub(super) const LIVE_HINT: &str = "100 if it is alive all the way round.";
pub(super) const LIVE_EMPTY: &str = "Left empty: 100.";
pub(super) const OF_STEM: &str = ", stem ";
pub(super) const CLONE: &str = "Can every stem of the clone be ringed?";
pub(super) const CLONE_HINT: &str = "It spreads by roots: nearby stems are the same tree.";
pub(super) const GENUS: &str = "Living pines near it?";
pub(super) const VIGOUR: &str = "How fast does it grow?";
pub(super) const LIMBS: &str = "Limbs below the ring?";
pub(super) const REGION: &str = "State or country";
pub(super) const REGION_HINT: &str = "For local law, nesting months and diseases.";
pub(super) const STATES: &str = "United States";
pub(super) const PROVINCES: &str = "Canada";
pub(super) const COUNTRIES: &str = "Other countries";
pub(super) const REGION_OPEN: &str = "Not said: cautious rules";
pub(super) const WHERE: &str = "Where is it?";
pub(super) const HALF: &str = "Or only the half of the world";
pub(super) const LATITUDE: &str = "Latitude, degrees, north is plus";
pub(super) const LONGITUDE: &str = "Longitude, degrees, west is minus";
pub(super) const ELEVATION: &str = "Height above the sea";
pub(super) const POINT_HINT: &str = "Both or neither. They stay on this device.";
pub(super) const TOWN_COUNTRY: &str = "Country of the town";
pub(super) const TOWN: &str = "Town or place near it";
pub(super) const TOWN_HINT: &str = "Two letters are enough. Looked up on this device.";
pub(super) const TOWN_PICK: &str = "Pick one";
pub(super) const TOWN_COMING: &str = "Fetching the towns of this country …";
pub(super) const TOWN_FAILED: &str = "The towns could not be fetched. Type latitude and longitude below, or go on typing to try again.";
pub(super) const TOWN_NONE: &str =
    "No town here is called that. Try less of it, or type latitude and longitude below.";
pub(super) const TOWN_FILLED: &str = "Filled in below. It can be changed there.";
pub(super) const TOWNS_MATCH: &str = " towns to pick from.";
pub(super) const TOWN_MATCHES: &str = " town to pick from.";
pub(super) const NEAR_ONE: &str = "By the towns near, this point lies in ";
pub(super) const NEAR_MORE: &str = "This point is near a border: it may lie in ";
pub(super) const NEAR_OTHER: &str = ". The state or country says otherwise.";
pub(super) const NEAR_OPEN: &str = ". The state or country is not said yet.";
pub(super) const NEAR_USE: &str = "Use ";
pub(super) const POSITION: &str = "Use my position";
pub(super) const POSITION_HINT: &str = "Asked for only when pressed. It stays on this device.";
pub(super) const ELEVATION_EMPTY: &str =
    "Left empty: that of the stations near is used. 100 m (330 ft) is about 2 days.";
pub(super) const ELEVATION_USED: &str =
    " used, that of the stations near. 100 m (330 ft) is about 2 days.";
pub(super) const STATIONS_AT: &str = " The stations near stand at ";
pub(super) const FEET_OR_METRES: &str = ": feet or metres?";
pub(super) const SEEN_WHERE: &str = "Where did you see it?";
pub(super) const SEEN_POINT: &str = "The place where you saw it";
pub(super) const SEEN_HINT: &str = "Up to 800 km (500 miles) from the tree.";
pub(super) const SEEN_CARRIED: &str = "The dates rest on ";
pub(super) const RATES: &str = "Rates that carry the date here";
pub(super) const SPRING: &str = "This spring’s own temperatures";
pub(super) const SPRING_TABLE: &str = "Daily table: date, lowest, highest";
pub(super) const SPRING_HINT: &str = "A line a day from 1 March on: 2027-03-01, 2, 9.";
pub(super) const SPRING_FILE: &str = "Or choose a CSV file, or drop it here";
pub(super) const SPRING_SCALE: &str = "The numbers are in";
pub(super) const SPRING_STAYS: &str = "It needs the place. It stays on this device.";
pub(super) const LEAF: &str = "Leaf-out seen this year";
pub(super) const LEAF_ON: &str = "When did you see it?";
pub(super) const DRY: &str = "How long has it been dry?";
pub(super) const GOAL: &str = "What is it for?";
pub(super) const SPARE: &str = "Which stem stays alive?";
pub(super) const HERBICIDE: &str = "May herbicide be used?";
pub(super) const WALK: &str = "Walk from the last tree, minutes";
pub(super) const WALK_HINT: &str = "Or a distance, such as 200 ft.";
pub(super) const WALK_EMPTY: &str = "Left empty: 2 minutes, our own assumption.";
pub(super) const PRACTISED: &str = "A practised crew";
pub(super) const CANNOT_WAIT: &str = "It must be done on that day";

pub(super) const SHOW: &str = "Show the plan";
pub(super) const SHOW_ANSWER: &str = "Show the answer";
pub(super) const NEXT: &str = "Next tree, same place";
pub(super) const THREE: &str = "Three answers are enough: species, size, day.";
pub(super) const TWO: &str = "Two answers are enough: species and size.";

pub(super) const READ_AS: &str = "Read as ";
pub(super) const READ_ACROSS: &str = " across (";
pub(super) const OVER_PI: &str = " ÷ 3.1416)";

pub(super) const INCHES: &str = "inches";
pub(super) const CM: &str = "cm";
pub(super) const MM: &str = "mm";
pub(super) const FEET: &str = "feet";
pub(super) const METRES: &str = "metres";

pub(super) const ALL_OF: &str = " of ";
pub(super) const SHOWN: &str = " trees shown.";
pub(super) const MATCH: &str = " match.";

pub(super) const TAPE_SIZE: &str = "Measuring tape, size across";
pub(super) const TAPE_FAR: &str = "Measuring tape, ground round the tree";
pub(super) const TAPE_YEAR: &str = "Tape of the year, bark and rules";

/// Values of a choice with their words, in rows ([`crate::words::all`]); the first, empty one says what is used if nothing is picked.
pub(super) type Choice = &'static str;

pub(super) const UNKNOWN_NAMES: Choice = concat!(
    "unknown broadleaf=A broadleaf tree|",
    "unknown conifer=A conifer|",
    "unknown shrub=A shrub|",
    "palm=A palm|",
    "bamboo=Bamboo",
);
pub(crate) const KINDS: Choice = concat!(
    "=Pick one|",
    "building=Building|",
    "road=Road or street|",
    "path=Path or place people use|",
    "line=Power or phone line|",
    "property_line=Property line or neighbour’s tree|",
    "fence=Fence or field|",
    "keep_tree=Tree to keep",
);
/// The same, short enough for a tape.
pub(super) const KIND_SHORT: Choice = concat!(
    "building=building|",
    "road=road|",
    "path=path|",
    "line=line|",
    "property_line=property line|",
    "fence=fence|",
    "keep_tree=tree to keep",
);
pub(super) const HOWS: Choice = concat!("across=Across|", "around=Around",);
pub(super) const REPLIES: Choice = concat!("yes=Yes|", "no=No|", "cant_tell=I can’t tell",);
pub(super) const SIGN_WORDS: Choice = concat!(
    "cavity=A hole or cavity|",
    "cracks=Cracks in the trunk|",
    "conks=Shelf fungus, or fungus at the base|",
    "hung_limbs=Broken limbs hung in the crown|",
    "lean_toward=A lean toward something it could hit|",
    "lean_away=A lean away from it|",
    "dead_top=A dead top|",
    "vines=Vines up into the crown",
);
pub(super) const SETTINGS: Choice = concat!(
    "=Not said: woods used|",
    "woods=In the woods, or left over from them|",
    "open=In the open all its life, live limbs low down",
);
pub(super) const CONDITIONS: Choice = concat!(
    "=Not said: alive used|",
    "alive=Alive|",
    "declining=Declining|",
    "dead=Dead",
);
pub(super) const AID_WAYS: Choice = concat!(
    "=Pick one|",
    "shadow=By its shadow and that of a stick|",
    "angles=By a distance and two angles|",
    "stick=By a stick held upright",
);
pub(super) const YES_NO: Choice = concat!("=Not said|", "yes=Yes|", "no=No",);
pub(super) const VIGOURS: Choice = concat!(
    "=Not said: ordinary used|",
    "slow=Slowly|",
    "ordinary=Ordinary|",
    "fast=Fast",
);
pub(super) const LIMB_WORDS: Choice = concat!(
    "=Not said: none used|",
    "none=None|",
    "some=Some|",
    "many=Many",
);
pub(super) const HALVES: Choice = concat!(
    "=Not said: north used|",
    "north=North of the equator|",
    "south=South of the equator",
);
pub(super) const STAGES: Choice = concat!(
    "=Not seen: usual dates|",
    "buds_open=Half of the buds open|",
    "leaves_full=Leaves nearly full size|",
    "first_leaf=The first leaf",
);
pub(super) const SEEN_WHERES: Choice =
    concat!("=Here, or within a mile or so|", "elsewhere=Elsewhere",);
pub(super) const RATE_WORDS: Choice = concat!(
    "=Fitted to eastern North America|",
    "hopkins=Hopkins’ rates of 1918",
);
pub(super) const SCALES: Choice = concat!("celsius=°C|", "fahrenheit=°F",);
pub(super) const DRIES: Choice = concat!(
    "=Not said: not dry used|",
    "none=Not dry|",
    "two_weeks=Two weeks|",
    "month=A month or more",
);
pub(super) const GOALS: Choice = concat!(
    "=Not said: for wildlife|",
    "wildlife=A standing dead tree for wildlife|",
    "kill=Only to kill it|",
    "spare_one=To spare one stem of several",
);
pub(super) const HERBICIDES: Choice = concat!(
    "=Not said: both shown|",
    "no=No|",
    "licensed=By a licensed applicator|",
    "yes=Yes",
);
