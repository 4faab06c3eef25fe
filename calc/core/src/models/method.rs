//! Which method? Nine start at *recommended*; each row of the table whose condition holds may only lower them.

use crate::models::condition::{Case, MethodConstants, MethodRule, RowCondition, Sizes};
use crate::terms::cite::Cite;
use crate::terms::method::{Cell, Level, Method};
use crate::terms::quantity::{MM_PER_IN, inches};
use crate::terms::small::sort::sort;
use crate::terms::tree::{Goal, Herbicide};
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

/// The rows of the table; where herbicide is refused and nothing but leaving it stands, once more without the rows
/// that keep cutting alone back. Then what the group asks for, which no row holds up.
fn walk(
    rules: &'static [MethodRule],
    case: &Case<'_>,
    mut touched: impl FnMut(usize, (&'static str, &'static [Cite]), Cell),
) -> [Standing; 9] {
    let mut case = *case;
    if case.herbicide == Herbicide::No {
        let stands = lower(rules, &case, |_, _, _| {})
            .iter()
            .any(|line| line.method != Method::LeaveIt && line.level <= Level::Possible);
        case.last_resort = !stands;
    }
    let mut lines = lower(rules, &case, &mut touched);
    for (rule, cell, touches) in of_group(&case) {
        for (at, line) in lines.iter_mut().enumerate() {
            if touches(line.method) {
                touched(at, (rule, BECAUSE), cell);
                line.level = line.level.max(cell.at_most);
                line.by_professional |= cell.by_professional;
            }
        }
    }
    lines
}

/// The one loop that lowers, a line a method in the order of `Method::ALL`: every row whose condition holds, in the order of the table.
fn lower(
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
    for (row, rule) in rules.iter().enumerate() {
        if !case.sizes.hold(row) || !rule.condition.holds(case) {
            continue;
        }
        // The only row that may lower what holds.
        let lowers_held = rule.condition == RowCondition::Dead;
        for (at, cell) in rule.cells.iter().enumerate() {
            if *cell == Cell::NOTHING || (held[at] && !lowers_held) {
                continue;
            }
            touched(at, (rule.id, rule.cites), *cell);
            lines[at].level = lines[at].level.max(cell.at_most);
            lines[at].by_professional |= cell.by_professional;
            held[at] |= cell.holds;
        }
    }
    lines
}

/// Ties for a standing dead tree of 6 in and over.
pub const TIES_WILDLIFE: [Method; 9] = [
    Method::BarkRing,
    Method::Frill,
    Method::SawRing,
    Method::BasalBark,
    Method::PullOrDig,
    Method::CutStump,
    Method::Fell,
    Method::RepeatCutting,
    Method::LeaveIt,
];

/// Ties for everything else.
pub const TIES_ELSE: [Method; 9] = [
    Method::PullOrDig,
    Method::BarkRing,
    Method::CutStump,
    Method::Fell,
    Method::Frill,
    Method::BasalBark,
    Method::RepeatCutting,
    Method::SawRing,
    Method::LeaveIt,
];

/// The method at the head among those that `may` allows. Leaving it is never the head while another
/// stands at possible or better; when none does, it is.
#[must_use]
pub fn headline(
    lines: &[Standing; 9],
    constants: &MethodConstants,
    goal: Goal,
    dbh_mm: f64,
    may: impl Fn(&Standing) -> bool,
) -> Method {
    let wildlife = goal != Goal::Kill && dbh_mm >= constants.cavities_in * MM_PER_IN;
    let ties = if wildlife { TIES_WILDLIFE } else { TIES_ELSE };
    // Of those that stand as high, the first of the ties.
    ties.iter()
        .map(|method| &lines[*method as usize])
        .filter(|line| line.method != Method::LeaveIt && line.level <= Level::Possible && may(line))
        .min_by_key(|line| line.level)
        .map_or(Method::LeaveIt, |line| line.method)
}

/// The other headline near a size limit: the limit, inches, whether the other side is that of thicker stems, and the
/// method. A stem that is as thick as the limit itself has both sides near. `heads` tells the method at the head of some
/// lines for a stem of a diameter, mm.
#[must_use]
pub fn near_limit(
    rules: &'static [MethodRule],
    case: &Case<'_>,
    head: Method,
    heads: impl Fn(&[Standing; 9], f64) -> Method,
) -> Option<(f64, bool, Method)> {
    let inches = inches(case.dbh_mm);
    // The limits of every row that speaks of this group, as diameters at breast height.
    let mut limits: Vec<f64> = rules
        .iter()
        .filter_map(|rule| Sizes::of(rule.sizes, Some(case.tree.species.group)))
        .flat_map(|sizes| {
            let over_dbh = if sizes.at_base {
                case.base_over_dbh
            } else {
                1.0
            };
            let named = sizes
                .limits()
                .filter(|limit| sizes.at_base || *limit >= case.constants.near_from_in);
            named.map(move |limit| limit / over_dbh)
        })
        .filter(|limit| libm::fabs(inches - limit) <= limit * case.constants.near_limit)
        .collect();
    // The nearest first; of two that are as near, the smaller.
    let nearest = |limit: &f64| (libm::fabs(limit - inches), *limit);
    sort(&mut limits, |a, b| nearest(a) < nearest(b));
    limits.dedup();
    let mut sides = limits.into_iter().flat_map(|limit| {
        let under = (inches >= limit).then_some((limit, false));
        under
            .into_iter()
            .chain((inches <= limit).then_some((limit, true)))
    });
    sides.find_map(|(limit, over)| {
        let step = if over { 1.001 } else { 0.999 };
        let mut other = *case;
        let dbh_mm = limit * step * MM_PER_IN;
        other.set_size(rules, dbh_mm);
        let method = heads(&levels(rules, &other), dbh_mm);
        (method != head).then_some((limit, over, method))
    })
}

/// What the two rows of a group rest on.
const BECAUSE: &[Cite] = &[Cite::group("this group's own rule")];

/// Reason: no ring in these months.
pub const GROUP_MONTHS: &str = "group_months";
/// Reason: over the group's size for volunteers.
pub const GROUP_SIZE: &str = "group_size";

type Own = (&'static str, Cell, fn(Method) -> bool);

/// The rules of the group that hold for a case.
fn of_group(case: &Case<'_>) -> impl Iterator<Item = Own> {
    let months: Own = (
        GROUP_MONTHS,
        Cell {
            at_most: Level::RuledOut,
            ..Cell::NOTHING
        },
        |method| matches!(method, Method::BarkRing | Method::SawRing),
    );
    let size: Own = (
        GROUP_SIZE,
        Cell {
            by_professional: true,
            ..Cell::NOTHING
        },
        |method| method != Method::LeaveIt,
    );
    let blocked = case.part.group_month && !case.ignore_months;
    [(blocked, months), (case.over_group_size, size)]
        .into_iter()
        .filter_map(|(holds, rule)| holds.then_some(rule))
}
