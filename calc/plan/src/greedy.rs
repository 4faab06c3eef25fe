//! A plan in the making: who is on which day, and what room is left.

use crate::market::Market;
use crate::property::{PlanTree, Property, RingDay, likeliest_first};
use crate::rests::Rests;

/// To place a tree takes as long as to look at so many.
pub(crate) const PLACED: usize = 4;
/// Minutes that may be over by rounding.
const SLACK: f64 = 1e-9;

/// A tree on a day.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Placed {
    pub(crate) choice: RingDay,
    /// The work day of each visit that costs minutes, in the order of the profile; none where no day lies in its window.
    pub(crate) visits: Vec<Option<usize>>,
}

/// Who is on which day, and what room is left.
#[derive(Clone, Debug)]
pub(crate) struct Book<'a> {
    pub(crate) property: &'a Property,
    pub(crate) placed: Vec<Option<Placed>>,
    /// Minutes left, by work day; under 0 where days were chosen by hand.
    room: Vec<f64>,
    /// Basal area left, by unit.
    area: Vec<f64>,
    /// Crown area left, by unit.
    crown: Vec<f64>,
    /// How many tasks of a unit lie on a day, by day and unit.
    here: Vec<u32>,
    /// The days of each class, the likeliest first, the earlier of equals.
    likeliest: Vec<Vec<RingDay>>,
}

impl<'a> Book<'a> {
    pub(crate) fn new(property: &'a Property) -> Self {
        let limit = |limit: Option<f64>| limit.unwrap_or(f64::INFINITY);
        Self {
            property,
            placed: vec![None; property.trees.len()],
            room: property.days.iter().map(|day| day.minutes).collect(),
            area: property
                .units
                .iter()
                .map(|unit| limit(unit.limit_m2))
                .collect(),
            crown: property
                .units
                .iter()
                .map(|unit| limit(unit.crown_limit_m2))
                .collect(),
            here: vec![0; property.days.len() * property.units.len()],
            likeliest: property
                .classes
                .iter()
                .map(|days| likeliest_first(days))
                .collect(),
        }
    }

    /// A tree's day by how likely its bark slips on it: the likeliest is 0; none behind the last.
    pub(crate) fn likely_day(&self, at: usize, rank: usize) -> Option<RingDay> {
        let tree = &self.property.trees[at];
        match tree.pinned {
            None => self.likeliest[tree.class].get(rank).copied(),
            Some(_) if rank > 0 => None,
            Some(_) => self.property.choices(tree).next(),
        }
    }

    /// Places a tree on the likeliest of its days that has room.
    pub(crate) fn place_likeliest(&mut self, at: usize, market: &Market<'_>) -> Option<RingDay> {
        let mut rank = 0;
        while let Some(choice) = self.likely_day(at, rank) {
            if self.place(at, choice, market) {
                return Some(choice);
            }
            rank += 1;
        }
        None
    }

    /// Whether a day would have the minutes for a tree, were another one gone.
    pub(crate) fn has_room_without(&self, day: usize, minutes: f64, gone: usize) -> bool {
        let Some(placed) = &self.placed[gone] else {
            return self.has_room(day, minutes);
        };
        let tree = &self.property.trees[gone];
        let mut freed = tree.minutes(placed.choice.p);
        let needs = self.property.visits(tree, placed.choice.day);
        for (visit, _) in needs
            .iter()
            .zip(&placed.visits)
            .filter(|(_, on)| **on == Some(day))
        {
            freed += tree.visit_minutes(visit);
        }
        self.has_room(day, minutes - freed)
    }

    /// Value of all that is placed: the expected number of trees ringed while the bark slips, weighted.
    pub(crate) fn value(&self) -> f64 {
        let all = self.property.trees.iter().zip(&self.placed);
        all.filter_map(|(tree, placed)| Some(tree.value * placed.as_ref()?.choice.p))
            .sum()
    }

    /// Whether the unit's limit leaves room for a tree.
    pub(crate) fn has_area(&self, tree: &PlanTree) -> bool {
        tree.basal_m2 <= self.area[tree.unit] + SLACK
            && tree.crown_m2 <= self.crown[tree.unit] + SLACK
    }

    fn take_area(&mut self, tree: &PlanTree, times: f64) {
        self.area[tree.unit] -= times * tree.basal_m2;
        self.crown[tree.unit] -= times * tree.crown_m2;
    }

    fn has_room(&self, day: usize, minutes: f64) -> bool {
        minutes <= self.room[day] + SLACK
    }

    fn task(&mut self, unit: usize, day: usize, minutes: f64) {
        self.room[day] -= minutes;
        self.here[day * self.property.units.len() + unit] += 1;
    }

    fn untask(&mut self, unit: usize, day: usize, minutes: f64) {
        self.room[day] += minutes;
        self.here[day * self.property.units.len() + unit] -= 1;
    }

    /// Puts a tree on a day with all its visits, or leaves everything as it was. A tree whose day was chosen by hand goes
    /// there even where the hours do not suffice.
    pub(crate) fn place(&mut self, at: usize, choice: RingDay, market: &Market<'_>) -> bool {
        let tree = &self.property.trees[at];
        let by_hand = tree.pinned == Some(choice.day);
        let minutes = tree.minutes(choice.p);
        let fits = self.has_area(tree) && self.has_room(choice.day, minutes);
        if !(by_hand || fits) {
            return false;
        }
        self.task(tree.unit, choice.day, minutes);
        let mut visits = Vec::new();
        for visit in self.property.visits(tree, choice.day) {
            let minutes = tree.visit_minutes(visit);
            let day = self.visit_day(tree.unit, visit.from..visit.to, minutes, market, by_hand);
            if day.is_none() && visit.from < visit.to {
                self.take_back(tree, choice, &visits);
                return false;
            }
            if let Some(day) = day {
                self.task(tree.unit, day, minutes);
            }
            visits.push(day);
        }
        self.take_area(tree, 1.0);
        self.placed[at] = Some(Placed { choice, visits });
        true
    }

    /// Whether the crew is in no place of a unit on a day.
    pub(crate) fn is_elsewhere(&self, unit: usize, day: usize) -> bool {
        self.here[day * self.property.units.len() + unit] == 0
    }

    /// Puts a tree on a day with its visits on given days, or leaves everything as it was. A tree whose day was chosen by
    /// hand goes there even where the hours do not suffice.
    pub(crate) fn place_as(
        &mut self,
        at: usize,
        choice: RingDay,
        visits: &[Option<usize>],
    ) -> bool {
        let tree = &self.property.trees[at];
        let by_hand = tree.pinned == Some(choice.day);
        let needs = self.property.visits(tree, choice.day);
        let windows = needs.iter().zip(visits);
        let in_windows = windows.clone().all(|(need, day)| match day {
            Some(day) => (need.from..need.to).contains(day),
            None => need.from == need.to,
        });
        if needs.len() != visits.len() || !in_windows {
            return false;
        }
        let placed = Placed {
            choice,
            visits: visits.to_vec(),
        };
        self.put_back(at, placed);
        let days = visits.iter().flatten().chain([&choice.day]);
        let fits = days.copied().all(|day| self.has_room(day, 0.0));
        let in_area = self.area[tree.unit] >= -SLACK && self.crown[tree.unit] >= -SLACK;
        if !(by_hand || fits && in_area) {
            self.remove(at);
            return false;
        }
        true
    }

    /// The day of a visit: the cheapest with room, going there charged with it; of equally cheap ones one on which the
    /// crew is in that unit anyway, then the earliest.
    fn visit_day(
        &self,
        unit: usize,
        window: core::ops::Range<usize>,
        minutes: f64,
        market: &Market<'_>,
        by_hand: bool,
    ) -> Option<usize> {
        let mut best: Option<(f64, bool, usize)> = None;
        for day in window.clone().filter(|day| self.has_room(*day, minutes)) {
            let elsewhere = self.is_elsewhere(unit, day);
            let enter = if elsewhere {
                self.property.enter.to_visit
            } else {
                0.0
            };
            let price = market.prices.minute[day] * (minutes + enter);
            let better = |(least, away, _): (f64, bool, usize)| {
                price < least || price == least && !elsewhere && away
            };
            if best.is_none_or(better) {
                best = Some((price, elsewhere, day));
            }
        }
        let most_room = || window.max_by(|a, b| self.room[*a].total_cmp(&self.room[*b]));
        best.map(|(_, _, day)| day)
            .or_else(|| by_hand.then(most_room).flatten())
    }

    fn take_back(&mut self, tree: &PlanTree, choice: RingDay, visits: &[Option<usize>]) {
        self.untask(tree.unit, choice.day, tree.minutes(choice.p));
        let needs = self.property.visits(tree, choice.day);
        for (visit, day) in needs.iter().zip(visits) {
            if let Some(day) = day {
                self.untask(tree.unit, *day, tree.visit_minutes(visit));
            }
        }
    }

    /// Takes a tree out of the plan, with its visits.
    pub(crate) fn remove(&mut self, at: usize) -> Option<Placed> {
        let placed = self.placed[at].take()?;
        let tree = &self.property.trees[at];
        self.take_back(tree, placed.choice, &placed.visits);
        self.take_area(tree, -1.0);
        Some(placed)
    }

    /// Puts back what [`Book::remove`] took out.
    pub(crate) fn put_back(&mut self, at: usize, placed: Placed) {
        let tree = &self.property.trees[at];
        self.task(tree.unit, placed.choice.day, tree.minutes(placed.choice.p));
        let needs = self.property.visits(tree, placed.choice.day);
        for (visit, day) in needs.iter().zip(&placed.visits) {
            if let Some(day) = day {
                self.task(tree.unit, *day, tree.visit_minutes(visit));
            }
        }
        self.take_area(tree, 1.0);
        self.placed[at] = Some(placed);
    }
}

/// Days of a tree, the best by `worth` first, the earlier of equals.
fn by_worth(
    property: &Property,
    tree: &PlanTree,
    worth: impl Fn(RingDay) -> f64,
) -> Vec<(f64, RingDay)> {
    let mut days: Vec<(f64, RingDay)> = property
        .choices(tree)
        .map(|choice| (worth(choice), choice))
        .collect();
    days.sort_by(|a, b| b.0.total_cmp(&a.0).then(a.1.day.cmp(&b.1.day)));
    days
}

/// Places all that is worth its price: chosen days first, then by worth a minute; then fills up what hours are left.
pub(crate) async fn greedy<'a>(
    property: &'a Property,
    market: &Market<'_>,
    rests: &Rests,
) -> Book<'a> {
    let mut book = Book::new(property);
    for (at, tree) in property.trees.iter().enumerate() {
        if tree.pinned.is_some()
            && let Some(choice) = property.choices(tree).next()
        {
            book.place(at, choice, market);
        }
    }
    let mut order: Vec<(f64, usize)> = Vec::new();
    for (at, tree) in property.trees.iter().enumerate() {
        if tree.pinned.is_none()
            && let Some((_, p, worth)) = market.best(tree)
        {
            order.push((worth / (tree.value * p - worth), at));
        }
    }
    order.sort_by(|a, b| b.0.total_cmp(&a.0).then(a.1.cmp(&b.1)));
    for (_, at) in order {
        rests.done(PLACED).await;
        let tree = &property.trees[at];
        let enter = |day: usize| match book.is_elsewhere(tree.unit, day) {
            true => property.enter.to_ring * market.prices.minute[day],
            false => 0.0,
        };
        let days = by_worth(property, tree, |choice| {
            market.reduced(tree, choice.day, choice.p) - enter(choice.day)
        });
        for (_, choice) in days {
            let worth = market.reduced(tree, choice.day, choice.p);
            if worth <= 0.0 || book.place(at, choice, market) {
                break;
            }
        }
    }
    fill(&mut book, market, rests).await;
    book
}

/// Places what is still out wherever there is room: by value a minute, on its likeliest day.
pub(crate) async fn fill(book: &mut Book<'_>, market: &Market<'_>, rests: &Rests) {
    for at in left_out(book) {
        rests.done(PLACED).await;
        book.place_likeliest(at, market);
    }
}

/// Trees that are out and have a day, by value a minute on their likeliest one.
pub(crate) fn left_out(book: &Book<'_>) -> Vec<usize> {
    let mut out: Vec<(f64, usize)> = Vec::new();
    for (at, tree) in book.property.trees.iter().enumerate() {
        if book.placed[at].is_none() {
            let worth = |choice: RingDay| tree.value * choice.p / tree.minutes(choice.p);
            let most = book.property.choices(tree).map(worth).reduce(f64::max);
            out.extend(most.map(|most| (most, at)));
        }
    }
    out.sort_by(|a, b| b.0.total_cmp(&a.0).then(a.1.cmp(&b.1)));
    out.into_iter().map(|(_, at)| at).collect()
}
