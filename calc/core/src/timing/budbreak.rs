//! The day on which half the buds are open, from sums of degree-days.

use super::Observed;
use super::climate::PointClimate;
use super::constants::SeasonConstants;
use super::degree_days::{DayCount, day, expected};
use super::doy::{YEAR, absolute};
use super::spring::Daily;
use crate::terms::place::Hemisphere;
use crate::terms::tree::Stage;

/// First day of the sums, as a day of the year.
#[must_use]
pub fn start(hemisphere: Hemisphere, c: &SeasonConstants) -> i32 {
    match hemisphere {
        Hemisphere::North => c.start_north as i32,
        Hemisphere::South => c.start_south as i32,
    }
}

/// Budbreak as a fractional day counted from the start of the season's year (over 365 means the next calendar year),
/// or None where a whole year of normals does not reach `f_sum` (°C·d).
#[must_use]
pub fn from_climate(climate: &PointClimate, f_sum: f64, c: &SeasonConstants) -> Option<f64> {
    first_day(start(climate.hemisphere(), c), f_sum, |d| {
        let (tn, tx) = climate.normal(d);
        expected(tn, tx, c.base, c.daily_sd)
    })
}

/// Budbreak from this spring's own temperatures, completed from the normals.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SpringBudbreak {
    /// Fractional day from the start of the season's year.
    pub day: f64,
    /// Days before budbreak that have their own temperatures.
    pub own_days: u32,
    /// Days between the first and the last of them that had to be filled from the normals.
    pub gap_days: u32,
    /// Share of the sum that the own temperatures give, 0–1.
    pub share: f64,
    /// Mean difference of the own daily means from the normals, °C.
    pub warmer: f64,
}

/// As [`from_climate`], with the days of `spring` that lie in the season of `year` counted by the single sine.
/// None where the sum is not reached, or no day of `spring` lies between the start and budbreak.
#[must_use]
pub fn from_spring(
    climate: &PointClimate,
    spring: &[Daily],
    year: i32,
    f_sum: f64,
    c: &SeasonConstants,
) -> Option<SpringBudbreak> {
    let begin = start(climate.hemisphere(), c);
    let mut own: Vec<Option<(f64, f64)>> = vec![None; YEAR as usize];
    for daily in spring {
        let i = absolute(daily.date) - YEAR * year - begin;
        if let Ok(i) = usize::try_from(i)
            && i < own.len()
        {
            own[i] = Some((daily.tmin, daily.tmax));
        }
    }
    let of = |d: i32| own[(d - begin) as usize];
    let value = |d: i32| match of(d) {
        Some((tn, tx)) => day(DayCount::SingleSine, tn, tx, c.base),
        None => {
            let (tn, tx) = climate.normal(d);
            expected(tn, tx, c.base, c.daily_sd)
        }
    };
    let b = first_day(begin, f_sum, value)?;
    let before = || (begin..=libm::floor(b) as i32).filter(|&d| d < begin + YEAR);
    let own_days = before().filter(|&d| of(d).is_some()).count() as u32;
    let (first, last) = (
        before().find(|&d| of(d).is_some())?,
        before().rev().find(|&d| of(d).is_some())?,
    );
    let gap_days = (first..=last).filter(|&d| of(d).is_none()).count() as u32;
    let sum: f64 = before().filter(|&d| of(d).is_some()).map(value).sum();
    let warmer: f64 = before()
        .filter_map(|d| of(d).map(|(tn, tx)| (tn + tx) / 2.0 - climate.mean(d)))
        .sum();
    Some(SpringBudbreak {
        day: b,
        own_days,
        gap_days,
        share: (sum / f_sum).clamp(0.0, 1.0),
        warmer: warmer / f64::from(own_days),
    })
}

/// The first day on which the running sum reaches `f_sum`, with the part of that day that was needed.
/// A day's number stands for its start, so a sum reached half-way through day 100 gives 100.5.
fn first_day(begin: i32, f_sum: f64, value: impl Fn(i32) -> f64) -> Option<f64> {
    let mut sum = 0.0;
    for d in begin..begin + YEAR {
        let e = value(d);
        if sum + e >= f_sum {
            let part = if e > 0.0 { (f_sum - sum) / e } else { 0.0 };
            return Some(f64::from(d) + part);
        }
        sum += e;
    }
    None
}

/// Budbreak from a leaf-out that was seen, before any shift: fractional day from the start of year `year`.
#[must_use]
pub fn from_observed(observed: &Observed, year: i32, c: &SeasonConstants) -> f64 {
    let seen = f64::from(absolute(observed.date) - YEAR * year);
    match observed.stage {
        Stage::BudsOpen => seen,
        Stage::LeavesFull => seen - c.leaves_full_after,
        Stage::FirstLeaf => seen + c.first_leaf_before,
    }
}
