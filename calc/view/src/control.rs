//! Markup of controls, shared by the form and by what an answer asks.

use crate::field_id;
use crate::out::{Out, OutExt};

/// One thing to tick, or one of several, with its words.
pub fn tick(
    out: &mut dyn Out,
    kind: &str,
    name: &str,
    value: &str,
    on: bool,
    words: &dyn Fn(&mut dyn Out),
) {
    out.open_class("label", "opt");
    out.open("input");
    out.attr("type", kind);
    out.attr("name", name);
    out.attr("value", value);
    if kind == "checkbox" && value == "on" {
        out.attr("id", &field_id(name));
    }
    if on {
        out.attr("checked", "");
    }
    out.close();
    out.open("span");
    words(out);
    out.close();
    out.close();
}

/// The label of a field, with its hint where there is one; gives the id that the hint has.
pub fn labelled(out: &mut dyn Out, id: &str, label: &str, hint: &str) -> String {
    out.open("label");
    out.attr("for", id);
    out.text(label);
    out.close();
    let hint_id = [id, "-h"].concat();
    if !hint.is_empty() {
        out.open_class("span", "hint");
        out.attr("id", &hint_id);
        out.text(hint);
        out.close();
    }
    hint_id
}

/// One line of a list.
pub fn option(out: &mut dyn Out, value: &str, words: &str, picked: bool) {
    out.open("option");
    out.attr("value", value);
    if picked {
        out.attr("selected", "");
    }
    out.text(words);
    out.close();
}

/// Opens a set of fields under a name that links of problems lead to.
pub fn open_set(out: &mut dyn Out, name: &str, legend: &str) {
    out.open_class("fieldset", "field");
    out.attr("id", &field_id(name));
    out.leaf("legend", legend);
}
