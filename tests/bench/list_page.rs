//! How long the page for lists works on a list, natively: `cargo bench -p tests --bench list_page`. The module's own
//! session is driven as the worker drives it, in slices. It prints milliseconds of processor time of each step and the
//! longest slice, and holds what is the same on any machine: ten times the rows take no more than some times as long.
//! Three lists: mixed ones of each length, then, of the longest, one whose trees may nearly all be ringed, with hours
//! enough and with hours that bind. A number asks for lists of that length alone.

#[path = "processor.rs"]
mod processor;

use serde_json::{Value, json};
use std::fmt::Write as _;
use www_list::calls::List;

/// What a slice may take, milliseconds, and how many rows at least and at most: as in the worker.
const SLICE: f64 = 20.0;
const ROWS: (f64, f64) = (10.0, 20_000.0);
/// Rows of the first slice of any work, and how many times those of the slice before another may have.
const FIRST: f64 = 50.0;
const MORE: f64 = 4.0;
/// Ten times the rows take no more than so many times as long.
const TIMES: f64 = 12.0;

/// What trees a list has, and how many people come for them.
#[derive(Clone, Copy, PartialEq)]
enum Kind {
    /// Trees of which two in five may be ringed, and people for all of them.
    Mixed,
    /// Trees that may nearly all be ringed, and people for most of them.
    NearlyAll,
    /// The same trees, and people for a tenth of them.
    HoursBind,
}

impl Kind {
    fn name(self) -> &'static str {
        match self {
            Self::Mixed => "mixed",
            Self::NearlyAll => "nearly all may be ringed",
            Self::HoursBind => "nearly all may be ringed, hours bind",
        }
    }

    fn people(self) -> &'static str {
        match self {
            Self::NearlyAll => "500",
            _ => "40",
        }
    }
}

/// An invented list, no two rows alike, the place of a row in a hundred like another's; of a mixed one two targets in five
/// say nothing, of the others one in fifty.
fn list(rows: usize, kind: Kind) -> String {
    const MIXED: [&str; 6] = [
        "Norway maple",
        "Siberian elm",
        "Pyrus calleryana",
        "Black locust",
        "boxelder",
        "White mulberry",
    ];
    const RINGED: [&str; 6] = [
        "Norway maple",
        "Siberian elm",
        "boxelder",
        "White mulberry",
        "European larch",
        "Scots pine",
    ];
    let trees = match kind {
        Kind::Mixed => MIXED,
        Kind::NearlyAll | Kind::HoursBind => RINGED,
    };
    let mut text = String::from("Tag,Species,DBH (in),Latitude,Longitude,Target,Unit,Photo\n");
    for row in 0..rows {
        let size = 4.0 + (row * 7919 % rows) as f64 * 12.0 / rows as f64;
        let target = match kind {
            Kind::Mixed => ["none", "none", "path 180 ft", "none", ""][row % 5],
            _ if row % 50 == 49 => "",
            _ => "none",
        };
        let _ = writeln!(
            text,
            "T{row},{},{size:.4},{:.3},-71.5,{target},Unit {},p{row}.jpg",
            trees[row % trees.len()],
            42.0 + (row % 100) as f64 / 100.0,
            row % 7
        );
    }
    text
}

/// Milliseconds of processor time.
fn now() -> f64 {
    processor::micros() / 1e3
}

/// Name, milliseconds and longest slice of each step.
type Steps = Vec<(String, f64, f64)>;

/// Works until all is done, as the worker does.
fn work(list: &mut List, steps: &mut Steps) -> Value {
    let mut rows = FIRST;
    loop {
        let begin = now();
        let told: Value = serde_json::from_str(&list.step(rows as usize)).expect("JSON");
        let took = now() - begin;
        let what = told["what"].as_str().unwrap_or_default();
        let name = if what.is_empty() { "end" } else { what };
        match steps.last_mut().filter(|it| it.0 == name) {
            Some(step) => {
                step.1 += took;
                step.2 = step.2.max(took);
            }
            None => steps.push((name.to_owned(), took, took)),
        }
        if told["more"] != true {
            return told;
        }
        let fit = (rows * SLICE / took.max(1.0)).min(rows * MORE);
        rows = match told["anew"] == true {
            true => FIRST,
            false => fit.clamp(ROWS.0, ROWS.1).round(),
        };
    }
}

fn once(steps: &mut Steps, name: &str, run: impl FnOnce()) {
    let begin = now();
    run();
    let took = now() - begin;
    steps.push((name.to_owned(), took, took));
}

fn measure(rows: usize, kind: Kind) -> Steps {
    let mut page = List::new("en", "2027-05-01", "us", calc_data::places::CLIMATE);
    let mut steps = Vec::new();
    let text = list(rows, kind).into_bytes();
    once(&mut steps, "open", || assert!(page.open("long.csv", text)));
    work(&mut page, &mut steps);
    let entries = |days: &str| {
        json!([
            ["people", kind.people()],
            ["hours", "6"],
            ["more-days", days],
            ["place", "42.36,-71.5"],
            ["region", "US-MA"]
        ])
    };
    let days = "2027-05-08,2027-05-15,2027-05-22,2027-05-29,2027-06-05,2027-06-12";
    let plan = json!({ "do": "plan", "entries": entries(days) }).to_string();
    once(&mut steps, "ask for a plan", || page.act(&plan));
    let told = work(&mut page, &mut steps);
    assert!(
        told["said"]
            .as_str()
            .is_some_and(|it| it.contains("can be ringed")),
        "{}",
        told["said"]
    );
    println!("{}", told["said"]);
    for name in calc_view::plan::made::FILES {
        // Told in slices, as the worker asks for it, then handed out as a whole.
        assert!(page.want(name), "{name}");
        let mut slices = Steps::new();
        work(&mut page, &mut slices);
        let (took, longest) = slices
            .iter()
            .fold((0.0, 0.0_f64), |sum, it| (sum.0 + it.1, sum.1.max(it.2)));
        steps.push((format!("{name}, told"), took, longest));
        let mut bytes = 0;
        once(&mut steps, name, || bytes = page.file(name).len());
        println!("{name}: {bytes} bytes");
    }
    once(&mut steps, "a table", || drop(page.page("planned", 0)));
    let more = json!({ "do": "more", "data": { "people": "2" } }).to_string();
    once(&mut steps, "ask for two more people", || page.act(&more));
    work(&mut page, &mut steps);
    steps
}

fn main() {
    assert!(calc_data::whole().species.len() > 10);
    let wanted = std::env::args().find_map(|it| it.parse().ok());
    let lists: Vec<(usize, Kind)> = match wanted {
        Some(rows) => vec![
            (rows, Kind::Mixed),
            (rows, Kind::NearlyAll),
            (rows, Kind::HoursBind),
        ],
        None => vec![
            (300, Kind::Mixed),
            (2_000, Kind::Mixed),
            (20_000, Kind::Mixed),
            (20_000, Kind::NearlyAll),
            (20_000, Kind::HoursBind),
        ],
    };
    let mut all = Vec::new();
    for (rows, kind) in lists {
        println!("{rows} rows, {}: ms, longest slice", kind.name());
        let steps = measure(rows, kind);
        for (name, took, longest) in &steps {
            println!("  {name:<40} {took:>9.1} {longest:>9.1}");
        }
        let total: f64 = steps.iter().map(|it| it.1).sum();
        println!("  {:<40} {total:>9.1}", "all");
        if kind == Kind::Mixed {
            all.push((rows, total));
        }
    }
    for pair in all.windows(2) {
        let ratio = pair[1].1 / pair[0].1;
        let rows = pair[1].0 as f64 / pair[0].0 as f64;
        println!("{rows:.1} times the rows: {ratio:.1} times as long");
        assert!(
            pair[0].0 < 2_000 || ratio < rows / 10.0 * TIMES,
            "{ratio:.1}"
        );
    }
}
