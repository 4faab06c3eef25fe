//! Days of a 365-day year: 29 February counts as the 28th, so that a date means the same season every year.

use crate::terms::place::Hemisphere;
use chrono::{Datelike, NaiveDate};

/// Days in the engine's year.
pub const YEAR: i32 = 365;

/// Days before each month in a year without 29 February.
const BEFORE: [i32; 12] = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334];

/// The year in which the season of a date began: the calendar year in the north; in the south the season runs from
/// July to June and is named by the year of its spring.
#[must_use]
pub fn season_year(date: NaiveDate, hemisphere: Hemisphere) -> i32 {
    match hemisphere {
        Hemisphere::South if date.month() < 7 => date.year() - 1,
        _ => date.year(),
    }
}

/// A day of the 365-day year, 1 (1 January) to 365 (31 December).
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Doy(u16);

impl Doy {
    /// The day of the year of a date. 29 February gives 59, as 28 February does.
    #[must_use]
    pub fn of(date: NaiveDate) -> Self {
        let behind = date.leap_year() && date.ordinal() as i32 > BEFORE[2];
        Self(date.ordinal() as u16 - u16::from(behind))
    }

    /// From month (1–12) and day of month. Out of range values are taken to the nearest that exists.
    #[must_use]
    pub fn from_month_day(month: u32, day: u32) -> Self {
        let m = month.clamp(1, 12) as usize - 1;
        let length = if m == 11 {
            31
        } else {
            BEFORE[m + 1] - BEFORE[m]
        };
        // Not `clamp`: its check of the bounds brings the formatter into the browser.
        let day = (day as i32).min(length);
        Self((BEFORE[m] + if day < 1 { 1 } else { day }) as u16)
    }

    /// Any whole day count, wrapped into the year: 0 is 31 December, 366 is 1 January.
    #[must_use]
    pub fn wrap(day: i32) -> Self {
        Self(((day - 1).rem_euclid(YEAR) + 1) as u16)
    }

    /// 1 to 365.
    #[must_use]
    pub fn number(self) -> i32 {
        i32::from(self.0)
    }

    /// Month (1–12) and day of month.
    #[must_use]
    pub fn month_day(self) -> (u32, u32) {
        let n = self.number();
        let m = BEFORE.iter().rposition(|&b| b < n).unwrap_or(0);
        (m as u32 + 1, (n - BEFORE[m]) as u32)
    }

    /// The date of this day in a year. Day 59 is 28 February in leap years too.
    #[must_use]
    pub fn in_year(self, year: i32) -> NaiveDate {
        let (m, d) = self.month_day();
        NaiveDate::from_ymd_opt(year, m, d).unwrap_or_default()
    }
}

/// Days since the start of year 0 in years of 365 days: what windows that cross the new year are counted in.
#[must_use]
pub fn absolute(date: NaiveDate) -> i32 {
    YEAR * date.year() + Doy::of(date).number()
}

/// The date of such a day count.
#[must_use]
pub fn date(absolute: i32) -> NaiveDate {
    Doy::wrap(absolute).in_year((absolute - 1).div_euclid(YEAR))
}

/// The date of a fractional day count, to the nearest day.
#[must_use]
pub fn nearest_date(absolute: f64) -> NaiveDate {
    date(nearest(absolute))
}

/// The nearest whole day, halves up.
#[must_use]
pub fn nearest(day: f64) -> i32 {
    libm::floor(day + 0.5) as i32
}
