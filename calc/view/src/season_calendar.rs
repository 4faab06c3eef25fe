//! A season's plan as a calendar file (RFC 5545): an all-day event for each work day and crew, and one for each round of
//! visits that has no work day yet, over the days in which it falls. No alarm, no place.

use crate::ics::{Event, calendar};
use crate::words::m;
use crate::words::visits::visit;
use calc::models::visits::VisitKind;
use calc::question::read_day;
use calc::terms::method::Method;
use calc_plan::plan_file::shape::{PlanFile, TreeOf};
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
    calendar("Season", |text| events(text, file, stamp))
}

fn events(text: &mut String, file: &PlanFile, stamp: &str) {
    let (days, rounds) = gathered(file);
    for ((day, team), crew) in days {
        let Ok(on) = read_day(day) else { continue };
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
        let event = Event {
            key: &calc_plan::fingerprint(
                [&file.list.id, " day ", day, " ", &team.to_string()]
                    .concat()
                    .as_bytes(),
            ),
            stamp,
            days: [on, on],
            agreed,
            summary: &said.join("; "),
            description: &about.join("\n"),
        };
        event.write(text);
    }
    for ((kind, year, unit), round) in rounds {
        let (Ok(from), Ok(to)) = (read_day(round.from), read_day(round.to)) else {
            continue;
        };
        let what = VisitKind::parse(kind).map_or(kind, |kind| visit(kind, Method::BarkRing).text());
        let trees = round.trees.len().to_string();
        let event = Event {
            key: &calc_plan::fingerprint(
                [&file.list.id, " round ", kind, " ", year, " ", unit]
                    .concat()
                    .as_bytes(),
            ),
            stamp,
            days: [from, to],
            agreed: false,
            summary: &m::plan_round(m::PlanRound { what, trees, unit }),
            description: &m::plan_visits_of(tags(&round.trees)),
        };
        event.write(text);
    }
}

type CrewDays<'a> = BTreeMap<(&'a str, u32), CrewDay<'a>>;
type Rounds<'a> = BTreeMap<(&'a str, &'a str, &'a str), Round<'a>>;

fn gathered(file: &PlanFile) -> (CrewDays<'_>, Rounds<'_>) {
    let (mut days, mut rounds) = (CrewDays::new(), Rounds::new());
    for tree in file.trees.iter() {
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
