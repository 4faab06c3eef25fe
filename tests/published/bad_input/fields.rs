//! Days, places, lists, walking: fields beside the size.

use super::{only, problems};
use crate::support::*;
use calc::question::Code;
use serde_json::{Value, json};

#[test]
fn a_date_names_the_part_that_is_missing_or_impossible() {
    for (text, code) in [
        ("2027-02-29", "no_such_day"),
        ("2027-06-31", "no_such_day"),
        ("2027-06", "day_missing"),
        ("2027", "month_missing"),
        ("2027-13-01", "month_missing"),
        ("June 12", "year_missing"),
        ("6/12/2027", "year_missing"),
        ("12.06.2027", "year_missing"),
        ("1812-06-12", "year_out_of_range"),
        ("2999-06-12", "year_out_of_range"),
        ("2027-06-12-1", "no_such_day"),
        ("tomorrow", "year_missing"),
    ] {
        let asked = with(tree("Norway maple", "14"), json!({ "date": text }));
        assert_eq!(only(&asked), ("date".into(), code), "{text}");
    }
    for text in ["2028-02-29", "2027-6-1", "2027-jun-12", " 2027-06-12 "] {
        let asked = with(tree("Norway maple", "14"), json!({ "date": text }));
        assert_eq!(problems(&asked), [], "{text}");
    }
    let year = with(tree("Norway maple", "14"), json!({ "date": "year" }));
    assert_eq!(only(&year), ("today".into(), "missing"));
}

#[test]
fn half_a_place_a_swapped_latitude_a_strange_region_and_hemisphere_are_refused() {
    let placed = |place: Value| with(tree("Norway maple", "14"), json!({ "place": place }));
    assert_eq!(
        only(&placed(json!({ "latitude": "42" }))),
        ("place".into(), "half_a_place")
    );
    assert_eq!(
        only(&placed(json!({ "longitude": "-71" }))),
        ("place".into(), "half_a_place")
    );
    let swapped = placed(json!({ "latitude": "-171.06", "longitude": "42.36" }));
    assert_eq!(only(&swapped), ("place.latitude".into(), "out_of_range"));
    let high = placed(json!({ "latitude": "42", "longitude": "-71", "elevation": "9000 m" }));
    assert_eq!(only(&high), ("place.elevation".into(), "out_of_range"));
    assert_eq!(
        only(&placed(json!({ "hemisphere": "west" }))),
        ("place.hemisphere".into(), "not_one_of")
    );
    assert_eq!(problems(&placed(json!({ "hemisphere": "south" }))), []);
    for region in ["US-WI", "GB", "us-wi", "CA-ON", "AU-NSW", "FR-75"] {
        let asked = with(tree("Norway maple", "14"), json!({ "region": region }));
        assert_eq!(problems(&asked), [], "{region}");
    }
    for region in ["Atlantis", "USA", "US-", "US-WISC", "1", "U-WI", "US_WI"] {
        let asked = with(tree("Norway maple", "14"), json!({ "region": region }));
        assert_eq!(only(&asked), ("region".into(), "not_a_region"), "{region}");
    }
}

#[test]
fn a_leaf_out_of_another_season_or_without_a_stage_is_refused() {
    let seen = |seen: Value| with(tree("Norway maple", "14"), json!({ "leafed_out": seen }));
    assert_eq!(
        only(&seen(json!({ "date": "2027-04-30" }))),
        ("leafed_out.stage".into(), "missing")
    );
    assert_eq!(
        only(&seen(json!({ "stage": "buds_open" }))),
        ("leafed_out.date".into(), "missing")
    );
    let old = seen(json!({ "stage": "buds_open", "date": "2024-04-30" }));
    assert_eq!(only(&old), ("leafed_out.date".into(), "other_season"));
    let word = seen(json!({ "stage": "green", "date": "2027-04-30" }));
    assert_eq!(only(&word), ("leafed_out.stage".into(), "not_one_of"));
}

#[test]
fn the_stem_to_spare_must_be_there_and_not_be_the_only_one() {
    let spared = |stems: usize, spare: Value| {
        let stems: Vec<Value> = (0..stems).map(|_| json!({ "diameter": "8" })).collect();
        let fields = json!({ "stems": stems, "goal": "spare_one", "spare": spare });
        problems(&with(tree("Norway maple", "8"), fields))
    };
    assert_eq!(spared(2, json!(1)), []);
    assert_eq!(spared(2, json!(2)), [("spare".into(), "no_such_stem")]);
    assert_eq!(spared(1, json!(0)), [("spare".into(), "no_such_stem")]);
    assert_eq!(spared(2, json!(null)), [("spare".into(), "missing")]);
    assert_eq!(spared(50, json!(49)), []);
    assert_eq!(
        spared(51, json!(0)).first(),
        Some(&("stems".into(), "too_many_stems"))
    );
    let none = with(tree("Norway maple", "8"), json!({ "stems": [] }));
    assert_eq!(only(&none), ("stems".into(), "no_stem"));
}

#[test]
fn a_target_within_two_heights_beside_nothing_in_reach_is_a_problem_that_names_both() {
    let beside = |kind: &str, distance: Value| {
        with(
            tree("Norway maple", "14"),
            json!({
                "height": "50 ft",
                "none_in_reach": true,
                "targets": [{ "kind": kind, "distance": distance }],
            }),
        )
    };
    for kind in ["building", "road", "path", "line", "property_line"] {
        let problems = try_read(&beside(kind, json!("99 ft"))).expect_err(kind);
        assert_eq!(problems.len(), 1);
        assert_eq!(problems[0].field, "targets[0].distance", "{kind}");
        let Code::NoneBesideTarget {
            beside,
            two_heights_m,
        } = problems[0].code
        else {
            panic!("{:?}", problems[0].code);
        };
        assert_eq!(beside, "none_in_reach");
        near_to(two_heights_m.expect("two heights"), 30.48, 1e-9, kind);
    }
    assert_eq!(problems(&beside("path", json!("100 ft"))), []);
    assert_eq!(problems(&beside("fence", json!("9 ft"))), []);
    assert_eq!(
        only(&beside("path", json!(null))).1,
        "none_in_reach_beside_target"
    );
}

#[test]
fn lists_longer_than_a_tree_can_have_are_refused_before_their_items_are_read() {
    let targets: Vec<Value> = (0..51).map(|_| json!({ "kind": "shed" })).collect();
    let asked = with(
        tree("Norway maple", "14"),
        json!({ "none_in_reach": false, "targets": targets }),
    );
    assert_eq!(only(&asked), ("targets".into(), "too_many_targets"));
}

#[test]
fn walking_is_minutes_or_a_distance_and_a_rate_is_one_that_calibration_gives() {
    let walk = |text: &str| with(tree("Norway maple", "14"), json!({ "walk": text }));
    for text in ["2 min", "2", "100 ft", "50 m", "0"] {
        assert_eq!(problems(&walk(text)), [], "{text}");
    }
    assert_eq!(only(&walk("2 kV")), ("walk".into(), "wrong_unit"));
    assert_eq!(only(&walk("-2 min")), ("walk".into(), "out_of_range"));
    assert_eq!(only(&walk("5000 min")), ("walk".into(), "out_of_range"));
    for rate in [
        json!({ "log_mean": 9.0, "log_sd": 0.2 }),
        json!({ "log_mean": 0.1, "log_sd": 0.0 }),
    ] {
        let asked = with(tree("Norway maple", "14"), json!({ "rate": rate }));
        assert_eq!(only(&asked), ("rate".into(), "not_a_rate"));
    }
}
