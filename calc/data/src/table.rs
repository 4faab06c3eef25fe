//! The one reader of CSV tables: each row is read into the struct that declares it, and every complaint names file and
//! line. For builders and checks alone; nothing of it goes to the browser.

use csv::{DeserializeErrorKind, ErrorKind, StringRecord};
use serde::de::DeserializeOwned;
use std::collections::BTreeMap;
use std::fmt;
use std::ops::Deref;
use std::path::Path;

/// A line of a file: of content, or of code that cites a source.
#[derive(Clone, Copy, Debug)]
pub struct At {
    file: &'static str,
    line: u64,
}

impl At {
    /// A line of a file that is named from the repository's root.
    pub fn new(file: &'static str, line: u64) -> Self {
        Self { file, line }
    }

    /// The line in its file.
    #[must_use]
    pub fn line(self) -> u64 {
        self.line
    }

    /// What is wrong there.
    pub fn problem(self, what: impl Into<String>) -> Defect {
        Defect {
            at: self,
            what: what.into(),
        }
    }
}

/// What is wrong with content, and where: `content/rules/methods.csv:12: fell: "X" is …`.
#[derive(Debug)]
pub struct Defect {
    at: At,
    what: String,
}

impl fmt::Display for Defect {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}:{}: {}", self.at.file, self.at.line, self.what)
    }
}

/// A row with the line that it stands on.
#[derive(Debug)]
pub struct RowAt<T> {
    /// Its file and line.
    pub at: At,
    /// Its cells; a row also stands for them itself.
    pub cells: T,
}

impl std::error::Error for Defect {}

impl<T> Deref for RowAt<T> {
    type Target = T;

    fn deref(&self) -> &T {
        &self.cells
    }
}

/// A table.
#[derive(Debug)]
pub struct Table<T> {
    file: &'static str,
    /// Its rows, as printed.
    pub rows: Vec<RowAt<T>>,
}

impl<T: DeserializeOwned> Table<T> {
    /// Reads a file by its path from the project's root. A column that no field is called after is left alone; a line
    /// that begins with # is a remark.
    ///
    /// # Errors
    /// A file that can't be opened or has no rows, a row of another length than the header, a cell that its field does
    /// not take.
    pub fn read(root: &Path, file: &str) -> Result<Self, Defect> {
        match std::fs::read(root.join(file)) {
            Ok(text) => Self::of(file, &text),
            Err(error) => {
                let file: &'static str = file.to_owned().leak();
                Err(At { file, line: 0 }.problem(format!("can't be read: {error}")))
            }
        }
    }

    /// Reads the text of a file.
    ///
    /// # Errors
    /// As [`Self::read`].
    pub fn of(file: &str, text: &[u8]) -> Result<Self, Defect> {
        let file: &'static str = file.to_owned().leak();
        let at = |line| At { file, line };
        let mut reader = csv::ReaderBuilder::new()
            .trim(csv::Trim::All)
            .comment(Some(b'#'))
            .from_reader(text);
        let header = reader
            .headers()
            .map_err(|error| at(1).problem(error.to_string()))?
            .clone();
        let mut rows = Vec::new();
        for record in reader.records() {
            let record = record.map_err(|error| whole_line(file, &error))?;
            let at = at(record.position().map_or(0, csv::Position::line));
            let cells = record
                .deserialize(Some(&header))
                .map_err(|error| at.problem(one_cell(&error, &header, &record)))?;
            if let Some(cell) = record.iter().find(|cell| is_endless(cell)) {
                return Err(at.problem(format!("\"{cell}\" is not a number")));
            }
            rows.push(RowAt { at, cells });
        }
        if rows.is_empty() {
            return Err(at(1).problem("has no rows"));
        }
        Ok(Self { file, rows })
    }
}

impl<T> Table<T> {
    /// What is wrong with the table as a whole: told at its last line, where a row would be added.
    #[must_use]
    pub fn problem(&self, what: impl Into<String>) -> Defect {
        let line = self.rows.last().map_or(1, |row| row.at.line);
        let file = self.file;
        At { file, line }.problem(what)
    }

    /// The file, as it is told.
    #[must_use]
    pub fn file(&self) -> &'static str {
        self.file
    }

    /// The rows by a cell that no two of them share.
    ///
    /// # Errors
    /// A cell that stands twice, at the second.
    pub fn by<'a>(
        &'a self,
        key: impl Fn(&'a T) -> &'a str,
    ) -> Result<BTreeMap<&'a str, &'a RowAt<T>>, Defect> {
        let mut found = BTreeMap::new();
        for row in &self.rows {
            let name = key(row);
            if found.insert(name, row).is_some() {
                return Err(row.at.problem(format!("{name} stands twice")));
            }
        }
        Ok(found)
    }
}

/// What Rust reads as a number and no table means as one.
fn is_endless(cell: &str) -> bool {
    let word = cell.trim_start_matches(['+', '-']).to_ascii_lowercase();
    matches!(word.as_str(), "nan" | "inf" | "infinity")
}

/// A line that is no row: too many cells, too few, or no text.
fn whole_line(file: &'static str, error: &csv::Error) -> Defect {
    let line = error.position().map_or(0, csv::Position::line);
    let at = At { file, line };
    match error.kind() {
        ErrorKind::UnequalLengths {
            expected_len, len, ..
        } => at.problem(format!("{len} cells where the header has {expected_len}")),
        _ => at.problem(error.to_string()),
    }
}

/// A cell that its field does not take, by its column where that is known.
fn one_cell(error: &csv::Error, header: &StringRecord, record: &StringRecord) -> String {
    let ErrorKind::Deserialize { err, .. } = error.kind() else {
        return error.to_string();
    };
    let at = err.field().and_then(|at| usize::try_from(at).ok());
    let of = |list: &StringRecord| at.and_then(|at| list.get(at).map(str::to_owned));
    match err.kind() {
        DeserializeErrorKind::ParseFloat(_) => {
            let column = of(header).unwrap_or_default();
            match of(record).unwrap_or_default().as_str() {
                "" => format!("{column} is empty"),
                cell => format!("{column}: \"{cell}\" is not a number"),
            }
        }
        DeserializeErrorKind::Message(text) => {
            if let Some(name) = text.strip_prefix("missing field ") {
                return format!("there is no column {}", name.replace('`', "\""));
            }
            // A cell's own reader does not know its column: it is the one whose cell the message quotes first.
            let quoted = |(_, cell): &(&str, &str)| {
                !cell.is_empty() && text.starts_with(&format!("\"{cell}\""))
            };
            match header.iter().zip(record).find(quoted) {
                Some((column, _)) => format!("{column}: {text}"),
                None => text.clone(),
            }
        }
        _ => error.to_string(),
    }
}
