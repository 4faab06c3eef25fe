//! The climate places and the towns of `content/places`: packed for the page,
//! and looked up here for the command line. Both go through the packed form,
//! so that page and command line work with the same places in the same order.

use anyhow::{Result, bail};
use calc::timing::climate::{Site, Station};
use calc::timing::places::{climate, towns};
use calc_data::table::Table;
use serde::Deserialize;
use std::path::Path;

/// Countries that have a town list, by ISO 3166-1 code.
pub(crate) const COUNTRIES: [&str; 10] =
    ["US", "CA", "GB", "IE", "DE", "AT", "CH", "FR", "NZ", "AU"];

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
pub(crate) fn pack_climate(root: &Path) -> Result<Vec<u8>> {
    let table = Table::<PlaceRow>::read(root, "content/places/climate_places.csv")?;
    let places = table.rows.iter().map(|row| climate::Place {
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
pub(crate) fn pack_towns(root: &Path, country: &str) -> Result<Vec<u8>> {
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

/// The climate places, as the page has them.
///
/// # Errors
/// As [`pack_climate`].
pub fn climate(root: &Path) -> Result<climate::Places> {
    let bytes = pack_climate(root)?;
    climate::decode(&bytes).map_err(|why| anyhow::anyhow!("{why:?}"))
}

/// Their temperatures alone.
///
/// # Errors
/// As [`pack_climate`].
pub fn stations(root: &Path) -> Result<Vec<Station>> {
    Ok(climate(root)?.stations)
}

/// A place as typed on the command line: `42.36,-71.06`, with elevation
/// `42.36,-71.06,15 m`, or a town with its state, `Madison, WI`.
///
/// # Errors
/// What was not understood, and what to type.
pub(crate) fn find(root: &Path, typed: &str) -> Result<(Site, Option<String>)> {
    if let Some(site) = point(typed) {
        return Ok((site?, None));
    }
    let mut found = Vec::new();
    for country in COUNTRIES {
        let bytes = pack_towns(root, country)?;
        let all = towns::decode(&bytes).map_err(|why| anyhow::anyhow!("{why:?}"))?;
        found.extend(towns::find(&all, typed, 5).into_iter().cloned());
    }
    let whole = |town: &towns::Town| {
        let name = typed.split(',').next().unwrap_or(typed).trim();
        town.name.eq_ignore_ascii_case(name)
    };
    let exact: Vec<_> = found.iter().filter(|town| whole(town)).collect();
    match exact.as_slice() {
        [town] => Ok((
            Site {
                lat: town.lat,
                lon: town.lon,
                elev_m: None,
            },
            Some(town.region.clone()),
        )),
        _ if found.is_empty() => bail!(
            "no town called \"{typed}\" is known. Type latitude, longitude and elevation, as 42.36,-71.06,15 m."
        ),
        _ => {
            let names: Vec<String> = found
                .iter()
                .take(8)
                .map(|town| format!("{}, {}", town.name, town.region))
                .collect();
            bail!(
                "\"{typed}\" is not one town. Add the state, or type one of: {}.",
                names.join("; ")
            )
        }
    }
}

/// Latitude, longitude and perhaps elevation; none where it is not numbers.
fn point(typed: &str) -> Option<Result<Site>> {
    let parts: Vec<&str> = typed.split(',').map(str::trim).collect();
    let number = |at: usize| -> Option<f64> {
        parts
            .get(at)
            .and_then(|text| calc::terms::number::read_number(text).ok())
            .map(|number| number.value)
    };
    let (lat, lon) = (number(0)?, number(1)?);
    let elev_m = match parts.get(2) {
        None => None,
        Some(text) => match calc::terms::number::read_number(text) {
            Ok(number) => {
                let unit = number.unit.unwrap_or(calc::terms::number::Unit::Metre);
                unit.in_mm().map(|mm| number.value * mm / 1000.0)
            }
            Err(_) => {
                return Some(Err(anyhow::anyhow!(
                    "{text} is no elevation: type 15 m or 50 ft"
                )));
            }
        },
    };
    let site = Site { lat, lon, elev_m };
    Some(if site.is_on_earth() {
        Ok(site)
    } else {
        Err(anyhow::anyhow!(
            "{typed} is not on this earth: latitude lies between -90 and 90, longitude between -180 and 180 (west is negative)"
        ))
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_point_and_a_town_are_places_and_a_common_name_is_asked_back() -> Result<()> {
        let root = crate::project::root()?;
        let (site, _) = find(&root, "42.36, -71.06, 50 ft")?;
        assert_eq!(
            (site.lat, site.lon, site.elev_m),
            (42.36, -71.06, Some(15.24))
        );
        let (_, region) = find(&root, "Madison, WI")?;
        assert_eq!(region.as_deref(), Some("US-WI"));
        for odd in ["Springfield", "Nosuchplaceatall", "95,10"] {
            assert!(find(&root, odd).is_err(), "{odd}");
        }
        Ok(())
    }
}
