//! The options of `plan`, as a season.

use crate::args;
use calc::terms::number::read_number;
use calc_plan::{Crew, Season};
use calc_view::words::m;
use chrono::{Datelike, Days, NaiveDate, Weekday};

/// A season is no longer.
const LONGEST: i64 = 366;
/// So many weeks after the last work day a spare one may lie.
const WEEKS: u64 = 2;

/// What was asked for.
pub(crate) struct Asked {
    /// The season.
    pub(crate) season: Season,
    /// Days that are closed.
    pub(crate) closed: Vec<NaiveDate>,
    /// The next day of the same kind that nobody named: tried to see whether days are short.
    pub(crate) spare: Option<NaiveDate>,
    /// The days on which trees are judged: the work days and the spare one, in order.
    pub(crate) judged_on: Vec<NaiveDate>,
    /// The asker's day.
    pub(crate) today: NaiveDate,
    /// What an hour of work costs.
    pub(crate) wage: Option<f64>,
}

impl Asked {
    /// Of the command line.
    ///
    /// # Errors
    /// What was not understood, in words.
    pub(crate) fn of(options: &args::Plan, today: &str) -> Result<Self, String> {
        let from = day("--from", &options.from)?;
        let to = day("--to", &options.to)?;
        if to < from {
            return Err(m::PLAN_TO_BEFORE_FROM.into());
        }
        if (to - from).num_days() > LONGEST {
            return Err(m::PLAN_SEASON_TOO_LONG.into());
        }
        let closed = days("--closed", &options.closed)?;
        let week_days = week_days(&options.on)?;
        let mut named = days("--days", &options.days)?;
        named.extend(
            from.iter_days()
                .take_while(|day| *day <= to)
                .filter(|day| week_days.contains(&day.weekday())),
        );
        named.retain(|day| (from..=to).contains(day) && !closed.contains(day));
        named.sort_unstable();
        named.dedup();
        let (Some(first), Some(last)) = (named.first().copied(), named.last().copied()) else {
            return Err(m::PLAN_NO_DAYS.into());
        };
        let spare = (1..=7 * WEEKS)
            .map(|days| last + Days::new(days))
            .find(|day| day.weekday() == first.weekday() && !closed.contains(day));
        let mut judged_on = named.clone();
        judged_on.extend(spare);
        let percent = |typed: &str| typed.trim().strip_suffix('%').map(str::to_owned);
        let share = match options.share.as_deref() {
            None => None,
            Some(typed) => {
                let share = percent(typed).unwrap_or_else(|| typed.to_owned());
                Some(number("--share", &share, 1.0, 100.0)? / 100.0)
            }
        };
        let crew = Crew {
            people: number("--crew", &options.crew, 1.0, 500.0)? as u32,
            teams: number("--teams", &options.teams, 1.0, 50.0)? as u32,
            hours: number("--hours", &options.hours, 0.5, 16.0)?,
            ready_minutes: number("--ready", &options.ready, 0.0, 240.0)?,
            pairs: options.pairs,
        };
        if crew.minutes() <= 0.0 {
            return Err(out_of_range(
                "--ready",
                &options.ready,
                0.0,
                crew.hours * 60.0,
            ));
        }
        Ok(Self {
            season: Season {
                from,
                to,
                days: named,
                crew,
                slip: number("--slip", &options.slip, 0.4, 0.95)?,
                share,
            },
            closed,
            spare,
            judged_on,
            today: day("--today", today)?,
            wage: match options.wage.as_deref() {
                None => None,
                Some(typed) => Some(number("--wage", typed, 0.0, 10_000.0)?),
            },
        })
    }
}

fn day(option: &str, typed: &str) -> Result<NaiveDate, String> {
    calc::question::read_day(typed.trim())
        .map_err(|_| m::plan_not_a_day(m::PlanNotADay { option, typed }))
}

fn days(option: &str, typed: &str) -> Result<Vec<NaiveDate>, String> {
    let parts = typed.split(',').filter(|part| !part.trim().is_empty());
    parts.map(|part| day(option, part)).collect()
}

fn week_days(typed: &str) -> Result<Vec<Weekday>, String> {
    let parts = typed.split(',').map(str::trim);
    parts
        .filter(|part| !part.is_empty())
        .map(|part| part.parse().map_err(|_| m::plan_not_week_days(typed)))
        .collect()
}

fn number(option: &str, typed: &str, from: f64, to: f64) -> Result<f64, String> {
    match read_number(typed) {
        Ok(read) if (from..=to).contains(&read.value) => Ok(read.value),
        _ => Err(out_of_range(option, typed, from, to)),
    }
}

fn out_of_range(option: &str, typed: &str, from: f64, to: f64) -> String {
    m::plan_out_of_range(m::PlanOutOfRange {
        option,
        from: from.to_string(),
        to: to.to_string(),
        typed,
    })
}
