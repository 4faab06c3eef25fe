//! An answer in words, HTML, SVG and text. Nothing here decides: it only words what `calc` found.

pub mod draw;
pub mod out;
