//! A value as JSON has it. The page makes it from an object, the command line from a file, so that one reader serves both.

/// A value of the settings, not judged yet.
#[derive(Clone, Debug, PartialEq)]
pub enum Value {
    /// Nothing: null, or what is no JSON.
    Null,
    /// Yes or no.
    Bool(bool),
    /// A number.
    Number(f64),
    /// A text.
    Text(String),
    /// A list.
    List(Vec<Value>),
    /// Keys with their values, in the order given.
    Map(Vec<(String, Value)>),
}

/// The largest settings that are taken: bytes of a file, or [`Value::weight`] of an object. Every list filled to its end
/// with texts as long as they may be comes to less. Who converts a file or an object looks at this first.
pub const LARGEST: usize = 1_000_000;

impl Value {
    /// How much it holds: bytes of its texts and keys, and one for each value.
    #[must_use]
    pub fn weight(&self) -> usize {
        match self {
            Self::Null | Self::Bool(_) | Self::Number(_) => 1,
            Self::Text(text) => 1 + text.len(),
            Self::List(list) => 1 + list.iter().map(Self::weight).sum::<usize>(),
            Self::Map(entries) => {
                let each = entries.iter();
                1 + each
                    .map(|(key, value)| key.len() + value.weight())
                    .sum::<usize>()
            }
        }
    }
}
