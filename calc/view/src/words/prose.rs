//! Texts of the tables of evidence inside an answer in another language: in its own words where its pack has them, else in
//! English, marked so that the page says which language it is and a screen reader speaks it right.

use super::message::in_use;
use super::text_key::text_key;

/// Around English in a text of another language. [`Page`](crate::page::Page) makes an element with `lang="en"` of it;
/// what is no page takes the marks out by [`bare`].
const BEGINS: char = '\u{11}';
const ENDS: char = '\u{12}';

/// A text of a table in the language in use.
#[must_use]
pub fn prose(text: &str) -> String {
    match translated(text) {
        Some(said) => said.into(),
        None => english(text),
    }
}

/// What a pack says for a text of a table.
fn translated(text: &str) -> Option<&'static str> {
    let key = text_key(text);
    let mut rows = in_use().prose().split('\n');
    rows.find_map(|row| row.as_bytes().starts_with(&key).then(|| &row[key.len()..]))
}

/// A text that stays English in every language: marked, where another one is in use.
#[must_use]
pub fn english(text: &str) -> String {
    if text.is_empty() || text.contains(BEGINS) || in_use().language() == "en" {
        return text.into();
    }
    let mut marked = String::from(BEGINS);
    marked.push_str(text);
    marked.push(ENDS);
    marked
}

/// Goes through a text piece by piece, each with whether it is marked as English.
pub(crate) fn pieces<'t>(text: &'t str, mut each: impl FnMut(&'t str, bool)) {
    let mut rest = text;
    while let Some((before, marked)) = rest.split_once(BEGINS) {
        let (inside, behind) = marked.split_once(ENDS).unwrap_or((marked, ""));
        for (piece, is_english) in [(before, false), (inside, true)] {
            if !piece.is_empty() {
                each(piece, is_english);
            }
        }
        rest = behind;
    }
    if !rest.is_empty() {
        each(rest, false);
    }
}

/// Whether a text has marks in it.
pub(crate) fn is_marked(text: &str) -> bool {
    text.contains(BEGINS)
}

/// A text without marks.
#[must_use]
pub fn bare(text: String) -> String {
    if !is_marked(&text) {
        return text;
    }
    let mut bare = String::new();
    pieces(&text, |piece, _| bare.push_str(piece));
    bare
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::message::{pack, take_all, within};

    #[test]
    fn what_stays_english_is_marked_in_another_language_alone() {
        take_all();
        assert_eq!(english("Agnew & Rao"), "Agnew & Rao");
        let marked = within(pack("es"), || english("Agnew & Rao"));
        let mut told = Vec::new();
        let text = format!("Fuente: {marked}.");
        pieces(&text, |piece, is_english| told.push((piece, is_english)));
        assert_eq!(
            told,
            [("Fuente: ", false), ("Agnew & Rao", true), (".", false)]
        );
        assert_eq!(bare(text), "Fuente: Agnew & Rao.");
        assert_eq!(within(pack("es"), || english(&marked)), marked);
    }

    #[test]
    fn a_text_of_a_table_is_said_in_the_language_in_use() {
        take_all();
        let text = "Stop and leave the stand.";
        assert_eq!(prose(text), text);
        let spanish = within(pack("es"), || prose(text));
        assert!(
            spanish.starts_with("Pare") && !is_marked(&spanish),
            "{spanish}"
        );
        assert!(is_marked(&within(pack("es"), || prose(
            "no text of a table"
        ))));
    }
}
