//! The reach: keep clear, or why it stops.

use super::build::{Cx, Rows, key, lead, open_part, twin};
use super::make::title;
use crate::draw::mark::Swatch;
use crate::draw::reach::{Reach, ReachLabels, Target, reach};
use crate::draw::tree::Habit;
use crate::measure;
use crate::out::Page;
use crate::words as w;
use calc::model::method::Method;
use calc::model::reach::Outcome;
use calc::reference::Group;

/// Keep clear: words, drawing, key, table.
pub fn part(out: &mut Page<'_>, cx: &Cx<'_>) {
    let found = &cx.say.answer.reach;
    open_part(
        out,
        cx,
        "p-right p-keep",
        "keep",
        w::KEEP_CLEAR[0],
        w::KEEP_CLEAR[1],
    );
    let people = cx.say.reach(found.people_out_m);
    let zone = cx.say.reach(found.zone_m);
    let left = cx.say.answer.headline_method == Method::LeaveIt;
    let counts = if left { w::FROM_NOW } else { w::FROM_TODAY };
    lead(
        out,
        &w::people_out(&people, &zone, left),
        &cat!(cx.say.near_said(), " ", counts),
    );
    for target in found.targets.iter().filter(|target| target.damage) {
        out.p(&w::may_damage(&cx.say.target_said(target)));
    }
    if cx.say.answer.height.measure_first {
        out.p(w::HEIGHT_AID);
    }
    figure(out, cx, true);
    out.close();
}

/// Drawing, key and table. Where the answer stops nobody works, so no ground for workers is drawn.
pub fn figure(out: &mut Page<'_>, cx: &Cx<'_>, working: bool) {
    let answer = cx.say.answer;
    let found = &answer.reach;
    let units = cx.say.units();
    // Two of one kind that read alike are one flag.
    let mut labels: Vec<(f64, bool, String)> = Vec::new();
    for target in &found.targets {
        let Some(m) = target.distance_m else { continue };
        let inside = matches!(
            target.outcome,
            Some(Outcome::Inside | Outcome::Professional | Outcome::Line)
        );
        let name = w::target_short(target.kind);
        let label = cat!(name, ", ", measure::length(m).first(units));
        if !labels.iter().any(|(_, _, known)| *known == label) {
            labels.push((m, inside, label));
        }
    }
    let targets: Vec<Target<'_>> = labels
        .iter()
        .map(|(distance_m, inside, label)| Target {
            distance_m: *distance_m,
            inside: *inside,
            label,
        })
        .collect();
    let used = measure::length(found.height_m);
    let height = w::height_used(&used.text(units));
    let short = w::height_used_short(used.first(units));
    let zone = measure::reach(found.zone_m);
    let aria = w::reach_aria(
        &used.spoken(units),
        &zone.spoken(units),
        labels.iter().map(|(_, _, label)| label.as_str()),
    );
    out.open("figure");
    reach(
        out.sink(),
        &Reach {
            height_used_m: found.height_m,
            height_estimate_m: answer.height.shown_m.unwrap_or(found.height_m),
            zone_m: found.zone_m,
            people_out_m: working.then_some(found.people_out_m),
            targets: &targets,
            habit: if answer.species.group == Group::Conifer {
                Habit::Conifer
            } else {
                Habit::Hardwood
            },
        },
        &ReachLabels {
            aria: &aria,
            height: &height,
            height_short: &short,
            foot: w::FT,
            metre: w::M,
            can_land: w::CAN_LAND,
            can_throw: w::CAN_THROW,
            people_out: if working { w::PEOPLE_OUT } else { "" },
            heights: w::heights(found.zone_m / found.height_m),
        },
    );
    out.leaf("figcaption", &w::reach_caption(targets.len()));
    out.close();
    legend(out, cx, working);
    twin(
        out,
        w::TWIN_REACH,
        &title(cx),
        &w::HEAD_REACH,
        &rows(cx, working),
    );
}

fn legend(out: &mut Page<'_>, cx: &Cx<'_>, working: bool) {
    let found = &cx.say.answer.reach;
    let units = cx.say.units();
    let used = measure::length(found.height_m);
    let zone = measure::reach(found.zone_m);
    let people = measure::reach(found.people_out_m);
    let land = w::zone("0", used.first(units));
    let throw = w::zone(used.first(units), zone.first(units));
    let clear = w::zone(zone.first(units), people.first(units));
    let mut rows = vec![
        (Swatch::Hatch, land.as_str(), w::KEY_REACH[0]),
        (Swatch::Wide, throw.as_str(), w::KEY_REACH[1]),
    ];
    if working && people != zone {
        rows.push((Swatch::Dash, clear.as_str(), w::KEY_REACH[2]));
    }
    key(out, &rows);
}

fn rows(cx: &Cx<'_>, working: bool) -> Rows {
    let found = &cx.say.answer.reach;
    let mut rows = Rows::default();
    let mut push = |name: &str, value: measure::Both, means: &str| {
        rows.cell(name).put(value.us).put(value.metric).cell(means);
    };
    push(w::ROW_REACH[0], measure::length(found.height_m), "");
    push(
        w::ROW_REACH[1],
        measure::length(found.height_m),
        w::KEY_REACH[0],
    );
    push(
        w::ROW_REACH[2],
        measure::reach(found.zone_m),
        w::KEY_REACH[1],
    );
    if working {
        push(
            w::ROW_REACH[3],
            measure::reach(found.people_out_m),
            w::KEY_REACH[2],
        );
    }
    for target in &found.targets {
        let name = w::sentence(w::target_short(target.kind));
        rows.put(name);
        match target.distance_m {
            Some(m) => {
                let value = measure::length(m);
                rows.put(value.us).put(value.metric);
            }
            None => {
                rows.cell(w::NOT_GIVEN).cell(w::NOT_GIVEN);
            }
        }
        rows.cell(w::judged(target.outcome, target.damage));
    }
    rows
}
