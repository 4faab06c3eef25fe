//! A question out of an object, and into one. It is read by hand, since the derived reader passes over keys that it does
//! not know when it comes from objects, and costs 7 kB more (gzip).

use super::objects::set;
use calc::models::calibrate::Rate;
use calc::question::{Code, Keyed, Problem, Slot, Text, Typed, slot_of};
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
pub(crate) fn typed(value: &JsValue) -> Result<Typed, Problem> {
    let mut typed = Typed::default();
    record(value, &mut typed).map_err(Wrong::problem)?;
    Ok(typed)
}

/// Whether the options of a call ask for what would change the answer: `{changes: false}` does not, and none at all do.
///
/// # Errors
/// A key that is not known, or a value of a wrong type: its path begins with `options`.
pub(crate) fn wants_changes(options: &JsValue) -> Result<bool, Problem> {
    let mut changes = true;
    let keys = if options.is_null() || options.is_undefined() {
        Array::new()
    } else {
        Object::keys(plain(options).map_err(|wrong| wrong.under("options").problem())?)
    };
    for key in keys.iter() {
        let name = key.as_string().unwrap_or_default();
        let value = Reflect::get(options, &key).unwrap_or(JsValue::UNDEFINED);
        let read = match (&*name, value.as_bool()) {
            ("changes", Some(wanted)) => Ok(wanted),
            ("changes", None) if value.is_undefined() => Ok(true),
            ("changes", None) => Err(Wrong::kind().under(&name)),
            _ => Err(Wrong::unknown(&name)),
        };
        changes = read.map_err(|wrong| wrong.under("options").problem())?;
    }
    Ok(changes)
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

    fn unknown(key: &str) -> Self {
        Self {
            path: key.chars().take(REPEATED).collect(),
            unknown: true,
        }
    }

    fn problem(self) -> Problem {
        let code = if self.unknown {
            Code::UnknownKey
        } else {
            Code::WrongType
        };
        Problem::new(self.path, code, "")
    }

    /// The same, seen from outside: `stems` or `[0]` before the path.
    fn under(mut self, key: &str) -> Self {
        let joint = if self.path.is_empty() || self.path.starts_with('[') {
            ""
        } else {
            "."
        };
        self.path = format!("{key}{joint}{}", self.path);
        self
    }
}

/// An object with keys of its own: no list and no function.
fn plain(value: &JsValue) -> Result<&Object, Wrong> {
    if value.is_object() && !value.is_function() && !Array::is_array(value) {
        Ok(value.unchecked_ref())
    } else {
        Err(Wrong::kind())
    }
}

/// Fills a record from an object, key by key. What is null or undefined is left out.
fn record(value: &JsValue, into: &mut dyn Keyed) -> Result<(), Wrong> {
    for key in Object::keys(plain(value)?).iter() {
        let name = key.as_string().unwrap_or_default();
        let inner = Reflect::get(value, &key).unwrap_or(JsValue::UNDEFINED);
        let Some(slot) = slot_of(into, &name) else {
            return Err(Wrong::unknown(&name));
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
        Slot::Record(into) => record(value, into.made())?,
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
        Slot::Texts(into) => each(value, &mut |_, value| {
            into.push(text(value)?);
            Ok(())
        })?,
        Slot::Records(into) => each(value, &mut |at, value| {
            into.add();
            into.nth(at).map_or(Ok(()), |it| record(value, it))
        })?,
    }
    Ok(())
}

/// A record as an object has it, without what is nothing, false or an empty list: all the same as left out.
pub(crate) fn object(record: &mut dyn Keyed) -> Object {
    let object = Object::new();
    for (at, key) in record.keys().iter().enumerate() {
        if let Some(value) = record.at(at).and_then(held) {
            set(&object, key.name, &value);
        }
    }
    object
}

fn held(slot: Slot<'_>) -> Option<JsValue> {
    let text = |text: &Text| JsValue::from_str(&text.0);
    let list: Array = match slot {
        Slot::Text(from) => return from.as_ref().map(text),
        Slot::Held(from) => return from.then_some(JsValue::TRUE),
        Slot::Number(from) => return Some((*from).into()),
        Slot::MaybeNumber(from) => return from.map(JsValue::from),
        Slot::Float(from) => return Some((*from).into()),
        Slot::Rate(from) => return Some(object(from.as_mut()?).into()),
        Slot::Record(from) => return Some(object(from.there()?).into()),
        Slot::Texts(from) => from.iter().map(text).collect(),
        Slot::Records(from) => (0..).map_while(|at| Some(object(from.nth(at)?))).collect(),
    };
    (list.length() > 0).then(|| list.into())
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

fn each(
    value: &JsValue,
    take: &mut dyn FnMut(usize, &JsValue) -> Result<(), Wrong>,
) -> Result<(), Wrong> {
    if !Array::is_array(value) {
        return Err(Wrong::kind());
    }
    let list: &Array = value.unchecked_ref();
    for at in 0..list.length().min(LONGEST) {
        take(at as usize, &list.get(at)).map_err(|wrong| wrong.under(&format!("[{at}]")))?;
    }
    Ok(())
}
