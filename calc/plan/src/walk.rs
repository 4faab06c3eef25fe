//! Walking: what it is charged, and what it takes along the ways of the crews.

use crate::list_tree::ListTree;
use crate::route::Metres;
use calc::timing::climate::EARTH_KM;
use calc_data::list::PlanConstants;

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
