//! Working: the inputs as read, what was assumed, how each number was made; and what to keep.

use super::frame::{Region, button, field_link, open_details, open_part, sub};
use super::sources::{cites, source};
use crate::page::Page;
use crate::words::m;
use crate::words::{self, working::Input};

/// What was told or assumed, a row each; beside the form, each leads to its field.
fn told_rows(
    out: &mut Page<'_>,
    cx: &Region<'_>,
    class: &'static str,
    list: &[Input],
    to_field: &str,
) {
    out.open_class("dl", class);
    for told in list {
        let class = if cx.options.with_form { "c3" } else { "" };
        out.open_class("div", class);
        out.leaf("dt", told.label.as_str());
        out.leaf("dd", told.value.as_str());
        if cx.options.with_form {
            out.open_class("dd", "chg");
            field_link(out, cx, &told.field, to_field, &told.label);
            out.close();
        }
        out.close();
    }
    out.close();
}

/// The part.
pub(super) fn part(out: &mut Page<'_>, cx: &Region<'_>, stops: bool) {
    open_part(out, cx, "p-right p-work", "work", &m::WORKING_WORKING, "");
    sub(out, cx, &m::WORKING_TOLD);
    told_rows(out, cx, "kv", &cx.say.told(), &m::WORKING_CHANGE);
    out.p_class("soft", cx.say.left());
    let assumed = cx.say.assumed(stops);
    if !assumed.is_empty() {
        sub(out, cx, &m::WORKING_ASSUMED);
        told_rows(out, cx, "kv asm", &assumed, words::missing::GIVE);
    }
    out.heading(cx.level + 1, "", "", &m::WORKING_MADE);
    for made in &cx.say.made(stops) {
        out.open_class("p", "calc");
        out.text(made.how.as_str());
        out.leaf("b", made.result.as_str());
        out.text(made.rest.as_str());
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
fn sources(out: &mut Page<'_>, cx: &Region<'_>) {
    let mut list: Vec<&str> = Vec::new();
    for line in &cx.say.answer.sources {
        if cx.say.reference.source(line.id).is_some() && !line.id.ends_with("-MEM") {
            list.push(line.id);
        }
    }
    if list.is_empty() {
        return;
    }
    open_details(
        out,
        "",
        &cat!(
            &m::WORKING_ALL_SOURCES,
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
pub(super) fn sheet_inputs(out: &mut Page<'_>, cx: &Region<'_>) {
    let stops = cx.say.answer.outcome == calc::answer::Outcome::Professional;
    let text = inputs(String::new(), &cx.say.told());
    out.open_class("p", "sheetin");
    out.text(inputs(text, &cx.say.assumed(stops)));
    // What was left as for most trees would push a full sheet onto a second page.
    out.leaf_class("span", "np", cx.say.left());
    out.close();
}

fn inputs(mut text: String, list: &[Input]) -> String {
    for told in list {
        text = cat!(text, &told.label, ": ", &told.value, ". ");
    }
    text
}

/// Print and copy. Only where the host wires the buttons.
pub(super) fn keep(out: &mut Page<'_>, cx: &Region<'_>, stops: bool) {
    if !cx.options.with_buttons {
        return;
    }
    open_part(out, cx, "keepit", "save", &m::WORKING_KEEP, "");
    out.open_class("div", "keep");
    let print = if stops {
        m::WORKING_PRINT_CALL
    } else {
        m::WORKING_PRINT
    };
    button(out, "print", &print);
    button(out, "copy", &m::WORKING_COPY);
    if cx.options.with_link {
        button(out, "link", &m::WORKING_COPY_LINK);
    }
    out.close_two();
}
