//! Days as the interface writes them: `2027-06-12`.

use chrono::{Datelike, NaiveDate};
use serde::Serializer;

/// Writes a day as `2027-06-12`.
#[must_use]
pub fn iso(day: NaiveDate) -> String {
    let mut text = String::with_capacity(10);
    for (mark, value, width) in [
        ("", day.year().unsigned_abs(), 4),
        ("-", day.month(), 2),
        ("-", day.day(), 2),
    ] {
        text.push_str(mark);
        for place in (0..width).rev() {
            text.push(char::from(b'0' + (value / 10_u32.pow(place) % 10) as u8));
        }
    }
    text
}

/// A day in the interface.
///
/// # Errors
/// Those of the serializer.
pub fn day<S: Serializer>(day: &NaiveDate, serializer: S) -> Result<S::Ok, S::Error> {
    serializer.serialize_str(&iso(*day))
}

/// A day that may be missing.
///
/// # Errors
/// Those of the serializer.
pub fn maybe_day<S: Serializer>(day: &Option<NaiveDate>, serializer: S) -> Result<S::Ok, S::Error> {
    match day {
        Some(day) => serializer.serialize_str(&iso(*day)),
        None => serializer.serialize_none(),
    }
}
