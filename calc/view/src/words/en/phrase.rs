//! Small pieces of sentences that all parts share: lists, ranges, counts, months and signs of units.

use crate::measure;
use crate::words::m;

/// The name of a tree in the language in use.
pub fn tree(species: &calc::terms::species::Species) -> &'static str {
    crate::words::gap::tree_name(species.scientific, species.name).0
}

/// Small counts in words.
pub fn small(count: usize) -> String {
    m::measure_small(count)
}

/// Two shares of 100, low to high; said once where both round alike.
pub fn percents(low: f64, high: f64) -> String {
    let [low, high] = [low, high].map(measure::percent);
    if low == high {
        m::measure_about(low)
    } else {
        to(low, high)
    }
}

/// Signs of units, the same in every language.
pub const INCH: &str = "in";
/// Centimetres.
pub const CM: &str = "cm";
/// Feet.
pub const FT: &str = "ft";
/// Metres.
pub const M: &str = "m";

/// Twelve months, as a message has them.
fn twelve(months: crate::words::Word) -> [&'static str; 12] {
    let mut all = [""; 12];
    for (month, name) in all.iter_mut().zip(months.text().split(' ')) {
        *month = name;
    }
    all
}

/// Months on a tape.
pub fn months_short() -> [&'static str; 12] {
    twelve(m::MEASURE_MONTHS_SHORT)
}

/// Months where there is hardly any room.
pub fn months_initial() -> [&'static str; 12] {
    twelve(m::MEASURE_MONTHS_INITIAL)
}

/// A range from its ends.
pub fn to(low: String, high: String) -> String {
    m::measure_range(m::MeasureRange { low, high })
}

/// A unit's sign in full, for those who listen; anything else as it is.
pub fn spoken_unit(word: &str) -> &str {
    match word {
        "in" => m::MEASURE_INCHES.text(),
        "ft" => m::MEASURE_FEET.text(),
        "mm" => m::MEASURE_MILLIMETRES.text(),
        "cm" => m::MEASURE_CENTIMETRES.text(),
        "m" => m::MEASURE_METRES.text(),
        other => other,
    }
}

/// The first letter made large: a clause becomes the start of a sentence.
pub fn sentence(text: &str) -> String {
    let mut chars = text.chars();
    match chars.next() {
        Some(first) => cat_up(first, chars.as_str()),
        None => String::new(),
    }
}

/// A letter made large: ASCII, and those with accents that the languages here have.
pub fn large(letter: char) -> char {
    match letter {
        'à'..='ö' | 'ø'..='þ' => char::from_u32(letter as u32 - 32).unwrap_or(letter),
        letter => letter.to_ascii_uppercase(),
    }
}

fn cat_up(first: char, rest: &str) -> String {
    let mut text = String::with_capacity(rest.len() + 4);
    text.push(large(first));
    text.push_str(rest);
    text
}

/// Words in a row: `a`, `a and b`, `a, b and c`.
pub fn row(words: &[impl AsRef<str>]) -> String {
    joined(words, |first, last| {
        m::measure_and(m::MeasureAnd { first, last })
    })
}

/// Words in a row that leave a choice: `a or b`.
pub fn either(words: &[impl AsRef<str>]) -> String {
    joined(words, |first, last| {
        m::measure_or(m::MeasureOr { first, last })
    })
}

/// Words with a sign between them.
pub fn joined_by(words: &[impl AsRef<str>], sign: &str) -> String {
    let mut text = String::new();
    for (at, word) in words.iter().enumerate() {
        text.push_str(if at > 0 { sign } else { "" });
        text.push_str(word.as_ref());
    }
    text
}

/// The first of some names with a sign between them; that there are more is shown by "…".
pub fn first_of(names: impl IntoIterator<Item = impl ToString>, most: usize, sign: &str) -> String {
    let mut names = names.into_iter().map(|name| name.to_string());
    let mut first: Vec<String> = names.by_ref().take(most).collect();
    if names.next().is_some() {
        first.push("…".to_owned());
    }
    joined_by(&first, sign)
}

/// One more behind a comma.
pub fn comma(first: String, last: &str) -> String {
    m::measure_comma(m::MeasureComma { first, last })
}

fn joined(words: &[impl AsRef<str>], end: fn(String, &str) -> String) -> String {
    let mut words = words.iter().map(AsRef::as_ref).peekable();
    let mut text: String = words.next().unwrap_or("").into();
    while let Some(last) = words.next() {
        text = if words.peek().is_none() {
            end(text, last)
        } else {
            comma(text, last)
        };
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
        assert_eq!(super::first_of([7, 8], 2, ", "), "7, 8");
        assert_eq!(super::first_of(["a", "b", "c"], 2, "; "), "a; b; …");
        assert_eq!(super::sentence("its bark"), "Its bark");
        assert_eq!(super::sentence("árbol"), "Árbol");
    }
}
