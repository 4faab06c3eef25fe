//! A row as the question of one tree, with what is no question beside it.

mod condition;
pub(crate) mod days;
pub(crate) mod fields;
mod free_text;
mod names;
mod size;
mod targets;

use crate::header::LengthUnit;
use crate::problem::{RowFault, RowProblem, Severity, repeated};
use crate::reading::ListReading;
use crate::record::{LONGEST_CELL, Record};
use crate::words::WordFinder;
use calc::question::{self, Question, Text, Typed, read};
use calc::reference::Reference;
use calc::terms::number::read_number;
use calc::terms::small::order::sort_by_key;
use calc_data::list::{Column, ListTables, WordKind, fold};
pub(crate) use condition::is_strange as is_strange_condition;
use names::Namer;
pub(crate) use size::BREAST_M;
use std::collections::BTreeMap;

/// What is no question: it names the row, groups it, or says how far its work is.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Tag {
    /// The tag, made where the row has none; empty where none may be made.
    pub tree_id: String,
    /// The place.
    pub site: String,
    /// The part of the property.
    pub unit: String,
    /// The crew.
    pub crew: String,
    /// The name as typed.
    pub species: String,
    /// 1, 2 or 4.
    pub priority: u8,
    /// `outlying`, `edge` or `inside`.
    pub position: &'static str,
    /// The planned day, as typed.
    pub pin: String,
    /// How far the work is.
    pub status: &'static str,
    /// When it was done, as typed.
    pub done_date: String,
    /// Latitude and longitude, not rounded.
    pub point: Option<(f64, f64)>,
    /// How exact they are, metres.
    pub coord_m: Option<f64>,
    /// Minutes from the tree before, as typed.
    pub walk_min: String,
    /// The row says itself what the tree could hit, or that nobody could tell.
    pub says_targets: bool,
    /// The note of a row that speaks of a wire, of something that the tree could hit or of a broken part: a crew gets it along.
    pub note: String,
}

/// What a row is.
#[derive(Clone, Debug)]
pub enum Is {
    /// A tree with a question that was understood.
    Tree(Box<Typed>, Box<Question>),
    /// A tree with something to mend.
    ToFix,
    /// No tree: the word for what stands there.
    NotTree(&'static str),
    /// Its name was decided as left out.
    LeftOut,
}

/// A row.
#[derive(Clone, Debug)]
pub struct Row {
    /// As the spreadsheet shows it.
    pub row: u64,
    /// What is no question.
    pub tag: Tag,
    /// What it is.
    pub is: Is,
    /// What is wrong, in the order of its columns.
    pub problems: Vec<RowProblem>,
}

impl Row {
    /// Why it has no answer, in a word: `to_fix`, `not_a_tree`, `skipped`, `done` or `dead`.
    #[must_use]
    pub fn without_answer(&self) -> Option<&'static str> {
        match &self.is {
            Is::ToFix => Some("to_fix"),
            Is::NotTree(_) => Some("not_a_tree"),
            Is::LeftOut => Some("skipped"),
            Is::Tree(..) => match self.tag.status {
                "skip" => Some("skipped"),
                "treated" | "checked" | "resprouted" => Some("done"),
                "fallen" => Some("dead"),
                _ => None,
            },
        }
    }
}

/// Reads rows as their list is to be read.
pub struct Rows {
    reference: &'static Reference,
    words: WordFinder,
    reading: ListReading,
    namer: Namer,
    /// Tags with the row of each.
    tags: BTreeMap<String, u64>,
    /// How many trees stand at a place.
    places: BTreeMap<String, u32>,
    made: u64,
    /// Ground so steep that a trunk goes farther than it is long, percent.
    too_steep: f64,
}

/// How many tags and places are remembered: a list of more repeats none of them in silence, it is told by the key.
const MOST_TAGS: usize = 2_000_000;

/// What is wrong with one row, while it is read.
pub(crate) struct Told<'a> {
    row: &'a Record,
    list: Vec<RowProblem>,
}

impl Told<'_> {
    fn add(&mut self, column: usize, level: Severity, code: RowFault) {
        self.list.push(RowProblem {
            row: self.row.row,
            column: Some(column),
            level,
            code,
            value: repeated(self.row.cell(column).trim()),
        });
    }
}

impl Rows {
    /// A reader of rows.
    #[must_use]
    pub fn new(
        reference: &'static Reference,
        tables: &'static ListTables,
        reading: ListReading,
    ) -> Self {
        let words = WordFinder::new(tables);
        Self {
            reference,
            words,
            namer: Namer::new(reference, words, &reading),
            reading,
            tags: BTreeMap::new(),
            places: BTreeMap::new(),
            made: 0,
            too_steep: reference.constants.reach.too_steep,
        }
    }

    /// How the list is read.
    #[must_use]
    pub fn reading(&self) -> &ListReading {
        &self.reading
    }

    /// Reads a row.
    pub fn read(&mut self, record: &Record) -> Row {
        let mut told = Told {
            row: record,
            list: Vec::new(),
        };
        let mut tag = self.tag(record);
        if let Some(at) = (0..record.len()).find(|at| record.cell(*at).len() > LONGEST_CELL) {
            let code = if record.unclosed {
                RowFault::QuoteOpen
            } else {
                RowFault::CellTooLong
            };
            told.add(at, Severity::Fix, code);
            return self.done(record, tag, Is::ToFix, told.list);
        }
        if record.unclosed {
            told.add(
                record.len().saturating_sub(1),
                Severity::Fix,
                RowFault::QuoteOpen,
            );
            return self.done(record, tag, Is::ToFix, told.list);
        }
        if let Some(what) = self.not_tree(record) {
            return self.done(record, tag, Is::NotTree(what), Vec::new());
        }
        let name = self.namer.of(&self.reading, record);
        if let Some((at, _, RowFault::Doubted)) = &name.problem {
            // A crew that stands before the tree can tell.
            tag.note = repeated(record.cell(*at).trim());
        }
        tag.species.clone_from(&name.typed);
        let mut dead = name.dead;
        let mut typed = Typed {
            version: 1,
            units: Some(Text::from(match self.reading.options.units {
                calc::terms::quantity::Units::Us => "us",
                calc::terms::quantity::Units::Metric => "metric",
            })),
            today: Some(Text(self.reading.options.today.clone())),
            region: self.region(record),
            ..Typed::default()
        };
        let size = self.size(record, &mut typed, &mut told);
        if let size::Found::NotTree(what) = size {
            return self.done(record, tag, Is::NotTree(what), Vec::new());
        }
        let no_name = name.typed.is_empty() && name.species.is_none();
        if no_name && matches!(size, size::Found::Missing) && self.reading.every.is_none() {
            // Neither a name nor a size: a place, or a row of totals.
            return self.done(record, tag, Is::NotTree("no_data"), Vec::new());
        }
        if name.left_out {
            return self.done(record, tag, Is::LeftOut, Vec::new());
        }
        self.state(record, &mut typed, &mut tag, &mut dead, &mut told);
        if dead == Some("fallen") {
            if !matches!(size, size::Found::Some) {
                return self.done(record, tag, Is::NotTree("fallen"), told.list);
            }
            // It is no work any more, and stays in the register of standing dead trees until somebody looked.
            tag.status = "fallen";
        }
        if dead.is_some() {
            typed.condition = Some(Text::from("dead"));
        }
        if let Some((at, level, code)) = name.problem {
            told.add(at, level, code);
        }
        self.tag_of(record, &mut tag, &mut told);
        self.place(record, &mut typed, &mut tag, &mut told);
        self.targets(record, &mut typed, &mut tag, &mut told);
        self.free_texts(record, &mut typed, &mut tag, &mut told);
        self.rest(record, &mut typed, &mut tag, &mut told);
        if record.len() > self.reading.columns.len() {
            let more = (self.reading.columns.len()..record.len())
                .find(|at| !record.cell(*at).trim().is_empty());
            if let Some(at) = more {
                told.add(at, Severity::Check, RowFault::TooLong);
            }
        }
        // An open name must not hide what else is wrong: it is read as a tree without a name, and never answered so.
        let open = name.species.is_none();
        typed.species = Some(Text(
            name.species
                .unwrap_or_else(|| "unknown broadleaf".to_owned()),
        ));
        let mut found = read(self.reference, &typed);
        if let Err(problems) = &mut found {
            // Nobody stands by to confirm a wide trunk.
            let wide = |problem: &mut question::Problem| {
                matches!(problem.code, question::Code::SizeInDoubt(_))
            };
            let doubts: Vec<_> = problems.extract_if(.., wide).collect();
            for doubt in doubts {
                let at = self.column_of(&doubt.field);
                if let question::Code::SizeInDoubt(doubt) = doubt.code {
                    // Who types the unit with it says that it is meant: a figure alone may have lost its point.
                    let cell = read_number(record.cell(at));
                    let said = cell.is_ok_and(|number| number.unit.is_some());
                    let level = if said { Severity::Check } else { Severity::Fix };
                    told.add(at, level, RowFault::SizeWide { doubt, said });
                }
                typed.size_confirmed = true;
            }
            if problems.is_empty() {
                found = read(self.reference, &typed);
            }
        }
        let question = match found {
            Ok(question) => Some(question),
            Err(problems) => {
                for problem in problems {
                    // A missing size was told with its own words.
                    let sized = problem.field == "stems" || problem.code.name() == "size_missing";
                    if sized && !matches!(size, size::Found::Some) {
                        continue;
                    }
                    let at = self.column_of(&problem.field);
                    told.add(at, Severity::Fix, RowFault::Question(problem));
                }
                None
            }
        };
        let mend = open
            || told
                .list
                .iter()
                .any(|problem| problem.level == Severity::Fix);
        let is = match question {
            Some(question) if !mend && !typed.stems.is_empty() => {
                Is::Tree(Box::new(typed), Box::new(question))
            }
            _ => Is::ToFix,
        };
        self.done(record, tag, is, told.list)
    }

    fn done(&self, record: &Record, mut tag: Tag, is: Is, mut problems: Vec<RowProblem>) -> Row {
        if tag.status.is_empty() {
            tag.status = "planned";
        }
        sort_by_key(&mut problems, |problem| problem.column);
        Row {
            row: record.row,
            tag,
            is,
            problems,
        }
    }

    /// The state or country of a row: its own, else that of the list.
    fn region(&self, record: &Record) -> Option<Text> {
        let own = self.filled(record, Column::Region);
        let own = own.and_then(|(_, cell)| crate::place::region(cell));
        let of_list = self.reading.options.region.clone();
        own.map(Text::from).or(of_list.map(Text))
    }

    /// A cell that holds something.
    fn filled<'a>(&self, record: &'a Record, column: Column) -> Option<(usize, &'a str)> {
        let at = self.reading.at(column)?;
        self.filled_at(record, at).map(|cell| (at, cell))
    }

    fn filled_at<'a>(&self, record: &'a Record, at: usize) -> Option<&'a str> {
        let cell = crate::cell::unguarded(record.cell(at).trim());
        let missing = self.words.is_missing(cell)
            || (!self.reading.missing.is_empty() && self.reading.missing.contains(&fold(cell)));
        (!missing).then_some(cell)
    }

    /// A cell that holds something, or a word of a kind: `none` is an answer where a target is asked.
    fn worded<'a>(
        &self,
        record: &'a Record,
        column: Column,
        kind: WordKind,
    ) -> Option<(usize, &'a str)> {
        let at = self.reading.at(column)?;
        self.worded_at(record, at, kind).map(|cell| (at, cell))
    }

    fn worded_at<'a>(&self, record: &'a Record, at: usize, kind: WordKind) -> Option<&'a str> {
        let cell = crate::cell::unguarded(record.cell(at).trim());
        let word = !self.reading.none_is_nothing && self.words.means(kind, cell).is_some();
        if word && !self.reading.missing.contains(&fold(cell)) {
            return Some(cell);
        }
        self.filled_at(record, at)
    }

    /// What is no question and needs no reader.
    fn tag(&self, record: &Record) -> Tag {
        let text = |column: Column| {
            self.filled(record, column)
                .map_or(String::new(), |(_, cell)| cell.to_owned())
        };
        Tag {
            tree_id: self.own_tag(record).unwrap_or_default(),
            site: text(Column::Site),
            unit: text(Column::Unit),
            crew: text(Column::Crew),
            priority: 1,
            position: "inside",
            status: "",
            ..Tag::default()
        }
    }

    /// The word for what stands where no tree does, in a name, a state, a planting place; a row of totals.
    fn not_tree(&self, record: &Record) -> Option<&'static str> {
        let names = &self.reading.names;
        let columns = [
            names.species,
            names.scientific,
            names.common,
            names.genus,
            names.code,
        ];
        let cells = columns
            .into_iter()
            .flatten()
            .chain(self.reading.states.first().copied());
        let planting = self
            .reading
            .columns
            .iter()
            .position(|column| column.is == Column::Planting);
        for at in cells.chain(planting) {
            let cell = record.cell(at).trim();
            if let Some(what) = self.words.not_tree(cell)
                && !self.reading.trees.contains(&fold(cell))
                && !self.reading.trees.contains(what)
            {
                return Some(what);
            }
        }
        let no_name = columns
            .into_iter()
            .flatten()
            .all(|at| self.words.is_missing(record.cell(at)));
        let total = || {
            record.cells().any(|cell| {
                cell.len() < 40
                    && self
                        .words
                        .means(WordKind::Total, cell.trim().trim_end_matches(':'))
                        .is_some()
            })
        };
        let named_total = columns.into_iter().flatten().any(|at| {
            self.words
                .means(
                    WordKind::Total,
                    record.cell(at).trim().trim_end_matches(':'),
                )
                .is_some()
        });
        // A tag that says so, whatever stands where the name would: "Total, 6 trees".
        let tagged_total = self.reading.key.is_empty()
            && self.own_tag(record).is_some_and(|tag| {
                let tag = tag.trim_end_matches(':');
                self.words.means(WordKind::Total, tag).is_some()
            });
        let sums = no_name && self.reading.id.is_some() && self.own_tag(record).is_none();
        let only_numbers = || {
            let mut filled = record.cells().filter(|cell| !self.words.is_missing(cell));
            filled.all(|cell| read_number(cell).is_ok())
        };
        let placed = self
            .reading
            .at(Column::Lat)
            .or(self.reading.at(Column::Point));
        let placed = placed.is_some_and(|at| self.filled_at(record, at).is_some());
        let sized = self
            .reading
            .sizes
            .iter()
            .any(|size| self.filled_at(record, size.at).is_some());
        let is_total = tagged_total
            || (no_name && total())
            || named_total
            || (sums && sized && !placed && only_numbers());
        is_total.then_some("total")
    }

    /// The tag that the row has.
    fn own_tag(&self, record: &Record) -> Option<String> {
        if !self.reading.key.is_empty() {
            let parts: Vec<&str> = self
                .reading
                .key
                .iter()
                .map(|at| record.cell(*at).trim())
                .collect();
            let filled = parts.iter().any(|part| !part.is_empty());
            return filled.then(|| parts.join(" "));
        }
        let at = self.reading.id?;
        let cell = crate::cell::unguarded(record.cell(at).trim());
        let none = cell.is_empty() || self.words.means(WordKind::NoTag, cell).is_some();
        (!none).then(|| cell.to_owned())
    }

    /// The tag, made where there is none; one that stands in an earlier row is a problem from the second on.
    fn tag_of(&mut self, record: &Record, tag: &mut Tag, told: &mut Told<'_>) {
        let at = self
            .reading
            .key
            .first()
            .copied()
            .or(self.reading.id)
            .unwrap_or(0);
        let Some(own) = self.own_tag(record) else {
            if !self.reading.of_a_piece {
                self.made += 1;
                tag.tree_id = format!("T{:03}", self.made);
                while self.tags.contains_key(&tag.tree_id) {
                    self.made += 1;
                    tag.tree_id = format!("T{:03}", self.made);
                }
                self.tags.insert(tag.tree_id.clone(), record.row);
            }
            return;
        };
        if self.reading.key.is_empty() && crate::cell::is_mangled_tag(&own) {
            told.add(at, Severity::Check, RowFault::TagMangled);
        }
        tag.tree_id.clone_from(&own);
        if self.reading.of_a_piece {
            return;
        }
        match self.tags.get(&own) {
            Some(first) => {
                let first = *first;
                told.add(at, Severity::Fix, RowFault::TagTwice { first });
            }
            None if self.tags.len() < MOST_TAGS => {
                self.tags.insert(own, record.row);
            }
            None => {}
        }
    }

    /// The column that a field of the question was filled from.
    fn column_of(&self, field: &str) -> usize {
        let size = || self.reading.sizes.first().map(|size| size.at);
        let found = match field.split(['[', '.']).next().unwrap_or("") {
            "stems" if field.ends_with("bark") => self.reading.at(Column::Bark),
            "stems" => size(),
            "height" => self.reading.at(Column::Height),
            "date" | "today" => self.reading.at(Column::Date),
            "place" if field.ends_with("longitude") => self
                .reading
                .at(Column::Lon)
                .or(self.reading.at(Column::Point)),
            "place" if field.ends_with("elevation") => self.reading.at(Column::Elevation),
            "place" => self
                .reading
                .at(Column::Lat)
                .or(self.reading.at(Column::Point)),
            "targets" if field.ends_with("distance") => self
                .reading
                .at(Column::TargetDistance)
                .or(self.reading.at(Column::Target)),
            "targets" => self.reading.at(Column::Target),
            "line_within_reach" => self.reading.at(Column::LineWithinReach),
            "condition" => self.reading.at(Column::Condition),
            "walk" => self.reading.at(Column::WalkMin),
            "whole_clone" => self.reading.at(Column::WholeClone),
            "same_genus_near" => self.reading.at(Column::SameGenusNear),
            "species" => self.reading.names.first(),
            _ => None,
        };
        found.or_else(size).unwrap_or(0)
    }
}

/// A cell with the unit of its column, where it has none itself.
pub(crate) fn with_unit(cell: &str, unit: Option<LengthUnit>) -> String {
    let bare = calc::terms::number::read_number(cell).is_ok_and(|number| number.unit.is_none());
    match unit {
        Some(unit) if bare => [cell, " ", unit.sign()].concat(),
        _ => cell.to_owned(),
    }
}
