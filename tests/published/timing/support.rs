//! Reading of the evidence tables, and the engine's constants and places, for the timing checks.
#![allow(dead_code, reason = "each check uses its own part")]

use calc::timing::{
    Ask, Constants, DrySpell, Growth, Observed, PointClimate, Rates, Season, Site, Stage, Station,
    TreeTiming, Where, WoodClass, climate, season,
};
use chrono::{Datelike, NaiveDate};
use std::collections::BTreeMap;
use std::path::PathBuf;

/// One row of a table by column name.
pub type Row = BTreeMap<String, String>;

/// The rows of a CSV file, by its path from the repository's root.
pub fn rows(path: &str) -> Vec<Row> {
    let file = PathBuf::from(env!("CARGO_MANIFEST_DIR"))
        .join("..")
        .join(path);
    let mut reader = csv::Reader::from_path(&file).unwrap_or_else(|e| panic!("{path}: {e}"));
    let head: Vec<String> = reader
        .headers()
        .expect("a header line")
        .iter()
        .map(str::to_owned)
        .collect();
    let rows: Vec<Row> = reader
        .records()
        .map(|r| {
            head.iter()
                .cloned()
                .zip(r.expect("a full row").iter().map(str::to_owned))
                .collect()
        })
        .collect();
    assert!(!rows.is_empty(), "{path} has no rows");
    rows
}

/// A cell as a number.
pub fn number(row: &Row, column: &str) -> f64 {
    row[column]
        .parse()
        .unwrap_or_else(|_| panic!("{column} is no number in {row:?}"))
}

/// The constants of content/rules/timing_constants.csv.
pub fn constants() -> Constants {
    let rows = rows("content/rules/timing_constants.csv");
    Constants::from_pairs(
        rows.iter()
            .map(|r| (r["name"].as_str(), number(r, "value"))),
    )
    .expect("a complete table")
}

/// The places of content/places/climate_places.csv.
pub fn stations() -> Vec<Station> {
    rows("content/places/climate_places.csv")
        .iter()
        .map(|r| {
            let months = |kind: &str| {
                std::array::from_fn(|m| number(r, &format!("{kind}{:02}", m + 1)) as f32)
            };
            Station {
                lat: number(r, "lat") as f32,
                lon: number(r, "lon") as f32,
                elev_m: number(r, "elev_m") as f32,
                tmin: months("tmin"),
                tmax: months("tmax"),
            }
        })
        .collect()
}

/// The climate at a point; fails the check where there is none.
pub fn point(stations: &[Station], lat: f64, lon: f64, elev: f64, c: &Constants) -> PointClimate {
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
pub fn tree(wood: WoodClass, f_sum: f64) -> TreeTiming {
    TreeTiming {
        wood: Some(wood),
        f_sum: Some(f_sum),
        f_is_estimate: false,
    }
}

/// An ordinary question.
pub fn ask<'a>(tree: TreeTiming, place: Where<'a>) -> Ask<'a> {
    Ask {
        tree,
        place,
        observed: None,
        spring: &[],
        dry_spell: DrySpell::None,
        growth: Growth::Ordinary,
    }
}

/// The season of a tree in a climate.
pub fn season_at<'c>(
    wood: WoodClass,
    f_sum: f64,
    climate: &PointClimate,
    c: &'c Constants,
) -> Season<'c> {
    season(&ask(tree(wood, f_sum), Where::Climate(climate)), c)
}

/// A wood class by the word of the tables.
pub fn wood(word: &str) -> WoodClass {
    match word {
        "ring" => WoodClass::Ring,
        "diffuse" => WoodClass::Diffuse,
        "conifer" => WoodClass::Conifer,
        other => panic!("no wood class {other}"),
    }
}

/// A date.
pub fn day(year: i32, month: u32, day: u32) -> NaiveDate {
    NaiveDate::from_ymd_opt(year, month, day).expect("a date")
}

/// "21 May" of a year.
pub fn day_month(text: &str, year: i32) -> NaiveDate {
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
pub fn days_between(a: NaiveDate, b: NaiveDate) -> i64 {
    (b - a).num_days()
}

pub const CLASSES: [(WoodClass, f64); 3] = [
    (WoodClass::Ring, 235.0),
    (WoodClass::Diffuse, 180.0),
    (WoodClass::Conifer, 330.0),
];

/// Every seventh place of the table, at its own elevation.
pub fn places(c: &Constants) -> Vec<(Station, PointClimate)> {
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

pub fn whole_year(year: i32) -> impl Iterator<Item = NaiveDate> {
    day(year, 1, 1)
        .iter_days()
        .take_while(move |d| d.year() == year)
}

pub fn here(stage: Stage, date: NaiveDate) -> Observed {
    Observed {
        stage,
        date,
        elsewhere: None,
        rates: Rates::Fitted,
    }
}
