//! An answer that stops: why, what to say on the phone, what can still be done. No ring width and no steps.

use super::frame::{Part, Region, table};
use super::{cautions, confidence, reach, working};
use crate::measure;
use crate::page::Page;
use crate::words::{self, Word, m, stop as w};
use calc::models::reach::ReachOutcome;
use calc::terms::tree::Goal;

/// Heads of the numbers for a professional.
const HEAD_VALUE: [Word; 3] = [m::STOP_HEAD_WHAT, m::STOP_HEAD_VALUE, m::STOP_HEAD_STANDING];
/// Near a line, without touching it.
const TODAY_LINE: [Word; 4] = [
    m::STOP_LINE_STAY_OUT,
    m::STOP_LINE_LOOK,
    m::STOP_LINE_CALL,
    m::STOP_LINE_TAG,
];
/// Whatever the reason of the stop.
const TODAY_ANY: [Word; 2] = [m::STOP_MOVE, m::STOP_HANG_TAG];

/// What stands under the card of a stop.
pub(super) fn parts(out: &mut Page<'_>, cx: &Region<'_>) {
    let line = is_line(cx);
    let open = |class, id, title: Word, body| Part {
        class,
        id,
        title: title.into(),
        key: String::new(),
        body,
    };
    let can_do = if line {
        m::STOP_UNTIL_THEY_COME
    } else {
        m::STOP_CAN_STILL
    };
    let mut folds = vec![
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
    let why = [open("p-reach", "reach", m::STOP_WHY, why)];
    let mut beside = vec![
        open("p-phone", "phone", m::STOP_SAY, phone),
        open("p-now", "now", can_do, today),
    ];
    if cx.options.group.is_some() {
        beside.push(cautions::part(cx));
    } else {
        folds.insert(0, cautions::who_decides(cx));
    }
    super::columns(out, cx, &why, &beside, &folds);
}

fn is_line(cx: &Region<'_>) -> bool {
    cx.say.answer.reach.outcome == ReachOutcome::Line
}

fn why(out: &mut Page<'_>, cx: &Region<'_>) {
    let by_size = cx.say.group_answer().is_some_and(|own| own.stops);
    let why = if by_size {
        m::STOP_OWN_RULE
    } else {
        m::reach_why(cx.say.answer.reach.why)
    };
    // The card says what stands how near; the reason stands here where it is another one.
    let named = cx.say.decided().or(cx.say.nearest());
    if by_size || named.is_none_or(|target| target.distance_m.is_none()) {
        out.p(m::stop_sentence(words::phrase::sentence(&why)));
    }
    reach::drawn(out, cx, false);
}

/// What to say on the phone.
fn phone(out: &mut Page<'_>, cx: &Region<'_>) {
    out.open_class("ol", "steps");
    say(out, m::STOP_WHAT_IT_IS, cx.say.what_it_is());
    say(out, m::STOP_HOW_BIG, cx.say.how_big());
    say(out, m::STOP_COULD_HIT, cx.say.could_hit());
    out.close();
}

/// The numbers for the professional, as a table.
fn numbers(out: &mut Page<'_>, cx: &Region<'_>) {
    table(out, &m::STOP_FOR_PROFESSIONAL, &HEAD_VALUE);
    rows(out, cx);
    out.close_table();
    reach::in_table(out, cx, false);
    if !is_line(cx) {
        out.p(m::STOP_PICTURES);
    }
}

fn say(out: &mut Page<'_>, name: Word, value: String) {
    out.open("li");
    out.leaf("b", name);
    out.text(" ");
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
            &m::STOP_ROW_BARK,
            measure::bark(bark.mm).text(units),
            &super::ring::bark_standing(cx, bark),
        );
    }
    if let Some(crown) = &answer.crown_m {
        let end = |end: Option<f64>| end.unwrap_or(crown.value);
        let standing = from(cx, end(crown.low), end(crown.high));
        push(&m::STOP_ROW_CROWN, cx.say.length(crown.value), &standing);
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
        push(&m::STOP_ROW_HEIGHT, cx.say.length(shown), &standing);
    }
    if let (Some(opens), Some(closes)) = (answer.timing.opens, answer.timing.closes) {
        push(
            &m::STOP_ROW_SLIPS,
            measure::days(opens, closes),
            &m::STOP_MODEL,
        );
    }
    let wish = match cx.say.question.tree.goal {
        Goal::Wildlife | Goal::SpareOne(_) => m::STOP_WISH_SNAG,
        Goal::Kill => m::STOP_WISH_DEAD,
    };
    push(&m::STOP_ROW_WISH, wish.into(), &m::STOP_YOUR_WORDS);
}

/// What lies between two lengths, in the reader's unit.
fn from(cx: &Region<'_>, low: f64, high: f64) -> String {
    let units = cx.say.units();
    w::estimated_from(
        measure::length(low).first(units),
        measure::length(high).first(units),
    )
}

/// What can be done without touching the tree. What would change the answer stands in a fold of its own.
fn today(out: &mut Page<'_>, cx: &Region<'_>) {
    let line = is_line(cx);
    let height = &cx.say.answer.height;
    out.open_class("ol", "steps");
    if !line && !height.measured {
        out.leaf("li", m::STOP_MEASURE);
    }
    let words: &[Word] = if line { &TODAY_LINE } else { &TODAY_ANY };
    for text in words {
        out.leaf("li", *text);
    }
    out.close();
}
