//! Quantities: what a person types, read once; each kind of length with its one range.

mod fixed;
mod kinds;
mod number;

pub use fixed::fixed;
pub use kinds::{
    BarkThickness, Dbh, Elevation, Range, Slope, TargetDistance, TotalHeight, Voltage,
};
pub use number::{NotNumber, Number, Unit, read_number};

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
