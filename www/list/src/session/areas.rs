//! What an open list shows: an area each, drawn anew; and the command that makes the same plan.

use super::{Session, Work};
use crate::record::recorded;
use calc::terms::quantity::Units;
use calc_list::Decisions;
use calc_view::plan::asked::Asked;
use calc_view::plan::screen::hit::hit;
use calc_view::plan::screen::season::season;
use calc_view::plan::screen::{columns, fix, folds, result};

impl Session {
    /// What makes the same plan on the command line.
    pub(super) fn command(&self, asked: &Asked) -> String {
        let days = self.filled.all_days();
        let (from, to) = (asked.season.from, asked.season.to);
        let day = calc::terms::day::iso;
        let name = match self.edits.is_empty() {
            true => self.name.as_str(),
            false => "trees-plan.csv",
        };
        let mut command = format!(
            "slipbark plan \"{name}\" --out season --from {} --to {} --days {days} --crew {} --hours {} --today {}",
            day(from),
            day(to),
            self.filled.people.trim(),
            self.filled.hours.trim(),
            day(asked.today),
        );
        if !self.filled.place.trim().is_empty() {
            command += &format!(" --place \"{}\"", self.filled.place.trim());
        }
        if !self.filled.region.is_empty() {
            command += &format!(" --region {}", self.filled.region);
        }
        if self.options.units == Units::Metric {
            command += " --units metric";
        }
        if self.words.language() != "en" {
            command += &format!(" --lang {}", self.words.language());
        }
        for (option, value) in self.replied.options() {
            command += &format!(" --{option} \"{value}\"");
        }
        if !self.planting.typed.is_empty() {
            command += &format!(" --spacing \"{}\"", self.planting.typed);
        }
        let of_land = self.list.as_ref().map(|list| self.land.options(list));
        for (option, value) in of_land.unwrap_or_default() {
            command += &format!(" --{option} \"{value}\"");
        }
        if let Some(found) = &self.found {
            command += &format!(" --found \"{}\"", found.name);
            if found.own_rate {
                command += " --own-rate";
            }
        }
        if self.decisions != Decisions::default() {
            command += " --columns decisions.json";
        }
        let closed: Vec<String> = asked.closed.iter().copied().map(day).collect();
        if !closed.is_empty() {
            command += &format!(" --closed {}", closed.join(","));
        }
        if !asked.season.kept.is_empty() {
            command += &format!(" --keep {}", folds::BEFORE);
        }
        command
    }

    /// Draws every area.
    pub(super) fn draw(&mut self) {
        let command = match &self.season {
            Some(season) => self.command(&season.asked),
            None => String::new(),
        };
        let mut areas = std::mem::take(&mut self.told.areas);
        areas.insert(
            "columns".to_owned(),
            recorded(|out| {
                if !self.asks.is_empty() {
                    columns::columns(out, &self.asks, &self.headers);
                }
            }),
        );
        let list = self.list.as_ref();
        // The days are offered once the trees were looked at; a plan that was there before stays.
        let looked = !matches!(self.work, Work::Looking) || !self.offered.is_empty();
        areas.insert(
            "list".to_owned(),
            recorded(|out| {
                if let Some(list) = list {
                    result::list(
                        out,
                        list,
                        &self.name,
                        self.made.is_none(),
                        &self.notes,
                        &self.changed,
                    );
                }
            }),
        );
        areas.insert(
            "hit".to_owned(),
            recorded(|out| {
                if list.is_some() && looked {
                    hit(out, &self.to_ask, &self.replied, self.made.is_some());
                }
            }),
        );
        areas.insert(
            "season".to_owned(),
            recorded(|out| {
                if list.is_some() && looked {
                    let planned = self.made.is_some();
                    season(
                        out,
                        &self.filled,
                        &self.offered,
                        self.wrong.as_deref(),
                        planned,
                    );
                }
            }),
        );
        let made = list.zip(self.made.as_ref()).zip(self.season.as_ref());
        areas.insert(
            "result".to_owned(),
            recorded(|out| {
                if let Some(((list, made), season)) = made {
                    let before = self.before.as_ref();
                    result::result(out, list, (made, before), &season.asked, self.options.units);
                }
            }),
        );
        areas.insert(
            "fix".to_owned(),
            recorded(|out| {
                if let Some(list) = list.filter(|list| list.counts.to_fix > 0) {
                    fix::Fixes::of(list).front(out, self.made.is_some());
                }
            }),
        );
        areas.insert(
            "folds".to_owned(),
            recorded(|out| {
                if let Some(((list, made), season)) = made {
                    let beside = folds::Beside {
                        notes: &self.notes,
                        changed: &self.changed,
                        command: &command,
                        decided: self.decisions != Decisions::default(),
                        units: self.options.units,
                        before: self.before.as_ref(),
                        found: self.found_shown(),
                        no_found: self.no_found.as_deref(),
                        land: self.land_shown(),
                        planting: self.planting_shown(),
                    };
                    folds::folds(out, list, made, &season.asked, &beside);
                }
            }),
        );
        self.told.areas = areas;
    }
}
