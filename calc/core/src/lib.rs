//! What follows from what is known: pure functions and types, no clock, no files, no web, no wording.

pub mod quantity;
pub mod timing;
