//! The climate places and the towns of `content/places`: packed for the page,
//! and looked up here for the command line. Both go through the packed form,
//! so that page and command line work with the same places in the same order.

use anyhow::{Context, Result, bail};
use calc::timing::climate::{Site, Station};
use calc::timing::places::{climate, towns};
use std::path::Path;

/// Countries that have a town list, by ISO 3166-1 code.
pub const COUNTRIES: [&str; 10] = ["US", "CA", "GB", "IE", "DE", "AT", "CH", "FR", "NZ", "AU"];

/// The packed climate places.
///
/// # Errors
/// A table that can't be read or has a bad cell: with file and line.
pub fn pack_climate(root: &Path) -> Result<Vec<u8>> {
    let path = root.join("content/places/climate_places.csv");
    let places = rows(&path, |row| {
        let mut station = Station {
            lat: row.number("lat")? as f32,
            lon: row.number("lon")? as f32,
            elev_m: row.number("elev_m")? as f32,
            tmin: [0.0; 12],
            tmax: [0.0; 12],
        };
        for month in 0..12 {
            station.tmin[month] = row.number(&format!("tmin{:02}", month + 1))? as f32;
            station.tmax[month] = row.number(&format!("tmax{:02}", month + 1))? as f32;
        }
        Ok(climate::Place {
            name: row.text("name")?.to_owned(),
            country: row.text("country")?.to_owned(),
            state: row.text("state")?.to_owned(),
            station,
        })
    })?;
    Ok(climate::encode(&places))
}

/// The packed towns of a country.
///
/// # Errors
/// A list that can't be read or has a bad cell: with file and line.
pub fn pack_towns(root: &Path, country: &str) -> Result<Vec<u8>> {
    let path = root.join(format!("content/places/towns/{country}.csv"));
    let towns = rows(&path, |row| {
        Ok(towns::Town {
            name: row.text("name")?.to_owned(),
            region: row.text("region")?.to_owned(),
            lat: row.number("lat")?,
            lon: row.number("lon")?,
            size: towns::size(row.number("population")? as u32),
        })
    })?;
    Ok(towns::encode(&towns))
}

/// The stations, as the page has them.
///
/// # Errors
/// As [`pack_climate`].
pub fn stations(root: &Path) -> Result<Vec<Station>> {
    let bytes = pack_climate(root)?;
    let places = climate::decode(&bytes).map_err(|why| anyhow::anyhow!("{why:?}"))?;
    Ok(places.stations)
}

/// A place as typed on the command line: `42.36,-71.06`, with elevation
/// `42.36,-71.06,15 m`, or a town with its state, `Madison, WI`.
///
/// # Errors
/// What was not understood, and what to type.
pub fn find(root: &Path, typed: &str) -> Result<(Site, Option<String>)> {
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

/// One row of a table, with what a complaint needs.
struct Row<'a> {
    path: &'a Path,
    line: u64,
    header: &'a csv::StringRecord,
    cells: &'a csv::StringRecord,
}

impl Row<'_> {
    fn text(&self, column: &str) -> Result<&str> {
        let at = self.header.iter().position(|name| name == column);
        at.and_then(|at| self.cells.get(at)).with_context(|| {
            format!(
                "{}:{}: there is no column \"{column}\"",
                self.path.display(),
                self.line
            )
        })
    }

    fn number(&self, column: &str) -> Result<f64> {
        let text = self.text(column)?;
        text.parse()
            .ok()
            .filter(|value: &f64| value.is_finite())
            .with_context(|| {
                format!(
                    "{}:{}: {column}: \"{text}\" is not a number",
                    self.path.display(),
                    self.line
                )
            })
    }
}

fn rows<T>(path: &Path, make: impl Fn(&Row<'_>) -> Result<T>) -> Result<Vec<T>> {
    let mut reader = csv::Reader::from_path(path)
        .with_context(|| format!("{} could not be read", path.display()))?;
    let header = reader.headers()?.clone();
    reader
        .records()
        .map(|record| {
            let cells = record.with_context(|| path.display().to_string())?;
            let line = cells.position().map_or(0, csv::Position::line);
            make(&Row {
                path,
                line,
                header: &header,
                cells: &cells,
            })
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_point_and_a_town_are_places_and_a_common_name_is_asked_back() -> Result<()> {
        let root = crate::tree::root()?;
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
