//! Reads a question out of an object: by hand, since the derived reader passes over keys that it does
//! not know when it comes from objects, and costs five times the bytes. A test holds the keys here
//! against those of the question.

use calc::model::calibrate::Rate;
use calc::question::{
    Code, LeafOutTyped, PlaceTyped, Problem, StemTyped, TargetTyped, Text, Typed,
};
use js_sys::{Array, Object, Reflect};
use serde::Deserialize;
use serde::de::IntoDeserializer;
use serde::de::value::{Error as Unsaid, F64Deserializer};
use wasm_bindgen::{JsCast, JsValue};

/// A list with more entries is far beyond what a question takes; the rest is not looked at.
const LONGEST: u32 = 1000;
/// The most of a key that a message repeats, in characters.
const REPEATED: usize = 60;

/// Reads a question.
///
/// # Errors
/// The first key that is not known, or whose value is of a wrong type.
pub fn typed(value: &JsValue) -> Result<Typed, Problem> {
    let mut typed = Typed::default();
    record(value, &mut typed).map_err(|wrong| {
        let code = if wrong.unknown {
            Code::UnknownKey
        } else {
            Code::WrongType
        };
        Problem::new(wrong.path, code, "")
    })?;
    Ok(typed)
}

/// What is wrong, and where.
struct Wrong {
    path: String,
    unknown: bool,
}

impl Wrong {
    fn kind() -> Self {
        Self {
            path: String::new(),
            unknown: false,
        }
    }

    /// The same, seen from outside: `stems` or `[0]` before the path.
    fn under(mut self, key: &str) -> Self {
        let joint = if self.path.is_empty() || self.path.starts_with('[') {
            ""
        } else {
            "."
        };
        self.path = [key, joint, &self.path].concat();
        self
    }
}

/// Where the value of a key goes.
enum Slot<'a> {
    Text(&'a mut Option<Text>),
    Texts(&'a mut Vec<Text>),
    Held(&'a mut bool),
    Number(&'a mut u32),
    MaybeNumber(&'a mut Option<u32>),
    Float(&'a mut f64),
    Rate(&'a mut Option<Rate>),
    Place(&'a mut Option<PlaceTyped>),
    LeafOut(&'a mut Option<LeafOutTyped>),
    Stems(&'a mut Vec<StemTyped>),
    Targets(&'a mut Vec<TargetTyped>),
}

/// An object of the interface.
trait Record {
    /// The place of a key's value; none for a key that is not known.
    fn slot(&mut self, key: &str) -> Option<Slot<'_>>;
}

impl Record for Typed {
    fn slot(&mut self, key: &str) -> Option<Slot<'_>> {
        Some(match key {
            "version" => Slot::Number(&mut self.version),
            "units" => Slot::Text(&mut self.units),
            "species" => Slot::Text(&mut self.species),
            "stems" => Slot::Stems(&mut self.stems),
            "setting" => Slot::Text(&mut self.setting),
            "date" => Slot::Text(&mut self.date),
            "today" => Slot::Text(&mut self.today),
            "place" => Slot::Place(&mut self.place),
            "region" => Slot::Text(&mut self.region),
            "leafed_out" => Slot::LeafOut(&mut self.leafed_out),
            "spring" => Slot::Text(&mut self.spring),
            "spring_scale" => Slot::Text(&mut self.spring_scale),
            "height" => Slot::Text(&mut self.height),
            "height_confirmed" => Slot::Held(&mut self.height_confirmed),
            "targets" => Slot::Targets(&mut self.targets),
            "line_within_reach" => Slot::Text(&mut self.line_within_reach),
            "none_in_reach" => Slot::Held(&mut self.none_in_reach),
            "condition" => Slot::Text(&mut self.condition),
            "signs" => Slot::Texts(&mut self.signs),
            "herbicide" => Slot::Text(&mut self.herbicide),
            "goal" => Slot::Text(&mut self.goal),
            "spare" => Slot::MaybeNumber(&mut self.spare),
            "whole_clone" => Slot::Text(&mut self.whole_clone),
            "same_genus_near" => Slot::Text(&mut self.same_genus_near),
            "vigour" => Slot::Text(&mut self.vigour),
            "dry_spell" => Slot::Text(&mut self.dry_spell),
            "limbs" => Slot::Text(&mut self.limbs),
            "walk" => Slot::Text(&mut self.walk),
            "rate" => Slot::Rate(&mut self.rate),
            "practised" => Slot::Held(&mut self.practised),
            "cannot_wait" => Slot::Held(&mut self.cannot_wait),
            _ => return None,
        })
    }
}

impl Record for StemTyped {
    fn slot(&mut self, key: &str) -> Option<Slot<'_>> {
        Some(Slot::Text(match key {
            "diameter" => &mut self.diameter,
            "girth" => &mut self.girth,
            "live_share" => &mut self.live_share,
            "bark" => &mut self.bark,
            _ => return None,
        }))
    }
}

impl Record for TargetTyped {
    fn slot(&mut self, key: &str) -> Option<Slot<'_>> {
        Some(Slot::Text(match key {
            "kind" => &mut self.kind,
            "distance" => &mut self.distance,
            "slope" => &mut self.slope,
            "voltage" => &mut self.voltage,
            "downhill" => return Some(Slot::Held(&mut self.downhill)),
            _ => return None,
        }))
    }
}

impl Record for PlaceTyped {
    fn slot(&mut self, key: &str) -> Option<Slot<'_>> {
        Some(Slot::Text(match key {
            "latitude" => &mut self.latitude,
            "longitude" => &mut self.longitude,
            "elevation" => &mut self.elevation,
            "hemisphere" => &mut self.hemisphere,
            _ => return None,
        }))
    }
}

impl Record for LeafOutTyped {
    fn slot(&mut self, key: &str) -> Option<Slot<'_>> {
        Some(Slot::Text(match key {
            "stage" => &mut self.stage,
            "date" => &mut self.date,
            "rates" => &mut self.rates,
            "place" => return Some(Slot::Place(&mut self.place)),
            _ => return None,
        }))
    }
}

impl Record for Rate {
    fn slot(&mut self, key: &str) -> Option<Slot<'_>> {
        Some(Slot::Float(match key {
            "log_mean" => &mut self.log_mean,
            "log_sd" => &mut self.log_sd,
            _ => return None,
        }))
    }
}

/// Fills a record from an object, key by key. What is null or undefined is left out.
fn record(value: &JsValue, into: &mut dyn Record) -> Result<(), Wrong> {
    let plain = value.is_object() && !value.is_function() && !Array::is_array(value);
    if !plain {
        return Err(Wrong::kind());
    }
    let object: &Object = value.unchecked_ref();
    for key in Object::keys(object).iter() {
        let name = key.as_string().unwrap_or_default();
        let inner = Reflect::get(object, &key).unwrap_or(JsValue::UNDEFINED);
        let Some(slot) = into.slot(&name) else {
            return Err(Wrong {
                path: name.chars().take(REPEATED).collect(),
                unknown: true,
            });
        };
        if !(inner.is_null() || inner.is_undefined()) {
            fill(slot, &inner).map_err(|wrong| wrong.under(&name))?;
        }
    }
    Ok(())
}

fn fill(slot: Slot<'_>, value: &JsValue) -> Result<(), Wrong> {
    match slot {
        Slot::Text(into) => *into = Some(text(value)?),
        Slot::Held(into) => *into = value.as_bool().ok_or_else(Wrong::kind)?,
        Slot::Number(into) => *into = number(value)?,
        Slot::MaybeNumber(into) => *into = Some(number(value)?),
        Slot::Place(into) => record(value, into.get_or_insert_default())?,
        Slot::LeafOut(into) => record(value, into.get_or_insert_default())?,
        Slot::Float(into) => *into = value.as_f64().ok_or_else(Wrong::kind)?,
        Slot::Rate(into) => {
            // Both are needed: what was not given is no number, and that is refused.
            let (log_mean, log_sd) = (f64::NAN, f64::NAN);
            let rate = into.insert(Rate { log_mean, log_sd });
            record(value, rate)?;
            if rate.log_mean.is_nan() || rate.log_sd.is_nan() {
                return Err(Wrong::kind());
            }
        }
        Slot::Texts(into) => each(value, |value| {
            into.push(text(value)?);
            Ok(())
        })?,
        Slot::Stems(into) => each(value, |value| {
            into.push(StemTyped::default());
            into.last_mut().map_or(Ok(()), |stem| record(value, stem))
        })?,
        Slot::Targets(into) => each(value, |value| {
            into.push(TargetTyped::default());
            into.last_mut()
                .map_or(Ok(()), |target| record(value, target))
        })?,
    }
    Ok(())
}

/// A value as typed: text, or a number written out.
fn text(value: &JsValue) -> Result<Text, Wrong> {
    if let Some(text) = value.as_string() {
        return Ok(Text(text));
    }
    // The one writer of numbers is the reader's own.
    let number: F64Deserializer<Unsaid> =
        value.as_f64().ok_or_else(Wrong::kind)?.into_deserializer();
    Text::deserialize(number).map_err(|_| Wrong::kind())
}

fn number(value: &JsValue) -> Result<u32, Wrong> {
    let number = value.as_f64().ok_or_else(Wrong::kind)?;
    let whole = number as u32;
    if f64::from(whole) == number {
        Ok(whole)
    } else {
        Err(Wrong::kind())
    }
}

fn each(value: &JsValue, mut take: impl FnMut(&JsValue) -> Result<(), Wrong>) -> Result<(), Wrong> {
    if !Array::is_array(value) {
        return Err(Wrong::kind());
    }
    let list: &Array = value.unchecked_ref();
    for at in 0..list.length().min(LONGEST) {
        take(&list.get(at)).map_err(|wrong| {
            let number = calc_view::measure::number(at);
            wrong.under(&["[", &number, "]"].concat())
        })?;
    }
    Ok(())
}
