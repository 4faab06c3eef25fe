//! The models: one file each, none knows the page, each gives its value with its reasons.

pub mod bark;
pub mod caution;
pub mod effort;
pub mod habitat;
pub mod height;
pub mod method;
pub mod outlook;
pub mod reach;
pub mod ring;
pub mod season;
pub mod visits;
