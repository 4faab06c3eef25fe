//! The second group: what it could hit.

pub(crate) mod region;

use super::field::{NUMBER, TextField, button, open_fold, open_shown};
use super::item::Item;
use super::sheet::path;
use super::{Part, View, words as w};
use crate::control::tick;
use crate::field_id;
use crate::page::Page;
use crate::words::m;
use crate::words::message::Piece;

/// The group.
pub(super) const GROUP: Item = Item::Group(
    m::FORM_PLACE,
    &[
        Item::Set(
            "targets",
            m::FORM_HIT,
            &[
                Item::Note("hint", m::FORM_HIT_HINT),
                Item::Part(Part::Targets),
                Item::Button("add-target", m::FORM_ADD_THING),
                Item::Own(none),
                Item::Line("asm", "targets-a"),
            ],
        ),
        Item::Part(Part::FarTape),
        Item::Own(line),
    ],
);

const DISTANCE: TextField = TextField {
    name: "distance",
    label: m::FORM_FAR,
    unit_here: true,
    ..NUMBER
};
const SLOPE: TextField = TextField {
    name: "slope",
    label: m::FORM_SLOPE,
    hint: m::FORM_SLOPE_HINT,
    ..NUMBER
};
const VOLTAGE: TextField = TextField {
    name: "voltage",
    label: m::FORM_VOLTAGE,
    ..NUMBER
};

/// Nothing is in reach.
fn none(view: &View<'_>, out: &mut Page<'_>) {
    let name = "none_in_reach";
    let on = view.sheet.ticked(name);
    tick(out, "checkbox", name, "on", on, &|out| {
        m::form_none_in(&mut |piece| match piece {
            Piece::Text(text) => out.text(text),
            Piece::Node(_) => reach(view, out, "none-d"),
        });
    });
}

/// Two heights, as far as they are known.
fn reach(view: &View<'_>, out: &mut Page<'_>, id: &str) {
    out.open("span");
    out.attr("id", id);
    out.text(view.line(id));
    out.close();
}

/// The list of things.
pub(super) fn targets(view: &View<'_>, out: &mut Page<'_>) {
    let count = view.sheet.count("targets");
    for at in 0..count {
        let under = path("targets", at, "");
        let number = crate::measure::number(at as u32 + 1);
        out.open_class("fieldset", "entry");
        let class = if count > 1 { "" } else { "vh" };
        out.open("legend");
        out.attr("class", class);
        out.text(m::form_thing(&*number));
        out.close();
        view.select(
            out,
            &path("targets", at, "kind"),
            &m::FORM_KIND,
            "",
            w::KINDS,
        );
        field(view, out, &under, &DISTANCE);
        ground(view, out, at, &under);
        if count > 1 {
            let remove = m::form_remove_thing(&number);
            button(out, "remove-target", Some(at), &remove, false);
        }
        out.close();
    }
}

fn field(view: &View<'_>, out: &mut Page<'_>, under: &str, field: &TextField) {
    out.open_class("div", "field");
    view.text(out, under, "", "", field);
    out.close();
}

/// The element of an entry's voltage.
pub(super) fn voltage_id(at: usize) -> String {
    cat!("m-voltage-", crate::measure::number(at as u32))
}

/// Whether an entry is a line.
pub(super) fn is_line(sheet: &super::Sheet, at: usize) -> bool {
    sheet.is(&path("targets", at, "kind"), "line")
}

fn ground(view: &View<'_>, out: &mut Page<'_>, at: usize, under: &str) {
    let given = ["slope", "downhill", "voltage"]
        .iter()
        .any(|key| !view.sheet.is(&cat!(under, key), ""));
    open_fold(out, &m::FORM_GROUND, given);
    field(view, out, under, &SLOPE);
    view.tick(out, &path("targets", at, "downhill"), &m::FORM_DOWNHILL);
    open_shown(out, &voltage_id(at), is_line(view.sheet, at));
    field(view, out, under, &VOLTAGE);
    out.close_two();
}

fn line(view: &View<'_>, out: &mut Page<'_>) {
    let name = "line_within_reach";
    out.open_class("fieldset", "field");
    out.attr("id", &field_id(name));
    out.open("legend");
    m::form_line_in(&mut |piece| match piece {
        Piece::Text(text) => out.text(text),
        Piece::Node(_) => reach(view, out, "line-d"),
    });
    out.close();
    out.open_class("div", "row2");
    view.radios(out, name, w::REPLIES);
    out.close();
    view.live_line(out, "asm", "line-a");
    out.close();
}
