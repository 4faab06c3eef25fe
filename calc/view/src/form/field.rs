//! The parts that fields are made of: labels above, hints behind them, no placeholders, nothing disabled.

use super::View;
use super::length::Length;
use super::words::{self as w, Choice};
use crate::control::{labelled, option, tick};
use crate::field_id;
use crate::out::{Out, OutExt};

/// A field of text.
pub(super) struct TextField<'t> {
    /// Path and name.
    pub name: &'t str,
    /// The label without its unit.
    pub label: &'t str,
    /// Behind the unit in the label.
    pub tail: &'t str,
    /// A hint of its own, or empty.
    pub hint: &'t str,
    /// Whether the control of its unit stands beside it, not at another field.
    pub unit_here: bool,
    /// A button behind it: act, place in the list, words.
    pub button: Option<(&'t str, usize, &'t str)>,
    /// Whether digits are to be expected.
    pub decimal: bool,
    /// Whether words are.
    pub wide: bool,
}

impl<'t> TextField<'t> {
    /// A number without a unit to choose.
    pub fn number(name: &'t str, label: &'t str) -> Self {
        Self {
            name,
            label,
            tail: "",
            hint: "",
            unit_here: false,
            button: None,
            decimal: true,
            wide: false,
        }
    }
}

/// The long name of a unit.
pub(super) fn unit_word(unit: &str) -> &'static str {
    match unit {
        "in" => w::INCHES,
        "cm" => w::CM,
        "mm" => w::MM,
        "ft" => w::FEET,
        _ => w::METRES,
    }
}

impl View<'_> {
    /// A field of text with its label, hint, unit, echo and assumption.
    pub(super) fn text_field(&self, out: &mut dyn Out, field: &TextField<'_>) {
        out.open_class("div", "field");
        self.bare_field(out, field);
        out.close();
    }

    /// The same without the element around it.
    pub(super) fn bare_field(&self, out: &mut dyn Out, field: &TextField<'_>) {
        let id = field_id(field.name);
        out.open("label");
        out.attr("for", &id);
        out.text(field.label);
        let length = Length::of(field.name);
        if let Some(length) = &length {
            out.text(", ");
            out.open("span");
            out.attr("id", &[&id, "-u"].concat());
            out.text(unit_word(self.sheet.unit_of(length)));
            out.close();
        }
        out.text(field.tail);
        out.close();
        let hint = [&id, "-h"].concat();
        if !field.hint.is_empty() {
            out.open_class("span", "hint");
            out.attr("id", &hint);
            out.text(field.hint);
            out.close();
        }
        let echo = [&id, "-r"].concat();
        out.open_class("div", "pair");
        out.open_class("input", if field.wide { "wf" } else { "w2" });
        out.attr("type", "text");
        if field.decimal {
            out.attr("inputmode", "decimal");
        }
        out.attr("id", &id);
        out.attr("name", field.name);
        out.attr("value", self.sheet.get(field.name));
        let mut described = String::new();
        if !field.hint.is_empty() {
            described.push_str(&hint);
        }
        if length.is_some() {
            described.push(' ');
            described.push_str(&echo);
        }
        if !described.is_empty() {
            out.attr("aria-describedby", described.trim_start());
        }
        out.close();
        if let Some(length) = length.as_ref().filter(|_| field.unit_here) {
            self.unit_choice(out, length, field.label);
        }
        if let Some((act, at, words)) = field.button {
            button(out, act, Some(at), words, false);
        }
        out.close();
        if length.is_some() {
            self.live_line(out, "p", "echo", &echo);
        }
    }

    /// The choice of a unit: what the number beside it means.
    fn unit_choice(&self, out: &mut dyn Out, length: &Length, of: &str) {
        let id = field_id(&length.control);
        out.open_class("label", "vh");
        out.attr("for", &id);
        out.text(w::UNIT_OF);
        out.text(of);
        out.close();
        out.open_class("select", "unit");
        out.attr("id", &id);
        out.attr("name", &length.control);
        let picked = self.sheet.unit_of(length);
        for value in length.units() {
            option(out, value, unit_word(value), value == picked);
        }
        out.close();
    }

    /// A line that follows what is typed.
    pub(super) fn live_line(&self, out: &mut dyn Out, tag: &'static str, class: &str, id: &str) {
        out.open_class(tag, class);
        self.line_body(out, id);
    }

    /// The same for those who listen too.
    pub(super) fn status_line(&self, out: &mut dyn Out, id: &str) {
        out.open_class("p", "asm");
        out.attr("role", "status");
        self.line_body(out, id);
    }

    fn line_body(&self, out: &mut dyn Out, id: &str) {
        let text = self.line(id);
        out.attr("id", id);
        if text.is_empty() {
            out.attr("hidden", "");
        }
        out.text(text);
        out.close();
    }

    /// A list to pick one from; its first, empty value says what is used if nothing is.
    pub(super) fn select(
        &self,
        out: &mut dyn Out,
        name: &str,
        label: &str,
        hint: &str,
        choice: Choice,
    ) {
        out.open_class("div", "field");
        self.bare_select(out, name, label, hint, choice);
        out.close();
    }

    /// The same without the element around it.
    pub(super) fn bare_select(
        &self,
        out: &mut dyn Out,
        name: &str,
        label: &str,
        hint: &str,
        choice: Choice,
    ) {
        let id = field_id(name);
        let hint_id = labelled(out, &id, label, hint);
        out.open_class("select", "wf");
        out.attr("id", &id);
        out.attr("name", name);
        if !hint.is_empty() {
            out.attr("aria-describedby", &hint_id);
        }
        let picked = self.sheet.get(name);
        for (value, words) in choice {
            option(out, value, words, *value == picked);
        }
        out.close();
    }

    /// A group of radios; none is picked unless it stands in the sheet.
    pub(super) fn radios(&self, out: &mut dyn Out, name: &str, choice: Choice) {
        for (value, words) in choice {
            self.radio(out, name, value, &|out| out.text(words));
        }
    }

    /// One radio with its label.
    pub(super) fn radio(
        &self,
        out: &mut dyn Out,
        name: &str,
        value: &str,
        words: &dyn Fn(&mut dyn Out),
    ) {
        tick(
            out,
            "radio",
            name,
            value,
            self.sheet.get(name) == value,
            words,
        );
    }

    /// One box with its label.
    pub(crate) fn tick(&self, out: &mut dyn Out, name: &str, words: &dyn Fn(&mut dyn Out)) {
        tick(out, "checkbox", name, "on", self.sheet.ticked(name), words);
    }

    /// Opens the element of a field that is asked only where it matters.
    pub(super) fn open_where(&self, out: &mut dyn Out, field: super::Field) {
        open_shown(out, field.id(), self.shows(field));
    }
}

/// One of several boxes that share a name.
pub(super) fn one_of(out: &mut dyn Out, name: &str, value: &str, on: bool, words: &str) {
    tick(out, "checkbox", name, value, on, &|out| out.text(words));
}

/// A button that acts on the form; `at` is the place in a list.
pub(super) fn button(out: &mut dyn Out, act: &str, at: Option<usize>, words: &str, hidden: bool) {
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

/// Opens one of the three groups.
pub(super) fn open_group(out: &mut dyn Out, legend: &str) {
    out.open_class("fieldset", "group");
    out.leaf("legend", legend);
}

/// Opens an element that may be hidden.
pub(super) fn open_shown(out: &mut dyn Out, id: &str, shown: bool) {
    out.open("div");
    out.attr("id", id);
    if !shown {
        out.attr("hidden", "");
    }
}
