//! The shape of an answer: plain data, the names that the interface gives.

use crate::model::bark::Bark;
use crate::model::caution::CautionLine;
use crate::model::habitat::Habitat;
use crate::model::height::Height;
use crate::model::method::MethodLine;
use crate::model::outlook::Outlook;
use crate::model::reach::Reach;
use crate::model::ring::Ring;
use crate::model::visits::Visit;
use crate::terms::cite::Finding;
use crate::terms::method::{Level, Method};
use crate::terms::species::{Group, LookAlike, Suitability};
use crate::terms::words::words;
use crate::timing::Verdict;
use chrono::NaiveDate;
use serde::ser::SerializeStruct;
use serde::{Serialize, Serializer};

mod group;
mod season;
mod work;

pub use group::GroupAnswer;
pub use season::{Before, Rules, SpringAnswer, TapeSpan, TimingAnswer};
pub use work::{EffortAnswer, Long, MethodWork, OwnRate, VisitAnswer};

words! {
    /// The five outcomes.
    pub enum Outcome {
        /// Ring it.
        Do,
        /// Ring it, on a later day.
        Wait,
        /// Another method.
        OtherMethod,
        /// Leave it to a professional.
        Professional,
        /// Something decisive is not known.
        CannotTell,
    }
}

/// An answer.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Answer {
    /// Version of these names: 1.
    pub version: u32,
    /// Version of the tables behind it.
    pub data_version: &'static str,
    /// The outcome.
    pub outcome: Outcome,
    /// The method at the head; under `cannot_tell` the best method otherwise.
    pub headline_method: Method,
    /// Whether only a professional may do it.
    pub headline_by_professional: bool,
    /// The species as understood.
    pub species: SpeciesLine,
    /// The nine methods for the largest stem.
    pub methods: Vec<MethodLine>,
    /// Each stem, in the order given.
    pub stems: Vec<StemAnswer>,
    /// Height.
    pub height: HeightAnswer,
    /// Crown width, metres: mean, low, high.
    pub crown_m: Option<Finding<f64>>,
    /// Reach.
    pub reach: ReachAnswer,
    /// Timing on the advised day.
    pub timing: TimingAnswer,
    /// The day asked about; none for the whole year.
    #[serde(serialize_with = "crate::terms::day::maybe_day")]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<String>"),
        ts(type = "string | null")
    )]
    pub asked_day: Option<NaiveDate>,
    /// The day that the answer is for.
    #[serde(serialize_with = "crate::terms::day::maybe_day")]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<String>"),
        ts(type = "string | null")
    )]
    pub advised_day: Option<NaiveDate>,
    /// The bark on the day asked about.
    pub asked_verdict: Option<Verdict>,
    /// Probability of slip on the day asked about.
    pub asked_probability: Option<f64>,
    /// Minutes for the ring at its better width; none where no ring may be cut.
    pub effort: Option<EffortAnswer>,
    /// Work of the nine methods on the largest stem, in the order of `methods`.
    pub work: Vec<MethodWork>,
    /// Visits after it.
    pub visits: Vec<Visit>,
    /// Advice at the visit that was asked about.
    pub visit: Option<VisitAnswer>,
    /// Outlook of the largest stem, where a ring may be cut.
    pub outlook: Option<Outlook>,
    /// What a snag of it leaves, where it stays standing.
    pub habitat: Option<Habitat>,
    /// Months of law and biology that meet the asked or advised day or the window.
    pub rules: Vec<Rules>,
    /// Cautions, in the order of the page.
    pub cautions: Vec<CautionLine>,
    /// Under `cannot_tell`: what would settle it, and what the answer then is.
    #[serde(rename = "if")]
    pub conditional: Option<If>,
    /// The next best thing to say.
    pub next_line: Option<Also>,
    /// What else stands beside it.
    pub also: Vec<Also>,
    /// The headline on the other side of a size limit that is near.
    pub near_limit: Option<Near>,
    /// What the group's own settings asked for beyond the models; none where nothing.
    pub group: Option<GroupAnswer>,
    /// Single changes that flip the outcome or the headline, the nearest of each kind.
    pub changes: Vec<Change>,
    /// What was not given, and what was used instead.
    pub assumed: Vec<Assumed>,
    /// Sources of everything above.
    pub sources: Vec<SourceLine>,
}

/// The species as understood.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct SpeciesLine {
    /// Common name.
    pub name: &'static str,
    /// Scientific name.
    pub scientific: &'static str,
    /// Plant code.
    pub code: &'static str,
    /// Growth form.
    pub group: Group,
    /// Whether a ring alone suits it.
    pub suitability: Suitability,
    /// Whether it is native in the region asked about.
    pub native_here: bool,
    /// Native look-alikes.
    pub look_alikes: &'static [LookAlike],
}

/// One stem.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct StemAnswer {
    /// Diameter at breast height, mm.
    pub dbh_mm: f64,
    /// Diameter inside bark, mm; none without bark.
    pub inside_bark_mm: Option<f64>,
    /// Share of live bark, 0 to 1.
    pub live_share: f64,
    /// The ring; none where there is nothing to cut.
    pub ring: Option<Ring>,
    /// The bark; none for palms and the like.
    pub bark: Option<Bark>,
    /// The nine methods.
    pub methods: Vec<MethodLine>,
    /// Method at the head for this stem alone.
    pub headline_method: Method,
    /// Whether it is the one to spare.
    pub spared: bool,
}

/// Height, as the models give it.
pub type HeightAnswer = Height;
/// Reach, as the models give it.
pub type ReachAnswer = Reach;

/// What would settle a question that can't be answered yet.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct If {
    /// The open conditions by name, joined with `+`.
    pub condition: String,
    /// The same, one by one.
    pub conditions: Vec<Conditional>,
    /// The answer if they hold.
    pub answer: Box<Answer>,
}

/// A condition that is open.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
#[serde(rename_all = "snake_case", tag = "name")]
pub enum Conditional {
    /// Nothing that counts stands within this distance.
    NothingInReach {
        /// Two heights, metres.
        within_m: f64,
    },
    /// The tree is lower than this.
    HeightUnder {
        /// Metres.
        height_m: f64,
    },
    /// Every stem of the clone can be ringed.
    WholeClone,
    /// Oak wilt is not in the state.
    NoOakWilt,
    /// It is a species that a ring suits.
    SpeciesSuits,
}

impl Conditional {
    /// Its name.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::NothingInReach { .. } => "nothing_in_reach",
            Self::HeightUnder { .. } => "height_under",
            Self::WholeClone => "whole_clone",
            Self::NoOakWilt => "no_oak_wilt",
            Self::SpeciesSuits => "species_suits",
        }
    }
}

/// Something that stands beside the headline.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Also {
    /// What it is.
    pub kind: AlsoKind,
    /// The method.
    pub method: Method,
    /// Its level.
    pub level: Level,
    /// Whether only a professional, or a licensed applicator, may do it.
    pub by_professional: bool,
    /// The day, where it is for another day.
    #[serde(serialize_with = "crate::terms::day::maybe_day")]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<String>"),
        ts(type = "string | null")
    )]
    pub day: Option<NaiveDate>,
}

words! {
    /// Kinds of such lines.
    pub enum AlsoKind {
        /// The best method if the condition does not hold.
        Otherwise,
        /// The best method without herbicide.
        WithoutHerbicide,
        /// A ring on a later day.
        RingLater,
        /// A ring is possible, though something stands against it.
        RingPossible,
        /// The next method behind a ring that is only possible.
        NextMethod,
        /// The ring is ruled out on every day at this place.
        NoRingHere,
    }
}

/// Both sides of a size limit.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Near {
    /// The limit, mm of dbh.
    pub limit_mm: f64,
    /// The headline on the other side.
    pub method: Method,
}

/// A single change of the question that flips the answer, found by asking again.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Change {
    /// What changes.
    #[cfg_attr(feature = "schema", serde(flatten))]
    pub changed: Changed,
    /// The outcome then.
    pub outcome: Outcome,
    /// The method at the head then.
    pub headline_method: Method,
}

/// By hand: what the derive needs to lay one value flat in another is bytes in the browser.
impl Serialize for Change {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut flat = serializer.serialize_struct("Change", 4)?;
        let number = |key, to| (key, Some(to));
        let (field, (key, to)) = match self.changed {
            Changed::Date { .. } => ("date", ("to", None)),
            Changed::Distance { to_m } => ("distance", number("to_m", to_m)),
            Changed::Height { to_m } => ("height", number("to_m", to_m)),
            Changed::Herbicide { .. } => ("herbicide", ("allowed", None)),
            Changed::WholeClone { .. } => ("whole_clone", ("to", None)),
            Changed::Diameter { to_mm } => ("diameter", number("to_mm", to_mm)),
        };
        flat.serialize_field("field", field)?;
        match (self.changed, to) {
            (Changed::Date { to }, _) => flat.serialize_field(key, &crate::terms::day::iso(to))?,
            (Changed::Herbicide { allowed: to } | Changed::WholeClone { to }, _) => {
                flat.serialize_field(key, &to)?;
            }
            (_, to) => flat.serialize_field(key, &to)?,
        }
        flat.serialize_field("outcome", &self.outcome)?;
        flat.serialize_field("headline_method", &self.headline_method)?;
        flat.end()
    }
}

/// What changes.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(
    feature = "schema",
    derive(schemars::JsonSchema, ts_rs::TS),
    serde(rename_all = "snake_case", tag = "field")
)]
pub enum Changed {
    /// Another day.
    Date {
        /// The day.
        #[cfg_attr(feature = "schema", schemars(with = "String"), ts(type = "string"))]
        to: NaiveDate,
    },
    /// All that stands near is at least so far, or as near.
    Distance {
        /// Metres.
        to_m: f64,
    },
    /// A measured height.
    Height {
        /// Metres.
        to_m: f64,
    },
    /// Herbicide by a licensed applicator, or none.
    Herbicide {
        /// Whether it is allowed then.
        allowed: bool,
    },
    /// Whether the whole clone can be ringed.
    WholeClone {
        /// It can.
        to: bool,
    },
    /// Another diameter.
    Diameter {
        /// Millimetres.
        to_mm: f64,
    },
}

/// A field that was not given.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Assumed {
    /// The field.
    pub field: &'static str,
    /// The number used, in the core's unit (mm, m, minutes), where it is one.
    pub value: Option<f64>,
    /// The word used, where it is one.
    pub word: Option<&'static str>,
}

/// A source that something rests on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct SourceLine {
    /// Its id: a line of the sources page.
    pub id: &'static str,
    /// Who and when.
    pub label: &'static str,
}
