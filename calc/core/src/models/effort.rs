//! Person-minutes for the ring: T = K [F + C (S + P w/6 + X) B + H L] + W.
//!
//! Every term is log-normal with the likely value as median; the sum is put together by exact moments of
//! independent terms. Lows are never added: low, likely and high are P10, P50 and P90 of the mixture of
//! slipping and tight bark.

use crate::models::calibrate::{NoRate, Rate};
use crate::models::effort_constants::{EffortConstants, Three};
use crate::models::outlook::Share;
use crate::terms::cite::cite;
use crate::terms::cite::{Cite, Grade};
use crate::terms::method::Method;
use crate::terms::source;
use crate::terms::species::Group;
use crate::terms::tree::Limbs;
use libm::{erfc, exp, log, sqrt};
use serde::Serialize;

/// Minutes of another method, as printed.
#[derive(Clone, Copy, Debug)]
pub struct MethodMinutes {
    /// The method.
    pub method: Method,
    /// Only trees of this group, where the source says so.
    pub group: Option<Group>,
    /// Diameters that it speaks of, inches.
    pub dbh_in: (f64, f64),
    /// Person-minutes a tree: low, high.
    pub minutes: (f64, f64),
    /// What was timed.
    pub of: &'static str,
    /// Source.
    pub cite: Cite,
}

/// The quantile of P90 on both sides together: 2 x 1.2816.
const SPREAD: f64 = 2.563;

/// How fast a crew works and walks, as far as it is known.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Pace {
    /// Walking from the last tree, minutes; none when not given.
    pub walk_min: Option<f64>,
    /// A practised crew.
    pub practised: bool,
    /// The crew's own rate, from trees that it timed.
    pub rate: Option<Rate>,
}

/// One stem to ring.
#[derive(Clone, Copy, Debug)]
pub struct StemWork {
    /// Diameter, mm.
    pub dbh_mm: f64,
    /// Bark, mm.
    pub bark_mm: f64,
    /// Ring width, mm.
    pub width_mm: f64,
    /// Live share.
    pub live_share: f64,
}

/// Minutes for the tree.
#[derive(Clone, Debug)]
pub struct Effort {
    /// P10, minutes.
    pub low_min: f64,
    /// P50, minutes.
    pub likely_min: f64,
    /// P90, minutes.
    pub high_min: f64,
    /// Mean, minutes: what a plan of many trees adds.
    pub mean_min: f64,
    /// Probability of slip that it was worked out for.
    pub slip: f64,
    /// Likely minutes by task, without delays, at full slip: fixed, limbs, score, peel, scrape.
    pub tasks: Tasks,
    /// Walking, minutes.
    pub walk_min: f64,
    /// What it rests on.
    pub because: Vec<Cite>,
    /// Work without walking, where the bark slips and where it is tight.
    work: [Moments; 2],
}

/// Minutes.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct EffortAnswer {
    /// P10, minutes.
    pub low_min: f64,
    /// P50, minutes.
    pub likely_min: f64,
    /// P90, minutes.
    pub high_min: f64,
    /// Mean, minutes.
    pub mean_min: f64,
    /// Probability of slip that it stands on.
    pub slip: f64,
    /// Walking in it, minutes.
    pub walk_min: f64,
    /// Likely minutes by task, before delays, bark slipping.
    pub tasks: Tasks,
    /// Minutes of one sprout visit: low, likely, high.
    pub visit_min: (f64, f64, f64),
    /// The ring and its sprout visits of the first three seasons.
    pub three_years: Long,
    /// The ring and every sprout and yearly visit of the list.
    pub whole: Long,
    /// The crew's own rate, where there is one.
    pub own: Option<OwnRate>,
    /// Trees that were timed and give no rate: how many, and why.
    pub timed: Option<(usize, NoRate)>,
    /// What it rests on.
    pub because: Vec<Cite>,
    /// Means: what a plan of many trees adds. Lows, likely and high ones can't be added.
    #[serde(skip)]
    pub means: Means,
}

/// Mean person-minutes of the parts of the work.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Means {
    /// The ring where the bark slips, without the walk.
    pub slip: f64,
    /// The ring where it is tight, without the walk.
    pub tight: f64,
    /// The walk to a tree.
    pub walk: f64,
    /// The first look: what is fixed at a tree, and the walk. Nobody timed one: our own assumption.
    pub first_look: f64,
    /// A visit to take sprouts off, with its walk.
    pub sprouts: f64,
}

/// Minutes with visits, none counted for the first look: nobody timed one.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Long {
    /// How many visits are in it.
    pub visits: usize,
    /// P10, P50 and P90, minutes.
    pub minutes: Three,
}

/// The crew's own rate over the model's.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct OwnRate {
    /// The rate, to be given again as `rate`.
    pub rate: Rate,
    /// P10, P50 and P90 of the crew's minutes over the model's.
    pub factor: Three,
    /// Trees that were timed for it, where they came with the question, and their minutes.
    pub timed: Option<(usize, f64)>,
}

/// Work of one method. Where nobody measured it there is no number.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct MethodWork {
    /// The method.
    pub method: Method,
    /// Person-minutes now: low, likely where it is known, high.
    pub now: Option<Share>,
    /// Person-minutes over the first three seasons, visits in them.
    pub three_years: Option<Share>,
    /// Visits of the first three seasons behind the first look.
    pub visits: usize,
    /// What was timed, where it is not this tree that was worked out.
    pub of: &'static str,
    /// What visits and minutes rest on.
    pub because: Vec<Cite>,
}

/// Likely minutes by task.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Tasks {
    /// Finding a stand, tools, looking up.
    pub fixed: f64,
    /// Clearing limbs.
    pub limbs: f64,
    /// Scoring two lines.
    pub score: f64,
    /// Peeling.
    pub peel: f64,
    /// Scraping and checking.
    pub scrape: f64,
}

/// First two moments of a positive quantity.
#[derive(Clone, Copy, Debug, Default)]
struct Moments {
    mean: f64,
    square: f64,
}

impl Moments {
    /// Of a log-normal term with median `likely`.
    fn of(three: Three, scale: f64) -> Self {
        let sigma = log(three.high / three.low) / SPREAD;
        let mean = three.likely * exp(sigma * sigma / 2.0);
        let square = three.likely * three.likely * exp(2.0 * sigma * sigma);
        Self {
            mean: mean * scale,
            square: square * scale * scale,
        }
    }

    fn variance(self) -> f64 {
        self.square - self.mean * self.mean
    }

    /// Sum of independent quantities.
    fn plus(self, other: Self) -> Self {
        let mean = self.mean + other.mean;
        Self {
            mean,
            square: self.variance() + other.variance() + mean * mean,
        }
    }

    /// Product of independent quantities.
    fn times(self, other: Self) -> Self {
        Self {
            mean: self.mean * other.mean,
            square: self.square * other.square,
        }
    }

    /// The log-normal with these moments.
    fn log_normal(self) -> LogNormal {
        let variance = log(self.square / (self.mean * self.mean));
        LogNormal {
            mu: log(self.mean) - variance / 2.0,
            sigma: sqrt(variance),
        }
    }
}

/// A log-normal, by mean and spread of the logarithm.
#[derive(Clone, Copy, Debug)]
struct LogNormal {
    mu: f64,
    sigma: f64,
}

impl LogNormal {
    /// Share that lies under a value, by its logarithm.
    fn under(self, log_x: f64) -> f64 {
        0.5 * erfc((self.mu - log_x) / (self.sigma * core::f64::consts::SQRT_2))
    }
}

/// Minutes to ring the stems of one tree, with probability `slip` that the bark slips. `None` without a stem.
///
/// ```
/// # use calc::question::read;
/// # let reference = calc_data::whole();
/// let question = read(reference, &examples::named("do")).expect("a good question");
/// use calc::models::effort::{StemWork, minutes};
/// let work = [StemWork { dbh_mm: 368.0, bark_mm: 12.0, width_mm: 200.0, live_share: 1.0 }];
/// let tree = &question.tree;
/// let effort = minutes(&reference.constants.effort, tree.limbs, &question.pace, &work, 0.9);
/// assert_eq!(effort.map(|effort| effort.likely_min.round()), Some(7.0));
/// ```
#[must_use]
pub fn minutes(
    constants: &EffortConstants,
    limbs: Limbs,
    pace: &Pace,
    stems: &[StemWork],
    slip: f64,
) -> Option<Effort> {
    if stems.is_empty() {
        return None;
    }
    let limby = match limbs {
        Limbs::None => constants.limby_none_ft,
        Limbs::Some => constants.limby_some_ft,
        Limbs::Many => constants.limby_many_ft,
    };
    let mut apart = Moments::default();
    let mut bark = Moments::default();
    let mut tasks = Tasks::default();
    for stem in stems {
        let feet = core::f64::consts::PI * stem.dbh_mm / 304.8 * stem.live_share;
        let strip = stem.width_mm / 152.4;
        let score = scoring(constants, stem.bark_mm);
        apart = apart.plus(Moments::of(constants.fixed, 1.0));
        if limby > 0.0 {
            apart = apart.plus(Moments::of(constants.limbs, limby));
        }
        bark = bark
            .plus(Moments::of(score, feet))
            .plus(Moments::of(constants.peel, feet * strip))
            .plus(Moments::of(constants.scrape, feet));
        tasks.fixed += constants.fixed.likely;
        tasks.limbs += constants.limbs.likely * limby;
        tasks.score += score.likely * feet;
        tasks.peel += constants.peel.likely * feet * strip;
        tasks.scrape += constants.scrape.likely * feet;
    }
    // The crew's own rate holds its practice already.
    let crew = if pace.practised && pace.rate.is_none() {
        constants.practised
    } else {
        1.0
    };
    let delays = pace
        .rate
        .map_or(constants.delays, |rate| rate.delays(constants));
    let delays = Moments::of(delays, crew);
    let slipping = apart.plus(bark).times(delays);
    let tight = apart
        .plus(bark.times(Moments::of(constants.tight, 1.0)))
        .times(delays);
    let walk = pace.walk_min.unwrap_or(constants.walk_min);
    let work = [slipping, tight];
    let once = ends(constants, work, slip, walk);
    let mut because = vec![
        cite(source::CANNON1982, "Table 1"),
        cite(source::PEREZ2001, "fixed time"),
        Cite {
            source: source::LOGPEEL2014,
            place: "peeling rate",
            grade: Grade::Secondary,
        },
        cite(source::HOLLEY2005, "delays, limbs"),
        cite(source::BEECH, "dormant shear"),
        Cite::own("effort: scoring, scraping, tight bark, walking"),
    ];
    if pace.rate.is_some() {
        because.push(Cite::measured("trees that were timed"));
    }
    Some(Effort {
        low_min: once.low,
        likely_min: once.likely,
        high_min: once.high,
        mean_min: slip * slipping.mean + (1.0 - slip) * tight.mean + walk,
        slip,
        tasks,
        walk_min: walk,
        because,
        work,
    })
}

/// P10, P50 and P90 of the mixture, with the stems that stick, and the walk.
fn ends(constants: &EffortConstants, work: [Moments; 2], slip: f64, walk: f64) -> Three {
    let [slipping, tight] = work;
    let [low, likely, high] = quantiles(slipping.log_normal(), tight.log_normal(), slip);
    Three {
        low: low + walk,
        likely: likely * (1.0 + constants.sticking_likely * slip) + walk,
        high: high * (1.0 + constants.sticking_high * slip) + walk,
    }
}

impl Effort {
    /// Means of the parts. On a day with probability p of slip the ring takes p x slip + (1 - p) x tight + walk.
    ///
    /// ```
    /// # use calc::question::read;
    /// # let reference = calc_data::whole();
    /// let question = read(reference, &examples::named("do")).expect("a good question");
    /// use calc::models::effort::{StemWork, minutes};
    /// let work = [StemWork { dbh_mm: 368.0, bark_mm: 12.0, width_mm: 200.0, live_share: 1.0 }];
    /// let constants = &reference.constants.effort;
    /// let effort = minutes(constants, question.tree.limbs, &question.pace, &work, 0.9).expect("a stem");
    /// let means = effort.means(constants);
    /// let mean = 0.9 * means.slip + 0.1 * means.tight + means.walk;
    /// assert!((mean - effort.mean_min).abs() < 1e-9);
    /// ```
    #[must_use]
    pub fn means(&self, constants: &EffortConstants) -> Means {
        let [slip, tight] = self.work.map(|work| work.mean);
        let share = Moments::of(constants.visit, 1.0).mean;
        Means {
            slip,
            tight,
            walk: self.walk_min,
            first_look: Moments::of(constants.fixed, 1.0).mean + self.walk_min,
            sprouts: share * (self.slip * slip + (1.0 - self.slip) * tight) + self.walk_min,
        }
    }

    /// Minutes of the ring and so many visits to take sprouts off, each with its walk. A visit is a share of the
    /// first work, the same share at every visit of a tree: T (1 + n V) by exact moments. Lows are never added.
    #[must_use]
    pub fn with_visits(&self, constants: &EffortConstants, visits: usize) -> Three {
        let n = visits as f64;
        let share = Moments::of(constants.visit, 1.0);
        let times = Moments {
            mean: 1.0 + n * share.mean,
            square: 1.0 + 2.0 * n * share.mean + n * n * share.square,
        };
        let work = self.work.map(|work| work.times(times));
        ends(constants, work, self.slip, self.walk_min * (n + 1.0))
    }
}

/// Minutes a foot for scoring, linear in bark thickness between thin, medium and thick, constant outside.
fn scoring(constants: &EffortConstants, bark_mm: f64) -> Three {
    let (thin, medium) = (constants.score_thin_mm, constants.score_medium_mm);
    let (from, to, share) = if bark_mm <= medium {
        let share = ((bark_mm - thin) / (medium - thin)).clamp(0.0, 1.0);
        (constants.score_thin, constants.score_medium, share)
    } else {
        let share = ((bark_mm - medium) / (constants.score_thick_mm - medium)).clamp(0.0, 1.0);
        (constants.score_medium, constants.score_thick, share)
    };
    let between = |a: f64, b: f64| a + (b - a) * share;
    Three {
        low: between(from.low, to.low),
        likely: between(from.likely, to.likely),
        high: between(from.high, to.high),
    }
}

/// Standard normal quantiles of P10, P50 and P90.
const Z: [f64; 3] = [-1.281_551_565_544_600_4, 0.0, 1.281_551_565_544_600_4];

/// P10, P50 and P90 of the mixture of slipping and tight bark. Each lies between those of the two, so a chord drawn
/// between them finds it, on the logarithm; an end that stays twice counts half, else the chord would creep.
fn quantiles(slipping: LogNormal, tight: LogNormal, slip: f64) -> [f64; 3] {
    let mut found = [0.0; 3];
    for ((found, z), share) in found.iter_mut().zip(Z).zip([0.1, 0.5, 0.9]) {
        let off = |at| slip * slipping.under(at) + (1.0 - slip) * tight.under(at) - share;
        let mut old = slipping.mu + z * slipping.sigma;
        let mut new = tight.mu + z * tight.sigma;
        let (mut off_old, mut off_new) = (off(old), off(new));
        for _ in 0..CHORDS {
            if (new - old).abs() < CLOSE || off_new.abs() < CLOSE {
                break;
            }
            let next = (old * off_new - new * off_old) / (off_new - off_old);
            let off_next = off(next);
            if (off_next > 0.0) == (off_new > 0.0) {
                off_old /= 2.0;
            } else {
                (old, off_old) = (new, off_new);
            }
            (new, off_new) = (next, off_next);
        }
        *found = exp(new);
    }
    found
}

/// Chords at most; a dozen are enough for two bells far apart.
const CHORDS: usize = 40;
/// How near is found: a share, and a difference of logarithms.
const CLOSE: f64 = 1e-10;
