//! Distinct kinds of quantity. Our likely mix-ups are one length for another (inside and outside bark,
//! height and distance), so each kind is its own type with its one range.

use serde::Serialize;

/// Millimetres in an inch (exact, international inch of 1959).
pub const MM_PER_IN: f64 = 25.4;
/// Metres in a foot (exact).
pub const M_PER_FT: f64 = 0.3048;

/// Millimetres in inches, to the millionth: what was typed as 6 in is held against a limit of 6 in as 6, not as
/// 5.999999999999999.
#[must_use]
pub fn inches(mm: f64) -> f64 {
    libm::round(mm / MM_PER_IN * 1e6) / 1e6
}

/// The system that a bare number is read in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Units {
    /// Inches for trunks and bark, feet for heights and distances.
    #[default]
    Us,
    /// Centimetres for trunks, millimetres for bark, metres for heights and distances.
    Metric,
}

/// The range of a kind of quantity, in its own unit. It makes the check, the message and the form's bounds.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Range {
    /// Smallest value taken.
    pub low: f64,
    /// Largest value taken.
    pub high: f64,
}

impl Range {
    /// Whether the value lies inside, ends included.
    #[must_use]
    pub fn holds(self, value: f64) -> bool {
        value >= self.low && value <= self.high
    }
}

macro_rules! kind {
    ($(#[$doc:meta])* $name:ident, $unit:literal, $get:ident, $low:expr, $high:expr) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, PartialOrd, Serialize)]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
        #[serde(transparent)]
        pub struct $name(f64);

        impl $name {
            #[doc = concat!("The range taken, in ", $unit, ".")]
            pub const RANGE: Range = Range { low: $low, high: $high };

            #[doc = concat!("Takes a value in ", $unit, "; none if it is out of range or no number.")]
            #[must_use]
            pub fn new(value: f64) -> Option<Self> {
                Self::RANGE.holds(value).then_some(Self(value))
            }

            #[doc = concat!("The value in ", $unit, ".")]
            #[must_use]
            pub fn $get(self) -> f64 {
                self.0
            }
        }
    };
}

kind!(
    /// Diameter at breast height, outside bark. The range is ours: a pencil to the thickest trunk on record, the cypress of
    /// Tule at 11.6 m (from memory).
    Dbh, "millimetres", mm, 3.0, 12_000.0
);
kind!(
    /// Thickness of the bark, one side, to the wood.
    BarkThickness, "millimetres", mm, 0.3, 300.0
);
kind!(
    /// Total height of a tree.
    TotalHeight, "metres", m, 0.3, 130.0
);
kind!(
    /// Distance along the ground from the trunk's centre to something it could hit.
    TargetDistance, "metres", m, 0.0, 5000.0
);
kind!(
    /// Slope of the ground, rise over run.
    Slope, "percent", percent, 0.0, 300.0
);
kind!(
    /// Voltage of a power line.
    Voltage, "kilovolts", kv, 0.01, 1500.0
);
kind!(
    /// Height above the sea.
    Elevation, "metres", m, -450.0, 6000.0
);
