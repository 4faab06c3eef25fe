//! Minutes of one's own trees: so many trees, these diameters, so many minutes. The crew's rate is log-normal;
//! the update is the conjugate one of a normal mean with known variance, on the logarithm.

use super::effort_constants::{EffortConstants, Three};
use crate::terms::object::object_only;
use crate::terms::words::words;
use libm::{exp, log, sqrt};
use serde::{Deserialize, Serialize};

/// What is known of a crew's rate: the logarithm of minutes over the model's minutes, in place of the factor of
/// tool, rest and small delays.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
#[serde(deny_unknown_fields, remote = "Self", expecting = "an object")]
pub struct Rate {
    /// Mean of the logarithm; 0 is the model's own.
    pub log_mean: f64,
    /// Standard deviation of the logarithm.
    pub log_sd: f64,
}

object_only!(Rate);

words! {
    /// Why trees give no rate.
    pub enum NoRate {
        /// One tree says more about the tree than about the crew.
        TooFewTrees,
        /// No minutes, or no number.
        NoMinutes,
        /// So far from the model that the unit or the count must be wrong.
        FarOff,
    }
}

/// The fewest trees that give a rate.
pub const FEWEST: usize = 2;
/// No crew works so evenly that its spread lies below this: what was typed is no rate then (our own assumption).
const LEAST_SPREAD: f64 = 1e-6;
/// The quantile of P90 on both sides together: 2 x 1.2816.
const SPREAD: f64 = 2.563;

impl Rate {
    /// The model's own: the spread of its factor of tool, rest and small delays.
    #[must_use]
    pub fn prior(constants: &EffortConstants) -> Self {
        Self {
            log_mean: 0.0,
            log_sd: log(constants.delays.high / constants.delays.low) / SPREAD,
        }
    }

    /// Whether it is one that calibration can give.
    #[must_use]
    pub fn is_sound(&self, constants: &EffortConstants) -> bool {
        let far = log(constants.far_off);
        (-far..=far).contains(&self.log_mean) && (LEAST_SPREAD..2.0).contains(&self.log_sd)
    }

    /// The crew's minutes over the model's: P10, P50, P90.
    #[must_use]
    pub fn factor(&self, constants: &EffortConstants) -> Three {
        let own = self.delays(constants);
        let likely = constants.delays.likely;
        Three {
            low: own.low / likely,
            likely: own.likely / likely,
            high: own.high / likely,
        }
    }

    /// The factor of tool, rest and small delays with this rate.
    #[must_use]
    pub fn delays(&self, constants: &EffortConstants) -> Three {
        let likely = constants.delays.likely * exp(self.log_mean);
        let half = exp(self.log_sd * SPREAD / 2.0);
        Three {
            low: likely / half,
            likely,
            high: likely * half,
        }
    }
}

/// Updates a rate with trees that took `minutes` together, without walking. `predicted` holds the model's low, likely
/// and high minutes of each of them under the prior's own factor, without walking.
///
/// With prior N(m, s²) and the sum's own spread v, the posterior has variance 1/(1/s² + 1/v) and the mean of both
/// weighed by their precisions (any text on Bayesian statistics; normal mean, known variance).
///
/// # Errors
/// [`NoRate`] says why they give none.
///
/// ```
/// # let reference = calc_data::whole();
/// use calc::models::{calibrate::{Rate, update}, effort_constants::Three};
/// // Two trees for which the model says 20 minutes each took 60 together: this crew is slower.
/// let (constants, tree) = (&reference.constants.effort, Three { low: 12.0, likely: 20.0, high: 33.0 });
/// let rate = update(constants, Rate::prior(constants), &[tree, tree], 60.0).expect("a rate");
/// assert_eq!((rate.factor(constants).likely * 100.0).round(), 118.0);
/// ```
pub fn update(
    constants: &EffortConstants,
    prior: Rate,
    predicted: &[Three],
    minutes: f64,
) -> Result<Rate, NoRate> {
    if predicted.len() < FEWEST {
        return Err(NoRate::TooFewTrees);
    }
    if !minutes.is_finite() || minutes <= 0.0 {
        return Err(NoRate::NoMinutes);
    }
    let crew = Rate::prior(constants).log_sd;
    let (mut mean, mut variance) = (0.0, 0.0);
    for tree in predicted {
        let whole = log(tree.high / tree.low) / SPREAD;
        // What is left of a tree's spread when the crew's is taken out.
        let own = (whole * whole - crew * crew).max(0.0);
        let tree_mean = tree.likely * exp(own / 2.0);
        mean += tree_mean;
        variance += tree_mean * tree_mean * (exp(own) - 1.0);
    }
    let spread = log(1.0 + variance / (mean * mean)).max(1e-6);
    let seen = log(minutes) - (log(mean) - spread / 2.0);
    let far = log(constants.far_off);
    if !(-far..=far).contains(&seen) {
        return Err(NoRate::FarOff);
    }
    let prior_precision = 1.0 / (prior.log_sd * prior.log_sd);
    let precision = prior_precision + 1.0 / spread;
    Ok(Rate {
        log_mean: (prior.log_mean * prior_precision + seen / spread) / precision,
        log_sd: sqrt(1.0 / precision),
    })
}
