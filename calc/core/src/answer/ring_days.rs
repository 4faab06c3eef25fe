//! On which of many days a ring heads, and how likely the bark slips then: what a plan of many trees asks of each.

use super::calendar::{Calendar, TakenAsMet};
use super::compose::reach_at;
use super::decide::{Outcome, decide};
use super::facts::{Facts, Known};
use crate::models::height;
use crate::models::season::Local;
use crate::question::{Day, Question};
use crate::reference::Reference;
use chrono::NaiveDate;

/// For each day, the probability (0 to 1) that the bark slips, where the answer for that day is to ring the tree; none
/// where it is anything else: a stop, something open, another method, a closed month, bark that is tight.
///
/// The tree is judged as one that can't wait: another day that were better leaves a day as it is. What holds on every
/// day (height, reach, the calendar of the species and place) is settled once. It is equal to asking [`super::answer`]
/// for one day after the other.
///
/// ```
/// # use calc::question::read;
/// # let reference = calc_data::whole();
/// let question = read(reference, &examples::named("do")).expect("a good question");
/// use calc::{answer::ring_days, models::season::Local};
/// use chrono::NaiveDate;
/// let days = [(2027, 1, 9), (2027, 6, 12)].map(|(y, m, d)| NaiveDate::from_ymd_opt(y, m, d).expect("a day"));
/// let rings = ring_days(reference, &question, &Local::default(), &days);
/// assert!(rings[0].is_none() && rings[1].is_some_and(|p| p > 0.5));
/// ```
#[must_use]
pub fn ring_days(
    reference: &'static Reference,
    question: &Question,
    local: &Local,
    days: &[NaiveDate],
) -> Vec<Option<f64>> {
    let Some(&first) = days.first() else {
        return Vec::new();
    };
    let met = TakenAsMet::default();
    let settled = Question {
        day: Day::On(first),
        cannot_wait: true,
        ..question.clone()
    };
    let season = settled.season();
    let used = height::for_reach(&reference.heights(), &settled.tree);
    let reach = reach_at(reference, &settled.tree, &used);
    let around = days.iter().map(|day| (*day - first).num_days());
    let around = around.map(i64::unsigned_abs).max().unwrap_or(0);
    let calendar = Calendar::new(reference, &settled, local, met, around);
    let known = Known::default();
    let mut on = settled.clone();
    days.iter()
        .map(|&day| {
            on.day = Day::On(day);
            // How long it has been dry is said of one season: in another it is judged anew.
            let own =
                (!season.same_from(day)).then(|| Calendar::new(reference, &on, local, met, 0));
            let calendar = own.as_ref().unwrap_or(&calendar);
            // Where the bark is tight, most days of a year, no ring heads: the rest need not be asked.
            if !calendar.slips(day) {
                return None;
            }
            let mut facts = Facts::new(reference, &on, local, (&reach, calendar), met, &known);
            facts.head_alone = true;
            (decide(&facts).outcome == Outcome::Do).then(|| calendar.season.p_for_rules(day))
        })
        .collect()
}
