//! What a header says: its column, a unit in it, a year, a number behind it.

mod in_words;

use calc::terms::small::order::sort_by;
use calc_data::list::{Column, ListTables, WordKind, fold, header_key};

/// A unit of length that a header or a column of units says.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LengthUnit {
    /// Inches.
    Inch,
    /// Feet.
    Foot,
    /// Millimetres.
    Millimetre,
    /// Centimetres.
    Centimetre,
    /// Metres.
    Metre,
}

impl LengthUnit {
    /// The unit of a word.
    #[must_use]
    pub fn parse(word: &str) -> Option<Self> {
        let word = word.trim().trim_end_matches('.').to_lowercase();
        Some(match word.as_str() {
            "in" | "inch" | "inches" | "\"" | "pulgadas" | "pulgada" | "zoll" | "pouces" => {
                Self::Inch
            }
            "ft" | "foot" | "feet" | "'" | "pies" => Self::Foot,
            "mm" | "millimetres" | "millimeters" | "millimetre" | "millimeter" => Self::Millimetre,
            "cm" | "centimetres" | "centimeters" | "centimetre" | "centimeter" | "cms" => {
                Self::Centimetre
            }
            "m" | "metres" | "meters" | "metre" | "meter" | "mts" | "mt" | "metros" => Self::Metre,
            _ => return None,
        })
    }

    /// As the reader of numbers takes it.
    #[must_use]
    pub fn sign(self) -> &'static str {
        match self {
            Self::Inch => "in",
            Self::Foot => "ft",
            Self::Millimetre => "mm",
            Self::Centimetre => "cm",
            Self::Metre => "m",
        }
    }

    /// Millimetres in one.
    #[must_use]
    pub fn mm(self) -> f64 {
        match self {
            Self::Inch => calc::terms::quantity::MM_PER_IN,
            Self::Foot => calc::terms::quantity::M_PER_FT * 1000.0,
            Self::Millimetre => 1.0,
            Self::Centimetre => 10.0,
            Self::Metre => 1000.0,
        }
    }
}

/// A header as it was read.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Header {
    /// Its column; none for a header that is not known.
    pub column: Option<Column>,
    /// The unit in it, or the one that such a header implies.
    pub unit: Option<LengthUnit>,
    /// The unit stands in the header itself.
    pub unit_said: bool,
    /// The year in it.
    pub year: Option<u32>,
    /// A number behind it: `dbh2`.
    pub index: Option<u32>,
    /// It speaks of stems: `Stem 2`.
    pub of_stem: bool,
    /// It says that it is Spanish or Portuguese.
    pub romance: bool,
    /// It was cut off: a unit may be lost.
    pub cut: bool,
    /// How high up the trunk it says that a size was taken, metres.
    pub at_m: Option<f64>,
    /// What a distance leads to: `Distance to house`.
    pub hits: Option<&'static str>,
    /// Its slopes are in degrees.
    pub degrees: bool,
}

/// Endings that are units, the longest first.
const ENDS: [(&str, &str); 26] = [
    ("incentimetres", "cm"),
    ("incentimeters", "cm"),
    ("centimetres", "cm"),
    ("centimeters", "cm"),
    ("millimetres", "mm"),
    ("millimeters", "mm"),
    ("pulgadas", "in"),
    ("inmetres", "m"),
    ("inmeters", "m"),
    ("ininches", "in"),
    ("metres", "m"),
    ("meters", "m"),
    ("inches", "in"),
    ("metros", "m"),
    ("inch", "in"),
    ("feet", "ft"),
    ("foot", "ft"),
    ("encm", "cm"),
    ("incm", "cm"),
    ("enm", "m"),
    ("mts", "m"),
    ("cm", "cm"),
    ("mm", "mm"),
    ("in", "in"),
    ("ft", "ft"),
    ("m", "m"),
];

/// Beginnings that form programs and registers put in front.
const FRONTS: [&str; 6] = ["trees", "tree", "trg", "spc", "t", "q"];

/// Endings that form programs put behind.
const BEHINDS: [&str; 4] = ["required", "hidden", "optional", "text"];

/// Where programs cut names of columns off, in characters.
const CUT_AT: usize = 10;

/// Columns whose numbers have a unit.
fn has_unit(column: Column) -> bool {
    use Column::{
        Bark, BasalArea, Dbh, Dia, Elevation, Girth, Height, MeasuredAt, SizeClass, Target,
        TargetDistance,
    };
    matches!(
        column,
        Bark | BasalArea
            | Dbh
            | Dia
            | Elevation
            | Girth
            | Height
            | MeasuredAt
            | SizeClass
            | Target
            | TargetDistance
    )
}

/// Reads a header.
#[must_use]
pub fn read(tables: &'static ListTables, header: &str) -> Header {
    let mut read = column_of(tables, header);
    if read.column.is_none() {
        // "Slope (deg)", "Pendiente %", "Ground slope".
        let words = header_words(header);
        let slope = |word: &String| {
            let known = tables.header(word);
            known.is_some_and(|known| known.column == Column::Slope)
        };
        if words.iter().any(slope) {
            read.column = Some(Column::Slope);
        }
    }
    if read.column == Some(Column::Slope) {
        let degree = |word: &String| word.starts_with("deg") || word.starts_with("grad");
        read.degrees = header.contains('°') || header_words(header).iter().any(degree);
    }
    read
}

fn column_of(tables: &'static ListTables, header: &str) -> Header {
    let mut read = Header::default();
    let trimmed = header.trim();
    let mut key = header_key(trimmed);
    let whole = trimmed.ends_with([')', ']']) || trimmed.contains(' ');
    let may_be_cut = trimmed.chars().count() == CUT_AT && !whole;
    if key.is_empty() {
        // A lone # is a number.
        if trimmed == "#" {
            read.column = Some(Column::TreeId);
        }
        return read;
    }
    if found(tables, &key, &mut read) {
        // A header of ours may carry an inch mark.
        if trimmed.ends_with('"') {
            read.unit = Some(LengthUnit::Inch);
            read.unit_said = true;
        }
        read.of_stem = is_of_stem(&key);
        read.index = numbered(&key).map(|(_, index)| index);
        return read;
    }
    if let Some((year, rest)) = without_year(&key) {
        read.year = Some(year);
        key = rest;
        if found(tables, &key, &mut read) {
            return read;
        }
    }
    if with_ending(tables, &key, may_be_cut, &mut read) {
        return read;
    }
    // Question numbers in front, marks of form programs behind.
    let bare = key.trim_start_matches(|c: char| c.is_ascii_digit());
    let bare = BEHINDS
        .iter()
        .find_map(|end| bare.strip_suffix(end))
        .unwrap_or(bare);
    if bare.len() > 2
        && bare != key
        && (found(tables, bare, &mut read) || with_ending(tables, bare, may_be_cut, &mut read))
    {
        return read;
    }
    if let Some((name, index)) = numbered(&key)
        && (found(tables, name, &mut read) || with_ending(tables, name, may_be_cut, &mut read))
    {
        read.index = Some(index);
        read.of_stem = is_of_stem(name);
        return read;
    }
    for front in FRONTS {
        if let Some(rest) = key.strip_prefix(front)
            && rest.len() > 2
            && (found(tables, rest, &mut read) || with_ending(tables, rest, may_be_cut, &mut read))
        {
            return read;
        }
    }
    // A repeated section name in front: "Trees/dbh", "tree_info.species".
    if let Some(last) = trimmed.rsplit(['/', '.', ':', '|']).next()
        && last.len() < trimmed.len()
    {
        let last = header_key(last);
        if last.len() > 2
            && (found(tables, &last, &mut read)
                || with_ending(tables, &last, may_be_cut, &mut read))
        {
            return read;
        }
    }
    if let Some(size) = in_words::read(tables, trimmed) {
        read.column = Some(size.column);
        read.unit = size.unit.or(size.implied);
        read.unit_said = size.unit.is_some();
        read.at_m = size.at_m;
        return read;
    }
    cut_off(tables, &key, trimmed, &mut read);
    if read.column.is_none() {
        let words = header_words(trimmed);
        if distance_to(tables, &words, &mut read) {
            return read;
        }
        if has_word(tables, WordKind::WiresHeader, &words) {
            read.column = Some(Column::Wires);
        } else if names_people(tables, &words) {
            read.column = Some(Column::People);
        } else if let Some(last) = words.last().and_then(|last| tables.header(last)) {
            // "Site notes", "field comments".
            read.column = Some(last.column).filter(|column| *column == Column::Notes);
        }
    }
    read
}

/// Whether a header that is not known has a word of a kind in it, or two of them one behind the other that stand in the
/// table so: `Wires above?`, `power line near`, `Owner phone`.
fn has_word(tables: &'static ListTables, kind: WordKind, words: &[String]) -> bool {
    let mut pairs = words.windows(2).map(|pair| pair.join(" "));
    let knows = |word: &str| tables.word(kind, word).is_some();
    words.iter().any(|word| knows(word)) || pairs.any(|pair| knows(&pair))
}

/// Whether a header is no more than a distance: `Distance (m)`, `Dist 2`; its unit, where it says one.
#[must_use]
pub(crate) fn of_distance(tables: &'static ListTables, header: &str) -> Option<Option<LengthUnit>> {
    let mut unit = None;
    let mut distance = false;
    for word in header_words(header) {
        if tables.word(WordKind::DistanceHeader, &word).is_some() {
            distance = true;
        } else if let Some(found) = LengthUnit::parse(&word) {
            unit = Some(found);
        } else if !word.bytes().all(|c| c.is_ascii_digit()) {
            return None;
        }
    }
    distance.then_some(unit)
}

/// `Distance to house (ft)`, `Dist. to nearest target`: a distance, and to what where it says so.
fn distance_to(tables: &'static ListTables, words: &[String], read: &mut Header) -> bool {
    let is_distance = |word: &String| tables.word(WordKind::DistanceHeader, word).is_some();
    if !words.iter().any(is_distance) {
        return false;
    }
    let pairs = words.windows(2).map(|pair| pair.join(" "));
    let named: Vec<&'static str> = pairs
        .chain(words.iter().cloned())
        .filter_map(|word| tables.one_or_several(WordKind::Target, &word))
        .collect();
    let target = |word: &String| {
        tables
            .header(word)
            .is_some_and(|known| known.column == Column::Target)
    };
    if named.is_empty() && !words.iter().any(target) {
        return false;
    }
    read.column = Some(Column::TargetDistance);
    read.hits = named
        .first()
        .copied()
        .filter(|kind| *kind != "none" && *kind != "unknown");
    read.unit = words.iter().rev().find_map(|word| LengthUnit::parse(word));
    read.unit_said = read.unit.is_some();
    true
}

/// The words of a header, folded.
fn header_words(header: &str) -> Vec<String> {
    let folded = fold(header);
    let words = folded.split(|c: char| !c.is_ascii_alphanumeric());
    words
        .filter(|word| !word.is_empty())
        .map(str::to_owned)
        .collect()
}

/// Whether a header that is not known tells of people: `Owner phone`, `Measured by`.
fn names_people(tables: &'static ListTables, words: &[String]) -> bool {
    has_word(tables, WordKind::PeopleHeader, words)
        || words.len() > 1 && words.last().is_some_and(|word| word == "by")
}

fn found(tables: &'static ListTables, key: &str, read: &mut Header) -> bool {
    let Some(word) = tables.header(key) else {
        return false;
    };
    read.column = Some(word.column);
    read.unit = LengthUnit::parse(word.unit);
    read.romance = matches!(word.language, "es" | "pt");
    true
}

/// A known header with a unit behind it.
fn with_ending(
    tables: &'static ListTables,
    key: &str,
    may_be_cut: bool,
    read: &mut Header,
) -> bool {
    for (end, unit) in ENDS {
        let Some(name) = key.strip_suffix(end) else {
            continue;
        };
        let mut inner = *read;
        let known = found(tables, name, &mut inner)
            || without_year(name).is_some_and(|(year, rest)| {
                inner.year = Some(year);
                found(tables, &rest, &mut inner)
            });
        if known && inner.column.is_some_and(has_unit) {
            *read = inner;
            read.of_stem = is_of_stem(name);
            read.index = numbered(name).map(|(_, index)| index);
            // What followed "in" was cut off; and no tree's height is in inches.
            if unit == "in" && (may_be_cut || read.column == Some(Column::Height)) {
                read.cut = true;
                read.unit = None;
                return true;
            }
            read.unit = LengthUnit::parse(unit);
            read.unit_said = true;
            if read.column == Some(Column::Target) {
                read.column = Some(Column::TargetDistance);
            }
            return true;
        }
    }
    false
}

fn is_of_stem(key: &str) -> bool {
    key.starts_with("stem") || key.starts_with("trunk")
}

/// The year in a key, and the key without it.
fn without_year(key: &str) -> Option<(u32, String)> {
    let bytes = key.as_bytes();
    let digit = |at: usize| bytes.get(at).is_some_and(u8::is_ascii_digit);
    for at in 0..bytes.len().saturating_sub(3) {
        let whole = (at..at + 4).all(digit) && !digit(at + 4) && (at == 0 || !digit(at - 1));
        if whole && (key[at..].starts_with("19") || key[at..].starts_with("20")) {
            let year = key[at..at + 4].parse().ok()?;
            return Some((year, [&key[..at], &key[at + 4..]].concat()));
        }
    }
    None
}

/// A key with a number of one or two digits behind it.
fn numbered(key: &str) -> Option<(&str, u32)> {
    let name = key.trim_end_matches(|c: char| c.is_ascii_digit());
    let digits = &key[name.len()..];
    if name.len() < 3 || digits.is_empty() || digits.len() > 2 {
        return None;
    }
    Some((name, digits.parse().ok()?))
}

/// A name that a program cut off: the only column whose known headers begin so.
fn cut_off(tables: &'static ListTables, key: &str, header: &str, read: &mut Header) {
    let length = header.chars().count();
    if !(CUT_AT - 1..=CUT_AT).contains(&length) || key.len() < 7 {
        return;
    }
    let mut columns: Vec<Column> = tables
        .headers
        .iter()
        .filter(|word| word.key.starts_with(key))
        .map(|word| word.column)
        .collect();
    sort_by(&mut columns, Ord::cmp);
    columns.dedup();
    let names = [Column::Species, Column::Scientific, Column::Common];
    if !columns.is_empty() && columns.iter().all(|column| names.contains(column)) {
        columns = vec![Column::Species];
    }
    if let [column] = columns.as_slice() {
        read.column = Some(*column);
        read.cut = true;
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_header_says_its_column_and_its_unit() {
        let tables = calc_data::list::tables();
        for (header, column, unit) in [
            ("DBH (in)", "dbh", "in"),
            ("dbh_cm", "dbh", "cm"),
            ("DbhInch", "dbh", "in"),
            ("DBH \"", "dbh", "in"),
            ("girth_in", "girth", "in"),
            ("DAP (cm)", "dbh", "cm"),
            ("DHP", "dbh", "cm"),
            ("BHD (mm)", "dbh", "mm"),
            ("Stammumfang", "girth", "cm"),
            ("CAP", "girth", "cm"),
            ("Diámetro", "dbh", "cm"),
            ("Height_ft", "height", "ft"),
            ("Höhe", "height", "m"),
            ("TreeHeight", "height", ""),
            ("target_ft", "target_distance", "ft"),
            ("coord_m", "coord_m", ""),
            ("elevation_ft", "elevation", "ft"),
            ("bark_mm", "bark", "mm"),
            ("walk_min", "walk_min", ""),
            ("3_DBH_inches", "dbh", "in"),
            ("Tree species (required)*", "species", ""),
            ("Trees/dbh_cm", "dbh", "cm"),
            ("Basal area (m2)", "basal_area", ""),
            ("COMMON_NAM", "common", ""),
            ("SPECIES_NA", "species", ""),
            ("DIAMETERIN", "dbh", ""),
            ("HEIGHT_IN_", "height", ""),
            ("Nº árbol", "tree_id", ""),
            ("#", "tree_id", ""),
            ("Stem diam. @1.5m (mm)", "dbh", "mm"),
            ("Trunk Dia (in)", "dbh", "in"),
            ("GBH/cm", "girth", "cm"),
            ("Girth at 4.5 ft (inches)", "girth", "in"),
            ("Crown diameter (m)", "", ""),
            ("DBH class", "", ""),
            ("Site notes", "notes", ""),
            ("Kronendurchmesser", "keep", ""),
            ("Wires above?", "wires", ""),
            ("power line near", "wires", ""),
            ("Owner phone", "people", ""),
            ("Measured by", "people", ""),
            ("Land use", "", ""),
            ("Photo", "", ""),
            ("", "", ""),
        ] {
            let read = read(tables, header);
            let is = read.column.map_or("", Column::name);
            assert_eq!(
                (is, read.unit.map_or("", LengthUnit::sign)),
                (column, unit),
                "{header}"
            );
        }
    }

    #[test]
    fn a_year_and_a_number_are_told_apart() {
        let tables = calc_data::list::tables();
        for header in ["DBH 2019", "2019 DBH", "DBH_2019 (cm)", "dbh2019cm"] {
            let read = read(tables, header);
            assert_eq!(
                (read.column, read.year, read.index),
                (Some(Column::Dbh), Some(2019), None),
                "{header}"
            );
        }
        let read = |header| read(tables, header);
        assert_eq!((read("dbh2").index, read("dbh2").of_stem), (Some(2), false));
        assert_eq!(
            (read("Stem 2").index, read("Stem 2").of_stem),
            (Some(2), true)
        );
        assert_eq!(read("status 2021").year, Some(2021));
    }
}
