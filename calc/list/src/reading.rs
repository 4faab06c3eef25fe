//! How the columns of a list are read, once they were judged and what they asked was decided.

use crate::header::LengthUnit;
use calc::terms::quantity::Units;
use calc_data::list::Column;
use std::collections::{BTreeMap, BTreeSet};

/// What holds for a whole list, from outside of it.
#[derive(Clone, Debug, Default)]
pub struct ListContext {
    /// Inches and feet, or metric.
    pub units: Units,
    /// Code of state or country.
    pub region: Option<String>,
    /// Where the list is: latitude, longitude, metres above the sea.
    pub place: Option<(f64, f64, Option<f64>)>,
    /// Names of trees in other languages than English, each with the scientific name.
    pub names: Vec<(String, String)>,
    /// The asker's today, as `2027-06-12`.
    pub today: String,
}

/// A column of the list.
#[derive(Clone, Debug)]
pub struct ColumnReading {
    /// Its header as typed.
    pub header: String,
    /// What it holds.
    pub is: Column,
    /// Its unit, where one was said, implied, proven or decided.
    pub unit: Option<LengthUnit>,
    /// The unit is the one of the page: nothing in the list says it.
    pub assumed: bool,
    /// The year in its header.
    pub year: Option<u32>,
    /// Written by an earlier run: dropped.
    pub ours: bool,
    /// Its days stand as a spreadsheet counts them: 45413.
    pub counted: bool,
    /// A column of distances whose header says to what: `Distance to house`.
    pub hits: Option<&'static str>,
    /// A column of slopes in degrees, not in percent.
    pub degrees: bool,
}

/// A column of sizes.
#[derive(Clone, Debug)]
pub struct SizeColumn {
    /// Where it stands.
    pub at: usize,
    /// Girth, not diameter.
    pub girth: bool,
    /// Its unit, where the column has one.
    pub unit: Option<LengthUnit>,
    /// Its year.
    pub year: Option<u32>,
    /// The size to use for each class; none for plain sizes.
    pub classes: Option<BTreeMap<String, Option<String>>>,
    /// A year in it is a mistake: its median is far below.
    pub no_years: bool,
}

/// What a column of codes means.
#[derive(Clone, Debug, Default)]
pub enum CodeMeaning {
    /// No code is read.
    #[default]
    None,
    /// Symbols of the plant list.
    Plants,
    /// The list's own.
    Own(BTreeMap<String, Option<String>>),
    /// Not decided: a problem of every row.
    Undecided,
}

/// Columns that name a tree.
#[derive(Clone, Debug, Default)]
pub struct NameColumns {
    /// A name of any kind.
    pub species: Option<usize>,
    /// A scientific name.
    pub scientific: Option<usize>,
    /// A common name.
    pub common: Option<usize>,
    /// The genus.
    pub genus: Option<usize>,
    /// The epithet.
    pub epithet: Option<usize>,
    /// A code.
    pub code: Option<usize>,
}

impl NameColumns {
    /// The first of them.
    #[must_use]
    pub fn first(&self) -> Option<usize> {
        self.scientific
            .or(self.genus)
            .or(self.species)
            .or(self.common)
            .or(self.code)
    }
}

/// How two numbers in one cell stand.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum PointOrder {
    /// Latitude first.
    #[default]
    Latitude,
    /// Longitude first.
    Longitude,
}

/// How day and month stand in a date with slashes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DayOrder {
    /// 17/5/2027.
    Day,
    /// 5/17/2027.
    Month,
}

/// How a list is read.
#[derive(Clone, Debug, Default)]
pub struct ListReading {
    /// Its columns, in order.
    pub columns: Vec<ColumnReading>,
    /// What holds from outside.
    pub options: ListContext,
    /// Sizes, the newest first.
    pub sizes: Vec<SizeColumn>,
    /// The columns of `sizes` are stems of one tree.
    pub stems_in_columns: bool,
    /// A girth beside the diameter, to hold one against the other.
    pub beside: Option<SizeColumn>,
    /// A column with the unit of each size.
    pub unit_column: Option<usize>,
    /// What names the tree.
    pub names: NameColumns,
    /// What its codes mean.
    pub codes: CodeMeaning,
    /// The species of every row.
    pub every: Option<String>,
    /// What names were decided as, folded.
    pub decided: BTreeMap<String, String>,
    /// The tag.
    pub id: Option<usize>,
    /// The columns that make the tag together; empty where `id` alone does.
    pub key: Vec<usize>,
    /// Values that stand for nothing.
    pub missing: BTreeSet<String>,
    /// Words that look as if no tree stood there, and one does, folded.
    pub trees: BTreeSet<String>,
    /// Conditions and statuses, the newest first.
    pub states: Vec<usize>,
    /// Other columns by what they hold, the first of each.
    pub of: BTreeMap<Column, usize>,
    /// How two numbers in one cell stand.
    pub point: PointOrder,
    /// The middle of the places, to know swapped ones by; none where there are few.
    pub middle: Option<(f64, f64)>,
    /// The list writes `None` where a cell is empty: then it says nothing of a target.
    pub none_is_nothing: bool,
    /// The status column has words of its own: those that are not known are told once.
    pub own_states: bool,
    /// The condition column has words of its own: those that are not known are told once.
    pub own_conditions: bool,
    /// Columns of what a tree could hit, each with that of its distance.
    pub targets: Vec<(usize, Option<usize>)>,
    /// Columns of free text: notes, names with more behind them, and those that nobody knows.
    pub texts: Vec<usize>,
    /// How days with slashes are read; none where they are not.
    pub day_order: Option<DayOrder>,
    /// A piece of a file: nothing looks across rows.
    pub of_a_piece: bool,
}

impl ListReading {
    /// Where a kind of column stands.
    #[must_use]
    pub fn at(&self, column: Column) -> Option<usize> {
        self.of.get(&column).copied()
    }
}
