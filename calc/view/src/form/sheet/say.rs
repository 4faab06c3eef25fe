//! What a sheet says, as a question.

use super::names::{names, slot};
use super::{NOTHING, Sheet, whole, with_unit};
use crate::form::aids::made;
use crate::form::day::leaf_out::elsewhere;
use crate::form::length::Length;
use crate::form::matters;
use crate::form::species::UNKNOWN;
use crate::form::species::UNKNOWN_NAMES;
use crate::words::m;
use calc::models::at_visit::Seen;
use calc::question::{Slot, StemTyped, TargetTyped, Text, Typed};
use calc::reference::Reference;
use chrono::NaiveDate;

impl Sheet {
    /// What the sheet says, as a question. Fields that no rule reads for this tree are left out of it.
    #[must_use]
    pub fn typed(&self, reference: &'static Reference, today: NaiveDate) -> Typed {
        let mut typed = self.all();
        let iso = Text(calc::terms::day::iso(today));
        typed.date = self.day_written(today).map(Text);
        typed.today = Some(iso);
        typed.rate = self.rate;
        // Complete readings count as the measured height where no other stands in the field; where one does, they are
        // only notes beside it.
        let height = self.trimmed("height");
        let counts =
            matches!(made(self, &typed), Some(Ok(text)) if height.is_empty() || text == height);
        typed.height_aid = typed.height_aid.take().filter(|_| counts);
        matters(reference, &typed).keep(&mut typed);
        typed
    }

    /// The same as it is answered: a tree without a name is an unknown broadleaf tree.
    #[must_use]
    pub fn asked(&self, reference: &'static Reference, today: NaiveDate) -> Typed {
        let mut typed = self.typed(reference, today);
        if typed.species.is_none() {
            typed.species = Some(Text::from(UNKNOWN_NAMES[0].0));
        }
        typed
    }

    /// The same with every field, and without the day.
    pub(in crate::form) fn all(&self) -> Typed {
        let species = match self.get("species") {
            "" => self.text("find"),
            UNKNOWN => self.text("species.kind"),
            name => Some(Text::from(name)),
        };
        let mut typed = Typed {
            version: 1,
            units: Some(Text::from(if self.metric() { "metric" } else { "us" })),
            species,
            ..Typed::default()
        };
        let (stems, targets) = (self.count("stems"), self.count("targets"));
        for _ in 0..stems {
            typed.stems.push(StemTyped::default());
        }
        for _ in 0..targets {
            typed.targets.push(TargetTyped::default());
        }
        for name in names(stems, targets) {
            self.say(&mut typed, &name);
        }
        for (at, stem) in typed.stems.iter_mut().enumerate() {
            if self.around(at) {
                stem.girth = stem.diameter.take();
            }
        }
        // The first of the things may say that nothing is there.
        typed.targets.retain(|target| {
            let nothing = target.kind.as_ref().is_some_and(|kind| kind.0 == NOTHING);
            typed.none_in_reach |= nothing;
            !nothing
        });
        self.place(&mut typed);
        // Only a line has a voltage, and an entry with nothing in it is no target.
        typed.targets.retain_mut(|target| {
            let kind = target.kind.as_ref().map_or("", |kind| &kind.0);
            if kind != "line" {
                target.voltage = None;
            }
            let told = target.distance.is_some() || target.slope.is_some() || target.downhill;
            told || !kind.is_empty()
        });
        self.leafed_out(&mut typed);
        // No reading speaks while no way of measuring is picked.
        typed.height_aid.take_if(|aid| aid.by.is_none());
        self.lists(&mut typed);
        typed
    }

    /// The region that the place names, where none is picked. A place that names none, and that no town was picked for,
    /// is left for the reader of questions to say so.
    fn place(&self, typed: &mut Typed) {
        let point = typed
            .place
            .as_ref()
            .is_some_and(|place| place.latitude.is_some());
        if typed.region.is_none() && !self.blank("town") {
            let named = self.region();
            if !named.is_empty() {
                typed.region = Some(Text::from(named));
            } else if !point {
                typed.region = self.text("town");
            }
        }
    }

    fn text(&self, name: &str) -> Option<Text> {
        Some(self.get(name))
            .filter(|text| !text.trim().is_empty())
            .map(Text::from)
    }

    /// Puts what stands in a control where it belongs. The unit is put behind a bare length where that is not the
    /// one of the question.
    fn say(&self, typed: &mut Typed, name: &str) {
        let Some(mut text) = self.text(name) else {
            return;
        };
        match slot(typed, name) {
            Some(Slot::Text(slot)) => {
                if let Some(length) = Length::of(name) {
                    let unit = self.unit_of(&length);
                    if unit != length.units()[usize::from(self.metric())] {
                        text.0 = with_unit(&text.0, unit);
                    }
                }
                *slot = Some(text);
            }
            Some(Slot::Held(held)) => *held = text.0 == "on",
            Some(Slot::MaybeNumber(number)) => *number = whole(&text.0),
            _ => {}
        }
    }

    /// A day in three parts, put together as the reader takes it.
    fn day(&self, name: &str) -> Option<Text> {
        let [y, m, d] = [".y", ".m", ".d"].map(|key| self.trimmed(&[name, key].concat()));
        let given = !(y.is_empty() && m.is_empty() && d.is_empty());
        given.then(|| Text([y, m, d].join("-")))
    }

    /// An empty place elsewhere is kept: it was said to be elsewhere, so the reader asks for it.
    fn leafed_out(&self, typed: &mut Typed) {
        if let Some(date) = self.day("leafed_out.date") {
            typed.leafed_out.get_or_insert_default().date = Some(date);
        }
        typed
            .leafed_out
            .take_if(|seen| seen.stage.is_none() && seen.date.is_none());
        if let Some(seen) = &mut typed.leafed_out {
            if elsewhere(self) {
                seen.place.get_or_insert_default();
            } else {
                seen.place = None;
            }
        }
    }

    /// Signs, trees that were timed, one a line, and what was seen at a visit.
    fn lists(&self, typed: &mut Typed) {
        for &(sign, _) in m::FORM_SIGN_WORDS {
            if self.holds("signs", sign) {
                typed.signs.push(Text::from(sign));
            }
        }
        for tree in self.get("timed.trees").split(['\n', ';']).map(str::trim) {
            if !tree.is_empty() {
                let timed = typed.timed.get_or_insert_default();
                timed.trees.push(Text::from(tree));
            }
        }
        typed
            .timed
            .take_if(|timed| timed.trees.is_empty() && timed.minutes.is_none());
        for word in Seen::WORDS {
            if self.holds("visit.seen", word) || self.holds("visit.crown", word) {
                let visit = typed.visit.get_or_insert_default();
                visit.seen.push(Text::from(*word));
            }
        }
        typed
            .visit
            .take_if(|visit| visit.seen.is_empty() && visit.at.is_none() && visit.ringed.is_none());
    }
}
