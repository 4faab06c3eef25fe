//! The models: one file each, none knows the page, each gives its value with its reasons.

pub mod at_visit;
pub mod bark;
pub mod calibrate;
pub mod caution;
pub mod effort;
pub mod habitat;
pub mod height;
pub mod height_aid;
pub mod method;
pub mod outlook;
pub mod reach;
pub mod ring;
pub mod season;
pub mod stand;
pub mod visits;
