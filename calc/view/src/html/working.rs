//! Working: the inputs as read, what was assumed, how each number was made; and what to keep.

use super::build::{Cx, Row, cites, kv, open_details, open_part, source, sub};
use crate::heading::heading;
use crate::out::Page;
use crate::words::{self as w, Told};

/// What was told or assumed, a row each; beside the form, each leads to its field.
fn told_rows(out: &mut Page<'_>, cx: &Cx<'_>, class: &'static str, list: &[Told], to_field: &str) {
    out.open_class("dl", class);
    for told in list {
        kv(
            out,
            cx,
            &Row {
                key: &told.label,
                mark: None,
                value: &told.value,
                rest: "",
                link: cx.options.with_form.then_some((&*told.field, to_field)),
            },
        );
    }
    out.close();
}

/// The part.
pub fn part(out: &mut Page<'_>, cx: &Cx<'_>, stops: bool) {
    open_part(out, cx, "p-right p-work", "work", w::WORKING, "");
    sub(out, cx, w::TOLD);
    told_rows(out, cx, "kv", &cx.say.told(), w::CHANGE);
    super::build::soft(out, &cx.say.left());
    let assumed = cx.say.assumed(stops);
    if !assumed.is_empty() {
        sub(out, cx, w::ASSUMED);
        told_rows(out, cx, "kv asm", &assumed, w::GIVE);
    }
    heading(out, cx.level + 1, "", "", w::MADE);
    for made in &cx.say.made(stops) {
        out.open_class("p", "calc");
        out.text(&made.how);
        out.leaf("b", &made.result);
        out.text(&made.rest);
        if !made.because.is_empty() {
            out.open("br");
            out.close();
            out.open_class("span", "soft");
            cites(out, cx, &made.because);
            out.close();
        }
        out.close();
    }
    sources(out, cx);
    out.close();
}

/// Every source of the answer, folded.
fn sources(out: &mut Page<'_>, cx: &Cx<'_>) {
    let list: Vec<&str> = cx
        .say
        .answer
        .sources
        .iter()
        .map(|line| line.id)
        .filter(|id| cx.say.reference.source(id).is_some() && !id.ends_with("-MEM"))
        .collect();
    if list.is_empty() {
        return;
    }
    open_details(
        out,
        "",
        &cat!(
            w::ALL_SOURCES,
            ": ",
            crate::measure::number(list.len() as u32)
        ),
    );
    out.open("ul");
    for id in list {
        out.open("li");
        source(out, cx, id);
        out.close();
    }
    out.close_two();
}

/// All inputs in one paragraph, for the printed page: given, assumed, left.
pub fn sheet_inputs(out: &mut Page<'_>, cx: &Cx<'_>) {
    let stops = cx.say.answer.outcome == calc::answer::Outcome::Professional;
    let mut text = String::new();
    for told in cx.say.told().iter().chain(&cx.say.assumed(stops)) {
        text = cat!(text, &told.label, ": ", &told.value, ". ");
    }
    out.open_class("p", "sheetin");
    out.text(&text);
    // What was left as for most trees would push a full sheet onto a second page.
    out.leaf_class("span", "np", &cx.say.left());
    out.close();
}

/// Print and copy. Only where the host wires the buttons.
pub fn keep(out: &mut Page<'_>, cx: &Cx<'_>, stops: bool) {
    if !cx.options.with_buttons {
        return;
    }
    open_part(out, cx, "keepit", "save", w::KEEP, "");
    out.open_class("div", "keep");
    let print = if stops { w::PRINT_CALL } else { w::PRINT };
    let buttons = [("print", print), ("copy", w::COPY), ("link", w::COPY_LINK)];
    let count = if cx.options.with_link { 3 } else { 2 };
    for (act, word) in &buttons[..count] {
        out.open_class("button", "btn ghost");
        out.attr("type", "button");
        out.attr("data-act", act);
        out.text(word);
        out.close();
    }
    out.close_two();
}
