//! Then check: the visits, and what to do at one.

use super::build::{Cx, Rows, folded_table, open_details, open_part};
use crate::draw::year::{Pin, VisitYear, VisitsLabels, visits};
use crate::measure;
use crate::out::Page;
use crate::words as w;
use calc::model::at_visit::advise;
use calc::model::method::Method;
use calc::model::visits::Visit;
use chrono::{Datelike, NaiveDate};

/// Pins of the visits: the year, and the day with the number of the list.
pub fn pins(cx: &Cx<'_>) -> Vec<(i32, Pin)> {
    cx.say
        .answer
        .visits
        .iter()
        .zip(1..)
        .map(|(visit, number)| {
            let half = (visit.to - visit.from).num_days().unsigned_abs() / 2;
            let middle = visit
                .from
                .checked_add_days(chrono::Days::new(half))
                .unwrap_or(visit.from);
            (
                middle.year(),
                Pin {
                    day: super::when::doy(middle),
                    number,
                },
            )
        })
        .collect()
}

/// Visits and the outlook. Nothing where there is nothing to come back to.
pub fn part(out: &mut Page<'_>, cx: &Cx<'_>) {
    let answer = cx.say.answer;
    if answer.visits.is_empty() {
        return;
    }
    let last = answer
        .visits
        .last()
        .map_or(1, |visit| usize::from(visit.season));
    let question = w::visits_count(answer.visits.len(), last);
    open_part(out, cx, "p-left p-check", "check", w::THEN_CHECK, &question);
    draw_visits(out, cx);
    list(out, cx);
    // What only would be done under a condition is in nobody's calendar yet.
    if cx.options.with_buttons && !cx.nested {
        out.open_class("button", "btn ghost");
        out.attr("type", "button");
        out.attr("data-act", "calendar");
        out.text(w::CALENDAR);
        out.close();
    }
    let rings = answer.headline_method == Method::BarkRing;
    if rings {
        at_a_visit(out, cx);
    }
    if rings {
        let larch = cx.say.question.species.scientific.starts_with("Larix");
        out.p(w::judge_death(larch));
    }
    if let Some(outlook) = answer.outlook.as_ref().filter(|_| rings) {
        super::outlook::inside(out, cx, outlook);
    }
    out.close();
}

/// What may be seen, and what the model advises at the first visit and in season 3.
fn at_a_visit(out: &mut Page<'_>, cx: &Cx<'_>) {
    let plan = &cx.say.answer.visits;
    let (Some(ringed), Some(first), Some(third)) = (
        cx.say.answer.advised_day,
        plan.first(),
        plan.iter().rfind(|visit| visit.season == 3),
    ) else {
        return;
    };
    let mut rows = Rows::default();
    for seen in w::SEEN {
        let at = |day| advise(ringed, day, plan, &[seen]).ok();
        let (Some(early), Some(late)) = (at(first.to), at(third.to)) else {
            continue;
        };
        let mut acts: Vec<&str> = Vec::new();
        for act in early.acts.iter().chain(&late.acts) {
            let word = w::act_now(*act);
            if !acts.contains(&word) {
                acts.push(word);
            }
        }
        rows.cell(w::seen(seen))
            .put(w::sentence(&acts.join("; ")))
            .cell(w::ring_judged(early.judged))
            .cell(w::ring_judged(late.judged));
    }
    open_details(out, "", w::AT_A_VISIT);
    folded_table(out, w::AT_A_VISIT, &w::HEAD_VISIT, &rows);
    out.close();
}

fn draw_visits(out: &mut Page<'_>, cx: &Cx<'_>) {
    let answer = cx.say.answer;
    let all = pins(cx);
    let ring_day: Option<NaiveDate> = answer.advised_day;
    let Some(first) = ring_day
        .map(|day| day.year())
        .or(all.first().map(|(year, _)| *year))
    else {
        return;
    };
    let last = all.iter().map(|(year, _)| *year).max().unwrap_or(first);
    let rows: Vec<(i32, String, Vec<Pin>)> = (first..=last)
        .map(|year| {
            let pins = all
                .iter()
                .filter(|(at, _)| *at == year)
                .map(|(_, pin)| *pin)
                .collect();
            (year, measure::number(year.unsigned_abs()), pins)
        })
        .collect();
    let years: Vec<VisitYear<'_>> = rows
        .iter()
        .map(|(year, label, pins)| VisitYear {
            label,
            ring: ring_day
                .filter(|day| day.year() == *year)
                .map(super::when::doy),
            visits: pins,
        })
        .collect();
    let aria = w::visits_count(answer.visits.len(), years.len());
    out.open("figure");
    visits(
        out.sink(),
        &years,
        &VisitsLabels {
            aria: &aria,
            ring: if answer.headline_method == Method::BarkRing {
                w::RING_SHORT
            } else {
                w::WORK_SHORT
            },
        },
    );
    out.close();
}

/// Visits of one kind and season are one row.
fn list(out: &mut Page<'_>, cx: &Cx<'_>) {
    let answer = cx.say.answer;
    out.open_class("ul", "checks");
    let mut at = 0;
    while at < answer.visits.len() {
        let first: &Visit = &answer.visits[at];
        let same = answer.visits[at..]
            .iter()
            .take_while(|visit| visit.kind == first.kind && visit.season == first.season)
            .count();
        let numbers: Vec<String> = (at..at + same)
            .map(|number| measure::number(number as u32 + 1))
            .collect();
        let spans: Vec<(NaiveDate, NaiveDate)> = answer.visits[at..at + same]
            .iter()
            .map(|visit| (visit.from, visit.to))
            .collect();
        out.open("li");
        out.open_class("span", "tick");
        out.attr("aria-hidden", "true");
        out.close();
        out.open("span");
        out.leaf(
            "b",
            &cat!(numbers.join(", "), ". ", measure::several(&spans), ". "),
        );
        out.text(w::visit(first.kind, answer.headline_method));
        out.close_two();
        at += same;
    }
    out.close();
}
