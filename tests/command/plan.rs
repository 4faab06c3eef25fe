//! `plan` on an invented list: what its files say is added up again from the files alone.

use super::plan_of_sample::{bound_again, json, list, number, text};
use super::run;
use icalendar::Component as _;
use serde_json::Value;
use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

const SPECIES: [&str; 8] = [
    "Norway maple",
    "Tree-of-heaven",
    "Black locust",
    "Callery pear",
    "Siberian elm",
    "White mulberry",
    "Scots pine",
    "Sweet cherry",
];

/// An invented list of trees in three units; rows that are wrong, blank and no trees in between.
fn invented(trees: usize) -> Vec<String> {
    let mut state = 20_270_612_u64;
    let mut draw = move |below: u64| {
        // Knuth's MMIX constants; any will do.
        state = state
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        (state >> 33) % below
    };
    let mut rows = Vec::new();
    for at in 0..trees {
        let (unit, position) = [
            ("North hedge", "outlying"),
            ("Creek edge", "edge"),
            ("Oak wood", "inside"),
        ][draw(3) as usize];
        let species = SPECIES[draw(8) as usize];
        let half_inches = 6 + draw(40);
        let target = match draw(10) {
            0..7 => "none,",
            7 => "path,60",
            8 => "building,40",
            _ => ",",
        };
        let priority = [1, 1, 2, 4][draw(4) as usize];
        let pin = if at == 5 {
            "2027-06-05"
        } else if at == 6 {
            "2027-06-06"
        } else {
            ""
        };
        let status = if at == 9 {
            "treated"
        } else if at == 10 {
            "skip"
        } else {
            ""
        };
        let size = if at == 12 {
            "fourteen".to_owned()
        } else {
            format!("{}", half_inches as f64 / 2.0)
        };
        rows.push(format!(
            "T{at:03},{unit},{position},{species},{size},{target},{priority},{pin},{status},\"=note, {at}\""
        ));
    }
    rows
}

const HEADER: &str =
    "Tag,Unit,Position,Species,DBH (in),Target,Target ft,Priority,Date,Status,Remarks";

fn folder(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR"))
        .join("plans")
        .join(name);
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).expect("a folder");
    folder
}

/// Writes a list, plans it, and gives what was printed and the folder.
fn planned(name: &str, rows: &[String], more: &[&str]) -> (i32, String, PathBuf) {
    let folder = folder(name);
    let list = folder.join("trees.csv");
    fs::write(&list, [HEADER, "\n", &rows.join("\n"), "\n"].concat()).expect("a file");
    let (list, out) = (
        list.display().to_string(),
        folder.join("out").display().to_string(),
    );
    let mut arguments = vec!["plan", &list, "--out", &out];
    arguments.extend([
        "--place",
        "42.36,-71.50,120 m",
        "--region",
        "US-MA",
        "--today",
        "2027-04-01",
    ]);
    arguments.extend(["--from", "2027-05-01", "--to", "2027-07-31"]);
    arguments.extend(more);
    let (code, printed, error) = run(&arguments, "");
    (code, printed + &error, folder)
}

const TIGHT: [&str; 8] = [
    "--on", "sat", "--crew", "2", "--teams", "2", "--hours", "1.25",
];

/// Hours that bind, and a limit on what goes in a year that binds.
#[test]
fn the_parts_of_a_plan_add_up_from_its_file_alone() {
    for (name, share, short_of) in [("hours", "100%", "no_hours"), ("pacing", "60%", "pacing")] {
        let mut more = TIGHT.to_vec();
        // A quarter of an hour a day for each of the two.
        more[7] = "1";
        more.extend(["--whole", "--share", share]);
        let (code, printed, folder) = planned(name, &invented(120), &more);
        assert_eq!(code, 0, "{printed}");
        adds_up(
            &json(&folder.join("out")),
            &["planned", "done", "skipped", short_of],
        );
    }
}

/// Adds a plan up again from its file; it has trees under each of `shown`.
fn adds_up(plan: &Value, shown: &[&str]) {
    let count = |name: &str| plan["counts"][name].as_u64().expect("a count");
    assert_eq!(
        count("rows"),
        count("trees") + count("blank") + count("not_trees")
    );
    assert_eq!(count("trees"), count("ready") + count("to_fix"));
    let reasons = [
        "planned",
        "no_hours",
        "no_day",
        "pacing",
        "other_method",
        "leave_it",
        "professional",
        "cannot_tell",
        "dead",
        "done",
        "skipped",
    ];
    assert_eq!(count("ready"), reasons.map(count).iter().sum::<u64>());
    for reason in reasons {
        let trees = list(&plan["trees"])
            .iter()
            .filter(|tree| tree["reason"] == reason);
        assert_eq!(trees.count() as u64, count(reason), "{reason}");
    }
    for reason in shown {
        assert!(count(reason) > 0, "the list shows {reason}");
    }

    let classes: BTreeMap<&str, &Value> = list(&plan["classes"])
        .iter()
        .map(|class| (text(&class["id"]), &class["p"]))
        .collect();
    let mut used: BTreeMap<&str, (f64, f64)> = BTreeMap::new();
    let mut by_team: BTreeMap<(&str, u64), f64> = BTreeMap::new();
    let mut area: BTreeMap<&str, f64> = BTreeMap::new();
    let mut value = 0.0;
    let team = |of: &Value| of["team"].as_u64().expect("a crew");
    for tree in list(&plan["trees"])
        .iter()
        .filter(|tree| tree["reason"] == "planned")
    {
        let (day, p) = (text(&tree["day"]), number(&tree["p"]));
        assert_eq!(classes[text(&tree["class"])][day], p, "{tree}");
        let [slip, tight, walk] = [0, 1, 2].map(|at| number(&tree["work"][at]));
        let minutes = p * slip + (1.0 - p) * tight + walk;
        assert!((minutes - number(&tree["minutes"])).abs() < 1e-9);
        value += number(&tree["value"]) * p;
        used.entry(day).or_default().0 += minutes;
        *by_team.entry((day, team(tree))).or_default() += minutes;
        *area.entry(text(&tree["unit"])).or_default() += number(&tree["basal_m2"]);
        for visit in list(&tree["visits"]) {
            let Some(day) = visit["day"].as_str() else {
                assert_eq!(visit["reason"], "needs_day");
                let suggested = text(&visit["suggest"]);
                assert!((text(&visit["from"])..=text(&visit["to"])).contains(&suggested));
                continue;
            };
            assert!(
                (text(&visit["from"])..=text(&visit["to"])).contains(&day),
                "{visit}"
            );
            used.entry(day).or_default().1 += number(&visit["minutes"]);
            *by_team.entry((day, team(visit))).or_default() += number(&visit["minutes"]);
        }
    }
    for day in list(&plan["work_days"]) {
        let (rings, visits) = used.remove(text(&day["day"])).unwrap_or_default();
        assert!((rings - number(&day["rings"])).abs() < 1e-6, "{day}");
        assert!((visits - number(&day["visits"])).abs() < 1e-6, "{day}");
        assert!(
            number(&day["used"]) <= number(&day["minutes"]) + 1e-6,
            "{day}"
        );
        assert_eq!(
            number(&day["minutes"]),
            2.0 * number(&plan["crew"]["hours"]) * 60.0
        );
        for (at, minutes) in list(&day["by_team"]).iter().enumerate() {
            let summed = by_team
                .remove(&(text(&day["day"]), at as u64 + 1))
                .unwrap_or(0.0);
            assert!((summed - number(minutes)).abs() < 1e-6, "{day}");
        }
    }
    assert!(
        used.is_empty() && by_team.is_empty(),
        "no work off the work days"
    );
    for unit in list(&plan["units"]) {
        let (used, limit) = (
            area[text(&unit["unit"])],
            number(&unit["years"][0]["limit_m2"]),
        );
        assert!(used <= limit + 1e-9 && (used - number(&unit["years"][0]["used_m2"])).abs() < 1e-9);
    }
    let bound = bound_again(plan);
    assert!((value - number(&plan["objective"]["value"])).abs() < 1e-9 && value <= bound);
    for bind in list(&plan["binds"]) {
        assert_eq!(bind["solved"], true);
    }
    assert!(!list(&plan["binds"]).is_empty(), "something binds");
}

/// A chosen day is kept; one that is no work day is none; nothing is planned on a closed day, for a stop or what is done.
#[test]
fn chosen_and_closed_days_are_kept() {
    let mut more = TIGHT.to_vec();
    more.extend(["--closed", "2027-06-12,2027-06-19"]);
    let (_, printed, folder) = planned("days", &invented(120), &more);
    let plan = json(&folder.join("out"));
    let day = |id: &str| {
        let trees = list(&plan["trees"]);
        let tree = trees.iter().find(|tree| tree["tree_id"] == id);
        tree.unwrap_or_else(|| panic!("{id}: {printed}"))["day"].clone()
    };
    assert!(day("T005") == "2027-06-05" || day("T005").is_null());
    assert!(day("T006").is_null(), "a Sunday is no work day");
    assert!(
        printed.contains("Days that you chose and that can't be") && printed.contains("T006"),
        "{printed}"
    );
    for tree in list(&plan["trees"]) {
        if let Some(day) = tree["day"].as_str() {
            assert!(!["2027-06-12", "2027-06-19"].contains(&day));
            assert_eq!(
                (&tree["method"], &tree["reason"]),
                (&"bark_ring".into(), &"planned".into())
            );
            assert!(tree["outcome"] != "professional" && tree["outcome"] != "cannot_tell");
        }
    }
}

#[test]
fn the_same_list_gives_the_same_bytes_and_shuffled_rows_the_same_plan() {
    let rows = invented(80);
    let (_, _, first) = planned("same-1", &rows, &TIGHT);
    let (_, _, second) = planned("same-2", &rows, &TIGHT);
    for file in [
        "plan.json",
        "trees-plan.csv",
        "trees-to-fix.csv",
        "season.ics",
    ] {
        let read = |folder: &Path| fs::read(folder.join("out").join(file)).expect(file);
        assert_eq!(read(&first), read(&second), "{file}");
    }
    let mut turned = rows;
    turned.reverse();
    turned.rotate_left(17);
    let (_, _, third) = planned("same-3", &turned, &TIGHT);
    let days = |folder: &Path| -> BTreeMap<String, Value> {
        let plan = json(&folder.join("out"));
        let trees = list(&plan["trees"]).iter();
        trees
            .map(|tree| (text(&tree["tree_id"]).to_owned(), tree["day"].clone()))
            .collect()
    };
    assert_eq!(days(&first), days(&third));
}

/// Every cell that came in goes out again, and the list with its plan can be planned again: its own columns are dropped.
#[test]
fn the_list_comes_back_with_its_plan_and_can_be_read_again() {
    let rows = invented(40);
    let (_, _, folder) = planned("back", &rows, &TIGHT);
    let out = fs::read_to_string(folder.join("out/trees-plan.csv")).expect("the list");
    let out = out.strip_prefix('\u{feff}').expect("a mark of order");
    let plan = json(&folder.join("out"));
    let mut lines = out.split("\r\n");
    let header: Vec<&str> = lines.next().expect("a header").split(',').collect();
    assert!(header.join(",").starts_with(HEADER));
    let column = |name: &str| header.iter().position(|it| *it == name).expect(name);
    for (row, line) in rows.iter().zip(lines) {
        assert!(line.starts_with(row.as_str()), "{row}\n{line}");
        let id = &row[..4];
        let tree = list(&plan["trees"])
            .iter()
            .find(|tree| tree["tree_id"] == id);
        // The remark has a comma in it, and so may messages have: cells in front of them are counted from the left.
        let cells: Vec<&str> = line.split(',').collect();
        let on = cells[column("plan_do_on") + 1];
        assert_eq!(
            on,
            tree.map_or("", |tree| tree["day"].as_str().unwrap_or("")),
            "{line}"
        );
    }
    let fix = fs::read_to_string(folder.join("out/trees-to-fix.csv")).expect("rows to fix");
    assert_eq!(
        fix.matches("\r\n").count(),
        2,
        "the header and one row: {fix}"
    );
    assert!(fix.contains("fourteen") && fix.contains("problem_1"));
    let again = folder.join("out/trees-plan.csv").display().to_string();
    let (code, printed, error) = run(
        &[
            "plan",
            &again,
            "--out",
            &folder.join("again").display().to_string(),
            "--place",
            "42.36,-71.50,120 m",
            "--region",
            "US-MA",
            "--today",
            "2027-04-01",
            "--from",
            "2027-05-01",
            "--to",
            "2027-07-31",
            "--on",
            "sat",
            "--crew",
            "2",
            "--teams",
            "2",
            "--hours",
            "1.25",
        ],
        "",
    );
    assert_eq!(code, 0, "{printed}{error}");
    let twice = fs::read_to_string(folder.join("again/trees-plan.csv")).expect("the list");
    assert_eq!(twice.strip_prefix('\u{feff}'), Some(out));
}

#[test]
fn bad_options_are_told_in_words_with_code_2_and_no_day_with_code_1() {
    for (more, says) in [
        (
            vec!["--on", "sat", "--crew", "0"],
            "--crew 0: give a number from 1 to 500",
        ),
        (
            vec!["--on", "sat", "--hours", "0"],
            "--hours 0: give a number from 0.5 to 16",
        ),
        (
            vec!["--on", "sat", "--slip", "0.3"],
            "--slip 0.3: give a number from 0.4 to 0.95",
        ),
        (vec!["--on", "sat", "--share", "0%"], "--share"),
        (
            vec!["--on", "someday"],
            "--on someday: type days of the week",
        ),
        (
            vec!["--days", "2027-02-30"],
            "--days 2027-02-30: type days such as 2027-06-12",
        ),
        (vec![], "No work day is left"),
        (
            vec!["--on", "sat", "--to", "2026-01-01"],
            "--to <DAY> stands twice",
        ),
    ] {
        let (code, printed, _) = planned("bad", &invented(3), &more);
        assert_eq!(code, 2, "{more:?}: {printed}");
        assert!(printed.contains(says), "{more:?}: {printed}");
    }
    let (code, printed, folder) = planned("winter", &invented(30), &["--days", "2027-05-02"]);
    let plan = json(&folder.join("out"));
    if plan["counts"]["planned"] == 0 {
        assert_eq!(code, 1, "{printed}");
        assert!(printed.contains(
            "No tree can be ringed on these days. Days on which most of them could be: 2027-"
        ));
    }
    let (code, printed, _) = planned("spanish", &invented(30), &["--on", "sat", "--lang", "es"]);
    assert_eq!(code, 0);
    assert!(
        printed.contains("se pueden anillar esta temporada") && !printed.contains("Another method"),
        "{printed}"
    );
}

/// The calendar read back by another library: a day of work is an event with as many trees as the plan has on it, later
/// years are tentative, no name stands twice, and a second run gives the same names.
#[test]
fn the_calendar_holds_each_work_day_once() {
    let (_, printed, folder) = planned("calendar", &invented(120), &TIGHT);
    let text = fs::read_to_string(folder.join("out/season.ics")).expect(&printed);
    assert!(
        text.split("\r\n").all(|line| line.len() <= 75),
        "RFC 5545, 3.1"
    );
    let calendar: icalendar::Calendar = text.parse().expect("a calendar");
    let plan = json(&folder.join("out"));
    let mut names = Vec::new();
    let mut rings: BTreeMap<(String, String), u64> = BTreeMap::new();
    for tree in list(&plan["trees"]) {
        if let Some(day) = tree["day"].as_str() {
            let team = tree["team"].to_string();
            *rings.entry((day.replace('-', ""), team)).or_default() += 1;
        }
    }
    let mut seen = 0;
    for event in calendar.components.iter().filter_map(|it| it.as_event()) {
        names.push(event.get_uid().expect("a name").to_owned());
        let (summary, start) = (event.get_summary().expect("a summary"), event.get_start());
        let Some(icalendar::DatePerhapsTime::Date(day)) = start else {
            panic!("{summary}: no day");
        };
        if let Some(rest) = summary.strip_prefix("Ring ") {
            let trees: u64 = rest
                .split(' ')
                .next()
                .and_then(|it| it.parse().ok())
                .expect(summary);
            let of_day = rings
                .iter()
                .filter(|((on, _), _)| *on == day.format("%Y%m%d").to_string());
            assert!(
                of_day.map(|(_, trees)| trees).any(|it| *it == trees),
                "{summary}"
            );
            assert!(day.format("%Y").to_string() == "2027" && event.get_status().is_none());
            seen += trees;
        }
    }
    assert_eq!(
        seen,
        rings.values().sum::<u64>(),
        "every ring stands in it once"
    );
    let count = names.len();
    names.sort();
    names.dedup();
    assert!(count == names.len() && count > 3);
}
