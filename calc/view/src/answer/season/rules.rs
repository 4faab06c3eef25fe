//! Law and biology: the months that meet the day, with who says so.

use super::{all_year, doy_md};
use crate::answer::frame::{Region, folded_table};
use crate::answer::sources::{is_bare, source};
use crate::measure;
use crate::page::Page;
use crate::words::m;
use crate::words::prose::prose;
use crate::words::{self, season as w};
use calc::models::season::Rules;
use calc::timing::closed_months::Topic;

/// Law and biology: what meets the day in view, everything folded.
pub(super) fn inside(out: &mut Page<'_>, cx: &Region<'_>) {
    for line in &cx.say.answer.diseases {
        if let Some(said) = w::disease(line, cx.say.question.region.as_deref()) {
            out.p_class("np", said);
        }
    }
    let rules = &cx.say.answer.rules;
    let mut none = true;
    for rule in rules {
        let same = |other: &&Rules| other.on_the_day && other.topic == rule.topic;
        // A topic is told once, where its first rule of the day stands.
        let first = rules.iter().find(same);
        if !first.is_some_and(|first| std::ptr::eq(first, rule)) {
            continue;
        }
        none = false;
        // The narrowest months speak for their topic, and a law of the whole year stands behind them.
        let mut months = rule;
        let mut whole = None;
        for other in rules.iter().filter(same) {
            if breadth(other) < breadth(months) {
                months = other;
            }
            if all_year(other) && whole.is_none() {
                whole = Some(other);
            }
        }
        out.open_class("p", "np");
        out.leaf(
            "b",
            cat!(&m::season_topic(rule.topic), ": ", months_said(months), "."),
        );
        out.text(" ");
        said_by(out, cx, months);
        if let Some(whole) = whole.filter(|_| !all_year(months)) {
            out.text(cat!(
                " ",
                words::phrase::sentence(&m::SEASON_ALL_YEAR),
                ": "
            ));
            said_by(out, cx, whole);
        }
        out.close();
    }
    if rules.is_empty() {
        return;
    }
    if none {
        out.p_class("np", m::SEASON_NO_RULE_ON_DAY);
    }
    folded_table(out, "", &m::SEASON_MORE_RULES, &w::HEAD_RULES);
    for rule in rules {
        out.cell(m::season_topic(rule.topic));
        out.cell(measure::month_day(rule.from_md));
        out.cell(measure::month_day(rule.to_md));
        out.cell(force(cx, rule));
    }
    out.close_table();
}

/// Who says so, and the source.
fn said_by(out: &mut Page<'_>, cx: &Region<'_>, rule: &Rules) {
    out.text(force(cx, rule));
    if rule.topic != Topic::Group && !is_bare(&rule.because) && !rule.is_default {
        out.text(" ");
        out.text(words::m::MEASURE_SOURCE);
        source(out, cx, rule.because.source);
        out.text(".");
    }
}

fn force(cx: &Region<'_>, rule: &Rules) -> String {
    match rule.topic {
        Topic::Group => w::rule_force(cx.say.group_name(), &m::STOP_OWN_RULE, false),
        _ => w::rule_force(
            &prose(rule.jurisdiction),
            &prose(rule.force),
            rule.is_default,
        ),
    }
}

fn months_said(rule: &Rules) -> String {
    if all_year(rule) {
        return m::SEASON_ALL_YEAR.into();
    }
    measure::month_days(rule.from_md, rule.to_md)
}

/// How broadly a rule speaks: months before the whole year, a place's own before what stands in for it, few days
/// before many.
fn breadth(rule: &Rules) -> u16 {
    let (from, to) = (doy_md(rule.from_md), doy_md(rule.to_md));
    let days = if from <= to {
        to - from
    } else {
        365 - from + to
    };
    days + 400 * u16::from(rule.is_default) + 800 * u16::from(all_year(rule))
}
