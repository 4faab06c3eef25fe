//! The page as a part writes it: elements, headings, tables cell by cell.

use crate::measure::Both;
use crate::out::Out;
use crate::words::prose::{bare, is_marked, pieces};

const HEADINGS: [&str; 6] = ["h1", "h2", "h3", "h4", "h5", "h6"];

/// A sink behind one plain reference: the answer calls it some hundreds of times, and a trait object costs two
/// values and a look-up at each call. A text that is given by value is used up, so that no caller drops it.
pub struct Page<'a> {
    sink: &'a mut dyn Out,
    /// The table that is being written.
    pub(crate) table: Cells,
}

/// Words at hand, or words just made, which are used up.
pub trait Wording: AsRef<str> {}
impl Wording for &str {}
impl Wording for String {}
impl Wording for crate::words::Word {}

/// Where a table stands that is written cell by cell.
#[derive(Default)]
pub(crate) struct Cells {
    /// Cells of a row.
    pub columns: usize,
    /// Cells written of this row.
    pub at: usize,
    /// Elements around the rows.
    pub around: usize,
}

impl<'a> Page<'a> {
    /// Over a sink.
    pub fn new(sink: &'a mut dyn Out) -> Self {
        Self {
            sink,
            table: Cells::default(),
        }
    }
    /// The sink itself, for drawings.
    pub fn sink(&mut self) -> &mut dyn Out {
        self.sink
    }
    /// As [`Out::open`].
    pub fn open(&mut self, tag: &'static str) {
        self.sink.open(tag);
    }
    /// As [`Out::attr`].
    pub fn attr(&mut self, key: &'static str, value: &str) {
        if is_marked(value) {
            self.sink.attr(key, &bare(value.into()));
        } else {
            self.sink.attr(key, value);
        }
    }
    /// As [`Out::text`]; English in another language stands in an element that says so.
    pub fn text(&mut self, text: impl Wording) {
        self.words(text.as_ref());
    }
    #[inline(never)]
    fn words(&mut self, text: &str) {
        if !is_marked(text) {
            return self.sink.text(text);
        }
        pieces(text, |piece, is_english| {
            if is_english {
                self.sink.open("span");
                self.sink.attr("lang", "en");
            }
            self.sink.text(piece);
            if is_english {
                self.sink.close();
            }
        });
    }
    /// As [`Out::close`].
    pub fn close(&mut self) {
        self.sink.close();
    }
    /// Opens an element with a class; none where it is empty.
    pub fn open_class(&mut self, tag: &'static str, class: &str) {
        self.open(tag);
        if !class.is_empty() {
            self.attr("class", class);
        }
    }
    /// An element that holds only text.
    pub fn leaf(&mut self, tag: &'static str, text: impl Wording) {
        self.open(tag);
        self.text(text);
        self.close();
    }
    /// An element with a class that holds only text.
    pub fn leaf_class(&mut self, tag: &'static str, class: &str, text: impl Wording) {
        self.open_class(tag, class);
        self.text(text);
        self.close();
    }
    /// A plain paragraph.
    pub fn p(&mut self, text: impl Wording) {
        self.leaf("p", text);
    }
    /// A paragraph with a class.
    pub fn p_class(&mut self, class: &str, text: impl Wording) {
        self.leaf_class("p", class, text);
    }
    /// The scientific name of a tree.
    pub fn latin(&mut self, scientific: &str) {
        self.open("i");
        self.attr("lang", "la");
        self.text(scientific);
        self.close();
    }
    /// Closes two elements.
    pub fn close_two(&mut self) {
        self.close_all(2);
    }
    /// Closes so many elements.
    pub fn close_all(&mut self, count: usize) {
        for _ in 0..count {
            self.close();
        }
    }

    /// A heading, whose level the host sets; nothing is below `h6`.
    pub fn heading(&mut self, level: u8, class: &str, id: &str, text: &str) {
        self.open_heading(level, class);
        if !id.is_empty() {
            self.attr("id", id);
        }
        self.text(text);
        self.close();
    }

    /// Opens one.
    pub fn open_heading(&mut self, level: u8, class: &str) {
        self.open_class(HEADINGS[usize::from(level.clamp(1, 6)) - 1], class);
    }

    /// Writes the line of a fold, its title and what carries its key number, behind the opened `details`, and opens its
    /// body: two elements are open then.
    pub fn open_folded(&mut self, level: u8, title: &str, key: &str) {
        self.open("summary");
        self.heading(level, "", "", title);
        self.text(" ");
        self.leaf_class("span", "soft", key);
        self.close();
        self.open("div");
    }

    /// Opens a table that scrolls inside its own named region, as far as its rows. `class` is that of its caption: `vh`
    /// where a title over it says the same.
    pub fn open_table(&mut self, class: &str, caption: &str, heads: &[impl AsRef<str>]) {
        self.open_class("div", "tw");
        self.attr("tabindex", "0");
        self.attr("role", "region");
        self.attr("aria-label", caption);
        self.open("table");
        self.open("caption");
        self.open_class("span", class);
        self.text(caption);
        self.close_two();
        self.open("thead");
        self.open("tr");
        for head in heads {
            self.open("th");
            self.attr("scope", "col");
            self.text(head.as_ref());
            self.close();
        }
        self.close_two();
        self.open("tbody");
        self.table = Cells {
            columns: heads.len(),
            at: 0,
            around: 3,
        };
    }

    /// Opens the next cell; the first of a row is its heading.
    pub fn open_cell(&mut self) {
        if self.table.at == 0 {
            self.open("tr");
            self.open("th");
            self.attr("scope", "row");
        } else {
            self.open("td");
        }
    }

    /// Closes a cell, and behind the last one the row.
    pub fn close_cell(&mut self) {
        self.close();
        self.table.at += 1;
        if self.table.at == self.table.columns {
            self.table.at = 0;
            self.close();
        }
    }

    /// The next cell.
    pub fn cell(&mut self, text: impl Wording) {
        self.open_cell();
        self.text(text.as_ref());
        self.close_cell();
    }

    /// Two cells, a unit each.
    pub fn cells(&mut self, value: Both) {
        self.cell(value.us);
        self.cell(value.metric);
    }

    /// Closes the table that was opened last, and what was opened around it.
    pub fn close_table(&mut self) {
        self.close_all(self.table.around);
    }
}
