//! The season of one tree at one place, and what it says of any day.

use super::budbreak::{from_climate, from_observed, from_spring, season_year};
use super::climate::PointClimate;
use super::constants::Constants;
use super::doy::{Hemisphere, YEAR, absolute, nearest, nearest_date};
use super::verdict::{Side, Verdict, YearsInTen, probability};
use super::window::{Curve, Dated, conifer_opening, curve};
use super::{Ask, Flag, Where, WoodClass, envelope, shift};
use chrono::NaiveDate;
use serde::Serialize;

/// What the dates of a season rest on.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(rename_all = "snake_case", tag = "kind")]
pub enum Basis {
    /// Leaf-out seen at the tree this season.
    ObservedHere,
    /// Leaf-out seen elsewhere this season and carried here.
    ObservedElsewhere {
        /// Days added.
        shift_days: f64,
    },
    /// This spring's own temperatures, the rest from normals.
    OwnSpring {
        /// Days with their own temperatures up to budbreak.
        own_days: u32,
        /// Days between them filled from normals.
        gap_days: u32,
        /// Share of the sum that they give, 0–1.
        share: f64,
    },
    /// The place's normals.
    Climate,
    /// A leaf-out of another year, where nothing better is known: two years' spreads wider.
    OtherYear,
}

/// The dates of one season.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Dates {
    /// The year in which the season began (in the south the year of its spring).
    pub year: i32,
    /// What they rest on.
    pub basis: Basis,
    /// Half the buds open.
    pub budbreak: NaiveDate,
    /// The bark lets go.
    pub opens: NaiveDate,
    /// First of the best days.
    pub best_from: NaiveDate,
    /// Last of the best days.
    pub best_to: NaiveDate,
    /// The bark binds.
    pub closes: NaiveDate,
    /// Last day on which a trial is worth while.
    pub last_possible: NaiveDate,
    /// Standard deviation of the opening, days.
    pub sd_open: f64,
    /// Standard deviation of the closing, days.
    pub sd_close: f64,
}

/// Which kind of knowledge there is.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Kind {
    /// Palms, bamboo, yucca.
    NotTimed,
    /// The hemisphere's months; one month longer for conifers and evergreens.
    Envelope {
        hemisphere: Hemisphere,
        longer: bool,
    },
    /// A conifer without a winter: test in any wet, growing month.
    AnyGrowingMonth { hemisphere: Hemisphere },
    /// A date model: every year's curve, and one year's own.
    Dated {
        ordinary: (Curve, Basis),
        own: Option<(i32, Curve, Basis)>,
    },
}

/// What is known of the bark of one tree, for every day. Made by [`season`].
#[derive(Debug, Clone)]
pub struct Season<'c> {
    pub(super) c: &'c Constants,
    kind: Kind,
    flags: Vec<Flag>,
}

/// The season of a tree: the engine's one entry point.
///
/// A leaf-out that was seen, or this spring's temperatures, serve the one season that they were taken in; every
/// other season has the climate's dates. Without a climate, a leaf-out serves the other seasons too, with the
/// spread between two years added ([`Basis::OtherYear`], our own assumption).
/// What could not be used, and why an answer is less sure, stands in [`Season::flags`].
#[must_use]
pub fn season<'c>(ask: &Ask<'_>, c: &'c Constants) -> Season<'c> {
    let mut flags = Vec::new();
    let kind = kind(ask, c, &mut flags);
    flags.sort_unstable();
    flags.dedup();
    Season { c, kind, flags }
}

fn kind(ask: &Ask<'_>, c: &Constants, flags: &mut Vec<Flag>) -> Kind {
    let Some(wood) = ask.tree.wood else {
        return Kind::NotTimed;
    };
    let (climate, site, hemisphere) = match ask.place {
        Where::Climate(p) => (Some(p), Some(p.site), p.hemisphere()),
        Where::Site(s) => (None, Some(s), Hemisphere::of(s.lat)),
        Where::Hemisphere(h) => (None, None, h),
    };
    let Some(class) = Dated::of(wood) else {
        flags.push(if wood == WoodClass::Unknown {
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
    if let Some(p) = climate {
        place_flags(p, c, flags);
    }
    let placeless = if site.is_none() {
        Flag::NoPlace
    } else {
        Flag::FarFromPlaces
    };
    if class == Dated::Conifer && climate.is_some_and(|p| p.coldest_month() >= c.conifer_open_mean)
    {
        flags.push(Flag::NoOpeningDate);
        return Kind::AnyGrowingMonth { hemisphere };
    }
    let conifer_opens = match (class, climate) {
        (Dated::Conifer, Some(p)) => match conifer_opening(p, c) {
            Some(day) => day,
            None => {
                flags.push(Flag::TooCold);
                return bare;
            }
        },
        (Dated::Conifer, None) => {
            flags.push(if ask.observed.is_some() {
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
        Some(p) if ask.tree.f_is_estimate || p.site.lat.abs() < c.low_latitude => c.sd_wide,
        _ => c.sd_budbreak,
    };
    let make = |b: f64, sd: f64| {
        // A conifer's opening comes from the climate, so a better known budbreak does not sharpen it.
        let sd = if class == Dated::Conifer {
            ordinary_sd
        } else {
            sd
        };
        curve(
            class,
            b,
            conifer_opens,
            hemisphere,
            sd,
            (ask.dry_spell, ask.growth),
            c,
        )
    };
    let normal = climate
        .zip(ask.tree.f_sum)
        .and_then(|(p, f)| from_climate(p, f, c));
    if let Some(b) = normal {
        early(b, hemisphere, c, flags);
        if ask.tree.f_is_estimate {
            flags.push(Flag::EstimatedSum);
        }
    }
    let own = seen(ask, site, hemisphere, normal, c, flags)
        .or_else(|| own_spring(ask, climate, hemisphere, ordinary_sd, c, flags));
    let ordinary = match (normal, own) {
        (Some(b), _) => (make(b, ordinary_sd), Basis::Climate),
        (None, Some((_, b, sd, _))) => {
            let other = libm::sqrt(sd * sd + 2.0 * c.sd_between_years * c.sd_between_years);
            (make(b, other), Basis::OtherYear)
        }
        (None, None) => {
            match (climate, ask.tree.f_sum) {
                (_, None) => flags.push(Flag::UnknownWood),
                (Some(_), Some(_)) => flags.push(Flag::TooCold),
                (None, Some(_)) => flags.push(placeless),
            }
            return bare;
        }
    };
    Kind::Dated {
        ordinary,
        own: own.map(|(year, b, sd, basis)| (year, make(b, sd), basis)),
    }
}

fn place_flags(p: &PointClimate, c: &Constants, flags: &mut Vec<Flag>) {
    if p.elev_assumed {
        flags.push(Flag::ElevationAssumed);
    }
    if p.coldest_month() > c.mild_month {
        flags.push(Flag::MildWinter);
    }
    if p.site.lat.abs() < c.low_latitude {
        flags.push(Flag::LowLatitude);
    }
}

fn early(b: f64, hemisphere: Hemisphere, c: &Constants, flags: &mut Vec<Flag>) {
    if b - half(hemisphere, c) < c.early_budbreak {
        flags.push(Flag::EarlyBudbreak);
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
    site: Option<super::Site>,
    hemisphere: Hemisphere,
    normal: Option<f64>,
    c: &Constants,
    flags: &mut Vec<Flag>,
) -> Option<(i32, f64, f64, Basis)> {
    let observed = ask.observed?;
    let year = season_year(observed.date, hemisphere);
    let mut b = from_observed(&observed, year, c);
    if !(c.observed_first..=c.observed_last).contains(&(b - half(hemisphere, c))) {
        flags.push(Flag::ObservedOutOfSeason);
        return None;
    }
    let (sd, basis) = match (observed.elsewhere, site) {
        (None, _) => (c.sd_observed, Basis::ObservedHere),
        (Some(_), None) => {
            flags.push(Flag::ObservedNeedsPlace);
            return None;
        }
        (Some(from), Some(to)) => match shift::carry(from, to, observed.rates, c) {
            Ok(days) => {
                b += days;
                (
                    shift::spread(days, c),
                    Basis::ObservedElsewhere { shift_days: days },
                )
            }
            Err(flag) => {
                flags.push(flag);
                return None;
            }
        },
    };
    if normal.is_some_and(|n| (n - b).abs() > c.observed_far) {
        flags.push(Flag::ObservedFarFromClimate);
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
    flags: &mut Vec<Flag>,
) -> Option<(i32, f64, f64, Basis)> {
    let last = ask.spring.last()?;
    let f_sum = ask.tree.f_sum?;
    let Some(p) = climate else {
        flags.push(Flag::SpringNeedsPlace);
        return None;
    };
    let year = season_year(last.date, hemisphere);
    let Some(s) = from_spring(p, ask.spring, year, f_sum, c) else {
        flags.push(Flag::SpringNotUsed);
        return None;
    };
    if s.gap_days > 0 {
        flags.push(Flag::SpringGaps);
    }
    if s.warmer.abs() > c.spring_far {
        flags.push(Flag::SpringFarFromClimate);
    }
    early(s.day, hemisphere, c, flags);
    // What varies between years is known for the part of the sum that was measured (our own assumption).
    let variance = ordinary_sd * ordinary_sd - s.share * c.sd_between_years * c.sd_between_years;
    let basis = Basis::OwnSpring {
        own_days: s.own_days,
        gap_days: s.gap_days,
        share: s.share,
    };
    Some((year, s.day, libm::sqrt(variance.max(0.0)), basis))
}

impl Season<'_> {
    /// Why the answer is less sure than usual, and what was not used; sorted, each once.
    #[must_use]
    pub fn flags(&self) -> &[Flag] {
        &self.flags
    }

    /// False for palms, bamboo and yucca: nothing is said of their bark.
    #[must_use]
    pub fn is_timed(&self) -> bool {
        self.kind != Kind::NotTimed
    }

    /// True where there are dates and probabilities; false for the envelope, for "any growing month" and for palms.
    #[must_use]
    pub fn is_dated(&self) -> bool {
        matches!(self.kind, Kind::Dated { .. })
    }

    /// True for a conifer without a winter: test in any wet, growing month.
    #[must_use]
    pub fn is_any_growing_month(&self) -> bool {
        matches!(self.kind, Kind::AnyGrowingMonth { .. })
    }

    /// The curve of the season that began in `year`.
    fn curve(&self, year: i32) -> Option<(Curve, Basis)> {
        match self.kind {
            Kind::Dated {
                own: Some((y, curve, basis)),
                ..
            } if y == year => Some((curve, basis)),
            Kind::Dated { ordinary, .. } => Some(ordinary),
            _ => None,
        }
    }

    /// The season that a day belongs to, with its curve and the day counted from the start of the season's year.
    /// One season ends half-way between its closing and the next opening.
    fn of(&self, day: NaiveDate) -> Option<(i32, Curve, f64)> {
        let t = absolute(day);
        let first = (t - 1).div_euclid(YEAR) - 2;
        for year in first.. {
            let (this, _) = self.curve(year)?;
            let (next, _) = self.curve(year + 1)?;
            let d = f64::from(t - YEAR * year);
            if d < (this.closes + next.opens + f64::from(YEAR)) / 2.0 {
                return Some((year, this, d));
            }
        }
        None
    }

    /// The chance that the bark slips on a day, 0–1; None where there is no date model.
    #[must_use]
    pub fn probability(&self, day: NaiveDate) -> Option<f64> {
        let (_, k, d) = self.of(day)?;
        Some(probability(d, k.opens, k.sd_open, k.closes, k.sd_close))
    }

    /// The same as people read it.
    #[must_use]
    pub fn years_in_ten(&self, day: NaiveDate) -> Option<YearsInTen> {
        self.probability(day).map(|p| YearsInTen::of(p, self.c))
    }

    /// A probability for the rules and the minutes, which always need one: the model's; without one 0.6 inside the
    /// envelope and 0 outside; 0 for palms.
    #[must_use]
    pub fn p_for_rules(&self, day: NaiveDate) -> f64 {
        match self.kind {
            Kind::NotTimed => 0.0,
            Kind::AnyGrowingMonth { .. } => self.c.p_envelope,
            Kind::Envelope { hemisphere, longer } => {
                if envelope::inside(day, hemisphere, longer) {
                    self.c.p_envelope
                } else {
                    0.0
                }
            }
            Kind::Dated { .. } => self.probability(day).unwrap_or(0.0),
        }
    }

    /// The one word for a day. `Unknown` for palms.
    #[must_use]
    pub fn verdict(&self, day: NaiveDate) -> Verdict {
        match self.kind {
            Kind::NotTimed => Verdict::Unknown,
            Kind::AnyGrowingMonth { .. } => Verdict::TestFirst,
            Kind::Envelope { hemisphere, longer } => envelope::verdict(day, hemisphere, longer),
            Kind::Dated { .. } => self.of(day).map_or(Verdict::Unknown, |(_, k, d)| {
                let p = probability(d, k.opens, k.sd_open, k.closes, k.sd_close);
                let middle = (k.best_from + k.best_to) / 2.0;
                let side = if d < middle {
                    Side::Opening
                } else {
                    Side::Closing
                };
                // To the day, as the dates are shown.
                let day = nearest(d);
                let between = nearest(k.best_from) <= day && day <= nearest(k.best_to);
                Verdict::of(p, side, between, self.c)
            }),
        }
    }

    /// True on a day that belongs to the best stretch: verdict `best`, or the envelope's best months.
    #[must_use]
    pub fn is_best(&self, day: NaiveDate) -> bool {
        match self.kind {
            Kind::NotTimed => false,
            Kind::Envelope { hemisphere, .. } | Kind::AnyGrowingMonth { hemisphere } => {
                envelope::best(day, hemisphere)
            }
            Kind::Dated { .. } => self.verdict(day) == Verdict::Best,
        }
    }

    /// True on a day on which a ring may be tried: p ≥ 0.4, or inside the envelope.
    #[must_use]
    pub fn is_open(&self, day: NaiveDate) -> bool {
        self.is_timed() && self.p_for_rules(day) >= self.c.p_test
    }

    /// The dates of the season that a day belongs to. After the closing this is still the past season, until
    /// half-way to the next; [`Season::dates_of`] gives any year's.
    #[must_use]
    pub fn window(&self, day: NaiveDate) -> Option<Dates> {
        self.dates_of(self.of(day)?.0)
    }

    /// The dates of the season that began in a year (in the south the year of its spring).
    #[must_use]
    pub fn dates_of(&self, year: i32) -> Option<Dates> {
        let (k, basis) = self.curve(year)?;
        let on = |d: f64| nearest_date(f64::from(YEAR * year) + d);
        Some(Dates {
            year,
            basis,
            budbreak: on(k.budbreak),
            opens: on(k.opens),
            best_from: on(k.best_from),
            best_to: on(k.best_to),
            closes: on(k.closes),
            last_possible: on(k.last_possible),
            sd_open: k.sd_open,
            sd_close: k.sd_close,
        })
    }

    /// The unrounded curve of a season, for the working and for checks: days from the start of `year`.
    #[must_use]
    pub fn curve_of(&self, year: i32) -> Option<Curve> {
        self.curve(year).map(|(k, _)| k)
    }

    /// True where no day of the day's season reaches 0.8: "short season here, test every time".
    #[must_use]
    pub fn is_short(&self, day: NaiveDate) -> bool {
        self.of(day).is_some_and(|(_, k, _)| {
            (nearest(k.opens)..=nearest(k.closes)).all(|d| {
                probability(f64::from(d), k.opens, k.sd_open, k.closes, k.sd_close) < self.c.p_best
            })
        })
    }

    /// The months in which the envelope, or "any growing month", places its stretches.
    pub(super) fn envelope_hemisphere(&self) -> Option<(Hemisphere, bool)> {
        match self.kind {
            Kind::Envelope { hemisphere, longer } => Some((hemisphere, longer)),
            Kind::AnyGrowingMonth { hemisphere } => Some((hemisphere, true)),
            _ => None,
        }
    }
}
