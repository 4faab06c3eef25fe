//! The plan of a list, and its files.

use super::asked::Asked;
use super::read::ReadList;
use super::tables;
use crate::season_calendar::season_calendar;
use calc_data::list::plan_constants;
use calc_plan::{Bind, PlanFile, PlanningConstants, SeasonPlan};

/// What a plan is made for beside its season.
#[derive(Clone, Debug, Default)]
pub struct About {
    /// The list's file name.
    pub name: String,
    /// Whether each tree's best reduced value is printed.
    pub whole: bool,
}

/// A plan.
pub struct Made {
    /// Who goes on which day.
    pub planned: SeasonPlan,
    /// What limits it.
    pub binds: Vec<Bind>,
    /// plan.json.
    pub file: PlanFile,
}

/// The files of a plan, in the order in which they are told.
pub const FILES: [&str; 4] = [
    "plan.json",
    "trees-plan.csv",
    "trees-to-fix.csv",
    "season.ics",
];

impl Made {
    /// The plan of a list whose trees were judged.
    #[must_use]
    pub fn of(list: &ReadList, asked: &Asked, about: &About) -> Self {
        let constants = PlanningConstants {
            visits: &list.reference.constants.visits,
            own: plan_constants(),
        };
        let planned = calc_plan::plan_list(constants, &asked.season, &list.trees);
        let binds = calc_plan::binds(constants, &asked.season, &list.trees, &planned, asked.spare);
        let file = calc_plan::plan_file(
            constants,
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
                assumed: calc_data::list::tables().assumed,
            },
            &asked.season,
            &list.trees,
            &planned,
            &binds,
        );
        Self {
            planned,
            binds,
            file,
        }
    }

    /// One of [`FILES`]: what stands in it.
    ///
    /// # Errors
    /// What can't be written as JSON.
    pub fn file(&self, name: &str, list: &ReadList, asked: &Asked) -> serde_json::Result<String> {
        Ok(match name {
            "plan.json" => serde_json::to_string(&self.file)? + "\n",
            "trees-plan.csv" => tables::plan(list, &self.planned, asked),
            "trees-to-fix.csv" => tables::to_fix(list),
            _ => {
                // The asker's day decides, so that two runs give the same bytes.
                let stamp = calc::terms::day::iso(asked.today).replace('-', "") + "T000000Z";
                season_calendar(&self.file, &stamp)
            }
        })
    }
}
