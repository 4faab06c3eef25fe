//! A list of trees with its season: which of them are planned, and why the others are not.

use crate::build::{Builder, Listed};
use crate::judged::{ComesTo, JudgedTree};
use crate::property::{PlanUnit, Property};
use crate::season::WorkSeason;
use crate::solve::{NotPlanned, Plan, solve, solve_kept};
use crate::teams::{Turn, share_days};
use calc::models::visits::VisitConstants;
use calc_data::list::PlanConstants;
use chrono::NaiveDate;
use std::rc::Rc;

/// Where in its patch a tree stands: outlying patches go first, then the edge that bears seed, then inward (Moody and
/// Mack 1988, "Controlling the spread of plant invasions: the importance of nascent foci"). The weights are our own
/// assumption ([`PlanConstants`]).
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Position {
    /// Outlying.
    Outlying,
    /// At the edge.
    Edge,
    /// Inside, or nothing said.
    #[default]
    Inside,
}

impl Position {
    /// Of its word in a list.
    #[must_use]
    pub fn of(word: &str) -> Self {
        match word {
            "outlying" => Self::Outlying,
            "edge" => Self::Edge,
            _ => Self::Inside,
        }
    }

    /// What a tree there counts.
    #[must_use]
    pub fn weight(self, own: &PlanConstants) -> f64 {
        match self {
            Self::Outlying => own.outlying,
            Self::Edge => own.edge,
            Self::Inside => 1.0,
        }
    }
}

/// How far a tree is when the list is read.
#[derive(Clone, Debug)]
pub enum Progress {
    /// Left out, by its row or by a decision on its name.
    Skipped,
    /// Ringed already.
    Done,
    /// Dead, standing or down.
    Dead,
    /// To be judged.
    Open(Rc<JudgedTree>),
}

/// A tree of a list: a row that was understood.
#[derive(Clone, Debug)]
pub struct ListTree {
    /// Its tag.
    pub tree_id: String,
    /// Its row, as the spreadsheet shows it.
    pub row: u64,
    /// Its part of the property; empty where the list has none.
    pub unit: String,
    /// 1, 2 or 4.
    pub priority: u8,
    /// Where in its patch it stands.
    pub position: Position,
    /// The day that somebody chose.
    pub pinned: Option<NaiveDate>,
    /// Latitude, longitude, and metres above the sea where known: as the climate was looked up.
    pub place: Option<(f64, f64, Option<f64>)>,
    /// How far it is.
    pub standing: Progress,
    /// Nothing stands within this, metres: it was said of its unit, and nobody looked at this tree.
    pub said_within_m: Option<f64>,
}

impl ListTree {
    /// Priority times order.
    #[must_use]
    pub fn value(&self, own: &PlanConstants) -> f64 {
        f64::from(self.priority.max(1)) * self.position.weight(own)
    }

    /// What its answer came to, where it was asked for.
    #[must_use]
    pub fn judged(&self) -> Option<&JudgedTree> {
        match &self.standing {
            Progress::Open(judged) => Some(judged),
            Progress::Skipped | Progress::Done | Progress::Dead => None,
        }
    }
}

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
}

/// The constants that a plan is made by: when visits are due, and what a plan assumes.
#[derive(Clone, Copy, Debug)]
pub struct PlanningConstants<'a> {
    /// When visits are due.
    pub visits: &'a VisitConstants,
    /// What a plan assumes.
    pub own: &'a PlanConstants,
}

/// Plans the season of a list.
#[must_use]
pub fn plan_list(
    constants: PlanningConstants<'_>,
    season: &WorkSeason,
    trees: &[ListTree],
) -> SeasonPlan {
    let mut units: Vec<String> = trees.iter().map(|tree| tree.unit.clone()).collect();
    units.sort();
    units.dedup();
    let unit_of = |tree: &ListTree| units.partition_point(|unit| *unit < tree.unit);
    let mut basal_m2 = vec![0.0; units.len()];
    let mut open: Vec<usize> = Vec::new();
    for (at, tree) in trees.iter().enumerate() {
        if let Some(ComesTo::Ring(need)) = tree.judged().map(|judged| &judged.comes_to) {
            basal_m2[unit_of(tree)] += need.basal_m2;
            open.push(at);
        }
    }
    // Rows may come in any order: the plan goes by tags, and by rows where tags are alike.
    open.sort_by(|a, b| {
        let (a, b) = (&trees[*a], &trees[*b]);
        a.tree_id.cmp(&b.tree_id).then(a.row.cmp(&b.row))
    });
    let limit = |basal: &f64| PlanUnit {
        limit_m2: season.share.map(|share| share * basal),
    };
    let limits = basal_m2.iter().map(limit).collect();
    let mut builder = Builder::new(constants, season.work_days(), limits);
    let mut place = vec![None; trees.len()];
    let heads = season.crew.heads_a_tree();
    for (index, at) in open.iter().enumerate() {
        let tree = &trees[*at];
        let Some((judged, ComesTo::Ring(need))) = tree.judged().map(|it| (it, &it.comes_to)) else {
            continue;
        };
        let listed = Listed {
            unit: unit_of(tree),
            value: tree.value(constants.own),
            pinned: tree.pinned,
            heads,
        };
        builder.add(need, judged.species, judged.hemisphere, listed);
        place[*at] = Some(index);
    }
    let property = builder.finish();
    let kept = season.kept.days(&property, trees, &place);
    let plan = if season.kept.is_empty() {
        solve(&property)
    } else {
        solve_kept(&property, &kept)
    };
    let reasons = trees
        .iter()
        .zip(&place)
        .map(|(tree, place)| reason(tree, place.map(|at| &plan.trees[at])))
        .collect();
    let (turns, by_team) = share_days(&property, &plan, season.crew.teams, constants.own.over);
    SeasonPlan {
        turns,
        by_team,
        property,
        plan,
        place,
        reasons,
        units,
    }
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
