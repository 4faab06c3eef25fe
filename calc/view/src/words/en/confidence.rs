//! How sure the answer is, what would change it, and trees that look like this one.

use super::phrase;
use super::say::Say;
use crate::measure;
use crate::words::m;
use calc::answer::{Change, Changed, Outcome};
use calc::terms::method::Method;

/// Give or take.
pub fn take_days(days: f64) -> String {
    m::confidence_take_days(measure::plain(days, 0))
}

/// Rows of a height.
pub fn rows_from(low: &str, high: &str) -> String {
    m::confidence_rows_from(m::ConfidenceRowsFrom { low, high })
}

impl Say<'_> {
    /// A single change that flips the answer.
    pub fn change(&self, change: &Change) -> String {
        let units = self.units();
        let largest = self.question.tree.largest().dbh.mm();
        let more = |more: bool, value: String| {
            if more {
                m::confidence_or_more(value)
            } else {
                m::confidence_or_less(value)
            }
        };
        let what = match change.changed {
            Changed::Date { to } => m::confidence_on_day(to),
            Changed::Distance { to_m } => {
                let nearest = self.nearest().and_then(|target| target.distance_m);
                let distance = self.length(to_m);
                if to_m > nearest.unwrap_or(0.0) {
                    m::confidence_all_away(distance)
                } else {
                    m::confidence_something_near(distance)
                }
            }
            Changed::Height { to_m } => m::confidence_with_height(more(
                to_m > self.answer.height.hazard_m,
                self.length(to_m),
            )),
            Changed::Herbicide { allowed: true } => m::CONFIDENCE_WITH_HERBICIDE.into(),
            Changed::Herbicide { allowed: false } => m::CONFIDENCE_WITHOUT_HERBICIDE.into(),
            Changed::WholeClone { to: true } => m::CONFIDENCE_WHOLE_CLONE.into(),
            Changed::WholeClone { to: false } => m::CONFIDENCE_PART_OF_CLONE.into(),
            Changed::Diameter { to_mm } => {
                m::confidence_with_trunk(more(to_mm > largest, measure::size(to_mm).text(units)))
            }
        };
        phrase::sentence(&m::confidence_change(m::ConfidenceChange {
            what,
            then: self.then(change.outcome, change.headline_method),
        }))
    }

    /// Another answer in a few words.
    pub(super) fn then(&self, outcome: Outcome, method: Method) -> String {
        match outcome {
            Outcome::Do => m::CONFIDENCE_THEN_RING.into(),
            Outcome::Wait if method == Method::BarkRing => m::CONFIDENCE_THEN_WAIT_RING.into(),
            Outcome::Wait => m::confidence_then_wait(m::method_act(method)),
            Outcome::OtherMethod => m::method_act(method).into(),
            Outcome::Professional => m::CONFIDENCE_THEN_PROFESSIONAL.into(),
            Outcome::CannotTell => m::CONFIDENCE_THEN_UNKNOWN.into(),
        }
    }
}
