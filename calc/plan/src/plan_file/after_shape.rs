//! The names of what was found after the work, in plan.json.

use serde::Serialize;

/// What was found at visits.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[allow(missing_docs, reason = "the names are those of the published schema")]
pub struct AfterOf {
    pub found: Vec<FoundOf>,
    pub kill_rate: Vec<KillRateOf>,
    pub rings_held: ShareOfTrees,
    /// None where nothing was timed, or too little.
    pub rate: Option<RateOf>,
}

/// What was found at a tree on a day, and what to do.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[allow(missing_docs, reason = "the names are those of the published schema")]
pub struct FoundOf {
    pub tree_id: String,
    /// The row of the file of visits.
    pub row: u64,
    pub visited_on: String,
    pub ringed_on: Option<String>,
    pub acts: Vec<&'static str>,
    pub judged: Option<&'static str>,
    pub come_back: Option<String>,
    /// Why there is no advice.
    pub why_not: Option<&'static str>,
}

/// Trees of a species and size class that were dead at the end of a season after the ring. Shares and their 95 % interval
/// (Wilson) are per cent, and none where fewer than ten were looked at.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[allow(missing_docs, reason = "the names are those of the published schema")]
pub struct KillRateOf {
    pub species: &'static str,
    pub size: &'static str,
    pub season: u8,
    #[serde(flatten)]
    pub dead: ShareOfTrees,
    pub not_looked_at: usize,
    /// What the outlook says of such stems, per cent.
    pub outlook_low: Option<f64>,
    pub outlook_high: Option<f64>,
}

/// So many of those that were looked at.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[allow(missing_docs, reason = "the names are those of the published schema")]
pub struct ShareOfTrees {
    pub trees: usize,
    pub looked_at: usize,
    pub percent: Option<f64>,
    pub low: Option<f64>,
    pub high: Option<f64>,
}

/// The crew's minutes over those that are reckoned, from rings that were timed: P10, P50, P90.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[allow(missing_docs, reason = "the names are those of the published schema")]
pub struct RateOf {
    pub trees: usize,
    pub person_minutes: f64,
    pub log_mean: f64,
    pub log_sd: f64,
    pub low: f64,
    pub likely: f64,
    pub high: f64,
    /// Whether the plan is made with it.
    pub used: bool,
}
