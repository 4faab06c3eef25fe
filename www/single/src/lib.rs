//! The module of the single file: the element without what only a page that hosts it can use. A package of its own,
//! since cargo keeps one module of a package at a time.

pub use www_element::*;
