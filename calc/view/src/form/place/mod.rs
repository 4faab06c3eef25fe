//! What it could hit: the nearest thing in front, the others in the folded part.

pub(crate) mod named;
pub(crate) mod region;

use super::View;
use super::field::{NUMBER, TextField, button, open_shown};
use super::item::Item;
use super::lines::units;
use super::sheet::{NOTHING, path};
use crate::control::{hint_of, label_of, open_control, open_select, option};
use crate::field_id;
use crate::measure;
use crate::page::Page;
use crate::words::m;

/// The questions: the nearest thing with its distance, and an overhead line.
pub(super) const GROUP: &[Item] = &[Item::Own(nearest), Item::Own(line)];

/// The element of the distance of the nearest thing.
pub(super) const FAR_ID: &str = "m-far";
/// The line that tells two heights of the tree.
pub(super) const TWO_HEIGHTS_ID: &str = "far-a";

const DISTANCE: TextField = TextField {
    name: "distance",
    label: m::FORM_FAR,
    unit_here: true,
    ..NUMBER
};
/// Its unit is chosen in the folded part: it follows that of the trunk while nothing is typed.
const FIRST_DISTANCE: TextField = TextField {
    unit_here: false,
    ..DISTANCE
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

/// The nearest thing: its kind, and once that is picked its distance.
fn nearest(view: &View<'_>, out: &mut Page<'_>) {
    out.open_class("div", "field");
    let name = path("targets", 0, "kind");
    let id = field_id(&name);
    label_of(out, "", &id, &m::FORM_NEAREST);
    let hint = hint_of(out, &id, &m::FORM_NEAREST_HINT);
    open_control(out, "select", "wf", &id, &name);
    out.attr("aria-describedby", &cat!(hint, " ", TWO_HEIGHTS_ID));
    kinds(view, out, &name, 0);
    out.close();
    open_shown(out, FAR_ID, has_distance(view.sheet));
    out.open_class("div", "field far");
    view.text(out, &path("targets", 0, ""), "", "", &FIRST_DISTANCE);
    out.close_two();
    view.live_line(out, "used", TWO_HEIGHTS_ID);
    out.close();
}

/// The kinds of things; the first may be that nothing is there, and so may be what a host has said so of.
fn kinds(view: &View<'_>, out: &mut Page<'_>, name: &str, at: usize) {
    let picked = view.sheet.get(name);
    for &(value, words) in m::FORM_KINDS {
        option(out, value, &words, value == picked);
    }
    if at == 0 || picked == NOTHING {
        option(out, NOTHING, &m::FORM_KINDS_NOTHING, picked == NOTHING);
    }
}

/// Whether the nearest thing has a distance: something was picked, and not that nothing is there.
pub(super) fn has_distance(sheet: &super::Sheet) -> bool {
    let kind = sheet.get("targets[0].kind");
    !kind.is_empty() && kind != NOTHING
}

/// Two heights, as far as they are known.
pub(super) fn two_heights(view: &View<'_>) -> String {
    view.draft.whole().map_or_else(String::new, |answer| {
        let reach = measure::reach(answer.reach.two_heights_m).text(units(view));
        m::form_two_heights_are(reach)
    })
}

/// Ground and voltage of the first thing, and the things behind it.
pub(super) fn targets_more(view: &View<'_>, out: &mut Page<'_>) {
    let first = path("targets", 0, "");
    ground(view, out, 0, &first, &m::form_thing("1"));
    view.unit_of(out, &cat!(first, "distance"), &m::FORM_FAR);
    for at in 1..view.sheet.count("targets") {
        let under = path("targets", at, "");
        let number = measure::number(at as u32 + 1);
        out.open_class("fieldset", "entry");
        out.leaf("legend", m::form_thing(&*number));
        let kind = path("targets", at, "kind");
        open_select(out, &kind, &m::FORM_KIND, "");
        kinds(view, out, &kind, at);
        out.close_two();
        field(view, out, &under, &DISTANCE);
        ground(view, out, at, &under, &m::FORM_GROUND);
        let remove = m::form_remove_thing(&number);
        button(out, "remove-target", Some(at), &remove, false);
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

/// What a slope changes, and the voltage of a line.
fn ground(view: &View<'_>, out: &mut Page<'_>, at: usize, under: &str, legend: &str) {
    out.open_class("fieldset", "sub");
    out.leaf("legend", legend);
    field(view, out, under, &SLOPE);
    view.tick(out, &path("targets", at, "downhill"), &m::FORM_DOWNHILL);
    open_shown(out, &voltage_id(at), is_line(view.sheet, at));
    field(view, out, under, &VOLTAGE);
    out.close_two();
}

/// Whether a line is near: three buttons.
fn line(view: &View<'_>, out: &mut Page<'_>) {
    let name = "line_within_reach";
    out.open_class("fieldset", "field");
    out.attr("id", &field_id(name));
    out.leaf("legend", m::FORM_ANY_LINE);
    out.leaf_class("p", "hint", m::FORM_LINE_HINT);
    out.open_class("div", "seg");
    let picked = view.sheet.get(name);
    for &(value, words) in m::FORM_REPLIES {
        out.open("label");
        out.open("input");
        out.attr("type", "radio");
        out.attr("name", name);
        out.attr("value", value);
        if value == picked {
            out.attr("checked", "");
        }
        out.close();
        out.leaf("span", words);
        out.close();
    }
    out.close_two();
}
