//! After the work: what share of the ringed trees was found dead, and of the rings that held, with the interval that so
//! few trees leave open.

use calc::models::outlook::{self, SizeClass};
use calc::models::visits::{VisitConstants, season_on, tells_of_end};
use calc::reference::Reference;
use calc::terms::place::Hemisphere;
use calc::terms::species::Species;
use calc_data::list::PlanConstants;
use chrono::NaiveDate;
use std::collections::BTreeMap;

/// The quantile of the normal distribution that leaves 2.5 % on each side.
const NORMAL_95: f64 = 1.959_963_984_540_054;

/// So many of so many.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct ShareOf {
    /// Those for which it holds.
    pub hits: usize,
    /// All that were looked at.
    pub of: usize,
}

impl ShareOf {
    /// The share, 0 to 1, and the ends of its 95 % interval after Wilson (1927, "Probable inference, the law of
    /// succession, and statistical inference"); none where nothing was looked at.
    ///
    /// ```
    /// // Newcombe 1998, "Two-sided confidence intervals for the single proportion", table I, method 3: 81 of 263.
    /// let (share, low, high) = calc_plan::ShareOf { hits: 81, of: 263 }.wilson().expect("some");
    /// assert_eq!([share, low, high].map(|it| (it * 1e4_f64).round()), [3080.0, 2553.0, 3662.0]);
    /// ```
    #[must_use]
    pub fn wilson(self) -> Option<(f64, f64, f64)> {
        if self.of == 0 {
            return None;
        }
        let n = self.of as f64;
        let share = self.hits as f64 / n;
        let square = NORMAL_95 * NORMAL_95;
        let middle = share + square / (2.0 * n);
        let step = NORMAL_95 / (2.0 * n);
        let half = NORMAL_95 * libm::sqrt(share * (1.0 - share) / n + step * step);
        let whole = 1.0 + square / n;
        let end = |end: f64| (end / whole).clamp(0.0, 1.0);
        Some((share, end(middle - half), end(middle + half)))
    }

    /// The same where it is told; none where fewer were looked at than a share needs: counts alone are told then.
    #[must_use]
    pub fn told(self, own: &PlanConstants) -> Option<(f64, f64, f64)> {
        self.wilson().filter(|_| self.of as f64 >= own.share_fewest)
    }
}

/// What was found at a tree on a day.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct LookedAt {
    /// The day.
    pub day: NaiveDate,
    /// Whether the stem was dead above the ring, or down.
    pub dead: bool,
    /// Whether live bark bridged the ring.
    pub bridge: bool,
}

/// A tree that was ringed, with every look at it.
#[derive(Clone, Debug)]
pub struct RingedTree {
    /// Its species.
    pub species: &'static Species,
    /// Diameter of its largest stem at breast height, mm.
    pub dbh_mm: f64,
    /// The half of the world that it stands in.
    pub hemisphere: Hemisphere,
    /// The day of its first ring.
    pub ringed_on: NaiveDate,
    /// In any order.
    pub looks: Vec<LookedAt>,
}

/// How many trees of a species and size were dead at the end of a season after the ring.
#[derive(Clone, Debug)]
pub struct KillRate {
    /// The species.
    pub species: &'static Species,
    /// The size class of the outlook.
    pub size: SizeClass,
    /// Leaf season after the ring, from 1.
    pub season: u8,
    /// Dead, of those that somebody looked at late enough in that season ([`tells_of_end`]) or found dead before.
    pub dead: ShareOf,
    /// Trees whose season has come and at which nobody looked.
    pub not_looked_at: usize,
    /// What the outlook says of such stems, per cent: lowest and highest; none where no table has it.
    pub outlook: Option<(f64, f64)>,
}

/// Kill rates by species, size class and season, in this order, for the seasons whose visits are part of a plan; a season
/// that has come for no tree is left out.
#[must_use]
pub fn kill_rates(
    (reference, own): (&'static Reference, &PlanConstants),
    trees: &[RingedTree],
    today: NaiveDate,
) -> Vec<KillRate> {
    let constants = &reference.constants.visits;
    let mut rates: BTreeMap<(&str, SizeClass, u8), KillRate> = BTreeMap::new();
    for tree in trees {
        let size = outlook::size_class(tree.dbh_mm);
        let now = season_of(constants, tree, today);
        // A season whose end can't be judged yet is left out.
        let over = now - u8::from(!tells(constants, tree, today));
        for season in 1..=over.min(own.plan_years as u8) {
            let key = (tree.species.scientific, size, season);
            let rate = rates.entry(key).or_insert_with(|| KillRate {
                species: tree.species,
                size,
                season,
                dead: ShareOf::default(),
                not_looked_at: 0,
                outlook: None,
            });
            rate.outlook = widened(rate.outlook, expected(reference, tree, season));
            match state(constants, tree, season) {
                Some(dead) => {
                    rate.dead.of += 1;
                    rate.dead.hits += usize::from(dead);
                }
                None => rate.not_looked_at += 1,
            }
        }
    }
    rates.into_values().collect()
}

/// Rings at which no look found a bridge, of those at which somebody looked.
#[must_use]
pub fn rings_that_held(trees: &[RingedTree]) -> ShareOf {
    let looked = trees.iter().filter(|tree| !tree.looks.is_empty());
    let held = |tree: &&RingedTree| tree.looks.iter().all(|look| !look.bridge);
    ShareOf {
        hits: looked.clone().filter(held).count(),
        of: looked.count(),
    }
}

fn season_of(constants: &VisitConstants, tree: &RingedTree, day: NaiveDate) -> u8 {
    season_on(constants, tree.ringed_on, day, tree.hemisphere)
}

/// Whether a tree was dead at the end of a season, by the looks late in it: what was dead before stays so; none where
/// nobody looked then. That a crown lived weeks after the ring says nothing of the season's end.
fn state(constants: &VisitConstants, tree: &RingedTree, season: u8) -> Option<bool> {
    let of = |look: &LookedAt| season_of(constants, tree, look.day);
    if tree
        .looks
        .iter()
        .any(|look| look.dead && of(look) <= season)
    {
        return Some(true);
    }
    let mut late = tree.looks.iter();
    let looked = late.any(|look| of(look) == season && tells(constants, tree, look.day));
    looked.then_some(false)
}

fn tells(constants: &VisitConstants, tree: &RingedTree, day: NaiveDate) -> bool {
    tells_of_end(constants, tree.ringed_on, day, tree.hemisphere)
}

/// The outlook's range for such a stem at the end of a season, per cent.
fn expected(reference: &'static Reference, tree: &RingedTree, season: u8) -> Option<(f64, f64)> {
    let (rows, own) = (reference.outlook, reference.outlook_species);
    let outlook = outlook::judge(rows, own, tree.species, tree.dbh_mm)?;
    let of = outlook.seasons.iter().find(|it| it.season == season)?;
    Some((of.share.low, of.share.high))
}

fn widened(range: Option<(f64, f64)>, by: Option<(f64, f64)>) -> Option<(f64, f64)> {
    match (range, by) {
        (Some(a), Some(b)) => Some((a.0.min(b.0), a.1.max(b.1))),
        (range, by) => range.or(by),
    }
}
