//! Labels and values of the fields, as they stand in lists and tables.

use crate::words::{Word, m};

/// The label of a field by its path.
pub fn field(path: &str) -> String {
    let (head, rest) = path.split_once(['[', '.']).unwrap_or((path, ""));
    let (at, last) = match rest.split_once(']') {
        Some((at, last)) => (at, last.trim_start_matches('.')),
        None => ("", rest),
    };
    let name = m::fields_field(&cat!(head, "-", last)).or_else(|| m::fields_field(head));
    let name = name.map_or(head, |name| name.text());
    // The first of a list is what a short form shows; the others carry their number.
    let number = at.bytes().fold(None, |sum: Option<u32>, digit| {
        digit
            .is_ascii_digit()
            .then(|| sum.unwrap_or(0).saturating_mul(10) + u32::from(digit - b'0'))
    });
    match number {
        Some(at) if at > 0 && head == "stems" => m::fields_of_stem(name, at + 1),
        Some(at) if at > 0 && head == "targets" => m::fields_of_thing(name, at + 1),
        _ => name.into(),
    }
}

/// Yes or no.
pub fn yes_no(yes: bool) -> Word {
    if yes { m::FIELDS_YES } else { m::FIELDS_NO }
}
