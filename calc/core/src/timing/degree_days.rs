//! Degree-days of a day: the methods of the trade for measured minima and maxima, and the expected value for normals.
//! Temperatures and thresholds in °C (or all in °F), results in degree-days of the same unit.

use super::verdict::phi;
use core::f64::consts::{FRAC_1_SQRT_2, FRAC_2_SQRT_PI, FRAC_PI_2, PI};

/// How one day's degree-days are counted from its minimum and maximum.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DayCount {
    /// Mean of minimum and maximum, less the base, not under 0.
    Average,
    /// The same with the minimum raised to the base first.
    ModifiedAverage,
    /// The temperature runs from minimum to maximum and back in straight lines.
    SingleTriangle,
    /// The temperature follows a sine.
    SingleSine,
}

/// Degree-days of one day above `base`. `tmax` under `tmin` counts as if they were swapped.
#[must_use]
pub fn day(method: DayCount, tmin: f64, tmax: f64, base: f64) -> f64 {
    let (tmin, tmax) = if tmax < tmin {
        (tmax, tmin)
    } else {
        (tmin, tmax)
    };
    let mean = (tmin + tmax) / 2.0;
    match method {
        DayCount::Average => (mean - base).max(0.0),
        DayCount::ModifiedAverage => ((tmin.max(base) + tmax) / 2.0 - base).max(0.0),
        _ if tmax <= base => 0.0,
        _ if tmin >= base => mean - base,
        DayCount::SingleTriangle => (tmax - base) * (tmax - base) / (2.0 * (tmax - tmin)),
        DayCount::SingleSine => {
            let amplitude = (tmax - tmin) / 2.0;
            let sine = ((base - mean) / amplitude).clamp(-1.0, 1.0);
            let cosine = libm::sqrt(1.0 - sine * sine);
            ((mean - base) * (FRAC_PI_2 - libm::asin(sine)) + amplitude * cosine) / PI
        }
    }
}

/// Degree-days between two thresholds with a horizontal cutoff: what lies above the upper one is not counted.
#[must_use]
pub fn day_between(method: DayCount, tmin: f64, tmax: f64, lower: f64, upper: f64) -> f64 {
    day(method, tmin, tmax, lower) - day(method, tmin, tmax, upper)
}

/// The double methods: half of this day's minimum and maximum, half of this maximum and the next day's minimum.
/// `upper` None means no cutoff.
#[must_use]
pub fn double(
    method: DayCount,
    tmin: f64,
    tmax: f64,
    next_tmin: f64,
    lower: f64,
    upper: Option<f64>,
) -> f64 {
    let one = |tn: f64| match upper {
        Some(u) => day_between(method, tn, tmax, lower, u),
        None => day(method, tn, tmax, lower),
    };
    (one(tmin) + one(next_tmin)) / 2.0
}

/// Degree-days to be expected on a day with these normals: daily temperatures scatter about the normal curve with
/// `sd`, and the curve itself is a sine from `tmin` to `tmax`. The sum of both is taken as normal with
/// s = √(sd² + A²/2), which gives the closed form s·φ(z) + (μ − base)·Φ(z), z = (μ − base)/s.
/// [`tmin` 0, `tmax` 10, `base` 5, `sd` 5.5: 2.6084]
#[must_use]
pub fn expected(tmin: f64, tmax: f64, base: f64, sd: f64) -> f64 {
    let over = (tmin + tmax) / 2.0 - base;
    let amplitude = (tmax - tmin) / 2.0;
    let s = libm::sqrt(sd * sd + amplitude * amplitude / 2.0);
    if s <= 0.0 {
        return over.max(0.0);
    }
    let z = over / s;
    s * density(z) + over * phi(z)
}

/// Density of the normal distribution.
fn density(z: f64) -> f64 {
    // 1/√(2π) = (2/√π) · (1/√2) / 2
    FRAC_2_SQRT_PI * FRAC_1_SQRT_2 / 2.0 * libm::exp(-z * z / 2.0)
}
