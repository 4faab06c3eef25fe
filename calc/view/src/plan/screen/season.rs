//! Who works, on which days, and where: four fields.

use super::{field, heading, open_fold_at, open_form, open_group, option, send};
use crate::control::{labelled, open_control};
use crate::measure::day_short;
use crate::page::Page;
use crate::plan::asked::{Asked, NotASeason, PlanField, PlanTyped};
use crate::plan::leftover::Leftover;
use crate::plan::made::Made;
use crate::plan::read::ReadList;
use crate::words::m;
use crate::words::region::regions;
use calc::terms::day::iso;
use calc::terms::small::order::{sort_by, sort_by_key};
use calc_data::list::plan_constants;
use calc_plan::{ComesTo, PlanFile};
use chrono::NaiveDate;
use std::collections::BTreeMap;

/// So many work days are picked until somebody picks others.
const PICKED: usize = 6;
/// So many days are offered.
const OFFERED: usize = 16;

/// What is filled in.
#[derive(Clone, Debug)]
pub struct SeasonForm {
    /// People.
    pub people: String,
    /// Hours of a work day.
    pub hours: String,
    /// Work days that were ticked, as `2027-06-12`; none where nobody ticked yet.
    pub days: Option<Vec<String>>,
    /// Further days, as typed.
    pub more_days: String,
    /// Days that are closed, as typed.
    pub closed: String,
    /// The place, as typed.
    pub place: String,
    /// Code of the state or country.
    pub region: String,
    /// Days of the plan before stay unless something forces them.
    pub keep_days: bool,
}

impl Default for SeasonForm {
    fn default() -> Self {
        Self {
            people: plan_constants().crew_people.to_string(),
            hours: plan_constants().crew_hours.to_string(),
            days: None,
            more_days: String::new(),
            closed: String::new(),
            place: String::new(),
            region: String::new(),
            keep_days: true,
        }
    }
}

impl SeasonForm {
    /// Takes the fields of the form.
    pub fn take(&mut self, entries: &[(String, String)]) {
        let mut days = Vec::new();
        // Where it is asked and nothing is ticked, it is not told.
        self.keep_days = !entries.iter().any(|(name, _)| name == "asks-keep");
        for (name, value) in entries {
            match name.as_str() {
                "people" => self.people.clone_from(value),
                "hours" => self.hours.clone_from(value),
                "days" => days.push(value.clone()),
                "more-days" => self.more_days.clone_from(value),
                "closed" => self.closed.clone_from(value),
                "keep-days" => self.keep_days = true,
                "place" => self.place.clone_from(value),
                "region" => self.region.clone_from(value),
                _ => {}
            }
        }
        self.days = Some(days);
    }

    /// All work days, with a comma between them.
    #[must_use]
    pub fn all_days(&self) -> String {
        let mut all = self.days.clone().unwrap_or_default();
        let more = self.more_days.split(',').map(str::trim);
        all.extend(more.filter(|day| !day.is_empty()).map(str::to_owned));
        all.join(",")
    }

    /// The season from the first of the work days to the last.
    ///
    /// # Errors
    /// What was not understood.
    pub fn asked(&self, today: &str) -> Result<Asked, NotASeason> {
        let days = self.all_days();
        if days.is_empty() {
            return Err(NotASeason::NoDays);
        }
        // What is no day is said of the days, not of the season.
        let read = days.split(',').map(|typed| {
            calc::question::read_day(typed)
                .map_err(|_| NotASeason::NotADay(PlanField::Days, typed.to_owned()))
        });
        let read: Vec<NaiveDate> = read.collect::<Result<_, _>>()?;
        let (Some(from), Some(to)) = (read.iter().min(), read.iter().max()) else {
            return Err(NotASeason::NoDays);
        };
        Asked::of(&PlanTyped {
            from: &iso(*from),
            to: &iso(*to),
            days: &days,
            closed: &self.closed,
            crew: &self.people,
            hours: &self.hours,
            today,
            ..PlanTyped::default()
        })
    }
}

/// Every Saturday of the year from a day on: what trees are looked at for before anybody says when they come.
///
/// # Errors
/// A day that is none.
pub fn year_of_saturdays(today: &str) -> Result<Asked, NotASeason> {
    let from = calc::question::read_day(today)
        .map_err(|_| NotASeason::NotADay(PlanField::Today, today.to_owned()))?;
    let to = iso(from + chrono::Days::new(365));
    Asked::of(&PlanTyped {
        from: today,
        to: &to,
        on: "sat",
        today,
        ..PlanTyped::default()
    })
}

/// A day that is offered.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Offered {
    /// The day.
    pub day: NaiveDate,
    /// How many trees may be ringed on it.
    pub trees: usize,
    /// In how many of them the bark slips then, as the probabilities have it.
    pub slips: f64,
}

/// The days of the next season on which a good part of the trees may be ringed.
#[must_use]
pub fn offered(list: &ReadList) -> Vec<Offered> {
    let mut all: BTreeMap<NaiveDate, (usize, f64)> = BTreeMap::new();
    for tree in list.trees.iter() {
        if let Some(ComesTo::Ring(need)) = tree.judged().map(|it| &it.comes_to) {
            for (day, p) in &need.days {
                let of_day = all.entry(*day).or_default();
                of_day.0 += 1;
                of_day.1 += p;
            }
        }
    }
    let most = all.values().map(|it| it.0).max().unwrap_or(0);
    let mut good: Vec<Offered> = Vec::new();
    let own = plan_constants();
    for (day, (trees, slips)) in all {
        let before = good.last().map(|it| it.day);
        if before.is_some_and(|before| (day - before).num_days() as f64 > own.season_apart) {
            break;
        }
        if trees as f64 >= own.good_share * most as f64 {
            good.push(Offered { day, trees, slips });
        }
    }
    best(&good, OFFERED)
}

/// Of the days that are offered the best, as they are picked at first.
#[must_use]
pub fn picked(offered: &[Offered]) -> Vec<String> {
    best(offered, PICKED).iter().map(|it| iso(it.day)).collect()
}

/// So many of some days in order, still in order: those on which the bark of most trees slips; of days that are as good,
/// those in the middle, since a list that tells no place has its weeks too early and too late.
fn best(days: &[Offered], count: usize) -> Vec<Offered> {
    let from_middle = |at: usize| (2 * at + 1).abs_diff(days.len());
    let mut order: Vec<usize> = (0..days.len()).collect();
    sort_by(&mut order, |&a, &b| {
        let slips = days[b].slips.total_cmp(&days[a].slips);
        slips.then(from_middle(a).cmp(&from_middle(b)))
    });
    order.truncate(count);
    sort_by_key(&mut order, |at| *at);
    order.into_iter().map(|at| days[at]).collect()
}

/// What the plan before came to, and with whom.
pub struct PlanBefore {
    /// What was filled in.
    pub filled: SeasonForm,
    /// Trees to ring.
    pub planned: usize,
    /// Its work days.
    pub days: usize,
    /// plan.json as it was: the command line needs it to keep its days.
    pub file: PlanFile,
}

impl PlanBefore {
    /// Of a plan; what nobody asks for any more goes to the rows before.
    #[must_use]
    pub fn of(made: Made, filled: SeasonForm, leftover: &mut Leftover) -> Self {
        let days = made.file.work_days.iter().filter(|day| day.agreed);
        Self {
            filled,
            planned: made.planned.plan.planned(),
            days: days.count(),
            file: leftover.of_plan(made),
        }
    }
}

/// The fields, and what of them was not understood; folded once there is a plan.
pub fn season(
    out: &mut Page<'_>,
    filled: &SeasonForm,
    offered: &[Offered],
    wrong: Option<&str>,
    planned: bool,
) {
    if planned {
        let line = when_line(filled);
        open_fold_at(
            out,
            2,
            "season",
            &m::PROPERTY_WHEN,
            &line,
            Some(wrong.is_some()),
        );
    } else {
        heading(out, &m::PROPERTY_WHEN);
    }
    open_form(out, "when", "plan", &[]);
    if let Some(wrong) = wrong {
        out.open_class("p", "errmsg");
        out.attr("role", "alert");
        out.attr("id", "l-wrong");
        out.text(wrong);
        out.close();
    }
    // The days that are offered follow from the place.
    out.open_class("div", "rows");
    where_it_is(out, filled);
    out.close();
    out.open_class("div", "who");
    field(out, "people", "w1", &m::PROPERTY_PEOPLE, "", &filled.people);
    let hint = m::PROPERTY_HOURS_HINT.text();
    field(out, "hours", "w1", &m::PROPERTY_HOURS, hint, &filled.hours);
    out.close();
    open_group(out, &m::PROPERTY_DAYS);
    if offered.is_empty() {
        out.leaf_class("span", "hint", m::PROPERTY_DAYS_NONE);
    }
    let first = picked(offered);
    let on = filled.days.as_deref().unwrap_or(&first);
    out.open_class("div", "days");
    for it in offered {
        let value = iso(it.day);
        let label = m::property_day(day_short(it.day), it.trees.to_string());
        option(out, "checkbox", "days", &value, on.contains(&value), &label);
    }
    out.close_two();
    out.open_class("div", "rows");
    let hint = m::PROPERTY_MORE_DAYS_HINT.text();
    field(
        out,
        "more-days",
        "wf",
        &m::PROPERTY_MORE_DAYS,
        hint,
        &filled.more_days,
    );
    let hint = m::PROPERTY_MORE_DAYS_HINT.text();
    field(
        out,
        "closed",
        "wf",
        &m::PROPERTY_CLOSED_DAYS,
        hint,
        &filled.closed,
    );
    out.close();
    if planned {
        out.open("input");
        out.attr("type", "hidden");
        out.attr("name", "asks-keep");
        out.close();
        let label = m::PROPERTY_KEEP_DAYS;
        option(
            out,
            "checkbox",
            "keep-days",
            "yes",
            filled.keep_days,
            &label,
        );
    }
    send(out, "btn", &m::PROPERTY_PLAN_IT);
    out.close();
    if planned {
        out.close_two();
    }
}

/// Who comes when, in a line.
fn when_line(filled: &SeasonForm) -> String {
    let days = filled.all_days();
    // A day that can't be read is told at its field.
    let read = days.split(',');
    let read = read.filter_map(|typed| calc::question::read_day(typed).ok());
    let short = |day: Option<NaiveDate>| day.map(day_short).unwrap_or_default();
    let (first, last) = (read.clone().min(), read.max());
    let when = match first == last {
        true => short(first),
        false => m::property_when_days(m::PropertyWhenDays {
            first: &short(first),
            last: &short(last),
        }),
    };
    m::property_when_line(m::PropertyWhenLine {
        people: filled.people.trim(),
        when: &when,
    })
}

/// The place of trees that tell none.
fn where_it_is(out: &mut Page<'_>, filled: &SeasonForm) {
    let hint = m::PROPERTY_PLACE_HINT.text();
    field(out, "place", "wf", &m::PROPERTY_PLACE, hint, &filled.place);
    labelled(out, "region", &m::PROPERTY_REGION, "");
    open_control(out, "select", "wf", "region", "region");
    let mut choice = |value: &str, label: &str| {
        out.open("option");
        out.attr("value", value);
        if value == filled.region {
            out.attr("selected", "");
        }
        out.text(label);
        out.close();
    };
    choice("", &m::PROPERTY_REGION_NONE);
    for (code, name) in regions() {
        choice(code, name);
    }
    out.close_two();
}

/// What of a season was not understood, and what to type.
#[must_use]
pub fn not_a_season(wrong: &NotASeason) -> String {
    let label = |field: &PlanField| match field {
        PlanField::Crew => m::PROPERTY_PEOPLE,
        PlanField::Hours | PlanField::Ready => m::PROPERTY_HOURS,
        _ => m::PROPERTY_DAYS_NAMED,
    };
    match wrong {
        NotASeason::NotADay(field, typed) => m::plan_not_a_day(m::PlanNotADay {
            option: label(field),
            typed: typed.as_str(),
        }),
        NotASeason::OutOfRange(field, from, to, typed) => m::plan_out_of_range(m::PlanOutOfRange {
            option: label(field),
            from: from.to_string(),
            to: to.to_string(),
            typed: typed.as_str(),
        }),
        NotASeason::NotAUnit(_, typed) | NotASeason::NotAReply(_, typed) => typed.clone(),
        NotASeason::TooLong | NotASeason::ToBeforeFrom => m::PROPERTY_TOO_LONG.into(),
        NotASeason::NoDays | NotASeason::NotWeekDays(_) => m::PROPERTY_NO_DAYS.into(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_season_ends_on_its_last_day_however_days_are_typed() {
        let form = SeasonForm {
            days: Some(vec!["2027-05-08".to_owned(), "2027-05-22".to_owned()]),
            more_days: "2027-5-15".to_owned(),
            ..SeasonForm::default()
        };
        let asked = form.asked("2027-03-01").expect("they are days");
        let day = |text: &str| text.parse::<NaiveDate>().expect("a day");
        assert_eq!(asked.season.from, day("2027-05-08"));
        assert_eq!(asked.season.to, day("2027-05-22"));
        assert_eq!(asked.season.days.len(), 3);
    }
}
