//! A CSV table with its path, so that every complaint names file and line.

use std::fmt;
use std::path::{Path, PathBuf};

/// What is wrong with content, and where.
#[derive(Debug)]
pub struct Problem {
    path: PathBuf,
    line: u64,
    what: String,
}

impl fmt::Display for Problem {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let mut parts: Vec<_> = self.path.components().rev().take(3).collect();
        parts.reverse();
        let path: PathBuf = parts.into_iter().collect();
        write!(f, "{}:{}: {}", path.display(), self.line, self.what)
    }
}

/// A table as printed.
pub struct Table {
    path: PathBuf,
    header: Vec<String>,
    rows: Vec<(u64, Vec<String>)>,
}

/// One row of it.
#[derive(Clone, Copy)]
pub struct Row<'a> {
    table: &'a Table,
    line: u64,
    cells: &'a [String],
}

impl Table {
    /// Reads `folder/name.csv` under content.
    pub fn read(content: &Path, folder: &str, name: &str) -> Result<Self, Problem> {
        let path = content.join(folder).join(format!("{name}.csv"));
        let problem = |line: u64, what: String| Problem {
            path: path.clone(),
            line,
            what,
        };
        let mut reader = csv::ReaderBuilder::new()
            .flexible(true)
            .from_path(&path)
            .map_err(|error| problem(0, format!("can't be read: {error}")))?;
        let header: Vec<String> = reader
            .headers()
            .map_err(|error| problem(1, error.to_string()))?
            .iter()
            .map(|name| name.trim().to_owned())
            .collect();
        let mut rows = Vec::new();
        for record in reader.records() {
            let record = record.map_err(|error| problem(0, error.to_string()))?;
            let line = record.position().map_or(0, csv::Position::line);
            if record.len() != header.len() {
                let what = format!(
                    "{} cells where the header has {}",
                    record.len(),
                    header.len()
                );
                return Err(problem(line, what));
            }
            rows.push((
                line,
                record.iter().map(|cell| cell.trim().to_owned()).collect(),
            ));
        }
        Ok(Self { path, header, rows })
    }

    pub fn rows(&self) -> impl Iterator<Item = Row<'_>> {
        self.rows.iter().map(|(line, cells)| Row {
            table: self,
            line: *line,
            cells,
        })
    }

    /// The row whose column holds the value.
    pub fn find(&self, column: &str, value: &str) -> Option<Row<'_>> {
        self.rows()
            .find(|row| row.text(column).is_ok_and(|text| text == value))
    }
}

impl<'a> Row<'a> {
    /// A complaint about this row.
    pub fn problem(&self, what: impl Into<String>) -> Problem {
        Problem {
            path: self.table.path.clone(),
            line: self.line,
            what: what.into(),
        }
    }

    pub fn text(&self, column: &str) -> Result<&'a str, Problem> {
        let at = self.table.header.iter().position(|name| name == column);
        let cell = at.and_then(|at| self.cells.get(at));
        cell.map(String::as_str)
            .ok_or_else(|| self.problem(format!("there is no column \"{column}\"")))
    }

    pub fn maybe(&self, column: &str) -> Result<Option<f64>, Problem> {
        let text = self.text(column)?;
        if text.is_empty() {
            return Ok(None);
        }
        text.parse()
            .ok()
            .filter(|value: &f64| value.is_finite())
            .map(Some)
            .ok_or_else(|| self.problem(format!("{column}: \"{text}\" is not a number")))
    }

    pub fn number(&self, column: &str) -> Result<f64, Problem> {
        self.maybe(column)?
            .ok_or_else(|| self.problem(format!("{column} is empty")))
    }

    /// A number that must lie in a range.
    pub fn within(&self, column: &str, low: f64, high: f64) -> Result<f64, Problem> {
        let value = self.number(column)?;
        if (low..=high).contains(&value) {
            return Ok(value);
        }
        Err(self.problem(format!("{column}: {value} is not between {low} and {high}")))
    }
}
