//! Twenty-five files as people send them.

use crate::show::{Told, file, hold};

/// Bytes of UTF-16 with their mark.
fn utf16(text: &str, bytes: fn(u16) -> [u8; 2]) -> Vec<u8> {
    "\u{feff}"
        .encode_utf16()
        .chain(text.encode_utf16())
        .flat_map(bytes)
        .collect()
}

/// Bytes of Windows-1252 of letters that Latin-1 has too.
fn latin(text: &str) -> Vec<u8> {
    let byte = |c: char| u8::try_from(u32::from(c)).expect("a letter of Latin-1");
    text.chars().map(byte).collect()
}

/// Files that are read as they lie there.
const PLAIN: [&str; 17] = [
    "semicolon",
    "tab",
    "sep_line",
    "line_breaks",
    "blank_rows",
    "twice",
    "formulas",
    "days_as_tags",
    "swapped",
    "comma_decimals",
    "thousands",
    "titles",
    "headers_twice",
    "totals_and_tail",
    "one_column",
    "quote_open",
    "odd_signs",
];

#[test]
fn files_as_people_send_them() {
    for name in PLAIN {
        hold(
            "dirty",
            name,
            file("dirty", name).as_bytes(),
            &Told::default(),
        );
    }
}

#[test]
fn a_list_without_a_header_asks_for_it_and_reads_it_once_told() {
    let bytes = file("dirty", "no_header");
    hold("dirty", "no_header", bytes.as_bytes(), &Told::default());
    let told = Told::decided(r#"{"header":["Tag","Species","DBH in","Unit"]}"#);
    hold("dirty", "no_header_told", bytes.as_bytes(), &told);
}

#[test]
fn a_mark_of_order_is_no_part_of_the_header() {
    let bytes = ["\u{feff}", &file("dirty", "bom")].concat();
    hold("dirty", "bom", bytes.as_bytes(), &Told::default());
}

#[test]
fn the_sixteen_bit_encodings_read_alike() {
    let text = file("dirty", "utf16");
    hold(
        "dirty",
        "utf16",
        &utf16(&text, u16::to_le_bytes),
        &Told::default(),
    );
    hold(
        "dirty",
        "utf16",
        &utf16(&text, u16::to_be_bytes),
        &Told::default(),
    );
}

#[test]
fn letters_of_an_older_encoding_are_read_and_shown() {
    let bytes = latin(&file("dirty", "windows1252"));
    hold("dirty", "windows1252", &bytes, &Told::default());
}

#[test]
fn line_ends_of_three_kinds_in_one_file() {
    let text = file("dirty", "mixed_ends");
    let mut ends = ["\r\n", "\n", "\r", "\r\n"].iter();
    let mut mixed = String::new();
    for line in text.lines() {
        mixed.push_str(line);
        // The last line has no end.
        mixed.push_str(ends.next().copied().unwrap_or(""));
    }
    hold("dirty", "mixed_ends", mixed.as_bytes(), &Told::default());
}

#[test]
fn a_cell_of_a_megabyte_is_told_and_the_rows_round_it_are_read() {
    let text = file("dirty", "long_cell").replace("{long}", &"x".repeat(1_000_000));
    hold("dirty", "long_cell", text.as_bytes(), &Told::default());
}

#[test]
fn a_workbook_with_the_name_of_a_list() {
    let mut bytes = b"PK\x03\x04\x14\0\x06\0".to_vec();
    bytes.extend(file("dirty", "workbook").bytes());
    hold("dirty", "workbook", &bytes, &Told::default());
}

#[test]
fn lost_values_are_told_and_a_value_for_nothing_is_asked() {
    let text = file("dirty", "broken_and_missing");
    hold(
        "dirty",
        "broken_and_missing",
        text.as_bytes(),
        &Told::default(),
    );
    let told = Told::decided(r#"{"missing":["999"]}"#);
    hold(
        "dirty",
        "broken_and_missing_decided",
        text.as_bytes(),
        &told,
    );
}
