//! A list of trees with its season: which of them are planned, and why the others are not.

use crate::build::{Builder, Listed, PlanningConstants};
use crate::canopy::Canopy;
use crate::judged::ComesTo;
use crate::list_tree::{ListTree, OpenVisit, Progress};
use crate::market::Prices;
use crate::open_visits::give_days;
use crate::property::{PlanUnit, Property};
use crate::rests::{Rests, at_once};
use crate::season::WorkSeason;
use crate::solve::{Draft, NotPlanned, Plan, PlannedVisit, keep};
use crate::teams::{OpenTasks, Turn, Walks, crew_days, turns, walked_by_day};
use crate::walk::{WalkPace, WalkTo, WalkTold, Walked, own_points};
use crate::walk_charge::{ROUNDS, WALKED, corrected};
use calc::terms::small::order::sort_by;

/// Where a tree is counted: each stands under one of them.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum CountedAs {
    /// On a work day.
    Planned,
    /// The hours do not suffice.
    NoHours,
    /// It may be ringed on none of the days.
    NoDay,
    /// The limit of its unit leaves no room for it.
    Pacing,
    /// Another method.
    OtherMethod,
    /// Nothing is done to it.
    LeaveIt,
    /// A professional's.
    Professional,
    /// Something decisive is not known.
    CannotTell,
    /// Dead.
    Dead,
    /// Ringed already.
    Done,
    /// Left out.
    Skipped,
}

impl CountedAs {
    /// All of them, in the order in which a plan counts them.
    pub const ALL: [Self; 11] = [
        Self::Planned,
        Self::NoHours,
        Self::NoDay,
        Self::Pacing,
        Self::OtherMethod,
        Self::LeaveIt,
        Self::Professional,
        Self::CannotTell,
        Self::Dead,
        Self::Done,
        Self::Skipped,
    ];

    /// Its name in files.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Planned => "planned",
            Self::NoHours => "no_hours",
            Self::NoDay => "no_day",
            Self::Pacing => "pacing",
            Self::OtherMethod => "other_method",
            Self::LeaveIt => "leave_it",
            Self::Professional => "professional",
            Self::CannotTell => "cannot_tell",
            Self::Dead => "dead",
            Self::Done => "done",
            Self::Skipped => "skipped",
        }
    }
}

/// The season of a list.
#[derive(Clone, Debug)]
pub struct SeasonPlan {
    /// What was planned.
    pub property: Property,
    /// The plan of it.
    pub plan: Plan,
    /// For each tree of the list, its place in the plan; none for those that nobody may ring on any day.
    pub place: Vec<Option<usize>>,
    /// For each tree of the list, where it is counted.
    pub reasons: Vec<CountedAs>,
    /// The names of the units, in order.
    pub units: Vec<String>,
    /// For each tree of the plan the turn of its ring, then of each of its visits.
    pub turns: Vec<Vec<Option<Turn>>>,
    /// For each work day the minutes of each crew.
    pub by_team: Vec<Vec<f64>>,
    /// For each tree of the list the days of the visits that it still needs after an earlier ring, with their turns.
    pub open: Vec<Vec<(PlannedVisit, Option<Turn>)>>,
    /// Minutes of each work day that these visits take: the days of [`SeasonPlan::property`] are without them.
    pub open_minutes: Vec<f64>,
    /// For each unit its land and crowns, where somebody said how much land it is.
    pub canopies: Vec<Option<Canopy>>,
    /// For each work day the walks of each crew.
    pub walked: Vec<Vec<Walked>>,
    /// What walks are charged and take; none where no way was drawn.
    pub walk: Option<WalkTold>,
}

/// Plans the season of a list.
#[must_use]
pub fn plan_list(
    constants: PlanningConstants<'_>,
    season: &WorkSeason,
    trees: &[ListTree],
) -> SeasonPlan {
    at_once(async |rests| plan_list_in_steps((constants, rests), season, trees).await)
}

/// [`plan_list`], with rests. It makes a plan up to three times: the walks of one set the charge of the next.
pub async fn plan_list_in_steps(
    (constants, rests): (PlanningConstants<'_>, &Rests),
    season: &WorkSeason,
    trees: &[ListTree],
) -> SeasonPlan {
    let is_fixed = season.kept.walk_factor.is_some() || !season.kept.is_empty();
    let mut rounds = 0;
    // What walks are multiplied by, and the prices of the plan before.
    let mut from = None;
    loop {
        let more = !is_fixed && rounds < ROUNDS;
        match planned_once((constants, rests), season, trees, (from, more)).await {
            Ok(planned) => return planned,
            Err(next) => from = Some(next),
        }
        rounds += 1;
    }
}

/// One plan; or, where `more` may follow, what its walks should have been charged, with its prices.
async fn planned_once(
    (constants, rests): (PlanningConstants<'_>, &Rests),
    season: &WorkSeason,
    trees: &[ListTree],
    (from, more): (Option<(f64, Prices)>, bool),
) -> Result<SeasonPlan, (f64, Prices)> {
    let (factor, prices) = match from {
        Some((factor, prices)) => (factor, Some(prices)),
        None => (season.kept.walk_factor.unwrap_or(1.0), None),
    };
    let mut units: Vec<String> = trees.iter().map(|tree| tree.unit.clone()).collect();
    sort_by(&mut units, Ord::cmp);
    units.dedup();
    let unit_of = |tree: &ListTree| units.partition_point(|unit| *unit < tree.unit);
    let mut basal_m2 = vec![0.0; units.len()];
    let mut largest_m2 = vec![0.0_f64; units.len()];
    let mut open: Vec<usize> = Vec::new();
    for (at, tree) in trees.iter().enumerate() {
        if let Some(ComesTo::Ring(need)) = tree.judged().map(|judged| &judged.comes_to) {
            let unit = unit_of(tree);
            basal_m2[unit] += need.basal_m2;
            largest_m2[unit] = largest_m2[unit].max(need.basal_m2);
            open.push(at);
        }
    }
    // Rows may come in any order: the plan goes by tags, and by rows where tags are alike.
    sort_by(&mut open, |a, b| {
        let (a, b) = (&trees[*a], &trees[*b]);
        a.tree_id.cmp(&b.tree_id).then(a.row.cmp(&b.row))
    });
    // A unit whose limit is less than its largest tree may have that one: else it could never go. A floor stays.
    let canopies: Vec<Option<Canopy>> = units
        .iter()
        .map(|unit| season.land.iter().find(|land| land.unit == *unit))
        .map(|land| land.map(|land| Canopy::of(land, trees)))
        .collect();
    let limit = |unit: usize| {
        let paced = season.share;
        let paced = paced.map(|share| (share * basal_m2[unit]).max(largest_m2[unit]));
        let floor = season.canopy_floor.zip(canopies[unit]);
        let stays = floor.map(|(_, canopy)| (1.0 - constants.own.basal_floor) * canopy.basal_m2);
        PlanUnit {
            limit_m2: match (paced, stays) {
                (Some(a), Some(b)) => Some(a.min(b)),
                (a, b) => a.or(b),
            },
            crown_limit_m2: floor.map(|(floor, canopy)| canopy.may_go_m2(floor)),
        }
    };
    let limits = (0..units.len()).map(limit).collect();
    let heads = season.crew.heads_a_tree(constants.own);
    let mut days = season.work_days(constants.own);
    let ringed: Vec<(usize, &[OpenVisit])> = trees
        .iter()
        .map(|tree| {
            let visits = tree.after.as_ref().map_or(&[][..], |after| &after.open);
            (unit_of(tree), visits)
        })
        .collect();
    let points = own_points(constants.own, trees);
    // The charge is set right where the way is known, and where the row says nothing itself.
    let times = |tree: usize| match points[tree] {
        Some(_) if !trees[tree].walk_said => factor,
        _ => 1.0,
    };
    let open_minutes_of =
        |tree: usize, visit: &OpenVisit| heads * (visit.minutes + visit.walk * (times(tree) - 1.0));
    let (open_days, open_minutes) = give_days(&days, &ringed, open_minutes_of);
    for (day, taken) in days.iter_mut().zip(&open_minutes) {
        day.minutes -= taken;
    }
    let mut builder = Builder::new(constants, days, limits);
    let mut place = vec![None; trees.len()];
    for (index, at) in open.iter().enumerate() {
        rests.done(1).await;
        let tree = &trees[*at];
        let Some((judged, ComesTo::Ring(need))) = tree.judged().map(|it| (it, &it.comes_to)) else {
            continue;
        };
        let listed = Listed {
            unit: unit_of(tree),
            value: tree.value(constants.own),
            pinned: tree.pinned,
            crown_m2: judged.crown_m2,
            heads,
            walk: times(*at),
        };
        builder.add(need, judged.species, judged.hemisphere, listed);
        place[*at] = Some(index);
    }
    let property = builder.finish();
    let open_tasks = OpenTasks {
        trees: &ringed,
        planned: &open_days,
        minutes: &open_minutes,
    };
    let walk_to = |tree: usize, charged: f64| WalkTo {
        point: points[tree],
        charged,
        said: trees[tree].walk_said,
    };
    let mut of_plan = vec![WalkTo::default(); property.trees.len()];
    for (tree, place) in place.iter().enumerate() {
        if let Some(place) = *place {
            of_plan[place] = walk_to(tree, property.trees[place].work[2]);
        }
    }
    let of_list = ringed.iter().enumerate().map(|(tree, (_, visits))| {
        let walk = visits.first().map_or(0.0, |visit| visit.walk);
        walk_to(tree, heads * walk * times(tree))
    });
    let of_list: Vec<WalkTo> = of_list.collect();
    let pace = WalkPace {
        metres: constants.walk_m_per_min,
        leg_most: constants.own.walk_leg_most,
        heads,
        share: constants.own.walk_share,
    };
    let walks = Walks {
        of_plan: &of_plan,
        of_list: &of_list,
        pace,
    };
    let crews = (season.crew.teams, constants.own.over);
    let plan = if season.kept.is_empty() {
        let draft = Draft::of(&property, prices.as_ref(), rests).await;
        if more {
            let plan = draft.told();
            let crew_days = crew_days(&property, &plan, &open_tasks, &walks, crews);
            if let Some(next) = corrected(factor, &crew_days, pace, rests).await {
                return Err((next, plan.priced.prices));
            }
        }
        draft.finished(rests).await
    } else {
        let before = season.kept.days(&property, trees, &place);
        keep(&property, &before, rests).await
    };
    let reasons = trees
        .iter()
        .zip(&place)
        .map(|(tree, place)| reason(tree, place.map(|at| &plan.trees[at])))
        .collect();
    let mut crew_days = crew_days(&property, &plan, &open_tasks, &walks, crews);
    for crew_day in &mut crew_days {
        rests.done(crew_day.many() * WALKED).await;
        crew_day.route();
    }
    let (turns, open_turns, by_team) = turns(&plan, &open_tasks, &crew_days);
    let walked = walked_by_day(property.days.len(), &crew_days, pace);
    let with_turns = open_days.into_iter().zip(open_turns);
    let open = with_turns.map(|(visits, turns)| visits.into_iter().zip(turns).collect());
    Ok(SeasonPlan {
        turns,
        by_team,
        open: open.collect(),
        open_minutes,
        canopies,
        walk: WalkTold::of(factor, pace, &walked),
        walked,
        property,
        plan,
        place,
        reasons,
        units,
    })
}

fn reason<T>(tree: &ListTree, planned: Option<&Result<T, NotPlanned>>) -> CountedAs {
    let judged = match &tree.standing {
        Progress::Skipped => return CountedAs::Skipped,
        Progress::Done => return CountedAs::Done,
        Progress::Dead => return CountedAs::Dead,
        Progress::Open(judged) => judged,
    };
    match (&judged.comes_to, planned) {
        (ComesTo::Ring(_), Some(Ok(_))) => CountedAs::Planned,
        (ComesTo::Ring(_), Some(Err(NotPlanned::NoHours))) => CountedAs::NoHours,
        (ComesTo::Ring(_), Some(Err(NotPlanned::Pacing))) => CountedAs::Pacing,
        (ComesTo::Ring(_) | ComesTo::NoDay, _) => CountedAs::NoDay,
        (ComesTo::Dead, _) => CountedAs::Dead,
        (ComesTo::Professional, _) => CountedAs::Professional,
        (ComesTo::CannotTell, _) => CountedAs::CannotTell,
        (ComesTo::LeaveIt, _) => CountedAs::LeaveIt,
        (ComesTo::OtherMethod, _) => CountedAs::OtherMethod,
    }
}
