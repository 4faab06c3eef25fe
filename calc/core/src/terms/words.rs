//! Enums of the interface and of the tables: one declaration gives the type, its words, its reader and its writer.

/// How long the word of a variant is: a dash more for each capital inside its name.
pub(crate) const fn length(name: &str) -> usize {
    let name = name.as_bytes();
    let (mut at, mut length) = (1, name.len());
    while at < name.len() {
        length += name[at].is_ascii_uppercase() as usize;
        at += 1;
    }
    length
}

/// The word of a variant, as serde's `snake_case` has it: `OtherMethod` is `other_method`.
pub(crate) const fn word<const LENGTH: usize>(name: &str) -> [u8; LENGTH] {
    let name = name.as_bytes();
    let mut word = [0; LENGTH];
    let (mut at, mut to) = (0, 0);
    while at < name.len() {
        if name[at].is_ascii_uppercase() && at > 0 {
            word[to] = b'_';
            to += 1;
        }
        word[to] = name[at].to_ascii_lowercase();
        to += 1;
        at += 1;
    }
    word
}

/// A word that [`word`] made, as text.
pub(crate) const fn text(word: &'static [u8]) -> &'static str {
    match core::str::from_utf8(word) {
        Ok(text) => text,
        Err(_) => panic!("names of variants are ASCII"),
    }
}

/// An enum of words.
pub(crate) trait Word: Copy + 'static {
    /// All of them, in order.
    const ALL: &'static [Self];
    /// Their words, in the same order.
    const WORDS: &'static [&'static str];
}

/// Declares an enum whose variants are words: `words! { /// … pub enum Reply { Yes, No, CantTell } }` has the words
/// `yes`, `no` and `cant_tell`. A word that is not the variant's own name stands behind it: `Nest = "nest-box"`.
macro_rules! words {
    (
        $(#[$of:meta])*
        pub enum $name:ident { $($(#[$of_one:meta])* $variant:ident $(= $word:literal)?),+ $(,)? }
    ) => {
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        #[cfg_attr(
            feature = "schema",
            derive(schemars::JsonSchema, ts_rs::TS),
            serde(rename_all = "snake_case")
        )]
        $(#[$of])*
        pub enum $name {
            $($(#[$of_one])* $(#[cfg_attr(feature = "schema", serde(rename = $word))])? $variant),+
        }

        impl $name {
            /// All of them, in order.
            pub const ALL: &'static [Self] = &[$(Self::$variant),+];
            /// Their words, in the same order.
            pub const WORDS: &'static [&'static str] =
                &[$(crate::terms::words::words!(@word $variant $($word)?)),+];

            /// The value of a word.
            #[must_use]
            pub fn parse(word: &str) -> Option<Self> {
                let at = Self::WORDS.iter().position(|known| *known == word)?;
                Self::ALL.get(at).copied()
            }

            /// The word of a value.
            #[must_use]
            pub fn word(self) -> &'static str {
                Self::WORDS[self as usize]
            }
        }

        impl crate::terms::words::Word for $name {
            const ALL: &'static [Self] = Self::ALL;
            const WORDS: &'static [&'static str] = Self::WORDS;
        }

        impl serde::Serialize for $name {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                serializer.serialize_str(self.word())
            }
        }
    };
    (@word $variant:ident) => {{
        const NAME: &str = stringify!($variant);
        const WORD: [u8; crate::terms::words::length(NAME)] = crate::terms::words::word(NAME);
        crate::terms::words::text(&WORD)
    }};
    (@word $variant:ident $word:literal) => { $word };
}

pub(crate) use words;

#[cfg(test)]
#[allow(unreachable_pub, reason = "what the macro makes is public")]
mod tests {
    words! {
        /// For the checks below.
        pub enum Sample {
            /// One.
            One,
            /// Two words.
            TwoWords,
            /// Another word than its name.
            Other = "with-dashes",
        }
    }

    #[test]
    fn each_variant_has_its_word_and_each_word_its_variant() {
        assert_eq!(Sample::WORDS, ["one", "two_words", "with-dashes"]);
        for (value, word) in Sample::ALL.iter().zip(Sample::WORDS) {
            assert_eq!(value.word(), *word);
            assert_eq!(Sample::parse(word), Some(*value));
        }
        assert_eq!(Sample::parse("Two"), None);
    }
}
