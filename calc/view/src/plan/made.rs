//! The plan of a list, and its files.

use super::asked::Asked;
use super::geojson;
use super::paper::{Sheets, WaitingRow};
use super::read::{Listed, ReadList, unit_of};
use super::standing::standing;
use super::tables::{self, Telling, Told};
use crate::season_calendar::season_calendar;
use calc::question::settings::AskingGroup;
use calc::terms::quantity::Units;
use calc_data::list::plan_constants;
use calc_list::{Is, write};
use calc_plan::plan_file::shape::Edit;
use calc_plan::{Bind, Kept, ListInPlanning, PlanFile, PlanningConstants, SeasonPlan};
use core::cell::RefCell;

/// What a plan is made for beside its season.
#[derive(Clone, Debug, Default)]
pub struct About {
    /// The list's file name.
    pub name: String,
    /// Whether each tree's best reduced value is printed.
    pub whole: bool,
    /// Units that are printed first.
    pub units: Units,
    /// The group whose contacts stand on the sheets.
    pub group: Option<AskingGroup>,
}

/// A plan.
pub struct Made {
    /// Who goes on which day.
    pub planned: SeasonPlan,
    /// What limits it.
    pub binds: Vec<Bind>,
    /// plan.json.
    pub file: PlanFile,
    /// Where days of an earlier plan were kept: how many per cent more a plan without them would be worth, if it is enough
    /// to be told.
    pub fresh_percent: Option<f64>,
    about: About,
    /// What is told of each row, once a file asks for it.
    telling: RefCell<Telling>,
    /// The file that is being written.
    writing: RefCell<Writing>,
}

/// A file that is written line by line of the list.
#[derive(Default)]
struct Writing {
    name: String,
    /// So many lines are written.
    lines: usize,
    /// So many rows stand in them.
    rows: usize,
    text: String,
}

impl Writing {
    fn of(name: &str) -> Self {
        Self {
            name: name.to_owned(),
            text: match name {
                "trees-plan.csv" => write::MARK.to_owned(),
                "trees.geojson" | "reach.geojson" => geojson::begin(),
                _ => String::new(),
            },
            ..Self::default()
        }
    }
}

/// The files of a plan, in the order in which they are told; the last one only where a tree is in the register.
pub const FILES: [&str; 10] = [
    "plan.json",
    "trees-plan.csv",
    "trees-to-fix.csv",
    "season.ics",
    "trees.geojson",
    "reach.geojson",
    "cover.html",
    "crew-sheets.html",
    "tags.html",
    STANDING,
];
const STANDING: &str = "standing.csv";

/// A plan that is worth more by this many per cent or less is not told of.
const FRESH: f64 = 1.0;

fn planning_constants(list: &ReadList) -> PlanningConstants<'static> {
    PlanningConstants {
        visits: &list.reference.constants.visits,
        own: plan_constants(),
        walk_m_per_min: list.reference.constants.effort.walk_m_per_min,
    }
}

/// How many per cent more a plan would be worth that keeps no day of an earlier one.
fn fresh_percent(
    constants: PlanningConstants<'_>,
    asked: &Asked,
    list: &ReadList,
    planned: &SeasonPlan,
) -> Option<f64> {
    if asked.season.kept.is_empty() || planned.plan.value <= 0.0 {
        return None;
    }
    let mut season = asked.season.clone();
    // Its walks are charged alike: else the plans would be told apart by them.
    season.kept = Kept {
        walk_factor: Some(planned.walk.map_or(1.0, |walk| walk.factor)),
        ..Kept::default()
    };
    let fresh = calc_plan::plan_list(constants, &season, &list.trees);
    Some(100.0 * (fresh.plan.value / planned.plan.value - 1.0)).filter(|percent| *percent > FRESH)
}

/// A plan that is being made, a step at a time where somebody waits.
#[derive(Default)]
pub struct Making {
    planning: ListInPlanning,
    planned: Option<SeasonPlan>,
    binds: Option<Vec<Bind>>,
    /// See [`Made::fresh_percent`].
    fresh: Option<Option<f64>>,
}

impl Making {
    /// The next step: who goes on which day, what limits that, what a plan without earlier days would be worth, the file.
    /// The plan comes with the last one.
    pub fn step(&mut self, list: &ReadList, asked: &Asked, about: &About) -> Option<Made> {
        let constants = planning_constants(list);
        let Some(planned) = &self.planned else {
            let planning = &mut self.planning;
            self.planned = planning.step(constants, &asked.season, &list.trees);
            return None;
        };
        if self.binds.is_none() {
            let trees = &list.trees;
            let binds = calc_plan::binds(constants, &asked.season, trees, planned, asked.spare);
            self.binds = Some(binds);
            return None;
        }
        let Some(fresh_percent) = self.fresh else {
            self.fresh = Some(fresh_percent(constants, asked, list, planned));
            return None;
        };
        let (planned, binds) = (self.planned.take()?, self.binds.take()?);
        Some(Made::with(
            list,
            asked,
            about,
            (planned, binds, fresh_percent),
        ))
    }
}

impl Made {
    /// The plan of a list whose trees were judged.
    #[must_use]
    pub fn of(list: &ReadList, asked: &Asked, about: &About) -> Self {
        let mut making = Making::default();
        loop {
            if let Some(made) = making.step(list, asked, about) {
                return made;
            }
        }
    }

    fn with(
        list: &ReadList,
        asked: &Asked,
        about: &About,
        (planned, binds, fresh_percent): (SeasonPlan, Vec<Bind>, Option<f64>),
    ) -> Self {
        let mut file = calc_plan::plan_file(
            planning_constants(list),
            &calc_plan::PlanFileFacts {
                product_version: env!("CARGO_PKG_VERSION"),
                data_version: list.reference.data_version,
                made_on: asked.today,
                list_id: &list.id,
                list_name: &about.name,
                columns: list.layout.texts.len(),
                rows: list.counts.rows,
                blank: list.counts.blank,
                not_trees: list.counts.no_trees(),
                to_fix: list.counts.to_fix,
                closed: &asked.closed,
                wage: asked.wage,
                whole: about.whole,
                said: &asked.said.nothing_within,
                said_by: &asked.said.by,
                assumed: calc_data::list::tables().assumed,
            },
            &asked.season,
            &list.trees,
            &planned,
            &binds,
        );
        let header = |at: usize| match list.layout.texts.get(at) {
            Some(header) if !header.trim().is_empty() => header.clone(),
            _ => calc_list::letter(at),
        };
        file.edits = list
            .edited
            .iter()
            .map(|cell| Edit {
                row: cell.row,
                column: header(cell.column),
                was: cell.was.clone(),
                is: cell.is.clone(),
            })
            .collect();
        Self {
            fresh_percent,
            planned,
            binds,
            file,
            about: about.clone(),
            telling: RefCell::default(),
            writing: RefCell::default(),
        }
    }

    /// The names of its files: [`FILES`], without the register where no tree is in it.
    #[must_use]
    pub fn files(&self, list: &ReadList, asked: &Asked) -> Vec<&'static str> {
        let registered = standing(list, asked, &list.zones).is_some();
        let names = FILES.into_iter();
        names
            .filter(|name| *name != STANDING || registered)
            .collect()
    }

    /// Makes a file ready by so many lines of the list more; false once [`Self::file`] has it.
    #[must_use]
    pub fn prepare(&self, name: &str, lines: usize, list: &ReadList, asked: &Asked) -> bool {
        let mut writing = self.writing.borrow_mut();
        if writing.name != name {
            *writing = Writing::of(name);
        }
        let all = list.lines.len();
        let to = match Self::goes_by_lines(name) {
            true => writing.lines.saturating_add(lines).min(all),
            false => all,
        };
        let mut telling = self.telling.borrow_mut();
        if Self::tells_rows(name) {
            telling.tell(to, list, &self.planned, asked);
        }
        let from = writing.lines;
        let some = &list.lines[from..to];
        let told = telling.told.get(writing.rows..).unwrap_or(&[]);
        let text = &mut writing.text;
        match name {
            "trees-plan.csv" => tables::plan(list, some, told, text),
            "trees.geojson" => geojson::trees(list, some, told, text),
            "reach.geojson" => geojson::reach(some, &self.planned, &list.zones, text),
            _ => {}
        }
        let rows = some.iter().filter(|line| matches!(line, Listed::Row(..)));
        writing.rows += rows.count();
        writing.lines = to;
        to < all
    }

    /// How many lines of the file that is made ready are done, of how many.
    #[must_use]
    pub fn prepared(&self, list: &ReadList) -> (usize, usize) {
        (self.writing.borrow().lines, list.lines.len())
    }

    /// Whether a file takes longer the more lines the list has, so that it is made ready by [`Self::prepare`].
    #[must_use]
    pub fn goes_by_lines(name: &str) -> bool {
        Self::tells_rows(name) || name == "reach.geojson"
    }

    /// Whether a file tells of each row.
    fn tells_rows(name: &str) -> bool {
        matches!(
            name,
            "trees-plan.csv" | "trees.geojson" | "cover.html" | "crew-sheets.html" | "tags.html"
        )
    }

    /// One of [`FILES`]: what stands in it.
    ///
    /// # Errors
    /// What can't be written as JSON.
    pub fn file(&self, name: &str, list: &ReadList, asked: &Asked) -> serde_json::Result<String> {
        while self.prepare(name, usize::MAX, list, asked) {}
        let telling = self.telling.borrow();
        let told = telling.told.as_slice();
        let written = self.writing.take().text;
        Ok(match name {
            "plan.json" => serde_json::to_string(&self.file)? + "\n",
            "trees-plan.csv" => written,
            "trees-to-fix.csv" => tables::to_fix(list),
            "trees.geojson" | "reach.geojson" => written + geojson::END,
            "cover.html" => self.sheets(list, told, |sheets| sheets.cover()),
            "crew-sheets.html" => self.sheets(list, told, |sheets| sheets.crew_sheets()),
            "tags.html" => self.sheets(list, told, |sheets| sheets.tags()),
            STANDING => standing(list, asked, &list.zones).unwrap_or_default(),
            _ => {
                // The asker's day decides, so that two runs give the same bytes.
                let stamp = calc::terms::day::iso(asked.today).replace('-', "") + "T000000Z";
                season_calendar(&self.file, &stamp)
            }
        })
    }

    fn sheets(
        &self,
        list: &ReadList,
        told: &[Told],
        print: impl FnOnce(&Sheets<'_>) -> String,
    ) -> String {
        let mut on_paper = vec![None; list.trees.len()];
        let mut to_fix = Vec::new();
        let rows = list.lines.iter().filter_map(|line| match line {
            Listed::Row(_, row, tree) => Some((row, tree)),
            _ => None,
        });
        for ((row, tree), told) in rows.zip(told) {
            match tree {
                Some(at) => on_paper[*at].clone_from(&told.paper),
                None if matches!(row.is, Is::ToFix) => to_fix.push(WaitingRow {
                    tree_id: row.tag.tree_id.clone(),
                    unit: unit_of(&row.tag).to_owned(),
                }),
                None => {}
            }
        }
        print(&Sheets {
            reference: list.reference,
            file: &self.file,
            on_paper: &on_paper,
            to_fix: &to_fix,
            group: self.about.group.as_ref(),
            units: self.about.units,
        })
    }
}
