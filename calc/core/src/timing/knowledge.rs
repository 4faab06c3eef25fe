//! Which knowledge dates a season: leaf-out seen here, seen elsewhere, this spring's temperatures, the climate, or none.

use super::budbreak::{from_climate, from_observed, from_spring};
use super::climate::{PointClimate, Site};
use super::constants::SeasonConstants;
use super::curve::{Dated, conifer_opening, curve};
use super::doy::season_year;
use super::season::{Basis, Knowledge, Season};
use super::{Flag, SeasonCase, Where, shift};
use crate::terms::place::Hemisphere;
use crate::terms::species::WoodClass;
use crate::terms::tree::DrySpell;

/// The season of a tree: the engine's one entry point.
///
/// A leaf-out that was seen, or this spring's temperatures, serve the one season that they were taken in; every
/// other season has the climate's dates. Without a climate, a leaf-out serves the other seasons too, with the
/// spread between two years added ([`Basis::OtherYear`], our own assumption).
/// What could not be used, and why an answer is less sure, stands in [`Season::flags`].
///
/// ```
/// use calc::{terms::place::Hemisphere, terms::species::WoodClass, terms::tree::{DrySpell, Vigour}};
/// use calc::timing::{SeasonCase, TreeTiming, Verdict, Where, season};
/// let tree = TreeTiming { wood: Some(WoodClass::Diffuse), f_sum: Some(200.0), f_is_estimate: false };
/// let ask = SeasonCase {
///     tree,
///     place: Where::Hemisphere(Hemisphere::North),
///     observed: None,
///     spring: &[],
///     dry_spell: DrySpell::None,
///     dry_in: None,
///     growth: Vigour::Ordinary,
/// };
/// let season = season(&ask, &calc_data::whole().constants.timing);
/// // No date without a place: the months of the hemisphere.
/// let good = season.days(2027).filter(|day| day.verdict == Verdict::TestFirst).count();
/// assert_eq!(good, 153);
/// ```
#[must_use]
pub fn season<'c>(ask: &SeasonCase<'_>, c: &'c SeasonConstants) -> Season<'c> {
    let mut flags = Flags(Vec::new());
    let kind = kind(ask, c, &mut flags);
    Season::new(c, kind, flags.0)
}

/// Flags in order, each once.
struct Flags(Vec<Flag>);

impl Flags {
    fn add(&mut self, flag: Flag) {
        if let Err(at) = self.0.binary_search(&flag) {
            self.0.insert(at, flag);
        }
    }

    /// Whether the latitude makes the opening less sure.
    fn wide(&self) -> bool {
        self.0.contains(&Flag::LowLatitude) || self.0.contains(&Flag::HighLatitude)
    }
}

fn kind(ask: &SeasonCase<'_>, c: &SeasonConstants, flags: &mut Flags) -> Knowledge {
    let Some(wood) = ask.tree.wood else {
        return Knowledge::NotTimed;
    };
    let place = Place::of(ask.place, c);
    let hemisphere = place.hemisphere;
    let Some(class) = Dated::of(wood) else {
        return without_model(wood, hemisphere, flags);
    };
    place.flag(c, flags);
    let is_cold = |p: &PointClimate| p.coldest_month() < c.conifer_open_mean;
    if class == Dated::Conifer && place.climate.is_some_and(|p| !is_cold(p)) {
        flags.add(Flag::NoOpeningDate);
        return Knowledge::AnyGrowingMonth { hemisphere };
    }
    dated(ask, class, &place, c, flags).unwrap_or(Knowledge::Envelope {
        hemisphere,
        longer: class == Dated::Conifer,
    })
}

/// Wood without a date model: the hemisphere's months.
fn without_model(wood: WoodClass, hemisphere: Hemisphere, flags: &mut Flags) -> Knowledge {
    flags.add(if wood == WoodClass::Unknown {
        Flag::UnknownWood
    } else {
        Flag::EvergreenBroadleaf
    });
    Knowledge::Envelope {
        hemisphere,
        longer: wood == WoodClass::EvergreenBroadleaf,
    }
}

/// Dates, where what is known gives them; else none, and a flag that says why.
fn dated(
    ask: &SeasonCase<'_>,
    class: Dated,
    place: &Place<'_>,
    c: &SeasonConstants,
    flags: &mut Flags,
) -> Option<Knowledge> {
    let conifer_opens = match class {
        Dated::Conifer => opening_of_conifer(ask, place, c, flags)?,
        // The other classes open from budbreak; the value is not read.
        Dated::Ring | Dated::Diffuse => 0.0,
    };
    let ordinary_sd = ordinary_sd(ask, place, c, flags);
    let normal = from_normals(ask, place, c, flags);
    let own = of_this_season(ask, place, (normal, ordinary_sd), c, flags);
    let usual = of_any_year(ask, place, (normal, ordinary_sd), own, c, flags)?;
    let make = |known: Budbreak, dry: DrySpell| {
        // A conifer's opening comes from the climate, so a better known budbreak does not sharpen it.
        let sd = match class {
            Dated::Conifer => ordinary_sd,
            Dated::Ring | Dated::Diffuse => known.sd,
        };
        let (hemisphere, growth) = (place.hemisphere, (dry, ask.growth));
        let mut curve = curve(class, known.day, conifer_opens, hemisphere, sd, growth, c);
        // What was seen at the tree itself does not depend on where in its state it stands.
        if known.basis != Basis::ObservedHere {
            curve.sd_close = together(&[curve.sd_close, c.region_closing * place.spread]);
        }
        (curve, known.basis)
    };
    let dry_ever = match ask.dry_in {
        Some(_) => DrySpell::None,
        None => ask.dry_spell,
    };
    Some(Knowledge::Dated {
        ordinary: make(usual, dry_ever),
        own: or_dry(ask, own, usual).map(|(year, known)| {
            let dry = match ask.dry_in {
                Some(dry) if dry != year => DrySpell::None,
                _ => ask.dry_spell,
            };
            let (curve, basis) = make(known, dry);
            (year, curve, basis)
        }),
    })
}

/// When half the buds are open, as one kind of knowledge has it.
#[derive(Clone, Copy)]
struct Budbreak {
    /// Days from the start of the season's year.
    day: f64,
    /// One standard deviation, days.
    sd: f64,
    basis: Basis,
}

/// What is known of the place.
struct Place<'a> {
    climate: Option<&'a PointClimate>,
    site: Option<Site>,
    hemisphere: Hemisphere,
    /// How far the towns of a state or country differ, days.
    spread: f64,
    /// Why there are no dates where the place gives none.
    placeless: Flag,
}

impl<'a> Place<'a> {
    fn of(place: Where<'a>, c: &SeasonConstants) -> Self {
        let nowhere = |hemisphere, placeless| Self {
            climate: None,
            site: None,
            hemisphere,
            spread: 0.0,
            placeless,
        };
        let point = |climate: &'a PointClimate, spread, placeless| Self {
            climate: Some(climate),
            site: Some(climate.site),
            hemisphere: climate.hemisphere(),
            spread,
            placeless,
        };
        match place {
            Where::Climate(climate) => point(climate, 0.0, Flag::FarFromPlaces),
            Where::Region {
                climate,
                spread_days,
            } if spread_days > c.region_most => nowhere(climate.hemisphere(), Flag::RegionTooWide),
            Where::Region {
                climate,
                spread_days,
            } => point(climate, spread_days, Flag::RegionTooWide),
            Where::Site(site) => Self {
                site: Some(site),
                ..nowhere(Hemisphere::of(site.lat), Flag::FarFromPlaces)
            },
            Where::RegionAlone(hemisphere) => nowhere(hemisphere, Flag::RegionWithoutDates),
            Where::Hemisphere(hemisphere) => nowhere(hemisphere, Flag::NoPlace),
        }
    }

    /// Why dates of the place are less sure.
    fn flag(&self, c: &SeasonConstants, flags: &mut Flags) {
        if let Some(site) = self.site {
            site_flags(site, c, flags);
        }
        if let Some(climate) = self.climate {
            place_flags(climate, c, flags);
        }
    }
}

/// The day from which a conifer's bark lets go: the climate alone tells it.
fn opening_of_conifer(
    ask: &SeasonCase<'_>,
    place: &Place<'_>,
    c: &SeasonConstants,
    flags: &mut Flags,
) -> Option<f64> {
    let Some(climate) = place.climate else {
        flags.add(if ask.observed.is_some() {
            Flag::ConiferNeedsPlace
        } else {
            place.placeless
        });
        return None;
    };
    let opens = conifer_opening(climate, c);
    if opens.is_none() {
        flags.add(Flag::TooCold);
    }
    opens
}

/// The spread of budbreak between years and within the place, days, where nothing of this year is known.
fn ordinary_sd(ask: &SeasonCase<'_>, place: &Place<'_>, c: &SeasonConstants, flags: &Flags) -> f64 {
    let sd = match place.climate {
        Some(p) if p.coldest_month() > c.mild_month => c.sd_mild,
        Some(_) if ask.tree.f_is_estimate || flags.wide() => c.sd_wide,
        _ => c.sd_budbreak,
    };
    let unknown_elevation = place.climate.filter(|p| p.elev_assumed);
    let relief = unknown_elevation.map_or(0.0, |p| relief_days(p.relief_m, c));
    together(&[sd, relief, place.spread])
}

/// Budbreak by the climate's normals.
fn from_normals(
    ask: &SeasonCase<'_>,
    place: &Place<'_>,
    c: &SeasonConstants,
    flags: &mut Flags,
) -> Option<f64> {
    let day = from_climate(place.climate?, ask.tree.f_sum?, c)?;
    early(day, place.hemisphere, c, flags);
    if ask.tree.f_is_estimate {
        flags.add(Flag::EstimatedSum);
    }
    Some(day)
}

/// What is known of one season alone, with its year: leaf-out that was seen goes before this spring's temperatures.
fn of_this_season(
    ask: &SeasonCase<'_>,
    place: &Place<'_>,
    (normal, ordinary_sd): (Option<f64>, f64),
    c: &SeasonConstants,
    flags: &mut Flags,
) -> Option<(i32, Budbreak)> {
    let seen = seen(ask, place, normal, c, flags);
    if seen.is_none() {
        return own_spring(ask, place, ordinary_sd, c, flags);
    }
    if !ask.spring.is_empty() {
        flags.add(Flag::SpringBehindLeafOut);
    }
    seen
}

/// What holds for every other season: the normals; without them the leaf-out of one year, less sure by two years' spreads.
fn of_any_year(
    ask: &SeasonCase<'_>,
    place: &Place<'_>,
    (normal, ordinary_sd): (Option<f64>, f64),
    own: Option<(i32, Budbreak)>,
    c: &SeasonConstants,
    flags: &mut Flags,
) -> Option<Budbreak> {
    match (normal, own) {
        (Some(day), _) => Some(Budbreak {
            day,
            sd: ordinary_sd,
            basis: Basis::Climate,
        }),
        (None, Some((_, Budbreak { day, sd, .. }))) => Some(Budbreak {
            day,
            sd: libm::sqrt(sd * sd + 2.0 * c.sd_between_years * c.sd_between_years),
            basis: Basis::OtherYear,
        }),
        (None, None) => {
            flags.add(match (place.climate, ask.tree.f_sum) {
                (_, None) => Flag::UnknownWood,
                (Some(_), Some(_)) => Flag::TooCold,
                (None, Some(_)) => place.placeless,
            });
            None
        }
    }
}

/// The season with dates of its own: that of a dry spell has them too. Nothing better is known of it than that it is
/// dry.
fn or_dry(
    ask: &SeasonCase<'_>,
    own: Option<(i32, Budbreak)>,
    usual: Budbreak,
) -> Option<(i32, Budbreak)> {
    let dry = ask.dry_in.filter(|_| ask.dry_spell != DrySpell::None);
    match (own, dry) {
        (Some(own), dry) if dry.is_none_or(|year| year == own.0) => Some(own),
        (_, dry) => dry.map(|year| (year, usual)),
    }
}

/// One standard deviation of several that do not depend on each other.
fn together(deviations: &[f64]) -> f64 {
    libm::sqrt(deviations.iter().map(|sd| sd * sd).sum())
}

/// What an unknown elevation adds to the spread of budbreak, days, by the relief around.
#[must_use]
pub fn relief_days(relief_m: f64, c: &SeasonConstants) -> f64 {
    libm::fmin(c.relief_most, c.relief_per_100m * relief_m / 100.0)
}

fn site_flags(s: Site, c: &SeasonConstants, flags: &mut Flags) {
    let latitude = s.lat.abs();
    if latitude < c.low_latitude {
        flags.add(Flag::LowLatitude);
    }
    if latitude > c.high_latitude {
        flags.add(Flag::HighLatitude);
    }
}

fn place_flags(p: &PointClimate, c: &SeasonConstants, flags: &mut Flags) {
    if p.elev_assumed {
        flags.add(Flag::ElevationAssumed);
    }
    if p.elevation_odd(c) {
        flags.add(Flag::ElevationOdd);
    }
    if p.coldest_month() > c.mild_month {
        flags.add(Flag::MildWinter);
    }
}

fn early(day: f64, hemisphere: Hemisphere, c: &SeasonConstants, flags: &mut Flags) {
    if day - half(hemisphere, c) < c.early_budbreak {
        flags.add(Flag::EarlyBudbreak);
    }
}

fn half(hemisphere: Hemisphere, c: &SeasonConstants) -> f64 {
    match hemisphere {
        Hemisphere::North => 0.0,
        Hemisphere::South => c.half_year,
    }
}

/// Season year and budbreak from a leaf-out that was seen.
fn seen(
    ask: &SeasonCase<'_>,
    place: &Place<'_>,
    normal: Option<f64>,
    c: &SeasonConstants,
    flags: &mut Flags,
) -> Option<(i32, Budbreak)> {
    let hemisphere = place.hemisphere;
    let observed = ask.observed?;
    let year = season_year(observed.date, hemisphere);
    let mut day = from_observed(&observed, year, c);
    if !(c.observed_first..=c.observed_last).contains(&(day - half(hemisphere, c))) {
        flags.add(Flag::ObservedOutOfSeason);
        return None;
    }
    let (sd, basis) = match (observed.elsewhere, place.site) {
        (None, _) => (c.sd_observed, Basis::ObservedHere),
        (Some(_), None) => {
            flags.add(Flag::ObservedNeedsPlace);
            return None;
        }
        (Some(from), Some(to)) => match shift::carry(from, to, observed.rates, c) {
            Ok(days) => {
                day += days;
                (
                    together(&[shift::spread(days, c), place.spread]),
                    Basis::ObservedElsewhere { shift_days: days },
                )
            }
            Err(flag) => {
                flags.add(flag);
                return None;
            }
        },
    };
    if normal.is_some_and(|normal| (normal - day).abs() > c.observed_far) {
        flags.add(Flag::ObservedFarFromClimate);
    }
    early(day, hemisphere, c, flags);
    Some((year, Budbreak { day, sd, basis }))
}

/// The same from this spring's own temperatures.
fn own_spring(
    ask: &SeasonCase<'_>,
    place: &Place<'_>,
    ordinary_sd: f64,
    c: &SeasonConstants,
    flags: &mut Flags,
) -> Option<(i32, Budbreak)> {
    let last = ask.spring.last()?;
    let f_sum = ask.tree.f_sum?;
    let Some(climate) = place.climate else {
        flags.add(Flag::SpringNeedsPlace);
        return None;
    };
    let year = season_year(last.date, place.hemisphere);
    let Some(s) = from_spring(climate, ask.spring, year, f_sum, c) else {
        flags.add(Flag::SpringNotUsed);
        return None;
    };
    if s.warmer > c.spring_too_warm || s.warmer < c.spring_too_cold {
        flags.add(Flag::SpringImpossible);
        return None;
    }
    if s.gap_days > 0 {
        flags.add(Flag::SpringGaps);
    }
    early(s.day, place.hemisphere, c, flags);
    // What varies between years is known for the part of the sum that was measured (our own assumption).
    let mut variance =
        ordinary_sd * ordinary_sd - s.share * c.sd_between_years * c.sd_between_years;
    if s.warmer.abs() > c.spring_far {
        flags.add(Flag::SpringFarFromClimate);
        variance = ordinary_sd.max(c.sd_wide) * ordinary_sd.max(c.sd_wide);
    }
    let basis = Basis::OwnSpring {
        own_days: s.own_days,
        gap_days: s.gap_days,
        share: s.share,
    };
    let known = Budbreak {
        day: s.day,
        sd: libm::sqrt(variance.max(0.0)),
        basis,
    };
    Some((year, known))
}
