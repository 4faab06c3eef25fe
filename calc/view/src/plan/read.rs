//! A list in memory, read row by row and then judged tree by tree: in slices, so that a page can stop it between two.

use super::asked::Asked;
use calc::models::season::Local;
use calc::question::settings::AskingGroup;
use calc::question::{Question, Typed, read};
use calc::reference::Reference;
use calc::terms::place::Place;
use calc::timing::places::climate::Places;
use calc_data::list::plan_constants;
use calc_list::bytes::changed_words;
use calc_list::reader::{CellEdits, Cut, EditedCell, Item, Reader, as_text};
use calc_list::reading::ColumnReading;
use calc_list::{
    Answers, Column, Counts, Decisions, Encoding, Is, Layout, NotList, Opened, Record, Records,
    Row, Tag,
};
use calc_plan::{JudgedTree, ListTree, Position, Progress};
use std::borrow::Cow;
use std::io::{Cursor, Result};
use std::rc::Rc;

/// A file whose letters and cells were understood.
pub struct ListFile {
    text: Rc<[u8]>,
    cut: Cut,
    /// The id of its bytes, see [`calc_plan::fingerprint`].
    pub id: String,
    /// Where its letters were those of an older encoding: three words of it, as they were read.
    pub changed: Vec<String>,
}

impl ListFile {
    /// Of the bytes as they came.
    ///
    /// # Errors
    /// Why it is no list.
    pub fn of(bytes: &[u8], decisions: &Decisions) -> std::result::Result<Self, NotList> {
        let (text, encoding) = as_text(bytes)?;
        Ok(Self {
            cut: Cut::of(&text, encoding, decisions)?,
            id: calc_plan::fingerprint(bytes),
            changed: match encoding {
                Encoding::Windows1252 => changed_words(&text),
                _ => Vec::new(),
            },
            text: Rc::from(text),
        })
    }

    fn records(&self) -> Result<Records<Cursor<Rc<[u8]>>>> {
        self.cut.records(Cursor::new(Rc::clone(&self.text)), 1)
    }

    /// All its rows, by which its columns are judged.
    ///
    /// # Errors
    /// What can't be read.
    pub fn first_rows(&self) -> Result<Vec<Record>> {
        let (mut rows, mut records, mut record) = (Vec::new(), self.records()?, Record::default());
        while records.next(&mut record)?.0 {
            rows.push(record.clone());
        }
        Ok(rows)
    }
}

/// A line of the list, as it goes out again.
pub(crate) enum Listed {
    /// A title line, the header, or a row of units.
    Above(Record),
    /// Empty lines.
    Lines(u64),
    /// A row of empty cells.
    Blank(Record),
    /// Any other row; its tree by its place among the trees, where it is one that was understood.
    Row(Record, Box<Row>, Option<usize>),
}

/// A question as the group's settings leave it, with the climate of its place.
type AtPlace = (Rc<Question>, Rc<Local>);

/// What is kept of the trees that ask the same.
pub type JudgedTrees = Answers<(Rc<JudgedTree>, Rc<Question>)>;

/// Trees that ask the same are judged once; the climate places may be empty, and a group may have its own settings.
#[must_use]
pub fn judged_trees(
    reference: &'static Reference,
    places: &'static Places,
    group: Option<AskingGroup>,
) -> JudgedTrees {
    Answers::new(reference, places, group)
}

/// A list that is being read.
pub struct ListBeingRead {
    reader: Reader<Cursor<Rc<[u8]>>, Box<Opened>>,
    list: ReadList,
}

impl ListBeingRead {
    /// From the first row on; cells that were typed anew are read instead of those of the file.
    ///
    /// # Errors
    /// What can't be read.
    pub fn of(
        file: &ListFile,
        reference: &'static Reference,
        opened: Opened,
        edits: CellEdits,
    ) -> Result<Self> {
        let list = ReadList {
            reference,
            id: file.id.clone(),
            layout: opened.layout.clone(),
            columns: opened.rows.reading().columns.clone(),
            lines: Vec::new(),
            places: Vec::new(),
            counts: Counts::default(),
            trees: Rc::default(),
            questions: Vec::new(),
            zones: Vec::new(),
            edited: Vec::new(),
            judged: 0,
        };
        Ok(Self {
            reader: Reader::new(file.records()?, Box::new(opened)).with(edits),
            list,
        })
    }

    /// Reads so many lines more; false where there was none left.
    ///
    /// # Errors
    /// What can't be read.
    pub fn read(&mut self, lines: usize) -> Result<bool> {
        for _ in 0..lines {
            let Some(item) = self.reader.read_next()? else {
                return Ok(false);
            };
            if let Item::Row(_, row) = &item {
                self.list.places.push((row.row, self.list.lines.len()));
            }
            self.list.lines.push(match item {
                Item::Above(record) => Listed::Above(record.clone()),
                Item::Lines(lines) => Listed::Lines(lines),
                Item::Blank(record) => Listed::Blank(record.clone()),
                Item::Row(record, row) => Listed::Row(record.clone(), row, None),
            });
        }
        Ok(true)
    }

    /// How many lines were read.
    #[must_use]
    pub fn lines(&self) -> usize {
        self.list.lines.len()
    }

    /// The list, once all of it was read.
    #[must_use]
    pub fn done(self) -> ReadList {
        let mut list = self.list;
        list.counts = self.reader.counts().clone();
        list.edited = self.reader.edited().to_vec();
        list
    }
}

/// A list that was read; its trees, as far as they were judged.
pub struct ReadList {
    pub(crate) reference: &'static Reference,
    /// The id of its bytes.
    pub id: String,
    /// Its header.
    pub layout: Layout,
    /// What its columns hold; those of an earlier run are left out.
    pub(crate) columns: Vec<ColumnReading>,
    pub(crate) lines: Vec<Listed>,
    /// The number of each row with something in it, and its place among the lines.
    places: Vec<(u64, usize)>,
    /// How many rows there are of each kind.
    pub counts: Counts,
    /// Its trees, in the order of their rows; a plan that is being made holds them too.
    pub trees: Rc<Vec<ListTree>>,
    /// The question of each tree but those that are left out.
    pub questions: Vec<Option<AtPlace>>,
    /// For each tree how wide the ground is that stays dangerous, metres; none where it was left out.
    pub zones: Vec<Option<f64>>,
    /// Cells that were typed anew.
    pub edited: Vec<EditedCell>,
    /// So many lines were judged.
    judged: usize,
}

impl ReadList {
    /// Reads all of a file.
    ///
    /// # Errors
    /// What can't be read.
    pub fn of(file: &ListFile, reference: &'static Reference, opened: Opened) -> Result<Self> {
        let mut reading = ListBeingRead::of(file, reference, opened, CellEdits::new())?;
        while reading.read(usize::MAX)? {}
        Ok(reading.done())
    }

    /// The column of days that somebody chose, where the list has one.
    #[must_use]
    pub fn column_of_days(&self) -> Option<usize> {
        let mut columns = self.columns.iter();
        columns.position(|column| column.is == Column::Date)
    }

    /// Its rows with what stands in them: blank ones left out.
    pub fn rows(&self) -> impl Iterator<Item = (&Record, &Row)> {
        self.lines.iter().filter_map(|line| match line {
            Listed::Row(record, row, _) => Some((record, &**row)),
            _ => None,
        })
    }

    /// A row by its number.
    #[must_use]
    pub fn row(&self, number: u64) -> Option<(&Record, &Row)> {
        let at = self.places.binary_search_by_key(&number, |(row, _)| *row);
        match &self.lines[self.places[at.ok()?].1] {
            Listed::Row(record, row, _) => Some((record, row)),
            _ => None,
        }
    }

    /// The tree of a row, by the row's number.
    #[must_use]
    pub fn tree_of(&self, row: u64) -> Option<usize> {
        self.trees.binary_search_by_key(&row, |tree| tree.row).ok()
    }

    /// The names of its parts, in order; none for rows that name none.
    #[must_use]
    pub fn units(&self) -> Vec<&str> {
        let mut units: Vec<&str> = self.rows().map(|(_, row)| unit_of(&row.tag)).collect();
        units.sort_unstable();
        units.dedup();
        units.retain(|unit| !unit.is_empty());
        units
    }

    /// Whether a part of it is called so.
    #[must_use]
    pub fn has_unit(&self, name: &str) -> bool {
        self.rows().any(|(_, row)| unit_of(&row.tag) == name)
    }

    /// Forgets what was judged: other days were asked for.
    pub fn judge_anew(&mut self) {
        self.trees = Rc::default();
        self.questions.clear();
        self.zones.clear();
        self.judged = 0;
    }

    /// Judges the trees of so many lines more; false where there was none left.
    pub fn judge(&mut self, lines: usize, asked: &Asked, answers: &mut JudgedTrees) -> bool {
        let to = self.judged.saturating_add(lines).min(self.lines.len());
        let trees = Rc::make_mut(&mut self.trees);
        for line in &mut self.lines[self.judged..to] {
            let Listed::Row(_, row, place) = line else {
                continue;
            };
            *place = tree(self.reference, row, asked, answers).map(|it| {
                trees.push(it.tree);
                self.questions.push(it.question);
                self.zones.push(it.zone_m);
                trees.len() - 1
            });
        }
        self.judged = to;
        to < self.lines.len()
    }

    /// How many lines were judged, of how many.
    #[must_use]
    pub fn judged(&self) -> (usize, usize) {
        (self.judged, self.lines.len())
    }
}

/// A tree of the list, and the question that was judged.
struct TreeOfRow {
    tree: ListTree,
    question: Option<AtPlace>,
    zone_m: Option<f64>,
}

/// The tree of a row, where it was understood.
fn tree(
    reference: &'static Reference,
    row: &Row,
    asked: &Asked,
    answers: &mut JudgedTrees,
) -> Option<TreeOfRow> {
    let mut question = None;
    let mut zone_m = None;
    let mut place = None;
    let mut said_within_m = None;
    let reason = row.without_answer();
    let standing = match (&row.is, reason) {
        (_, Some("to_fix" | "not_a_tree")) | (Is::ToFix | Is::NotTree(_), _) => return None,
        (_, Some("skipped")) | (Is::LeftOut, _) => Progress::Skipped,
        (Is::Tree(typed, of), _) => {
            let local = answers.local(typed, of);
            let unit = unit_of(&row.tag);
            let (mut typed, mut of) = (Cow::Borrowed(&**typed), Cow::Borrowed(&**of));
            if let Some(filled) = asked.said.filled(&typed, of.tree.species.scientific, unit) {
                // What was filled in is yes or no: it reads.
                if let Ok(read) = read(reference, &filled) {
                    of = Cow::Owned(read);
                }
                typed = Cow::Owned(filled);
            }
            let mut judge = |typed: &Typed, of: &Question| {
                answers.each(typed, of, |question, local| {
                    let known = (reference, plan_constants());
                    let days = (asked.season.from, asked.judged_on.as_slice());
                    let judged = calc_plan::judge(known, question, local, days, asked.season.slip);
                    (Rc::new(judged), Rc::new(question.clone()))
                })
            };
            let mut judged = judge(&typed, &of);
            // What was said of its unit holds as far as the tree could reach, and where the row itself says nothing.
            let within = asked.said.within(unit);
            let within = within.filter(|within| judged.0.reach_m <= *within);
            if let Some(within) = within
                && !row.tag.says_targets
            {
                let mut none = typed.into_owned();
                none.none_in_reach = true;
                if let Ok(cleared) = read(reference, &none) {
                    judged = judge(&none, &cleared);
                    said_within_m = Some(within);
                }
            }
            zone_m = Some(judged.0.zone_m);
            place = match &judged.1.place {
                Place::Point {
                    latitude,
                    longitude,
                    elevation,
                } => Some((*latitude, *longitude, *elevation)),
                Place::Hemisphere(_) => None,
            };
            question = Some((Rc::clone(&judged.1), local));
            match reason {
                Some("done") => Progress::Done,
                Some("dead") => Progress::Dead,
                _ => Progress::Open(Rc::clone(&judged.0)),
            }
        }
    };
    let tag = &row.tag;
    let tree = ListTree {
        tree_id: tag.tree_id.clone(),
        row: row.row,
        unit: unit_of(tag).to_owned(),
        priority: tag.priority,
        position: Position::of(tag.position),
        pinned: calc::question::read_day(&tag.pin).ok(),
        place,
        point: tag.point,
        coord_m: tag.coord_m,
        walk_said: matches!(&row.is, Is::Tree(_, of) if of.pace.walk_min.is_some()),
        standing,
        said_within_m,
        after: None,
    };
    Some(TreeOfRow {
        tree,
        question,
        zone_m,
    })
}

/// The part of the property that a row stands in: its unit, else its place.
pub(crate) fn unit_of(tag: &Tag) -> &str {
    if tag.unit.is_empty() {
        &tag.site
    } else {
        &tag.unit
    }
}
