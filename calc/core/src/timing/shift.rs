//! A leaf-out seen elsewhere, carried to the tree: later toward the pole, eastward and uphill.

use super::Flag;
use super::climate::{Site, distance_km};
use super::constants::SeasonConstants;
use crate::terms::place::Hemisphere;
use crate::terms::words::words;

words! {
    /// Whose rates carry the date.
    #[derive(Default)]
    pub enum Rates {
        /// Fitted to budbursts of eastern North America: 3.49 d/° of latitude, 0.51 d/° of longitude, 1.80 d/100 m.
        #[default]
        Fitted,
        /// Hopkins' bioclimatic law of 1918: 4 d/°, 4 d/5°, 4 d/400 ft.
        Hopkins,
    }
}

/// Days to add to a spring date seen at `from` to carry it to `to`, by the bare rates. A missing elevation adds nothing.
#[must_use]
pub fn days(from: Site, to: Site, rates: Rates, c: &SeasonConstants) -> f64 {
    let (lat, lon, up) = match rates {
        Rates::Fitted => (c.fitted_per_lat, c.fitted_per_lon, c.fitted_per_100m),
        Rates::Hopkins => (c.hopkins_per_lat, c.hopkins_per_lon, c.hopkins_per_100m),
    };
    let climb = match (from.elev_m, to.elev_m) {
        (Some(a), Some(b)) => (b - a) / 100.0,
        _ => 0.0,
    };
    // Toward the pole is later in both hemispheres.
    lat * (to.lat.abs() - from.lat.abs()) + lon * (to.lon - from.lon) + up * climb
}

/// The same where the rates may be used at all.
///
/// # Errors
/// Over 800 km or across the equator: [`Flag::ObservedTooFar`]; west of 100° W without both elevations:
/// [`Flag::ObservedNeedsElevation`].
pub fn carry(from: Site, to: Site, rates: Rates, c: &SeasonConstants) -> Result<f64, Flag> {
    if !from.is_on_earth()
        || Hemisphere::of(from.lat) != Hemisphere::of(to.lat)
        || distance_km(from.lat, from.lon, to.lat, to.lon) > c.shift_max_distance
    {
        return Err(Flag::ObservedTooFar);
    }
    let west = from.lon < c.shift_west || to.lon < c.shift_west;
    if west && (from.elev_m.is_none() || to.elev_m.is_none()) {
        return Err(Flag::ObservedNeedsElevation);
    }
    Ok(days(from, to, rates, c))
}

/// Standard deviation of a budbreak that was seen elsewhere and carried by `shift` days.
#[must_use]
pub fn spread(shift: f64, c: &SeasonConstants) -> f64 {
    let carried = c.sd_shift + c.sd_shift_share * shift.abs();
    libm::sqrt(c.sd_observed * c.sd_observed + carried * carried)
}
