//! What is folded under a plan, each fold under a line with its key number.

use super::found::{self, FoundShown};
use super::land::{LandShown, land};
use super::replant::{self, PlantingShown};
use super::season::PlanBefore;
use super::strip::strip;
use super::table::TreeTable;
use super::{
    button, columns, field, fold_of_rows, map, open_fold, open_fold_at, open_form, send, short_day,
};
use crate::measure::{day_short, day_year, plain};
use crate::page::Page;
use crate::plan::asked::Asked;
use crate::plan::how_good::{gap_percent, walking};
use crate::plan::made::Made;
use crate::plan::read::ReadList;

use crate::words::m;
use calc::terms::day::iso;
use calc::terms::quantity::{M_PER_FT, Units};
use calc::terms::small::decimals::fixed;
use calc_list::Note;
use calc_plan::plan_file::shape::UnitOf;
use std::collections::BTreeMap;

/// The file of decisions.
pub const DECISIONS: &str = "decisions.json";

/// The plan before, where days of it are kept.
pub const BEFORE: &str = "plan-before.json";

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
    /// In which units sizes are told.
    pub units: Units,
    /// The plan before.
    pub before: Option<&'a PlanBefore>,
    /// What was found at visits.
    pub found: Option<FoundShown<'a>>,
    /// Why the file that was opened last is no table of visits.
    pub no_found: Option<&'a str>,
    /// Land of parts.
    pub land: LandShown<'a>,
    /// What is typed of replanting.
    pub planting: PlantingShown<'a>,
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
            let line = match table {
                TreeTable::ToFix => m::property_questions(count.to_string()),
                _ => m::property_trees(count.to_string()),
            };
            fold_of_rows(out, table.name(), &table.title(), &line);
        }
    }
    visits(out, made);
    found::found(out, list, made, beside.found, beside.no_found);
    what_if(out, list, asked, beside);
    map::fold(out, list, made);
    stand(out, list, made, beside);
    replant::fold(out, list, made, beside.planting);
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
    let mut names = made.files(list, asked);
    names.extend(beside.decided.then_some(DECISIONS));
    names.extend((!asked.season.kept.is_empty()).then_some(BEFORE));
    files(out, &names);
    out.close();
}

/// The files, a button each.
fn files(out: &mut Page<'_>, files: &[&str]) {
    let line = m::property_files_line(files.len().to_string());
    open_fold(out, "files", &m::PROPERTY_FILES, &line);
    out.p(m::PROPERTY_FILES_ARE);
    out.open_class("div", "picks");
    for name in files.iter().copied() {
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
    strip(out, &days);
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
        out.cell(short_day(&day.day));
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

/// What stands in each part, how much of it is ringed, and what stays under crowns.
fn stand(out: &mut Page<'_>, list: &ReadList, made: &Made, beside: &Beside<'_>) {
    let units = beside.units;
    let (to_area, area): (f64, fn(String) -> String) = match units {
        Units::Us => (M_PER_FT * M_PER_FT, m::property_area_us),
        Units::Metric => (1.0, m::property_area_metric),
    };
    let area = |m2: f64| area(plain(m2 / to_area, 1));
    let of = |unit: &UnitOf| unit.years.first().map_or(0.0, |year| year.used_m2);
    let all: f64 = made.file.units.iter().map(|unit| unit.basal_m2).sum();
    let ringed: f64 = made.file.units.iter().map(of).sum();
    let line = m::property_stand_line(m::PropertyStandLine {
        ringed: area(ringed),
        all: area(all),
    });
    let open = (!beside.land.wrong.is_empty()).then_some(true);
    open_fold_at(out, 3, "stand", &m::PROPERTY_STAND, &line, open);
    let heads = [
        m::PROPERTY_HEAD_PART.text(),
        m::PROPERTY_HEAD_TREES.text(),
        m::PROPERTY_HEAD_BASAL.text(),
        m::PROPERTY_HEAD_RINGED.text(),
    ];
    out.open_table("", &m::PROPERTY_STAND, &heads);
    for unit in &made.file.units {
        match unit.unit.as_str() {
            "" => out.cell(m::PROPERTY_NO_PART),
            name => out.cell(name),
        }
        out.cell(unit.trees.to_string());
        out.cell(area(unit.basal_m2));
        out.cell(area(of(unit)));
    }
    out.close_table();
    out.p(m::PROPERTY_STAND_IS);
    land(out, list, made, beside.land);
    out.close_two();
}

/// Presses that plan anew: people, days, a closed day, a tree's own day.
fn what_if(out: &mut Page<'_>, list: &ReadList, asked: &Asked, beside: &Beside<'_>) {
    let line = match (asked.spare, beside.before) {
        (_, Some(before)) => m::property_what_if_was(before.planned.to_string()),
        (Some(day), None) => m::property_what_if_line(day_short(day)),
        (None, None) => m::PROPERTY_WHAT_IF_PEOPLE.text().to_owned(),
    };
    open_fold(out, "what-if", &m::PROPERTY_WHAT_IF, &line);
    out.open_class("div", "picks");
    let press = |out: &mut Page<'_>, key: &'static str, value: &str, text: &str| {
        button(out, "btn ghost", "more", &[(key, value)], text);
    };
    press(out, "data-people", "1", &m::PROPERTY_ONE_MORE_PERSON);
    if asked.season.crew.people > 1 {
        press(out, "data-people", "-1", &m::PROPERTY_ONE_PERSON_FEWER);
    }
    if let Some(day) = asked.spare {
        let text = m::property_one_more_day(day_year(day));
        press(out, "data-day", &iso(day), &text);
    }
    out.close();
    out.p(m::PROPERTY_WHAT_IF_CLOSED);
    out.open_class("div", "picks");
    // A season has a day at least.
    for day in asked
        .season
        .days
        .iter()
        .filter(|_| asked.season.days.len() > 1)
    {
        press(out, "data-closed", &iso(*day), &day_short(*day));
    }
    out.close();
    if list.column_of_days().is_some() {
        out.p(m::PROPERTY_PIN);
        open_form(out, "pin", "pin", &[]);
        field(out, "pin-tag", "wf", &m::PROPERTY_PIN_TAG, "", "");
        let hint = m::PROPERTY_PIN_HINT.text();
        field(out, "pin-day", "wf", &m::PROPERTY_PIN_DAY, hint, "");
        send(out, "btn ghost", &m::PROPERTY_PIN_IT);
        out.close();
    } else {
        out.p_class("soft", m::PROPERTY_PIN_NO_COLUMN);
    }
    out.close_two();
}

/// How good the plan is, and how to make it again.
fn good(out: &mut Page<'_>, made: &Made, asked: &Asked, beside: &Beside<'_>) {
    let gap = gap_percent(made);
    let line = m::property_good_line(gap.as_str());
    open_fold(out, "good", &m::PROPERTY_GOOD, &line);
    out.p(m::plan_gap(gap));
    out.p(walking(made));
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
