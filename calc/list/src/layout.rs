//! Where the list begins: title lines, the header, a row of units below it.

use crate::bytes::NotList;
use crate::header::{Header, LengthUnit, read};
use crate::record::Record;
use calc::terms::number::read_number;
use calc_data::list::ListTables;

/// How many rows may stand above the header.
const MOST_TITLES: usize = 30;

/// The header and where rows begin.
#[derive(Clone, Debug, Default)]
pub struct Layout {
    /// The header's texts, in order; empty where there is none.
    pub texts: Vec<String>,
    /// What each says.
    pub headers: Vec<Header>,
    /// The row of the header; none where the file has none.
    pub header_row: Option<u64>,
    /// The first row of the list, as the spreadsheet shows it.
    pub first_row: u64,
    /// The first row that has no header above it is a row itself: it is asked.
    pub no_header: bool,
}

/// Columns are named by letters, as a spreadsheet does: 0 is A.
#[must_use]
pub fn letter(at: usize) -> String {
    let mut letters = Vec::new();
    let mut rest = at + 1;
    while rest > 0 {
        rest -= 1;
        letters.push((b'A' + (rest % 26) as u8) as char);
        rest /= 26;
    }
    letters.iter().rev().collect()
}

fn is_number(cell: &str) -> bool {
    let cell = cell.trim();
    cell.starts_with(|c: char| c.is_ascii_digit() || matches!(c, '-' | '+' | '.'))
        && read_number(cell).is_ok()
}

/// Finds the header among the first rows.
///
/// # Errors
/// Why it is no list of trees.
pub fn find(tables: &'static ListTables, records: &[Record]) -> Result<Layout, NotList> {
    let rows = &records[..records.len().min(MOST_TITLES)];
    let Some(first) = rows.iter().position(|row| !row.is_blank()) else {
        return Err(NotList::Empty);
    };
    let known = |row: &Record| {
        let headers = row.cells().map(|cell| (cell, read(tables, cell)));
        headers
            .filter(|(cell, header)| header.column.is_some() && !is_number(cell))
            .count()
    };
    let best = rows
        .iter()
        .enumerate()
        .map(|(at, row)| (known(row), std::cmp::Reverse(at)))
        .max();
    let (score, at) = best.map_or((0, first), |(score, at)| (score, at.0));
    // A table on its side: its first column is the header.
    let down = rows
        .iter()
        .filter(|row| row.len() > 3 && read(tables, row.cell(0)).column.is_some())
        .count();
    if score < 2 && down >= 3 && down * 2 > rows.len() {
        return Err(NotList::Sideways);
    }
    let numbers = |row: &Record| row.cells().filter(|cell| is_number(cell)).count();
    let is_header = score >= 2 || (score == 1 && at == first && numbers(&rows[at]) == 0);
    if is_header {
        return Ok(at_row(tables, records, at));
    }
    // Words above numbers are a header that we don't know; else the first row is a row.
    let row = &rows[first];
    let filled = row.cells().filter(|cell| !cell.trim().is_empty()).count();
    let below = rows.get(first + 1).is_some_and(|next| numbers(next) > 0);
    if numbers(row) == 0 && below && filled * 2 > row.len() {
        return Ok(at_row(tables, records, first));
    }
    let width = records.iter().map(Record::len).max().unwrap_or(0);
    Ok(Layout {
        texts: vec![String::new(); width],
        headers: vec![Header::default(); width],
        header_row: None,
        first_row: row.row,
        no_header: true,
    })
}

fn at_row(tables: &'static ListTables, records: &[Record], at: usize) -> Layout {
    let row = &records[at];
    let mut layout = told(tables, row.cells());
    layout.header_row = Some(row.row);
    layout.first_row = row.row + 1;
    // A row of units below the header.
    if let Some(next) = records.get(at + 1) {
        let cells: Vec<&str> = next.cells().map(str::trim).collect();
        let units = cells.iter().filter(|cell| unit_of(cell).is_some()).count();
        let filled = cells
            .iter()
            .filter(|cell| !cell.is_empty() && **cell != "-")
            .count();
        if units > 0 && units == filled {
            for (header, cell) in layout.headers.iter_mut().zip(&cells) {
                if let Some(unit) = unit_of(cell) {
                    header.unit = Some(unit);
                    header.unit_said = true;
                }
            }
            layout.first_row = next.row + 1;
        }
    }
    layout
}

fn unit_of(cell: &str) -> Option<LengthUnit> {
    LengthUnit::parse(cell.trim_matches(['(', ')', '[', ']']))
}

/// The layout of a header that was told.
pub fn told<'a>(tables: &'static ListTables, texts: impl Iterator<Item = &'a str>) -> Layout {
    let texts: Vec<String> = texts.map(str::to_owned).collect();
    let headers = texts.iter().map(|text| read(tables, text)).collect();
    Layout {
        texts,
        headers,
        header_row: None,
        first_row: 1,
        no_header: false,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn layout(rows: &[&[&str]]) -> Result<Layout, NotList> {
        let records: Vec<Record> = rows
            .iter()
            .zip(1..)
            .map(|(cells, row)| Record::of(row, cells.iter().copied()))
            .collect();
        find(calc_data::list::tables(), &records)
    }

    #[test]
    fn the_header_is_found_below_titles_and_above_units() {
        let found = layout(&[
            &["Trees of the park"],
            &["made in spring", ""],
            &["Tag", "Species", "Diam"],
            &["", "", "cm"],
            &["1", "x", "2"],
        ]);
        let found = found.expect("a list");
        assert_eq!((found.header_row, found.first_row), (Some(3), 5));
        assert_eq!(found.headers[2].unit, Some(LengthUnit::Centimetre));
        let bare =
            layout(&[&["1", "Norway maple", "14"], &["2", "Norway maple", "15"]]).expect("a list");
        assert!(bare.no_header && bare.first_row == 1);
        let strange = layout(&[&["A", "B"], &["1", "2"]]).expect("a list");
        assert_eq!((strange.header_row, strange.no_header), (Some(1), false));
        let turned: &[&[&str]] = &[
            &["tag", "1", "2", "3"],
            &["species", "a", "b", "c"],
            &["dbh", "3", "4", "5"],
            &["height", "3", "4", "5"],
        ];
        assert_eq!(layout(turned).err(), Some(NotList::Sideways));
    }

    #[test]
    fn columns_have_the_letters_of_a_spreadsheet() {
        assert_eq!(
            [0, 25, 26, 51, 52, 701, 702].map(letter),
            ["A", "Z", "AA", "AZ", "BA", "ZZ", "AAA"]
        );
    }
}
