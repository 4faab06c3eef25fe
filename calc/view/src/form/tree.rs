//! The first questions: which tree, how thick. Stems behind the first stand in the folded part.

use super::field::{NUMBER, TextField, button, open_shown};
use super::item::Item;
use super::sheet::{AS, path};
use super::{Field, View, species};
use crate::control::{label_of, open_control, option};
use crate::field_id;
use crate::measure::number;
use crate::page::Page;
use crate::words::{Lines, Word, m};

/// What a number of the trunk means: its unit, and across or around.
const MEASURED_AS: Lines = &[
    ("in across", m::FORM_MEASURED_IN_ACROSS),
    ("in around", m::FORM_MEASURED_IN_AROUND),
    ("cm across", m::FORM_MEASURED_CM_ACROSS),
    ("cm around", m::FORM_MEASURED_CM_AROUND),
];
/// The questions.
pub(super) const GROUP: &[Item] = &[
    species::FIELD,
    Item::Field(&[
        Item::Own(first),
        Item::Where(
            Field::SizeConfirmed,
            &[Item::Tick("size_confirmed", m::FORM_SIZE_SURE)],
        ),
    ]),
];

/// The size of the first stem; one list beside it says what its number means.
const FIRST: TextField = TextField {
    name: "diameter",
    label: m::FORM_HOW_THICK,
    unitless: true,
    ..NUMBER
};
const SIZE: TextField = TextField {
    name: "diameter",
    label: m::FORM_STEM,
    ..NUMBER
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

/// The size of the first stem, and how it was measured.
fn first(view: &View<'_>, out: &mut Page<'_>) {
    let under = path("stems", 0, "");
    let field = TextField {
        hint: size_hint(view.sheet),
        example: if view.sheet.metric() {
            m::FORM_SIZE_EXAMPLE_METRIC
        } else {
            m::FORM_SIZE_EXAMPLE_US
        },
        ..FIRST
    };
    view.open_text(out, &under, "", "", &field);
    let id = field_id(AS);
    label_of(out, "vh", &id, &m::FORM_MEASURED_AS);
    open_control(out, "select", "", &id, AS);
    let picked = view.sheet.measured_as();
    for &(value, words) in MEASURED_AS {
        option(out, value, &words, value == picked);
    }
    out.close();
    view.close_text(out, &under, &field);
}

/// Across or around, of a stem behind the first.
fn how(view: &View<'_>, out: &mut Page<'_>, at: usize) {
    out.open_class("fieldset", "field");
    out.open_class("legend", "vh");
    out.text(m::FORM_HOW);
    out.text(m::form_of_stem(at + 1));
    out.close();
    out.open_class("div", "row2");
    view.radios(out, &super::sheet::how(at), m::FORM_HOWS);
    out.close_two();
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

/// Live bark of the first stem.
pub(super) fn live_share(view: &View<'_>, out: &mut Page<'_>) {
    share(view, out, 0, "");
}

fn share(view: &View<'_>, out: &mut Page<'_>, at: usize, of: &str) {
    let under = path("stems", at, "");
    open_shown(
        out,
        &stem_id(Field::LiveShare, at),
        view.shows(Field::LiveShare),
    );
    out.open_class("div", "field");
    view.text(out, &under, "", of, &LIVE_SHARE);
    out.close_two();
}

/// Size, bark and live share of each stem behind the first.
pub(super) fn stems_more(view: &View<'_>, out: &mut Page<'_>) {
    for at in 1..view.sheet.count("stems") {
        let under = path("stems", at, "");
        let number = number(at as u32 + 1);
        let of = m::form_of_stem(at + 1);
        out.open_class("div", "field");
        view.open_text(out, &under, &number, "", &SIZE);
        let remove = m::form_remove_stem(&*number);
        button(out, "remove-stem", Some(at), &remove, false);
        view.close_text(out, &under, &SIZE);
        out.close();
        how(view, out, at);
        open_shown(out, &stem_id(Field::Bark, at), view.shows(Field::Bark));
        out.open_class("div", "field");
        view.text(out, &under, "", &of, &BARK);
        out.close_two();
        share(view, out, at, &of);
    }
}

/// The element of a stem's field.
pub(super) fn stem_id(field: Field, at: usize) -> String {
    cat!(field.id(), "-", number(at as u32))
}
