//! The table of nine methods, and the minutes of some of them.

use super::cells::{List, cell, keep, maybe};
use super::sizes;
use super::sources::Sources;
use crate::table::{At, Defect, Table};
use calc::models::condition::MethodRule;
use calc::models::condition::RowCondition;
use calc::models::effort::MethodMinutes;
use calc::terms::cite::Grade;
use calc::terms::method::{Cell, Method};
use calc::terms::species::Group;
use serde::Deserialize;
use std::path::Path;

/// A row of `rules/methods.csv`: a condition by name, and what it does to each method.
#[derive(Deserialize)]
struct MethodRow {
    #[serde(deserialize_with = "cell")]
    id: RowCondition,
    size_in: String,
    #[serde(deserialize_with = "cell")]
    bark_ring: Cell,
    #[serde(deserialize_with = "cell")]
    saw_ring: Cell,
    #[serde(deserialize_with = "cell")]
    frill: Cell,
    #[serde(deserialize_with = "cell")]
    basal_bark: Cell,
    #[serde(deserialize_with = "cell")]
    cut_stump: Cell,
    #[serde(deserialize_with = "cell")]
    pull_or_dig: Cell,
    #[serde(deserialize_with = "cell")]
    fell: Cell,
    #[serde(deserialize_with = "cell")]
    repeat_cutting: Cell,
    #[serde(deserialize_with = "cell")]
    leave_it: Cell,
    #[serde(deserialize_with = "cell")]
    cites: List,
    basis: String,
}

impl MethodRow {
    /// Whether the row may say so of itself: `print` where sources print it, `practice` where the trade does it and none
    /// was found, `own` where any of it is ours.
    fn check_basis(&self, at: At) -> Result<(), Defect> {
        let says = |id: &str| {
            self.cites
                .iter()
                .any(|cite| cite.split('@').next() == Some(id))
        };
        let holds = match self.basis.as_str() {
            "print" => !["own", "practice", "you"].into_iter().any(says),
            "practice" => says("practice"),
            "own" => true,
            other => {
                let what = format!("basis: \"{other}\" is not one of print practice own");
                return Err(at.problem(what));
            }
        };
        if holds {
            return Ok(());
        }
        let what = format!(
            "basis: \"{}\", and its cites do not bear that out",
            self.basis
        );
        Err(at.problem(what))
    }

    fn cell(&self, method: Method) -> Cell {
        match method {
            Method::BarkRing => self.bark_ring,
            Method::SawRing => self.saw_ring,
            Method::Frill => self.frill,
            Method::BasalBark => self.basal_bark,
            Method::CutStump => self.cut_stump,
            Method::PullOrDig => self.pull_or_dig,
            Method::Fell => self.fell,
            Method::RepeatCutting => self.repeat_cutting,
            Method::LeaveIt => self.leave_it,
        }
    }
}

/// The rows, each with its condition; a condition without a row and a row without a condition stop the build.
pub(crate) fn rules(root: &Path, sources: &Sources) -> Result<&'static [MethodRule], Defect> {
    let table = Table::<MethodRow>::read(root, "content/rules/methods.csv")?;
    let rows = table.by(|row| row.id.id())?;
    if let Some(missing) = RowCondition::IDS.iter().find(|id| !rows.contains_key(*id)) {
        return Err(table.problem(format!("the condition \"{missing}\" has no row")));
    }
    let mut rules = Vec::new();
    for row in &table.rows {
        row.check_basis(row.at)?;
        rules.push(MethodRule {
            id: row.id.id(),
            condition: row.id,
            sizes: sizes::read(row.at, &row.size_in)?,
            cells: std::array::from_fn(|at| row.cell(Method::ALL[at])),
            cites: sources.cites(row.at, &row.cites, Grade::Published)?,
        });
    }
    Ok(rules.leak())
}

/// A row of `rules/method_minutes.csv`.
#[derive(Deserialize)]
struct MinutesRow {
    #[serde(deserialize_with = "cell")]
    method: Method,
    #[serde(deserialize_with = "maybe")]
    group: Option<Group>,
    dbh_low_in: f64,
    dbh_high_in: f64,
    low_min: f64,
    high_min: f64,
    of_what: String,
    source_id: String,
    place: String,
    #[serde(deserialize_with = "cell")]
    grade: Grade,
}

/// Widest stem and longest time that such a row may speak of, inches and minutes.
const WIDEST_IN: f64 = 200.0;
const LONGEST_MIN: f64 = 1000.0;

/// Minutes of other methods, as printed.
pub(crate) fn minutes(root: &Path, sources: &Sources) -> Result<&'static [MethodMinutes], Defect> {
    let table = Table::<MinutesRow>::read(root, "content/rules/method_minutes.csv")?;
    let mut minutes = Vec::new();
    for row in &table.rows {
        in_order(
            row.at,
            "dbh_low_in to dbh_high_in",
            row.dbh_low_in,
            row.dbh_high_in,
            WIDEST_IN,
        )?;
        in_order(
            row.at,
            "low_min to high_min",
            row.low_min,
            row.high_min,
            LONGEST_MIN,
        )?;
        minutes.push(MethodMinutes {
            method: row.method,
            group: row.group,
            dbh_in: (row.dbh_low_in, row.dbh_high_in),
            minutes: (row.low_min, row.high_min),
            of: keep(&row.of_what),
            cite: sources.cite(row.at, &row.source_id, &row.place, row.grade)?,
        });
    }
    Ok(minutes.leak())
}

/// Two ends of a range, the lower first, from 0 to a limit.
pub(crate) fn in_order(at: At, what: &str, low: f64, high: f64, most: f64) -> Result<(), Defect> {
    if 0.0 <= low && low <= high && high <= most {
        return Ok(());
    }
    Err(at.problem(format!(
        "{what}: {low} to {high} is no range within 0 to {most}"
    )))
}
