//! Bark thickness from diameter.

use crate::terms::cite::Cite;
use crate::terms::place::Grown;
use crate::terms::species::{Confidence, Species};
use crate::terms::tree::Stem;
use serde::Serialize;

/// How far the bark of about eight in ten trees lies from an estimate: a row of content/evidence/bark_ranges.csv.
#[derive(Clone, Copy, Debug)]
pub struct BarkRange {
    /// How far the estimate is trusted.
    pub confidence: Confidence,
    /// Whether it speaks of trees grown in North America, or elsewhere.
    pub north_america: bool,
    /// Low end over the estimate.
    pub low: f64,
    /// High end over the estimate.
    pub high: f64,
    /// What it rests on.
    pub cites: &'static [Cite],
}

/// Bark of one stem.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Bark {
    /// Thickness, one side, millimetres.
    #[serde(serialize_with = "crate::terms::lengths::mm")]
    pub mm: f64,
    /// Low end, millimetres.
    #[serde(serialize_with = "crate::terms::lengths::mm")]
    pub low_mm: f64,
    /// High end, millimetres.
    #[serde(serialize_with = "crate::terms::lengths::mm")]
    pub high_mm: f64,
    /// Whether it was measured.
    pub measured: bool,
    /// How far to trust an estimate.
    pub confidence: Confidence,
    /// What it rests on.
    pub because: Vec<Cite>,
}

/// Thickness of the bark, one side, millimetres: as measured, else `coefficient x dbh`; none where the species has no
/// bark ring.
///
/// ```
/// # use calc::question::read;
/// # let reference = calc_data::whole();
/// let question = read(reference, &examples::named("do")).expect("a good question");
/// use calc::models::bark::thickness_mm;
/// let mm = thickness_mm(question.tree.heading(), question.tree.species);
/// assert_eq!(mm.map(f64::round), Some(11.0));
/// ```
#[must_use]
pub fn thickness_mm(stem: &Stem, species: &Species) -> Option<f64> {
    let row = species.bark?;
    Some(
        stem.bark
            .map_or(row.coefficient * stem.dbh.mm(), |bark| bark.mm()),
    )
}

/// The same with its range, which depends on how far the estimate is trusted and on where the tree grew.
#[must_use]
pub fn thickness(
    ranges: &[BarkRange],
    stem: &Stem,
    species: &Species,
    grown: Grown,
) -> Option<Bark> {
    let row = species.bark?;
    let mm = thickness_mm(stem, species)?;
    Some(match stem.bark {
        Some(_) => Bark {
            mm,
            low_mm: mm,
            high_mm: mm,
            measured: true,
            confidence: Confidence::Good,
            because: vec![Cite::measured("bark")],
        },
        None => {
            let range = ranges.iter().find(|range| {
                range.confidence == row.confidence && range.north_america == grown.north_america
            });
            let (low, high) = range.map_or((1.0, 1.0), |range| (range.low, range.high));
            let mut because = vec![row.cite];
            because.extend(range.map_or(&[][..], |range| range.cites));
            Bark {
                mm,
                low_mm: mm * low,
                high_mm: mm * high,
                measured: false,
                confidence: row.confidence,
                because,
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
