//! What is wrong with a question, as data: a field, a code and its figures. The view words it.

use super::species::Like;
use crate::models::height_aid::NoHeight;
use crate::terms::quantity::Range;
use crate::terms::regional::OtherTree;
use serde::Serialize;

/// One problem of one field.
#[derive(Clone, Debug, PartialEq)]
pub struct Problem {
    /// The field, as `stems[0].diameter`.
    pub field: String,
    /// What is wrong.
    pub code: Code,
    /// What was typed, shortened to what a message can carry.
    pub typed: String,
}

/// What can be wrong.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Code {
    /// The field is needed.
    Missing,
    /// Not a number.
    NotNumber,
    /// `1,234`.
    Ambiguous,
    /// Too long to read.
    TooLong,
    /// A unit that we don't know, or one that measures something else.
    WrongUnit,
    /// Zero or below.
    NotPositive,
    /// Out of range.
    OutOfRange(Shown),
    /// A trunk wider than almost any, which nobody has confirmed.
    SizeInDoubt(SizeInDoubt),
    /// Diameter and girth together.
    Both,
    /// Neither diameter nor girth.
    Neither,
    /// Bark thicker than the stem's radius.
    BarkTooThick(Shown),
    /// No stem.
    NoStem,
    /// More stems than one tree can have.
    TooManyStems(usize),
    /// More targets than a list can have.
    TooManyTargets(usize),
    /// Not a day: the day of the month is missing.
    DayMissing,
    /// The month is missing or no month.
    MonthMissing,
    /// The year is missing.
    YearMissing,
    /// There is no such day.
    NoSuchDay,
    /// Too far from now to mean anything.
    YearOutOfRange,
    /// Not one of the words taken.
    NotOneOf(&'static [&'static str]),
    /// The species is not known; names that are like it.
    UnknownSpecies(
        #[cfg_attr(
            feature = "schema",
            schemars(with = "Vec<String>"),
            ts(type = "string[]")
        )]
        Vec<Like>,
    ),
    /// A tree that is known and is not on the list.
    NotListed(NotListed),
    /// Not on the list, and the names of other trees are not here yet.
    NamesNotHere,
    /// Nothing in reach, yet a target stands within two heights.
    NoneBesideTarget {
        /// The field that says that nothing is in reach.
        beside: &'static str,
        /// Two heights, metres; none when the target has no distance.
        two_heights_m: Option<f64>,
    },
    /// The stem to spare is not on the list, or there is only one stem.
    NoSuchStem,
    /// A place needs both latitude and longitude.
    HalfPlace,
    /// Not a region code.
    NotRegion,
    /// A key that we don't know.
    UnknownKey,
    /// The wrong type of value.
    WrongType,
    /// A version that we don't read.
    WrongVersion,
    /// Not readable as JSON at all.
    NotJson,
    /// A leaf-out date too far from the planned day to speak of its season.
    OtherSeason,
    /// No line of a temperature table can be used.
    NoTemperatures,
    /// Not a rate that calibration gives.
    NotRate,
    /// A height below the place at which the diameter is taken.
    HeightBelowDiameter,
    /// Readings that make no height.
    NoHeight(NoHeight),
    /// Minutes too far from any crew for these trees.
    FarFromAnyCrew,
}

/// A tree that is not on the list, as it is told where the asker's tree stands.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct NotListed {
    /// Its name.
    pub name: &'static str,
    /// Its scientific name.
    pub scientific: &'static str,
    /// The entry of the list to choose if it must go: `unknown broadleaf`.
    pub group: &'static str,
    /// The same with its name, which keeps the cautions that hold for it: `unknown broadleaf (white ash)`.
    pub choose: String,
    /// Code of the region, where one was said.
    pub region: Option<String>,
    /// Whether it is native there; none where no region was said.
    pub native: Option<bool>,
    /// It is often killed, and we read no trial of ringing it.
    pub no_trial: bool,
    /// It sprouts.
    pub sprouts: bool,
    /// It is mistaken for others.
    pub make_sure: bool,
    /// What to keep in mind.
    pub mind: &'static str,
}

impl NotListed {
    /// A tree as it is told in a region.
    #[must_use]
    pub fn of(other: &OtherTree, region: Option<&str>) -> Self {
        Self {
            name: other.names[0],
            scientific: other.scientific,
            group: other.group,
            choose: other.asked_as(),
            region: region.map(str::to_owned),
            native: other.native_in(region),
            no_trial: other.no_trial,
            sprouts: other.sprouts,
            make_sure: other.make_sure,
            mind: other.mind,
        }
    }
}

/// A size as it was read, and what it makes across.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct SizeInDoubt {
    /// The number, in its unit.
    pub number: f64,
    /// The unit's sign: `in`, `ft`, `cm`, `mm`, `m`.
    pub unit: &'static str,
    /// Across, metres.
    pub across_m: f64,
}

/// A range in the unit that the message shows.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Shown {
    /// The range, in that unit.
    pub range: Range,
    /// The unit's sign: `in`, `ft`, `cm`, `mm`, `m`, `%`, `kV`, `min`, `°`.
    pub unit: &'static str,
}

impl Code {
    /// The code's name, as the interface gives it.
    #[must_use]
    pub fn name(&self) -> &'static str {
        match self {
            Self::Missing => "missing",
            Self::NotNumber => "not_a_number",
            Self::Ambiguous => "ambiguous",
            Self::TooLong => "too_long",
            Self::WrongUnit => "wrong_unit",
            Self::NotPositive => "not_positive",
            Self::OutOfRange(_) => "out_of_range",
            Self::SizeInDoubt(_) => "size_in_doubt",
            Self::Both => "both_diameter_and_girth",
            Self::Neither => "size_missing",
            Self::BarkTooThick(_) => "bark_too_thick",
            Self::NoStem => "no_stem",
            Self::TooManyStems(_) => "too_many_stems",
            Self::TooManyTargets(_) => "too_many_targets",
            Self::DayMissing => "day_missing",
            Self::MonthMissing => "month_missing",
            Self::YearMissing => "year_missing",
            Self::NoSuchDay => "no_such_day",
            Self::YearOutOfRange => "year_out_of_range",
            Self::NotOneOf(_) => "not_one_of",
            Self::UnknownSpecies(_) => "unknown_species",
            Self::NotListed(_) => "not_listed",
            Self::NamesNotHere => "names_not_here",
            Self::NoneBesideTarget { .. } => "none_in_reach_beside_target",
            Self::NoSuchStem => "no_such_stem",
            Self::HalfPlace => "half_a_place",
            Self::NotRegion => "not_a_region",
            Self::UnknownKey => "unknown_key",
            Self::WrongType => "wrong_type",
            Self::WrongVersion => "wrong_version",
            Self::NotJson => "not_json",
            Self::OtherSeason => "other_season",
            Self::NoTemperatures => "no_temperatures",
            Self::NotRate => "not_a_rate",
            Self::HeightBelowDiameter => "height_below_diameter",
            Self::NoHeight(_) => "no_height",
            Self::FarFromAnyCrew => "far_from_any_crew",
        }
    }
}

/// The longest piece of what was typed that a message repeats, in characters.
const REPEATED: usize = 60;

impl Problem {
    /// A problem of a field, with what was typed there.
    #[must_use]
    pub fn new(field: impl Into<String>, code: Code, typed: &str) -> Self {
        Self {
            field: field.into(),
            code,
            typed: typed.chars().take(REPEATED).collect(),
        }
    }
}
