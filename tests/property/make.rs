//! Makes questions of all kinds, each a good one or nearly so.

use crate::support::{reference, try_read};
use calc::answer::{Answer, without_changes};
use calc::models::season::Local;
use calc::question::{Day, Question};
use calc::terms::tree::DrySpell;
use calc::timing::doy::season_year;
use calc::timing::places::climate::Places;
use chrono::NaiveDate;
use rand::rngs::StdRng;
use rand::seq::IndexedRandom;
use rand::{Rng, SeedableRng};
use serde_json::{Value, json};
use std::sync::OnceLock;

/// Points of all kinds: cold, mild, southern, high, dry, tropical, at sea.
const POINTS: [(&str, &str, &str); 10] = [
    ("42.36", "-71.06", "15 m"),
    ("46.8", "-92.1", "214 m"),
    ("30.3", "-97.7", "150 m"),
    ("44.05", "-123.1", "130 m"),
    ("51.5", "-0.1", ""),
    ("48.2", "16.4", "170 m"),
    ("-41.3", "174.8", "20 m"),
    ("-37.8", "145.0", ""),
    ("39.74", "-104.99", "5280 ft"),
    ("2.0", "-160.0", ""),
];
const REGIONS: [&str; 14] = [
    "US-MA", "US-WI", "US-MI", "US-IA", "US-TX", "US-PA", "US-WA", "US-OR", "US-CO", "CA-ON", "GB",
    "AT", "NZ", "AU-VIC",
];
const KINDS: [&str; 7] = [
    "building",
    "road",
    "path",
    "line",
    "property_line",
    "fence",
    "keep_tree",
];
const SIGNS: [&str; 8] = [
    "cavity",
    "cracks",
    "conks",
    "hung_limbs",
    "lean_toward",
    "lean_away",
    "dead_top",
    "vines",
];

/// A question asked for another day. How long it has been dry is asked anew with another season.
pub(crate) fn on_day(question: &Question, day: NaiveDate) -> Question {
    let mut then = question.clone();
    then.day = Day::On(day);
    let season = |day| season_year(day, question.place.hemisphere());
    if season(day) != season(question.day.start()) {
        then.dry_spell = DrySpell::None;
    }
    then
}

/// A maker of questions.
pub(crate) struct Maker(pub StdRng);

impl Maker {
    pub(crate) fn new(seed: u64) -> Self {
        Self(StdRng::seed_from_u64(seed))
    }

    pub(crate) fn one<T: Copy>(&mut self, of: &[T]) -> T {
        *of.choose(&mut self.0).expect("a list with something in it")
    }

    pub(crate) fn chance(&mut self, share: f64) -> bool {
        self.0.random_bool(share)
    }

    pub(crate) fn between(&mut self, low: f64, high: f64) -> f64 {
        self.0.random_range(low..high)
    }

    /// Inches, small ones as often as large ones.
    pub(crate) fn inches(&mut self) -> f64 {
        let log = self.between((0.3_f64).ln(), (45.0_f64).ln());
        (log.exp() * 100.0).round() / 100.0
    }

    pub(crate) fn species(&mut self) -> &'static str {
        let all = reference().species;
        all[self.0.random_range(0..all.len())].scientific
    }

    pub(crate) fn date(&mut self) -> String {
        let (year, month) = (self.one(&[2026, 2027, 2028]), self.0.random_range(1..=12));
        format!("{year}-{month}-{}", self.0.random_range(1..=28))
    }

    fn stem(&mut self) -> Value {
        let mut stem = json!({ "diameter": format!("{} in", self.inches()) });
        if self.chance(0.15) {
            stem["live_share"] = json!(format!("{} %", self.one(&[0, 10, 50, 80, 100])));
        }
        if self.chance(0.1) {
            stem["bark"] = json!(format!("{:.1} mm", self.between(0.5, 3.0)));
        }
        stem
    }

    pub(crate) fn target(&mut self) -> Value {
        let kind = self.one(&KINDS);
        let mut target = json!({ "kind": kind });
        if self.chance(0.9) {
            target["distance"] = json!(format!("{:.1} ft", self.between(0.0, 400.0)));
        }
        if self.chance(0.4) {
            target["slope"] = json!(format!("{} %", self.one(&[5, 15, 20, 25, 35, 50])));
            target["downhill"] = json!(self.chance(0.6));
        }
        if kind == "line" && self.chance(0.3) {
            target["voltage"] = json!(format!("{} kV", self.one(&[12, 69, 138, 345])));
        }
        target
    }

    /// The surroundings: nothing in reach, a list, or nothing said.
    fn surroundings(&mut self, question: &mut Value) {
        match self.0.random_range(0..10) {
            0..=3 => question["none_in_reach"] = json!(true),
            4 => {}
            _ => {
                let count = self.0.random_range(1..=3);
                let targets: Vec<Value> = (0..count).map(|_| self.target()).collect();
                question["targets"] = json!(targets);
                let said = self.one(&["no", "no", "no", "yes", "cant_tell", ""]);
                question["line_within_reach"] = json!(said);
            }
        }
    }

    /// A question about the given species.
    pub(crate) fn about(&mut self, species: &str) -> Value {
        let stems = self.one(&[1, 1, 1, 1, 2, 3, 5]);
        let stems: Vec<Value> = (0..stems).map(|_| self.stem()).collect();
        let mut question = json!({
            "version": 1,
            "species": species,
            "date": self.date(),
            "setting": self.one(&["woods", "open"]),
            "condition": self.one(&["alive", "alive", "alive", "alive", "declining", "dead"]),
            "herbicide": self.one(&["not_said", "no", "licensed", "yes"]),
            "goal": self.one(&["wildlife", "wildlife", "kill"]),
            "whole_clone": self.one(&["not_said", "yes", "no"]),
            "same_genus_near": self.one(&["not_said", "yes", "no"]),
            "vigour": self.one(&["slow", "ordinary", "fast"]),
            "dry_spell": self.one(&["none", "none", "two_weeks", "month"]),
            "limbs": self.one(&["none", "some", "many"]),
            "cannot_wait": self.chance(0.15),
            "practised": self.chance(0.2),
        });
        if stems.len() > 1 && self.chance(0.2) {
            question["goal"] = json!("spare_one");
            question["spare"] = json!(self.0.random_range(0..stems.len()));
        }
        question["stems"] = json!(stems);
        self.surroundings(&mut question);
        if self.chance(0.06) {
            question["today"] = question["date"].clone();
            question["date"] = json!("year");
        }
        if self.chance(0.75) {
            question["region"] = json!(self.one(&REGIONS));
        }
        match self.0.random_range(0..10) {
            0..=3 => {
                let (latitude, longitude, elevation) = self.one(&POINTS);
                question["place"] =
                    json!({ "latitude": latitude, "longitude": longitude, "elevation": elevation });
            }
            4 => question["place"] = json!({ "hemisphere": "south" }),
            _ => {}
        }
        if self.chance(0.1) {
            question["signs"] = json!([self.one(&SIGNS)]);
        }
        if self.chance(0.3) {
            question["height"] = json!(format!("{:.0} ft", self.between(8.0, 120.0)));
            question["height_confirmed"] = json!(self.chance(0.8));
        }
        if self.chance(0.1) && question["date"] != "year" {
            let date = question["date"]
                .as_str()
                .unwrap_or("2027")
                .get(..4)
                .unwrap_or("2027")
                .to_owned();
            question["leafed_out"] = json!({ "stage": self.one(&["buds_open", "leaves_full", "first_leaf"]), "date": format!("{date}-04-28") });
        }
        question
    }

    /// A question that is a good one, with what is understood of it.
    pub(crate) fn good(&mut self) -> (Value, Question) {
        loop {
            let species = self.species();
            let typed = self.about(species);
            if let Ok(question) = try_read(&typed) {
                return (typed, question);
            }
        }
    }

    /// A good question with the small aids in it, often: timed trees, a visit.
    pub(crate) fn aided(&mut self) -> (Value, Question) {
        loop {
            let (mut typed, _) = self.good();
            if self.chance(0.3) {
                let sizes: Vec<String> = (0..self.0.random_range(1..4))
                    .map(|_| format!("{:.1} in", self.between(6.0, 20.0)))
                    .collect();
                let minutes = format!("{:.1}", 9.0 * sizes.len() as f64);
                typed["timed"] = json!({ "trees": sizes, "minutes": minutes });
            }
            if self.chance(0.3) {
                let at = self.one(&["1", "3", "30", "2028-09-20", "2020-01-01"]);
                let seen = self.one(&["bridge", "sprouts", "crown_full", "crown_bare", "decay"]);
                typed["visit"] = json!({ "at": at, "seen": [seen] });
            }
            if let Ok(question) = try_read(&typed) {
                return (typed, question);
            }
        }
    }

    /// A question whose list of targets is complete, with distances, no signs, and a height that is known.
    pub(crate) fn listed(&mut self) -> Value {
        loop {
            let species = self.species();
            let mut typed = self.about(species);
            typed["none_in_reach"] = json!(false);
            typed["line_within_reach"] = json!("no");
            typed["signs"] = json!([]);
            let count = self.0.random_range(1..=3);
            let mut targets: Vec<Value> = (0..count).map(|_| self.target()).collect();
            targets.push(json!({ "kind": "path", "distance": "350 ft" }));
            for target in &mut targets {
                if target["distance"].is_null() {
                    target["distance"] = json!("120 ft");
                }
            }
            typed["targets"] = json!(targets);
            let known = calc::question::find_species(reference(), species, None);
            let unknown =
                matches!(known, calc::question::Found::One(species) if species.heights.is_empty());
            if unknown {
                typed["height"] = json!("45 ft");
            }
            if try_read(&typed).is_ok() {
                return typed;
            }
        }
    }
}

fn places() -> &'static Places {
    static PLACES: OnceLock<Places> = OnceLock::new();
    PLACES.get_or_init(crate::support::climate_file)
}

/// What is known of the place.
pub(crate) fn local(question: &Question) -> Local {
    Local::of(
        &reference().constants.timing,
        &question.place,
        question.region.as_deref(),
        places(),
    )
}

/// The answer without the search for what would change it.
pub(crate) fn plain(question: &Question) -> Answer {
    without_changes(reference(), question, &local(question))
}

/// The same from what was typed.
pub(crate) fn plain_of(typed: &Value) -> Answer {
    plain(&crate::support::question(typed))
}
