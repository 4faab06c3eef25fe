//! Each calculator of the family: the question that it is, and its first sentence.

use super::say::Say;
use super::{effort, phrase, region, visits};
use crate::kind::Kind;
use crate::measure;
use crate::words::{Word, m};
use calc::answer::Outcome;
use calc::models::reach::ReachOutcome as Reached;
use calc::terms::method::Method;

/// The question that a calculator is.
pub fn asks(kind: Kind) -> Word {
    match kind {
        Kind::TreePlan => m::CALCULATORS_TREE_PLAN,
        Kind::Year => m::CALCULATORS_YEAR,
        Kind::Ring => m::CALCULATORS_RING,
        Kind::Reach => m::CALCULATORS_REACH,
        Kind::Effort => m::CALCULATORS_EFFORT,
        Kind::Checks => m::CALCULATORS_CHECKS,
    }
}

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
                let tree = phrase::tree(self.question.tree.species);
                Some(phrase::sentence(&match place {
                    Some(place) => {
                        m::calculators_year_in(m::CalculatorsYearIn { tree, place, said })
                    }
                    None => m::calculators_year_said(m::CalculatorsYearSaid { tree, said }),
                }))
            }
            Kind::Ring => {
                let ring = crate::answer::ring_of(answer)?;
                let leads =
                    answer.outcome == Outcome::Do && answer.headline_method == Method::BarkRing;
                leads.then(|| {
                    let width = measure::ring(ring.better_mm).text(self.units());
                    m::calculators_cut_a_ring(width)
                })
            }
            Kind::Reach => {
                let near = self.nearest_of(true)?;
                let inside = matches!(
                    near.outcome,
                    Some(Reached::Inside | Reached::Professional | Reached::Line)
                );
                let target = m::reach_target_short(near.kind);
                let distance = self.length(near.distance_m?);
                let reach = self.reach(answer.reach.zone_m);
                Some(phrase::sentence(&if inside {
                    m::calculators_inside(m::CalculatorsInside {
                        target,
                        distance,
                        reach,
                    })
                } else {
                    m::calculators_outside(m::CalculatorsOutside {
                        target,
                        distance,
                        reach,
                    })
                }))
            }
            Kind::Effort => {
                let effort = answer.effort.as_ref()?;
                let (span, hours) =
                    measure::span_of_minutes(effort.low_min, effort.likely_min, effort.high_min);
                let minutes = phrase::sentence(&effort::minutes_said(&span, hours));
                Some(m::calculators_one_person(minutes))
            }
            Kind::Checks => {
                let first = answer.visits.first()?;
                let seasons = answer
                    .visits
                    .last()
                    .map_or(1, |visit| usize::from(visit.season));
                let visits = visits::visits_count(answer.visits.len(), seasons);
                Some(m::calculators_visits(m::CalculatorsVisits {
                    visits: phrase::sentence(&visits),
                    first: measure::days(first.from, first.to),
                }))
            }
        }
    }
}
