//! Days, places, regions, leaf-out, temperatures: what the season is read from.

use super::numbers::NumberOf;
use super::{Reader, given};
use crate::question::fields::{LATITUDE, LONGITUDE};
use crate::question::region::may_be_part;
use crate::question::{Code, Day, LeafOutTyped, PlaceTyped, Text, Typed, read_day, region_code};
use crate::terms::number::Unit;
use crate::terms::place::Hemisphere;
use crate::terms::place::Place;
use crate::terms::quantity::{Elevation, Range, Units};
use crate::timing::spring::{self, Doubt, Scale, SpringTable};
use crate::timing::{Observed, Rates, SeasonConstants, Site};

impl Reader {
    pub(super) fn day(&mut self, typed: &Typed) -> Option<Day> {
        let text = self.needed("date", &typed.date)?;
        if text != "year" {
            return self.date("date", text).map(Day::On);
        }
        match &typed.today {
            Some(today) => {
                let today = self.date("today", today.trimmed())?;
                Some(Day::Year { today })
            }
            None => {
                self.problem("today", Code::Missing, "");
                None
            }
        }
    }

    pub(super) fn date(&mut self, field: &str, text: &str) -> Option<chrono::NaiveDate> {
        match read_day(text) {
            Ok(day) => Some(day),
            Err(code) => {
                self.problem(field, code, text);
                None
            }
        }
    }

    pub(super) fn place(&mut self, field: &str, typed: &PlaceTyped) -> Option<Place> {
        let part = |name: &str| [field, ".", name].concat();
        let (latitude, longitude) = (given(&typed.latitude), given(&typed.longitude));
        if latitude.is_none() && longitude.is_none() {
            let at = self.choice(&part("hemisphere"), &typed.hemisphere, &["north", "south"]);
            return match at {
                None if given(&typed.hemisphere).is_some() => None,
                None | Some(0) => Some(Place::Hemisphere(Hemisphere::North)),
                Some(_) => Some(Place::Hemisphere(Hemisphere::South)),
            };
        }
        let (Some(latitude), Some(longitude)) = (latitude, longitude) else {
            self.problem(field, Code::HalfPlace, "");
            return None;
        };
        let unit = Unit::Percent;
        let latitude = self.plain(&part("latitude"), latitude, unit, "°", LATITUDE);
        let longitude = self.plain(&part("longitude"), longitude, unit, "°", LONGITUDE);
        let elevation = self.elevation(&part("elevation"), &typed.elevation);
        Some(Place::Point {
            latitude: latitude?,
            longitude: longitude?,
            elevation,
        })
    }

    pub(super) fn elevation(&mut self, field: &str, typed: &Option<Text>) -> Option<f64> {
        let text = given(typed)?;
        let number = self.number(field, text)?;
        let bare = match self.units {
            Units::Us => Unit::Foot,
            Units::Metric => Unit::Metre,
        };
        let Some(scale) = number.unit.unwrap_or(bare).in_mm() else {
            self.problem(field, Code::WrongUnit, text);
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
            let shown = self.shown(mm, NumberOf::Ground);
            self.problem(field, Code::OutOfRange(shown), text);
        }
        taken.map(Elevation::m)
    }

    /// `US-WI` or `GB`: two letters, and up to three letters or digits behind a dash (ISO 3166); or a name of the list.
    pub(super) fn region(&mut self, typed: &Option<Text>) -> Option<String> {
        let text = given(typed)?;
        if let Some(code) = region_code(text) {
            return Some(code.to_owned());
        }
        let code = text.to_ascii_uppercase();
        let (country, part) = code.split_once('-').unwrap_or((&code, "-"));
        let letters = country.len() == 2 && country.bytes().all(|c| c.is_ascii_uppercase());
        let rest = part == "-"
            || ((1..=3).contains(&part.len()) && part.bytes().all(|c| c.is_ascii_alphanumeric()));
        if letters && rest && (part == "-" || may_be_part(country, part)) {
            return Some(code);
        }
        self.problem("region", Code::NotRegion, text);
        None
    }

    pub(super) fn leafed_out(&mut self, typed: &LeafOutTyped) -> Option<Observed> {
        let stage = self
            .needed("leafed_out.stage", &typed.stage)
            .and_then(|_| self.word_of("leafed_out.stage", &typed.stage));
        let date = self
            .needed("leafed_out.date", &typed.date)
            .and_then(|text| self.date("leafed_out.date", text));
        let words = &["fitted", "hopkins"];
        let rates = match self.choice("leafed_out.rates", &typed.rates, words) {
            None if given(&typed.rates).is_some() => None,
            None | Some(0) => Some(Rates::Fitted),
            Some(_) => Some(Rates::Hopkins),
        };
        let elsewhere = typed
            .place
            .as_ref()
            .and_then(|place| self.place("leafed_out.place", place));
        // Half of the world is no place to carry a date from, and an empty one was to be filled in.
        if let Some(Place::Hemisphere(_)) = elsewhere {
            self.problem("leafed_out.place", Code::HalfPlace, "");
        }
        Some(Observed {
            stage: stage?,
            date: date?,
            rates: rates?,
            elsewhere: match elsewhere {
                Some(Place::Point {
                    latitude,
                    longitude,
                    elevation,
                }) => Some(Site {
                    lat: latitude,
                    lon: longitude,
                    elev_m: elevation,
                }),
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
        constants: &SeasonConstants,
    ) -> Option<SpringTable> {
        let text = typed.spring.as_ref().filter(|text| !text.is_empty())?;
        let words = &["celsius", "fahrenheit"];
        let scale = self
            .choice("spring_scale", &typed.spring_scale, words)
            .map(|at| [Scale::Celsius, Scale::Fahrenheit][at.min(1)]);
        let hemisphere = place.map_or(Hemisphere::North, Place::hemisphere);
        let table = spring::read(&text.0, scale, day?.start(), hemisphere, constants);
        if table.doubts.contains(&Doubt::Nothing) {
            self.problem("spring", Code::NoTemperatures, text.trimmed());
            return None;
        }
        Some(table)
    }
}
