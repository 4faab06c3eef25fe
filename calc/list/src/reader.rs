//! A list from its first byte to its last row: what stands above the header, blank rows, trees and what is none, each
//! told once and counted once.

use crate::bytes::{Encoding, Look, NotList, changed_words, from_utf16};
use crate::decisions::Decisions;
use crate::delimiter::{DELIMITERS, Start, start};
use crate::reading::ListContext;
use crate::record::{Record, Records};
use crate::row::{Is, Row};
use crate::write::guarded;
use crate::{Opened, open};
use calc::reference::Reference;
use std::borrow::{BorrowMut, Cow};
use std::collections::BTreeMap;
use std::io::{BufRead, Result};

/// How the bytes of a file are cut into rows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Cut {
    /// Its letters.
    pub encoding: Encoding,
    /// What stands between its cells, and where they begin.
    pub start: Start,
}

impl Cut {
    /// Looks at the first bytes of a file whose encoding is known; a megabyte is more than enough.
    ///
    /// # Errors
    /// One column only, which a file of trees never is.
    pub fn of(
        head: &[u8],
        encoding: Encoding,
        decisions: &Decisions,
    ) -> std::result::Result<Self, NotList> {
        if decisions.of_a_piece() {
            // Nothing is looked at: each piece of a file is read as the others are.
            let told = decisions
                .delimiter
                .as_deref()
                .and_then(|it| it.bytes().next());
            let delimiter = told.filter(|sign| DELIMITERS.contains(sign));
            return Ok(Self {
                encoding,
                start: Start {
                    delimiter: delimiter.unwrap_or(b','),
                    skip: if head.starts_with(&[0xef, 0xbb, 0xbf]) {
                        3
                    } else {
                        0
                    },
                    rows: 0,
                    cells: 2,
                },
            });
        }
        let start = start(head, encoding);
        if start.cells < 2 {
            let blank = head[start.skip..].iter().all(u8::is_ascii_whitespace);
            return Err(if blank {
                NotList::Empty
            } else {
                NotList::OneColumn
            });
        }
        Ok(Self { encoding, start })
    }

    /// The rows of the file from its first byte on.
    ///
    /// # Errors
    /// What can't be read.
    pub fn records<R: BufRead>(&self, mut from: R, first_row: u64) -> Result<Records<R>> {
        let mut skip = self.start.skip;
        while skip > 0 {
            let there = from.fill_buf()?.len().min(skip);
            if there == 0 {
                break;
            }
            from.consume(there);
            skip -= there;
        }
        let first = first_row + self.start.rows;
        Ok(Records::new(
            from,
            self.encoding,
            self.start.delimiter,
            first,
        ))
    }
}

/// How many rows there are of each kind. `rows = ready + to_fix + blank + not_trees`, always.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Counts {
    /// Rows below the header.
    pub rows: u64,
    /// Trees with a question, and those that a decision leaves out.
    pub ready: u64,
    /// Those of `ready` that a decision leaves out.
    pub left_out: u64,
    /// Trees with something to mend.
    pub to_fix: u64,
    /// Rows with nothing in them.
    pub blank: u64,
    /// Rows that are no tree, by what stands there.
    pub not_trees: BTreeMap<&'static str, u64>,
}

impl Counts {
    /// Rows that are trees.
    #[must_use]
    pub fn trees(&self) -> u64 {
        self.ready + self.to_fix
    }

    /// Rows that are no tree and not blank.
    #[must_use]
    pub fn no_trees(&self) -> u64 {
        self.not_trees.values().sum()
    }

    fn take(&mut self, is: &Is) {
        self.rows += 1;
        match is {
            Is::Tree(..) => self.ready += 1,
            Is::LeftOut => {
                self.ready += 1;
                self.left_out += 1;
            }
            Is::ToFix => self.to_fix += 1,
            Is::NotTree(what) => *self.not_trees.entry(what).or_default() += 1,
        }
    }

    fn take_blank(&mut self, rows: u64) {
        self.rows += rows;
        self.blank += rows;
    }
}

/// What comes next in a list.
#[derive(Debug)]
pub enum Item<'a> {
    /// A title line, the header, or a row of units.
    Above(&'a Record),
    /// Empty lines.
    Lines(u64),
    /// A row of empty cells.
    Blank(&'a Record),
    /// Any other row.
    Row(&'a Record, Box<Row>),
}

/// Reads a list that was opened, item by item; it may own what was opened.
pub struct Reader<R, O> {
    records: Records<R>,
    opened: O,
    record: Record,
    /// The record was read and stands behind blank lines that were told.
    waits: bool,
    counts: Counts,
    edits: CellEdits,
    edited: Vec<EditedCell>,
}

/// Cells that were typed anew, by row and column.
pub type CellEdits = BTreeMap<(u64, usize), String>;

/// A cell that was typed anew.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct EditedCell {
    /// The row, as the spreadsheet shows it.
    pub row: u64,
    /// The column, from 0.
    pub column: usize,
    /// What stands in the file.
    pub was: String,
    /// What was typed.
    pub is: String,
}

impl<R: BufRead, O: BorrowMut<Opened>> Reader<R, O> {
    /// Of records that begin where the file does.
    pub fn new(records: Records<R>, opened: O) -> Self {
        Self {
            records,
            opened,
            record: Record::default(),
            waits: false,
            counts: Counts::default(),
            edits: CellEdits::new(),
            edited: Vec::new(),
        }
    }

    /// With cells typed anew: they are read instead of those of the file.
    #[must_use]
    pub fn with(mut self, edits: CellEdits) -> Self {
        self.edits = edits;
        self
    }

    /// The next item; none at the end.
    ///
    /// # Errors
    /// What can't be read.
    pub fn read_next(&mut self) -> Result<Option<Item<'_>>> {
        let first = self.opened.borrow().layout.first_row;
        if !std::mem::take(&mut self.waits) {
            let before = self.records.row();
            let (more, blank) = self.records.next(&mut self.record)?;
            if blank > 0 {
                let from = (before + 1).max(first);
                let to = before + blank;
                self.counts.take_blank((to + 1).saturating_sub(from));
                self.waits = more;
                return Ok(Some(Item::Lines(blank)));
            }
            if !more {
                return Ok(None);
            }
        }
        if self.record.row < first {
            return Ok(Some(Item::Above(&self.record)));
        }
        let row = self.record.row;
        for ((_, at), text) in self.edits.range((row, 0)..=(row, usize::MAX)) {
            // A spreadsheet would run a formula: it gets the sign that reading takes off again.
            let was = self.record.put(*at, &guarded(text));
            self.edited.push(EditedCell {
                row,
                column: *at,
                was,
                is: text.clone(),
            });
        }
        if self.record.is_blank() {
            self.counts.take_blank(1);
            return Ok(Some(Item::Blank(&self.record)));
        }
        let row = self.opened.borrow_mut().rows.read(&self.record);
        self.counts.take(&row.is);
        Ok(Some(Item::Row(&self.record, Box::new(row))))
    }

    /// The cells that were typed anew, as far as their rows were read.
    #[must_use]
    pub fn edited(&self) -> &[EditedCell] {
        &self.edited
    }

    /// How many rows were read, by kind.
    #[must_use]
    pub fn counts(&self) -> &Counts {
        &self.counts
    }
}

/// A list that is in memory, and what came of it.
pub struct Whole {
    /// How it was cut.
    pub cut: Cut,
    /// Where its letters were those of an older encoding: three words of it, as they were read.
    pub changed: Vec<String>,
    /// Its header, what is asked and said of its columns.
    pub opened: Opened,
    /// Its rows; none while something is asked.
    pub rows: Vec<Row>,
    /// How many there are of each kind.
    pub counts: Counts,
}

/// The bytes as one of the encodings that are read row by row, and which.
///
/// # Errors
/// Why it is no list.
pub fn as_text(bytes: &[u8]) -> std::result::Result<(Cow<'_, [u8]>, Encoding), NotList> {
    let mut look = Look::default();
    look.take(bytes);
    let encoding = look.done()?;
    Ok(match encoding {
        Encoding::Utf16Le | Encoding::Utf16Be => (
            Cow::Owned(from_utf16(bytes, encoding).into_bytes()),
            Encoding::Utf8,
        ),
        encoding => (Cow::Borrowed(bytes), encoding),
    })
}

/// Reads a list that is in memory.
///
/// ```
/// use calc_list::{Decisions, Is, ListContext, read_whole};
/// let options = ListContext { today: "2027-05-01".into(), ..ListContext::default() };
/// let file = "Tag,Species,DBH (in)\n17,Norway maple,14 1/2\n18,maple,9\n19,,\n";
/// let list = read_whole(calc_data::whole(), file.as_bytes(), &options, &Decisions::default());
/// let list = list.expect("a list");
/// assert!(list.opened.asks.is_empty());
/// let Is::Tree(typed, _) = &list.rows[0].is else { panic!("a tree") };
/// assert_eq!(typed.species, Some("Acer platanoides".into()));
/// assert_eq!(list.rows[1].problems[0].code.name(), "genus_only");
/// assert_eq!((list.counts.ready, list.counts.to_fix, list.counts.no_trees()), (1, 1, 1));
/// ```
///
/// # Errors
/// Why it is no list of trees.
pub fn read_whole(
    reference: &'static Reference,
    bytes: &[u8],
    options: &ListContext,
    decisions: &Decisions,
) -> std::result::Result<Whole, NotList> {
    let (text, encoding) = as_text(bytes)?;
    let cut = Cut::of(&text, encoding, decisions)?;
    // Bytes in memory are always there to be read.
    let unread = |_| NotList::NotText;
    let mut records = cut.records(&*text, 1).map_err(unread)?;
    let (mut first, mut record) = (Vec::new(), Record::default());
    while records.next(&mut record).map_err(unread)?.0 {
        first.push(record.clone());
    }
    let mut opened = open(reference, first, options, decisions)?;
    let (mut rows, mut counts) = (Vec::new(), Counts::default());
    if opened.asks.is_empty() {
        let records = cut.records(&*text, 1).map_err(unread)?;
        let mut reader = Reader::new(records, &mut opened);
        while let Some(item) = reader.read_next().map_err(unread)? {
            if let Item::Row(_, row) = item {
                rows.push(*row);
            }
        }
        counts = reader.counts;
    }
    Ok(Whole {
        cut,
        changed: match encoding {
            Encoding::Windows1252 => changed_words(&text),
            _ => Vec::new(),
        },
        opened,
        rows,
        counts,
    })
}
