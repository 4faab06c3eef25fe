//! Where there is no place and no date model: the months of the hemisphere. No number is shown for it.
//! Common practice: late winter to early summer, not in autumn or early winter. The exact months are our own assumption, and stand in content.

use super::constants::SeasonConstants;
use super::verdict::Verdict;
use crate::terms::place::Hemisphere;
use chrono::{Datelike, NaiveDate};

/// True in the months in which bark may slip; they are more for conifers and evergreens, `longer`.
#[must_use]
pub fn inside(date: NaiveDate, hemisphere: Hemisphere, longer: bool, c: &SeasonConstants) -> bool {
    let months = if longer {
        c.envelope_longer
    } else {
        c.envelope
    };
    months.hold(date.month(), hemisphere)
}

/// True in the best stretch.
#[must_use]
pub fn best(date: NaiveDate, hemisphere: Hemisphere, c: &SeasonConstants) -> bool {
    c.envelope_best.hold(date.month(), hemisphere)
}

/// `test_first` inside, `unknown` outside ("does not slip, as a rule").
#[must_use]
pub fn verdict(
    date: NaiveDate,
    hemisphere: Hemisphere,
    longer: bool,
    c: &SeasonConstants,
) -> Verdict {
    if inside(date, hemisphere, longer, c) {
        Verdict::TestFirst
    } else {
        Verdict::Unknown
    }
}
