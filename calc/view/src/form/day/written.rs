//! The day as it is written in one field: `Today`, `year`, `12 June`, `6/12/2027`, `2027-06-12`.

use crate::words::m;
use calc::question::read_day;
use calc::terms::day::iso;
use chrono::{Datelike as _, NaiveDate};

/// What stands in a sheet for the asker's own day, and for the whole year.
pub(crate) const TODAY: &str = "today";
pub(crate) const YEAR: &str = "year";

/// Words for today and for the whole year, in every language of the page: what was typed before the language was changed
/// is still read.
const TODAYS: [&str; 2] = ["today", "hoy"];
const YEARS: [&str; 2] = ["year", "año"];
/// Words that say nothing beside a day, or beside the year.
const FILLERS: [&str; 10] = [
    "of", "the", "this", "whole", "de", "del", "el", "este", "todo", "º",
];

/// The day that a text says, as a question has it: `2027-06-12`, or `year`; none where nothing is typed. A day without a
/// year is the next one that comes. A text that is no day stays as it is, and the reader of questions says what is wrong.
pub(crate) fn read(text: &str, month_first: bool, today: NaiveDate) -> Option<String> {
    let small = text.trim().to_ascii_lowercase();
    let small = small.trim_end_matches('.');
    if small.is_empty() {
        return None;
    }
    if let [word] = *parts(small)
        && YEARS.contains(&word)
    {
        return Some(YEAR.to_owned());
    }
    let mut day = small;
    for word in TODAYS {
        if let Some(behind) = small.strip_prefix(word)
            && !behind.starts_with(of_word)
        {
            day = behind.trim_start_matches([',', ' ', ':']);
            if day.is_empty() {
                return Some(iso(today));
            }
        }
    }
    let parts = parts(day);
    let Some([year, month, day]) = order(&parts, month_first) else {
        return Some(text.trim().to_owned());
    };
    if year.is_empty() {
        let on = |year: i32| {
            read_day(&[&crate::measure::plain(f64::from(year), 0), month, day].join("-"))
        };
        let this = on(today.year());
        let next = on(today.year() + 1);
        return Some(match (this, next) {
            (Ok(this), _) if this >= today => iso(this),
            (_, Ok(next)) => iso(next),
            _ => [
                &crate::measure::plain(f64::from(today.year()), 0),
                month,
                day,
            ]
            .join("-"),
        });
    }
    let joined = [year, month, day].join("-");
    Some(read_day(&joined).map_or(joined, iso))
}

/// Letters, with all that is beyond ASCII, and digits: the library's own tests of letters bring its tables along.
fn of_word(c: char) -> bool {
    c.is_ascii_alphanumeric() || !c.is_ascii()
}

/// Numbers and words, without what stands between them.
fn parts(text: &str) -> Vec<&str> {
    let mut parts: Vec<&str> = Vec::new();
    for part in text.split(|c: char| !of_word(c)) {
        // `12th`, `1st`: the number alone.
        let digits = part.trim_end_matches(|c: char| of_word(c) && !c.is_ascii_digit());
        let ordinal = !digits.is_empty() && part.len() - digits.len() == 2;
        let part = if ordinal { digits } else { part };
        if !part.is_empty() && !FILLERS.contains(&part) {
            parts.push(part);
        }
    }
    parts
}

/// Year, month and day out of the parts; the year is empty where none was written. None where they are no day.
fn order<'t>(parts: &[&'t str], month_first: bool) -> Option<[&'t str; 3]> {
    let number = |part: &str| part.bytes().all(|c| c.is_ascii_digit());
    let long = |part: &str| number(part) && part.len() > 2;
    let over = |part: &str| super::super::sheet::whole(part).is_some_and(|part| part > 12);
    let (year, rest): (&str, Vec<&str>) = match *parts {
        [a, b] => ("", vec![a, b]),
        [a, b, c] if long(a) => return Some([a, b, c]),
        [a, b, c] => (c, vec![a, b]),
        _ => return None,
    };
    let (a, b) = (rest[0], rest[1]);
    let (month, day) = match (number(a), number(b)) {
        (false, true) => (a, b),
        (true, false) => (b, a),
        // What can't be a month is the day, whichever is written first.
        (true, true) if over(a) != over(b) => {
            if over(a) {
                (b, a)
            } else {
                (a, b)
            }
        }
        (true, true) if month_first => (a, b),
        (true, true) => (b, a),
        (false, false) => return None,
    };
    Some([year, month, day])
}

/// What the field shows for what a sheet has: the day of today with its word, the word for the year, else the text.
pub(crate) fn shown(text: &str, today: Option<NaiveDate>) -> String {
    match (text, today) {
        (TODAY, Some(today)) => m::form_today(crate::measure::day_year(today)),
        (TODAY, None) => m::FORM_TODAY_ALONE.into(),
        (YEAR, _) => m::FORM_YEAR_ALONE.into(),
        (text, _) => text.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::read;
    use chrono::NaiveDate;

    fn said(text: &str, month_first: bool) -> String {
        let today = NaiveDate::from_ymd_opt(2027, 6, 12).unwrap();
        read(text, month_first, today).unwrap_or_default()
    }

    #[test]
    fn today_and_the_year_are_words() {
        for text in [
            "today",
            " Today. ",
            "Hoy",
            "Today, 12 June 2027",
            "hoy, 12 de junio de 2027",
        ] {
            assert_eq!(said(text, true), "2027-06-12", "{text}");
        }
        for text in [
            "year",
            "This year",
            "the whole year",
            "año",
            "El año",
            "Todo el año",
        ] {
            assert_eq!(said(text, true), "year", "{text}");
        }
        assert_eq!(said("", true), "");
    }

    #[test]
    fn a_day_is_read_in_every_usual_order() {
        for text in [
            "20 June 2027",
            "June 20, 2027",
            "jun 20 2027",
            "20th of June 2027",
            "20 de junio de 2027",
            "2027-06-20",
            "2027/6/20",
            "6/20/2027",
            "20.6.2027",
            "today, 20 June 2027",
            "20 June",
        ] {
            assert_eq!(said(text, true), "2027-06-20", "{text}");
        }
        // The first of a month, as Spanish has it.
        for text in ["1.º de julio de 2027", "1º de julio", "1 de julio"] {
            assert_eq!(said(text, false), "2027-07-01", "{text}");
        }
        assert_eq!(said("6/7/2027", true), "2027-06-07");
        assert_eq!(said("6/7/2027", false), "2027-07-06");
    }

    #[test]
    fn a_day_without_a_year_is_the_next_one() {
        assert_eq!(said("1 June", true), "2028-06-01");
        assert_eq!(said("12 June", true), "2027-06-12");
        assert_eq!(said("29 Feb", true), "2028-02-29");
    }

    #[test]
    fn what_is_no_day_stays_for_the_reader_of_questions() {
        assert_eq!(said("31 June 2027", true), "2027-june-31");
        assert_eq!(said("31 June", true), "2027-june-31");
        assert_eq!(said("near", true), "near");
        assert_eq!(said("June 2027", true), "2027-june-2027");
        assert_eq!(said("12 June 27", true), "27-june-12");
    }
}
