//! Bark thickness from diameter.

use crate::terms::cite::Cite;
use crate::terms::species::{Confidence, Species};
use crate::terms::tree::Stem;
use serde::Serialize;

/// Lowest and highest true thickness over the estimate: two published sets at 12 in (S1/S2 against S3b).
pub const SPREAD: (f64, f64) = (0.66, 1.45);

/// Bark of one stem.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Bark {
    /// Thickness, one side, millimetres.
    pub mm: f64,
    /// Low end, millimetres.
    pub low_mm: f64,
    /// High end, millimetres.
    pub high_mm: f64,
    /// Whether it was measured.
    pub measured: bool,
    /// How far to trust an estimate.
    pub confidence: Confidence,
    /// What it rests on.
    pub because: Vec<Cite>,
}

/// Thickness of the bark, one side; none where the species has no bark ring.
/// The estimate is `coefficient x dbh`.
#[must_use]
pub fn thickness(stem: &Stem, species: &Species) -> Option<Bark> {
    let row = species.bark?;
    let dbh = stem.dbh.mm();
    Some(match stem.bark {
        Some(bark) => Bark {
            mm: bark.mm(),
            low_mm: bark.mm(),
            high_mm: bark.mm(),
            measured: true,
            confidence: Confidence::Good,
            because: vec![Cite::measured("bark")],
        },
        None => {
            let mm = row.coefficient * dbh;
            Bark {
                mm,
                low_mm: mm * SPREAD.0,
                high_mm: mm * SPREAD.1,
                measured: false,
                confidence: row.confidence,
                because: vec![row.cite],
            }
        }
    })
}

/// Diameter inside bark, millimetres.
#[must_use]
pub fn inside_mm(dbh_mm: f64, bark_mm: f64) -> f64 {
    dbh_mm - 2.0 * bark_mm
}

/// Bark taken off by a strip, square millimetres: live share x mean circumference x width.
#[must_use]
pub fn strip_area_mm2(dbh_mm: f64, bark_mm: f64, width_mm: f64, live_share: f64) -> f64 {
    live_share * core::f64::consts::PI * (dbh_mm - bark_mm) * width_mm
}
