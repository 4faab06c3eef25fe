//! What a group's own settings made of an answer.

use serde::Serialize;

/// What a group's own settings asked for. They may only make an answer more cautious.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct GroupAnswer {
    /// The group.
    pub name: String,
    /// The reach is judged with the height times this.
    pub distance_factor: f64,
    /// The thickest tree that it leaves to volunteers, mm of dbh.
    pub volunteers_mm: Option<f64>,
    /// Months in which it cuts no ring: first and last month of each run.
    pub months_blocked: Vec<(u8, u8)>,
    /// Whether its size is what makes this a professional's tree.
    pub stops: bool,
}
