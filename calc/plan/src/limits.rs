//! What limits a plan, by planning again: prices say what to try, never how much is won.

use crate::build::PlanningConstants;
use crate::list_tree::ListTree;
use crate::listed::{CountedAs, SeasonPlan, plan_list_in_steps};
use crate::rests::{Rests, at_once};
use crate::season::WorkSeason;
use calc::terms::small::order::sort_by_key;
use chrono::NaiveDate;

/// What is changed to see whether it binds.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum LooserLimit {
    /// So many more people on every day.
    MorePeople(u32),
    /// One more work day.
    OneMoreDay(NaiveDate),
    /// No limit on what is killed of a unit, and no floor.
    NoPacing,
}

/// A limit, and what is won without it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bind {
    /// What was changed.
    pub change: LooserLimit,
    /// How many more trees the plan then has.
    pub trees_more: usize,
}

/// The limits of a plan, the one that keeps most trees out first; those that keep none out are left out. `spare` is a
/// day that the trees were judged on and that nobody named.
#[must_use]
pub fn binds(
    constants: PlanningConstants<'_>,
    season: &WorkSeason,
    trees: &[ListTree],
    planned: &SeasonPlan,
    spare: Option<NaiveDate>,
) -> Vec<Bind> {
    at_once(async |rests| binds_in_steps((constants, rests), season, trees, planned, spare).await)
}

/// [`binds`], with rests.
pub async fn binds_in_steps(
    (constants, rests): (PlanningConstants<'_>, &Rests),
    season: &WorkSeason,
    trees: &[ListTree],
    planned: &SeasonPlan,
    spare: Option<NaiveDate>,
) -> Vec<Bind> {
    let now = planned.plan.planned();
    let left = |reason: CountedAs| planned.reasons.contains(&reason);
    // Another plan is charged the same walks: else it would be told apart by them.
    let mut season = season.clone();
    season.kept.walk_factor = planned.walk.map_or(Some(1.0), |walk| Some(walk.factor));
    let mut tries: Vec<(LooserLimit, WorkSeason)> = Vec::new();
    if left(CountedAs::NoHours) {
        let mut more = season.clone();
        let people = constants.own.more_people as u32;
        more.crew.people += people;
        tries.push((LooserLimit::MorePeople(people), more));
    }
    if (left(CountedAs::NoHours) || left(CountedAs::NoDay))
        && let Some(day) = spare
    {
        let mut more = season.clone();
        let at = more.days.partition_point(|named| *named < day);
        more.days.insert(at, day);
        tries.push((LooserLimit::OneMoreDay(day), more));
    }
    if left(CountedAs::Pacing) {
        let mut more = season.clone();
        more.share = None;
        more.canopy_floor = None;
        tries.push((LooserLimit::NoPacing, more));
    }
    let mut binds = Vec::new();
    for (change, season) in tries {
        let then = plan_list_in_steps((constants, rests), &season, trees).await;
        let trees_more = then.plan.planned().saturating_sub(now);
        if trees_more > 0 {
            binds.push(Bind { change, trees_more });
        }
    }
    sort_by_key(&mut binds, |bind| core::cmp::Reverse(bind.trees_more));
    binds
}
