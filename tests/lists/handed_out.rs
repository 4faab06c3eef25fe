//! Files of a plan as the page writes them, in slices: the same bytes as at once, and progress that grows.

use serde_json::{Value, json};
use www_list::calls::List;

/// An invented list: trees with and without a place, a row to mend, one that is no tree, empty lines and a note at the end.
fn list() -> String {
    let mut text =
        String::from("Our trees\n\nTag,Species,DBH (in),Latitude,Longitude,Target,Unit\n");
    for row in 0..90 {
        let line = match row % 30 {
            7 => "\n".to_owned(),
            11 => format!("T{row},Norway maple,fourteen,42.1,-71.5,none,East\n"),
            13 => format!("T{row},stump,9,,,none,West\n"),
            17 => format!("T{row},boxelder,{},,,none,West\n", 5 + row % 9),
            _ => format!(
                "T{row},Norway maple,{},42.{row:02},-71.5,{},Unit {}\n",
                4 + row % 11,
                ["none", "none", "path 20 ft"][row % 3],
                row % 4
            ),
        };
        text.push_str(&line);
    }
    text
}

fn work(list: &mut List, rows: usize) -> Vec<Value> {
    let mut all = Vec::new();
    loop {
        let told: Value = serde_json::from_str(&list.step(rows)).expect("JSON");
        let more = told["more"] == true;
        all.push(told);
        if !more {
            return all;
        }
    }
}

fn new() -> List {
    List::new("en", "2027-05-01", "us", calc_data::places::CLIMATE)
}

fn season(people: &str) -> String {
    let plan = json!({ "do": "plan", "entries": [
        ["people", people], ["hours", "6"], ["more-days", "2027-06-05,2027-06-12"],
        ["place", "42.36,-71.5"], ["region", "US-MA"],
    ] });
    plan.to_string()
}

fn planned() -> List {
    let mut page = new();
    assert!(page.open("trees.csv", list().into_bytes()));
    work(&mut page, 1000);
    page.act(&season("4"));
    let told = work(&mut page, 1000);
    let said = told.last().map(|it| it["said"].to_string());
    assert!(
        said.as_ref().is_some_and(|it| it.contains("can be ringed")),
        "{said:?}"
    );
    page
}

#[test]
fn files_that_are_written_in_slices_have_the_bytes_of_those_written_at_once() {
    assert!(calc_data::whole().species.len() > 10);
    let (mut slices, mut at_once) = (planned(), planned());
    let mut in_slices = 0;
    for name in calc_view::plan::made::FILES {
        assert!(slices.want(name), "{name}");
        let told = work(&mut slices, 7);
        if told.len() > 1 {
            in_slices += 1;
            let done: Vec<u64> = told.iter().filter_map(|it| it["done"].as_u64()).collect();
            let (last, steps) = done.split_last().expect("steps");
            assert!(steps.is_sorted_by(|a, b| a < b), "{name}: {done:?}");
            assert_eq!(*last, 0, "{name}: the last slice tells no progress");
            assert!(
                told[..told.len() - 1].iter().all(|it| it["what"] != ""),
                "{name}"
            );
        }
        let bytes = slices.file(name);
        assert_eq!(bytes, at_once.file(name), "{name}");
        // Asked for again it is the same, and no longer than it was.
        assert!(slices.want(name), "{name}");
        work(&mut slices, 1000);
        assert_eq!(slices.file(name), bytes, "{name} again");
    }
    assert!(in_slices >= 3, "{in_slices} files were written in slices");
}

#[test]
fn a_file_whose_writing_was_stopped_is_whole_the_next_time() {
    let (mut stopped, mut at_once) = (planned(), planned());
    for name in ["trees-plan.csv", "trees.geojson", "reach.geojson"] {
        assert!(stopped.want(name));
        assert!(stopped.step(20).contains("\"more\":true"), "{name}");
        stopped.stop();
        assert!(stopped.want(name));
        work(&mut stopped, 20);
        assert_eq!(stopped.file(name), at_once.file(name), "{name}");
    }
}

/// The page keeps the days of the plan in its memory; a draft that comes back keeps them by what was written of it.
#[test]
fn a_plan_asked_for_again_keeps_the_same_days_with_and_without_its_draft() {
    let mut page = planned();
    let draft = page.draft();
    let mut back = new();
    back.restore("trees.csv", list().into_bytes(), &draft);
    work(&mut back, 1000);
    for again in ["5", "1"] {
        page.act(&season(again));
        work(&mut page, 1000);
        back.act(&season(again));
        work(&mut back, 1000);
        let (one, other) = (page.file("plan.json"), back.file("plan.json"));
        let plan: Value = serde_json::from_slice(&one).expect("a plan");
        assert!(plan["counts"]["planned"].as_u64() > Some(10), "{plan}");
        assert!(one == other, "{again} people");
    }
}
