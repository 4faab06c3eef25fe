//! What a list prints of one row: names and figures of its answer, and what is wrong. The words are the caller's.

use calc::answer::{Answer, Outcome};
use calc::models::effort::MethodWork;
use calc::question::Question;
use calc::terms::day::iso;
use calc::terms::lengths::{tenth_mm, tenth_mm_of_m};
use calc::terms::method::Method;
use serde::Serialize;

/// Minutes of one person: the ring's, or another method's, which has no mean.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Minutes {
    /// One of ten takes less.
    pub low: f64,
    /// As many take less as more.
    pub likely: Option<f64>,
    /// One of ten takes more.
    pub high: f64,
    /// The mean.
    pub mean: Option<f64>,
}

/// First and last day.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct DayWindow {
    /// First day, as `2027-05-17`.
    pub from: String,
    /// Last day.
    pub to: String,
}

/// A visit after the work.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct VisitLine {
    /// What it is for.
    pub kind: &'static str,
    /// First day.
    pub from: String,
    /// Last day.
    pub to: String,
}

/// What an answer comes to in a row of a list.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Line {
    /// `do`, `wait`, `other_method`, `professional` or `cannot_tell`.
    pub outcome: &'static str,
    /// The method at the head.
    pub method: &'static str,
    /// Only a professional may do it.
    pub by_professional: bool,
    /// Width of the ring on the stem that the answer speaks of, millimetres; none where no ring is cut.
    pub ring_mm: Option<f64>,
    /// Person-minutes of the method; none where nothing is known, or nothing is to be done.
    pub minutes: Option<Minutes>,
    /// The next days that are good for it, outside all closed months.
    pub window: Option<DayWindow>,
    /// Probability that the bark slips on the advised day.
    pub p: Option<f64>,
    /// The day that the answer is for.
    pub advised_day: Option<String>,
    /// Everything within so many metres is asked for: two heights.
    pub reach_m: f64,
    /// The ground within so many metres stays dangerous.
    pub zone_m: f64,
    /// Visits after it.
    pub visits: Vec<VisitLine>,
    /// Cautions, by their ids.
    pub cautions: Vec<&'static str>,
    /// Fields that were not given and for which something was used instead.
    pub assumed: Vec<&'static str>,
}

/// Whether the row's own method is done at all: not while something is missing, and not by a stop.
fn is_work(outcome: Outcome) -> bool {
    matches!(outcome, Outcome::Do | Outcome::Wait | Outcome::OtherMethod)
}

impl Line {
    /// Of an answer.
    #[must_use]
    pub fn of(question: &Question, answer: &Answer) -> Self {
        let method = answer.headline_method;
        let rings = method == Method::BarkRing;
        let heading = question.tree.heading();
        let stem = question
            .tree
            .stems
            .iter()
            .position(|stem| std::ptr::eq(stem, heading));
        let ring = stem
            .and_then(|at| answer.stems.get(at))
            .filter(|_| rings)
            .and_then(|stem| stem.ring.as_ref())
            .map(|ring| tenth_mm(ring.better_mm));
        let effort = answer.effort.as_ref().filter(|_| rings);
        let other = answer
            .work
            .iter()
            .find(|work: &&MethodWork| work.method == method && !rings)
            .and_then(|work| work.now.as_ref());
        let minutes = match (effort, other) {
            (Some(ring), _) => Some(Minutes {
                low: ring.low_min,
                likely: Some(ring.likely_min),
                high: ring.high_min,
                mean: Some(ring.mean_min),
            }),
            (None, Some(work)) => Some(Minutes {
                low: work.low,
                likely: work.likely,
                high: work.high,
                mean: None,
            }),
            (None, None) => None,
        };
        let timing = &answer.timing;
        Self {
            outcome: answer.outcome.word(),
            method: method.word(),
            by_professional: answer.headline_by_professional,
            ring_mm: ring,
            minutes: minutes.filter(|_| is_work(answer.outcome)),
            window: timing
                .next_good
                .zip(timing.next_good_to)
                .map(|(from, to)| DayWindow {
                    from: iso(from),
                    to: iso(to),
                }),
            p: timing.probability,
            advised_day: answer.advised_day.map(iso),
            reach_m: tenth_mm_of_m(answer.reach.two_heights_m),
            zone_m: tenth_mm_of_m(answer.reach.zone_m),
            visits: answer
                .visits
                .iter()
                .map(|visit| VisitLine {
                    kind: visit.kind.word(),
                    from: iso(visit.from),
                    to: iso(visit.to),
                })
                .collect(),
            cautions: answer.cautions.iter().map(|caution| caution.id).collect(),
            assumed: answer.assumed.iter().map(|assumed| assumed.field).collect(),
        }
    }
}
