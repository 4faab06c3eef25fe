//! What a list and its plan held, once there are others. It is thousands of small texts: given back all at once they would
//! hold a page up, so they go a piece at a time.

use super::made::Made;
use super::read::{Listed, ReadList};
use super::tables::Told;
use calc_plan::PlanFile;

/// Rows that nobody asks for any more.
#[derive(Default)]
pub struct Leftover {
    lines: Vec<Listed>,
    told: Vec<Told>,
}

impl Leftover {
    /// Takes the rows of a list that was read anew.
    pub fn of_list(&mut self, list: ReadList) {
        self.lines.extend(list.lines);
    }

    /// Takes what was told of the rows for the files of a plan; gives its plan.json.
    pub fn of_plan(&mut self, made: Made) -> PlanFile {
        let (file, told) = made.left();
        self.told.extend(told);
        file
    }

    /// Gives so many rows back.
    pub fn give_back(&mut self, rows: usize) {
        self.lines.truncate(self.lines.len().saturating_sub(rows));
        self.told.truncate(self.told.len().saturating_sub(rows));
    }
}
