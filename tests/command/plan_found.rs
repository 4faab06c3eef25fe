//! `plan --found`: what was found at visits of the sample's trees, and how the next season's plan moves on by it.

use super::plan_of_sample::{bound_again, json, list, plan_of_sample, planned_sample};
use serde_json::Value;
use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

fn tree<'a>(plan: &'a Value, tag: &str) -> &'a Value {
    let mut trees = list(&plan["trees"]).iter();
    trees
        .find(|tree| tree["tree_id"] == tag)
        .unwrap_or_else(|| panic!("{tag}"))
}

/// Writes the rows under a header into a file.
fn file(name: &str, rows: &[String]) -> String {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("found");
    fs::create_dir_all(&folder).expect("a folder");
    let path = folder.join(name);
    let header = "tree_id,visited_on,found,minutes,people,ringed_on,ring_width,note";
    fs::write(&path, format!("{header}\n{}\n", rows.join("\n"))).expect("a file");
    path.display().to_string()
}

/// The register, by tag.
fn register(folder: &Path) -> BTreeMap<String, BTreeMap<String, String>> {
    let text = fs::read_to_string(folder.join("standing.csv")).expect("a register");
    let mut reader = csv::Reader::from_reader(text.trim_start_matches('\u{feff}').as_bytes());
    let rows = reader.deserialize::<BTreeMap<String, String>>();
    rows.map(|row| row.expect("a row"))
        .map(|row| (row["tree_id"].clone(), row))
        .collect()
}

/// Tags and days of trees of a species that the first season plans.
fn of_species(plan: &Value, species: &str) -> Vec<(String, String)> {
    let classes: Vec<&str> = list(&plan["classes"])
        .iter()
        .filter(|class| class["species"] == species)
        .map(|class| class["id"].as_str().expect("an id"))
        .collect();
    list(&plan["trees"])
        .iter()
        .filter(|tree| tree["reason"] == "planned")
        .filter(|tree| {
            tree["class"]
                .as_str()
                .is_some_and(|id| classes.contains(&id))
        })
        .map(|tree| {
            let text = |key: &str| tree[key].as_str().expect("a text").to_owned();
            (text("tree_id"), text("day"))
        })
        .collect()
}

#[test]
fn what_was_found_moves_the_plan_and_the_register_on() {
    let before = json(&planned_sample("found-first", 2027, &[]).folder);
    assert!(before.get("after").is_none(), "nothing was found yet");
    let maples = of_species(&before, "Acer platanoides");
    assert!(maples.len() >= 16, "{}", maples.len());
    let tag = |at: usize| maples[at].0.as_str();
    let mut rows: Vec<String> = maples
        .iter()
        .map(|(tag, day)| format!("{tag},{day},,24,1,{day},8 in,"))
        .collect();
    // Rows that nothing is read from come in between; what is written in the third year after the ring is the last.
    let seen = [
        (0, "2028-09-20", "crown_full"),
        (0, "2029-07-20", "crown_full; sprouts"),
        (1, "2029-07-20", "Crown bare"),
        (2, "2029-07-20", "fallen"),
        (3, "2029-07-20", "bridge;crown-thin"),
        (4, "2029-07-20", "crown_thin"),
        (9, "2029-07-20", "dead"),
    ];
    rows.extend(seen.map(|(at, day, found)| format!("{},{day},{found},6,2,,,", tag(at))));
    rows.extend([
        "no such tree,2029-07-20,dead,,,,,".to_owned(),
        format!("{},2029-07-40,dead,,,,,", tag(5)),
        format!("{},2029-07-20,withered,,,,,", tag(5)),
        format!("{},2029-07-20,crown_full;crown_bare,,,,,", tag(6)),
        format!("{},2026-07-20,sprouts,,,,,", tag(7)),
        format!("{},2029-07-20,,,,,,", tag(8)),
        format!("{},2039-07-20,dead,,,,,", tag(10)),
    ]);
    let found = file("found.csv", &rows);
    let next = planned_sample("found-next", 2030, &["--found", &found]);
    let (printed, error, folder) = (&next.printed, &next.error, &next.folder);
    let plan = json(folder);

    // A ring that failed is planned again, in its window; what stands ringed is done; what is dead is dead.
    assert_eq!(tree(&plan, tag(0))["reason"], "planned");
    for (at, reason) in [
        (1, "dead"),
        (2, "dead"),
        (3, "done"),
        (4, "done"),
        (9, "dead"),
    ] {
        assert_eq!(tree(&plan, tag(at))["reason"], reason, "{at}");
    }
    let register = register(folder);
    let cell = |at: usize, column: &str| register[tag(at)][column].clone();
    assert_eq!(cell(1, "dead_on"), "2029-07-20");
    assert_eq!(cell(1, "state"), "standing");
    assert_eq!(
        (cell(2, "state"), cell(2, "down_on")),
        ("down".into(), "2029-07-20".into())
    );
    assert_eq!(cell(2, "next_look"), "", "what is down is not looked at");
    // A day that has not come puts off no look.
    assert!(error.contains("2039-07-20 has not come yet"), "{error}");
    assert_eq!(
        (cell(10, "dead_on"), cell(10, "last_looked")),
        (String::new(), String::new())
    );
    assert_eq!(cell(4, "ringed_on"), maples[4].1);
    assert_eq!(cell(4, "last_looked"), "2029-07-20");
    assert!(cell(4, "next_look") > cell(4, "last_looked"));
    // A bridge that was cut out is looked at within six weeks, sooner than a ring without one.
    assert!(
        cell(3, "next_look").as_str() <= "2029-08-31",
        "{}",
        cell(3, "next_look")
    );

    // Rows with something wrong are told by row and column, and count for nothing.
    let of_row = |at: usize| format!("Row {}, column", maples.len() + seen.len() + 1 + at);
    for at in 1..=7 {
        assert!(error.contains(&of_row(at)), "{at}: {error}");
    }
    for (at, tags) in [(5, 0), (6, 0), (7, 0), (10, 0)] {
        let looks = list(&plan["after"]["found"])
            .iter()
            .filter(|it| it["tree_id"] == tag(at));
        assert_eq!(looks.count(), tags, "{at}");
    }
    let advice = |at: usize| {
        let found = list(&plan["after"]["found"]).iter().rev();
        let mut of = found.filter(|it| it["tree_id"] == tag(at));
        of.next().expect("found")["acts"].clone()
    };
    assert_eq!(advice(0), serde_json::json!(["ring_again", "take_sprouts"]));
    assert_eq!(advice(3), serde_json::json!(["keep_out", "reopen_bridge"]));
    // Whoever only wrote that it is dead is told too to keep out from under it.
    assert_eq!(advice(9), serde_json::json!(["keep_out"]));
    assert!(
        printed.contains("cut the bridge out and scrape"),
        "{printed}"
    );

    // Five rings without a bridge of six looked at: too few for a share.
    let held = &plan["after"]["rings_held"];
    assert_eq!((&held["trees"], &held["looked_at"]), (&5.into(), &6.into()));
    assert!(held["percent"].is_null());
    let rate = &plan["after"]["rate"];
    assert_eq!(rate["trees"], maples.len());
    assert_eq!(rate["person_minutes"], 24.0 * maples.len() as f64);
    assert_eq!(rate["used"], false);

    // A crew that is slower by its own rate takes that much longer for the ring of each tree, the walk left out.
    let own = planned_sample("found-own", 2030, &["--found", &found, "--own-rate"]);
    let own = json(&own.folder);
    assert_eq!(own["after"]["rate"]["used"], true);
    let likely = rate["likely"].as_f64().expect("a factor");
    assert!(likely > 1.5, "{likely}");
    let work = |plan: &Value| tree(plan, tag(0))["work"][0].as_f64().expect("minutes");
    let slower = work(&own) / work(&plan);
    // Means of two log-normals of different spread: the narrower one's lies nearer its median.
    assert!(
        (0.9..1.02).contains(&(slower / likely)),
        "{slower} {likely}"
    );
}

#[test]
fn visits_to_trees_ringed_before_take_hours_first() {
    let before = json(&planned_sample("found-hours-first", 2027, &[]).folder);
    let rows: Vec<String> = list(&before["trees"])
        .iter()
        .filter(|tree| tree["reason"] == "planned")
        .take(80)
        .map(|tree| {
            let text = |key: &str| tree[key].as_str().expect("a text");
            format!("{},{},,,,{},,", text("tree_id"), text("day"), text("day"))
        })
        .collect();
    let found = file("ringed.csv", &rows);
    let tight = ["--crew", "2", "--hours", "2", "--found", &found, "--whole"];
    let folder = planned_sample("found-hours-next", 2028, &tight).folder;
    let plan = json(&folder);
    let mut visits: BTreeMap<&str, f64> = BTreeMap::new();
    let mut of_done: BTreeMap<&str, f64> = BTreeMap::new();
    for tree in list(&plan["trees"]) {
        for visit in list(&tree["visits"]) {
            let Some(day) = visit["day"].as_str() else {
                assert_eq!(visit["reason"], "needs_day");
                continue;
            };
            let (from, to) = (visit["from"].as_str(), visit["to"].as_str());
            assert!(from <= Some(day) && Some(day) <= to, "{visit}");
            let minutes = visit["minutes"].as_f64().expect("minutes");
            *visits.entry(day).or_default() += minutes;
            if tree["reason"] == "done" {
                *of_done.entry(day).or_default() += minutes;
            }
        }
    }
    assert!(of_done.len() > 3, "visits of last year's rings have days");
    for day in list(&plan["work_days"]) {
        let number = |key: &str| day[key].as_f64().unwrap_or(0.0);
        let on = day["day"].as_str().expect("a day");
        let of = |sums: &BTreeMap<&str, f64>| sums.get(on).copied().unwrap_or(0.0);
        assert!((number("visits") - of(&visits)).abs() < 1e-6, "{day}");
        assert!(
            (number("visits_before") - of(&of_done)).abs() < 1e-6,
            "{day}"
        );
        assert!(number("used") <= number("minutes") + 1e-6, "{day}");
        let by_team: f64 = list(&day["by_team"]).iter().filter_map(Value::as_f64).sum();
        assert!((by_team - number("used")).abs() < 1e-6, "{day}");
    }
    // The printed prices still give the bound, with the hours that are left.
    assert!(bound_again(&plan) > 0.0);
    // They stand on the crew sheets of their days.
    let sheets = fs::read_to_string(folder.join("crew-sheets.html")).expect("sheets");
    let done = list(&plan["trees"]).iter().find(|tree| {
        let days = list(&tree["visits"])
            .iter()
            .filter_map(|visit| visit["day"].as_str());
        tree["reason"] == "done" && days.clone().any(|day| day.starts_with("2028"))
    });
    let tag = done.expect("one")["tree_id"].as_str().expect("a tag");
    assert!(sheets.contains(tag), "{tag}");
}

#[test]
fn a_tree_that_is_dead_when_the_crew_comes_is_no_ring_that_killed() {
    let first = planned_sample("found-dead-first", 2027, &[]);
    let (tag, day) = of_species(&json(&first.folder), "Acer platanoides").swap_remove(0);
    let keep = first.folder.join("plan.json").display().to_string();
    let found = file("dead.csv", &[format!("{tag},{day},dead,,,,,")]);
    let next = planned_sample("found-dead", 2028, &["--keep", &keep, "--found", &found]);
    let plan = json(&next.folder);
    assert_eq!(tree(&plan, &tag)["reason"], "dead");
    assert_eq!(plan["after"]["found"][0]["ringed_on"], Value::Null);
    let rates = list(&plan["after"]["kill_rate"]).iter();
    assert!(rates.clone().count() > 0);
    for rate in rates {
        assert_eq!(rate["looked_at"], 0, "{rate}");
    }
    assert_eq!(plan["after"]["rings_held"]["looked_at"], 0);
    let row = &register(&next.folder)[&tag];
    assert_eq!((row["ringed_on"].as_str(), &row["dead_on"]), ("", &day));
}

#[test]
fn a_file_without_what_it_needs_is_refused_in_words() {
    let path = Path::new(env!("CARGO_TARGET_TMPDIR")).join("no-column.csv");
    fs::write(&path, "tree_id,found\nHB-001,dead\n").expect("a file");
    let name = path.display().to_string();
    let refused = plan_of_sample("found-refused", 2028, &["--found", &name]);
    assert_eq!(refused.code, 2);
    assert!(refused.error.contains("visited_on"), "{}", refused.error);
    let found = file(
        "untimed.csv",
        &["HB-004,2027-06-05,,,,2027-06-05,,".to_owned()],
    );
    let untimed = plan_of_sample("found-refused", 2028, &["--found", &found, "--own-rate"]);
    let says = untimed.error.contains("--own-rate");
    assert!(untimed.code == 2 && says, "{}", untimed.error);
}
