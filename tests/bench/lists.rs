//! How long a list takes, natively: `cargo bench -p tests --bench lists`. It prints microseconds a row of each step, rows
//! a second of one core, and holds the one thing that is the same on any machine: ten times the rows take no more than
//! eleven times as long.

use calc_list::reader::{Item, Reader};
use calc_list::{Answers, Decisions, Is, Line, ListContext, Record, open};
use rand::rngs::StdRng;
use rand::{Rng as _, SeedableRng as _};
use std::fmt::Write as _;
use std::hint::black_box;

#[path = "processor.rs"]
mod processor;

const SEED: u64 = 20_270_612;

/// Trees of the invented list, the commonest first.
const TREES: [&str; 11] = [
    "Norway maple",
    "Ailanthus altissima",
    "Black locust",
    "Pyrus calleryana 'Bradford'",
    "Ulmus pumila L.",
    "boxelder",
    "Rhamnus cathartica",
    "White mulberry",
    "Pinus sylvestris",
    "European larch",
    "sweet cherry",
];

/// An invented list. `different`: no two rows ask the same; else one in so many sizes, as real lists repeat.
fn list(rows: usize, different: bool) -> String {
    let mut random = StdRng::seed_from_u64(SEED);
    let mut text = String::from(
        "Tag,Species,DBH (in),Height (ft),Latitude,Longitude,Target,Line within reach,Unit,Surveyed by,Notes\n",
    );
    for row in 0..rows {
        let tree = TREES[random
            .random_range(0..TREES.len())
            .min(random.random_range(0..TREES.len()))];
        let size = if different {
            format!("{:.3}", 2.0 + row as f64 * 0.0015)
        } else {
            format!("{}", f64::from(random.random_range(3..60)) / 2.0)
        };
        let target =
            ["none", "none", "path 180 ft", "building 40 ft", ""][random.random_range(0..5)];
        let height = if different {
            format!("{}", 25 + row % 60)
        } else {
            String::new()
        };
        let (lat, lon) = (
            42.36 + f64::from(random.random_range(0..900)) * 1e-5,
            -71.5 - f64::from(random.random_range(0..900)) * 1e-5,
        );
        let _ = writeln!(
            text,
            "{row},{tree},{size},{height},{lat:.5},{lon:.5},{target},no,Unit {},A. Person,\"by the wall, left\"",
            row % 7
        );
    }
    text
}

fn micros(begin: f64) -> f64 {
    processor::micros() - begin
}

/// Microseconds of each step for all rows: cut, judged, read, answered, written.
fn measure(text: &str) -> ([f64; 5], u64) {
    let reference = calc_data::whole();
    let options = ListContext {
        region: Some("US-MA".into()),
        today: "2027-05-01".into(),
        ..ListContext::default()
    };
    let decisions = Decisions::default();
    let mut steps = [0.0; 5];
    let begin = processor::micros();
    let (bytes, encoding) = calc_list::reader::as_text(text.as_bytes()).expect("a text");
    let cut = calc_list::reader::Cut::of(&bytes, encoding, &decisions).expect("a list");
    let mut records = cut.records(&*bytes, 1).expect("bytes");
    let (mut first, mut record) = (Vec::new(), Record::default());
    while records.next(&mut record).expect("bytes").0 {
        first.push(record.clone());
    }
    steps[0] = micros(begin);
    let begin = processor::micros();
    let mut opened = open(reference, first, &options, &decisions).expect("a list");
    assert!(opened.asks.is_empty());
    steps[1] = micros(begin);
    let begin = processor::micros();
    let mut rows = Vec::new();
    let mut reader = Reader::new(cut.records(&*bytes, 1).expect("bytes"), &mut opened);
    while let Some(item) = reader.read_next().expect("bytes") {
        if let Item::Row(_, row) = item {
            rows.push(row);
        }
    }
    steps[2] = micros(begin);
    let begin = processor::micros();
    let mut answers = Answers::new(reference, calc_data::places::places(), None);
    let mut lines = Vec::new();
    for row in &rows {
        if let Is::Tree(typed, question) = &row.is {
            lines.push(answers.of(typed, question, |question, _, answer| {
                Line::of(question, answer)
            }));
        }
    }
    steps[3] = micros(begin);
    assert_eq!(lines.len(), rows.len());
    let begin = processor::micros();
    let mut out = String::new();
    for line in &lines {
        out.clear();
        out.push_str(&serde_json::to_string(&**line).expect("a line"));
        black_box(&out);
    }
    steps[4] = micros(begin);
    (steps, answers.asked())
}

fn main() {
    println!(
        "{:<34} {:>6} {:>7} {:>6} {:>9} {:>6} {:>10} {:>9}",
        "us a row", "cut", "judged", "read", "answered", "lines", "rows/s", "answers"
    );
    let mut totals = Vec::new();
    for (name, rows, different) in [
        ("2,000 rows that repeat", 2_000, false),
        ("20,000 rows that repeat", 20_000, false),
        ("2,000 rows, all different", 2_000, true),
        ("20,000 rows, all different", 20_000, true),
    ] {
        let text = list(rows, different);
        let ((steps, asked), total) = (0..3)
            .map(|_| {
                let measured = measure(&text);
                let total: f64 = measured.0.iter().sum();
                (measured, total)
            })
            .min_by(|a, b| a.1.total_cmp(&b.1))
            .expect("three rounds");
        let each = steps.map(|step| step / rows as f64);
        println!(
            "{name:<34} {:>6.1} {:>7.1} {:>6.1} {:>9.1} {:>6.1} {:>10.0} {asked:>9}",
            each[0],
            each[1],
            each[2],
            each[3],
            each[4],
            rows as f64 / total * 1e6
        );
        totals.push(total);
    }
    for pair in totals.chunks(2) {
        let ratio = pair[1] / pair[0];
        println!("ten times the rows: {ratio:.1} times as long");
        assert!(ratio < 11.0 || pair[0] < 20_000.0, "{ratio:.1}");
    }
}
