//! What follows from what is known: pure functions and types, no clock, no files, no web, no wording.

pub mod angle;
pub mod answer;
pub mod evidence;
pub mod model;
pub(crate) mod named;
pub mod order;
pub mod piece;
pub mod quantity;
pub mod question;
pub mod reference;
pub mod settings;
pub mod timing;
