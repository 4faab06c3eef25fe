//! How much of a unit's land lies under crowns, and how much crown may go before a floor is reached.
//!
//! Crowns overlap. Where crowns of an area C stand at random on land of an area A, the share 1 − exp(−C/A) of it lies under at
//! least one of them (Crookston and Stage 1999, "Percent canopy cover and stand structure statistics", USDA Forest Service
//! RMRS-GTR-24; from memory). So a floor on the share is a floor on C, and each tree takes its own crown from it.

use crate::list_tree::{ListTree, Progress};
use crate::season::UnitLand;
use libm::{exp, log};

/// The share of land under crowns, 0 to 1: crowns and land in the same unit of area.
///
/// ```
/// // Crowns that would cover the land once leave 37 % of it open where they stand at random.
/// assert_eq!((calc_plan::closure(100.0, 100.0) * 1000.0).round(), 632.0);
/// ```
#[must_use]
pub fn closure(crowns_m2: f64, land_m2: f64) -> f64 {
    1.0 - exp(-crowns_m2 / land_m2)
}

/// Crowns that cover a share of land, under 1, m²: the other way round.
#[must_use]
pub fn crowns_for(closure: f64, land_m2: f64) -> f64 {
    -land_m2 * log(1.0 - closure)
}

/// Land of a unit, its crowns and what stands on it now.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Canopy {
    /// Square metres.
    pub land_m2: f64,
    /// Crown area of all live trees there, m².
    pub crowns_m2: f64,
    /// Basal area of the list's live trees there, m².
    pub basal_m2: f64,
}

impl Canopy {
    /// Of a unit: crowns as somebody saw them, else those of the list's own live trees.
    pub(crate) fn of(land: &UnitLand, trees: &[ListTree]) -> Self {
        let (mut crowns_m2, mut basal_m2) = (0.0, 0.0);
        for tree in trees.iter().filter(|tree| tree.unit == land.unit) {
            if let Progress::Open(judged) = &tree.standing
                && !judged.is_dead()
            {
                crowns_m2 += judged.crown_m2;
                basal_m2 += judged.basal_m2;
            }
        }
        Self {
            land_m2: land.area_m2,
            crowns_m2: land
                .closure
                .map_or(crowns_m2, |share| crowns_for(share, land.area_m2)),
            basal_m2,
        }
    }

    /// Crown area that may go before less than a share of the land lies under crowns, m².
    #[must_use]
    pub fn may_go_m2(&self, floor: f64) -> f64 {
        (self.crowns_m2 - crowns_for(floor, self.land_m2)).max(0.0)
    }
}
