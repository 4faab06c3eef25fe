//! Tables of trees, a part of the rows at a time.

use super::fix::Fixes;
use super::{ROWS, open_rows, turn_buttons};
use crate::measure;
use crate::page::Page;
use crate::plan::made::Made;
use crate::plan::read::ReadList;
use crate::words::phrase::tree as tree_name;
use crate::words::{Word, m};
use calc::answer::without_sources;
use calc::question::{Day, Question};
use calc::terms::small::order::sort_by;
use calc_plan::CountedAs;
use chrono::NaiveDate;

/// A table of trees.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TreeTable {
    /// What is to mend.
    ToFix,
    /// For a professional.
    Professional,
    /// Other methods.
    OtherMethod,
    /// Not known yet.
    CannotTell,
    /// To be ringed, and not planned.
    Left,
    /// Planned.
    Planned,
}

impl TreeTable {
    /// All of them, in the order of the page.
    pub const ALL: [Self; 6] = [
        Self::Planned,
        Self::ToFix,
        Self::Professional,
        Self::OtherMethod,
        Self::CannotTell,
        Self::Left,
    ];

    /// Its name.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::ToFix => "to-fix",
            Self::Professional => "professional",
            Self::OtherMethod => "other-method",
            Self::CannotTell => "cannot-tell",
            Self::Left => "left",
            Self::Planned => "planned",
        }
    }

    /// The table of a name.
    #[must_use]
    pub fn of(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|table| table.name() == name)
    }

    pub(super) fn title(self) -> Word {
        match self {
            Self::ToFix => m::PROPERTY_ALL_TO_FIX,
            Self::Professional => m::PROPERTY_TABLE_PROFESSIONAL,
            Self::OtherMethod => m::PROPERTY_TABLE_OTHER_METHOD,
            Self::CannotTell => m::PROPERTY_TABLE_CANNOT_TELL,
            Self::Left => m::PROPERTY_TABLE_LEFT,
            Self::Planned => m::PROPERTY_TABLE_PLANNED,
        }
    }

    fn takes(self, reason: CountedAs) -> bool {
        match self {
            Self::ToFix => false,
            Self::Professional => reason == CountedAs::Professional,
            Self::OtherMethod => matches!(reason, CountedAs::OtherMethod | CountedAs::LeaveIt),
            Self::CannotTell => reason == CountedAs::CannotTell,
            Self::Left => matches!(
                reason,
                CountedAs::NoHours | CountedAs::NoDay | CountedAs::Pacing
            ),
            Self::Planned => reason == CountedAs::Planned,
        }
    }

    /// Its trees, by their place in the list: in the order of the days where they are planned, else of the rows.
    #[must_use]
    pub fn trees(self, made: &Made) -> Vec<usize> {
        let reasons = made.planned.reasons.iter().enumerate();
        let mut all: Vec<usize> = reasons
            .filter(|(_, reason)| self.takes(**reason))
            .map(|(at, _)| at)
            .collect();
        if self == Self::Planned {
            let trees = &made.file.trees;
            sort_by(&mut all, |a, b| {
                let key =
                    |at: &usize| (trees[*at].day.as_deref(), trees[*at].team, trees[*at].order);
                key(a).cmp(&key(b))
            });
        }
        all
    }
}

/// Rows of a table from one on, and a button for those behind them.
pub fn rows(
    out: &mut Page<'_>,
    table: TreeTable,
    list: &ReadList,
    made: &Made,
    first_day: NaiveDate,
    from: usize,
) {
    let all;
    if table == TreeTable::ToFix {
        let fixes = Fixes::of(list);
        all = fixes.len();
        fixes.some(out, "a", from, from.saturating_add(ROWS));
    } else {
        let trees = table.trees(made);
        all = trees.len();
        let last = if table == TreeTable::Planned {
            m::PROPERTY_HEAD_DAY
        } else {
            m::PROPERTY_HEAD_WHY
        };
        let heads = [
            m::PROPERTY_HEAD_TAG.text(),
            m::PROPERTY_HEAD_ROW.text(),
            m::PROPERTY_HEAD_TREE.text(),
            last.text(),
        ];
        for at in &trees[open_rows(out, table.title(), &heads, from, all)] {
            row(out, table, list, made, first_day, *at);
        }
        out.close_table();
    }
    turn_buttons(out, table.name(), from, all);
}

fn row(
    out: &mut Page<'_>,
    table: TreeTable,
    list: &ReadList,
    made: &Made,
    first_day: NaiveDate,
    at: usize,
) {
    let tree = &list.trees[at];
    out.cell(tree.tree_id.as_str());
    out.cell(tree.row.to_string());
    let Some((question, local)) = &list.questions[at] else {
        out.cell("");
        out.cell("");
        return;
    };
    let size = measure::size(question.tree.heading().dbh.mm());
    out.open_cell();
    out.text(m::property_tree(m::PropertyTree {
        species: tree_name(question.tree.species),
        size: size.first(question.units),
    }));
    if !tree.unit.is_empty() {
        out.leaf_class("span", "soft", [" ", tree.unit.as_str()].concat());
    }
    out.close_cell();
    let of_plan = &made.file.trees[at];
    if let (TreeTable::Planned, Some(day)) = (table, &of_plan.day) {
        let day = calc::question::read_day(day).map_or_else(|_| day.clone(), measure::day_year);
        let minutes = of_plan.minutes.unwrap_or(0.0);
        out.cell(m::property_on_day(m::PropertyOnDay {
            day,
            minutes: measure::minutes(minutes),
        }));
        return;
    }
    let mut asked = Question::clone(question);
    asked.day = Day::Year { today: first_day };
    let answer = without_sources(list.reference, &asked, local);
    let kind = crate::kind::Kind::default();
    out.cell(crate::status(kind, list.reference, &asked, &answer));
}
