//! Days as typed: `2027-06-12`, also with the month by name; every other form would be a guess.

use super::Code;
use chrono::NaiveDate;

/// The years that a question may speak of. Outside them a date is a slip of the pen.
const YEARS: core::ops::RangeInclusive<i32> = 1990..=2100;

/// English and Spanish month names; the first three letters are enough.
const MONTHS: [(&str, &str); 12] = [
    ("january", "enero"),
    ("february", "febrero"),
    ("march", "marzo"),
    ("april", "abril"),
    ("may", "mayo"),
    ("june", "junio"),
    ("july", "julio"),
    ("august", "agosto"),
    ("september", "septiembre"),
    ("october", "octubre"),
    ("november", "noviembre"),
    ("december", "diciembre"),
];

/// Reads year, month and day, with dashes between them.
///
/// # Errors
/// The [`Code`] names the part that is missing or impossible.
pub fn read_day(text: &str) -> Result<NaiveDate, Code> {
    let mut parts = text.trim().split('-').map(str::trim);
    let year = parts.next().unwrap_or("");
    let month = parts.next().unwrap_or("");
    let day = parts.next().unwrap_or("");
    if parts.next().is_some() {
        return Err(Code::NoSuchDay);
    }
    let year = whole(year, 4).ok_or(Code::YearMissing)?;
    let month = month_number(month).ok_or(Code::MonthMissing)?;
    let day = whole(day, 2).ok_or(Code::DayMissing)?;
    if !YEARS.contains(&(year as i32)) {
        return Err(Code::YearOutOfRange);
    }
    NaiveDate::from_ymd_opt(year as i32, month, day).ok_or(Code::NoSuchDay)
}

fn whole(text: &str, longest: usize) -> Option<u32> {
    let fits = !text.is_empty() && text.len() <= longest;
    (fits && text.bytes().all(|c| c.is_ascii_digit())).then(|| {
        text.bytes()
            .fold(0, |sum, digit| sum * 10 + u32::from(digit - b'0'))
    })
}

fn month_number(text: &str) -> Option<u32> {
    if let Some(number) = whole(text, 2) {
        return (1..=12).contains(&number).then_some(number);
    }
    let word: String = text
        .trim_end_matches('.')
        .chars()
        .map(|c| c.to_ascii_lowercase())
        .collect();
    if word.len() < 3 {
        return None;
    }
    let at = MONTHS
        .iter()
        .position(|(en, es)| en.starts_with(&word) || es.starts_with(&word))?;
    Some(at as u32 + 1)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn months_may_be_named() {
        let day = NaiveDate::from_ymd_opt(2027, 6, 12);
        for text in [
            "2027-06-12",
            "2027-6-12",
            "2027-jun-12",
            "2027-junio-12",
            "2027 - June - 12",
        ] {
            assert_eq!(read_day(text).ok(), day, "{text}");
        }
    }

    #[test]
    fn an_impossible_day_names_the_part() {
        assert_eq!(read_day("2027-02-29"), Err(Code::NoSuchDay));
        assert!(read_day("2028-02-29").is_ok());
        assert_eq!(read_day("2027-06"), Err(Code::DayMissing));
        assert_eq!(read_day("2027--12"), Err(Code::MonthMissing));
        assert_eq!(read_day("2027-13-12"), Err(Code::MonthMissing));
        assert_eq!(read_day(""), Err(Code::YearMissing));
        assert_eq!(read_day("0027-06-12"), Err(Code::YearOutOfRange));
        assert_eq!(read_day("6/12/2027"), Err(Code::YearMissing));
    }
}
