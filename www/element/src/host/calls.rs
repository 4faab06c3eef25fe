//! What the page's script calls for a host element, and what needs no element: [`answer`] and [`check_settings`].

use super::{boundary, settings, towns};
use crate::device;
use crate::plans;
use js_sys::JsString;
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;
use web_sys::HtmlElement;

/// Tells where the page of sources is, for the links of the answers.
#[wasm_bindgen]
pub fn locate(sources: String) {
    super::plan::locate(sources);
}

/// Tells what to call, with a country's code, when a name is typed and the list of its towns is not here yet.
#[wasm_bindgen]
pub fn when_towns_are_wanted(call: js_sys::Function) {
    towns::when_wanted(call);
}

/// Takes the packed towns of a country. False if the bytes are no such list.
#[wasm_bindgen]
#[must_use]
pub fn take_towns(country: &str, bytes: &[u8]) -> bool {
    towns::take(country, bytes)
}

/// Tells that the towns of a country could not be had.
#[wasm_bindgen]
pub fn towns_failed(country: &str) {
    towns::failed(country);
}

/// Answers a question: an object as the schema describes it. Gives the answer, or `{problems}`.
#[wasm_bindgen]
#[must_use]
pub fn answer(question: &JsValue) -> JsValue {
    boundary::answer(question)
}

/// Takes the calculator out of its host element; what was typed stays in its shadow root.
#[wasm_bindgen]
pub fn disconnect(host: &HtmlElement) {
    plans::disconnect(host);
}

/// Tells that an attribute of the host element has changed.
#[wasm_bindgen]
pub fn attribute_changed(
    host: &HtmlElement,
    name: &str,
    _before: Option<JsString>,
    _after: Option<JsString>,
) {
    if let Some(plan) = plans::of(host) {
        plan.attribute_changed(name);
    }
}

/// Takes a group's own settings for a host: an object as the schema describes it, and the text of the list of species
/// that it names. Null or undefined: none. `failed`: they could not be had. Gives what is told of them, as
/// [`check_settings`] does; settings that are refused are left out as a whole.
#[wasm_bindgen]
#[must_use]
pub fn take_settings(
    host: &HtmlElement,
    settings: &JsValue,
    list: Option<String>,
    failed: bool,
) -> js_sys::Array {
    plans::of(host).map_or_else(js_sys::Array::new, |plan| {
        plan.take_settings(settings, list.as_deref(), failed)
    })
}

/// What is told of a group's settings, as `[{path, message, refuses}]`: nothing where all is well.
#[wasm_bindgen]
#[must_use]
pub fn check_settings(settings: &JsValue, list: Option<String>) -> js_sys::Array {
    settings::check(settings, list.as_deref())
}

/// Sets a property of the host: `inputs` takes a question, also part of one.
///
/// # Errors
/// A `TypeError` that names each field which can't be read.
#[wasm_bindgen]
pub fn set_property(host: &HtmlElement, name: &str, value: &JsValue) -> Result<(), JsValue> {
    match (name, plans::of(host)) {
        ("inputs", Some(plan)) => plan.set_inputs(value),
        _ => Ok(()),
    }
}

/// A property of the host: `inputs`, a question; `result`, the last answer or null.
#[wasm_bindgen]
#[must_use]
pub fn get_property(host: &HtmlElement, name: &str) -> JsValue {
    match (name, plans::of(host)) {
        ("inputs", Some(plan)) => plan.inputs(),
        ("result", Some(plan)) => plan.result(),
        _ => JsValue::UNDEFINED,
    }
}

/// Shows the plan as the button does, but moves no focus. Gives what [`answer`] gives.
#[wasm_bindgen]
#[must_use]
pub fn compute(host: &HtmlElement) -> JsValue {
    plans::of(host).map_or(JsValue::UNDEFINED, |plan| plan.compute())
}

/// Empties the form down to what the host's attributes say, and takes the answer away.
#[wasm_bindgen]
pub fn reset(host: &HtmlElement) {
    if let Some(plan) = plans::of(host) {
        plan.reset();
    }
}

/// The visits of the last answer as the text of a calendar file (RFC 5545); undefined without an answer.
#[wasm_bindgen]
#[must_use]
pub fn export_ics(host: &HtmlElement) -> Option<String> {
    plans::of(host).and_then(|plan| device::calendar_text(&plan))
}

/// Puts the focus into the first field.
#[wasm_bindgen]
pub fn focus_first(host: &HtmlElement) {
    if let Some(plan) = plans::of(host) {
        plan.focus_first();
    }
}
