//! Days in cells of a planned date.

use crate::reading::DayOrder;
use chrono::{Days, NaiveDate};

/// Days that a spreadsheet may have counted: from 1982 to 2064.
const COUNTED: std::ops::RangeInclusive<u32> = 30_000..=60_000;

/// The day of a number as spreadsheets count them, 1 on 31 December 1899 (for every day from March 1900 on); a time behind
/// it is cut off.
#[must_use]
pub(crate) fn counted(cell: &str) -> Option<String> {
    let (whole, time) = cell.trim().split_once('.').unwrap_or((cell.trim(), ""));
    let digits = |text: &str| text.bytes().all(|c| c.is_ascii_digit());
    if whole.len() != 5 || !digits(whole) || !digits(time) {
        return None;
    }
    let days: u32 = whole.parse().ok()?;
    let first = NaiveDate::from_ymd_opt(1899, 12, 30)?;
    let day = first.checked_add_days(Days::new(u64::from(days)))?;
    COUNTED.contains(&days).then(|| calc::terms::day::iso(day))
}

fn number(text: &str) -> Option<u32> {
    let digits = !text.is_empty() && text.len() <= 4 && text.bytes().all(|c| c.is_ascii_digit());
    digits.then(|| {
        text.bytes()
            .fold(0, |sum, digit| sum * 10 + u32::from(digit - b'0'))
    })
}

/// The parts of `17/5/2027` or `17.5.2027`.
fn parts(cell: &str) -> Option<[u32; 3]> {
    let day = cell.split_whitespace().next()?;
    let parts: Vec<&str> = day.split(['/', '.']).collect();
    let [a, b, c] = parts.as_slice() else {
        return None;
    };
    let year = number(c)?;
    let year = if c.len() == 2 { 2000 + year } else { year };
    Some([number(a)?, number(b)?, year])
}

/// The two numbers in front of the year.
#[must_use]
pub(crate) fn slashed(cell: &str) -> Option<(u32, u32)> {
    parts(cell.trim()).map(|[a, b, _]| (a, b))
}

/// The order of `17/5/2027`, where one of the two numbers is no month.
#[must_use]
pub(crate) fn order_of(cell: &str) -> Option<DayOrder> {
    match slashed(cell)? {
        (a, b) if a > 12 && b <= 12 => Some(DayOrder::Day),
        (a, b) if b > 12 && a <= 12 => Some(DayOrder::Month),
        _ => None,
    }
}

/// The year of a cell, four digits anywhere.
#[must_use]
pub(crate) fn year_of(cell: &str) -> Option<String> {
    if let Some([_, _, year]) = parts(cell.trim()) {
        return Some(year.to_string());
    }
    let digits = cell.split(|c: char| !c.is_ascii_digit());
    digits
        .filter(|part| part.len() == 4 && (part.starts_with("19") || part.starts_with("20")))
        .map(str::to_owned)
        .next()
}

/// A day as the reader of a question takes it: slashes turned round, a time cut off, a counted one written out where its
/// column has such days. Anything else as typed.
#[must_use]
pub(crate) fn iso(cell: &str, order: Option<DayOrder>, is_counted: bool) -> String {
    let cell = cell.trim();
    if let Some(day) = counted(cell).filter(|_| is_counted) {
        return day;
    }
    if let (Some([a, b, year]), Some(order)) = (parts(cell), order) {
        let (day, month) = match order {
            DayOrder::Day => (a, b),
            DayOrder::Month => (b, a),
        };
        return format!("{year}-{month:02}-{day:02}");
    }
    let front = cell.split(['T', ' ']).next().unwrap_or(cell);
    if front.len() == 10 && front.len() < cell.len() {
        return front.to_owned();
    }
    cell.to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn days_that_a_spreadsheet_counted_are_written_out() {
        // By Python's datetime, from 30 December 1899 on.
        for (cell, day) in [
            ("45413", Some("2024-05-01")),
            ("45413.33", Some("2024-05-01")),
            ("46539", Some("2027-06-01")),
            ("36526", Some("2000-01-01")),
            ("29999", None),
            ("60001", None),
            ("4541", None),
            ("45413a", None),
        ] {
            assert_eq!(counted(cell).as_deref(), day, "{cell}");
        }
        assert_eq!(iso("46539", None, true), "2027-06-01");
        assert_eq!(iso("46539", None, false), "46539");
    }

    #[test]
    fn days_are_turned_round_where_their_order_is_known() {
        assert_eq!(iso("17/5/2027", Some(DayOrder::Day), false), "2027-05-17");
        assert_eq!(iso("5/17/27", Some(DayOrder::Month), false), "2027-05-17");
        assert_eq!(iso("5/17/27", None, false), "5/17/27");
        assert_eq!(iso("2027-05-17T08:00", None, false), "2027-05-17");
        assert_eq!(year_of("spring 2009").as_deref(), Some("2009"));
        assert_eq!(slashed("3/4/19 09:20"), Some((3, 4)));
    }
}
