//! The plan: prices, a greedy plan along them, mended, and shaken where hours bind.

use crate::anneal::anneal;
use crate::greedy::{Book, PLACED, fill, greedy};
use crate::kept::EarlierDays;
use crate::market::{Market, Prices};
use crate::mend::{mend, swap_in};
use crate::price::{Priced, prices_from};
use crate::property::Property;
use crate::rests::{Rests, at_once};

/// A visit that costs minutes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PlannedVisit {
    /// Its place among the visits of the answer.
    pub index: u8,
    /// Its work day, by place in [`Property::days`]; none where none lies in its window: it needs a day.
    pub day: Option<usize>,
    /// Mean person-minutes.
    pub minutes: f64,
}

/// A tree that is planned.
#[derive(Clone, Debug, PartialEq)]
pub struct Planned {
    /// Its work day, by place in [`Property::days`].
    pub day: usize,
    /// Probability of slip then.
    pub p: f64,
    /// Mean person-minutes of the ring.
    pub minutes: f64,
    /// Its visits.
    pub visits: Vec<PlannedVisit>,
}

/// Why a tree is not planned; the first that holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum NotPlanned {
    /// On no work day may it be ringed.
    NoDay,
    /// The limit of its unit leaves no room for it this season.
    Pacing,
    /// The hours do not suffice.
    NoHours,
}

/// A plan.
#[derive(Clone, Debug, PartialEq)]
pub struct Plan {
    /// Each tree, in the order of [`Property::trees`].
    pub trees: Vec<Result<Planned, NotPlanned>>,
    /// Expected number of trees ringed while the bark slips, weighted.
    pub value: f64,
    /// The prices, and what no plan can exceed.
    pub priced: Priced,
    /// Person-minutes of rings and of visits, by work day.
    pub used: Vec<[f64; 2]>,
}

impl Plan {
    /// How far the plan stays under what no plan can exceed, per cent.
    #[must_use]
    pub fn gap_percent(&self) -> f64 {
        if self.priced.bound <= 0.0 {
            return 0.0;
        }
        (100.0 * (1.0 - self.value / self.priced.bound)).max(0.0)
    }

    /// How many trees are planned.
    #[must_use]
    pub fn planned(&self) -> usize {
        self.trees.iter().filter(|tree| tree.is_ok()).count()
    }
}

/// A larger gap says that hours bind: the plan is shaken. Under it shaking won 0.15 per cent at most on invented lists, for
/// as much time again.
const GOOD_GAP: f64 = 0.005;

/// Finds a plan. It always ends, and the same property gives the same plan to the last digit.
///
/// ```
/// use calc_plan::{Property, solve};
/// assert_eq!(solve(&Property::default()).planned(), 0);
/// ```
#[must_use]
pub fn solve(property: &Property) -> Plan {
    at_once(async |rests| Draft::of(property, None, rests).await.finished(rests).await)
}

/// A plan that may still get better.
pub(crate) struct Draft<'a> {
    book: Book<'a>,
    priced: Priced,
}

impl<'a> Draft<'a> {
    /// The first plan along the right prices; those of a property that is nearly alike are a good beginning.
    pub(crate) async fn of(property: &'a Property, from: Option<&Prices>, rests: &Rests) -> Self {
        let priced = prices_from(property, from, rests).await;
        let market = Market::new(property, &priced.prices);
        let mut book = greedy(property, &market, rests).await;
        mend(&mut book, &market, rests).await;
        Self { book, priced }
    }

    /// The plan as it is.
    pub(crate) fn told(&self) -> Plan {
        told(&self.book, self.priced.clone())
    }

    /// The plan, shaken where its gap is worth that: the better one of the two.
    pub(crate) async fn finished(mut self, rests: &Rests) -> Plan {
        if self.book.value() < self.priced.bound * (1.0 - GOOD_GAP) {
            let shaken = anneal(&self.book, &self.priced.prices, rests).await;
            if shaken.value() > self.book.value() {
                self.book = shaken;
            }
        }
        told(&self.book, self.priced)
    }
}

/// Finds a plan that keeps the days of an earlier one: what no longer fits is dropped, changed and new trees are offered a
/// place, by a swap where hours are full, and what is left of the hours is filled. Nothing else moves.
///
/// ```
/// use calc_plan::{Property, solve_kept};
/// assert_eq!(solve_kept(&Property::default(), &[]).planned(), 0);
/// ```
#[must_use]
pub fn solve_kept(property: &Property, before: &[EarlierDays]) -> Plan {
    at_once(async |rests| keep(property, before, rests).await)
}

/// [`solve_kept`], with rests.
pub(crate) async fn keep(property: &Property, before: &[EarlierDays], rests: &Rests) -> Plan {
    let priced = prices_from(property, None, rests).await;
    let market = Market::new(property, &priced.prices);
    let mut book = Book::new(property);
    let mut changed = Vec::new();
    // Days that somebody chose go first, as in a fresh plan.
    for by_hand in [true, false] {
        for (at, tree) in property.trees.iter().enumerate() {
            if tree.pinned.is_some() != by_hand {
                continue;
            }
            rests.done(PLACED).await;
            let had = before.get(at).unwrap_or(&EarlierDays::New);
            let chosen = |day: usize| property.choices(tree).find(|it| it.day == day);
            let stays = match had {
                EarlierDays::On(kept) => chosen(kept.day).is_some_and(|choice| {
                    book.place_as(at, choice, &kept.visits) || book.place(at, choice, &market)
                }),
                EarlierDays::New | EarlierDays::Out => {
                    by_hand && place_pinned(&mut book, at, &market)
                }
            };
            if !stays && *had != EarlierDays::Out {
                changed.push(at);
            }
        }
    }
    for at in &changed {
        book.place_likeliest(*at, &market);
    }
    swap_in(&mut book, &market, &changed, rests).await;
    fill(&mut book, &market, rests).await;
    told(&book, priced)
}

/// A tree on the day that somebody chose.
fn place_pinned(book: &mut Book<'_>, at: usize, market: &Market<'_>) -> bool {
    let property = book.property;
    let choice = property.choices(&property.trees[at]).next();
    choice.is_some_and(|choice| book.place(at, choice, market))
}

fn told(book: &Book<'_>, priced: Priced) -> Plan {
    let property = book.property;
    let mut used = vec![[0.0; 2]; property.days.len()];
    let mut trees = Vec::with_capacity(property.trees.len());
    for (tree, placed) in property.trees.iter().zip(&book.placed) {
        let Some(placed) = placed else {
            trees.push(Err(if property.choices(tree).next().is_none() {
                NotPlanned::NoDay
            } else if !book.has_area(tree) {
                NotPlanned::Pacing
            } else {
                NotPlanned::NoHours
            }));
            continue;
        };
        let minutes = tree.minutes(placed.choice.p);
        used[placed.choice.day][0] += minutes;
        let needs = property.visits(tree, placed.choice.day);
        let visits = needs.iter().zip(&placed.visits).map(|(need, day)| {
            let minutes = tree.visit_minutes(need);
            if let Some(day) = day {
                used[*day][1] += minutes;
            }
            PlannedVisit {
                index: need.index,
                day: *day,
                minutes,
            }
        });
        trees.push(Ok(Planned {
            day: placed.choice.day,
            p: placed.choice.p,
            minutes,
            visits: visits.collect(),
        }));
    }
    Plan {
        trees,
        value: book.value(),
        priced,
        used,
    }
}
