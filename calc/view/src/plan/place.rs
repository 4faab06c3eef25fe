//! A place that is typed as a point: degrees, and perhaps the height above the sea.

use calc::terms::number::{Unit, read_number};
use calc::timing::climate::Site;

/// Why numbers are no point.
#[derive(Clone, Debug, PartialEq)]
pub enum NotAPoint {
    /// The height, as typed, is none.
    Height(String),
    /// No such place is on earth.
    OffEarth,
}

/// Latitude, longitude and perhaps height, as `42.36,-71.06,15 m`; none where it is not numbers.
///
/// ```
/// use calc_view::plan::place::{NotAPoint, point};
/// assert_eq!(point("42.36, -71.06, 50 ft").and_then(Result::ok).and_then(|it| it.elev_m), Some(15.24));
/// assert_eq!(point("95,10"), Some(Err(NotAPoint::OffEarth)));
/// assert!(point("Madison, WI").is_none());
/// ```
#[must_use]
pub fn point(typed: &str) -> Option<Result<Site, NotAPoint>> {
    let parts: Vec<&str> = typed.split(',').map(str::trim).collect();
    let number = |at: usize| -> Option<f64> {
        let text = parts.get(at)?;
        read_number(text).ok().map(|number| number.value)
    };
    let (lat, lon) = (number(0)?, number(1)?);
    let elev_m = match parts.get(2) {
        None => None,
        Some(text) => match read_number(text) {
            Ok(number) => {
                let unit = number.unit.unwrap_or(Unit::Metre);
                unit.in_mm().map(|mm| number.value * mm / 1000.0)
            }
            Err(_) => return Some(Err(NotAPoint::Height((*text).to_owned()))),
        },
    };
    let site = Site { lat, lon, elev_m };
    Some(match site.is_on_earth() {
        true => Ok(site),
        false => Err(NotAPoint::OffEarth),
    })
}
