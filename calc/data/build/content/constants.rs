//! The tunable constants: each is found by its name, which is that of its field (`ring.least_mm`).

use super::cells::{List, cell};
use super::sources::Sources;
use crate::table::{Problem, Table};
use calc::reference::Constants;
use calc::terms::cite::Grade;
use calc::terms::constants::Constant;
use serde::Deserialize;
use std::collections::BTreeMap;
use std::path::Path;

/// A row of `rules/constants.csv`.
#[derive(Deserialize)]
struct ConstantRow {
    name: String,
    value: f64,
    #[serde(deserialize_with = "cell")]
    source_id: List,
    place: String,
    #[serde(deserialize_with = "cell")]
    grade: Grade,
}

/// Where the constants of the season stand among all of them; their own table leaves it out.
const TIMING: &str = "timing.";

/// A row of `rules/timing_constants.csv`.
#[derive(Deserialize)]
struct TimingRow {
    name: String,
    value: f64,
    #[serde(deserialize_with = "cell")]
    #[allow(dead_code, reason = "read to be checked")]
    grade: Grade,
}

/// A value found by name stands in its field; a name that is missing or that no field has stops the build.
pub(crate) fn read(root: &Path, sources: &Sources) -> Result<Constants, Problem> {
    let table = Table::<ConstantRow>::read(root, "content/rules/constants.csv")?;
    let timing = Table::<TimingRow>::read(root, "content/rules/timing_constants.csv")?;
    let mut values = BTreeMap::new();
    for (name, row) in table.by(|row| &row.name)? {
        if row.place.is_empty() {
            return Err(row.at.problem("place is empty"));
        }
        for id in row.source_id.iter() {
            sources.grade(row.at, id, row.grade)?;
            sources.name(id);
        }
        values.insert(name.to_owned(), (row.at, row.value));
    }
    for (name, row) in timing.by(|row| &row.name)? {
        values.insert(format!("{TIMING}{name}"), (row.at, row.value));
    }
    let mut missing = Vec::new();
    let constants = Constants::by_name("", &mut |name| match values.remove(name) {
        Some((_, value)) => value,
        None => {
            missing.push(name.to_owned());
            0.0
        }
    });
    let missing_names = missing.join(", ");
    match (values.first_key_value(), missing.first()) {
        (None, None) => Ok(constants),
        (Some((name, (at, _))), first) => {
            let unread = format!("the code has no constant {name}");
            let also = first.map_or(String::new(), |_| format!("; no row for {missing_names}"));
            Err(at.problem(unread + &also))
        }
        (None, Some(first)) => {
            let what = format!("no row for {missing_names}");
            Err(if first.starts_with(TIMING) {
                timing.problem(what)
            } else {
                table.problem(what)
            })
        }
    }
}
