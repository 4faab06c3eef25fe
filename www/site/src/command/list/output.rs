//! What `list` prints: a line of JSON a row, or the list as it came with its columns.

use super::Made;
use super::problems::Problems;
use crate::command::question as json_question;
use crate::{args, terminal};
use anyhow::{Context, Result};
use calc_list::{Counts, DayWindow, Line, Minutes, Opened, Record, Row, VisitLine, write};
use calc_view::list::COLUMNS;
use calc_view::words::list as words;
use serde::Serialize;
use std::io::{BufWriter, ErrorKind, IsTerminal as _, Stdout, Write as _};

/// A line of JSON: every name in every line.
#[derive(Serialize)]
struct Printed<'a> {
    row: u64,
    tree_id: &'a str,
    outcome: Option<&'a str>,
    method: Option<&'a str>,
    by_professional: Option<bool>,
    ring_mm: Option<f64>,
    minutes: Option<&'a Minutes>,
    window: Option<&'a DayWindow>,
    p: Option<f64>,
    advised_day: Option<&'a str>,
    reach_m: Option<f64>,
    zone_m: Option<f64>,
    visits: &'a [VisitLine],
    cautions: &'a [&'static str],
    assumed: &'a [&'static str],
    reason: Option<&'a str>,
    message: &'a str,
    problems: Vec<PrintedProblem<'a>>,
}

/// A problem in a line of JSON.
#[derive(Serialize)]
struct PrintedProblem<'a> {
    column: Option<String>,
    header: &'a str,
    value: &'a str,
    level: &'static str,
    code: &'static str,
    message: String,
}

/// Where it goes, and what is kept for it.
pub(super) struct Output {
    out: BufWriter<Stdout>,
    pub(super) problems: Problems,
    csv: bool,
    text: bool,
    /// People look at it: what could move the cursor is shown by its number.
    watched: bool,
    /// The reader has gone: it has seen enough.
    gone: bool,
    /// Columns of an earlier run: left out.
    ours: Vec<bool>,
    header_row: Option<u64>,
    version: String,
    today: String,
    line: String,
}

impl Output {
    pub(super) fn new(options: &args::List, opened: &Opened) -> Result<Self> {
        let reading = opened.rows.reading();
        let stdout = std::io::stdout();
        let mut output = Self {
            watched: stdout.is_terminal(),
            out: BufWriter::with_capacity(1 << 16, stdout),
            problems: Problems::new(opened),
            csv: options.csv,
            text: options.text,
            gone: false,
            ours: reading.columns.iter().map(|column| column.ours).collect(),
            header_row: opened.layout.header_row,
            version: [
                env!("CARGO_PKG_VERSION"),
                "/",
                calc_data::whole().data_version,
            ]
            .concat(),
            today: options
                .reading
                .today
                .clone()
                .unwrap_or_else(json_question::today),
            line: String::new(),
        };
        // A piece of a file is no file of its own.
        if output.csv && !reading.of_a_piece {
            output.line.push_str(write::MARK);
        }
        Ok(output)
    }

    /// Whether nobody reads any more.
    pub(super) fn is_gone(&self) -> bool {
        self.gone
    }

    fn put(&mut self) -> Result<()> {
        let shown;
        let text = if self.watched {
            shown = match self.csv {
                true => terminal::plain(&self.line),
                false => terminal::json(&self.line),
            };
            &shown
        } else {
            &self.line
        };
        let written = self.out.write_all(text.as_bytes());
        self.line.clear();
        self.seen(written)
    }

    fn seen(&mut self, written: std::io::Result<()>) -> Result<()> {
        match written {
            Err(error) if error.kind() == ErrorKind::BrokenPipe => self.gone = true,
            other => other.context("the answer could not be printed")?,
        }
        Ok(())
    }

    /// The cells of a row that go out again, as many as the header has.
    fn kept<'a>(&self, record: &'a Record) -> Vec<&'a str> {
        let width = self.ours.len().max(record.len());
        let mine = |at: &usize| !self.ours.get(*at).copied().unwrap_or(false);
        (0..width).filter(mine).map(|at| record.cell(at)).collect()
    }

    pub(super) fn above(&mut self, record: &Record) -> Result<()> {
        if !self.csv {
            return Ok(());
        }
        if Some(record.row) == self.header_row {
            let cells = self.kept(record);
            write::row(cells.into_iter().chain(COLUMNS), &mut self.line);
        } else {
            write::row(record.cells(), &mut self.line);
        }
        self.put()
    }

    pub(super) fn lines(&mut self, lines: u64) -> Result<()> {
        if !self.csv {
            return Ok(());
        }
        for _ in 0..lines {
            self.line.push_str("\r\n");
        }
        self.put()
    }

    pub(super) fn blank(&mut self, record: &Record) -> Result<()> {
        if !self.csv {
            return Ok(());
        }
        let cells = self.kept(record);
        write::row(cells, &mut self.line);
        self.put()
    }

    pub(super) fn row(
        &mut self,
        record: &Record,
        row: &Row,
        reason: Option<&'static str>,
        made: Option<&Made>,
    ) -> Result<()> {
        for problem in &row.problems {
            self.problems.problem(problem);
        }
        if self.text {
            return Ok(());
        }
        let decided = matches!(row.is, calc_list::Is::LeftOut);
        let own;
        let message = match (made, reason) {
            (Some(made), _) => &made.message,
            (None, reason) => {
                own = words::without_answer(reason.unwrap_or(""), decided);
                &own
            }
        };
        if self.csv {
            self.csv_row(record, reason, made, message)
        } else {
            self.json_row(row, reason, made, message)
        }
    }

    fn csv_row(
        &mut self,
        record: &Record,
        reason: Option<&'static str>,
        made: Option<&Made>,
        message: &str,
    ) -> Result<()> {
        let mut cells: Vec<std::borrow::Cow<'_, str>> =
            self.kept(record).into_iter().map(Into::into).collect();
        // Plan columns stand under their headers, also where the row is longer than the header.
        let width = self.ours.iter().filter(|ours| !**ours).count();
        let more = cells.split_off(width.min(cells.len()));
        let own = COLUMNS.len() - 4;
        match made {
            Some(made) => cells.extend(made.cells.iter().map(|cell| write::guarded(cell))),
            None => cells.extend((0..own).map(|_| "".into())),
        }
        cells.push(reason.unwrap_or("").into());
        cells.push(write::guarded(message));
        cells.push(self.version.as_str().into());
        cells.push(self.today.as_str().into());
        let more: Vec<_> = more.into_iter().collect();
        let mut line = std::mem::take(&mut self.line);
        write::row(cells.iter().chain(&more).map(AsRef::as_ref), &mut line);
        self.line = line;
        self.put()
    }

    fn json_row(
        &mut self,
        row: &Row,
        reason: Option<&'static str>,
        made: Option<&Made>,
        message: &str,
    ) -> Result<()> {
        let line: Option<&Line> = made.map(|made| &made.line);
        let printed = Printed {
            row: row.row,
            tree_id: &row.tag.tree_id,
            outcome: line.map(|it| it.outcome),
            method: line.map(|it| it.method),
            by_professional: line.map(|it| it.by_professional),
            ring_mm: line.and_then(|it| it.ring_mm),
            minutes: line.and_then(|it| it.minutes.as_ref()),
            window: line.and_then(|it| it.window.as_ref()),
            p: line.and_then(|it| it.p),
            advised_day: line.and_then(|it| it.advised_day.as_deref()),
            reach_m: line.map(|it| it.reach_m),
            zone_m: line.map(|it| it.zone_m),
            visits: line.map_or(&[], |it| &it.visits),
            cautions: line.map_or(&[], |it| &it.cautions),
            assumed: line.map_or(&[], |it| &it.assumed),
            reason,
            message,
            problems: row
                .problems
                .iter()
                .map(|problem| PrintedProblem {
                    column: problem.column.map(calc_list::letter),
                    header: self.problems.header(problem),
                    value: &problem.value,
                    level: problem.level.word(),
                    code: problem.code.name(),
                    message: words::what(problem),
                })
                .collect(),
        };
        let line = serde_json::to_string(&printed)?;
        // An answer that is JSON already goes in as it is.
        match (
            made.and_then(|made| made.whole.as_deref()),
            line.strip_suffix('}'),
        ) {
            (Some(answer), Some(open)) => {
                let parts = [open, ",\"answer\":", answer, "}"];
                self.line.extend(parts);
            }
            _ => self.line.push_str(&line),
        }
        self.line.push('\n');
        self.put()
    }

    /// Words for people, on standard output.
    pub(super) fn text(&mut self, text: &str) -> Result<()> {
        let written = self.out.write_all(terminal::plain(text).as_bytes());
        self.seen(written)
    }

    /// The last line, and all that is still kept.
    pub(super) fn done(&mut self, counts: &Counts) -> Result<()> {
        self.problems.counted(counts);
        let flushed = self.out.flush();
        self.seen(flushed)
    }
}
