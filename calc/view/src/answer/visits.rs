//! Then check: the visits, and what to do at one.

use super::frame::{Part, Region, folded_table, open_details};
use crate::answer::season::drawing::{VisitYear, VisitsLabels, visits};
use crate::answer::season::{doy, middle, pins};
use crate::control::{open_select, open_set, option, tick_text};
use crate::measure;
use crate::page::Page;
use crate::words::m;
use crate::words::{Word, phrase, visits as w};
use calc::models::at_visit::{Seen, advise};
use calc::models::visits::Visit;
use calc::question::VisitAt;
use calc::terms::method::Method;
use chrono::{Datelike, NaiveDate};

/// Visits. None where there is nothing to come back to.
pub(super) fn part(cx: &Region<'_>) -> Option<Part> {
    Some(Part {
        class: "p-check",
        id: "check",
        title: m::VISITS_THEN_CHECK.into(),
        key: cx.say.key_check()?,
        body,
    })
}

fn body(out: &mut Page<'_>, cx: &Region<'_>) {
    let answer = cx.say.answer;
    draw_visits(out, cx);
    list(out, cx);
    let rings = answer.headline_method == Method::BarkRing;
    if rings {
        at_this_visit(out, cx);
        at_a_visit(out, cx);
    }
    if rings {
        let larch = cx.say.question.tree.species.scientific.starts_with("Larix");
        out.p(w::judge_death(larch));
    }
}

/// The element of the advice at a visit.
pub const ADVICE_ID: &str = "visit-a";

/// The choice of what is seen, where a form reads it, and the advice to it.
fn at_this_visit(out: &mut Page<'_>, cx: &Region<'_>) {
    if cx.nested {
        return;
    }
    let choose = cx.options.with_form && cx.options.with_buttons;
    if choose {
        open_details(out, "np", &m::VISITS_VISIT_NOW);
        choice(out, cx);
    }
    if let Some(visit) = &cx.say.answer.visit {
        out.open("p");
        out.attr("id", &cx.id(ADVICE_ID));
        out.leaf("b", m::VISITS_VISIT_ADVICE);
        out.text(" ");
        out.text(w::visit_advice(visit));
        out.close();
    }
    if choose {
        out.close();
    }
}

fn choice(out: &mut Page<'_>, cx: &Region<'_>) {
    let asked = cx.say.question.visit.as_ref();
    let at = asked.map(|asked| asked.at);
    open_select(out, "visit.at", &m::VISITS_VISIT_WHEN, "");
    option(
        out,
        "",
        &m::VISITS_VISIT_TODAY,
        matches!(at, Some(VisitAt::Today(_))),
    );
    for (visit, number) in cx.say.answer.visits.iter().zip(1..) {
        let value = measure::number(number);
        let words = cat!(&value, ". ", measure::days(visit.from, visit.to));
        option(
            out,
            &value,
            &words,
            at == Some(VisitAt::Number(number as usize)),
        );
    }
    if let Some(VisitAt::On(day)) = at {
        option(
            out,
            &calc::terms::day::iso(day),
            &measure::day_year(day),
            true,
        );
    }
    out.close();
    out.close();
    if let Some(ringed) = asked.and_then(|asked| asked.ringed) {
        out.open("input");
        out.attr("type", "hidden");
        out.attr("name", "visit.ringed");
        out.attr("value", &calc::terms::day::iso(ringed));
        out.close();
    }
    let has = |seen: Seen| asked.is_some_and(|asked| asked.seen.contains(&seen));
    let choose = |out: &mut Page<'_>, kind: &str, name: &str, list: &[Seen]| {
        let mut none = true;
        for seen in list {
            let on = has(*seen);
            none &= !on;
            tick_text(out, kind, name, seen.word(), on, &m::visits_seen(*seen));
        }
        none
    };
    let name = "visit.crown";
    open_set(out, name, &m::VISITS_VISIT_CROWN);
    let crowns = [Seen::CrownFull, Seen::CrownThin, Seen::CrownBare];
    let none = choose(out, "radio", name, &crowns) && asked.is_some();
    tick_text(out, "radio", name, "", none, &m::VISITS_VISIT_NO_CROWN);
    out.close();
    let name = "visit.seen";
    open_set(out, name, &m::VISITS_VISIT_SEEN);
    let others = [Seen::Bridge, Seen::Sprouts, Seen::Suckers, Seen::Decay];
    choose(out, "checkbox", name, &others);
    out.close();
}

/// What may be seen, and what the model advises at the first visit and in season 3.
fn at_a_visit(out: &mut Page<'_>, cx: &Region<'_>) {
    let plan = &cx.say.answer.visits;
    let (Some(ringed), Some(first), Some(third)) = (
        cx.say.answer.advised_day,
        plan.first(),
        plan.iter().rfind(|visit| visit.season == 3),
    ) else {
        return;
    };
    let constants = &cx.say.reference.constants.visits;
    let hemisphere = cx.say.question.place.hemisphere();
    folded_table(out, "", &m::VISITS_AT_A_VISIT, &w::HEAD_VISIT);
    for seen in &w::SEEN {
        let mut acts: Vec<Word> = Vec::new();
        let mut judged = |visit: &Visit| {
            let advice = advise(constants, ringed, visit.to, plan, &[*seen], hemisphere).ok()?;
            for act in &advice.acts {
                let word = m::visits_act_now(*act);
                if !acts.contains(&word) {
                    acts.push(word);
                }
            }
            Some(advice.judged)
        };
        let (Some(early), Some(late)) = (judged(first), judged(third)) else {
            continue;
        };
        out.cell(m::visits_seen(*seen));
        out.cell(phrase::sentence(&phrase::joined_by(&acts, "; ")));
        out.cell(m::visits_ring_judged(early));
        out.cell(m::visits_ring_judged(late));
    }
    out.close_table();
}

/// The years with their visits, and the list of them.
pub(super) fn drawn(out: &mut Page<'_>, cx: &Region<'_>) {
    draw_visits(out, cx);
    list(out, cx);
}

fn draw_visits(out: &mut Page<'_>, cx: &Region<'_>) {
    let answer = cx.say.answer;
    let ring_day = answer.advised_day;
    let Some(first) = ring_day.or(answer.visits.first().map(middle)) else {
        return;
    };
    let first = first.year();
    let mut last = first;
    for visit in &answer.visits {
        last = last.max(middle(visit).year());
    }
    let mut years: Vec<VisitYear> = Vec::new();
    for year in first..=last {
        years.push(VisitYear {
            label: measure::number(year.unsigned_abs()),
            ring: ring_day.filter(|day| day.year() == year).map(doy),
            visits: pins(cx, year),
        });
    }
    let aria = w::visits_count(answer.visits.len(), years.len());
    out.open("figure");
    visits(
        out.sink(),
        &years,
        &VisitsLabels {
            aria: &aria,
            ring: if answer.headline_method == Method::BarkRing {
                &m::VISITS_RING_SHORT
            } else {
                &m::VISITS_WORK_SHORT
            },
        },
    );
    out.close();
}

/// Visits of one kind and season are one row.
fn list(out: &mut Page<'_>, cx: &Region<'_>) {
    let answer = cx.say.answer;
    out.open_class("ul", "checks");
    let mut at = 0;
    while let Some(first) = answer.visits.get(at) {
        let mut numbers: Vec<String> = Vec::new();
        let mut spans: Vec<(NaiveDate, NaiveDate)> = Vec::new();
        for visit in answer.visits.iter().skip(at) {
            if visit.kind != first.kind || visit.season != first.season {
                break;
            }
            at += 1;
            numbers.push(measure::number(at as u32));
            spans.push((visit.from, visit.to));
        }
        out.open("li");
        out.open_class("span", "tick");
        out.attr("aria-hidden", "true");
        out.close();
        out.open("span");
        out.leaf(
            "b",
            cat!(numbers.join(", "), ". ", measure::several(&spans), ". "),
        );
        out.text(w::visit(first.kind, answer.headline_method));
        out.close_two();
    }
    out.close();
}
