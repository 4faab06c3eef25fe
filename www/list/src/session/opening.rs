//! How a file is opened: cut into rows, its columns judged, then read.

use super::{Replied, Session, Work};
use calc_list::{NotList, Record};
use calc_plan::Kept;
use calc_view::plan::read::{ListBeingRead, ListFile};
use calc_view::plan::screen::land::LandForm;
use calc_view::words::{list as words, m};

/// A file and its rows.
pub(super) type CutFile = (ListFile, Vec<Record>);

impl Session {
    /// False where it is no list: the one before stays. A table of visits is taken up beside it.
    pub(crate) fn open(&mut self, name: &str, bytes: Vec<u8>) -> bool {
        if self.is_found(&bytes) {
            self.take_found(name, bytes);
            return false;
        }
        // What is no list replaces nothing.
        let before = (
            std::mem::replace(&mut self.name, name.to_owned()),
            std::mem::replace(&mut self.bytes, bytes),
            std::mem::take(&mut self.decisions),
            std::mem::take(&mut self.edits),
        );
        let (list, season, made) = (self.list.take(), self.season.take(), self.made.take());
        if self.begin() {
            self.filled.days = None;
            self.plan_follows = false;
            self.offered.clear();
            self.replied = Replied::default();
            self.look = None;
            self.wrong = None;
            self.before = None;
            self.kept = Kept::default();
            self.last_row = None;
            (self.found, self.found_told, self.no_found) = (None, None, None);
            (self.land, self.land_wrong) = (LandForm::default(), None);
            self.planting.typed.clear();
            if let Some(list) = list {
                self.leftover.of_list(list);
            }
            if let Some(made) = made {
                self.leftover.of_plan(made);
            }
            true
        } else {
            (self.list, self.season, self.made) = (list, season, made);
            (self.name, self.bytes, self.decisions, self.edits) = before;
            false
        }
    }

    /// Reads the file anew, a step after the other.
    pub(super) fn read_anew(&mut self) {
        self.unread = true;
        self.work = Work::Opening(None);
    }

    fn cut(&self) -> Result<CutFile, NotList> {
        let file = ListFile::of(&self.bytes, &self.decisions)?;
        // Bytes in memory are always there to be read.
        let rows = file.first_rows().unwrap_or_default();
        Ok((file, rows))
    }

    /// Judges the columns, and begins to read where they ask nothing. False where the file is no list.
    pub(super) fn begin(&mut self) -> bool {
        let cut = self.cut();
        self.begin_with(cut)
    }

    fn begin_with(&mut self, cut: Result<CutFile, NotList>) -> bool {
        let reference = calc_data::reference();
        let opened = cut.and_then(|(file, rows)| {
            let opened = calc_list::open(reference, rows, &self.options, &self.decisions)?;
            Ok((file, opened))
        });
        let (file, opened) = match opened {
            Ok(opened) => opened,
            Err(why) => {
                self.told.said = words::not_list(why);
                return false;
            }
        };
        self.asks.clone_from(&opened.asks);
        self.headers.clone_from(&opened.layout.texts);
        self.notes.clone_from(&opened.notes);
        self.changed.clone_from(&file.changed);
        self.work = Work::None;
        self.unread = true;
        if self.asks.is_empty() {
            if let Ok(reading) = ListBeingRead::of(&file, reference, opened, self.edits.clone()) {
                self.work = Work::Reading(Box::new(reading));
            }
        } else {
            self.draw();
            self.told.said = m::property_columns_asked(self.asks.len().to_string());
            self.told.to = "area-columns";
        }
        true
    }

    /// A step of it: the file is cut into rows; then its columns are judged.
    pub(super) fn opened_on(&mut self, cut: Option<Box<CutFile>>) {
        let cut = match cut {
            Some(cut) => Ok(*cut),
            None => match self.cut() {
                Ok(cut) => {
                    self.work = Work::Opening(Some(Box::new(cut)));
                    return;
                }
                Err(why) => Err(why),
            },
        };
        self.begin_with(cut);
    }
}
