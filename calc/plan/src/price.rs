//! What a minute of each work day is worth, and a square metre of each unit; and the bound that they prove.

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
    fn none(property: &Property) -> Self {
        Self {
            minute: vec![0.0; property.days.len()],
            area: vec![0.0; property.units.len()],
            crown: vec![0.0; property.units.len()],
        }
    }
}

/// Prices with the bound that they prove.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Priced {
    /// The best prices that were found.
    pub prices: Prices,
    /// No plan under these hours, windows and limits has a higher value. It holds for any prices: worse ones only make
    /// it higher.
    pub bound: f64,
    /// What each tree adds to it beside the prices of hours and areas: the most that it is worth beyond what it costs, or
    /// nothing.
    pub terms: Vec<f64>,
}

/// Passes at most; they end sooner where the steps get short.
const PASSES: usize = 400;
/// Passes without progress, after which steps get shorter.
const PATIENCE: usize = 10;
/// A step aims so far under the best bound, as a share of it, at first.
const AIM: f64 = 0.05;
/// It ends when it would aim nearer than this.
const AIM_LEAST: f64 = 0.0001;
/// What is left of the aim where steps get shorter.
const AIM_SHRINKS: f64 = 0.6;
/// Share of the last direction in the next one.
const MEMORY: f64 = 0.6;
/// Share of the step that Polyak's rule gives.
const STEP: f64 = 0.7;
/// A visit's minutes are spread over the days within this share of the cheapest.
const NEAR_CHEAPEST: f64 = 0.03;

/// Prices at work: what a visit costs is the cheapest day of its window.
pub(crate) struct Market<'a> {
    pub(crate) property: &'a Property,
    pub(crate) prices: &'a Prices,
    /// By profile and work day: price of a minute at the first look, and summed over the visits for sprouts.
    visits: Vec<Vec<[f64; 2]>>,
}

impl<'a> Market<'a> {
    pub(crate) fn new(property: &'a Property, prices: &'a Prices) -> Self {
        let cheapest = |from: usize, to: usize| {
            let least = prices.minute[from..to].iter().copied().reduce(f64::min);
            least.unwrap_or(0.0)
        };
        let visits = property.profiles.iter().map(|profile| {
            let of_day = profile.after.iter().map(|visits| {
                let mut price = [0.0; 2];
                for visit in visits {
                    price[usize::from(!visit.first_look)] += cheapest(visit.from, visit.to);
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

/// What is asked of each day and unit at some prices, when every tree takes its own best day; and the bound.
struct Asked {
    minutes: Vec<f64>,
    area: Vec<f64>,
    crown: Vec<f64>,
    bound: f64,
}

fn ask(property: &Property, prices: &Prices) -> Asked {
    let market = Market::new(property, prices);
    let mut asked = Asked {
        minutes: vec![0.0; property.days.len()],
        area: vec![0.0; property.units.len()],
        crown: vec![0.0; property.units.len()],
        bound: 0.0,
    };
    for (day, price) in property.days.iter().zip(&prices.minute) {
        asked.bound += day.minutes * price;
    }
    for (unit, price) in property.units.iter().zip(&prices.area) {
        asked.bound += unit.limit_m2.unwrap_or(0.0) * price;
    }
    for (unit, price) in property.units.iter().zip(&prices.crown) {
        asked.bound += unit.crown_limit_m2.unwrap_or(0.0) * price;
    }
    for tree in &property.trees {
        let Some((day, p, worth)) = market.best(tree) else {
            continue;
        };
        asked.bound += worth;
        asked.minutes[day] += tree.minutes(p);
        asked.area[tree.unit] += tree.basal_m2;
        asked.crown[tree.unit] += tree.crown_m2;
        for visit in property.visits(tree, day) {
            let window = visit.from..visit.to;
            let least = prices.minute[window.clone()]
                .iter()
                .copied()
                .fold(f64::INFINITY, f64::min);
            let near = |day: &usize| prices.minute[*day] <= least * (1.0 + NEAR_CHEAPEST);
            let many = window.clone().filter(near).count();
            for day in window.filter(near) {
                asked.minutes[day] += tree.visit_minutes(visit) / many as f64;
            }
        }
    }
    asked
}

/// Finds prices by subgradient steps (Polyak's length, with the last direction in it), each row by its own capacity.
///
/// ```
/// use calc_plan::{Property, prices};
/// let nothing = prices(&Property::default());
/// assert_eq!(nothing.bound, 0.0);
/// ```
#[must_use]
pub fn prices(property: &Property) -> Priced {
    prices_from(property, None)
}

/// The same, with steps that begin at other prices: those of a property that is nearly alike.
pub(crate) fn prices_from(property: &Property, from: Option<&Prices>) -> Priced {
    let mut best = Priced {
        prices: Prices::none(property),
        bound: f64::INFINITY,
        terms: Vec::new(),
    };
    let mut now = from.unwrap_or(&best.prices).clone();
    let mut direction = Prices::none(property);
    let (mut aim, mut waited) = (AIM, 0);
    for _ in 0..PASSES {
        let asked = ask(property, &now);
        if asked.bound < best.bound * (1.0 - 1e-7) {
            waited = 0;
        } else {
            waited += 1;
        }
        if asked.bound < best.bound {
            best = Priced {
                prices: now.clone(),
                bound: asked.bound,
                terms: Vec::new(),
            };
        }
        if waited >= PATIENCE {
            waited = 0;
            aim *= AIM_SHRINKS;
            now = best.prices.clone();
            direction.minute.fill(0.0);
            direction.area.fill(0.0);
            direction.crown.fill(0.0);
            if aim < AIM_LEAST {
                break;
            }
            continue;
        }
        // How far each row is asked for beyond what there is, as a share of it; a row that costs nothing and has
        // enough stays out.
        let mut length = 0.0;
        let mut turn = |direction: &mut f64, asked: f64, there: f64, price: f64| {
            let over = if there > 0.0 {
                asked / there - 1.0
            } else {
                0.0
            };
            *direction = MEMORY * *direction + over;
            if price == 0.0 && *direction < 0.0 {
                *direction = 0.0;
            }
            length += *direction * *direction;
        };
        for (at, day) in property.days.iter().enumerate() {
            turn(
                &mut direction.minute[at],
                asked.minutes[at],
                day.minutes,
                now.minute[at],
            );
        }
        for (at, unit) in property.units.iter().enumerate() {
            let there = unit.limit_m2.unwrap_or(0.0);
            turn(&mut direction.area[at], asked.area[at], there, now.area[at]);
            let there = unit.crown_limit_m2.unwrap_or(0.0);
            turn(
                &mut direction.crown[at],
                asked.crown[at],
                there,
                now.crown[at],
            );
        }
        if length == 0.0 {
            break;
        }
        let step = STEP * (asked.bound - (1.0 - aim) * best.bound) / length;
        for (at, day) in property.days.iter().enumerate() {
            if day.minutes > 0.0 {
                let price = now.minute[at] + step * direction.minute[at] / day.minutes;
                now.minute[at] = price.max(0.0);
            }
        }
        for (at, unit) in property.units.iter().enumerate() {
            if let Some(limit) = unit.limit_m2.filter(|limit| *limit > 0.0) {
                now.area[at] = (now.area[at] + step * direction.area[at] / limit).max(0.0);
            }
            if let Some(limit) = unit.crown_limit_m2.filter(|limit| *limit > 0.0) {
                now.crown[at] = (now.crown[at] + step * direction.crown[at] / limit).max(0.0);
            }
        }
    }
    let market = Market::new(property, &best.prices);
    let worth = |tree| market.best(tree).map_or(0.0, |(_, _, worth)| worth);
    best.terms = property.trees.iter().map(worth).collect();
    best
}
