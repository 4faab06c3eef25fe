//! Visits after the work: when to come back, and what for.

use crate::terms::constants::constants;
use crate::terms::method::Method;
use crate::terms::months::{Months, YearStretch, behind, first_day, last_day, northern_year};
use crate::terms::place::Hemisphere;
use crate::terms::species::{Group, Species, SproutVigor, Suitability};
use crate::terms::words::words;
use chrono::{Datelike, Days, NaiveDate};
use serde::Serialize;

words! {
    /// What a visit is for.
    pub enum VisitKind {
        /// Two to six weeks on: scrape, re-open bridges.
        Recheck,
        /// Six to ten weeks after cutting, pulling or herbicide in the leaf season.
        FirstLook,
        /// The end of the first season.
        EndOfSeason,
        /// Sprouts and bridges in a later season.
        Sprouts,
        /// A look at a tree that does not sprout: no work waits for it.
        Look,
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
    /// Leaf season after the work, from 1; that of the work itself counts where it was done in one.
    pub season: u8,
}

impl Visit {
    /// Whether it costs minutes beyond the work itself: not the first re-check of a ring, and not a look.
    #[must_use]
    pub fn is_work(&self) -> bool {
        !matches!(self.kind, VisitKind::Recheck | VisitKind::Look)
    }
}

constants! {
    /// Constants of the visits; content/rules/constants.csv says where each comes from. Months are those of the north.
    pub struct VisitConstants {
        /// First day after the ring of the first look, the same for every tree.
        pub recheck_from_days: f64,
        /// Its last day; also when a bridge that was opened again is looked at.
        pub recheck_to_days: f64,
        /// First day after cutting of the first look, where it sprouts again in the same season.
        pub first_look_from_days: f64,
        /// Its last day.
        pub first_look_to_days: f64,
        /// Cut on these days it sprouts again in the same season.
        pub sprouts_again: YearStretch,
        /// The days of a leaf season.
        pub leaf_season: YearStretch,
        /// The end of the first season.
        pub end_of_season: Months,
        /// Month of a visit in a later season: late spring.
        pub late_spring: f64,
        /// The same: midsummer.
        pub midsummer: f64,
        /// The same: early autumn.
        pub early_autumn: f64,
        /// The month with which a season begins.
        pub season_from: f64,
        /// A ring after this day of its month belongs to the next season.
        pub turn_month: f64,
        /// That day.
        pub turn_day: f64,
        /// Months in which a bare crown is no longer that of the season past.
        pub autumn: Months,
        /// Season after the ring from which a living crown means failure.
        pub fails_from_season: f64,
    }
}

/// Whether a tree comes back from its stump or roots, so that a visit finds work.
#[must_use]
pub fn comes_back(species: &Species) -> bool {
    !matches!(species.group, Group::Conifer)
        && (species.basal != SproutVigor::None || species.suckering != SproutVigor::None)
}

/// The visits after a method on a day; none where nothing is done.
///
/// ```
/// # use calc::question::read;
/// # let reference = calc_data::whole();
/// let question = read(reference, &examples::named("do")).expect("a good question");
/// use calc::models::visits::{VisitKind, after};
/// use calc::terms::{method::Method, place::Hemisphere};
/// let (constants, day) = (&reference.constants.visits, question.day.start());
/// let visits = after(constants, question.tree.species, Hemisphere::North, Method::BarkRing, day);
/// assert_eq!((visits[0].kind, visits.len()), (VisitKind::Recheck, 9));
/// ```
#[must_use]
pub fn after(
    constants: &VisitConstants,
    species: &Species,
    hemisphere: Hemisphere,
    method: Method,
    day: NaiveDate,
) -> Vec<Visit> {
    match Followed::of(method) {
        Followed::Never => Vec::new(),
        Followed::AsARing => after_ring(constants, species, hemisphere, day),
        Followed::AsACut => after_cutting(constants, species, hemisphere, false, day),
        Followed::AsCutAgain => after_cutting(constants, species, hemisphere, true, day),
    }
}

/// How a method is followed: methods with the same of these have the same visits.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Followed {
    /// Nothing was done.
    Never,
    /// As a ring is.
    AsARing,
    /// As what is cut, pulled or treated once.
    AsACut,
    /// As what is cut again and again.
    AsCutAgain,
}

impl Followed {
    /// How a method is followed.
    #[must_use]
    pub const fn of(method: Method) -> Self {
        match method {
            Method::LeaveIt => Self::Never,
            Method::BarkRing | Method::SawRing => Self::AsARing,
            Method::Frill
            | Method::BasalBark
            | Method::CutStump
            | Method::PullOrDig
            | Method::Fell => Self::AsACut,
            Method::RepeatCutting => Self::AsCutAgain,
        }
    }
}

/// After cutting, pulling, felling or herbicide: a first look six to ten weeks on where it was done early enough in the
/// leaf season to sprout again, in any case in the next late spring, and three times in that season and the next; then
/// yearly. Cut again and again, it is cut three times in the season of the first cut too.
fn after_cutting(
    constants: &VisitConstants,
    species: &Species,
    hemisphere: Hemisphere,
    again: bool,
    day: NaiveDate,
) -> Vec<Visit> {
    let later = |days: f64| day.checked_add_days(Days::new(days as u64)).unwrap_or(day);
    let sprouts = comes_back(species);
    let within = |stretch: &YearStretch| stretch.holds(day.month(), day.day(), hemisphere);
    let this_year = northern_year(day, hemisphere);
    let mut visits = Vec::new();
    if sprouts && within(&constants.sprouts_again) {
        let to = later(constants.first_look_to_days);
        visits.push(Visit {
            kind: VisitKind::FirstLook,
            from: later(constants.first_look_from_days),
            to,
            season: 1,
        });
        let autumn = constants.early_autumn as u32;
        let from = first_day(this_year, autumn, hemisphere);
        if again && from > to {
            visits.push(Visit {
                kind: VisitKind::Sprouts,
                from,
                to: last_day(this_year, autumn, hemisphere),
                season: 1,
            });
        }
    }
    // The first late spring that begins after the work.
    let rounds = [
        constants.late_spring,
        constants.midsummer,
        constants.early_autumn,
    ]
    .map(|month| month as u32);
    let [late_spring, midsummer, _] = rounds;
    let mut year = this_year;
    while first_day(year, late_spring, hemisphere) <= day {
        year += 1;
    }
    let first = if within(&constants.leaf_season) { 2 } else { 1 };
    let mut push = |kind, by: i32, month: u32| {
        visits.push(Visit {
            kind,
            from: first_day(year + by, month, hemisphere),
            to: last_day(year + by, month, hemisphere),
            season: (first + by) as u8,
        });
    };
    if !sprouts {
        push(VisitKind::Look, 0, late_spring);
        push(VisitKind::Look, 1, late_spring);
        return visits;
    }
    for month in rounds {
        push(VisitKind::Sprouts, 0, month);
    }
    if species.suitability == Suitability::Suitable {
        push(VisitKind::Sprouts, 1, midsummer);
    } else {
        for month in rounds {
            push(VisitKind::Sprouts, 1, month);
        }
    }
    push(VisitKind::Yearly, 2, midsummer);
    visits
}

/// The visits after a ring on `day`. The season of ringing is this one if it is done before midsummer,
/// else the next; months are turned over in the south. Assumption, from the intervals of the response notes.
#[must_use]
pub fn after_ring(
    constants: &VisitConstants,
    species: &Species,
    hemisphere: Hemisphere,
    day: NaiveDate,
) -> Vec<Visit> {
    let later = |days: f64| day.checked_add_days(Days::new(days as u64)).unwrap_or(day);
    let mut visits = vec![Visit {
        kind: VisitKind::Recheck,
        from: later(constants.recheck_from_days),
        to: later(constants.recheck_to_days),
        season: 1,
    }];
    let first = first_spring(constants, day, hemisphere);
    let span = |season: i32, months: Months| {
        let year = first + season - 1;
        (
            first_day(year, months.from as u32, hemisphere),
            last_day(year, months.to as u32, hemisphere),
        )
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
    let midsummer = Months::one(constants.midsummer);
    let rounds = [
        Months::one(constants.late_spring),
        midsummer,
        Months::one(constants.early_autumn),
    ];
    // What does not sprout is looked at: nothing has to come off below the ring.
    let round_kind = if comes_back(species) {
        VisitKind::Sprouts
    } else {
        VisitKind::Look
    };
    push(VisitKind::EndOfSeason, 1, constants.end_of_season);
    for round in rounds {
        push(round_kind, 2, round);
    }
    let once = species.suitability == Suitability::Suitable;
    if once {
        push(round_kind, 3, midsummer);
    } else {
        for round in rounds {
            push(round_kind, 3, round);
        }
    }
    push(VisitKind::Yearly, 4, midsummer);
    visits
}

/// The year whose spring begins season 1: done after midsummer it is the next.
fn first_spring(constants: &VisitConstants, day: NaiveDate, hemisphere: Hemisphere) -> i32 {
    // The southern midsummer is the turn of the year.
    let month = constants.turn_month as u32 + behind(hemisphere);
    let past = (day.month(), day.day()) >= (month, constants.turn_day as u32);
    day.year() + i32::from(past)
}

/// Which growing season after the ring a day lies in, from 1: it begins in spring, and what lies before belongs to the
/// season past.
#[must_use]
pub fn season_on(
    constants: &VisitConstants,
    ringed: NaiveDate,
    day: NaiveDate,
    hemisphere: Hemisphere,
) -> u8 {
    let opens = constants.season_from as u32 + behind(hemisphere);
    let year = day.year() - i32::from(day.month() < opens);
    (year - first_spring(constants, ringed, hemisphere) + 1).clamp(1, 9) as u8
}

/// Whether what is found alive on a day tells of the end of that day's season: in the first from the visit at its end on,
/// later from midsummer on, when trees are looked at once a year. Our own assumption.
#[must_use]
pub fn tells_of_end(
    constants: &VisitConstants,
    ringed: NaiveDate,
    day: NaiveDate,
    hemisphere: Hemisphere,
) -> bool {
    let season = season_on(constants, ringed, day, hemisphere);
    let year = first_spring(constants, ringed, hemisphere) + i32::from(season) - 1;
    let month = match season {
        1 => constants.end_of_season.from,
        _ => constants.midsummer,
    };
    day >= first_day(year, month as u32, hemisphere)
}
