//! The group's species as a table: comma, semicolon or tab between the cells, quotes as RFC 4180 has them.

/// The heads that are known, in any order; `code` is needed.
pub const HEADS: [&str; 6] = [
    "code", "first", "alias_en", "note_en", "alias_es", "note_es",
];

/// A row of a table.
#[derive(Clone, Debug, PartialEq)]
pub struct SpeciesListRow {
    /// Its number, as a spreadsheet counts: the first line is 1.
    pub number: usize,
    /// Its cells.
    pub cells: Vec<String>,
}

/// Takes a table apart. None where a quote is left open. Rows without anything in them are counted and left out.
#[must_use]
pub fn rows(text: &str) -> Option<Vec<SpeciesListRow>> {
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let first = text.split('\n').next().unwrap_or("");
    let many = |mark: char| first.chars().filter(|c| *c == mark).count();
    let between = [';', '\t']
        .into_iter()
        .fold(',', |a, b| if many(b) > many(a) { b } else { a });
    let mut rows = Vec::new();
    let mut row = SpeciesListRow {
        number: 1,
        cells: vec![String::new()],
    };
    let mut quoted = false;
    let mut chars = text.chars().chain(['\n']).peekable();
    while let Some(c) = chars.next() {
        let Some(cell) = row.cells.last_mut() else {
            break;
        };
        if quoted {
            match (c, chars.peek()) {
                ('"', Some('"')) => {
                    cell.push('"');
                    chars.next();
                }
                ('"', _) => quoted = false,
                // The line end put behind the text.
                (_, None) => return None,
                _ => cell.push(c),
            }
        } else if c == '"' && cell.is_empty() {
            quoted = true;
        } else if c == between {
            row.cells.push(String::new());
        } else if c == '\n' {
            let number = row.number + 1;
            let next = SpeciesListRow {
                number,
                cells: vec![String::new()],
            };
            let done = core::mem::replace(&mut row, next);
            if done.cells.iter().any(|cell| !cell.trim().is_empty()) {
                rows.push(done);
            }
        } else if c != '\r' {
            cell.push(c);
        }
    }
    Some(rows)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn cells(text: &str) -> Vec<(usize, Vec<String>)> {
        let rows = rows(text).expect(text);
        rows.into_iter()
            .map(|row| (row.number, row.cells))
            .collect()
    }

    /// RFC 4180, section 2: rules 1, 2, 5, 6 and 7 as its own examples have them.
    #[test]
    fn the_examples_of_rfc_4180_are_read_as_it_says() {
        let row = |number: usize, cells: [&str; 3]| (number, cells.map(str::to_owned).to_vec());
        let both = [row(1, ["aaa", "bbb", "ccc"]), row(2, ["zzz", "yyy", "xxx"])];
        assert_eq!(cells("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"), both);
        assert_eq!(cells("aaa,bbb,ccc\r\nzzz,yyy,xxx"), both);
        assert_eq!(cells("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx"), both);
        assert_eq!(
            cells("\"aaa\",\"b \r\nbb\",\"ccc\"\r\nzzz,yyy,xxx"),
            [
                row(1, ["aaa", "b \r\nbb", "ccc"]),
                row(2, ["zzz", "yyy", "xxx"])
            ]
        );
        assert_eq!(
            cells("\"aaa\",\"b\"\"bb\",\"ccc\""),
            [row(1, ["aaa", "b\"bb", "ccc"])]
        );
    }

    #[test]
    fn other_marks_blank_rows_and_open_quotes() {
        assert_eq!(cells("\u{feff}code;first\n\nAIAL;yes\n").len(), 2);
        assert_eq!(
            cells("code;first\n\nAIAL;yes\n")[1].0,
            3,
            "blank rows count"
        );
        assert_eq!(cells("code\tfirst\nAIAL\tyes")[1].1, ["AIAL", "yes"]);
        assert_eq!(rows("code,note_en\nAIAL,\"left open\n"), None);
    }
}
