//! Small pieces of sentences that all parts share: lists, ranges, counts, months and signs of units.

use crate::measure;

/// Small counts in words.
pub fn small(count: usize) -> String {
    const WORDS: [&str; 13] = [
        "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
        "eleven", "twelve",
    ];
    WORDS
        .get(count)
        .map_or_else(|| measure::number(count as u32), |word| (*word).into())
}

/// Two shares of 100, low to high.
pub fn percents(low: f64, high: f64) -> String {
    to(measure::percent(low), measure::percent(high))
}

/// Axis of minutes.
pub const MIN: &str = "min";
/// Axis of hours.
pub const HOURS: &str = "h";
/// Axis of years.
pub const YEARS: &str = "years";
/// Axis of shares.
pub const IN_100: &str = "in 100";
/// Before a source.
pub const SOURCE: &str = "Source: ";
/// Before several.
pub const SOURCES: &str = "Sources: ";
/// Inch and centimetre scales.
pub const INCH: &str = "in";
/// Centimetres.
pub const CM: &str = "cm";
/// Feet.
pub const FT: &str = "ft";
/// Metres.
pub const M: &str = "m";
/// No value.
pub const NOT_KNOWN: &str = "not known";
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
pub fn to(low: String, high: String) -> String {
    cat!(low, " to ", high)
}

/// A unit's sign in full, for those who listen; anything else as it is.
pub fn spoken_unit(word: &str) -> &str {
    crate::words::named(UNITS, word).unwrap_or(word)
}

const UNITS: &str = concat!(
    "in=inches|",
    "ft=feet|",
    "mm=millimetres|",
    "cm=centimetres|",
    "m=metres",
);

/// The first letter made large: a clause becomes the start of a sentence.
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
pub fn row(words: &[impl AsRef<str>]) -> String {
    joined(words, " and ")
}

/// Words in a row that leave a choice: `a or b`.
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

#[cfg(test)]
mod tests {
    #[test]
    fn words_stand_in_a_row() {
        assert_eq!(super::row(&["a"]), "a");
        assert_eq!(super::row(&["a", "b", "c"]), "a, b and c");
        assert_eq!(super::either(&["a", "b"]), "a or b");
        assert_eq!(super::sentence("its bark"), "Its bark");
    }
}
