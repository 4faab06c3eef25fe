//! What limits a plan, by planning again: prices say what to try, never how much is won.

use crate::listed::{Constants, ListTree, Reason, SeasonPlan, plan_list};
use crate::season::Season;
use chrono::NaiveDate;

/// So many more people are tried.
const MORE_PEOPLE: u32 = 2;

/// What is changed to see whether it binds.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Change {
    /// So many more people on every day.
    MorePeople(u32),
    /// One more work day.
    OneMoreDay(NaiveDate),
    /// No limit on what is killed of a unit.
    NoPacing,
}

/// A limit, and what is won without it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bind {
    /// What was changed.
    pub change: Change,
    /// How many more trees the plan then has.
    pub trees_more: usize,
}

/// The limits of a plan, the one that keeps most trees out first; those that keep none out are left out. `spare` is a
/// day that the trees were judged on and that nobody named.
#[must_use]
pub fn binds(
    constants: Constants<'_>,
    season: &Season,
    trees: &[ListTree],
    planned: &SeasonPlan,
    spare: Option<NaiveDate>,
) -> Vec<Bind> {
    let now = planned.plan.planned();
    let left = |reason: Reason| planned.reasons.contains(&reason);
    let mut tries: Vec<(Change, Season)> = Vec::new();
    if left(Reason::NoHours) {
        let mut more = season.clone();
        more.crew.people += MORE_PEOPLE;
        tries.push((Change::MorePeople(MORE_PEOPLE), more));
    }
    if (left(Reason::NoHours) || left(Reason::NoDay))
        && let Some(day) = spare
    {
        let mut more = season.clone();
        let at = more.days.partition_point(|named| *named < day);
        more.days.insert(at, day);
        tries.push((Change::OneMoreDay(day), more));
    }
    if left(Reason::Pacing) {
        let mut more = season.clone();
        more.share = None;
        tries.push((Change::NoPacing, more));
    }
    let mut binds: Vec<Bind> = tries
        .into_iter()
        .filter_map(|(change, season)| {
            let then = plan_list(constants, &season, trees).plan.planned();
            let trees_more = then.checked_sub(now).filter(|more| *more > 0)?;
            Some(Bind { change, trees_more })
        })
        .collect();
    binds.sort_by_key(|bind| core::cmp::Reverse(bind.trees_more));
    binds
}
