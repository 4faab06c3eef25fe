//! What may be told besides: each with what is used if it is not.

use super::day::leaf_out;
use super::field::{NUMBER, TextField};
use super::item::Item;
use super::place::region;
use super::{Field, Part, View, aids, town, words as w};
use crate::control::{open_select, option};
use crate::measure::number;
use crate::page::Page;

/// More about the tree.
pub(super) const TREE: Item = Item::Group(
    w::MORE_TREE,
    &[
        Item::Select("condition", w::CONDITION, "", w::CONDITIONS),
        Item::Where(
            Field::Setting,
            &[Item::Select("setting", w::SETTING, "", w::SETTINGS)],
        ),
        Item::Where(
            Field::Vigour,
            &[Item::Select("vigour", w::VIGOUR, "", w::VIGOURS)],
        ),
        Item::Where(
            Field::Limbs,
            &[Item::Select("limbs", w::LIMBS, "", w::LIMB_WORDS)],
        ),
        Item::Where(
            Field::WholeClone,
            &[Item::Select(
                "whole_clone",
                w::CLONE,
                w::CLONE_HINT,
                w::YES_NO,
            )],
        ),
        Item::Where(
            Field::SameGenusNear,
            &[Item::Select("same_genus_near", w::GENUS, "", w::YES_NO)],
        ),
        Item::Part(Part::StemsMore),
    ],
);

/// State or country, then the place.
pub(super) const PLACE: Item = Item::Group(
    w::MORE_PLACE,
    &[
        Item::Own(region::field),
        town::PLACE,
        leaf_out::LEAF_OUT,
        leaf_out::SPRING,
        Item::Where(
            Field::DrySpell,
            &[Item::Select("dry_spell", w::DRY, "", w::DRIES)],
        ),
    ],
);

/// About the work.
pub(super) const JOB: Item = Item::Group(
    w::MORE_JOB,
    &[
        Item::Part(Part::Goal),
        Item::Where(
            Field::Herbicide,
            &[Item::Select("herbicide", w::HERBICIDE, "", w::HERBICIDES)],
        ),
        Item::Where(
            Field::Walk,
            &[Item::Field(&[
                Item::Text(TextField {
                    name: "walk",
                    label: w::WALK,
                    hint: w::WALK_HINT,
                    ..NUMBER
                }),
                Item::Note("asm", w::WALK_EMPTY),
            ])],
        ),
        Item::Where(Field::Practised, &[Item::Tick("practised", w::PRACTISED)]),
        Item::Where(
            Field::CannotWait,
            &[Item::Tick("cannot_wait", w::CANNOT_WAIT)],
        ),
        aids::TIMED,
    ],
);

/// The goal; with several stems one of them may be spared.
pub(super) fn goal(view: &View<'_>, out: &mut Page<'_>) {
    let count = view.sheet.count("stems");
    let choice = if count > 1 || view.sheet.is("goal", "spare_one") {
        w::GOALS
    } else {
        // All but the last.
        w::GOALS.rsplit_once('|').map_or("", |(others, _)| others)
    };
    view.select(out, "goal", w::GOAL, "", choice);
    super::field::open_shown(out, Field::Spare.id(), view.shows(Field::Spare));
    open_select(out, "spare", w::SPARE, "");
    let picked = view.sheet.get("spare");
    option(out, "", w::KIND_OPEN, picked.is_empty());
    for at in 0..count {
        let value = number(at as u32);
        let words = cat!(w::STEM, number(at as u32 + 1));
        option(out, &value, &words, value == picked);
    }
    out.close_all(3);
}
