//! What is folded under a plan, each fold under a line with its key number.

use super::table::TreeTable;
use super::{button, columns, open_fold};
use crate::measure::{day_year, plain};
use crate::page::Page;
use crate::plan::asked::Asked;
use crate::plan::made::Made;
use crate::plan::read::ReadList;
use crate::words::m;
use calc::question::read_day;
use calc::terms::small::decimals::fixed;
use calc_list::Note;
use std::collections::BTreeMap;

/// The file of decisions.
pub const DECISIONS: &str = "decisions.json";

/// What is said of the list beside its trees.
pub struct Beside<'a> {
    /// Whether anything was decided of its columns and names.
    pub decided: bool,
    /// What the judging of its columns said.
    pub notes: &'a [Note],
    /// Words of an older encoding.
    pub changed: &'a [String],
    /// What makes the same plan on the command line.
    pub command: &'a str,
}

/// All of them. Tables come when their fold is opened.
pub fn folds(out: &mut Page<'_>, list: &ReadList, made: &Made, asked: &Asked, beside: &Beside<'_>) {
    out.open_class("div", "folds");
    days(out, made);
    for table in TreeTable::ALL {
        let count = match table {
            TreeTable::ToFix => super::fix::Fixes::of(list).len(),
            _ => table.trees(made).len(),
        };
        if count > 0 {
            out.open_class("details", "fold");
            out.attr("id", &["l-", table.name()].concat());
            out.attr("data-open", "page");
            out.attr("data-table", table.name());
            let line = match table {
                TreeTable::ToFix => m::property_questions(count.to_string()),
                _ => m::property_trees(count.to_string()),
            };
            out.open_folded(3, &table.title(), &line);
            out.attr("id", &["t-", table.name()].concat());
            out.close_two();
        }
    }
    visits(out, made);
    good(out, made, asked, beside);
    if !(beside.notes.is_empty() && beside.changed.is_empty()) {
        let count = beside.notes.len() + usize::from(!beside.changed.is_empty());
        open_fold(
            out,
            "notes",
            &m::PROPERTY_NOTES,
            &m::property_notes_line(count.to_string()),
        );
        columns::notes(out, beside.notes, beside.changed);
        out.close_two();
    }
    files(out, &made.files(list, asked), beside.decided);
    out.close();
}

/// The files, a button each.
fn files(out: &mut Page<'_>, files: &[&str], decided: bool) {
    let line = m::property_files_line(files.len().to_string());
    open_fold(out, "files", &m::PROPERTY_FILES, &line);
    out.p(m::PROPERTY_FILES_ARE);
    out.open_class("div", "picks");
    for name in files.iter().copied().chain(decided.then_some(DECISIONS)) {
        button(out, "btn ghost", "file", &[("data-kind", name)], name);
    }
    out.close_all(3);
}

fn hours(minutes: f64) -> String {
    plain(minutes / 60.0, 1)
}

/// The work days of the season.
fn days(out: &mut Page<'_>, made: &Made) {
    let days: Vec<_> = made.file.work_days.iter().filter(|it| it.agreed).collect();
    let used: f64 = days.iter().map(|day| day.used).sum();
    let all: f64 = days.iter().map(|day| day.minutes).sum();
    let line = m::property_hours_used(m::PropertyHoursUsed {
        used: hours(used),
        all: hours(all),
    });
    open_fold(out, "days", &m::PROPERTY_SEASON_BY_DAY, &line);
    let heads = [
        m::PROPERTY_HEAD_DAY.text(),
        m::PROPERTY_HEAD_TREES.text(),
        m::PROPERTY_HEAD_RING_HOURS.text(),
        m::PROPERTY_HEAD_VISIT_HOURS.text(),
        m::PROPERTY_HEAD_ALL_HOURS.text(),
    ];
    out.open_table("", &m::PROPERTY_SEASON_BY_DAY, &heads);
    for day in days {
        let trees = made.file.trees.iter();
        let trees = trees
            .filter(|tree| tree.day.as_ref() == Some(&day.day))
            .count();
        out.cell(read_day(&day.day).map_or_else(|_| day.day.clone(), day_year));
        out.cell(trees.to_string());
        out.cell(hours(day.rings));
        out.cell(hours(day.visits));
        out.cell(hours(day.minutes));
    }
    out.close_table();
    out.close_two();
}

/// Visits by year.
fn visits(out: &mut Page<'_>, made: &Made) {
    // Year: visits, minutes, those without a day.
    let mut years: BTreeMap<&str, (usize, f64, usize)> = BTreeMap::new();
    for visit in made.file.trees.iter().flat_map(|tree| &tree.visits) {
        let year = visit.day.as_deref().unwrap_or(&visit.from).get(..4);
        let of_year = years.entry(year.unwrap_or("")).or_default();
        of_year.0 += 1;
        of_year.1 += visit.minutes;
        of_year.2 += usize::from(visit.day.is_none());
    }
    if years.is_empty() {
        return;
    }
    let all: usize = years.values().map(|it| it.0).sum();
    let minutes: f64 = years.values().map(|it| it.1).sum();
    let line = m::property_visits_line(all.to_string(), hours(minutes));
    open_fold(out, "visits", &m::PROPERTY_VISITS, &line);
    let heads = [
        m::PROPERTY_HEAD_YEAR.text(),
        m::PROPERTY_HEAD_VISITS.text(),
        m::PROPERTY_HEAD_HOURS.text(),
        m::PROPERTY_HEAD_NO_DAY.text(),
    ];
    out.open_table("", &m::PROPERTY_VISITS, &heads);
    for (year, (visits, minutes, open)) in years {
        out.cell(year);
        out.cell(visits.to_string());
        out.cell(hours(minutes));
        out.cell(open.to_string());
    }
    out.close_table();
    out.p(m::PROPERTY_VISITS_ARE);
    out.close_two();
}

/// How good the plan is, and how to make it again.
fn good(out: &mut Page<'_>, made: &Made, asked: &Asked, beside: &Beside<'_>) {
    let gap = m::plan_gap(fixed(made.planned.plan.gap_percent(), 1));
    open_fold(out, "good", &m::PROPERTY_GOOD, &gap);
    let crew = &asked.season.crew;
    out.p(m::plan_work_hours(m::PlanWorkHours {
        hours: fixed(crew.working_hours(), 2),
        get_ready: fixed(crew.ready_minutes, 0),
    }));
    out.p(m::PROPERTY_COMMAND);
    out.open("pre");
    out.leaf("code", beside.command);
    out.close();
    out.close_two();
}
