//! What is asked of the season: place, days and who comes; what was replied of what the trees could hit.

use super::{ForDays, Session, Work};
use calc_view::plan::place;
use calc_view::plan::said::Said;
use calc_view::plan::screen::season::{not_a_season, picked};
use calc_view::words::m;

impl Session {
    /// Puts a day into the column of days of a tree's row: it stays in the list.
    pub(super) fn pin(&mut self, entries: &[(String, String)]) {
        let of = |name: &str| {
            let mut all = entries.iter().filter(|(key, _)| key == name);
            all.next().map_or("", |(_, typed)| typed.trim())
        };
        let (tag, day) = (of("pin-tag"), of("pin-day"));
        let Some(list) = &self.list else { return };
        let Some(column) = list.column_of_days() else {
            return self.refused(m::PROPERTY_PIN_NO_COLUMN.into());
        };
        let Some(row) = list.trees.iter().find(|tree| tree.tree_id == tag) else {
            return self.refused(m::property_pin_no_tree(tag));
        };
        let read = calc::question::read_day(day);
        if let (false, Err(_)) = (day.is_empty(), read) {
            return self.refused(m::property_pin_no_day(day));
        }
        let row = row.row;
        self.edits.insert((row, column), day.to_owned());
        self.last_row = Some(row);
        self.told.to = "l-sentence";
        self.read_anew();
    }

    /// Takes what was filled in; where it is a season, the trees are judged for its days.
    pub(super) fn plan(&mut self) {
        self.wrong = None;
        let at = self.filled.place.trim();
        let point = match place::point(at) {
            _ if at.is_empty() => None,
            Some(Ok(site)) => Some((site.lat, site.lon, site.elev_m)),
            _ => {
                return self.refused(m::property_no_place(at));
            }
        };
        let region = Some(self.filled.region.clone()).filter(|code| !code.is_empty());
        let elsewhere = point != self.options.place || region != self.options.region;
        if elsewhere {
            let as_offered = self
                .filled
                .days
                .take_if(|days| *days == picked(&self.offered));
            self.options.place = point;
            self.options.region = region;
            self.look = None;
            self.offered.clear();
            // Its rows were read with the place before: they are read again, now or once the rest is mended.
            self.unread = true;
            // Days that nobody picked are those of the place before: this one's are offered first.
            if as_offered.is_some() {
                self.season = None;
                self.forget_plan();
                self.plan_follows = true;
                self.read_anew();
                return;
            }
        }
        if self.filled.days.is_none() {
            self.filled.days = Some(picked(&self.offered));
        }
        match self.filled.asked(&self.options.today) {
            Ok(mut asked) => {
                asked.said = self.what_was_said();
                // With the same days only who works on them changed: what was judged stays known.
                let trees = match self.season.take() {
                    Some(before) if before.asked.judges_as(&asked) => before.trees,
                    _ => self.judge_nothing(),
                };
                self.season = Some(ForDays { asked, trees });
                self.forget_plan();
                self.planned_as = self.filled.clone();
                self.told.to = "l-sentence";
                if self.unread || self.list.is_none() {
                    self.read_anew();
                } else {
                    self.judge_for(Work::Judging);
                }
            }
            Err(wrong) => self.refused(not_a_season(&wrong)),
        }
    }

    /// What was replied holds from now on: trees are looked at anew.
    pub(super) fn said(&mut self) {
        let said = self.what_was_said();
        for days in [&mut self.look, &mut self.season].into_iter().flatten() {
            days.asked.said = said.clone();
        }
        // Rows that are being read, or are to be, are looked at when they are there.
        if self.unread {
            self.read_anew();
        } else {
            self.judge_for(Work::Looking);
        }
    }

    pub(super) fn what_was_said(&self) -> Said {
        // What is replied was made here: it reads.
        let said = self
            .replied
            .said(calc_data::reference(), self.options.units);
        said.unwrap_or_default()
    }

    fn refused(&mut self, wrong: String) {
        self.told.said.clone_from(&wrong);
        self.wrong = Some(wrong);
        self.told.to = "l-wrong";
        self.draw();
    }
}
