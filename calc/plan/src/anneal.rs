//! Priced annealing: where hours bind, a plan is shaken at prices a little under the right ones, ever more gently, and kept
//! only if it came out better (Kirkpatrick, Gelatt and Vecchi 1983, "Optimization by simulated annealing"; from memory).
//! Fixed counts and a fixed seed: the same property gives the same plan.

use crate::greedy::{Book, Placed, fill};
use crate::market::{Market, Prices};
use crate::mend::mend;
use crate::property::{Property, RingDay};
use crate::rests::Rests;

/// Moves, for lists of up to [`FEW`] trees and of more.
const MOVES: [u32; 2] = [117_000, 270_000];
const FEW: usize = 1_000;
/// Steps of the temperature.
const STEPS: u32 = 12;
/// Temperature, as a share of the mean value of a tree, at first and at last.
const WARMTH: [f64; 2] = [0.02, 0.002];
/// What is left of the prices of minutes and of area, at first and at last: cheaper ones let more trees be tried.
const OF_MINUTES: [f64; 2] = [0.98, 0.9];
const OF_AREA: [f64; 2] = [0.83, 0.4];
/// Trees of a day that go for one that comes, at most.
const VICTIMS: usize = 2;
/// A move takes as long as to look at so many trees.
const MOVED: usize = 3;
/// Seed of the moves; any will do.
const SEED: u64 = 20_270_612;

/// Random numbers by SplitMix64 (Steele, Lea and Flood 2014, "Fast splittable pseudorandom number generators"; from memory).
struct Random(u64);

impl Random {
    fn bits(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let z = (self.0 ^ (self.0 >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        let z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        z ^ (z >> 31)
    }

    /// Below a number that is not 0.
    fn below(&mut self, many: usize) -> usize {
        (((self.bits() >> 32) * many as u64) >> 32) as usize
    }

    /// Above 0, 1 at most.
    fn share(&mut self) -> f64 {
        ((self.bits() >> 11) as f64 + 1.0) / (1_u64 << 53) as f64
    }
}

/// A plan in the making, with the trees of each day.
struct Shaken<'a> {
    book: Book<'a>,
    /// By day the trees whose day nobody chose, in any order; and the place of each there.
    on_day: Vec<Vec<usize>>,
    place_in: Vec<usize>,
    /// What was changed since the move began: a tree, and what it had.
    changed: Vec<(usize, Option<Placed>)>,
}

impl<'a> Shaken<'a> {
    fn of(book: Book<'a>) -> Self {
        let property = book.property;
        let mut shaken = Self {
            on_day: vec![Vec::new(); property.days.len()],
            place_in: vec![0; property.trees.len()],
            changed: Vec::new(),
            book,
        };
        for (at, tree) in property.trees.iter().enumerate() {
            if let (None, Some(placed)) = (tree.pinned, &shaken.book.placed[at]) {
                let day = placed.choice.day;
                shaken.join(at, day);
            }
        }
        shaken
    }

    fn join(&mut self, at: usize, day: usize) {
        self.place_in[at] = self.on_day[day].len();
        self.on_day[day].push(at);
    }

    fn leave(&mut self, at: usize, day: usize) {
        let here = self.place_in[at];
        self.on_day[day].swap_remove(here);
        if let Some(moved) = self.on_day[day].get(here) {
            self.place_in[*moved] = here;
        }
    }

    fn take_out(&mut self, at: usize) -> Option<Placed> {
        let placed = self.book.remove(at)?;
        self.leave(at, placed.choice.day);
        Some(placed)
    }

    fn put_on(&mut self, at: usize, choice: RingDay, market: &Market<'_>) -> bool {
        let placed = self.book.place(at, choice, market);
        if placed {
            self.join(at, choice.day);
        }
        placed
    }

    /// Takes all back that was changed since the move began.
    fn undo(&mut self) {
        let changed = core::mem::take(&mut self.changed);
        for (at, _) in &changed {
            self.take_out(*at);
        }
        for (at, had) in changed {
            if let Some(placed) = had {
                let day = placed.choice.day;
                self.book.put_back(at, placed);
                self.join(at, day);
            }
        }
    }

    /// What a tree is worth where it is.
    fn worth_now(&self, at: usize, market: &Market<'_>) -> f64 {
        let tree = &self.book.property.trees[at];
        let placed = self.book.placed[at].as_ref();
        placed.map_or(0.0, |it| market.reduced(tree, it.choice.day, it.choice.p))
    }

    /// Tries one tree on one of its days, at a temperature.
    fn moved(&mut self, movable: &[usize], warmth: f64, market: &Market<'_>, random: &mut Random) {
        let at = movable[random.below(movable.len())];
        let choice = drawn(self.book.property, &self.book, at, random);
        let least = warmth * libm::log(random.share());
        let now = self.book.placed[at].as_ref();
        if now.map(|placed| placed.choice.day) != Some(choice.day) {
            self.try_on(at, choice, least, market, random);
        }
    }

    /// Tries a tree on a day, where others go if they must; kept where the worth of all changes by `least` or more.
    fn try_on(
        &mut self,
        at: usize,
        choice: RingDay,
        least: f64,
        market: &Market<'_>,
        random: &mut Random,
    ) {
        let property = self.book.property;
        let tree = &property.trees[at];
        let mut change = market.reduced(tree, choice.day, choice.p) - self.worth_now(at, market);
        // Those who go lose at least nothing in sum: what is too little already is not tried.
        if change < least {
            return;
        }
        self.changed.clear();
        let had = self.take_out(at);
        self.changed.push((at, had));
        let mut is_there = self.put_on(at, choice, market);
        let mut gone = [at; VICTIMS];
        let mut many = 0;
        while !is_there && many < VICTIMS {
            let victims = &self.on_day[choice.day];
            if victims.is_empty() {
                break;
            }
            let victim = victims[random.below(victims.len())];
            if !self.book.has_area(tree) && property.trees[victim].unit != tree.unit {
                break;
            }
            change -= self.worth_now(victim, market);
            let had = self.take_out(victim);
            self.changed.push((victim, had));
            gone[many] = victim;
            many += 1;
            is_there = self.put_on(at, choice, market);
        }
        if !is_there {
            return self.undo();
        }
        for victim in gone.into_iter().take(many) {
            change += self.place_best(victim, market);
        }
        if change < least {
            self.undo();
        }
    }

    /// Puts a tree on the best of its days that has room, and tells what it is worth there.
    fn place_best(&mut self, at: usize, market: &Market<'_>) -> f64 {
        let property = self.book.property;
        let tree = &property.trees[at];
        let mut below = f64::INFINITY;
        // Days are looked at from the best one down, without sorting them: the first ones have room mostly.
        loop {
            let mut best: Option<(f64, RingDay)> = None;
            for choice in property.choices(tree) {
                let worth = market.reduced(tree, choice.day, choice.p);
                if worth < below && best.is_none_or(|(most, _)| worth > most) {
                    best = Some((worth, choice));
                }
            }
            match best {
                Some((worth, choice)) if worth > 0.0 => {
                    if self.put_on(at, choice, market) {
                        return worth;
                    }
                    below = worth;
                }
                _ => return 0.0,
            }
        }
    }
}

/// A plan made from another by shaking it; it may be worse.
pub(crate) async fn anneal<'a>(from: &Book<'a>, prices: &Prices, rests: &Rests) -> Book<'a> {
    let property = from.property;
    let mut shaken = Shaken::of(from.clone());
    let movable: Vec<usize> = (0..property.trees.len())
        .filter(|at| {
            let tree = &property.trees[*at];
            tree.pinned.is_none() && !property.classes[tree.class].is_empty()
        })
        .collect();
    let value: f64 = movable
        .iter()
        .map(|at| property.trees[*at].value)
        .fold(0.0, |sum, it| sum + it);
    let mean = value / movable.len().max(1) as f64;
    let moves = MOVES[usize::from(property.trees.len() > FEW)] / STEPS;
    let mut random = Random(SEED);
    for step in 0..STEPS {
        let late = f64::from(step) / f64::from(STEPS - 1);
        let between = |[first, last]: [f64; 2]| first + late * (last - first);
        let prices = prices.times(between(OF_MINUTES), between(OF_AREA));
        let market = Market::new(property, &prices);
        let [warm, cool] = WARMTH;
        let warmth = mean * warm * libm::pow(cool / warm, late);
        for _ in 0..moves {
            if movable.is_empty() {
                break;
            }
            rests.done(MOVED).await;
            shaken.moved(&movable, warmth, &market, &mut random);
        }
    }
    let mut book = shaken.book;
    let market = Market::new(property, prices);
    fill(&mut book, &market, rests).await;
    mend(&mut book, &market, rests).await;
    book
}

/// One of a tree's days; of two that are drawn one on which the crew is in its unit, if one is.
fn drawn(property: &Property, book: &Book<'_>, at: usize, random: &mut Random) -> RingDay {
    let tree = &property.trees[at];
    let days = &property.classes[tree.class];
    let mut draw = || days[random.below(days.len())];
    let (first, second) = (draw(), draw());
    let away = |choice: &RingDay| book.is_elsewhere(tree.unit, choice.day);
    if away(&first) && !away(&second) {
        second
    } else {
        first
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::greedy::greedy;
    use crate::price::prices;
    use crate::property::{PlanTree, Profile, VisitNeed, WorkDay};
    use crate::rests::at_once;
    use crate::solve::solve;

    /// A list whose hours suffice for some of its trees, drawn by a seed.
    fn property(seed: u64, trees: usize, share: f64) -> Property {
        let mut random = Random(seed);
        let (rings, later) = (4, 2);
        let day = |at: usize| {
            let first = chrono::NaiveDate::from_ymd_opt(2027, 5, 1).expect("a day");
            first + chrono::Days::new(7 * at as u64)
        };
        let visit = |index, from, to, first_look| VisitNeed {
            index,
            from,
            to,
            first_look,
        };
        let after = (0..rings + later).map(|day| match day {
            day if day >= rings => Vec::new(),
            day => vec![
                visit(0, day + 1, day + 3, true),
                visit(1, rings, rings + later, false),
            ],
        });
        let mut draw = |low: f64, high: f64| low + (high - low) * random.share();
        let trees: Vec<PlanTree> = (0..trees)
            .map(|at| PlanTree {
                unit: at % 3,
                class: at % 5,
                profile: 0,
                value: draw(1.0, 4.0),
                work: [draw(4.0, 30.0), draw(30.0, 60.0), 2.0],
                visits: [3.5, draw(3.0, 9.0)],
                basal_m2: draw(0.01, 0.2),
                crown_m2: 0.0,
                pinned: None,
            })
            .collect();
        let classes = (0..5)
            .map(|_| {
                let p = |day| RingDay {
                    day,
                    p: (draw(80.0, 190.0) as u32) as f64 * 0.005,
                };
                (0..rings).map(p).collect()
            })
            .collect();
        let all: f64 = trees
            .iter()
            .map(|it| it.work[0] + it.visits[0] + it.visits[1])
            .fold(0.0, |a, b| a + b);
        let basal: f64 = trees.iter().map(|it| it.basal_m2).fold(0.0, |a, b| a + b);
        let unit = crate::property::PlanUnit {
            limit_m2: seed.is_multiple_of(2).then_some(basal / 5.0),
            crown_limit_m2: None,
        };
        Property {
            trees,
            classes,
            profiles: vec![Profile {
                after: after.collect(),
            }],
            days: (0..rings + later)
                .map(|at| WorkDay {
                    day: day(at),
                    minutes: share * all / (rings + later) as f64,
                    rings: at < rings,
                    agreed: at < rings,
                })
                .collect(),
            units: vec![unit; 3],
            ..Property::default()
        }
    }

    #[test]
    fn a_plan_is_never_worse_for_being_shaken_and_mostly_better() {
        let mut better = 0;
        for seed in 0..12 {
            let property = property(seed, 60, 0.5);
            let priced = prices(&property);
            let market = Market::new(&property, &priced.prices);
            let before = at_once(async |rests| {
                let mut before = greedy(&property, &market, rests).await;
                mend(&mut before, &market, rests).await;
                before
            });
            let after = solve(&property);
            assert!(after.value >= before.value() && after.value <= priced.bound + 1e-9);
            better += usize::from(after.value > before.value());
        }
        assert!(better > 6, "{better}");
    }

    /// Minutes, area and days of each tree added up anew after thousands of moves and of moves taken back.
    #[test]
    fn a_shaken_plan_keeps_its_limits_and_is_the_same_twice() {
        for seed in 0..4 {
            let mut property = property(seed, 40, 0.5);
            property.trees[7].pinned = Some(property.classes[2][1].day);
            let priced = prices(&property);
            let market = Market::new(&property, &priced.prices);
            let before = at_once(async |rests| greedy(&property, &market, rests).await);
            let shaken = || at_once(async |rests| anneal(&before, &priced.prices, rests).await);
            let book = shaken();
            assert_eq!(book.placed, shaken().placed);
            let mut minutes = vec![0.0; property.days.len()];
            let mut area = [0.0; 3];
            for (tree, placed) in property.trees.iter().zip(&book.placed) {
                let Some(placed) = placed else { continue };
                assert!(property.choices(tree).any(|choice| choice == placed.choice));
                minutes[placed.choice.day] += tree.minutes(placed.choice.p);
                area[tree.unit] += tree.basal_m2;
                let needs = property.visits(tree, placed.choice.day);
                assert_eq!(needs.len(), placed.visits.len());
                for (need, day) in needs.iter().zip(&placed.visits) {
                    let day = day.expect("each window has a day");
                    assert!((need.from..need.to).contains(&day));
                    minutes[day] += tree.visit_minutes(need);
                }
            }
            assert!(book.placed[7].is_some(), "a chosen day is kept");
            for (day, minutes) in property.days.iter().zip(minutes) {
                assert!(minutes <= day.minutes + 1e-6, "{minutes} {}", day.minutes);
            }
            for (unit, area) in property.units.iter().zip(area) {
                assert!(unit.limit_m2.is_none_or(|limit| area <= limit + 1e-9));
            }
        }
    }
}
