//! Bytes that nobody meant as a list: nothing stops the reader, every row is counted once, nothing that came in is lost.

use crate::show::{Told, file, folder, read};
use calc_list::reader::{Item, Reader, as_text};
use calc_list::{Counts, Decisions, Record, Whole, open, write};
use rand::rngs::StdRng;
use rand::{Rng as _, SeedableRng as _};

const SEED: u64 = 20_270_612;

/// Pieces that lists are made of, good and bad.
const PIECES: [&str; 40] = [
    "Tag",
    "Species",
    "DBH (in)",
    "Norway maple",
    "Acer",
    "maple?",
    "14",
    "14 1/2",
    "9' 4\"",
    "1,234",
    "-5",
    "999",
    "12; 9; 7",
    "6-Dec",
    "#REF!",
    "=A1",
    "'=A1",
    "none",
    "None",
    "path 60 ft",
    "42.36, -71.06",
    "Total",
    "stump",
    "dead",
    "\"",
    "\"\"",
    ",",
    ";",
    "\t",
    "\n",
    "\r\n",
    "\r",
    " ",
    "\u{a0}",
    "½",
    "🌲",
    "\u{feff}",
    "2019",
    "0x1F",
    "inf",
];

/// Every row of the file is told by the counts, once.
fn counted(list: &Whole, shown: &str) {
    let Counts {
        rows,
        ready,
        to_fix,
        blank,
        ..
    } = list.counts;
    assert_eq!(
        rows,
        ready + to_fix + blank + list.counts.no_trees(),
        "{shown:?}"
    );
    let told = list.rows.len() as u64;
    assert!(told <= rows && told >= ready + to_fix, "{shown:?}");
    let mut before = 0;
    for row in &list.rows {
        assert!(row.row > before, "rows go up: {shown:?}");
        before = row.row;
    }
}

fn held(bytes: &[u8], told: &Told) {
    let shown = String::from_utf8_lossy(&bytes[..bytes.len().min(400)]).into_owned();
    if let Ok(list) = read(bytes, told) {
        counted(&list, &shown);
    }
}

/// With a header that was told nothing is asked, so that every row is read.
const TOLD: Told = Told::decided(
    r#"{"header":["Tag","Species","DBH (in)","Height (ft)","Target","Status","Notes"]}"#,
);

#[test]
fn random_bytes_are_read_or_refused() {
    let mut random = StdRng::seed_from_u64(SEED);
    for _ in 0..120 {
        let bytes: Vec<u8> = (0..random.random_range(0..300))
            .map(|_| random.random())
            .collect();
        held(&bytes, &Told::default());
        held(&bytes, &TOLD);
        // The same without what makes it no text.
        let text: Vec<u8> = bytes.iter().map(|byte| byte.max(&9)).copied().collect();
        held(&text, &TOLD);
    }
}

#[test]
fn pieces_of_lists_in_any_order_are_read_or_refused() {
    let mut random = StdRng::seed_from_u64(SEED);
    for _ in 0..120 {
        let mut text = String::new();
        if random.random_bool(0.5) {
            text.push_str("Tag,Species,DBH (in),Height (ft),Target,Status,Notes\n");
        }
        for _ in 0..random.random_range(0..120) {
            text.push_str(PIECES[random.random_range(0..PIECES.len())]);
            if random.random_bool(0.6) {
                text.push(',');
            }
        }
        held(text.as_bytes(), &Told::default());
        held(text.as_bytes(), &TOLD);
    }
}

/// All the lists of these checks.
fn lists() -> Vec<(String, String)> {
    let mut all = Vec::new();
    for part in ["dirty", "demands"] {
        let entries = std::fs::read_dir(folder().join(part)).expect("a folder");
        for entry in entries.flatten() {
            let name = entry.file_name().to_string_lossy().into_owned();
            if let Some(name) = name.strip_suffix(".csv") {
                all.push((name.to_owned(), file(part, name)));
            }
        }
    }
    all.sort();
    assert!(all.len() > 50);
    all
}

#[test]
fn a_byte_that_is_lost_changed_or_doubled_stops_nothing() {
    let mut random = StdRng::seed_from_u64(SEED);
    for (_, text) in lists() {
        for _ in 0..6 {
            let mut bytes = text.clone().into_bytes();
            let at = random.random_range(0..bytes.len());
            match random.random_range(0..3) {
                0 => _ = bytes.remove(at),
                1 => bytes[at] = random.random(),
                _ => bytes.insert(at, bytes[at]),
            }
            held(&bytes, &Told::default());
        }
    }
}

/// A list written again with every cell as it came.
fn written(bytes: &[u8]) -> Option<(String, Vec<Record>)> {
    let decisions = Decisions::default();
    let (text, encoding) = as_text(bytes).ok()?;
    let cut = calc_list::reader::Cut::of(&text, encoding, &decisions).ok()?;
    let mut records = cut.records(&*text, 1).ok()?;
    let (mut all, mut record) = (Vec::new(), Record::default());
    while records.next(&mut record).ok()?.0 {
        all.push(record.clone());
    }
    let mut opened = open(
        calc_data::whole(),
        all.clone(),
        &Told::default().options(),
        &decisions,
    )
    .ok()?;
    let mut reader = Reader::new(cut.records(&*text, 1).ok()?, &mut opened);
    let mut out = String::from(write::MARK);
    while let Some(item) = reader.read_next().ok()? {
        match item {
            Item::Lines(lines) => (0..lines).for_each(|_| out.push_str("\r\n")),
            Item::Above(record) | Item::Blank(record) | Item::Row(record, _) => {
                write::row(record.cells(), &mut out);
            }
        }
    }
    Some((out, all))
}

#[test]
fn what_came_in_goes_out_cell_by_cell_and_a_second_time_to_the_byte() {
    let mut times = 0;
    for (name, text) in lists() {
        let Some((once, before)) = written(text.as_bytes()) else {
            continue;
        };
        let (twice, after) = written(once.as_bytes()).unwrap_or_else(|| panic!("{name}: {once}"));
        assert_eq!(once, twice, "{name}");
        let cells = |records: &[Record]| -> Vec<Vec<String>> {
            let cells = |record: &Record| record.cells().map(str::to_owned).collect();
            records.iter().map(cells).collect()
        };
        assert_eq!(cells(&before), cells(&after), "{name}");
        times += 1;
    }
    assert!(times > 40, "{times}");
}
