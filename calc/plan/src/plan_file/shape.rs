//! The names of plan.json: they are an interface, and stay.

use super::after_shape::AfterOf;
use serde::Serialize;
use std::collections::BTreeMap;
use std::rc::Rc;

/// The file.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[allow(missing_docs, reason = "the names are those of the published schema")]
pub struct PlanFile {
    pub version: u32,
    pub product_version: String,
    pub data_version: String,
    pub made_on: String,
    pub list: ListOf,
    pub counts: BTreeMap<&'static str, u64>,
    pub crew: CrewOf,
    pub work_days: Vec<DayOf>,
    pub closed_days: Vec<String>,
    pub from: String,
    pub to: String,
    pub slip: f64,
    pub units: Vec<UnitOf>,
    pub classes: Vec<ClassOf>,
    pub trees: Rc<Vec<TreeOf>>,
    pub other: Vec<OtherOf>,
    pub objective: Objective,
    /// None where no way was drawn.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub walk: Option<WalkOf>,
    pub binds: Vec<BindOf>,
    pub edits: Vec<Edit>,
    pub moved: Vec<Moved>,
    pub assumed: Vec<AssumedConstant>,
    /// What was found at visits, where a file of them was read.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub after: Option<AfterOf>,
}

/// The list.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[allow(missing_docs, reason = "the names are those of the published schema")]
pub struct ListOf {
    pub id: String,
    pub name: String,
    pub rows: u64,
    pub columns: usize,
}

/// Who works. `hours` are those of work, `day_hours` those from arriving to leaving.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[allow(missing_docs, reason = "the names are those of the published schema")]
pub struct CrewOf {
    pub people: u32,
    pub teams: u32,
    pub hours: f64,
    pub day_hours: f64,
    pub ready_minutes: f64,
    pub pairs: bool,
    pub over: f64,
    pub wage: Option<f64>,
}

/// A work day.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[allow(missing_docs, reason = "the names are those of the published schema")]
pub struct DayOf {
    pub day: String,
    pub agreed: bool,
    pub minutes: f64,
    pub used: f64,
    pub rings: f64,
    pub visits: f64,
    /// Of `visits` those to trees that were ringed before, which go first: the bound counts `minutes` without them.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub visits_before: Option<f64>,
    /// Of `used`, the walks to its trees, by rings and by visits.
    pub walk_charged: f64,
    /// What they take along the ways of the crews, back to the first tree of each; walks to trees without a place as
    /// charged. None where too few of the day's trees have a place of their own.
    pub walk_routed: Option<f64>,
    pub by_team: Vec<f64>,
}

/// What walks of the days with ways are charged and take.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[allow(missing_docs, reason = "the names are those of the published schema")]
pub struct WalkOf {
    /// What a tree's own walk was multiplied by, where it has a place and its row does not say how long its walk is.
    pub factor: f64,
    pub metres_a_minute: f64,
    pub charged: f64,
    pub routed: f64,
    pub crew_days: usize,
    /// Crew-days whose way takes over 10 % more or less than its charge.
    pub missed: usize,
}

/// A unit.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[allow(missing_docs, reason = "the names are those of the published schema")]
pub struct UnitOf {
    pub unit: String,
    pub trees: usize,
    pub basal_m2: f64,
    pub years: Vec<UnitYear>,
    pub floor_share: Option<f64>,
    /// None where nobody said how much land it is.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub land: Option<LandOf>,
    pub nothing_within_m: Option<f64>,
    pub said_by: Option<String>,
    pub said_on: Option<String>,
}

/// Land, and the share of it under crowns: of all trees where somebody said so, else of the list's.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[allow(missing_docs, reason = "the names are those of the published schema")]
pub struct LandOf {
    pub area_m2: f64,
    pub closure_before: f64,
    /// With every tree of the plan dead.
    pub closure_after: f64,
    pub closure_said: bool,
}

/// What may go of a unit in a year, and what goes.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[allow(missing_docs, reason = "the names are those of the published schema")]
pub struct UnitYear {
    pub year: i32,
    pub limit_m2: Option<f64>,
    pub largest_m2: f64,
    pub used_m2: f64,
    /// Crown area that may go before a floor of canopy is reached.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub crown_limit_m2: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub crown_used_m2: Option<f64>,
}

/// Trees alike in species, place and days.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[allow(missing_docs, reason = "the names are those of the published schema")]
pub struct ClassOf {
    pub id: String,
    pub species: &'static str,
    pub latitude: Option<f64>,
    pub longitude: Option<f64>,
    pub elevation_m: Option<f64>,
    pub p: BTreeMap<String, f64>,
}

/// A tree that was understood.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[allow(missing_docs, reason = "the names are those of the published schema")]
pub struct TreeOf {
    pub tree_id: String,
    pub row: u64,
    pub unit: String,
    pub class: Option<String>,
    pub reason: &'static str,
    pub outcome: Option<&'static str>,
    pub method: Option<&'static str>,
    pub day: Option<String>,
    pub team: Option<u32>,
    pub order: Option<usize>,
    pub p: Option<f64>,
    pub minutes: Option<f64>,
    pub work: Option<[f64; 3]>,
    pub walk: Option<f64>,
    pub basal_m2: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub crown_m2: Option<f64>,
    pub zone_m: Option<f64>,
    pub value: f64,
    pub pinned: bool,
    pub follow_up: bool,
    pub visit_minutes: BTreeMap<&'static str, f64>,
    pub visits: Vec<VisitOf>,
}

/// A visit that costs minutes.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[allow(missing_docs, reason = "the names are those of the published schema")]
pub struct VisitOf {
    pub kind: &'static str,
    pub from: String,
    pub to: String,
    pub day: Option<String>,
    pub minutes: f64,
    pub team: Option<u32>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub reason: Option<&'static str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub suggest: Option<String>,
}

/// A tree of another method.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[allow(missing_docs, reason = "the names are those of the published schema")]
pub struct OtherOf {
    pub tree_id: String,
    pub method: &'static str,
    pub from: Option<String>,
    pub to: Option<String>,
    pub by_professional: bool,
    /// None until the crew timed two of them.
    pub minutes: Option<f64>,
}

/// How good it is. No plan under these hours, windows and limits has a value over `bound`; by the prices anybody can
/// work that out again.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[allow(missing_docs, reason = "the names are those of the published schema")]
pub struct Objective {
    pub value: f64,
    pub bound: f64,
    pub gap_percent: f64,
    pub discount: f64,
    pub days: BTreeMap<String, f64>,
    pub areas: Vec<AreaPrice>,
    /// What each tree adds, where it was asked for.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub terms: Option<Vec<Term>>,
}

/// Value of a square metre of a unit's basal area.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[allow(missing_docs, reason = "the names are those of the published schema")]
pub struct AreaPrice {
    pub unit: String,
    pub year: i32,
    pub price: f64,
    /// Of a square metre of crown, where there is a floor.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub crown_price: Option<f64>,
}

/// What a tree adds to the bound.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[allow(missing_docs, reason = "the names are those of the published schema")]
pub struct Term {
    pub tree_id: String,
    pub best: f64,
}

/// A limit that binds.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[allow(missing_docs, reason = "the names are those of the published schema")]
pub struct BindOf {
    pub what: &'static str,
    pub change: String,
    pub trees_more: usize,
    pub solved: bool,
}

/// A constant that is our own assumption.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[allow(missing_docs, reason = "the names are those of the published schema")]
pub struct AssumedConstant {
    pub name: &'static str,
    pub value: f64,
    pub unit: &'static str,
}

/// A cell that was mended; all others are those of the list.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[allow(missing_docs, reason = "the names are those of the published schema")]
pub struct Edit {
    pub row: u64,
    pub column: String,
    pub was: String,
    pub is: String,
}

/// A tree that an earlier plan had on another day.
#[derive(Clone, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[allow(missing_docs, reason = "the names are those of the published schema")]
pub struct Moved {
    pub tree_id: String,
    pub from: Option<String>,
    pub to: Option<String>,
    pub because: String,
}
