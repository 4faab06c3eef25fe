//! Sizes: every way in which people write one, and what is none.

use super::{diameter, only, problems, stem, target};
use crate::support::*;
use calc::question::Code;
use serde_json::{Value, json};

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
            question(&diameter(text)).tree.stems[0].dbh.mm(),
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
        asked.tree.stems[0].dbh.mm(),
        368.3,
        1e-9,
        "a bare number is centimetres",
    );
    near_to(
        asked.tree.stems[0].bark.expect("bark").mm(),
        10.0,
        1e-9,
        "millimetres",
    );
    near_to(
        asked.tree.height.expect("a height").m(),
        16.0,
        1e-9,
        "metres",
    );
    let girth = stem(json!({ "girth": "45.55 in" }));
    near_to(
        question(&girth).tree.stems[0].dbh.mm(),
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
        ("500", "out_of_range"),
        ("145", "size_in_doubt"),
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
    assert_eq!(shown(&diameter("500")).unit, "in");
    let metric = with(diameter("1300"), json!({ "units": "metric" }));
    assert_eq!(
        (shown(&metric).unit, shown(&metric).range.high),
        ("cm", 1200.0)
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

/// A lost decimal point makes such sizes; the widest trees on earth are wider still (the General Sherman tree has some
/// 25 ft, the cypress of Tule 38 ft, both from memory). The 72 in from which on it is asked are our own assumption.
#[test]
fn a_trunk_wider_than_almost_any_is_asked_about_and_read_once_it_is_confirmed() {
    let doubt = |asked: &Value| match &try_read(asked).expect_err("a doubt")[..] {
        [problem] => match problem.code {
            Code::SizeInDoubt(doubt) => (problem.field.clone(), problem.typed.clone(), doubt),
            _ => panic!("{problem:?}"),
        },
        all => panic!("{all:?}"),
    };
    let (field, typed, read) = doubt(&diameter("145"));
    assert_eq!(
        (field.as_str(), typed.as_str(), read.number, read.unit),
        ("stems[0].diameter", "145", 145.0, "in")
    );
    near_to(read.across_m, 145.0 * 0.0254, 1e-9, "across");
    let around = doubt(&stem(json!({ "girth": "455 in" })));
    assert_eq!((around.0.as_str(), around.2.unit), ("stems[0].girth", "in"));
    near_to(
        around.2.across_m,
        455.0 * 0.0254 / std::f64::consts::PI,
        1e-9,
        "across",
    );
    let metric = with(diameter("365"), json!({ "units": "metric" }));
    assert_eq!(doubt(&metric).2.unit, "cm");
    assert_eq!(problems(&diameter("72")), []);
    for size in ["145", "25 ft", "38 ft"] {
        let sure = with(diameter(size), json!({ "size_confirmed": true }));
        assert!(question(&sure).tree.stems[0].dbh.mm() > 1829.0, "{size}");
    }
}
