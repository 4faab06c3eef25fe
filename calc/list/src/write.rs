//! A list written again: cells that came in go out as they came; what we write ourselves can never run as a formula.

use std::borrow::Cow;

/// A mark of order in front: without it spreadsheets show letters beyond ASCII as others.
pub const MARK: &str = "\u{feff}";

/// One row, as RFC 4180 has it: a comma between cells, quotes only where a cell needs them.
pub fn row<'a>(cells: impl IntoIterator<Item = &'a str>, into: &mut String) {
    let mut count = 0;
    let before = into.len();
    for cell in cells {
        if count > 0 {
            into.push(',');
        }
        count += 1;
        let quoted = cell.contains([',', '"', '\n', '\r'])
            // Space at an end is lost by some readers.
            || cell.starts_with(' ')
            || cell.ends_with(' ');
        if quoted {
            into.push('"');
            for part in cell.split_inclusive('"') {
                into.push_str(part);
                if part.ends_with('"') {
                    into.push('"');
                }
            }
            into.push('"');
        } else {
            into.push_str(cell);
        }
    }
    // One empty cell would be read as an empty line.
    if count == 1 && into.len() == before {
        into.push_str("\"\"");
    }
    into.push_str("\r\n");
}

/// A text that we write, with an apostrophe in front where a spreadsheet would take it as a formula. A lone dash, which
/// stands for nothing, and numbers stay as they are.
#[must_use]
pub fn guarded(cell: &str) -> Cow<'_, str> {
    let formula = cell.starts_with(['=', '+', '-', '@', '\t', '\r']);
    let harmless = cell == "-" || calc::terms::number::read_number(cell).is_ok();
    if formula && !harmless {
        Cow::Owned(["'", cell].concat())
    } else {
        Cow::Borrowed(cell)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn cells_are_quoted_only_where_they_must_be() {
        let mut text = String::new();
        row(["a", "b,c", "14\"", "x\r\ny", " z", ""], &mut text);
        assert_eq!(text, "a,\"b,c\",\"14\"\"\",\"x\r\ny\",\" z\",\r\n");
        let mut text = String::new();
        row([""], &mut text);
        assert_eq!(text, "\"\"\r\n");
    }

    #[test]
    fn what_would_run_is_guarded_and_numbers_are_not() {
        for (cell, written) in [
            ("=A1", "'=A1"),
            ("+cmd", "'+cmd"),
            ("@x", "'@x"),
            ("-71.06", "-71.06"),
            ("-", "-"),
            ("a=b", "a=b"),
        ] {
            assert_eq!(guarded(cell), written, "{cell}");
        }
    }
}
