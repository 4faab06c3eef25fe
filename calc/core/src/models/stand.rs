//! Arithmetic of many stems: basal area, quadratic mean diameter, spacing. Definitions of the field, no assumptions:
//! basal area is the area of the circle at breast height (Curtis and Marshall 2000, S8), and trees on an area are the
//! area over the rectangle that each has (W10).

use crate::terms::quantity::M_PER_FT;
use crate::terms::small::sort::sort;
use core::f64::consts::PI;

/// Square metres in an acre: 43,560 square feet.
pub const ACRE_M2: f64 = 43_560.0 * M_PER_FT * M_PER_FT;

/// Basal area of a stem of this diameter in millimetres, square metres.
/// In square feet and inches it is 0.005454 D² (pi/576).
#[must_use]
pub fn basal_area_m2(dbh_mm: f64) -> f64 {
    let m = dbh_mm / 1000.0;
    PI / 4.0 * m * m
}

/// Quadratic mean diameter, millimetres: that of the stem of mean basal area, for the basal area of `stems` stems
/// in square metres. None without stems.
#[must_use]
pub fn quadratic_mean_mm(basal_area_m2: f64, stems: f64) -> Option<f64> {
    let mean = basal_area_m2 / stems;
    (stems > 0.0 && mean >= 0.0).then(|| libm::sqrt(mean / (PI / 4.0)) * 1000.0)
}

/// Diameter of the one stem with the basal area of all of these, millimetres in and out: √(Σd²).
/// It serves crown and basal area; height and hazard are those of the largest stem.
///
/// ```
/// use calc::models::stand::combined_mm;
/// assert_eq!(combined_mm([300.0, 400.0]), 500.0);
/// ```
#[must_use]
pub fn combined_mm(stems: impl IntoIterator<Item = f64>) -> f64 {
    let mut squares: Vec<f64> = stems.into_iter().map(|mm| mm * mm).collect();
    // Added up in one order, so that the order of the list changes nothing, not even a last digit.
    sort(&mut squares, |a, b| a < b);
    libm::sqrt(squares.iter().sum())
}

/// Trees on an area in square metres, planted or left at a spacing in metres between rows and in the row.
/// None where a spacing is not above zero.
#[must_use]
pub fn trees_on(area_m2: f64, row_m: f64, tree_m: f64) -> Option<f64> {
    (row_m > 0.0 && tree_m > 0.0).then(|| area_m2 / (row_m * tree_m))
}
