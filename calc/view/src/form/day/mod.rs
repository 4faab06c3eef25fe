//! Which day: one field for today, another day or the whole year; and days in three parts, as a leaf-out has them.

pub(crate) mod leaf_out;
pub(crate) mod written;

use super::View;
use super::item::Item;
use crate::control::{hint_with, label_of, open_input};
use crate::field_id;
use crate::measure;
use crate::page::Page;
use crate::words::m;

/// The line that says how the day was read, and when the bark slips next.
pub(super) const LINE_ID: &str = "day-a";

/// Whether people write the month before the day: English without a country, and that of the United States.
#[must_use]
pub fn month_first(lang: &str) -> bool {
    lang.eq_ignore_ascii_case("en") || lang.eq_ignore_ascii_case("en-us")
}

/// The question.
pub(super) const GROUP: &[Item] = &[Item::Own(day)];

fn day(view: &View<'_>, out: &mut Page<'_>) {
    let id = field_id("day");
    out.open_class("div", "field");
    label_of(out, "", &id, &m::FORM_WHICH_DAY);
    let hint = hint_with(
        out,
        &id,
        &m::FORM_WHICH_DAY_HINT,
        &m::FORM_WHICH_DAY_EXAMPLE,
    );
    let today = (!view.options.built).then_some(view.options.today);
    let shown = written::shown(view.sheet.get("day"), today);
    open_input(out, "wf", "", &id, "day", &shown);
    out.attr("aria-describedby", &cat!(hint, " ", LINE_ID));
    out.attr("spellcheck", "false");
    out.close();
    view.live_line(out, "used", LINE_ID);
    out.close();
}

/// How the day was read where it was not written out, and the next days on which the bark of the named tree slips.
pub(super) fn line(view: &View<'_>) -> String {
    let draft = &view.draft;
    let read = match draft.question.as_ref().map(|question| question.day) {
        Some(calc::question::Day::On(day)) if view.sheet.is_bare_day(view.options.today) => {
            m::form_read_as(measure::day_year(day))
        }
        _ => String::new(),
    };
    let answer = draft.answer.as_ref().filter(|_| draft.named);
    let timing = answer.map(|answer| &answer.timing);
    let next = timing.and_then(|timing| timing.next_good.zip(timing.next_good_to));
    let Some((from, to)) = next else {
        return read;
    };
    let slips = m::form_slips_next(measure::days(from, to));
    if read.is_empty() {
        slips
    } else {
        cat!(read, " ", slips)
    }
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
