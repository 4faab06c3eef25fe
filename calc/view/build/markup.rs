//! The inline Markdown of messages on pages: links, code and bold. What they lead to and quote is the same in every
//! language; only the words between differ.

use crate::file::{Part, Wording};
use crate::pack;

/// A text cut where it is not words: behind `](` up to its `)`, and behind a backtick up to the next one, both signs
/// with what is no word.
fn pieces(text: &str) -> Vec<(bool, &str)> {
    let mut all = Vec::new();
    let mut rest = text;
    loop {
        let link = rest.find("](").map(|at| (at, 2, ')'));
        let code = rest.find('`').map(|at| (at, 1, '`'));
        let Some((at, begins, end)) = [link, code].into_iter().flatten().min() else {
            all.push((true, rest));
            return all;
        };
        let inside = at + begins;
        let length = rest[inside..]
            .find(end)
            .map_or(rest.len(), |length| inside + length + 1);
        all.push((true, &rest[..at]));
        all.push((false, &rest[at..length]));
        rest = &rest[length..];
    }
}

/// A wording as one text, its gaps in braces.
fn whole(parts: &[Part]) -> String {
    let mut text = String::new();
    for part in parts {
        match part {
            Part::Text(words) | Part::Other(words) => text.push_str(words),
            Part::Gap(name) => text.extend(["{", name, "}"]),
            Part::Choice { cases, .. } => {
                text.extend(cases.iter().map(|(_, parts)| whole(parts)));
            }
        }
    }
    text
}

/// What leads somewhere or is quoted, in order of its letters, and how much is bold.
fn marks(parts: &[Part]) -> Vec<String> {
    let text = whole(parts);
    let mut all = Vec::new();
    for (is_words, piece) in pieces(&text) {
        if is_words {
            all.extend(piece.matches("**").map(str::to_owned));
        } else {
            all.push(piece.to_owned());
        }
    }
    all.sort();
    all
}

/// What is wrong with the marks of a wording, if it is to have those of the first language.
pub(crate) fn differs(id: &str, wording: &Wording, first: &Wording) -> Option<String> {
    let (here, there) = (marks(&wording.parts), marks(&first.parts));
    let lacks = |all: &[String], mark: &String| {
        let count = |all: &[String]| all.iter().filter(|it| *it == mark).count();
        count(all) < count(&here).max(count(&there))
    };
    let place = &wording.place;
    if let Some(mark) = there.iter().find(|mark| lacks(&here, mark)) {
        return Some(format!("{place}: {id}: {mark} is missing"));
    }
    let mark = here.iter().find(|mark| lacks(&there, mark))?;
    Some(format!("{place}: {id}: {mark} is not in it in en"))
}

/// A text of a page for checks of the layout: what is no word stays.
pub(crate) fn stretched(parts: &[Part]) -> Vec<Part> {
    fn stretch((is_words, piece): (bool, &str)) -> String {
        match is_words {
            true => pack::stretch(piece),
            false => piece.to_owned(),
        }
    }
    let stretched = |part: &Part| match part {
        Part::Text(text) => Part::Text(pieces(text).into_iter().map(stretch).collect()),
        other => other.clone(),
    };
    parts.iter().map(stretched).collect()
}
