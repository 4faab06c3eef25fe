//! A bigger tree is never less work.

use crate::make::{Maker, plain_of};
use crate::support::{reference, try_read};
use serde_json::json;

#[test]
fn a_bigger_tree_never_gets_a_narrower_ring_or_fewer_minutes_on_the_same_day() {
    let mut make = Maker::new(41);
    let (mut rings, mut minutes) = (0, 0);
    for _ in 0..900 {
        let (mut typed, _) = make.good();
        let inches = make.inches();
        let bigger = inches * make.between(1.01, 2.0);
        let mut stem = json!({ "diameter": format!("{inches:.2} in") });
        if make.chance(0.2) {
            stem["live_share"] = json!("60 %");
        }
        typed["stems"] = json!([stem]);
        typed["none_in_reach"] = json!(true);
        typed["targets"] = json!([]);
        typed["line_within_reach"] = json!("no");
        typed["goal"] = json!("wildlife");
        typed["spare"] = json!(null);
        let mut larger = typed.clone();
        larger["stems"][0]["diameter"] = json!(format!("{bigger:.2} in"));
        let (small, large) = (plain_of(&typed), plain_of(&larger));
        if let (Some(small), Some(large)) = (&small.stems[0].ring, &large.stems[0].ring) {
            rings += 1;
            assert!(
                large.better_mm >= small.better_mm,
                "narrower:\n{typed}\n{larger}"
            );
            assert!(
                large.at_least_mm >= small.at_least_mm,
                "narrower:\n{typed}\n{larger}"
            );
            assert!(
                large.area_mm2 >= small.area_mm2,
                "less bark:\n{typed}\n{larger}"
            );
        }
        if let (Some(less), Some(more)) = (&small.effort, &large.effort)
            && small.advised_day == large.advised_day
        {
            minutes += 1;
            assert!(
                more.likely_min >= less.likely_min,
                "fewer minutes:\n{typed}\n{larger}"
            );
            assert!(
                more.low_min >= less.low_min && more.high_min >= less.high_min,
                "{typed}\n{larger}"
            );
        }
    }
    assert!(
        rings > 400 && minutes > 80,
        "{rings} rings, {minutes} with minutes"
    );
}

#[test]
fn one_more_stem_never_takes_fewer_minutes_on_the_same_day() {
    let mut make = Maker::new(42);
    let mut compared = 0;
    for _ in 0..800 {
        let (mut typed, _) = make.good();
        typed["goal"] = json!("wildlife");
        typed["spare"] = json!(null);
        let before = plain_of(&typed);
        let mut more = typed.clone();
        let largest = before
            .stems
            .iter()
            .map(|stem| stem.dbh_mm)
            .fold(0.0, f64::max);
        let thinner = json!({ "diameter": format!("{:.2} mm", (largest * make.between(0.3, 0.95)).max(4.0)) });
        more["stems"].as_array_mut().expect("stems").push(thinner);
        if try_read(&more).is_err() {
            continue;
        }
        let after = plain_of(&more);
        if let (Some(less), Some(more)) = (&before.effort, &after.effort)
            && before.advised_day == after.advised_day
        {
            compared += 1;
            assert!(more.likely_min >= less.likely_min, "{typed}");
        }
    }
    assert!(compared > 60, "{compared}");
}

/// The range of a height holds what is shown; the hazard is never under what a row of the species gives, but for
/// shrubs, whose size is doubted.
#[test]
fn the_hazard_is_never_under_the_height_that_is_shown() {
    let mut make = Maker::new(43);
    for species in reference().species {
        for _ in 0..12 {
            let mut typed = make.about(species.scientific);
            typed["height"] = json!(null);
            typed["targets"] = json!([]);
            typed["none_in_reach"] = json!(true);
            typed["line_within_reach"] = json!("no");
            let height = plain_of(&typed).height;
            if let Some(shown) = height.shown_m {
                let (low, high) = (height.low_m.expect("low"), height.high_m.expect("high"));
                assert!(low <= shown + 1e-9 && shown <= high + 1e-9, "{typed}");
                assert!(
                    height.larger_than_grows || height.hazard_m >= shown,
                    "{typed}"
                );
            }
            assert!(
                height.hazard_m > 0.0 && height.hazard_m < 150.0,
                "{} m: {typed}",
                height.hazard_m
            );
        }
    }
}
