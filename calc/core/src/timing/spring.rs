//! This spring's own daily temperatures.

use chrono::NaiveDate;

/// One day's temperatures.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Daily {
    /// The day.
    pub date: NaiveDate,
    /// Minimum, °C.
    pub tmin: f64,
    /// Maximum, °C.
    pub tmax: f64,
}
