//! The answer taken along: printed as a sheet of its own, or copied as text.

use crate::dom::{self, call, get};
use crate::plan::Plan;
use js_sys::{Function, Promise};
use std::rc::Rc;
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};

/// Prints the answer.
pub fn print(plan: &Plan) {
    if plan.print().is_none() {
        plan.say("This page lets nothing print. Copy the answer as text instead.");
    }
}

/// Copies the answer as text. Where the page may not write to the clipboard, the text is shown to be taken.
pub fn copy(plan: &Rc<Plan>) {
    let reference = calc_data::reference();
    let text =
        plan.with_last(|question, answer| calc_view::text::answer(reference, question, answer));
    if let Some(text) = text {
        copy_text(plan, text, "Copied.", "The answer as text");
    }
}

/// Copies a text; says so, or shows it under a label to be taken.
pub fn copy_text(plan: &Rc<Plan>, text: String, done: &'static str, label: &'static str) {
    let clipboard = web_sys::window()
        .and_then(|window| get(&window, "navigator"))
        .and_then(|navigator| get(&navigator, "clipboard"));
    let write = clipboard
        .as_ref()
        .and_then(|clipboard| get(clipboard, "writeText")?.dyn_into::<Function>().ok());
    let promise = clipboard
        .zip(write)
        .and_then(|(clipboard, write)| write.call1(&clipboard, &text.as_str().into()).ok())
        .and_then(|promise| promise.dyn_into::<Promise>().ok());
    let Some(promise) = promise else {
        show(plan, &text, label);
        return;
    };
    let weak = Rc::downgrade(plan);
    let copied = Closure::once_into_js(move |_: JsValue| {
        if let Some(plan) = weak.upgrade() {
            told(&plan, done);
        }
    });
    let weak = Rc::downgrade(plan);
    let refused = Closure::once_into_js(move |_: JsValue| {
        if let Some(plan) = weak.upgrade() {
            show(&plan, &text, label);
        }
    });
    if let Some(then) = get(&promise, "then").and_then(|then| then.dyn_into::<Function>().ok()) {
        let _ = then.call2(&promise, &copied, &refused);
    }
}

/// Says a sentence under the buttons, to those who look and to those who listen.
pub fn told(plan: &Plan, text: &str) {
    for old in dom::all(&plan.region, ".told") {
        old.remove();
    }
    if let (Ok(Some(keep)), Ok(line)) = (
        plan.region.query_selector(".keepit"),
        plan.document.create_element("p"),
    ) {
        line.set_class_name("told soft");
        line.set_text_content(Some(text));
        let _ = keep.append_child(&line);
    }
    plan.say(text);
}

/// A field with the text in it, marked to be taken.
fn show(plan: &Plan, text: &str, label: &str) {
    let Ok(area) = plan.document.create_element("textarea") else {
        return;
    };
    for old in dom::all(&plan.region, "textarea") {
        old.remove();
    }
    let _ = area.set_attribute("readonly", "");
    let _ = area.set_attribute("aria-label", label);
    area.set_text_content(Some(text));
    let _ = plan.region.append_child(&area);
    dom::focus(&area);
    let _ = call(&area, "select");
    plan.say("This page may not copy by itself. The text is marked: copy it.");
}
