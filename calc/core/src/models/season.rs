//! From a question to a season: which knowledge of the place and the leaf-out the timing engine is given.

use crate::question::{LeafOut, Question};
use crate::reference::Constants;
use crate::terms::cite::Cite;
use crate::terms::cite::Grade;
use crate::terms::place::Place;
use crate::terms::tree::{Condition, Dry, Stage, Vigour};
use crate::timing::closed_months::Topic;
use crate::timing::doy::season_year;
use crate::timing::spring::{BadLine, Doubt};
use crate::timing::{
    self, Ask, DrySpell, Growth, Observed, PointClimate, Season, Site, Station, TreeTiming, Where,
    climate,
};
use crate::timing::{Basis, Fill, Flag, Verdict};
use chrono::NaiveDate;
use serde::Serialize;

/// Timing.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct TimingAnswer {
    /// The bark on the advised day.
    pub verdict: Verdict,
    /// Probability of slip on it; none where there is no date model.
    pub probability: Option<f64>,
    /// Budbreak, half of the buds open.
    #[serde(serialize_with = "crate::terms::day::maybe_day")]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<String>"),
        ts(type = "string | null")
    )]
    pub budbreak: Option<NaiveDate>,
    /// The window opens.
    #[serde(serialize_with = "crate::terms::day::maybe_day")]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<String>"),
        ts(type = "string | null")
    )]
    pub opens: Option<NaiveDate>,
    /// First of the best days.
    #[serde(serialize_with = "crate::terms::day::maybe_day")]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<String>"),
        ts(type = "string | null")
    )]
    pub best_from: Option<NaiveDate>,
    /// Last of the best days.
    #[serde(serialize_with = "crate::terms::day::maybe_day")]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<String>"),
        ts(type = "string | null")
    )]
    pub best_to: Option<NaiveDate>,
    /// The window closes.
    #[serde(serialize_with = "crate::terms::day::maybe_day")]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<String>"),
        ts(type = "string | null")
    )]
    pub closes: Option<NaiveDate>,
    /// Spread of the opening, days (one standard deviation).
    pub sd_open: Option<f64>,
    /// Spread of the closing, days.
    pub sd_close: Option<f64>,
    /// First day of the next good stretch from the asked day on, outside the months that rule a ring out.
    #[serde(serialize_with = "crate::terms::day::maybe_day")]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<String>"),
        ts(type = "string | null")
    )]
    pub next_good: Option<NaiveDate>,
    /// Its last day.
    #[serde(serialize_with = "crate::terms::day::maybe_day")]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<String>"),
        ts(type = "string | null")
    )]
    pub next_good_to: Option<NaiveDate>,
    /// First and last day of the stretch after it.
    #[serde(serialize_with = "crate::terms::day::maybe_day")]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<String>"),
        ts(type = "string | null")
    )]
    pub after_next: Option<NaiveDate>,
    /// The last day of that one.
    #[serde(serialize_with = "crate::terms::day::maybe_day")]
    #[cfg_attr(
        feature = "schema",
        schemars(with = "Option<String>"),
        ts(type = "string | null")
    )]
    pub after_next_to: Option<NaiveDate>,
    /// What the dates rest on.
    pub basis: Option<Basis>,
    /// The dates without leaf-out or temperatures of this year's own, where those above rest on them.
    pub before: Option<Before>,
    /// This year's own temperatures, as they were read.
    pub spring: Option<SpringAnswer>,
    /// Distance to the nearest place of the climate table, km.
    pub nearest_km: Option<f64>,
    /// Height above the sea that was used, metres, where a climate was looked up.
    pub elevation_m: Option<f64>,
    /// Where a point that is out of reach of every place of the climate table may have been meant to be.
    pub meant: Option<Site>,
    /// Leaf-out or temperatures of one season were taken in, and the advised day lies in another.
    pub other_season: bool,
    /// A place was given and the climate table was not at hand.
    pub table_missing: bool,
    /// What it rests on.
    pub because: Vec<Cite>,
    /// Why it is less sure.
    pub flags: Vec<Flag>,
    /// No day reaches "best": test every time.
    pub short_season: bool,
    /// Runs of days of the year of the advised day, for the year tape.
    pub tape: Vec<TapeSpan>,
}

/// Dates of the window before better knowledge came in.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Before {
    /// Budbreak.
    #[serde(serialize_with = "crate::terms::day::day")]
    #[cfg_attr(feature = "schema", schemars(with = "String"), ts(type = "string"))]
    pub budbreak: NaiveDate,
    /// The window opens.
    #[serde(serialize_with = "crate::terms::day::day")]
    #[cfg_attr(feature = "schema", schemars(with = "String"), ts(type = "string"))]
    pub opens: NaiveDate,
    /// The window closes.
    #[serde(serialize_with = "crate::terms::day::day")]
    #[cfg_attr(feature = "schema", schemars(with = "String"), ts(type = "string"))]
    pub closes: NaiveDate,
    /// Probability of slip on the advised day.
    pub probability: Option<f64>,
}

/// A table of temperatures as it was read.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct SpringAnswer {
    /// Whether the dates of the advised day rest on it; the flags, or `other_season`, say why not.
    pub used: bool,
    /// Days read.
    pub days: usize,
    /// Lines that were not used.
    pub bad: Vec<BadLine>,
    /// Doubts about the whole.
    pub doubts: Vec<Doubt>,
}

/// A run of days on the year tape.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct TapeSpan {
    /// First day.
    #[serde(serialize_with = "crate::terms::day::day")]
    #[cfg_attr(feature = "schema", schemars(with = "String"), ts(type = "string"))]
    pub from: NaiveDate,
    /// Last day.
    #[serde(serialize_with = "crate::terms::day::day")]
    #[cfg_attr(feature = "schema", schemars(with = "String"), ts(type = "string"))]
    pub to: NaiveDate,
    /// How it is drawn.
    pub fill: Fill,
}

/// Months that law or biology names.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Rules {
    /// What they are about.
    pub topic: Topic,
    /// First month and day.
    pub from_md: (u8, u8),
    /// Last month and day.
    pub to_md: (u8, u8),
    /// Whose region it is, as the source says it.
    pub jurisdiction: &'static str,
    /// How binding it is.
    pub force: &'static str,
    /// Whether it is the cautious default since the region has no row of its own.
    pub is_default: bool,
    /// Whether it rules methods out in these months.
    pub closes: bool,
    /// Whether the asked or advised day lies in it.
    pub on_the_day: bool,
    /// Source.
    pub because: Cite,
}

/// What is known of the place beyond the question: looked up in a table that is fetched, so it is handed in.
#[derive(Clone, Debug, Default)]
pub struct Local {
    /// The climate at the point, from the stations.
    pub climate: Option<PointClimate>,
    /// Whether a point was asked for and no table of stations was at hand.
    pub table_missing: bool,
    /// Where a point out of reach of every station may have been meant to be.
    pub meant: Option<Site>,
}

impl Local {
    /// Looks up the climate of a question's place; `stations` is empty where the table is not at hand.
    #[must_use]
    pub fn of(constants: &Constants, question: &Question, stations: &[Station]) -> Self {
        let Place::Point {
            latitude,
            longitude,
            elevation,
        } = question.place
        else {
            return Self::default();
        };
        let point = site(latitude, longitude, elevation);
        Self {
            climate: climate::at(stations, point, &constants.timing).ok(),
            table_missing: stations.is_empty(),
            meant: climate::meant(stations, point, &constants.timing),
        }
    }
}

/// The season of the tree of a question.
#[must_use]
pub fn of<'c>(constants: &'c Constants, question: &Question, local: &Local) -> Season<'c> {
    let species = question.species;
    let ask = Ask {
        tree: TreeTiming {
            wood: species.wood,
            f_sum: species.budbreak_sum,
            f_is_estimate: species.budbreak.grade == Grade::Assumption,
        },
        place: place(question, local),
        observed: question.leafed_out.map(observed),
        spring: question.spring.as_ref().map_or(&[], |table| &table.days),
        dry_spell: match question.dry_spell {
            Dry::None => DrySpell::None,
            Dry::TwoWeeks => DrySpell::TwoWeeks,
            Dry::Month => DrySpell::Month,
        },
        // How long it has been dry says nothing of the seasons after.
        dry_in: Some(season_year(
            question.day.start(),
            question.place.hemisphere(),
        )),
        growth: match (question.vigour, question.condition) {
            (Vigour::Slow, _) | (_, Condition::Declining) => Growth::Slow,
            (Vigour::Fast, _) => Growth::Fast,
            (Vigour::Ordinary, _) => Growth::Ordinary,
        },
    };
    timing::season(&ask, &constants.timing)
}

fn place<'a>(question: &Question, local: &'a Local) -> Where<'a> {
    match (&local.climate, &question.place) {
        (Some(climate), Place::Point { .. }) => Where::Climate(climate),
        (_, Place::Hemisphere(hemisphere)) => Where::Hemisphere(*hemisphere),
        (
            None,
            Place::Point {
                latitude,
                longitude,
                elevation,
            },
        ) => Where::Site(site(*latitude, *longitude, *elevation)),
    }
}

fn site(lat: f64, lon: f64, elev_m: Option<f64>) -> Site {
    Site { lat, lon, elev_m }
}

fn observed(seen: LeafOut) -> Observed {
    Observed {
        stage: match seen.stage {
            Stage::BudsOpen => timing::Stage::BudsOpen,
            Stage::LeavesFull => timing::Stage::LeavesFull,
            Stage::FirstLeaf => timing::Stage::FirstLeaf,
        },
        date: seen.date,
        elsewhere: seen
            .elsewhere
            .map(|(lat, lon, elev_m)| site(lat, lon, elev_m)),
        rates: seen.rates,
    }
}
