//! What a cell of a size, a length or a tag says, before the question's reader judges it.

use crate::words::{WordFinder, has_month};
use calc::terms::number::read_number;
use calc_data::list::WordKind;

/// Why a size is none.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum NoSize {
    /// Nothing, zero, or a word for nothing.
    Missing,
    /// The spreadsheet lost a formula's value.
    Broken,
    /// A formula as text.
    Formula,
    /// Several stems without their sizes.
    SeveralStems,
    /// `6-12`: a range.
    Range,
    /// `>30`: no upper end.
    Open,
    /// `6-Dec`: a range that a spreadsheet made a day.
    Day,
    /// Two numbers with a space between.
    TwoNumbers,
    /// No tree stands there: the word for it.
    NotTree(&'static str),
}

/// A size cell as it is read.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Size {
    /// One size or several, each as typed.
    Stems(Vec<String>),
    /// The same, and it is an estimate: `~14`.
    Estimate(Vec<String>),
    /// No size.
    None(NoSize),
}

/// A cell without the apostrophe that keeps a spreadsheet from taking it as a formula.
#[must_use]
pub(crate) fn unguarded(cell: &str) -> &str {
    match cell.strip_prefix('\'') {
        Some(rest) if rest.starts_with(['=', '+', '-', '@', '\t', '\r']) => rest,
        _ => cell,
    }
}

/// Reads a size.
#[must_use]
pub(crate) fn size(words: WordFinder, cell: &str) -> Size {
    let text = unguarded(cell.trim());
    if words.is_missing(text) {
        return Size::None(NoSize::Missing);
    }
    if let Some(what) = words.not_tree(text) {
        return Size::None(NoSize::NotTree(what));
    }
    if words.means(WordKind::Broken, text).is_some() {
        return Size::None(NoSize::Broken);
    }
    if text.starts_with('=') {
        return Size::None(NoSize::Formula);
    }
    if words.means(WordKind::SeveralStems, text).is_some() {
        return Size::None(NoSize::SeveralStems);
    }
    let (text, estimate) = without_estimate(text);
    let made = |stems: Vec<String>| {
        if estimate {
            Size::Estimate(stems)
        } else {
            Size::Stems(stems)
        }
    };
    if let Some(parts) = list(text) {
        return made(parts);
    }
    if text.starts_with(['>', '≥', '<', '≤']) || text.ends_with('+') {
        return Size::None(NoSize::Open);
    }
    if is_day(text) {
        return Size::None(NoSize::Day);
    }
    if is_range(text) {
        return Size::None(NoSize::Range);
    }
    if let Some(plain) = without_exponent(text) {
        return made(vec![plain]);
    }
    match read_number(text) {
        Ok(number) if number.value == 0.0 => Size::None(NoSize::Missing),
        Ok(number) if number.value < 0.0 => Size::None(NoSize::Missing),
        Err(_) if is_several(words, text) => Size::None(NoSize::SeveralStems),
        Err(_) if two_numbers(text) => Size::None(NoSize::TwoNumbers),
        _ => made(vec![text.to_owned()]),
    }
}

/// `~14`, `c. 14`, `est. 14`, `14?`.
fn without_estimate(text: &str) -> (&str, bool) {
    let mut rest = text;
    for front in [
        "~", "≈", "approx.", "approx", "about ", "ca.", "ca ", "c.", "c ", "est.", "est ",
    ] {
        if let Some(behind) = rest.to_lowercase().strip_prefix(front) {
            rest = rest[rest.len() - behind.len()..].trim_start();
            break;
        }
    }
    if let Some(front) = rest.strip_suffix('?') {
        rest = front.trim_end();
    }
    (rest, rest.len() < text.len() && !rest.is_empty())
}

/// `12; 9; 7`, `3+4+6`, and `12, 9, 7` with a space behind each comma.
fn list(text: &str) -> Option<Vec<String>> {
    let parts: Vec<&str> = if text.contains(';') {
        text.split(';').collect()
    } else if text.contains(", ") {
        text.split(", ").collect()
    } else if text.contains('+') && !text.ends_with('+') {
        text.split('+').collect()
    } else if text.contains(" & ") {
        text.split(" & ").collect()
    } else {
        return None;
    };
    let parts: Vec<String> = parts
        .into_iter()
        .map(|part| part.trim().to_owned())
        .filter(|part| !part.is_empty())
        .collect();
    let numbers = parts.iter().all(|part| read_number(part).is_ok());
    (parts.len() > 1 && numbers).then_some(parts)
}

fn is_digits(text: &str) -> bool {
    !text.is_empty() && text.chars().all(|c| c.is_ascii_digit() || c == '.')
}

/// `6-12`, `12 to 18`, `12–18`, `12/18`; not `14-1/2` and not `1/2`.
fn is_range(text: &str) -> bool {
    let text = text.replace(['–', '—'], "-");
    let bare =
        text.trim_end_matches(|c: char| c.is_ascii_alphabetic() || matches!(c, '"' | '.' | ' '));
    for between in [" to ", " a ", " - ", "-"] {
        if let Some((low, high)) = bare.split_once(between)
            && is_digits(low.trim())
            && is_digits(high.trim())
        {
            return true;
        }
    }
    match bare.split_once('/') {
        Some((over, under)) if is_digits(over.trim()) && is_digits(under.trim()) => {
            !matches!(under.trim(), "2" | "3" | "4" | "8" | "16" | "32" | "64")
        }
        _ => false,
    }
}

/// A day: `6-Dec`, `4/3/2019`, `2019-03-04`.
fn is_day(text: &str) -> bool {
    let parts: Vec<&str> = text.split(['/', '-', '.']).collect();
    let numbers = parts.len() == 3
        && parts
            .iter()
            .all(|part| is_digits(part) && !part.contains('.'));
    (numbers && parts.iter().any(|part| part.len() == 4))
        || (has_month(text) && text.chars().any(|c| c.is_ascii_digit()))
}

/// `1.2E+01` as it is read: digits and a power of ten.
fn without_exponent(text: &str) -> Option<String> {
    let (digits, power) = text.split_once(['E', 'e'])?;
    let value = read_number(digits)
        .ok()
        .filter(|number| number.unit.is_none())?
        .value;
    let power = power.strip_prefix('+').unwrap_or(power);
    if !is_digits(power) || power.len() > 2 {
        return None;
    }
    let power = read_number(power).ok()?.value;
    let value = value * ten_to(power);
    (value < 1e6).then(|| calc::question::Text::of_number(value).0)
}

/// Ten to a small whole power.
fn ten_to(power: f64) -> f64 {
    let mut scale = 1.0;
    let mut left = power;
    while left >= 1.0 {
        scale *= 10.0;
        left -= 1.0;
    }
    scale
}

/// `12 x 3`, `3 @ 12`, `3 stems`.
fn is_several(words: WordFinder, text: &str) -> bool {
    let lower = text.to_lowercase();
    let parts: Vec<&str> = lower
        .split([' ', '@'])
        .filter(|part| !part.is_empty())
        .collect();
    let numbers = parts.iter().filter(|part| is_digits(part)).count();
    let stem = parts
        .iter()
        .any(|part| words.means(WordKind::StemWord, part).is_some());
    let times = lower.contains('@') || parts.iter().any(|part| matches!(*part, "x" | "×"));
    (numbers > 0 && stem) || (numbers > 1 && times)
}

fn two_numbers(text: &str) -> bool {
    let parts: Vec<&str> = text.split_whitespace().collect();
    parts.len() == 2 && parts.iter().all(|part| is_digits(part))
}

/// Whether a tag looks as if a spreadsheet made something else of it: a day, a power.
#[must_use]
pub(crate) fn is_mangled_tag(tag: &str) -> bool {
    let day = has_month(tag)
        && tag.chars().any(|c| c.is_ascii_digit())
        && tag
            .split(|c: char| !c.is_ascii_alphanumeric())
            .filter(|part| !part.is_empty())
            .count()
            == 2
        && tag.len() <= 8;
    let power = tag.len() >= 3
        && tag.split_once(['E', 'e']).is_some_and(|(digits, power)| {
            is_digits(digits) && is_digits(power.trim_start_matches('+'))
        })
        && (tag.contains('+') || tag.contains('.'));
    day || power
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(cell: &str) -> Size {
        size(WordFinder::new(calc_data::list::tables()), cell)
    }

    #[test]
    fn sizes_are_kept_as_typed() {
        for cell in [
            "17", "20.5", "12,5", "14 1/2", "14-1/2", "14½", "14\"", "36 cm", "9' 4\"", "7' 2.5\"",
            "fourteen", "1,234", "1/2",
        ] {
            assert_eq!(read(cell), Size::Stems(vec![cell.into()]), "{cell}");
        }
        for cell in ["~14", "c. 14", "14?", "est. 14", "ca. 14"] {
            assert_eq!(read(cell), Size::Estimate(vec!["14".into()]), "{cell}");
        }
        for cell in ["12; 9; 7", "12, 9, 7", "12+9+7"] {
            let stems = ["12", "9", "7"].map(str::to_owned).to_vec();
            assert_eq!(read(cell), Size::Stems(stems), "{cell}");
        }
        assert_eq!(read("1.2E+01"), Size::Stems(vec!["12".into()]));
    }

    #[test]
    fn what_is_no_size_says_why() {
        for (cell, why) in [
            ("", NoSize::Missing),
            (" ", NoSize::Missing),
            ("0", NoSize::Missing),
            ("-9", NoSize::Missing),
            ("n/a", NoSize::Missing),
            ("#REF!", NoSize::Broken),
            ("=B2/3.14", NoSize::Formula),
            ("'=B2/3.14", NoSize::Formula),
            ("Multi", NoSize::SeveralStems),
            ("3 stems", NoSize::SeveralStems),
            ("12 x 3", NoSize::SeveralStems),
            ("3 @ 12", NoSize::SeveralStems),
            ("6-12", NoSize::Range),
            ("12 to 18", NoSize::Range),
            ("12–18", NoSize::Range),
            ("12/18", NoSize::Range),
            (">30", NoSize::Open),
            ("30+", NoSize::Open),
            ("6-Dec", NoSize::Day),
            ("4/3/2019", NoSize::Day),
            ("12 14", NoSize::TwoNumbers),
            ("stump", NoSize::NotTree("stump")),
        ] {
            assert_eq!(read(cell), Size::None(why), "{cell}");
        }
    }

    #[test]
    fn tags_that_a_spreadsheet_spoiled_are_seen() {
        for tag in ["3-Dec", "Dec-03", "1E+05", "1.2E5"] {
            assert!(is_mangled_tag(tag), "{tag}");
        }
        for tag in ["T12", "004a", "1E5", "MAR-12-B", "12-3"] {
            assert!(!is_mangled_tag(tag), "{tag}");
        }
    }
}
