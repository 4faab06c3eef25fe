//! Parts of the year that are told for the north of the world: in the south they lie half a year on.

use crate::terms::constants::constants;
use crate::terms::place::Hemisphere;

/// A month as if it were in the north: half a year is turned over in the south.
#[must_use]
pub const fn northern(month: u32, hemisphere: Hemisphere) -> u32 {
    match hemisphere {
        Hemisphere::North => month,
        Hemisphere::South => (month + 5) % 12 + 1,
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
    pub struct Stretch {
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

impl Stretch {
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
        let stretch = Stretch {
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
