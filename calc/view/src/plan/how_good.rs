//! How good a plan is, in words: how far it can lie under the best, and what its walks are charged and take. The page and
//! the command line say the same.

use super::made::Made;
use crate::measure::plain;
use crate::words::m;
use calc::terms::small::decimals::fixed;

/// How far the plan lies under the best at most, per cent: rounded up, since it is a bound, and never none, which no bound in
/// floats can say.
#[must_use]
pub fn gap_percent(made: &Made) -> String {
    let tenths = (made.planned.plan.gap_percent() * 10.0).ceil();
    fixed(tenths.max(1.0) / 10.0, 1)
}

/// How far the charge and the ways lie apart.
#[must_use]
pub fn walking(made: &Made) -> String {
    let Some(walk) = &made.planned.walk else {
        return m::PLAN_WALK_UNKNOWN.into();
    };
    let hours = |minutes: f64| plain(minutes / 60.0, 1);
    m::plan_walk(m::PlanWalk {
        charged: hours(walk.charged),
        routed: hours(walk.routed),
        percent: plain(100.0 * walk.routed / walk.charged.max(f64::MIN_POSITIVE), 0),
        missed: walk.missed.to_string(),
        days: walk.crew_days.to_string(),
    })
}
