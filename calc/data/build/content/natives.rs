//! Native trees and shrubs that may follow a tree, and how many caterpillars are found on them: checked cell by cell. The
//! pages of the species read the tables themselves; what a plan of many trees says of replanting reads the file that is made here.

use super::cells::{Cell, List, cell, maybe};
use crate::table::{Defect, Table};
use calc::terms::leaf::{MoistureUse, ShadeTolerance};
use serde::Deserialize;
use std::path::Path;

/// A cell that holds one of some words; which one only the pages ask.
macro_rules! one_of {
    ($(#[$doc:meta] $name:ident = $($word:literal)|+;)+) => {
        $(#[$doc]
        struct $name;

        impl Cell for $name {
            fn of(text: &str) -> Result<Self, String> {
                match text {
                    $($word)|+ => Ok(Self),
                    _ => Err(format!("\"{text}\" is not one of: {}", [$($word),+].join(", "))),
                }
            }
        })+
    };
}

one_of! {
    /// What it grows to.
    Form = "tree" | "shrub";
    /// What says where it is native: the national list crossed with a range map, or the list alone.
    Basis = "PLANTS+RANGE_MAP" | "PLANTS_ONLY";
    /// How much.
    Amount = "None" | "Low" | "Medium" | "High";
    /// How fast it grows.
    Rate = "Slow" | "Moderate" | "Rapid";
    /// Of what a number of caterpillars is told.
    Level = "genus" | "species";
    /// What was counted.
    Measure = "moth and butterfly species whose caterpillars use the genus" | "branch surveys with at least one caterpillar";
    /// Its unit.
    Unit = "species" | "percent";
}

/// Codes of states or provinces, of two letters each, one behind the other; none is a cell of none.
struct Places;

impl Cell for Places {
    fn of(text: &str) -> Result<Self, String> {
        let is_code = |code: &&str| code.len() == 2 && code.bytes().all(|b| b.is_ascii_uppercase());
        match text.split_whitespace().find(|code| !is_code(code)) {
            Some(code) => Err(format!("\"{text}\": {code} is no code of two letters")),
            None => Ok(Self),
        }
    }
}

/// A row of `evidence/natives.csv`.
#[derive(Deserialize)]
#[allow(dead_code, reason = "read to be checked")]
struct NativeRow {
    #[serde(deserialize_with = "cell")]
    scientific_name: String,
    #[serde(deserialize_with = "cell")]
    common_name: String,
    #[serde(deserialize_with = "cell")]
    form: Form,
    #[serde(deserialize_with = "cell")]
    native_states: Places,
    #[serde(deserialize_with = "cell")]
    native_basis: Basis,
    #[serde(deserialize_with = "cell")]
    native_provinces: Places,
    mature_height_ft: Option<f64>,
    #[serde(deserialize_with = "maybe")]
    shade_tolerance: Option<ShadeTolerance>,
    #[serde(deserialize_with = "maybe")]
    drought_tolerance: Option<Amount>,
    #[serde(deserialize_with = "maybe")]
    moisture_use: Option<MoistureUse>,
    #[serde(deserialize_with = "maybe")]
    growth_rate: Option<Rate>,
    ph_min: Option<f64>,
    ph_max: Option<f64>,
    min_temp_f: Option<f64>,
    #[serde(deserialize_with = "cell")]
    source_id: List,
}

/// A row of `evidence/wildlife_value.csv`.
#[derive(Deserialize)]
#[allow(dead_code, reason = "read to be checked")]
struct WildlifeRow {
    #[serde(deserialize_with = "cell")]
    level: Level,
    #[serde(deserialize_with = "cell")]
    name: String,
    #[serde(deserialize_with = "cell")]
    measure: Measure,
    value: f64,
    #[serde(deserialize_with = "cell")]
    unit: Unit,
    low_95: Option<f64>,
    high_95: Option<f64>,
    #[serde(deserialize_with = "cell")]
    region: String,
    #[serde(deserialize_with = "cell")]
    source_id: List,
}

/// Reads both tables: a name that stands twice, and a number that can't be, are told too.
///
/// # Errors
/// The first thing that is wrong, with its file and line.
pub(crate) fn check(root: &Path) -> Result<(), Defect> {
    let natives = Table::<NativeRow>::read(root, "content/evidence/natives.csv")?;
    natives.by(|row| &row.scientific_name)?;
    for row in &natives.rows {
        let turned = row
            .ph_min
            .zip(row.ph_max)
            .is_some_and(|(low, high)| low > high);
        if turned || row.mature_height_ft.is_some_and(|feet| feet <= 0.0) {
            return Err(row
                .at
                .problem("ph_min, ph_max, mature_height_ft: such a value can't be"));
        }
    }
    let wildlife = Table::<WildlifeRow>::read(root, "content/evidence/wildlife_value.csv")?;
    wildlife.by(|row| &row.name)?;
    for row in &wildlife.rows {
        let ranges = [
            row.low_95.unwrap_or(row.value),
            row.value,
            row.high_95.unwrap_or(row.value),
        ];
        if !ranges.is_sorted() || row.value < 0.0 {
            return Err(row
                .at
                .problem("value, low_95, high_95: such a range can't be"));
        }
    }
    Ok(())
}

/// What the file holds of a native.
#[derive(Deserialize)]
struct NativeInFile {
    scientific_name: String,
    common_name: String,
    native_states: String,
    native_basis: String,
    listed_but_outside_range_map: String,
    in_range_map_not_listed: String,
    native_provinces: String,
    mature_height_ft: String,
    shade_tolerance: String,
    moisture_use: String,
}

/// What the file holds of a tree that has rows of its own.
#[derive(Deserialize)]
struct SiteInFile {
    scientific_name: String,
    shade_tolerance: String,
    moisture_use: String,
    grade: String,
}

/// Places of two lists of codes.
fn joined(a: &str, b: &str) -> String {
    let all: Vec<&str> = a.split_whitespace().chain(b.split_whitespace()).collect();
    all.join(" ")
}

/// The file that only replanting reads, a line each, with a tab between its cells; light and water as the tables have them.
/// Of a native, eight: scientific name, name, height in feet, light, water, then codes of the states that a list and a range
/// map have both, of those that one of the two has, and of provinces. Of a tree with rows of its own, four: scientific
/// name, light, water, and `read` where these were read in a source. What lacks light or water is left out.
///
/// # Errors
/// A table that can't be read.
pub(crate) fn file(root: &Path) -> Result<String, Defect> {
    let mut lines = String::new();
    let mut line = |cells: &[&str]| {
        lines.push_str(&cells.join("\t"));
        lines.push('\n');
    };
    let natives = Table::<NativeInFile>::read(root, "content/evidence/natives.csv")?;
    for row in &natives.rows {
        if row.shade_tolerance.is_empty() || row.moisture_use.is_empty() {
            continue;
        }
        let disputed = joined(
            &row.listed_but_outside_range_map,
            &row.in_range_map_not_listed,
        );
        let (both, one) = match row.native_basis.as_str() {
            "PLANTS_ONLY" => (String::new(), joined(&row.native_states, &disputed)),
            _ => (row.native_states.clone(), disputed),
        };
        line(&[
            &row.scientific_name,
            &row.common_name,
            &row.mature_height_ft,
            &row.shade_tolerance,
            &row.moisture_use,
            &both,
            &one,
            &row.native_provinces,
        ]);
    }
    let sites = Table::<SiteInFile>::read(root, "content/evidence/listed_site.csv")?;
    for row in &sites.rows {
        if !(row.shade_tolerance.is_empty() || row.moisture_use.is_empty()) {
            let read = if row.grade == "MEMORY" { "" } else { "read" };
            line(&[
                &row.scientific_name,
                &row.shade_tolerance,
                &row.moisture_use,
                read,
            ]);
        }
    }
    Ok(lines)
}
