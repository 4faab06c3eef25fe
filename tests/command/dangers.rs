//! Six invented lists with dangers in odd places, planned after everything was said to be clear: what a careful reader would
//! keep out stays out. Their last column says which rows may be planned, and which only with their note on the crew sheet.

use super::run;
use std::fs;
use std::path::{Path, PathBuf};

/// The lists, the part of the property that each is of, and how its sizes are read.
const LISTS: [(&str, &str, &str); 6] = [
    ("two_targets", "Old field", "us"),
    ("parcela", "Loma", "metric"),
    ("baumliste", "Hang", "metric"),
    ("steep", "Ravine", "us"),
    ("mixed_units", "Meadow", "us"),
    ("volunteers", "Back lot", "us"),
];

fn lists() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("lists/dangers")
}

/// Plans a list; the folder of its files, and what was printed.
fn planned(name: &str, unit: &str, units: &str) -> (PathBuf, String) {
    let out = Path::new(env!("CARGO_TARGET_TMPDIR"))
        .join("dangers")
        .join(name);
    let _ = fs::remove_dir_all(&out);
    let list = lists().join(name).with_extension("csv");
    let decisions = list.with_extension("json");
    let (list, to) = (list.display().to_string(), out.display().to_string());
    let said = format!("{unit}=600 ft");
    let columns = decisions.display().to_string();
    let mut arguments = vec!["plan", &list, "--out", &to, "--region", "US-MA"];
    arguments.extend(["--place", "42.36,-71.50,120 m", "--today", "2027-04-01"]);
    arguments.extend(["--from", "2027-05-01", "--to", "2027-07-31", "--on", "sat"]);
    arguments.extend(["--crew", "8", "--hours", "8", "--units", units]);
    arguments.extend(["--nothing-within", &said]);
    if decisions.exists() {
        arguments.extend(["--columns", &columns]);
    }
    let (_, printed, error) = run(&arguments, "");
    (out, printed + &error)
}

#[test]
fn a_row_with_a_danger_in_an_odd_place_is_not_planned() {
    for (name, unit, units) in LISTS {
        let (out, printed) = planned(name, unit, units);
        let table = fs::read_to_string(out.join("trees-plan.csv"))
            .unwrap_or_else(|error| panic!("{name}: {error}: {printed}"));
        let sheets = fs::read_to_string(out.join("crew-sheets.html")).expect("sheets");
        let mut rows = csv::Reader::from_reader(table.trim_start_matches('\u{feff}').as_bytes());
        let header = rows.headers().expect("a header").clone();
        let at = |name: &str| header.iter().position(|it| it == name).expect("a column");
        let (may, reason) = (at("may_be_planned"), at("plan_reason"));
        for (row, record) in rows.records().enumerate() {
            let record = record.expect("a row");
            let is_planned = &record[reason] == "planned";
            assert_eq!(
                is_planned,
                &record[may] != "no",
                "{name}, row {}: {record:?}",
                row + 2
            );
            if &record[may] == "told" {
                // The tag with its text, as the sheet prints them.
                let told = format!("{}: “", &record[0]);
                assert!(sheets.contains(&told), "{name}, row {}", row + 2);
            }
        }
    }
}
