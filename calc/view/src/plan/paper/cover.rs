//! The cover: counts in the words of the first sentence, the days with their people-hours, whom to call, the cautions that
//! hold for any tree of the plan. One page.

use super::{Sheets, long_day, short};
use crate::measure;
use crate::page::Page;
use crate::words::prose::prose;
use crate::words::{m, phrase};
use calc_plan::{CountedAs, PlanFile};

/// Cautions that are told in full; the others are told in two or three words.
const IN_FULL: usize = 6;
/// Work days that are told one by one; those behind are summed up.
const DAYS: usize = 14;

/// The counts of a plan in words, a sentence each: the parts add up to the trees that are ready. What is none is left out.
#[must_use]
pub fn counted(file: &PlanFile) -> Vec<String> {
    let count = |name: &str| file.counts.get(name).copied().unwrap_or(0).to_string();
    let days = file.work_days.iter().filter(|day| day.agreed).count();
    let mut lines = vec![
        m::plan_trees(m::PlanTrees {
            trees: count("trees"),
            ready: count("ready"),
            fix: count("to_fix"),
        }),
        m::plan_can_be_ringed(m::PlanCanBeRinged {
            planned: count("planned"),
            people: file.crew.people.to_string(),
            days: days.to_string(),
        }),
    ];
    for reason in CountedAs::ALL {
        let trees = count(reason.word());
        if trees == "0" {
            continue;
        }
        lines.push(match reason {
            CountedAs::Planned => continue,
            CountedAs::NoHours => m::plan_no_hours(trees),
            CountedAs::NoDay => m::plan_no_day(trees),
            CountedAs::Pacing => m::plan_pacing(trees),
            CountedAs::OtherMethod => m::plan_other_method(trees),
            CountedAs::LeaveIt => m::plan_leave_it(trees),
            CountedAs::Professional => m::plan_professional(trees),
            CountedAs::CannotTell => m::plan_cannot_tell(trees),
            CountedAs::Dead => m::plan_dead(trees),
            CountedAs::Done => m::plan_done(trees),
            CountedAs::Skipped => m::plan_skipped(trees),
        });
    }
    lines
}

impl Sheets<'_> {
    /// The cover.
    #[must_use]
    pub fn cover(&self) -> String {
        self.page(m::SHEETS_COVER_TITLE.text(), |page| {
            page.open_class("div", "head");
            page.leaf("h1", m::SHEETS_COVER_TITLE);
            page.p(self.made());
            page.close();
            let lines = counted(self.file);
            let mut lines = lines.iter();
            for line in lines.by_ref().take(2) {
                page.open("p");
                page.leaf("b", line.as_str());
                page.close();
            }
            page.p(phrase::joined_by(&lines.collect::<Vec<_>>(), " "));
            self.days(page);
            page.leaf("h2", m::SHEETS_COVER_CALL);
            self.whom_to_call(page);
            self.all_cautions(page);
            page.p(m::PLAN_LOOK_FIRST);
        })
    }

    fn days(&self, page: &mut Page<'_>) {
        let ringed = |day: &str| {
            let of_day = self.file.trees.iter();
            of_day
                .filter(|tree| tree.day.as_deref() == Some(day))
                .count()
        };
        let looked = |day: &str| {
            let visits = self.file.trees.iter().flat_map(|tree| &tree.visits);
            visits.filter(|it| it.day.as_deref() == Some(day)).count()
        };
        let hours = |minutes: f64| measure::plain(minutes / 60.0, 1);
        page.leaf("h2", m::SHEETS_COVER_DAYS);
        page.open("table");
        page.open("thead");
        page.open("tr");
        for head in [
            m::SHEETS_HEAD_DAY,
            m::SHEETS_HEAD_RINGS,
            m::SHEETS_HEAD_VISITS,
            m::SHEETS_HEAD_HOURS,
        ] {
            page.open("th");
            page.attr("scope", "col");
            page.text(head);
            page.close();
        }
        page.close_two();
        page.open("tbody");
        let of_season = self.file.work_days.iter().filter(|day| day.agreed);
        for day in of_season.clone().take(DAYS) {
            page.open("tr");
            page.open("th");
            page.attr("scope", "row");
            page.text(long_day(&day.day, true));
            page.close();
            page.leaf("td", ringed(&day.day).to_string());
            page.leaf("td", looked(&day.day).to_string());
            page.leaf("td", hours(day.used));
            page.close();
        }
        page.close_two();
        let more = of_season.clone().skip(DAYS);
        let behind: f64 = more.clone().map(|day| day.used).sum();
        if more.clone().next().is_some() {
            page.p(m::sheets_more_days(more.count().to_string(), hours(behind)));
        }
        let later = self.file.work_days.iter().filter(|day| !day.agreed);
        let later: f64 = later.map(|day| day.used).sum();
        let all: f64 = of_season.map(|day| day.used).sum();
        page.p(m::sheets_hours(m::SheetsHours {
            now: hours(all),
            later: hours(later),
        }));
    }

    fn all_cautions(&self, page: &mut Page<'_>) {
        let ringed = || self.trees().filter(|(tree, _)| tree.day.is_some());
        let cautions = self.cautions(ringed().map(|(_, on)| on));
        let people_out = ringed().map(|(_, on)| on.people_out_m).fold(0.0, f64::max);
        page.leaf("h2", m::SHEETS_COVER_CAUTIONS);
        page.open("ul");
        for caution in cautions.iter().take(IN_FULL) {
            page.open("li");
            page.leaf("b", prose(caution.subject));
            page.text(" ");
            page.text(self.sentence(caution, people_out));
            page.close();
        }
        page.close();
        let in_short = cautions.iter().skip(IN_FULL).map(|caution| short(caution));
        let in_short: Vec<&str> = in_short.filter(|name| !name.is_empty()).collect();
        if !in_short.is_empty() {
            page.p(m::sheets_mind_too(phrase::joined_by(&in_short, "; ")));
        }
    }
}
