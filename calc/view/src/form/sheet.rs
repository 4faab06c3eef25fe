//! What stands in each control, by the control's name. Read from a page, or made from a question.

use super::species::{UNKNOWN, kind_of};
use super::{matters, words as w};
use calc::quantity::read_number;
use calc::question::{Found, LeafOutTyped, PlaceTyped, StemTyped, TargetTyped, Text, Typed};
use calc::reference::Reference;
use chrono::NaiveDate;

/// Names and contents of the controls: text as typed, the value of what is picked, `on` for a tick.
/// A name stands more than once where several boxes share it.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Sheet {
    entries: Vec<(String, String)>,
    rest: Option<Box<Typed>>,
}

impl Sheet {
    /// A sheet of a new form: one empty stem, one empty thing, the day today, units of the United States.
    #[must_use]
    pub fn new() -> Self {
        let mut sheet = Self::default();
        sheet.set("stems[0].diameter", "");
        sheet.set("targets[0].distance", "");
        sheet.set("day", "today");
        sheet
    }

    /// Adds what stands in a control.
    pub fn push(&mut self, name: impl Into<String>, text: impl Into<String>) {
        self.entries.push((name.into(), text.into()));
    }

    /// What stands in a control; empty if there is no such control, or nothing in it.
    #[must_use]
    pub fn get(&self, name: &str) -> &str {
        let found = self.entries.iter().find(|(known, _)| known == name);
        found.map_or("", |(_, text)| text)
    }

    /// Whether a box is ticked.
    #[must_use]
    pub fn ticked(&self, name: &str) -> bool {
        self.get(name) == "on"
    }

    /// Whether one of the boxes of a name with this value is ticked.
    #[must_use]
    pub fn holds(&self, name: &str, value: &str) -> bool {
        self.entries.iter().any(|(n, v)| n == name && v == value)
    }

    /// Sets what stands in a control.
    pub fn set(&mut self, name: &str, text: &str) {
        match self.entries.iter_mut().find(|(known, _)| known == name) {
            Some((_, old)) => text.clone_into(old),
            None => self.push(name, text),
        }
    }

    /// Keeps what a host has set and the form has no control for: this spring's temperatures, the crew's
    /// rate, where leaf-out was seen.
    pub fn carry(&mut self, given: &Typed) {
        self.rest = Some(Box::new(given.clone()));
    }

    /// How many entries a list has: `stems` or `targets`.
    #[must_use]
    pub fn count(&self, list: &str) -> usize {
        let mut count = 0;
        while self
            .entries
            .iter()
            .any(|(name, _)| entry(name, list) == Some(count))
        {
            count += 1;
        }
        count
    }

    /// Adds an empty entry to a list.
    pub fn add(&mut self, list: &str) {
        let at = self.count(list);
        let first = if list == "stems" {
            "diameter"
        } else {
            "distance"
        };
        self.push(path(list, at, first), "");
        // What is added is measured as the one before it was, until it is said otherwise.
        if list == "stems" {
            let before = self.get(&how(at.saturating_sub(1))).to_owned();
            self.set(&how(at), &before);
        } else if at > 0 {
            let before = self.get(&path(list, at - 1, "unit")).to_owned();
            self.set(&path(list, at, "unit"), &before);
        }
    }

    /// Takes an entry out of a list; those behind it move up.
    pub fn remove(&mut self, list: &str, at: usize) {
        if list == "stems" && at == 0 {
            // The second becomes the first, whose control has another name.
            let next = self.get(&how(1)).to_owned();
            self.set(&how(0), &next);
            self.entries.retain(|(name, _)| *name != how(1));
        }
        self.entries
            .retain(|(name, _)| entry(name, list) != Some(at));
        for (name, _) in &mut self.entries {
            if let Some(old) = entry(name, list).filter(|old| *old > at) {
                let key = name.rsplit('.').next().unwrap_or_default().to_owned();
                *name = path(list, old - 1, &key);
            }
        }
        if self.count(list) == 0 {
            self.add(list);
        }
    }

    /// Clears what belongs to one tree and keeps what belongs to the place, the day and the crew.
    pub fn next_tree(&mut self) {
        const KEPT: [&str; 10] = [
            "day",
            "date",
            "place",
            "region",
            "dry_spell",
            "herbicide",
            "walk",
            "practised",
            "cannot_wait",
            "goal",
        ];
        self.entries.retain(|(name, value)| {
            let first = name.split('.').next().unwrap_or_default();
            let unit = name.ends_with("unit") && !name.contains('[');
            unit || name == "stems.how" || (KEPT.contains(&first) && value != "spare_one")
        });
        self.add("stems");
        self.add("targets");
    }

    /// The unit that a field's numbers are read in: what is picked, else the one that goes with the trunk's.
    #[must_use]
    pub fn unit(&self, name: &str, us: &'static str, metric: &'static str) -> &'static str {
        match self.get(name) {
            picked if picked == us => us,
            picked if picked == metric => metric,
            _ if self.metric() => metric,
            _ => us,
        }
    }

    /// Whether the trunk is measured in centimetres.
    #[must_use]
    pub fn metric(&self) -> bool {
        self.get("stems.unit") == "cm"
    }

    /// Whether the girth of a stem is given.
    #[must_use]
    pub fn around(&self, stem: usize) -> bool {
        self.get(&how(stem)) == "around"
    }

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
        let bare = read_number(text.trimmed()).is_ok_and(|number| number.unit.is_none());
        Some(if unit != own && bare {
            Text([text.trimmed(), " ", unit].concat())
        } else {
            text
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
        typed.spring.clone_from(&rest.spring);
        typed.spring_scale.clone_from(&rest.spring_scale);
        typed.rate = rest.rate;
        if let (Some(seen), Some(kept)) = (&mut typed.leafed_out, &rest.leafed_out) {
            seen.place.clone_from(&kept.place);
            seen.rates.clone_from(&kept.rates);
        }
    }

    /// What the sheet says, as a question. Fields that no rule reads for this tree are left out of it.
    #[must_use]
    pub fn typed(&self, reference: &'static Reference, today: NaiveDate) -> Typed {
        let mut typed = self.all(today);
        self.rest(&mut typed);
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
            version: 1,
            units: Some(Text::from(if self.metric() { "metric" } else { "us" })),
            species,
            stems: (0..self.count("stems")).map(|at| self.stem(at)).collect(),
            setting: self.text("setting"),
            date,
            today: Some(iso),
            place: self.place(),
            region: self.text("region"),
            leafed_out: self.leafed_out(),
            height: self.length("height", "height.unit", "ft", "m"),
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
            ..Typed::default()
        }
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

    fn place(&self) -> Option<PlaceTyped> {
        let place = PlaceTyped {
            latitude: self.text("place.latitude"),
            longitude: self.text("place.longitude"),
            elevation: self.length("place.elevation", "place.unit", "ft", "m"),
            hemisphere: self.text("place.hemisphere"),
        };
        (place != PlaceTyped::default()).then_some(place)
    }

    fn leafed_out(&self) -> Option<LeafOutTyped> {
        let seen = LeafOutTyped {
            stage: self.text("leafed_out.stage"),
            date: self.day("leafed_out.date"),
            ..LeafOutTyped::default()
        };
        (seen != LeafOutTyped::default()).then_some(seen)
    }

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
        }
        for sign in &typed.signs {
            sheet.push("signs", sign.trimmed());
        }
        for (name, field) in [
            ("setting", &typed.setting),
            ("region", &typed.region),
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

/// How a stem was measured: the control of the first one has a name without a number.
pub(super) fn how(stem: usize) -> String {
    if stem == 0 {
        "stems.how".to_owned()
    } else {
        path("stems", stem, "how")
    }
}

/// `stems[2].bark`.
pub(super) fn path(list: &str, at: usize, key: &str) -> String {
    let number = crate::measure::number(at as u32);
    [list, "[", &number, "].", key].concat()
}

/// Which entry of a list a name belongs to.
fn entry(name: &str, list: &str) -> Option<usize> {
    let rest = name.strip_prefix(list)?.strip_prefix('[')?;
    whole(rest.split_once(']')?.0).map(|at| at as usize)
}

/// A whole number of at most three digits.
fn whole(text: &str) -> Option<u32> {
    let fits = (1..=3).contains(&text.len()) && text.bytes().all(|c| c.is_ascii_digit());
    fits.then(|| {
        text.bytes()
            .fold(0, |sum, c| sum * 10 + u32::from(c - b'0'))
    })
}
