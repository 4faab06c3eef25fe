//! What all trees ask of days and units at some prices, each on its own best day: hundreds of passes over thousands of
//! trees, so that all that trees share is reckoned once a pass.

use crate::market::{Prices, cheapest};
use crate::property::{PlanTree, Property, RingDay, likeliest_first};
use std::collections::BTreeMap;

/// A visit's minutes are spread over the days within this share of the cheapest.
const NEAR_CHEAPEST: f64 = 0.03;

/// What is asked of each day and unit at some prices, when every tree takes its own best day; and the bound.
pub(crate) struct Asked {
    pub(crate) minutes: Vec<f64>,
    pub(crate) area: Vec<f64>,
    pub(crate) crown: Vec<f64>,
    pub(crate) bound: f64,
}

/// A tree as it asks: minutes as `work + (1 - p) tight`.
struct Asker {
    unit: usize,
    value: f64,
    work: f64,
    tight: f64,
    visits: [f64; 2],
    basal_m2: f64,
    crown_m2: f64,
}

impl Asker {
    fn of(tree: &PlanTree) -> Self {
        let [slip, tight, walk] = tree.work;
        Self {
            unit: tree.unit,
            value: tree.value,
            work: slip + walk,
            tight: tight - slip,
            visits: tree.visits,
            basal_m2: tree.basal_m2,
            crown_m2: tree.crown_m2,
        }
    }

    fn worth(&self, offer: &Offer) -> f64 {
        self.value * offer.p
            - self.work * offer.minute
            - self.tight * offer.tight
            - self.visits[0] * offer.visits[0]
            - self.visits[1] * offer.visits[1]
    }
}

/// A day at some prices: what a minute of it costs, one of tight bark, and those of the visits after it.
#[derive(Clone, Copy)]
struct Offer {
    day: usize,
    p: f64,
    minute: f64,
    tight: f64,
    visits: [f64; 2],
}

impl Offer {
    /// Whether no tree at all would rather have the other one, whose bark slips no better.
    fn is_no_dearer(&self, other: &Self) -> bool {
        self.minute <= other.minute
            && self.tight <= other.tight
            && self.visits[0] <= other.visits[0]
            && self.visits[1] <= other.visits[1]
    }
}

/// Trees with the same days and the same visits.
struct Group {
    profile: usize,
    /// Their days and probabilities, the likeliest first.
    days: Vec<RingDay>,
    trees: Vec<Asker>,
    /// Whether tight bark costs each of them more: else no day is left out.
    is_plain: bool,
}

/// The property as it is asked.
pub(crate) struct Oracle<'a> {
    property: &'a Property,
    groups: Vec<Group>,
    /// Trees whose day was chosen, with its probability: they ask for it whatever it costs.
    pinned: Vec<(usize, usize, f64)>,
    /// The windows of visits, each once.
    windows: Vec<(usize, usize)>,
    /// By profile and day: window of each visit, and whether it is to take sprouts off.
    visits: Vec<Vec<Vec<(usize, usize)>>>,
}

impl<'a> Oracle<'a> {
    pub(crate) fn new(property: &'a Property) -> Self {
        let mut known: BTreeMap<(usize, usize), usize> = BTreeMap::new();
        let mut windows = Vec::new();
        let visits = property.profiles.iter().map(|profile| {
            let of_day = profile.after.iter().map(|visits| {
                let of_visit = visits.iter().map(|visit| {
                    let window = (visit.from, visit.to);
                    let at = *known.entry(window).or_insert_with(|| {
                        windows.push(window);
                        windows.len() - 1
                    });
                    (at, usize::from(!visit.first_look))
                });
                of_visit.collect()
            });
            of_day.collect()
        });
        let visits = visits.collect();
        let mut of_kind: BTreeMap<(usize, usize), usize> = BTreeMap::new();
        let (mut groups, mut pinned): (Vec<Group>, Vec<(usize, usize, f64)>) =
            (Vec::new(), Vec::new());
        for (at, tree) in property.trees.iter().enumerate() {
            if tree.pinned.is_some() {
                let choice = property.choices(tree).next();
                pinned.extend(choice.map(|choice| (at, choice.day, choice.p)));
                continue;
            }
            let kind = (tree.class, tree.profile);
            let group = *of_kind.entry(kind).or_insert_with(|| {
                groups.push(Group {
                    profile: tree.profile,
                    days: likeliest_first(&property.classes[tree.class]),
                    trees: Vec::new(),
                    is_plain: true,
                });
                groups.len() - 1
            });
            let asker = Asker::of(tree);
            groups[group].is_plain &= asker.tight >= 0.0;
            groups[group].trees.push(asker);
        }
        Self {
            property,
            groups,
            pinned,
            windows,
            visits,
        }
    }

    /// One pass.
    pub(crate) fn ask(&self, prices: &Prices) -> Asked {
        let property = self.property;
        let mut asked = Asked {
            minutes: vec![0.0; property.days.len()],
            area: vec![0.0; property.units.len()],
            crown: vec![0.0; property.units.len()],
            bound: 0.0,
        };
        for (day, price) in property.days.iter().zip(&prices.minute) {
            asked.bound += day.minutes * price;
        }
        for (at, unit) in property.units.iter().enumerate() {
            asked.bound += unit.limit_m2.unwrap_or(0.0) * prices.area[at];
            asked.bound += unit.crown_limit_m2.unwrap_or(0.0) * prices.crown[at];
        }
        let least: Vec<f64> = self
            .windows
            .iter()
            .map(|(from, to)| cheapest(&prices.minute[*from..*to]))
            .collect();
        let after = |profile: usize, day: usize| {
            let mut price = [0.0; 2];
            for (window, kind) in self.visits[profile].get(day).into_iter().flatten() {
                price[*kind] += least[*window];
            }
            price
        };
        let offer = |profile: usize, day: usize, p: f64| Offer {
            day,
            p,
            minute: prices.minute[day],
            tight: (1.0 - p) * prices.minute[day],
            visits: after(profile, day),
        };
        // Minutes of visits by profile and day of the ring.
        let mut to_visit: Vec<Vec<[f64; 2]>> = self
            .visits
            .iter()
            .map(|days| vec![[0.0; 2]; days.len()])
            .collect();
        let mut take =
            |asked: &mut Asked, profile: usize, tree: &Asker, offer: &Offer, worth: f64| {
                asked.bound += worth;
                asked.minutes[offer.day] += tree.work + (1.0 - offer.p) * tree.tight;
                asked.area[tree.unit] += tree.basal_m2;
                asked.crown[tree.unit] += tree.crown_m2;
                if let Some(minutes) = to_visit[profile].get_mut(offer.day) {
                    minutes[0] += tree.visits[0];
                    minutes[1] += tree.visits[1];
                }
            };
        let area = |tree: &Asker| {
            tree.basal_m2 * prices.area[tree.unit] + tree.crown_m2 * prices.crown[tree.unit]
        };
        let mut offers: Vec<Offer> = Vec::new();
        for group in &self.groups {
            offers.clear();
            for RingDay { day, p } in &group.days {
                let offer = offer(group.profile, *day, *p);
                if !(group.is_plain && offers.iter().any(|it| it.is_no_dearer(&offer))) {
                    offers.push(offer);
                }
            }
            for tree in &group.trees {
                let mut best: Option<(f64, &Offer)> = None;
                for offer in &offers {
                    let worth = tree.worth(offer);
                    let better = |(most, of): (f64, &Offer)| {
                        worth > most || worth == most && offer.day < of.day
                    };
                    if best.is_none_or(better) {
                        best = Some((worth, offer));
                    }
                }
                if let Some((worth, offer)) = best {
                    let worth = worth - area(tree);
                    if worth > 0.0 {
                        take(&mut asked, group.profile, tree, offer, worth);
                    }
                }
            }
        }
        for (at, day, p) in &self.pinned {
            let tree = &property.trees[*at];
            let (asker, offer) = (Asker::of(tree), offer(tree.profile, *day, *p));
            let worth = asker.worth(&offer) - area(&asker);
            take(&mut asked, tree.profile, &asker, &offer, worth);
        }
        self.spread(&mut asked, prices, &least, &to_visit);
        asked
    }

    /// Spreads visits over the days of their windows that are nearly the cheapest.
    fn spread(
        &self,
        asked: &mut Asked,
        prices: &Prices,
        least: &[f64],
        to_visit: &[Vec<[f64; 2]>],
    ) {
        let mut in_window = vec![0.0; self.windows.len()];
        for (visits, minutes) in self.visits.iter().zip(to_visit) {
            for (visits, minutes) in visits.iter().zip(minutes) {
                for (window, kind) in visits {
                    in_window[*window] += minutes[*kind];
                }
            }
        }
        for ((window, least), minutes) in self.windows.iter().zip(least).zip(in_window) {
            let window = window.0..window.1;
            let near = |day: &usize| prices.minute[*day] <= least * (1.0 + NEAR_CHEAPEST);
            let many = window.clone().filter(near).count();
            for day in window.filter(near) {
                asked.minutes[day] += minutes / many as f64;
            }
        }
    }
}
