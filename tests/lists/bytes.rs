//! The bytes of a list: Python's `csv` module reads the same cells of every list of these checks, and what the file is
//! written like changes nothing of what it says.

use crate::show::{Told, file, read, shown};
use calc_list::reader::{Cut, as_text};
use calc_list::{Decisions, Record};
use std::fmt::Write as _;
use std::time::{Duration, Instant};

/// `vectors/records.json`, as `vectors/records.py` made it with Python's `csv` module: a list, its rows, their cells.
#[test]
fn cells_are_those_that_python_reads() {
    let path = crate::show::folder().join("vectors/records.json");
    let text = std::fs::read_to_string(path).expect("the vectors");
    let vectors: serde_json::Value = serde_json::from_str(&text).expect("JSON");
    let vectors = vectors.as_object().expect("an object");
    assert!(vectors.len() > 50);
    for (name, wanted) in vectors {
        let (folder, file_name) = name.split_once('/').expect("a folder and a name");
        let text = file(folder, file_name);
        let (bytes, encoding) = as_text(text.as_bytes()).expect("a text");
        let Ok(cut) = Cut::of(&bytes, encoding, &Decisions::default()) else {
            continue;
        };
        let mut records = cut.records(&*bytes, 1).expect("bytes");
        let mut found = Vec::new();
        let mut record = Record::default();
        while records.next(&mut record).expect("bytes").0 {
            found.push(record.cells().map(str::to_owned).collect::<Vec<_>>());
        }
        let found = serde_json::to_value(found).expect("JSON");
        assert_eq!(&found, wanted, "{name}");
    }
}

#[test]
fn line_ends_quotes_and_a_mark_of_order_change_nothing() {
    let text = file("demands", "stems");
    let wanted = shown(text.as_bytes(), &Told::default());
    let crlf = text.replace('\n', "\r\n");
    let cr = text.replace('\n', "\r");
    let marked = ["\u{feff}", &text].concat();
    let bare_end = text.trim_end().to_owned();
    for other in [crlf, cr, marked, bare_end] {
        assert_eq!(shown(other.as_bytes(), &Told::default()), wanted);
    }
    // A mark of order in the middle, as two files put behind each other have it.
    let joined = text.replacen("\n3,", "\n\u{feff}3,", 1);
    let list = read(joined.as_bytes(), &Told::default()).expect("a list");
    assert_eq!(list.counts.rows, 15);
}

#[test]
fn a_byte_that_is_no_letter_makes_the_whole_file_an_older_encoding() {
    let mut bytes = "Tag,Species,DBH in,Notes\n1,Norway maple,14,"
        .as_bytes()
        .to_vec();
    bytes.extend(b"jard\xedn, se\xf1al\n2,Norway maple,9,\xe1rbol\n");
    let list = read(&bytes, &Told::default()).expect("a list");
    assert_eq!(list.changed, ["jardín", "señal", "árbol"]);
    assert_eq!(list.counts.ready, 2);
}

#[test]
fn what_is_no_text_says_what_it_is() {
    for (bytes, name) in [
        (&b""[..], "empty"),
        (b"\n\n \n", "empty"),
        (b"\xef\xbb\xbf", "empty"),
        (b"PK\x03\x04abc", "workbook"),
        (b"Tag,Species\n1,\0\n", "not_text"),
        (b"\x89PNG\r\n", "not_text"),
        (b"%PDF-1.7\n", "not_text"),
        (b"Tag,Species,DBH in\n", "header_alone"),
        (b"Norway maple\nBlack locust\n", "one_column"),
        (
            b"tag,1,2,3\nspecies,ash,ash,elm\ndbh,3,4,5\nheight,9,9,9\n",
            "sideways",
        ),
        (
            b"Species,Count\nNorway maple,14\nBlack locust,9\n",
            "counts",
        ),
    ] {
        let found = read(bytes, &Told::default()).map(|_| "a list");
        assert_eq!(found.map_err(|why| why.name()), Err(name), "{bytes:?}");
    }
}

#[test]
fn a_column_of_five_hundred_names_and_one_of_five_thousand_columns_take_no_time() {
    let mut text = String::from("Tag,Species,DBH in\n");
    for row in 0..500 {
        let _ = writeln!(text, "{row},Norway maple number {row},14");
    }
    let begin = Instant::now();
    let list = read(text.as_bytes(), &Told::default()).expect("a list");
    assert_eq!(list.counts.to_fix, 500);
    // A fifth of a second with the optimizer; this is built without it.
    assert!(
        begin.elapsed() < Duration::from_secs(4),
        "{:?}",
        begin.elapsed()
    );
    let wide = vec!["x"; 5_000].join(",");
    let text = format!("Tag,Species,DBH in,{wide}\n1,Norway maple,14,{wide}\n");
    let list = read(text.as_bytes(), &Told::default()).expect("a list");
    assert_eq!(list.counts.ready, 1);
}

#[test]
fn more_rows_than_a_page_takes_are_told_with_what_to_choose_by() {
    let mut text = String::from("Tag,Species,DBH in,Park\n");
    for row in 0..20_001 {
        let _ = writeln!(text, "{row},Norway maple,{},Park {}", 6 + row % 20, row % 7);
    }
    let list = read(text.as_bytes(), &Told::default()).expect("a list");
    let notes = format!("{:?}", list.opened.notes);
    assert!(
        notes.contains("Many { rows: 20001, columns: [(\"DBH in\", 20), (\"Park\", 7)] }"),
        "{notes}"
    );
    assert_eq!(list.counts.ready, 20_001);
}
