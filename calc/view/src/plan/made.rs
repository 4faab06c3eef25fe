//! The plan of a list, and its files.

use super::asked::Asked;
use super::geojson;
use super::making::Making;
use super::paper::crew::CrewSheet;
use super::paper::{Sheets, WaitingRow};
use super::pieces;
use super::read::{Listed, ReadList, unit_of};
use super::standing::standing;
use super::tables::{self, Telling, Told};
use crate::season_calendar::season_calendar;
use calc::question::settings::AskingGroup;
use calc::terms::quantity::Units;
use calc_list::{Is, write};
use calc_plan::{Bind, PlanFile, SeasonPlan};
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

/// A sheet is printed in the time in which so many rows are written that were told before.
const OF_SHEET: usize = 200;

/// A file that is written piece by piece: lines of the list, trees of plan.json, sheets.
#[derive(Default)]
struct Writing {
    name: String,
    /// So many pieces are written.
    pieces: usize,
    /// So many rows stand in them.
    rows: usize,
    text: String,
    /// What stands behind all pieces.
    behind: String,
    /// The sheets of the crews that are still to be printed, once all rows are told; and how many there are in all.
    sheets: Option<(Vec<CrewSheet>, usize)>,
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
    CREW_SHEETS,
    "tags.html",
    STANDING,
];
const STANDING: &str = "standing.csv";
const CREW_SHEETS: &str = "crew-sheets.html";

impl Made {
    /// The plan of a list whose trees were judged.
    #[must_use]
    pub fn of(list: &ReadList, asked: &Asked, about: &About) -> Self {
        let mut making = Making::default();
        loop {
            if let Some(made) = making.step(usize::MAX, list, asked, about) {
                return made;
            }
        }
    }

    pub(super) fn with(
        about: About,
        planned: SeasonPlan,
        binds: Vec<Bind>,
        file: PlanFile,
        fresh_percent: Option<f64>,
    ) -> Self {
        Self {
            fresh_percent,
            planned,
            binds,
            file,
            about,
            telling: RefCell::default(),
            writing: RefCell::default(),
        }
    }

    /// plan.json, and what was told of the rows for its files.
    pub(super) fn left(self) -> (PlanFile, Vec<Told>) {
        (self.file, self.telling.into_inner().told)
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

    /// Begins a file: what stands in front of all pieces.
    fn begin(&self, name: &str) -> Writing {
        let (text, behind) = match name {
            "plan.json" => pieces::around_trees(&self.file),
            "trees-plan.csv" => (write::MARK.to_owned(), String::new()),
            "trees.geojson" | "reach.geojson" => (geojson::begin(), geojson::END.to_owned()),
            _ => Default::default(),
        };
        Writing {
            name: name.to_owned(),
            text,
            behind,
            ..Writing::default()
        }
    }

    /// Makes a file ready by so many pieces more, lines of the list mostly; false once [`Self::file`] has it.
    #[must_use]
    pub fn prepare(&self, name: &str, pieces: usize, list: &ReadList, asked: &Asked) -> bool {
        let mut writing = self.writing.borrow_mut();
        if writing.name != name {
            *writing = self.begin(name);
        }
        let lines = list.lines.len();
        if name == "plan.json" {
            let all = self.file.trees.len();
            let from = writing.pieces;
            writing.pieces = from.saturating_add(pieces).min(all);
            let trees = &self.file.trees[from..writing.pieces];
            pieces::trees(trees, from == 0, &mut writing.text);
            return writing.pieces < all;
        }
        if name == CREW_SHEETS && writing.pieces == lines {
            return self.prepare_sheets(&mut writing, pieces, list);
        }
        let from = writing.pieces;
        let to = match Self::goes_by_pieces(name) {
            true => from.saturating_add(pieces).min(lines),
            false => lines,
        };
        let mut telling = self.telling.borrow_mut();
        if Self::tells_rows(name) {
            telling.tell(to, list, &self.planned, asked);
        }
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
        writing.pieces = to;
        to < lines || name == CREW_SHEETS
    }

    /// The sheets of the crews, once all rows are told: which there are, then so many rows of them more.
    fn prepare_sheets(&self, writing: &mut Writing, rows: usize, list: &ReadList) -> bool {
        let telling = self.telling.borrow();
        self.sheets(list, &telling.told, |sheets| {
            let Writing { text, behind, .. } = writing;
            let Some((left, _)) = &mut writing.sheets else {
                let all = sheets.crew_sheets();
                (*text, *behind) = sheets.around_crew_sheets(all.is_empty());
                let count = all.len();
                writing.sheets = Some((all, count));
                return true;
            };
            let many = (rows / OF_SHEET).max(1).min(left.len());
            let some: Vec<CrewSheet> = left.drain(..many).collect();
            sheets.print_crew_sheets(&some, text);
            !left.is_empty()
        })
    }

    /// How many pieces of the file that is made ready are done, of how many. Of the sheets of the crews all rows are told
    /// first: that is half of it.
    #[must_use]
    pub fn prepared(&self, list: &ReadList) -> (usize, usize) {
        let writing = self.writing.borrow();
        let lines = list.lines.len();
        match (writing.name.as_str(), &writing.sheets) {
            ("plan.json", _) => (writing.pieces, self.file.trees.len()),
            (CREW_SHEETS, Some((left, all))) => {
                let printed = all - left.len();
                (lines + 1 + (lines * printed) / (all + 1), 2 * lines)
            }
            (CREW_SHEETS, None) => (writing.pieces, 2 * lines),
            _ => (writing.pieces, lines),
        }
    }

    /// Whether a file takes longer the more lines the list has, so that it is made ready by [`Self::prepare`].
    #[must_use]
    pub fn goes_by_pieces(name: &str) -> bool {
        Self::tells_rows(name) || matches!(name, "plan.json" | "reach.geojson")
    }

    /// Whether a file tells of each row.
    fn tells_rows(name: &str) -> bool {
        matches!(
            name,
            "trees-plan.csv" | "trees.geojson" | "cover.html" | CREW_SHEETS | "tags.html"
        )
    }

    /// One of [`FILES`]: what stands in it.
    pub fn file(&self, name: &str, list: &ReadList, asked: &Asked) -> String {
        while self.prepare(name, usize::MAX, list, asked) {}
        let telling = self.telling.borrow();
        let told = telling.told.as_slice();
        let Writing { text, behind, .. } = self.writing.take();
        let written = text + &behind;
        match name {
            "plan.json" | "trees-plan.csv" | "trees.geojson" | "reach.geojson" | CREW_SHEETS => {
                written
            }
            "trees-to-fix.csv" => tables::to_fix(list),
            "cover.html" => self.sheets(list, told, |sheets| sheets.cover()),
            "tags.html" => self.sheets(list, told, |sheets| sheets.tags()),
            STANDING => standing(list, asked, &list.zones).unwrap_or_default(),
            _ => {
                // The asker's day decides, so that two runs give the same bytes.
                let stamp = calc::terms::day::iso(asked.today).replace('-', "") + "T000000Z";
                season_calendar(&self.file, &stamp)
            }
        }
    }

    fn sheets<T>(&self, list: &ReadList, told: &[Told], print: impl FnOnce(&Sheets<'_>) -> T) -> T {
        let mut on_paper = vec![None; list.trees.len()];
        let mut to_fix = Vec::new();
        let rows = list.lines.iter().filter_map(|line| match line {
            Listed::Row(_, row, tree) => Some((row, tree)),
            _ => None,
        });
        for ((row, tree), told) in rows.zip(told) {
            match tree {
                Some(at) => on_paper[*at] = told.paper.as_ref(),
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
