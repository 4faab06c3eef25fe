//! Oak wilt and the emerald ash borer, a row for each state and province.

use super::cells::{Cell, List, MonthDay, cell, keep, maybe};
use super::sources::Sources;
use crate::table::{At, Defect, Table};
use calc::terms::cite::Grade;
use calc::timing::closed_months::{Restriction, Scope, Topic};
use calc::timing::disease::{DiseaseRegion, DiseaseStatus};
use serde::Deserialize;
use std::path::Path;

/// A row of `evidence/oak_wilt_regions.csv`.
#[derive(Deserialize)]
struct OakWiltRow {
    code: String,
    name: String,
    #[serde(deserialize_with = "cell")]
    status: DiseaseStatus,
    #[serde(deserialize_with = "maybe")]
    closed_from: Option<MonthDay>,
    #[serde(deserialize_with = "maybe")]
    closed_to: Option<MonthDay>,
    what_the_months_rest_on: String,
    #[serde(deserialize_with = "cell")]
    authority: String,
    #[serde(deserialize_with = "cell")]
    status_source: List,
    #[serde(deserialize_with = "cell")]
    status_grade: Grade,
    #[serde(deserialize_with = "cell")]
    months_source: List,
    #[serde(deserialize_with = "maybe")]
    months_grade: Option<Grade>,
}

/// A row of `evidence/ash_borer_regions.csv`.
#[derive(Deserialize)]
struct AshBorerRow {
    code: String,
    name: String,
    #[serde(deserialize_with = "cell")]
    status: DiseaseStatus,
    #[serde(deserialize_with = "maybe")]
    adults_fly_from: Option<MonthDay>,
    #[serde(deserialize_with = "maybe")]
    adults_fly_to: Option<MonthDay>,
    #[serde(deserialize_with = "cell")]
    authority: String,
    law: String,
    #[serde(deserialize_with = "cell")]
    status_source: List,
    #[serde(deserialize_with = "cell")]
    status_grade: Grade,
}

impl Cell for DiseaseStatus {
    fn of(text: &str) -> Result<Self, String> {
        match text {
            "known" => Ok(Self::Known),
            "near" => Ok(Self::Near),
            "not known" => Ok(Self::NotKnown),
            _ => Err(format!("\"{text}\" is no status: known, near, not known")),
        }
    }
}

/// The words by which a firm is told from an agency: nobody is sent to one.
const FIRMS: [&str; 6] = ["Inc", "LLC", "Ltd", "GmbH", "Company", "Tree Care"];

fn authority(at: At, name: &str) -> Result<&'static str, Defect> {
    match FIRMS.iter().find(|word| name.contains(**word)) {
        Some(word) => Err(at.problem(format!("authority: \"{word}\" is a company's"))),
        None => Ok(keep(name)),
    }
}

/// First and last day of the months, where there are any: both or neither.
fn months(
    at: At,
    from: Option<MonthDay>,
    to: Option<MonthDay>,
) -> Result<Option<(MonthDay, MonthDay)>, Defect> {
    match (from, to) {
        (Some(from), Some(to)) => Ok(Some((from, to))),
        (None, None) => Ok(None),
        _ => Err(at.problem("the months have one end")),
    }
}

/// Months as they are told of a state.
struct Told<'a> {
    code: &'a str,
    name: &'a str,
    topic: Topic,
    span: (MonthDay, MonthDay),
    force: &'a str,
    sources: &'a List,
    grade: Grade,
}

fn restriction(at: At, sources: &Sources, told: Told<'_>) -> Result<Restriction, Defect> {
    let (from, to) = told.span;
    Ok(Restriction {
        jurisdiction: keep(told.name),
        codes: vec![keep(told.code)].leak(),
        topic: told.topic,
        scope: Scope::Whole,
        from_md: (from.0, from.1),
        to_md: (to.0, to.1),
        force: keep(told.force),
        cite: sources.first(at, told.sources, told.name, told.grade)?,
    })
}

/// Oak wilt, then the ash borer.
pub(crate) fn read(root: &Path, sources: &Sources) -> Result<&'static [DiseaseRegion], Defect> {
    let mut regions = Vec::new();
    let table = Table::<OakWiltRow>::read(root, "content/evidence/oak_wilt_regions.csv")?;
    table.by(|row| &row.code)?;
    for row in &table.rows {
        let span = months(row.at, row.closed_from, row.closed_to)?;
        if span.is_some() == (row.status == DiseaseStatus::NotKnown) {
            return Err(row
                .at
                .problem("closed_from: known and near have months, not known has none"));
        }
        let months = span.map(|span| {
            let grade = row.months_grade;
            restriction(
                row.at,
                sources,
                Told {
                    code: &row.code,
                    name: &row.name,
                    topic: Topic::OakWilt,
                    span,
                    force: &row.what_the_months_rest_on,
                    sources: &row.months_source,
                    grade: grade.ok_or_else(|| row.at.problem("months_grade is empty"))?,
                },
            )
        });
        regions.push(DiseaseRegion {
            code: keep(&row.code),
            topic: Topic::OakWilt,
            status: row.status,
            authority: authority(row.at, &row.authority)?,
            months: months.transpose()?,
            cite: sources.first(row.at, &row.status_source, "", row.status_grade)?,
        });
    }
    let table = Table::<AshBorerRow>::read(root, "content/evidence/ash_borer_regions.csv")?;
    table.by(|row| &row.code)?;
    for row in &table.rows {
        let span = months(row.at, row.adults_fly_from, row.adults_fly_to)?;
        let flight = List::of("S47").map_err(|what| row.at.problem(what))?;
        let months = span.map(|span| {
            restriction(
                row.at,
                sources,
                Told {
                    code: &row.code,
                    name: &row.name,
                    topic: Topic::AshBorer,
                    span,
                    force: &row.law,
                    sources: &flight,
                    grade: Grade::Secondary,
                },
            )
        });
        regions.push(DiseaseRegion {
            code: keep(&row.code),
            topic: Topic::AshBorer,
            status: row.status,
            authority: authority(row.at, &row.authority)?,
            months: months.transpose()?,
            cite: sources.first(row.at, &row.status_source, "", row.status_grade)?,
        });
    }
    Ok(regions.leak())
}
