//! What may be told besides: each with what is used if it is not.

use super::field::TextField;
use super::{Field, Part, View, words as w};
use crate::control::option;
use crate::field_id;
use crate::out::{Out, OutExt};

/// More about the tree.
pub(super) fn tree(view: &View<'_>, out: &mut dyn Out) {
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

pub(super) fn where_select(
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

/// About the work.
pub(super) fn job(view: &View<'_>, out: &mut dyn Out) {
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
        view.tick(out, name, &|out| out.text(words));
        out.close();
    }
    super::aids::timed(view, out);
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

/// The group of the folded part: state or country, then the place.
pub(super) fn place(view: &View<'_>, out: &mut dyn Out) {
    super::field::open_group(out, w::MORE_PLACE);
    super::town::region_field(view, out);
    super::town::place(view, out);
    super::seen::leaf_out(view, out);
    super::seen::spring(view, out);
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
