//! What stands in the controls: read as it is, judged nowhere here.

use crate::dom;
use calc_view::form::Sheet;
use js_sys::Reflect;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Element, HtmlInputElement, HtmlSelectElement};

/// Reads every control of the form.
pub(crate) fn read(form: &Element) -> Sheet {
    read_some(form, |_| true)
}

/// Reads the controls that stand otherwise than the page brought them.
pub(crate) fn touched(form: &Element) -> Sheet {
    let held = |of: &JsValue, key: &str| dom::get(of, key);
    read_some(form, |control| {
        if let Some(input) = control.dyn_ref::<HtmlInputElement>() {
            if matches!(&*input.type_(), "radio" | "checkbox") {
                return held(input, "defaultChecked") != Some(input.checked().into());
            }
            return held(input, "defaultValue") != Some(input.value().into());
        }
        if let Some(select) = control.dyn_ref::<HtmlSelectElement>() {
            let before = dom::all(select, "option")
                .iter()
                .position(|option| option.has_attribute("selected"));
            return before.unwrap_or(0) as i32 != select.selected_index();
        }
        held(control, "defaultValue") != held(control, "value")
    })
}

fn read_some(form: &Element, wanted: impl Fn(&Element) -> bool) -> Sheet {
    let mut sheet = Sheet::default();
    for element in dom::all(form, "[name]") {
        if !wanted(&element) {
            continue;
        }
        let (name, value) = if let Some(input) = element.dyn_ref::<HtmlInputElement>() {
            let tick = matches!(&*input.type_(), "radio" | "checkbox");
            if tick && !input.checked() {
                continue;
            }
            (input.name(), input.value())
        } else if let Some(select) = element.dyn_ref::<HtmlSelectElement>() {
            (select.name(), select.value())
        } else if let Some(text) = dom::get(&element, "value").and_then(|text| text.as_string()) {
            // A field of several lines.
            (element.get_attribute("name").unwrap_or_default(), text)
        } else {
            continue;
        };
        sheet.push(name, value);
    }
    sheet
}

/// Units beside fields that are still empty follow the trunk's; one beside something typed never does,
/// since it says what that means.
pub(crate) fn let_units_follow(form: &Element) {
    let first = first_named(form, "stems.as").and_then(|first| first.dyn_into().ok());
    let Some::<HtmlSelectElement>(first) = first else {
        return;
    };
    // Each has the unit of the United States first, then the metric one.
    let metric = i32::from(first.value().starts_with("cm"));
    for unit in &dom::all(form, "select.unit") {
        let Some(unit) = unit.dyn_ref::<HtmlSelectElement>() else {
            continue;
        };
        // That of the nearest thing stands in another part of the form than what is typed.
        let beside = if unit.name() == "targets[0].unit" {
            first_named(form, "targets[0].distance")
        } else {
            unit.parent_element()
                .and_then(|pair| pair.query_selector("input").ok()?)
        };
        let empty = beside
            .and_then(|input| input.dyn_into::<HtmlInputElement>().ok())
            .is_some_and(|input| input.value().trim().is_empty());
        if empty {
            unit.set_selected_index(metric);
        }
    }
}

fn first_named(form: &Element, name: &str) -> Option<Element> {
    dom::all(form, &format!("[name='{name}']"))
        .into_iter()
        .next()
}

/// Sets what stands in a control.
pub(crate) fn set(form: &Element, name: &str, text: &str) {
    for element in dom::all(form, &format!("[name='{name}']")) {
        let _ = Reflect::set(&element, &"value".into(), &text.into());
    }
}
