//! A sheet that says a question, each text as it was given.

use super::names::{names, slot};
use super::{NOTHING, Sheet, how, path};
use crate::form::day::written::TODAY;
use crate::form::species::{UNKNOWN, kind_of};
use calc::question::{Found, Slot, Text, Typed, read_day};
use calc::reference::Reference;
use chrono::NaiveDate;

impl Sheet {
    /// The sheet that says a question, each text as it was given.
    #[must_use]
    pub fn of(reference: &'static Reference, typed: &Typed, today: NaiveDate) -> Self {
        let mut sheet = Self::default();
        sheet.carry(typed);
        if word(&typed.units) == "metric" {
            sheet.set("stems.unit", "cm");
        }
        let region = Some(word(&typed.region)).filter(|region| !region.is_empty());
        sheet.fill_species(reference, word(&typed.species), region);
        let day = word(&typed.date);
        match read_day(day) {
            _ if matches!(day, "" | TODAY) => sheet.set("day", TODAY),
            Ok(day) if day == today => sheet.set("day", TODAY),
            Ok(day) => sheet.set("day", &crate::measure::day_year(day)),
            Err(_) => sheet.set("day", day),
        }
        if let Some(seen) = &typed.leafed_out {
            sheet.fill_day("leafed_out.date", word(&seen.date));
            if seen.place.is_some() {
                sheet.set("leafed_out.where", "elsewhere");
            }
        }
        if let Some(timed) = &typed.timed {
            let trees: Vec<&str> = timed.trees.iter().map(Text::trimmed).collect();
            sheet.push("timed.trees", trees.join("\n"));
        }
        let mut rest = typed.clone();
        for (at, stem) in rest.stems.iter_mut().enumerate() {
            // One control holds the size; another says how it was measured.
            if stem.girth.is_some() {
                sheet.set(&how(at), "around");
                stem.diameter = stem.girth.take();
            } else if stem.diameter.is_some() {
                sheet.set(&how(at), "across");
            }
        }
        let nothing = core::mem::take(&mut rest.none_in_reach);
        for name in names(rest.stems.len(), rest.targets.len()) {
            sheet.fill(name, &mut rest);
        }
        if nothing {
            let last = rest.targets.len();
            sheet.set(&path("targets", last, "kind"), NOTHING);
        }
        for list in ["stems", "targets"] {
            if sheet.count(list) == 0 {
                sheet.add(list);
            }
        }
        // Readings without a height are filled in, as the button does.
        if let (None, Ok(height)) = (&typed.height, sheet.measured()) {
            sheet.set("height", &height);
        }
        sheet
    }

    /// Lets a control say what its field holds.
    fn fill(&mut self, name: String, typed: &mut Typed) {
        match slot(typed, &name) {
            Some(Slot::Text(text)) => self.push(name, text.take().unwrap_or_default().0),
            Some(Slot::Texts(texts)) => {
                for text in texts {
                    self.push(&*name, text.trimmed());
                }
            }
            Some(Slot::Held(true)) => self.push(name, "on"),
            Some(Slot::MaybeNumber(Some(number))) => {
                self.push(name, crate::measure::number(*number));
            }
            _ => {}
        }
    }

    /// Picks the species whose name it is; a name that is none stays as it was typed.
    fn fill_species(&mut self, reference: &'static Reference, name: &str, region: Option<&str>) {
        match calc::question::find_species(reference, name, region) {
            Found::One(species) => match kind_of(species) {
                Some(kind) => {
                    self.set("species", UNKNOWN);
                    self.set("species.kind", kind);
                }
                None => self.set("species", species.name),
            },
            Found::Other(_) | Found::Like(_) | Found::NotHere => self.set("find", name),
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

fn word(text: &Option<Text>) -> &str {
    text.as_ref().map_or("", Text::trimmed)
}
