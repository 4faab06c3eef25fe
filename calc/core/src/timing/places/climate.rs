//! The climate places: nothing is lost of a table with 0.01°, 1 m and 0.1 °C.

use super::{Broken, Reader, Writer, nearest, whole};
use crate::timing::climate::Station;
use crate::timing::constants::SeasonConstants;

const KIND: &[u8; 4] = b"CLIM";
const VERSION: u8 = 2;

/// A place of the climate table with its name.
#[derive(Debug, Clone, PartialEq)]
pub struct ClimatePlace {
    /// Its name, as the station list spells it.
    pub name: String,
    /// ISO 3166-1 code of the country.
    pub country: String,
    /// State's letters (US, CA), or empty.
    pub state: String,
    /// Position, elevation and temperatures.
    pub station: Station,
}

/// A state or country without a town: the places of the table that stand for it. From region_places.csv.
#[derive(Debug, Clone, PartialEq)]
pub struct RegionPlaces {
    /// ISO 3166 code.
    pub region: String,
    /// Which places: a cold one, one in the middle, a warm one.
    pub places: [usize; 3],
    /// Spread of budbreak between its towns, days (one standard deviation).
    pub spread_days: f64,
}

/// The unpacked table. `names[i]` belongs to `stations[i]`.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Places {
    /// What [`crate::timing::climate::at`] takes.
    pub stations: Vec<Station>,
    /// Name and region of each.
    pub names: Vec<NamedPlace>,
    /// States and countries by the places that stand for them.
    pub regions: Vec<RegionPlaces>,
}

impl Places {
    /// The places that stand for a state or country; for its country, where it has none of its own.
    #[must_use]
    pub fn region(&self, code: &str) -> Option<&RegionPlaces> {
        let find = |code: &str| self.regions.iter().find(|region| region.region == code);
        find(code).or_else(|| find(code.split('-').next().unwrap_or(code)))
    }
}

/// Name and region of a place.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct NamedPlace {
    /// Its name.
    pub name: String,
    /// `US-MA` where the state is known, `DE` where it is not.
    pub region: String,
}

/// The countries that a point may lie in, each with the distance of its nearest place, km: those with a place not much
/// farther than the nearest of all. None where that is out of reach.
#[must_use]
pub fn countries_near(
    places: &Places,
    lat: f64,
    lon: f64,
    c: &SeasonConstants,
) -> Vec<(String, f64)> {
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

/// Packs the places, in the order of country and state; in these each is followed by the one most like it, since what
/// is written are differences. The places of `regions` are counted in the order of `places`, and read back in the
/// order of the file.
#[must_use]
pub fn encode(places: &[ClimatePlace], regions: &[RegionPlaces]) -> Vec<u8> {
    let mut sorted: Vec<(&ClimatePlace, [i32; 27])> =
        places.iter().map(|p| (p, row(&p.station))).collect();
    sorted.sort_by(|(a, _), (b, _)| {
        (&a.country, &a.state)
            .cmp(&(&b.country, &b.state))
            .then(a.station.lat.total_cmp(&b.station.lat))
            .then(a.station.lon.total_cmp(&b.station.lon))
    });
    for group in
        sorted.chunk_by_mut(|(a, _), (b, _)| (&a.country, &a.state) == (&b.country, &b.state))
    {
        for next in 1..group.len() {
            let unlike = |at: &usize| -> i32 {
                let both = group[next - 1].1.iter().zip(&group[*at].1);
                both.skip(3).map(|(a, b)| (a - b).abs()).sum()
            };
            let like = (next..group.len()).min_by_key(unlike).unwrap_or(next);
            group[next..=like].rotate_right(1);
        }
    }
    let mut w = Writer::new(KIND, VERSION);
    w.unsigned(sorted.len() as u32);
    for column in 0..27 {
        w.column(sorted.iter().map(|(_, row)| row[column]));
    }
    let codes: Vec<String> = sorted
        .iter()
        .map(|(p, _)| region(&p.country, &p.state))
        .collect();
    w.lines(codes.iter().map(String::as_str));
    w.lines(sorted.iter().map(|(p, _)| p.name.as_str()));
    let place = |at: usize| {
        let found = sorted
            .iter()
            .position(|(p, _)| core::ptr::eq(*p, &places[at]));
        found.map_or(0, |at| at as i32)
    };
    w.unsigned(regions.len() as u32);
    for column in 0..3 {
        w.column(regions.iter().map(|region| place(region.places[column])));
    }
    w.column(regions.iter().map(|region| whole(region.spread_days, 10.0)));
    w.lines(regions.iter().map(|region| region.region.as_str()));
    w.0
}

/// The numbers of a place as they are written: latitude, longitude, elevation, then the minimum of each month and its
/// range to the maximum, both as steps from the month before: neighbours share their seasons.
fn row(s: &Station) -> [i32; 27] {
    let tenths = |t: f32| whole(f64::from(t), 10.0);
    let mut row = [0; 27];
    row[0] = whole(f64::from(s.lat), 100.0);
    row[1] = whole(f64::from(s.lon), 100.0);
    row[2] = whole(f64::from(s.elev_m), 1.0);
    let (mut low_before, mut range_before) = (0, 0);
    for m in 0..12 {
        let low = tenths(s.tmin[m]);
        let range = tenths(s.tmax[m]) - low;
        row[3 + m] = low - low_before;
        row[15 + m] = range - range_before;
        (low_before, range_before) = (low, range);
    }
    row
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
    let (regions_of, names) = (r.lines(n)?, r.lines(n)?);
    let regions = regions(&mut r, n)?;
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
        .zip(regions_of)
        .map(|(name, region)| NamedPlace { name, region })
        .collect();
    Ok(Places {
        stations,
        names,
        regions,
    })
}

/// States and countries, each with places that the table of `n` has, and a spread of days.
fn regions(r: &mut Reader<'_>, n: usize) -> Result<Vec<RegionPlaces>, Broken> {
    let count = r.count()?;
    let places = [r.column(count)?, r.column(count)?, r.column(count)?];
    let (spread, codes) = (r.column(count)?, r.lines(count)?);
    let mut regions = Vec::new();
    for (at, region) in codes.into_iter().enumerate() {
        let mut of = [0; 3];
        for (place, column) in of.iter_mut().zip(&places) {
            let known = usize::try_from(column[at]).ok().filter(|place| *place < n);
            *place = known.ok_or(Broken::WrongValue)?;
        }
        if !(0..=400).contains(&spread[at]) {
            return Err(Broken::WrongValue);
        }
        regions.push(RegionPlaces {
            region,
            places: of,
            spread_days: f64::from(spread[at]) / 10.0,
        });
    }
    Ok(regions)
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
