//! The reader's day, by their own clock.

use chrono::NaiveDate;

/// Today where the reader is.
pub fn today() -> NaiveDate {
    let now = js_sys::Date::new_0();
    let day = NaiveDate::from_ymd_opt(
        now.get_full_year() as i32,
        now.get_month() + 1,
        now.get_date(),
    );
    day.unwrap_or_default()
}
