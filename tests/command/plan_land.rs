//! `plan --area … --floor`: what a floor of canopy leaves, added up from plan.json alone.

use super::run;
use serde_json::Value;
use std::fs;
use std::path::{Path, PathBuf};

const SAMPLE: &str = "content/sample/trees.csv";

fn planned(name: &str, more: &[&str]) -> (i32, String, PathBuf) {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR"))
        .join("land")
        .join(name);
    let _ = fs::remove_dir_all(&folder);
    let out = folder.display().to_string();
    let mut arguments = vec![
        "plan", SAMPLE, "--out", &out, "--region", "US-MA", "--on", "sat",
    ];
    arguments.extend([
        "--today",
        "2027-04-01",
        "--from",
        "2027-05-01",
        "--to",
        "2027-07-31",
    ]);
    arguments.extend(more);
    let (code, printed, error) = run(&arguments, "");
    (code, printed + &error, folder)
}

fn json(folder: &Path) -> Value {
    let text = fs::read_to_string(folder.join("plan.json")).expect("plan.json");
    serde_json::from_str(&text).expect("JSON")
}

fn list(value: &Value) -> &[Value] {
    value.as_array().expect("a list")
}

fn number(value: &Value) -> f64 {
    value
        .as_f64()
        .unwrap_or_else(|| panic!("a number: {value}"))
}

/// With land of 1,500 m² of which 70 % lies under crowns, at least 60 % stays: crowns that stand at random cover
/// 1 - exp(-C/A), worked out here again.
#[test]
fn a_floor_of_canopy_holds_and_the_bound_can_be_worked_out_again() {
    let area = ["--area", "Oak wood=1500 m2", "--closure", "Oak wood=70%"];
    let (_, printed, free) = planned("free", &area);
    assert!(
        printed.contains("Oak wood: 70 % of the land lies under crowns now"),
        "{printed}"
    );
    let mut floored = area.to_vec();
    floored.extend(["--whole", "--floor"]);
    let (code, printed, folder) = planned("floor", &floored);
    assert_eq!(code, 0, "{printed}");
    let (free, plan) = (json(&free), json(&folder));
    let planned = |plan: &Value| plan["counts"]["planned"].as_u64().expect("a count");
    assert!(planned(&plan) < planned(&free), "the floor keeps trees out");
    assert!(plan["counts"]["pacing"].as_u64() > Some(0));
    let of = |plan: &Value| {
        let units = list(&plan["units"]).iter();
        let mut units = units.filter(|unit| unit["unit"] == "Oak wood").cloned();
        units.next().expect("the unit")
    };
    let unit = of(&plan);
    assert_eq!(unit["floor_share"], 0.6);
    assert!(of(&free)["floor_share"].is_null());
    let crowns: f64 = list(&plan["trees"])
        .iter()
        .filter(|tree| tree["unit"] == "Oak wood" && tree["reason"] == "planned")
        .map(|tree| number(&tree["crown_m2"]))
        .sum();
    let year = &unit["years"][0];
    assert!((crowns - number(&year["crown_used_m2"])).abs() < 1e-6);
    let land: f64 = 1500.0;
    let stays = -land * (1.0 - 0.7_f64).ln() - crowns;
    let closure = 1.0 - (-stays / land).exp();
    assert!(closure >= 0.6 - 1e-9, "{closure}");
    assert!((closure - number(&unit["land"]["closure_after"])).abs() < 1e-9);
    // Other parts have no floor.
    let others = list(&plan["units"])
        .iter()
        .filter(|unit| unit["unit"] != "Oak wood");
    assert!(
        others
            .clone()
            .all(|unit| unit.get("land").is_none() && unit["floor_share"].is_null())
    );
    let mut bound = 0.0;
    for day in list(&plan["work_days"]) {
        let price = &plan["objective"]["days"][day["day"].as_str().expect("a day")];
        bound += number(&day["minutes"]) * number(price);
    }
    let areas = list(&plan["objective"]["areas"]);
    for (unit, price) in list(&plan["units"]).iter().zip(areas) {
        let year = &unit["years"][0];
        bound += year["limit_m2"].as_f64().unwrap_or(0.0) * number(&price["price"]);
        bound += year["crown_limit_m2"].as_f64().unwrap_or(0.0)
            * price
                .get("crown_price")
                .and_then(Value::as_f64)
                .unwrap_or(0.0);
    }
    bound += list(&plan["objective"]["terms"])
        .iter()
        .map(|term| number(&term["best"]))
        .sum::<f64>();
    let printed = number(&plan["objective"]["bound"]);
    assert!((bound - printed).abs() < 1e-6 * bound, "{bound} {printed}");
    assert!(number(&plan["objective"]["value"]) <= printed);
}

#[test]
fn land_that_is_none_is_refused_in_words() {
    for (more, says) in [
        (&["--area", "Oak wood=12 miles"][..], "--area"),
        (&["--area", "Nowhere=12 acres"], "Nowhere"),
        (
            &["--area", "Oak wood=12 acres", "--closure", "Old field=80%"],
            "--closure",
        ),
        (
            &["--area", "Oak wood=12 acres", "--floor", "120%"],
            "--floor",
        ),
        (&["--floor", "60%"], "--area"),
    ] {
        let (code, printed, _) = planned("refused", more);
        assert!(code == 2 && printed.contains(says), "{more:?}: {printed}");
    }
}
