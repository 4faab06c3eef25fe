//! What the worker's script calls.

use crate::session::Session;
use calc::timing::places::climate::{self, Places};
use std::sync::OnceLock;
use wasm_bindgen::prelude::wasm_bindgen;

/// Takes the file of what differs by country. False if the bytes are no such file.
#[wasm_bindgen]
#[must_use]
pub fn take_regional(bytes: &[u8]) -> bool {
    calc_data::take_regional(bytes)
}

/// Takes the words of a language, and what it says of lists. False if they are no words of this version.
#[wasm_bindgen]
#[must_use]
pub fn take_words(words: &[u8], lists: &[u8]) -> bool {
    calc_view::words::message::take_words_of_lists(words, lists)
}

/// One open list.
#[wasm_bindgen]
pub struct List {
    session: Session,
}

#[wasm_bindgen]
impl List {
    /// In a language, with the asker's day as `2027-06-12`, the units of sizes without one (`us` or `metric`), and the
    /// packed climate places.
    #[wasm_bindgen(constructor)]
    #[must_use]
    pub fn new(language: &str, today: &str, units: &str, climate: &[u8]) -> Self {
        // They stay as long as the worker does, and are the same for each list.
        static PLACES: OnceLock<Places> = OnceLock::new();
        let places = PLACES.get_or_init(|| climate::decode(climate).unwrap_or_default());
        Self {
            session: Session::new(language, today, units, places),
        }
    }

    /// Opens a file. False where it is no list: the one before stays; a table of visits is taken up beside it.
    pub fn open(&mut self, name: &str, bytes: Vec<u8>) -> bool {
        self.session.speaking(|it| it.open(name, bytes))
    }

    /// Opens a table of what was found at visits beside the list. Where it is none, what was there stays.
    pub fn open_found(&mut self, name: &str, bytes: Vec<u8>) {
        self.session.speaking(|it| it.open_found(name, bytes));
    }

    /// Opens a file as it was left: `draft` is what [`Self::draft`] gave.
    pub fn restore(&mut self, name: &str, bytes: Vec<u8>, draft: &str) {
        self.session.speaking(|it| it.restore(name, bytes, draft));
    }

    /// Takes the file of natives, which replanting names. False where it is none.
    pub fn take_natives(&mut self, bytes: Vec<u8>) -> bool {
        self.session.take_natives(bytes)
    }

    /// What brings the list back as it is, beside its bytes: JSON.
    #[must_use]
    pub fn draft(&self) -> String {
        self.session.draft()
    }

    /// The id of the list that is open; empty where none is.
    #[must_use]
    pub fn id(&self) -> String {
        self.session.id()
    }

    /// Does what a control asks for, as JSON: `{"do", "data", "entries"}`. What it comes to is told by [`Self::step`].
    pub fn act(&mut self, asked: &str) {
        self.session.speaking(|it| it.act(asked));
    }

    /// Works on so many rows more. What is told is JSON: `more`, with `done`, `of` and `what` while there is more to do;
    /// else `areas`, each with its markup as a row of texts, and `said`.
    pub fn step(&mut self, rows: usize) -> String {
        self.session.speaking(|it| it.step(rows))
    }

    /// Rows of a table from one on, as JSON of [`Self::step`] with `areas`; nothing that is being done is stopped.
    pub fn page(&mut self, table: &str, from: usize) -> String {
        self.session.speaking(|it| it.page(table, from))
    }

    /// Begins to make a file of the plan ready, by [`Self::step`]; [`Self::file`] gives it then. False where there is none,
    /// or while something else is being done.
    pub fn want(&mut self, name: &str) -> bool {
        self.session.speaking(|it| it.want(name))
    }

    /// A file of the plan; empty where there is none.
    pub fn file(&mut self, name: &str) -> Vec<u8> {
        self.session.speaking(|it| it.file(name))
    }

    /// Stops what is being done.
    pub fn stop(&mut self) {
        self.session.speaking(Session::stop);
    }
}
