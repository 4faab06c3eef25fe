//! The share of ringed stems that is dead after each season, by class and size, and of single species.

use super::cells::{List, Names, cell, keep};
use super::methods::in_order;
use super::sources::Sources;
use crate::table::{At, Defect, Table};
use calc::models::outlook::{OutlookClass, OutlookOverride, OutlookRow, Share, SizeClass};
use calc::terms::cite::Grade;
use calc::terms::species::Species;
use serde::Deserialize;
use std::path::Path;

/// A row of `evidence/outlook.csv`.
#[derive(Deserialize)]
struct ClassRow {
    #[serde(deserialize_with = "cell")]
    class: OutlookClass,
    #[serde(deserialize_with = "cell")]
    size: SizeClass,
    s1_low: f64,
    s1_likely: Option<f64>,
    s1_high: f64,
    s2_low: f64,
    s2_likely: Option<f64>,
    s2_high: f64,
    s3_low: f64,
    s3_likely: Option<f64>,
    s3_high: f64,
    second_ring_low: f64,
    second_ring_high: f64,
    anchors: String,
    our_own_assumption: String,
    #[serde(deserialize_with = "cell")]
    source_ids: List,
}

/// A row of `evidence/outlook_species.csv`.
#[derive(Deserialize)]
struct SpeciesRow {
    #[serde(deserialize_with = "cell")]
    scientific_name: Names,
    #[serde(deserialize_with = "cell")]
    size: SizeClass,
    season: String,
    low: f64,
    likely: Option<f64>,
    high: f64,
    n: String,
    #[serde(deserialize_with = "cell")]
    source_ids: List,
    #[serde(deserialize_with = "cell")]
    grade: Grade,
    note: String,
}

/// A share cannot be more, percent.
const ALL: f64 = 100.0;

fn share(at: At, low: f64, likely: Option<f64>, high: f64) -> Result<Share, Defect> {
    in_order(at, "low to high", low, high, ALL)?;
    if likely.is_some_and(|likely| !(low..=high).contains(&likely)) {
        return Err(at.problem("the likely value lies outside its range"));
    }
    Ok(Share { low, likely, high })
}

type Both = (&'static [OutlookRow], &'static [OutlookOverride]);

/// Classes, then single species.
pub(crate) fn read(root: &Path, sources: &Sources, listed: &[Species]) -> Result<Both, Defect> {
    let table = Table::<ClassRow>::read(root, "content/evidence/outlook.csv")?;
    let mut classes = Vec::new();
    for row in &table.rows {
        let at = row.at;
        let (low, high) = (row.second_ring_low, row.second_ring_high);
        in_order(at, "second_ring_low to second_ring_high", low, high, ALL)?;
        let own = &row.our_own_assumption;
        let mut cites = Vec::new();
        for id in row.source_ids.iter() {
            cites.push(sources.cite(at, id, "counts that bound the cell", Grade::Published)?);
        }
        if !own.is_empty() {
            cites.push(sources.cite(at, "own", own, Grade::Assumption)?);
        }
        if cites.is_empty() {
            return Err(
                at.problem("neither source_ids nor our_own_assumption says what it rests on")
            );
        }
        classes.push(OutlookRow {
            class: row.class,
            size: row.size,
            seasons: [
                share(at, row.s1_low, row.s1_likely, row.s1_high)?,
                share(at, row.s2_low, row.s2_likely, row.s2_high)?,
                share(at, row.s3_low, row.s3_likely, row.s3_high)?,
            ],
            second_ring: (low, high),
            anchors: keep(&told(&row.anchors, sources)),
            own: keep(&told(own, sources)),
            cites: cites.leak(),
        });
    }
    let table = Table::<SpeciesRow>::read(root, "content/evidence/outlook_species.csv")?;
    let mut species = Vec::new();
    for row in &table.rows {
        for name in &row.scientific_name.0 {
            if !listed.iter().any(|species| species.scientific == name) {
                return Err(row
                    .at
                    .problem(format!("{name} is no species of species_join.csv")));
            }
            species.push(OutlookOverride {
                scientific: keep(name),
                size: row.size,
                season: keep(&row.season),
                share: share(row.at, row.low, row.likely, row.high)?,
                n: keep(&row.n),
                note: keep(&row.note),
                cites: sources.cites(row.at, &row.source_ids, row.grade)?,
            });
        }
    }
    Ok((classes.leak(), species.leak()))
}

/// A note on a cell as a reader gets it: `M01` and `S02` by the label of their source, S1 to S4 as seasons.
fn told(note: &str, sources: &Sources) -> String {
    let mut told = String::new();
    for piece in note.split_inclusive(|c: char| !c.is_ascii_alphanumeric()) {
        let word = piece.trim_end_matches(|c: char| !c.is_ascii_alphanumeric());
        let after = &piece[word.len()..];
        match (word.strip_prefix('S'), sources.label(word)) {
            (Some(season @ ("1" | "2" | "3" | "4")), _) => {
                told.push_str("season ");
                told.push_str(season);
            }
            (_, Some(label)) if is_id(word) => {
                told.push_str(label);
                told.push_str(if after == " " { ":" } else { "" });
            }
            _ => told.push_str(word),
        }
        told.push_str(after);
    }
    told
}

/// True of a letter and two digits.
fn is_id(word: &str) -> bool {
    word.len() == 3
        && word.starts_with(|c: char| c.is_ascii_uppercase())
        && word.bytes().skip(1).all(|c| c.is_ascii_digit())
}
