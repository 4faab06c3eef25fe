//! A header of a size in words: what is measured, how high up, in which unit.
//!
//! ```text
//! Stem diam. @1.5m (mm)        a diameter in mm, 1.5 m up
//! Girth at 4.5 ft (inches)     a girth in inches, 1.37 m up
//! Crown diameter (m)           nothing of ours: each word must be known
//! ```

use super::LengthUnit;
use calc::terms::number::read_number;
use calc_data::list::{Column, ListTables, fold};

/// Words that say no more of a size than that it is one of the trunk, at breast height.
const BESIDE: [&str; 42] = [
    "stem",
    "trunk",
    "tree",
    "main",
    "bole",
    "at",
    "of",
    "the",
    "breast",
    "height",
    "high",
    "bh",
    "over",
    "bark",
    "ob",
    "measured",
    "above",
    "ground",
    "agl",
    "tronco",
    "fuste",
    "arbol",
    "del",
    "de",
    "la",
    "a",
    "al",
    "en",
    "altura",
    "pecho",
    "do",
    "da",
    "du",
    "tronc",
    "hauteur",
    "stamm",
    "baum",
    "bei",
    "in",
    "hohe",
    "hoehe",
    "brusthohe",
];

/// Heights on a trunk at which sizes are taken, metres.
const UP_M: std::ops::RangeInclusive<f64> = 0.05..=2.0;

/// What such a header says.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct SizeInWords {
    /// Diameter or girth.
    pub column: Column,
    /// The unit that stands in it.
    pub unit: Option<LengthUnit>,
    /// The unit that such a word implies.
    pub implied: Option<LengthUnit>,
    /// How high up, metres.
    pub at_m: Option<f64>,
}

/// A piece of a header: letters, a number, or a sign.
fn pieces(folded: &str) -> Vec<&str> {
    #[derive(Clone, Copy, PartialEq)]
    enum Kind {
        Letters,
        Number,
        Sign,
        Space,
    }
    let kind = |at: usize, c: char| {
        // A point or comma belongs to a number where digits stand on both sides of it.
        let digit = |at: Option<usize>| {
            at.and_then(|at| folded.as_bytes().get(at))
                .is_some_and(u8::is_ascii_digit)
        };
        match c {
            'a'..='z' => Kind::Letters,
            '0'..='9' => Kind::Number,
            '.' | ',' if digit(at.checked_sub(1)) && digit(Some(at + 1)) => Kind::Number,
            ' ' | '_' | '.' | '-' => Kind::Space,
            _ => Kind::Sign,
        }
    };
    let mut pieces = Vec::new();
    let mut begun: Option<(Kind, usize)> = None;
    for (at, c) in folded.char_indices() {
        let is = kind(at, c);
        if let Some((was, from)) = begun
            && (was != is || is == Kind::Sign)
        {
            if was != Kind::Space {
                pieces.push(&folded[from..at]);
            }
            begun = None;
        }
        begun.get_or_insert((is, at));
    }
    if let Some((was, from)) = begun
        && was != Kind::Space
    {
        pieces.push(&folded[from..]);
    }
    pieces
}

/// Reads one; none where a word of it is not known, or where it says two things of a kind.
pub(super) fn read(tables: &'static ListTables, header: &str) -> Option<SizeInWords> {
    let folded = fold(header.trim());
    let pieces = pieces(&folded);
    let (mut column, mut implied, mut unit, mut at_m) = (None, None, None, None);
    let mut at = 0;
    while at < pieces.len() {
        let piece = pieces[at];
        let next = pieces.get(at + 1).copied().unwrap_or("");
        at += 1;
        if piece.starts_with(|c: char| c.is_ascii_digit()) {
            let own = LengthUnit::parse(next);
            at += usize::from(own.is_some());
            let placed = at >= 2 && pieces[..at].iter().any(|it| PLACES.contains(it));
            if at_m.is_some() || (own.is_none() && !placed && !piece.contains(['.', ','])) {
                return None;
            }
            at_m = Some(up(piece, own)?);
            continue;
        }
        let number_next = next.starts_with(|c: char| c.is_ascii_digit());
        // "in" before a height or a unit is no inch.
        let is_small_word = piece == "in" && (number_next || LengthUnit::parse(next).is_some());
        if is_small_word || "()[]@/,:*".contains(piece) {
            continue;
        }
        if let Some(found) = LengthUnit::parse(piece) {
            if unit.is_some() {
                return None;
            }
            unit = Some(found);
            continue;
        }
        let known = tables
            .header(piece)
            .filter(|word| matches!(word.column, Column::Dbh | Column::Girth | Column::Dia));
        if let Some(word) = known {
            let is = match word.column {
                Column::Girth => Column::Girth,
                _ => Column::Dbh,
            };
            if column.is_some_and(|column| column != is) {
                return None;
            }
            column = Some(is);
            implied = LengthUnit::parse(word.unit);
            continue;
        }
        let taken = match piece {
            "around" | "round" => Column::Girth,
            "across" => Column::Dbh,
            _ if BESIDE.contains(&piece) => continue,
            _ => return None,
        };
        if column.is_some_and(|column| column != taken) {
            return None;
        }
        column = Some(taken);
    }
    Some(SizeInWords {
        column: column?,
        unit,
        implied,
        at_m,
    })
}

/// Words in front of a height.
const PLACES: [&str; 6] = ["@", "at", "a", "en", "in", "bei"];

/// Metres of a height on the trunk; a bare number is read by its size.
fn up(number: &str, unit: Option<LengthUnit>) -> Option<f64> {
    let value = read_number(number).ok()?.value;
    let mm = match unit {
        Some(unit) => unit.mm(),
        None if value > 20.0 => LengthUnit::Centimetre.mm(),
        None if value > 2.0 => LengthUnit::Foot.mm(),
        None => LengthUnit::Metre.mm(),
    };
    let metres = value * mm / 1000.0;
    UP_M.contains(&metres).then_some(metres)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_size_in_words_says_what_it_is_how_high_up_and_in_which_unit() {
        let tables = calc_data::list::tables();
        for (header, column, unit, centimetres) in [
            ("Stem diam. @1.5m (mm)", "dbh", "mm", 150),
            ("Trunk Dia (in)", "dbh", "in", 0),
            ("Circ. @ 1.37 m [cm]", "girth", "cm", 137),
            ("Girth at 4.5 ft (inches)", "girth", "in", 137),
            ("dia_at_bh", "dbh", "", 0),
            ("diámetro a 1,30 (cm)", "dbh", "cm", 130),
            ("Stammumfang in 1 m Höhe (cm)", "girth", "cm", 100),
            ("Diam (mm) at 1.4m", "dbh", "mm", 140),
            ("Dia. at 30cm (cm)", "dbh", "cm", 30),
            ("Circonférence à 1,30 m (cm)", "girth", "cm", 130),
            ("DBH at 4.5'", "dbh", "", 137),
            ("Dia @ 4.5ft", "dbh", "", 137),
            ("Perímetro a 1.30 m (cm)", "girth", "cm", 130),
            (
                "Trunk circumference (inches) at 4.5 feet",
                "girth",
                "in",
                137,
            ),
            ("diam_1.3_m", "dbh", "", 130),
            ("Trunk (inches around)", "girth", "in", 0),
            ("Inches across", "dbh", "in", 0),
        ] {
            let read = read(tables, header).unwrap_or_else(|| panic!("{header}"));
            let up = read.at_m.map_or(0.0, |metres| (metres * 100.0).round());
            let unit_read = read.unit.map_or("", LengthUnit::sign);
            assert_eq!(
                (read.column.name(), unit_read, up),
                (column, unit, f64::from(centimetres)),
                "{header}"
            );
        }
    }

    #[test]
    fn a_header_with_another_word_in_it_is_no_size_of_a_trunk() {
        let tables = calc_data::list::tables();
        for header in [
            "Crown diameter (m)",
            "Crown dia (m)",
            "Root collar diameter",
            "Stump diameter (cm)",
            "DBH class",
            "max DBH",
            "Sum of DBH",
            "DBH (inches, nearest 0.5)",
            "DBH (in/cm)",
            "diameter and girth",
            "Diameter at 40 m",
            "Height at 1.5 m",
            "Target diameter",
            "DBH of target (in)",
            "Diameter around",
        ] {
            assert_eq!(read(tables, header), None, "{header}");
        }
    }
}
