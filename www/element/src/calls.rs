//! What the page's script calls: for a host element, for what it has fetched, and what needs no element, [`answer`] and
//! [`check_settings`].

use crate::calculator::{self, Calculator};
use crate::host::{attributes, objects, settings};
use crate::{export, fetched};
use js_sys::JsString;
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;
use web_sys::HtmlElement;

/// The version of the calculator.
#[wasm_bindgen]
#[must_use]
pub fn version() -> String {
    env!("CARGO_PKG_VERSION").to_owned()
}

/// The version of the tables behind it.
#[wasm_bindgen(js_name = dataVersion)]
#[must_use]
pub fn data_version() -> String {
    calc_data::reference().data_version.to_owned()
}

/// Tells what to call when a question names a point and the climate places are not here yet.
#[wasm_bindgen]
pub fn when_climate_is_wanted(call: js_sys::Function) {
    fetched::when_climate_is_wanted(call);
}

/// Takes the packed climate places; answers that are shown follow. False if the bytes are no such table.
#[wasm_bindgen]
#[must_use]
pub fn take_climate(bytes: &[u8]) -> bool {
    fetched::take_climate(bytes)
}

/// Tells what to call when the file of what differs by country is wanted and not here yet.
#[wasm_bindgen]
pub fn when_regional_is_wanted(call: js_sys::Function) {
    fetched::when_regional_is_wanted(call);
}

/// Takes the file of what differs by country; forms and answers that are shown follow. False if the bytes are no such
/// file.
#[wasm_bindgen]
#[must_use]
pub fn take_regional(bytes: &[u8]) -> bool {
    fetched::take_regional(bytes)
}

/// Keeps the style sheet of the calculators, before the first is connected.
#[wasm_bindgen]
pub fn take_style(text: String) {
    calculator::take_style(text);
}

/// Works out what a form follows from, and with `drawn` draws it, for nobody to see: the first that is seen comes sooner then.
#[wasm_bindgen]
pub fn rehearse(drawn: bool) {
    calculator::rehearsal::rehearse(drawn);
}

/// Puts the calculator into its host element. Once is enough; more does no harm.
#[wasm_bindgen]
pub fn connect(host: &HtmlElement) {
    calculator::connect(host);
}

/// Takes the words of a language, before a calculator that speaks it starts. False if the bytes are no words of this
/// version.
#[wasm_bindgen]
#[must_use]
pub fn take_words(bytes: &[u8]) -> bool {
    calc_view::words::message::take_words(bytes)
}

/// Tells where the site is, for the links of the answers to its page of sources.
#[wasm_bindgen]
pub fn locate(site: String) {
    attributes::locate(site);
}

/// Tells what to call, with a country's code, when a name is typed and the list of its towns is not here yet.
#[wasm_bindgen]
pub fn when_towns_are_wanted(call: js_sys::Function) {
    fetched::when_towns_are_wanted(call);
}

/// Takes the packed towns of a country. False if the bytes are no such list.
#[wasm_bindgen]
#[must_use]
pub fn take_towns(country: &str, bytes: &[u8]) -> bool {
    fetched::take_towns(country, bytes)
}

/// Tells that the towns of a country could not be had.
#[wasm_bindgen]
pub fn towns_failed(country: &str) {
    fetched::towns_failed(country);
}

/// Answers a question: an object as the schema describes it. With the options `{changes: false}` it leaves out the
/// search for what would change the answer, which takes most of the time: `changes` is empty. Returns the answer, or
/// `{problems}`.
#[wasm_bindgen]
#[must_use]
pub fn answer(question: &JsValue, options: &JsValue) -> JsValue {
    objects::answer(question, options)
}

/// Takes the calculator out of its host element; what was typed stays in its shadow root.
#[wasm_bindgen]
pub fn disconnect(host: &HtmlElement) {
    calculator::disconnect(host);
}

/// Tells that an attribute of the host element has changed.
#[wasm_bindgen]
pub fn attribute_changed(
    host: &HtmlElement,
    name: &str,
    _before: Option<JsString>,
    _after: Option<JsString>,
) {
    calculator::with(host, |calculator| {
        if name == "lang" {
            calculator.language_changed();
        } else {
            calculator.attribute_changed(name);
        }
    });
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
    calculator::with(host, |calculator| {
        calculator.take_settings(settings, list.as_deref(), failed)
    })
    .unwrap_or_default()
}

/// What is told of a group's settings, as `[{path, message, refuses}]`: nothing where all is well. It is said in a language
/// whose words were taken, else in English.
#[wasm_bindgen]
#[must_use]
pub fn check_settings(
    settings: &JsValue,
    list: Option<String>,
    language: Option<String>,
) -> js_sys::Array {
    let words = calc_view::words::message::pack(language.as_deref().unwrap_or_default());
    calc_view::words::within(words, || settings::check(settings, list.as_deref()))
}

/// Sets a property of the host: `inputs` takes a question, also part of one.
///
/// # Errors
/// A `TypeError` that names each field which can't be read.
#[wasm_bindgen]
pub fn set_property(host: &HtmlElement, name: &str, value: &JsValue) -> Result<(), JsValue> {
    if name != "inputs" {
        return Ok(());
    }
    calculator::with(host, |calculator| calculator.set_inputs(value)).unwrap_or(Ok(()))
}

/// A property of the host: `inputs`, a question; `result`, the last answer or null.
#[wasm_bindgen]
#[must_use]
pub fn get_property(host: &HtmlElement, name: &str) -> JsValue {
    calculator::with(host, |calculator| match name {
        "inputs" => calculator.inputs(),
        "result" => calculator.result(),
        _ => JsValue::UNDEFINED,
    })
    .unwrap_or(JsValue::UNDEFINED)
}

/// The question that the host's attributes preset, for what is wrong with them.
#[wasm_bindgen]
#[must_use]
pub fn preset(host: &HtmlElement) -> JsValue {
    calculator::with(host, Calculator::preset_object).unwrap_or(JsValue::UNDEFINED)
}

/// Shows the answer as the button does, but moves no focus. Gives what [`answer`] gives.
#[wasm_bindgen]
#[must_use]
pub fn compute(host: &HtmlElement) -> JsValue {
    calculator::with(host, Calculator::compute).unwrap_or(JsValue::UNDEFINED)
}

/// Empties the form down to what the host's attributes say, and takes the answer away.
#[wasm_bindgen]
pub fn reset(host: &HtmlElement) {
    calculator::with(host, Calculator::reset);
}

/// The visits of the last answer as the text of a calendar file (RFC 5545); undefined without an answer.
#[wasm_bindgen]
#[must_use]
pub fn export_ics(host: &HtmlElement) -> Option<String> {
    calculator::with(host, export::calendar_text).flatten()
}

/// Puts the focus into the first field.
#[wasm_bindgen]
pub fn focus_first(host: &HtmlElement) {
    calculator::with(host, Calculator::focus_first);
}
