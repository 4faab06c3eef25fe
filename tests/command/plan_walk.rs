//! Walks of a plan, measured again from its own files: the order of each crew in plan.json, the points of trees.geojson, a
//! haversine instead of the planner's flat metres.

use super::plan_files::{map, metres};
use super::plan_of_sample::{json, list, number, planned_sample, text};
use super::run;
use geojson::{GeometryValue, Position, feature::Id};
use serde_json::Value;
use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::fs;
use std::path::{Path, PathBuf};

/// 100 ft a minute (effort.walk_m_per_min of content/rules/constants.csv), and the longest walk (walk_leg_most).
const METRES_A_MINUTE: f64 = 30.48;
const LEG_MOST: f64 = 20.0;

/// A ring of a crew's day: its turn, its tag, its walk.
type Turn<'a> = (u64, &'a str, f64);

fn points(folder: &Path) -> BTreeMap<String, Position> {
    let features = map(folder, "trees.geojson").features.into_iter();
    features
        .filter_map(|feature| match (feature.id?, feature.geometry?.value) {
            (Id::String(id), GeometryValue::Point { coordinates }) => Some((id, coordinates)),
            _ => None,
        })
        .collect()
}

/// Minutes round some points, in their order.
fn round(points: &[&Position]) -> f64 {
    let next = points.iter().cycle().skip(1);
    let legs = points.iter().zip(next).map(|(a, b)| metres(a, b));
    let minutes = legs.map(|metres| (metres / METRES_A_MINUTE).min(LEG_MOST));
    if points.len() < 2 { 0.0 } else { minutes.sum() }
}

#[test]
fn walks_are_those_of_the_ways_and_the_charge_comes_near_them() {
    let sample = planned_sample("walks", 2027, &["--teams", "2"]);
    let (plan, points) = (json(&sample.folder), points(&sample.folder));
    let (mut charged, mut days_of_rings) = (BTreeMap::<&str, f64>::new(), 0);
    // By day and crew.
    let mut ways: BTreeMap<(&str, u64), Vec<Turn<'_>>> = BTreeMap::new();
    for tree in list(&plan["trees"])
        .iter()
        .filter(|it| it["reason"] == "planned")
    {
        let (day, walk) = (text(&tree["day"]), number(&tree["walk"]));
        let number = |key: &str| tree[key].as_u64().expect("a number");
        let turn = (number("order"), text(&tree["tree_id"]), walk);
        ways.entry((day, number("team"))).or_default().push(turn);
        let visits = list(&tree["visits"]).iter();
        for day in visits
            .filter_map(|visit| visit["day"].as_str())
            .chain([day])
        {
            *charged.entry(day).or_default() += walk;
        }
    }
    let mut sums = [0.0; 2];
    for day in list(&plan["work_days"]) {
        let name = text(&day["day"]);
        let is = number(&day["walk_charged"]);
        let again = charged.remove(name).unwrap_or(0.0);
        assert!((is - again).abs() < 1e-6, "{day} {again}");
        let Some(routed) = day["walk_routed"].as_f64() else {
            continue;
        };
        sums = [sums[0] + is, sums[1] + routed];
        // Where there are visits too their turns stand in no file.
        if number(&day["visits"]) > 0.0 {
            continue;
        }
        let (mut again, mut by_tag) = (0.0, 0.0);
        for ((_, _), way) in ways.iter_mut().filter(|((on, _), _)| *on == name) {
            way.sort_by_key(|turn| turn.0);
            let of = |way: &[Turn<'_>]| {
                let placed: Vec<&Position> = way.iter().filter_map(|it| points.get(it.1)).collect();
                let without = way.iter().filter(|it| !points.contains_key(it.1));
                round(&placed) + without.map(|it| it.2).sum::<f64>()
            };
            again += of(way);
            way.sort_by_key(|turn| turn.1);
            by_tag += of(way);
        }
        assert!(
            (again - routed).abs() < 0.01 * routed + 0.01,
            "{day}: {again}"
        );
        assert!(
            routed <= 1.001 * by_tag,
            "{day}: {by_tag} in the order of tags"
        );
        days_of_rings += 1;
    }
    assert!(days_of_rings > 0 && charged.is_empty());
    let walk = &plan["walk"];
    assert!((number(&walk["routed"]) - sums[1]).abs() < 1e-6 * sums[1]);
    assert!((0.9..1.1).contains(&(sums[1] / sums[0])), "{walk}");
    assert_ne!(number(&walk["factor"]), 1.0);
    assert!(
        sample.printed.contains("Walking from tree to tree"),
        "{}",
        sample.printed
    );

    // The next plan charges the same, and no tree moves.
    let before = sample.folder.join("plan.json").display().to_string();
    let again = planned_sample("walks-kept", 2027, &["--teams", "2", "--keep", &before]);
    let again = json(&again.folder);
    assert_eq!(again["walk"]["factor"], walk["factor"]);
    assert!(list(&again["moved"]).is_empty(), "{}", again["moved"]);
}

/// Plans a list of maples; `place` gives latitude and longitude of each, and its own walk.
fn planned(name: &str, place: impl Fn(usize) -> (String, String)) -> (String, Value) {
    let folder: PathBuf = Path::new(env!("CARGO_TARGET_TMPDIR"))
        .join("walks")
        .join(name);
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).expect("a folder");
    let mut rows = String::from("Tag,Species,DBH (in),Latitude,Longitude,Walk_min,Target\n");
    for row in 0..40 {
        let (place, walk) = place(row);
        let _ = writeln!(
            rows,
            "T{row:03},Norway maple,{},{place},{walk},none",
            8 + row % 7
        );
    }
    let (file, out) = (folder.join("trees.csv"), folder.join("out"));
    fs::write(&file, rows).expect("a list");
    let [file, out] = [file, out].map(|path| path.display().to_string());
    let arguments = [
        "plan",
        &file,
        "--out",
        &out,
        "--region",
        "US-MA",
        "--place",
        "42.36,-71.5",
        "--on",
        "sat",
        "--today",
        "2027-04-01",
        "--from",
        "2027-05-22",
        "--to",
        "2027-06-19",
        "--crew",
        "2",
    ];
    let (code, printed, error) = run(&arguments, "");
    assert_eq!(code, 0, "{printed}{error}");
    (printed, json(&folder.join("out")))
}

fn walk_of(plan: &Value, tag: &str) -> f64 {
    let mut trees = list(&plan["trees"]).iter();
    number(&trees.find(|tree| tree["tree_id"] == tag).expect("a tree")["walk"])
}

/// No points, or one point that all rows share: nobody knows the ways, and each walk stays as it was reckoned.
#[test]
fn a_place_that_rows_share_tells_no_way() {
    for (name, place) in [("none", ","), ("shared", "42.36,-71.5")] {
        let (printed, plan) = planned(name, |_| (place.to_owned(), String::new()));
        assert!(plan.get("walk").is_none(), "{name}");
        assert!(
            list(&plan["work_days"])
                .iter()
                .all(|day| day["walk_routed"].is_null())
        );
        assert_eq!(walk_of(&plan, "T003"), 2.0);
        assert!(
            printed.contains("How far the crews walk is not known"),
            "{printed}"
        );
    }
}

/// Trees 61 m apart in a row: two minutes from one to the next, as they are reckoned, and a walk that a row says itself stays.
#[test]
fn walks_of_a_row_of_trees_come_out_as_they_are_and_a_said_walk_stays() {
    let apart = |metres: f64| {
        move |row: usize| {
            let latitude = 42.36 + row as f64 * metres / 111_195.0;
            let walk = if row == 3 { "7" } else { "" };
            (format!("{latitude:.7},-71.5"), walk.to_owned())
        }
    };
    for (name, metres) in [("wide", 61.0), ("close", 6.1)] {
        let (_, plan) = planned(name, apart(metres));
        assert_eq!(walk_of(&plan, "T003"), 7.0, "{name}");
        let ratio = number(&plan["walk"]["routed"]) / number(&plan["walk"]["charged"]);
        // A row is gone up and down again.
        let walk = walk_of(&plan, "T004");
        assert!(
            walk > metres / 61.0 && walk < 4.5 * metres / 30.48,
            "{name}: {walk} {ratio}"
        );
    }
}
