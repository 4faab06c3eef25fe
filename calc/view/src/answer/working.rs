//! Working: the inputs as read, what was assumed, how each number was made; and what to keep.

use super::frame::{Part, Region, button, field_link, open_details, sub};
use super::sources::{cites, source};
use super::{reach, ring};
use crate::page::Page;
use crate::words::m;
use crate::words::working::Input;
use calc::answer::Outcome;
use calc::terms::source::{GROUP, SourceId};

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
pub(super) fn part(cx: &Region<'_>) -> Part {
    Part {
        class: "p-work",
        id: "work",
        title: m::WORKING_WORKING.into(),
        key: cx.say.key_working(cx.stops()),
        body,
    }
}

fn body(out: &mut Page<'_>, cx: &Region<'_>) {
    let stops = cx.stops();
    sub(out, cx, &m::WORKING_TOLD);
    told_rows(out, cx, "kv", &cx.say.told(), &m::WORKING_CHANGE);
    out.p_class("soft", cx.say.left());
    let assumed = cx.say.assumed(stops);
    if !assumed.is_empty() {
        sub(out, cx, &m::WORKING_ASSUMED);
        told_rows(out, cx, "kv asm", &assumed, &m::MISSING_GIVE);
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
    if cx.tables_apart() && !stops {
        let can_tell = cx.say.answer.outcome != Outcome::CannotTell;
        if can_tell {
            ring::in_table(out, cx);
        }
        reach::in_table(out, cx, can_tell);
    }
    sources(out, cx);
    if cx.options.with_buttons {
        out.open_class("p", "noprint");
        button(out, "copy", &m::WORKING_COPY);
        out.close();
    }
}

/// Every source of the answer, folded.
fn sources(out: &mut Page<'_>, cx: &Region<'_>) {
    let mut list: Vec<SourceId> = Vec::new();
    for line in &cx.say.answer.sources {
        if line.id != GROUP && !line.id.text().ends_with("-MEM") {
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

/// On paper: what was told, what was used instead, and what was left empty, each in one line.
pub(super) fn on_paper(out: &mut Page<'_>, cx: &Region<'_>) {
    out.open_class("div", "sheetin");
    out.p(inputs(&cx.say.told()));
    let assumed = cx.say.assumed(cx.stops());
    if !assumed.is_empty() {
        out.p(m::working_left_empty(inputs(&assumed)));
    }
    out.close();
}

fn inputs(list: &[Input]) -> String {
    let mut text = String::new();
    for told in list {
        text = cat!(text, &told.label, ": ", &told.value, ". ");
    }
    text
}
