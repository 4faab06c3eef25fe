//! The models against print: worked examples, handbook tables, regulations, trials, facts of the trade, and the
//! outcomes that follow. Each check names its source; common practice is marked "common practice, no source".
//! The season has a test program of its own, `timing`.

mod aids;
mod bad_input;
mod bad_place;
mod bark;
mod beside;
mod effort;
mod figures_told;
mod first_names;
mod follow_up;
mod group_rules;
mod heights;
mod heights_measured;
mod kill_rate;
mod limits;
mod methods;
mod names;
mod outcomes;
mod plan;
mod reach;
mod region_alone;
mod regions;
mod replant;
mod ring;
mod settings;
mod shown_sources;
mod support;
mod trade;
mod worked_examples;
