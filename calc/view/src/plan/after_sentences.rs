//! What was found at visits in sentences: what is wrong with the file, what to do now, shares of dead trees, rings that held
//! and the crew's rate. The page and the command line say the same.

use super::after::{AfterWork, FoundHere, TimedRings};
use crate::words::phrase::first_of;
use crate::words::{list as words, m, phrase};
use calc::models::at_visit::{Act, NoAdvice};
use calc::models::calibrate::NoRate;
use calc::terms::small::decimals::fixed;
use calc_data::list::plan_constants;
use calc_list::found::{FoundFault, FoundProblem, NotFoundFile};
use calc_plan::KillRate;
use std::collections::BTreeMap;

/// So many tags are named.
pub const TAGS: usize = 6;

/// Why a file holds nothing that was found.
#[must_use]
pub fn no_file(why: NotFoundFile) -> String {
    match why {
        NotFoundFile::NotList(why) => words::not_list(why),
        NotFoundFile::NoColumn(column) => m::after_no_column(column),
    }
}

/// What is wrong with a cell of the file, by row and column, and what to type.
#[must_use]
pub fn problem(problem: &FoundProblem) -> String {
    let typed = problem.typed.as_str();
    let what: String = match problem.fault {
        FoundFault::Empty => m::AFTER_EMPTY.into(),
        FoundFault::NotADay => m::after_not_a_day(typed),
        FoundFault::NotAWord => m::after_not_a_word(typed),
        FoundFault::NotANumber => m::after_not_a_number(typed),
        FoundFault::NoSuchTree => m::after_no_such_tree(typed),
        FoundFault::NoRingDay => m::AFTER_NO_RING_DAY.into(),
        FoundFault::BeforeTheRing => m::AFTER_BEFORE_THE_RING.into(),
        FoundFault::NotYet => m::after_not_yet(typed),
        FoundFault::Contradiction => m::after_contradiction(typed),
    };
    m::list_at(m::ListAt {
        row: problem.row.to_string(),
        column: problem.column.as_str(),
        header: problem.header,
        what: &what,
    })
}

/// By tag what was found last, which says what to do now.
#[must_use]
pub fn last_looks(after: &AfterWork) -> BTreeMap<&str, &FoundHere> {
    let mut last: BTreeMap<&str, &FoundHere> = BTreeMap::new();
    for found in &after.found {
        let known = last.entry(&found.tree_id).or_insert(found);
        if found.visited_on >= known.visited_on {
            *known = found;
        }
    }
    last
}

/// At how many visits something was found.
#[must_use]
pub fn looks(after: &AfterWork) -> String {
    m::after_looks(after.found.len().to_string())
}

/// What to do now, a sentence each with its trees.
#[must_use]
pub fn acts(after: &AfterWork) -> Vec<String> {
    let last = last_looks(after);
    let mut lines = Vec::new();
    let tags_of = |holds: &dyn Fn(&FoundHere) -> bool| -> Vec<&str> {
        let trees = last.values().filter(|it| holds(it));
        trees.map(|it| it.tree_id.as_str()).collect()
    };
    for act in Act::ALL {
        let tags = tags_of(&|it| it.acts().contains(act));
        if !tags.is_empty() && *act != Act::Wait {
            lines.push(m::after_act(m::AfterAct {
                act: m::visits_act_now(*act),
                trees: tags.len().to_string(),
                tags: &first_of(tags, TAGS, ", "),
            }));
        }
    }
    let stopped = tags_of(&|it| matches!(it.advice, Some(Err(NoAdvice::Stopped))));
    if !stopped.is_empty() {
        let trees = stopped.len().to_string();
        lines.push(m::after_stopped(trees, first_of(stopped, TAGS, ", ")));
    }
    lines
}

/// Shares of dead trees, by species, size and season.
#[must_use]
pub fn kill_rates(after: &AfterWork) -> Vec<String> {
    let seen = after.kill_rates.iter().filter(|rate| rate.dead.of > 0);
    let mut lines: Vec<String> = seen.map(kill_rate).collect();
    // Of the others no share can be told: how many they are is.
    for season in 1..=plan_constants().plan_years as u8 {
        let unseen = after
            .kill_rates
            .iter()
            .filter(|rate| rate.season == season && rate.dead.of == 0);
        let trees: usize = unseen.map(|rate| rate.not_looked_at).sum();
        if trees > 0 {
            lines.push(m::after_nobody_looked(m::AfterNobodyLooked {
                season: season.to_string(),
                trees: trees.to_string(),
            }));
        }
    }
    lines
}

fn kill_rate(rate: &KillRate) -> String {
    let mut told = vec![m::after_kill_rate(m::AfterKillRate {
        species: phrase::tree(rate.species),
        size: m::outlook_size_class(rate.size),
        season: rate.season.to_string(),
        dead: rate.dead.hits.to_string(),
        looked: rate.dead.of.to_string(),
    })];
    if let Some(share) = rate.dead.told(plan_constants()) {
        told.push(m::after_kill_share(interval(share)));
    }
    if rate.not_looked_at > 0 {
        told.push(m::after_not_looked_at(rate.not_looked_at.to_string()));
    }
    if let Some((low, high)) = rate.outlook {
        told.push(m::after_outlook(m::AfterOutlook {
            low: fixed(low, 0),
            high: fixed(high, 0),
        }));
    }
    told.join(" ")
}

/// 31 % (26 to 37 %).
fn interval((share, low, high): (f64, f64, f64)) -> String {
    let percent = |share: f64| fixed(100.0 * share, 0);
    m::after_interval(m::AfterInterval {
        share: percent(share),
        low: percent(low),
        high: percent(high),
    })
}

/// Rings without a bridge; none where nobody looked at one.
#[must_use]
pub fn rings_held(after: &AfterWork) -> Option<String> {
    if after.held.of == 0 {
        return None;
    }
    let (held, looked) = (after.held.hits.to_string(), after.held.of.to_string());
    let mut told = m::after_held(m::AfterHeld { held, looked });
    if let Some(share) = after.held.told(plan_constants()) {
        told.push(' ');
        told.push_str(&m::after_kill_share(interval(share)));
    }
    Some(told)
}

/// The crew's rate; where the timed rings give none, why.
#[must_use]
pub fn rate(timed: &TimedRings) -> String {
    let factor = |value: f64| fixed(value, 2);
    match timed.rate {
        Ok(_) => m::after_rate(m::AfterRate {
            trees: timed.trees.to_string(),
            minutes: fixed(timed.person_minutes, 0),
            likely: factor(timed.factor.likely),
            low: factor(timed.factor.low),
            high: factor(timed.factor.high),
        }),
        Err(NoRate::FarOff) => m::AFTER_RATE_FAR_OFF.into(),
        Err(NoRate::TooFewTrees | NoRate::NoMinutes) => m::AFTER_RATE_TOO_FEW.into(),
    }
}
