//! The second group: what it could hit, and how tall it is.

use super::field::{TextField, button, open_group, open_shown};
use super::sheet::path;
use super::{Field, Part, View, words as w};
use crate::control::{labelled, open_set, option};
use crate::field_id;
use crate::out::{Out, OutExt};

/// The group.
pub(super) fn group(view: &View<'_>, out: &mut dyn Out) {
    open_group(out, w::PLACE);
    open_set(out, "targets", w::HIT);
    out.leaf_class("p", "hint", w::HIT_HINT);
    view.whole_part(out, Part::Targets);
    button(out, "add-target", None, w::ADD_THING, false);
    view.tick(out, "none_in_reach", &|out| {
        out.text(w::NONE_IN);
        reach(view, out, "none-d");
    });
    view.live_line(out, "p", "asm", "targets-a");
    out.close();
    view.whole_part(out, Part::FarTape);
    line(view, out);
    height(view, out);
    out.close();
}

/// Two heights, as far as they are known.
fn reach(view: &View<'_>, out: &mut dyn Out, id: &str) {
    out.open("span");
    out.attr("id", id);
    out.text(view.line(id));
    out.close();
}

/// The list of things.
pub(super) fn targets(view: &View<'_>, out: &mut dyn Out) {
    let count = view.sheet.count("targets");
    for at in 0..count {
        target(view, out, at, count);
    }
}

fn target(view: &View<'_>, out: &mut dyn Out, at: usize, count: usize) {
    let number = crate::measure::number(at as u32 + 1);
    let name = |key: &str| path("targets", at, key);
    out.open_class("fieldset", "entry");
    out.leaf_class(
        "legend",
        if count > 1 { "" } else { "vh" },
        &[w::THING, &number].concat(),
    );
    kind(view, out, &name("kind"));
    let distance = name("distance");
    view.text_field(
        out,
        &TextField {
            unit_here: true,
            ..TextField::number(&distance, w::FAR)
        },
    );
    ground(view, out, at);
    if count > 1 {
        button(
            out,
            "remove-target",
            Some(at),
            &[w::REMOVE_THING, &number].concat(),
            false,
        );
    }
    out.close();
}

fn kind(view: &View<'_>, out: &mut dyn Out, name: &str) {
    let id = field_id(name);
    out.open_class("div", "field");
    labelled(out, &id, w::KIND, "");
    out.open_class("select", "wf");
    out.attr("id", &id);
    out.attr("name", name);
    let picked = view.sheet.get(name);
    option(out, "", w::KIND_OPEN, picked.is_empty());
    for (value, words) in w::KINDS {
        option(out, value, words, *value == picked);
    }
    out.close();
    out.close();
}

/// The element of an entry's voltage.
pub(super) fn voltage_id(at: usize) -> String {
    ["m-voltage-", &crate::measure::number(at as u32)].concat()
}

fn ground(view: &View<'_>, out: &mut dyn Out, at: usize) {
    let name = |key: &str| path("targets", at, key);
    let given = ["slope", "downhill", "voltage"]
        .iter()
        .any(|key| !view.sheet.get(&name(key)).is_empty());
    out.open("details");
    if given {
        out.attr("open", "");
    }
    out.leaf("summary", w::GROUND);
    let slope = name("slope");
    view.text_field(
        out,
        &TextField {
            hint: w::SLOPE_HINT,
            ..TextField::number(&slope, w::SLOPE)
        },
    );
    view.tick(out, &name("downhill"), &|out| out.text(w::DOWNHILL));
    let line = view.sheet.get(&name("kind")) == "line";
    open_shown(out, &voltage_id(at), line);
    let voltage = name("voltage");
    view.text_field(out, &TextField::number(&voltage, w::VOLTAGE));
    out.close();
    out.close();
}

fn line(view: &View<'_>, out: &mut dyn Out) {
    out.open_class("fieldset", "field");
    out.attr("id", &field_id("line_within_reach"));
    out.open("legend");
    out.text(w::LINE_IN);
    reach(view, out, "line-d");
    out.text("?");
    out.close();
    out.open_class("div", "row2");
    view.radios(out, "line_within_reach", w::REPLIES);
    out.close();
    view.live_line(out, "p", "asm", "line-a");
    out.close();
}

fn height(view: &View<'_>, out: &mut dyn Out) {
    out.open_class("div", "field");
    view.bare_field(
        out,
        &TextField {
            tail: w::IF_MEASURED,
            unit_here: true,
            ..TextField::number("height", w::HEIGHT)
        },
    );
    view.live_line(out, "p", "asm", "height-a");
    view.open_where(out, Field::Confirmed);
    view.tick(out, "height_confirmed", &|out| out.text(w::HEIGHT_SURE));
    out.close();
    out.close();
    super::aids::height(view, out);
}
