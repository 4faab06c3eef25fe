//! The site in a real browser: Chromium, driven through chromedriver.
//!
//! `tests/all` runs these. By hand, with both installed:
//! `cargo test --package tests --test browser -- --ignored --skip firefox`
//!
//! A part runs in Firefox too: `tests/all firefox` builds its driver, which Debian does not have. By hand, with that on
//! the path: `cargo test --package tests --test browser -- --ignored firefox`

mod aids;
mod another;
mod answer;
mod browser;
mod bundled;
mod calculator;
mod call;
mod causes;
mod dark_hosts;
mod deploy;
mod early;
mod embed;
mod export;
mod family;
mod field_page;
mod field_screens;
mod firefox;
mod fits;
mod frames;
mod frameworks;
mod generators;
mod heads;
mod hosts;
mod kept;
mod key_page;
mod kit;
mod language;
mod letters;
mod list_after;
mod list_drafts;
mod list_place;
mod list_replant;
mod lists;
mod local;
mod maker;
mod measured;
mod narrow;
mod odd_host;
mod offline;
mod once_read;
mod packages;
mod page;
mod paper;
mod parents;
mod property_page;
mod regional;
mod repair;
mod rules;
mod rungs;
mod screens;
mod servers;
mod settings;
mod sheets;
mod single;
mod site;
mod species_page;
mod town;
mod valid_html;
mod version;

/// Any failure of a test's steps; a broken expectation panics instead.
type Outcome = Result<(), Box<dyn std::error::Error + Send + Sync>>;
