//! The cautions: a row and what decides it are held against each other, both ways.

use super::cells::{Cell, List, cell, keep};
use super::regional;
use super::sources::Sources;
use crate::table::{Defect, Table};
use calc::models::cautions::{Caution, When};
use calc::models::trigger::CautionInput;
use calc::models::trigger::Trigger;
use calc::terms::cite::Grade;
use calc::terms::method::Method;
use calc::terms::regional::OtherTree;
use calc::terms::species::Species;
use serde::Deserialize;
use std::path::Path;

/// A row of `evidence/cautions.csv`.
#[derive(Deserialize)]
struct CautionRow {
    #[serde(deserialize_with = "cell")]
    id: Trigger,
    #[serde(deserialize_with = "cell")]
    subject: String,
    #[serde(deserialize_with = "cell")]
    sentence: String,
    #[serde(deserialize_with = "cell")]
    methods: Methods,
    who_elsewhere: String,
    #[serde(deserialize_with = "cell")]
    source_id: List,
    #[serde(deserialize_with = "cell")]
    grade: Grade,
    #[serde(deserialize_with = "cell")]
    when: When,
    #[serde(deserialize_with = "cell")]
    input: CautionInput,
}

/// `all`, or ids of methods between blanks.
struct Methods(&'static [Method]);

impl Cell for Methods {
    fn of(text: &str) -> Result<Self, String> {
        if text == "all" {
            return Ok(Self(&[]));
        }
        let methods = text.split_whitespace().map(Method::of);
        Ok(Self(methods.collect::<Result<Vec<_>, _>>()?.leak()))
    }
}

/// The cautions in the order of the page.
pub(crate) fn read(
    root: &Path,
    sources: &Sources,
    species: &[Species],
    others: &[OtherTree],
) -> Result<&'static [Caution], Defect> {
    let table = Table::<CautionRow>::read(root, "content/evidence/cautions.csv")?;
    let rows = table.by(|row| row.id.id())?;
    let authorities = regional::authority_rows(root)?;
    regional::known(&authorities, |id| Trigger::parse(id).is_some())?;
    let mut cautions = Vec::new();
    for row in &table.rows {
        let (trigger, id) = (row.id, row.id.id());
        let (told, decided) = (row.input.word(), trigger.input().word());
        if told != decided {
            return Err(row.at.problem(format!(
                "input: {id} is \"{told}\" here, and the code decides it \"{decided}\""
            )));
        }
        let named = species
            .iter()
            .find(|species| species.cautions.contains(&trigger.id()));
        // A tree that is not on the list may carry a caution too, and then it is decided by that.
        let other = others
            .iter()
            .any(|other| other.cautions.contains(&trigger.id()));
        match (row.input, named) {
            (CautionInput::Species, None) if other => {}
            (CautionInput::Species, None) => {
                return Err(row.at.problem(format!(
                    "{id} is decided by nothing: caution_species.csv names no species for it"
                )));
            }
            (CautionInput::Species, Some(_)) | (_, None) => {}
            (_, Some(species)) => {
                return Err(row.at.problem(format!(
                    "input: caution_species.csv names {} for {id}, and \"{told}\" asks for no species",
                    species.scientific
                )));
            }
        }
        cautions.push(Caution {
            id: trigger.id(),
            trigger,
            subject: keep(&row.subject),
            sentence: keep(&row.sentence),
            who: keep(&row.who_elsewhere),
            methods: row.methods.0,
            not_in: regional::not_in(&authorities, id),
            when: row.when,
            cites: sources.cites(row.at, &row.source_id, row.grade)?,
        });
    }
    match Trigger::ALL
        .iter()
        .find(|known| !rows.contains_key(known.id()))
    {
        Some(missing) => Err(table.problem(format!("the caution \"{}\" has no row", missing.id()))),
        None => Ok(cautions.leak()),
    }
}
