//! A sheet that says a question, each text as it was given.

use super::{Sheet, how, path};
use crate::form::species::{UNKNOWN, kind_of};
use calc::question::{Found, Text, Typed};
use calc::reference::Reference;
use chrono::NaiveDate;

impl Sheet {
    /// The sheet that says a question, each text as it was given.
    #[must_use]
    pub fn of(reference: &'static Reference, typed: &Typed, today: NaiveDate) -> Self {
        let mut sheet = Self::default();
        sheet.carry(typed);
        let text = |text: &Option<Text>| text.clone().unwrap_or_default().0;
        if text(&typed.units).trim() == "metric" {
            sheet.set("stems.unit", "cm");
        }
        sheet.fill_species(reference, text(&typed.species).trim());
        for (at, stem) in typed.stems.iter().enumerate() {
            if stem.girth.is_some() {
                sheet.set(&how(at), "around");
            } else if stem.diameter.is_some() {
                sheet.set(&how(at), "across");
            }
            let size = stem.girth.as_ref().or(stem.diameter.as_ref());
            sheet.push(
                path("stems", at, "diameter"),
                size.map_or("", |text| &text.0),
            );
            sheet.push(path("stems", at, "live_share"), text(&stem.live_share));
            sheet.push(path("stems", at, "bark"), text(&stem.bark));
        }
        for (at, target) in typed.targets.iter().enumerate() {
            sheet.push(path("targets", at, "distance"), text(&target.distance));
            sheet.push(path("targets", at, "kind"), text(&target.kind));
            sheet.push(path("targets", at, "slope"), text(&target.slope));
            sheet.push(path("targets", at, "voltage"), text(&target.voltage));
            sheet.tick(&path("targets", at, "downhill"), target.downhill);
        }
        for list in ["stems", "targets"] {
            if sheet.count(list) == 0 {
                sheet.add(list);
            }
        }
        let date = text(&typed.date);
        match date.trim() {
            "" | "today" => sheet.set("day", "today"),
            "year" => sheet.set("day", "year"),
            day if day == calc::answer::iso(today) => sheet.set("day", "today"),
            day => {
                sheet.set("day", "other");
                sheet.fill_day("date", day);
            }
        }
        if let Some(place) = &typed.place {
            sheet.push("place.latitude", text(&place.latitude));
            sheet.push("place.longitude", text(&place.longitude));
            sheet.push("place.elevation", text(&place.elevation));
            sheet.push("place.hemisphere", text(&place.hemisphere));
        }
        if let Some(seen) = &typed.leafed_out {
            sheet.push("leafed_out.stage", text(&seen.stage));
            sheet.fill_day("leafed_out.date", text(&seen.date).trim());
            sheet.push("leafed_out.rates", text(&seen.rates));
            if let Some(place) = &seen.place {
                sheet.push("leafed_out.where", "elsewhere");
                sheet.push("leafed_out.place.latitude", text(&place.latitude));
                sheet.push("leafed_out.place.longitude", text(&place.longitude));
                sheet.push("leafed_out.place.elevation", text(&place.elevation));
            }
        }
        if let Some(aid) = &typed.height_aid {
            for (key, field) in [
                ("by", &aid.by),
                ("tree_shadow", &aid.tree_shadow),
                ("stick", &aid.stick),
                ("stick_shadow", &aid.stick_shadow),
                ("distance", &aid.distance),
                ("top", &aid.top),
                ("foot", &aid.foot),
                ("eye_to_stick", &aid.eye_to_stick),
            ] {
                sheet.push(["height_aid.", key].concat(), text(field));
            }
        }
        if let Some(timed) = &typed.timed {
            let trees: Vec<&str> = timed.trees.iter().map(Text::trimmed).collect();
            sheet.push("timed.trees", trees.join("\n"));
            sheet.push("timed.minutes", text(&timed.minutes));
            sheet.push("timed.width", text(&timed.width));
            sheet.push("timed.species", text(&timed.species));
        }
        if let Some(visit) = &typed.visit {
            sheet.push("visit.at", text(&visit.at));
            sheet.push("visit.ringed", text(&visit.ringed));
            for seen in &visit.seen {
                sheet.push("visit.seen", seen.trimmed());
            }
        }
        for sign in &typed.signs {
            sheet.push("signs", sign.trimmed());
        }
        for (name, field) in [
            ("setting", &typed.setting),
            ("region", &typed.region),
            ("spring", &typed.spring),
            ("spring_scale", &typed.spring_scale),
            ("height", &typed.height),
            ("line_within_reach", &typed.line_within_reach),
            ("condition", &typed.condition),
            ("herbicide", &typed.herbicide),
            ("goal", &typed.goal),
            ("whole_clone", &typed.whole_clone),
            ("same_genus_near", &typed.same_genus_near),
            ("vigour", &typed.vigour),
            ("dry_spell", &typed.dry_spell),
            ("limbs", &typed.limbs),
            ("walk", &typed.walk),
        ] {
            sheet.push(name, text(field));
        }
        if let Some(spare) = typed.spare {
            sheet.push("spare", crate::measure::number(spare));
        }
        // Readings without a height are filled in, as the button does.
        if let (None, Ok(height)) = (&typed.height, sheet.measured()) {
            sheet.set("height", &height);
        }
        for (name, on) in [
            ("height_confirmed", typed.height_confirmed),
            ("none_in_reach", typed.none_in_reach),
            ("practised", typed.practised),
            ("cannot_wait", typed.cannot_wait),
        ] {
            sheet.tick(name, on);
        }
        sheet
    }

    fn tick(&mut self, name: &str, on: bool) {
        if on {
            self.push(name, "on");
        }
    }

    /// Picks the species whose name it is; a name that is none stays as it was typed.
    fn fill_species(&mut self, reference: &'static Reference, name: &str) {
        match calc::question::find_species(reference.species, name) {
            Found::One(species) => match kind_of(species) {
                Some(kind) => {
                    self.set("species", UNKNOWN);
                    self.set("species.kind", kind);
                }
                None => self.set("species", species.name),
            },
            Found::Like(_) => self.set("find", name),
        }
    }

    fn fill_day(&mut self, name: &str, day: &str) {
        let mut parts = day.splitn(3, '-').map(str::trim);
        for key in ["y", "m", "d"] {
            let part = parts.next().unwrap_or_default();
            self.set(&[name, ".", key].concat(), part);
        }
    }
}
