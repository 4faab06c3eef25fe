//! Marks by which a tree is told, and the light and moisture it stands in: checked cell by cell. No
//! calculator shows them: the pages of the species read the table themselves, so nothing is packed.

use super::cells::{Cell, List, cell, closed_words, maybe};
use super::species_tables::{JoinRow, MarksRow};
use crate::table::{Defect, RowAt, Table};
use calc::terms::leaf::{
    Arrangement, BarkPattern, Base, Buds, Fruit, LeafKind, LeafOutTime, Lobing, Margin,
    MoistureUse, Sap, ShadeTolerance, Shape, Smell, Thorns, Tip, Touch,
};
use serde::Deserialize;
use std::collections::BTreeMap;
use std::path::Path;

closed_words! {
    Arrangement = "arrangement",
    BarkPattern = "pattern of bark",
    Base = "foot of a leaf",
    Buds = "kind of bud",
    Fruit = "kind of fruit",
    LeafKind = "kind of leaf",
    LeafOutTime = "time of leaf-out",
    Margin = "edge of a leaf",
    MoistureUse = "use of water",
    Sap = "sap",
    ShadeTolerance = "tolerance of shade",
    Shape = "shape of a leaf",
    Smell = "smell",
    Thorns = "kind of thorn",
    Tip = "tip of a leaf",
    Touch = "reason not to touch it",
}

/// What a tree of the table is here for.
#[derive(PartialEq)]
enum Role {
    Listed,
    Extra,
    LookAlike,
    Next,
}

impl Cell for Role {
    fn of(text: &str) -> Result<Self, String> {
        Ok(match text {
            "listed" => Self::Listed,
            "extra" => Self::Extra,
            "look-alike" => Self::LookAlike,
            "next" => Self::Next,
            _ => {
                return Err(format!(
                    "\"{text}\" is no role: listed, extra, look-alike, next"
                ));
            }
        })
    }
}

/// `a/b`: either occurs, on one tree or over the year.
#[allow(dead_code, reason = "read to be checked")]
struct Either<T>(Vec<T>);

impl<T: Cell> Cell for Either<T> {
    fn of(text: &str) -> Result<Self, String> {
        let parts: Result<_, _> = text.split('/').map(T::of).collect();
        // The whole cell is quoted first: by it the reader of tables finds the column.
        parts.map(Self).map_err(|what| match text.contains('/') {
            true => format!("\"{text}\": {what}"),
            false => what,
        })
    }
}

/// `3.5-5`, or one number: from, to.
#[allow(dead_code, reason = "read to be checked")]
struct Range(f64, f64);

impl Cell for Range {
    fn of(text: &str) -> Result<Self, String> {
        let (from, to) = text.split_once('-').unwrap_or((text, text));
        match (from.parse::<f64>(), to.parse::<f64>()) {
            (Ok(from), Ok(to)) if 0.0 < from && from <= to => Ok(Self(from, to)),
            _ => Err(format!("\"{text}\" is no range as 3.5-5")),
        }
    }
}

/// `none`, `mitten`, `palmate 3-5`, `pinnate 5`: how it is lobed, and into how many.
#[allow(dead_code, reason = "read to be checked")]
struct Lobes(Lobing);

impl Cell for Lobes {
    fn of(text: &str) -> Result<Self, String> {
        let (word, count) = match text.split_once(' ') {
            Some((word, count)) => (word, Some(Range::of(count)?)),
            None => (text, None),
        };
        match (Lobing::parse(word), count) {
            (Some(of @ (Lobing::None | Lobing::Mitten)), None) => Ok(Self(of)),
            (Some(of @ (Lobing::Palmate | Lobing::Pinnate)), Some(_)) => Ok(Self(of)),
            _ => Err(format!(
                "\"{text}\" is not one of: none, mitten, palmate n-m, pinnate n-m"
            )),
        }
    }
}

/// A row of `evidence/leaf_marks.csv`.
#[derive(Deserialize)]
#[allow(dead_code, reason = "read to be checked")]
pub(crate) struct LeafMarks {
    pub scientific_name: String,
    #[serde(deserialize_with = "cell")]
    common_name: String,
    #[serde(deserialize_with = "cell")]
    role: Role,
    #[serde(deserialize_with = "cell")]
    look_alike_of: List,
    #[serde(deserialize_with = "cell")]
    arrangement: Either<Arrangement>,
    #[serde(deserialize_with = "cell")]
    kind: Either<LeafKind>,
    #[serde(deserialize_with = "maybe")]
    leaflets: Option<Range>,
    #[serde(deserialize_with = "cell")]
    margin: Either<Margin>,
    #[serde(deserialize_with = "cell")]
    lobes: Either<Lobes>,
    #[serde(deserialize_with = "cell")]
    shape: Either<Shape>,
    #[serde(deserialize_with = "cell")]
    length_cm: Range,
    #[serde(deserialize_with = "maybe")]
    leaflet_cm: Option<Range>,
    #[serde(deserialize_with = "maybe")]
    base: Option<Either<Base>>,
    #[serde(deserialize_with = "maybe")]
    tip: Option<Either<Tip>>,
    #[serde(deserialize_with = "cell")]
    sap: Either<Sap>,
    #[serde(deserialize_with = "maybe")]
    touch: Option<Either<Touch>>,
    #[serde(deserialize_with = "cell")]
    thorns: Either<Thorns>,
    #[serde(deserialize_with = "cell")]
    buds: Either<Buds>,
    #[serde(deserialize_with = "cell")]
    fruit: Either<Fruit>,
    #[serde(deserialize_with = "maybe")]
    fruit_cm: Option<Range>,
    #[serde(deserialize_with = "cell")]
    bark_pattern: Either<BarkPattern>,
    #[serde(deserialize_with = "cell")]
    smell: Either<Smell>,
    #[serde(deserialize_with = "cell")]
    leaf_out_early: Either<LeafOutTime>,
    budbreak_degree_days: Option<f64>,
    #[serde(deserialize_with = "cell")]
    read_cells: List,
    #[serde(deserialize_with = "cell")]
    source_id: List,
}

/// A row of `evidence/listed_site.csv`.
#[derive(Deserialize)]
#[allow(dead_code, reason = "read to be checked")]
pub(crate) struct SiteRow {
    pub scientific_name: String,
    #[serde(deserialize_with = "maybe")]
    shade_tolerance: Option<ShadeTolerance>,
    #[serde(deserialize_with = "maybe")]
    moisture_use: Option<MoistureUse>,
}

impl LeafMarks {
    /// Whether the row is that of a species of the list.
    pub(crate) fn is_of(&self, scientific: &str) -> bool {
        self.role == Role::Listed && self.scientific_name == scientific
    }
}

/// What the cells of a row can't tell by themselves: whom it is mistaken for, and which cells were read.
pub(crate) fn check(
    root: &Path,
    leaves: &Table<LeafMarks>,
    listed: &BTreeMap<&str, &RowAt<JoinRow>>,
    identification: &Table<MarksRow>,
) -> Result<(), Defect> {
    let by_name = leaves.by(|row| &row.scientific_name)?;
    for row in &leaves.rows {
        let name = &row.scientific_name;
        if (row.role == Role::Listed) != listed.contains_key(name.as_str()) {
            let what = format!(
                "role: species_join.csv has {name}, or this says so, and the other does not"
            );
            return Err(row.at.problem(what));
        }
        for other in row.look_alike_of.iter() {
            if !by_name.contains_key(other.as_str()) {
                let what = format!("look_alike_of: {other} has no row here");
                return Err(row.at.problem(what));
            }
        }
    }
    for row in &identification.rows {
        let others = row.lookalikes.is().map_or(&[][..], |others| others);
        for other in others {
            if !by_name.contains_key(other.as_str()) {
                let what = format!("lookalikes: {other} has no row in leaf_marks.csv");
                return Err(row.at.problem(what));
            }
        }
    }
    // The cells as they stand, by their column.
    for row in &Table::<BTreeMap<String, String>>::read(root, leaves.file())?.rows {
        let read = row.get("read_cells").map_or("", String::as_str);
        for column in read.split(';').filter(|column| !column.is_empty()) {
            if row.get(column).is_none_or(String::is_empty) {
                let what = format!("read_cells: {column} is empty, or no column");
                return Err(row.at.problem(what));
            }
        }
    }
    Ok(())
}
