//! Bad input: what is taken, what is refused, with which field and code, all at once. The names are those that the
//! interface promises; nothing is ever guessed.
//! The interface compared with its own promises; no outside source.

mod fields;
mod size;

use crate::support::*;
use calc::question::{Problem, Typed, read};
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
    near_to(asked.tree.stems[0].dbh.mm(), 14.5 * 25.4, 1e-9, "diameter");
    near_to(
        asked.tree.stems[0].bark.expect("bark").mm(),
        10.16,
        1e-9,
        "bark",
    );
    near_to(
        asked.tree.height.expect("a height").m(),
        52.0 * 0.3048,
        1e-9,
        "height",
    );
    near_to(
        asked.tree.targets[0].distance.expect("a distance").m(),
        60.96,
        1e-9,
        "distance",
    );
    assert_eq!(
        asked.tree.targets[0].slope.expect("a slope").percent(),
        10.0
    );
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
        assert_eq!(question(&asked).tree.signs.len(), 1, "{sign}");
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
        json!({ "version": 1.5 }),
        json!({ "spare": -1 }),
        json!({ "spare": 0.5 }),
        json!({ "targets": "none" }),
        // A list of an object's values in order is no object, as in the page.
        json!({ "place": ["42", "-71"] }),
        json!({ "stems": [["14"]] }),
        json!({ "rate": [0.1, 0.2] }),
        json!({ "timed": [["14"], "3"] }),
    ] {
        let asked = with(promised(), fields.clone());
        assert!(serde_json::from_value::<Typed>(asked).is_err(), "{fields}");
    }
    assert!(serde_json::from_value::<Typed>(json!([1, "us", "ash"])).is_err());
    let number = stem(json!({ "diameter": 14.5 }));
    assert_eq!(
        question(&number).tree.stems[0].dbh,
        question(&diameter("14.5")).tree.stems[0].dbh
    );
}

/// RFC 8259, section 6: 1.0 is the number 1, and JavaScript knows no other.
#[test]
fn a_whole_number_may_be_written_with_a_fraction_of_nothing() {
    let read = |text: &str| serde_json::from_str::<Typed>(text).expect("a question");
    assert_eq!(
        read(r#"{"version": 1.0, "spare": 2.0}"#),
        read(r#"{"version": 1, "spare": 2}"#)
    );
}

#[test]
fn what_is_null_is_left_out_whatever_it_would_be() {
    let mut asked = promised();
    let left_out = [
        "units",
        "targets",
        "signs",
        "height",
        "height_aid",
        "cannot_wait",
        "spare",
        "rate",
        "timed",
        "practised",
    ];
    for name in left_out {
        asked[name] = Value::Null;
    }
    let mut without = promised();
    without
        .as_object_mut()
        .expect("an object")
        .retain(|name, _| !left_out.contains(&name.as_str()));
    assert_eq!(
        serde_json::from_value::<Typed>(asked).expect("a question"),
        serde_json::from_value::<Typed>(without).expect("a question")
    );
}

/// A spread of 1e-320 made the minutes no number: the square of its inverse has no end.
#[test]
fn a_rate_whose_spread_is_next_to_nothing_is_refused() {
    let rate = |log_sd: f64| {
        with(
            tree("Norway maple", "14"),
            json!({ "rate": { "log_mean": 0.1, "log_sd": log_sd } }),
        )
    };
    for log_sd in [0.0, 1e-320, 9.9e-7, 2.0, -0.1] {
        assert_eq!(
            only(&rate(log_sd)),
            ("rate".to_owned(), "not_a_rate"),
            "{log_sd}"
        );
    }
    let effort = ask_plain(&rate(1e-6)).effort.expect("a ring");
    assert!(
        effort.low_min > 0.0 && effort.likely_min > effort.low_min && effort.high_min.is_finite()
    );
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
        "region": "Atlantis",
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
                assert!(question.tree.stems[0].dbh.mm().is_finite(), "{text:?}");
            }
        }
        for field in [
            "species", "date", "region", "height", "walk", "goal", "units",
        ] {
            let _ = try_read(&with(tree("Norway maple", "14"), json!({ field: text })));
        }
    }
}
