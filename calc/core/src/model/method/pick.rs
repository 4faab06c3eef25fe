//! The headline: the best level, ties by the goal.

use super::{Case, Standing, levels};
use crate::reference::MethodRule;
use crate::terms::method::{Level, Method};
use crate::terms::quantity::{MM_PER_IN, inches};
use crate::terms::small::sort::sort;
use crate::terms::species::Group;
use crate::terms::tree::Goal;

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

/// The smallest dbh that offers more than feeding wood, inches: where the ties change.
const HABITAT_IN: f64 = 6.0;

/// The size limits of the table, inches at breast height.
const LIMITS_IN: [f64; 7] = [1.0, 2.0, 2.5, 3.0, 4.0, 6.0, 10.0];
/// Those of the base, inches.
const BASE_LIMITS_IN: [f64; 2] = [0.5, 2.5];
/// Shrub limits up to here mean the base, inches.
const SHRUB_IN: f64 = 4.0;
/// How near a limit both sides are named.
const NEAR: f64 = 0.15;

/// The method at the head among those that `may` allows. Leaving it is never the head while another
/// stands at possible or better; when none does, it is.
#[must_use]
pub fn headline(
    lines: &[Standing; 9],
    goal: Goal,
    dbh_mm: f64,
    may: impl Fn(&Standing) -> bool,
) -> Method {
    let wildlife = goal != Goal::Kill && dbh_mm >= HABITAT_IN * MM_PER_IN;
    let ties = if wildlife { TIES_WILDLIFE } else { TIES_ELSE };
    let rank = |method: Method| ties.iter().position(|tie| *tie == method);
    lines
        .iter()
        .filter(|line| line.method != Method::LeaveIt && line.level <= Level::Possible && may(line))
        .min_by_key(|line| (line.level, rank(line.method)))
        .map_or(Method::LeaveIt, |line| line.method)
}

/// The other headline within 15 % of a size limit, and the limit, inches.
#[must_use]
pub fn near_limit(
    rules: &'static [MethodRule],
    case: &Case<'_>,
    head: Method,
) -> Option<(f64, Method)> {
    let inches = inches(case.dbh_mm);
    let shrub = case.question.species.group == Group::Shrub;
    let at_base = |limit: f64| limit / case.base_over_dbh;
    let mut limits: Vec<f64> = LIMITS_IN
        .iter()
        .map(|limit| {
            if shrub && *limit <= SHRUB_IN {
                at_base(*limit)
            } else {
                *limit
            }
        })
        .chain(BASE_LIMITS_IN.iter().map(|limit| at_base(*limit)))
        .filter(|limit| libm::fabs(inches - limit) <= limit * NEAR)
        .collect();
    sort(&mut limits, |a, b| {
        libm::fabs(a - inches) < libm::fabs(b - inches)
    });
    limits.into_iter().find_map(|limit| {
        let step = if inches < limit { 1.001 } else { 0.999 };
        let mut other = *case;
        other.dbh_mm = limit * step * MM_PER_IN;
        let lines = levels(rules, &other);
        let method = headline(&lines, case.question.goal, other.dbh_mm, |_| true);
        (method != head).then_some((limit, method))
    })
}
