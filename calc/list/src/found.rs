//! What was found at visits: a table of its own (CSV), a row a tree and day, read as the list is.
//!
//! Columns, by their headers in any order: `tree_id`, `visited_on`, `found`, `minutes`, `people`, `ringed_on`, `ring_width`,
//! `note`. `found` holds words of [`Seen`] and `dead`, `fallen`, with `;` between them. Other columns are not read.

use crate::bytes::NotList;
use crate::decisions::Decisions;
use crate::layout::letter;
use crate::reader::{Cut, as_text};
use crate::record::Record;
use calc::models::at_visit::Seen;
use calc::question::read_day;
use calc::terms::number::{Number, read_number};
use calc::terms::quantity::{MM_PER_IN, Units};
use calc_data::list::header_key;
use chrono::NaiveDate;
use std::io::{Cursor, Result};

/// The columns that are read, in the order in which they are told.
pub const COLUMNS: [&str; 8] = [
    "tree_id",
    "visited_on",
    "found",
    "minutes",
    "people",
    "ringed_on",
    "ring_width",
    "note",
];
/// A column of [`COLUMNS`], in their order.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[allow(missing_docs, reason = "the names are those of the columns")]
pub enum FoundColumn {
    TreeId,
    VisitedOn,
    Found,
    Minutes,
    People,
    RingedOn,
    RingWidth,
}

/// Those that a file must have.
const NEEDED: usize = 3;
/// The tree is dead.
const DEAD: &str = "dead";
/// It is down.
const FALLEN: &str = "fallen";
/// Minutes at a tree, each person's.
const MINUTES: (f64, f64) = (0.0, 10_000.0);
/// People at a tree.
const PEOPLE: (f64, f64) = (1.0, 50.0);

/// A row of it that was understood.
#[derive(Clone, Debug, PartialEq)]
pub struct FoundRow {
    /// As a spreadsheet shows it.
    pub row: u64,
    /// The tree's tag.
    pub tree_id: String,
    /// The day.
    pub visited_on: NaiveDate,
    /// What was seen; empty where nobody looked, as on the day of the ring.
    pub seen: Vec<Seen>,
    /// The tree is dead.
    pub dead: bool,
    /// It is down.
    pub fallen: bool,
    /// Person-minutes of the work there, walking left out.
    pub person_minutes: Option<f64>,
    /// The day on which it was ringed.
    pub ringed_on: Option<NaiveDate>,
    /// Width of the ring, mm.
    pub ring_mm: Option<f64>,
}

/// What is wrong with a cell of it.
#[derive(Clone, Debug, PartialEq)]
pub struct FoundProblem {
    /// As a spreadsheet shows it.
    pub row: u64,
    /// The letter of its column.
    pub column: String,
    /// The header.
    pub header: &'static str,
    /// What stands there.
    pub typed: String,
    /// What is wrong.
    pub fault: FoundFault,
}

/// What can be wrong.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FoundFault {
    /// Nothing stands there.
    Empty,
    /// No day.
    NotADay,
    /// No word that is known.
    NotAWord,
    /// No number that can be.
    NotANumber,
    /// The list has no tree of that tag.
    NoSuchTree,
    /// Nobody said when it was ringed.
    NoRingDay,
    /// The visit is before the ring.
    BeforeTheRing,
    /// The day has not come yet.
    NotYet,
    /// What was found can't all be.
    Contradiction,
}

impl FoundFault {
    /// Its name.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Empty => "empty",
            Self::NotADay => "not_a_day",
            Self::NotAWord => "not_a_word",
            Self::NotANumber => "not_a_number",
            Self::NoSuchTree => "no_such_tree",
            Self::NoRingDay => "no_ring_day",
            Self::BeforeTheRing => "before_the_ring",
            Self::NotYet => "not_yet",
            Self::Contradiction => "contradiction",
        }
    }
}

/// Why a file holds nothing that was found.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NotFoundFile {
    /// It is no table.
    NotList(NotList),
    /// It has no column of that name.
    NoColumn(&'static str),
}

/// A file of what was found.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct FoundFile {
    /// The rows that were understood, in their order.
    pub rows: Vec<FoundRow>,
    /// What is wrong with others.
    pub problems: Vec<FoundProblem>,
    /// The letter of each column that it has.
    letters: Vec<Option<String>>,
}

impl FoundFile {
    /// Of the bytes as they came. A ring's width without a unit is inches or centimetres, by `units`.
    ///
    /// # Errors
    /// What can't be read; the inner one where it is no such file.
    pub fn of(bytes: &[u8], units: Units) -> Result<std::result::Result<Self, NotFoundFile>> {
        let text = as_text(bytes).and_then(|(text, encoding)| {
            Cut::of(&text, encoding, &Decisions::default()).map(|cut| (text, cut))
        });
        let (text, cut) = match text {
            Ok(cut) => cut,
            Err(why) => return Ok(Err(NotFoundFile::NotList(why))),
        };
        let mut records = cut.records(Cursor::new(&*text), 1)?;
        let mut record = Record::default();
        loop {
            if !records.next(&mut record)?.0 {
                return Ok(Err(NotFoundFile::NotList(NotList::Empty)));
            }
            if !record.is_blank() {
                break;
            }
        }
        let keys: Vec<String> = record.cells().map(header_key).collect();
        let places = COLUMNS.map(|column| {
            let key = header_key(column);
            keys.iter().position(|it| *it == key)
        });
        for (column, place) in COLUMNS.iter().zip(places).take(NEEDED) {
            if place.is_none() {
                return Ok(Err(NotFoundFile::NoColumn(column)));
            }
        }
        let mut file = Self {
            letters: places.map(|place| place.map(letter)).to_vec(),
            ..Self::default()
        };
        while records.next(&mut record)?.0 {
            if !record.is_blank() {
                file.read(&record, &places, units);
            }
        }
        Ok(Ok(file))
    }

    /// A problem of a row in a column.
    pub fn problem(&mut self, row: u64, column: FoundColumn, typed: &str, fault: FoundFault) {
        let letter = self.letters.get(column as usize).cloned().flatten();
        self.problems.push(FoundProblem {
            row,
            column: letter.unwrap_or_default(),
            header: COLUMNS[column as usize],
            typed: typed.to_owned(),
            fault,
        });
    }

    fn read(&mut self, record: &Record, places: &[Option<usize>; 8], units: Units) {
        let before = self.problems.len();
        let row = record.row;
        let cell =
            |column: FoundColumn| places[column as usize].map_or("", |at| record.cell(at).trim());
        let [tree_id, visited, found, minutes, people, ringed, width] = [
            FoundColumn::TreeId,
            FoundColumn::VisitedOn,
            FoundColumn::Found,
            FoundColumn::Minutes,
            FoundColumn::People,
            FoundColumn::RingedOn,
            FoundColumn::RingWidth,
        ]
        .map(cell);
        if tree_id.is_empty() {
            self.problem(row, FoundColumn::TreeId, "", FoundFault::Empty);
        }
        let visited_on = self.day(row, FoundColumn::VisitedOn, visited);
        if visited.is_empty() {
            self.problem(row, FoundColumn::VisitedOn, "", FoundFault::Empty);
        }
        let ringed_on = self.day(row, FoundColumn::RingedOn, ringed);
        let (mut seen, mut dead, mut fallen) = (Vec::new(), false, false);
        for part in found.split(';').map(str::trim).filter(|it| !it.is_empty()) {
            let word = part.to_lowercase().replace([' ', '-'], "_");
            match (Seen::parse(&word), word.as_str()) {
                (Some(what), _) if seen.contains(&what) => {}
                (Some(what), _) => seen.push(what),
                (None, DEAD) => dead = true,
                (None, FALLEN) => fallen = true,
                (None, _) => self.problem(row, FoundColumn::Found, part, FoundFault::NotAWord),
            }
        }
        // On the day of its ring a tree need not be looked at again.
        if found.is_empty() && (ringed_on.is_none() || ringed_on != visited_on) {
            self.problem(row, FoundColumn::Found, "", FoundFault::Empty);
        }
        let minutes = self.number(
            row,
            FoundColumn::Minutes,
            minutes,
            MINUTES,
            |read| match read.unit {
                None => Some(read.value),
                Some(calc::terms::number::Unit::Minute) => Some(read.value),
                Some(_) => None,
            },
        );
        let people = self.number(row, FoundColumn::People, people, PEOPLE, |read| {
            read.unit.is_none().then_some(read.value)
        });
        let range = calc::question::fields::RING_WIDTH;
        let ring_mm = self.number(
            row,
            FoundColumn::RingWidth,
            width,
            (range.low, range.high),
            |read| {
                let bare = match units {
                    Units::Us => MM_PER_IN,
                    Units::Metric => 10.0,
                };
                let in_mm = match read.unit {
                    None => bare,
                    Some(unit) => unit.in_mm()?,
                };
                Some(read.value * in_mm)
            },
        );
        if self.problems.len() > before {
            return;
        }
        let Some(visited_on) = visited_on else { return };
        self.rows.push(FoundRow {
            row,
            tree_id: tree_id.to_owned(),
            visited_on,
            seen,
            dead,
            fallen,
            person_minutes: minutes
                .filter(|minutes| *minutes > 0.0)
                .map(|minutes| minutes * people.unwrap_or(1.0)),
            ringed_on,
            ring_mm,
        });
    }

    fn day(&mut self, row: u64, column: FoundColumn, typed: &str) -> Option<NaiveDate> {
        if typed.is_empty() {
            return None;
        }
        let day = read_day(typed).ok();
        if day.is_none() {
            self.problem(row, column, typed, FoundFault::NotADay);
        }
        day
    }

    /// None where the cell is empty, or holds no number from the first to the second end.
    fn number(
        &mut self,
        row: u64,
        column: FoundColumn,
        typed: &str,
        (from, to): (f64, f64),
        value: impl Fn(Number) -> Option<f64>,
    ) -> Option<f64> {
        if typed.is_empty() {
            return None;
        }
        let read = read_number(typed).ok().and_then(value);
        let fits = read.filter(|read| (from..=to).contains(read));
        if fits.is_none() {
            self.problem(row, column, typed, FoundFault::NotANumber);
        }
        fits
    }
}
