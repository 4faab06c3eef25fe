//! An answer that stops: why, what to say on the phone, what can still be done. No ring width and no steps.

use super::frame::{Part, Region, open_part, table};
use super::{cautions, confidence, reach, working};
use crate::measure;
use crate::page::Page;
use crate::words::{self, m, stop as w};
use calc::answer::Changed;
use calc::models::reach::Outcome;
use calc::terms::tree::Goal;

/// What stands under the card of a stop.
pub(super) fn parts(out: &mut Page<'_>, cx: &Region<'_>) {
    let line = cx.say.answer.reach.outcome == Outcome::Line;
    let folds = [
        Part {
            class: "p-pro",
            id: "pro",
            title: if line {
                m::LINES_FOR_LINE_OWNER.into()
            } else {
                m::LINES_FOR_PROFESSIONAL.into()
            },
            key: cx.say.key_professional(),
            body: numbers,
        },
        confidence::part(cx),
        working::part(cx),
    ];
    super::columns(
        out,
        cx,
        &|out| why(out, cx),
        &|out| {
            phone(out, cx);
            today(out, cx, line);
            cautions::part(out, cx);
        },
        &folds,
    );
}

fn why(out: &mut Page<'_>, cx: &Region<'_>) {
    open_part(out, cx, "p-reach", "reach", w::WHY);
    let by_size = cx.say.group_answer().is_some_and(|own| own.stops);
    let why = if by_size {
        w::OWN_RULE
    } else {
        m::reach_why(cx.say.answer.reach.why).text()
    };
    out.p(cat!(words::phrase::sentence(why), "."));
    reach::figure(out, cx, false);
    out.close();
}

/// What to say on the phone.
fn phone(out: &mut Page<'_>, cx: &Region<'_>) {
    open_part(out, cx, "p-phone", "phone", w::SAY);
    out.open_class("ol", "steps");
    say(out, w::WHAT_IT_IS, cx.say.what_it_is());
    say(out, w::HOW_BIG, cx.say.how_big());
    say(out, w::COULD_HIT, cx.say.could_hit());
    out.close_two();
}

/// The numbers for the professional, as a table.
fn numbers(out: &mut Page<'_>, cx: &Region<'_>) {
    table(out, w::FOR_PROFESSIONAL, &w::HEAD_VALUE);
    rows(out, cx);
    out.close_table();
}

fn say(out: &mut Page<'_>, name: &str, value: String) {
    out.open("li");
    out.leaf("b", cat!(name, ": "));
    out.text(value);
    out.close();
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
    open_part(
        out,
        cx,
        "p-now",
        "now",
        if line { w::UNTIL_THEY_COME } else { w::TODAY },
    );
    let height = &cx.say.answer.height;
    out.open_class("ol", "steps");
    if !line && !height.measured {
        out.leaf("li", cat!(w::TODAY_MEASURE, " ", &m::REACH_HEIGHT_AID));
    }
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
