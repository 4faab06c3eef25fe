//! Answers to generated questions, held against each other: what must not change does not, what must not get milder
//! does not, what an answer says of another day or size holds when it is asked. Fixed seeds, so that a failure comes
//! back; every message carries its question.
//! Here the program is compared with itself, never with the outside: that is tests/published.

mod again;
mod group;
mod keys;
mod link;
mod make;
mod order;
mod printed;
mod reach;
mod ring_days;
mod size;
#[path = "../published/support.rs"]
mod support;
mod whole;
