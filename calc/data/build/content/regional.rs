//! What lies in a file beside the module: who decides and what the law says by country, and the trees that are not on
//! the list. Laws that nobody read stay out of it: there it names who decides, and nothing else.

use super::cells::{Cell, Codes, List, cell, keep, maybe};
use super::sources::Sources;
use super::species_tables::ByPlaceRow;
use crate::table::{At, Defect, RowAt, Table};
use calc::reference::NameByPlace;
use calc::terms::cite::{Cite, Grade};
use calc::terms::regional::{Authority, OtherTree, Regional};
use calc::terms::species::{NativeRange, Species, Trait};
use serde::Deserialize;
use std::path::Path;
use std::sync::OnceLock;

/// A row of `evidence/caution_authorities.csv`.
#[derive(Deserialize)]
pub(crate) struct AuthorityRow {
    pub caution: String,
    pub region: String,
    #[serde(deserialize_with = "cell")]
    pub applies: Applies,
    who_decides: String,
    law_in_plain_words: String,
    #[serde(deserialize_with = "cell")]
    source_id: List,
    #[serde(deserialize_with = "cell")]
    grade: Grade,
}

/// Whether a caution is told in a country; where a state's own table decides, it is.
#[derive(PartialEq, Eq)]
pub(crate) enum Applies {
    Yes,
    No,
}

impl Cell for Applies {
    fn of(text: &str) -> Result<Self, String> {
        match text {
            "no" => Ok(Self::No),
            "yes" | "ask" | "near" | "by state" | "by province" => Ok(Self::Yes),
            _ => Err(format!(
                "\"{text}\" is not yes, no, ask, near, by state, by province"
            )),
        }
    }
}

/// A row of `evidence/other_names.csv`.
#[derive(Deserialize)]
struct OtherRow {
    #[serde(deserialize_with = "cell")]
    name: String,
    #[serde(deserialize_with = "cell")]
    also: List,
    #[serde(deserialize_with = "cell")]
    scientific_name: String,
    status: String,
    #[serde(deserialize_with = "cell")]
    native_codes: Codes,
    #[serde(deserialize_with = "cell")]
    lookalike_of: List,
    #[serde(deserialize_with = "cell")]
    never_offer: List,
    group: String,
    traits: String,
    #[serde(deserialize_with = "cell")]
    cautions: List,
    say_where_native: String,
    say_elsewhere: String,
    mind: String,
    #[serde(deserialize_with = "cell")]
    source_id: List,
    #[serde(deserialize_with = "cell")]
    grade: Grade,
}

/// A line of `rules/mark_of_caution.csv`: the mark behind a caution that holds for a whole genus.
#[derive(Deserialize)]
struct MarkRow {
    word: String,
    #[serde(rename = "trait", deserialize_with = "maybe")]
    mark: Option<Trait>,
}

impl Cell for Trait {
    fn of(text: &str) -> Result<Self, String> {
        Self::parse(text).ok_or_else(|| format!("\"{text}\" is no mark that a rule asks for"))
    }
}

/// Words beside who decides that tell nothing of a law.
const NO_LAW: [&str; 5] = [
    "No law; practice",
    "Advice",
    "Ask",
    "Ask; no national months",
    "Permission in writing",
];

/// Entries of the list that another tree may be taken as.
const GROUPS: [&str; 3] = ["unknown broadleaf", "unknown conifer", "unknown shrub"];

/// The rows of who decides, which the cautions ask too: where one of them is not told.
pub(crate) fn authority_rows(root: &Path) -> Result<Table<AuthorityRow>, Defect> {
    Table::read(root, "content/evidence/caution_authorities.csv")
}

/// The whole file. All that the module itself cites is known by now: what only this file cites gets the numbers after.
pub(crate) fn read(
    root: &Path,
    sources: &Sources,
    others: &'static [OtherTree],
) -> Result<Regional, Defect> {
    let rows = authority_rows(root)?;
    let in_module = sources.lines_from(0).len();
    let told = rows.rows.iter().filter(|row| row.applies == Applies::Yes);
    let mut authorities = told
        .map(|row| authority(row, &rows, sources))
        .collect::<Result<Vec<_>, _>>()?;
    // The reader goes to the first row of a caution.
    authorities.sort_by_key(|authority: &Authority| authority.caution);
    Ok(Regional {
        sources: sources.lines_from(in_module),
        sources_by_id: sources.by_id(),
        authorities: authorities.leak(),
        others,
    })
}

fn authority(
    row: &RowAt<AuthorityRow>,
    rows: &Table<AuthorityRow>,
    sources: &Sources,
) -> Result<Authority, Defect> {
    let law = row.law_in_plain_words.as_str();
    let read = row.grade != Grade::Memory && !NO_LAW.contains(&law);
    let id = row.source_id.first().map_or("", String::as_str);
    Ok(Authority {
        caution: keep(&row.caution),
        country: keep(&row.region),
        who: keep(who(row, rows)?),
        law: if read { keep(law) } else { "" },
        cite: Cite {
            source: sources.name(id),
            place: if id == "own" { "who decides" } else { "" },
            grade: sources.grade(row.at, id, row.grade)?,
        },
    })
}

/// Who decides. `see the line on felling licences` is that line's; `see oak_wilt_regions.csv` is the state's own, which
/// the module has.
fn who<'a>(row: &'a RowAt<AuthorityRow>, rows: &'a Table<AuthorityRow>) -> Result<&'a str, Defect> {
    match row.who_decides.as_str() {
        "see oak_wilt_regions.csv" | "see ash_borer_regions.csv" => Ok(""),
        "see the line on felling licences" => {
            let is =
                |other: &&RowAt<AuthorityRow>| other.caution == "LW9" && other.region == row.region;
            let found = rows.rows.iter().find(is);
            let none = || row.at.problem("there is no line on felling licences");
            found
                .map(|other| other.who_decides.as_str())
                .ok_or_else(none)
        }
        other if other.starts_with("see ") => Err(row
            .at
            .problem(format!("who_decides: \"{other}\" names nobody"))),
        other => Ok(other),
    }
}

/// The trees that are not on the list.
pub(crate) fn others(
    root: &Path,
    sources: &Sources,
    listed: &[Species],
) -> Result<&'static [OtherTree], Defect> {
    let table = Table::<OtherRow>::read(root, "content/evidence/other_names.csv")?;
    let marks = Table::<MarkRow>::read(root, "content/rules/mark_of_caution.csv")?;
    let mut others = Vec::new();
    // An alias of a listed tree is a name of that tree; by place it stands in names_by_place.csv.
    for row in table.rows.iter().filter(|row| row.status != "listed") {
        others.push(other(row, &marks, sources, listed)?);
    }
    Ok(others.leak())
}

fn other(
    row: &RowAt<OtherRow>,
    marks: &Table<MarkRow>,
    sources: &Sources,
    listed: &[Species],
) -> Result<OtherTree, Defect> {
    let scientific = row.scientific_name.as_str();
    let is_listed = |name: &str| {
        let mut species = listed.iter();
        species.any(|species| species.scientific == name || species.names.contains(&name))
    };
    if is_listed(scientific) {
        let what = format!("{scientific} is on the list: its row here must go");
        return Err(row.at.problem(what));
    }
    // Names as the tables of evidence show them, which is not always as a species shows its own; `lookalike_of` says
    // the same by scientific name.
    if let Some(stranger) = row.lookalike_of.iter().find(|name| !is_listed(name)) {
        return Err(row
            .at
            .problem(format!("lookalike_of: \"{stranger}\" is not on the list")));
    }
    if row.never_offer.is_empty() != row.lookalike_of.is_empty() {
        return Err(row
            .at
            .problem("never_offer: it names what lookalike_of names"));
    }
    if !GROUPS.contains(&row.group.as_str()) {
        let what = format!(
            "group: \"{}\" is no entry for an unknown species",
            row.group
        );
        return Err(row.at.problem(what));
    }
    let native = !row.native_codes.0.is_empty();
    if native == row.say_where_native.is_empty() {
        return Err(row
            .at
            .problem("say_where_native: it is said where native_codes has codes"));
    }
    let id = row.source_id.first().map_or("", String::as_str);
    sources.grade(row.at, id, row.grade)?;
    let (mut traits, mut cautions) = (Vec::new(), Vec::new());
    let words = row.cautions.iter().map(String::as_str);
    for word in words.chain([row.traits.as_str()]) {
        let found = marks.rows.iter().find(|mark| mark.word == word);
        match found.map(|mark| mark.mark) {
            Some(Some(mark)) => traits.push(mark),
            _ if word != row.traits => cautions.push(keep(word)),
            _ => {}
        }
    }
    let names = [&row.name].into_iter().chain(row.also.iter());
    Ok(OtherTree {
        names: names.map(|name| keep(name)).collect::<Vec<_>>().leak(),
        scientific: keep(scientific),
        native: NativeRange {
            codes: row.native_codes.0,
            not_in: &[],
            doubtful: &[],
        },
        never_offer: row
            .lookalike_of
            .iter()
            .map(|name| keep(name))
            .collect::<Vec<_>>()
            .leak(),
        group: keep(&row.group),
        no_trial: row.say_elsewhere.contains("we read no trial of ringing it"),
        sprouts: row.say_elsewhere.ends_with("Expect sprouts."),
        make_sure: row.say_elsewhere.contains("Make sure what it is."),
        traits: traits.leak(),
        cautions: cautions.leak(),
        mind: keep(&row.mind),
        as_species: OnceLock::new(),
    })
}

/// Names that mean different trees in different countries, each of a tree that is known.
pub(crate) fn names_by_place(
    root: &Path,
    listed: &[Species],
    others: &[OtherTree],
) -> Result<&'static [NameByPlace], Defect> {
    let table = Table::<ByPlaceRow>::read(root, "content/rules/names_by_place.csv")?;
    let mut names = Vec::new();
    for row in &table.rows {
        let name = row.scientific_name.as_str();
        let known = listed.iter().any(|species| species.scientific == name)
            || others.iter().any(|other| other.scientific == name);
        if !known {
            return Err(row.at.problem(format!(
                "{name} is neither on the list nor in other_names.csv"
            )));
        }
        names.push(NameByPlace {
            name: keep(&row.name),
            codes: row.codes.0,
            scientific: keep(name),
        });
    }
    Ok(names.leak())
}

/// Countries in which a caution is not told.
pub(crate) fn not_in(rows: &Table<AuthorityRow>, caution: &str) -> &'static [&'static str] {
    let not = rows
        .rows
        .iter()
        .filter(|row| row.caution == caution && row.applies == Applies::No);
    not.map(|row| keep(&row.region)).collect::<Vec<_>>().leak()
}

/// Whether every caution of a table of who decides is one that is known.
pub(crate) fn known(rows: &Table<AuthorityRow>, is: impl Fn(&str) -> bool) -> Result<(), Defect> {
    let stranger = rows.rows.iter().find(|row| !is(&row.caution));
    stranger.map_or(Ok(()), |row: &RowAt<AuthorityRow>| {
        let at: At = row.at;
        Err(at.problem(format!("caution: there is no \"{}\"", row.caution)))
    })
}
