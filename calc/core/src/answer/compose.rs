//! Puts an answer together: reach first, then the methods and the day, then everything that hangs on them.

use super::assemble::assemble;
use super::calendar::{Calendar, TakenAsMet};
use super::decide::decide;
use super::facts::{Facts, Known};
use super::{open, sources};
use crate::answer::{Answer, If, Outcome};
use crate::models::season::Local;
use crate::models::{height, reach};
use crate::question::Question;
use crate::reference::Reference;
use crate::terms::tree::Tree;

/// What of an answer is made beside its models' parts.
#[derive(Clone, Copy)]
pub(super) struct With {
    /// The answer under the open conditions.
    pub conditional: bool,
    /// The sources of all of it.
    pub sources: bool,
}

/// The whole answer.
pub(super) fn compose(
    reference: &'static Reference,
    question: &Question,
    local: &Local,
    (calendar, known): (&Calendar, &Known),
    met: TakenAsMet,
    with: With,
) -> Answer {
    let (height, reach) = settle(reference, question);
    let facts = Facts::new(reference, question, local, (&reach, calendar), met, known);
    let decision = decide(&facts);
    let mut answer = assemble(&facts, height, &decision);
    if with.sources {
        answer.sources = sources::sources(reference, &answer);
    }
    if with.conditional && decision.outcome == Outcome::CannotTell {
        let (settled, met) = open::settled(question, &decision.open, met);
        let calendar = Calendar::new(reference, &settled, local, met, 0);
        let names: Vec<&str> = decision.open.iter().map(|open| open.name()).collect();
        answer.conditional = Some(If {
            condition: names.join("+"),
            conditions: decision.open,
            answer: Box::new(compose(
                reference,
                &settled,
                local,
                (&calendar, &Known::default()),
                met,
                With {
                    conditional: false,
                    ..with
                },
            )),
        });
    }
    answer
}

/// What is settled before any day is looked at: height and reach.
fn settle(reference: &'static Reference, question: &Question) -> (height::Height, reach::Reach) {
    let tree = &question.tree;
    let mut height = height::judge(&reference.heights(), tree);
    let used = height.for_reach();
    let reach = reach_at(reference, tree, &used);
    if !height.whole_table && !height.measured {
        let factor = tree.tighten.distance_factor;
        let low = height.low_m.unwrap_or(height.smallest_m);
        let low = height::ForReach { m: low, ..used };
        let (first, at) = measure_first(&reach_at(reference, tree, &low), &reach);
        (height.measure_first, height.changes_at_m) = (first, at.map(|m| m / factor));
    }
    (height, reach)
}

/// The reach of a tree by its height. A group that asks for more distance has every height judged as if the tree were
/// so much taller.
pub(super) fn reach_at(
    reference: &Reference,
    tree: &Tree,
    height: &height::ForReach,
) -> reach::Reach {
    let factor = tree.tighten.distance_factor;
    reach::judge(
        &reference.constants.reach,
        tree,
        height.m * factor,
        !height.whole_table,
        height.smallest_m * factor,
    )
}

/// Whether the low end of the height shown and the height that hazard is judged by give different answers to "may it
/// stand?", and where it changes.
fn measure_first(low: &reach::Reach, used: &reach::Reach) -> (bool, Option<f64>) {
    let stands = |reach: &reach::Reach| {
        let worst = reach
            .targets
            .iter()
            .filter_map(|target| target.outcome)
            .max();
        worst.is_none_or(|outcome| outcome < reach::ReachOutcome::NotChecked)
    };
    let differs = stands(low) && !stands(used);
    let at = used
        .targets
        .iter()
        .filter(|target| target.outcome.is_some())
        .filter_map(|target| Some(target.distance_m? / (target.zone_m / used.height_m)))
        .min_by(f64::total_cmp);
    (differs, at.filter(|_| differs))
}
