//! What was seen of this spring: the leaf-out, here or elsewhere, and its own temperatures.

use crate::form::item::Item;
use crate::form::{Field, View, day, town};
use crate::page::Page;
use crate::words::{Word, m};
use calc::timing::Basis;

/// The element of day and place of a leaf-out.
pub(crate) const SEEN_ID: &str = "m-leafed-out-seen";
/// The element of the place where the leaves were seen.
pub(crate) const ELSEWHERE_ID: &str = "m-leafed-out-place";
/// The field of a file of temperatures: it has no name, since the table is what counts.
pub const FILE_ID: &str = "f-spring-file";
/// The line that says how the table was read.
pub(crate) const READ_ID: &str = "spring-a";

/// Whether anything was said of a leaf-out.
pub(crate) fn any(sheet: &crate::form::Sheet) -> bool {
    let said = |name: &&str| !sheet.is(name, "");
    [
        "leafed_out.stage",
        "leafed_out.date.m",
        "leafed_out.date.d",
        "leafed_out.date.y",
    ]
    .iter()
    .any(said)
}

/// Whether the leaves were seen elsewhere.
pub(crate) fn elsewhere(sheet: &crate::form::Sheet) -> bool {
    sheet.is("leafed_out.where", "elsewhere")
}

/// Stage, day and place of a leaf-out.
pub(crate) const LEAF_OUT: Item = Item::Where(
    Field::LeafedOut,
    &[
        Item::Select("leafed_out.stage", m::FORM_LEAF, Word::NONE, m::FORM_STAGES),
        Item::While(
            SEEN_ID,
            any,
            &[
                Item::Set(
                    "leafed_out.date",
                    m::FORM_LEAF_ON,
                    &[Item::Own(|view, out| {
                        day::parts(view, out, "leafed_out.date");
                    })],
                ),
                Item::Select(
                    "leafed_out.where",
                    m::FORM_SEEN_WHERE,
                    Word::NONE,
                    m::FORM_SEEN_WHERES,
                ),
                Item::While(ELSEWHERE_ID, elsewhere, &[town::SEEN_PLACE]),
            ],
        ),
    ],
);

/// A table of daily temperatures: pasted, or read from a file into the same field.
pub(crate) const SPRING: Item = Item::Where(
    Field::Spring,
    &[Item::Fold(
        m::FORM_SPRING,
        |sheet| !sheet.is("spring", ""),
        &[
            Item::Note("hint", m::FORM_SPRING_STAYS),
            Item::Own(table),
            Item::File(
                FILE_ID,
                m::FORM_SPRING_FILE,
                ".csv,.tsv,.txt,text/csv,text/plain",
            ),
            Item::Set(
                "spring_scale",
                m::FORM_SPRING_SCALE,
                &[Item::Beside(&[Item::Radios(
                    "spring_scale",
                    m::FORM_SCALES,
                )])],
            ),
        ],
    )],
);

fn table(view: &View<'_>, out: &mut Page<'_>) {
    let (label, hint) = (m::FORM_SPRING_TABLE, m::FORM_SPRING_HINT);
    view.long_text(out, "spring", &label, &hint, "6", READ_ID);
    view.live_line(out, "asm", READ_ID);
    out.close();
}

/// How the table was read: days, doubts, lines that were not used.
pub(crate) fn read(view: &View<'_>) -> String {
    let answer = view.draft.answer.as_ref();
    answer.map_or_else(String::new, |answer| {
        crate::words::spring::spring_read(&answer.timing).join(" ")
    })
}

/// By how many days a leaf-out seen elsewhere was carried to the tree, or why it was not.
pub(crate) fn carried(view: &View<'_>) -> String {
    let answer = view.draft.answer.as_ref().filter(|_| elsewhere(view.sheet));
    let Some(timing) = answer.map(|answer| &answer.timing) else {
        return String::new();
    };
    let flag = timing.flags.iter().find(|flag| flag.of_leaf_out());
    match (flag, timing.basis) {
        (Some(flag), _) => m::season_flag(*flag).into(),
        (None, Some(basis @ Basis::ObservedElsewhere { .. })) => {
            m::form_seen_carried(crate::words::season::basis(basis))
        }
        _ => String::new(),
    }
}
