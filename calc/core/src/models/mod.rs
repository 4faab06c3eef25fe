//! The models: a file for each part of the answer. Each takes a tree and its own table, gives its value with its reasons,
//! and knows neither the question nor the page.

pub mod at_visit;
pub mod bark;
pub mod calibrate;
pub mod cautions;
pub mod condition;
pub mod effort;
pub mod effort_constants;
pub mod grown;
pub mod habitat;
pub mod height;
pub mod height_aid;
pub mod height_hazard;
pub mod method;
pub mod native;
pub mod outlook;
pub mod provisos;
pub mod reach;
pub mod ring;
pub mod season;
pub mod stand;
pub mod trigger;
pub mod visits;
