//! The climate places: nothing is lost of a table with 0.01°, 1 m and 0.1 °C.

use super::{Broken, Reader, Writer, nearest, whole};
use crate::timing::climate::Station;
use crate::timing::constants::Constants;

const KIND: &[u8; 4] = b"CLIM";
const VERSION: u8 = 1;

/// A place of the climate table with its name.
#[derive(Debug, Clone, PartialEq)]
pub struct Place {
    /// Its name, as the station list spells it.
    pub name: String,
    /// ISO 3166-1 code of the country.
    pub country: String,
    /// State's letters (US, CA), or empty.
    pub state: String,
    /// Position, elevation and temperatures.
    pub station: Station,
}

/// The unpacked table. `names[i]` belongs to `stations[i]`.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Places {
    /// What [`crate::timing::climate::at`] takes.
    pub stations: Vec<Station>,
    /// Name and region of each.
    pub names: Vec<Named>,
}

/// Name and region of a place.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Named {
    /// Its name.
    pub name: String,
    /// `US-MA` where the state is known, `DE` where it is not.
    pub region: String,
}

/// The countries that a point may lie in, each with the distance of its nearest place, km: those with a place not much
/// farther than the nearest of all. None where that is out of reach.
#[must_use]
pub fn countries_near(places: &Places, lat: f64, lon: f64, c: &Constants) -> Vec<(String, f64)> {
    let mut points = places.stations.iter().zip(&places.names).map(|(s, named)| {
        let country = named.region.split('-').next().unwrap_or_default();
        (country, f64::from(s.lat), f64::from(s.lon))
    });
    let mut near = nearest(&mut points, lat, lon);
    let least = near
        .iter()
        .fold(f64::INFINITY, |least, (_, km)| least.min(*km));
    near.retain(|(_, km)| least <= c.max_place_distance && *km <= least + c.region_country);
    near
}

/// Packs the places, in the order country, state, latitude, so that neighbours stand together.
#[must_use]
pub fn encode(places: &[Place]) -> Vec<u8> {
    let mut sorted: Vec<&Place> = places.iter().collect();
    sorted.sort_by(|a, b| {
        (&a.country, &a.state)
            .cmp(&(&b.country, &b.state))
            .then(a.station.lat.total_cmp(&b.station.lat))
            .then(a.station.lon.total_cmp(&b.station.lon))
    });
    let mut w = Writer::new(KIND, VERSION);
    w.unsigned(sorted.len() as u32);
    let stations = || sorted.iter().map(|p| &p.station);
    w.column(stations().map(|s| whole(f64::from(s.lat), 100.0)));
    w.column(stations().map(|s| whole(f64::from(s.lon), 100.0)));
    w.column(stations().map(|s| whole(f64::from(s.elev_m), 1.0)));
    let tenths = |t: f32| whole(f64::from(t), 10.0);
    let low = |s: &Station, m: usize| tenths(s.tmin[m]);
    let range = |s: &Station, m: usize| tenths(s.tmax[m]) - tenths(s.tmin[m]);
    for of in [&low as &dyn Fn(&Station, usize) -> i32, &range] {
        for m in 0..12 {
            // The step from the month before: neighbours share their seasons.
            w.column(stations().map(|s| of(s, m) - if m == 0 { 0 } else { of(s, m - 1) }));
        }
    }
    let regions: Vec<String> = sorted
        .iter()
        .map(|p| region(&p.country, &p.state))
        .collect();
    w.lines(regions.iter().map(String::as_str));
    w.lines(sorted.iter().map(|p| p.name.as_str()));
    w.0
}

/// Unpacks the places.
///
/// # Errors
/// [`Broken`] where the bytes are not a whole file of this kind.
pub fn decode(bytes: &[u8]) -> Result<Places, Broken> {
    let mut r = Reader::new(bytes, KIND, VERSION)?;
    let n = r.count()?;
    let (lat, lon, elev) = (r.column(n)?, r.column(n)?, r.column(n)?);
    let mut table = [const { Vec::new() }; 24];
    for column in &mut table {
        *column = r.column(n)?;
    }
    let (regions, names) = (r.lines(n)?, r.lines(n)?);
    r.end()?;
    let stations = (0..n).map(|i| {
        let mut tmin = [0.0; 12];
        let mut tmax = [0.0; 12];
        let (mut low, mut range) = (0_i32, 0_i32);
        for m in 0..12 {
            low = low.saturating_add(table[m][i]);
            range = range.saturating_add(table[12 + m][i]);
            tmin[m] = low as f32 / 10.0;
            tmax[m] = low.saturating_add(range) as f32 / 10.0;
        }
        Station {
            lat: lat[i] as f32 / 100.0,
            lon: lon[i] as f32 / 100.0,
            elev_m: elev[i] as f32,
            tmin,
            tmax,
        }
    });
    let stations: Vec<Station> = stations.collect();
    if !stations.iter().all(plausible) {
        return Err(Broken::WrongValue);
    }
    let names = names
        .into_iter()
        .zip(regions)
        .map(|(name, region)| Named { name, region })
        .collect();
    Ok(Places { stations, names })
}

/// On earth, no month's maximum under its minimum, nothing beyond what air has been measured at (−90 to 60 °C).
fn plausible(s: &Station) -> bool {
    (-90.0..=90.0).contains(&s.lat)
        && (-180.0..=180.0).contains(&s.lon)
        && (0..12).all(|m| -90.0 <= s.tmin[m] && s.tmin[m] <= s.tmax[m] && s.tmax[m] <= 60.0)
}

fn region(country: &str, state: &str) -> String {
    if state.is_empty() {
        country.to_owned()
    } else {
        [country, "-", state].concat()
    }
}
