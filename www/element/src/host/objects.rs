//! Objects in and out.

use super::question;
use crate::device::today;
use crate::fetched;
use calc::answer::Answer;
use calc::question::{Problem, Text, Typed, read};
use calc::terms::day::iso;
use calc_view::problem_text;
use calc_view::words::m;
use js_sys::{Array, Object, Reflect};
use serde::Serialize;
use serde_wasm_bindgen::Serializer;
use wasm_bindgen::{JsCast, JsValue};

/// Answers a question as an object, as the options ask for it.
pub(crate) fn answer(question: &JsValue, options: &JsValue) -> JsValue {
    let (mut typed, changes) = match (question::typed(question), question::wants_changes(options)) {
        (Ok(typed), Ok(changes)) => (typed, changes),
        (Err(problem), Ok(_)) | (Ok(_), Err(problem)) => return problems_object(&[problem]),
        (Err(question), Err(options)) => return problems_object(&[question, options]),
    };
    if typed.today.is_none() {
        typed.today = Some(Text(iso(today())));
    }
    let reference = calc_data::reference();
    match read(reference, &typed) {
        Ok(question) => {
            let answer = if changes {
                calc::answer::answer
            } else {
                calc::answer::without_changes
            };
            to_js(&answer(reference, &question, &fetched::local(&question)))
        }
        Err(problems) => problems_object(&problems),
    }
}

/// An answer as plain objects: numbers stay numbers and what is missing is null, as JSON has it.
fn to_js(answer: &Answer) -> JsValue {
    answer
        .serialize(&Serializer::json_compatible())
        .unwrap_or(JsValue::NULL)
}

/// The answer of a question that can be answered.
pub(crate) fn answer_object(answer: &Answer) -> JsValue {
    let object = to_js(answer);
    freeze(&object);
    object
}

/// Nobody may write in an answer that others read too.
fn freeze(value: &JsValue) {
    if let Some(object) = value.dyn_ref::<Object>() {
        Object::freeze(object);
        for inner in Object::values(object).iter() {
            freeze(&inner);
        }
    }
}

/// Problems as `{problems: [{field, code, message}]}`.
pub(crate) fn problems_object(problems: &[Problem]) -> JsValue {
    let list = Array::new();
    for problem in problems {
        let object = Object::new();
        set(&object, "field", &problem.field.as_str().into());
        set(&object, "code", &problem.code.name().into());
        let message = if problem.field.is_empty() {
            m::DEVICE_NO_OBJECT.into()
        } else {
            problem_text(problem)
        };
        set(&object, "message", &message.into());
        list.push(&object);
    }
    let object = Object::new();
    set(&object, "problems", &list);
    object.into()
}

/// Sets a key of an object of ours.
pub(crate) fn set(object: &Object, key: &str, value: &JsValue) {
    let _ = Reflect::set(object, &key.into(), value);
}

/// A question without what was left out of it.
pub(crate) fn question_object(mut typed: Typed) -> JsValue {
    question::object(&mut typed).into()
}
