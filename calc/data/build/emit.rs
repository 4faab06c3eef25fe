//! Pieces of Rust.

use calc::evidence::Grade;

/// A string literal.
pub fn text(text: &str) -> String {
    format!("{text:?}")
}

/// A slice of string literals.
pub fn texts<'a>(list: impl IntoIterator<Item = &'a str>) -> String {
    let list: Vec<String> = list.into_iter().map(text).collect();
    format!("&[{}]", list.join(", "))
}

/// A cite.
pub fn cite(source: &str, place: &str, grade: Grade) -> String {
    format!("Cite {{ source: {source:?}, place: {place:?}, grade: Grade::{grade:?} }}")
}

/// An optional number.
pub fn maybe(value: Option<f64>) -> String {
    format!("{value:?}")
}
