//! What the reader of lists knows: headers in five languages, words in cells, and the symbols of plants that our tables
//! name; and what a plan of many trees assumes. A header that stands twice, or a word that means two things of one kind, stops the build.

use super::cells::{Cell, cell, keep};
use super::constants;
use super::sources::Sources;
use crate::list_tables::{CellWord, Column, HeaderWord, ListTables, WordKind, fold, header_key};
use crate::table::{Defect, Table};
use serde::Deserialize;
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

/// A row of `rules/list_headers.csv`.
#[derive(Deserialize)]
struct HeaderRow {
    #[serde(deserialize_with = "cell")]
    header: String,
    #[serde(deserialize_with = "cell")]
    column: Column,
    unit: String,
    language: String,
}

/// A row of `rules/list_words.csv`.
#[derive(Deserialize)]
struct WordRow {
    #[serde(deserialize_with = "cell")]
    kind: WordKind,
    #[serde(deserialize_with = "cell")]
    word: String,
    means: String,
    language: String,
}

#[derive(Deserialize)]
struct SymbolRow {
    symbol: String,
}

#[derive(Deserialize)]
struct OwnCodeRow {
    plants_code: String,
}

#[derive(Deserialize)]
struct CodeRow {
    code: String,
}

impl Cell for Column {
    fn of(text: &str) -> Result<Self, String> {
        Self::parse(text)
            .ok_or_else(|| format!("\"{text}\" is no column: {}", Self::NAMES.join(", ")))
    }
}

impl Cell for WordKind {
    fn of(text: &str) -> Result<Self, String> {
        Self::parse(text)
            .ok_or_else(|| format!("\"{text}\" is no kind: {}", Self::NAMES.join(", ")))
    }
}

/// Languages whose headers are read.
const LANGUAGES: [&str; 5] = ["en", "es", "fr", "de", "pt"];

/// Units that a header may imply.
const UNITS: [&str; 6] = ["", "in", "ft", "cm", "mm", "m"];

/// Kinds whose words say all: nothing stands in `means`.
fn says_all(kind: WordKind) -> bool {
    use WordKind::{
        Broken, DistanceHeader, Missing, NoTag, NoteFault, NoteGone, NoteKeep, NoteNoWire,
        NoteWire, PeopleHeader, SeveralStems, StemWord, Total, WiresHeader,
    };
    matches!(
        kind,
        Broken
            | Missing
            | NoTag
            | NoteGone
            | NoteWire
            | NoteNoWire
            | NoteFault
            | NoteKeep
            | DistanceHeader
            | SeveralStems
            | StemWord
            | Total
            | WiresHeader
            | PeopleHeader
    )
}

/// What words of a kind may mean.
fn meanings(kind: WordKind) -> &'static [&'static str] {
    match kind {
        WordKind::NotTree => &[
            "vacant",
            "stump",
            "removed",
            "replaced",
            "hedge",
            "bush",
            "paving",
            "furniture",
        ],
        WordKind::Dead => &["dead", "fallen"],
        WordKind::Condition => &["alive", "declining", "unknown"],
        WordKind::Lean => &["none", "toward", "away", "unknown"],
        WordKind::Target => &[
            "building",
            "road",
            "path",
            "line",
            "property_line",
            "fence",
            "keep_tree",
            "none",
            "unknown",
        ],
        WordKind::Line => &["yes", "no", "cant_tell"],
        WordKind::YesNo => &["yes", "no", "unknown"],
        WordKind::Status => &[
            "planned",
            "treated",
            "checked",
            "resprouted",
            "dead_standing",
            "fallen",
            "skip",
        ],
        WordKind::Denial => &["no", "beside"],
        WordKind::Slope => &["level"],
        WordKind::Sign => &[
            "cavity",
            "cracks",
            "conks",
            "hung_limbs",
            "lean_toward",
            "lean_away",
            "dead_top",
            "vines",
        ],
        WordKind::UnknownName => &["", "unknown broadleaf", "unknown conifer"],
        _ => &[""],
    }
}

/// The tables.
///
/// # Errors
/// The first thing that is wrong, with its file and line.
pub(crate) fn read(root: &Path) -> Result<ListTables, Defect> {
    Ok(ListTables {
        headers: headers(root)?,
        words: words(root)?,
        symbols: symbols(root)?,
        assumed: constants::of_plans(root, &Sources::read(root)?)?,
    })
}

fn headers(root: &Path) -> Result<&'static [HeaderWord], Defect> {
    let table = Table::<HeaderRow>::read(root, "content/rules/list_headers.csv")?;
    let mut known: BTreeMap<String, HeaderWord> = BTreeMap::new();
    for row in &table.rows {
        let key = header_key(&row.header);
        if key.is_empty() {
            return Err(row.at.problem(format!("\"{}\" has no letter", row.header)));
        }
        if !UNITS.contains(&row.unit.as_str()) {
            return Err(row.at.problem(format!(
                "unit: \"{}\" is not one of in, ft, cm, mm, m",
                row.unit
            )));
        }
        if !LANGUAGES.contains(&row.language.as_str()) {
            return Err(row.at.problem(format!(
                "language: \"{}\" is not one of {}",
                row.language,
                LANGUAGES.join(", ")
            )));
        }
        let word = HeaderWord {
            key: keep(&key),
            column: row.column,
            unit: keep(&row.unit),
            language: keep(&row.language),
        };
        if known.insert(key, word).is_some() {
            return Err(row.at.problem(format!("\"{}\" stands twice", row.header)));
        }
    }
    // Each canonical name reads itself.
    for column in Column::NAMES {
        let read = known
            .get(&header_key(column))
            .map(|word| word.column.name());
        if read != Some(column) && !OWN_ONLY.contains(column) {
            return Err(table.problem(format!("there is no header \"{column}\"")));
        }
    }
    Ok(known.into_values().collect::<Vec<_>>().leak())
}

/// Columns that nobody heads so: their names stand in files of decisions alone.
const OWN_ONLY: [&str; 6] = [
    "size_class",
    "wires",
    "point",
    "projected",
    "people",
    "keep",
];

fn words(root: &Path) -> Result<&'static [CellWord], Defect> {
    let table = Table::<WordRow>::read(root, "content/rules/list_words.csv")?;
    let mut known: BTreeMap<(WordKind, String), &'static str> = BTreeMap::new();
    for row in &table.rows {
        let may = meanings(row.kind);
        if !may.contains(&row.means.as_str()) {
            return Err(row.at.problem(if says_all(row.kind) {
                format!(
                    "means: \"{}\": this kind of word says all itself",
                    row.means
                )
            } else {
                format!("means: \"{}\" is not one of {}", row.means, may.join(", "))
            }));
        }
        if !LANGUAGES.contains(&row.language.as_str()) {
            return Err(row.at.problem(format!(
                "language: \"{}\" is not one of {}",
                row.language,
                LANGUAGES.join(", ")
            )));
        }
        let key = (row.kind, fold(&row.word));
        match known.get(&key) {
            Some(means) if *means != row.means => {
                return Err(row.at.problem(format!(
                    "\"{}\" means {means} too, without its accents",
                    row.word
                )));
            }
            _ => known.insert(key, keep(&row.means)),
        };
    }
    let words = known.into_iter().map(|((kind, word), means)| CellWord {
        kind,
        word: keep(&word),
        means,
    });
    Ok(words.collect::<Vec<_>>().leak())
}

/// Symbols of our own species, of the bark table and of the table of sprouts.
fn symbols(root: &Path) -> Result<&'static [&'static str], Defect> {
    let sprouts = Table::<SymbolRow>::read(root, "content/evidence/plants_resprout.csv")?;
    let bark = Table::<CodeRow>::read(root, "content/evidence/bark_all_species.csv")?;
    let own = Table::<OwnCodeRow>::read(root, "content/evidence/species_join.csv")?;
    let mut all: BTreeSet<String> = BTreeSet::new();
    all.extend(own.rows.iter().map(|row| row.plants_code.clone()));
    all.extend(sprouts.rows.iter().map(|row| row.symbol.clone()));
    all.extend(bark.rows.iter().map(|row| row.code.clone()));
    all.retain(|symbol| symbol.bytes().all(|c| c.is_ascii_alphanumeric()) && symbol.len() > 1);
    Ok(all
        .iter()
        .map(|symbol| keep(symbol))
        .collect::<Vec<_>>()
        .leak())
}
