//! A group's own settings: what its page shows first and whom it names. They may make advice more cautious, never
//! milder; nothing in them takes a stop or a caution away.
//!
//! ```text
//! read(reference, &Value, list) -> (Settings, warnings), or every reason why they are refused
//! Group { settings, today }      goes into a question; the models read its `tighten`
//! ```

mod list;
mod read;
#[cfg(feature = "schema")]
pub mod shape;
mod told;
mod value;

pub use list::{HEADS, Row, rows};
pub use read::{KEYS, read};
pub use told::{Told, What};
pub use value::Value;

use crate::quantity::Units;
use crate::question::{PlaceTyped, Question, Text};
use crate::reference::Species;
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
    pub crew: Option<Crew>,
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

macro_rules! words {
    ($(#[$doc:meta])* $name:ident: $($(#[$each:meta])* $variant:ident = $word:literal),+) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq)]
        pub enum $name { $($(#[$each])* $variant),+ }

        impl $name {
            /// Their words, in order.
            pub const WORDS: &'static [&'static str] = &[$($word),+];
            /// All of them, in order.
            pub const ALL: &'static [Self] = &[$(Self::$variant),+];
        }
    };
}

words! {
    /// What somebody is asked for.
    ContactKind:
    /// Advice on trees and species.
    Extension = "extension",
    /// The owner of a line.
    Utility = "utility",
    /// An arborist.
    Professional = "professional",
    /// Permission.
    Permit = "permit",
    /// Help at once.
    Emergency = "emergency"
}

words! {
    /// What a local rule is about.
    CodeTopic:
    /// Trees of streets and towns.
    StreetTrees = "street-trees",
    /// Nests and roosts.
    Nesting = "nesting",
    /// Burning and moving wood.
    Burning = "burning",
    /// Products: herbicide.
    Products = "products",
    /// Protected species and trees.
    ProtectedSpecies = "protected-species",
    /// Lines.
    WorkNearLines = "work-near-lines"
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
pub struct Crew {
    /// People.
    pub size: f64,
    /// Hours of work a day.
    pub hours: f64,
}

impl Crew {
    /// How many trees like one a crew does in a day, from the mean minutes of one person.
    #[must_use]
    pub fn trees_a_day(self, mean_min: f64) -> f64 {
        libm::floor(self.size * self.hours * 60.0 / mean_min)
    }
}

/// What a group asks for beyond the models. Each part may only make advice more cautious.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tighten {
    /// All distances are judged with the height times this: 1 or more.
    pub distance_factor: f64,
    /// A thicker tree is a professional's, mm at breast height.
    pub volunteers_mm: Option<f64>,
    /// Months in which no ring is cut: bit 0 is January.
    pub months: u16,
}

impl Default for Tighten {
    fn default() -> Self {
        Self {
            distance_factor: 1.0,
            volunteers_mm: None,
            months: 0,
        }
    }
}

impl Tighten {
    /// Whether no ring is cut in a month, 1 to 12.
    #[must_use]
    pub fn blocks(self, month: u32) -> bool {
        self.months >> (month.wrapping_sub(1) & 15) & 1 == 1
    }

    /// Whether a tree of this diameter is a professional's.
    #[must_use]
    pub fn too_large(self, dbh_mm: f64) -> bool {
        self.volunteers_mm.is_some_and(|most| dbh_mm > most)
    }

    /// The blocked months as runs, first and last month; one over the new year is one.
    #[must_use]
    pub fn runs(self) -> Vec<(u8, u8)> {
        let mut runs: Vec<(u8, u8)> = Vec::new();
        for month in (1..=12).filter(|month| self.blocks(*month)) {
            let month = month as u8;
            match runs.last_mut() {
                Some(last) if last.1 + 1 == month => last.1 = month,
                _ => runs.push((month, month)),
            }
        }
        if let [first, .., last] = runs[..]
            && first.0 == 1
            && last.1 == 12
        {
            runs[0].0 = last.0;
            runs.pop();
        }
        runs
    }
}

/// The group that a question is asked for.
#[derive(Clone, Debug)]
pub struct Group {
    /// Its settings.
    pub settings: Arc<Settings>,
    /// The day on which the question is asked: what was checked is as old as that.
    pub today: NaiveDate,
}

impl Group {
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

impl Question {
    /// What the group asks for beyond the models; nothing without a group.
    #[must_use]
    pub fn tighten(&self) -> Tighten {
        self.group
            .as_ref()
            .map_or_else(Tighten::default, |group| group.settings.tighten)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day(y: i32, m: u32, d: u32) -> NaiveDate {
        NaiveDate::from_ymd_opt(y, m, d).unwrap()
    }

    #[test]
    fn months_become_runs_and_the_new_year_cuts_none() {
        let of = |months: &[u16]| Tighten {
            months: months.iter().map(|m| 1 << (m - 1)).sum(),
            ..Tighten::default()
        };
        assert_eq!(of(&[4, 5, 6]).runs(), [(4, 6)]);
        assert_eq!(of(&[1, 2, 11, 12]).runs(), [(11, 2)]);
        assert_eq!(of(&[1, 3, 12]).runs(), [(12, 1), (3, 3)]);
        assert_eq!(of(&(1..=12).collect::<Vec<_>>()).runs(), [(1, 12)]);
        assert!(of(&[]).runs().is_empty());
        assert!(of(&[12]).blocks(12) && !of(&[12]).blocks(11));
    }

    #[test]
    fn eighteen_months_to_the_day_are_not_old_and_a_day_more_is() {
        let group = |today| Group {
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
        let crew = Crew {
            size: 4.0,
            hours: 3.0,
        };
        assert_eq!(crew.trees_a_day(20.0), 36.0);
        assert_eq!(crew.trees_a_day(25.0), 28.0);
    }
}
