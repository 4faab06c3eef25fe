//! What may stand in a cell: closed words, grades, lists, and a reason where there is nothing.

use calc::models::cautions::When;
use calc::models::condition::RowCondition;
use calc::models::outlook::{OutlookClass, SizeClass};
use calc::models::trigger::CautionInput;
use calc::models::trigger::Trigger;
use calc::terms::cite::Grade;
use calc::terms::method::{Cell as MethodCell, Method};
use calc::terms::species::{Confidence, Durability, Group, SproutVigor, Suitability, WoodClass};
use calc::timing::closed_months::{Scope, Topic};
use serde::de::Error;
use serde::{Deserialize, Deserializer};
use std::ops::Deref;

/// Something that a cell holds.
pub(crate) trait Cell: Sized {
    /// Reads it.
    ///
    /// # Errors
    /// Quotes the cell and says what it should be.
    fn of(text: &str) -> Result<Self, String>;
}

/// Reads a cell: `#[serde(deserialize_with = "cell")]`.
pub(crate) fn cell<'de, D: Deserializer<'de>, T: Cell>(from: D) -> Result<T, D::Error> {
    T::of(&String::deserialize(from)?).map_err(D::Error::custom)
}

/// Reads a cell that may be empty.
pub(crate) fn maybe<'de, D: Deserializer<'de>, T: Cell>(from: D) -> Result<Option<T>, D::Error> {
    let text = String::deserialize(from)?;
    if text.is_empty() {
        return Ok(None);
    }
    T::of(&text).map(Some).map_err(D::Error::custom)
}

macro_rules! closed_words {
    ($($type:ty = $what:literal),+ $(,)?) => {
        $(impl Cell for $type {
            fn of(text: &str) -> Result<Self, String> {
                <$type>::parse(text).ok_or_else(|| {
                    format!("\"{text}\" is no {}: {}", $what, <$type>::WORDS.join(", "))
                })
            }
        })+
    };
}

pub(crate) use closed_words;

closed_words! {
    Confidence = "confidence",
    Group = "group",
    CautionInput = "input",
    Method = "method",
    OutlookClass = "class",
    Scope = "scope",
    Suitability = "class",
    Topic = "kind",
    SproutVigor = "vigor",
    When = "time",
    WoodClass = "wood class",
}

impl Cell for Durability {
    fn of(text: &str) -> Result<Self, String> {
        let known = Self::parse(&text.to_lowercase());
        known.ok_or_else(|| format!("\"{text}\" is no class of durability: A, B, C, D"))
    }
}

impl Cell for RowCondition {
    fn of(text: &str) -> Result<Self, String> {
        Self::parse(text).ok_or_else(|| format!("\"{text}\" is no condition of the code"))
    }
}

impl Cell for Trigger {
    fn of(text: &str) -> Result<Self, String> {
        Self::parse(text).ok_or_else(|| format!("\"{text}\" is no caution that the code knows"))
    }
}

impl Cell for SizeClass {
    fn of(text: &str) -> Result<Self, String> {
        Ok(match text {
            "all" => Self::All,
            "<6 in" => Self::Small,
            "6-10 in" => Self::Middle,
            ">10 in" => Self::Large,
            "<10 in" => Self::UnderTen,
            _ => {
                return Err(format!(
                    "\"{text}\" is no size: all, <6 in, 6-10 in, >10 in, <10 in"
                ));
            }
        })
    }
}

impl Cell for Grade {
    fn of(text: &str) -> Result<Self, String> {
        Self::of_table(text).ok_or_else(|| format!("\"{text}\" is no grade"))
    }
}

impl Cell for MethodCell {
    fn of(text: &str) -> Result<Self, String> {
        Self::parse(text).ok_or_else(|| format!("\"{text}\" is not one of . P N R with * or !"))
    }
}

impl Cell for String {
    fn of(text: &str) -> Result<Self, String> {
        match text {
            "" => Err("a cell that is needed is empty".into()),
            text => Ok(text.to_owned()),
        }
    }
}

/// Parts between semicolons; none where the cell is empty.
#[derive(Debug, Default)]
pub(crate) struct List(Vec<String>);

impl Cell for List {
    fn of(text: &str) -> Result<Self, String> {
        let parts = text.split(';').map(str::trim);
        Ok(Self(
            parts
                .filter(|part| !part.is_empty())
                .map(str::to_owned)
                .collect(),
        ))
    }
}

impl Deref for List {
    type Target = [String];

    fn deref(&self) -> &[String] {
        &self.0
    }
}

/// Codes of regions between blanks: `US-NY CA-ON`.
#[derive(Debug)]
pub(crate) struct Codes(pub &'static [&'static str]);

impl Cell for Codes {
    fn of(text: &str) -> Result<Self, String> {
        Ok(Self(
            text.split_whitespace().map(keep).collect::<Vec<_>>().leak(),
        ))
    }
}

/// A value, or why there is none: `none, because it is a conifer`. An empty cell is neither.
#[derive(Debug)]
pub(crate) enum Told<T> {
    /// The value.
    Is(T),
    /// Looked for, and why it is not there.
    NoneBecause,
}

impl<T> Told<T> {
    /// The value, where there is one.
    pub(crate) fn is(&self) -> Option<&T> {
        match self {
            Self::Is(value) => Some(value),
            Self::NoneBecause => None,
        }
    }
}

const NONE: &str = "none, because ";
/// A reason has more than a word or two.
const SHORTEST_REASON: usize = 8;

impl<T: Cell> Cell for Told<T> {
    fn of(text: &str) -> Result<Self, String> {
        if text.is_empty() {
            return Err(format!("a cell is empty: fill it, or write \"{NONE}…\""));
        }
        if !text.starts_with("none") {
            return T::of(text).map(Self::Is);
        }
        match text.strip_prefix(NONE) {
            Some(reason) if reason.len() >= SHORTEST_REASON => Ok(Self::NoneBecause),
            _ => Err(format!("\"{text}\" gives no reason: write \"{NONE}…\"")),
        }
    }
}

/// Whether a row may be used: `yes`, or `no, because …`.
#[derive(Debug)]
pub(crate) struct Usable(pub bool);

impl Cell for Usable {
    fn of(text: &str) -> Result<Self, String> {
        match text {
            "yes" => Ok(Self(true)),
            _ if text.starts_with("no, because ") => Ok(Self(false)),
            _ => Err(format!("\"{text}\" is not yes, or \"no, because …\"")),
        }
    }
}

/// `Quercus alba; Q. macrocarpa` names two species of one genus, `Morus alba and Melia azedarach` two of two.
#[derive(Debug)]
pub(crate) struct Names(pub Vec<String>);

impl Cell for Names {
    fn of(text: &str) -> Result<Self, String> {
        let genus = text.split(' ').next().unwrap_or("");
        let initial = format!("{}. ", genus.chars().next().unwrap_or(' '));
        let whole = |name: &str| match name.strip_prefix(&initial) {
            Some(epithet) => format!("{genus} {epithet}"),
            None => name.to_owned(),
        };
        let text = text.replace(", ", ";").replace(" and ", ";");
        Ok(Self(
            text.split(';').map(|name| whole(name.trim())).collect(),
        ))
    }
}

/// A month and a day: `03-15`.
#[derive(Clone, Copy, Debug)]
pub(crate) struct MonthDay(pub u8, pub u8);

impl Cell for MonthDay {
    fn of(text: &str) -> Result<Self, String> {
        let parts = text.split_once('-').and_then(|(month, day)| {
            let (month, day) = (month.parse().ok()?, day.parse().ok()?);
            ((1..=12).contains(&month) && (1..=31).contains(&day)).then_some(Self(month, day))
        });
        parts.ok_or_else(|| format!("\"{text}\" is not a month and a day"))
    }
}

/// A text that lives as long as the program, as the tables in the module do.
pub(crate) fn keep(text: &str) -> &'static str {
    text.to_owned().leak()
}
