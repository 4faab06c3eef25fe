//! What stands in the form, described: each group is a list of these in the order of the page, and one walk draws
//! them. A field is added as a line of its group, and by its name in `sheet/names.rs`.

use super::field::{TextField, open_shown};
use super::{Field, Part, Sheet, View};
use crate::control::{file, open_select, open_set, option, tick_text};
use crate::page::Page;
use crate::words::{Lines, Word};

/// How a sheet must be for something.
pub(super) type Test = fn(&Sheet) -> bool;

/// Something that stands in the form.
pub(super) enum Item {
    /// A set of fields under a name that links of problems lead to, with its legend.
    Set(&'static str, Word, &'static [Item]),
    /// What stands together as one field.
    Field(&'static [Item]),
    /// What stands beside each other.
    Beside(&'static [Item]),
    /// A row of the folded part: the id of the line that says what is used, its name, what it unfolds to.
    Row(&'static str, Word, &'static [Item]),
    /// Shown where some rule reads the field.
    Where(Field, &'static [Item]),
    /// Shown while the sheet is so; with the id of its element.
    While(&'static str, Test, &'static [Item]),
    /// Folded under a summary, and open from the start where the sheet is so.
    Fold(Word, Test, &'static [Item]),
    /// A text of one line.
    Text(TextField),
    /// A list to pick one from: name, label, hint, lines. Its first, empty value says what is used if nothing is.
    Select(&'static str, Word, Word, Lines),
    /// One of several, none picked unless it stands in the sheet: name, values.
    Radios(&'static str, Lines),
    /// Some of several, which share a name: name, values.
    Ticks(&'static str, Lines),
    /// A thing to tick: name, words.
    Tick(&'static str, Word),
    /// A button that acts on the form: act, words.
    Button(&'static str, Word),
    /// A choice of a file: id, label, kinds.
    File(&'static str, Word, &'static str),
    /// A paragraph: class, words.
    Note(&'static str, Word),
    /// A line that follows what is typed: class, id.
    Line(&'static str, &'static str),
    /// The same for those who listen too.
    Status(&'static str),
    /// A part that follows what is typed.
    Part(Part),
    /// What is like nothing else.
    Own(fn(&View<'_>, &mut Page<'_>)),
}

impl View<'_> {
    /// Draws what is described.
    pub(super) fn items(&self, out: &mut Page<'_>, items: &[Item]) {
        for item in items {
            let inside = self.open_item(out, item);
            if let Some(inside) = inside {
                self.items(out, inside);
                out.close();
            }
        }
    }

    /// Draws a thing that holds no other, or opens one and gives what it holds.
    fn open_item(&self, out: &mut Page<'_>, item: &Item) -> Option<&'static [Item]> {
        match *item {
            Item::Set(name, legend, inside) => {
                open_set(out, name, &legend);
                return Some(inside);
            }
            Item::Field(inside) => {
                out.open_class("div", "field");
                return Some(inside);
            }
            Item::Beside(inside) => {
                out.open_class("div", "row2");
                return Some(inside);
            }
            Item::Row(line, label, inside) => {
                out.open_class("details", "give");
                out.open("summary");
                out.leaf("b", label);
                self.used_line(out, line);
                out.close();
                return Some(inside);
            }
            Item::Where(field, inside) => {
                open_shown(out, field.id(), self.shows(field));
                return Some(inside);
            }
            Item::While(id, so, inside) => {
                open_shown(out, id, so(self.sheet));
                return Some(inside);
            }
            Item::Fold(summary, so, inside) => {
                super::field::open_fold(out, &summary, so(self.sheet));
                return Some(inside);
            }
            Item::Text(ref field) => self.text(out, "", "", "", field),
            Item::Select(name, label, hint, choice) => {
                self.select(out, name, &label, &hint, choice)
            }
            Item::Radios(name, choice) => self.radios(out, name, choice),
            Item::Ticks(name, choice) => {
                for &(value, words) in choice {
                    let on = self.sheet.holds(name, value);
                    tick_text(out, "checkbox", name, value, on, &words);
                }
            }
            Item::Tick(name, words) => self.tick(out, name, &words),
            Item::Button(act, words) => super::field::button(out, act, None, &words, false),
            Item::File(id, label, kinds) => file(out, id, &label, kinds),
            Item::Note(class, words) => out.leaf_class("p", class, words),
            Item::Line(class, id) => self.live_line(out, class, id),
            Item::Status(id) => self.status_line(out, id),
            Item::Part(part) => self.whole_part(out, part),
            Item::Own(draw) => draw(self, out),
        }
        None
    }

    /// A list to pick one from.
    pub(super) fn select(
        &self,
        out: &mut Page<'_>,
        name: &str,
        label: &str,
        hint: &str,
        choice: Lines,
    ) {
        open_select(out, name, label, hint);
        let picked = self.sheet.get(name);
        for &(value, words) in choice {
            option(out, value, &words, value == picked);
        }
        out.close_two();
    }

    /// A choice of one, none picked unless it stands in the sheet.
    pub(super) fn radios(&self, out: &mut Page<'_>, name: &str, choice: Lines) {
        let picked = self.sheet.get(name);
        for &(value, words) in choice {
            tick_text(out, "radio", name, value, value == picked, &words);
        }
    }
}
