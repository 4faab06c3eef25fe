//! The answer: asks the models in order (reach first) and puts together what they say. It does no arithmetic.

mod assemble;
mod changes;
mod compose;
mod decide;
mod lifted;
mod open;
mod rest;
mod scene;
mod season_lines;
mod types;
mod work;

pub use types::{
    Also, AlsoKind, Answer, Assumed, Before, Change, Changed, Conditional, EffortAnswer,
    GroupAnswer, HeightAnswer, If, Long, MethodWork, Near, Outcome, OwnRate, ReachAnswer, Rules,
    SourceLine, SpeciesLine, SpringAnswer, StemAnswer, TapeSpan, TimingAnswer, VisitAnswer,
};

use crate::model::caution;
use crate::model::season::Local;
use crate::question::Question;
use crate::reference::Reference;

/// Answers a question. Given a question that was read, it cannot fail.
#[must_use]
pub fn answer(reference: &'static Reference, question: &Question, local: &Local) -> Answer {
    let mut answer = without_changes(reference, question, local);
    answer.changes = changes::search(reference, question, local, &answer);
    answer
}

/// The same without the search for what would change it: what a list of many trees asks for.
#[must_use]
pub fn without_changes(
    reference: &'static Reference,
    question: &Question,
    local: &Local,
) -> Answer {
    let ask = |question: &Question| {
        compose::compose(reference, question, local, lifted::Lifted::default(), true)
    };
    let mut answer = ask(question);
    // What a group asks for may turn the answer, and with it what it warns of: nothing that stands without the
    // group is lost.
    if answer.group.is_some() {
        let mut plain = question.clone();
        plain.group = None;
        let plain = ask(&plain);
        caution::join(&mut answer.cautions, &plain.cautions);
        let inner = plain.conditional.iter().flat_map(|it| &it.answer.cautions);
        caution::join(&mut answer.cautions, inner);
        answer.sources = rest::sources(reference, &answer);
    }
    answer
}
