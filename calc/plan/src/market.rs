//! Prices at work: what a tree is worth on a day beyond what its minutes and area cost.

use crate::property::{PlanTree, Property};

/// Prices, none under 0. A price of 0 says that there is enough.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Prices {
    /// Value a person-minute, by work day.
    pub minute: Vec<f64>,
    /// Value a square metre of basal area, by unit; 0 where nothing limits it.
    pub area: Vec<f64>,
    /// Value a square metre of crown, by unit; 0 where no floor of canopy limits it.
    pub crown: Vec<f64>,
}

impl Prices {
    /// No price at all.
    pub(crate) fn none(property: &Property) -> Self {
        Self {
            minute: vec![0.0; property.days.len()],
            area: vec![0.0; property.units.len()],
            crown: vec![0.0; property.units.len()],
        }
    }

    /// What is left of them: a share of those of minutes, and one of those of area and crowns.
    pub(crate) fn times(&self, of_minutes: f64, of_area: f64) -> Self {
        let times = |prices: &[f64], share: f64| prices.iter().map(|it| it * share).collect();
        Self {
            minute: times(&self.minute, of_minutes),
            area: times(&self.area, of_area),
            crown: times(&self.crown, of_area),
        }
    }
}

/// Prices at work: what a visit costs is the cheapest day of its window.
pub(crate) struct Market<'a> {
    pub(crate) property: &'a Property,
    pub(crate) prices: &'a Prices,
    /// By profile and work day: price of a minute at the first look, and summed over the visits for sprouts.
    visits: Vec<Vec<[f64; 2]>>,
}

impl<'a> Market<'a> {
    pub(crate) fn new(property: &'a Property, prices: &'a Prices) -> Self {
        let visits = property.profiles.iter().map(|profile| {
            let of_day = profile.after.iter().map(|visits| {
                let mut price = [0.0; 2];
                for visit in visits {
                    price[usize::from(!visit.first_look)] +=
                        cheapest(&prices.minute[visit.from..visit.to]);
                }
                price
            });
            of_day.collect()
        });
        Self {
            property,
            prices,
            visits: visits.collect(),
        }
    }

    /// What a tree is worth on a day beyond what its minutes, visits and area cost.
    pub(crate) fn reduced(&self, tree: &PlanTree, day: usize, p: f64) -> f64 {
        let visits = self.visits[tree.profile].get(day).map_or(0.0, |price| {
            tree.visits[0] * price[0] + tree.visits[1] * price[1]
        });
        tree.value * p
            - tree.minutes(p) * self.prices.minute[day]
            - visits
            - tree.basal_m2 * self.prices.area[tree.unit]
            - tree.crown_m2 * self.prices.crown[tree.unit]
    }

    /// The day on which a tree is worth most, and how much; the earliest of equals. A tree whose day was chosen has it,
    /// whatever it costs.
    pub(crate) fn best(&self, tree: &PlanTree) -> Option<(usize, f64, f64)> {
        let mut best: Option<(usize, f64, f64)> = None;
        for choice in self.property.choices(tree) {
            let worth = self.reduced(tree, choice.day, choice.p);
            if best.is_none_or(|(_, _, most)| worth > most) {
                best = Some((choice.day, choice.p, worth));
            }
        }
        best.filter(|(_, _, worth)| *worth > 0.0 || tree.pinned.is_some())
    }
}

/// The least of some prices; none cost nothing.
pub(crate) fn cheapest(prices: &[f64]) -> f64 {
    prices.iter().copied().reduce(f64::min).unwrap_or(0.0)
}
