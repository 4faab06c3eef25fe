//! Animals that may use a standing dead tree, and how many of them guidelines ask for.

use super::cells::{Codes, cell, keep};
use super::sources::Sources;
use crate::table::{Defect, Table};
use calc::models::habitat::{CavityUser, SnagGuide};
use calc::terms::cite::Grade;
use serde::Deserialize;
use std::path::Path;

/// A row of `evidence/cavity_users.csv`.
#[derive(Deserialize)]
struct UserRow {
    common_name: String,
    region: String,
    min_dbh_in: Option<f64>,
    typical_dbh_in: Option<f64>,
    min_height_ft: Option<f64>,
    note: String,
    source_id: String,
    #[serde(deserialize_with = "cell")]
    grade: Grade,
}

/// A row of `evidence/regions.csv`: what a source calls a region, in codes.
#[derive(Deserialize)]
struct RegionRow {
    region_text: String,
    #[serde(deserialize_with = "cell")]
    codes: Codes,
}

/// A row of `evidence/snag_guides.csv`.
#[derive(Deserialize)]
struct GuideRow {
    guidance: String,
    per_acre: String,
    #[serde(deserialize_with = "cell")]
    codes: Codes,
    source_id: String,
    #[serde(deserialize_with = "cell")]
    grade: Grade,
    note: String,
}

/// Animals; what is only remembered is never shown as sourced, so it stays out.
pub(crate) fn cavity_users(
    root: &Path,
    sources: &Sources,
) -> Result<&'static [CavityUser], Defect> {
    let regions = Table::<RegionRow>::read(root, "content/evidence/regions.csv")?;
    let regions = regions.by(|row| &row.region_text)?;
    let table = Table::<UserRow>::read(root, "content/evidence/cavity_users.csv")?;
    let mut users = Vec::new();
    for row in table.rows.iter().filter(|row| row.grade != Grade::Memory) {
        let region = regions.get(row.region.as_str()).ok_or_else(|| {
            let what = format!("region: \"{}\" is not in regions.csv", row.region);
            row.at.problem(what)
        })?;
        users.push(CavityUser {
            name: keep(&row.common_name),
            regions: region.codes.0,
            min_dbh_in: row.min_dbh_in.or(row.typical_dbh_in),
            min_height_ft: row.min_height_ft,
            note: keep(&row.note),
            cite: sources.cite(row.at, &row.source_id, "", row.grade)?,
        });
    }
    Ok(users.leak())
}

/// Snags an acre by guideline; what is only remembered stays out.
pub(crate) fn snag_guides(root: &Path, sources: &Sources) -> Result<&'static [SnagGuide], Defect> {
    let table = Table::<GuideRow>::read(root, "content/evidence/snag_guides.csv")?;
    let mut guides = Vec::new();
    for row in table.rows.iter().filter(|row| row.grade != Grade::Memory) {
        guides.push(SnagGuide {
            guidance: keep(&row.guidance),
            per_acre: keep(&row.per_acre),
            regions: row.codes.0,
            note: keep(&row.note),
            because: sources.cite(row.at, &row.source_id, "snags an acre", row.grade)?,
        });
    }
    Ok(guides.leak())
}
