//! What an answer says, whoever asks: words and no codes, lengths no finer than any tape, one of a thing in the singular.
//! No print says so: these are the promises of the interface.

use crate::make::{Maker, local, plain};
use crate::support::{as_json, reference, tree, with};
use serde_json::{Value, json};

/// Calls with the path and value of everything in an answer.
fn each(value: &Value, path: &str, call: &mut dyn FnMut(&str, &Value)) {
    call(path, value);
    match value {
        Value::Object(fields) => {
            for (name, field) in fields {
                each(field, &format!("{path}.{name}"), call);
            }
        }
        Value::Array(items) => items.iter().for_each(|item| each(item, path, call)),
        _ => {}
    }
}

/// Millimetres in the unit of a key; none for what is no length. Minutes and square millimetres are none.
fn unit_mm(key: &str) -> Option<f64> {
    match key.rsplit('_').next() {
        Some("mm") => Some(1.0),
        Some("m") => Some(1000.0),
        _ => None,
    }
}

fn is_rounded(length: f64, unit: f64) -> bool {
    let tenths = length * unit * 10.0;
    (tenths - tenths.round()).abs() < 1e-6
}

/// A word that stands for a row, a column or a model: `S51`, `per_acre`, `WYKOFF`.
fn is_code(word: &str) -> bool {
    let letters = word.trim_end_matches(|c: char| c.is_ascii_digit());
    let row = letters.len() < word.len()
        && !letters.is_empty()
        && letters.chars().all(|c| c.is_ascii_uppercase())
        && reference()
            .sources
            .iter()
            .any(|source| source.id.text() == word);
    row || word.contains('_') || ["WYKOFF", "QUAD", "UTD", "FVS"].contains(&word)
}

#[test]
fn lengths_are_to_a_tenth_of_a_millimetre_and_places_of_sources_are_words() {
    let mut make = Maker::new(73);
    let (mut lengths, mut places) = (0, 0);
    for turn in 0..250 {
        let (typed, question) = make.aided();
        let answer = if turn % 10 == 0 {
            calc::answer::answer(reference(), &question, &local(&question))
        } else {
            plain(&question)
        };
        each(&as_json(&answer), "", &mut |path, value| {
            let key = path.rsplit('.').next().unwrap_or("");
            let in_crown = path.starts_with(".crown_m.").then_some(1000.0);
            if let (Some(unit), Some(length)) = (unit_mm(key).or(in_crown), value.as_f64()) {
                lengths += 1;
                assert!(is_rounded(length, unit), "{path} {length}: {typed}");
            }
            if key == "place" {
                places += 1;
                let place = value.as_str().unwrap_or("");
                let mut words = place.split(|c: char| !(c.is_ascii_alphanumeric() || c == '_'));
                assert_eq!(words.find(|word| is_code(word)), None, "{place}: {typed}");
            }
        });
    }
    assert!(
        lengths > 2000 && places > 2000,
        "{lengths} lengths, {places} places"
    );
    assert!(is_code("per_acre") && is_code("S51") && !is_code("2021"));
    assert!(!is_rounded(12.345_678, 1000.0) && is_rounded(12.3457, 1000.0));
}

/// A text of an answer as its reader sees it.
fn text(typed: &Value) -> String {
    let question = crate::support::question(typed);
    let answer = plain(&question);
    calc_view::text::answer(reference(), &question, &answer, None)
}

/// Where a text counts one of something in the plural.
fn one_of_many(text: &str) -> Option<&str> {
    const MANY: [&str; 9] = [
        "minutes", "hours", "days", "weeks", "months", "years", "visits", "trees", "stems",
    ];
    let mut found = MANY.iter().filter_map(|many| {
        let at = text.find(&format!(" 1 {many}"))?;
        // The end of a range is no count: "½ to 1 hours".
        (!text[..at].ends_with(" to")).then(|| &text[at..text.len().min(at + 20)])
    });
    found.next()
}

#[test]
fn one_minute_is_no_minutes() {
    let small = with(
        tree("autumn olive", "1 in"),
        json!({
            "walk": "1", "timed": { "trees": ["1 in", "1 in"], "minutes": "1" },
            "date": "2027-06-05", "line_within_reach": "no"
        }),
    );
    let said = text(&small);
    assert!(said.contains("1 minute "), "{said}");
    assert_eq!(one_of_many(&said), None, "{said}");
    let mut make = Maker::new(74);
    for _ in 0..250 {
        let (typed, _) = make.aided();
        let said = text(&typed);
        assert_eq!(one_of_many(&said), None, "{typed}");
    }
    assert!(one_of_many("about 1 minutes").is_some());
}
