//! The first group: which tree, how thick.

use super::field::{NUMBER, TextField, button, open_shown};
use super::item::Item;
use super::sheet::path;
use super::{Field, Part, View, species, words as w};
use crate::measure::number;
use crate::page::Page;
use crate::words::{Word, m};

/// The group.
pub(super) const GROUP: Item = Item::Group(
    m::FORM_TREE,
    &[
        species::FIELD,
        Item::Part(Part::Stems),
        Item::Part(Part::SizeTape),
        Item::Button("add-stem", m::FORM_ADD_STEM),
    ],
);

/// The size of the first stem, which carries the unit for all.
const FIRST: TextField = TextField {
    name: "diameter",
    label: m::FORM_SIZE,
    unit_here: true,
    ..NUMBER
};
const SIZE: TextField = TextField {
    label: m::FORM_STEM,
    unit_here: false,
    ..FIRST
};
const BARK: TextField = TextField {
    name: "bark",
    label: m::FORM_BARK,
    tail: m::FORM_IF_MEASURED,
    ..NUMBER
};
const LIVE_SHARE: TextField = TextField {
    name: "live_share",
    label: m::FORM_LIVE_SHARE,
    hint: m::FORM_LIVE_HINT,
    ..NUMBER
};

/// Across or around: neither is picked for the asker, for a girth read as a diameter is three times too much.
fn how(view: &View<'_>, out: &mut Page<'_>, at: usize) {
    out.open_class("fieldset", "field");
    out.open_class("legend", "vh");
    out.text(m::FORM_HOW);
    if at > 0 {
        out.text(m::form_of_stem(at + 1));
    }
    out.close();
    out.open_class("div", "row2");
    view.radios(out, &super::sheet::how(at), w::HOWS);
    out.close();
    if at == 0 {
        view.live_line(out, "asm", "stems-how-a");
    }
    out.close();
}

/// The size of each stem.
pub(super) fn stems(view: &View<'_>, out: &mut Page<'_>) {
    for at in 0..view.sheet.count("stems") {
        let under = path("stems", at, "");
        out.open_class("div", "field");
        if at == 0 {
            let hint = size_hint(view.sheet);
            view.text(out, &under, "", "", &TextField { hint, ..FIRST });
        } else {
            let number = number(at as u32 + 1);
            let remove = m::form_remove_stem(&number);
            view.open_text(out, &under, &number, "", &SIZE);
            button(out, "remove-stem", Some(at), &remove, false);
            view.close_text(out, &under, &SIZE);
        }
        out.close();
        how(view, out, at);
    }
}

/// Where the size is taken: breast height is 4.5 ft in the United States and 1.3 m elsewhere.
pub(super) fn size_hint(sheet: &super::Sheet) -> Word {
    if sheet.metric() {
        m::FORM_SIZE_METRIC
    } else {
        m::FORM_SIZE_US
    }
}

/// The same as a line, since it follows the unit.
pub(super) fn size_hint_line(view: &View<'_>) -> String {
    size_hint(view.sheet).into()
}

/// Live share of each stem, and bark of those behind the first.
pub(super) fn stems_more(view: &View<'_>, out: &mut Page<'_>) {
    let count = view.sheet.count("stems");
    for at in 0..count {
        let under = path("stems", at, "");
        let of_stem = if count > 1 {
            m::form_of_stem(at + 1)
        } else {
            String::new()
        };
        for (field, described, empty) in [
            (Field::Bark, &BARK, Word::NONE),
            (Field::LiveShare, &LIVE_SHARE, m::FORM_LIVE_EMPTY),
        ] {
            if at == 0 && field == Field::Bark {
                continue;
            }
            open_shown(out, &stem_id(field, at), view.shows(field));
            out.open_class("div", "field");
            view.text(out, &under, "", &of_stem, described);
            if !empty.is_empty() {
                out.leaf_class("p", "asm", empty);
            }
            out.close_two();
        }
    }
}

/// The element of a stem's field.
pub(super) fn stem_id(field: Field, at: usize) -> String {
    cat!(field.id(), "-", number(at as u32))
}
