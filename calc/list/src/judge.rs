//! A column is judged before any cell is: what it holds, in which unit, and what only the list's owner can say.

mod codes;
mod days;
mod keys;
mod kinds;
mod sizes;
mod stats;

use crate::ask::{Ask, ListQuestion};
use crate::bytes::NotList;
use crate::decisions::{ColumnDecision, Decisions};
use crate::header::LengthUnit;
use crate::layout::Layout;
use crate::reading::{ColumnReading, ListContext, ListReading, PointOrder};
use crate::record::Record;
use crate::row::{fields, is_strange_condition};
use crate::words::WordFinder;
use calc::terms::small::order::{sort_by, sort_by_key};
use calc_data::list::{Column, ListTables, WordKind, fold, header_key};
use std::cell::OnceCell;
use std::collections::BTreeSet;
use std::rc::Rc;

pub use stats::Stats;

/// What was said of the list beside its questions: shown, and no problem of a row.
#[derive(Clone, Debug, PartialEq)]
pub enum Note {
    /// A size without a unit is in the unit of the page: its header, the unit, the median.
    UnitAssumed {
        /// The header.
        header: String,
        /// The unit.
        unit: LengthUnit,
        /// The median.
        median: f64,
    },
    /// Another column proves the unit.
    UnitProven {
        /// The header.
        header: String,
        /// The unit.
        unit: LengthUnit,
        /// The column that proves it.
        by: String,
    },
    /// A column is left alone although its header is known.
    NotRead {
        /// The header.
        header: String,
        /// Why.
        why: NotRead,
    },
    /// Columns of an earlier plan are dropped.
    OursDropped {
        /// How many.
        columns: usize,
    },
    /// Of several sizes the newest is used.
    Newest {
        /// Their headers, the newest first.
        headers: Vec<String>,
    },
    /// Its days are read as a spreadsheet counts them: one of them, both ways.
    DaysCounted {
        /// The header.
        header: String,
        /// As it stands there.
        number: String,
        /// The day.
        day: String,
    },
    /// The header says that sizes were taken elsewhere than at breast height: they are used as they are.
    MeasuredOff {
        /// The header.
        header: String,
        /// How high up, metres.
        metres: f64,
    },
    /// More rows than a page takes at once: the columns by which some may be chosen, with their number of values.
    Many {
        /// How many rows.
        rows: usize,
        /// Header and number of values.
        columns: Vec<(String, usize)>,
    },
}

/// So many rows a page takes at once; the command line goes on.
const MOST_ROWS: usize = 20_000;

/// Why a column is left alone.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NotRead {
    /// It counts no stems.
    NoStemCount,
    /// Its heights are classes.
    HeightClasses,
    /// Its days are past: when it was seen.
    PastDays,
    /// Its numbers are no degrees.
    NotDegrees,
    /// Another column holds the same.
    Doubled,
    /// Every row has its own: it groups nothing.
    NoGroups,
    /// Most of its words are its own.
    OwnWords,
    /// `None` in it stands for an empty cell, as in other columns.
    NoneIsNothing,
}

/// What judging comes to.
#[derive(Debug)]
pub struct JudgedColumns {
    /// How the list is read.
    pub reading: ListReading,
    /// What is asked, the question that bears on most rows first.
    pub asks: Vec<Ask>,
    /// What is said.
    pub notes: Vec<Note>,
    /// Decisions that name no column of the list.
    pub strangers: Vec<String>,
}

/// What a column of the list was decided as.
pub(crate) struct Judge<'a> {
    tables: &'static ListTables,
    words: WordFinder,
    layout: &'a Layout,
    rows: &'a [Record],
    decisions: &'a Decisions,
    /// What each column looks like, once it was looked at.
    stats: Vec<OnceCell<Rc<Stats>>>,
    /// The decision of each column.
    decided: Vec<ColumnDecision>,
    reading: ListReading,
    asks: Vec<Ask>,
    notes: Vec<Note>,
}

/// Judges the columns of a list by the rows that were looked at.
///
/// # Errors
/// Why it is no list of trees.
pub fn judge(
    tables: &'static ListTables,
    layout: &Layout,
    rows: &[Record],
    options: &ListContext,
    decisions: &Decisions,
) -> Result<JudgedColumns, NotList> {
    let of_a_piece = decisions.of_a_piece();
    let mut judge = Judge {
        tables,
        words: WordFinder::new(tables),
        layout,
        rows,
        decisions,
        stats: vec![OnceCell::new(); layout.texts.len()],
        decided: vec![ColumnDecision::default(); layout.texts.len()],
        reading: ListReading {
            options: options.clone(),
            of_a_piece,
            every: decisions
                .every
                .clone()
                .filter(|name| !name.trim().is_empty()),
            missing: decisions
                .missing
                .iter()
                .map(|value| fold(value.trim()))
                .collect(),
            trees: decisions
                .trees
                .iter()
                .map(|word| fold(word.trim()))
                .collect(),
            decided: decisions
                .names
                .iter()
                .map(|(name, is)| (fold(name.trim()), is.clone()))
                .collect(),
            ..ListReading::default()
        },
        asks: Vec::new(),
        notes: Vec::new(),
    };
    let strangers = judge.take_decisions();
    judge.columns();
    if layout.no_header && !of_a_piece {
        judge.ask_file(ListQuestion::NoHeader {
            first: rows.first().map_or(Vec::new(), |row| {
                row.cells().map(crate::problem::repeated).collect()
            }),
        });
    } else {
        judge.kinds();
        judge.codes();
        judge.sizes()?;
        judge.points();
        judge.middle();
        judge.targets();
        judge.nothing();
        judge.states();
        judge.texts();
        judge.weights();
        judge.days();
        judge.keys();
        judge.many();
        judge.first_of_each();
        if judge.reading.names.first().is_none() && judge.reading.every.is_none() {
            judge.ask_file(ListQuestion::NoSpecies);
        }
    }
    let mut asks = judge.asks;
    if of_a_piece {
        // Nobody is asked: what a column would ask is a problem of its rows.
        asks.clear();
    }
    sort_by_key(&mut asks, |ask| std::cmp::Reverse(ask.rows));
    Ok(JudgedColumns {
        reading: judge.reading,
        asks,
        notes: judge.notes,
        strangers,
    })
}

impl Judge<'_> {
    /// Decisions by header, by header without marks, or by canonical name; those that name no column come back.
    fn take_decisions(&mut self) -> Vec<String> {
        let mut strangers = Vec::new();
        for (name, decision) in &self.decisions.columns {
            let exact = self
                .layout
                .texts
                .iter()
                .position(|text| text.trim() == name.trim());
            let key = header_key(name);
            let alike = || {
                let key = key.as_str();
                let mut texts = self.layout.texts.iter();
                texts.position(|text| !key.is_empty() && header_key(text) == key)
            };
            let canonical = || {
                let column = Column::parse(name)?;
                self.layout
                    .headers
                    .iter()
                    .position(|header| header.column == Some(column))
            };
            match exact.or_else(alike).or_else(canonical) {
                Some(at) => self.decided[at] = decision.clone(),
                None => strangers.push(name.clone()),
            }
        }
        strangers
    }

    /// The columns as headers and decisions have them.
    fn columns(&mut self) {
        let mut ours = 0;
        for (at, text) in self.layout.texts.iter().enumerate() {
            let header = self.layout.headers[at];
            let lower = text.trim().to_lowercase();
            let own = lower.starts_with("plan_") || lower.starts_with("problem_");
            ours += usize::from(own);
            let decided = &self.decided[at];
            let said = decided.is.as_deref().and_then(Column::parse);
            let is = if own {
                Column::Keep
            } else {
                said.or(header.column).unwrap_or(Column::Keep)
            };
            let unit = decided.unit.as_deref().and_then(LengthUnit::parse);
            self.reading.columns.push(ColumnReading {
                header: text.clone(),
                is,
                unit: unit.or(header.unit),
                assumed: false,
                year: header.year,
                ours: own,
                counted: false,
                hits: header.hits,
                degrees: header.degrees,
            });
        }
        if ours > 0 {
            self.notes.push(Note::OursDropped { columns: ours });
        }
    }

    fn ask_file(&mut self, what: ListQuestion) {
        self.asks.push(Ask {
            column: None,
            header: String::new(),
            rows: self.rows.len(),
            what,
        });
    }

    fn ask(&mut self, at: usize, rows: usize, what: ListQuestion) {
        self.asks.push(Ask {
            column: Some(at),
            header: self.reading.columns[at].header.clone(),
            rows,
            what,
        });
    }

    fn not_read(&mut self, at: usize, why: NotRead) {
        self.reading.columns[at].is = Column::Keep;
        self.notes.push(Note::NotRead {
            header: self.reading.columns[at].header.clone(),
            why,
        });
    }

    /// Whether a column's kind was decided by a person.
    fn is_decided(&self, at: usize) -> bool {
        self.decided[at].is.is_some()
    }

    fn stats(&self, at: usize) -> Rc<Stats> {
        let look = || Rc::new(Stats::of(self.words, &self.reading.missing, self.rows, at));
        Rc::clone(self.stats[at].get_or_init(look))
    }

    /// Where columns of a kind stand.
    fn all(&self, column: Column) -> Vec<usize> {
        let columns = self.reading.columns.iter().enumerate();
        columns
            .filter(|(_, read)| read.is == column)
            .map(|(at, _)| at)
            .collect()
    }

    /// The middle of the places.
    fn middle(&mut self) {
        let first = |column| self.all(column).first().copied();
        let (Some(lat), Some(lon)) = (first(Column::Lat), first(Column::Lon)) else {
            return;
        };
        if self.reading.of_a_piece {
            return;
        }
        let degrees = |at: usize| {
            let cells = self.rows.iter().map(|row| row.cell(at));
            let mut all: Vec<f64> = cells.filter_map(crate::place::degrees).collect();
            all.retain(|degrees| *degrees != 0.0);
            sort_by(&mut all, f64::total_cmp);
            all
        };
        let (lats, lons) = (degrees(lat), degrees(lon));
        if lats.len() >= 3 && lons.len() >= 3 {
            self.reading.middle = Some((stats::median(&lats), stats::median(&lons)));
        }
    }

    /// Programs write `None` for an empty cell; it says "nothing in reach" only where no other column has it.
    fn nothing(&mut self) {
        let words = [Column::Target, Column::Lean, Column::LineWithinReach];
        let is_none = |cell: &str| cell.trim() == "None";
        let mut elsewhere = false;
        let mut here = None;
        for (at, column) in self.reading.columns.iter().enumerate() {
            let any = self.rows.iter().any(|row| is_none(row.cell(at)));
            if any && words.contains(&column.is) {
                here.get_or_insert(at);
            } else {
                elsewhere |= any && !column.ours;
            }
        }
        self.reading.none_is_nothing = elsewhere;
        if let Some(at) = here.filter(|_| elsewhere) {
            let header = self.reading.columns[at].header.clone();
            let why = NotRead::NoneIsNothing;
            self.notes.push(Note::NotRead { header, why });
        }
    }

    /// A column of states or conditions whose words are mostly its own is told once, not row by row.
    fn states(&mut self) {
        let is_state = |value: &str| {
            self.words.not_tree(value).is_some()
                || self.words.dead(value).is_some()
                || self.words.means(WordKind::Status, value).is_some()
        };
        let status =
            |value: &str| is_state(value) || self.words.means(WordKind::Condition, value).is_some();
        let condition = |value: &str| is_state(value) || !is_strange_condition(self.words, value);
        let mut own = Vec::new();
        for column in [Column::Status, Column::Condition] {
            let known = |value: &str| match column {
                Column::Status => status(value),
                _ => condition(value),
            };
            for at in self.all(column) {
                let stats = self.stats(at);
                let rows: usize = stats.values.values().sum();
                let values = stats.values.iter();
                let strange: usize = values
                    .filter(|(value, _)| !known(value))
                    .map(|it| it.1)
                    .sum();
                if strange > 2 && strange * 2 > rows {
                    own.push((column, at));
                }
            }
        }
        for (column, at) in own {
            if column == Column::Status {
                self.reading.own_states = true;
            } else {
                self.reading.own_conditions = true;
            }
            let header = self.reading.columns[at].header.clone();
            let why = NotRead::OwnWords;
            self.notes.push(Note::NotRead { header, why });
        }
    }

    /// Columns in whose texts a wire may stand: notes, names, states, and those whose header nobody knows.
    fn texts(&mut self) {
        let mut texts = Vec::new();
        for (at, column) in self.reading.columns.iter().enumerate() {
            let is_text = match column.is {
                Column::Notes
                | Column::Species
                | Column::Scientific
                | Column::Common
                | Column::Condition
                | Column::Status => true,
                Column::Keep => {
                    self.layout.headers[at].column.is_none() && !self.is_decided(at) && !column.ours
                }
                _ => false,
            };
            if is_text {
                texts.push(at);
            }
        }
        self.reading.texts = texts;
    }

    /// Two numbers in one cell: which comes first.
    fn points(&mut self) {
        for at in self.all(Column::Point) {
            let mut first_over = false;
            let mut second_over = false;
            let mut example = String::new();
            let mut pairs = 0;
            let mut textual = false;
            for row in self.rows {
                let cell = row.cell(at);
                textual |= cell.contains("POINT") || cell.contains('{');
                if let Some((a, b)) = crate::place::two_numbers(cell) {
                    pairs += 1;
                    first_over |= a.abs() > 90.0;
                    second_over |= b.abs() > 90.0;
                    if example.is_empty() {
                        example = cell.trim().to_owned();
                    }
                }
            }
            if pairs == 0 {
                continue;
            }
            let key = header_key(&self.reading.columns[at].header);
            let here = self.reading.options.place.map(|(lat, lon, _)| {
                let near = |a: f64, b: f64| (a - b).abs() < fields::NEAR_DEGREES;
                let (a, b) = crate::place::two_numbers(&example).unwrap_or_default();
                (near(a, lat) && near(b, lon), near(b, lat) && near(a, lon))
            });
            let said = self.decided[at].order.as_deref().unwrap_or("");
            let longitude_first = ["lonlat", "longlat", "lnglat", "longitudelatitude", "xy"];
            let latitude_first = [
                "latlon",
                "latlong",
                "latlng",
                "latitudelongitude",
                "geopoint",
            ];
            let named = |names: &[&str]| names.iter().any(|name| key.contains(name));
            self.reading.point = if said.starts_with("lon")
                || (first_over && !second_over)
                || textual
                || here == Some((false, true))
            {
                PointOrder::Longitude
            } else if said.starts_with("lat")
                || (second_over && !first_over)
                || here == Some((true, false))
                || named(&latitude_first)
            {
                PointOrder::Latitude
            } else if named(&longitude_first) {
                PointOrder::Longitude
            } else {
                self.ask(at, pairs, ListQuestion::PointOrder { example });
                PointOrder::Latitude
            };
        }
    }

    /// A list that is longer than a page takes at once.
    fn many(&mut self) {
        if self.rows.len() <= MOST_ROWS {
            return;
        }
        let mut columns = Vec::new();
        for (at, column) in self.reading.columns.iter().enumerate() {
            let values = self.stats(at).values.len();
            if (2..=500).contains(&values) && !column.ours {
                columns.push((column.header.clone(), values));
            }
        }
        let rows = self.rows.len();
        self.notes.push(Note::Many { rows, columns });
    }

    /// The first column of each kind that is read by its kind alone.
    fn first_of_each(&mut self) {
        let mut seen = BTreeSet::new();
        for (at, column) in self.reading.columns.iter().enumerate() {
            if seen.insert(column.is) {
                self.reading.of.insert(column.is, at);
            }
        }
        self.reading.unit_column = self.reading.at(Column::DbhUnit);
        let kinds = [
            Column::Status,
            Column::Condition,
            Column::Dead,
            Column::Alive,
            Column::Planting,
        ];
        let mut states: Vec<usize> = Vec::new();
        for (at, column) in self.reading.columns.iter().enumerate() {
            if kinds.contains(&column.is) {
                states.push(at);
            }
        }
        sort_by_key(&mut states, |at| {
            std::cmp::Reverse(self.reading.columns[*at].year.unwrap_or(0))
        });
        self.reading.states = states;
    }
}
