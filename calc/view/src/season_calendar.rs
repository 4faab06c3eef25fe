//! A season's plan as a calendar file (RFC 5545): an all-day event for each work day and crew, and one for each round of
//! visits that has no work day yet, over the days in which it falls. No alarm, no place.

use crate::ics::{DOMAIN, compact, escaped, line};
use crate::words::m;
use crate::words::message::in_use;
use crate::words::visits::visit;
use calc::models::visits::VisitKind;
use calc::question::read_day;
use calc::terms::method::Method;
use calc_plan::plan_file::shape::{PlanFile, TreeOf};
use chrono::{Days, NaiveDate};
use std::collections::BTreeMap;

/// What a crew does on a day.
#[derive(Default)]
struct CrewDay<'a> {
    rings: Vec<&'a TreeOf>,
    visits: Vec<&'a TreeOf>,
}

/// Visits of one kind to one unit in one season.
#[derive(Default)]
struct Round<'a> {
    from: &'a str,
    to: &'a str,
    trees: Vec<&'a TreeOf>,
}

/// The calendar of a plan. `stamp` is the moment of writing, UTC, as `20270401T080000Z`.
#[must_use]
pub fn season_calendar(file: &PlanFile, stamp: &str) -> String {
    let mut text = String::new();
    line(&mut text, "BEGIN:VCALENDAR");
    line(&mut text, "VERSION:2.0");
    line(&mut text, "PRODID:-//Slipbark//Season//EN");
    line(&mut text, "CALSCALE:GREGORIAN");
    let (days, rounds) = gathered(file);
    for ((day, team), crew) in days {
        let agreed = file.work_days.iter().any(|it| it.day == day && it.agreed);
        let mut said: Vec<String> = Vec::new();
        let mut about: Vec<String> = Vec::new();
        if !crew.rings.is_empty() {
            said.push(m::plan_ring_trees(
                crew.rings.len().to_string(),
                units(&crew.rings),
            ));
            about.push(m::plan_rings_of(tags(&crew.rings)));
        }
        if !crew.visits.is_empty() {
            said.push(m::plan_visit_trees(
                crew.visits.len().to_string(),
                units(&crew.visits),
            ));
            about.push(m::plan_visits_of(tags(&crew.visits)));
        }
        about.push(m::PLAN_LOOK_FIRST.into());
        event(
            &mut text,
            &Event {
                key: &calc_plan::fingerprint(
                    [&file.list.id, " day ", day, " ", &team.to_string()]
                        .concat()
                        .as_bytes(),
                ),
                stamp,
                days: (day, day),
                agreed,
                summary: &said.join("; "),
                description: &about.join("\n"),
            },
        );
    }
    for ((kind, year, unit), round) in rounds {
        let what = VisitKind::parse(kind).map_or(kind, |kind| visit(kind, Method::BarkRing).text());
        let trees = round.trees.len().to_string();
        event(
            &mut text,
            &Event {
                key: &calc_plan::fingerprint(
                    [&file.list.id, " round ", kind, " ", year, " ", unit]
                        .concat()
                        .as_bytes(),
                ),
                stamp,
                days: (round.from, round.to),
                agreed: false,
                summary: &m::plan_round(m::PlanRound { what, trees, unit }),
                description: &m::plan_visits_of(tags(&round.trees)),
            },
        );
    }
    line(&mut text, "END:VCALENDAR");
    text
}

type CrewDays<'a> = BTreeMap<(&'a str, u32), CrewDay<'a>>;
type Rounds<'a> = BTreeMap<(&'a str, &'a str, &'a str), Round<'a>>;

fn gathered(file: &PlanFile) -> (CrewDays<'_>, Rounds<'_>) {
    let (mut days, mut rounds) = (CrewDays::new(), Rounds::new());
    for tree in &file.trees {
        if let (Some(day), Some(team)) = (&tree.day, tree.team) {
            days.entry((day, team)).or_default().rings.push(tree);
        }
        for visit in &tree.visits {
            if let (Some(day), Some(team)) = (&visit.day, visit.team) {
                days.entry((day, team)).or_default().visits.push(tree);
                continue;
            }
            let year = visit.from.get(..4).unwrap_or("");
            let round = rounds.entry((visit.kind, year, &tree.unit)).or_default();
            if round.from.is_empty() || *visit.from < *round.from {
                round.from = &visit.from;
            }
            if *visit.to > *round.to {
                round.to = &visit.to;
            }
            round.trees.push(tree);
        }
    }
    (days, rounds)
}

fn tags(trees: &[&TreeOf]) -> String {
    let mut in_order: Vec<(Option<usize>, &str)> = trees
        .iter()
        .map(|tree| (tree.order, tree.tree_id.as_str()))
        .collect();
    in_order.sort_unstable();
    let tags: Vec<&str> = in_order.into_iter().map(|(_, tag)| tag).collect();
    tags.join(", ")
}

fn units(trees: &[&TreeOf]) -> String {
    let mut units: Vec<&str> = trees.iter().map(|tree| tree.unit.as_str()).collect();
    units.sort_unstable();
    units.dedup();
    units.join(", ")
}

struct Event<'a> {
    key: &'a str,
    stamp: &'a str,
    days: (&'a str, &'a str),
    agreed: bool,
    summary: &'a str,
    description: &'a str,
}

fn event(text: &mut String, event: &Event<'_>) {
    let (Ok(from), Ok(to)) = (read_day(event.days.0), read_day(event.days.1)) else {
        return;
    };
    line(text, "BEGIN:VEVENT");
    line(text, &cat!("UID:", event.key, "@", DOMAIN));
    line(text, &cat!("DTSTAMP:", event.stamp));
    line(text, &cat!("DTSTART;VALUE=DATE:", compact(from)));
    line(text, &cat!("DTEND;VALUE=DATE:", compact(day_after(to))));
    let language = match in_use().language() {
        "en" => String::new(),
        other => cat!(";LANGUAGE=", other),
    };
    line(
        text,
        &cat!("SUMMARY", &language, ":", escaped(event.summary)),
    );
    line(
        text,
        &cat!("DESCRIPTION", &language, ":", escaped(event.description)),
    );
    if !event.agreed {
        line(text, "STATUS:TENTATIVE");
    }
    line(text, "TRANSP:TRANSPARENT");
    line(text, "CATEGORIES:Slipbark");
    line(text, "END:VEVENT");
}

/// The end of an event is the day after its last one (3.6.1).
fn day_after(day: NaiveDate) -> NaiveDate {
    day.checked_add_days(Days::new(1)).unwrap_or(day)
}
