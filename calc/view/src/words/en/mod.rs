//! English.

pub mod another;
pub mod calculators;
pub mod card;
pub mod confidence;
pub mod device;
pub mod effort;
pub mod fields;
pub mod formulas;
pub mod group;
pub mod habitat;
pub mod key_lines;
#[cfg(feature = "list")]
pub mod list;
pub mod method;
pub mod missing;
pub mod outlook;
pub mod phrase;
pub mod problem;
pub mod reach;
pub mod recap;
pub mod region;
pub mod ring;
pub mod say;
pub mod season;
pub mod spring;
mod stems;
pub mod stop;
pub mod verdict;
pub mod visits;
pub mod working;
