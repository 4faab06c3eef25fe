//! Where a tree stands, as far as the season needs it.

use crate::terms::words::words;

words! {
    /// Which half of the world.
    pub enum Hemisphere {
        /// North of the equator, and on it.
        North,
        /// South of it: half a year later.
        South,
    }
}

impl Hemisphere {
    /// The hemisphere of a latitude in degrees, north positive.
    #[must_use]
    pub fn of(lat: f64) -> Self {
        if lat < 0.0 { Self::South } else { Self::North }
    }
}

/// Where the tree stands, as far as the season needs it.
#[derive(Clone, Debug, PartialEq)]
pub enum Place {
    /// A point with elevation in metres, where known.
    Point {
        /// Degrees north.
        latitude: f64,
        /// Degrees east.
        longitude: f64,
        /// Metres above the sea.
        elevation: Option<f64>,
    },
    /// Only the hemisphere.
    Hemisphere(Hemisphere),
}

impl Place {
    /// The hemisphere.
    #[must_use]
    pub fn hemisphere(&self) -> Hemisphere {
        match self {
            Self::Hemisphere(hemisphere) => *hemisphere,
            Self::Point { latitude, .. } if *latitude < 0.0 => Hemisphere::South,
            Self::Point { .. } => Hemisphere::North,
        }
    }
}

words! {
    /// Parts of the world in which measured trees of one diameter differ in height.
    pub enum HeightBand {
        /// New England, the lakes, eastern Canada.
        Northeast,
        /// Wyoming and its like.
        InteriorWest,
        /// Anywhere else, or not known.
        Elsewhere,
    }
}

/// Where a tree grew.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Grown {
    /// For its height.
    pub band: HeightBand,
    /// For its bark: trees of one name have other bark outside North America.
    pub north_america: bool,
}
