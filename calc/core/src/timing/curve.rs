//! From budbreak to the days on which the bark opens, is at its best and closes.

use super::climate::PointClimate;
use super::constants::SeasonConstants;
use super::doy::YEAR;
use crate::terms::place::Hemisphere;
use crate::terms::species::WoodClass;
use crate::terms::tree::{DrySpell, Vigour};

/// One season's window. Fractional days counted from the start of the season's year, spreads in days.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Curve {
    /// Half the buds open.
    pub budbreak: f64,
    /// The bark lets go in half the years.
    pub opens: f64,
    /// First of the best days.
    pub best_from: f64,
    /// Last of the best days.
    pub best_to: f64,
    /// The bark has bound in half the years.
    pub closes: f64,
    /// Last day on which a trial is worth while.
    pub last_possible: f64,
    /// Standard deviation of the opening.
    pub sd_open: f64,
    /// Standard deviation of the closing.
    pub sd_close: f64,
}

/// The wood classes that have a date model.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Dated {
    /// Ring-porous.
    Ring,
    /// Diffuse-porous.
    Diffuse,
    /// Conifer.
    Conifer,
}

impl Dated {
    /// The date model of a wood class, where it has one.
    #[must_use]
    pub fn of(wood: WoodClass) -> Option<Self> {
        match wood {
            WoodClass::Ring => Some(Self::Ring),
            WoodClass::Diffuse => Some(Self::Diffuse),
            WoodClass::Conifer => Some(Self::Conifer),
            WoodClass::EvergreenBroadleaf | WoodClass::Unknown => None,
        }
    }
}

/// The day from which a conifer's bark lets go: the normal daily mean reaches 8.5 °C, searched from 15 January
/// (19 July in the south). None where it never does.
#[must_use]
pub fn conifer_opening(climate: &PointClimate, c: &SeasonConstants) -> Option<f64> {
    let begin = match climate.hemisphere() {
        Hemisphere::North => c.conifer_search_north as i32,
        Hemisphere::South => c.conifer_search_south as i32,
    };
    let day = (begin..begin + YEAR).find(|&d| climate.mean(d) >= c.conifer_open_mean)?;
    let (m0, m1) = (climate.mean(day - 1), climate.mean(day));
    // Where the day before was colder, the level was crossed somewhere between the two.
    let part = if day > begin && m1 > m0 {
        (c.conifer_open_mean - m0) / (m1 - m0)
    } else {
        1.0
    };
    Some(f64::from(day - 1) + part)
}

/// The window of one season.
///
/// `budbreak` as a fractional day from the start of the season's year; `conifer_opens` from [`conifer_opening`],
/// read for conifers only; `sd_budbreak` in days.
#[must_use]
pub fn curve(
    class: Dated,
    budbreak: f64,
    conifer_opens: f64,
    hemisphere: Hemisphere,
    sd_budbreak: f64,
    (dry, growth): (DrySpell, Vigour),
    c: &SeasonConstants,
) -> Curve {
    let half = match hemisphere {
        Hemisphere::North => 0.0,
        Hemisphere::South => c.half_year,
    };
    // Not `clamp`: with bounds that the compiler does not know it brings the printing of floats, 9 kB in the browser.
    let x = (budbreak - half - c.x_anchor).max(c.x_min).min(c.x_max);
    let (opens, best_from, to, to_slope, end, end_slope, sd_own, sd_close) = match class {
        Dated::Ring => (
            budbreak + c.ring_opens,
            budbreak + c.ring_best_from,
            c.ring_best_to,
            c.ring_best_to_slope,
            c.ring_closes,
            c.ring_closes_slope,
            c.ring_sd_open,
            c.ring_sd_close,
        ),
        Dated::Diffuse => (
            budbreak + c.diffuse_opens,
            budbreak + c.diffuse_best_from,
            c.diffuse_best_to,
            c.diffuse_best_to_slope,
            c.diffuse_closes,
            c.diffuse_closes_slope,
            c.diffuse_sd_open,
            c.diffuse_sd_close,
        ),
        Dated::Conifer => (
            conifer_opens,
            conifer_opens + c.conifer_best_after,
            c.conifer_best_to,
            c.conifer_best_to_slope,
            c.conifer_closes,
            c.conifer_closes_slope,
            c.conifer_sd_open,
            c.conifer_sd_close,
        ),
    };
    let steps = match dry {
        DrySpell::None => 0.0,
        DrySpell::TwoWeeks => 1.0,
        DrySpell::Month => 2.0,
    };
    let earlier = c.dry_step * steps
        + match growth {
            Vigour::Slow => c.slow_earlier,
            Vigour::Ordinary => 0.0,
            Vigour::Fast => -c.fast_later,
        };
    let best_to = (half + to + to_slope * x - earlier).max(best_from + c.best_at_least);
    let closes = (half + end + end_slope * x - earlier).max(best_to + c.closing_at_least);
    Curve {
        budbreak,
        opens,
        best_from,
        best_to,
        closes,
        last_possible: closes + c.last_after,
        sd_open: libm::sqrt(sd_budbreak * sd_budbreak + sd_own * sd_own),
        sd_close,
    }
}
