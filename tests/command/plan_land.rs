//! `plan --area … --floor`: what a floor of canopy leaves, added up from plan.json alone.

use super::plan_of_sample::{bound_again, json, list, number, plan_of_sample, planned_sample};
use serde_json::Value;

/// With land of 1,500 m² of which 70 % lies under crowns, at least 60 % stays: crowns that stand at random cover
/// 1 - exp(-C/A), worked out here again.
#[test]
fn a_floor_of_canopy_holds_and_the_bound_can_be_worked_out_again() {
    let area = ["--area", "Oak wood=1500 m2", "--closure", "Oak wood=70%"];
    let free = planned_sample("land-free", 2027, &area);
    let says = "Oak wood: 70 % of the land lies under crowns now";
    assert!(free.printed.contains(says), "{}", free.printed);
    let mut floored = area.to_vec();
    floored.extend(["--whole", "--floor"]);
    let floor = planned_sample("land-floor", 2027, &floored);
    let (free, plan) = (json(&free.folder), json(&floor.folder));
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
    let bound = bound_again(&plan);
    assert!(number(&plan["objective"]["value"]) <= bound);
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
        let refused = plan_of_sample("land-refused", 2027, more);
        let told = refused.printed + &refused.error;
        assert!(refused.code == 2 && told.contains(says), "{more:?}: {told}");
    }
}
