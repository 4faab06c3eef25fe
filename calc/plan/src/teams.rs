//! A day's work shared among crews: patch by patch, cut by hours.

use crate::property::Property;
use crate::solve::Plan;

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

/// A task of a day: a ring or a visit.
struct Task {
    unit: usize,
    tree: usize,
    /// None: the ring.
    visit: Option<usize>,
    minutes: f64,
}

/// For each tree of a plan the turn of its ring, then of each of its visits; none where it has no day.
pub(crate) type Turns = Vec<Vec<Option<Turn>>>;

/// For each tree of a plan its turns, and for each work day the minutes of each crew. Within a day crews go unit by unit,
/// in the order of the trees.
pub(crate) fn share_days(
    property: &Property,
    plan: &Plan,
    teams: u32,
    over: f64,
) -> (Turns, Vec<Vec<f64>>) {
    let mut tasks: Vec<Vec<Task>> = plan.used.iter().map(|_| Vec::new()).collect();
    let mut turns: Turns = Vec::with_capacity(plan.trees.len());
    for (tree, of) in plan.trees.iter().enumerate() {
        let Ok(of) = of else {
            turns.push(Vec::new());
            continue;
        };
        let unit = property.trees[tree].unit;
        let task = |visit, minutes| Task {
            unit,
            tree,
            visit,
            minutes,
        };
        tasks[of.day].push(task(None, of.minutes));
        for (visit, it) in of.visits.iter().enumerate() {
            if let Some(day) = it.day {
                tasks[day].push(task(Some(visit), it.minutes));
            }
        }
        turns.push(vec![None; 1 + of.visits.len()]);
    }
    let mut by_team = Vec::with_capacity(tasks.len());
    for (of_day, day) in tasks.iter_mut().zip(&property.days) {
        of_day.sort_by_key(|task| (task.unit, task.tree, task.visit));
        let minutes: Vec<f64> = of_day.iter().map(|task| task.minutes).collect();
        let (of_task, used) = share_out(&minutes, day.minutes, teams, over);
        let mut order = vec![0; used.len()];
        for (task, team) in of_day.iter().zip(of_task) {
            order[team as usize] += 1;
            let slot = task.visit.map_or(0, |visit| visit + 1);
            turns[task.tree][slot] = Some(Turn {
                team: team + 1,
                order: order[team as usize],
            });
        }
        by_team.push(used);
    }
    (turns, by_team)
}
