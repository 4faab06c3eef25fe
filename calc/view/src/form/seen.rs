//! What was seen of this spring: the leaf-out, here or elsewhere, and its own temperatures.

use super::field::open_shown;
use super::{Field, View, day, words as w};
use crate::control::{labelled, open_set};
use crate::field_id;
use crate::out::{Out, OutExt};
use calc::timing::Basis;

/// The element of day and place of a leaf-out.
pub(super) const SEEN_ID: &str = "m-leafed-out-seen";
/// The element of the place where the leaves were seen.
pub(super) const ELSEWHERE_ID: &str = "m-leafed-out-place";
/// The field of a file of temperatures: it has no name, since the table is what counts.
pub const FILE_ID: &str = "f-spring-file";
/// The line that says how the table was read.
pub(super) const READ_ID: &str = "spring-a";

/// The line that says whether the date could be carried to the tree.
pub(super) const CARRIED_ID: &str = "seen-a";

/// Whether anything was said of a leaf-out.
pub(super) fn any(sheet: &super::Sheet) -> bool {
    let said = |name: &&str| !sheet.get(name).is_empty();
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
pub(super) fn elsewhere(sheet: &super::Sheet) -> bool {
    sheet.get("leafed_out.where") == "elsewhere"
}

/// Stage, day and place of a leaf-out.
pub(super) fn leaf_out(view: &View<'_>, out: &mut dyn Out) {
    view.open_where(out, Field::LeafedOut);
    view.select(out, "leafed_out.stage", w::LEAF, "", w::STAGES);
    open_shown(out, SEEN_ID, any(view.sheet));
    open_set(out, "leafed_out.date", w::LEAF_ON);
    day::parts(view, out, "leafed_out.date");
    out.close();
    view.select(out, "leafed_out.where", w::SEEN_WHERE, "", w::SEEN_WHERES);
    open_shown(out, ELSEWHERE_ID, elsewhere(view.sheet));
    open_set(out, "leafed_out.place", w::SEEN_POINT);
    out.leaf_class("p", "hint", w::SEEN_HINT);
    super::town::search(view, out, &super::town::SEARCHES[1]);
    super::town::point(view, out, "leafed_out.place");
    out.open_class("div", "field");
    view.status_line(out, CARRIED_ID);
    out.close();
    view.select(out, "leafed_out.rates", w::RATES, "", w::RATE_WORDS);
    out.close();
    out.close();
    out.close();
    out.close();
}

/// A table of daily temperatures: pasted, or read from a file into the same field.
pub(super) fn spring(view: &View<'_>, out: &mut dyn Out) {
    view.open_where(out, Field::Spring);
    out.open("details");
    if !view.sheet.get("spring").is_empty() {
        out.attr("open", "");
    }
    out.leaf("summary", w::SPRING);
    out.leaf_class("p", "hint", w::SPRING_STAYS);
    out.open_class("div", "field");
    labelled(out, "f-spring", w::SPRING_TABLE, w::SPRING_HINT);
    out.open("textarea");
    out.attr("id", "f-spring");
    out.attr("name", "spring");
    out.attr("rows", "6");
    out.attr("spellcheck", "false");
    out.attr("aria-describedby", "f-spring-h spring-a");
    out.text(view.sheet.get("spring"));
    out.close();
    view.live_line(out, "p", "asm", READ_ID);
    out.close();
    out.open_class("div", "field");
    labelled(out, FILE_ID, w::SPRING_FILE, "");
    out.open_class("input", "wf");
    out.attr("type", "file");
    out.attr("id", FILE_ID);
    out.attr("accept", ".csv,.tsv,.txt,text/csv,text/plain");
    out.close();
    out.close();
    out.open_class("fieldset", "field");
    out.attr("id", &field_id("spring_scale"));
    out.leaf("legend", w::SPRING_SCALE);
    out.open_class("div", "row2");
    view.radios(out, "spring_scale", w::SCALES);
    out.close();
    out.close();
    out.close();
    out.close();
}

/// How the table was read: days, doubts, lines that were not used.
pub(super) fn read(view: &View<'_>) -> String {
    let answer = view.draft.answer.as_ref();
    answer.map_or_else(String::new, |answer| {
        crate::words::spring_read(&answer.timing).join(" ")
    })
}

/// By how many days a leaf-out seen elsewhere was carried to the tree, or why it was not.
pub(super) fn carried(view: &View<'_>) -> String {
    let answer = view.draft.answer.as_ref().filter(|_| elsewhere(view.sheet));
    let Some(timing) = answer.map(|answer| &answer.timing) else {
        return String::new();
    };
    let flag = timing.flags.iter().find(|flag| flag.of_leaf_out());
    match (flag, timing.basis) {
        (Some(flag), _) => crate::words::flag(*flag).to_owned(),
        (None, Some(basis @ Basis::ObservedElsewhere { .. })) => {
            [w::SEEN_CARRIED, &crate::words::basis(basis), "."].concat()
        }
        _ => String::new(),
    }
}
