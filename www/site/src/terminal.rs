//! What goes to the terminal. Names, files and settings come from other people: a control character in them could move
//! the cursor or colour what follows, and a mark that turns the direction of text could make it read otherwise. So none
//! of them is printed as it is.

use anyhow::{Context, Result};
use std::io::{ErrorKind, Write as _};

/// Whether a character is shown by its number. A new line and a tab stay.
fn is_hidden(c: char) -> bool {
    let turns = matches!(c,
        '\u{61c}' | '\u{200e}' | '\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}');
    let breaks = matches!(c, '\u{2028}' | '\u{2029}');
    turns || breaks || (c.is_control() && !matches!(c, '\n' | '\t'))
}

/// Text with every hidden character as its number: `<U+202E>`.
pub(crate) fn plain(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        if is_hidden(c) {
            out.push_str(&format!("<U+{:04X}>", u32::from(c)));
        } else {
            out.push(c);
        }
    }
    out
}

/// JSON that means the same, with every hidden character escaped: they stand only inside its strings.
pub(crate) fn json(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        if is_hidden(c) {
            // None of them lies beyond the first plane, so one unit of UTF-16 holds it.
            out.push_str(&format!("\\u{:04x}", u32::from(c)));
        } else {
            out.push(c);
        }
    }
    out
}

/// Prints text on standard output, made plain.
///
/// # Errors
/// As [`print_as_it_is`].
pub(crate) fn print(text: &str) -> Result<()> {
    print_as_it_is(&plain(text))
}

/// Prints what has no hidden character in it but those of its format, such as the line ends of a table.
///
/// # Errors
/// An output that can't be written; a reader that has gone, such as `head`, has seen enough.
pub(crate) fn print_as_it_is(text: &str) -> Result<()> {
    let mut out = std::io::stdout().lock();
    match out.write_all(text.as_bytes()).and_then(|()| out.flush()) {
        Err(error) if error.kind() != ErrorKind::BrokenPipe => {
            Err(error).context("the answer could not be printed")
        }
        _ => Ok(()),
    }
}

/// Tells something on the error stream, made plain. Where that is closed there is nobody to tell.
pub(crate) fn tell(line: &str) {
    let _ = writeln!(std::io::stderr().lock(), "{}", plain(line));
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_moves_the_cursor_or_turns_the_text_is_shown_by_its_number() {
        assert_eq!(plain("a\u{1b}[31mb\u{202e}c"), "a<U+001B>[31mb<U+202E>c");
        assert_eq!(
            plain("one\r\u{9b}\u{7f}\u{2066}"),
            "one<U+000D><U+009B><U+007F><U+2066>"
        );
        assert_eq!(plain("Bäume 14½ in\n\tçà"), "Bäume 14½ in\n\tçà");
    }

    /// Every character that Unicode gives the property Bidi_Control (UAX #9, the explicit formatting characters and
    /// the implicit marks), and the control characters of ISO/IEC 6429.
    #[test]
    fn no_control_of_direction_or_device_is_left() {
        let marks = "\u{61c}\u{200e}\u{200f}\u{202a}\u{202b}\u{202c}\u{202d}\u{202e}\u{2066}\u{2067}\u{2068}\u{2069}";
        for c in (0..0x20)
            .chain(0x7f..0xa0)
            .filter_map(char::from_u32)
            .chain(marks.chars())
        {
            assert_eq!(
                plain(&c.to_string()).contains(c),
                matches!(c, '\n' | '\t'),
                "{c:?}"
            );
        }
    }

    #[test]
    fn json_means_the_same_afterwards() {
        let value = serde_json::json!({ "name": "a\u{202e}b\u{85}c\u{1b}" });
        let written = json(&serde_json::to_string_pretty(&value).unwrap());
        assert!(
            !written.contains(['\u{202e}', '\u{85}', '\u{1b}']),
            "{written}"
        );
        let back: serde_json::Value = serde_json::from_str(&written).unwrap();
        assert_eq!(back, value);
    }
}
