//! The words of plain enums in the interface. The derived writer brings a call of its own for each word of each
//! enum; here the words of an enum are one text, and one function finds a word in it.

use serde::Serializer;

/// How long the words of some variants are: a dash more for each word inside a name.
pub(crate) const fn length(names: &str) -> usize {
    let names = names.as_bytes();
    let (mut at, mut length) = (0, names.len());
    while at < names.len() {
        length += (names[at].is_ascii_uppercase() && at > 0 && names[at - 1] != b' ') as usize;
        at += 1;
    }
    length
}

/// The words of some variants, as serde's `snake_case` has them: `Do OtherMethod` is `do other_method`.
pub(crate) const fn words<const LENGTH: usize>(names: &str) -> [u8; LENGTH] {
    let names = names.as_bytes();
    let mut words = [0; LENGTH];
    let (mut at, mut to) = (0, 0);
    while at < names.len() {
        if names[at].is_ascii_uppercase() && at > 0 && names[at - 1] != b' ' {
            words[to] = b'_';
            to += 1;
        }
        words[to] = names[at].to_ascii_lowercase();
        to += 1;
        at += 1;
    }
    words
}

/// Whether variants stand at their own places.
pub(crate) const fn in_order(places: &[u32]) -> bool {
    let mut at = 0;
    while at < places.len() && places[at] == at as u32 {
        at += 1;
    }
    at == places.len()
}

/// Writes one of the words.
pub(crate) fn write<S: Serializer>(
    words: &'static [u8],
    at: u32,
    serializer: S,
) -> Result<S::Ok, S::Error> {
    serializer.serialize_unit_variant("", at, word(words, at))
}

#[inline(never)]
fn word(words: &'static [u8], at: u32) -> &'static str {
    let word = words.split(|byte| *byte == b' ').nth(at as usize);
    word.map_or("", |word| str::from_utf8(word).unwrap_or(""))
}

/// Writes each variant of a plain enum as its word. All of them are named, in their order: the compiler holds them to it.
macro_rules! named {
    ($name:ident: $($variant:ident)+) => {
        impl serde::Serialize for $name {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                const NAMES: &str = concat!($(stringify!($variant), " "),+);
                const WORDS: [u8; crate::named::length(NAMES)] = crate::named::words(NAMES);
                const { assert!(crate::named::in_order(&[$($name::$variant as u32),+])) }
                let at = match self { $(Self::$variant => *self as u32),+ };
                crate::named::write(&WORDS, at, serializer)
            }
        }
    };
}

pub(crate) use named;
