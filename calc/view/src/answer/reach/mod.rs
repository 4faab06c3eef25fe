//! The reach: keep clear, or why it stops.

pub mod drawing;

use super::frame::{Part, Region, lead, table, twin};
use super::ring::row;
use crate::answer::reach::drawing::{DrawnTarget, ReachFigure, ReachLabels, reach};
use crate::draw::tree::Habit;
use crate::measure;
use crate::page::Page;
use crate::words::m;
use crate::words::{self, reach as w};
use calc::models::reach::ReachOutcome;
use calc::terms::method::Method;
use calc::terms::species::Group;

/// Keep clear: words, drawing, table.
pub(super) fn part(cx: &Region<'_>) -> Part {
    Part {
        class: "p-keep",
        id: "keep",
        title: m::REACH_KEEP_CLEAR.into(),
        key: cx.say.key_keep(),
        body,
    }
}

fn body(out: &mut Page<'_>, cx: &Region<'_>) {
    let found = &cx.say.answer.reach;
    let people = cx.say.answer.people_out_m.map(|m| cx.say.reach(m));
    let zone = cx.say.reach(found.zone_m);
    let method = cx.say.answer.headline_method;
    let left = method == Method::LeaveIt;
    let near = cx.say.near_said();
    let said = match left {
        true if cx.say.drops_wood() => cat!(near, " ", &m::REACH_FROM_NOW),
        false if method.leaves_standing() => cat!(m::reach_from_today(&zone), " ", near),
        // A sound living tree stands as it stood; of one that is taken away nothing stands.
        _ => near,
    };
    lead(out, w::people_out(people.as_deref(), &zone), said);
    // With a ring its tools say so.
    if !left && method != Method::BarkRing {
        out.p(m::REACH_CREW);
    }
    for target in &found.targets {
        if target.damage {
            out.p(w::may_damage(&cx.say.target_said(target)));
        }
    }
    if cx.say.answer.height.measure_first {
        out.p(m::REACH_HEIGHT_AID);
    }
    figure(out, cx, true);
}

/// The words of a reach that are the same for all.
fn reach_labels() -> ReachLabels<'static> {
    ReachLabels {
        aria: "",
        height: "",
        height_short: "",
        foot: words::phrase::FT,
        metre: words::phrase::M,
        can_land: &m::REACH_CAN_LAND,
        can_throw: &m::REACH_CAN_THROW,
        people_out: "",
        heights: [""; 3],
    }
}

/// The drawing, what it shows, and its table.
pub(super) fn figure(out: &mut Page<'_>, cx: &Region<'_>, working: bool) {
    out.open("figure");
    draw(out, cx, working);
    out.leaf(
        "figcaption",
        w::reach_caption(cx.say.answer.reach.targets.len()),
    );
    out.close();
    if !cx.tables_apart() {
        twin(out, cx, &m::REACH_TWIN_REACH, &w::HEAD_REACH);
        rows(out, cx, working);
        out.close_table();
    }
}

/// The drawing alone.
pub(super) fn drawn(out: &mut Page<'_>, cx: &Region<'_>, working: bool) {
    out.open("figure");
    draw(out, cx, working);
    out.close();
}

/// What the drawing shows, as a table.
pub(super) fn in_table(out: &mut Page<'_>, cx: &Region<'_>, working: bool) {
    table(out, &m::REACH_TWIN_REACH, &w::HEAD_REACH);
    rows(out, cx, working);
    out.close_table();
}

/// Where the answer stops nobody works, so no ground for workers is drawn.
fn draw(out: &mut Page<'_>, cx: &Region<'_>, working: bool) {
    let answer = cx.say.answer;
    let found = &answer.reach;
    let units = cx.say.units();
    // Two of one kind that read alike are one flag.
    let mut targets: Vec<DrawnTarget> = Vec::new();
    for target in &found.targets {
        let Some(m) = target.distance_m else { continue };
        let inside = matches!(
            target.outcome,
            Some(ReachOutcome::Inside | ReachOutcome::Professional | ReachOutcome::Line)
        );
        let name = m::reach_target_short(target.kind);
        let label = cat!(&name, ", ", measure::length(m).first(units));
        if !targets.iter().any(|known| known.label == label) {
            targets.push(DrawnTarget {
                distance_m: m,
                inside,
                label,
            });
        }
    }
    let used = measure::length(found.height_m);
    let height = w::height_used(&used.text(units));
    let short = w::height_used_short(used.first(units));
    let zone = measure::reach(found.zone_m);
    let aria = w::reach_aria(
        &used.spoken(units),
        &zone.spoken(units),
        targets.iter().map(|target| target.label.as_str()),
    );
    let mut labels = reach_labels();
    labels.aria = &aria;
    labels.height = &height;
    labels.height_short = &short;
    labels.heights = w::heights(found.zone_m / found.height_m);
    let people = people(cx, working);
    if people.is_some() {
        labels.people_out = &m::REACH_PEOPLE_OUT;
    }
    reach(
        out.sink(),
        &ReachFigure {
            height_used_m: found.height_m,
            height_estimate_m: answer.height.shown_m.unwrap_or(found.height_m),
            zone_m: found.zone_m,
            people_out_m: people,
            targets: &targets,
            habit: if answer.species.group == Group::Conifer {
                Habit::Conifer
            } else {
                Habit::Hardwood
            },
        },
        &labels,
    );
}

/// The ground that is closed while anyone works, where it lies outside the zone.
fn people(cx: &Region<'_>, working: bool) -> Option<f64> {
    let zone = cx.say.answer.reach.zone_m;
    let out = cx.say.answer.people_out_m.filter(|_| working);
    out.filter(|out| *out > zone)
}

fn rows(out: &mut Page<'_>, cx: &Region<'_>, working: bool) {
    let found = &cx.say.answer.reach;
    let used = measure::length(found.height_m);
    row(out, &m::REACH_ROW_HEIGHT, used.clone(), "");
    row(out, &m::REACH_ROW_LAND, used, &m::REACH_KEY_LAND);
    let zone = measure::reach(found.zone_m);
    row(out, &m::REACH_ROW_THROW, zone, &m::REACH_KEY_THROW);
    if let Some(people) = cx.say.answer.people_out_m.filter(|_| working) {
        row(
            out,
            &m::REACH_ROW_PEOPLE,
            measure::reach(people),
            &m::REACH_KEY_PEOPLE,
        );
    }
    for target in &found.targets {
        let value = target.distance_m.map_or_else(not_given, measure::length);
        row(
            out,
            &words::phrase::sentence(&m::reach_target_short(target.kind)),
            value,
            &w::judged(target.outcome, target.damage),
        );
    }
}

fn not_given() -> measure::Both {
    measure::Both {
        us: m::FIELDS_NOT_GIVEN.into(),
        metric: m::FIELDS_NOT_GIVEN.into(),
    }
}
