//! Days, places, regions, leaf-out, temperatures: what the season is read from.

use super::Reader;
use super::numbers::Measure;
use crate::quantity::{Elevation, Range, Unit, Units};
use crate::question::{
    Code, Day, LeafOut, LeafOutTyped, Place, PlaceTyped, Stage, Text, Typed, read_day,
};
use crate::timing::spring::{self, Doubt, Scale, Table};
use crate::timing::{Hemisphere, Rates};

impl Reader {
    pub(super) fn day(&mut self, typed: &Typed) -> Option<Day> {
        let Some(text) = typed.date.as_ref().filter(|text| !text.is_empty()) else {
            self.problem("date", Code::Missing, "");
            return None;
        };
        if text.trimmed() != "year" {
            return self.date("date", text).map(Day::On);
        }
        match typed.today.as_ref() {
            Some(today) => self.date("today", today).map(|today| Day::Year { today }),
            None => {
                self.problem("today", Code::Missing, "");
                None
            }
        }
    }

    pub(super) fn date(&mut self, field: &str, text: &Text) -> Option<chrono::NaiveDate> {
        match read_day(text.trimmed()) {
            Ok(day) => Some(day),
            Err(code) => {
                self.problem(field, code, text.trimmed());
                None
            }
        }
    }

    pub(super) fn place(&mut self, field: &str, typed: &PlaceTyped) -> Option<Place> {
        let given = |text: &Option<Text>| text.clone().filter(|text| !text.is_empty());
        let (latitude, longitude) = (given(&typed.latitude), given(&typed.longitude));
        if latitude.is_none() && longitude.is_none() {
            return match typed.hemisphere.as_ref().map(Text::trimmed) {
                None | Some("north" | "") => Some(Place::Hemisphere(Hemisphere::North)),
                Some("south") => Some(Place::Hemisphere(Hemisphere::South)),
                Some(other) => {
                    let words = &["north", "south"];
                    self.problem(format!("{field}.hemisphere"), Code::NotOneOf(words), other);
                    None
                }
            };
        }
        let (Some(latitude), Some(longitude)) = (latitude, longitude) else {
            self.problem(field, Code::HalfPlace, "");
            return None;
        };
        let degrees = |most: f64| Range {
            low: -most,
            high: most,
        };
        let lat_field = format!("{field}.latitude");
        let lon_field = format!("{field}.longitude");
        let latitude = self.plain(&lat_field, &latitude, Unit::Percent, "°", degrees(90.0));
        let longitude = self.plain(&lon_field, &longitude, Unit::Percent, "°", degrees(180.0));
        let elevation = self.elevation(&format!("{field}.elevation"), typed.elevation.as_ref());
        Some(Place::Point {
            latitude: latitude?,
            longitude: longitude?,
            elevation,
        })
    }

    pub(super) fn elevation(&mut self, field: &str, typed: Option<&Text>) -> Option<f64> {
        let text = typed.filter(|text| !text.is_empty())?;
        let number = self.number(field, text.trimmed())?;
        let bare = match self.units {
            Units::Us => Unit::Foot,
            Units::Metric => Unit::Metre,
        };
        let Some(scale) = number.unit.unwrap_or(bare).in_mm() else {
            self.problem(field, Code::WrongUnit, text.trimmed());
            return None;
        };
        let m = number.value * scale / 1000.0;
        let taken = Elevation::new(m);
        if taken.is_none() {
            let range = Elevation::RANGE;
            let mm = Range {
                low: range.low * 1000.0,
                high: range.high * 1000.0,
            };
            let shown = self.shown(mm, Measure::Ground);
            self.problem(field, Code::OutOfRange(shown), text.trimmed());
        }
        taken.map(Elevation::m)
    }

    /// `US-WI` or `GB`: two letters, and up to three letters or digits behind a dash (ISO 3166).
    pub(super) fn region(&mut self, typed: Option<&Text>) -> Option<String> {
        let text = typed.filter(|text| !text.is_empty())?.trimmed();
        let code = text.to_ascii_uppercase();
        let (country, part) = code.split_once('-').unwrap_or((&code, "-"));
        let letters = country.len() == 2 && country.bytes().all(|c| c.is_ascii_uppercase());
        let rest = part == "-"
            || ((1..=3).contains(&part.len()) && part.bytes().all(|c| c.is_ascii_alphanumeric()));
        if letters && rest {
            return Some(code);
        }
        self.problem("region", Code::NotRegion, text);
        None
    }

    pub(super) fn leafed_out(&mut self, typed: &LeafOutTyped) -> Option<LeafOut> {
        let stage = match typed.stage.as_ref().filter(|text| !text.is_empty()) {
            None => {
                self.problem("leafed_out.stage", Code::Missing, "");
                None
            }
            Some(text) => {
                let stage = Stage::parse(text.trimmed());
                if stage.is_none() {
                    let code = Code::NotOneOf(Stage::WORDS);
                    self.problem("leafed_out.stage", code, text.trimmed());
                }
                stage
            }
        };
        let date = match typed.date.as_ref().filter(|text| !text.is_empty()) {
            None => {
                self.problem("leafed_out.date", Code::Missing, "");
                None
            }
            Some(text) => self.date("leafed_out.date", text),
        };
        let rates = match typed.rates.as_ref().map(Text::trimmed) {
            None | Some("" | "fitted") => Some(Rates::Fitted),
            Some("hopkins") => Some(Rates::Hopkins),
            Some(other) => {
                let words = &["fitted", "hopkins"];
                self.problem("leafed_out.rates", Code::NotOneOf(words), other);
                None
            }
        };
        let elsewhere = typed
            .place
            .as_ref()
            .and_then(|place| self.place("leafed_out.place", place));
        Some(LeafOut {
            stage: stage?,
            date: date?,
            rates: rates?,
            elsewhere: match elsewhere {
                Some(Place::Point {
                    latitude,
                    longitude,
                    elevation,
                }) => Some((latitude, longitude, elevation)),
                _ => None,
            },
        })
    }

    /// A table of which no line can be used is a problem; bad lines of a good one are told with the answer.
    pub(super) fn spring(
        &mut self,
        typed: &Typed,
        day: Option<Day>,
        place: Option<&Place>,
    ) -> Option<Table> {
        let text = typed.spring.as_ref().filter(|text| !text.is_empty())?;
        let scale = match typed.spring_scale.as_ref().map(Text::trimmed) {
            None | Some("") => None,
            Some("celsius") => Some(Scale::Celsius),
            Some("fahrenheit") => Some(Scale::Fahrenheit),
            Some(other) => {
                let words = &["celsius", "fahrenheit"];
                self.problem("spring_scale", Code::NotOneOf(words), other);
                None
            }
        };
        let hemisphere = place.map_or(Hemisphere::North, Place::hemisphere);
        let table = spring::read(&text.0, scale, day?.start(), hemisphere);
        if table.doubts.contains(&Doubt::Nothing) {
            self.problem("spring", Code::NoTemperatures, text.trimmed());
            return None;
        }
        Some(table)
    }
}
