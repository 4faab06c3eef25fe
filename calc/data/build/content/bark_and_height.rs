//! What the size of a tree needs beside its curves: ranges of bark, factors and floors of the hazard height, and where a
//! state or country lies.

use super::cells::{Cell, List, cell, keep};
use super::sources::Sources;
use crate::table::{Defect, RowAt, Table};
use calc::models::bark::BarkRange;
use calc::models::grown::ClimateRegion;
use calc::models::height_hazard::{HazardRow, Measure, Trees};
use calc::terms::cite::Grade;
use calc::terms::place::{HeightBand, Hemisphere};
use calc::terms::species::{Confidence, Species};
use calc::terms::tree::Setting;
use serde::Deserialize;
use std::path::Path;

/// A row of `evidence/region_places.csv`, as far as the answer reads it without the climate at hand.
#[derive(Deserialize)]
struct RegionRow {
    region: String,
    #[serde(deserialize_with = "cell")]
    hemisphere: Hemisphere,
    #[serde(deserialize_with = "cell")]
    height_band: HeightBand,
}

/// A row of `evidence/bark_ranges.csv`.
#[derive(Deserialize)]
struct RangeRow {
    #[serde(deserialize_with = "cell")]
    confidence: Confidence,
    #[serde(deserialize_with = "cell")]
    grown_in: GrownIn,
    low: f64,
    high: f64,
    #[serde(deserialize_with = "cell")]
    source_id: List,
    #[serde(deserialize_with = "cell")]
    grade: Grade,
}

/// A row of `evidence/height_hazard.csv`.
#[derive(Deserialize)]
pub(crate) struct HazardCells {
    #[serde(deserialize_with = "cell")]
    kind: Kind,
    group: String,
    setting: String,
    band: String,
    a: String,
    b: String,
    #[serde(deserialize_with = "cell")]
    source_id: List,
    #[serde(deserialize_with = "cell")]
    grade: Grade,
}

/// Where a range of bark holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum GrownIn {
    NorthAmerica,
    Elsewhere,
}

impl Cell for GrownIn {
    fn of(text: &str) -> Result<Self, String> {
        match text {
            "North America" => Ok(Self::NorthAmerica),
            "elsewhere" => Ok(Self::Elsewhere),
            _ => Err(format!("\"{text}\" is neither North America nor elsewhere")),
        }
    }
}

/// What a row of the hazard heights gives.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Kind {
    Gives(Measure),
    /// A small species, for which the floor does not hold.
    NoFloor,
}

impl Cell for Kind {
    fn of(text: &str) -> Result<Self, String> {
        match text {
            "no_floor" => Ok(Self::NoFloor),
            _ => Measure::parse(text).map(Self::Gives).ok_or_else(|| {
                let words = Measure::WORDS.join(", ");
                format!("\"{text}\" is none of {words}, no_floor")
            }),
        }
    }
}

impl Cell for Hemisphere {
    fn of(text: &str) -> Result<Self, String> {
        match text {
            "N" => Ok(Self::North),
            "S" => Ok(Self::South),
            _ => Err(format!("\"{text}\" is neither N nor S")),
        }
    }
}

impl Cell for HeightBand {
    fn of(text: &str) -> Result<Self, String> {
        let words = Self::WORDS.join(", ");
        Self::parse(text).ok_or_else(|| format!("\"{text}\" is none of {words}, anywhere"))
    }
}

/// States and countries that the climate table tells of.
pub(crate) fn regions(root: &Path) -> Result<&'static [ClimateRegion], Defect> {
    let table = Table::<RegionRow>::read(root, "content/evidence/region_places.csv")?;
    table.by(|row| &row.region)?;
    let region = |row: &RowAt<RegionRow>| ClimateRegion {
        code: keep(&row.region),
        south: row.hemisphere == Hemisphere::South,
        band: row.height_band,
    };
    Ok(table.rows.iter().map(region).collect::<Vec<_>>().leak())
}

/// How far the bark lies from an estimate, by trust and continent: each once.
pub(crate) fn bark_ranges(root: &Path, sources: &Sources) -> Result<&'static [BarkRange], Defect> {
    let table = Table::<RangeRow>::read(root, "content/evidence/bark_ranges.csv")?;
    let mut ranges: Vec<BarkRange> = Vec::new();
    for row in &table.rows {
        let north_america = row.grown_in == GrownIn::NorthAmerica;
        let twice = |range: &BarkRange| {
            (range.confidence, range.north_america) == (row.confidence, north_america)
        };
        if ranges.iter().any(twice) {
            return Err(row.at.problem("this range stands twice"));
        }
        if !(0.1..=1.0).contains(&row.low) || !(1.0..=5.0).contains(&row.high) {
            return Err(row
                .at
                .problem("low lies between 0.1 and 1, high between 1 and 5"));
        }
        ranges.push(BarkRange {
            confidence: row.confidence,
            north_america,
            low: row.low,
            high: row.high,
            cites: sources.cites(row.at, &row.source_id, row.grade)?,
        });
    }
    if ranges.len() != 2 * Confidence::ALL.len() {
        return Err(table.problem("each confidence needs a range here and one elsewhere"));
    }
    Ok(ranges.leak())
}

/// Factors, floors and shown ranges of the heights. A small species is one of the list.
pub(crate) fn hazard(
    root: &Path,
    sources: &Sources,
    listed: &[Species],
) -> Result<&'static [HazardRow], Defect> {
    let table = hazard_table(root)?;
    let mut rows = Vec::new();
    for row in &table.rows {
        let Kind::Gives(measure) = row.kind else {
            if listed.iter().all(|species| species.scientific != row.group) {
                let what = format!("{} is no species of species_join.csv", row.group);
                return Err(row.at.problem(what));
            }
            continue;
        };
        let problem = |what: String| row.at.problem(what);
        rows.push(HazardRow {
            measure,
            trees: Trees::parse(&row.group)
                .ok_or_else(|| problem(format!("group: \"{}\" is not known", row.group)))?,
            setting: match row.setting.as_str() {
                "both" => None,
                word => Some(Setting::parse(word).ok_or_else(|| {
                    problem(format!("setting: \"{word}\" is none of woods, open, both"))
                })?),
            },
            band: match row.band.as_str() {
                "anywhere" => None,
                word => {
                    Some(HeightBand::of(word).map_err(|what| problem(format!("band: {what}")))?)
                }
            },
            values: values(row, measure)?,
            cites: sources.cites(row.at, &row.source_id, row.grade)?,
        });
    }
    Ok(rows.leak())
}

/// The table of the hazard heights.
pub(crate) fn hazard_table(root: &Path) -> Result<Table<HazardCells>, Defect> {
    Table::read(root, "content/evidence/height_hazard.csv")
}

/// Whether the least height of tall trees does not hold for a species.
pub(crate) fn is_small(table: &Table<HazardCells>, name: &str) -> bool {
    let rows = &table.rows;
    rows.iter()
        .any(|row| row.kind == Kind::NoFloor && row.group == name)
}

/// The four numbers of a row: `1.40` and `1.50`, or `0.50;0.85` and `1.18;1.43`.
fn values(row: &RowAt<HazardCells>, measure: Measure) -> Result<[f64; 4], Defect> {
    let within = match measure {
        Measure::Factor => 1.0..=3.0,
        Measure::Floor => -20.0..=20.0,
        Measure::Shown => 0.1..=5.0,
    };
    let many = if measure == Measure::Shown { 2 } else { 1 };
    let mut values = Vec::new();
    for (column, cell) in [("a", &row.a), ("b", &row.b)] {
        let parts = cell.split(';').map(|part| {
            let value = part.trim().parse::<f64>();
            value.ok().filter(|value| within.contains(value))
        });
        let parts: Option<Vec<f64>> = parts.collect();
        match parts {
            Some(parts) if parts.len() == many => values.extend(parts),
            _ => {
                let what = format!("{column}: \"{cell}\" is not what this kind of row needs");
                return Err(row.at.problem(what));
            }
        }
    }
    values.resize(4, 0.0);
    let [a, b, c, d] = values[..] else {
        return Err(row.at.problem("a row has at most four numbers"));
    };
    Ok([a, b, c, d])
}
