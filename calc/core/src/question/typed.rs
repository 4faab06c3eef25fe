//! The question as typed: the names that the interface, the command line and the form share.

use super::Text;
use crate::models::calibrate::Rate;
use serde::{Deserialize, Serialize};

/// A question as typed. Everything but `version`, `species`, one stem and `date` may be left out.
/// Values are text as typed; a bare number takes `units`.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
#[serde(deny_unknown_fields, default)]
pub struct Typed {
    /// Version of these names: 1.
    pub version: u32,
    /// `us` or `metric`; `us` when left out.
    pub units: Option<Text>,
    /// Common name, scientific name or plant code; or one of the unknown kinds.
    pub species: Option<Text>,
    /// One stem or more.
    pub stems: Vec<StemTyped>,
    /// `woods` or `open`.
    pub setting: Option<Text>,
    /// The planned day as `2027-06-12`, or `year`.
    pub date: Option<Text>,
    /// The asker's today, for `year` and for the year tape; hosts with a clock fill it in.
    pub today: Option<Text>,
    /// Latitude, longitude and elevation, or only the hemisphere.
    pub place: Option<PlaceTyped>,
    /// ISO 3166 code of state or country, as `US-MA` or `GB`.
    /// Left out, the cautious months hold: it is never taken from the place.
    pub region: Option<Text>,
    /// Leaf-out seen this year.
    pub leafed_out: Option<LeafOutTyped>,
    /// This spring's daily temperatures as a table: date, minimum, maximum.
    pub spring: Option<Text>,
    /// `celsius` or `fahrenheit`, where the table does not say.
    pub spring_scale: Option<Text>,
    /// Total height, if measured.
    pub height: Option<Text>,
    /// Readings that give the height from the ground, where `height` is left out; beside it they say how it was measured.
    pub height_aid: Option<HeightAidTyped>,
    /// True once the asker has confirmed a height that looks odd.
    pub height_confirmed: bool,
    /// What the tree could hit.
    pub targets: Vec<TargetTyped>,
    /// `yes`, `no` or `cant_tell`: any overhead line within two heights?
    pub line_within_reach: Option<Text>,
    /// No building, road, path, line, property line or neighbour's tree within two heights.
    pub none_in_reach: bool,
    /// `alive`, `declining` or `dead`.
    pub condition: Option<Text>,
    /// Signs seen on the tree.
    pub signs: Vec<Text>,
    /// `not_said`, `no`, `licensed` or `yes`.
    pub herbicide: Option<Text>,
    /// `wildlife`, `kill` or `spare_one`.
    pub goal: Option<Text>,
    /// Index of the stem to spare.
    pub spare: Option<u32>,
    /// `not_said`, `yes` or `no`: can every stem of the clone be ringed?
    pub whole_clone: Option<Text>,
    /// `not_said`, `yes` or `no`: living trees of the same genus near?
    pub same_genus_near: Option<Text>,
    /// `slow`, `ordinary` or `fast`.
    pub vigour: Option<Text>,
    /// `none`, `two_weeks` or `month`.
    pub dry_spell: Option<Text>,
    /// `none`, `some` or `many`: limbs below the ring.
    pub limbs: Option<Text>,
    /// Walking from the last tree, minutes or a distance.
    pub walk: Option<Text>,
    /// A practised crew.
    pub practised: bool,
    /// The crew's own rate, as calibration gave it.
    pub rate: Option<Rate>,
    /// Trees that the crew rang and timed: they update the rate.
    pub timed: Option<TimedTyped>,
    /// The job must be done on that day.
    pub cannot_wait: bool,
    /// What is seen at a visit after the ring.
    pub visit: Option<VisitTyped>,
}

/// A stem as typed: `diameter` or `girth`, not both.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
#[serde(deny_unknown_fields, default)]
pub struct StemTyped {
    /// Diameter at breast height.
    pub diameter: Option<Text>,
    /// Girth at breast height.
    pub girth: Option<Text>,
    /// Share of the bark that is alive all round, percent.
    pub live_share: Option<Text>,
    /// Bark thickness, one side, if measured.
    pub bark: Option<Text>,
}

/// Something it could hit, as typed.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
#[serde(deny_unknown_fields, default)]
pub struct TargetTyped {
    /// `building`, `road`, `path`, `line`, `property_line`, `fence` or `keep_tree`.
    pub kind: Option<Text>,
    /// Distance from the trunk's centre.
    pub distance: Option<Text>,
    /// Slope of the ground, percent.
    pub slope: Option<Text>,
    /// Whether it lies downhill.
    pub downhill: bool,
    /// Voltage of a line, if known.
    pub voltage: Option<Text>,
}

/// A place as typed.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
#[serde(deny_unknown_fields, default)]
pub struct PlaceTyped {
    /// Degrees; north is positive.
    pub latitude: Option<Text>,
    /// Degrees; east is positive.
    pub longitude: Option<Text>,
    /// Height above the sea.
    pub elevation: Option<Text>,
    /// `north` or `south`, instead of a point.
    pub hemisphere: Option<Text>,
}

/// Leaf-out as typed.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
#[serde(deny_unknown_fields, default)]
pub struct LeafOutTyped {
    /// `buds_open`, `leaves_full` or `first_leaf`.
    pub stage: Option<Text>,
    /// The day it was seen.
    pub date: Option<Text>,
    /// Where it was seen, if not here.
    pub place: Option<PlaceTyped>,
    /// Rates that carry the date here: `fitted` or `hopkins`.
    pub rates: Option<Text>,
}

/// Readings of a height as typed: those of one way.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
#[serde(deny_unknown_fields, default)]
pub struct HeightAidTyped {
    /// `shadow`, `angles` or `stick`.
    pub by: Option<Text>,
    /// Length of the tree's shadow, for `shadow`.
    pub tree_shadow: Option<Text>,
    /// Length of the stick, for `shadow` and `stick`.
    pub stick: Option<Text>,
    /// Length of the stick's shadow, for `shadow`.
    pub stick_shadow: Option<Text>,
    /// Distance from the eye to the trunk, for `angles` and `stick`.
    pub distance: Option<Text>,
    /// Angle from the level to the top, degrees, for `angles`.
    pub top: Option<Text>,
    /// Angle from the level to the foot, degrees, minus below the eye, for `angles`.
    pub foot: Option<Text>,
    /// From the eye to the stick, for `stick`.
    pub eye_to_stick: Option<Text>,
}

/// Trees that were ringed and timed, as typed. Walking is not in the minutes, and the bark slipped.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
#[serde(deny_unknown_fields, default)]
pub struct TimedTyped {
    /// Diameter of each.
    pub trees: Vec<Text>,
    /// Person-minutes that they took together.
    pub minutes: Option<Text>,
    /// Width of their rings; 6 in when left out.
    pub width: Option<Text>,
    /// Their species; bark of middling thickness when left out.
    pub species: Option<Text>,
}

/// A visit after the ring, as typed.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
#[serde(deny_unknown_fields, default)]
pub struct VisitTyped {
    /// `today` (when left out), the number of a visit of the answer, or a day.
    pub at: Option<Text>,
    /// The day of the ring; the advised day when left out.
    pub ringed: Option<Text>,
    /// What is seen: `bridge`, `sprouts`, `suckers`, `crown_full`, `crown_thin`, `crown_bare`, `decay`, `nothing`.
    pub seen: Vec<Text>,
}
