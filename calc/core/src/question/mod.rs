//! The question: as typed, then as understood, with every problem of a bad one.

pub mod fields;
mod list_names;
mod problem;
mod read;
mod record;
mod region;
pub mod settings;
mod species;
mod text;
mod when;

pub use fields::{
    HeightAidTyped, LeafOutTyped, PlaceTyped, StemTyped, TargetTyped, TimedTyped, Typed, VisitTyped,
};
pub use list_names::{FoundName, InList, ListNames, find_in_list};
pub use problem::{Code, NotListed, Problem, SizeInDoubt};
pub use read::{problems_of_place, read, read_height_aid, read_timed};
pub use record::{Key, Keyed, Many, Maybe, Slot, slot_of, slot_of_link};
pub use region::{region_code, region_names};
pub use species::{Found, Like, entry_of, find_species};
pub use text::Text;
pub use when::read_day;

use crate::models::at_visit::Seen;
use crate::models::calibrate::NoRate;
use crate::models::effort::Pace;
use crate::models::height_aid::HeightBy;
use crate::models::season::SeasonFacts;
use crate::terms::place::Place;
use crate::terms::quantity::Units;
use crate::terms::tree::{DrySpell, Tree};
use crate::timing::{Observed, spring};
use chrono::NaiveDate;

/// A question that has been understood. Only [`read`] makes one, so every value is in range.
#[derive(Clone, Debug)]
pub struct Question {
    /// The tree, as the models look at it.
    pub tree: Tree,
    /// The system of bare numbers; the reader's own unit comes first in the answer.
    pub units: Units,
    /// The planned day, or the whole year.
    pub day: Day,
    /// The asker's today, where it was told: it is shown beside the planned day and decides nothing.
    pub today: Option<NaiveDate>,
    /// Where it stands; decides the season.
    pub place: Place,
    /// ISO 3166 code of state or country, in capitals.
    pub region: Option<String>,
    /// Leaf-out seen this year.
    pub leafed_out: Option<Observed>,
    /// This spring's own temperatures.
    pub spring: Option<spring::SpringTable>,
    /// How long it has been dry.
    pub dry_spell: DrySpell,
    /// How the height was measured from the ground, where readings say so.
    pub height_by: Option<HeightBy>,
    /// How fast the crew works and walks.
    pub pace: Pace,
    /// What was timed, and why it gives no rate where it gives none.
    pub timed: Option<Timed>,
    /// The work must be done on that day.
    pub cannot_wait: bool,
    /// The name of the group whose own settings it is asked under; none as read. What it asks for stands in `tree`.
    pub group: Option<String>,
    /// A visit after the ring.
    pub visit: Option<VisitSeen>,
}

impl Question {
    /// What the season is read from.
    #[must_use]
    pub fn season(&self) -> SeasonFacts<'_> {
        SeasonFacts {
            tree: &self.tree,
            place: &self.place,
            region_said: self.region.is_some(),
            leafed_out: self.leafed_out,
            spring: self.spring.as_ref().map_or(&[], |table| &table.days),
            dry_spell: self.dry_spell,
            start: self.day.start(),
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

/// Trees that were timed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Timed {
    /// How many.
    pub trees: usize,
    /// Person-minutes together.
    pub minutes: f64,
    /// Why they give no rate; none where the pace holds theirs.
    pub no_rate: Option<NoRate>,
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
