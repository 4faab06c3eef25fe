//! Bad input: what is taken, what is refused, with which field and code, all at once. The names are those that the
//! interface promises; nothing is ever guessed.

use crate::support::*;
use calc::question::{Code, Problem, Typed, read};
use serde_json::{Value, json};

/// Field and code of each problem.
fn problems(asked: &Value) -> Vec<(String, &'static str)> {
    try_read(asked)
        .err()
        .unwrap_or_default()
        .into_iter()
        .map(|problem| (problem.field, problem.code.name()))
        .collect()
}

/// The one problem of a question.
#[track_caller]
fn only(asked: &Value) -> (String, &'static str) {
    let all = problems(asked);
    assert_eq!(all.len(), 1, "{all:?} in {asked}");
    all.into_iter().next().expect("one problem")
}

/// One stem with these fields.
fn stem(fields: Value) -> Value {
    with(tree("Norway maple", "1"), json!({ "stems": [fields] }))
}

fn diameter(text: &str) -> Value {
    stem(json!({ "diameter": text }))
}

fn target(fields: Value) -> Value {
    with(
        tree("Norway maple", "14"),
        json!({ "none_in_reach": false, "line_within_reach": "no", "targets": [fields] }),
    )
}

/// The question of the issue, word for word: every name that outside checks read.
fn promised() -> Value {
    json!({
        "version": 1, "units": "us", "species": "Norway maple",
        "stems": [{ "diameter": "14 1/2 in", "live_share": "100 %", "bark": "0.4 in" }],
        "setting": "open", "date": "2027-06-12",
        "place": { "latitude": "42.36", "longitude": "-71.06", "elevation": "15 m" },
        "region": "US-MA", "leafed_out": { "stage": "buds_open", "date": "2027-04-30" },
        "height": "52 ft",
        "targets": [{ "kind": "path", "distance": "200 ft", "slope": "10 %", "downhill": false }],
        "line_within_reach": "no", "none_in_reach": false, "condition": "alive", "signs": ["cavity"],
        "herbicide": "not_said", "goal": "wildlife", "whole_clone": "yes", "same_genus_near": "no",
        "vigour": "ordinary", "dry_spell": "none", "limbs": "none", "cannot_wait": false
    })
}

#[test]
fn the_question_as_promised_is_taken_and_means_what_it_says() {
    let asked = question(&promised());
    near_to(asked.stems[0].dbh.mm(), 14.5 * 25.4, 1e-9, "diameter");
    near_to(asked.stems[0].bark.expect("bark").mm(), 10.16, 1e-9, "bark");
    near_to(
        asked.height.expect("a height").m(),
        52.0 * 0.3048,
        1e-9,
        "height",
    );
    near_to(
        asked.targets[0].distance.expect("a distance").m(),
        60.96,
        1e-9,
        "distance",
    );
    assert_eq!(asked.targets[0].slope.expect("a slope").percent(), 10.0);
    assert_eq!(asked.region.as_deref(), Some("US-MA"));
}

#[test]
fn only_version_species_one_stem_and_date_are_needed() {
    let least = json!({
        "version": 1, "species": "Norway maple", "stems": [{ "diameter": "14" }], "date": "2027-06-12",
    });
    assert_eq!(problems(&least), []);
    for (field, code, at) in [
        ("version", "wrong_version", "version"),
        ("species", "missing", "species"),
        ("stems", "no_stem", "stems"),
        ("date", "missing", "date"),
    ] {
        let (got, name) = only(&with(least.clone(), json!({ field: null })));
        assert_eq!((got.as_str(), name), (at, code), "without {field}");
    }
    for version in [0, 2] {
        let asked = with(least.clone(), json!({ "version": version }));
        assert_eq!(only(&asked), ("version".into(), "wrong_version"));
    }
}

#[test]
fn every_word_of_every_list_is_taken_and_another_names_the_list() {
    for (field, words) in [
        ("units", vec!["us", "metric"]),
        ("setting", vec!["woods", "open"]),
        ("condition", vec!["alive", "declining", "dead"]),
        ("line_within_reach", vec!["yes", "no", "cant_tell"]),
        ("herbicide", vec!["not_said", "no", "licensed", "yes"]),
        ("goal", vec!["wildlife", "kill"]),
        ("whole_clone", vec!["not_said", "yes", "no"]),
        ("same_genus_near", vec!["not_said", "yes", "no"]),
        ("vigour", vec!["slow", "ordinary", "fast"]),
        ("dry_spell", vec!["none", "two_weeks", "month"]),
        ("limbs", vec!["none", "some", "many"]),
    ] {
        for word in words {
            let asked = with(tree("Norway maple", "14"), json!({ field: word }));
            assert_eq!(problems(&asked), [], "{field} {word}");
        }
        for word in ["perhaps", "YES", "true"] {
            let asked = with(tree("Norway maple", "14"), json!({ field: word }));
            assert_eq!(only(&asked), (field.into(), "not_one_of"), "{field} {word}");
        }
        let empty = with(tree("Norway maple", "14"), json!({ field: "" }));
        assert_eq!(problems(&empty), [], "{field} left empty");
    }
    for sign in [
        "cavity",
        "cracks",
        "conks",
        "hung_limbs",
        "lean_toward",
        "lean_away",
        "dead_top",
        "vines",
    ] {
        let asked = with(tree("Norway maple", "14"), json!({ "signs": [sign, sign] }));
        assert_eq!(question(&asked).signs.len(), 1, "{sign}");
    }
    let asked = with(
        tree("Norway maple", "14"),
        json!({ "signs": ["cavity", "moss"] }),
    );
    assert_eq!(only(&asked), ("signs[1]".into(), "not_one_of"));
    for kind in [
        "building",
        "road",
        "path",
        "line",
        "property_line",
        "fence",
        "keep_tree",
    ] {
        assert_eq!(
            problems(&target(json!({ "kind": kind, "distance": "900 ft" }))),
            [],
            "{kind}"
        );
    }
    let shed = target(json!({ "kind": "shed", "distance": "900 ft" }));
    assert_eq!(only(&shed), ("targets[0].kind".into(), "not_one_of"));
    let none = target(json!({ "distance": "900 ft" }));
    assert_eq!(only(&none), ("targets[0].kind".into(), "missing"));
    for stage in ["buds_open", "leaves_full", "first_leaf"] {
        let seen = json!({ "leafed_out": { "stage": stage, "date": "2027-04-30" } });
        assert_eq!(
            problems(&with(tree("Norway maple", "14"), seen)),
            [],
            "{stage}"
        );
    }
}

#[test]
fn an_unknown_key_is_refused_by_its_name_wherever_it_stands() {
    for (asked, name) in [
        (with(promised(), json!({ "diametre": "14" })), "diametre"),
        (stem(json!({ "diameter": "14", "dbh": "14" })), "dbh"),
        (
            target(json!({ "kind": "path", "distance": "900 ft", "far": true })),
            "far",
        ),
        (with(promised(), json!({ "place": { "lat": "42" } })), "lat"),
        (
            with(promised(), json!({ "leafed_out": { "day": "2027-04-30" } })),
            "day",
        ),
    ] {
        let error = serde_json::from_value::<Typed>(asked)
            .expect_err(name)
            .to_string();
        assert!(
            error.contains(&format!("unknown field `{name}`")),
            "{error}"
        );
    }
}

#[test]
fn a_wrong_type_is_refused_and_a_number_is_read_as_if_it_were_typed() {
    for fields in [
        json!({ "species": ["Norway maple"] }),
        json!({ "stems": { "diameter": "14" } }),
        json!({ "none_in_reach": "yes" }),
        json!({ "version": "1" }),
        json!({ "spare": -1 }),
        json!({ "targets": "none" }),
    ] {
        let asked = with(promised(), fields.clone());
        assert!(serde_json::from_value::<Typed>(asked).is_err(), "{fields}");
    }
    let number = stem(json!({ "diameter": 14.5 }));
    assert_eq!(
        question(&number).stems[0].dbh,
        question(&diameter("14.5")).stems[0].dbh
    );
}

#[test]
fn a_size_is_taken_in_every_way_that_people_write_it() {
    for text in [
        "14 1/2 in",
        "14½",
        "14-1/2\"",
        "14.5",
        "14,5",
        "29/2",
        " 14.5  inches",
        "1 ft 2 1/2 in",
        "36.83 cm",
        "368.3 mm",
        "0.3683 m",
    ] {
        near_to(
            question(&diameter(text)).stems[0].dbh.mm(),
            368.3,
            1e-9,
            text,
        );
    }
    let metric = with(
        stem(json!({ "diameter": "36.83", "bark": "10" })),
        json!({ "units": "metric", "height": "16" }),
    );
    let asked = question(&metric);
    near_to(
        asked.stems[0].dbh.mm(),
        368.3,
        1e-9,
        "a bare number is centimetres",
    );
    near_to(
        asked.stems[0].bark.expect("bark").mm(),
        10.0,
        1e-9,
        "millimetres",
    );
    near_to(asked.height.expect("a height").m(), 16.0, 1e-9, "metres");
    let girth = stem(json!({ "girth": "45.55 in" }));
    near_to(
        question(&girth).stems[0].dbh.mm(),
        45.55 * 25.4 / std::f64::consts::PI,
        1e-9,
        "girth",
    );
}

#[test]
fn a_size_that_is_none_says_why() {
    for (text, code) in [
        ("fourteen", "wrong_unit"),
        ("14 cubits", "wrong_unit"),
        ("14 kV", "wrong_unit"),
        ("14 %", "wrong_unit"),
        ("NaN", "wrong_unit"),
        ("1/0", "not_a_number"),
        ("14 3/2", "not_a_number"),
        ("--14", "not_a_number"),
        ("1,234", "ambiguous"),
        ("1,234.5", "ambiguous"),
        ("0", "not_positive"),
        ("-14", "not_positive"),
        ("0.1", "out_of_range"),
        ("200", "out_of_range"),
        ("9999999999999999", "too_long"),
    ] {
        let (field, got) = only(&diameter(text));
        assert_eq!(field, "stems[0].diameter", "{text}");
        // A word is either no number or an unknown unit behind none.
        let fits = got == code
            || (code == "wrong_unit" && got == "not_a_number" && !text.starts_with('1'));
        assert!(fits, "{text}: {got}, not {code}");
    }
    assert_eq!(only(&diameter(&"9".repeat(1_000_000))).1, "too_long");
    assert_eq!(
        only(&diameter("")),
        ("stems[0].diameter".into(), "size_missing")
    );
    assert_eq!(
        only(&diameter("   ")),
        ("stems[0].diameter".into(), "size_missing")
    );
    let both = stem(json!({ "diameter": "14", "girth": "44" }));
    assert_eq!(
        only(&both),
        ("stems[0].girth".into(), "both_diameter_and_girth")
    );
}

#[test]
fn a_range_is_told_in_the_unit_of_the_asker() {
    let shown = |asked: &Value| match &try_read(asked).expect_err("out of range")[0].code {
        Code::OutOfRange(shown) | Code::BarkTooThick(shown) => *shown,
        code => panic!("{code:?}"),
    };
    assert_eq!(shown(&diameter("200")).unit, "in");
    let metric = with(diameter("600"), json!({ "units": "metric" }));
    assert_eq!(
        (shown(&metric).unit, shown(&metric).range.high),
        ("cm", 500.0)
    );
    let tall = with(tree("Norway maple", "14"), json!({ "height": "500 ft" }));
    assert_eq!(shown(&tall).unit, "ft");
    assert_eq!(
        shown(&target(json!({ "kind": "path", "distance": "90000" }))).unit,
        "ft"
    );
    assert_eq!(
        shown(&target(
            json!({ "kind": "line", "distance": "90", "voltage": "9000 kV" })
        ))
        .unit,
        "kV"
    );
}

#[test]
fn bark_as_thick_as_the_trunk_a_share_over_100_and_odd_slopes_are_refused_at_their_field() {
    let thick = stem(json!({ "diameter": "4", "bark": "2 in" }));
    assert_eq!(only(&thick), ("stems[0].bark".into(), "bark_too_thick"));
    for (share, code) in [
        ("101 %", "out_of_range"),
        ("-1", "out_of_range"),
        ("1 in", "wrong_unit"),
        ("half", "wrong_unit"),
    ] {
        let (field, got) = only(&stem(json!({ "diameter": "4", "live_share": share })));
        assert_eq!(field, "stems[0].live_share");
        assert!(got == code || got == "not_a_number", "{share}: {got}");
    }
    let slope = target(json!({ "kind": "path", "distance": "900 ft", "slope": "400 %" }));
    assert_eq!(only(&slope), ("targets[0].slope".into(), "out_of_range"));
    let negative = target(json!({ "kind": "path", "distance": "-5 ft" }));
    assert_eq!(
        only(&negative),
        ("targets[0].distance".into(), "not_positive")
    );
    assert_eq!(
        problems(&target(json!({ "kind": "path", "distance": "0" }))),
        [],
        "at the trunk itself"
    );
}

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
    for region in ["Wisconsin", "USA", "US-", "US-WISC", "1", "U-WI", "US_WI"] {
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

#[test]
fn all_problems_come_at_once_in_the_order_of_the_fields() {
    let bad = json!({
        "version": 2,
        "units": "furlongs",
        "species": "norway mapel",
        "stems": [{ "diameter": "fourteen", "live_share": "120 %" }, { "girth": "-3", "diameter": "4" }],
        "date": "2027-02-30",
        "place": { "latitude": "142", "longitude": "12" },
        "region": "Wisconsin",
        "height": "0",
        "targets": [{ "kind": "shed", "distance": "near" }],
        "herbicide": "maybe",
        "signs": ["moss"],
        "walk": "far",
    });
    let fields: Vec<String> = problems(&bad).into_iter().map(|(field, _)| field).collect();
    for field in [
        "units",
        "version",
        "species",
        "stems[0].diameter",
        "stems[0].live_share",
        "stems[1].girth",
        "date",
        "place.latitude",
        "region",
        "height",
        "targets[0].kind",
        "targets[0].distance",
        "herbicide",
        "signs[0]",
        "walk",
    ] {
        let count = fields.iter().filter(|known| *known == field).count();
        assert_eq!(count, 1, "{field} in {fields:?}");
    }
    assert_eq!(fields.len(), 15, "{fields:?}");
}

#[test]
fn what_was_typed_is_kept_and_shortened_to_what_a_message_can_carry() {
    let long = "x".repeat(10_000);
    let asked = tree(&long, "14");
    let problems: Vec<Problem> = try_read(&asked).expect_err("no such species");
    assert_eq!(problems[0].typed.chars().count(), 60);
    let typed: Typed = serde_json::from_value(diameter("14 cubits")).expect("text");
    assert_eq!(
        read(reference(), &typed).expect_err("cubits")[0].typed,
        "14 cubits"
    );
}

/// Bytes and signs of all kinds are a problem or a number, never a crash.
#[test]
fn odd_texts_are_answered_with_a_problem_or_a_number_and_never_with_a_crash() {
    for text in [
        "\u{0}",
        "½½",
        "١٤",
        "１４",
        "14\u{200b}",
        "💥",
        "1e400",
        "+",
        "-",
        ".",
        ",",
        "/",
        "''",
        "5'",
        "5''",
        "5' 3\" 2",
        "∞",
        "0x14",
        "14_5",
        "1 000",
        "1.000,5",
        "\u{202e}14",
        "14 in in",
        "in 14",
        "14 ½ ½",
        "½ 14",
        "-½",
        "14 - 1/2",
    ] {
        for field in ["diameter", "girth", "bark", "live_share"] {
            let mut fields = json!({ "diameter": "14", field: text });
            if field == "girth" {
                fields = json!({ "girth": text });
            }
            if let Ok(question) = try_read(&stem(fields)) {
                assert!(question.stems[0].dbh.mm().is_finite(), "{text:?}");
            }
        }
        for field in [
            "species", "date", "region", "height", "walk", "goal", "units",
        ] {
            let _ = try_read(&with(tree("Norway maple", "14"), json!({ field: text })));
        }
    }
}
