//! Probability to one word: the two come from one function, so they cannot disagree.

use super::constants::SeasonConstants;
use crate::terms::words::words;
use serde::{Deserialize, Serialize};

words! {
    /// The one word for a day.
    pub enum Verdict {
        /// Before the season: the bark does not slip.
        Dormant,
        /// Too early as a rule; test.
        TooEarly,
        /// Opening: test first.
        OpeningTest,
        /// The best days.
        Best,
        /// Closing: test first.
        ClosingTest,
        /// Late: usually bonding.
        Late,
        /// The bark is bonded.
        Bonded,
        /// No date model: test first.
        TestFirst,
        /// No date model, and outside the months: does not slip, as a rule.
        Unknown,
    }
}

words! {
    /// How a day is drawn on the year tape.
    pub enum Fill {
        /// Good days.
        Solid,
        /// Possible days: test first.
        Hatched,
        /// Nothing to be had.
        Empty,
    }
}

words! {
    /// The column of a list of trees.
    pub enum DayRating {
        /// Best days.
        Good,
        /// Test first.
        Possible,
        /// Too early, late, dormant or bonded.
        Poor,
    }
}

/// A probability as people read it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum YearsInTen {
    /// Under 0.05.
    HardlyEver,
    /// About so many years in ten, 1 to 9.
    About(u8),
    /// 0.95 and more.
    NearlyEvery,
}

/// On which side of the middle of the best days a day lies.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Side {
    /// Before it.
    Opening,
    /// After it.
    Closing,
}

impl Verdict {
    /// The word for a probability, on one side, `between` best from and best to (both counted).
    #[must_use]
    pub fn of(p: f64, side: Side, between: bool, c: &SeasonConstants) -> Self {
        Self::of_steps(p >= c.p_best && between, p >= c.p_test, p >= c.p_poor, side)
    }

    /// The word for the steps that a probability reaches.
    #[must_use]
    pub fn of_steps(best: bool, test: bool, poor: bool, side: Side) -> Self {
        if best {
            return Self::Best;
        }
        match (side, test, poor) {
            (Side::Opening, true, _) => Self::OpeningTest,
            (Side::Closing, true, _) => Self::ClosingTest,
            (Side::Opening, false, true) => Self::TooEarly,
            (Side::Closing, false, true) => Self::Late,
            (Side::Opening, false, false) => Self::Dormant,
            (Side::Closing, false, false) => Self::Bonded,
        }
    }

    /// How the year tape draws it.
    #[must_use]
    pub fn fill(self) -> Fill {
        match self {
            Self::Best => Fill::Solid,
            Self::Dormant | Self::Bonded | Self::Unknown => Fill::Empty,
            _ => Fill::Hatched,
        }
    }

    /// The word of the list column.
    #[must_use]
    pub fn rating(self) -> DayRating {
        match self {
            Self::Best => DayRating::Good,
            Self::OpeningTest | Self::ClosingTest | Self::TestFirst => DayRating::Possible,
            _ => DayRating::Poor,
        }
    }
}

impl YearsInTen {
    /// Rounds a probability (0–1) to years in ten; what rounds to 0 or 10 without being at the ends says 1 or 9.
    #[must_use]
    pub fn of(p: f64, c: &SeasonConstants) -> Self {
        if p >= c.p_nearly_every {
            Self::NearlyEvery
        } else if p < c.p_hardly_ever {
            Self::HardlyEver
        } else {
            Self::About(libm::floor(10.0 * p + 0.5).clamp(1.0, 9.0) as u8)
        }
    }
}

/// The chance that the bark slips on `day`: the season has opened and has not closed (days, any common origin).
#[must_use]
pub fn probability(day: f64, opens: f64, sd_open: f64, closes: f64, sd_close: f64) -> f64 {
    phi((day - opens) / sd_open) * phi((closes - day) / sd_close)
}

/// The normal distribution function.
#[must_use]
pub fn phi(z: f64) -> f64 {
    0.5 * libm::erfc(-z * core::f64::consts::FRAC_1_SQRT_2)
}
