//! An answer that stops: what to stop, whom to call, why, what to say. No ring width and no steps.

use super::frame::{Region, folded_table, lead, open_part};
use super::verdict::{draw_tag, said};
use super::{cautions, group, reach};
use crate::measure;
use crate::page::Page;
use crate::words::m;
use crate::words::stop as w;
use calc::answer::Changed;
use calc::models::reach::Outcome;
use calc::terms::tree::Goal;

/// The region under a stop.
pub(super) fn answer(out: &mut Page<'_>, cx: &Region<'_>) {
    let line = cx.say.answer.reach.outcome == Outcome::Line;
    let stop = if line { w::STOP_LINE } else { w::STOP };
    block(out, cx, stop, &|out| {
        let (call, more) = if line {
            (w::CALL_LINE, w::LINE_MORE)
        } else {
            (w::CALL_ARBORIST, w::ARBORIST_MORE)
        };
        out.p_class("call", call);
        out.p_class("soft", more);
        group::to_call(out, cx);
    });
    super::columns(out, cx, true, &|out| {
        why(out, cx);
        phone(out, cx);
        today(out, cx, line);
        cautions::part(out, cx);
    });
}

/// The frame of a stop: tag, heading, sentence, whom to call.
pub(super) fn block(
    out: &mut Page<'_>,
    cx: &Region<'_>,
    title: &str,
    call: &dyn Fn(&mut Page<'_>),
) {
    out.open_class("section", "stopblock");
    let id = cx.id("stop");
    out.attr("aria-labelledby", &id);
    draw_tag(out, cx);
    out.open("div");
    out.heading(cx.level, "", &id, title);
    said(out, cx);
    call(out);
    out.close_two();
}

fn why(out: &mut Page<'_>, cx: &Region<'_>) {
    let reach = &cx.say.answer.reach;
    let by_size = cx.say.group_answer().is_some_and(|own| own.stops);
    open_part(
        out,
        cx,
        "p-left p-reach",
        "reach",
        w::WHY,
        if by_size {
            w::OWN_RULE
        } else {
            m::reach_why(reach.why).text()
        },
    );
    reach::figure(out, cx, false);
    out.close();
}

/// What to say on the phone, and the numbers for the professional, folded.
fn phone(out: &mut Page<'_>, cx: &Region<'_>) {
    open_part(out, cx, "p-full p-say", "say", w::SAY, w::SAY_ASKED);
    out.open_class("ol", "say3");
    say(out, w::WHAT_IT_IS, cx.say.what_it_is());
    say(out, w::HOW_BIG, cx.say.how_big());
    say(out, w::COULD_HIT, cx.say.could_hit());
    out.close();
    folded_table(out, "pr", w::FOR_PROFESSIONAL, &w::HEAD_VALUE);
    rows(out, cx);
    out.close_table();
    out.close();
}

fn say(out: &mut Page<'_>, name: &str, value: String) {
    out.open("li");
    out.open("span");
    out.leaf("b", cat!(name, ". "));
    out.text(value);
    out.close_two();
}

fn rows(out: &mut Page<'_>, cx: &Region<'_>) {
    let answer = cx.say.answer;
    let units = cx.say.units();
    let mut push = |name: &str, value: String, standing: &str| {
        out.cell(name);
        out.cell(value);
        out.cell(standing);
    };
    let largest = cx.say.question.tree.largest().dbh.mm();
    let stem = answer.stems.iter().find(|stem| stem.dbh_mm == largest);
    if let Some(bark) = stem.and_then(|stem| stem.bark.as_ref()) {
        push(
            w::ROW_BARK,
            measure::bark(bark.mm).text(units),
            &super::ring::bark_standing(cx, bark),
        );
    }
    if let Some(crown) = &answer.crown_m {
        let end = |end: Option<f64>| end.unwrap_or(crown.value);
        let standing = from(cx, end(crown.low), end(crown.high));
        push(w::ROW_CROWN, cx.say.length(crown.value), &standing);
    }
    if let Some(shown) = answer.height.shown_m {
        let standing = match (
            answer.height.measured,
            answer.height.low_m,
            answer.height.high_m,
        ) {
            (false, Some(low), Some(high)) => from(cx, low, high),
            _ => m::confidence_grade(calc::terms::cite::Grade::Measured).into(),
        };
        push(w::ROW_HEIGHT, cx.say.length(shown), &standing);
    }
    if let (Some(opens), Some(closes)) = (answer.timing.opens, answer.timing.closes) {
        push(w::ROW_SLIPS, measure::days(opens, closes), w::MODEL);
    }
    let wish = match cx.say.question.tree.goal {
        Goal::Wildlife | Goal::SpareOne(_) => w::WISH_SNAG,
        Goal::Kill => w::WISH_DEAD,
    };
    push(w::ROW_WISH, wish.into(), w::YOUR_WORDS);
}

/// What lies between two lengths, in the reader's unit.
fn from(cx: &Region<'_>, low: f64, high: f64) -> String {
    let units = cx.say.units();
    w::estimated_from(
        measure::length(low).first(units),
        measure::length(high).first(units),
    )
}

/// What can be done without touching the tree: what would change the answer first.
fn today(out: &mut Page<'_>, cx: &Region<'_>, line: bool) {
    open_part(out, cx, "p-hide p-now", "now", w::TODAY, w::TODAY_ASKED);
    let height = &cx.say.answer.height;
    if !line && !height.measured {
        lead(out, w::TODAY_MEASURE, m::REACH_HEIGHT_AID);
    }
    out.open("ul");
    if !line {
        for change in &cx.say.answer.changes {
            if matches!(
                change.changed,
                Changed::Distance { .. } | Changed::Height { .. }
            ) {
                out.leaf("li", cx.say.change(change));
            }
        }
    }
    let words: &[&str] = if line { &w::TODAY_LINE } else { &w::TODAY_ANY };
    for text in words {
        out.leaf("li", *text);
    }
    out.close_two();
}
