//! What may be told besides: each with what is used if it is not.

use super::field::{TextField, UnitOf, open_set, option};
use super::regions::REGIONS;
use super::{Field, Part, View, day, words as w};
use crate::field_id;
use crate::out::{Out, OutExt};

/// The folded part of the form.
pub(super) fn more(view: &View<'_>, out: &mut dyn Out) {
    out.open_class("details", "more");
    out.leaf("summary", w::MORE);
    out.open_class("div", "groups");
    tree(view, out);
    place(view, out);
    job(view, out);
    out.close();
    out.close();
}

fn tree(view: &View<'_>, out: &mut dyn Out) {
    super::field::open_group(out, w::MORE_TREE);
    view.select(out, "condition", w::CONDITION, "", w::CONDITIONS);
    where_select(
        view,
        out,
        Field::Setting,
        "setting",
        w::SETTING,
        "",
        w::SETTINGS,
    );
    where_select(
        view,
        out,
        Field::Vigour,
        "vigour",
        w::VIGOUR,
        "",
        w::VIGOURS,
    );
    where_select(
        view,
        out,
        Field::Limbs,
        "limbs",
        w::LIMBS,
        "",
        w::LIMB_WORDS,
    );
    let clone = (w::CLONE, w::CLONE_HINT);
    where_select(
        view,
        out,
        Field::WholeClone,
        "whole_clone",
        clone.0,
        clone.1,
        w::YES_NO,
    );
    where_select(
        view,
        out,
        Field::SameGenusNear,
        "same_genus_near",
        w::GENUS,
        "",
        w::YES_NO,
    );
    view.whole_part(out, Part::StemsMore);
    out.close();
}

fn where_select(
    view: &View<'_>,
    out: &mut dyn Out,
    field: Field,
    name: &str,
    label: &str,
    hint: &str,
    choice: w::Choice,
) {
    view.open_where(out, field);
    view.select(out, name, label, hint, choice);
    out.close();
}

fn place(view: &View<'_>, out: &mut dyn Out) {
    super::field::open_group(out, w::MORE_PLACE);
    region(view, out);
    open_set(out, "place", w::WHERE);
    view.select(out, "place.hemisphere", w::HALF, "", w::HALVES);
    out.leaf_class("p", "hint", w::POINT_HINT);
    for (name, label) in [
        ("place.latitude", w::LATITUDE),
        ("place.longitude", w::LONGITUDE),
    ] {
        // The keypad of digits has no minus on some phones.
        view.text_field(
            out,
            &TextField {
                decimal: false,
                ..TextField::number(name, label)
            },
        );
    }
    view.text_field(
        out,
        &TextField {
            unit: Some(UnitOf::here("place.unit", "ft", "m")),
            ..TextField::number("place.elevation", w::ELEVATION)
        },
    );
    out.close();
    view.open_where(out, Field::LeafedOut);
    view.select(out, "leafed_out.stage", w::LEAF, "", w::STAGES);
    open_set(out, "leafed_out.date", w::LEAF_ON);
    day::parts(view, out, "leafed_out.date");
    out.close();
    out.close();
    where_select(
        view,
        out,
        Field::DrySpell,
        "dry_spell",
        w::DRY,
        "",
        w::DRIES,
    );
    out.close();
}

/// States and countries by name; a code that a host has set and we have no name for stays as it is.
fn region(view: &View<'_>, out: &mut dyn Out) {
    let picked = view.sheet.get("region");
    out.open_class("div", "field");
    out.open("label");
    out.attr("for", "f-region");
    out.text(w::REGION);
    out.close();
    out.open_class("span", "hint");
    out.attr("id", "f-region-h");
    out.text(w::REGION_HINT);
    out.close();
    out.open_class("select", "wf");
    out.attr("id", "f-region");
    out.attr("name", "region");
    out.attr("aria-describedby", "f-region-h");
    option(out, "", w::REGION_OPEN, picked.is_empty());
    let mut known = picked.is_empty();
    for (group, rows) in REGIONS {
        out.open("optgroup");
        out.attr("label", group);
        for (code, name) in *rows {
            known |= *code == picked;
            option(out, code, name, *code == picked);
        }
        out.close();
    }
    if !known {
        option(out, picked, picked, true);
    }
    out.close();
    out.close();
}

fn job(view: &View<'_>, out: &mut dyn Out) {
    super::field::open_group(out, w::MORE_JOB);
    view.whole_part(out, Part::Goal);
    where_select(
        view,
        out,
        Field::Herbicide,
        "herbicide",
        w::HERBICIDE,
        "",
        w::HERBICIDES,
    );
    view.open_where(out, Field::Walk);
    out.open_class("div", "field");
    view.bare_field(
        out,
        &TextField {
            hint: w::WALK_HINT,
            ..TextField::number("walk", w::WALK)
        },
    );
    out.leaf_class("p", "asm", w::WALK_EMPTY);
    out.close();
    out.close();
    for (field, name, words) in [
        (Field::Practised, "practised", w::PRACTISED),
        (Field::CannotWait, "cannot_wait", w::CANNOT_WAIT),
    ] {
        view.open_where(out, field);
        view.tick(out, name, |out| out.text(words));
        out.close();
    }
    out.close();
}

/// The goal; with several stems one of them may be spared.
pub(super) fn goal(view: &View<'_>, out: &mut dyn Out) {
    let count = view.sheet.count("stems");
    let choice = if count > 1 || view.sheet.get("goal") == "spare_one" {
        w::GOALS
    } else {
        &w::GOALS[..3]
    };
    view.select(out, "goal", w::GOAL, "", choice);
    view.open_where(out, Field::Spare);
    out.open_class("div", "field");
    out.open("label");
    out.attr("for", &field_id("spare"));
    out.text(w::SPARE);
    out.close();
    out.open_class("select", "wf");
    out.attr("id", &field_id("spare"));
    out.attr("name", "spare");
    let picked = view.sheet.get("spare");
    option(out, "", w::KIND_OPEN, picked.is_empty());
    for at in 0..count {
        let value = crate::measure::number(at as u32);
        let words = [w::STEM, &crate::measure::number(at as u32 + 1)].concat();
        option(out, &value, &words, value == picked);
    }
    out.close();
    out.close();
    out.close();
}
