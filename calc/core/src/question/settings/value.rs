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
