//! What stands between cells, by the first rows.

use crate::bytes::Encoding;
use crate::record::{Record, Records};

/// The signs that may stand between cells.
pub const DELIMITERS: [u8; 3] = [b',', b';', b'\t'];

/// How many rows are looked at.
const ROWS: usize = 20;

/// How a file begins.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Start {
    /// The sign between cells.
    pub delimiter: u8,
    /// Bytes in front of the first row: a mark of order, and a line `sep=;`.
    pub skip: usize,
    /// Rows in front of it: the line `sep=;`.
    pub rows: u64,
    /// The most cells of a row that was looked at.
    pub cells: usize,
}

/// Looks at the first bytes of a file. The sign that cuts most of the rows into the same number of cells is taken; of
/// two that do, the one that makes more.
#[must_use]
pub fn start(bytes: &[u8], encoding: Encoding) -> Start {
    let mut skip = 0;
    if bytes.starts_with(&[0xef, 0xbb, 0xbf]) {
        skip = 3;
    }
    let line_end = bytes[skip..]
        .iter()
        .position(|byte| matches!(byte, b'\n' | b'\r'))
        .map_or(bytes.len(), |at| at + skip);
    let line = &bytes[skip..line_end];
    let line = line.strip_prefix(b"\"").unwrap_or(line);
    let told = line
        .strip_prefix(b"sep=")
        .and_then(|rest| rest.first().copied());
    if let Some(delimiter) = told.filter(|sign| DELIMITERS.contains(sign)) {
        let end = &bytes[line_end..];
        let behind = if end.starts_with(b"\r\n") { 2 } else { 1 };
        let skip = (line_end + behind).min(bytes.len());
        let (_, cells) = cut(&bytes[skip..], encoding, delimiter);
        return Start {
            delimiter,
            skip,
            rows: 1,
            cells,
        };
    }
    let mut best = (0.0, 0, b',', 0);
    for delimiter in DELIMITERS {
        let ((share, usual), most) = cut(&bytes[skip..], encoding, delimiter);
        if usual > 1 && (share > best.0 + 1e-9 || (share > best.0 - 0.1 && usual > best.1)) {
            best = (share, usual, delimiter, most);
        }
    }
    Start {
        delimiter: best.2,
        skip,
        rows: 0,
        cells: best.3.max(1),
    }
}

/// The share of rows that have the usual number of cells, that number, and the most cells.
fn cut(bytes: &[u8], encoding: Encoding, delimiter: u8) -> ((f64, usize), usize) {
    let mut records = Records::new(bytes, encoding, delimiter, 1);
    let mut record = Record::default();
    let mut counts: Vec<usize> = Vec::new();
    while counts.len() < ROWS && matches!(records.next(&mut record), Ok((true, _))) {
        counts.push(record.len());
    }
    let times = |count: &usize| counts.iter().filter(|other| *other == count).count();
    let usual = counts
        .iter()
        .copied()
        .filter(|count| *count > 1)
        .max_by_key(|count| (times(count), *count))
        .unwrap_or(1);
    let share = times(&usual) as f64 / counts.len().max(1) as f64;
    ((share, usual), counts.iter().copied().max().unwrap_or(0))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_sign_between_cells_is_found() {
        for (text, delimiter) in [
            ("a,b,c\n1,2,3\n", b','),
            ("a;b;c\n1,5;2;3\n2,5;3;4\n", b';'),
            ("a;b\n\"12,5\";\"x, y\"\n", b';'),
            ("a\tb\n1,5\t2;3\n", b'\t'),
            ("sep=;\na;b\n", b';'),
            ("\u{feff}sep=;\r\na;b\r\n", b';'),
            ("Title\n\na,b,c,d\n1,2,3,4\n5,6,7,8\n", b','),
        ] {
            assert_eq!(
                start(text.as_bytes(), Encoding::Utf8).delimiter,
                delimiter,
                "{text:?}"
            );
        }
        let told = start("sep=;\r\na;b".as_bytes(), Encoding::Utf8);
        assert_eq!((told.skip, told.rows), (7, 1));
        assert_eq!(start(b"one\ntwo\n", Encoding::Utf8).cells, 1);
    }
}
