//! Trials in which trees were ringed: deaths by a ring alone, and what the others say in words.

use super::cells::{List, Names, cell, keep};
use super::sources::Sources;
use crate::table::{Defect, Table};
use calc::terms::cite::Grade;
use calc::terms::species::{DeathRow, TrialTold};
use serde::Deserialize;

/// A row of `evidence/mortality.csv`, as printed.
#[derive(Deserialize)]
pub(crate) struct DeathCells {
    #[serde(deserialize_with = "cell")]
    pub species: Names,
    pub n: String,
    pub dbh_range: String,
    pub girdle_type: String,
    pub season: String,
    pub months_or_seasons_after: String,
    pub percent_dead: String,
    pub what_counted: String,
    pub shown: String,
    pub say_instead: String,
    #[serde(deserialize_with = "cell")]
    pub source_id: List,
    #[serde(deserialize_with = "cell")]
    pub grade: Grade,
}

/// What trials of a ring counted.
#[derive(Default)]
pub(crate) struct Trials {
    /// Deaths by a ring alone.
    pub deaths: Vec<DeathRow>,
    /// What others say in words.
    pub told: Vec<TrialTold>,
}

/// A row that counted something else than deaths by a ring alone is never printed as deaths.
pub(crate) fn read(
    name: &str,
    table: &Table<DeathCells>,
    sources: &Sources,
) -> Result<Trials, Defect> {
    let mut trials = Trials::default();
    for row in &table.rows {
        let is_of = row.species.0.iter().any(|of| of == name);
        if !is_of || row.grade == Grade::Memory {
            continue;
        }
        let id = row.source_id.first().map_or("", String::as_str);
        sources.grade(row.at, id, row.grade)?;
        match row.shown.as_str() {
            "yes" => trials.deaths.push(DeathRow {
                n: keep(&row.n),
                dbh: keep(&row.dbh_range),
                ring: keep(&row.girdle_type),
                season: keep(&row.season),
                after: keep(&row.months_or_seasons_after),
                dead: keep(&counted(row)),
                source: sources.name(id),
            }),
            "no" => {}
            other => {
                let what = format!("shown: \"{other}\" is not yes or no");
                return Err(row.at.problem(what));
            }
        }
        if !row.say_instead.is_empty() {
            trials.told.push(TrialTold {
                text: keep(&row.say_instead),
                source: sources.name(id),
            });
        }
    }
    Ok(trials)
}

/// Percent dead, and what was counted where it is more than that: `65 (ringed again where it healed)`.
fn counted(row: &DeathCells) -> String {
    let what = row.what_counted.as_str();
    let more = what.strip_prefix("dead").unwrap_or(what);
    let more = more.strip_prefix("; ").unwrap_or(more).trim();
    match more {
        "" => row.percent_dead.clone(),
        more => format!("{} ({more})", row.percent_dead),
    }
}
