//! How long an answer stands from a day on: a day that is named is named with the end of its stretch.

use super::facts::{Facts, level};
use crate::terms::method::Method;
use crate::terms::tree::Herbicide;
use chrono::NaiveDate;

/// A stretch as long as a year has no end.
const STRETCH_DAYS: usize = 365;

/// The last day of the stretch that a day begins: on it, without a break, the same method heads as high, for a ring with
/// the same word of the bark. None where it may be any day.
pub(super) fn last_day(
    facts: &Facts<'_>,
    method: Method,
    first: NaiveDate,
    herbicide: Herbicide,
) -> Option<NaiveDate> {
    let stem = facts.stem;
    let ring = method == Method::BarkRing;
    let stands = |day: NaiveDate| {
        let lines = if ring {
            facts.lines_with(stem, day, herbicide)
        } else {
            facts.lines_without_ring(facts.calendar.part(day), herbicide)
        };
        (facts.head(&lines, stem) == method, level(&lines, method))
    };
    let at_first = stands(first);
    // Part of the year and bark are all that the methods ask of a day.
    let case = |day: NaiveDate| (facts.calendar.part(day), facts.calendar.slips(day));
    let mut judged = case(first);
    let word = |day: NaiveDate| {
        (
            facts.calendar.season.verdict(day),
            facts.calendar.season.is_best(day),
        )
    };
    let mut goes_on = |day: NaiveDate| {
        let named = if ring {
            facts.calendar.may_name(day, true) && word(day) == word(first)
        } else {
            !facts.calendar.soon_closed(day)
        };
        let case = case(day);
        let as_before = core::mem::replace(&mut judged, case) == case;
        named && (as_before || stands(day) == at_first)
    };
    let mut last = first;
    for _ in 0..STRETCH_DAYS {
        match last.succ_opt().filter(|day| goes_on(*day)) {
            Some(day) => last = day,
            None => return Some(last),
        }
    }
    None
}
