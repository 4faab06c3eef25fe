//! What is still open, and the question with it settled.

use super::calendar::TakenAsMet;
use super::facts::{Facts, level};
use crate::answer::Answer;
use crate::models::condition::Case;
use crate::models::reach;
use crate::models::reach::Why;
use crate::question::Question;
use crate::terms::method::{Level, Method};
use crate::terms::quantity::TotalHeight;
use crate::terms::species::{SproutVigor, Suitability};
use crate::terms::tree::{Reply, Stem};
use chrono::NaiveDate;
use serde::Serialize;

/// What would settle a question that can't be answered yet.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct If {
    /// The open conditions by name, joined with `+`.
    pub condition: String,
    /// The same, one by one.
    pub conditions: Vec<Conditional>,
    /// The answer if they hold.
    pub answer: Box<Answer>,
}

/// A condition that is open.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
#[serde(rename_all = "snake_case", tag = "name")]
pub enum Conditional {
    /// Nothing that counts stands within this distance.
    NothingInReach {
        /// Two heights, metres.
        #[serde(serialize_with = "crate::terms::lengths::m")]
        within_m: f64,
    },
    /// No overhead line is within this distance.
    NoLine {
        /// Two heights, metres.
        #[serde(serialize_with = "crate::terms::lengths::m")]
        within_m: f64,
    },
    /// The tree is lower than this.
    HeightUnder {
        /// Metres.
        #[serde(serialize_with = "crate::terms::lengths::m")]
        height_m: f64,
    },
    /// Every stem of the clone can be ringed.
    WholeClone,
    /// Oak wilt is not in the state.
    NoOakWilt,
    /// It is a species that a ring suits.
    SpeciesSuits,
}

impl Conditional {
    /// Its name.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::NothingInReach { .. } => "nothing_in_reach",
            Self::NoLine { .. } => "no_line",
            Self::HeightUnder { .. } => "height_under",
            Self::WholeClone => "whole_clone",
            Self::NoOakWilt => "no_oak_wilt",
            Self::SpeciesSuits => "species_suits",
        }
    }
}

/// What is open for an answer on a day, with the best later day of the ring, if there is one.
pub(super) fn conditions(
    facts: &Facts<'_>,
    day: NaiveDate,
    best: Option<NaiveDate>,
) -> Vec<Conditional> {
    let mut open = Vec::new();
    let reach = &facts.reach;
    // Something inside, and something else that may be nearer: its distance decides who may cut at all.
    let nearer_open = reach.outcome == reach::ReachOutcome::Inside && reach.distance_open();
    if reach.line_open()
        || (nearer_open && !reach.small)
        || (reach.outcome == reach::ReachOutcome::NotChecked && reach_matters(facts, day))
    {
        open.extend(of_reach(facts));
    }
    // The rest is settled as if the reach were clear, or as it is where it is known.
    let question = facts.question;
    let species = question.tree.species;
    let clonal = species.suckering == SproutVigor::Strong
        && matches!(
            species.suitability,
            Suitability::Conditional | Suitability::Suitable
        );
    let days: Vec<NaiveDate> = [Some(day), best].into_iter().flatten().collect();
    let would = |met: TakenAsMet, at_least: Level| {
        days.iter().any(|day| heads_if(facts, met, *day, at_least))
    };
    let now = facts.met;
    if clonal
        && question.tree.whole_clone.is_none()
        && !now.whole_clone
        && would(
            TakenAsMet {
                whole_clone: true,
                ..now
            },
            Level::Recommended,
        )
    {
        open.push(Conditional::WholeClone);
    }
    if facts.calendar.oak_open()
        && would(
            TakenAsMet {
                no_oak_wilt: true,
                ..now
            },
            Level::Possible,
        )
    {
        open.push(Conditional::NoOakWilt);
    }
    // Nobody rings a tree that has no name: for an unknown species a ring at possible is open too.
    if species.unknown
        && !now.species_suits
        && would(
            TakenAsMet {
                species_suits: true,
                ..now
            },
            Level::Possible,
        )
    {
        open.push(Conditional::SpeciesSuits);
    }
    open
}

/// The case of a stem if the open conditions do not hold: the clone is not whole, the species does not suit.
pub(super) fn otherwise<'a>(
    facts: &'a Facts<'a>,
    stem: &'a Stem,
    day: NaiveDate,
    open: &[Conditional],
) -> Case<'a> {
    let outcome = match facts.reach.outcome {
        // The table is that of the clear case: the question is whether it is so.
        reach::ReachOutcome::NotChecked if reach_is_open(open) => reach::ReachOutcome::Clear,
        _ => facts.outcome(),
    };
    let mut case = facts.case(stem, day, outcome);
    case.line_open = facts.reach.line_open() && reach_is_open(open);
    if open.contains(&Conditional::WholeClone) {
        case.whole_clone = Some(false);
    }
    case.name_against = open.contains(&Conditional::SpeciesSuits);
    case
}

/// Whether a line, or what it could hit, is among what is open.
pub(super) fn reach_is_open(open: &[Conditional]) -> bool {
    open.iter().any(|condition| {
        matches!(
            condition,
            Conditional::NothingInReach { .. }
                | Conditional::NoLine { .. }
                | Conditional::HeightUnder { .. }
        )
    })
}

/// A reach that is not known matters unless the tree is pulled, dug or left alone either way.
fn reach_matters(facts: &Facts<'_>, day: NaiveDate) -> bool {
    let stem = facts.stem;
    [reach::ReachOutcome::Clear, reach::ReachOutcome::Inside]
        .iter()
        .any(|outcome| {
            let case = facts.case(stem, day, *outcome);
            let lines = facts.levels(&case);
            !matches!(
                facts.head(&lines, stem),
                Method::PullOrDig | Method::LeaveIt
            )
        })
}

/// Whether the ring would be at the head, at this level or better, on a day on which the bark slips.
fn heads_if(facts: &Facts<'_>, met: TakenAsMet, day: NaiveDate, at_least: Level) -> bool {
    let stem = facts.stem;
    if !facts.calendar.slips(day) {
        return false;
    }
    let outcome = match facts.reach.outcome {
        reach::ReachOutcome::NotChecked => reach::ReachOutcome::Clear,
        outcome => outcome,
    };
    let mut case = facts.case(stem, day, outcome);
    if met.whole_clone {
        case.whole_clone = Some(true);
    }
    if met.no_oak_wilt {
        case.part.oak_wilt = false;
        case.part.oak_near = false;
    }
    case.name_known |= met.species_suits;
    let lines = facts.levels(&case);
    facts.head_if(&lines, stem, met) == Method::BarkRing
        && level(&lines, Method::BarkRing) <= at_least
}

/// What would settle the reach: no line, nothing near, or for an unknown species beside a known target a low enough
/// tree.
pub(super) fn of_reach(facts: &Facts<'_>) -> Vec<Conditional> {
    let within_m = facts.reach.two_heights_m;
    let line = Conditional::NoLine { within_m };
    let mut open = Vec::new();
    let missing = |why: Why| facts.reach.missing.contains(&why);
    let nearest = nearest_known_m(facts.question);
    match nearest.filter(|_| missing(Why::HeightUnknown)) {
        Some(distance) => {
            if facts.reach.line_open() {
                open.push(line);
            }
            let factor = facts.question.tree.tighten.distance_factor;
            let height_m = distance / facts.reference.constants.reach.people_out / factor;
            if TotalHeight::new(height_m).is_some() {
                open.push(Conditional::HeightUnder { height_m });
            }
            if missing(Why::ListOpen) || missing(Why::DistanceUnknown) {
                open.push(Conditional::NothingInReach { within_m });
            }
        }
        // Nothing near means no line near, too.
        None if missing(Why::ListOpen) || missing(Why::DistanceUnknown) => {
            open.push(Conditional::NothingInReach { within_m });
        }
        None if facts.reach.line_open() => open.push(line),
        None => open.push(Conditional::NothingInReach { within_m }),
    }
    open
}

fn nearest_known_m(question: &Question) -> Option<f64> {
    question
        .tree
        .targets
        .iter()
        .filter(|target| target.kind.counts())
        .filter_map(|target| target.distance.map(|distance| distance.m()))
        .min_by(f64::total_cmp)
}

/// The question with the open conditions settled the way that lets the tree stand.
pub(super) fn settled(
    question: &Question,
    open: &[Conditional],
    met: TakenAsMet,
) -> (Question, TakenAsMet) {
    let mut question = question.clone();
    let mut met = met;
    for condition in open {
        match condition {
            Conditional::NothingInReach { .. } => {
                question.tree.none_in_reach = true;
                question.tree.line_within_reach = Some(Reply::No);
                question
                    .tree
                    .targets
                    .retain(|target| target.distance.is_some() || !target.kind.counts());
            }
            Conditional::NoLine { .. } => question.tree.line_within_reach = Some(Reply::No),
            Conditional::HeightUnder { height_m } => {
                question.tree.height = TotalHeight::new(*height_m);
                question.tree.height_confirmed = true;
                question.tree.line_within_reach = Some(Reply::No);
                question.tree.none_in_reach = true;
            }
            Conditional::WholeClone => met.whole_clone = true,
            Conditional::NoOakWilt => met.no_oak_wilt = true,
            Conditional::SpeciesSuits => met.species_suits = true,
        }
    }
    (question, met)
}
