//! Days of the year against Python's datetime and calendar (vectors/timing/make.py).

use crate::support::{day, number, rows};
use calc::timing::doy::{Doy, absolute, date};
use calc::timing::verdict::phi;

#[test]
fn days_of_the_year_agree_with_a_second_calendar_and_29_february_counts_as_the_28th() {
    for r in rows("tests/published/vectors/timing/calendar.csv") {
        let part = |i: usize| -> u32 {
            r["date"]
                .split('-')
                .nth(i)
                .expect("a part")
                .parse()
                .expect("a number")
        };
        let (y, m, d) = (part(0) as i32, part(1), part(2));
        let ours = Doy::of(day(y, m, d));
        assert_eq!(
            f64::from(ours.number()),
            number(&r, "day_365"),
            "{}",
            r["date"]
        );
        let back = if (m, d) == (2, 29) {
            day(y, 2, 28)
        } else {
            day(y, m, d)
        };
        assert_eq!(ours.in_year(y), back, "{}", r["date"]);
        assert_eq!(date(absolute(day(y, m, d))), back, "{}", r["date"]);
    }
}

#[test]
fn a_day_count_is_wrapped_into_the_year() {
    for (count, want) in [
        (0, 365),
        (1, 1),
        (365, 365),
        (366, 1),
        (-364, 1),
        (730, 365),
    ] {
        assert_eq!(Doy::wrap(count).number(), want);
    }
    assert_eq!(date(absolute(day(2027, 12, 31)) + 1), day(2028, 1, 1));
}

#[test]
fn the_normal_distribution_agrees_with_scipy() {
    for r in rows("tests/published/vectors/timing/normal.csv") {
        let (got, want) = (phi(number(&r, "z")), number(&r, "cdf"));
        assert!(
            (got - want).abs() <= 1e-12 * want.max(1e-3),
            "{got}, not {want}"
        );
    }
}
