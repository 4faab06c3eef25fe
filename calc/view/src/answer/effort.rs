//! How long a ring takes.

use super::frame::{Part, Region, lead, twin};
use super::sources::{drawn_grade, weakest};
use crate::draw::range::{RangeBar, RangeLabels, range};
use crate::measure;
use crate::page::Page;
use crate::words::m;
use crate::words::{self, effort as w};
use calc::models::effort::EffortAnswer;
use calc::models::effort_constants::Three;
use calc::terms::method::Method;

/// How long it takes. None where nobody measured it and no ring may be cut.
pub(super) fn part(cx: &Region<'_>) -> Option<Part> {
    let key = cx.say.key_long();
    if cx.say.answer.effort.is_none() && key.is_none() {
        return None;
    }
    Some(Part {
        class: "p-long",
        id: "long",
        title: m::EFFORT_HOW_LONG.into(),
        key: key.unwrap_or_default(),
        body,
    })
}

fn body(out: &mut Page<'_>, cx: &Region<'_>) {
    let answer = cx.say.answer;
    if answer.headline_method != Method::BarkRing {
        other(out, cx);
    }
    let Some(effort) = &answer.effort else {
        return;
    };
    if answer.headline_method != Method::BarkRing {
        out.p(m::EFFORT_IF_RINGED);
    }
    let (span, hours) = spoken(effort);
    let width = match answer
        .stems
        .iter()
        .filter(|stem| stem.ring.is_some())
        .count()
    {
        0 | 1 => super::ring::largest(cx)
            .and_then(|stem| stem.ring.as_ref())
            .map_or_else(String::new, |ring| {
                measure::ring(ring.better_mm).text(cx.say.units())
            }),
        _ => m::EFFORT_EACH_BETTER.into(),
    };
    let rest = w::minutes_for(&width, effort.walk_min, cx.say.question.pace.practised);
    let aria = w::minutes_lead(&span, hours);
    lead(out, aria.as_str(), rest.as_str());
    bar(out, effort, &aria);
    let (low, likely, high) = effort.visit_min;
    if !answer.visits.is_empty() {
        out.p_class("np", w::visit_minutes(low, likely, high));
        let long = |long: calc::models::effort::Long| (long.visits, said(long.minutes));
        out.p(w::long_minutes(
            long(effort.three_years),
            long(effort.whole),
        ));
    }
    if let Some(own) = effort.own {
        let (trees, minutes) = own.timed.unwrap_or_default();
        out.p(match own.timed {
            Some(_) => w::timed(trees, minutes, None, Some(own.factor)),
            None => w::own_rate(own.factor),
        });
    }
    if let Some((trees, why)) = effort.timed {
        let minutes = cx.say.question.timed.map_or(0.0, |timed| timed.minutes);
        out.p(w::timed(trees, minutes, Some(why), None));
    }
    if let Some(crew) = cx.say.settings().and_then(|group| group.crew) {
        out.p(w::crew_day(crew, effort.mean_min));
    }
    out.p_class("soft np", m::EFFORT_NO_TABLE);
    tasks(out, cx, effort);
}

/// The bar of minutes alone, with its table.
pub(super) fn drawn(out: &mut Page<'_>, cx: &Region<'_>) {
    if let Some(effort) = &cx.say.answer.effort {
        let (span, hours) = spoken(effort);
        bar(out, effort, &w::minutes_lead(&span, hours));
        tasks(out, cx, effort);
    }
}

/// Low, likely and high as they are said, and whether in hours.
fn spoken(effort: &EffortAnswer) -> ([String; 3], bool) {
    measure::span_of_minutes(effort.low_min, effort.likely_min, effort.high_min)
}

/// The bar of minutes; `aria` says the same.
fn bar(out: &mut Page<'_>, effort: &EffortAnswer, aria: &str) {
    let (span, hours) = spoken(effort);
    let scale = if hours { 60.0 } else { 1.0 };
    let unit = if hours {
        &m::MEASURE_HOURS_LABEL
    } else {
        &m::MEASURE_MINUTES_LABEL
    };
    let tick = w::minutes_tick(&span[1], hours);
    out.open("figure");
    range(
        out.sink(),
        &RangeBar {
            low: effort.low_min / scale,
            likely: Some(effort.likely_min / scale),
            high: effort.high_min / scale,
            grade: drawn_grade(weakest(&effort.because)),
        },
        &RangeLabels {
            aria,
            likely: &tick,
            unit,
        },
    );
    out.close();
}

/// The minutes by what they go to.
fn tasks(out: &mut Page<'_>, cx: &Region<'_>, effort: &EffortAnswer) {
    let tasks = effort.tasks;
    twin(out, cx, &m::EFFORT_TWIN_MINUTES, &w::HEAD_MINUTES);
    for (name, minutes) in w::TASKS.iter().zip(&[
        tasks.fixed,
        tasks.limbs,
        tasks.score,
        tasks.peel,
        tasks.scrape,
    ]) {
        if *minutes > 0.0 {
            out.cell(*name);
            out.cell(measure::plain(*minutes, 1));
        }
    }
    out.cell(m::EFFORT_TASK_WALK);
    out.cell(measure::plain(effort.walk_min, 1));
    out.cell(m::EFFORT_TASK_ALL);
    out.cell(cat!(
        measure::minutes(effort.likely_min),
        " (",
        words::phrase::to(
            measure::minutes(effort.low_min),
            measure::minutes(effort.high_min)
        ),
        ")"
    ));
    out.close_table();
}

/// Minutes of the method at the head, where that is no ring.
fn other(out: &mut Page<'_>, cx: &Region<'_>) {
    let answer = cx.say.answer;
    let mut all = answer.work.iter();
    if let Some(work) = all.find(|work| work.method == answer.headline_method) {
        out.p(words::method::work(work));
    }
}

/// A range of minutes, or of hours, in words.
fn said(minutes: Three) -> String {
    let (span, hours) = measure::span_of_minutes(minutes.low, minutes.likely, minutes.high);
    w::minutes_said(&span, hours)
}
