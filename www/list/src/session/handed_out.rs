//! What an open list hands out beside its areas: rows of tables, and files.

use super::{Session, Told, Work};
use crate::record::recorded;
use calc_view::plan::made::Made;
use calc_view::plan::screen::table::TreeTable;
use calc_view::plan::screen::{folds, found, map, table};

impl Session {
    /// Rows of a table as [`Self::step`] tells areas; nothing is stopped by it.
    pub(crate) fn page(&mut self, name: &str, from: usize) -> String {
        let mut told = Told::default();
        if let (Some(list), Some(made)) = (&self.list, &self.made) {
            let units = self.options.units;
            let drawn = match name {
                map::MAP => recorded(|out| map::map(out, list, made, units, from)),
                map::PLACES => recorded(|out| map::places(out, list, made, units, from)),
                _ => Vec::new(),
            };
            if !drawn.is_empty() {
                told.areas.insert(["t-", name].concat(), drawn);
            }
        }
        if let (found::FOUND_TREES, Some(list), Some(after)) = (name, &self.list, self.after()) {
            let drawn = recorded(|out| found::trees(out, list, after, from));
            told.areas.insert(["t-", name].concat(), drawn);
        }
        if let (Some(list), Some(made), Some(season), Some(of)) =
            (&self.list, &self.made, &self.season, TreeTable::of(name))
        {
            let day = season.asked.season.from;
            let drawn = recorded(|out| table::rows(out, of, list, made, day, from));
            told.areas.insert(["t-", name].concat(), drawn);
        }
        serde_json::to_string(&told).unwrap_or_default()
    }

    /// Begins to make a file ready, in slices. False where there is none, or other work is being done.
    pub(crate) fn want(&mut self, name: &str) -> bool {
        if !matches!(self.work, Work::None) {
            return false;
        }
        if self.made.is_some() && Made::tells_rows(name) {
            self.work = Work::Telling;
        }
        self.made.is_some() || name == folds::DECISIONS || name == folds::BEFORE
    }

    pub(crate) fn file(&mut self, name: &str) -> Vec<u8> {
        if name == folds::DECISIONS {
            return serde_json::to_vec_pretty(&self.decisions).unwrap_or_default();
        }
        if name == folds::BEFORE {
            let before = self.before.as_ref();
            let text = before.and_then(|before| serde_json::to_vec(&before.file).ok());
            return text.unwrap_or_default();
        }
        let (Some(list), Some(made), Some(season)) = (&self.list, &self.made, &self.season) else {
            return Vec::new();
        };
        if name == found::FOUND {
            return found::example(list, made).into_bytes();
        }
        let text = made.file(name, list, &season.asked);
        text.map(String::into_bytes).unwrap_or_default()
    }
}
