//! What the list of all trees and the page of each ask the calculator, and what both take from its answer.

use super::static_answers::question;
use anyhow::Result;
use calc::answer::{Answer, without_changes};
use calc::models::season::Local;
use calc::question::{Question, StemTyped, Text, Typed};
use calc::terms::species::{Species, Suitability};

/// The day from which they speak: no clock, so that a build is the same on every day.
const NEW_YEAR: &str = "2027-01-01";

/// A question with nothing in it but the tree's name: what a link to the form carries.
pub(super) fn named(species: &Species) -> Typed {
    Typed {
        version: 1,
        species: Some(Text::from(species.names[0])),
        ..Typed::default()
    }
}

/// One trunk over a whole year, with nothing in reach.
pub(super) fn free(species: &Species, size: &str) -> Typed {
    Typed {
        stems: vec![StemTyped {
            diameter: Some(Text::from(size)),
            ..StemTyped::default()
        }],
        date: Some(Text::from("year")),
        today: Some(Text::from(NEW_YEAR)),
        none_in_reach: true,
        ..named(species)
    }
}

/// The answer with no place given, without the search for what would change it: no table shows that.
///
/// # Errors
/// If it is no good question any more.
pub(super) fn answered(typed: &Typed) -> Result<(Question, Answer)> {
    let reference = calc_data::whole();
    let question = question(reference, typed)?;
    let answer = without_changes(reference, &question, &Local::default());
    Ok((question, answer))
}

/// Where a fact is missing the answer hangs on it: the answer if it is so.
pub(super) fn shown(answer: &Answer) -> &Answer {
    let conditional = answer.conditional.as_ref();
    conditional.map_or(answer, |conditional| &conditional.answer)
}

/// Whether a ring suits a tree on the condition that every stem of its clone is ringed: the row of the methods says so.
pub(super) fn is_clone(asked: &[(Question, Answer)]) -> bool {
    let lines = asked.iter().flat_map(|(_, answer)| &answer.methods);
    let mut reasons = lines.flat_map(|line| &line.reasons);
    reasons.any(|reason| reason.rule == "suitable_clone")
}

/// Whether a ring alone suits a tree, by its table and what was answered.
pub(super) fn suits(species: &Species, asked: &[(Question, Answer)]) -> Suitability {
    match species.suitability {
        Suitability::Suitable if is_clone(asked) => Suitability::Conditional,
        suits => suits,
    }
}
