//! What stands beside the headline: the method of today, one without herbicide, one that kills more, how the ring stands.

use super::facts::{Facts, Levels, level};
use super::head_on_day::{Later, better, professional, ring_with};
use crate::terms::method::{Level, Method};
use crate::terms::tree::Herbicide;
use crate::terms::words::words;
use chrono::NaiveDate;
use serde::Serialize;

/// Something that stands beside the headline.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Also {
    /// What it is.
    pub kind: AlsoKind,
    /// The method.
    pub method: Method,
    /// Its level.
    pub level: Level,
    /// Whether only a professional, or a licensed applicator, may do it.
    pub by_professional: bool,
    /// Whether its wood breeds beetles then, so that it is taken away or peeled within three weeks.
    pub take_away_or_peel: bool,
    /// Whether only someone trained to fell may do it, since something stands near.
    pub trained_to_fell: bool,
    /// The day, where it is for another day.
    #[serde(serialize_with = "crate::terms::day::maybe_day")]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<String>"),
        ts(type = "string | null")
    )]
    pub day: Option<NaiveDate>,
    /// The last day of the stretch that this day begins; none where it may be any day from then on.
    #[serde(serialize_with = "crate::terms::day::maybe_day")]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<String>"),
        ts(type = "string | null")
    )]
    pub to: Option<NaiveDate>,
}

words! {
    /// Kinds of such lines.
    pub enum AlsoKind {
        /// The best method if the condition does not hold.
        Otherwise,
        /// What it could hit, or a line, is not known: if something is there, a professional or the line's owner.
        OrProfessional,
        /// The best method on the day asked about, where the answer waits for a better one.
        Today,
        /// The best method without herbicide.
        WithoutHerbicide,
        /// A method that kills more than the ring, which is likely to kill fewer than half.
        KillsMore,
        /// A ring on a later day.
        RingLater,
        /// A ring is possible, though something stands against it.
        RingPossible,
        /// The next method behind a ring that is only possible.
        NextMethod,
        /// The ring is ruled out on every day at this place.
        NoRingHere,
    }
}

/// A line, without who may fell and the end of its stretch.
pub(super) fn also(kind: AlsoKind, lines: &Levels, method: Method, day: Option<NaiveDate>) -> Also {
    Also {
        kind,
        method,
        level: level(lines, method),
        by_professional: professional(lines, method),
        take_away_or_peel: false,
        trained_to_fell: false,
        day,
        to: None,
    }
}

/// Nothing was said of herbicide and the head needs it: the best method without stands beside it, on that day, else on
/// the first day within a year on which one stands.
pub(super) fn without_herbicide(
    facts: &Facts<'_>,
    day: NaiveDate,
    headline: Method,
) -> Option<Also> {
    let open = facts.question.tree.herbicide == Herbicide::NotSaid && headline.needs_herbicide();
    if !open || facts.head_alone {
        return None;
    }
    let stem = facts.stem;
    let kind = AlsoKind::WithoutHerbicide;
    let lines = facts.lines_with(stem, day, Herbicide::No);
    let method = facts.head(&lines, stem);
    if method != Method::LeaveIt || facts.question.cannot_wait {
        return Some(also(kind, &lines, method, None));
    }
    let ring = ring_with(
        facts,
        day,
        facts.calendar.first_best(day, true),
        Herbicide::No,
    );
    let other = better(facts, day, Herbicide::No);
    let found = match (ring, other) {
        (Some(ring), Some(other)) if other.rank < ring.rank => Some(other),
        (Some(ring), _) => Some(ring),
        (None, other) => other,
    };
    Some(match found {
        Some(found) => {
            let lines = facts.lines_with(stem, found.day, Herbicide::No);
            also(kind, &lines, found.method, Some(found.day))
        }
        None => also(kind, &lines, Method::LeaveIt, None),
    })
}

/// Beside a ring stands the method that kills more, where the ring kills few; beside one that is only possible the
/// next method.
pub(super) fn beside_ring(facts: &Facts<'_>, lines: &Levels, day: NaiveDate) -> Vec<Also> {
    if facts.head_alone {
        return Vec::new();
    }
    let stem = facts.stem;
    let mut beside = Vec::new();
    if level(lines, Method::BarkRing) != Level::Recommended {
        let next = facts.best(lines, stem, |line| line.method != Method::BarkRing);
        beside.push(also(AlsoKind::NextMethod, lines, next, None));
        beside
            .extend(without_herbicide(facts, day, next).filter(|it| it.method != Method::BarkRing));
    }
    if facts.kills_few(stem)
        && let Some(method) = facts.kills_more(lines, stem)
    {
        beside.push(also(AlsoKind::KillsMore, lines, method, None));
    }
    beside
}

/// Beside another method: what stands without herbicide, and how the ring stands.
pub(super) fn beside_other(
    facts: &Facts<'_>,
    lines: &Levels,
    day: NaiveDate,
    headline: Method,
    later: Later,
) -> Vec<Also> {
    if facts.head_alone {
        return Vec::new();
    }
    let mut beside: Vec<Also> = Vec::new();
    beside.extend(without_herbicide(facts, day, headline));
    match later {
        Later::Never => beside.push(also(AlsoKind::NoRingHere, lines, Method::BarkRing, None)),
        Later::On(day, _) => {
            let then = facts.lines(facts.stem, day);
            beside.push(also(
                AlsoKind::RingLater,
                &then,
                Method::BarkRing,
                Some(day),
            ));
        }
        Later::No if level(lines, Method::BarkRing) == Level::Possible => {
            beside.push(also(AlsoKind::RingPossible, lines, Method::BarkRing, None));
        }
        Later::No => {}
    }
    beside
}
