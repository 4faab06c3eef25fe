//! Which method? Nine start at *recommended*; each row of the table whose condition holds may only lower them.

mod condition;
mod group;
mod pick;

pub use condition::{Case, Condition};
pub use group::{GROUP_MONTHS, GROUP_SIZE};
pub use pick::{TIES_ELSE, TIES_WILDLIFE, headline, near_limit};

use crate::evidence::Cite;
use crate::named::named;
use crate::reference::MethodRule;
use serde::Serialize;

named! {
    /// The nine methods, in the order of the table.
    #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
    pub enum Method {
        /// A ring of bark off.
        BarkRing,
        /// A ring sawn into the wood.
        SawRing,
        /// Cuts with herbicide.
        Frill,
        /// Herbicide on the bark at the base.
        BasalBark,
        /// Cut, and herbicide on the stump.
        CutStump,
        /// Pulled or dug out.
        PullOrDig,
        /// Felled.
        Fell,
        /// Cut again and again.
        RepeatCutting,
        /// Left alone.
        LeaveIt,
    }
}

impl Method {
    /// All, in the order of the table.
    pub const ALL: [Self; 9] = [
        Self::BarkRing,
        Self::SawRing,
        Self::Frill,
        Self::BasalBark,
        Self::CutStump,
        Self::PullOrDig,
        Self::Fell,
        Self::RepeatCutting,
        Self::LeaveIt,
    ];

    /// Whether the tree stays standing.
    #[must_use]
    pub fn leaves_standing(self) -> bool {
        matches!(
            self,
            Self::BarkRing | Self::SawRing | Self::Frill | Self::BasalBark
        )
    }

    /// Whether it needs herbicide.
    #[must_use]
    pub fn needs_herbicide(self) -> bool {
        matches!(self, Self::Frill | Self::BasalBark | Self::CutStump)
    }
}

named! {
    /// How a method stands, from best to worst.
    #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
    pub enum Level {
        /// Recommended.
        Recommended,
        /// Possible.
        Possible,
        /// Not advised.
        NotAdvised,
        /// Ruled out.
        RuledOut,
    }
}

/// What one row does to one method.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Cell {
    /// At most this level.
    pub at_most: Level,
    /// Only by a professional.
    pub by_professional: bool,
    /// No later row lowers it, but that of a dead tree.
    pub holds: bool,
}

impl Cell {
    /// A cell that changes nothing.
    pub const NOTHING: Self = Self {
        at_most: Level::Recommended,
        by_professional: false,
        holds: false,
    };

    /// Reads a cell: `.` nothing, `P`, `N` or `R`; with `*` by a professional, with `!` no later row lowers it.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        let mut cell = Self::NOTHING;
        for (at, c) in text.trim().chars().enumerate() {
            match (at, c) {
                (0, '.') => {}
                (0, 'P') => cell.at_most = Level::Possible,
                (0, 'N') => cell.at_most = Level::NotAdvised,
                (0, 'R') => cell.at_most = Level::RuledOut,
                (1.., '*') => cell.by_professional = true,
                (1.., '!') => cell.holds = true,
                _ => return None,
            }
        }
        (!text.trim().is_empty()).then_some(cell)
    }
}

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
    let mut lines = Method::ALL.map(|method| Standing {
        method,
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
