//! The climate at a point, from the four nearest places of the table.

use super::constants::SeasonConstants;
use super::doy::YEAR;
use crate::terms::place::Hemisphere;
use crate::terms::quantity::M_PER_FT;
use crate::terms::small::sine::{cos, sin};
use serde::{Deserialize, Serialize};

/// Radius of the earth in km (mean radius R1 of the GRS 80 ellipsoid, 6371.0088 km).
pub const EARTH_KM: f64 = 6371.0088;

/// How many of the nearest places are weighed.
const NEIGHBOURS: usize = 4;
/// How many of the nearest places tell how much relief there is.
const AROUND: usize = 8;

/// The middle of each month as a day of the 365-day year.
pub const MID_MONTH: [f64; 12] = [
    15.5, 45.0, 74.5, 105.0, 135.5, 166.0, 196.5, 227.5, 258.0, 288.5, 319.0, 349.5,
];

/// A point on the map.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Site {
    /// Degrees, north positive.
    pub lat: f64,
    /// Degrees, east positive.
    pub lon: f64,
    /// Metres above the sea; None where it is not known.
    pub elev_m: Option<f64>,
}

/// A place of the climate table: long-term monthly means of the daily minimum and maximum.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Station {
    /// Degrees, north positive.
    pub lat: f32,
    /// Degrees, east positive.
    pub lon: f32,
    /// Metres above the sea.
    pub elev_m: f32,
    /// °C, January to December.
    pub tmin: [f32; 12],
    /// °C, January to December.
    pub tmax: [f32; 12],
}

/// The climate at a point, warming since the normals already added.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PointClimate {
    /// The point; its elevation is filled in where it was not given.
    pub site: Site,
    /// The elevation was not given and is the weighted mean of the nearby places.
    pub elev_assumed: bool,
    /// Weighted mean of the elevations of the nearby places, metres.
    pub stations_m: f64,
    /// Standard deviation of the elevations of the eight nearest places, metres: how far off a point may lie whose
    /// elevation is not known.
    pub relief_m: f64,
    /// Distance to the nearest place, km.
    pub nearest_km: f64,
    /// Which station of the slice is the nearest.
    pub nearest: usize,
    /// Monthly means of the daily minimum, °C.
    pub tmin: [f64; 12],
    /// Monthly means of the daily maximum, °C.
    pub tmax: [f64; 12],
}

/// Why a point has no climate.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum NoClimate {
    /// The table holds no place.
    NoPlaces,
    /// Latitude beyond ±90°, longitude beyond ±180°, or an elevation outside −450 to 9000 m, or no number.
    BadPoint,
    /// The nearest place is farther than 300 km.
    TooFar {
        /// Distance to it, km.
        nearest_km: f64,
        /// Which station it is.
        nearest: usize,
    },
}

impl Site {
    /// True where latitude, longitude and elevation can be on this earth
    /// (lowest dry land about −430 m, highest 8849 m).
    #[must_use]
    pub fn is_on_earth(&self) -> bool {
        (-90.0..=90.0).contains(&self.lat)
            && (-180.0..=180.0).contains(&self.lon)
            && self.elev_m.is_none_or(|e| (-450.0..=9000.0).contains(&e))
    }
}

/// Great-circle distance in km between two points in degrees (haversine).
#[must_use]
pub fn distance_km(lat1: f64, lon1: f64, lat2: f64, lon2: f64) -> f64 {
    let half = |a: f64, b: f64| sin((b - a).to_radians() / 2.0);
    let (u, v) = (half(lat1, lat2), half(lon1, lon2));
    let h = u * u + cos(lat1.to_radians()) * cos(lat2.to_radians()) * v * v;
    2.0 * EARTH_KM * libm::asin(libm::sqrt(h.clamp(0.0, 1.0)))
}

/// The climate at a point: the four nearest places weighed by 1/(d + 5 km)², each shifted to the point's elevation
/// by −5.5 °C a km, plus the warming since the normals. Without an elevation the weighted mean of the places' own
/// elevations stands in, marked.
///
/// # Errors
/// [`NoClimate`] says why there is none.
pub fn at(
    stations: &[Station],
    site: Site,
    c: &SeasonConstants,
) -> Result<PointClimate, NoClimate> {
    if !site.is_on_earth() {
        return Err(NoClimate::BadPoint);
    }
    let mut near = [(f64::INFINITY, 0_usize); AROUND];
    for (i, s) in stations.iter().enumerate() {
        // No place is nearer than its parallel is: most are passed by without their distance.
        let parallel_km = EARTH_KM * (f64::from(s.lat) - site.lat).abs().to_radians();
        if parallel_km > near[AROUND - 1].0 {
            continue;
        }
        let d = distance_km(site.lat, site.lon, f64::from(s.lat), f64::from(s.lon));
        // Kept in order by insertion; a place as far as an earlier one stands behind it.
        let at = near.iter().position(|n| d < n.0).unwrap_or(AROUND);
        if at < AROUND {
            near.copy_within(at..AROUND - 1, at + 1);
            near[at] = (d, i);
        }
    }
    let around = &near[..stations.len().min(AROUND)];
    let near = &around[..around.len().min(NEIGHBOURS)];
    let &(nearest_km, nearest) = near.first().ok_or(NoClimate::NoPlaces)?;
    if nearest_km > c.max_place_distance {
        return Err(NoClimate::TooFar {
            nearest_km,
            nearest,
        });
    }
    let weight = |d: f64| 1.0 / ((d + c.weight_offset) * (d + c.weight_offset));
    let total: f64 = near.iter().map(|n| weight(n.0)).sum();
    let mean = |of: &dyn Fn(&Station) -> f64| -> f64 {
        near.iter()
            .map(|&(d, i)| weight(d) * of(&stations[i]))
            .sum::<f64>()
            / total
    };
    let stations_m = mean(&|s| f64::from(s.elev_m));
    let elev = site.elev_m.unwrap_or(stations_m);
    let month = |of: &dyn Fn(&Station) -> f32| {
        mean(&|s| f64::from(of(s)) + c.lapse * (elev - f64::from(s.elev_m)) / 1000.0) + c.delta_t
    };
    let mut tmin = [0.0; 12];
    let mut tmax = [0.0; 12];
    for m in 0..12 {
        tmin[m] = month(&|s| s.tmin[m]);
        tmax[m] = month(&|s| s.tmax[m]);
    }
    Ok(PointClimate {
        site: Site {
            elev_m: Some(elev),
            ..site
        },
        elev_assumed: site.elev_m.is_none(),
        stations_m,
        relief_m: relief_m(stations, around),
        nearest_km,
        nearest,
        tmin,
        tmax,
    })
}

/// The population's standard deviation of the elevations of some places, metres.
fn relief_m(stations: &[Station], around: &[(f64, usize)]) -> f64 {
    let count = around.len() as f64;
    let heights = || around.iter().map(|&(_, i)| f64::from(stations[i].elev_m));
    let mean = heights().sum::<f64>() / count;
    libm::sqrt(heights().map(|m| (m - mean) * (m - mean)).sum::<f64>() / count)
}

/// The climate of one place of the table, at its own elevation; none where the table is shorter.
#[must_use]
pub fn of_place(stations: &[Station], index: usize, c: &SeasonConstants) -> Option<PointClimate> {
    let station = stations.get(index)?;
    let elev_m = f64::from(station.elev_m);
    let month = |t: f32| f64::from(t) + c.delta_t;
    Some(PointClimate {
        site: Site {
            lat: f64::from(station.lat),
            lon: f64::from(station.lon),
            elev_m: Some(elev_m),
        },
        elev_assumed: false,
        stations_m: elev_m,
        relief_m: 0.0,
        nearest_km: 0.0,
        nearest: index,
        tmin: station.tmin.map(month),
        tmax: station.tmax.map(month),
    })
}

/// Where a point that is out of reach of every place may have been meant to be: with the other sign of its longitude,
/// of its latitude, of both, or with the two swapped. The first of these that is in reach; none where the point itself is.
#[must_use]
pub fn meant(stations: &[Station], site: Site, c: &SeasonConstants) -> Option<Site> {
    let reached = |site: Site| at(stations, site, c).is_ok();
    if !site.is_on_earth() || reached(site) {
        return None;
    }
    let (lat, lon) = (site.lat, site.lon);
    [(lat, -lon), (-lat, lon), (-lat, -lon), (lon, lat)]
        .into_iter()
        .map(|(lat, lon)| Site { lat, lon, ..site })
        .find(|other| reached(*other))
}

impl PointClimate {
    /// The hemisphere of the point.
    #[must_use]
    pub fn hemisphere(&self) -> Hemisphere {
        Hemisphere::of(self.site.lat)
    }

    /// Whether the elevation is to be asked again: far from that of the nearby places, or fairly far while feet taken
    /// for metres, or metres for feet, would be near.
    #[must_use]
    pub fn elevation_odd(&self, c: &SeasonConstants) -> bool {
        let m = self.site.elev_m.unwrap_or(self.stations_m);
        let off = |m: f64| libm::fabs(m - self.stations_m);
        let near = off(m * M_PER_FT).min(off(m / M_PER_FT)) < off(m) / 3.0;
        off(m) > c.elevation_far || off(m) > c.elevation_odd && near
    }

    /// Normal minimum and maximum of a day (any whole day count; it is wrapped into the year), °C.
    #[must_use]
    pub fn normal(&self, day: i32) -> (f64, f64) {
        (interpolate(&self.tmin, day), interpolate(&self.tmax, day))
    }

    /// Normal daily mean, °C.
    #[must_use]
    pub fn mean(&self, day: i32) -> f64 {
        let (tn, tx) = self.normal(day);
        (tn + tx) / 2.0
    }

    /// Mean of the coldest month, °C.
    #[must_use]
    pub fn coldest_month(&self) -> f64 {
        (0..12)
            .map(|m| (self.tmin[m] + self.tmax[m]) / 2.0)
            .fold(f64::INFINITY, f64::min)
    }
}

/// Periodic linear interpolation between the middles of the months.
fn interpolate(months: &[f64; 12], day: i32) -> f64 {
    let year = f64::from(YEAR);
    let day = f64::from((day - 1).rem_euclid(YEAR) + 1);
    let after = MID_MONTH.iter().position(|&m| m > day).unwrap_or(12);
    let before = (after + 11) % 12;
    let start = MID_MONTH[before] - if after == 0 { year } else { 0.0 };
    let end = MID_MONTH[after % 12] + if after == 12 { year } else { 0.0 };
    let share = (day - start) / (end - start);
    months[before] + share * (months[after % 12] - months[before])
}
