//! What may be told besides, a row each: folded under a line that says what is used if it is not told.

use super::day::leaf_out;
use super::field::{NUMBER, TextField};
use super::item::Item;
use super::place::region;
use super::{Field, Part, View, aids, town, tree};
use crate::control::{open_select, option};
use crate::kind::Kind;
use crate::measure::number;
use crate::page::Page;
use crate::words::{Word, m};

/// The rows, in the order of the page.
pub(super) const ROWS: &[Item] = &[
    Item::Where(
        Field::Bark,
        &[Item::Row(
            "bark-a",
            m::FORM_BARK,
            &[Item::Field(&[Item::Text(TextField {
                name: "stems[0].bark",
                label: m::FORM_BARK,
                tail: m::FORM_IF_MEASURED,
                unit_here: true,
                ..NUMBER
            })])],
        )],
    ),
    Item::Row(
        "height-a",
        m::FORM_HEIGHT,
        &[
            Item::Field(&[
                Item::Text(TextField {
                    name: "height",
                    label: m::FORM_HEIGHT,
                    tail: m::FORM_IF_MEASURED,
                    unit_here: true,
                    ..NUMBER
                }),
                Item::Where(
                    Field::Confirmed,
                    &[Item::Tick("height_confirmed", m::FORM_HEIGHT_SURE)],
                ),
            ]),
            aids::HEIGHT,
        ],
    ),
    Item::Row(
        "grows-a",
        m::FORM_GROWS,
        &[
            Item::Where(
                Field::Setting,
                &[Item::Select(
                    "setting",
                    m::FORM_SETTING,
                    Word::NONE,
                    m::FORM_SETTINGS,
                )],
            ),
            Item::Where(
                Field::Vigour,
                &[Item::Select(
                    "vigour",
                    m::FORM_VIGOUR,
                    Word::NONE,
                    m::FORM_VIGOURS,
                )],
            ),
            Item::Where(
                Field::WholeClone,
                &[Item::Select(
                    "whole_clone",
                    m::FORM_CLONE,
                    m::FORM_CLONE_HINT,
                    m::FORM_YES_NO,
                )],
            ),
            Item::Where(
                Field::SameGenusNear,
                &[Item::Select(
                    "same_genus_near",
                    m::FORM_GENUS,
                    Word::NONE,
                    m::FORM_YES_NO,
                )],
            ),
        ],
    ),
    Item::Row(
        "signs-a",
        m::FORM_SEEN,
        &[
            Item::Set(
                "signs",
                m::FORM_SIGNS,
                &[Item::Ticks("signs", m::FORM_SIGN_WORDS)],
            ),
            Item::Select(
                "condition",
                m::FORM_CONDITION,
                Word::NONE,
                m::FORM_CONDITIONS,
            ),
            Item::Own(tree::live_share),
            Item::Where(
                Field::Limbs,
                &[Item::Select(
                    "limbs",
                    m::FORM_LIMBS,
                    Word::NONE,
                    m::FORM_LIMB_WORDS,
                )],
            ),
        ],
    ),
    Item::Row(
        "stems-a",
        m::FORM_STEMS,
        &[
            Item::Part(Part::StemsMore),
            Item::Button("add-stem", m::FORM_ADD_STEM),
        ],
    ),
    Item::Row(
        "things-a",
        m::FORM_THINGS,
        &[
            Item::Note("hint", m::FORM_HIT_HINT),
            Item::Part(Part::Targets),
            Item::Button("add-target", m::FORM_ADD_THING),
        ],
    ),
    Item::Row(
        "place-a",
        m::FORM_PLACE,
        &[Item::Own(region::field), town::PLACE],
    ),
    Item::Row(
        "spring-u",
        m::FORM_LEAVES,
        &[
            leaf_out::LEAF_OUT,
            leaf_out::SPRING,
            Item::Where(
                Field::DrySpell,
                &[Item::Select(
                    "dry_spell",
                    m::FORM_DRY,
                    Word::NONE,
                    m::FORM_DRIES,
                )],
            ),
        ],
    ),
    Item::Row(
        "job-a",
        m::FORM_JOB,
        &[
            Item::Where(
                Field::Herbicide,
                &[Item::Select(
                    "herbicide",
                    m::FORM_HERBICIDE,
                    Word::NONE,
                    m::FORM_HERBICIDES,
                )],
            ),
            Item::Part(Part::Goal),
            Item::Where(
                Field::CannotWait,
                &[Item::Tick("cannot_wait", m::FORM_CANNOT_WAIT)],
            ),
        ],
    ),
];

/// The crew, as a row of the folded part or in front.
pub(super) const CREW_ROW: &[Item] = &[Item::Row("crew-a", m::FORM_CREW, CREW)];
pub(super) const CREW: &[Item] = &[
    Item::Where(
        Field::Walk,
        &[Item::Field(&[Item::Text(TextField {
            name: "walk",
            label: m::FORM_WALK,
            hint: m::FORM_WALK_HINT,
            ..NUMBER
        })])],
    ),
    Item::Where(
        Field::Practised,
        &[Item::Tick("practised", m::FORM_PRACTISED)],
    ),
    aids::TIMED,
];

/// The goal; with several stems one of them may be spared.
pub(super) fn goal(view: &View<'_>, out: &mut Page<'_>) {
    let count = view.sheet.count("stems");
    let choice = if count > 1 || view.sheet.is("goal", "spare_one") {
        m::FORM_GOALS
    } else {
        // All but the last.
        &m::FORM_GOALS[..m::FORM_GOALS.len() - 1]
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

/// What a row says: that something was told, or what is used instead.
struct Used {
    /// The id of its line.
    id: &'static str,
    /// Whether a control of such a name is one of the row's.
    of: fn(&str) -> bool,
    /// What is used while none of them says anything.
    words: Word,
}

const USED: [Used; 8] = [
    Used {
        id: "grows-a",
        of: |name| {
            matches!(
                name,
                "setting" | "vigour" | "whole_clone" | "same_genus_near"
            )
        },
        words: m::FORM_USED_GROWS,
    },
    Used {
        id: "signs-a",
        of: |name| {
            matches!(
                name,
                "signs" | "condition" | "limbs" | "stems[0].live_share"
            )
        },
        words: m::FORM_USED_SIGNS,
    },
    Used {
        id: "stems-a",
        of: |name| name.starts_with("stems[") && !name.starts_with("stems[0]"),
        words: m::FORM_USED_STEMS,
    },
    Used {
        id: "things-a",
        of: |name| {
            name.starts_with("targets[")
                && !matches!(name, "targets[0].kind" | "targets[0].distance")
        },
        words: m::FORM_USED_THINGS,
    },
    Used {
        id: "place-a",
        of: |name| name == "region" || name.starts_with("place."),
        words: m::FORM_USED_PLACE,
    },
    Used {
        id: "spring-u",
        of: |name| {
            matches!(name, "leafed_out.stage" | "spring" | "dry_spell")
                || name.starts_with("leafed_out.date")
        },
        words: m::FORM_USED_LEAVES,
    },
    Used {
        id: "crew-a",
        of: |name| matches!(name, "walk" | "practised" | "timed.trees"),
        words: m::FORM_USED_CREW,
    },
    Used {
        id: "job-a",
        of: |name| matches!(name, "herbicide" | "goal" | "cannot_wait"),
        words: m::FORM_USED_JOB,
    },
];

/// The id of the line under the title of the folded part.
pub(super) const ROWS_ID: &str = "more-a";

/// What the folded part uses, with the number of its rows where it has nothing but rows.
pub(super) fn rows_line(view: &View<'_>) -> String {
    if view.options.kind != Kind::TreePlan {
        return m::FORM_MORE_USED.into();
    }
    let bark = usize::from(!view.shows(Field::Bark));
    m::form_more_rows(ROWS.len() + CREW_ROW.len() - bark)
}

/// The lines of the rows that tell no number.
pub(super) fn lines(view: &View<'_>) -> Vec<(String, String)> {
    let mut lines = vec![(ROWS_ID.to_owned(), rows_line(view))];
    for used in &USED {
        // A unit says nothing by itself.
        let of =
            |name: &str| (used.of)(name) && !name.ends_with(".unit") && !name.ends_with(".how");
        let words = if view.sheet.any(of) {
            m::FORM_TOLD
        } else {
            used.words
        };
        lines.push((used.id.to_owned(), words.into()));
    }
    lines
}
