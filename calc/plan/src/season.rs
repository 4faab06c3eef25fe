//! Who works on which days: the days that were named, and the same days of the two years after, when trees are looked
//! at again.

use crate::kept::Kept;
use crate::property::WorkDay;
use calc::terms::small::order::sort_by_key;
use calc_data::list::PlanConstants;
use chrono::{Days, NaiveDate};

/// A year in weeks, so that a Saturday stays a Saturday.
const WEEKS_OF_YEAR: u64 = 52;

/// Who works.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Crew {
    /// People.
    pub people: u32,
    /// Crews that they work in.
    pub teams: u32,
    /// Hours from arriving to leaving.
    pub hours: f64,
    /// Minutes of each person and day that go into arriving, tools and talk.
    pub ready_minutes: f64,
    /// Whether two people work at each tree, so that it costs twice the minutes.
    pub pairs: bool,
}

impl Crew {
    /// Hours of work on a day, without what it takes to get ready.
    #[must_use]
    pub fn working_hours(&self) -> f64 {
        (self.hours - self.ready_minutes / 60.0).max(0.0)
    }

    /// Person-minutes of work on a day.
    ///
    /// ```
    /// let crew = calc_plan::Crew { people: 4, teams: 1, hours: 3.0, ready_minutes: 45.0, pairs: false };
    /// assert_eq!(crew.minutes(), 540.0);
    /// ```
    #[must_use]
    pub fn minutes(&self) -> f64 {
        f64::from(self.people) * self.working_hours() * 60.0
    }

    /// Person-minutes that a minute of work at a tree costs.
    #[must_use]
    pub fn heads_a_tree(&self, own: &PlanConstants) -> f64 {
        if self.pairs { own.pair_heads } else { 1.0 }
    }
}

/// A unit's land.
#[derive(Clone, Debug, PartialEq)]
pub struct UnitLand {
    /// Its name.
    pub unit: String,
    /// Square metres.
    pub area_m2: f64,
    /// Share of it under crowns now, 0 to 1, all trees counted; none: the crowns of the list's own trees.
    pub closure: Option<f64>,
}

/// The days of a season.
#[derive(Clone, Debug, PartialEq)]
pub struct WorkSeason {
    /// Its first day.
    pub from: NaiveDate,
    /// Its last day.
    pub to: NaiveDate,
    /// The work days that were named, in order, those that are closed left out.
    pub days: Vec<NaiveDate>,
    /// Who works on them.
    pub crew: Crew,
    /// A tree is ringed only where its bark slips with at least this probability, 0.4 to 0.95.
    pub slip: f64,
    /// Share of each unit's basal area that may be killed in the season; none where nothing is said.
    pub share: Option<f64>,
    /// Land of units, where somebody said how much it is.
    pub land: Vec<UnitLand>,
    /// Share of each such unit that stays under crowns, 0 to 1; none where nobody asked for it.
    pub canopy_floor: Option<f64>,
    /// The days of an earlier plan, which stay unless something forces them.
    pub kept: Kept,
}

impl WorkSeason {
    /// The work days with their minutes: those of the season, then the same week days of the years after in which trees
    /// are looked at, which nobody agreed to yet.
    #[must_use]
    pub fn work_days(&self, own: &PlanConstants) -> Vec<WorkDay> {
        let minutes = self.crew.minutes();
        let mut days: Vec<WorkDay> = (0..own.plan_years as u64)
            .flat_map(|year| {
                self.days.iter().map(move |day| WorkDay {
                    day: *day + Days::new(7 * WEEKS_OF_YEAR * year),
                    minutes,
                    rings: year == 0,
                    agreed: year == 0,
                })
            })
            .collect();
        // A season of a whole year reaches into the same week of the next one: a day that was named is that one.
        sort_by_key(&mut days, |it| (it.day, !it.rings));
        days.dedup_by_key(|it| it.day);
        days
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day(text: &str) -> NaiveDate {
        text.parse().expect("a day")
    }

    #[test]
    fn a_season_of_a_whole_year_has_each_day_once_and_in_order() {
        let season = WorkSeason {
            from: day("2027-05-01"),
            to: day("2028-04-30"),
            days: vec![day("2027-05-01"), day("2028-04-29"), day("2028-04-30")],
            crew: Crew {
                people: 4,
                teams: 1,
                hours: 3.0,
                ready_minutes: 45.0,
                pairs: false,
            },
            slip: 0.4,
            share: None,
            land: Vec::new(),
            canopy_floor: None,
            kept: Kept::default(),
        };
        let days = season.work_days(calc_data::list::plan_constants());
        assert!(days.is_sorted_by(|a, b| a.day < b.day), "{days:?}");
        // A year in weeks after the first day stands the second one, which was named: its hours count once.
        let named: Vec<NaiveDate> = days.iter().filter(|it| it.rings).map(|it| it.day).collect();
        assert_eq!(named, season.days);
    }
}
