//! Tag, first sentence, and what stands beside it.

use super::frame::Region;
use super::working;
use crate::draw::tag::{TagKind, TagLabels, tag};
use crate::measure;
use crate::page::Page;
use crate::words::verdict as w;
use crate::words::visits;
use calc::answer::Outcome;

/// The tag of an outcome.
pub(super) fn draw_tag(out: &mut Page<'_>, cx: &Region<'_>) {
    let answer = cx.say.answer;
    let kind = match answer.outcome {
        Outcome::Do => TagKind::Do,
        Outcome::Wait => TagKind::Wait,
        Outcome::OtherMethod => TagKind::OtherWay,
        Outcome::Professional => TagKind::Professional,
        Outcome::CannotTell => TagKind::CantTell,
    };
    let line = match (answer.outcome, answer.asked_day, answer.advised_day) {
        (Outcome::Wait, _, Some(day)) => measure::day_year(day),
        (_, Some(day), _) | (_, None, Some(day)) => measure::day(day),
        _ => String::new(),
    };
    let word = w::tag(answer.outcome);
    let aria = cat!(word, if line.is_empty() { "" } else { ", " }, &line);
    tag(
        out.sink(),
        kind,
        &TagLabels {
            aria: &aria,
            word,
            line: &line,
        },
    );
}

/// Tag, first sentence, and what stands beside it.
pub(super) fn block(out: &mut Page<'_>, cx: &Region<'_>) {
    out.open_class("div", "verdict");
    draw_tag(out, cx);
    out.open("div");
    said(out, cx);
    out.close_two();
}

/// The first sentence with its lines, and the inputs for the printed page.
pub(super) fn said(out: &mut Page<'_>, cx: &Region<'_>) {
    // A calculator of one question answers that first; the plan's verdict stands under it.
    let mut class = "say";
    if let Some(first) = cx.say.first(cx.options.kind) {
        out.p_class(class, first);
        class = "also";
    }
    out.p_class(class, cx.say.verdict());
    // Whether the species is native there stands second, once.
    if !cx.nested
        && let Some(native) = cx.say.native()
    {
        let warned = cx.say.answer.species.native_here;
        out.p_class(if warned { "also native" } else { "also" }, native);
    }
    lines(out, "also", &cx.say.also());
    if cx.nested {
        return;
    }
    if let Some(line) = cx.say.group_farther() {
        out.p_class("also grp", line);
    }
    lines(out, "also grp", &cx.say.group_notes());
    // A visit is asked about where no ring is advised today: it has no part of its own.
    let own = answer_has_visits(cx);
    if let Some(visit) = cx.say.answer.visit.as_ref().filter(|_| !own) {
        out.p_class("also", visits::visit_advice(visit));
    }
    working::sheet_inputs(out, cx);
}

fn lines(out: &mut Page<'_>, class: &str, list: &[String]) {
    for line in list {
        out.p_class(class, line.as_str());
    }
}

/// Whether the part of the visits gives the advice at one.
fn answer_has_visits(cx: &Region<'_>) -> bool {
    let answer = cx.say.answer;
    !answer.visits.is_empty() && answer.headline_method == calc::terms::method::Method::BarkRing
}
