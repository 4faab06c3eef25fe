//! What was found at visits, on the command line: read, told in sentences, and what is wrong with it.

use super::read_file;
use super::sentences::first_tags;
use crate::{args, terminal};
use anyhow::Result;
use calc::models::at_visit::{Act, NoAdvice};
use calc::models::calibrate::NoRate;
use calc::terms::small::decimals::fixed;
use calc_data::list::plan_constants;
use calc_list::found::{FoundFault, FoundFile, FoundProblem, NotFoundFile};
use calc_plan::KillRate;
use calc_view::plan::after::{AfterWork, FoundHere};
use calc_view::plan::asked::Asked;
use calc_view::plan::read::{JudgedTrees, ReadList};
use calc_view::words::{list as words, m, phrase};
use std::collections::BTreeMap;

/// What was found; none where the file holds nothing of it, which is told. With the crew's own rate the trees are judged
/// anew.
pub(super) fn found(
    name: &str,
    list: &mut ReadList,
    asked: &mut Asked,
    options: &args::Plan,
    answers: &mut JudgedTrees,
) -> Result<Option<AfterWork>> {
    let bytes = read_file(name)?;
    let mut file = match FoundFile::of(&bytes, options.reading.units)? {
        Ok(file) => file,
        Err(NotFoundFile::NotList(why)) => {
            terminal::tell(&format!("{name}: {}", words::not_list(why)));
            return Ok(None);
        }
        Err(NotFoundFile::NoColumn(column)) => {
            terminal::tell(&format!("{name}: {}", m::after_no_column(column)));
            return Ok(None);
        }
    };
    let mut after = AfterWork::of(list, asked, &mut file);
    file.problems.sort_by_key(|problem| problem.row);
    for problem in &file.problems {
        terminal::tell(&format!("{name}: {}", told(problem)));
    }
    let rate = after.timed.and_then(|timed| timed.rate.ok());
    if options.own_rate {
        let Some(rate) = rate else {
            terminal::tell(m::AFTER_NO_OWN_RATE.text());
            return Ok(None);
        };
        asked.said.rate = Some(rate);
        list.judge_anew();
        while list.judge(usize::MAX, asked, answers) {}
        after = AfterWork::of(list, asked, &mut file);
    }
    Ok(Some(after))
}

fn told(problem: &FoundProblem) -> String {
    let typed = problem.typed.as_str();
    let what: String = match problem.fault {
        FoundFault::Empty => m::AFTER_EMPTY.into(),
        FoundFault::NotADay => m::after_not_a_day(typed),
        FoundFault::NotAWord => m::after_not_a_word(typed),
        FoundFault::NotANumber => m::after_not_a_number(typed),
        FoundFault::NoSuchTree => m::after_no_such_tree(typed),
        FoundFault::NoRingDay => m::AFTER_NO_RING_DAY.into(),
        FoundFault::BeforeTheRing => m::AFTER_BEFORE_THE_RING.into(),
        FoundFault::Contradiction => m::after_contradiction(typed),
    };
    m::list_at(m::ListAt {
        row: problem.row.to_string(),
        column: problem.column.as_str(),
        header: problem.header,
        what: &what,
    })
}

/// What was found in sentences: what to do now, shares of dead trees, rings that held, the crew's rate.
pub(super) fn sentences(after: &AfterWork, used: bool) -> String {
    let mut lines = Vec::new();
    lines.push(m::after_looks(after.found.len().to_string()));
    // What was found last at a tree says what to do now.
    let mut last: BTreeMap<&str, &FoundHere> = BTreeMap::new();
    for found in &after.found {
        let known = last.entry(&found.tree_id).or_insert(found);
        if found.visited_on >= known.visited_on {
            *known = found;
        }
    }
    for act in Act::ALL {
        let tags: Vec<&str> = last
            .values()
            .filter(|it| matches!(&it.advice, Some(Ok(advice)) if advice.acts.contains(act)))
            .map(|it| it.tree_id.as_str())
            .collect();
        if !tags.is_empty() && *act != Act::Wait {
            lines.push(m::after_act(m::AfterAct {
                act: m::visits_act_now(*act),
                trees: tags.len().to_string(),
                tags: &first_tags(tags.iter().copied()),
            }));
        }
    }
    let stopped: Vec<&str> = last
        .values()
        .filter(|it| matches!(it.advice, Some(Err(NoAdvice::Stopped))))
        .map(|it| it.tree_id.as_str())
        .collect();
    if !stopped.is_empty() {
        let which = first_tags(stopped.iter().copied());
        lines.push(m::after_stopped(stopped.len().to_string(), which));
    }
    let seen = after.kill_rates.iter().filter(|rate| rate.dead.of > 0);
    lines.extend(seen.map(kill_rate));
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
    if after.held.of > 0 {
        let (held, looked) = (after.held.hits.to_string(), after.held.of.to_string());
        let mut told = m::after_held(m::AfterHeld { held, looked });
        if let Some(share) = after.held.told(plan_constants()) {
            told.push(' ');
            told.push_str(&m::after_kill_share(interval(share)));
        }
        lines.push(told);
    }
    if let Some(timed) = &after.timed {
        let factor = |value: f64| fixed(value, 2);
        match timed.rate {
            Ok(_) => {
                lines.push(m::after_rate(m::AfterRate {
                    trees: timed.trees.to_string(),
                    minutes: fixed(timed.person_minutes, 0),
                    likely: factor(timed.factor.likely),
                    low: factor(timed.factor.low),
                    high: factor(timed.factor.high),
                }));
                lines.push(match used {
                    true => m::AFTER_RATE_USED.into(),
                    false => m::AFTER_RATE_TO_USE.into(),
                });
            }
            Err(NoRate::FarOff) => lines.push(m::AFTER_RATE_FAR_OFF.into()),
            Err(NoRate::TooFewTrees | NoRate::NoMinutes) => {
                lines.push(m::AFTER_RATE_TOO_FEW.into());
            }
        }
    }
    lines.join("\n") + "\n"
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
