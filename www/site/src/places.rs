//! A place as typed on the command line: a point, or a town of the lists that the program has inside, in the packed form
//! that the page fetches: both work with the same places in the same order.

use anyhow::{Result, bail};
use calc::timing::climate::Site;
use calc::timing::places::towns;
use calc_view::plan::place::{NotAPoint, point};
use calc_view::words::m;

/// A place as typed on the command line: `42.36,-71.06`, with elevation
/// `42.36,-71.06,15 m`, or a town with its state, `Madison, WI`.
///
/// # Errors
/// What was not understood, and what to type.
pub(crate) fn find(typed: &str) -> Result<(Site, Option<String>)> {
    if let Some(site) = point(typed) {
        return match site {
            Ok(site) => Ok((site, None)),
            Err(NotAPoint::Height(height)) => bail!(m::year_no_elevation(height)),
            Err(NotAPoint::OffEarth) => bail!(m::year_off_earth(typed)),
        };
    }
    let mut found = Vec::new();
    for (_, bytes) in calc_data::places::TOWNS {
        let all = towns::decode(bytes).map_err(|why| anyhow::anyhow!("{why:?}"))?;
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
        _ if found.is_empty() => bail!(m::year_no_town(typed)),
        _ => {
            let names: Vec<String> = found
                .iter()
                .take(8)
                .map(|town| format!("{}, {}", town.name, town.region))
                .collect();
            let names = names.join("; ");
            bail!(m::year_towns(m::YearTowns { typed, names }))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_point_and_a_town_are_places_and_a_common_name_is_asked_back() -> Result<()> {
        let (site, _) = find("42.36, -71.06, 50 ft")?;
        assert_eq!(
            (site.lat, site.lon, site.elev_m),
            (42.36, -71.06, Some(15.24))
        );
        let (_, region) = find("Madison, WI")?;
        assert_eq!(region.as_deref(), Some("US-WI"));
        for odd in ["Springfield", "Nosuchplaceatall", "95,10"] {
            assert!(find(odd).is_err(), "{odd}");
        }
        Ok(())
    }
}
