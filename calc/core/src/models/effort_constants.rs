//! What minutes are worked out from: the terms of the effort model, each with its low, likely and high, and the limits
//! between them.

use crate::terms::constants::constants;
use serde::Serialize;

constants! {
    /// Low, likely and high of a term.
    #[derive(Serialize)]
    #[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
    pub struct Three {
        /// P10.
        pub low: f64,
        /// P50.
        pub likely: f64,
        /// P90.
        pub high: f64,
    }
}

constants! {
    /// Constants of the effort model; content/rules/constants.csv says where each comes from.
    pub struct EffortConstants {
        /// Fixed, minutes a stem.
        pub fixed: Three,
        /// Scoring two lines, minutes a foot, in thin bark.
        pub score_thin: Three,
        /// The same in bark of medium thickness.
        pub score_medium: Three,
        /// The same in thick bark.
        pub score_thick: Three,
        /// Thickness of thin bark, mm.
        pub score_thin_mm: f64,
        /// Of medium bark.
        pub score_medium_mm: f64,
        /// Of thick bark.
        pub score_thick_mm: f64,
        /// Peeling a 6-in strip, minutes a foot.
        pub peel: Three,
        /// Scraping and checking, minutes a foot.
        pub scrape: Three,
        /// Factor of tight bark.
        pub tight: Three,
        /// Factor of tool, rest and small delays.
        pub delays: Three,
        /// Beyond this many times the model's minutes, or its inverse, a crew that was timed did something else.
        pub far_off: f64,
        /// Clearing limbs, minutes a foot of stem.
        pub limbs: Three,
        /// Stem to be cleared of limbs, feet, where it has none.
        pub limby_none_ft: f64,
        /// Where it has some.
        pub limby_some_ft: f64,
        /// Where it has many.
        pub limby_many_ft: f64,
        /// Walking when nothing is said, minutes.
        pub walk_min: f64,
        /// Pace that turns a distance into minutes, metres a minute.
        pub walk_m_per_min: f64,
        /// Factor of a practised crew.
        pub practised: f64,
        /// Share of the first work that a sprout visit takes.
        pub visit: Three,
        /// One stem in ten sticks: more of the likely minutes at full slip.
        pub sticking_likely: f64,
        /// The same of the high minutes.
        pub sticking_high: f64,
    }
}
