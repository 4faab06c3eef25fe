//! Asking questions as the interface takes them.
#![allow(dead_code, reason = "each check uses its own part")]

use calc::answer::{Answer, answer, without_changes};
use calc::models::season::Local;
use calc::question::{Problem, Question, Typed, read};
use calc::reference::Reference;
use calc::terms::method::{Level, Method};
use calc::terms::species::Species;
use serde_json::{Value, json};

#[path = "tables.rs"]
mod tables;
pub(crate) use tables::*;

/// Everything that is known.
pub(crate) fn reference() -> &'static Reference {
    calc_data::whole()
}

/// A species by its scientific name.
pub(crate) fn species(scientific: &str) -> &'static Species {
    reference()
        .species
        .iter()
        .find(|species| species.scientific == scientific)
        .unwrap_or_else(|| panic!("no species {scientific}"))
}

/// A question that needs nothing more: nothing in reach, Massachusetts, early June, no place.
pub(crate) fn tree(species: &str, diameter: &str) -> Value {
    json!({
        "version": 1,
        "units": "us",
        "species": species,
        "stems": [{ "diameter": diameter }],
        "date": "2027-06-05",
        "region": "US-MA",
        "none_in_reach": true,
    })
}

/// The question with some fields set; null takes one out.
pub(crate) fn with(mut question: Value, fields: Value) -> Value {
    let all = question.as_object_mut().expect("a question is an object");
    for (name, value) in fields.as_object().expect("fields are an object") {
        if value.is_null() {
            all.remove(name);
        } else {
            all.insert(name.clone(), value.clone());
        }
    }
    question
}

/// The same with one target at a distance and no line within reach.
pub(crate) fn near(question: Value, kind: &str, distance: &str) -> Value {
    with(
        question,
        json!({
            "none_in_reach": false,
            "line_within_reach": "no",
            "targets": [{ "kind": kind, "distance": distance }],
        }),
    )
}

/// Reads a question; the problems if it is a bad one.
pub(crate) fn try_read(question: &Value) -> Result<Question, Vec<Problem>> {
    let typed: Typed =
        serde_json::from_value(question.clone()).unwrap_or_else(|e| panic!("{e} in {question}"));
    read(reference(), &typed)
}

/// Reads a question that is a good one; a trunk wider than almost any is meant as it stands.
pub(crate) fn question(question: &Value) -> Question {
    let mut question = question.clone();
    if question.get("size_confirmed").is_none() {
        question["size_confirmed"] = json!(true);
    }
    try_read(&question).unwrap_or_else(|problems| panic!("{problems:?} in {question}"))
}

/// Asks, with nothing known of the place but what the question says.
pub(crate) fn ask(asked: &Value) -> Answer {
    answer(reference(), &question(asked), &Local::default())
}

/// The same without the search for what would change it, where many are asked.
pub(crate) fn ask_plain(asked: &Value) -> Answer {
    without_changes(reference(), &question(asked), &Local::default())
}

/// The answer as the interface gives it.
pub(crate) fn as_json(answer: &Answer) -> Value {
    serde_json::to_value(answer).expect("an answer is JSON")
}

/// The level of a method for the largest stem.
pub(crate) fn level(answer: &Answer, method: Method) -> Level {
    line(answer, method).level
}

/// The line of a method for the largest stem.
pub(crate) fn line(answer: &Answer, method: Method) -> &calc::models::method::MethodLine {
    answer
        .methods
        .iter()
        .find(|line| line.method == method)
        .expect("nine methods")
}

/// Whether a caution speaks.
pub(crate) fn speaks(answer: &Answer, id: &str) -> bool {
    answer.cautions.iter().any(|caution| caution.id == id)
}

/// A group's settings as the reader takes them.
pub(crate) fn value_of(value: &Value) -> calc::question::settings::Value {
    use calc::question::settings::Value as Taken;
    match value {
        Value::Null => Taken::Null,
        Value::Bool(held) => Taken::Bool(*held),
        Value::Number(number) => Taken::Number(number.as_f64().expect("a number")),
        Value::String(text) => Taken::Text(text.clone()),
        Value::Array(list) => Taken::List(list.iter().map(value_of).collect()),
        Value::Object(map) => Taken::Map(
            map.iter()
                .map(|(key, value)| (key.clone(), value_of(value)))
                .collect(),
        ),
    }
}

/// Settings that are accepted.
pub(crate) fn settings_of(value: &Value) -> calc::question::settings::Settings {
    match calc::question::settings::read(reference(), &value_of(value), None) {
        Ok((settings, _)) => settings,
        Err(told) => panic!("{told:?} in {value}"),
    }
}

/// Fails unless two numbers lie within a tolerance.
#[track_caller]
pub(crate) fn near_to(got: f64, want: f64, tolerance: f64, what: &str) {
    assert!(
        (got - want).abs() <= tolerance,
        "{what}: {got}, not {want} within {tolerance}"
    );
}
