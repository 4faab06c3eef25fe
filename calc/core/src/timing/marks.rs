//! The days on which the chance of slip passes each step, found once a season, so that a year of days costs no
//! more than a few.

use super::constants::SeasonConstants;
use super::curve::Curve;
use super::doy::nearest;
use super::verdict::probability;

/// First and last whole day, counted from the start of the season's year, on which the chance reaches `p_poor`,
/// `p_test` and `p_best`; none where it never does.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Marks {
    steps: [Option<(i32, i32)>; 3],
    best: (i32, i32),
    middle: f64,
}

/// How far outside opening and closing a step may lie, days: beyond it the chance is nothing.
const REACH: i32 = 200;

impl Marks {
    /// Finds them. The chance is a product of two log-concave functions, so it has one peak, which halving finds, as it finds each
    /// crossing between the peak and a day far off.
    pub(super) fn of(curve: &Curve, c: &SeasonConstants) -> Self {
        let p = |day: i32| {
            let k = curve;
            probability(f64::from(day), k.opens, k.sd_open, k.closes, k.sd_close)
        };
        let (mut low, mut high) = (nearest(curve.opens) - REACH, nearest(curve.closes) + REACH);
        let (first, last) = (low, high);
        while low < high {
            let middle = i32::midpoint(low, high);
            if p(middle) < p(middle + 1) {
                low = middle + 1
            } else {
                high = middle
            }
        }
        let peak = low;
        // A higher step lies inside a lower one.
        let (mut before, mut behind) = (first, last);
        let mut step = |least: f64| {
            let found = (p(peak) >= least).then(|| {
                let edge = |mut inside: i32, mut outside: i32| {
                    while (inside - outside).abs() > 1 {
                        let middle = i32::midpoint(inside, outside);
                        if p(middle) >= least {
                            inside = middle
                        } else {
                            outside = middle
                        }
                    }
                    inside
                };
                (edge(peak, before), edge(peak, behind))
            });
            if let Some((from, to)) = found {
                (before, behind) = (from - 1, to + 1);
            }
            found
        };
        Self {
            steps: [step(c.p_poor), step(c.p_test), step(c.p_best)],
            best: (nearest(curve.best_from), nearest(curve.best_to)),
            middle: (curve.best_from + curve.best_to) / 2.0,
        }
    }

    fn holds(&self, step: usize, day: i32) -> bool {
        self.steps[step].is_some_and(|(from, to)| from <= day && day <= to)
    }

    /// The first day after a day on which one of the answers below may be another.
    pub(super) fn next_turn(&self, day: i32) -> Option<i32> {
        let stretches = self.steps.iter().flatten().chain([&self.best]);
        let turns = stretches.flat_map(|(from, to)| [*from, to + 1]);
        turns
            .chain([libm::ceil(self.middle) as i32])
            .filter(|turn| *turn > day)
            .min()
    }

    /// The chance is at least `p_poor`.
    pub(super) fn poor(&self, day: i32) -> bool {
        self.holds(0, day)
    }

    /// The chance is at least `p_test`.
    pub(super) fn test(&self, day: i32) -> bool {
        self.holds(1, day)
    }

    /// The chance is at least `p_best` and the day lies between best from and best to, both counted.
    pub(super) fn best(&self, day: i32) -> bool {
        self.holds(2, day) && self.best.0 <= day && day <= self.best.1
    }

    /// The day lies before the middle of the best days.
    pub(super) fn opening(&self, day: i32) -> bool {
        f64::from(day) < self.middle
    }

    /// No day between opening and closing reaches `p_best`.
    pub(super) fn short(&self) -> bool {
        self.steps[2].is_none()
    }
}
