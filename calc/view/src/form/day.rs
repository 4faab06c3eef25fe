//! The third group: which day, how thick the bark is, what is seen.

use super::field::{TextField, one_of, open_group};
use super::{Field, Part, View, words as w};
use crate::control::{labelled, open_set};
use crate::field_id;
use crate::out::{Out, OutExt};

/// The element of the day's three parts.
pub(super) const PARTS_ID: &str = "m-date";

/// Whether people write the month before the day: English without a country, and that of the United States.
#[must_use]
pub fn month_first(lang: &str) -> bool {
    lang.eq_ignore_ascii_case("en") || lang.eq_ignore_ascii_case("en-us")
}

/// The group.
pub(super) fn group(view: &View<'_>, out: &mut dyn Out) {
    open_group(out, w::DATE);
    open_set(out, "date", w::DAY);
    view.radio(out, "day", "today", &|out| {
        out.text(w::TODAY);
        out.text(&crate::measure::day_year(view.options.today));
    });
    view.radio(out, "day", "other", &|out| out.text(w::OTHER_DAY));
    super::field::open_shown(out, PARTS_ID, view.sheet.get("day") == "other");
    parts(view, out, "date");
    out.close();
    view.radio(out, "day", "year", &|out| out.text(w::YEAR_ONLY));
    out.close();
    view.whole_part(out, Part::YearTape);
    view.open_where(out, Field::Bark);
    bark(view, out);
    out.close();
    open_set(out, "signs", w::SIGNS);
    for (value, words) in w::SIGN_WORDS {
        one_of(out, "signs", value, view.sheet.holds("signs", value), words);
    }
    out.close();
    out.close();
}

/// Three text fields in the order of the reader's country; months may be named.
pub(super) fn parts(view: &View<'_>, out: &mut dyn Out, name: &str) {
    let month_first = month_first(view.options.lang);
    let id = field_id(name);
    let hint = [&id, "-h"].concat();
    out.open_class("p", "hint");
    out.attr("id", &hint);
    out.text(if month_first {
        w::DAY_HINT_MDY
    } else {
        w::DAY_HINT_DMY
    });
    out.close();
    let day = ("d", w::PART_DAY, "w1");
    let month = ("m", w::PART_MONTH, "w2");
    let year = ("y", w::PART_YEAR, "w1");
    let order = if month_first {
        [month, day, year]
    } else {
        [day, month, year]
    };
    out.open_class("div", "parts");
    for (key, words, width) in order {
        let name = [name, ".", key].concat();
        let id = field_id(&name);
        out.open("div");
        labelled(out, &id, words, "");
        out.open_class("input", width);
        out.attr("type", "text");
        if key != "m" {
            out.attr("inputmode", "numeric");
        }
        out.attr("id", &id);
        out.attr("name", &name);
        out.attr("value", view.sheet.get(&name));
        out.attr("aria-describedby", &hint);
        out.close();
        out.close();
    }
    out.close();
}

fn bark(view: &View<'_>, out: &mut dyn Out) {
    out.open_class("div", "field");
    view.bare_field(
        out,
        &TextField {
            tail: w::IF_MEASURED,
            unit_here: true,
            ..TextField::number("stems[0].bark", w::BARK)
        },
    );
    view.live_line(out, "p", "asm", "bark-a");
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
