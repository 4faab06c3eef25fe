//! What the page of a list shows: an area each of what it asks and what it says. Nothing here decides.
//!
//! Controls carry what they do in `data-do`; the page's script sends it, with the fields of the form around it, to the
//! worker, which answers with areas drawn anew.

pub mod columns;
pub mod fix;
pub mod folds;
pub mod hit;
pub mod map;
pub mod result;
pub mod season;
mod strip;
pub mod table;

use crate::page::Page;

/// The heading of an area.
fn heading(out: &mut Page<'_>, text: &str) {
    out.heading(2, "", "", text);
}

/// A button that does something.
fn button(out: &mut Page<'_>, class: &str, act: &str, values: &[(&'static str, &str)], text: &str) {
    out.open("button");
    out.attr("type", "button");
    out.attr("class", class);
    out.attr("data-do", act);
    for (key, value) in values {
        out.attr(key, value);
    }
    out.text(text);
    out.close();
}

/// The button that sends the form around it.
fn send(out: &mut Page<'_>, class: &str, text: &str) {
    out.open("button");
    out.attr("type", "submit");
    out.attr("class", class);
    out.text(text);
    out.close();
}

/// Opens a form that does something.
fn open_form(out: &mut Page<'_>, class: &str, act: &str, values: &[(&'static str, &str)]) {
    out.open_class("form", class);
    out.attr("novalidate", "");
    out.attr("data-do", act);
    for (key, value) in values {
        out.attr(key, value);
    }
}

/// A field for a text.
fn field(out: &mut Page<'_>, id: &str, class: &str, label: &str, hint: &str, value: &str) {
    let hint_id = crate::control::labelled(out, id, label, hint);
    out.open("input");
    out.attr("type", "text");
    out.attr("id", id);
    out.attr("name", id);
    out.attr("class", class);
    out.attr("value", value);
    out.attr("autocomplete", "off");
    out.attr("spellcheck", "false");
    if !hint.is_empty() {
        out.attr("aria-describedby", &hint_id);
    }
    out.close_two();
}

/// Opens a group of fields with a question over it.
fn open_group(out: &mut Page<'_>, legend: &str) {
    out.open_class("fieldset", "field");
    out.leaf("legend", legend);
}

/// One of several, or one thing to tick.
fn option(out: &mut Page<'_>, kind: &str, name: &str, value: &str, on: bool, label: &str) {
    crate::control::tick_text(out, kind, name, value, on, label);
}

/// Opens a fold: its title, and the line that carries its key number.
fn open_fold(out: &mut Page<'_>, name: &str, title: &str, line: &str) {
    open_fold_at(out, 3, name, title, line, None);
}

/// The same with the level of its title. `open`: whether it stands open whenever it is drawn; none where it stays as the
/// reader left it.
fn open_fold_at(
    out: &mut Page<'_>,
    level: u8,
    name: &str,
    title: &str,
    line: &str,
    open: Option<bool>,
) {
    out.open_class("details", "fold");
    out.attr("id", &["l-", name].concat());
    match open {
        Some(true) => out.attr("open", ""),
        Some(false) => out.attr("data-shut", "yes"),
        None => {}
    }
    out.open_folded(level, title, line);
}
