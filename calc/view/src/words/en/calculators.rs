//! Each calculator of the family: the question that it is, and its first sentence.

use super::say::Say;
use super::{effort, phrase, reach, region, visits};
use crate::kind::Kind;
use crate::measure;
use calc::answer::Outcome;
use calc::models::reach::Outcome as Reached;
use calc::terms::method::Method;

/// The question that a calculator is.
pub fn asks(kind: Kind) -> &'static str {
    match kind {
        Kind::TreePlan => "Tree plan",
        Kind::Year => "When does the bark slip?",
        Kind::Ring => "How wide should the ring be?",
        Kind::Reach => "How far could it reach?",
        Kind::Effort => "How long does it take?",
        Kind::Checks => "When do I come back?",
    }
}

/// In place of a part that this answer has not.
pub const NO_SUCH_PART: &str = "With this answer there is nothing of that to show.";

impl Say<'_> {
    /// The first sentence of a calculator, where it has one of its own and nothing stops or waits for it.
    pub fn first(&self, kind: Kind) -> Option<String> {
        let answer = self.answer;
        if matches!(answer.outcome, Outcome::Professional | Outcome::CannotTell) {
            return None;
        }
        match kind {
            Kind::TreePlan => None,
            Kind::Year => {
                let (day, verdict) = (answer.asked_day?, answer.asked_verdict?);
                let place = self.question.region.as_deref().map(region::in_sentence);
                let said = self.bark_on(day, verdict, answer.asked_probability);
                Some(cat!(
                    phrase::sentence(answer.species.name),
                    if place.is_some() { " in " } else { "" },
                    place.as_deref().unwrap_or(""),
                    ": ",
                    said,
                    "."
                ))
            }
            Kind::Ring => {
                let ring = crate::answer::ring_of(answer)?;
                let leads =
                    answer.outcome == Outcome::Do && answer.headline_method == Method::BarkRing;
                leads.then(|| {
                    cat!(
                        "Cut a ring ",
                        measure::ring(ring.better_mm).text(self.units()),
                        " wide."
                    )
                })
            }
            Kind::Reach => {
                let near = self.nearest_of(true)?;
                let inside = matches!(
                    near.outcome,
                    Some(Reached::Inside | Reached::Professional | Reached::Line)
                );
                Some(cat!(
                    phrase::sentence(reach::target_short(near.kind)),
                    ", ",
                    self.length(near.distance_m?),
                    " away: ",
                    if inside { "inside" } else { "outside" },
                    " the reach used here, ",
                    self.reach(answer.reach.zone_m),
                    "."
                ))
            }
            Kind::Effort => {
                let effort = answer.effort.as_ref()?;
                let (span, hours) =
                    measure::span_of_minutes(effort.low_min, effort.likely_min, effort.high_min);
                let lead = effort::minutes_lead(&span, hours);
                Some(cat!(lead.trim_end_matches('.'), " for one person."))
            }
            Kind::Checks => {
                let first = answer.visits.first()?;
                let seasons = answer
                    .visits
                    .last()
                    .map_or(1, |visit| usize::from(visit.season));
                Some(cat!(
                    phrase::sentence(&visits::visits_count(answer.visits.len(), seasons)),
                    ", the first ",
                    measure::days(first.from, first.to),
                    "."
                ))
            }
        }
    }
}
