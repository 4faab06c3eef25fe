//! Walking: what it is charged, what it takes along the ways of the crews, and the charge set right by that.
//!
//! Minutes are reckoned with one walk to each tree, before anybody knows who goes where; the way between the trees of a day
//! comes out once a plan is made. So the charge is multiplied by what ways take to what they were charged, and the plan is
//! made again, twice.

use crate::list_tree::ListTree;
use crate::route::Metres;
use crate::teams::CrewDay;
use calc::timing::climate::EARTH_KM;
use calc_data::list::PlanConstants;

/// Plans that are made again with another charge, at most.
pub(crate) const ROUNDS: u32 = 2;
/// Crew-days whose ways set the charge, at most, evenly through the season: each holds dozens of walks.
const SAMPLE: usize = 30;
/// A charge that changes by a smaller share stays: planning again would move trees for nothing.
const ENOUGH: f64 = 0.01;
/// The charge stays within so many times and a share of what was reckoned.
const LEAST: f64 = 0.05;
const MOST: f64 = 10.0;
/// The charge is rounded to one in so many, so that it is printed and read again as it was.
const STEPS: f64 = 1000.0;
/// A crew-day whose way takes more or less than its charge by a larger share is told.
const MISSED: f64 = 0.1;

/// How fast people walk.
#[derive(Clone, Copy, Debug)]
pub(crate) struct WalkPace {
    /// Metres a minute.
    pub(crate) metres: f64,
    /// Minutes of a leg at most.
    pub(crate) leg_most: f64,
    /// People at a tree.
    pub(crate) heads: f64,
    /// Ways are drawn on days of whose trees at least this share has a point of its own.
    pub(crate) share: f64,
}

impl WalkPace {
    /// Person-minutes of a leg.
    pub(crate) fn minutes(self, metres: f64) -> f64 {
        (metres / self.metres).min(self.leg_most) * self.heads
    }
}

/// The walk to a tree.
#[derive(Clone, Copy, Debug, Default)]
pub(crate) struct WalkTo {
    /// Where it stands; none where nobody knows exactly.
    pub(crate) point: Option<Metres>,
    /// Person-minutes that are charged.
    pub(crate) charged: f64,
    /// Whether the row itself says how long the walk is: that stays.
    pub(crate) said: bool,
}

/// Walks of a crew's day, person-minutes.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Walked {
    /// As charged.
    pub charged: f64,
    /// Along the way, back to its first tree; the walks to trees without a point as charged.
    pub routed: f64,
    /// Of what is charged the part of trees on the way whose rows say nothing of their walk.
    pub(crate) reckoned: f64,
    /// The part of trees without a point.
    pub(crate) elsewhere: f64,
    /// Whether a way was drawn.
    pub drawn: bool,
}

impl Walked {
    pub(crate) fn charge(&mut self, walk: WalkTo) {
        self.charged += walk.charged;
        match walk.point {
            None => {
                self.elsewhere += walk.charged;
                self.routed += walk.charged;
            }
            Some(_) if !walk.said => self.reckoned += walk.charged,
            Some(_) => {}
        }
    }

    /// Whether what is charged is far from the way.
    fn is_missed(&self) -> bool {
        libm::fabs(self.routed - self.charged) > MISSED * self.charged
    }
}

/// What walks of a season are charged and take, where ways were drawn.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct WalkTold {
    /// What the walk to a tree is multiplied by.
    pub factor: f64,
    /// Metres that people walk in a minute.
    pub metres_a_minute: f64,
    /// Person-minutes charged on the days with ways.
    pub charged: f64,
    /// Person-minutes along the ways.
    pub routed: f64,
    /// Crew-days with a way.
    pub crew_days: usize,
    /// Those of them whose way takes over a tenth more or less than its charge.
    pub missed: usize,
}

impl WalkTold {
    /// None where no way was drawn.
    pub(crate) fn of(factor: f64, pace: WalkPace, by_day: &[Vec<Walked>]) -> Option<Self> {
        let mut told = Self {
            factor,
            metres_a_minute: pace.metres,
            ..Self::default()
        };
        for walked in by_day.iter().flatten().filter(|it| it.drawn) {
            told.charged += walked.charged;
            told.routed += walked.routed;
            told.crew_days += 1;
            told.missed += usize::from(walked.is_missed());
        }
        (told.crew_days > 0).then_some(told)
    }
}

/// Where each tree stands, metres east and north of the middle of the list; none where nobody knows exactly: no point, one
/// that is too rough, or one that several rows share, which is the place of all of them and of none.
pub(crate) fn own_points(own: &PlanConstants, trees: &[ListTree]) -> Vec<Option<Metres>> {
    let exact = |tree: &ListTree| {
        let rough = tree.coord_m.is_some_and(|off| off > own.walk_coord);
        tree.point.filter(|_| !rough)
    };
    let mut shared: Vec<[u64; 2]> = trees
        .iter()
        .filter_map(|tree| tree.point)
        .map(bits)
        .collect();
    shared.sort_unstable();
    let several = |point: (f64, f64)| {
        let from = shared.partition_point(|it| *it < bits(point));
        shared.get(from + 1) == Some(&bits(point))
    };
    let own: Vec<Option<(f64, f64)>> = trees
        .iter()
        .map(|tree| exact(tree).filter(|point| !several(*point)))
        .collect();
    let middle = |of: fn((f64, f64)) -> f64| {
        let (low, high) = own
            .iter()
            .flatten()
            .copied()
            .map(of)
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), it| {
                (low.min(it), high.max(it))
            });
        f64::midpoint(low, high)
    };
    let (north, east) = (middle(|it| it.0), middle(|it| it.1));
    let metres_a_degree = EARTH_KM * 1000.0 * 1.0_f64.to_radians();
    let shrinks = libm::cos(north.to_radians());
    let metres = |(latitude, longitude): (f64, f64)| {
        [
            metres_a_degree * shrinks * (longitude - east),
            metres_a_degree * (latitude - north),
        ]
    };
    own.iter().map(|point| point.map(metres)).collect()
}

fn bits((latitude, longitude): (f64, f64)) -> [u64; 2] {
    [latitude.to_bits(), longitude.to_bits()]
}

/// What the walk to a tree is multiplied by next, from the ways of a sample of crew-days; none where it stays.
pub(crate) fn corrected(factor: f64, crew_days: &[CrewDay], pace: WalkPace) -> Option<f64> {
    let drawn: Vec<&CrewDay> = crew_days.iter().filter(|it| it.drawn).collect();
    let every = drawn.len().div_ceil(SAMPLE).max(1);
    let (mut reckoned, mut taken) = (0.0, 0.0);
    for crew_day in drawn.into_iter().step_by(every) {
        let mut crew_day = crew_day.clone();
        crew_day.route();
        let walked = crew_day.walked(pace);
        let said = walked.charged - walked.elsewhere - walked.reckoned;
        reckoned += walked.reckoned;
        taken += walked.routed - walked.elsewhere - said;
    }
    if reckoned <= 0.0 {
        return None;
    }
    let next = (factor * taken / reckoned).clamp(LEAST, MOST);
    let next = libm::round(next * STEPS) / STEPS;
    (libm::fabs(next / factor - 1.0) > ENOUGH).then_some(next)
}
