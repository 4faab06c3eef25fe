//! Power and phone lines.

use super::of_50_ft;
use crate::support::*;
use calc::models::reach::{ReachOutcome, Why, approach_m};
use calc::terms::quantity::M_PER_FT;
use serde_json::{Value, json};

#[test]
fn a_line_within_one_and_a_half_heights_or_two_downhill_or_without_a_distance_stops_everything() {
    let line = |fields: Value| {
        let mut target = json!({ "kind": "line" });
        for (name, value) in fields.as_object().expect("fields") {
            target[name] = value.clone();
        }
        of_50_ft(json!({
            "line_within_reach": null,
            "targets": [target, { "kind": "path", "distance": "300 ft" }],
        }))
    };
    let reach = line(json!({ "distance": "70 ft" }));
    assert_eq!(
        (reach.outcome, reach.why),
        (ReachOutcome::Line, Why::LineWithin),
        "at 1.4 heights"
    );
    assert_eq!(
        line(json!({ "distance": "74.9 ft" })).outcome,
        ReachOutcome::Line
    );
    assert_eq!(
        line(json!({ "distance": "75 ft" })).outcome,
        ReachOutcome::ClearPeopleOut
    );
    assert_eq!(
        line(json!({ "distance": "100 ft" })).outcome,
        ReachOutcome::Clear
    );
    let down = json!({ "distance": "99 ft", "slope": "25 %", "downhill": true });
    assert_eq!(line(down).outcome, ReachOutcome::Line);
    let reach = line(json!({}));
    assert_eq!(
        (reach.outcome, reach.why),
        (ReachOutcome::Line, Why::LineNoDistance)
    );
    // Lines are apart from very steep ground: that row is of people and property.
    let steep = json!({ "distance": "149 ft", "slope": "40 %", "downhill": true });
    assert_eq!(line(steep).outcome, ReachOutcome::Clear);
}

#[test]
fn yes_to_the_line_question_without_a_listed_line_is_a_line_without_a_distance() {
    let far = json!([{ "kind": "path", "distance": "300 ft" }]);
    let reach = of_50_ft(json!({ "line_within_reach": "yes", "targets": far }));
    assert_eq!(
        (reach.outcome, reach.why),
        (ReachOutcome::Line, Why::LineNoDistance)
    );
    let reach = of_50_ft(json!({ "line_within_reach": "cant_tell", "targets": far }));
    assert_eq!(
        (reach.outcome, reach.why),
        (ReachOutcome::NotChecked, Why::LineOpen)
    );
    let reach = of_50_ft(json!({ "line_within_reach": null, "targets": far }));
    assert_eq!(
        (reach.outcome, reach.why),
        (ReachOutcome::NotChecked, Why::LineOpen)
    );
    let reach = of_50_ft(json!({ "line_within_reach": null, "none_in_reach": true }));
    assert_eq!(
        reach.outcome,
        ReachOutcome::Clear,
        "nothing in reach answers it too"
    );
    for said in ["yes", "cant_tell"] {
        let reach = of_50_ft(json!({ "line_within_reach": said, "none_in_reach": true }));
        assert!(
            reach.outcome >= ReachOutcome::NotChecked,
            "{said} is not overruled"
        );
    }
}

/// D01 and D02: 10 ft, and 4 in more for each 10 kV or part of it over 50 kV. The table's own check values: 69 kV
/// 10 ft 8 in (10.67 ft by steps rounded up), 230 kV 16 ft.
#[test]
fn the_approach_distance_to_a_line_is_10_ft_and_4_in_more_for_each_10_kv_over_50() {
    let ours = &reference().constants.reach;
    let feet = |kv: Option<f64>| approach_m(ours, kv) / M_PER_FT;
    for (kv, inches) in [
        (None, 120.0),
        (Some(0.4), 120.0),
        (Some(50.0), 120.0),
        (Some(50.1), 124.0),
        (Some(60.0), 124.0),
        (Some(69.0), 128.0),
        (Some(138.0), 156.0),
        (Some(230.0), 192.0),
    ] {
        near_to(feet(kv) * 12.0, inches, 1e-6, &format!("{kv:?} kV, inches"));
    }
    let printed = rows("content/evidence/hazard_zones.csv");
    let check = printed
        .iter()
        .find(|row| row["rule"].starts_with("Check values of the formula"))
        .expect("the row of check values");
    assert_eq!(check["multiplier"], "69 kV 10.63/10.67; 230 kV 16.00");
    near_to(feet(Some(69.0)), 10.67, 0.005, "69 kV");
    near_to(feet(Some(230.0)), 16.00, 0.005, "230 kV");
}

#[test]
fn a_line_nearer_than_its_approach_distance_stops_even_a_tree_that_could_not_reach_it() {
    let low = |distance: &str, voltage: &str| {
        ask(&with(
            tree("Norway maple", "1"),
            json!({
                "height": "6 ft",
                "height_confirmed": true,
                "none_in_reach": false,
                "targets": [
                    { "kind": "line", "distance": distance, "voltage": voltage },
                    { "kind": "path", "distance": "300 ft" },
                ],
            }),
        ))
        .reach
        .outcome
    };
    assert_eq!(low("10.6 ft", "69 kV"), ReachOutcome::Line);
    assert_eq!(low("10.7 ft", "69 kV"), ReachOutcome::ClearPeopleOut);
    assert_eq!(low("15.9 ft", "230 kV"), ReachOutcome::Line);
    assert_eq!(low("16.1 ft", "230000 V"), ReachOutcome::Clear);
}
