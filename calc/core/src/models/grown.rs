//! Where a tree grew, as far as bark and height differ by it: by the state or country said, else by the point.

use crate::terms::constants::constants;
use crate::terms::place::{Grown, HeightBand};

/// A state or country of the climate table.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ClimateRegion {
    /// ISO 3166 code.
    pub code: &'static str,
    /// Whether it lies in the southern half of the world.
    pub south: bool,
    /// Which heights hold there, where no point is known.
    pub band: HeightBand,
}

constants! {
    /// Constants of it, degrees north and east; content/rules/constants.csv says where each comes from.
    pub struct GrownConstants {
        /// North America lies north of this.
        pub america_south: f64,
        /// East of this.
        pub america_west: f64,
        /// And west of this.
        pub america_east: f64,
        /// The northeast of it lies north of this.
        pub northeast_south: f64,
        /// East of this.
        pub northeast_west: f64,
        /// And west of this.
        pub northeast_east: f64,
    }
}

/// A part of the map: what lies south of it, west of it, east of it.
type Corner = [f64; 3];

impl GrownConstants {
    fn america(&self) -> Corner {
        [self.america_south, self.america_west, self.america_east]
    }

    fn northeast(&self) -> Corner {
        [
            self.northeast_south,
            self.northeast_west,
            self.northeast_east,
        ]
    }
}

/// Countries of North America that trees are asked about in.
const AMERICA: [&str; 3] = ["US", "CA", "MX"];

/// The country of a code: `US` of `US-WI`.
#[must_use]
pub fn country(code: &str) -> &str {
    code.split('-').next().unwrap_or(code)
}

/// The row of a state or country; of its country, where it has none of its own.
#[must_use]
pub fn region<'a>(regions: &'a [ClimateRegion], code: &str) -> Option<&'a ClimateRegion> {
    let find = |code: &str| regions.iter().find(|region| region.code == code);
    find(code).or_else(|| find(country(code)))
}

/// Where a tree grew, by its state or country, its point (degrees north and east) and its half of the world.
///
/// ```
/// use calc::models::grown::of;
/// use calc::terms::place::HeightBand;
/// let reference = calc_data::whole();
/// let grown = of(reference.regions, &reference.constants.grown, Some("FR"), None, false);
/// assert_eq!(grown.band, HeightBand::Elsewhere);
/// ```
#[must_use]
pub fn of(
    regions: &[ClimateRegion],
    constants: &GrownConstants,
    code: Option<&str>,
    point: Option<(f64, f64)>,
    south: bool,
) -> Grown {
    let inside = |corner: Corner, (north, east): (f64, f64)| {
        north >= corner[0] && (corner[1]..=corner[2]).contains(&east)
    };
    let in_america = code.map(|code| AMERICA.contains(&country(code)));
    let said = code.and_then(|code| region(regions, code));
    let band = match (said, point) {
        // Never by a point alone: the mountains have no straight edge.
        (Some(said), _) if said.band == HeightBand::InteriorWest => HeightBand::InteriorWest,
        (_, Some(point)) if in_america != Some(false) && inside(constants.northeast(), point) => {
            HeightBand::Northeast
        }
        (Some(said), None) => said.band,
        _ => HeightBand::Elsewhere,
    };
    Grown {
        band,
        north_america: in_america
            .or(point.map(|point| inside(constants.america(), point)))
            .unwrap_or(!south),
    }
}
