//! What a minute of each work day is worth, and a square metre of each unit; and the bound that they prove.

use crate::market::{Market, Prices};
use crate::oracle::{Asked, Oracle};
use crate::property::Property;
use crate::rests::{Rests, at_once};

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

/// Passes of each kind of step, at most: the first ones find out what is short at all, then prices are balanced, then set
/// right more finely. Balancing needs fewer where it begins at prices of a property that is nearly alike.
const PASSES: [usize; 3] = [100, 200, 100];
const PASSES_AGAIN: usize = 60;
/// Passes without progress, after which steps get shorter.
const PATIENCE: usize = 10;
/// A step aims so far under the best bound, as a share of it, at first, and where prices were balanced before.
const AIM: [f64; 2] = [0.05, 0.01];
/// It ends when it would aim nearer than this.
const AIM_LEAST: f64 = 0.0001;
/// What is left of the aim where steps get shorter.
const AIM_SHRINKS: f64 = 0.6;
/// So many trees are asked in the time that one is looked at.
const AT_ONCE: usize = 16;
/// Share of the last direction in the next one.
const MEMORY: f64 = 0.6;
/// Share of the step that Polyak's rule gives.
const STEP: f64 = 0.7;
/// Balancing: share of what was asked for before in what counts as asked for, share of what is asked for too much by which
/// a price rises, by how much at most, and after how many passes that is half.
const BALANCE_MEMORY: f64 = 0.8;
const BALANCE_RISE: f64 = 0.3;
const BALANCE_MOST: f64 = 0.3;
const BALANCE_HALF: f64 = 60.0;
/// A price of none that has to rise begins at this share of what it were if all days were worth alike.
const BALANCE_FROM: f64 = 0.01;

/// Finds prices: first by subgradient steps (Polyak's length, with the last direction in it), each row by its own capacity;
/// then each price rises and falls by itself with what is asked for of its row, over the last passes together: where many
/// days are nearly alike, trees jump between them, and steps of all rows at once get too short for what is short on all of
/// them; then by finer steps again. The bound is the best of all passes.
///
/// ```
/// use calc_plan::{Property, prices};
/// let nothing = prices(&Property::default());
/// assert_eq!(nothing.bound, 0.0);
/// ```
#[must_use]
pub fn prices(property: &Property) -> Priced {
    at_once(async |rests| prices_from(property, None, rests).await)
}

/// The same, with steps that begin at other prices: those of a property that is nearly alike.
pub(crate) async fn prices_from(
    property: &Property,
    from: Option<&Prices>,
    rests: &Rests,
) -> Priced {
    let oracle = Oracle::new(property);
    let mut best = Priced {
        prices: from.cloned().unwrap_or_else(|| Prices::none(property)),
        bound: f64::INFINITY,
        terms: Vec::new(),
    };
    let [first, balanced, fine] = PASSES;
    let balanced = match from {
        Some(_) => PASSES_AGAIN,
        None => balanced,
    };
    let search = Search {
        property,
        oracle: &oracle,
        rests,
    };
    let is_short = search.steps(&mut best, AIM[0], first).await;
    if is_short {
        search.balance(&mut best, balanced).await;
        search.steps(&mut best, AIM[1], fine).await;
    }
    let market = Market::new(property, &best.prices);
    let worth = |tree| market.best(tree).map_or(0.0, |(_, _, worth)| worth);
    best.terms = property.trees.iter().map(worth).collect();
    best
}

/// The search for prices.
struct Search<'a> {
    property: &'a Property,
    oracle: &'a Oracle<'a>,
    rests: &'a Rests,
}

impl Search<'_> {
    /// Asks at some prices, and keeps them where they prove a lower bound.
    async fn ask(&self, now: &Prices, best: &mut Priced) -> Asked {
        self.rests
            .done(1 + self.property.trees.len() / AT_ONCE)
            .await;
        let asked = self.oracle.ask(now);
        if asked.bound < best.bound {
            best.bound = asked.bound;
            best.prices.clone_from(now);
        }
        asked
    }

    /// Subgradient steps from the best prices; false where nothing is short at them, so that they are the right ones.
    async fn steps(&self, best: &mut Priced, mut aim: f64, passes: usize) -> bool {
        let property = self.property;
        let mut now = best.prices.clone();
        let mut direction = Prices::none(property);
        let mut waited = 0;
        for _ in 0..passes {
            let before = best.bound;
            let asked = self.ask(&now, best).await;
            waited = if asked.bound < before * (1.0 - 1e-7) {
                0
            } else {
                waited + 1
            };
            if waited >= PATIENCE {
                waited = 0;
                aim *= AIM_SHRINKS;
                now = best.prices.clone();
                direction = Prices::none(property);
                if aim < AIM_LEAST {
                    break;
                }
                continue;
            }
            // How far each row is asked for beyond what there is, as a share of it; a row that costs nothing and has
            // enough stays out.
            let mut length = 0.0;
            each_row(
                &mut now,
                &mut direction,
                &asked,
                property,
                |price, direction, asked, there| {
                    *direction = MEMORY * *direction + asked / there - 1.0;
                    if *price == 0.0 && *direction < 0.0 {
                        *direction = 0.0;
                    }
                    length += *direction * *direction;
                },
            );
            if length == 0.0 {
                return false;
            }
            let step = STEP * (asked.bound - (1.0 - aim) * best.bound) / length;
            each_row(
                &mut now,
                &mut direction,
                &asked,
                property,
                |price, direction, _, there| {
                    *price = (*price + step * *direction / there).max(0.0);
                },
            );
        }
        true
    }

    /// Lets each price rise and fall with what is asked for of its row.
    async fn balance(&self, best: &mut Priced, passes: usize) {
        let property = self.property;
        let mut now = best.prices.clone();
        let mut usual: Option<Prices> = None;
        // What a row is worth, if all were worth alike.
        let value = best.bound / property.days.len().max(1) as f64;
        for pass in 0..passes {
            let asked = self.ask(&now, best).await;
            let usual = usual.get_or_insert_with(|| Prices {
                minute: asked.minutes.clone(),
                area: asked.area.clone(),
                crown: asked.crown.clone(),
            });
            let late = pass as f64 / BALANCE_HALF;
            let most = BALANCE_MOST / (1.0 + late * late);
            each_row(
                &mut now,
                usual,
                &asked,
                property,
                |price, usual, asked, there| {
                    *usual = BALANCE_MEMORY * *usual + (1.0 - BALANCE_MEMORY) * asked;
                    let over = *usual / there - 1.0;
                    if over > 0.0 {
                        *price = price.max(BALANCE_FROM * value / there);
                    }
                    *price *= 1.0 + (BALANCE_RISE * over).clamp(-most, most);
                },
            );
        }
    }
}

/// Each row that there is something of: its price, what is kept of it beside, what is asked for of it and how much
/// there is.
fn each_row(
    prices: &mut Prices,
    beside: &mut Prices,
    asked: &Asked,
    property: &Property,
    mut row: impl FnMut(&mut f64, &mut f64, f64, f64),
) {
    for (at, day) in property.days.iter().enumerate() {
        if day.minutes > 0.0 {
            let (price, beside) = (&mut prices.minute[at], &mut beside.minute[at]);
            row(price, beside, asked.minutes[at], day.minutes);
        }
    }
    for (at, unit) in property.units.iter().enumerate() {
        if let Some(there) = unit.limit_m2.filter(|there| *there > 0.0) {
            let (price, beside) = (&mut prices.area[at], &mut beside.area[at]);
            row(price, beside, asked.area[at], there);
        }
        if let Some(there) = unit.crown_limit_m2.filter(|there| *there > 0.0) {
            let (price, beside) = (&mut prices.crown[at], &mut beside.crown[at]);
            row(price, beside, asked.crown[at], there);
        }
    }
}
