//! What an open list hands out beside its areas: rows of tables, and files.

use super::{Session, Told, Work};
use crate::record::recorded;
use calc_view::plan::made::Made;
use calc_view::plan::screen::table::TreeTable;
use calc_view::plan::screen::{folds, found, map, replant, table};

impl Session {
    /// Rows of a table as [`Self::step`] tells areas; nothing is stopped by it.
    pub(crate) fn page(&mut self, name: &str, from: usize) -> String {
        let mut told = Told::default();
        if let Some(drawn) = self.rows(name, from) {
            told.areas.insert(["t-", name].concat(), drawn);
        }
        serde_json::to_string(&told).unwrap_or_default()
    }

    /// A table, or the map, as it is drawn; none where nothing is planned or there is none of that name.
    pub(super) fn rows(&self, name: &str, from: usize) -> Option<Vec<String>> {
        let (list, made) = (self.list.as_ref()?, self.made.as_ref()?);
        let units = self.options.units;
        Some(match name {
            map::MAP => recorded(|out| map::map(out, list, made, units, from)),
            map::PLACES => recorded(|out| map::places(out, list, made, units, from)),
            replant::REPLANT => {
                let natives = self.planting.natives.as_ref();
                recorded(|out| replant::replant(out, list, made, self.planting_shown(), natives))
            }
            found::FOUND_TREES => {
                let after = self.after()?;
                recorded(|out| found::trees(out, list, after, from))
            }
            _ => {
                let (of, season) = (TreeTable::of(name)?, self.season.as_ref()?);
                let day = season.asked.season.from;
                recorded(|out| table::rows(out, of, list, made, day, from))
            }
        })
    }

    /// Begins to make a file ready, in slices. False where there is none, or other work is being done.
    pub(crate) fn want(&mut self, name: &str) -> bool {
        if !matches!(self.work, Work::None) {
            return false;
        }
        if self.made.is_some() && Made::goes_by_pieces(name) {
            self.work = Work::Writing(name.to_owned());
        }
        self.made.is_some() || name == folds::DECISIONS || name == folds::BEFORE
    }

    /// Writes so many rows more of a file; gives how many are done, of how many, while some are left.
    pub(super) fn write(&mut self, rows: usize, name: String) -> (usize, usize) {
        if let (Some(list), Some(made), Some(season)) = (&self.list, &self.made, &self.season)
            && made.prepare(&name, rows, list, &season.asked)
        {
            self.work = Work::Writing(name);
            return made.prepared(list);
        }
        (0, 0)
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
        made.file(name, list, &season.asked).into_bytes()
    }
}
