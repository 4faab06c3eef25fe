//! The parts that fields are made of: labels above, hints behind them, no placeholders, nothing disabled.

use super::View;
use super::length::Length;
use crate::control::{hint_with, label_of, labelled, open_control, open_input, option, tick_text};
use crate::field_id;
use crate::page::Page;
use crate::words::{Word, m};

/// A field of text.
#[derive(Clone, Copy)]
pub(super) struct TextField {
    /// Path and name, or the last part of it.
    pub name: &'static str,
    /// The label without its unit.
    pub label: Word,
    /// Behind the unit in the label.
    pub tail: Word,
    /// A hint of its own, or empty.
    pub hint: Word,
    /// What of the hint may be typed as it stands, or empty.
    pub example: Word,
    /// Whether the control of its unit stands beside it, not at another field.
    pub unit_here: bool,
    /// Whether its label leaves the unit to the list beside it.
    pub unitless: bool,
    /// What is to be typed.
    pub takes: Takes,
}

/// What a field of text takes.
#[derive(Clone, Copy, PartialEq)]
pub(super) enum Takes {
    /// A number, by a keypad of digits.
    Digits,
    /// A number that may have a minus, which the keypad of digits has not on some phones.
    Signed,
    /// Words.
    Words,
}

/// A number without a unit beside it.
pub(super) const NUMBER: TextField = TextField {
    name: "",
    label: Word::NONE,
    tail: Word::NONE,
    hint: Word::NONE,
    example: Word::NONE,
    unit_here: false,
    unitless: false,
    takes: Takes::Digits,
};

/// The long name of a unit.
pub(super) fn unit_word(unit: &str) -> &'static str {
    match unit {
        "in" => &m::FORM_INCHES,
        "cm" => &m::FORM_CM,
        "mm" => &m::FORM_MM,
        "ft" => &m::FORM_FEET,
        _ => &m::FORM_METRES,
    }
}

impl View<'_> {
    /// A field of text with its label, hint, unit and echo. `under` is the beginning of its name; `number` stands
    /// behind its label, and `of` behind all of the label.
    pub(super) fn text(
        &self,
        out: &mut Page<'_>,
        under: &str,
        number: &str,
        of: &str,
        field: &TextField,
    ) {
        self.open_text(out, under, number, of, field);
        self.close_text(out, under, field);
    }

    /// The same as far as its control, to which a button may be added.
    pub(super) fn open_text(
        &self,
        out: &mut Page<'_>,
        under: &str,
        number: &str,
        of: &str,
        field: &TextField,
    ) {
        let name = cat!(under, field.name);
        let id = field_id(&name);
        let length = Length::of(&name);
        out.open("label");
        out.attr("for", &id);
        out.text(field.label);
        out.text(number);
        if let Some(length) = length.as_ref().filter(|_| !field.unitless) {
            out.text(", ");
            out.open("span");
            out.attr("id", &cat!(&id, "-u"));
            out.text(unit_word(self.sheet.unit_of(length)));
            out.close();
        }
        out.text(field.tail);
        out.text(of);
        out.close();
        let mut described = hint_with(out, &id, &field.hint, &field.example);
        if field.hint.is_empty() {
            described.clear();
        }
        if length.is_some() {
            described = cat!(&described, " ", &id, "-r");
        }
        out.open_class("div", if field.unitless { "pair sized" } else { "pair" });
        let (class, keys) = match field.takes {
            Takes::Digits if field.unitless => ("", "decimal"),
            Takes::Digits => ("w2", "decimal"),
            Takes::Signed => ("w2", ""),
            Takes::Words => ("wf", ""),
        };
        open_input(out, class, keys, &id, &name, self.sheet.get(&name));
        if !described.is_empty() {
            out.attr("aria-describedby", described.trim_start());
        }
        out.close();
        if let Some(length) = length.filter(|_| field.unit_here) {
            self.unit_choice(out, &length, &field.label);
        }
    }

    /// The rest of it.
    pub(super) fn close_text(&self, out: &mut Page<'_>, under: &str, field: &TextField) {
        out.close();
        let name = cat!(under, field.name);
        if Length::of(&name).is_some() {
            self.live_line(out, "echo", &cat!(field_id(&name), "-r"));
        }
    }

    /// Opens a field with a text of several lines. `line` is the id of what tells how it was read.
    pub(super) fn long_text(
        &self,
        out: &mut Page<'_>,
        name: &str,
        label: &str,
        hint: &str,
        rows: &str,
        line: &str,
    ) {
        let id = field_id(name);
        let hint_id = labelled(out, &id, label, hint);
        open_control(out, "textarea", "", &id, name);
        out.attr("rows", rows);
        out.attr("spellcheck", "false");
        out.attr("aria-describedby", &cat!(&hint_id, " ", line));
        out.text(self.sheet.get(name));
        out.close();
    }

    /// The unit of a field that stands elsewhere, with its label in view.
    pub(super) fn unit_of(&self, out: &mut Page<'_>, name: &str, of: &str) {
        if let Some(length) = Length::of(name) {
            out.open_class("div", "field");
            let id = field_id(&length.control);
            label_of(out, "", &id, &m::form_unit_of(of));
            self.units(out, &length);
            out.close();
        }
    }

    /// The choice of a unit: what the number beside it means.
    fn unit_choice(&self, out: &mut Page<'_>, length: &Length, of: &str) {
        let id = field_id(&length.control);
        label_of(out, "vh", &id, &m::form_unit_of(of));
        self.units(out, length);
    }

    fn units(&self, out: &mut Page<'_>, length: &Length) {
        let id = field_id(&length.control);
        open_control(out, "select", "unit", &id, &length.control);
        let picked = self.sheet.unit_of(length);
        for value in length.units() {
            option(out, value, unit_word(value), value == picked);
        }
        out.close();
    }

    /// A line that follows what is typed.
    pub(super) fn live_line(&self, out: &mut Page<'_>, class: &str, id: &str) {
        out.open_class("p", class);
        self.line_body(out, id);
    }

    /// The same inside a line of text: what a row says is used.
    pub(super) fn used_line(&self, out: &mut Page<'_>, id: &str) {
        out.open_class("span", "used");
        self.line_body(out, id);
    }

    /// The same for those who listen too.
    pub(super) fn status_line(&self, out: &mut Page<'_>, id: &str) {
        out.open_class("p", "asm");
        out.attr("role", "status");
        self.line_body(out, id);
    }

    fn line_body(&self, out: &mut Page<'_>, id: &str) {
        let text = self.line(id);
        out.attr("id", id);
        if text.is_empty() {
            out.attr("hidden", "");
        }
        out.text(text);
        out.close();
    }

    /// One box with its label.
    pub(super) fn tick(&self, out: &mut Page<'_>, name: &str, words: &str) {
        tick_text(out, "checkbox", name, "on", self.sheet.ticked(name), words);
    }
}

/// A button that acts on the form; `at` is the place in a list.
pub(super) fn button(out: &mut Page<'_>, act: &str, at: Option<usize>, words: &str, hidden: bool) {
    out.open_class("button", "btn ghost");
    out.attr("type", "button");
    out.attr("data-act", act);
    if let Some(at) = at {
        out.attr("data-at", &crate::measure::number(at as u32));
    }
    if hidden {
        out.attr("hidden", "");
    }
    out.text(words);
    out.close();
}

/// Opens an element that may be hidden.
pub(super) fn open_shown(out: &mut Page<'_>, id: &str, shown: bool) {
    out.open("div");
    out.attr("id", id);
    if !shown {
        out.attr("hidden", "");
    }
}

/// Opens a folded part.
pub(super) fn open_fold(out: &mut Page<'_>, summary: &str, open: bool) {
    out.open("details");
    if open {
        out.attr("open", "");
    }
    out.leaf("summary", summary);
}
