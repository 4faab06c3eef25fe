//! The engine's constants, and its seasons at a place, for the timing checks.
#![allow(dead_code, reason = "each check uses its own part")]

use calc::terms::constants::Constant;
use calc::terms::species::WoodClass;
use calc::terms::tree::{DrySpell, Stage, Vigour};
use calc::timing::{
    Observed, PointClimate, Rates, Season, SeasonCase, SeasonConstants, Site, Station, TreeTiming,
    Where, climate, season,
};
use chrono::{Datelike, NaiveDate};

#[path = "../tables.rs"]
mod tables;
pub(crate) use tables::*;

/// The constants of content/rules/timing_constants.csv.
pub(crate) fn constants() -> SeasonConstants {
    let rows = rows("content/rules/timing_constants.csv");
    SeasonConstants::by_name("", &mut |name| {
        let row = rows.iter().find(|row| row["name"] == name);
        number(row.unwrap_or_else(|| panic!("no row {name}")), "value")
    })
}

/// The climate at a point; fails the check where there is none.
pub(crate) fn point(
    stations: &[Station],
    lat: f64,
    lon: f64,
    elev: f64,
    c: &SeasonConstants,
) -> PointClimate {
    climate::at(
        stations,
        Site {
            lat,
            lon,
            elev_m: Some(elev),
        },
        c,
    )
    .unwrap_or_else(|e| panic!("{lat} {lon}: {e:?}"))
}

/// A tree of a wood class with its sum.
pub(crate) fn tree(wood: WoodClass, f_sum: f64) -> TreeTiming {
    TreeTiming {
        wood: Some(wood),
        f_sum: Some(f_sum),
        f_is_estimate: false,
    }
}

/// An ordinary question.
pub(crate) fn ask<'a>(tree: TreeTiming, place: Where<'a>) -> SeasonCase<'a> {
    SeasonCase {
        tree,
        place,
        observed: None,
        spring: &[],
        dry_spell: DrySpell::None,
        dry_in: None,
        growth: Vigour::Ordinary,
    }
}

/// The season of a tree in a climate.
pub(crate) fn season_at<'c>(
    wood: WoodClass,
    f_sum: f64,
    climate: &PointClimate,
    c: &'c SeasonConstants,
) -> Season<'c> {
    season(&ask(tree(wood, f_sum), Where::Climate(climate)), c)
}

/// A wood class by the word of the tables.
pub(crate) fn wood(word: &str) -> WoodClass {
    match word {
        "ring" => WoodClass::Ring,
        "diffuse" => WoodClass::Diffuse,
        "conifer" => WoodClass::Conifer,
        other => panic!("no wood class {other}"),
    }
}

/// A date.
pub(crate) fn day(year: i32, month: u32, day: u32) -> NaiveDate {
    NaiveDate::from_ymd_opt(year, month, day).expect("a date")
}

/// "21 May" of a year.
pub(crate) fn day_month(text: &str, year: i32) -> NaiveDate {
    const NAMES: [&str; 12] = [
        "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec",
    ];
    let (d, m) = text
        .split_once(' ')
        .unwrap_or_else(|| panic!("no date: {text}"));
    let month = NAMES
        .iter()
        .position(|n| *n == m)
        .unwrap_or_else(|| panic!("no month: {text}")) as u32
        + 1;
    day(year, month, d.parse().expect("a day"))
}

/// Whole days from `a` to `b`.
pub(crate) fn days_between(a: NaiveDate, b: NaiveDate) -> i64 {
    (b - a).num_days()
}

pub(crate) const CLASSES: [(WoodClass, f64); 3] = [
    (WoodClass::Ring, 235.0),
    (WoodClass::Diffuse, 180.0),
    (WoodClass::Conifer, 330.0),
];

/// Every seventh place of the table, at its own elevation.
pub(crate) fn places(c: &SeasonConstants) -> Vec<(Station, PointClimate)> {
    let all = stations();
    all.iter()
        .step_by(7)
        .map(|s| {
            (
                *s,
                point(
                    &all,
                    f64::from(s.lat),
                    f64::from(s.lon),
                    f64::from(s.elev_m),
                    c,
                ),
            )
        })
        .collect()
}

pub(crate) fn whole_year(year: i32) -> impl Iterator<Item = NaiveDate> {
    day(year, 1, 1)
        .iter_days()
        .take_while(move |d| d.year() == year)
}

pub(crate) fn here(stage: Stage, date: NaiveDate) -> Observed {
    Observed {
        stage,
        date,
        elsewhere: None,
        rates: Rates::Fitted,
    }
}
