//! The visits as a calendar file (RFC 5545): one all-day event a visit, no alarm, no place.

use crate::words::message::in_use;
use calc::answer::Answer;
use calc::terms::day::iso;
use chrono::{Days, NaiveDate};

/// The domain of the events' names: fixed, so that a second export replaces the first and doubles nothing.
pub(crate) const DOMAIN: &str = "slipbark.invalid";
/// The longest line, in octets, its end not counted (RFC 5545, 3.1).
const LONGEST: usize = 75;

/// The calendar of an answer's visits. `stamp` is the moment of writing, UTC, as `20270612T080000Z`; `summary` words
/// a visit by its number, `about` names the tree.
#[must_use]
pub fn visits(
    answer: &Answer,
    stamp: &str,
    about: &str,
    summary: &dyn Fn(usize) -> String,
) -> String {
    let mut text = String::new();
    line(&mut text, "BEGIN:VCALENDAR");
    line(&mut text, "VERSION:2.0");
    line(&mut text, "PRODID:-//Slipbark//Visits//EN");
    line(&mut text, "CALSCALE:GREGORIAN");
    let key = key(answer);
    for (at, visit) in answer.visits.iter().enumerate() {
        line(&mut text, "BEGIN:VEVENT");
        line(
            &mut text,
            &cat!("UID:", &key, "-", number(at + 1), "@", DOMAIN),
        );
        line(&mut text, &cat!("DTSTAMP:", stamp));
        line(&mut text, &cat!("DTSTART;VALUE=DATE:", compact(visit.from)));
        // The end is the day after the last one: it is not part of the event (3.6.1).
        let end = visit.to.checked_add_days(Days::new(1)).unwrap_or(visit.to);
        line(&mut text, &cat!("DTEND;VALUE=DATE:", compact(end)));
        let language = match in_use().language() {
            "en" => String::new(),
            other => cat!(";LANGUAGE=", other),
        };
        let said = [("SUMMARY", about), ("DESCRIPTION", &summary(at))];
        for (name, words) in said {
            line(&mut text, &cat!(name, &language, ":", escaped(words)));
        }
        line(&mut text, "TRANSP:TRANSPARENT");
        line(&mut text, "CATEGORIES:Slipbark");
        line(&mut text, "END:VEVENT");
    }
    line(&mut text, "END:VCALENDAR");
    text
}

/// The same for the same tree and day, whatever else changed: FNV-1a over species, sizes and day.
fn key(answer: &Answer) -> String {
    let mut hash: u64 = 0xcbf2_9ce4_8422_2325;
    let mut take = |bytes: &[u8]| {
        for byte in bytes {
            hash = (hash ^ u64::from(*byte)).wrapping_mul(0x0100_0000_01b3);
        }
    };
    take(answer.species.scientific.as_bytes());
    for stem in &answer.stems {
        take(&stem.dbh_mm.to_le_bytes());
    }
    take(answer.advised_day.map(iso).unwrap_or_default().as_bytes());
    let digit = |at: u32| char::from(b"0123456789abcdef"[(hash >> (4 * at)) as usize & 15]);
    (0..16).map(digit).collect()
}

pub(crate) fn compact(day: NaiveDate) -> String {
    iso(day).chars().filter(|c| *c != '-').collect()
}

fn number(value: usize) -> String {
    calc::terms::small::decimals::fixed(value as f64, 0)
}

/// Backslash, semicolon, comma and line ends carry meaning in a text value (3.3.11).
pub(crate) fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '\\' | ';' | ',' => {
                out.push('\\');
                out.push(c);
            }
            '\n' => out.push_str("\\n"),
            '\r' => {}
            c => out.push(c),
        }
    }
    out
}

/// A content line, folded at 75 octets without parting a character, ended as the standard says.
pub(crate) fn line(text: &mut String, content: &str) {
    let mut used = 0;
    for c in content.chars() {
        if used + c.len_utf8() > LONGEST {
            text.push_str("\r\n ");
            used = 1;
        }
        text.push(c);
        used += c.len_utf8();
    }
    text.push_str("\r\n");
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_long_line_is_folded_at_75_octets_and_no_character_is_parted() {
        let mut text = String::new();
        line(&mut text, &"ñ".repeat(60));
        for part in text.trim_end().split("\r\n") {
            assert!(part.len() <= LONGEST, "{}", part.len());
        }
        let joined: String = text.trim_end().split("\r\n ").collect();
        assert_eq!(joined, "ñ".repeat(60));
    }

    #[test]
    fn what_carries_meaning_is_escaped() {
        assert_eq!(escaped("a, b; c\\d\ne"), "a\\, b\\; c\\\\d\\ne");
    }
}
