//! What is wrong with a list, on the error stream of `list` and `plan`: `row,column,level,code,message`.

use crate::terminal;
use calc_list::{Counts, Opened, RowProblem, write};
use calc_view::words::list as words;
use std::io::{BufWriter, Stderr, Write as _};

/// The error stream. Where that is closed there is nobody to tell.
pub(crate) struct Problems {
    error: BufWriter<Stderr>,
    headed: bool,
    headers: Vec<String>,
}

impl Problems {
    pub(crate) fn new(opened: &Opened) -> Self {
        Self {
            error: BufWriter::new(std::io::stderr()),
            headed: false,
            headers: opened.layout.texts.clone(),
        }
    }

    /// The header of a problem's column.
    pub(crate) fn header(&self, problem: &RowProblem) -> &str {
        let at = problem.column.and_then(|at| self.headers.get(at));
        at.map_or("", String::as_str)
    }

    fn tell(&mut self, cells: [&str; 5]) {
        let mut line = String::new();
        if !self.headed {
            self.headed = true;
            write::row(["row", "column", "level", "code", "message"], &mut line);
        }
        write::row(cells, &mut line);
        let text = terminal::plain(&line.replace("\r\n", "\n"));
        let _ = self.error.write_all(text.as_bytes());
    }

    /// What is said of the columns, once.
    pub(crate) fn notes(&mut self, opened: &Opened, changed: &[String]) {
        if !changed.is_empty() {
            self.tell(["", "", "note", "old_letters", &words::old_letters(changed)]);
        }
        for note in &opened.notes {
            self.tell(["", "", "note", words::note_name(note), &words::note(note)]);
        }
    }

    /// A problem of a row.
    pub(crate) fn problem(&mut self, problem: &RowProblem) {
        let message = words::problem(problem, self.header(problem));
        let column = problem.column.map_or(String::new(), calc_list::letter);
        let row = problem.row.to_string();
        let (level, code) = (problem.level.word(), problem.code.name());
        self.tell([&row, &column, level, code, &message]);
    }

    /// The last line: how many rows there are of each kind.
    pub(crate) fn counted(&mut self, counts: &Counts) {
        self.tell(["", "", "note", "counted", &words::counted(counts)]);
        let _ = self.error.flush();
    }
}
