//! Height and crown curves: rows by species, form and region.

use super::cells::{List, Told, Usable, cell, keep};
use super::sources::Sources;
use crate::table::{Defect, RowAt, Table};
use calc::terms::cite::Grade;
use calc::terms::species::{Form, HeightRow};
use serde::Deserialize;

/// A row of `evidence/height.csv` or `evidence/crown.csv`.
#[derive(Deserialize)]
pub(crate) struct CurveRow {
    scientific_name: String,
    form: String,
    b1: Option<f64>,
    b2: Option<f64>,
    b3: Option<f64>,
    b4: Option<f64>,
    b5: Option<f64>,
    out_min: Option<f64>,
    out_max: Option<f64>,
    peak_dbh: Option<f64>,
    #[serde(deserialize_with = "cell")]
    usable: Usable,
    region: String,
    source_id: String,
    #[serde(deserialize_with = "cell")]
    grade: Grade,
}

/// A row of `rules/curve_regions.csv`: where the trees of a curve grew, in words.
#[derive(Deserialize)]
pub(crate) struct CurveRegion {
    region: String,
    words: String,
}

/// A form as the tables name it, what it is, and how many coefficients it has.
const FORMS: &[(&str, Form, usize)] = &[
    ("WYKOFF", Form::Wykoff, 2),
    ("CURTIS_ARNEY", Form::CurtisArney, 4),
    ("QUAD", Form::Quad, 3),
    ("UTD_lin", Form::Polynomial, 2),
    ("UTD_quad", Form::Polynomial, 3),
    ("UTD_cub", Form::Polynomial, 4),
    ("UTD_loglogw1", Form::LogLog(1), 3),
    ("UTD_loglogw2", Form::LogLog(2), 3),
    ("UTD_loglogw3", Form::LogLog(3), 3),
    ("UTD_loglogw4", Form::LogLog(4), 3),
    ("UTD_expow1", Form::Exp(1), 3),
];

/// The usable rows that a list of `form@region` names of a species, and what of the list is not there.
pub(crate) fn find<'a>(
    table: &'a Table<CurveRow>,
    list: &Told<List>,
    owner: &str,
) -> (Vec<&'a RowAt<CurveRow>>, Vec<String>) {
    let (mut found, mut missing) = (Vec::new(), Vec::new());
    for pair in list.is().into_iter().flat_map(|list| list.iter()) {
        let row = pair.split_once('@').and_then(|(form, region)| {
            table.rows.iter().find(|row| {
                let wanted = row.scientific_name == owner && row.form == form;
                wanted && row.region == region && row.usable.0
            })
        });
        match row {
            Some(row) => found.push(row),
            None => missing.push(format!(
                "{} has no usable row \"{pair}\" of {owner}",
                table.file()
            )),
        }
    }
    (found, missing)
}

/// The curve of a row.
pub(crate) fn curve(
    row: &RowAt<CurveRow>,
    regions: &Table<CurveRegion>,
    sources: &Sources,
) -> Result<HeightRow, Defect> {
    let known = FORMS.iter().find(|(name, ..)| *name == row.form);
    let (name, form, count) = known.ok_or_else(|| {
        let what = format!("form: \"{}\" is not known", row.form);
        row.at.problem(what)
    })?;
    let given = [row.b1, row.b2, row.b3, row.b4, row.b5];
    if given.iter().skip(*count).flatten().any(|b| *b != 0.0) {
        return Err(row
            .at
            .problem(format!("{name} has only {count} coefficients")));
    }
    if given.iter().take(*count).any(Option::is_none) {
        return Err(row.at.problem(format!("{name} needs {count} coefficients")));
    }
    let mut named = regions.rows.iter();
    let place = named.find(|of| of.region == row.region).ok_or_else(|| {
        row.at.problem(format!(
            "region: {} has no row in {}",
            row.region,
            regions.file()
        ))
    })?;
    Ok(HeightRow {
        form: *form,
        b: given.map(Option::unwrap_or_default),
        out: row.out_min.zip(row.out_max),
        peak: row.peak_dbh,
        region: keep(&row.region),
        cite: sources.cite(row.at, &row.source_id, &place.words, row.grade)?,
    })
}
