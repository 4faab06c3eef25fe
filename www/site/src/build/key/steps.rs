//! The way through the key: which question comes next, and where an answer leads. Two ways that come to the same trees,
//! with the same questions left, meet in one step.

use super::table::{Known, Question, Turn};
use std::collections::BTreeMap;

/// So many trees are shown beside each other, and no further question is asked.
const TOGETHER: usize = 3;
/// The time that somebody can't tell at which it is time to ask; before that the key goes on without an answer.
pub(crate) const CANT_TELL: u8 = 2;

/// Where a step leads, or that it is time to ask somebody.
pub(crate) type Next = Option<usize>;

/// A step.
pub(crate) enum Step {
    /// A question.
    Ask {
        /// Which one, among the known.
        question: usize,
        /// How many trees are left.
        left: Vec<usize>,
        /// Each answer that some tree is known for, and the step behind it.
        answers: Vec<(usize, usize)>,
        /// The step behind "I can't tell".
        cant_tell: Next,
    },
    /// The trees that are left.
    End {
        /// They, in the order of the table.
        left: Vec<usize>,
        /// Whether it is one, listed, and every answer that narrowed down to it was to a mark that was read.
        named: bool,
    },
}

/// What leads to a step.
#[derive(Clone, Eq, Ord, PartialEq, PartialOrd)]
struct State {
    left: Vec<usize>,
    /// Questions that were put and would part them still.
    asked: Vec<usize>,
    cant_tell: u8,
    /// Whether nothing more is asked.
    ended: bool,
    /// Those of the listed ones that each mark so far was read for.
    by_reading: Vec<usize>,
}

/// All steps for one way that leaves stand and one kind of leaf, the first one first.
pub(crate) fn walk(known: &Known, arrangement: &str, kind: &str) -> Vec<Step> {
    let trees = known.trees.iter().enumerate();
    let left: Vec<usize> = trees
        .filter(|(_, tree)| tree.bears(arrangement, kind))
        .map(|(at, _)| at)
        .collect();
    let by_reading = left.iter().copied().filter(|at| {
        let tree = &known.trees[*at];
        tree.listed && tree.was_read("arrangement") && tree.was_read("kind")
    });
    let first = State {
        by_reading: by_reading.collect(),
        left,
        asked: Vec::new(),
        cant_tell: 0,
        ended: false,
    };
    let mut walk = Walk {
        known,
        kind,
        numbers: BTreeMap::new(),
        waiting: Vec::new(),
    };
    walk.number(first);
    let mut steps = Vec::new();
    while let Some((state, question)) = walk.waiting.get(steps.len()).cloned() {
        let step = walk.step(&state, question);
        steps.push(step);
    }
    steps
}

struct Walk<'k> {
    known: &'k Known,
    kind: &'k str,
    numbers: BTreeMap<State, usize>,
    /// The state of each step, in order, and what is asked of it.
    waiting: Vec<(State, Option<usize>)>,
}

impl Walk<'_> {
    /// The step of a state. Where nothing more is asked, it matters no longer how somebody came there.
    fn number(&mut self, mut state: State) -> usize {
        let question = self.question(&state);
        if question.is_none() {
            state.asked.clear();
            state.cant_tell = 0;
            state.ended = true;
            if state.left.len() > 1 {
                state.by_reading.clear();
            }
        }
        if let Some(known) = self.numbers.get(&state) {
            return *known;
        }
        let number = self.waiting.len();
        self.waiting.push((state.clone(), question));
        self.numbers.insert(state, number);
        number
    }

    /// The answers of a question that a tree left is known for, with the trees that each leaves.
    fn parts(&self, question: &Question, left: &[usize]) -> Vec<(usize, Vec<usize>)> {
        let of = |at: &usize| &self.known.trees[*at];
        let answers = question.answers.iter().enumerate();
        answers
            .filter(|(_, answer)| left.iter().any(|at| question.has(of(at), answer)))
            .map(|(at, answer)| {
                let left = left.iter().filter(|at| question.stays(of(at), answer));
                (at, left.copied().collect())
            })
            .collect()
    }

    /// Whether an answer of a question leaves fewer.
    fn tells(&self, at: usize, left: &[usize]) -> bool {
        let question = &self.known.questions[at];
        let parts = self.parts(question, left);
        question.is_for(self.kind)
            && parts.len() > 1
            && parts.iter().any(|(_, stay)| stay.len() < left.len())
    }

    /// The next question: the first of those in order that tells, else the one that leaves fewest on the whole.
    fn next(&self, state: &State) -> Option<usize> {
        let open = (0..self.known.questions.len())
            .filter(|at| !state.asked.contains(at) && self.tells(*at, &state.left));
        let open: Vec<usize> = open.collect();
        let turn = |at: &&usize| self.known.questions[**at].turn == Turn::InOrder;
        let first = open.iter().find(turn).copied();
        first.or_else(|| {
            let leaves = |at: &usize| {
                let parts = self.parts(&self.known.questions[*at], &state.left);
                let all: usize = parts.iter().map(|(_, stay)| stay.len()).sum();
                let squares: usize = parts.iter().map(|(_, stay)| stay.len().pow(2)).sum();
                // In hundredths, so that they can be ordered.
                squares * 100 / all
            };
            open.iter().copied().min_by_key(|at| (leaves(at), *at))
        })
    }

    /// What is asked of a state; nothing where few trees are left, or no question parts them.
    fn question(&self, state: &State) -> Option<usize> {
        match state.left.len() <= TOGETHER {
            true => None,
            false => self.next(state),
        }
    }

    fn step(&mut self, state: &State, question: Option<usize>) -> Step {
        let Some(question) = question else {
            let named = matches!(&state.left[..], [one] if state.by_reading.contains(one));
            return Step::End {
                left: state.left.clone(),
                named,
            };
        };
        let asked = &self.known.questions[question];
        let column = asked.column.as_str();
        let parts = self.parts(asked, &state.left);
        let mut answers = Vec::new();
        for (answer, left) in parts {
            // An answer that leaves all of them has told nothing.
            let told = left.len() < state.left.len();
            let by_reading = state.by_reading.iter().copied();
            let by_reading = by_reading.filter(|at| {
                left.contains(at) && (!told || self.known.trees[*at].was_read(column))
            });
            let next = State {
                by_reading: by_reading.collect(),
                asked: self.still_telling(state, question, &left),
                left,
                cant_tell: state.cant_tell,
                ended: false,
            };
            answers.push((answer, self.number(next)));
        }
        let cant_tell = (state.cant_tell + 1 < CANT_TELL).then(|| {
            let next = State {
                asked: self.still_telling(state, question, &state.left),
                cant_tell: state.cant_tell + 1,
                ..state.clone()
            };
            self.number(next)
        });
        Step::Ask {
            question,
            left: state.left.clone(),
            answers,
            cant_tell,
        }
    }

    /// The questions put so far that would part these trees still.
    fn still_telling(&self, state: &State, question: usize, left: &[usize]) -> Vec<usize> {
        let mut asked = state.asked.clone();
        asked.push(question);
        asked.sort_unstable();
        asked.retain(|at| self.tells(*at, left));
        asked
    }
}
