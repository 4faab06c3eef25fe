//! A group's own settings: what its page shows first and whom it names. They may make advice more cautious, never
//! milder; nothing in them takes a stop or a caution away.
//!
//! ```text
//! read(reference, &Value, list) -> (Settings, warnings), or every reason why they are refused
//! AskingGroup { settings, today }      goes into a question; the models read its `tighten`
//! ```

mod list;
mod read;
#[cfg(feature = "schema")]
pub mod shape;
mod told;
mod value;

pub use list::{HEADS, SpeciesListRow, rows};
pub use read::{KEYS, read};
pub use told::{SettingsFault, Told};
pub use value::{LARGEST, Value};

use crate::question::{PlaceTyped, Question, Text};
use crate::terms::quantity::Units;
use crate::terms::species::Species;
use crate::terms::tighten::Tighten;
use crate::terms::words::words;
use chrono::{Datelike, NaiveDate};
use std::sync::Arc;

/// What was checked longer ago than this is to be confirmed first. Our own assumption.
const OLD_MONTHS: i32 = 18;

/// Settings that were read and accepted.
#[derive(Clone, Debug, Default)]
pub struct Settings {
    /// The group's short name for files and addresses.
    pub id: String,
    /// The group's name.
    pub name: String,
    /// Units of a new form.
    pub units: Option<Units>,
    /// State or country of a new form.
    pub region: Option<Text>,
    /// Place of a new form.
    pub place: Option<PlaceTyped>,
    /// The group's species.
    pub species: SpeciesList,
    /// Whom to ask.
    pub contacts: Vec<Contact>,
    /// Local rules.
    pub codes: Vec<LocalCode>,
    /// What makes advice more cautious.
    pub tighten: Tighten,
    /// The crew of a work day.
    pub crew: Option<GroupCrew>,
    /// Whether a link may carry what was typed; none: the page decides.
    pub share: Option<bool>,
    /// When the whole was last checked.
    pub checked: Option<NaiveDate>,
}

/// The group's own list of species.
#[derive(Clone, Debug, Default)]
pub struct SpeciesList {
    /// Those at the head of the list, in the group's order.
    pub first: Vec<&'static Species>,
    /// Whether the list has no others, but "not on this list".
    pub only: bool,
    /// Local names.
    pub aliases: Vec<(String, &'static Species)>,
    /// The group's words on a species.
    pub notes: Vec<(&'static Species, String)>,
}

/// Somebody to ask.
#[derive(Clone, Debug)]
pub struct Contact {
    /// What they are asked for.
    pub kind: ContactKind,
    /// Name.
    pub name: String,
    /// Telephone, as written.
    pub phone: Option<String>,
    /// Address of a page.
    pub url: Option<String>,
    /// When this was last checked.
    pub checked: Option<NaiveDate>,
}

/// A local rule in the group's words.
#[derive(Clone, Debug)]
pub struct LocalCode {
    /// What it is about.
    pub topic: CodeTopic,
    /// The group's words.
    pub text: String,
    /// Who decides.
    pub authority: String,
    /// Address of the rule.
    pub url: Option<String>,
    /// When this was last checked.
    pub checked: Option<NaiveDate>,
}

words! {
    /// What somebody is asked for.
    pub enum ContactKind {
    /// Advice on trees and species.
    Extension,
    /// The owner of a line.
    Utility,
    /// An arborist.
    Professional,
    /// Permission.
    Permit,
    /// Help at once.
    Emergency,
    }
}

words! {
    /// What a local rule is about.
    pub enum CodeTopic {
    /// Trees of streets and towns.
    StreetTrees = "street-trees",
    /// Nests and roosts.
    Nesting,
    /// Burning and moving wood.
    Burning,
    /// Products: herbicide.
    Products,
    /// Protected species and trees.
    ProtectedSpecies = "protected-species",
    /// Lines.
    WorkNearLines = "work-near-lines",
    }
}

impl CodeTopic {
    /// The cautions that it stands beside.
    #[must_use]
    pub fn cautions(self) -> &'static [&'static str] {
        match self {
            Self::StreetTrees => &["LW2", "LW1"],
            Self::Nesting => &["LW5"],
            Self::Burning => &["LW7"],
            Self::Products => &["LW4"],
            Self::ProtectedSpecies => &["LW11", "LW6"],
            Self::WorkNearLines => &["PL1", "PL2", "PL3"],
        }
    }
}

/// The crew of a work day.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GroupCrew {
    /// People.
    pub size: f64,
    /// Hours of work a day.
    pub hours: f64,
}

impl GroupCrew {
    /// How many trees like one a crew does in a day, from the mean minutes of one person.
    #[must_use]
    pub fn trees_a_day(self, mean_min: f64) -> f64 {
        libm::floor(self.size * self.hours * 60.0 / mean_min)
    }
}

/// The group that a question is asked for.
#[derive(Clone, Debug)]
pub struct AskingGroup {
    /// Its settings.
    pub settings: Arc<Settings>,
    /// The day on which the question is asked: what was checked is as old as that.
    pub today: NaiveDate,
}

impl AskingGroup {
    /// Whether something that was checked on a day is to be confirmed first: too long ago, or not yet.
    #[must_use]
    pub fn is_old(&self, checked: NaiveDate) -> bool {
        let months = |day: NaiveDate| day.year() * 12 + day.month0() as i32;
        let apart = months(self.today) - months(checked);
        checked > self.today
            || apart > OLD_MONTHS
            || (apart == OLD_MONTHS && self.today.day() > checked.day())
    }
}

impl Settings {
    /// Has a question judged as this group asks: what it tightens, and its name beside it.
    pub fn apply(&self, question: &mut Question) {
        question.tree.tighten = self.tighten;
        question.group = Some(self.name.clone());
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day(y: i32, m: u32, d: u32) -> NaiveDate {
        NaiveDate::from_ymd_opt(y, m, d).unwrap()
    }

    #[test]
    fn eighteen_months_to_the_day_are_not_old_and_a_day_more_is() {
        let group = |today| AskingGroup {
            settings: Arc::default(),
            today,
        };
        let checked = day(2026, 5, 1);
        assert!(!group(day(2027, 11, 1)).is_old(checked));
        assert!(group(day(2027, 11, 2)).is_old(checked));
        assert!(
            group(day(2026, 4, 30)).is_old(checked),
            "checked on a day to come"
        );
    }

    #[test]
    fn a_crew_does_whole_trees() {
        let crew = GroupCrew {
            size: 4.0,
            hours: 3.0,
        };
        assert_eq!(crew.trees_a_day(20.0), 36.0);
        assert_eq!(crew.trees_a_day(25.0), 28.0);
    }
}
