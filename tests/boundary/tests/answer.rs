//! Questions and answers as objects: what goes in is read as the interface says, what comes out is what
//! JSON has.

use calc::models::season::Local;
use calc::question::Typed;
use js_sys::{Array, JSON, Object, Reflect};
use serde_json::{Value, json};
use wasm_bindgen::JsValue;
use wasm_bindgen_test::{wasm_bindgen_test, wasm_bindgen_test_configure};
use www_element::calls;

wasm_bindgen_test_configure!(run_in_browser);

fn answer(question: &JsValue) -> JsValue {
    calls::answer(question, &JsValue::UNDEFINED)
}

fn object(json: &Value) -> JsValue {
    JSON::parse(&json.to_string()).expect("it is JSON")
}

fn value(object: &JsValue) -> Value {
    let text = JSON::stringify(object).expect("it is an object");
    serde_json::from_str(&String::from(text)).expect("it is JSON")
}

/// Field and code of each problem.
fn problems(answer: &JsValue) -> Vec<(String, String)> {
    let answer = value(answer);
    let list = answer["problems"].as_array().cloned().unwrap_or_default();
    let text = |problem: &Value, key: &str| problem[key].as_str().unwrap_or_default().to_owned();
    for problem in &list {
        let message = text(problem, "message");
        assert!(
            message.len() > 10 && message.ends_with(['.', '?']),
            "{message}"
        );
    }
    list.iter()
        .map(|problem| (text(problem, "field"), text(problem, "code")))
        .collect()
}

fn one(field: &str, code: &str) -> Vec<(String, String)> {
    vec![(field.to_owned(), code.to_owned())]
}

/// An invented question.
fn question() -> Value {
    json!({
        "version": 1, "units": "us", "species": "Norway maple",
        "stems": [{"diameter": "14 1/2 in", "live_share": "100 %", "bark": "0.4 in"}],
        "setting": "open", "date": "2027-06-12", "today": "2027-06-01",
        "place": {"latitude": "42.36", "longitude": "-71.06", "elevation": "15 m"},
        "region": "US-MA", "leafed_out": {"stage": "buds_open", "date": "2027-04-30"},
        "targets": [{"kind": "path", "distance": "200 ft", "slope": "10 %", "downhill": false}],
        "line_within_reach": "no"
    })
}

#[wasm_bindgen_test]
fn an_answer_has_the_numbers_that_json_has() {
    let found = value(&answer(&object(&question())));
    let typed: Typed = serde_json::from_value(question()).expect("a question");
    let reference = calc_data::whole();
    let read = calc::question::read(reference, &typed).expect("a good question");
    let answered = calc::answer::answer(
        reference,
        &read,
        &Local::of(
            &reference.constants.timing,
            &read.place,
            read.region.as_deref(),
            &calc::timing::places::climate::Places::default(),
        ),
    );
    // Both go through text and one reader: both writers give the shortest text of a number.
    let expected = serde_json::to_string(&answered).expect("it is data");
    let expected: Value = serde_json::from_str(&expected).expect("it is JSON");
    same("", &found, &expected);
    assert_eq!(found["outcome"], "do");
    // Missing things are null, as JSON has it, and not left out.
    assert!(
        found
            .as_object()
            .is_some_and(|answer| answer.contains_key("if"))
    );
}

#[wasm_bindgen_test]
fn without_changes_all_else_is_the_same() {
    let question = object(&question());
    let with = value(&answer(&question));
    let found = with["changes"].as_array().expect("a list");
    assert!(!found.is_empty(), "{with}");
    let ask = |options: Value| value(&calls::answer(&question, &object(&options)));
    let mut without = ask(json!({"changes": false}));
    assert_eq!(without["changes"], json!([]));
    without["changes"] = with["changes"].clone();
    same("", &without, &with);
    same("", &ask(json!({"changes": true})), &with);
    same("", &ask(json!({})), &with);
}

#[wasm_bindgen_test]
fn an_option_that_is_not_known_is_named() {
    let question = object(&question());
    for (options, field, code) in [
        (json!({"change": false}), "options.change", "unknown_key"),
        (json!({"changes": "no"}), "options.changes", "wrong_type"),
        (json!(false), "options", "wrong_type"),
        (json!([]), "options", "wrong_type"),
    ] {
        let answered = calls::answer(&question, &object(&options));
        assert_eq!(problems(&answered), one(field, code), "{options}");
    }
    let both = calls::answer(&JsValue::NULL, &object(&json!({"change": 1})));
    assert_eq!(problems(&both).len(), 2);
}

/// Equal bit for bit: JavaScript writes 120 where the other writes 120.0.
fn same(path: &str, found: &Value, expected: &Value) {
    match (found, expected) {
        (Value::Number(a), Value::Number(b)) => {
            let bits = |n: &serde_json::Number| n.as_f64().map(f64::to_bits);
            assert_eq!(bits(a), bits(b), "{path}");
        }
        (Value::Array(a), Value::Array(b)) => {
            assert_eq!(a.len(), b.len(), "{path}");
            for (at, (a, b)) in a.iter().zip(b).enumerate() {
                same(&format!("{path}[{at}]"), a, b);
            }
        }
        (Value::Object(a), Value::Object(b)) => {
            let keys =
                |map: &serde_json::Map<String, Value>| map.keys().cloned().collect::<Vec<_>>();
            assert_eq!(keys(a), keys(b), "{path}");
            for (key, a) in a {
                same(&format!("{path}.{key}"), a, &b[key]);
            }
        }
        _ => assert_eq!(found, expected, "{path}"),
    }
}

#[wasm_bindgen_test]
fn a_number_is_read_as_if_it_were_typed() {
    let mut by_number = question();
    by_number["stems"][0]["diameter"] = json!(14.5);
    let mut by_text = question();
    by_text["stems"][0]["diameter"] = json!("14.5");
    assert_eq!(
        value(&answer(&object(&by_number))),
        value(&answer(&object(&by_text)))
    );
}

#[wasm_bindgen_test]
fn a_key_that_is_not_known_is_named() {
    for (path, key) in [
        ("", "specis"),
        ("/stems/0", "girht"),
        ("/targets/0", "far"),
        ("/place", "lat"),
        ("/leafed_out", "when"),
    ] {
        let mut bad = question();
        bad.pointer_mut(path).expect("it is there")[key] = json!("1");
        let before = path
            .trim_start_matches('/')
            .replace("/0", "[0]")
            .replace('/', ".");
        let field = if before.is_empty() {
            key.to_owned()
        } else {
            format!("{before}.{key}")
        };
        assert_eq!(problems(&answer(&object(&bad))), one(&field, "unknown_key"));
    }
}

#[wasm_bindgen_test]
fn a_wrong_type_is_named() {
    for (path, wrong, field) in [
        (
            "/stems/0/diameter",
            json!({"inches": 14}),
            "stems[0].diameter",
        ),
        ("/stems/0/bark", json!(true), "stems[0].bark"),
        ("/stems", json!("14 in"), "stems"),
        ("/targets/0", json!([1]), "targets[0]"),
        ("/place/latitude", json!([42]), "place.latitude"),
        ("/leafed_out", json!("2027-04-30"), "leafed_out"),
        ("/species", json!(["ash"]), "species"),
        ("/version", json!("1"), "version"),
        ("/version", json!(1.5), "version"),
    ] {
        let mut bad = question();
        *bad.pointer_mut(path).expect("it is there") = wrong;
        assert_eq!(problems(&answer(&object(&bad))), one(field, "wrong_type"));
    }
}

#[wasm_bindgen_test]
fn no_number_and_the_infinite_are_refused() {
    for wrong in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
        let question = object(&question());
        let stem = Object::new();
        Reflect::set(&stem, &"diameter".into(), &wrong.into()).expect("it is ours");
        Reflect::set(&question, &"stems".into(), &Array::of1(&stem)).expect("it is ours");
        assert_eq!(
            problems(&answer(&question)),
            one("stems[0].diameter", "not_a_number")
        );
    }
}

#[wasm_bindgen_test]
fn anything_at_all_gets_an_answer_in_words() {
    let function = js_sys::Function::new_no_args("");
    let mut nested = Object::new();
    for _ in 0..2_000 {
        let outer = Object::new();
        Reflect::set(&outer, &"place".into(), &nested).expect("it is ours");
        nested = outer;
    }
    for wrong in [
        JsValue::NULL,
        JsValue::UNDEFINED,
        JsValue::from(5),
        JsValue::from("Norway maple"),
        JsValue::TRUE,
        JsValue::symbol(Some("maple")),
        JsValue::bigint_from_str("5"),
        Array::new().into(),
        function.into(),
        Object::new().into(),
        js_sys::Map::new().into(),
        nested.into(),
    ] {
        assert!(!problems(&answer(&wrong)).is_empty(), "{wrong:?}");
    }
}

#[wasm_bindgen_test]
fn texts_of_a_million_characters_are_read_and_shown_short() {
    let long = "9".repeat(1_000_000);
    let mut bad = question();
    for path in [
        "/species",
        "/stems/0/diameter",
        "/date",
        "/region",
        "/setting",
    ] {
        *bad.pointer_mut(path).expect("it is there") = json!(long);
    }
    let answered = answer(&object(&bad));
    assert_eq!(problems(&answered).len(), 5);
    assert!(value(&answered).to_string().len() < 3_000);
    let mut key = question();
    key[&long] = json!(1);
    let answered = answer(&object(&key));
    assert_eq!(problems(&answered)[0].1, "unknown_key");
    assert!(value(&answered).to_string().len() < 1_000);
}

#[wasm_bindgen_test]
fn the_whole_year_needs_no_day_from_the_asker() {
    let mut year = question();
    year["date"] = json!("year");
    if let Some(map) = year.as_object_mut() {
        map.remove("today");
    }
    let answered = value(&answer(&object(&year)));
    assert!(answered["advised_day"].is_string(), "{answered}");
    assert_eq!(answered["asked_day"], Value::Null);
}

/// The reader of objects has a list of keys of its own; this holds it against the question's.
#[wasm_bindgen_test]
fn every_key_of_the_question_is_known() {
    use calc::question::{
        HeightAidTyped, LeafOutTyped, PlaceTyped, StemTyped, TargetTyped, TimedTyped, VisitTyped,
    };
    let mut whole = serde_json::to_value(Typed::default()).expect("it is data");
    whole["stems"] = json!([StemTyped::default()]);
    whole["targets"] = json!([TargetTyped::default()]);
    whole["place"] = json!(PlaceTyped::default());
    whole["leafed_out"] = json!(LeafOutTyped::default());
    whole["height_aid"] = json!(HeightAidTyped::default());
    whole["timed"] = json!(TimedTyped::default());
    whole["visit"] = json!(VisitTyped::default());
    whole["leafed_out"]["place"] = json!(PlaceTyped::default());
    let found = problems(&answer(&object(&whole)));
    assert!(
        found
            .iter()
            .all(|(_, code)| code != "unknown_key" && code != "wrong_type"),
        "{found:?}"
    );
    assert!(
        found.contains(&("version".into(), "wrong_version".into())),
        "{found:?}"
    );
    // And a question with a text under each of them is read as the derived reader reads it.
    fn fill(value: &mut Value) {
        match value {
            Value::Null => *value = json!("7"),
            Value::Object(map) => map.values_mut().for_each(fill),
            Value::Array(list) => list.iter_mut().for_each(fill),
            _ => {}
        }
    }
    fill(&mut whole);
    whole["rate"] = json!({"log_mean": 0.5, "log_sd": 0.25});
    whole["version"] = json!(1);
    whole["spare"] = json!(1);
    whole["signs"] = json!(["cavity"]);
    whole["timed"]["trees"] = json!(["12", 14]);
    whole["visit"]["seen"] = json!(["sprouts"]);
    let typed: Typed = serde_json::from_value(whole.clone()).expect("a question");
    let problem = calc::question::read(calc_data::whole(), &typed).expect_err("nonsense");
    let expected: Vec<(String, String)> = problem
        .iter()
        .map(|problem| (problem.field.clone(), problem.code.name().to_owned()))
        .collect();
    assert!(expected.len() > 10);
    assert_eq!(problems(&answer(&object(&whole))), expected);
}
