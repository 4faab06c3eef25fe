//! Months that law or biology names.

use super::cells::{Codes, List, MonthDay, cell, keep};
use super::sources::Sources;
use crate::table::{At, Defect, Table};
use calc::terms::cite::Grade;
use calc::timing::closed_months::{Restriction, Scope, Topic};
use serde::Deserialize;
use std::path::Path;

/// A row of `rules/seasonal_restrictions.csv`.
#[derive(Deserialize)]
struct MonthsRow {
    jurisdiction: String,
    #[serde(deserialize_with = "cell")]
    from_md: MonthDay,
    #[serde(deserialize_with = "cell")]
    to_md: MonthDay,
    force: String,
    #[serde(deserialize_with = "cell")]
    grade: Grade,
    source: String,
    #[serde(deserialize_with = "cell")]
    source_id: List,
    #[serde(deserialize_with = "cell")]
    kind: Topic,
    #[serde(deserialize_with = "cell")]
    scope: Scope,
    #[serde(deserialize_with = "cell")]
    codes: Codes,
}

/// A group's own months come from its settings, never from a table.
fn topic(at: At, kind: Topic) -> Result<Topic, Defect> {
    match kind {
        Topic::Group => Err(at.problem("kind: \"group\" stands in no table")),
        other => Ok(other),
    }
}

/// The months, in the order of the table.
pub(crate) fn read(root: &Path, sources: &Sources) -> Result<&'static [Restriction], Defect> {
    let table = Table::<MonthsRow>::read(root, "content/rules/seasonal_restrictions.csv")?;
    let mut months = Vec::new();
    for row in &table.rows {
        months.push(Restriction {
            jurisdiction: keep(&row.jurisdiction),
            codes: row.codes.0,
            topic: topic(row.at, row.kind)?,
            scope: row.scope,
            from_md: (row.from_md.0, row.from_md.1),
            to_md: (row.to_md.0, row.to_md.1),
            force: keep(&row.force),
            cite: sources.first(row.at, &row.source_id, &row.source, row.grade)?,
        });
    }
    Ok(months.leak())
}
