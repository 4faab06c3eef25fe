//! What the form says, in English.

pub const TREE: &str = "Tree";
pub const SPECIES: &str = "Species";
pub const FILTER: &str = "Type part of a name to shorten the list.";
pub const NONE_ALIKE: &str = "No tree here has that name. Try less of it, or pick the last line.";
pub const UNKNOWN: &str = "I don’t know, or not on this list";
pub const UNKNOWN_KIND: &str = "What kind is it?";

pub const SIZE: &str = "Trunk size";
pub const SIZE_US: &str = "At chest height, 4 ft 6 in up.";
pub const SIZE_METRIC: &str = "At chest height, 1.3 m up.";
pub const UNIT_OF: &str = "Unit of this: ";
pub const HOW: &str = "How was it measured";
pub const HOW_OPEN: &str = "Neither picked: read as across.";
pub const STEM: &str = "Stem ";
pub const ADD_STEM: &str = "Add another stem";
pub const REMOVE_STEM: &str = "Remove stem ";

pub const PLACE: &str = "Place";
pub const HIT: &str = "What could it hit?";
pub const HIT_HINT: &str = "List all within two heights of the tree.";
pub const THING: &str = "Thing ";
pub const KIND: &str = "What is it?";
pub const KIND_OPEN: &str = "Pick one";
pub const FAR: &str = "How far from the trunk";
pub const GROUND: &str = "Slope of the ground";
pub const SLOPE: &str = "Slope towards it, in 100";
pub const SLOPE_HINT: &str = "Rise over run: 20 is 1 up for 5 along.";
pub const DOWNHILL: &str = "It lies downhill of the tree";
pub const VOLTAGE: &str = "Voltage of the line, kV, if known";
pub const ADD_THING: &str = "Add another thing";
pub const REMOVE_THING: &str = "Remove thing ";
pub const TWO_HEIGHTS: &str = "two heights of the tree";
pub const NONE_IN: &str =
    "Nothing in reach: no building, road, path, line, property line or neighbour’s tree within ";
pub const LINE_IN: &str = "Any overhead line within ";
pub const NOT_ASKED: &str = "Left empty: not checked.";
pub const HEIGHT: &str = "Tree height";
pub const IF_MEASURED: &str = ", if measured";
pub const LEFT_EMPTY: &str = "Left empty: ";
pub const HEIGHT_USED: &str = " used, the tallest estimate plus ";
pub const IN_100: &str = " in 100.";
pub const USED_STOP: &str = " used.";
pub const TO: &str = " to ";
pub const CLOSE: &str = ").";
pub const HEIGHT_TABLE: &str = " used, the tallest tree of the whole table. Measure it.";
pub const HEIGHT_EMPTY: &str = "Left empty: estimated from species and size.";
pub const HEIGHT_SURE: &str = "Unusual for its size. I measured again: it is right.";
pub const USED: &str = " used (";
pub const BARK: &str = "Bark thickness";
pub const BARK_EMPTY: &str = "Left empty: estimated from species and size.";

pub const AID: &str = "Measure the height from the ground";
pub const AID_BY: &str = "How?";
pub const AID_PICK: &str = "Pick how you measure, and type the readings.";
pub const TREE_SHADOW: &str = "The tree’s shadow";
pub const TREE_SHADOW_HINT: &str = "From the middle of the trunk, on level ground.";
pub const AID_DISTANCE: &str = "From your eye to the trunk, level";
pub const STICK: &str = "Length of the stick";
pub const STICK_SHADOW: &str = "Shadow of the stick, upright";
pub const EYE_TO_STICK: &str = "From your eye to the stick";
pub const EYE_HINT: &str = "Held upright so that it just covers the tree.";
pub const TOP: &str = "Angle up to the top, degrees";
pub const FOOT: &str = "Angle to the foot, degrees";
pub const FOOT_HINT: &str = "With a minus where the foot is below your eye.";
pub const AID_FILL: &str = "Fill in the height";
pub const AID_MAKES: &str = "These make ";
pub const AID_PRESS: &str = ". The button fills it in above.";
pub const AID_FILLED: &str = "Filled in above, where it can be changed.";
pub const MEASURED: &str = "As measured ";
pub const MEASURED_END: &str = " below. It can be changed here.";
pub const TIMED: &str = "Calibrate on your own trees";
pub const TIMED_HOW: &str = "Trees that you ringed while their bark slipped set your own rate.";
pub const TIMED_TREES: &str = "Size across of each, ";
pub const TIMED_TREES_HINT: &str = "One tree a line, two trees or more.";
pub const TIMED_MINUTES: &str = "Person-minutes for all, without walking";
pub const TIMED_WIDTH: &str = "Width of their rings";
pub const TIMED_WIDTH_HINT: &str = "Left empty: the least width, about 6 in (15 cm).";
pub const TIMED_SPECIES: &str = "Their species, if they are of one";
pub const TIMED_SPECIES_HINT: &str = "Left empty: bark of middling thickness.";
pub const TIMED_KEEP: &str = "Keep them on this device";
pub const TIMED_FORGET: &str = "Forget them here";
pub const TIMED_SAVE: &str = "Download them as a file";
pub const TIMED_OPEN: &str = "Or open a file that was downloaded here";

pub const DATE: &str = "Date";
pub const DAY: &str = "Day of the work";
pub const TODAY: &str = "Today, ";
pub const OTHER_DAY: &str = "Another day";
pub const YEAR_ONLY: &str = "Just show me the year";
pub const DAY_HINT_MDY: &str = "For example 6 20 2027, or June 20 2027.";
pub const DAY_HINT_DMY: &str = "For example 20 6 2027, or 20 June 2027.";
pub const PART_DAY: &str = "Day";
pub const PART_MONTH: &str = "Month";
pub const PART_YEAR: &str = "Year";
pub const SIGNS: &str = "Tick what you see";

pub const MORE: &str = "More about this tree, the place and the job";
pub const MORE_TREE: &str = "The tree";
pub const MORE_PLACE: &str = "The place";
pub const MORE_JOB: &str = "The job";
pub const SETTING: &str = "Where did it grow?";
pub const CONDITION: &str = "Is it alive?";
pub const LIVE_SHARE: &str = "Live bark all round, in 100";
pub const LIVE_HINT: &str = "100 if it is alive all the way round.";
pub const LIVE_EMPTY: &str = "Left empty: 100.";
pub const OF_STEM: &str = ", stem ";
pub const CLONE: &str = "Can every stem of the clone be ringed?";
pub const CLONE_HINT: &str = "It spreads by roots: nearby stems are the same tree.";
pub const GENUS: &str = "Living pines near it?";
pub const VIGOUR: &str = "How fast does it grow?";
pub const LIMBS: &str = "Limbs below the ring?";
pub const REGION: &str = "State or country";
pub const REGION_HINT: &str = "For local law, nesting months and diseases.";
pub const STATES: &str = "United States";
pub const PROVINCES: &str = "Canada";
pub const COUNTRIES: &str = "Other countries";
pub const REGION_OPEN: &str = "Not said: cautious rules";
pub const WHERE: &str = "Where is it?";
pub const HALF: &str = "Or only the half of the world";
pub const LATITUDE: &str = "Latitude, degrees, north is plus";
pub const LONGITUDE: &str = "Longitude, degrees, west is minus";
pub const ELEVATION: &str = "Height above the sea";
pub const POINT_HINT: &str = "Both or neither. They stay on this device.";
pub const TOWN_COUNTRY: &str = "Country of the town";
pub const TOWN: &str = "Town or place near it";
pub const TOWN_HINT: &str = "Two letters are enough. Looked up on this device.";
pub const TOWN_PICK: &str = "Pick one";
pub const TOWN_COMING: &str = "Fetching the towns of this country …";
pub const TOWN_FAILED: &str = "The towns could not be fetched. Type latitude and longitude below, or go on typing to try again.";
pub const TOWN_NONE: &str =
    "No town here is called that. Try less of it, or type latitude and longitude below.";
pub const TOWN_FILLED: &str = "Filled in below. It can be changed there.";
pub const TOWNS_MATCH: &str = " towns to pick from.";
pub const TOWN_MATCHES: &str = " town to pick from.";
pub const NEAR_ONE: &str = "By the towns near, this point lies in ";
pub const NEAR_MORE: &str = "This point is near a border: it may lie in ";
pub const NEAR_OTHER: &str = ". The state or country says otherwise.";
pub const NEAR_OPEN: &str = ". The state or country is not said yet.";
pub const NEAR_USE: &str = "Use ";
pub const POSITION: &str = "Use my position";
pub const POSITION_HINT: &str = "Asked for only when pressed. It stays on this device.";
pub const ELEVATION_EMPTY: &str =
    "Left empty: that of the stations near is used. 100 m (330 ft) is about 2 days.";
pub const ELEVATION_USED: &str =
    " used, that of the stations near. 100 m (330 ft) is about 2 days.";
pub const STATIONS_AT: &str = " The stations near stand at ";
pub const FEET_OR_METRES: &str = ": feet or metres?";
pub const SEEN_WHERE: &str = "Where did you see it?";
pub const SEEN_POINT: &str = "The place where you saw it";
pub const SEEN_HINT: &str = "Up to 800 km (500 miles) from the tree.";
pub const SEEN_CARRIED: &str = "The dates rest on ";
pub const RATES: &str = "Rates that carry the date here";
pub const SPRING: &str = "This spring’s own temperatures";
pub const SPRING_TABLE: &str = "Daily table: date, lowest, highest";
pub const SPRING_HINT: &str = "A line a day from 1 March on: 2027-03-01, 2, 9.";
pub const SPRING_FILE: &str = "Or choose a CSV file, or drop it here";
pub const SPRING_SCALE: &str = "The numbers are in";
pub const SPRING_STAYS: &str = "It needs the place. It stays on this device.";
pub const LEAF: &str = "Leaf-out seen this year";
pub const LEAF_ON: &str = "When did you see it?";
pub const DRY: &str = "How long has it been dry?";
pub const GOAL: &str = "What is it for?";
pub const SPARE: &str = "Which stem stays alive?";
pub const HERBICIDE: &str = "May herbicide be used?";
pub const WALK: &str = "Walk from the last tree, minutes";
pub const WALK_HINT: &str = "Or a distance, such as 200 ft.";
pub const WALK_EMPTY: &str = "Left empty: 2 minutes, our own assumption.";
pub const PRACTISED: &str = "A practised crew";
pub const CANNOT_WAIT: &str = "It must be done on that day";

pub const SHOW: &str = "Show the plan";
pub const SHOW_ANSWER: &str = "Show the answer";
pub const NEXT: &str = "Next tree, same place";
pub const THREE: &str = "Three answers are enough: species, size, day.";
pub const TWO: &str = "Two answers are enough: species and size.";

pub const READ_AS: &str = "Read as ";
pub const READ_ACROSS: &str = " across (";
pub const OVER_PI: &str = " ÷ 3.1416)";

pub const INCHES: &str = "inches";
pub const CM: &str = "cm";
pub const MM: &str = "mm";
pub const FEET: &str = "feet";
pub const METRES: &str = "metres";

pub const ALL_OF: &str = " of ";
pub const SHOWN: &str = " trees shown.";
pub const MATCH: &str = " match.";

pub const TAPE_SIZE: &str = "Measuring tape, size across";
pub const TAPE_FAR: &str = "Measuring tape, ground round the tree";
pub const TAPE_YEAR: &str = "Tape of the year, bark and rules";

/// Values of a choice with their words, in rows ([`crate::words::all`]); the first, empty one says what is used if nothing is picked.
pub type Choice = &'static str;

pub const UNKNOWN_NAMES: Choice = concat!(
    "unknown broadleaf=A broadleaf tree|",
    "unknown conifer=A conifer|",
    "unknown shrub=A shrub|",
    "palm=A palm|",
    "bamboo=Bamboo",
);
pub const KINDS: Choice = concat!(
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
pub const KIND_SHORT: Choice = concat!(
    "building=building|",
    "road=road|",
    "path=path|",
    "line=line|",
    "property_line=property line|",
    "fence=fence|",
    "keep_tree=tree to keep",
);
pub const HOWS: Choice = concat!("across=Across|", "around=Around",);
pub const REPLIES: Choice = concat!("yes=Yes|", "no=No|", "cant_tell=I can’t tell",);
pub const SIGN_WORDS: Choice = concat!(
    "cavity=A hole or cavity|",
    "cracks=Cracks in the trunk|",
    "conks=Shelf fungus, or fungus at the base|",
    "hung_limbs=Broken limbs hung in the crown|",
    "lean_toward=A lean toward something it could hit|",
    "lean_away=A lean away from it|",
    "dead_top=A dead top|",
    "vines=Vines up into the crown",
);
pub const SETTINGS: Choice = concat!(
    "=Not said: woods used|",
    "woods=In the woods|",
    "open=In the open: yard, street, hedgerow",
);
pub const CONDITIONS: Choice = concat!(
    "=Not said: alive used|",
    "alive=Alive|",
    "declining=Declining|",
    "dead=Dead",
);
pub const AID_WAYS: Choice = concat!(
    "=Pick one|",
    "shadow=By its shadow and that of a stick|",
    "angles=By a distance and two angles|",
    "stick=By a stick held upright",
);
pub const YES_NO: Choice = concat!("=Not said|", "yes=Yes|", "no=No",);
pub const VIGOURS: Choice = concat!(
    "=Not said: ordinary used|",
    "slow=Slowly|",
    "ordinary=Ordinary|",
    "fast=Fast",
);
pub const LIMB_WORDS: Choice = concat!(
    "=Not said: none used|",
    "none=None|",
    "some=Some|",
    "many=Many",
);
pub const HALVES: Choice = concat!(
    "=Not said: north used|",
    "north=North of the equator|",
    "south=South of the equator",
);
pub const STAGES: Choice = concat!(
    "=Not seen: usual dates|",
    "buds_open=Half of the buds open|",
    "leaves_full=Leaves nearly full size|",
    "first_leaf=The first leaf",
);
pub const SEEN_WHERES: Choice = concat!("=Here, or within a mile or so|", "elsewhere=Elsewhere",);
pub const RATE_WORDS: Choice = concat!(
    "=Fitted to eastern North America|",
    "hopkins=Hopkins’ rates of 1918",
);
pub const SCALES: Choice = concat!("celsius=°C|", "fahrenheit=°F",);
pub const DRIES: Choice = concat!(
    "=Not said: not dry used|",
    "none=Not dry|",
    "two_weeks=Two weeks|",
    "month=A month or more",
);
pub const GOALS: Choice = concat!(
    "=Not said: for wildlife|",
    "wildlife=A standing dead tree for wildlife|",
    "kill=Only to kill it|",
    "spare_one=To spare one stem of several",
);
pub const HERBICIDES: Choice = concat!(
    "=Not said: both shown|",
    "no=No|",
    "licensed=By a licensed applicator|",
    "yes=Yes",
);
