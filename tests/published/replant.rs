//! How many trees fill the gap where others die: spacing against a printed table, crown and land by hand.

use crate::support::{number, question, rows, tree, with};
use calc::models::stand::ACRE_M2;
use calc::terms::quantity::{M_PER_FT, Units};
use calc_plan::{UnitLand, crown_m2, gaps};
use calc_view::plan::replant::spacing_m;
use serde_json::json;

/// W10 prints trees an acre by spacing and cuts the fraction off (as its rows in worked_examples.csv say).
#[test]
fn trees_on_an_acre_are_those_of_the_printed_table() {
    let mut checked = 0;
    for row in rows("content/evidence/worked_examples.csv") {
        let Some((a, b)) = row["inputs"].split_once(" ft x ") else {
            continue;
        };
        let feet = |text: &str| -> f64 { text.trim_end_matches(" ft").parse().expect("feet") };
        if feet(a) != feet(b) {
            continue;
        }
        assert_eq!(row["source_id"], "W10");
        let spacing = spacing_m(&format!("{a} ft"), Units::Metric).expect("a distance");
        // Crowns of two acres on an acre of land.
        let land = UnitLand {
            unit: "wood".into(),
            area_m2: ACRE_M2,
            closure: None,
        };
        let gap = &gaps([("wood", Some(ACRE_M2)); 2].into_iter(), &[land])[0];
        let printed = number(&row, "expected");
        assert!((gap.to_plant(spacing) as f64 - printed).abs() <= 1.0, "{a}");
        checked += 1;
    }
    assert!(checked >= 3, "{checked} rows have one spacing both ways");
}

/// What is proposed is the spacing of W10's own example, 10 × 10 ft, which gives 435.6 trees an acre; in metres it is ours.
#[test]
fn what_is_proposed_is_the_printed_example() {
    let us = spacing_m("", Units::Us).expect("a distance");
    assert!((ACRE_M2 / (us * us) - 435.6).abs() < 0.05);
    assert_eq!(spacing_m("", Units::Metric), Some(3.0));
}

/// Crowns by hand: crown.csv prints 23.1 ft for Norway maple at 12 in (Bechtold 2003 by S6, red maple's row), which is a
/// circle of 419 ft². Three such trees, one of them with no crown known, leave two crowns; at 10 ft that is 8 trees.
#[test]
fn a_gap_is_the_crowns_of_the_trees_that_die_each_once() {
    let asked = with(tree("Norway maple", "12 in"), json!({ "setting": "woods" }));
    let question = question(&asked);
    assert_eq!(question.tree.species.scientific, "Acer platanoides");
    let crown = crown_m2(&question.tree).expect("a crown");
    let feet2 = crown / (M_PER_FT * M_PER_FT);
    let by_hand = core::f64::consts::PI / 4.0 * 23.1 * 23.1;
    assert!((feet2 / by_hand - 1.0).abs() < 0.01, "{feet2}");
    let crowns = [
        ("hedge", Some(crown)),
        ("hedge", Some(crown)),
        ("hedge", None),
    ];
    let gap = &gaps(crowns.into_iter(), &[])[0];
    assert_eq!((gap.trees, gap.without_crown, gap.is_capped), (3, 1, false));
    assert!((gap.open_m2 - 2.0 * crown).abs() < 1e-9);
    assert_eq!(gap.to_plant(10.0 * M_PER_FT), 8);
    // So little opens that it is less than a tree's own ground: one tree all the same.
    assert_eq!(gap.to_plant(30.0 * M_PER_FT), 1);
}
