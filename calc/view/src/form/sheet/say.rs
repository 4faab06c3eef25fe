//! What a sheet says, as a question.

use super::{Sheet, path, whole, with_unit};
use crate::form::aids::made;
use crate::form::seen::elsewhere;
use crate::form::species::UNKNOWN;
use crate::form::{matters, words as w};
use calc::question::{
    HeightAidTyped, LeafOutTyped, PlaceTyped, Seen, StemTyped, TargetTyped, Text, TimedTyped,
    Typed, VisitTyped,
};
use calc::reference::Reference;
use chrono::NaiveDate;

impl Sheet {
    fn text(&self, name: &str) -> Option<Text> {
        Some(self.get(name))
            .filter(|text| !text.trim().is_empty())
            .map(Text::from)
    }

    /// A length as text: its unit is put behind a bare number where that is not the one of the question.
    fn length(
        &self,
        name: &str,
        unit: &str,
        us: &'static str,
        metric: &'static str,
    ) -> Option<Text> {
        let text = self.text(name)?;
        let unit = self.unit(unit, us, metric);
        let own = if self.metric() { metric } else { us };
        Some(if unit == own {
            text
        } else {
            Text(with_unit(&text.0, unit))
        })
    }

    /// A day in three parts, put together as the reader takes it.
    fn day(&self, name: &str) -> Option<Text> {
        let part = |key: &str| self.get(&[name, ".", key].concat()).trim().to_owned();
        let (y, m, d) = (part("y"), part("m"), part("d"));
        let given = !(y.is_empty() && m.is_empty() && d.is_empty());
        given.then(|| Text([y, m, d].join("-")))
    }

    fn rest(&self, typed: &mut Typed) {
        let Some(rest) = &self.rest else {
            return;
        };
        typed.rate = rest.rate;
    }

    /// What the sheet says, as a question. Fields that no rule reads for this tree are left out of it.
    #[must_use]
    pub fn typed(&self, reference: &'static Reference, today: NaiveDate) -> Typed {
        let mut typed = self.all(today);
        self.rest(&mut typed);
        // Readings speak for the height that stands in the field; others are only notes beside it.
        let filled =
            matches!(made(self, &typed), Some(Ok(text)) if text == self.get("height").trim());
        typed.height_aid = typed.height_aid.take().filter(|_| filled);
        matters(reference, &typed).keep(&mut typed);
        typed
    }

    fn all(&self, today: NaiveDate) -> Typed {
        let iso = Text(calc::answer::iso(today));
        let species = match self.get("species") {
            "" => self.text("find"),
            UNKNOWN => self.text("species.kind"),
            name => Some(Text::from(name)),
        };
        let date = match self.get("day") {
            "today" => Some(iso.clone()),
            "year" => Some(Text::from("year")),
            _ => self.day("date"),
        };
        let spare = self.get("spare");
        Typed {
            species,
            stems: (0..self.count("stems")).map(|at| self.stem(at)).collect(),
            setting: self.text("setting"),
            date,
            today: Some(iso),
            place: Some(self.place("place", "place.unit"))
                .filter(|place| *place != PlaceTyped::default()),
            region: self.text("region"),
            leafed_out: self.leafed_out(),
            spring: self.text("spring"),
            spring_scale: self.text("spring_scale"),
            height: self.length("height", "height.unit", "ft", "m"),
            visit: self.visit(),
            height_confirmed: self.ticked("height_confirmed"),
            targets: (0..self.count("targets"))
                .filter_map(|at| self.target(at))
                .collect(),
            line_within_reach: self.text("line_within_reach"),
            none_in_reach: self.ticked("none_in_reach"),
            condition: self.text("condition"),
            signs: w::SIGN_WORDS
                .iter()
                .filter(|(sign, _)| self.holds("signs", sign))
                .map(|(sign, _)| Text::from(*sign))
                .collect(),
            herbicide: self.text("herbicide"),
            goal: self.text("goal"),
            spare: whole(spare),
            whole_clone: self.text("whole_clone"),
            same_genus_near: self.text("same_genus_near"),
            vigour: self.text("vigour"),
            dry_spell: self.text("dry_spell"),
            limbs: self.text("limbs"),
            walk: self.text("walk"),
            practised: self.ticked("practised"),
            cannot_wait: self.ticked("cannot_wait"),
            ..self.readings()
        }
    }

    /// A question with nothing but its units and the readings of the aids. In one place: each such question put
    /// together costs bytes in the browser.
    #[inline(never)]
    pub(in crate::form) fn readings(&self) -> Typed {
        Typed {
            version: 1,
            units: Some(Text::from(if self.metric() { "metric" } else { "us" })),
            height_aid: self.height_aid(),
            timed: self.timed(),
            ..Typed::default()
        }
    }

    /// Readings of a height; none while no way of measuring is picked.
    pub(in crate::form) fn height_aid(&self) -> Option<HeightAidTyped> {
        let by = self.text("height_aid.by")?;
        let length = |name: &str| self.length(name, "height.unit", "ft", "m");
        Some(HeightAidTyped {
            by: Some(by),
            tree_shadow: length("height_aid.tree_shadow"),
            stick: length("height_aid.stick"),
            stick_shadow: length("height_aid.stick_shadow"),
            distance: length("height_aid.distance"),
            top: self.text("height_aid.top"),
            foot: self.text("height_aid.foot"),
            eye_to_stick: length("height_aid.eye_to_stick"),
        })
    }

    /// Trees that were timed, one a line; none where nothing was typed of them.
    pub(in crate::form) fn timed(&self) -> Option<TimedTyped> {
        let trees = self.get("timed.trees").split(['\n', ';']).map(str::trim);
        let timed = TimedTyped {
            trees: trees
                .filter(|tree| !tree.is_empty())
                .map(Text::from)
                .collect(),
            minutes: self.text("timed.minutes"),
            width: self.text("timed.width"),
            species: self.text("timed.species"),
        };
        (!timed.trees.is_empty() || timed.minutes.is_some()).then_some(timed)
    }

    /// What was seen at a visit; none where nothing was picked.
    fn visit(&self) -> Option<VisitTyped> {
        let visit = VisitTyped {
            at: self.text("visit.at"),
            ringed: self.text("visit.ringed"),
            seen: Seen::WORDS
                .iter()
                .filter(|word| self.holds("visit.seen", word) || self.holds("visit.crown", word))
                .map(|word| Text::from(*word))
                .collect(),
        };
        (visit != VisitTyped::default()).then_some(visit)
    }

    fn stem(&self, at: usize) -> StemTyped {
        let size = self.text(&path("stems", at, "diameter"));
        let (diameter, girth) = if self.around(at) {
            (None, size)
        } else {
            (size, None)
        };
        StemTyped {
            diameter,
            girth,
            live_share: self.text(&path("stems", at, "live_share")),
            bark: self.length(&path("stems", at, "bark"), "bark.unit", "in", "mm"),
        }
    }

    /// An entry with nothing in it is no target.
    fn target(&self, at: usize) -> Option<TargetTyped> {
        let name = |key: &str| path("targets", at, key);
        let target = TargetTyped {
            kind: self.text(&name("kind")),
            distance: self.length(&name("distance"), &name("unit"), "ft", "m"),
            slope: self.text(&name("slope")),
            downhill: self.ticked(&name("downhill")),
            voltage: self
                .text(&name("voltage"))
                .filter(|_| self.get(&name("kind")) == "line"),
        };
        (target != TargetTyped::default()).then_some(target)
    }

    fn place(&self, under: &str, unit: &str) -> PlaceTyped {
        let name = |key: &str| [under, key].concat();
        PlaceTyped {
            latitude: self.text(&name(".latitude")),
            longitude: self.text(&name(".longitude")),
            elevation: self.length(&name(".elevation"), unit, "ft", "m"),
            hemisphere: self.text(&name(".hemisphere")),
        }
    }

    /// An empty place elsewhere is kept: it was said to be elsewhere, so the reader asks for it.
    fn leafed_out(&self) -> Option<LeafOutTyped> {
        let mut seen = LeafOutTyped {
            stage: self.text("leafed_out.stage"),
            date: self.day("leafed_out.date"),
            ..LeafOutTyped::default()
        };
        if seen == LeafOutTyped::default() {
            return None;
        }
        seen.rates = self.text("leafed_out.rates");
        if elsewhere(self) {
            seen.place = Some(self.place("leafed_out.place", "leafed_out.place.unit"));
        }
        Some(seen)
    }
}
