//! The climate places and the towns of `content/places`, packed for the page and the program.

use crate::table::{Defect, Table};
use calc::timing::climate::Station;
use calc::timing::places::{climate, towns};
use serde::Deserialize;
use std::path::Path;

/// Countries that have a town list, by ISO 3166-1 code.
const COUNTRIES: [&str; 10] = ["US", "CA", "GB", "IE", "DE", "AT", "CH", "FR", "NZ", "AU"];

/// The packed files, each with its name.
///
/// # Errors
/// A table that can't be read or has a bad cell: with file and line.
pub(crate) fn files(root: &Path) -> Result<Vec<(String, Vec<u8>)>, Defect> {
    let mut files = vec![("climate".to_owned(), pack_climate(root)?)];
    for country in COUNTRIES {
        files.push((format!("towns-{country}"), pack_towns(root, country)?));
    }
    Ok(files)
}

/// A row of `content/places/climate_places.csv`: means of each month, degC.
#[derive(Deserialize)]
struct PlaceRow {
    id: String,
    name: String,
    country: String,
    state: String,
    lat: f64,
    lon: f64,
    elev_m: f64,
    tmin01: f64,
    tmin02: f64,
    tmin03: f64,
    tmin04: f64,
    tmin05: f64,
    tmin06: f64,
    tmin07: f64,
    tmin08: f64,
    tmin09: f64,
    tmin10: f64,
    tmin11: f64,
    tmin12: f64,
    tmax01: f64,
    tmax02: f64,
    tmax03: f64,
    tmax04: f64,
    tmax05: f64,
    tmax06: f64,
    tmax07: f64,
    tmax08: f64,
    tmax09: f64,
    tmax10: f64,
    tmax11: f64,
    tmax12: f64,
}

/// A row of `content/evidence/region_places.csv`: the places that stand for a state or country.
#[derive(Deserialize)]
struct RegionRow {
    region: String,
    cold_id: String,
    middle_id: String,
    warm_id: String,
    spread_days: f64,
}

/// A row of a file in `content/places/towns`.
#[derive(Deserialize)]
struct TownRow {
    name: String,
    region: String,
    lat: f64,
    lon: f64,
    population: f64,
}

/// The packed climate places.
///
/// # Errors
/// A table that can't be read or has a bad cell: with file and line.
fn pack_climate(root: &Path) -> Result<Vec<u8>, Defect> {
    let table = Table::<PlaceRow>::read(root, "content/places/climate_places.csv")?;
    let places = table.rows.iter().map(|row| climate::ClimatePlace {
        name: row.name.clone(),
        country: row.country.clone(),
        state: row.state.clone(),
        station: Station {
            lat: row.lat as f32,
            lon: row.lon as f32,
            elev_m: row.elev_m as f32,
            tmin: [
                row.tmin01, row.tmin02, row.tmin03, row.tmin04, row.tmin05, row.tmin06, row.tmin07,
                row.tmin08, row.tmin09, row.tmin10, row.tmin11, row.tmin12,
            ]
            .map(|mean| mean as f32),
            tmax: [
                row.tmax01, row.tmax02, row.tmax03, row.tmax04, row.tmax05, row.tmax06, row.tmax07,
                row.tmax08, row.tmax09, row.tmax10, row.tmax11, row.tmax12,
            ]
            .map(|mean| mean as f32),
        },
    });
    let regions = Table::<RegionRow>::read(root, "content/evidence/region_places.csv")?;
    let mut of_regions = Vec::new();
    for row in &regions.rows {
        let mut places = [0; 3];
        for (place, id) in places
            .iter_mut()
            .zip([&row.cold_id, &row.middle_id, &row.warm_id])
        {
            let at = table.rows.iter().position(|place| place.id == *id);
            *place = at.ok_or_else(|| row.at.problem(format!("there is no climate place {id}")))?;
        }
        of_regions.push(climate::RegionPlaces {
            region: row.region.clone(),
            places,
            spread_days: row.spread_days,
        });
    }
    Ok(climate::encode(&places.collect::<Vec<_>>(), &of_regions))
}

/// The packed towns of a country.
///
/// # Errors
/// A list that can't be read or has a bad cell: with file and line.
fn pack_towns(root: &Path, country: &str) -> Result<Vec<u8>, Defect> {
    let file = format!("content/places/towns/{country}.csv");
    let table = Table::<TownRow>::read(root, &file)?;
    let towns = table.rows.iter().map(|row| towns::Town {
        name: row.name.clone(),
        region: row.region.clone(),
        lat: row.lat,
        lon: row.lon,
        size: towns::size(row.population as u32),
    });
    Ok(towns::encode(&towns.collect::<Vec<_>>()))
}
