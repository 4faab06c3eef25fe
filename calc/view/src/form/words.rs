//! The choices of the form: their values with their words.

use crate::words::{Word, m};

/// Values of a choice with their words; the first, empty one says what is used if nothing is picked.
pub(crate) type Choice = &'static [(&'static str, Word)];

pub(super) const UNKNOWN_NAMES: Choice = &[
    ("unknown broadleaf", m::FORM_UNKNOWN_NAMES_UNKNOWN_BROADLEAF),
    ("unknown conifer", m::FORM_UNKNOWN_NAMES_UNKNOWN_CONIFER),
    ("unknown shrub", m::FORM_UNKNOWN_NAMES_UNKNOWN_SHRUB),
    ("palm", m::FORM_UNKNOWN_NAMES_PALM),
    ("bamboo", m::FORM_UNKNOWN_NAMES_BAMBOO),
];
pub(crate) const KINDS: Choice = &[
    ("", m::FORM_KINDS_UNSAID),
    ("building", m::FORM_KINDS_BUILDING),
    ("road", m::FORM_KINDS_ROAD),
    ("path", m::FORM_KINDS_PATH),
    ("line", m::FORM_KINDS_LINE),
    ("property_line", m::FORM_KINDS_PROPERTY_LINE),
    ("fence", m::FORM_KINDS_FENCE),
    ("keep_tree", m::FORM_KINDS_KEEP_TREE),
];
pub(super) const HOWS: Choice = &[
    ("across", m::FORM_HOWS_ACROSS),
    ("around", m::FORM_HOWS_AROUND),
];
/// What a number of the trunk means: its unit, and across or around.
pub(super) const MEASURED_AS: Choice = &[
    ("in across", m::FORM_MEASURED_IN_ACROSS),
    ("in around", m::FORM_MEASURED_IN_AROUND),
    ("cm across", m::FORM_MEASURED_CM_ACROSS),
    ("cm around", m::FORM_MEASURED_CM_AROUND),
];
pub(super) const REPLIES: Choice = &[
    ("yes", m::FORM_REPLIES_YES),
    ("no", m::FORM_REPLIES_NO),
    ("cant_tell", m::FORM_REPLIES_CANT_TELL),
];
pub(super) const SIGN_WORDS: Choice = &[
    ("cavity", m::FORM_SIGN_WORDS_CAVITY),
    ("cracks", m::FORM_SIGN_WORDS_CRACKS),
    ("conks", m::FORM_SIGN_WORDS_CONKS),
    ("hung_limbs", m::FORM_SIGN_WORDS_HUNG_LIMBS),
    ("lean_toward", m::FORM_SIGN_WORDS_LEAN_TOWARD),
    ("lean_away", m::FORM_SIGN_WORDS_LEAN_AWAY),
    ("dead_top", m::FORM_SIGN_WORDS_DEAD_TOP),
    ("vines", m::FORM_SIGN_WORDS_VINES),
];
pub(super) const SETTINGS: Choice = &[
    ("", m::FORM_SETTINGS_UNSAID),
    ("woods", m::FORM_SETTINGS_WOODS),
    ("open", m::FORM_SETTINGS_OPEN),
];
pub(super) const CONDITIONS: Choice = &[
    ("", m::FORM_CONDITIONS_UNSAID),
    ("alive", m::FORM_CONDITIONS_ALIVE),
    ("declining", m::FORM_CONDITIONS_DECLINING),
    ("dead", m::FORM_CONDITIONS_DEAD),
];
pub(super) const AID_WAYS: Choice = &[
    ("", m::FORM_AID_WAYS_UNSAID),
    ("shadow", m::FORM_AID_WAYS_SHADOW),
    ("angles", m::FORM_AID_WAYS_ANGLES),
    ("stick", m::FORM_AID_WAYS_STICK),
];
pub(super) const YES_NO: Choice = &[
    ("", m::FORM_YES_NO_UNSAID),
    ("yes", m::FORM_YES_NO_YES),
    ("no", m::FORM_YES_NO_NO),
];
pub(super) const VIGOURS: Choice = &[
    ("", m::FORM_VIGOURS_UNSAID),
    ("slow", m::FORM_VIGOURS_SLOW),
    ("ordinary", m::FORM_VIGOURS_ORDINARY),
    ("fast", m::FORM_VIGOURS_FAST),
];
pub(super) const LIMB_WORDS: Choice = &[
    ("", m::FORM_LIMB_WORDS_UNSAID),
    ("none", m::FORM_LIMB_WORDS_NONE),
    ("some", m::FORM_LIMB_WORDS_SOME),
    ("many", m::FORM_LIMB_WORDS_MANY),
];
pub(super) const HALVES: Choice = &[
    ("", m::FORM_HALVES_UNSAID),
    ("north", m::FORM_HALVES_NORTH),
    ("south", m::FORM_HALVES_SOUTH),
];
pub(super) const STAGES: Choice = &[
    ("", m::FORM_STAGES_UNSAID),
    ("buds_open", m::FORM_STAGES_BUDS_OPEN),
    ("leaves_full", m::FORM_STAGES_LEAVES_FULL),
    ("first_leaf", m::FORM_STAGES_FIRST_LEAF),
];
pub(super) const SEEN_WHERES: Choice = &[
    ("", m::FORM_SEEN_WHERES_UNSAID),
    ("elsewhere", m::FORM_SEEN_WHERES_ELSEWHERE),
];
pub(super) const RATE_WORDS: Choice = &[
    ("", m::FORM_RATE_WORDS_UNSAID),
    ("hopkins", m::FORM_RATE_WORDS_HOPKINS),
];
pub(super) const SCALES: Choice = &[
    ("celsius", m::FORM_SCALES_CELSIUS),
    ("fahrenheit", m::FORM_SCALES_FAHRENHEIT),
];
pub(super) const DRIES: Choice = &[
    ("", m::FORM_DRIES_UNSAID),
    ("none", m::FORM_DRIES_NONE),
    ("two_weeks", m::FORM_DRIES_TWO_WEEKS),
    ("month", m::FORM_DRIES_MONTH),
];
pub(super) const GOALS: Choice = &[
    ("", m::FORM_GOALS_UNSAID),
    ("wildlife", m::FORM_GOALS_WILDLIFE),
    ("kill", m::FORM_GOALS_KILL),
    ("spare_one", m::FORM_GOALS_SPARE_ONE),
];
pub(super) const HERBICIDES: Choice = &[
    ("", m::FORM_HERBICIDES_UNSAID),
    ("no", m::FORM_HERBICIDES_NO),
    ("licensed", m::FORM_HERBICIDES_LICENSED),
    ("yes", m::FORM_HERBICIDES_YES),
];
