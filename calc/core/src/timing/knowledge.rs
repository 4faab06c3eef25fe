//! Which knowledge dates a season: leaf-out seen here, seen elsewhere, this spring's temperatures, the climate, or none.

use super::budbreak::{from_climate, from_observed, from_spring};
use super::climate::{PointClimate, Site};
use super::constants::Constants;
use super::curve::{Dated, conifer_opening, curve};
use super::doy::season_year;
use super::season::{Basis, Kind, Season};
use super::{Ask, Flag, Where, shift};
use crate::terms::place::Hemisphere;
use crate::terms::species::WoodClass;
use crate::terms::tree::DrySpell;

/// The season of a tree: the engine's one entry point.
///
/// A leaf-out that was seen, or this spring's temperatures, serve the one season that they were taken in; every
/// other season has the climate's dates. Without a climate, a leaf-out serves the other seasons too, with the
/// spread between two years added ([`Basis::OtherYear`], our own assumption).
/// What could not be used, and why an answer is less sure, stands in [`Season::flags`].
#[must_use]
pub fn season<'c>(ask: &Ask<'_>, c: &'c Constants) -> Season<'c> {
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

fn kind(ask: &Ask<'_>, c: &Constants, flags: &mut Flags) -> Kind {
    let Some(wood) = ask.tree.wood else {
        return Kind::NotTimed;
    };
    let (climate, site, hemisphere) = match ask.place {
        Where::Climate(p) => (Some(p), Some(p.site), p.hemisphere()),
        Where::Region {
            climate,
            spread_days,
        } if spread_days > c.region_most => (None, None, climate.hemisphere()),
        Where::Region { climate, .. } => (Some(climate), Some(climate.site), climate.hemisphere()),
        Where::Site(s) => (None, Some(s), Hemisphere::of(s.lat)),
        Where::RegionAlone(h) | Where::Hemisphere(h) => (None, None, h),
    };
    // How far the towns of a state or country differ, days.
    let spread = match ask.place {
        Where::Region { spread_days, .. } if climate.is_some() => spread_days,
        _ => 0.0,
    };
    let Some(class) = Dated::of(wood) else {
        flags.add(if wood == WoodClass::Unknown {
            Flag::UnknownWood
        } else {
            Flag::EvergreenBroadleaf
        });
        return Kind::Envelope {
            hemisphere,
            longer: wood == WoodClass::EvergreenBroadleaf,
        };
    };
    let bare = Kind::Envelope {
        hemisphere,
        longer: class == Dated::Conifer,
    };
    if let Some(s) = site {
        site_flags(s, c, flags);
    }
    if let Some(p) = climate {
        place_flags(p, c, flags);
    }
    let placeless = match ask.place {
        Where::Hemisphere(_) => Flag::NoPlace,
        Where::Region { .. } => Flag::RegionTooWide,
        Where::RegionAlone(_) => Flag::RegionWithoutDates,
        Where::Climate(_) | Where::Site(_) => Flag::FarFromPlaces,
    };
    if class == Dated::Conifer && climate.is_some_and(|p| p.coldest_month() >= c.conifer_open_mean)
    {
        flags.add(Flag::NoOpeningDate);
        return Kind::AnyGrowingMonth { hemisphere };
    }
    let conifer_opens = match (class, climate) {
        (Dated::Conifer, Some(p)) => match conifer_opening(p, c) {
            Some(day) => day,
            None => {
                flags.add(Flag::TooCold);
                return bare;
            }
        },
        (Dated::Conifer, None) => {
            flags.add(if ask.observed.is_some() {
                Flag::ConiferNeedsPlace
            } else {
                placeless
            });
            return bare;
        }
        // The other classes open from budbreak; the value is not read.
        _ => 0.0,
    };
    let ordinary_sd = match climate {
        Some(p) if p.coldest_month() > c.mild_month => c.sd_mild,
        Some(_) if ask.tree.f_is_estimate || flags.wide() => c.sd_wide,
        _ => c.sd_budbreak,
    };
    let relief = climate
        .filter(|p| p.elev_assumed)
        .map_or(0.0, |p| relief_days(p.relief_m, c));
    let ordinary_sd = together(&[ordinary_sd, relief, spread]);
    let dry_in = |year: i32| match ask.dry_in {
        Some(dry) if dry != year => DrySpell::None,
        _ => ask.dry_spell,
    };
    let make = |b: f64, sd: f64, basis: Basis, dry: DrySpell| {
        // A conifer's opening comes from the climate, so a better known budbreak does not sharpen it.
        let sd = if class == Dated::Conifer {
            ordinary_sd
        } else {
            sd
        };
        let mut curve = curve(
            class,
            b,
            conifer_opens,
            hemisphere,
            sd,
            (dry, ask.growth),
            c,
        );
        // What was seen at the tree itself does not depend on where in its state it stands.
        if basis != Basis::ObservedHere {
            curve.sd_close = together(&[curve.sd_close, c.region_closing * spread]);
        }
        curve
    };
    let normal = climate
        .zip(ask.tree.f_sum)
        .and_then(|(p, f)| from_climate(p, f, c));
    if let Some(b) = normal {
        early(b, hemisphere, c, flags);
        if ask.tree.f_is_estimate {
            flags.add(Flag::EstimatedSum);
        }
    }
    let own = match seen(ask, site, hemisphere, normal, (spread, c), flags) {
        Some(seen) => {
            if !ask.spring.is_empty() {
                flags.add(Flag::SpringBehindLeafOut);
            }
            Some(seen)
        }
        None => own_spring(ask, climate, hemisphere, ordinary_sd, c, flags),
    };
    let (b, sd, basis) = match (normal, own) {
        (Some(b), _) => (b, ordinary_sd, Basis::Climate),
        (None, Some((_, b, sd, _))) => {
            let other = libm::sqrt(sd * sd + 2.0 * c.sd_between_years * c.sd_between_years);
            (b, other, Basis::OtherYear)
        }
        (None, None) => {
            match (climate, ask.tree.f_sum) {
                (_, None) => flags.add(Flag::UnknownWood),
                (Some(_), Some(_)) => flags.add(Flag::TooCold),
                (None, Some(_)) => flags.add(placeless),
            }
            return bare;
        }
    };
    // Nothing better is known of the season of a dry spell than that it is dry.
    let dry = ask.dry_in.filter(|_| ask.dry_spell != DrySpell::None);
    let own = match (own, dry) {
        (Some(own), dry) if dry.is_none_or(|year| year == own.0) => Some(own),
        (_, dry) => dry.map(|year| (year, b, sd, basis)),
    };
    let usual = match ask.dry_in {
        Some(_) => DrySpell::None,
        None => ask.dry_spell,
    };
    Kind::Dated {
        ordinary: (make(b, sd, basis, usual), basis),
        own: own.map(|(year, b, sd, basis)| (year, make(b, sd, basis, dry_in(year)), basis)),
    }
}

/// One standard deviation of several that do not depend on each other.
fn together(deviations: &[f64]) -> f64 {
    libm::sqrt(deviations.iter().map(|sd| sd * sd).sum())
}

/// What an unknown elevation adds to the spread of budbreak, days, by the relief around.
#[must_use]
pub fn relief_days(relief_m: f64, c: &Constants) -> f64 {
    libm::fmin(c.relief_most, c.relief_per_100m * relief_m / 100.0)
}

fn site_flags(s: Site, c: &Constants, flags: &mut Flags) {
    let latitude = s.lat.abs();
    if latitude < c.low_latitude {
        flags.add(Flag::LowLatitude);
    }
    if latitude > c.high_latitude {
        flags.add(Flag::HighLatitude);
    }
}

fn place_flags(p: &PointClimate, c: &Constants, flags: &mut Flags) {
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

fn early(b: f64, hemisphere: Hemisphere, c: &Constants, flags: &mut Flags) {
    if b - half(hemisphere, c) < c.early_budbreak {
        flags.add(Flag::EarlyBudbreak);
    }
}

fn half(hemisphere: Hemisphere, c: &Constants) -> f64 {
    match hemisphere {
        Hemisphere::North => 0.0,
        Hemisphere::South => c.half_year,
    }
}

/// Season year, budbreak, its spread and its basis from a leaf-out that was seen.
fn seen(
    ask: &Ask<'_>,
    site: Option<Site>,
    hemisphere: Hemisphere,
    normal: Option<f64>,
    (spread, c): (f64, &Constants),
    flags: &mut Flags,
) -> Option<(i32, f64, f64, Basis)> {
    let observed = ask.observed?;
    let year = season_year(observed.date, hemisphere);
    let mut b = from_observed(&observed, year, c);
    if !(c.observed_first..=c.observed_last).contains(&(b - half(hemisphere, c))) {
        flags.add(Flag::ObservedOutOfSeason);
        return None;
    }
    let (sd, basis) = match (observed.elsewhere, site) {
        (None, _) => (c.sd_observed, Basis::ObservedHere),
        (Some(_), None) => {
            flags.add(Flag::ObservedNeedsPlace);
            return None;
        }
        (Some(from), Some(to)) => match shift::carry(from, to, observed.rates, c) {
            Ok(days) => {
                b += days;
                (
                    together(&[shift::spread(days, c), spread]),
                    Basis::ObservedElsewhere { shift_days: days },
                )
            }
            Err(flag) => {
                flags.add(flag);
                return None;
            }
        },
    };
    if normal.is_some_and(|n| (n - b).abs() > c.observed_far) {
        flags.add(Flag::ObservedFarFromClimate);
    }
    early(b, hemisphere, c, flags);
    Some((year, b, sd, basis))
}

/// The same from this spring's own temperatures.
fn own_spring(
    ask: &Ask<'_>,
    climate: Option<&PointClimate>,
    hemisphere: Hemisphere,
    ordinary_sd: f64,
    c: &Constants,
    flags: &mut Flags,
) -> Option<(i32, f64, f64, Basis)> {
    let last = ask.spring.last()?;
    let f_sum = ask.tree.f_sum?;
    let Some(p) = climate else {
        flags.add(Flag::SpringNeedsPlace);
        return None;
    };
    let year = season_year(last.date, hemisphere);
    let Some(s) = from_spring(p, ask.spring, year, f_sum, c) else {
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
    early(s.day, hemisphere, c, flags);
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
    Some((year, s.day, libm::sqrt(variance.max(0.0)), basis))
}
