//! What may be told besides: each with what is used if it is not.

use super::day::leaf_out;
use super::field::{NUMBER, TextField};
use super::item::Item;
use super::{Field, Part, View, aids, town, words as w};
use crate::control::{open_select, option};
use crate::measure::number;
use crate::page::Page;
use crate::words::{Word, m};

/// More about the tree.
pub(super) const TREE: Item = Item::Group(
    m::FORM_MORE_TREE,
    &[
        Item::Field(&[
            Item::Text(TextField {
                name: "height",
                label: m::FORM_HEIGHT,
                tail: m::FORM_IF_MEASURED,
                unit_here: true,
                ..NUMBER
            }),
            Item::Line("asm", "height-a"),
            Item::Where(
                Field::Confirmed,
                &[Item::Tick("height_confirmed", m::FORM_HEIGHT_SURE)],
            ),
        ]),
        aids::HEIGHT,
        Item::Where(
            Field::Bark,
            &[Item::Field(&[
                Item::Text(TextField {
                    name: "stems[0].bark",
                    label: m::FORM_BARK,
                    tail: m::FORM_IF_MEASURED,
                    unit_here: true,
                    ..NUMBER
                }),
                Item::Line("asm", "bark-a"),
            ])],
        ),
        Item::Set(
            "signs",
            m::FORM_SIGNS,
            &[Item::Ticks("signs", w::SIGN_WORDS)],
        ),
        Item::Select("condition", m::FORM_CONDITION, Word::NONE, w::CONDITIONS),
        Item::Where(
            Field::Setting,
            &[Item::Select(
                "setting",
                m::FORM_SETTING,
                Word::NONE,
                w::SETTINGS,
            )],
        ),
        Item::Where(
            Field::Vigour,
            &[Item::Select(
                "vigour",
                m::FORM_VIGOUR,
                Word::NONE,
                w::VIGOURS,
            )],
        ),
        Item::Where(
            Field::Limbs,
            &[Item::Select(
                "limbs",
                m::FORM_LIMBS,
                Word::NONE,
                w::LIMB_WORDS,
            )],
        ),
        Item::Where(
            Field::WholeClone,
            &[Item::Select(
                "whole_clone",
                m::FORM_CLONE,
                m::FORM_CLONE_HINT,
                w::YES_NO,
            )],
        ),
        Item::Where(
            Field::SameGenusNear,
            &[Item::Select(
                "same_genus_near",
                m::FORM_GENUS,
                Word::NONE,
                w::YES_NO,
            )],
        ),
        Item::Part(Part::StemsMore),
    ],
);

/// State or country, then the place.
pub(super) const PLACE: Item = Item::Group(
    m::FORM_MORE_PLACE,
    &[
        town::PLACE,
        leaf_out::LEAF_OUT,
        leaf_out::SPRING,
        Item::Where(
            Field::DrySpell,
            &[Item::Select("dry_spell", m::FORM_DRY, Word::NONE, w::DRIES)],
        ),
    ],
);

/// About the work.
pub(super) const JOB: Item = Item::Group(
    m::FORM_MORE_JOB,
    &[
        Item::Part(Part::Goal),
        Item::Where(
            Field::Herbicide,
            &[Item::Select(
                "herbicide",
                m::FORM_HERBICIDE,
                Word::NONE,
                w::HERBICIDES,
            )],
        ),
        Item::Where(
            Field::Walk,
            &[Item::Field(&[
                Item::Text(TextField {
                    name: "walk",
                    label: m::FORM_WALK,
                    hint: m::FORM_WALK_HINT,
                    ..NUMBER
                }),
                Item::Note("asm", m::FORM_WALK_EMPTY),
            ])],
        ),
        Item::Where(
            Field::Practised,
            &[Item::Tick("practised", m::FORM_PRACTISED)],
        ),
        Item::Where(
            Field::CannotWait,
            &[Item::Tick("cannot_wait", m::FORM_CANNOT_WAIT)],
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
        &w::GOALS[..w::GOALS.len() - 1]
    };
    view.select(out, "goal", &m::FORM_GOAL, "", choice);
    super::field::open_shown(out, Field::Spare.id(), view.shows(Field::Spare));
    open_select(out, "spare", &m::FORM_SPARE, "");
    let picked = view.sheet.get("spare");
    option(out, "", &m::FORM_KIND_OPEN, picked.is_empty());
    for at in 0..count {
        let value = number(at as u32);
        let words = m::form_stem_number(at + 1);
        option(out, &value, &words, value == picked);
    }
    out.close_all(3);
}
