//! A plan that is being made, in steps where somebody waits.

use super::asked::Asked;
use super::made::{About, Made};
use super::read::ReadList;
use calc::reference::Reference;
use calc_data::list::plan_constants;
use calc_list::Counts;
use calc_plan::plan_file::shape::Edit;
use calc_plan::{
    Bind, InSteps, Kept, ListTree, PlanFile, PlanFileFacts, PlanningConstants, Rests, SeasonPlan,
    binds_in_steps, plan_file_in_steps, plan_list_in_steps,
};
use std::rc::Rc;

/// A plan that is worth more by this many per cent or less is not told of.
const FRESH: f64 = 1.0;

/// A plan that is being made.
#[derive(Default)]
pub struct Making {
    in_steps: Option<InSteps<Made>>,
}

impl Making {
    /// So many pieces of work more, see [`InSteps`]; the plan comes with the last one. Its list and what was asked for are
    /// those of the first step.
    pub fn step(
        &mut self,
        work: usize,
        list: &ReadList,
        asked: &Asked,
        about: &About,
    ) -> Option<Made> {
        let in_steps = self.in_steps.get_or_insert_with(|| {
            let to_plan = ToPlan::of(list, asked, about);
            InSteps::of(|rests| async move { to_plan.made(&rests).await })
        });
        in_steps.step(work)
    }
}

/// All that a plan is made from.
struct ToPlan {
    reference: &'static Reference,
    trees: Rc<Vec<ListTree>>,
    asked: Asked,
    about: About,
    list_id: String,
    columns: usize,
    counts: Counts,
    edits: Vec<Edit>,
}

impl ToPlan {
    fn of(list: &ReadList, asked: &Asked, about: &About) -> Self {
        let header = |at: usize| match list.layout.texts.get(at) {
            Some(header) if !header.trim().is_empty() => header.clone(),
            _ => calc_list::letter(at),
        };
        let edits = list.edited.iter().map(|cell| Edit {
            row: cell.row,
            column: header(cell.column),
            was: cell.was.clone(),
            is: cell.is.clone(),
        });
        Self {
            reference: list.reference,
            trees: Rc::clone(&list.trees),
            asked: asked.clone(),
            about: about.clone(),
            list_id: list.id.clone(),
            columns: list.layout.texts.len(),
            counts: list.counts.clone(),
            edits: edits.collect(),
        }
    }

    fn constants(&self) -> PlanningConstants<'static> {
        PlanningConstants {
            visits: &self.reference.constants.visits,
            own: plan_constants(),
            walk_m_per_min: self.reference.constants.effort.walk_m_per_min,
        }
    }

    /// Who goes on which day, what limits that, what a plan without earlier days would be worth, the file.
    async fn made(self, rests: &Rests) -> Made {
        let known = (self.constants(), rests);
        let (season, spare) = (&self.asked.season, self.asked.spare);
        let planned = plan_list_in_steps(known, season, &self.trees).await;
        let binds = binds_in_steps(known, season, &self.trees, &planned, spare).await;
        let fresh_percent = self.fresh_percent(&planned, rests).await;
        let file = self.file(&planned, &binds, rests).await;
        Made::with(self.about, planned, binds, file, fresh_percent)
    }

    /// How many per cent more a plan would be worth that keeps no day of an earlier one.
    async fn fresh_percent(&self, planned: &SeasonPlan, rests: &Rests) -> Option<f64> {
        let season = &self.asked.season;
        if season.kept.is_empty() || planned.plan.value <= 0.0 {
            return None;
        }
        let mut season = season.clone();
        // Its walks are charged alike: else the plans would be told apart by them.
        season.kept = Kept {
            walk_factor: Some(planned.walk.map_or(1.0, |walk| walk.factor)),
            ..Kept::default()
        };
        let fresh = plan_list_in_steps((self.constants(), rests), &season, &self.trees).await;
        let percent = 100.0 * (fresh.plan.value / planned.plan.value - 1.0);
        Some(percent).filter(|percent| *percent > FRESH)
    }

    async fn file(&self, planned: &SeasonPlan, binds: &[Bind], rests: &Rests) -> PlanFile {
        let (asked, counts) = (&self.asked, &self.counts);
        let facts = PlanFileFacts {
            product_version: env!("CARGO_PKG_VERSION"),
            data_version: self.reference.data_version,
            made_on: asked.today,
            list_id: &self.list_id,
            list_name: &self.about.name,
            columns: self.columns,
            rows: counts.rows,
            blank: counts.blank,
            not_trees: counts.no_trees(),
            to_fix: counts.to_fix,
            closed: &asked.closed,
            wage: asked.wage,
            whole: self.about.whole,
            said: &asked.said.nothing_within,
            said_by: &asked.said.by,
            assumed: calc_data::list::tables().assumed,
        };
        let known = (self.constants(), rests);
        let plan = (planned, binds);
        let mut file = plan_file_in_steps(known, &facts, &asked.season, &self.trees, plan).await;
        file.edits.clone_from(&self.edits);
        file
    }
}
