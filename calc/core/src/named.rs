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

/// A plain enum of the interface, each of its variants written as its word.
macro_rules! named {
    ($(#[$of:meta])* pub enum $name:ident { $($(#[$of_one:meta])* $variant:ident),+ $(,)? }) => {
        #[cfg_attr(
            feature = "schema",
            derive(schemars::JsonSchema, ts_rs::TS),
            serde(rename_all = "snake_case")
        )]
        $(#[$of])*
        pub enum $name {
            $($(#[$of_one])* $variant),+
        }

        impl serde::Serialize for $name {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                const NAMES: &str = concat!($(stringify!($variant), " "),+);
                const WORDS: [u8; crate::named::length(NAMES)] = crate::named::words(NAMES);
                crate::named::write(&WORDS, *self as u32, serializer)
            }
        }
    };
}

pub(crate) use named;
