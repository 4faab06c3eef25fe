//! Where there is no place and no date model: the months of the hemisphere. No number is shown for it.
//! Common practice: late winter to early summer, not in autumn or early winter. The exact months are our own assumption.

use super::verdict::Verdict;
use crate::terms::place::Hemisphere;
use chrono::{Datelike, NaiveDate};

/// A date's month as if it were in the north: half a year is turned over in the south.
fn northern_month(date: NaiveDate, hemisphere: Hemisphere) -> u32 {
    match hemisphere {
        Hemisphere::North => date.month(),
        Hemisphere::South => (date.month() + 5) % 12 + 1,
    }
}

/// True in March to July (September to January in the south), in August (February) too where `longer`
/// (conifers and evergreens).
#[must_use]
pub fn inside(date: NaiveDate, hemisphere: Hemisphere, longer: bool) -> bool {
    (3..=if longer { 8 } else { 7 }).contains(&northern_month(date, hemisphere))
}

/// True in the best stretch: May and June (November and December in the south).
#[must_use]
pub fn best(date: NaiveDate, hemisphere: Hemisphere) -> bool {
    (5..=6).contains(&northern_month(date, hemisphere))
}

/// `test_first` inside, `unknown` outside ("does not slip, as a rule").
#[must_use]
pub fn verdict(date: NaiveDate, hemisphere: Hemisphere, longer: bool) -> Verdict {
    if inside(date, hemisphere, longer) {
        Verdict::TestFirst
    } else {
        Verdict::Unknown
    }
}
