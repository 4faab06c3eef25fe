//! plan.json, version 1: the plan as a file that the page, the command line and other programs read alike. Names are
//! fixed: they are an interface. Lengths are metres, areas square metres, times person-minutes, days `2027-06-12`.

pub mod after_shape;
pub mod shape;

use shape::{
    AreaPrice, AssumedConstant, BindOf, ClassOf, CrewOf, DayOf, LandOf, ListOf, Moved, Objective,
    OtherOf, PlanFile, Term, TreeOf, UnitOf, UnitYear, VisitOf, WalkOf,
};

use crate::build::PlanningConstants;
use crate::canopy::closure;
use crate::judged::{ComesTo, JudgedTree};
use crate::limits::{Bind, LooserLimit};
use crate::list_tree::ListTree;
use crate::listed::{CountedAs, SeasonPlan};
use crate::need::Need;
use crate::rests::{Rests, at_once};
use crate::season::WorkSeason;
use crate::solve::{Planned, PlannedVisit};
use crate::teams::Turn;
use crate::walk::WalkTold;
use calc::models::visits::{self, Visit, VisitKind};
use calc::terms::day::iso;
use calc_data::list::{AssumedNumber, PlanConstants};
use chrono::{Datelike, Days, NaiveDate};
use std::collections::BTreeMap;

/// The one number of the table that a crew may change.
const READY: &str = "ready_minutes";

/// A tree in the file, and its class, take as long as to look at so many.
const WRITTEN: usize = 10;
const CLASSED: usize = 2;

/// What a plan was asked for beyond its season.
#[derive(Clone, Debug)]
pub struct PlanFileFacts<'a> {
    /// Of the program.
    pub product_version: &'a str,
    /// Of the tables.
    pub data_version: &'a str,
    /// The day on which it was made.
    pub made_on: NaiveDate,
    /// The list's id, see [`crate::fingerprint`].
    pub list_id: &'a str,
    /// The list's file name.
    pub list_name: &'a str,
    /// Columns of the list.
    pub columns: usize,
    /// Rows below the header.
    pub rows: u64,
    /// Blank rows.
    pub blank: u64,
    /// Rows that are no tree.
    pub not_trees: u64,
    /// Trees with something to mend.
    pub to_fix: u64,
    /// Days that are closed.
    pub closed: &'a [NaiveDate],
    /// What an hour of work costs.
    pub wage: Option<f64>,
    /// Whether each tree's best reduced value is printed.
    pub whole: bool,
    /// Units of which somebody said that nothing stands within a distance, metres.
    pub said: &'a [(String, f64)],
    /// Who said so; empty where no name was given.
    pub said_by: &'a str,
    /// What is assumed.
    pub assumed: &'static [AssumedNumber],
}

/// The file of a plan.
#[must_use]
pub fn plan_file(
    constants: PlanningConstants<'_>,
    asked: &PlanFileFacts<'_>,
    season: &WorkSeason,
    trees: &[ListTree],
    planned: &SeasonPlan,
    binds: &[Bind],
) -> PlanFile {
    at_once(async |rests| {
        plan_file_in_steps((constants, rests), asked, season, trees, (planned, binds)).await
    })
}

/// [`plan_file`], with rests.
pub async fn plan_file_in_steps(
    (constants, rests): (PlanningConstants<'_>, &Rests),
    asked: &PlanFileFacts<'_>,
    season: &WorkSeason,
    trees: &[ListTree],
    (planned, binds): (&SeasonPlan, &[Bind]),
) -> PlanFile {
    let classes = Classes::of(season, trees, rests).await;
    let mut rows = Vec::with_capacity(trees.len());
    for (at, (tree, class)) in trees.iter().zip(classes.of_tree).enumerate() {
        rests.done(WRITTEN).await;
        let turns = planned.place[at].map(|place| planned.turns[place].as_slice());
        let turns = turns.unwrap_or(&[]);
        rows.push(tree_of(
            constants,
            season,
            (tree, planned, at),
            turns,
            class,
        ));
    }
    PlanFile {
        version: 1,
        product_version: asked.product_version.into(),
        data_version: asked.data_version.into(),
        made_on: iso(asked.made_on),
        list: ListOf {
            id: asked.list_id.into(),
            name: asked.list_name.into(),
            rows: asked.rows,
            columns: asked.columns,
        },
        counts: counts(asked, planned),
        crew: CrewOf {
            people: season.crew.people,
            teams: season.crew.teams,
            hours: season.crew.working_hours(),
            day_hours: season.crew.hours,
            ready_minutes: season.crew.ready_minutes,
            pairs: season.crew.pairs,
            over: constants.own.over,
            wage: asked.wage,
        },
        work_days: work_days(planned),
        closed_days: asked.closed.iter().copied().map(iso).collect(),
        from: iso(season.from),
        to: iso(season.to),
        slip: season.slip,
        units: units(asked, season, trees, planned),
        trees: rows.into(),
        classes: classes.all,
        other: trees
            .iter()
            .zip(&planned.reasons)
            .filter_map(other_of)
            .collect(),
        objective: objective(constants, asked, season, trees, planned),
        walk: planned.walk.map(walk_of),
        binds: binds.iter().map(bind_of).collect(),
        edits: Vec::new(),
        moved: moved(season, trees, planned),
        after: None,
        assumed: assumed((season, constants.own), asked.assumed),
    }
}

/// `rows = trees + blank + not_trees`, `trees = ready + to_fix`, and `ready` is the sum of all reasons.
fn counts(asked: &PlanFileFacts<'_>, planned: &SeasonPlan) -> BTreeMap<&'static str, u64> {
    let ready = planned.reasons.len() as u64;
    let mut counts = BTreeMap::from([
        ("rows", asked.rows),
        ("blank", asked.blank),
        ("not_trees", asked.not_trees),
        ("trees", ready + asked.to_fix),
        ("to_fix", asked.to_fix),
        ("ready", ready),
    ]);
    for reason in CountedAs::ALL {
        let trees = planned.reasons.iter().filter(|it| **it == reason).count();
        counts.insert(reason.word(), trees as u64);
    }
    counts
}

fn work_days(planned: &SeasonPlan) -> Vec<DayOf> {
    let property = &planned.property;
    let used = planned.plan.used.iter().zip(&planned.open_minutes);
    let days = property.days.iter().zip(used);
    let walked = planned.walked.iter();
    days.zip(walked.zip(&planned.by_team))
        .map(
            |((day, ([rings, visits], open)), (walked, by_team))| DayOf {
                day: iso(day.day),
                agreed: day.agreed,
                minutes: day.minutes + open,
                used: rings + visits + open,
                rings: *rings,
                visits: visits + open,
                visits_before: (*open > 0.0).then_some(*open),
                walk_charged: walked.iter().fold(0.0, |sum, it| sum + it.charged),
                walk_routed: (walked.iter().any(|it| it.drawn))
                    .then(|| walked.iter().fold(0.0, |sum, it| sum + it.routed)),
                by_team: by_team.clone(),
            },
        )
        .collect()
}

fn units(
    asked: &PlanFileFacts<'_>,
    season: &WorkSeason,
    trees: &[ListTree],
    planned: &SeasonPlan,
) -> Vec<UnitOf> {
    let mut of_list: BTreeMap<&str, usize> = BTreeMap::new();
    for tree in trees {
        *of_list.entry(&tree.unit).or_default() += 1;
    }
    // Basal area, that of the largest tree, basal area and crowns of the trees of the plan.
    let mut sums = vec![[0.0_f64; 4]; planned.units.len()];
    for (tree, of) in planned.property.trees.iter().zip(&planned.plan.trees) {
        let [basal, largest, used, crowns] = &mut sums[tree.unit];
        *basal += tree.basal_m2;
        *largest = largest.max(tree.basal_m2);
        if of.is_ok() {
            *used += tree.basal_m2;
            *crowns += tree.crown_m2;
        }
    }
    let all = planned.units.iter().enumerate().map(|(unit, name)| {
        let said = asked.said.iter().find(|(unit, _)| unit == name);
        let said = said.map(|(_, metres)| *metres);
        let canopy = planned.canopies[unit];
        let [basal, largest, used, crowns] = sums[unit];
        UnitOf {
            unit: name.clone(),
            trees: of_list.get(name.as_str()).copied().unwrap_or(0),
            basal_m2: basal,
            years: vec![UnitYear {
                year: season.from.year(),
                limit_m2: planned.property.units[unit].limit_m2,
                largest_m2: largest,
                used_m2: used,
                crown_limit_m2: planned.property.units[unit].crown_limit_m2,
                crown_used_m2: canopy.map(|_| crowns),
            }],
            floor_share: canopy.and(season.canopy_floor),
            land: canopy.map(|canopy| LandOf {
                area_m2: canopy.land_m2,
                closure_before: closure(canopy.crowns_m2, canopy.land_m2),
                closure_after: closure((canopy.crowns_m2 - crowns).max(0.0), canopy.land_m2),
                closure_said: season
                    .land
                    .iter()
                    .any(|land| land.unit == *name && land.closure.is_some()),
            }),
            nothing_within_m: said,
            said_by: said.map(|_| asked.said_by.to_owned()),
            said_on: said.map(|_| iso(asked.made_on)),
        }
    });
    all.collect()
}

/// What trees of a class share: the species, the place, the days with the bits of their probabilities.
type ClassKey = (&'static str, Option<[i64; 3]>, Vec<(NaiveDate, u64)>);

/// Trees alike in species, place and days.
struct Classes {
    all: Vec<ClassOf>,
    of_tree: Vec<Option<String>>,
}

impl Classes {
    async fn of(season: &WorkSeason, trees: &[ListTree], rests: &Rests) -> Self {
        let mut known: BTreeMap<ClassKey, usize> = BTreeMap::new();
        let mut all: Vec<ClassOf> = Vec::new();
        let mut of_tree = Vec::with_capacity(trees.len());
        for tree in trees {
            rests.done(CLASSED).await;
            let judged = tree.judged();
            let Some((judged, need)) = judged.and_then(|it| Some((it, ring_need(it)?))) else {
                of_tree.push(None);
                continue;
            };
            let key = (
                judged.species.scientific,
                tree.place.map(rounded),
                need.days
                    .iter()
                    .map(|(day, p)| (*day, p.to_bits()))
                    .collect(),
            );
            let at = *known.entry(key).or_insert_with(|| {
                all.push(ClassOf {
                    id: format!("c{}", all.len() + 1),
                    species: judged.species.scientific,
                    latitude: tree.place.map(|(latitude, ..)| latitude),
                    longitude: tree.place.map(|(_, longitude, _)| longitude),
                    elevation_m: tree.place.and_then(|(.., elevation)| elevation),
                    p: need
                        .days
                        .iter()
                        .filter(|(day, _)| season.days.contains(day))
                        .map(|(day, p)| (iso(*day), *p))
                        .collect(),
                });
                all.len() - 1
            });
            of_tree.push(Some(format!("c{}", at + 1)));
        }
        Self { all, of_tree }
    }
}

/// Hundredths of a degree and metres: places that are one to the climate.
fn rounded((latitude, longitude, elevation): (f64, f64, Option<f64>)) -> [i64; 3] {
    let whole = |value: f64| libm::round(value) as i64;
    [
        whole(latitude * 100.0),
        whole(longitude * 100.0),
        elevation.map_or(i64::MIN, whole),
    ]
}

fn ring_need(judged: &JudgedTree) -> Option<&Need> {
    match &judged.comes_to {
        ComesTo::Ring(need) => Some(need),
        _ => None,
    }
}

fn tree_of(
    constants: PlanningConstants<'_>,
    season: &WorkSeason,
    (tree, planned, at): (&ListTree, &SeasonPlan, usize),
    turns: &[Option<Turn>],
    class: Option<String>,
) -> TreeOf {
    let judged = tree.judged();
    let need = judged.and_then(ring_need);
    let in_plan = planned.place[at];
    let of_plan = in_plan.map(|place| &planned.property.trees[place]);
    let on = in_plan.and_then(|place| planned.plan.trees[place].as_ref().ok());
    let ring_turn = turns.first().copied().flatten();
    let visits = match (judged, on) {
        (Some(judged), Some(on)) => visits_of(constants, season, judged, planned, on, turns),
        _ => open_visits_of(season, tree, planned, at),
    };
    let mut visit_minutes = BTreeMap::new();
    for visit in &visits {
        visit_minutes.insert(visit.kind, visit.minutes);
    }
    TreeOf {
        tree_id: tree.tree_id.clone(),
        row: tree.row,
        unit: tree.unit.clone(),
        class,
        reason: planned.reasons[at].word(),
        outcome: judged.map(|it| it.outcome.word()),
        method: judged.map(|it| it.method.word()),
        day: on.map(|on| iso(planned.property.days[on.day].day)),
        team: ring_turn.map(|turn| turn.team),
        order: ring_turn.map(|turn| turn.order),
        p: on.map(|on| on.p),
        minutes: on.map(|on| on.minutes),
        work: of_plan.map(|it| it.work),
        walk: of_plan.map(|it| it.work[2]),
        basal_m2: need.map(|it| it.basal_m2),
        crown_m2: of_plan
            .filter(|_| !season.land.is_empty())
            .map(|it| it.crown_m2),
        zone_m: judged.map(|it| it.zone_m),
        value: tree.value(constants.own),
        pinned: tree.pinned.is_some(),
        follow_up: !visits.is_empty(),
        visit_minutes,
        visits,
    }
}

fn visits_of(
    constants: PlanningConstants<'_>,
    season: &WorkSeason,
    judged: &JudgedTree,
    planned: &SeasonPlan,
    on: &Planned,
    turns: &[Option<Turn>],
) -> Vec<VisitOf> {
    let day = planned.property.days[on.day].day;
    let all = visits::after_ring(constants.visits, judged.species, judged.hemisphere, day);
    let known = on.visits.iter().enumerate().filter_map(|(at, visit)| {
        let of: &Visit = all.get(usize::from(visit.index))?;
        let turn = turns.get(at + 1).copied().flatten();
        let when = (of.kind, of.from, of.to);
        Some(visit_of(season, planned, when, visit, turn))
    });
    known.collect()
}

/// The visits that a tree ringed before still needs.
fn open_visits_of(
    season: &WorkSeason,
    tree: &ListTree,
    planned: &SeasonPlan,
    at: usize,
) -> Vec<VisitOf> {
    let open = tree.after.iter().flat_map(|after| &after.open);
    open.zip(&planned.open[at])
        .map(|(visit, (on, turn))| {
            let when = (visit.kind, visit.from, visit.to);
            visit_of(season, planned, when, on, *turn)
        })
        .collect()
}

fn visit_of(
    season: &WorkSeason,
    planned: &SeasonPlan,
    (kind, from, to): (VisitKind, NaiveDate, NaiveDate),
    on: &PlannedVisit,
    turn: Option<Turn>,
) -> VisitOf {
    let needs_day = on.day.is_none();
    VisitOf {
        kind: kind.word(),
        from: iso(from),
        to: iso(to),
        day: on.day.map(|at| iso(planned.property.days[at].day)),
        minutes: on.minutes,
        team: turn.map(|turn| turn.team),
        reason: needs_day.then_some("needs_day"),
        suggest: needs_day.then(|| iso(suggested(season, from, to))),
    }
}

/// The first day of a visit's window that is the same day of the week as the season's first work day.
fn suggested(season: &WorkSeason, from: NaiveDate, to: NaiveDate) -> NaiveDate {
    let Some(first) = season.days.first() else {
        return from;
    };
    let wait = (7 + first.weekday().num_days_from_monday() as i64
        - from.weekday().num_days_from_monday() as i64)
        % 7;
    let day = from + Days::new(wait.unsigned_abs());
    day.min(to)
}

fn other_of((tree, reason): (&ListTree, &CountedAs)) -> Option<OtherOf> {
    let judged = tree
        .judged()
        .filter(|_| *reason == CountedAs::OtherMethod)?;
    Some(OtherOf {
        tree_id: tree.tree_id.clone(),
        method: judged.method.word(),
        from: judged.days.map(|(from, _)| iso(from)),
        to: judged.days.map(|(_, to)| iso(to)),
        by_professional: judged.by_professional,
        minutes: None,
    })
}

fn objective(
    constants: PlanningConstants<'_>,
    asked: &PlanFileFacts<'_>,
    season: &WorkSeason,
    trees: &[ListTree],
    planned: &SeasonPlan,
) -> Objective {
    let prices = &planned.plan.priced.prices;
    let terms = || {
        let of = planned.place.iter().zip(trees).filter_map(|(place, tree)| {
            Some(Term {
                tree_id: tree.tree_id.clone(),
                best: planned.plan.priced.terms.get((*place)?).copied()?,
            })
        });
        of.collect()
    };
    Objective {
        value: planned.plan.value,
        bound: planned.plan.priced.bound,
        gap_percent: planned.plan.gap_percent(),
        discount: constants.own.discount,
        days: planned
            .property
            .days
            .iter()
            .zip(&prices.minute)
            .map(|(day, price)| (iso(day.day), *price))
            .collect(),
        areas: planned
            .units
            .iter()
            .zip(prices.area.iter().zip(&prices.crown))
            .zip(&planned.property.units)
            .map(|((unit, (price, crown)), limits)| AreaPrice {
                unit: unit.clone(),
                year: season.from.year(),
                price: *price,
                crown_price: limits.crown_limit_m2.map(|_| *crown),
            })
            .collect(),
        terms: asked.whole.then(terms),
    }
}

fn walk_of(told: WalkTold) -> WalkOf {
    WalkOf {
        factor: told.factor,
        metres_a_minute: told.metres_a_minute,
        charged: told.charged,
        routed: told.routed,
        crew_days: told.crew_days,
        missed: told.missed,
    }
}

/// Trees that an earlier plan had on another day, and why they are not there.
fn moved(season: &WorkSeason, trees: &[ListTree], planned: &SeasonPlan) -> Vec<Moved> {
    let mut moved = Vec::new();
    for (at, tree) in trees.iter().enumerate() {
        let Some(kept) = season.kept.trees.get(&tree.tree_id) else {
            continue;
        };
        let on = planned.place[at].and_then(|place| planned.plan.trees[place].as_ref().ok());
        let now = on.map(|on| planned.property.days[on.day].day);
        // What was ringed meanwhile has not moved.
        let ringed = tree.after.is_some() && tree.judged().is_none();
        if now == kept.day || ringed {
            continue;
        }
        let allowed = |day: NaiveDate| {
            let days = tree.judged().and_then(ring_need).map(|need| &need.days);
            days.is_some_and(|days| days.iter().any(|(it, _)| *it == day))
        };
        let because = match (kept.day, now) {
            (None, _) => "room",
            (Some(day), _) if !season.days.contains(&day) => "no_work_day",
            (Some(_), None) => planned.reasons[at].word(),
            (Some(_), Some(_)) if tree.pinned.is_some() => "chosen",
            (Some(day), Some(_)) if !allowed(day) => "not_allowed",
            (Some(_), Some(_)) => "no_room",
        };
        moved.push(Moved {
            tree_id: tree.tree_id.clone(),
            from: kept.day.map(iso),
            to: now.map(iso),
            because: because.to_owned(),
        });
    }
    moved
}

fn bind_of(bind: &Bind) -> BindOf {
    let (what, change) = match bind.change {
        LooserLimit::MorePeople(people) => ("people", format!("+{people}")),
        LooserLimit::OneMoreDay(day) => ("day", iso(day)),
        LooserLimit::NoPacing => ("pacing", "off".to_owned()),
    };
    BindOf {
        what,
        change,
        trees_more: bind.trees_more,
        solved: true,
    }
}

/// Every number that a plan assumes, by the season where it says otherwise.
fn assumed(
    (season, own): (&WorkSeason, &PlanConstants),
    numbers: &'static [AssumedNumber],
) -> Vec<AssumedConstant> {
    let of_table = numbers.iter().map(|number| AssumedConstant {
        name: number.name,
        value: match number.name {
            READY => season.crew.ready_minutes,
            _ => number.value,
        },
        unit: number.unit,
    });
    let pairs = season.crew.pairs.then(|| AssumedConstant {
        name: "pairs",
        value: season.crew.heads_a_tree(own),
        unit: "1",
    });
    of_table.chain(pairs).collect()
}
