//! What is asked of a plan, as typed, and the season that it means.

use super::said::Said;
use calc::terms::number::read_number;
use calc_data::list::plan_constants;
use calc_plan::{Crew, Kept, WorkSeason};
use chrono::{Datelike, Days, NaiveDate, Weekday};

/// A season is no longer.
const LONGEST: i64 = 366;
/// So many weeks after the last work day a spare one may lie.
const WEEKS: u64 = 2;

/// What can be typed, a field each: the command line has an option of the same name.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PlanField {
    /// First day of the season.
    From,
    /// Its last day.
    To,
    /// Work days.
    Days,
    /// Days that are closed.
    Closed,
    /// People.
    Crew,
    /// Crews.
    Teams,
    /// Hours of a work day.
    Hours,
    /// Minutes of it to get ready.
    Ready,
    /// The least probability of slip.
    Slip,
    /// The share of a unit at most.
    Share,
    /// What an hour costs.
    Wage,
    /// The asker's day.
    Today,
    /// Nothing stands near the trees of a unit.
    NothingWithin,
    /// What is said of a species that grows in clones.
    WholeClone,
    /// Whether others of a genus stand near.
    SameGenusNear,
    /// Land of a unit.
    Area,
    /// Share of it under crowns now.
    Closure,
    /// Share that stays under crowns.
    Floor,
}

impl PlanField {
    /// Its name: `from`.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::From => "from",
            Self::To => "to",
            Self::Days => "days",
            Self::Closed => "closed",
            Self::Crew => "crew",
            Self::Teams => "teams",
            Self::Hours => "hours",
            Self::Ready => "ready",
            Self::Slip => "slip",
            Self::Share => "share",
            Self::Wage => "wage",
            Self::Today => "today",
            Self::NothingWithin => "nothing-within",
            Self::WholeClone => "whole-clone",
            Self::SameGenusNear => "same-genus-near",
            Self::Area => "area",
            Self::Closure => "closure",
            Self::Floor => "floor",
        }
    }
}

/// Why what was typed is no season.
#[derive(Clone, Debug, PartialEq)]
pub enum NotASeason {
    /// No day, or one of several days is none.
    NotADay(PlanField, String),
    /// The last day lies before the first.
    ToBeforeFrom,
    /// More than a year.
    TooLong,
    /// No days of the week.
    NotWeekDays(String),
    /// No work day is left.
    NoDays,
    /// No number from the first to the second, and what was typed.
    OutOfRange(PlanField, f64, f64, String),
    /// No name of a part of the property with a distance.
    NotAUnit(PlanField, String),
    /// No name of a species with yes or no.
    NotAReply(PlanField, String),
}

/// What is asked of a plan, as typed. Lists have a comma between their parts.
#[derive(Clone, Copy, Debug)]
pub struct PlanTyped<'a> {
    /// First day of the season.
    pub from: &'a str,
    /// Last day.
    pub to: &'a str,
    /// Days of the week: `sat,sun`.
    pub on: &'a str,
    /// Work days.
    pub days: &'a str,
    /// Days that are closed.
    pub closed: &'a str,
    /// People; empty: what is proposed.
    pub crew: &'a str,
    /// Crews that they work in.
    pub teams: &'a str,
    /// Hours of a work day; empty: what is proposed.
    pub hours: &'a str,
    /// Minutes of it to get ready; empty: what plans assume.
    pub ready: &'a str,
    /// Two people at each tree.
    pub pairs: bool,
    /// The least probability that the bark slips; empty: the least at which a ring heads.
    pub slip: &'a str,
    /// The share of each unit's basal area at most.
    pub share: Option<&'a str>,
    /// What an hour costs.
    pub wage: Option<&'a str>,
    /// The asker's day.
    pub today: &'a str,
}

impl Default for PlanTyped<'_> {
    fn default() -> Self {
        Self {
            from: "",
            to: "",
            on: "",
            days: "",
            closed: "",
            crew: "",
            teams: "1",
            hours: "",
            ready: "",
            pairs: false,
            slip: "",
            share: None,
            wage: None,
            today: "",
        }
    }
}

/// What was asked for.
#[derive(Clone)]
pub struct Asked {
    /// The season.
    pub season: WorkSeason,
    /// Days that are closed.
    pub closed: Vec<NaiveDate>,
    /// The next day of the same kind that nobody named: tried to see whether days are short.
    pub spare: Option<NaiveDate>,
    /// The days on which trees are judged: the work days and the spare one, in order.
    pub judged_on: Vec<NaiveDate>,
    /// The asker's day.
    pub today: NaiveDate,
    /// What an hour of work costs.
    pub wage: Option<f64>,
    /// What was said once for many trees.
    pub said: Said,
}

impl Asked {
    /// Whether trees are judged for it as for another: what hangs on neither crew nor limits.
    #[must_use]
    pub fn judges_as(&self, other: &Self) -> bool {
        let of = |it: &Self| (it.season.from, it.season.slip);
        of(self) == of(other) && self.judged_on == other.judged_on
    }

    /// Of what was typed.
    ///
    /// # Errors
    /// What was not understood.
    pub fn of(typed: &PlanTyped<'_>) -> Result<Self, NotASeason> {
        let from = day(PlanField::From, typed.from)?;
        let to = day(PlanField::To, typed.to)?;
        if to < from {
            return Err(NotASeason::ToBeforeFrom);
        }
        if (to - from).num_days() > LONGEST {
            return Err(NotASeason::TooLong);
        }
        let closed = days(PlanField::Closed, typed.closed)?;
        let week_days = week_days(typed.on)?;
        let mut named = days(PlanField::Days, typed.days)?;
        named.extend(
            from.iter_days()
                .take_while(|day| *day <= to)
                .filter(|day| week_days.contains(&day.weekday())),
        );
        named.retain(|day| (from..=to).contains(day) && !closed.contains(day));
        named.sort_unstable();
        named.dedup();
        let (Some(first), Some(last)) = (named.first().copied(), named.last().copied()) else {
            return Err(NotASeason::NoDays);
        };
        let spare = (1..=7 * WEEKS)
            .map(|days| last + Days::new(days))
            .find(|day| day.weekday() == first.weekday() && !closed.contains(day));
        let mut judged_on = named.clone();
        judged_on.extend(spare);
        let percent = |typed: &str| typed.trim().strip_suffix('%').map(str::to_owned);
        let share = match typed.share {
            None => None,
            Some(typed) => {
                let share = percent(typed).unwrap_or_else(|| typed.to_owned());
                Some(number(PlanField::Share, &share, 1.0, 100.0)? / 100.0)
            }
        };
        let own = plan_constants();
        // Below this the models let no ring head, and nothing lowers it.
        let least_slip = calc_data::reference().constants.timing.p_test;
        let given = |field, typed: &str, unless: f64, from, to| match typed.trim() {
            "" => Ok(unless),
            typed => number(field, typed, from, to),
        };
        let crew = Crew {
            people: given(PlanField::Crew, typed.crew, own.crew_people, 1.0, 500.0)? as u32,
            teams: number(PlanField::Teams, typed.teams, 1.0, 50.0)? as u32,
            hours: given(PlanField::Hours, typed.hours, own.crew_hours, 0.5, 16.0)?,
            ready_minutes: given(PlanField::Ready, typed.ready, own.ready_minutes, 0.0, 240.0)?,
            pairs: typed.pairs,
        };
        if crew.minutes() <= 0.0 {
            let ready = crew.ready_minutes.to_string();
            return Err(NotASeason::OutOfRange(
                PlanField::Ready,
                0.0,
                crew.hours * 60.0,
                ready,
            ));
        }
        Ok(Self {
            season: WorkSeason {
                from,
                to,
                days: named,
                crew,
                slip: given(
                    PlanField::Slip,
                    typed.slip,
                    least_slip,
                    least_slip,
                    own.slip_most,
                )?,
                share,
                land: Vec::new(),
                canopy_floor: None,
                kept: Kept::default(),
            },
            closed,
            spare,
            judged_on,
            today: day(PlanField::Today, typed.today)?,
            wage: match typed.wage {
                None => None,
                Some(typed) => Some(number(PlanField::Wage, typed, 0.0, 10_000.0)?),
            },
            said: Said::default(),
        })
    }
}

fn day(field: PlanField, typed: &str) -> Result<NaiveDate, NotASeason> {
    calc::question::read_day(typed.trim()).map_err(|_| NotASeason::NotADay(field, typed.to_owned()))
}

fn days(field: PlanField, typed: &str) -> Result<Vec<NaiveDate>, NotASeason> {
    let parts = typed.split(',').filter(|part| !part.trim().is_empty());
    parts.map(|part| day(field, part)).collect()
}

fn week_days(typed: &str) -> Result<Vec<Weekday>, NotASeason> {
    let parts = typed.split(',').map(str::trim);
    parts
        .filter(|part| !part.is_empty())
        .map(|part| {
            part.parse()
                .map_err(|_| NotASeason::NotWeekDays(typed.to_owned()))
        })
        .collect()
}

fn number(field: PlanField, typed: &str, from: f64, to: f64) -> Result<f64, NotASeason> {
    match read_number(typed) {
        Ok(read) if (from..=to).contains(&read.value) => Ok(read.value),
        _ => Err(NotASeason::OutOfRange(field, from, to, typed.to_owned())),
    }
}
