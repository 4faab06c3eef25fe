//! What the walks of a plan are charged and take, in a sentence: the page and the command line say the same.

use super::made::Made;
use crate::measure::plain;
use crate::words::m;

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
