//! What fills the gaps of messages: each kind of gap is a type of its own, and what a choice asks of it.

use super::message::{Word, in_use, m};
use super::prose::english;
use crate::measure;

/// The gender of a name, as agreement asks.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Gender {
    /// Masculine; also where a language has none.
    #[default]
    Masculine,
    /// Feminine.
    Feminine,
    /// Feminine, behind "el": `el haya`.
    FeminineEl,
}

impl Gender {
    fn key(self) -> &'static str {
        match self {
            Self::Masculine => "m",
            Self::Feminine => "f",
            Self::FeminineEl => "f-el",
        }
    }
}

/// What fills a gap.
pub enum Gap<'a> {
    /// A text that stays.
    Lent(&'a str),
    /// A text that was made for it.
    Made(String),
    /// A name, with its gender.
    Name(&'a str, Gender),
    /// A number as it is shown, and its value, which chooses the plural.
    Number(String, f64),
    /// What the caller draws: its place among those of the message.
    Node(usize),
}

impl Gap<'_> {
    pub(super) fn text(&self) -> &str {
        match self {
            Self::Lent(text) | Self::Name(text, _) => text,
            Self::Made(text) | Self::Number(text, _) => text,
            Self::Node(_) => "",
        }
    }

    /// Whether a case of a choice by this gap is the one.
    pub(super) fn is(&self, ask: char, key: &str) -> bool {
        match (ask, self) {
            ('n', Self::Number(_, value)) => plural_is(in_use().language(), *value, key),
            ('g', Self::Name(_, gender)) => gender.key() == key,
            ('s', gap) => begins(gap.text()) == key,
            _ => false,
        }
    }
}

/// The plurals of each language (CLDR): what is neither named here nor exact is the case for all else.
fn plural_is(language: &str, value: f64, key: &str) -> bool {
    match key {
        "one" => value == 1.0,
        // Spanish: whole millions, which nothing here comes to.
        "many" => language.starts_with("es") && value >= 1e6 && value % 1e6 == 0.0,
        exact => digits(exact) == Some(value),
    }
}

/// The sound that a word begins with, where Spanish turns "y" to "e" and "o" to "u": not before hie- and hia-.
fn begins(text: &str) -> &'static str {
    let mut letters = text.chars().map(|c| c.to_lowercase().next().unwrap_or(c));
    let first = letters.next().unwrap_or(' ');
    let (first, second) = match first {
        'h' => (letters.next().unwrap_or(' '), letters.next()),
        // 8, 80 to 89 and 800 begin as "ocho"; 11 too is "once".
        '8' => ('o', None),
        '1' if text.starts_with("11") && !text[2..].starts_with(|c: char| c.is_ascii_digit()) => {
            ('o', None)
        }
        first => (first, letters.next()),
    };
    match (first, second) {
        ('i' | 'í', Some('e' | 'a')) => "other",
        ('i' | 'í', _) => "i",
        ('o' | 'ó', _) => "o",
        _ => "other",
    }
}

/// A text: typed by people, or another message.
pub struct SaidText<'a>(pub Gap<'a>);

impl<'a, T: AsRef<str> + ?Sized> From<&'a T> for SaidText<'a> {
    fn from(text: &'a T) -> Self {
        Self(Gap::Lent(text.as_ref()))
    }
}

impl From<String> for SaidText<'_> {
    fn from(text: String) -> Self {
        Self(Gap::Made(text))
    }
}

impl From<Word> for SaidText<'_> {
    fn from(word: Word) -> Self {
        Self(Gap::Lent(word.text()))
    }
}

/// The name of a tree or an animal, and its gender in the language in use.
pub struct Name<'a>(pub Gap<'a>);

impl<'a> Name<'a> {
    /// From both.
    pub fn new(name: &'a str, gender: Gender) -> Self {
        Self(Gap::Name(name, gender))
    }
}

/// The name of a tree in the language in use, and its gender; the English one where the language has none.
pub fn tree_name(scientific: &str, english: &'static str) -> (&'static str, Gender) {
    let rows = in_use().names().split('|');
    let mut found = rows.filter_map(|row| row.strip_prefix(scientific)?.strip_prefix('='));
    match found.next().and_then(|row| row.split_once('=')) {
        Some((name, "f")) => (name, Gender::Feminine),
        Some((name, "f-el")) => (name, Gender::FeminineEl),
        Some((name, _)) => (name, Gender::Masculine),
        None => (english, Gender::Masculine),
    }
}

/// The scientific name of a tree that has this name in the language in use, however its letters are written.
#[must_use]
pub fn scientific_of(name: &str) -> Option<&'static str> {
    let wanted = name.trim().to_lowercase();
    let mut rows = in_use().names().split('|');
    rows.find_map(|row| {
        let (scientific, rest) = row.split_once('=')?;
        let (known, _) = rest.split_once('=')?;
        (known.to_lowercase() == wanted).then_some(scientific)
    })
}

/// The name of a tree that is not of the list, marked where it stays English.
pub fn other_tree(scientific: &str, name: &'static str) -> String {
    let (said, _) = tree_name(scientific, "");
    if said.is_empty() {
        english(name)
    } else {
        said.into()
    }
}

/// A day, with its year.
pub struct Date<'a>(pub Gap<'a>);

impl Date<'_> {
    /// Without its year, where that is plain.
    #[must_use]
    pub fn day(day: chrono::NaiveDate) -> Self {
        Self(Gap::Made(measure::day(day)))
    }

    /// With its year where that is another one than `beside`.
    #[must_use]
    pub fn beside(day: chrono::NaiveDate, beside: Option<chrono::NaiveDate>) -> Self {
        Self(Gap::Made(measure::day_beside(day, beside)))
    }
}

impl From<chrono::NaiveDate> for Date<'_> {
    fn from(day: chrono::NaiveDate) -> Self {
        Self(Gap::Made(measure::day_year(day)))
    }
}

/// A number that chooses the plural, and how it is shown.
macro_rules! number {
    ($(#[$of:meta])* $name:ident, $($from:ty)|+, $show:expr) => {
        $(#[$of])*
        pub struct $name<'a>(pub Gap<'a>);
        $(impl From<$from> for $name<'_> {
            #[inline(never)]
            fn from(value: $from) -> Self {
                Self(Gap::Number($show(value as f64), value as f64))
            }
        })+
    };
}

number!(
    /// A count in digits.
    Count, usize | u32 | u8 | i32, |value| measure::plain(value, 0)
);
number!(
    /// A small count in words.
    Small, usize | u32 | u8, |value| m::measure_small(value as u32)
);
number!(
    /// A share in 100, whole.
    Percent, f64, measure::percent
);
number!(
    /// Minutes as they are shown.
    Minutes, f64, measure::minutes
);
number!(
    /// Years to a half.
    Years, f64, measure::years
);

/// A number that is already shown: rounded, or with a fraction.
pub struct ShownNumber<'a>(pub Gap<'a>);

impl<T: AsRef<str>> From<T> for ShownNumber<'_> {
    fn from(shown: T) -> Self {
        Self(shown_number(shown.as_ref()))
    }
}

#[inline(never)]
fn shown_number(shown: &str) -> Gap<'static> {
    let value = digits(shown).unwrap_or(f64::NAN);
    Gap::Number(shown.into(), value)
}

/// The value of a whole number in digits.
fn digits(text: &str) -> Option<f64> {
    text.bytes().try_fold(0.0, |sum, digit| {
        digit
            .is_ascii_digit()
            .then(|| sum * 10.0 + f64::from(digit - b'0'))
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_word_begins_with_the_sound_that_is_heard() {
        for (word, sound) in [
            ("hiedra", "other"),
            ("Higuera", "i"),
            ("hongos", "o"),
            ("Ibis", "i"),
            ("ocho", "o"),
            ("8 m", "o"),
            ("11", "o"),
            ("110", "other"),
            ("pinos", "other"),
            ("", "other"),
        ] {
            assert_eq!(begins(word), sound, "{word}");
        }
    }
}
