//! How long, then check, what it leaves.

use super::build::{Cx, cites, drawn_grade, heading, lead, open_part, text_in, twin, weakest};
use super::make::title;
use crate::draw::Grade;
use crate::draw::range::{Range, RangeLabels, Share, SharesLabels, range, shares};
use crate::draw::year::{Pin, VisitYear, VisitsLabels, visits};
use crate::measure;
use crate::out::{Out, OutExt};
use crate::words as w;
use calc::model::at_visit::advise;
use calc::model::method::Method;
use calc::model::outlook::{Outlook, SeasonShare};
use calc::model::visits::Visit;
use calc::reference::{Group, Trait};
use chrono::{Datelike, NaiveDate};

/// How long a ring takes. Nothing where no ring may be cut.
pub fn minutes_part(out: &mut dyn Out, cx: &Cx<'_>) {
    let answer = cx.say.answer;
    let Some(effort) = &answer.effort else {
        return;
    };
    open_part(
        out,
        cx,
        "p-right p-long",
        "long",
        w::HOW_LONG[0],
        w::HOW_LONG[1],
    );
    if answer.headline_method != Method::BarkRing {
        out.leaf("p", w::IF_RINGED);
    }
    let (span, hours) =
        measure::span_of_minutes(effort.low_min, effort.likely_min, effort.high_min);
    let width = match answer
        .stems
        .iter()
        .filter(|stem| stem.ring.is_some())
        .count()
    {
        0 | 1 => super::make::largest(cx)
            .and_then(|stem| stem.ring.as_ref())
            .map_or_else(String::new, |ring| {
                measure::ring(ring.better_mm).text(cx.say.units())
            }),
        _ => w::EACH_BETTER.into(),
    };
    let rest = w::minutes_for(&width, effort.walk_min, cx.say.question.practised);
    lead(out, &w::minutes_lead(&span, hours), &rest);
    let scale = if hours { 60.0 } else { 1.0 };
    let unit = if hours { w::HOURS } else { w::MIN };
    let tick = w::minutes_tick(&span[1], hours);
    out.open("figure");
    range(
        out,
        &Range {
            low: effort.low_min / scale,
            likely: Some(effort.likely_min / scale),
            high: effort.high_min / scale,
            grade: drawn_grade(weakest(&effort.because)),
        },
        &RangeLabels {
            aria: &w::minutes_lead(&span, hours),
            likely: &tick,
            unit,
        },
    );
    out.close();
    let (low, likely, high) = effort.visit_min;
    if !answer.visits.is_empty() {
        out.leaf_class("p", "np", &w::visit_minutes(low, likely, high));
    }
    text_in(out, "p", "soft np", w::NO_TABLE);
    let tasks = effort.tasks;
    let mut rows: Vec<Vec<String>> = w::TASKS
        .iter()
        .zip([
            tasks.fixed,
            tasks.limbs,
            tasks.score,
            tasks.peel,
            tasks.scrape,
        ])
        .filter(|(_, minutes)| *minutes > 0.0)
        .map(|(name, minutes)| vec![(*name).into(), measure::plain(minutes, 1)])
        .collect();
    rows.push(vec![
        w::TASK_WALK.into(),
        measure::plain(effort.walk_min, 1),
    ]);
    rows.push(vec![
        w::TASK_ALL.into(),
        cat!(
            measure::minutes(effort.likely_min),
            " (",
            measure::minutes(effort.low_min),
            w::TO,
            measure::minutes(effort.high_min),
            ")"
        ),
    ]);
    twin(out, w::TWIN_MINUTES, &title(cx), &w::HEAD_MINUTES, &rows);
    out.close();
}

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
pub fn visits_part(out: &mut dyn Out, cx: &Cx<'_>) {
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
    let rings = answer.headline_method == Method::BarkRing;
    if rings {
        at_a_visit(out, cx);
    }
    if rings {
        let larch = cx.say.question.species.scientific.starts_with("Larix");
        out.leaf("p", w::judge_death(larch));
    }
    if let Some(outlook) = answer.outlook.as_ref().filter(|_| rings) {
        outlook_part(out, cx, outlook);
    }
    out.close();
}

/// What may be seen, and what the model advises at the first visit and in season 3.
fn at_a_visit(out: &mut dyn Out, cx: &Cx<'_>) {
    let plan = &cx.say.answer.visits;
    let (Some(ringed), Some(first), Some(third)) = (
        cx.say.answer.advised_day,
        plan.first(),
        plan.iter().rfind(|visit| visit.season == 3),
    ) else {
        return;
    };
    let rows: Vec<Vec<String>> = w::SEEN
        .iter()
        .filter_map(|seen| {
            let at = |day| advise(ringed, day, plan, &[*seen]).ok();
            let (early, late) = (at(first.to)?, at(third.to)?);
            let mut acts: Vec<&str> = Vec::new();
            for act in early.acts.iter().chain(&late.acts) {
                let word = w::act_now(*act);
                if !acts.contains(&word) {
                    acts.push(word);
                }
            }
            Some(vec![
                w::seen(*seen).into(),
                w::sentence(&acts.join("; ")),
                w::ring_judged(early.judged).into(),
                w::ring_judged(late.judged).into(),
            ])
        })
        .collect();
    super::build::open_details(out, "", w::AT_A_VISIT);
    super::build::folded_table(out, w::AT_A_VISIT, &w::HEAD_VISIT, &rows);
    out.close();
}

fn draw_visits(out: &mut dyn Out, cx: &Cx<'_>) {
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
        out,
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
fn list(out: &mut dyn Out, cx: &Cx<'_>) {
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
        out.close();
        out.close();
        at += same;
    }
    out.close();
}

fn outlook_part(out: &mut dyn Out, cx: &Cx<'_>, outlook: &Outlook) {
    heading(out, cx.level + 1, "np", "", w::HOW_MANY_DIE);
    if let Some(third) = outlook.seasons.last() {
        lead(
            out,
            &w::outlook_lead(&w::share(&third.share), outlook.stem_only),
            w::OUTLOOK_IF,
        );
    }
    let labels: Vec<String> = outlook
        .seasons
        .iter()
        .map(|season| w::season_bar(season.season, &season.share))
        .collect();
    let rows: Vec<Share<'_>> = outlook
        .seasons
        .iter()
        .zip(&labels)
        .map(|(season, label)| Share {
            low: season.share.low,
            likely: season.share.likely,
            high: season.share.high,
            grade: outlook_grade(outlook, season),
            label,
        })
        .collect();
    out.open("figure");
    shares(
        out,
        &rows,
        &SharesLabels {
            aria: w::HOW_MANY_DIE,
            unit: w::IN_100,
        },
    );
    out.close();
    let mut notes = vec![w::second_ring(outlook.second_ring.0, outlook.second_ring.1)];
    if let Some((low, high)) = outlook.sprouting {
        notes.push(w::sprouting(low, high));
    }
    out.leaf("p", &notes.join(" "));
    for season in &outlook.seasons {
        if let Some(row) = &season.species_row {
            let when = w::season_name(&measure::number(u32::from(season.season)));
            own_row(
                out,
                cx,
                &w::own_row(&when, &w::share(&season.share), row.n, row.note),
                row.because,
            );
        }
    }
    for later in &outlook.later {
        let when = w::season_name(later.when);
        let text = w::own_row(&when, &w::share(&later.share), later.row.n, later.row.note);
        own_row(out, cx, &text, later.row.because);
    }
    deaths(out, cx);
    super::build::open_details(out, "", w::OUTLOOK_BASIS);
    let basis = w::outlook_basis(outlook.class, outlook.size, outlook.anchors, outlook.own);
    out.leaf("p", &basis);
    out.close();
    if cx.say.question.species.has(Trait::Oak) {
        oaks(out, cx);
    }
    let table: Vec<Vec<String>> = outlook
        .seasons
        .iter()
        .map(|season| {
            let share = &season.share;
            vec![
                cat!(w::SEASON, measure::number(u32::from(season.season))),
                measure::percent(share.low),
                share
                    .likely
                    .map_or_else(|| w::NOT_KNOWN.into(), measure::percent),
                measure::percent(share.high),
            ]
        })
        .collect();
    twin(out, w::TWIN_OUTLOOK, &title(cx), &w::HEAD_OUTLOOK, &table);
}

/// A season's own grade: the species' own row, counts that bound it, or our own assumption, as the table says.
fn outlook_grade(outlook: &Outlook, season: &SeasonShare) -> Grade {
    if season.species_row.is_some() {
        return Grade::Measured;
    }
    let name = cat!("S", measure::number(u32::from(season.season)));
    let own = ["everything", &*name]
        .iter()
        .any(|word| outlook.own.contains(word));
    if own {
        Grade::Assumed
    } else {
        Grade::Estimated
    }
}

fn own_row(out: &mut dyn Out, cx: &Cx<'_>, text: &str, because: &[calc::evidence::Cite]) {
    out.open("p");
    out.text(&w::sentence(text));
    out.text(". ");
    if !because.is_empty() {
        out.text(w::SOURCE);
        cites(out, cx, because);
        out.text(".");
    }
    out.close();
}

/// What was counted on this species, as printed.
fn deaths(out: &mut dyn Out, cx: &Cx<'_>) {
    let rows = cx.say.question.species.deaths;
    if rows.is_empty() {
        return;
    }
    super::build::open_details(out, "", w::DEATHS);
    let list: Vec<Vec<String>> = rows
        .iter()
        .map(|row| {
            let label = cx
                .say
                .reference
                .source(row.source)
                .map_or(row.source, |source| source.label);
            [
                row.dead, row.after, row.n, row.dbh, row.ring, row.season, label,
            ]
            .iter()
            .map(|cell| (*cell).to_owned())
            .collect()
        })
        .collect();
    super::build::folded_table(out, w::DEATHS, &w::HEAD_DEATHS, &list);
    out.close();
}

fn oaks(out: &mut dyn Out, cx: &Cx<'_>) {
    out.open_class("p", "soft");
    for (at, piece) in w::OAKS_DISAGREE.iter().enumerate() {
        out.text(piece);
        if let Some(id) = w::OAKS_SOURCES.get(at) {
            out.text("(");
            super::build::source(out, cx, id);
            out.text(")");
        }
    }
    out.close();
}

/// What the dead tree offers, and how long it may stand.
pub fn habitat_part(out: &mut dyn Out, cx: &Cx<'_>) {
    let answer = cx.say.answer;
    let Some(habitat) = &answer.habitat else {
        return;
    };
    // What is pulled, felled or cut leaves nothing standing; a palm is no snag of the table.
    let stands =
        answer.headline_method.leaves_standing() || answer.headline_method == Method::LeaveIt;
    if !stands || answer.species.group == Group::Monocot {
        return;
    }
    let question = if answer.headline_method == Method::LeaveIt {
        w::LEAVES_STANDING
    } else {
        w::LEAVES[1]
    };
    open_part(out, cx, "p-hide p-leave", "leave", w::LEAVES[0], question);
    let size = cx.say.size();
    let words = w::leaves_lead(
        habitat.feeding_wood_only,
        habitat.users.len(),
        habitat.region_known,
        &size,
    );
    lead(out, &words, "");
    if !habitat.feeding_wood_only && !habitat.users.is_empty() {
        let names: Vec<&str> = habitat.users.iter().map(|user| user.name).collect();
        out.leaf("p", &cat!(w::row(&names), "."));
        super::build::open_details(out, "", w::USERS_HOW);
        out.open("ul");
        for user in &habitat.users {
            out.leaf("li", &cat!(user.name, ": ", w::user_note(user.note), "."));
        }
        out.close();
        out.close();
    }
    let (low, likely, high) = habitat.half_life_years;
    let said = w::standing(low, likely, high);
    out.open("figure");
    range(
        out,
        &Range {
            low,
            likely: Some(likely),
            high,
            grade: Grade::Assumed,
        },
        &RangeLabels {
            aria: &said,
            likely: &cat!(measure::years(likely), " ", w::YEARS),
            unit: w::YEARS,
        },
    );
    out.close();
    text_in(out, "p", "soft", &said);
    out.leaf("p", w::NOT_GOOD_FOR);
    out.open_class("p", "soft");
    out.text(w::SOURCES);
    let mut because = habitat.because.clone();
    because.extend(habitat.users.iter().map(|user| user.because));
    cites(out, cx, &because);
    out.text(".");
    out.close();
    out.close();
}
