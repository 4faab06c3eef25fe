//! Days in cells of a planned date.

use crate::reading::DayOrder;

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

/// A day as the reader of a question takes it: slashes turned round, a time cut off. Anything else as typed.
#[must_use]
pub(crate) fn iso(cell: &str, order: Option<DayOrder>) -> String {
    let cell = cell.trim();
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
    fn days_are_turned_round_where_their_order_is_known() {
        assert_eq!(iso("17/5/2027", Some(DayOrder::Day)), "2027-05-17");
        assert_eq!(iso("5/17/27", Some(DayOrder::Month)), "2027-05-17");
        assert_eq!(iso("5/17/27", None), "5/17/27");
        assert_eq!(iso("2027-05-17T08:00", None), "2027-05-17");
        assert_eq!(year_of("spring 2009").as_deref(), Some("2009"));
        assert_eq!(slashed("3/4/19 09:20"), Some((3, 4)));
    }
}
