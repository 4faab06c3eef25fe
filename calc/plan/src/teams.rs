//! A day's work shared among crews: patch by patch, cut by hours; and the way of each crew.

use crate::list_tree::OpenVisit;
use crate::property::Property;
use crate::route::{self, Metres};
use crate::solve::{Plan, PlannedVisit};
use crate::walk::{WalkPace, WalkTo, Walked};
use calc::terms::small::order::sort_by_key;

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

/// A task, and the walk to it.
#[derive(Clone, Copy)]
struct Task {
    unit: usize,
    of: TaskOf,
    minutes: f64,
    /// Where it stands, and what the walk there is charged.
    walk: WalkTo,
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

/// The walks to trees: where each stands, and what its walk is charged.
pub(crate) struct Walks<'a> {
    /// By place in the plan.
    pub(crate) of_plan: &'a [WalkTo],
    /// By place in the list.
    pub(crate) of_list: &'a [WalkTo],
    pub(crate) pace: WalkPace,
}

/// What a crew has to do on a day, in the order of its walk.
#[derive(Clone)]
pub(crate) struct CrewDay {
    day: usize,
    team: usize,
    tasks: Vec<Task>,
    /// Whether enough of the day's trees have a point of their own for a way to be drawn.
    pub(crate) drawn: bool,
}

impl CrewDay {
    /// How many tasks it has.
    pub(crate) fn many(&self) -> usize {
        self.tasks.len()
    }

    /// What the walks are charged, and what they take along the way.
    pub(crate) fn walked(&self, pace: WalkPace) -> Walked {
        let mut walked = Walked::default();
        for task in &self.tasks {
            walked.charge(task.walk);
        }
        let points: Vec<Metres> = self.tasks.iter().filter_map(|it| it.walk.point).collect();
        let way: Vec<usize> = (0..points.len()).collect();
        let legs = route::legs(&points, &way);
        walked.routed += legs
            .map(|metres| pace.minutes(metres))
            .fold(0.0, |sum, it| sum + it);
        walked
    }

    /// Puts its tasks in the order of a way round that begins where it did; those without a point come last.
    pub(crate) fn route(&mut self) {
        if !self.drawn {
            return;
        }
        let (on_way, without): (Vec<Task>, Vec<Task>) =
            self.tasks.iter().partition(|it| it.walk.point.is_some());
        let points: Vec<Metres> = on_way.iter().filter_map(|it| it.walk.point).collect();
        let way = route::round(&points).into_iter();
        self.tasks = way.map(|at| on_way[at]).chain(without).collect();
    }
}

/// The days of all crews. Within a day they go unit by unit, in the order of a way round the units, and in each from tree
/// to the nearest next one; where trees have no points of their own, by the names of units and the tags of trees.
pub(crate) fn crew_days(
    property: &Property,
    plan: &Plan,
    open: &OpenTasks<'_>,
    walks: &Walks<'_>,
    (teams, over): (u32, f64),
) -> Vec<CrewDay> {
    let mut tasks: Vec<Vec<Task>> = plan.used.iter().map(|_| Vec::new()).collect();
    for (tree, of) in plan.trees.iter().enumerate() {
        let Ok(of) = of else { continue };
        let (unit, walk) = (property.trees[tree].unit, walks.of_plan[tree]);
        let task = |of, minutes| Task {
            unit,
            of,
            minutes,
            walk,
        };
        tasks[of.day].push(task(TaskOf::Ring(tree), of.minutes));
        for (visit, it) in of.visits.iter().enumerate() {
            if let Some(day) = it.day {
                tasks[day].push(task(TaskOf::Visit(tree, visit), it.minutes));
            }
        }
    }
    for (tree, visits) in open.planned.iter().enumerate() {
        for (visit, it) in visits.iter().enumerate() {
            if let Some(day) = it.day {
                tasks[day].push(Task {
                    unit: open.trees[tree].0,
                    of: TaskOf::Open(tree, visit),
                    minutes: it.minutes,
                    walk: walks.of_list[tree],
                });
            }
        }
    }
    let mut all = Vec::with_capacity(tasks.len());
    for (at, mut of_day) in tasks.into_iter().enumerate() {
        sort_by_key(&mut of_day, |task| (task.unit, task.of.key()));
        let located = of_day.iter().filter(|it| it.walk.point.is_some()).count();
        let drawn = located > 0 && located as f64 >= walks.pace.share * of_day.len() as f64;
        if drawn {
            of_day = unit_by_unit(&of_day);
        }
        let minutes: Vec<f64> = of_day.iter().map(|task| task.minutes).collect();
        let there = property.days[at].minutes + open.minutes[at];
        let (of_task, used) = share_out(&minutes, there, teams, over);
        let mut of_day = of_day.into_iter().zip(of_task).peekable();
        for team in 0..used.len() {
            let mine = core::iter::from_fn(|| of_day.next_if(|(_, its)| *its as usize == team));
            all.push(CrewDay {
                day: at,
                team,
                tasks: mine.map(|(task, _)| task).collect(),
                drawn,
            });
        }
    }
    all
}

/// Tasks in the order of a way round the middles of their units, each unit from one tree to the nearest next one.
fn unit_by_unit(tasks: &[Task]) -> Vec<Task> {
    let units: Vec<&[Task]> = tasks.chunk_by(|a, b| a.unit == b.unit).collect();
    let middle = |tasks: &&[Task]| {
        let points = tasks.iter().filter_map(|task| task.walk.point);
        let (mut sum, mut many) = ([0.0; 2], 0.0);
        for [east, north] in points {
            sum = [sum[0] + east, sum[1] + north];
            many += 1.0;
        }
        (many > 0.0).then(|| sum.map(|it| it / many))
    };
    let (placed, elsewhere): (Vec<&[Task]>, Vec<&[Task]>) =
        units.into_iter().partition(|unit| middle(unit).is_some());
    let middles: Vec<Metres> = placed.iter().filter_map(middle).collect();
    let mut all: Vec<Task> = Vec::with_capacity(tasks.len());
    let mut last: Option<Metres> = None;
    for at in route::round(&middles) {
        let (located, without): (Vec<Task>, Vec<Task>) =
            placed[at].iter().partition(|it| it.walk.point.is_some());
        // The way into a unit comes from where the crew stands.
        let points = located.iter().filter_map(|it| it.walk.point);
        let points: Vec<Metres> = last.into_iter().chain(points).collect();
        let before = usize::from(last.is_some());
        let way = route::nearest_next(&points).into_iter().skip(before);
        all.extend(way.map(|at| located[at - before]));
        last = all.last().and_then(|it| it.walk.point);
        all.extend(without);
    }
    all.extend(elsewhere.into_iter().flatten());
    all
}

/// For each tree of a plan the turn of its ring, then of each of its visits; none where it has no day.
pub(crate) type Turns = Vec<Vec<Option<Turn>>>;

/// For each tree of a plan its turns, for each tree of the list those of its open visits, and for each work day the
/// minutes of each crew.
pub(crate) fn turns(
    plan: &Plan,
    open: &OpenTasks<'_>,
    crew_days: &[CrewDay],
) -> (Turns, Turns, Vec<Vec<f64>>) {
    let of_plan = plan.trees.iter().map(|tree| match tree {
        Ok(of) => vec![None; 1 + of.visits.len()],
        Err(_) => Vec::new(),
    });
    let mut of_plan: Turns = of_plan.collect();
    let mut of_open: Turns = open.planned.iter().map(|it| vec![None; it.len()]).collect();
    let mut by_team: Vec<Vec<f64>> = plan.used.iter().map(|_| Vec::new()).collect();
    for crew_day in crew_days {
        let minutes = crew_day.tasks.iter().map(|task| task.minutes);
        by_team[crew_day.day].push(minutes.fold(0.0, |sum, it| sum + it));
        for (at, task) in crew_day.tasks.iter().enumerate() {
            let turn = Some(Turn {
                team: crew_day.team as u32 + 1,
                order: at + 1,
            });
            match task.of {
                TaskOf::Ring(tree) => of_plan[tree][0] = turn,
                TaskOf::Visit(tree, visit) => of_plan[tree][visit + 1] = turn,
                TaskOf::Open(tree, visit) => of_open[tree][visit] = turn,
            }
        }
    }
    (of_plan, of_open, by_team)
}

/// What walks are charged and take, by work day.
pub(crate) fn walked_by_day(
    days: usize,
    crew_days: &[CrewDay],
    pace: WalkPace,
) -> Vec<Vec<Walked>> {
    let mut by_day: Vec<Vec<Walked>> = vec![Vec::new(); days];
    for crew_day in crew_days {
        by_day[crew_day.day].push(Walked {
            drawn: crew_day.drawn && !crew_day.tasks.is_empty(),
            ..crew_day.walked(pace)
        });
    }
    by_day
}
