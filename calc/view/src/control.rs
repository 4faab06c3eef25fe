//! Markup of controls, shared by the form and by what an answer asks.

use crate::page::Page;

/// One thing to tick, or one of several, with its words.
pub(crate) fn tick(
    out: &mut Page<'_>,
    kind: &str,
    name: &str,
    value: &str,
    on: bool,
    words: &dyn Fn(&mut Page<'_>),
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
    out.close_two();
}

/// Opens a field: its label, with a hint where there is one. Gives the id that the hint has.
pub(crate) fn labelled(out: &mut Page<'_>, id: &str, label: &str, hint: &str) -> String {
    out.open_class("div", "field");
    label_of(out, "", id, label);
    hint_of(out, id, hint)
}

/// One thing to tick, or one of several, with plain words.
pub(crate) fn tick_text(
    out: &mut Page<'_>,
    kind: &str,
    name: &str,
    value: &str,
    on: bool,
    words: &str,
) {
    tick(out, kind, name, value, on, &|out| out.text(words));
}

/// The label of a control.
pub(crate) fn label_of(out: &mut Page<'_>, class: &str, id: &str, label: &str) {
    out.open_class("label", class);
    out.attr("for", id);
    out.text(label);
    out.close();
}

/// The hint of a control, where there is one. Gives its id.
pub(crate) fn hint_of(out: &mut Page<'_>, id: &str, hint: &str) -> String {
    hint_with(out, id, hint, "")
}

/// The same with what may be typed word for word in bold, where the hint has it.
pub(crate) fn hint_with(out: &mut Page<'_>, id: &str, hint: &str, example: &str) -> String {
    let hint_id = [id, "-h"].concat();
    if !hint.is_empty() {
        out.open_class("span", "hint");
        out.attr("id", &hint_id);
        match hint.split_once(example).filter(|_| !example.is_empty()) {
            Some((before, behind)) => {
                out.text(before);
                out.leaf("b", example);
                out.text(behind);
            }
            None => out.text(hint),
        }
        out.close();
    }
    hint_id
}

/// Opens a list or a text of several lines.
pub(crate) fn open_control(
    out: &mut Page<'_>,
    tag: &'static str,
    class: &str,
    id: &str,
    name: &str,
) {
    out.open_class(tag, class);
    out.attr("id", id);
    out.attr("name", name);
}

/// Opens a text of one line; `keys` names the keypad to show.
pub(crate) fn open_input(
    out: &mut Page<'_>,
    class: &str,
    keys: &str,
    id: &str,
    name: &str,
    value: &str,
) {
    out.open_class("input", class);
    out.attr("type", "text");
    if !keys.is_empty() {
        out.attr("inputmode", keys);
    }
    out.attr("id", id);
    out.attr("name", name);
    out.attr("value", value);
}

/// A choice of a file. What is in it counts, so that it has no name.
pub(crate) fn file(out: &mut Page<'_>, id: &str, label: &str, kinds: &str) {
    labelled(out, id, label, "");
    out.open_class("input", "wf");
    out.attr("type", "file");
    out.attr("id", id);
    out.attr("accept", kinds);
    out.close_two();
}

/// Opens a field with a list to pick one from, up to the lines of the list.
pub(crate) fn open_select(out: &mut Page<'_>, name: &str, label: &str, hint: &str) {
    let id = field_id(name);
    let hint_id = labelled(out, &id, label, hint);
    open_control(out, "select", "wf", &id, name);
    if !hint.is_empty() {
        out.attr("aria-describedby", &hint_id);
    }
}

/// One line of a list.
pub(crate) fn option(out: &mut Page<'_>, value: &str, words: &str, picked: bool) {
    out.open("option");
    out.attr("value", value);
    if picked {
        out.attr("selected", "");
    }
    out.text(words);
    out.close();
}

/// Opens a set of fields under a name that links of problems lead to.
pub(crate) fn open_set(out: &mut Page<'_>, name: &str, legend: &str) {
    out.open_class("fieldset", "field");
    out.attr("id", &field_id(name));
    out.leaf("legend", legend);
}

/// The id of a field in the form: `stems[0].diameter` is `f-stems-0-diameter`.
#[must_use]
pub fn field_id(path: &str) -> String {
    let mut id = String::from("f-");
    for c in path.chars() {
        match c {
            ']' => {}
            c if c.is_ascii_alphanumeric() => id.push(c),
            _ => id.push('-'),
        }
    }
    id
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn fields_have_ids() {
        assert_eq!(field_id("stems[0].diameter"), "f-stems-0-diameter");
        assert_eq!(field_id("species"), "f-species");
    }
}
