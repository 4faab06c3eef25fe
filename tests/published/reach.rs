//! Distances: multiples of the tree's height and approach distances to lines, as content/evidence/hazard_zones.csv
//! gives them with their sources (29 CFR 1910.266(h)(1): C01; NWCG no-work zones: C03; BC Wildlife Tree Committee:
//! C04; ISA basic form: C05; 29 CFR 1910.333 and 1910.269: D01, D02).

mod lines;

use crate::support::*;
use calc::answer::Outcome;
use calc::models::reach::{Reach, ReachOutcome, Why};
use calc::terms::method::Method;
use calc::terms::quantity::M_PER_FT;
use serde_json::{Value, json};

/// A maple of 50 ft, measured, so that heights and multiples are round numbers.
fn of_50_ft(fields: Value) -> Reach {
    let base = with(
        tree("Norway maple", "14"),
        json!({ "height": "50 ft", "none_in_reach": false, "line_within_reach": "no" }),
    );
    ask(&with(base, fields)).reach
}

fn at(kind: &str, distance: &str) -> Reach {
    of_50_ft(json!({ "targets": [{ "kind": kind, "distance": distance }] }))
}

/// The multiple of the row whose rule begins so.
fn multiple(rule: &str) -> f64 {
    let rows = rows("content/evidence/hazard_zones.csv");
    let row = rows
        .iter()
        .find(|row| row["rule"].starts_with(rule))
        .unwrap_or_else(|| panic!("no rule {rule}"));
    number(row, "x_height")
}

#[test]
fn the_multiples_of_height_are_those_that_the_regulations_and_guides_print() {
    let ours = &reference().constants.reach;
    assert_eq!(
        ours.people_out,
        multiple("Work exclusion round a marked standing danger tree")
    );
    assert_eq!(ours.people_out, multiple("Nobody approaches a feller"));
    assert_eq!(ours.zone, multiple("No-work zone round a snag"));
    assert_eq!(ours.zone, multiple("Dangerous tree left standing"));
    assert_eq!(
        ours.zone,
        multiple("Target distances recorded on arborist form")
    );
    assert_eq!(ours.zone, multiple("Target presence"));
    assert_eq!(
        ours.zone,
        multiple("Tree that could reach a line when it falls")
    );
    assert_eq!(ours.can_land, multiple("Simple homeowner radius"));
    assert_eq!(
        ours.zone_downhill,
        multiple("Slope default for a calculator")
    );
}

#[test]
fn people_and_property_within_one_height_are_for_a_professional() {
    for kind in ["building", "road", "path", "property_line"] {
        let reach = at(kind, "49.9 ft");
        assert_eq!(
            (reach.outcome, reach.why),
            (ReachOutcome::Professional, Why::CanLand),
            "{kind}"
        );
        assert_eq!(
            at(kind, "0 ft").outcome,
            ReachOutcome::Professional,
            "at the trunk itself"
        );
        assert_eq!(
            at(kind, "0.2 ft").outcome,
            ReachOutcome::Professional,
            "nearer than the trunk's radius"
        );
    }
}

#[test]
fn from_one_height_to_one_and_a_half_it_is_inside_and_from_there_to_two_people_stay_out() {
    for kind in ["building", "road", "path", "property_line"] {
        for (distance, outcome) in [
            ("50 ft", ReachOutcome::Inside),
            ("74.9 ft", ReachOutcome::Inside),
            ("75 ft", ReachOutcome::ClearPeopleOut),
            ("99.9 ft", ReachOutcome::ClearPeopleOut),
            ("100 ft", ReachOutcome::Clear),
        ] {
            assert_eq!(at(kind, distance).outcome, outcome, "{kind} {distance}");
        }
    }
    let reach = at("path", "100 ft");
    near_to(reach.zone_m, 75.0 * M_PER_FT, 1e-9, "zone");
    near_to(reach.two_heights_m, 100.0 * M_PER_FT, 1e-9, "two heights");
}

#[test]
fn downhill_on_ground_of_20_percent_and_more_the_zone_is_two_heights() {
    let down = |distance: &str, slope: &str, downhill: bool| {
        of_50_ft(json!({ "targets": [
            { "kind": "path", "distance": distance, "slope": slope, "downhill": downhill }
        ] }))
    };
    assert_eq!(down("99 ft", "25 %", true).outcome, ReachOutcome::Inside);
    assert_eq!(down("99 ft", "20 %", true).outcome, ReachOutcome::Inside);
    assert_eq!(
        down("99 ft", "19 %", true).outcome,
        ReachOutcome::ClearPeopleOut
    );
    assert_eq!(
        down("99 ft", "25 %", false).outcome,
        ReachOutcome::ClearPeopleOut,
        "uphill"
    );
    assert_eq!(down("100 ft", "25 %", true).outcome, ReachOutcome::Clear);
    near_to(
        down("100 ft", "25 %", true).zone_m,
        100.0 * M_PER_FT,
        1e-9,
        "zone",
    );
    // At 35 percent, within three heights, it stops (our own assumption).
    let steep = down("149 ft", "35 %", true);
    assert_eq!(
        (steep.outcome, steep.why),
        (ReachOutcome::Professional, Why::TooSteep)
    );
    assert_eq!(down("150 ft", "35 %", true).outcome, ReachOutcome::Clear);
    assert_eq!(down("149 ft", "34 %", true).outcome, ReachOutcome::Clear);
    assert_eq!(
        down("149 ft", "35 %", false).outcome,
        ReachOutcome::Clear,
        "uphill"
    );
}

#[test]
fn a_fence_a_field_or_a_tree_to_keep_may_be_damaged_and_never_stops() {
    for kind in ["fence", "keep_tree"] {
        let reach = of_50_ft(json!({ "targets": [
            { "kind": kind, "distance": "10 ft" },
            { "kind": "path", "distance": "300 ft" },
        ] }));
        assert_eq!(reach.outcome, ReachOutcome::Clear, "{kind}");
        let judged = reach
            .targets
            .iter()
            .find(|target| target.kind.word() == kind);
        assert!(judged.is_some_and(|target| target.damage && target.outcome.is_none()));
        let alone = of_50_ft(json!({ "targets": [{ "kind": kind, "distance": "10 ft" }] }));
        assert_eq!(
            alone.outcome,
            ReachOutcome::NotChecked,
            "{kind} does not complete the list"
        );
    }
}

#[test]
fn the_worst_target_decides_wherever_it_stands_in_the_list() {
    let targets = [
        json!({ "kind": "path", "distance": "300 ft" }),
        json!({ "kind": "building", "distance": "80 ft" }),
        json!({ "kind": "road", "distance": "60 ft" }),
        json!({ "kind": "fence", "distance": "2 ft" }),
    ];
    for turn in 0..targets.len() {
        let mut turned = targets.to_vec();
        turned.rotate_left(turn);
        let reach = of_50_ft(json!({ "targets": turned }));
        assert_eq!(reach.outcome, ReachOutcome::Inside);
    }
    let open = of_50_ft(json!({ "targets": [
        { "kind": "path" }, { "kind": "road", "distance": "300 ft" },
    ] }));
    assert_eq!(
        (open.outcome, open.why),
        (ReachOutcome::NotChecked, Why::DistanceUnknown)
    );
    let worse = of_50_ft(json!({ "targets": [
        { "kind": "path" }, { "kind": "road", "distance": "30 ft" },
    ] }));
    assert_eq!(
        worse.outcome,
        ReachOutcome::Professional,
        "a stop is not hidden by what is open"
    );
}

/// habitat_safety.md C, cautions HZ7: weak points with something near, or while nothing is known of what is near.
#[test]
fn a_weak_tree_with_something_near_is_for_a_professional() {
    let signed = |sign: &str, fields: Value| {
        let base = with(fields, json!({ "signs": [sign] }));
        of_50_ft(base)
    };
    let near = json!({ "targets": [{ "kind": "path", "distance": "99 ft" }] });
    let far = json!({ "targets": [{ "kind": "path", "distance": "100 ft" }] });
    let open = json!({ "targets": [], "line_within_reach": null });
    for sign in ["cavity", "cracks", "conks", "hung_limbs", "lean_toward"] {
        let reach = signed(sign, near.clone());
        assert_eq!(
            (reach.outcome, reach.why),
            (ReachOutcome::Professional, Why::WeakTree),
            "{sign}"
        );
        assert_eq!(
            signed(sign, open.clone()).outcome,
            ReachOutcome::Professional,
            "{sign}, not checked"
        );
        assert_eq!(
            signed(sign, far.clone()).outcome,
            ReachOutcome::Clear,
            "{sign}, nothing near"
        );
    }
    for sign in ["dead_top", "vines", "lean_away"] {
        assert_eq!(
            signed(sign, near.clone()).outcome,
            ReachOutcome::Professional,
            "{sign}"
        );
        assert_eq!(
            signed(sign, open.clone()).outcome,
            ReachOutcome::NotChecked,
            "{sign}"
        );
        assert_eq!(
            signed(sign, far.clone()).outcome,
            ReachOutcome::Clear,
            "{sign}"
        );
    }
    let fence = json!({ "targets": [
        { "kind": "fence", "distance": "9 ft" }, { "kind": "path", "distance": "300 ft" },
    ] });
    assert_eq!(
        signed("cavity", fence).outcome,
        ReachOutcome::Clear,
        "a fence is apart"
    );
}

#[test]
fn small_stems_near_something_are_cut_or_pulled_now_and_not_left_standing() {
    let small = |diameter: &str, height: &str| {
        ask(&near(
            with(tree("Norway maple", diameter), json!({ "height": height })),
            "path",
            "3 ft",
        ))
    };
    let answer = small("2.5", "20 ft");
    assert_eq!(
        (answer.reach.outcome, answer.reach.why),
        (ReachOutcome::Inside, Why::SmallStem)
    );
    assert!(!speaks(&answer, "HZ1") && !speaks(&answer, "HZ2"));
    assert_eq!(
        small("3", "50 ft").reach.outcome,
        ReachOutcome::Inside,
        "the limits count"
    );
    assert_eq!(
        small("3.1", "50 ft").reach.outcome,
        ReachOutcome::Professional
    );
    assert_eq!(
        small("3", "51 ft").reach.outcome,
        ReachOutcome::Professional
    );
    let shrub = ask(&near(tree("common buckthorn", "2"), "building", "2 ft"));
    assert_eq!(
        shrub.reach.outcome,
        ReachOutcome::Inside,
        "a shrub of any height"
    );
    // Lines and defects are unchanged by size.
    let line = with(
        near(tree("Norway maple", "2"), "path", "3 ft"),
        json!({ "height": "20 ft", "line_within_reach": "yes" }),
    );
    assert_eq!(ask(&line).reach.outcome, ReachOutcome::Line);
    let weak = with(
        near(tree("Norway maple", "2"), "path", "3 ft"),
        json!({ "height": "20 ft", "signs": ["cracks"] }),
    );
    assert_eq!(ask(&weak).reach.outcome, ReachOutcome::Professional);
}

/// Our own assumption (model of the reach): up to 6 in, measured, 35 ft at most, beside nothing but what can be closed.
#[test]
fn a_trail_crew_s_small_tree_is_no_stop_beside_a_path_and_is_one_beside_anything_else() {
    let beside = |kind: &str, diameter: &str, height: Value| {
        let asked = near(tree("common buckthorn", diameter), kind, "15 ft");
        ask(&with(
            asked,
            json!({ "height": height, "height_confirmed": true }),
        ))
    };
    let path = |diameter: &str, height: &str| beside("path", diameter, json!(height));
    let four = path("4", "22 ft");
    assert_eq!(
        (four.reach.outcome, four.reach.why),
        (ReachOutcome::Inside, Why::TrailTree)
    );
    assert!(!speaks(&four, "HZ1") && !speaks(&four, "HZ2"));
    for (diameter, height, outcome) in [
        ("6", "35 ft", ReachOutcome::Inside),
        ("6.1", "35 ft", ReachOutcome::Professional),
        ("6", "35.1 ft", ReachOutcome::Professional),
    ] {
        assert_eq!(
            path(diameter, height).reach.outcome,
            outcome,
            "{diameter} {height}"
        );
    }
    assert_eq!(
        beside("path", "4", Value::Null).reach.outcome,
        ReachOutcome::Professional,
        "a height that is only estimated"
    );
    for kind in ["building", "road", "property_line"] {
        assert_eq!(
            beside(kind, "4", json!("22 ft")).reach.outcome,
            ReachOutcome::Professional,
            "{kind}"
        );
    }
    assert_eq!(
        beside("line", "4", json!("22 ft")).reach.outcome,
        ReachOutcome::Line
    );
    // Nothing else within one and a half heights, 33 ft.
    let beside_a_building = |distance: &str| {
        ask(&with(
            tree("common buckthorn", "4"),
            json!({ "none_in_reach": false, "line_within_reach": "no", "height": "22 ft",
                "targets": [{ "kind": "path", "distance": "15 ft" },
                    { "kind": "building", "distance": distance }] }),
        ))
    };
    assert!(!beside_a_building("30 ft").reach.trail);
    assert!(beside_a_building("34 ft").reach.trail);
    // A building without a distance is not known to stand outside.
    let unknown = with(
        tree("common buckthorn", "4"),
        json!({ "none_in_reach": false, "line_within_reach": "no", "height": "22 ft",
            "targets": [{ "kind": "path", "distance": "15 ft" }, { "kind": "building" }] }),
    );
    assert_eq!(ask(&unknown).reach.outcome, ReachOutcome::Professional);
}

fn ask_of(asked: &calc::question::Question) -> calc::answer::Answer {
    calc::answer::without_changes(reference(), asked, &calc::models::season::Local::default())
}

/// A limit that is met is not under it, whatever a product of floats makes of it: lengths compare to the millimetre.
#[test]
fn at_exactly_a_multiple_of_the_height_a_target_is_on_the_far_side_of_it() {
    let mut seen = 0;
    for tenths in 100..=900_u32 {
        let feet = f64::from(tenths) / 10.0;
        let at = |times: f64| {
            let asked = near(
                with(
                    tree("Scots pine", "12"),
                    json!({ "height": format!("{feet} ft"), "height_confirmed": true }),
                ),
                "road",
                &format!("{:.2} ft", feet * times),
            );
            question(&asked)
        };
        for (times, outcome) in [
            (1.0, ReachOutcome::Inside),
            (1.5, ReachOutcome::ClearPeopleOut),
            (2.0, ReachOutcome::Clear),
        ] {
            let asked = at(times);
            // A height below what is believed is judged by the taller one.
            let used = ask_of(&asked).height.hazard_m;
            if (used - feet * M_PER_FT).abs() > 1e-9 {
                continue;
            }
            seen += 1;
            let reach = calc::models::reach::judge(
                &reference().constants.reach,
                &asked.tree,
                used,
                true,
                used,
            );
            assert_eq!(reach.outcome, outcome, "{feet} ft, {times} heights");
        }
    }
    assert!(seen > 1500, "{seen}");
}

#[test]
fn several_stems_reach_as_far_as_the_largest_and_the_spared_one_counts() {
    let stems = json!([{ "diameter": "6" }, { "diameter": "16" }, { "diameter": "9" }]);
    let all = ask(&with(tree("Norway maple", "1"), json!({ "stems": stems })));
    let one = ask(&tree("Norway maple", "16"));
    assert_eq!(all.reach.zone_m, one.reach.zone_m);
    let spared = ask(&with(
        tree("Norway maple", "1"),
        json!({ "stems": stems, "goal": "spare_one", "spare": 1 }),
    ));
    assert_eq!(spared.reach.zone_m, one.reach.zone_m);
    assert!(speaks(&spared, "HZ9"), "several stems fall as a group");
}

#[test]
fn an_unknown_species_without_a_height_is_not_checked_and_with_nothing_in_reach_goes_by_the_tallest_tree()
 {
    let open = ask(&near(tree("unknown broadleaf", "14"), "path", "400 ft"));
    assert_eq!(
        (open.reach.outcome, open.reach.why),
        (ReachOutcome::NotChecked, Why::HeightUnknown)
    );
    let none = ask(&tree("unknown broadleaf", "14"));
    assert_eq!(none.reach.outcome, ReachOutcome::Clear);
    let measured = with(
        near(tree("unknown broadleaf", "14"), "path", "400 ft"),
        json!({ "height": "50 ft" }),
    );
    assert_eq!(ask(&measured).reach.outcome, ReachOutcome::Clear);
}

#[test]
fn measure_the_height_first_is_said_only_where_a_low_and_a_tall_tree_give_different_answers() {
    let at = |distance: &str| ask(&near(tree("Norway maple", "14"), "path", distance)).height;
    let plain = ask(&tree("Norway maple", "14")).height;
    let (small, tall) = (plain.smallest_m, plain.tallest_m * 1.30);
    let between = (small + tall) / 2.0 * 1.5;
    let height = at(&format!("{between:.2} m"));
    assert!(height.measure_first);
    near_to(
        height.changes_at_m.expect("a height"),
        (between * 100.0).round() / 150.0,
        1e-6,
        "where it changes",
    );
    assert!(
        !at(&format!("{:.2} m", small * 1.5 - 0.5)).measure_first,
        "both are inside"
    );
    assert!(
        !at(&format!("{:.2} m", tall * 1.5 + 0.5)).measure_first,
        "both are clear"
    );
}

/// Own rule: the worst first, then the nearest; what has no distance may be the nearest of all.
#[test]
fn targets_stand_in_the_order_of_what_they_come_to_and_then_of_their_distance_however_they_are_listed()
 {
    let order = |targets: Value| -> Vec<Option<f64>> {
        let asked = with(
            tree("Norway maple", "14"),
            json!({ "none_in_reach": false, "line_within_reach": "no", "height": "50 ft",
                "height_confirmed": true, "targets": targets }),
        );
        let feet = |m: f64| (m / 0.3048).round();
        let reach = ask_plain(&asked).reach;
        reach
            .targets
            .iter()
            .map(|it| it.distance_m.map(feet))
            .collect()
    };
    let keep = |distance: &str| json!({ "kind": "keep_tree", "distance": distance });
    let path = |distance: &str| json!({ "kind": "path", "distance": distance });
    assert_eq!(
        order(
            json!([keep("30 ft"), path("65 ft"), { "kind": "keep_tree" }, path("60 ft"), keep("2 ft")])
        ),
        [Some(60.0), Some(65.0), None, Some(2.0), Some(30.0)]
    );
}

/// Of two targets that come to the same the nearer decides, and of two that are alike the first that was listed.
#[test]
fn the_nearest_of_the_worst_decides_and_targets_that_are_alike_keep_their_order() {
    let path = |distance: &str| json!({ "kind": "path", "distance": distance });
    let reach = of_50_ft(json!({ "targets": [path("40 ft"), path("30 ft")] }));
    let decides = reach.decided_by.expect("a target");
    near_to(
        reach.targets[decides].distance_m.expect("a distance"),
        30.0 * M_PER_FT,
        1e-9,
        "30 ft",
    );
    let reach = of_50_ft(json!({ "targets": [path("40 ft"), path("40 ft"), path("40 ft")] }));
    let order: Vec<_> = reach.targets.iter().map(|target| target.index).collect();
    assert_eq!(order, [Some(0), Some(1), Some(2)]);
}

/// Own rule: from 20 % on, and only downhill.
#[test]
fn ground_counts_as_downhill_where_it_is_both_steep_and_falls_towards_what_stands_there() {
    for (slope, downhill, counts) in [
        ("25 %", true, true),
        ("20 %", true, true),
        ("19 %", true, false),
        ("25 %", false, false),
    ] {
        let reach = of_50_ft(json!({ "targets": [
            { "kind": "path", "distance": "90 ft", "slope": slope, "downhill": downhill },
        ] }));
        assert_eq!(reach.targets[0].downhill, counts, "{slope} {downhill}");
    }
}

/// 52 ft lie beyond one height of 50 ft, if by less than a metre: what stops there is the slope.
#[test]
fn why_very_steep_ground_stops_is_told_apart_from_what_the_tree_can_land_on() {
    let why = |distance: &str| {
        of_50_ft(json!({ "targets": [
            { "kind": "path", "distance": distance, "slope": "40 %", "downhill": true },
        ] }))
        .why
    };
    assert_eq!(why("49 ft"), Why::CanLand);
    assert_eq!(why("52 ft"), Why::TooSteep);
}

/// Something lies in the zone, and something else may lie nearer: its distance decides who may cut at all.
#[test]
fn a_distance_that_is_not_known_is_asked_even_where_another_target_is_in_the_zone() {
    let asked = |targets: Value| {
        ask(&with(
            tree("Norway maple", "5"),
            json!({ "height": "40 ft", "none_in_reach": false, "line_within_reach": "no",
                "targets": targets }),
        ))
    };
    let road = json!({ "kind": "road", "distance": "50 ft" });
    assert_ne!(asked(json!([road])).outcome, Outcome::CannotTell);
    let open = asked(json!([road, { "kind": "building" }]));
    assert_eq!(
        (open.outcome, open.headline_method),
        (Outcome::CannotTell, Method::LeaveIt)
    );
}
