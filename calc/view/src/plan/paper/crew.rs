//! Crew sheets: for each crew and work day of the season its trees in order, with what is ticked at each; above them the
//! cautions of the day and who is not on the sheet, below them the six steps and whom to call.

use super::not_here::NotHere;
use super::{OnPaper, Sheets, long_day, rank, short, tick_box};
use crate::measure;
use crate::out::Html;
use crate::page::Page;
use crate::words::visits::visit;
use crate::words::{m, phrase};
use calc::models::cautions::{Caution, When};
use calc::models::visits::VisitKind;
use calc::terms::method::Method;
use calc::terms::small::decimals::fixed;
use calc::terms::small::order::{sort_by, sort_by_key};
use calc_plan::plan_file::shape::{DayOf, TreeOf, VisitOf};
use std::collections::BTreeMap;

/// What stands behind the last sheet begins so.
const END_OF_MAIN: &str = "</main>";
/// Rows of a sheet: what fits on Letter with its boxes of text at ten points.
const ROWS: usize = 20;
/// Rows that the head of a second table takes.
const HEAD: usize = 2;
/// Letters of a tree's name that stand on one line.
const ON_ONE_LINE: usize = 20;
/// Letters of cautions that are told in full above the rows; the others are told in two or three words.
const IN_FULL: usize = 260;

/// A tree by its place in the plan, and the visit by its place among the tree's; none for the ring.
type PlaceOfTask = (usize, Option<usize>);

/// A sheet: whose it is, and its tasks by their places.
pub(in crate::plan) struct CrewSheet {
    /// By place among the work days.
    day: usize,
    team: u32,
    /// Its number, of how many of that crew and day.
    number: (usize, usize),
    tasks: Vec<PlaceOfTask>,
}

/// What a crew does at a tree.
enum Task<'a> {
    Ring(usize, &'a TreeOf, &'a OnPaper),
    Visit((usize, usize), &'a TreeOf, &'a OnPaper, &'a VisitOf),
}

impl<'a> Task<'a> {
    fn tree(&self) -> (&'a TreeOf, &'a OnPaper) {
        match self {
            Self::Ring(_, tree, on) | Self::Visit(_, tree, on, _) => (tree, on),
        }
    }

    fn place(&self) -> PlaceOfTask {
        match self {
            Self::Ring(tree, ..) => (*tree, None),
            Self::Visit((tree, visit), ..) => (*tree, Some(*visit)),
        }
    }

    fn minutes(&self) -> f64 {
        match self {
            Self::Ring(_, tree, _) => tree.minutes.unwrap_or(0.0),
            Self::Visit(.., visit) => visit.minutes,
        }
    }
}

/// What a crew does on a day.
#[derive(Default)]
struct TasksOfDay<'a> {
    rings: Vec<Task<'a>>,
    visits: Vec<Task<'a>>,
}

impl<'a> TasksOfDay<'a> {
    /// Rings in their order, then looks at trees that were ringed.
    fn in_order(mut self) -> Vec<Task<'a>> {
        sort_by_key(&mut self.rings, |task| {
            let tree = task.tree().0;
            (tree.order, tree.row)
        });
        sort_by(&mut self.visits, |a, b| {
            let (a, b) = (a.tree().0, b.tree().0);
            (&a.unit, &a.tree_id).cmp(&(&b.unit, &b.tree_id))
        });
        self.rings.into_iter().chain(self.visits).collect()
    }
}

impl Sheets<'_> {
    /// The sheets of the days that are agreed, day by day and crew by crew.
    pub(in crate::plan) fn crew_sheets(&self) -> Vec<CrewSheet> {
        let mut tasks = self.tasks();
        let mut all = Vec::new();
        let days = self.file.work_days.iter().enumerate();
        for (day, of_day) in days.filter(|(_, day)| day.agreed) {
            for team in 1..=self.file.crew.teams {
                let tasks = tasks.remove(&(of_day.day.as_str(), team));
                let tasks = tasks.unwrap_or_default().in_order();
                let sheets = parted(&tasks);
                let of = sheets.len();
                all.extend(sheets.iter().enumerate().map(|(at, tasks)| CrewSheet {
                    day,
                    team,
                    number: (at + 1, of),
                    tasks: tasks.iter().map(Task::place).collect(),
                }));
            }
        }
        all
    }

    /// What stands in front of the sheets, and what behind them.
    pub(in crate::plan) fn around_crew_sheets(&self, none: bool) -> (String, String) {
        let page = self.page(m::SHEETS_CREW_TITLE.text(), |page| {
            if none {
                page.p(m::SHEETS_NO_TAGS);
            }
        });
        let at = page.rfind(END_OF_MAIN).unwrap_or(page.len());
        let (front, behind) = page.split_at(at);
        (front.to_owned(), behind.to_owned())
    }

    /// Prints some of the sheets.
    pub(in crate::plan) fn print_crew_sheets(&self, sheets: &[CrewSheet], text: &mut String) {
        let not_here = NotHere::of(self);
        for sheet in sheets {
            let mut html = Html::default();
            let tasks = sheet.tasks.iter().filter_map(|task| self.task(*task));
            let tasks: Vec<Task<'_>> = tasks.collect();
            let of = (&self.file.work_days[sheet.day], sheet.team);
            self.sheet(
                &mut Page::new(&mut html),
                of,
                sheet.number,
                &tasks,
                &not_here,
            );
            text.push_str(&html.into_string());
        }
    }

    /// A task by its place.
    fn task(&self, (tree, visit): PlaceOfTask) -> Option<Task<'_>> {
        let (of_plan, on) = (&self.file.trees[tree], self.on_paper[tree]?);
        Some(match visit {
            None => Task::Ring(tree, of_plan, on),
            Some(visit) => Task::Visit((tree, visit), of_plan, on, &of_plan.visits[visit]),
        })
    }

    /// What each crew does on each day.
    fn tasks(&self) -> BTreeMap<(&str, u32), TasksOfDay<'_>> {
        let mut all: BTreeMap<(&str, u32), TasksOfDay<'_>> = BTreeMap::new();
        for at in 0..self.file.trees.len() {
            let Some(ring) = self.task((at, None)) else {
                continue;
            };
            let tree = ring.tree().0;
            if let Some(key) = tree.day.as_deref().zip(tree.team) {
                all.entry(key).or_default().rings.push(ring);
            }
            for (visit, of) in tree.visits.iter().enumerate() {
                if let Some(key) = of.day.as_deref().zip(of.team) {
                    let visits = &mut all.entry(key).or_default().visits;
                    visits.extend(self.task((at, Some(visit))));
                }
            }
        }
        all
    }

    fn sheet(
        &self,
        page: &mut Page<'_>,
        (day, team): (&DayOf, u32),
        (at, sheets): (usize, usize),
        tasks: &[Task<'_>],
        not_here: &NotHere<'_>,
    ) {
        page.open_class("section", "sheet");
        page.open_class("div", "head");
        page.leaf("h1", long_day(&day.day, true));
        page.p([
            self.units_of(tasks).join(", ").as_str(),
            ", ",
            &m::sheets_crew_of(m::SheetsCrewOf {
                team: team.to_string(),
                teams: self.file.crew.teams.to_string(),
                sheet: at.to_string(),
                sheets: sheets.to_string(),
            }),
        ]
        .concat());
        page.close();
        self.work(page, tasks);
        self.first(page, tasks, not_here);
        self.ring_table(page, tasks);
        self.visit_table(page, tasks);
        page.open("p");
        page.leaf("b", m::SHEETS_STEPS);
        page.text(" ");
        page.text(m::SHEETS_SIX_STEPS);
        page.close();
        self.whom_to_call(page);
        self.said_of(page, tasks);
        page.p(self.made());
        page.close();
    }

    /// The units of some tasks, each once.
    fn units_of<'t>(&self, tasks: &'t [Task<'_>]) -> Vec<&'t str> {
        let mut units: Vec<&str> = tasks
            .iter()
            .map(|task| task.tree().0.unit.as_str())
            .filter(|unit| !unit.is_empty())
            .collect();
        units.sort_unstable();
        units.dedup();
        units
    }

    /// People, hours, and the minutes of this sheet.
    fn work(&self, page: &mut Page<'_>, tasks: &[Task<'_>]) {
        let crew = &self.file.crew;
        let minutes: f64 = tasks.iter().map(Task::minutes).sum();
        let walk: f64 = tasks
            .iter()
            .map(|task| match task {
                Task::Ring(_, tree, _) => tree.walk.unwrap_or(0.0),
                Task::Visit(..) => 0.0,
            })
            .sum();
        page.p(m::sheets_people(m::SheetsPeople {
            people: crew.people.to_string(),
            hours: measure::plain(crew.hours, 2),
            get_ready: fixed(crew.ready_minutes, 0),
            trees: tasks.len().to_string(),
            minutes: fixed(minutes, 0),
            walk: fixed(walk, 0),
        }));
    }

    /// The look up first, the cautions of the day, who is not on the sheet.
    fn first(&self, page: &mut Page<'_>, tasks: &[Task<'_>], not_here: &NotHere<'_>) {
        page.open_class("div", "first");
        page.open("p");
        page.leaf("b", m::SHEETS_FIRST);
        page.text(" ");
        page.text(m::SHEETS_LOOK);
        page.close();
        list_says(page, tasks);
        let cautions = self.cautions(tasks.iter().map(|task| task.tree().1));
        let people_out = tasks
            .iter()
            .map(|task| task.tree().1.people_out_m)
            .fold(0.0, f64::max);
        let mut told: Vec<String> = Vec::new();
        let mut letters = 0;
        let mut in_short: Vec<&str> = Vec::new();
        for caution in cautions {
            let sentence = self.sentence(caution, people_out);
            let fits = letters + sentence.chars().count() <= IN_FULL;
            if fits && says_of_the_day(caution) {
                letters += sentence.chars().count();
                let name = phrase::sentence(short(caution));
                told.push([name.as_str(), ": ", &sentence].concat());
            } else if caution.when != When::Law || says_of_the_day(caution) {
                in_short.push(short(caution));
            }
        }
        page.open("p");
        page.leaf("b", m::SHEETS_TODAY);
        page.text(" ");
        page.text(told.join(" "));
        if !in_short.is_empty() {
            page.text(" ");
            page.text(m::sheets_mind_too(phrase::joined_by(&in_short, "; ")));
        }
        page.close();
        let units = self.units_of(tasks);
        let sent_to = tasks.iter().map(|task| task.tree().0.tree_id.as_str());
        let sent_to: Vec<&str> = sent_to.collect();
        not_here.keep_out(page, &units, &sent_to);
        not_here.told(page, &units);
        page.close();
    }

    fn ring_table(&self, page: &mut Page<'_>, tasks: &[Task<'_>]) {
        if !tasks.iter().any(|task| matches!(task, Task::Ring(..))) {
            return;
        }
        let unit = self.unit();
        page.open("table");
        page.open("thead");
        page.open("tr");
        for head in [
            m::SHEETS_HEAD_DONE.text().to_owned(),
            m::SHEETS_HEAD_TAG.text().to_owned(),
            m::SHEETS_HEAD_TREE.text().to_owned(),
            [m::SHEETS_HEAD_ACROSS.text(), ", ", unit].concat(),
            [m::SHEETS_HEAD_RING.text(), ", ", unit].concat(),
            m::SHEETS_HEAD_UP.text().to_owned(),
            m::SHEETS_HEAD_PEOPLE_OFF.text().to_owned(),
            m::SHEETS_HEAD_LOOKED.text().to_owned(),
            m::SHEETS_HEAD_PATCH.text().to_owned(),
            m::SHEETS_HEAD_ROUND.text().to_owned(),
            m::SHEETS_HEAD_MINUTES.text().to_owned(),
        ] {
            head_cell(page, "", &head);
        }
        head_cell(page, "note", m::SHEETS_HEAD_NOTE.text());
        page.close_two();
        page.open("tbody");
        for task in tasks {
            let Task::Ring(_, tree, on) = task else {
                continue;
            };
            page.open("tr");
            box_cell(page, "");
            row_head(page, &tree.tree_id);
            name_cell(page, on);
            page.leaf_class("td", "n", self.sizes(on));
            page.open_class("td", "n");
            page.leaf("b", self.rings(on));
            page.close();
            page.leaf_class("td", "n", self.up());
            page.leaf_class("td", "n", self.distance(on.people_out_m));
            box_cell(page, &self.distance(on.look_m));
            box_cell(page, "");
            box_cell(page, "");
            page.leaf_class("td", "n", fixed(task.minutes(), 0));
            page.leaf("td", "");
            page.close();
        }
        page.close_two();
    }

    fn visit_table(&self, page: &mut Page<'_>, tasks: &[Task<'_>]) {
        if !tasks.iter().any(|task| matches!(task, Task::Visit(..))) {
            return;
        }
        page.open("table");
        page.open("thead");
        page.open("tr");
        for head in [
            m::SHEETS_HEAD_DONE,
            m::SHEETS_HEAD_TAG,
            m::SHEETS_HEAD_TREE,
            m::SHEETS_HEAD_LOOK_AGAIN,
            m::SHEETS_HEAD_PEOPLE_OFF,
            m::SHEETS_HEAD_LOOKED,
            m::SHEETS_HEAD_MINUTES,
        ] {
            head_cell(page, "", head.text());
        }
        head_cell(page, "note", m::SHEETS_HEAD_NOTE.text());
        page.close_two();
        page.open("tbody");
        for task in tasks {
            let Task::Visit(_, tree, on, of) = task else {
                continue;
            };
            page.open("tr");
            box_cell(page, "");
            row_head(page, &tree.tree_id);
            name_cell(page, on);
            let what = match VisitKind::parse(of.kind) {
                Some(VisitKind::Recheck) => m::SHEETS_LOOK_AGAIN.text(),
                Some(kind) => visit(kind, Method::BarkRing).text(),
                None => of.kind,
            };
            page.leaf("td", what);
            page.leaf_class("td", "n", self.distance(on.people_out_m));
            box_cell(page, &self.distance(on.look_m));
            page.leaf_class("td", "n", fixed(of.minutes, 0));
            page.leaf("td", "");
            page.close();
        }
        page.close_two();
    }

    /// Who said that nothing stands near, of which unit.
    fn said_of(&self, page: &mut Page<'_>, tasks: &[Task<'_>]) {
        let units = self.units_of(tasks);
        for unit in &self.file.units {
            if let (Some(within), true) =
                (unit.nothing_within_m, units.contains(&unit.unit.as_str()))
            {
                let by = unit.said_by.as_deref().unwrap_or("");
                page.p(m::sheets_nothing_within(m::SheetsNothingWithin {
                    unit: unit.unit.as_str(),
                    distance: self.distance(within),
                    by: if by.is_empty() {
                        m::SHEETS_NOT_SAID.text()
                    } else {
                        by
                    },
                    day: unit
                        .said_on
                        .as_deref()
                        .map_or(String::new(), |day| long_day(day, false)),
                }));
            }
        }
    }
}

/// What the notes of some trees say of a danger, in the list's own words.
fn list_says(page: &mut Page<'_>, tasks: &[Task<'_>]) {
    let notes: Vec<String> = tasks
        .iter()
        .map(Task::tree)
        .filter(|(_, on)| !on.note.is_empty())
        .map(|(tree, on)| {
            m::sheets_note_of(m::SheetsNoteOf {
                tag: tree.tree_id.as_str(),
                note: on.note.as_str(),
            })
        })
        .collect();
    if !notes.is_empty() {
        page.open("p");
        page.leaf("b", m::SHEETS_LIST_SAYS);
        page.text(" ");
        page.text(notes.join(" "));
        page.close();
    }
}

/// The tasks of each sheet. Where looks again stand below rings, their table's head takes the room of some rows.
fn parted<'t, 'a>(tasks: &'t [Task<'a>]) -> Vec<&'t [Task<'a>]> {
    let (mut sheets, mut from, mut room) = (Vec::new(), 0, ROWS);
    for at in 0..tasks.len() {
        let begins_visits = matches!(tasks[at], Task::Visit(..))
            && at > from
            && matches!(tasks[at - 1], Task::Ring(..));
        let head = if begins_visits { HEAD } else { 0 };
        let needs = 1 + head + usize::from(!tasks[at].tree().1.note.is_empty());
        if needs > room {
            sheets.push(&tasks[from..at]);
            (from, room) = (at, ROWS + head - needs);
        } else {
            room -= needs;
        }
    }
    if from < tasks.len() {
        sheets.push(&tasks[from..]);
    }
    sheets
}

/// Whether a caution is told in full: what the day or the species brings, not what holds at every tree.
fn says_of_the_day(caution: &Caution) -> bool {
    matches!(rank(caution), 1..=3)
}

fn head_cell(page: &mut Page<'_>, class: &str, text: &str) {
    page.open_class("th", class);
    page.attr("scope", "col");
    page.text(text);
    page.close();
}

fn row_head(page: &mut Page<'_>, tag: &str) {
    page.open_class("th", "no");
    page.attr("scope", "row");
    page.text(tag);
    page.close();
}

/// A name on one line, where it is not too long for that.
fn name_cell(page: &mut Page<'_>, on: &OnPaper) {
    let name = phrase::tree(on.species);
    let class = if name.chars().count() <= ON_ONE_LINE {
        "w"
    } else {
        ""
    };
    page.leaf_class("td", class, name);
}

fn box_cell(page: &mut Page<'_>, text: &str) {
    page.open_class("td", "w");
    tick_box(page);
    page.text(text);
    page.close();
}
