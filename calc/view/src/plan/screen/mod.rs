//! What the page of a list shows: an area each of what it asks and what it says. Nothing here decides.
//!
//! Controls carry what they do in `data-do`; the page's script sends it, with the fields of the form around it, to the
//! worker, which answers with areas drawn anew.

pub mod columns;
pub mod fix;
pub mod folds;
pub mod found;
pub mod hit;
pub mod land;
pub mod map;
pub mod replant;
pub mod result;
pub mod season;
mod strip;
pub mod table;

use crate::measure::day_short;
use crate::page::Page;
use crate::words::{Word, m};
use core::ops::Range;

/// So many rows of a table are shown at once.
const ROWS: usize = 100;

/// The heading of an area.
fn heading(out: &mut Page<'_>, text: &str) {
    out.heading(2, "", "", text);
}

/// A heading in a fold.
fn heading_of_fold(out: &mut Page<'_>, text: &str) {
    out.heading(4, "", "", text);
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

/// What is wrong with the one field of a fold.
pub const FIELD_WRONG: &str = "l-field-wrong";

/// A field, with what is wrong with it beside it; the first of what is wrong has an id of its own.
fn typed(
    out: &mut Page<'_>,
    wrong: &[(String, String)],
    id: &str,
    first_wrong: &str,
    label: &str,
    hint: &str,
    value: &str,
) {
    let hint_id = crate::control::labelled(out, id, label, hint);
    let at = wrong.iter().position(|(of, _)| of == id);
    let wrong_id = match at {
        Some(0) => first_wrong.to_owned(),
        _ => [id, "-wrong"].concat(),
    };
    let wrong = at.map(|at| &wrong[at].1);
    let mut described = hint_id;
    if let Some(said) = wrong {
        out.open_class("p", "errmsg");
        out.attr("id", &wrong_id);
        out.text(said.as_str());
        out.close();
        described = [&described, " ", &wrong_id].concat();
    }
    out.open("input");
    out.attr("type", "text");
    out.attr("id", id);
    out.attr("name", id);
    out.attr("class", "w2");
    out.attr("value", value);
    out.attr("autocomplete", "off");
    out.attr("aria-describedby", &described);
    if wrong.is_some() {
        out.attr("aria-invalid", "true");
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

/// A fold whose rows, or drawing, come when it is opened.
fn fold_of_rows(out: &mut Page<'_>, table: &str, title: &str, line: &str) {
    fold_of_rows_at(out, 3, table, title, line);
}

/// The same with the level of its title.
fn fold_of_rows_at(out: &mut Page<'_>, level: u8, table: &str, title: &str, line: &str) {
    out.open_class("details", "fold");
    out.attr("id", &["l-", table].concat());
    out.attr("data-open", "page");
    out.attr("data-table", table);
    out.open_folded(level, title, line);
    out.attr("id", &["t-", table].concat());
    out.close_two();
}

/// Opens a table of which some rows are shown, and tells which these are: of `all` those from one on, at most [`ROWS`].
fn open_rows(
    out: &mut Page<'_>,
    title: Word,
    heads: &[&str],
    from: usize,
    all: usize,
) -> Range<usize> {
    let to = from.saturating_add(ROWS).min(all);
    let shown = m::property_shown(m::PropertyShown {
        title,
        from: (from + 1).min(all).to_string(),
        to: to.to_string(),
        all: all.to_string(),
    });
    out.open_table("", &shown, heads);
    from.min(to)..to
}

/// A button that asks for other rows of a table, or for another drawing.
fn turn_button(out: &mut Page<'_>, table: &str, from: usize, text: &str) {
    let from = from.to_string();
    let values = [("data-table", table), ("data-from", from.as_str())];
    button(out, "btn ghost", "page", &values, text);
}

/// The buttons for the rows behind those that are shown, and for those before.
fn turn_buttons(out: &mut Page<'_>, table: &str, from: usize, all: usize) {
    let to = from.saturating_add(ROWS);
    if to < all {
        let rows = (all - to).min(ROWS).to_string();
        turn_button(out, table, to, &m::property_next_rows(rows));
    }
    if from > 0 {
        turn_button(
            out,
            table,
            from.saturating_sub(ROWS),
            &m::PROPERTY_ROWS_BEFORE,
        );
    }
}

/// A day of plan.json in words.
fn short_day(day: &str) -> String {
    calc::question::read_day(day).map_or_else(|_| day.to_owned(), day_short)
}
