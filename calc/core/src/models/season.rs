//! From a tree, its place and what was seen there to a season: which knowledge the timing engine is given.

use crate::terms::cite::{Cite, Grade};
use crate::terms::place::Place;
use crate::terms::tree::{Condition, DrySpell, Tree, Vigour};
use crate::timing;
use crate::timing::closed_months::Topic;
use crate::timing::disease::DiseaseStatus;
use crate::timing::doy::season_year;
use crate::timing::places::climate::Places;
use crate::timing::spring::{BadLine, Doubt};
use crate::timing::{
    Basis, Daily, Fill, Flag, Observed, PointClimate, Season, SeasonCase, SeasonConstants, Site,
    TreeTiming, Verdict, Where, climate,
};
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
    /// Where only a state or country is known: its places, and when the window opens in a warm and in a cold one.
    pub region: Option<RegionDates>,
    /// This year's own temperatures, as they were read.
    pub spring: Option<SpringAnswer>,
    /// Distance to the nearest place of the climate table, km.
    pub nearest_km: Option<f64>,
    /// Height above the sea that was used, metres, where a climate was looked up.
    #[serde(serialize_with = "crate::terms::lengths::maybe_m")]
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

/// The places that stand for a state or country. The dates of the answer are those of the place in its middle.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct RegionDates {
    /// The place in its middle.
    pub middle: String,
    /// A warm place.
    pub warm: String,
    /// The window opens there.
    #[serde(serialize_with = "crate::terms::day::day")]
    #[cfg_attr(feature = "schema", schemars(with = "String"), ts(type = "string"))]
    pub warm_opens: NaiveDate,
    /// A cold place.
    pub cold: String,
    /// The window opens there.
    #[serde(serialize_with = "crate::terms::day::day")]
    #[cfg_attr(feature = "schema", schemars(with = "String"), ts(type = "string"))]
    pub cold_opens: NaiveDate,
    /// Spread of budbreak between its towns, days (one standard deviation).
    pub spread_days: f64,
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

/// What is asked of a season: the tree, where it stands, and what was seen there.
#[derive(Clone, Copy, Debug)]
pub struct SeasonFacts<'a> {
    /// The tree.
    pub tree: &'a Tree,
    /// Where it stands.
    pub place: &'a Place,
    /// Whether a state or country was said.
    pub region_said: bool,
    /// Leaf-out seen this year.
    pub leafed_out: Option<Observed>,
    /// This spring's own daily temperatures; empty where there are none.
    pub spring: &'a [Daily],
    /// How long it has been dry.
    pub dry_spell: DrySpell,
    /// The day that judging starts from.
    pub start: NaiveDate,
}

impl SeasonFacts<'_> {
    /// The season that the dry spell lies in: how long it has been dry says nothing of the seasons after.
    fn dry_in(&self, start: NaiveDate) -> i32 {
        season_year(start, self.place.hemisphere())
    }

    /// Whether judging from another day on leaves the season as it is.
    #[must_use]
    pub fn same_from(&self, start: NaiveDate) -> bool {
        self.dry_spell == DrySpell::None || self.dry_in(start) == self.dry_in(self.start)
    }
}

/// What is known of the place beyond the question: looked up in a table that is fetched, so it is handed in.
#[derive(Clone, Debug, Default)]
pub struct Local {
    /// The climate at the point, from the stations; of a state or country, that of the place in its middle.
    pub climate: Option<PointClimate>,
    /// Where only a state or country is known: what stands for it.
    pub region: Option<RegionClimate>,
    /// Whether a point, a state or a country was asked for and no table of stations was at hand.
    pub table_missing: bool,
    /// Where a point out of reach of every station may have been meant to be.
    pub meant: Option<Site>,
}

/// A state or country without a town, by three places of the climate table.
#[derive(Clone, Debug)]
pub struct RegionClimate {
    /// Spread of budbreak between its towns, days (one standard deviation).
    pub spread_days: f64,
    /// Name of the place in its middle.
    pub middle: String,
    /// Name and climate of a cold place.
    pub cold: (String, PointClimate),
    /// Name and climate of a warm place.
    pub warm: (String, PointClimate),
}

impl Local {
    /// Looks up the climate of a place, or of the state or country where no point is known; `places` are empty where the
    /// table is not at hand.
    #[must_use]
    pub fn of(
        constants: &SeasonConstants,
        place: &Place,
        region: Option<&str>,
        places: &Places,
    ) -> Self {
        let stations = &places.stations;
        let Some(point) = site(place) else {
            return region.map_or_else(Self::default, |code| {
                Self::of_region(constants, code, places)
            });
        };
        Self {
            climate: climate::at(stations, point, constants).ok(),
            table_missing: stations.is_empty(),
            meant: climate::meant(stations, point, constants),
            region: None,
        }
    }

    /// The same by the code of the state or country alone.
    fn of_region(constants: &SeasonConstants, code: &str, places: &Places) -> Self {
        let mut local = Self {
            table_missing: places.stations.is_empty(),
            ..Self::default()
        };
        let Some(row) = places.region(code) else {
            return local;
        };
        let climate = |at: usize| climate::of_place(&places.stations, at, constants);
        let name = |at: usize| places.names.get(at).map(|named| named.name.clone());
        let [cold, middle, warm] = row.places;
        local.region = (|| {
            Some(RegionClimate {
                spread_days: row.spread_days,
                middle: name(middle)?,
                cold: (name(cold)?, climate(cold)?),
                warm: (name(warm)?, climate(warm)?),
            })
        })();
        local.climate = climate(middle).filter(|_| local.region.is_some());
        local
    }
}

/// The season of a tree.
///
/// ```
/// # use calc::question::read;
/// # let reference = calc_data::whole();
/// let question = read(reference, &examples::named("do")).expect("a good question");
/// use calc::models::season::{Local, of};
/// let season = of(&reference.constants.timing, &question.season(), &Local::default());
/// let dates = season.window(question.day.start()).expect("leaf-out was seen");
/// assert_eq!(dates.opens.to_string(), "2027-04-23");
/// ```
#[must_use]
pub fn of<'c>(
    constants: &'c SeasonConstants,
    facts: &SeasonFacts<'_>,
    local: &Local,
) -> Season<'c> {
    timing::season(&ask(facts, place(facts, local)), constants)
}

/// The same at another place, without anything seen this year.
#[must_use]
pub fn ordinary_at<'c>(
    constants: &'c SeasonConstants,
    facts: &SeasonFacts<'_>,
    climate: &PointClimate,
) -> Season<'c> {
    let mut ask = ask(facts, Where::Climate(climate));
    ask.observed = None;
    ask.spring = &[];
    timing::season(&ask, constants)
}

fn place<'a>(facts: &SeasonFacts<'_>, local: &'a Local) -> Where<'a> {
    let hemisphere = facts.place.hemisphere();
    match (&local.climate, site(facts.place), &local.region) {
        (Some(climate), Some(_), _) => Where::Climate(climate),
        (None, Some(point), _) => Where::Site(point),
        (Some(climate), None, Some(region)) => Where::Region {
            climate,
            spread_days: region.spread_days,
        },
        (_, None, _) if facts.region_said => Where::RegionAlone(hemisphere),
        (_, None, _) => Where::Hemisphere(hemisphere),
    }
}

fn ask<'a>(facts: &SeasonFacts<'a>, place: Where<'a>) -> SeasonCase<'a> {
    let species = facts.tree.species;
    SeasonCase {
        tree: TreeTiming {
            wood: species.wood,
            f_sum: species.budbreak_sum,
            f_is_estimate: species.budbreak.grade == Grade::Assumption,
        },
        place,
        observed: facts.leafed_out,
        spring: facts.spring,
        dry_spell: facts.dry_spell,
        dry_in: Some(facts.dry_in(facts.start)),
        growth: match facts.tree.condition {
            Condition::Declining => Vigour::Slow,
            _ => facts.tree.vigour,
        },
    }
}

/// The point of a place; none where only the hemisphere is known.
fn site(place: &Place) -> Option<Site> {
    match *place {
        Place::Point {
            latitude,
            longitude,
            elevation,
        } => Some(Site {
            lat: latitude,
            lon: longitude,
            elev_m: elevation,
        }),
        Place::Hemisphere(_) => None,
    }
}

/// A disease or pest where the tree stands.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct DiseaseLine {
    /// Which.
    pub topic: Topic,
    /// Whether it is there.
    pub status: DiseaseStatus,
    /// Who decides there; empty where no state or province was said, or the country doesn't have it.
    pub authority: &'static str,
}
