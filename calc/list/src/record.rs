//! Records of a file, one by one, with the row that a spreadsheet shows: blank rows count, line breaks inside quotes
//! don't.

use crate::bytes::{Encoding, decode};
use csv_core::{ReadRecordResult, Reader, ReaderBuilder};
use std::io::{BufRead, ErrorKind, Result};

/// The longest cell that a spreadsheet keeps, in characters: a longer one is a quote that was never closed.
pub const LONGEST_CELL: usize = 32_767;

/// A row.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Record {
    /// The row that a spreadsheet shows, from 1.
    pub row: u64,
    text: String,
    ends: Vec<u32>,
    /// A quote was opened in its last cell and never closed.
    pub unclosed: bool,
}

impl Record {
    /// How many cells.
    #[must_use]
    pub fn len(&self) -> usize {
        self.ends.len()
    }

    /// Whether it has no cell.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.ends.is_empty()
    }

    /// A cell; nothing where the row is shorter.
    #[must_use]
    pub fn cell(&self, at: usize) -> &str {
        let end = self.ends.get(at).copied().unwrap_or(0) as usize;
        let start = match at.checked_sub(1) {
            Some(before) => self.ends.get(before).copied().unwrap_or(0) as usize,
            None => 0,
        };
        self.text.get(start..end).unwrap_or("")
    }

    /// Its cells.
    pub fn cells(&self) -> impl Iterator<Item = &str> {
        (0..self.len()).map(|at| self.cell(at))
    }

    /// Puts another text into a cell; gives what stood there.
    pub(crate) fn put(&mut self, at: usize, text: &str) -> String {
        let was = self.cell(at).to_owned();
        let mut cells: Vec<String> = self.cells().map(str::to_owned).collect();
        cells.resize(cells.len().max(at + 1), String::new());
        text.clone_into(&mut cells[at]);
        self.text.clear();
        self.ends.clear();
        for cell in cells {
            self.text.push_str(&cell);
            self.ends.push(self.text.len() as u32);
        }
        was
    }

    /// Whether every cell is empty or space.
    #[must_use]
    pub fn is_blank(&self) -> bool {
        self.text.chars().all(char::is_whitespace)
    }

    /// A row of cells, for checks and for a header that was told.
    #[must_use]
    pub fn of<'a>(row: u64, cells: impl IntoIterator<Item = &'a str>) -> Self {
        let mut record = Self {
            row,
            ..Self::default()
        };
        for cell in cells {
            record.text.push_str(cell);
            record.ends.push(record.text.len() as u32);
        }
        record
    }
}

/// What the bytes that were read say of lines and quotes, byte by byte, as RFC 4180 has them.
#[derive(Debug, Default)]
struct Lines {
    quoted: bool,
    closed: bool,
    /// Something stands on this line.
    begun: bool,
    /// At the start of a cell.
    fresh: bool,
    after_return: bool,
    blank: u64,
}

impl Lines {
    fn take(&mut self, bytes: &[u8], delimiter: u8) {
        for byte in bytes {
            if self.quoted && !self.closed {
                self.closed = *byte == b'"';
                continue;
            }
            if self.quoted {
                self.closed = false;
                // A doubled quote stays inside; anything else ends it.
                if *byte == b'"' {
                    continue;
                }
                self.quoted = false;
            }
            let return_before = std::mem::take(&mut self.after_return);
            match *byte {
                b'\n' if return_before => {}
                b'\n' | b'\r' => {
                    self.blank += u64::from(!self.begun);
                    self.begun = false;
                    self.fresh = true;
                    self.after_return = *byte == b'\r';
                }
                b'"' if self.fresh => {
                    self.quoted = true;
                    self.begun = true;
                    self.fresh = false;
                }
                byte => {
                    self.begun = true;
                    self.fresh = byte == delimiter;
                }
            }
        }
    }
}

/// Reads records from anything that gives bytes.
pub struct Records<R> {
    from: R,
    reader: Reader,
    encoding: Encoding,
    delimiter: u8,
    lines: Lines,
    row: u64,
    bytes: Vec<u8>,
    ends: Vec<usize>,
    done: bool,
}

impl<R: BufRead> Records<R> {
    /// Bytes of UTF-8 or Windows-1252; rows are counted from `first`.
    pub fn new(from: R, encoding: Encoding, delimiter: u8, first: u64) -> Self {
        Self {
            from,
            reader: ReaderBuilder::new().delimiter(delimiter).build(),
            encoding,
            delimiter,
            lines: Lines {
                fresh: true,
                ..Lines::default()
            },
            row: first.saturating_sub(1),
            bytes: vec![0; 4096],
            ends: vec![0; 64],
            done: false,
        }
    }

    /// Blank rows since the last record: those behind it, once there is no more.
    #[must_use]
    pub fn row(&self) -> u64 {
        self.row
    }

    /// The next record, and how many blank rows stand in front of it; none at the end, with the blank rows there.
    ///
    /// # Errors
    /// What can't be read.
    pub fn next(&mut self, record: &mut Record) -> Result<(bool, u64)> {
        let (mut filled, mut cells) = (0, 0);
        if self.done {
            return Ok((false, 0));
        }
        loop {
            let input = match self.from.fill_buf() {
                Err(error) if error.kind() == ErrorKind::Interrupted => continue,
                other => other?,
            };
            let at_end = input.is_empty();
            let (result, read, wrote, ended) =
                self.reader
                    .read_record(input, &mut self.bytes[filled..], &mut self.ends[cells..]);
            self.lines.take(&input[..read], self.delimiter);
            self.from.consume(read);
            filled += wrote;
            cells += ended;
            match result {
                ReadRecordResult::InputEmpty => {}
                ReadRecordResult::OutputFull => self.bytes.resize(self.bytes.len() * 2, 0),
                ReadRecordResult::OutputEndsFull => self.ends.resize(self.ends.len() * 2, 0),
                ReadRecordResult::Record => {
                    let blank = std::mem::take(&mut self.lines.blank);
                    self.row += blank + 1;
                    self.fill(record, cells);
                    record.unclosed = at_end && self.lines.quoted && !self.lines.closed;
                    return Ok((true, blank));
                }
                ReadRecordResult::End => {
                    self.done = true;
                    let blank = std::mem::take(&mut self.lines.blank);
                    self.row += blank;
                    return Ok((false, blank));
                }
            }
        }
    }

    fn fill(&self, record: &mut Record, cells: usize) {
        record.row = self.row;
        record.text.clear();
        record.ends.clear();
        let mut start = 0;
        for end in &self.ends[..cells] {
            decode(&self.bytes[start..*end], self.encoding, &mut record.text);
            record.ends.push(record.text.len() as u32);
            start = *end;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn rows(text: &str) -> Vec<(u64, Vec<String>)> {
        let mut records = Records::new(text.as_bytes(), Encoding::Utf8, b',', 1);
        let mut record = Record::default();
        let mut rows = Vec::new();
        while records.next(&mut record).expect("bytes").0 {
            rows.push((record.row, record.cells().map(str::to_owned).collect()));
        }
        rows
    }

    fn numbers(text: &str) -> Vec<u64> {
        rows(text).iter().map(|(row, _)| *row).collect()
    }

    #[test]
    fn blank_rows_count_and_line_breaks_in_quotes_do_not() {
        for (text, expected) in [
            ("a\nb\nc", vec![1, 2, 3]),
            ("a\r\nb\r\nc\r\n", vec![1, 2, 3]),
            ("a\rb\rc", vec![1, 2, 3]),
            ("\n\na\n\nb", vec![3, 5]),
            ("a\r\n\r\n\r\nb\r\n", vec![1, 4]),
            ("a\r\nb\nc\r\nd\n\ne", vec![1, 2, 3, 4, 6]),
            ("a,\"x\ny\r\nz\"\nb", vec![1, 2]),
            ("a,\"x\"\"\n\"\nb", vec![1, 2]),
            ("a 14\" b\nc", vec![1, 2]),
            (",,\n\nb", vec![1, 3]),
        ] {
            assert_eq!(numbers(text), expected, "{text:?}");
        }
    }

    #[test]
    fn a_quote_that_is_never_closed_is_told() {
        let mut records = Records::new(&b"a,b\n1,\"2\n3,4\n"[..], Encoding::Utf8, b',', 1);
        let mut record = Record::default();
        assert!(records.next(&mut record).expect("bytes").0 && !record.unclosed);
        assert!(records.next(&mut record).expect("bytes").0 && record.unclosed);
        assert_eq!((record.row, record.cell(0), record.len()), (2, "1", 2));
        assert!(!records.next(&mut record).expect("bytes").0);
    }

    #[test]
    fn a_long_row_and_many_cells_are_read_whole() {
        let long = "x".repeat(1_000_000);
        let many = vec!["1"; 5000].join(",");
        let read = rows(&format!("{long},b\n{many}\n"));
        assert_eq!((read[0].1[0].len(), read[1].1.len()), (1_000_000, 5000));
    }
}
