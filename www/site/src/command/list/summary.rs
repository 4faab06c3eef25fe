//! The whole list in words: how many rows of each kind, how many trees of each outcome, which rows share a problem.

use super::Made;
use calc::answer::Outcome;
use calc_list::{Counts, Row};
use calc_view::words::list as words;
use std::collections::BTreeMap;

/// So many rows of a problem are remembered by number.
const MOST_ROWS: usize = 100_000;
/// So many different problems are told together.
const MOST_GROUPS: usize = 1_000;

#[derive(Default)]
pub(super) struct Summary {
    outcomes: BTreeMap<&'static str, (Option<Outcome>, u64)>,
    /// What is wrong, the gravest first, with its rows.
    groups: BTreeMap<(u8, String), Vec<u64>>,
    answered: u64,
}

impl Summary {
    pub(super) fn take(&mut self, row: &Row, reason: Option<&'static str>, made: Option<&Made>) {
        if let Some(made) = made {
            self.answered += 1;
            let word = made.outcome.word();
            self.outcomes
                .entry(word)
                .or_insert((Some(made.outcome), 0))
                .1 += 1;
        } else if matches!(reason, Some("skipped" | "done" | "dead")) {
            self.outcomes.entry("").or_insert((None, 0)).1 += 1;
        }
        for problem in &row.problems {
            let key = (problem.level as u8, words::what(problem));
            // A list in which nothing is right has no groups; its rows tell each on the error stream.
            if self.groups.len() < MOST_GROUPS || self.groups.contains_key(&key) {
                let rows = self.groups.entry(key).or_default();
                if rows.len() < MOST_ROWS {
                    rows.push(problem.row);
                }
            }
        }
    }

    /// How many rows have an answer.
    pub(super) fn answered(&self) -> u64 {
        self.answered
    }

    /// All of it, a line each.
    pub(super) fn told(&self, counts: &Counts) -> String {
        let mut lines = vec![words::counted(counts)];
        for outcome in Outcome::ALL {
            if let Some((_, trees)) = self.outcomes.get(outcome.word()) {
                lines.push(words::outcome(Some(*outcome), *trees));
            }
        }
        if let Some((_, trees)) = self.outcomes.get("") {
            lines.push(words::outcome(None, *trees));
        }
        let mut groups: Vec<_> = self.groups.iter().collect();
        groups.sort_by_key(|((level, what), rows)| {
            (*level, std::cmp::Reverse(rows.len()), what.as_str())
        });
        for ((_, what), rows) in groups {
            lines.push(words::group(rows, what));
        }
        lines.join("\n") + "\n"
    }
}
