//! Visits after the ring: when to come back, and what for.

use crate::terms::place::Hemisphere;
use crate::terms::species::{Species, Suitability};
use crate::terms::words::words;
use chrono::{Datelike, Days, NaiveDate};
use serde::Serialize;

words! {
    /// What a visit is for.
    pub enum VisitKind {
        /// Two to six weeks on: scrape, re-open bridges.
        Recheck,
        /// The end of the first season.
        EndOfSeason,
        /// Sprouts and bridges in a later season.
        Sprouts,
        /// Once a year until two clean years.
        Yearly,
    }
}

/// A visit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Visit {
    /// What it is for.
    pub kind: VisitKind,
    /// First day.
    #[serde(serialize_with = "crate::terms::day::day")]
    #[cfg_attr(feature = "schema", schemars(with = "String"), ts(type = "string"))]
    pub from: NaiveDate,
    /// Last day.
    #[serde(serialize_with = "crate::terms::day::day")]
    #[cfg_attr(feature = "schema", schemars(with = "String"), ts(type = "string"))]
    pub to: NaiveDate,
    /// Season after the ring: 1, 2, 3, 4.
    pub season: u8,
}

/// Days after the ring of the first look, the same for every tree.
const RECHECK: (u64, u64) = (14, 42);
/// Months, northern: end of season, late spring, midsummer, early autumn.
const END_OF_SEASON: (u32, u32) = (9, 10);
const ROUNDS: [(u32, u32); 3] = [(5, 5), (7, 7), (9, 9)];

/// The visits after a ring on `day`. The season of ringing is this one if it is done before midsummer,
/// else the next; months are turned over in the south. Assumption, from the intervals of the response notes.
#[must_use]
pub fn plan(species: &Species, hemisphere: Hemisphere, day: NaiveDate) -> Vec<Visit> {
    let south = hemisphere == Hemisphere::South;
    let later = |days: u64| day.checked_add_days(Days::new(days)).unwrap_or(day);
    let mut visits = vec![Visit {
        kind: VisitKind::Recheck,
        from: later(RECHECK.0),
        to: later(RECHECK.1),
        season: 1,
    }];
    let first = first_spring(day, south);
    let span = |season: i32, months: (u32, u32)| {
        let year = first + season - 1;
        (start(year, months.0, south), end(year, months.1, south))
    };
    let mut push = |kind, season: i32, months| {
        let (from, to) = span(season, months);
        // The re-check already stands for what falls into its days.
        if from > day {
            visits.push(Visit {
                kind,
                from,
                to,
                season: season as u8,
            });
        }
    };
    push(VisitKind::EndOfSeason, 1, END_OF_SEASON);
    for round in ROUNDS {
        push(VisitKind::Sprouts, 2, round);
    }
    let once = species.suitability == Suitability::Suitable;
    if once {
        push(VisitKind::Sprouts, 3, ROUNDS[1]);
    } else {
        for round in ROUNDS {
            push(VisitKind::Sprouts, 3, round);
        }
    }
    push(VisitKind::Yearly, 4, ROUNDS[1]);
    visits
}

/// The year whose spring begins season 1: done after midsummer it is the next.
fn first_spring(day: NaiveDate, south: bool) -> i32 {
    let past = if south {
        // The southern midsummer is the turn of the year.
        (day.month(), day.day()) >= (12, 22)
    } else {
        (day.month(), day.day()) >= (6, 22)
    };
    day.year() + i32::from(past)
}

/// Which growing season after the ring a day lies in, from 1: it begins with April in the north, October in the
/// south, and what lies before belongs to the season past.
#[must_use]
pub fn season_on(ringed: NaiveDate, day: NaiveDate, south: bool) -> u8 {
    let opens = if south { 10 } else { 4 };
    let year = day.year() - i32::from(day.month() < opens);
    (year - first_spring(ringed, south) + 1).clamp(1, 9) as u8
}

/// First day of a northern month, half a year on in the south (so the southern season runs into the next year).
fn start(year: i32, month: u32, south: bool) -> NaiveDate {
    let (year, month) = turned(year, month, south);
    NaiveDate::from_ymd_opt(year, month, 1).unwrap_or_default()
}

fn end(year: i32, month: u32, south: bool) -> NaiveDate {
    let (year, month) = turned(year, month, south);
    let (next_year, next) = if month == 12 {
        (year + 1, 1)
    } else {
        (year, month + 1)
    };
    NaiveDate::from_ymd_opt(next_year, next, 1)
        .and_then(|day| day.pred_opt())
        .unwrap_or_default()
}

fn turned(year: i32, month: u32, south: bool) -> (i32, u32) {
    if !south {
        (year, month)
    } else if month <= 6 {
        (year, month + 6)
    } else {
        (year + 1, month - 6)
    }
}
