//! Which method? Nine start at *recommended*; each row of the table whose condition holds may only lower them.

mod condition;
mod group;
mod pick;

pub use condition::{Case, Condition};
pub use group::{GROUP_MONTHS, GROUP_SIZE};
pub use pick::{TIES_ELSE, TIES_WILDLIFE, headline, near_limit};

use crate::reference::MethodRule;
use crate::terms::cite::Cite;
use crate::terms::method::{Cell, Level, Method};
use serde::Serialize;

/// Why a method stands where it does: a row of the table that touched it.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Reason {
    /// The row.
    pub rule: &'static str,
    /// The level that it allows.
    pub at_most: Level,
    /// Whether it asks for a professional.
    pub by_professional: bool,
    /// What the row rests on.
    pub because: &'static [Cite],
}

/// How one method stands for one stem.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct MethodLine {
    /// The method.
    pub method: Method,
    /// Its level.
    pub level: Level,
    /// Whether only a professional may do it.
    pub by_professional: bool,
    /// Every row that touched it, in the order of the table.
    pub reasons: Vec<Reason>,
}

/// The row for a dead tree: the only one that may lower what holds.
pub const DEAD: &str = "dead";

/// How one method stands, without its reasons.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Standing {
    /// The method.
    pub method: Method,
    /// Its level.
    pub level: Level,
    /// Whether only a professional may do it.
    pub by_professional: bool,
}

/// Judges the nine methods for one case: the levels alone, which is what a search over days asks for.
#[must_use]
pub fn levels(rules: &'static [MethodRule], case: &Case<'_>) -> [Standing; 9] {
    walk(rules, case, |_, _, _| {})
}

/// Judges the nine methods for one case, with every reason.
#[must_use]
pub fn judge(rules: &'static [MethodRule], case: &Case<'_>) -> Vec<MethodLine> {
    let mut reasons: [Vec<Reason>; 9] = Default::default();
    let standing = walk(rules, case, |method, (rule, because), cell| {
        reasons[method].push(Reason {
            rule,
            at_most: cell.at_most,
            by_professional: cell.by_professional,
            because,
        });
    });
    standing
        .into_iter()
        .zip(reasons)
        .map(|(standing, reasons)| MethodLine {
            method: standing.method,
            level: standing.level,
            by_professional: standing.by_professional,
            reasons,
        })
        .collect()
}

/// The one loop that lowers: every row whose condition holds, in the order of the table; then what the group asks
/// for, which no row holds up.
fn walk(
    rules: &'static [MethodRule],
    case: &Case<'_>,
    mut touched: impl FnMut(usize, (&'static str, &'static [Cite]), Cell),
) -> [Standing; 9] {
    let mut lines: [Standing; 9] = core::array::from_fn(|at| Standing {
        method: Method::ALL[at],
        level: Level::Recommended,
        by_professional: false,
    });
    let mut held = [false; 9];
    for rule in rules.iter().filter(|rule| rule.condition.holds(case)) {
        for (at, cell) in rule.cells.into_iter().enumerate() {
            if (held[at] && rule.id != DEAD) || cell == Cell::NOTHING {
                continue;
            }
            touched(at, (rule.id, rule.cites), cell);
            lines[at].level = lines[at].level.max(cell.at_most);
            lines[at].by_professional |= cell.by_professional;
            held[at] |= cell.holds;
        }
    }
    for (rule, cell, touches) in group::rules(case) {
        for (at, line) in lines.iter_mut().enumerate() {
            if touches(line.method) {
                touched(at, (rule, group::BECAUSE), cell);
                line.level = line.level.max(cell.at_most);
                line.by_professional |= cell.by_professional;
            }
        }
    }
    lines
}
