//! What was said once for many trees, and an earlier plan whose days stay.

use super::run;
use serde_json::Value;
use std::fs;
use std::path::{Path, PathBuf};

const HEADER: &str = "Tag,Unit,Species,DBH (in),Target,Target ft,Line within reach,Whole clone";
const ROWS: [&str; 8] = [
    "A1,Field,Norway maple,9,,,,",
    "A2,Field,Norway maple,8,unknown,,,",
    "A3,Field,Norway maple,7,,,yes,",
    "A4,Field,Norway maple,6,path,20,,",
    "A5,Field,Norway maple,30,,,,",
    "A6,Hedge,Norway maple,9,,,,",
    "A7,Field,Black locust,9,none,,no,",
    "A8,Field,Black locust,9,none,,no,no",
];

fn folder(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR"))
        .join("said")
        .join(name);
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).expect("a folder");
    folder
}

fn planned(folder: &Path, rows: &[&str], out: &str, more: &[&str]) -> (i32, String, Value) {
    let list = folder.join("trees.csv");
    fs::write(&list, [HEADER, "\n", &rows.join("\n"), "\n"].concat()).expect("a file");
    let (list, out) = (list.display().to_string(), folder.join(out));
    let to = out.display().to_string();
    let mut arguments = vec!["plan", &list, "--out", &to, "--region", "US-MA"];
    arguments.extend(["--place", "42.36,-71.50,120 m", "--today", "2027-04-01"]);
    arguments.extend(["--from", "2027-05-01", "--to", "2027-07-31", "--on", "sat"]);
    arguments.extend(more);
    let (code, printed, error) = run(&arguments, "");
    let plan = fs::read_to_string(out.join("plan.json")).unwrap_or_default();
    let plan = serde_json::from_str(&plan).unwrap_or_default();
    (code, printed + &error, plan)
}

fn reason<'a>(plan: &'a Value, tag: &str) -> &'a str {
    let trees = plan["trees"].as_array().expect("trees");
    let tree = trees.iter().find(|tree| tree["tree_id"] == tag).expect(tag);
    tree["reason"].as_str().expect("a reason")
}

/// What is said of a unit holds for rows that say nothing themselves, up to the distance, in that unit alone; it stands in
/// the plan with who said it and when, in each tree's row, and on the sheet.
#[test]
fn nothing_within_a_distance_is_said_once_for_a_unit() {
    let folder = folder("unit");
    let (_, printed, before) = planned(&folder, &ROWS, "before", &[]);
    assert_eq!(reason(&before, "A1"), "cannot_tell", "{printed}");
    assert!(
        printed.contains("Field (2): is any wire, path, road, building or boundary within "),
        "{printed}"
    );
    let more = ["--nothing-within", "Field=160 ft", "--said-by", "A. Alder"];
    let (code, printed, plan) = planned(&folder, &ROWS, "after", &more);
    assert_eq!(code, 0, "{printed}");
    for (tag, is) in [
        ("A1", "planned"),
        // The row says that nobody knows; a line; a path; higher than what was looked at; another unit.
        ("A2", "cannot_tell"),
        ("A3", "professional"),
        ("A4", "professional"),
        ("A5", "cannot_tell"),
        ("A6", "cannot_tell"),
    ] {
        assert_eq!(reason(&plan, tag), is, "{tag}: {printed}");
    }
    let unit = &plan["units"][0];
    assert_eq!(unit["unit"], "Field");
    assert!((unit["nothing_within_m"].as_f64().expect("metres") - 48.768).abs() < 1e-9);
    assert_eq!(
        (&unit["said_by"], &unit["said_on"]),
        (&"A. Alder".into(), &"2027-04-01".into())
    );
    let list = fs::read_to_string(folder.join("after/trees-plan.csv")).expect("the list");
    let row = list
        .lines()
        .find(|line| line.starts_with("A1,"))
        .expect("A1");
    assert!(
        row.contains(";unit_said") && row.contains("nothing within 48.8 m"),
        "{row}"
    );
    let sheets = fs::read_to_string(folder.join("after/crew-sheets.html")).expect("sheets");
    assert!(sheets.contains("Field, nothing within 160 ft: said by A. Alder"));
}

/// What a rule of a species leaves open is answered once; a row's own reply stands.
#[test]
fn what_a_species_leaves_open_is_said_once() {
    let folder = folder("species");
    let (_, printed, before) = planned(&folder, &ROWS, "before", &[]);
    assert_eq!(reason(&before, "A7"), "cannot_tell");
    let how = "--whole-clone \"Robinia pseudoacacia=yes\"";
    assert!(printed.contains(how), "{printed}");
    let own = reason(&before, "A8").to_owned();
    let more = ["--whole-clone", "Black locust=yes"];
    let (_, printed, plan) = planned(&folder, &ROWS, "after", &more);
    assert_ne!(reason(&plan, "A7"), "cannot_tell", "{printed}");
    assert!(!printed.contains("--whole-clone"), "{printed}");
    assert_eq!(reason(&plan, "A8"), own);
    let more = [
        "--whole-clone",
        "Black locust=yes",
        "--whole-clone",
        "Black locust@Field=no",
    ];
    let (_, _, plan) = planned(&folder, &ROWS, "unit", &more);
    assert_eq!(
        reason(&plan, "A7"),
        own,
        "what is said of a unit goes before"
    );
    for (more, says) in [
        (
            ["--nothing-within", "Feld=150 ft"],
            "No part of the list is called Feld. It has: Field, Hedge.",
        ),
        (
            ["--nothing-within", "Field"],
            "name a part of the property and a distance",
        ),
        (
            ["--nothing-within", "Field=9 miles"],
            "name a part of the property and a distance",
        ),
        (
            ["--whole-clone", "Black locust=maybe"],
            "name a species and yes or no",
        ),
        (
            ["--whole-clone", "Blak lokust=yes"],
            "name a species and yes or no",
        ),
        (["--keep", "Cargo.toml"], "is no plan.json"),
    ] {
        let (code, printed, _) = planned(&folder, &ROWS, "wrong", &more);
        assert!(
            code == 2 && printed.contains(says),
            "{more:?}: {code} {printed}"
        );
    }
}

/// An earlier plan's days stay; what changed in the list moves, and the plan says why.
#[test]
fn days_of_an_earlier_plan_stay() {
    let folder = folder("keep");
    let many: Vec<String> = (0..40)
        .map(|at| format!("B{at:02},Field,Norway maple,{},none,,no,", 5 + at % 20))
        .collect();
    let mut rows: Vec<&str> = many.iter().map(String::as_str).collect();
    let tight = ["--crew", "1", "--hours", "1.5"];
    let (_, printed, first) = planned(&folder, &rows, "first", &tight);
    let plan = folder.join("first/plan.json").display().to_string();
    let keep = [&tight[..], &["--keep", &plan]].concat();
    let (code, again, second) = planned(&folder, &rows, "second", &keep);
    assert_eq!(code, 0, "{again}");
    assert!(again.contains("keeps its day") || second["moved"] != serde_json::json!([]));
    let day = |plan: &Value, at: usize| plan["trees"][at]["day"].clone();
    let moved = (0..40)
        .filter(|at| day(&first, *at) != day(&second, *at))
        .count();
    assert_eq!(
        moved,
        second["moved"].as_array().expect("moved").len(),
        "{printed}"
    );
    assert_eq!(moved, 0, "nothing changed");

    // A stop that an edit brings in leaves the plan at once.
    let at = (0..40)
        .find(|at| !day(&first, *at).is_null())
        .expect("a planned tree");
    let stop = format!("B{at:02},Field,Norway maple,{},path,20,no,", 5 + at % 20);
    rows[at] = &stop;
    let (_, printed, third) = planned(&folder, &rows, "third", &keep);
    assert_eq!(reason(&third, &format!("B{at:02}")), "professional");
    let moved = third["moved"].as_array().expect("moved");
    assert!((1..=6).contains(&moved.len()), "{moved:?}");
    let of = moved
        .iter()
        .find(|it| it["tree_id"] == format!("B{at:02}"))
        .expect("it is told");
    assert_eq!(
        (&of["to"], &of["because"]),
        (&Value::Null, &"professional".into())
    );
    assert!(
        printed.contains("Moved against the earlier plan: "),
        "{printed}"
    );
}

/// A wire that nobody can read keeps its tree out of what was said of its part, and is told; nobody's name, number or
/// address goes out on a map, whatever its column is called.
#[test]
fn a_wire_stays_a_wire_and_people_stay_at_home() {
    let folder = folder("wires");
    let list = folder.join("trees.csv");
    let rows = "Tag,Unit,Species,DBH (in),Overhead wires here,Owner phone,Steward,done_by,Date done\n\
        B1,Field,Norway maple,9,,555-0100,ana@example.org,,\n\
        B2,Field,Norway maple,9,above,555-0101,,,\n\
        B3,Field,Norway maple,9,,555-0102,,Q. Quince,2026-06-12\n";
    fs::write(&list, rows).expect("a file");
    let (list, out) = (list.display().to_string(), folder.join("out"));
    let to = out.display().to_string();
    let mut arguments = vec!["plan", &list, "--out", &to, "--region", "US-MA"];
    arguments.extend(["--place", "42.36,-71.50,120 m", "--today", "2027-04-01"]);
    arguments.extend(["--from", "2027-05-01", "--to", "2027-07-31", "--on", "sat"]);
    arguments.extend(["--nothing-within", "Field=200 ft", "--said-by", "A. Alder"]);
    let (code, printed, error) = run(&arguments, "");
    assert_eq!(code, 0, "{error}");
    let plan = fs::read_to_string(out.join("plan.json")).expect("a plan");
    let plan = serde_json::from_str(&plan).expect("JSON");
    for (tag, is) in [("B1", "planned"), ("B2", "cannot_tell"), ("B3", "done")] {
        assert_eq!(reason(&plan, tag), is, "{tag}");
    }
    assert!(
        printed.contains("1 tree was ringed or treated before."),
        "{printed}"
    );
    assert!(error.contains("3,E,check,not_yes_or_no,"), "{error}");
    for file in [
        "trees.geojson",
        "crew-sheets.html",
        "cover.html",
        "season.ics",
    ] {
        let text = fs::read_to_string(out.join(file)).expect(file);
        for people in ["555-01", "example.org", "Quince"] {
            assert!(!text.contains(people), "{file}: {people}");
        }
    }
}

#[test]
fn a_season_that_has_passed_is_told() {
    let says = |today: &str| {
        let out = Path::new(env!("CARGO_TARGET_TMPDIR")).join("passed");
        let out = out.display().to_string();
        let mut words = vec!["plan", "content/sample/trees.csv", "--out", &out];
        words.extend(["--region", "US-MA", "--on", "sat", "--today", today]);
        words.extend(["--from", "2027-05-01", "--to", "2027-06-30"]);
        let (code, printed, error) = run(&words, "");
        assert_eq!(code, 0, "{error}");
        printed
    };
    // Of nine Saturdays, five lie before 5 June; that day itself is still to come.
    assert!(!says("2027-04-01").contains("before today"));
    assert!(says("2027-06-05").contains("before today, 2027-06-05: 5 of 9."));
    assert!(says("2028-05-01").contains("before today, 2028-05-01: 9 of 9."));
}
