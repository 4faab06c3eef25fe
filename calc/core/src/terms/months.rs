//! Parts of the year that are told for the north of the world: in the south they lie half a year on.

use crate::terms::constants::constants;
use crate::terms::place::Hemisphere;
use chrono::{Datelike, NaiveDate};

/// A month as if it were in the north: half a year is turned over in the south.
#[must_use]
pub const fn northern(month: u32, hemisphere: Hemisphere) -> u32 {
    match hemisphere {
        Hemisphere::North => month,
        Hemisphere::South => (month + 5) % 12 + 1,
    }
}

/// Months by which the south is behind: a month of the north and these make the month of the south.
const HALF_YEAR: u32 = 6;

/// Months by which a half of the world is behind the north.
#[must_use]
pub const fn behind(hemisphere: Hemisphere) -> u32 {
    match hemisphere {
        Hemisphere::North => 0,
        Hemisphere::South => HALF_YEAR,
    }
}

/// The northern year of a day: the southern season that runs over the new year belongs to the year it begins in.
#[must_use]
pub fn northern_year(day: NaiveDate, hemisphere: Hemisphere) -> i32 {
    day.year() - i32::from(day.month() <= behind(hemisphere))
}

/// First day of a northern month, half a year on in the south (so the southern season runs into the next year).
#[must_use]
pub fn first_day(year: i32, month: u32, hemisphere: Hemisphere) -> NaiveDate {
    let (year, month) = turned(year, month, hemisphere);
    NaiveDate::from_ymd_opt(year, month, 1).unwrap_or_default()
}

/// Its last day.
#[must_use]
pub fn last_day(year: i32, month: u32, hemisphere: Hemisphere) -> NaiveDate {
    let (year, month) = turned(year, month, hemisphere);
    let (next_year, next) = if month == 12 {
        (year + 1, 1)
    } else {
        (year, month + 1)
    };
    NaiveDate::from_ymd_opt(next_year, next, 1)
        .and_then(|day| day.pred_opt())
        .unwrap_or_default()
}

fn turned(year: i32, month: u32, hemisphere: Hemisphere) -> (i32, u32) {
    let month = month + behind(hemisphere);
    if month > 12 {
        (year + 1, month - 12)
    } else {
        (year, month)
    }
}

constants! {
    /// Whole months of the north, both counted.
    pub struct Months {
        /// The first, 1 to 12.
        pub from: f64,
        /// The last; before the first where they run over the new year.
        pub to: f64,
    }
}

impl Months {
    /// All of them: what is not known is taken to be always.
    pub const ALL: Self = Self {
        from: 1.0,
        to: 12.0,
    };

    /// One of them.
    #[must_use]
    pub const fn one(month: f64) -> Self {
        Self {
            from: month,
            to: month,
        }
    }

    /// Whether a month of a hemisphere is one of them.
    #[must_use]
    pub fn hold(&self, month: u32, hemisphere: Hemisphere) -> bool {
        let month = f64::from(northern(month, hemisphere));
        if self.from <= self.to {
            self.from <= month && month <= self.to
        } else {
            month >= self.from || month <= self.to
        }
    }
}

constants! {
    /// A part of a year of the north, both days counted.
    pub struct YearStretch {
        /// Month of the first day, 1 to 12.
        pub from_month: f64,
        /// The first day of that month.
        pub from_day: f64,
        /// Month of the last day, not before that of the first.
        pub to_month: f64,
        /// The last day of that month.
        pub to_day: f64,
    }
}

impl YearStretch {
    /// Whether a month and day of a hemisphere lie in it.
    #[must_use]
    pub fn holds(&self, month: u32, day: u32, hemisphere: Hemisphere) -> bool {
        let at = (f64::from(northern(month, hemisphere)), f64::from(day));
        (self.from_month, self.from_day) <= at && at <= (self.to_month, self.to_day)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_south_is_half_a_year_on() {
        let turned: Vec<u32> = (1..=12).map(|m| northern(m, Hemisphere::South)).collect();
        assert_eq!(turned, [7, 8, 9, 10, 11, 12, 1, 2, 3, 4, 5, 6]);
        let spring = Months { from: 3.0, to: 4.0 };
        assert!(spring.hold(3, Hemisphere::North) && !spring.hold(5, Hemisphere::North));
        assert!(spring.hold(10, Hemisphere::South) && !spring.hold(3, Hemisphere::South));
    }

    #[test]
    fn a_southern_month_of_the_second_half_lies_in_the_next_year() {
        let day = |year, month, day| NaiveDate::from_ymd_opt(year, month, day).expect("a day");
        assert_eq!(first_day(2027, 9, Hemisphere::South), day(2028, 3, 1));
        assert_eq!(last_day(2027, 8, Hemisphere::South), day(2028, 2, 29));
        assert_eq!(last_day(2027, 6, Hemisphere::South), day(2027, 12, 31));
        assert_eq!(last_day(2027, 2, Hemisphere::North), day(2027, 2, 28));
        assert_eq!(northern_year(day(2028, 6, 30), Hemisphere::South), 2027);
        assert_eq!(northern_year(day(2028, 7, 1), Hemisphere::South), 2028);
        assert_eq!(northern_year(day(2028, 1, 1), Hemisphere::North), 2028);
    }

    #[test]
    fn months_run_over_the_new_year() {
        let winter = Months {
            from: 11.0,
            to: 2.0,
        };
        let north: Vec<u32> = (1..=12)
            .filter(|m| winter.hold(*m, Hemisphere::North))
            .collect();
        assert_eq!(north, [1, 2, 11, 12]);
        assert!(winter.hold(6, Hemisphere::South) && !winter.hold(1, Hemisphere::South));
    }

    #[test]
    fn a_stretch_counts_its_first_and_last_day() {
        let stretch = YearStretch {
            from_month: 7.0,
            from_day: 15.0,
            to_month: 10.0,
            to_day: 15.0,
        };
        let north = |month, day| stretch.holds(month, day, Hemisphere::North);
        assert!(north(7, 15) && north(10, 15) && north(8, 31));
        assert!(!north(7, 14) && !north(10, 16));
        assert!(
            stretch.holds(1, 15, Hemisphere::South) && !stretch.holds(1, 14, Hemisphere::South)
        );
        assert!((1..=12).all(|month| Months::ALL.hold(month, Hemisphere::South)));
    }
}
