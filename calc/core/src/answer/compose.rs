//! Puts an answer together: reach first, then the methods and the day, then everything that hangs on them.

use super::assemble::assemble;
use super::decide::decide;
use super::facts::Facts;
use super::facts::TakenAsMet;
use super::open;
use crate::answer::{Answer, If, Outcome};
use crate::models::season::Local;
use crate::models::{height, reach};
use crate::question::Question;
use crate::reference::Reference;
use crate::terms::method::Method;

/// The whole answer; `nest` asks for the answer under the open conditions too.
pub fn compose(
    reference: &'static Reference,
    question: &Question,
    local: &Local,
    met: TakenAsMet,
    nest: bool,
) -> Answer {
    let (facts, height) = settle(reference, question, local, met);
    let decision = decide(&facts);
    let mut answer = assemble(&facts, height, &decision);
    if nest && decision.outcome == Outcome::CannotTell {
        let (settled, met) = open::settled(question, &decision.open, met);
        let names: Vec<&str> = decision.open.iter().map(|open| open.name()).collect();
        answer.conditional = Some(If {
            condition: names.join("+"),
            conditions: decision.open,
            answer: Box::new(compose(reference, &settled, local, met, false)),
        });
    }
    answer
}

/// Outcome and headline alone: what a search over changed questions asks for.
pub fn verdict(
    reference: &'static Reference,
    question: &Question,
    local: &Local,
) -> (Outcome, Method) {
    let (facts, _) = settle(reference, question, local, TakenAsMet::default());
    let decision = decide(&facts);
    (decision.outcome, decision.headline)
}

/// What is settled before any day is looked at: height, reach, season.
fn settle<'a>(
    reference: &'static Reference,
    question: &'a Question,
    local: &'a Local,
    met: TakenAsMet,
) -> (Facts<'a>, height::Height) {
    let constants = reference.constants;
    let mut height = height::judge(&reference.heights(), &question.tree);
    let known = !height.whole_table;
    // A group that asks for more distance has every height judged as if the tree were so much taller.
    let factor = question.tree.tighten.distance_factor;
    let shortest = height.smallest_m * factor;
    let judge = |m: f64| {
        reach::judge(
            &constants.reach,
            &question.tree,
            m * factor,
            known,
            shortest,
        )
    };
    let reach = judge(height.hazard_m);
    if known && !height.measured {
        let low = height.low_m.unwrap_or(height.smallest_m);
        let (first, at) = measure_first(&judge(low), &reach);
        (height.measure_first, height.changes_at_m) = (first, at.map(|m| m / factor));
    }
    (Facts::new(reference, question, local, reach, met), height)
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
        worst.is_none_or(|outcome| outcome < reach::Outcome::NotChecked)
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
