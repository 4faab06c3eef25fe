//! The shape of the work in an answer: minutes, visits, advice at one.

use crate::model::at_visit::{Advice, NoAdvice};
use crate::model::calibrate::{NoRate, Rate};
use crate::model::effort::{Tasks, Three};
use crate::reference::Share;
use crate::terms::cite::Cite;
use crate::terms::method::Method;
use chrono::NaiveDate;
use serde::Serialize;

/// Minutes.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct EffortAnswer {
    /// P10, minutes.
    pub low_min: f64,
    /// P50, minutes.
    pub likely_min: f64,
    /// P90, minutes.
    pub high_min: f64,
    /// Mean, minutes.
    pub mean_min: f64,
    /// Probability of slip that it stands on.
    pub slip: f64,
    /// Walking in it, minutes.
    pub walk_min: f64,
    /// Likely minutes by task, before delays, bark slipping.
    pub tasks: Tasks,
    /// Minutes of one sprout visit: low, likely, high.
    pub visit_min: (f64, f64, f64),
    /// The ring and its sprout visits of the first three seasons.
    pub three_years: Long,
    /// The ring and every sprout and yearly visit of the list.
    pub whole: Long,
    /// The crew's own rate, where there is one.
    pub own: Option<OwnRate>,
    /// Trees that were timed and give no rate: how many, and why.
    pub timed: Option<(usize, NoRate)>,
    /// What it rests on.
    pub because: Vec<Cite>,
}

/// Minutes with visits, none counted for the first look: nobody timed one.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Long {
    /// How many visits are in it.
    pub visits: usize,
    /// P10, P50 and P90, minutes.
    pub minutes: Three,
}

/// The crew's own rate over the model's.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct OwnRate {
    /// The rate, to be given again as `rate`.
    pub rate: Rate,
    /// P10, P50 and P90 of the crew's minutes over the model's.
    pub factor: Three,
    /// Trees that were timed for it, where they came with the question, and their minutes.
    pub timed: Option<(usize, f64)>,
}

/// Work of one method. Where nobody measured it there is no number.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct MethodWork {
    /// The method.
    pub method: Method,
    /// Person-minutes now: low, likely where it is known, high.
    pub now: Option<Share>,
    /// Person-minutes over the first three seasons, visits in them.
    pub three_years: Option<Share>,
    /// Visits of the first three seasons behind the first look.
    pub visits: usize,
    /// What was timed, where it is not this tree that was worked out.
    pub of: &'static str,
    /// What visits and minutes rest on.
    pub because: Vec<Cite>,
}

/// Advice at a visit.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct VisitAnswer {
    /// The day of the ring.
    #[serde(serialize_with = "crate::terms::day::maybe_day")]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<String>"),
        ts(type = "string | null")
    )]
    pub ringed: Option<NaiveDate>,
    /// The day of the visit.
    #[serde(serialize_with = "crate::terms::day::maybe_day")]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<String>"),
        ts(type = "string | null")
    )]
    pub day: Option<NaiveDate>,
    /// The advice.
    pub advice: Option<Advice>,
    /// Why there is none.
    pub why_not: Option<NoAdvice>,
}
