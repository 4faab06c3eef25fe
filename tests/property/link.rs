//! A question put into a link and read back is the same question, but for what a link never tells.

use crate::make::{Maker, plain};
use crate::support::{reference, try_read};
use calc::question::{PlaceTyped, Question, Text, Typed, read};
use calc::terms::place::Hemisphere;
use calc_view::form::Sheet;
use calc_view::share;
use serde_json::{Value, json};
use std::collections::BTreeSet;

fn typed(question: &Value) -> Typed {
    serde_json::from_value(question.clone()).expect("a question")
}

fn is_south(question: &Question) -> bool {
    question.place.hemisphere() == Hemisphere::South
}

/// What a link tells of a question.
fn told(mut typed: Typed, south: bool) -> Typed {
    let metric = typed
        .units
        .as_ref()
        .is_some_and(|units| units.trimmed() == "metric");
    typed.units = Some(Text::from(if metric { "metric" } else { "us" }));
    typed.place = south.then(|| PlaceTyped {
        hemisphere: Some(Text::from("south")),
        ..PlaceTyped::default()
    });
    typed.today = None;
    typed.spring = None;
    typed.spring_scale = None;
    typed.rate = None;
    typed.timed = None;
    typed.height_aid = None;
    typed.visit = None;
    typed.leafed_out = typed.leafed_out.filter(|leaf| leaf.place.is_none());
    // Nothing typed is as good as no field.
    let value = serde_json::to_value(&typed).expect("JSON");
    serde_json::from_value(without_empty(value)).expect("a question")
}

fn without_empty(value: Value) -> Value {
    match value {
        Value::Object(all) => all
            .into_iter()
            .filter(|(_, value)| value != "" && !value.is_null())
            .map(|(key, value)| (key, without_empty(value)))
            .collect(),
        Value::Array(all) => all.into_iter().map(without_empty).collect(),
        value => value,
    }
}

#[test]
fn a_link_gives_the_question_back_and_answers_alike() {
    let mut make = Maker::new(411);
    let (mut told_ones, mut long, mut alike) = (0, 0, 0);
    for _ in 0..3000 {
        let (value, question) = make.good();
        let asked = typed(&value);
        let south = is_south(&question);
        let Some(link) = share::write(&asked, south) else {
            long += 1;
            continue;
        };
        assert!(link.len() <= share::LONGEST, "{link}");
        assert!(
            link.is_ascii() && !link.contains([' ', '#', '"', '<']),
            "{link}"
        );
        let shared = share::read(&link).expect("it is short enough");
        assert_eq!(shared.unknown, [""; 0], "{link}");
        assert_eq!(shared.typed, told(asked.clone(), south), "{link}\n{value}");
        told_ones += 1;
        // Where no point was given nothing is lost, so the answer is the same.
        let bare = value["place"]["latitude"].is_null() && value["date"] != "year";
        if bare {
            let again = read(reference(), &shared.typed).expect("a good question");
            assert_eq!(plain(&again), plain(&question), "{link}");
            alike += 1;
        }
    }
    assert!(
        told_ones > 2000 && long > 10 && alike > 500,
        "{told_ones} {long} {alike}"
    );
}

#[test]
fn the_form_that_a_link_fills_asks_the_same() {
    let mut make = Maker::new(412);
    let today = calc::question::read_day("2027-05-01").expect("a day");
    for _ in 0..300 {
        let (value, question) = make.good();
        let sheet = Sheet::of(reference(), &typed(&value), today);
        let asked = sheet.typed(reference(), today);
        if let Some(link) = share::write(&asked, is_south(&question)) {
            let shared = share::read(&link).expect("short enough").typed;
            let again = Sheet::of(reference(), &shared, today).typed(reference(), today);
            let mut wanted = told(asked, is_south(&question));
            wanted.today = again.today.clone();
            assert_eq!(
                told(again.clone(), is_south(&question)).stems,
                wanted.stems,
                "{link}"
            );
            assert_eq!(again.targets, wanted.targets, "{link}");
            assert_eq!(again.species, wanted.species, "{link}");
            assert_eq!(again.date, wanted.date, "{link}");
        }
    }
}

/// Fields of a question that a link never tells, and why.
const NEVER: [(&str, &str); 9] = [
    ("version", "the link has its own"),
    ("today", "the reader's own"),
    ("spring", "a table"),
    ("spring_scale", "a table"),
    ("rate", "a crew's own"),
    ("timed", "a crew's own"),
    ("height_aid", "the height itself is told"),
    ("visit", "of a tree that was ringed already"),
    ("place", "the half of the world alone"),
];

#[test]
fn every_field_of_a_question_is_told_or_left_out_on_purpose() {
    let whole = json!({
        "version": 1, "units": "metric", "species": "ash", "stems": [{ "girth": "88,5", "bark": "3 mm", "live_share": "80" }],
        "setting": "woods", "date": "2027-06-12", "today": "2027-06-01",
        "place": { "latitude": "-41.123", "longitude": "174.456", "elevation": "21" },
        "region": "NZ", "leafed_out": { "stage": "buds_open", "date": "2027-10-01" },
        "spring": "2027-03-01, 2, 9", "spring_scale": "celsius", "height": "20 m", "height_confirmed": true, "size_confirmed": true,
        "targets": [{ "kind": "line", "distance": "30 m", "slope": "20", "downhill": true, "voltage": "12" }],
        "line_within_reach": "yes", "none_in_reach": true, "condition": "alive", "signs": ["cavity", "vines"],
        "herbicide": "no", "goal": "kill", "spare": 1, "whole_clone": "no", "same_genus_near": "no", "vigour": "slow",
        "dry_spell": "none", "limbs": "none", "walk": "3", "practised": true,
        "rate": { "log_mean": 0.125, "log_sd": 0.25 }, "cannot_wait": true,
        "timed": { "trees": ["12"], "minutes": "0.125" }, "visit": { "at": "2027-06-01" },
        "height_aid": { "by": "angles", "distance": "174", "top": "41", "foot": "0" },
    });
    let mut asked = typed(&whole);
    let every = serde_json::to_value(&asked).expect("JSON");
    let every: BTreeSet<_> = every
        .as_object()
        .expect("an object")
        .keys()
        .cloned()
        .collect();
    let given: BTreeSet<_> = whole
        .as_object()
        .expect("an object")
        .keys()
        .cloned()
        .collect();
    assert_eq!(every, given, "each field of a question is set here");
    // All at once is more than a link takes: so the question is told in two halves.
    assert_eq!(share::write(&asked, true), None);
    let mut read_back = BTreeSet::new();
    for half in 0..2 {
        asked = typed(&whole);
        if half == 0 {
            asked.targets.clear();
            asked.signs.clear();
            asked.goal = None;
            asked.dry_spell = None;
        } else {
            for field in [
                &mut asked.whole_clone,
                &mut asked.same_genus_near,
                &mut asked.line_within_reach,
            ] {
                *field = None;
            }
            asked.leafed_out = None;
        }
        let link = share::write(&asked, true).expect("half of it fits");
        for secret in ["41", "174", "21", "0.125", "2027-03", "celsius", "06-01"] {
            assert!(!link.contains(secret), "{secret} is in {link}");
        }
        let shared = share::read(&link).expect("short enough");
        assert_eq!(shared.typed, told(asked.clone(), true), "{link}");
        let value = without_empty(serde_json::to_value(&shared.typed).expect("JSON"));
        for (key, value) in value.as_object().expect("an object") {
            if *value != json!(false) && *value != json!([]) {
                read_back.insert(key.clone());
            }
        }
    }
    let missing: Vec<_> = every.difference(&read_back).collect();
    let never: Vec<_> = NEVER.iter().map(|(field, _)| *field).collect();
    for field in missing {
        assert!(never.contains(&&**field), "{field} is not told by a link");
    }
}

/// Links as they were made by version 1: they open for good.
const OLD: [(&str, &str); 3] = [
    (
        "v=1&species=Norway+maple&date=2027-06-12&region=US-MA&none_in_reach=yes&line_within_reach=no&size-unit=in&size=14+1%2F2",
        "14 1/2",
    ),
    (
        "v=1&species=Robinia+pseudoacacia&date=2027-10-02&size-unit=cm&girth=88%2C5&size=12&target=road&distance=12+m&slope=20&downhill=yes&hemisphere=south",
        "12",
    ),
    (
        "v=1&species=unknown+conifer&date=year&size-unit=cm&size=61&sign=cavity&sign=conks&spare=0&goal=kill&leaf=buds_open&leaf_date=2027-05-01",
        "61",
    ),
];

#[test]
fn links_of_the_first_version_still_open() {
    for (link, size) in OLD {
        let shared = share::read(link).expect("short enough");
        assert_eq!(shared.unknown, [""; 0], "{link}");
        let last = shared.typed.stems.last().expect("a stem");
        assert_eq!(last.diameter, Some(Text::from(size)), "{link}");
        let mut typed = shared.typed;
        typed.today = Some(Text::from("2027-06-01"));
        assert!(
            read(reference(), &typed).is_ok() || typed.goal.is_some(),
            "{link}"
        );
    }
}

#[test]
fn what_a_link_does_not_know_is_named_and_harms_nothing() {
    let shared =
        share::read("v=2&species=ash&crew=7&%F0%9F%8C%B3=x&size=9&bark").expect("short enough");
    assert_eq!(shared.unknown, ["v", "crew", "🌳"]);
    assert_eq!(shared.typed.species, Some(Text::from("ash")));
    assert_eq!(shared.typed.stems.len(), 1);
    assert_eq!(share::read(&"v=1&species=".repeat(40)), None, "too long");
    // Whatever stands there, it is read without harm.
    let mut make = Maker::new(413);
    for _ in 0..4000 {
        let text: String = (0..make.one(&[3, 20, 90]))
            .map(|_| {
                make.one(&[
                    "%",
                    "&",
                    "=",
                    "+",
                    "size",
                    "target",
                    "v=1",
                    "é",
                    "%C3",
                    "%zz",
                    "spare=9999999999",
                    "<b>",
                    "\u{1}",
                ])
            })
            .collect();
        if let Some(shared) = share::read(&text) {
            let _ = try_read(&serde_json::to_value(&shared.typed).expect("JSON"));
            let _ = share::write(&shared.typed, false);
        }
    }
}

#[test]
fn a_draft_is_what_stood_in_the_form() {
    let mut make = Maker::new(414);
    let today = calc::question::read_day("2027-05-01").expect("a day");
    for _ in 0..300 {
        let (value, _) = make.good();
        let mut sheet = Sheet::of(reference(), &typed(&value), today);
        sheet.set("find", "maple & <b>=+% ü 🌳\n\u{a0}");
        let again = Sheet::unpack(&sheet.pack());
        for name in [
            "find",
            "species",
            "stems[0].diameter",
            "targets[0].distance",
            "place.latitude",
            "day",
        ] {
            assert_eq!(again.get(name), sheet.get(name), "{value}");
        }
        assert_eq!(again.typed(reference(), today), {
            let mut typed = sheet.typed(reference(), today);
            typed.rate = None;
            typed
        });
    }
}
