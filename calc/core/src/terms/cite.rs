//! Where a value comes from: source, place in it, grade. A value without them does not leave `calc`.

use super::source::{self, SourceId};
use crate::terms::words::words;
use serde::Serialize;

words! {
    /// How well a value is known. The order is from best to least.
    pub enum Grade {
        /// Measured by the person who asks.
        Measured,
        /// Read in the source's own text.
        Published,
        /// A published number of a related species.
        Related,
        /// Arithmetic on published numbers.
        Derived,
        /// Read where another document quotes it.
        Secondary,
        /// Common practice of the trade; no source.
        Practice,
        /// Our own assumption.
        Assumption,
        /// Recalled, not seen. Never shown as sourced.
        Memory,
    }
}

impl Grade {
    /// Reads a grade as the evidence tables write it: the first word decides, `(surrogate)` marks a related species.
    #[must_use]
    pub fn of_table(text: &str) -> Option<Self> {
        let word = text
            .split(|c: char| !c.is_ascii_alphabetic())
            .next()
            .unwrap_or("");
        Some(match word {
            "PUBLISHED" if text.contains("(surrogate)") => Self::Related,
            "PUBLISHED" => Self::Published,
            "DERIVED" => Self::Derived,
            "SECONDARY" => Self::Secondary,
            "COMMON" => Self::Practice,
            "ESTIMATE" | "INFERENCE" | "ASSUMPTION" | "OWN" => Self::Assumption,
            "MEMORY" => Self::Memory,
            _ => return None,
        })
    }
}

/// One place in one source. Our own assumptions cite `own`, facts of the trade `practice`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Cite {
    /// The source; a line of the sources table.
    #[cfg_attr(
        feature = "schema",
        schemars(with = "&'static str"),
        ts(type = "string")
    )]
    pub source: SourceId,
    /// Where in it: page, table, equation.
    pub place: &'static str,
    /// How well it is known.
    pub grade: Grade,
}

impl Cite {
    /// Our own assumption; `place` names the constant or the rule.
    #[must_use]
    pub const fn own(place: &'static str) -> Self {
        Self {
            source: source::OWN,
            place,
            grade: Grade::Assumption,
        }
    }

    /// A fact of the trade without a source.
    #[must_use]
    pub const fn practice(place: &'static str) -> Self {
        Self {
            source: source::PRACTICE,
            place,
            grade: Grade::Practice,
        }
    }

    /// A rule of the group that the question is asked for; its name stands in its settings.
    #[must_use]
    pub const fn group(place: &'static str) -> Self {
        Self {
            source: source::GROUP,
            place,
            grade: Grade::Practice,
        }
    }

    /// What the asker measured or said.
    #[must_use]
    pub const fn measured(place: &'static str) -> Self {
        Self {
            source: source::YOU,
            place,
            grade: Grade::Measured,
        }
    }
}

/// A place in a source that was read in its own text.
#[must_use]
pub const fn cite(source: SourceId, place: &'static str) -> Cite {
    Cite {
        source,
        place,
        grade: Grade::Published,
    }
}

/// A value with its range and its reasons. Models return these; nothing else makes a figure.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Finding<T> {
    /// The likely value.
    pub value: T,
    /// Low end of the range, where there is one.
    pub low: Option<T>,
    /// High end of the range, where there is one.
    pub high: Option<T>,
    /// What it rests on. Never empty.
    pub because: Vec<Cite>,
}

impl<T> Finding<T> {
    /// A value without a range.
    #[must_use]
    pub fn exact(value: T, because: Cite) -> Self {
        Self {
            value,
            low: None,
            high: None,
            because: vec![because],
        }
    }

    /// A value with its range.
    #[must_use]
    pub fn ranged(value: T, low: T, high: T, because: Vec<Cite>) -> Self {
        Self {
            value,
            low: Some(low),
            high: Some(high),
            because,
        }
    }

    /// The weakest grade that it rests on.
    #[must_use]
    pub fn grade(&self) -> Grade {
        self.because
            .iter()
            .map(|cite| cite.grade)
            .max()
            .unwrap_or(Grade::Assumption)
    }
}
