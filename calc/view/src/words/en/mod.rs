//! English.

mod after;
mod aids;
mod beside;
mod family;
mod kept;
mod labels;
mod made;
mod method;
mod problem;
mod reach;
mod region;
mod season;
mod settings;
mod steps;
mod values;
mod verdict;
mod why;
mod working;

pub use after::*;
pub use aids::*;
pub use family::*;
pub use kept::*;
pub use labels::*;
pub use made::*;
pub use method::*;
pub use problem::*;
pub use reach::*;
pub use region::{region, regions};
pub use season::*;
pub use settings::*;
pub use steps::*;
pub use values::*;
pub use verdict::*;
pub use working::*;

use calc::reference::Reference;

/// Months in full.
pub const MONTHS: [&str; 12] = [
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
];
/// Months on a tape.
pub const MONTHS_SHORT: [&str; 12] = [
    "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec",
];
/// Months where there is hardly any room.
pub const MONTHS_INITIAL: [&str; 12] = ["J", "F", "M", "A", "M", "J", "J", "A", "S", "O", "N", "D"];
/// Between the ends of a range.
pub const TO: &str = " to ";

/// A range from its ends.
#[must_use]
pub fn to(low: String, high: String) -> String {
    cat!(low, " to ", high)
}

/// A unit's sign in full, for those who listen; anything else as it is.
#[must_use]
pub fn spoken_unit(word: &str) -> &str {
    crate::rows::named(UNITS, word).unwrap_or(word)
}
const UNITS: &str = concat!(
    "in=inches|",
    "ft=feet|",
    "mm=millimetres|",
    "cm=centimetres|",
    "m=metres",
);

/// The first letter made large: a clause becomes the start of a sentence.
#[must_use]
pub fn sentence(text: &str) -> String {
    let mut chars = text.chars();
    match chars.next() {
        Some(first) => cat_up(first, chars.as_str()),
        None => String::new(),
    }
}

fn cat_up(first: char, rest: &str) -> String {
    let mut text = String::with_capacity(rest.len() + 4);
    text.push(first.to_ascii_uppercase());
    text.push_str(rest);
    text
}

/// Words in a row: `a`, `a and b`, `a, b and c`.
#[must_use]
pub fn row(words: &[impl AsRef<str>]) -> String {
    joined(words, " and ")
}

/// Words in a row that leave a choice: `a or b`.
#[must_use]
pub fn either(words: &[impl AsRef<str>]) -> String {
    joined(words, " or ")
}

fn joined(words: &[impl AsRef<str>], last: &str) -> String {
    let mut text = String::new();
    for (at, word) in words.iter().enumerate() {
        if at > 0 {
            text.push_str(if at + 1 == words.len() { last } else { ", " });
        }
        text.push_str(word.as_ref());
    }
    text
}

/// The one polite sentence for a status region, at most 140 characters.
#[must_use]
pub fn status(
    kind: crate::kind::Kind,
    reference: &'static Reference,
    question: &calc::question::Question,
    answer: &calc::answer::Answer,
) -> String {
    let say = Say {
        reference,
        question,
        answer,
    };
    let whole = say.first(kind).unwrap_or_else(|| say.verdict());
    if whole.chars().count() <= 140 {
        return whole;
    }
    cat!(say.frame(), " The reason stands in the answer.")
}

#[cfg(test)]
mod tests {
    /// Every file of the catalogue.
    const FILES: [&str; 18] = [
        include_str!("after.rs"),
        include_str!("aids.rs"),
        include_str!("beside.rs"),
        include_str!("family.rs"),
        include_str!("kept.rs"),
        include_str!("made.rs"),
        include_str!("labels.rs"),
        include_str!("method.rs"),
        include_str!("problem.rs"),
        include_str!("reach.rs"),
        include_str!("region.rs"),
        include_str!("season.rs"),
        include_str!("settings.rs"),
        include_str!("steps.rs"),
        include_str!("values.rs"),
        include_str!("verdict.rs"),
        include_str!("why.rs"),
        include_str!("working.rs"),
    ];

    /// What stands between quotes, line by line, comments and tests left out.
    fn wordings() -> Vec<&'static str> {
        FILES
            .iter()
            .flat_map(|file| file.split("#[cfg(test)]").next().unwrap_or("").lines())
            .filter(|line| !line.trim_start().starts_with("//"))
            .flat_map(|line| line.split('"').skip(1).step_by(2))
            .collect()
    }

    #[test]
    fn no_wording_promises_scolds_or_begs() {
        let banned = [
            "safe",
            "safely",
            "ok",
            "okay",
            "approved",
            "guaranteed",
            "guarantee",
            "invalid",
            "valid",
            "please",
            "sorry",
            "oops",
            "forbidden",
            "invader",
            "alien",
            "war",
        ];
        let wordings = wordings();
        assert!(wordings.len() > 300, "the catalogue was not read");
        for text in wordings {
            for word in text.split(|c: char| !c.is_alphanumeric()) {
                assert!(
                    !banned.contains(&word.to_lowercase().as_str()),
                    "{word:?} in {text:?}"
                );
            }
            assert!(
                !text.contains("may vary") && !text.contains("approx"),
                "{text:?}"
            );
        }
    }

    #[test]
    fn words_stand_in_a_row() {
        assert_eq!(super::row(&["a"]), "a");
        assert_eq!(super::row(&["a", "b", "c"]), "a, b and c");
        assert_eq!(super::either(&["a", "b"]), "a or b");
        assert_eq!(super::sentence("its bark"), "Its bark");
    }
}
