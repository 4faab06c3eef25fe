//! Problems at their fields: the same words as in the summary, what was typed kept.

use crate::dom;
use calc::question::{Code, Problem};
use calc_view::{field_id, problem_text};
use wasm_bindgen::JsCast;
use web_sys::{Document, Element, HtmlElement, ShadowRoot};

/// Takes all marks away.
pub(crate) fn clear(form: &Element) {
    for message in dom::all(form, ".errmsg") {
        let id = message.id();
        for described in dom::all(form, "[aria-describedby]") {
            let ids = described
                .get_attribute("aria-describedby")
                .unwrap_or_default();
            let kept: Vec<&str> = ids.split(' ').filter(|other| *other != id).collect();
            if kept.is_empty() {
                let _ = described.remove_attribute("aria-describedby");
            } else {
                let _ = described.set_attribute("aria-describedby", &kept.join(" "));
            }
        }
        message.remove();
    }
    for marked in dom::all(form, "[aria-invalid]") {
        let _ = marked.remove_attribute("aria-invalid");
    }
    for bad in dom::all(form, ".bad") {
        let _ = bad.class_list().remove_1("bad");
    }
}

/// Marks a field with its problem.
pub(crate) fn mark(document: &Document, root: &ShadowRoot, problem: &Problem) {
    let Some(field) = find(root, &field_id(&problem.field)) else {
        return;
    };
    let group = field.tag_name() == "FIELDSET";
    let frame = if group {
        Some(field.clone())
    } else {
        field.closest(".field").ok().flatten()
    };
    let (Some(frame), Ok(message)) = (frame, document.create_element("p")) else {
        return;
    };
    let _ = frame.class_list().add_1("bad");
    let id = format!("{}-e", field.id());
    message.set_id(&id);
    message.set_class_name("errmsg");
    message.set_text_content(Some(&problem_text(problem)));
    // Above the control, so that a phone's keyboard does not cover it.
    let before = if group {
        field
            .first_element_child()
            .and_then(|legend| legend.next_sibling())
    } else {
        let pair = field.closest(".pair").ok().flatten();
        Some(pair.unwrap_or_else(|| field.clone()).into())
    };
    let parent = before.as_ref().and_then(|node| node.parent_node());
    if let Some(parent) = parent {
        let _ = parent.insert_before(&message, before.as_ref());
    }
    let described = field.get_attribute("aria-describedby").unwrap_or_default();
    let described = format!("{described} {id}");
    let _ = field.set_attribute("aria-describedby", described.trim());
    for part in parts(&field, &problem.code) {
        let _ = part.set_attribute("aria-invalid", "true");
    }
    reveal(&field);
}

/// The controls that a problem of a group is about.
fn parts(field: &Element, code: &Code) -> Vec<Element> {
    if field.tag_name() != "FIELDSET" {
        return vec![field.clone()];
    }
    let key = match code {
        Code::DayMissing => "input[name$='.d']",
        Code::MonthMissing => "input[name$='.m']",
        Code::YearMissing | Code::YearOutOfRange => "input[name$='.y']",
        _ => "input[type='text']",
    };
    dom::all(field, key)
}

/// The element of a field by the id that links carry. A girth stands in the field of the diameter, and
/// what has no element of its own in that of the group around it.
pub(crate) fn find(root: &ShadowRoot, id: &str) -> Option<Element> {
    let own = dom::by_id(root, id);
    if own.is_some() {
        return own;
    }
    if let Some(stem) = id.strip_suffix("-girth") {
        return dom::by_id(root, &format!("{stem}-diameter"));
    }
    match id {
        "f-stems" => dom::by_id(root, "f-stems-0-diameter"),
        "f-species" => dom::by_id(root, "f-find"),
        "f-date" | "f-today" => dom::by_id(root, "f-day"),
        "f-none-in-reach" | "f-targets" => dom::by_id(root, "f-targets-0-kind"),
        "f-leafed-out" => dom::by_id(root, "f-leafed-out-stage"),
        "f-bark" => dom::by_id(root, "f-stems-0-bark"),
        _ => find(root, id.rsplit_once('-')?.0),
    }
}

/// Opens what is folded around an element, and the element itself where it folds.
fn reveal(element: &Element) {
    let mut at = Some(element.clone());
    while let Some(around) = at {
        if around.tag_name() == "DETAILS" {
            let _ = around.set_attribute("open", "");
        }
        at = around.parent_element();
    }
}

/// Leads to a field: unfolds what is around it and puts the focus on its control.
pub(crate) fn go(root: &ShadowRoot, id: &str) {
    let Some(element) = find(root, id) else {
        return;
    };
    reveal(&element);
    let control = if matches!(
        &*element.tag_name(),
        "INPUT" | "SELECT" | "TEXTAREA" | "BUTTON"
    ) {
        Some(element.clone())
    } else if element.tag_name() == "DETAILS" {
        element.first_element_child()
    } else {
        ["[aria-invalid]", "input:checked", "input, select, button"]
            .iter()
            .find_map(|selector| {
                dom::all(&element, selector).into_iter().find(|control| {
                    control
                        .dyn_ref::<HtmlElement>()
                        .is_some_and(|control| control.offset_parent().is_some())
                })
            })
    };
    match control {
        Some(control) => dom::focus(&control),
        None => {
            // A part of the answer: it takes the focus for this once.
            let _ = element.set_attribute("tabindex", "-1");
            dom::focus(&element);
        }
    }
}
