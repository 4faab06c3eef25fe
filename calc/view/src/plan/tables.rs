//! The list with its plan, and the rows that wait for a fix: every cell that came in goes out as it came.

use super::asked::Asked;
use super::paper::OnPaper;
use super::read::{Listed, ReadList};
use crate::list::{COLUMNS, cells, problem_cell};
use crate::words::{list as words, m};
use calc::question::Question;
use calc::terms::day::iso;
use calc::terms::small::decimals::fixed;
use calc_list::{Is, Line, Record, Row, write};
use calc_plan::{Planned, SeasonPlan, on_ring_day};
use chrono::NaiveDate;

/// Columns behind those of `list`: what a day can be added up from.
const MORE: [&str; 4] = ["plan_walk", "plan_team", "plan_order", "plan_unit_said"];
/// Cells that are the row's own: reason, message, version, day.
const OWN: usize = 4;
/// So many problems of a row are told in the file of rows to fix.
const PROBLEMS: usize = 3;
/// The next visits.
const CHECKS: [&str; 3] = ["plan_check_1", "plan_check_2", "plan_check_3"];

/// Where a column of the plan stands.
fn at(column: &str) -> usize {
    let place = COLUMNS.iter().position(|it| *it == column);
    place.expect("plan column")
}

impl ReadList {
    /// The cells of a row that go out again, as many as the header has, and those behind it.
    fn kept<'a>(&self, record: &'a Record) -> (Vec<&'a str>, Vec<&'a str>) {
        let width = self.columns.len();
        let mine = |at: &usize| !self.columns.get(*at).is_some_and(|column| column.ours);
        let of = |from: usize, to: usize| {
            let cells = (from..to).filter(mine).map(|at| record.cell(at));
            cells.collect::<Vec<_>>()
        };
        (of(0, width), of(width, record.len().max(width)))
    }

    fn header(&self, at: Option<usize>) -> &str {
        at.and_then(|at| self.layout.texts.get(at))
            .map_or("", String::as_str)
    }
}

/// What is told of a row: the cells of the columns that a plan adds, and what a sheet says of a tree that is ringed.
pub(super) struct Told {
    /// In the order of [`added_names`].
    pub(super) cells: Vec<String>,
    /// None where it is not ringed.
    pub(super) paper: Option<OnPaper>,
}

/// The columns that a plan adds.
pub(super) fn added_names<'a>() -> impl Iterator<Item = &'a str> {
    COLUMNS.into_iter().chain(MORE)
}

/// What is told of each row, blank ones left out: each tree is answered once, on its own day. In slices, where somebody
/// waits.
#[derive(Default)]
pub(super) struct Telling {
    /// So many lines were told.
    pub(super) lines: usize,
    /// A row each.
    pub(super) told: Vec<Told>,
}

impl Telling {
    /// Tells as far as so many lines from the first.
    pub(super) fn tell(&mut self, to: usize, read: &ReadList, planned: &SeasonPlan, asked: &Asked) {
        if self.lines < to {
            let more = told(read, &read.lines[self.lines..to], planned, asked);
            self.told.extend(more);
            self.lines = to;
        }
    }
}

fn told(read: &ReadList, lines: &[Listed], planned: &SeasonPlan, asked: &Asked) -> Vec<Told> {
    let data = read.reference.data_version;
    let version = [env!("CARGO_PKG_VERSION"), "/", data].concat();
    let today = iso(asked.today);
    let rows = lines.iter().filter_map(|line| match line {
        Listed::Row(_, row, tree) => Some((row, tree)),
        _ => None,
    });
    rows.map(|(row, tree)| {
        let (mut cells, behind, paper) = match tree {
            Some(at) => of_tree(read, planned, asked.today, *at),
            None => without_tree(row),
        };
        let paper = paper.map(|paper| paper.with_note(&row.tag.note));
        cells.push(version.clone());
        cells.push(today.clone());
        cells.extend(behind);
        Told { cells, paper }
    })
    .collect()
}

/// Lines of the list with columns of the plan; `told` are its rows from the first of these lines on.
pub(super) fn plan(read: &ReadList, lines: &[Listed], told: &[Told], text: &mut String) {
    let mut told = told.iter();
    for line in lines {
        match line {
            Listed::Above(record) if Some(record.row) == read.layout.header_row => {
                let (cells, more) = read.kept(record);
                let cells = cells.into_iter().chain(added_names());
                write::row(cells.chain(more), text);
            }
            Listed::Above(record) => write::row(record.cells(), text),
            Listed::Lines(lines) => (0..*lines).for_each(|_| text.push_str("\r\n")),
            Listed::Blank(record) => {
                let (cells, more) = read.kept(record);
                write::row(cells.into_iter().chain(more), text);
            }
            Listed::Row(record, ..) => {
                let (own, more) = read.kept(record);
                let added = told.next().map_or(&[][..], |told| &told.cells);
                let guarded: Vec<_> = added.iter().map(|cell| write::guarded(cell)).collect();
                let cells = own.into_iter().chain(guarded.iter().map(AsRef::as_ref));
                write::row(cells.chain(more), text);
            }
        }
    }
}

/// Cells in front of version and day, cells behind them, and the sheet's part.
type Cells = (Vec<String>, Vec<String>, Option<OnPaper>);

/// Cells of a row that is no tree, or has something to mend.
fn without_tree(row: &Row) -> Cells {
    let reason = match row.is {
        Is::NotTree(_) => "not_a_tree",
        _ => "to_fix",
    };
    let mut cells = vec![String::new(); COLUMNS.len() - OWN];
    cells.push(reason.into());
    cells.push(words::without_answer(reason, false));
    (cells, vec![String::new(); MORE.len()], None)
}

fn of_tree(read: &ReadList, planned: &SeasonPlan, on_day: NaiveDate, tree: usize) -> Cells {
    let reason = planned.reasons[tree].word();
    let on = planned.place[tree].and_then(|place| planned.plan.trees[place].as_ref().ok());
    let open = read.trees[tree].judged().is_some();
    let Some((question, local)) = read.questions[tree].as_ref().filter(|_| open) else {
        let mut cells = vec![String::new(); COLUMNS.len() - OWN];
        cells.push(reason.into());
        cells.push(words::without_answer(reason, false));
        let paper = ringed_before(read, tree);
        return (cells, vec![String::new(); MORE.len()], paper);
    };
    let reference = read.reference;
    let asked = match on {
        Some(on) => on_ring_day(question, planned.property.days[on.day].day),
        None => Question::clone(question),
    };
    let answer = calc::answer::without_sources(reference, &asked, local);
    let line = Line::of(&asked, &answer);
    let mut row = cells(&asked, &answer, &line);
    let mut behind = vec![String::new(); MORE.len()];
    for check in CHECKS {
        row[at(check)].clear();
    }
    if let Some(on) = on {
        plan_cells(&mut row, &mut behind, planned, tree, on);
    }
    row.push(reason.into());
    let kind = crate::kind::Kind::default();
    row.push(crate::status(kind, reference, &asked, &answer));
    if let Some(within) = read.trees[tree].said_within_m {
        row[at("plan_assumed")].push_str(";unit_said");
        behind[3] = m::plan_unit_said(m::PlanUnitSaid {
            metres: fixed(within, 1),
            day: iso(on_day),
        });
    }
    let paper = on.map(|_| OnPaper::of(asked.tree.species, &answer));
    (row, behind, paper)
}

/// What a sheet says of a tree that was ringed before and is still gone to.
fn ringed_before(read: &ReadList, tree: usize) -> Option<OnPaper> {
    let after = read.trees[tree].after.as_ref()?;
    let (question, local) = read.questions[tree].as_ref()?;
    let ring = after.ringed_on.filter(|_| !after.open.is_empty())?;
    let asked = on_ring_day(question, ring);
    let answer = calc::answer::without_sources(read.reference, &asked, local);
    Some(OnPaper::of(asked.tree.species, &answer))
}

/// What the plan says of a tree that is planned.
fn plan_cells(
    row: &mut [String],
    behind: &mut [String],
    planned: &SeasonPlan,
    tree: usize,
    on: &Planned,
) {
    let days = &planned.property.days;
    row[at("plan_do_on")] = iso(days[on.day].day);
    row[at("plan_batch")] = (on.day + 1).to_string();
    row[at("plan_minutes_mean")] = fixed(on.minutes, 3);
    let mut visits: Vec<usize> = on.visits.iter().filter_map(|visit| visit.day).collect();
    visits.sort_unstable();
    for (check, day) in CHECKS.iter().zip(visits) {
        row[at(check)] = iso(days[day].day);
    }
    if let Some(place) = planned.place[tree] {
        behind[0] = fixed(planned.property.trees[place].work[2], 3);
        if let Some(turn) = planned.turns[place].first().copied().flatten() {
            behind[1] = turn.team.to_string();
            behind[2] = turn.order.to_string();
        }
    }
}

/// Rows with something to mend: the columns of the list, and up to three problems.
pub(super) fn to_fix(read: &ReadList) -> String {
    let mut text = write::MARK.to_owned();
    let headers = (1..=PROBLEMS).map(|at| format!("problem_{at}"));
    let headers: Vec<String> = headers.collect();
    for line in &read.lines {
        match line {
            Listed::Above(record) if Some(record.row) == read.layout.header_row => {
                let (cells, more) = read.kept(record);
                let cells = cells.into_iter().chain(headers.iter().map(String::as_str));
                write::row(cells.chain(more), &mut text);
            }
            Listed::Row(record, row, None) if matches!(row.is, Is::ToFix) => {
                let told = row.problems.iter().take(PROBLEMS);
                let mut problems: Vec<String> = told
                    .map(|problem| problem_cell(problem, read.header(problem.column)))
                    .collect();
                problems.resize(PROBLEMS, String::new());
                let (cells, more) = read.kept(record);
                let guarded: Vec<_> = problems.iter().map(|cell| write::guarded(cell)).collect();
                let cells = cells.into_iter().chain(guarded.iter().map(AsRef::as_ref));
                write::row(cells.chain(more), &mut text);
            }
            _ => {}
        }
    }
    text
}
