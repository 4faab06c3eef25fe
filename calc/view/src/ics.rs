//! The visits as a calendar file (RFC 5545): one all-day event a visit, no alarm, no place.

use crate::words::message::in_use;
use calc::answer::Answer;
use calc::terms::day::iso;
use calc::terms::fingerprint::fnv1a;
use chrono::{Days, NaiveDate};

/// The domain of the events' names: fixed, so that a second export replaces the first and doubles nothing.
const DOMAIN: &str = "slipbark.invalid";
/// The longest line, in octets, its end not counted (RFC 5545, 3.1).
const LONGEST: usize = 75;

/// An all-day event, in the language of its words. It has no alarm and no place.
pub(crate) struct Event<'a> {
    /// Its name, without the domain: fixed, so that a second export replaces the first.
    pub(crate) key: &'a str,
    /// The moment of writing, UTC, as `20270612T080000Z`.
    pub(crate) stamp: &'a str,
    /// First and last day.
    pub(crate) days: [NaiveDate; 2],
    /// Whether somebody agreed to it.
    pub(crate) agreed: bool,
    pub(crate) summary: &'a str,
    pub(crate) description: &'a str,
}

/// A calendar of events; `of` says in its product line what they are.
pub(crate) fn calendar(of: &str, events: impl FnOnce(&mut String)) -> String {
    let mut text = String::new();
    line(&mut text, "BEGIN:VCALENDAR");
    line(&mut text, "VERSION:2.0");
    line(&mut text, &cat!("PRODID:-//Slipbark//", of, "//EN"));
    line(&mut text, "CALSCALE:GREGORIAN");
    events(&mut text);
    line(&mut text, "END:VCALENDAR");
    text
}

impl Event<'_> {
    /// Writes it behind what a calendar holds.
    pub(crate) fn write(&self, text: &mut String) {
        let [from, to] = self.days;
        line(text, "BEGIN:VEVENT");
        line(text, &cat!("UID:", self.key, "@", DOMAIN));
        line(text, &cat!("DTSTAMP:", self.stamp));
        line(text, &cat!("DTSTART;VALUE=DATE:", compact(from)));
        // The end is the day after the last one: it is not part of the event (3.6.1).
        let end = to.checked_add_days(Days::new(1)).unwrap_or(to);
        line(text, &cat!("DTEND;VALUE=DATE:", compact(end)));
        let language = match in_use().language() {
            "en" => String::new(),
            other => cat!(";LANGUAGE=", other),
        };
        for (name, words) in [("SUMMARY", self.summary), ("DESCRIPTION", self.description)] {
            line(text, &cat!(name, &language, ":", escaped(words)));
        }
        if !self.agreed {
            line(text, "STATUS:TENTATIVE");
        }
        line(text, "TRANSP:TRANSPARENT");
        line(text, "CATEGORIES:Slipbark");
        line(text, "END:VEVENT");
    }
}

/// The calendar of an answer's visits. `stamp` is the moment of writing, UTC, as `20270612T080000Z`; `summary` words
/// a visit by its number, `about` names the tree.
#[must_use]
pub fn visits(
    answer: &Answer,
    stamp: &str,
    about: &str,
    summary: &dyn Fn(usize) -> String,
) -> String {
    let key = key(answer);
    calendar("Visits", |text| {
        for (at, visit) in answer.visits.iter().enumerate() {
            let event = Event {
                key: &cat!(&key, "-", number(at + 1)),
                stamp,
                days: [visit.from, visit.to],
                agreed: true,
                summary: about,
                description: &summary(at),
            };
            event.write(text);
        }
    })
}

/// The same for the same tree and day, whatever else changed: of species, sizes and day.
fn key(answer: &Answer) -> String {
    let sizes: Vec<u8> = answer
        .stems
        .iter()
        .flat_map(|stem| stem.dbh_mm.to_le_bytes())
        .collect();
    let day = answer.advised_day.map(iso).unwrap_or_default();
    let hash = fnv1a(&[answer.species.scientific.as_bytes(), &sizes, day.as_bytes()]);
    // The lowest digit first: names that calendars know already stay.
    let digit = |at: u32| char::from(b"0123456789abcdef"[(hash >> (4 * at)) as usize & 15]);
    (0..16).map(digit).collect()
}

fn compact(day: NaiveDate) -> String {
    iso(day).chars().filter(|c| *c != '-').collect()
}

fn number(value: usize) -> String {
    calc::terms::small::decimals::fixed(value as f64, 0)
}

/// Backslash, semicolon, comma and line ends carry meaning in a text value (3.3.11).
fn escaped(text: &str) -> String {
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
fn line(text: &mut String, content: &str) {
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
