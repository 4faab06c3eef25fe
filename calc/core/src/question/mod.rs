//! The question: as typed, then as understood, with every problem of a bad one.

mod problem;
mod read;
pub mod settings;
mod slot;
mod species;
mod text;
mod typed;
mod when;

pub use problem::{Code, Problem};
pub use read::{problems_of_place, read, read_height_aid, read_timed};
pub use slot::{Many, Maybe, Record, Slot, slot_of};
pub use species::{Found, find_species};
pub use text::Text;
pub use typed::{
    HeightAidTyped, LeafOutTyped, PlaceTyped, StemTyped, TargetTyped, TimedTyped, Typed, VisitTyped,
};
pub use when::read_day;

use crate::models::at_visit::Seen;
use crate::models::height_aid::HeightBy;
use crate::terms::place::Place;
use crate::terms::quantity::{TotalHeight, Units};
use crate::terms::species::Species;
use crate::terms::tree::{
    Condition, Dry, Goal, Herbicide, Limbs, Reply, Setting, Sign, Stage, Stem, Target, Vigour,
};
use chrono::NaiveDate;

/// A question that has been understood. Only [`read`] makes one, so every value is in range.
#[derive(Clone, Debug)]
pub struct Question {
    /// The system of bare numbers; the reader's own unit comes first in the answer.
    pub units: Units,
    /// The species.
    pub species: &'static Species,
    /// One stem or more, in the order given.
    pub stems: Vec<Stem>,
    /// The planned day, or the whole year.
    pub day: Day,
    /// The asker's today, where it was told: it is shown beside the planned day and decides nothing.
    pub today: Option<NaiveDate>,
    /// Where it stands; decides the season.
    pub place: Place,
    /// ISO 3166 code of state or country, in capitals.
    pub region: Option<String>,
    /// Leaf-out seen this year.
    pub leafed_out: Option<LeafOut>,
    /// This spring's own temperatures.
    pub spring: Option<crate::timing::spring::Table>,
    /// Measured total height.
    pub height: Option<TotalHeight>,
    /// How it was measured from the ground, where readings say so.
    pub height_by: Option<HeightBy>,
    /// Whether the asker confirmed a height that looks odd for this species and size.
    pub height_confirmed: bool,
    /// What it could hit.
    pub targets: Vec<Target>,
    /// Any overhead line within two heights?
    pub line_within_reach: Option<Reply>,
    /// Nothing that counts stands within two heights.
    pub none_in_reach: bool,
    /// Woods or open-grown.
    pub setting: Setting,
    /// Alive, declining, dead.
    pub condition: Condition,
    /// Signs of damage or lean.
    pub signs: Vec<Sign>,
    /// Herbicide.
    pub herbicide: Herbicide,
    /// What it is for.
    pub goal: Goal,
    /// Whether every stem of the clone can be ringed.
    pub whole_clone: Option<bool>,
    /// Whether living trees of its genus stand near (pines and elms).
    pub same_genus_near: Option<bool>,
    /// How fast it grows.
    pub vigour: Vigour,
    /// How long it has been dry.
    pub dry_spell: Dry,
    /// Limby stem below the ring.
    pub limbs: Limbs,
    /// Walking from the last tree, minutes; none when not given.
    pub walk_min: Option<f64>,
    /// A practised crew.
    pub practised: bool,
    /// The crew's own rate, from trees that it timed.
    pub rate: Option<crate::models::calibrate::Rate>,
    /// What was timed, and why it gives no rate where it gives none.
    pub timed: Option<Timed>,
    /// The work must be done on that day.
    pub cannot_wait: bool,
    /// The group whose own settings it is asked under; none as read.
    pub group: Option<crate::question::settings::Group>,
    /// A visit after the ring.
    pub visit: Option<VisitSeen>,
}

impl Question {
    /// The thickest stem: it decides height, hazard and headline.
    #[must_use]
    pub fn largest(&self) -> &Stem {
        // `read` refuses an empty list, so the first stem is there. Ties go by bark and live share, so that
        // the order of the list decides nothing.
        let key = |stem: &Stem| {
            let bark = stem.bark.map_or(0.0, |bark| bark.mm());
            [stem.dbh.mm(), stem.live_share, bark]
        };
        self.stems.iter().fold(&self.stems[0], |largest, stem| {
            if key(stem) > key(largest) {
                stem
            } else {
                largest
            }
        })
    }

    /// Which stem is spared, when the goal says so.
    #[must_use]
    pub fn spared(&self) -> Option<usize> {
        match self.goal {
            Goal::SpareOne(stem) => Some(stem),
            Goal::Wildlife | Goal::Kill => None,
        }
    }
}

/// The day asked about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Day {
    /// A planned day.
    On(NaiveDate),
    /// The whole year; today is where the search for a day starts.
    Year {
        /// The asker's today.
        today: NaiveDate,
    },
}

impl Day {
    /// The day that judging starts from.
    #[must_use]
    pub fn start(self) -> NaiveDate {
        match self {
            Self::On(day) | Self::Year { today: day } => day,
        }
    }
}

/// Leaf-out seen.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LeafOut {
    /// What was seen.
    pub stage: Stage,
    /// When.
    pub date: NaiveDate,
    /// Where, when it was not here: degrees north, degrees east, metres.
    pub elsewhere: Option<(f64, f64, Option<f64>)>,
    /// Rates that carry it here.
    pub rates: crate::timing::Rates,
}

/// Trees that were timed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Timed {
    /// How many.
    pub trees: usize,
    /// Person-minutes together.
    pub minutes: f64,
    /// Why they give no rate; none where [`Question::rate`] holds theirs.
    pub no_rate: Option<crate::models::calibrate::NoRate>,
}

/// A visit after the ring.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct VisitSeen {
    /// When.
    pub at: VisitAt,
    /// The day of the ring, where it is not the advised day.
    pub ringed: Option<NaiveDate>,
    /// What is seen.
    pub seen: Vec<Seen>,
}

/// When a visit is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum VisitAt {
    /// On the asker's today.
    Today(NaiveDate),
    /// On a day.
    On(NaiveDate),
    /// At a visit of the plan, counted from 1.
    Number(usize),
}
