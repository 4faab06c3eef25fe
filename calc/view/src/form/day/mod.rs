//! The third group: which day, and in which state or country, which sets the days and the local rules.

pub(crate) mod leaf_out;

use super::item::Item;
use super::place::region;
use super::{Part, Sheet, View};
use crate::control::{label_of, open_input, tick_text};
use crate::field_id;
use crate::page::Page;
use crate::words::m;

/// The element of the day's three parts.
pub(super) const PARTS_ID: &str = "m-date";

/// Whether people write the month before the day: English without a country, and that of the United States.
#[must_use]
pub fn month_first(lang: &str) -> bool {
    lang.eq_ignore_ascii_case("en") || lang.eq_ignore_ascii_case("en-us")
}

/// The group.
pub(super) const GROUP: Item = Item::Group(
    m::FORM_DATE,
    &[
        Item::Set(
            "date",
            m::FORM_DAY,
            &[
                Item::Own(today),
                Item::Radio("day", "other", m::FORM_OTHER_DAY),
                Item::While(PARTS_ID, other, &[Item::Own(date)]),
                Item::Radio("day", "year", m::FORM_YEAR_ONLY),
            ],
        ),
        Item::Part(Part::YearTape),
        Item::Own(region::field),
    ],
);

fn today(view: &View<'_>, out: &mut Page<'_>) {
    let words = m::form_today(view.options.today);
    let on = view.sheet.is("day", "today");
    tick_text(out, "radio", "day", "today", on, &words);
}

/// Whether the day is another one.
pub(super) fn other(sheet: &Sheet) -> bool {
    sheet.is("day", "other")
}

fn date(view: &View<'_>, out: &mut Page<'_>) {
    parts(view, out, "date");
}

/// Three text fields in the order of the reader's country; months may be named.
pub(super) fn parts(view: &View<'_>, out: &mut Page<'_>, name: &str) {
    let month_first = month_first(view.options.lang);
    let id = field_id(name);
    let hint = cat!(&id, "-h");
    out.open_class("p", "hint");
    out.attr("id", &hint);
    out.text(if month_first {
        m::FORM_DAY_HINT_MDY
    } else {
        m::FORM_DAY_HINT_DMY
    });
    out.close();
    out.open_class("div", "parts");
    for key in if month_first {
        ["m", "d", "y"]
    } else {
        ["d", "m", "y"]
    } {
        let (words, width, keys) = match key {
            "m" => (m::FORM_PART_MONTH, "w2", ""),
            "d" => (m::FORM_PART_DAY, "w1", "numeric"),
            _ => (m::FORM_PART_YEAR, "w1", "numeric"),
        };
        let name = cat!(name, ".", key);
        let id = field_id(&name);
        out.open("div");
        label_of(out, "", &id, &words);
        open_input(out, width, keys, &id, &name, view.sheet.get(&name));
        out.attr("aria-describedby", &hint);
        out.close_two();
    }
    out.close();
}

#[cfg(test)]
mod tests {
    use super::month_first;

    #[test]
    fn the_month_comes_first_where_people_write_it_so() {
        assert!(month_first("en") && month_first("en-US") && month_first("EN"));
        for lang in ["en-GB", "en-NZ", "es", "es-MX", "de", ""] {
            assert!(!month_first(lang), "{lang}");
        }
    }
}
