//! What follows from what is known: pure functions and types, no clock, no files, no web, no wording.

pub mod answer;
pub mod models;
pub mod question;
pub mod reference;
pub mod terms;
pub mod timing;
