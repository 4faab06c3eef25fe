//! Law and biology: the months that meet the day, with who says so.

use super::build::{Cx, Rows, folded_table, is_bare, open_details, source};
use super::day::{all_year, doy_md};
use crate::measure;
use crate::out::Page;
use crate::words as w;
use calc::answer::Rules;
use calc::timing::restrictions::Topic;

/// Law and biology: what meets the day in view, everything folded.
pub fn inside(out: &mut Page<'_>, cx: &Cx<'_>) {
    let answer = cx.say.answer;
    let on_day: Vec<&Rules> = answer.rules.iter().filter(|rule| rule.on_the_day).collect();
    let mut topics = Vec::new();
    for rule in &on_day {
        if topics.contains(&rule.topic) {
            continue;
        }
        topics.push(rule.topic);
        // The narrowest months speak for their topic, and a law of the whole year stands behind them.
        let of_topic = || on_day.iter().filter(|other| other.topic == rule.topic);
        let months =
            of_topic().min_by_key(|other| (all_year(other), other.is_default, length(other)));
        let whole = of_topic().find(|other| all_year(other));
        out.open_class("p", "np");
        if let Some(months) = months {
            out.leaf(
                "b",
                &cat!(w::topic(rule.topic), ": ", months_said(months), "."),
            );
            out.text(" ");
            said_by(out, cx, months);
        }
        if let (Some(whole), Some(months)) = (whole, months)
            && !all_year(months)
        {
            out.text(" ");
            out.text(&cat!(w::sentence(w::ALL_YEAR), ": "));
            said_by(out, cx, whole);
        }
        out.close();
    }
    if on_day.is_empty() && !answer.rules.is_empty() {
        out.p_class("np", w::NO_RULE_ON_DAY);
    }
    if !answer.rules.is_empty() {
        open_details(out, "", w::MORE_RULES);
        let mut rows = Rows::default();
        for rule in &answer.rules {
            rows.cell(w::topic(rule.topic))
                .put(measure::month_day(rule.from_md))
                .put(measure::month_day(rule.to_md))
                .put(force(cx, rule));
        }
        folded_table(out, w::MORE_RULES, &w::HEAD_RULES, &rows);
        out.close();
    }
}

/// Who says so, and the source.
fn said_by(out: &mut Page<'_>, cx: &Cx<'_>, rule: &Rules) {
    out.text(&force(cx, rule));
    if rule.topic != Topic::Group && !is_bare(&rule.because) && !rule.is_default {
        out.text(" ");
        out.text(w::SOURCE);
        source(out, cx, rule.because.source);
        out.text(".");
    }
}

fn force(cx: &Cx<'_>, rule: &Rules) -> String {
    match rule.topic {
        Topic::Group => w::rule_force(cx.say.group_name(), w::OWN_RULE, false),
        _ => w::rule_force(rule.jurisdiction, rule.force, rule.is_default),
    }
}

fn months_said(rule: &Rules) -> String {
    if all_year(rule) {
        return w::ALL_YEAR.into();
    }
    measure::month_days(rule.from_md, rule.to_md)
}

/// Days that a rule's months last.
fn length(rule: &Rules) -> u16 {
    let (from, to) = (doy_md(rule.from_md), doy_md(rule.to_md));
    if from <= to {
        to - from
    } else {
        365 - from + to
    }
}
