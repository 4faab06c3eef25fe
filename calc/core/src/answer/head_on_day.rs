//! What heads on which day of the year to come: the ring on its first best day, another method on a later one.

use super::facts::{Facts, Levels, level};
use crate::terms::method::{Level, Method};
use crate::terms::tree::{Herbicide, Stem};
use chrono::NaiveDate;

/// Whether, and when, the ring would be at the head but for the day.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Later {
    /// On this day, with its rank.
    On(NaiveDate, u8),
    /// On no day at this place, though the tree would suit it.
    Never,
    /// The ring is not what the day keeps from the head.
    No,
}

/// Whether, and when, the ring would be at the head but for the day asked about.
pub(super) fn ring_later(
    facts: &Facts<'_>,
    stem: &Stem,
    asked: NaiveDate,
    first_best: Option<NaiveDate>,
    ring: Option<HeadOnDay>,
) -> Later {
    let in_season = facts.lines_in_season(facts.stem, asked);
    if facts.head(&in_season, stem) != Method::BarkRing {
        return Later::No;
    }
    match first_best {
        None => Later::Never,
        Some(_) => ring.map_or(Later::No, |found| Later::On(found.day, found.rank)),
    }
}

/// A method that heads on a day, and how high.
#[derive(Clone, Copy)]
pub(super) struct HeadOnDay {
    pub(super) day: NaiveDate,
    pub(super) method: Method,
    pub(super) rank: u8,
}

/// The ring on its first best day, where it heads then.
pub(super) fn ring_with(
    facts: &Facts<'_>,
    from: NaiveDate,
    first_best: Option<NaiveDate>,
    herbicide: Herbicide,
) -> Option<HeadOnDay> {
    let day = first_best?;
    // Where it shall only be dead, a ring that kills few gives way to what kills more on any day.
    if facts.gives_way(facts.stem) && kills_more_later(facts, from, herbicide) {
        return None;
    }
    let lines = facts.lines_with(facts.stem, day, herbicide);
    facts.ring_heads(day, herbicide).then(|| HeadOnDay {
        day,
        method: Method::BarkRing,
        rank: rank(&lines, Method::BarkRing),
    })
}

/// Whether a method that kills more than a ring stands on a day or on a later one within a year.
fn kills_more_later(facts: &Facts<'_>, from: NaiveDate, herbicide: Herbicide) -> bool {
    let later = facts.calendar.turns(from);
    let parts = later.iter().map(|turn| turn.part);
    core::iter::once(facts.calendar.part(from))
        .chain(parts)
        .any(|part| {
            let lines = facts.lines_without_ring(part, herbicide);
            facts.kills_more(&lines, facts.stem).is_some()
        })
}

/// The method that heads highest on a later day within a year, apart from the ring, on the first such day.
pub(super) fn better(
    facts: &Facts<'_>,
    asked: NaiveDate,
    herbicide: Herbicide,
) -> Option<HeadOnDay> {
    let mut best: Option<HeadOnDay> = None;
    for turn in facts
        .calendar
        .turns(asked)
        .iter()
        .filter(|turn| !turn.soon_closed)
    {
        let lines = facts.lines_without_ring(turn.part, herbicide);
        let method = facts.head(&lines, facts.stem);
        let rank = rank(&lines, method);
        if rank < best.map_or(NOTHING, |best| best.rank) {
            best = Some(HeadOnDay {
                day: turn.day,
                method,
                rank,
            });
        }
    }
    best
}

/// How high something heads: leaving it alone counts below possible.
pub(super) fn rank(lines: &Levels, head: Method) -> u8 {
    match (head, level(lines, head)) {
        (Method::LeaveIt, _) => NOTHING,
        (_, Level::Recommended) => 0,
        (_, Level::Possible) => 1,
        (_, Level::NotAdvised | Level::RuledOut) => NOTHING,
    }
}

/// The rank of leaving it alone.
pub(super) const NOTHING: u8 = 2;

/// Whether only a professional, or a licensed applicator, may do it.
pub(super) fn professional(lines: &Levels, method: Method) -> bool {
    lines[method as usize].by_professional
}
