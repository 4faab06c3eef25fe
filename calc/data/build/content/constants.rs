//! The tunable constants: each is found by its name, which is that of its field (`ring.least_mm`).

use super::cells::{List, cell, keep};
use super::sources::Sources;
use crate::list_tables::{AssumedNumber, PlanConstants};
use crate::table::{At, Defect, Table};
use calc::reference::Constants;
use calc::terms::cite::Grade;
use calc::terms::constants::Constant;
use serde::Deserialize;
use std::collections::BTreeMap;
use std::path::Path;

/// A row of `rules/constants.csv` and of `rules/plan_constants.csv`.
#[derive(Deserialize)]
struct ConstantRow {
    name: String,
    value: f64,
    unit: String,
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

/// What a row holds, by its name.
struct Told {
    at: At,
    value: f64,
    unit: String,
}

/// The rows of a table of constants; each names a source that is known, or `own`, and the place in it.
fn told(table: &Table<ConstantRow>, sources: &Sources) -> Result<BTreeMap<String, Told>, Defect> {
    let mut values = BTreeMap::new();
    for (name, row) in table.by(|row| &row.name)? {
        if row.place.is_empty() {
            return Err(row.at.problem("place is empty"));
        }
        for id in row.source_id.iter() {
            sources.grade(row.at, id, row.grade)?;
            sources.name(id);
        }
        let of = Told {
            at: row.at,
            value: row.value,
            unit: row.unit.clone(),
        };
        values.insert(name.to_owned(), of);
    }
    Ok(values)
}

/// Each constant by its name. One without a row, or a row without one, stops the build.
fn by_name<C: Constant>(
    mut values: BTreeMap<String, Told>,
    lacks: impl FnOnce(&str, String) -> Defect,
) -> Result<C, Defect> {
    let mut missing = Vec::new();
    let constants = C::by_name("", &mut |name| match values.remove(name) {
        Some(told) => told.value,
        None => {
            missing.push(name.to_owned());
            0.0
        }
    });
    let missing_names = missing.join(", ");
    match (values.first_key_value(), missing.first()) {
        (None, None) => Ok(constants),
        (Some((name, told)), first) => {
            let unread = format!("the code has no constant {name}");
            let also = first.map_or(String::new(), |_| format!("; no row for {missing_names}"));
            Err(told.at.problem(unread + &also))
        }
        (None, Some(first)) => Err(lacks(first, format!("no row for {missing_names}"))),
    }
}

/// The constants of the models: a value found by name stands in its field.
pub(crate) fn read(root: &Path, sources: &Sources) -> Result<Constants, Defect> {
    let table = Table::<ConstantRow>::read(root, "content/rules/constants.csv")?;
    let timing = Table::<TimingRow>::read(root, "content/rules/timing_constants.csv")?;
    let mut values = told(&table, sources)?;
    for (name, row) in timing.by(|row| &row.name)? {
        let of = Told {
            at: row.at,
            value: row.value,
            unit: String::new(),
        };
        values.insert(format!("{TIMING}{name}"), of);
    }
    by_name(values, |first, what| {
        if first.starts_with(TIMING) {
            timing.problem(what)
        } else {
            table.problem(what)
        }
    })
}

/// What a plan of many trees assumes, sorted by name; each is a field of [`PlanConstants`].
pub(crate) fn of_plans(root: &Path, sources: &Sources) -> Result<&'static [AssumedNumber], Defect> {
    let table = Table::<ConstantRow>::read(root, "content/rules/plan_constants.csv")?;
    let values = told(&table, sources)?;
    let numbers = values.iter().map(|(name, told)| AssumedNumber {
        name: keep(name),
        value: told.value,
        unit: keep(&told.unit),
    });
    let numbers: Vec<AssumedNumber> = numbers.collect();
    by_name::<PlanConstants>(values, |_, what| table.problem(what))?;
    Ok(numbers.leak())
}
