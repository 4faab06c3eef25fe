//! When does the bark slip? Pure functions from a tree, a place and a day to a probability, a verdict and dates.
//!
//! The one entry point is [`season()`]: it takes a [`SeasonCase`] and the table of [`SeasonConstants`], and gives a [`Season`],
//! which answers for any day: [`Season::verdict`], [`Season::probability`], [`Season::p_for_rules`],
//! [`Season::window`], [`Season::tape`], [`Season::best_day`], [`Season::next_stretches`].
//!
//! Units: degrees Celsius, degree-days over 5 °C, metres, kilometres, days. Dates in and out are
//! [`chrono::NaiveDate`]; inside, a year has 365 days and 29 February counts as the 28th ([`doy`]).
//! Every constant stands in `content/rules/timing_constants.csv` with its source and grade ([`SeasonConstants`]).
//!
//! Which knowledge wins: leaf-out seen here this year, leaf-out seen elsewhere and shifted, this spring's own
//! temperatures, the climate of the place, and where none of these tells, the hemisphere's envelope.

pub mod budbreak;
pub mod climate;
pub mod closed_months;
pub mod constants;
pub mod curve;
pub mod degree_days;
pub mod disease;
pub mod doy;
pub mod envelope;
pub mod knowledge;
mod marks;
mod open_days;
pub mod places;
pub mod season;
pub mod shift;
pub mod spring;
pub mod tape;
pub mod verdict;

pub use climate::{NoClimate, PointClimate, Site, Station};
pub use constants::SeasonConstants;
pub use doy::Doy;

pub use closed_months::{Applied, Restriction, Scope, Topic};
pub use disease::{Disease, DiseaseRegion, DiseaseStatus};
pub use knowledge::season;
pub use open_days::OpenDays;
pub use season::{Basis, Dates, Season};
pub use shift::Rates;
pub use spring::{Daily, Scale};
pub use tape::{DayRow, Span, Stretch};
pub use verdict::{DayRating, Fill, Verdict, YearsInTen};

use crate::terms::place::Hemisphere;
use crate::terms::species::WoodClass;
use crate::terms::tree::{DrySpell, Stage, Vigour};
use crate::terms::words::words;
use chrono::NaiveDate;

/// What the engine needs to know of the species.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TreeTiming {
    /// None for palms, bamboo and yucca: they have no timing at all.
    pub wood: Option<WoodClass>,
    /// Sum of degree-days (°C·d over 5 °C from 1 March, 1 September in the south) at which half the buds are open.
    pub f_sum: Option<f64>,
    /// The sum's grade is ESTIMATE: the opening's spread is wider and the answer is flagged.
    pub f_is_estimate: bool,
}

/// Where the tree stands.
#[derive(Debug, Clone, Copy)]
pub enum Where<'a> {
    /// A point with a climate, from [`climate::at`].
    Climate(&'a PointClimate),
    /// A point without a climate ([`climate::at`] refused it): its latitude gives the hemisphere, and a
    /// leaf-out seen elsewhere can still be shifted to it.
    Site(Site),
    /// Only the state or country is known: the climate of the place in its middle, and how far its towns differ.
    Region {
        /// The climate of the place in its middle.
        climate: &'a PointClimate,
        /// Spread of budbreak between its towns, days (one standard deviation).
        spread_days: f64,
    },
    /// Only the state or country is known, and there are no dates of it; its half of the world.
    RegionAlone(Hemisphere),
    /// Only the hemisphere is known.
    Hemisphere(Hemisphere),
}

/// A leaf-out that was seen.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Observed {
    /// What was seen.
    pub stage: Stage,
    /// The day on which it was seen.
    pub date: NaiveDate,
    /// Where: None means at the tree itself.
    pub elsewhere: Option<Site>,
    /// The rates that carry a date from elsewhere to the tree; [`Rates::Fitted`] is the default.
    pub rates: Rates,
}

/// The whole question to the engine: a tree, its place and what was seen this year.
#[derive(Debug, Clone, Copy)]
pub struct SeasonCase<'a> {
    /// The species' part.
    pub tree: TreeTiming,
    /// The place.
    pub place: Where<'a>,
    /// A leaf-out that was seen; it counts for its own season only (see [`season()`]).
    pub observed: Option<Observed>,
    /// This spring's own daily temperatures, in the order of their days; empty where there are none.
    /// They need a climate for the rest of the season, and serve one season, the one of their last day.
    pub spring: &'a [Daily],
    /// The dry spell, and the season that it lies in ([`doy::season_year`]); none where it lies in every season.
    pub dry_spell: DrySpell,
    /// See `dry_spell`.
    pub dry_in: Option<i32>,
    /// Slow, ordinary or fast; slow also where the tree is declining.
    pub growth: Vigour,
}

words! {
    /// Why an answer is less sure than usual, or what was set aside. The page words them.
    pub enum Flag {
        /// No climate and no usable observation: the hemisphere's envelope.
        NoPlace,
        /// Only a state or country was given, and its towns differ too much for dates: the envelope.
        RegionTooWide,
        /// Only a state or country was given, and no dates of it are at hand: the envelope.
        RegionWithoutDates,
        /// The nearest climate place is over 300 km off: the envelope.
        FarFromPlaces,
        /// The elevation was not given: that of the nearby stations was taken (100 m is about 2 days).
        ElevationAssumed,
        /// The coldest month is mild (mean over 7 °C): opening dates mean little.
        MildWinter,
        /// A conifer where no month is cold: no opening date, test in any wet, growing month.
        NoOpeningDate,
        /// Budbreak comes before mid-March (mid-September in the south).
        EarlyBudbreak,
        /// Nearer to the equator than 33°.
        LowLatitude,
        /// Beyond the polar circle.
        HighLatitude,
        /// The elevation is far from that of the stations near (feet for metres?).
        ElevationOdd,
        /// The species' sum of degree-days is our own estimate.
        EstimatedSum,
        /// Evergreen broadleaf: no date model.
        EvergreenBroadleaf,
        /// The species' wood class or its sum is not known: the envelope.
        UnknownWood,
        /// A conifer's opening comes from temperatures: a leaf-out without a climate cannot date it.
        ConiferNeedsPlace,
        /// The place never gets warm enough to open the buds: the envelope.
        TooCold,
        /// The leaf-out lies outside any spring of this hemisphere: not used.
        ObservedOutOfSeason,
        /// The leaf-out is more than 45 days away from what the climate gives: used, and to be asked again.
        ObservedFarFromClimate,
        /// The leaf-out was seen too far off to be carried here: not used.
        ObservedTooFar,
        /// The leaf-out was seen west of 100° W, or the tree stands there, and an elevation is missing: not used.
        ObservedNeedsElevation,
        /// Where the tree stands is not known, so a leaf-out from elsewhere could not be carried: not used.
        ObservedNeedsPlace,
        /// This spring's temperatures were given without a climate to complete them: not used.
        SpringNeedsPlace,
        /// A leaf-out was seen too and counts before this spring's temperatures: not used.
        SpringBehindLeafOut,
        /// This spring's temperatures hold no day of the season before leaf-out: not used.
        SpringNotUsed,
        /// This spring's temperatures can't be those of the place (wrong unit, place or columns?): not used.
        SpringImpossible,
        /// This spring's temperatures have gaps, filled from the normals.
        SpringGaps,
        /// This spring's temperatures are far from the place's normals (wrong unit, place or columns?): used, less sure.
        SpringFarFromClimate,
    }
}

impl Flag {
    /// Whether it speaks of a leaf-out that was seen.
    #[must_use]
    pub fn of_leaf_out(self) -> bool {
        self >= Self::ObservedOutOfSeason && !self.of_spring()
    }

    /// Whether it speaks of this spring's temperatures.
    #[must_use]
    pub fn of_spring(self) -> bool {
        self >= Self::SpringNeedsPlace
    }
}
