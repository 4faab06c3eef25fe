//! The gap that dying trees leave, and how many trees fill it.

use crate::season::UnitLand;
use calc::models::stand::trees_on;
use std::collections::BTreeMap;

/// What opens in a unit where trees die.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct CrownGap {
    /// The unit; empty where the list has none.
    pub unit: String,
    /// How many trees die there.
    pub trees: usize,
    /// Of these, those whose crown no table has: they are in no area.
    pub without_crown: usize,
    /// Their crowns, m², each counted once; no more than the unit's land where that was said.
    pub open_m2: f64,
    /// Whether the land is what limits it.
    pub is_capped: bool,
}

impl CrownGap {
    /// Trees to plant in it at this distance between any two, metres: to a whole one, and one at least where something
    /// opens. 0 where the distance is not above zero.
    #[must_use]
    pub fn to_plant(&self, spacing_m: f64) -> usize {
        match trees_on(self.open_m2, spacing_m, spacing_m) {
            Some(trees) if self.open_m2 > 0.0 => (trees + 0.5).max(1.0) as usize,
            _ => 0,
        }
    }
}

/// Gaps by unit, in the order of their names. `dying` are the trees that die, each once: its unit, and the area of its
/// crown, m², where it is known.
///
/// ```
/// // 100 trees of 200 m² each on a hectare: more crown than land. At 5 m between two 400 of them stand on it.
/// use calc_plan::{UnitLand, gaps};
/// let land = [UnitLand { unit: "wood".into(), area_m2: 1e4, closure: None }];
/// let gap = &gaps((0..100).map(|_| ("wood", Some(200.0))), &land)[0];
/// assert_eq!((gap.open_m2, gap.is_capped, gap.to_plant(5.0)), (1e4, true, 400));
/// ```
#[must_use]
pub fn gaps<'t>(
    dying: impl Iterator<Item = (&'t str, Option<f64>)>,
    land: &[UnitLand],
) -> Vec<CrownGap> {
    let mut all: BTreeMap<&str, CrownGap> = BTreeMap::new();
    for (unit, crown_m2) in dying {
        let gap = all.entry(unit).or_default();
        gap.trees += 1;
        match crown_m2 {
            Some(m2) => gap.open_m2 += m2,
            None => gap.without_crown += 1,
        }
    }
    all.into_iter()
        .map(|(unit, gap)| {
            let area = land.iter().find(|land| land.unit == unit);
            let most = area.map_or(f64::INFINITY, |land| land.area_m2);
            CrownGap {
                unit: unit.to_owned(),
                open_m2: gap.open_m2.min(most),
                is_capped: gap.open_m2 > most,
                ..gap
            }
        })
        .collect()
}
