//! A list of trees as people keep it, read into questions of one tree each.
//!
//! ```text
//! read_whole(bytes, options, decisions)   a list in memory: what is asked of it, else all its rows, each counted once
//! Answers::of(typed, question, make)      their answers: each different question is answered once
//! Line::of(question, answer)              what a list prints of an answer
//! write::row                              a row as it came, or one of ours
//! found::FoundFile::of(bytes, units)      another table: what was found at visits of these trees
//! ```
//!
//! A file that streams goes the same way in steps:
//!
//! ```text
//! bytes::Look                    the encoding of a file, or why it is no list
//! reader::Cut                    what stands between its cells, and its rows as the spreadsheet counts them
//! open(rows, options, decisions) header, columns judged, what is asked, how rows are read
//! reader::Reader                 title lines, blank rows, and rows: the question of a tree, its tag, its problems
//! ```
//!
//! A column is judged before any cell is; what only the owner can know is asked; nothing is guessed. The one reader of
//! values is [`calc::question::read`].

mod answers;
pub mod ask;
pub mod bytes;
mod cell;
pub mod decisions;
pub mod delimiter;
pub mod found;
pub mod header;
pub mod judge;
pub mod layout;
mod line;
mod place;
pub mod problem;
pub mod reader;
pub mod reading;
pub mod record;
mod row;
mod words;
pub mod write;

pub use answers::Answers;
pub use ask::{Ask, ListQuestion, NameAsk, filled_in, open_names};
pub use bytes::{Encoding, Look, NotList};
pub use calc_data::list::Column;
pub use decisions::Decisions;
pub use judge::{JudgedColumns, NotRead, Note};
pub use layout::{Layout, letter};
pub use line::{DayWindow, Line, Minutes, VisitLine};
pub use problem::{RowFault, RowProblem, Severity};
pub use reader::{Counts, Whole, read_whole};
pub use reading::{ListContext, ListReading};
pub use record::{Record, Records};
pub use row::{Is, Row, Rows, Tag};

use calc::reference::Reference;

/// A list whose columns were judged.
pub struct Opened {
    /// Header and first row.
    pub layout: Layout,
    /// What is asked, the question that bears on most rows first; nothing is read while something is.
    pub asks: Vec<Ask>,
    /// What is said.
    pub notes: Vec<Note>,
    /// Decisions that name no column.
    pub strangers: Vec<String>,
    /// Reads its rows.
    pub rows: Rows,
}

/// Opens a list by its first rows, title lines and header with them; all of them, or as many as were there to look at.
///
/// # Errors
/// Why it is no list of trees.
pub fn open(
    reference: &'static Reference,
    first: Vec<Record>,
    options: &ListContext,
    decisions: &Decisions,
) -> Result<Opened, NotList> {
    let tables = calc_data::list::tables();
    let told = decisions.told_header();
    let mut layout = match told {
        Some(header) => layout::told(tables, header.iter().map(String::as_str)),
        None => layout::find(tables, &first)?,
    };
    let mut rows = first;
    rows.retain(|row| (told.is_some() || row.row >= layout.first_row) && !row.is_blank());
    if rows.is_empty() && told.is_none() {
        return Err(NotList::HeaderAlone);
    }
    // Columns behind the header have no name and are kept.
    let width = rows.iter().map(Record::len).max().unwrap_or(0);
    let filled = |at: usize| {
        rows.iter()
            .filter(|row| !row.cell(at).trim().is_empty())
            .count()
    };
    while layout.texts.len() < width && filled(layout.texts.len()) * 2 > rows.len() {
        layout.texts.push(String::new());
        layout.headers.push(header::Header::default());
    }
    if told.is_some() {
        // A piece decides nothing by its own rows.
        rows.clear();
    }
    let judged = judge::judge(tables, &layout, &rows, options, decisions)?;
    Ok(Opened {
        layout,
        asks: judged.asks,
        notes: judged.notes,
        strangers: judged.strangers,
        rows: Rows::new(reference, tables, judged.reading),
    })
}
