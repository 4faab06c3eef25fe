//! A day's work shared among crews: patch by patch, cut by hours.

use crate::list_tree::OpenVisit;
use crate::property::Property;
use crate::solve::{Plan, PlannedVisit};

/// The crew of each task, from 0, by the tasks' minutes in the order in which they are walked to. Each crew takes tasks
/// until its share of the day's minutes, and `over` of it more, is full; the last one takes what is left.
///
/// ```
/// let (of_task, minutes) = calc_plan::share_out(&[30.0, 30.0, 20.0, 20.0], 100.0, 2, 0.05);
/// assert_eq!(of_task, [0, 1, 1, 1]);
/// assert_eq!(minutes, [30.0, 70.0]);
/// ```
#[must_use]
pub fn share_out(tasks: &[f64], day_minutes: f64, teams: u32, over: f64) -> (Vec<u32>, Vec<f64>) {
    let teams = teams.max(1);
    let most = day_minutes / f64::from(teams) * (1.0 + over);
    let mut used = vec![0.0; teams as usize];
    let mut team = 0;
    let of_task = tasks
        .iter()
        .map(|minutes| {
            if used[team] > 0.0 && used[team] + minutes > most && team + 1 < used.len() {
                team += 1;
            }
            used[team] += minutes;
            team as u32
        })
        .collect();
    (of_task, used)
}

/// Who does a task, and where it stands in that crew's day; both from 1.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Turn {
    /// The crew.
    pub team: u32,
    /// Its place in the crew's day.
    pub order: usize,
}

/// A task of a day: a ring, a visit, or a visit to a tree ringed before.
#[derive(Clone, Copy)]
enum TaskOf {
    /// The ring of a tree of the plan.
    Ring(usize),
    /// A visit of a tree of the plan.
    Visit(usize, usize),
    /// A visit of a tree of the list that was ringed before.
    Open(usize, usize),
}

impl TaskOf {
    /// By tree, its ring first; trees that were ringed before come behind.
    fn key(self) -> (bool, usize, Option<usize>) {
        match self {
            Self::Ring(tree) => (false, tree, None),
            Self::Visit(tree, visit) => (false, tree, Some(visit)),
            Self::Open(tree, visit) => (true, tree, Some(visit)),
        }
    }
}

struct Task {
    unit: usize,
    of: TaskOf,
    minutes: f64,
}

/// Visits to trees of the list that were ringed before.
pub(crate) struct OpenTasks<'a> {
    /// For each tree of the list its unit and its visits.
    pub(crate) trees: &'a [(usize, &'a [OpenVisit])],
    /// The days of these visits.
    pub(crate) planned: &'a [Vec<PlannedVisit>],
    /// Minutes that they take of each work day.
    pub(crate) minutes: &'a [f64],
}

/// For each tree of a plan the turn of its ring, then of each of its visits; none where it has no day.
pub(crate) type Turns = Vec<Vec<Option<Turn>>>;

/// For each tree of a plan its turns, for each tree of the list those of its open visits, and for each work day the
/// minutes of each crew. Within a day crews go unit by unit, in the order of the trees.
pub(crate) fn share_days(
    property: &Property,
    plan: &Plan,
    open: &OpenTasks<'_>,
    (teams, over): (u32, f64),
) -> (Turns, Turns, Vec<Vec<f64>>) {
    let mut tasks: Vec<Vec<Task>> = plan.used.iter().map(|_| Vec::new()).collect();
    let mut turns: Turns = Vec::with_capacity(plan.trees.len());
    for (tree, of) in plan.trees.iter().enumerate() {
        let Ok(of) = of else {
            turns.push(Vec::new());
            continue;
        };
        let unit = property.trees[tree].unit;
        let task = |of, minutes| Task { unit, of, minutes };
        tasks[of.day].push(task(TaskOf::Ring(tree), of.minutes));
        for (visit, it) in of.visits.iter().enumerate() {
            if let Some(day) = it.day {
                tasks[day].push(task(TaskOf::Visit(tree, visit), it.minutes));
            }
        }
        turns.push(vec![None; 1 + of.visits.len()]);
    }
    let mut open_turns: Turns = Vec::with_capacity(open.planned.len());
    for (tree, visits) in open.planned.iter().enumerate() {
        for (visit, it) in visits.iter().enumerate() {
            if let Some(day) = it.day {
                tasks[day].push(Task {
                    unit: open.trees[tree].0,
                    of: TaskOf::Open(tree, visit),
                    minutes: it.minutes,
                });
            }
        }
        open_turns.push(vec![None; visits.len()]);
    }
    let mut by_team = Vec::with_capacity(tasks.len());
    for ((of_day, day), taken) in tasks.iter_mut().zip(&property.days).zip(open.minutes) {
        of_day.sort_by_key(|task| (task.unit, task.of.key()));
        let minutes: Vec<f64> = of_day.iter().map(|task| task.minutes).collect();
        let (of_task, used) = share_out(&minutes, day.minutes + taken, teams, over);
        let mut order = vec![0; used.len()];
        for (task, team) in of_day.iter().zip(of_task) {
            order[team as usize] += 1;
            let turn = Some(Turn {
                team: team + 1,
                order: order[team as usize],
            });
            match task.of {
                TaskOf::Ring(tree) => turns[tree][0] = turn,
                TaskOf::Visit(tree, visit) => turns[tree][visit + 1] = turn,
                TaskOf::Open(tree, visit) => open_turns[tree][visit] = turn,
            }
        }
        by_team.push(used);
    }
    (turns, open_turns, by_team)
}
