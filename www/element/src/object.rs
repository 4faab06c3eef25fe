//! Reads a question out of an object: a reader of our own, since the usual one passes over keys that it
//! does not know, and words its errors at a cost of many bytes. This one says which key, and no more.

use calc::question::{Code, Problem, Typed};
use js_sys::{Array, Object, Reflect};
use serde::de::{self, Deserialize, DeserializeSeed, Deserializer, MapAccess, SeqAccess, Visitor};
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
    Typed::deserialize(Js(value.clone())).map_err(|wrong| {
        let code = if wrong.unknown {
            Code::UnknownKey
        } else {
            Code::WrongType
        };
        Problem::new(wrong.path, code, "")
    })
}

/// What is wrong, and where.
#[derive(Debug)]
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

impl core::fmt::Display for Wrong {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.write_str(&self.path)
    }
}

impl core::error::Error for Wrong {}

impl de::Error for Wrong {
    fn custom<T: core::fmt::Display>(_: T) -> Self {
        Self::kind()
    }
    fn invalid_type(_: de::Unexpected<'_>, _: &dyn de::Expected) -> Self {
        Self::kind()
    }
    fn invalid_value(_: de::Unexpected<'_>, _: &dyn de::Expected) -> Self {
        Self::kind()
    }
    fn invalid_length(_: usize, _: &dyn de::Expected) -> Self {
        Self::kind()
    }
    fn unknown_variant(_: &str, _: &'static [&'static str]) -> Self {
        Self::kind()
    }
    fn unknown_field(field: &str, _: &'static [&'static str]) -> Self {
        Self {
            path: field.chars().take(REPEATED).collect(),
            unknown: true,
        }
    }
    fn missing_field(_: &'static str) -> Self {
        Self::kind()
    }
    fn duplicate_field(_: &'static str) -> Self {
        Self::kind()
    }
}

struct Js(JsValue);

/// What a value can be read as; looked at once, however many readers there are.
enum Kind {
    Text(String),
    Number(f64),
    Held(bool),
    Nothing,
    List(Array),
    Object(Object),
    Other,
}

impl Js {
    fn kind(self) -> Kind {
        let value = self.0;
        if let Some(text) = value.as_string() {
            Kind::Text(text)
        } else if let Some(number) = value.as_f64() {
            Kind::Number(number)
        } else if let Some(held) = value.as_bool() {
            Kind::Held(held)
        } else if value.is_null() || value.is_undefined() {
            Kind::Nothing
        } else if Array::is_array(&value) {
            Kind::List(value.unchecked_into())
        } else if value.is_object() && !value.is_function() {
            Kind::Object(value.unchecked_into())
        } else {
            Kind::Other
        }
    }
}

impl<'de> Deserializer<'de> for Js {
    type Error = Wrong;

    /// A value as typed: text or a number. Nothing else is read without being asked for.
    fn deserialize_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Wrong> {
        match self.kind() {
            Kind::Text(text) => visitor.visit_str(&text),
            Kind::Number(number) => visitor.visit_f64(number),
            _ => Err(Wrong::kind()),
        }
    }

    fn deserialize_u32<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Wrong> {
        match self.kind() {
            Kind::Number(number) if number == f64::from(number as u32) => {
                visitor.visit_u32(number as u32)
            }
            _ => Err(Wrong::kind()),
        }
    }

    fn deserialize_bool<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Wrong> {
        match self.kind() {
            Kind::Held(held) => visitor.visit_bool(held),
            _ => Err(Wrong::kind()),
        }
    }

    fn deserialize_option<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Wrong> {
        if self.0.is_null() || self.0.is_undefined() {
            visitor.visit_none()
        } else {
            visitor.visit_some(self)
        }
    }

    fn deserialize_seq<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Wrong> {
        match self.kind() {
            Kind::List(list) => visitor.visit_seq(List { list, at: 0 }),
            _ => Err(Wrong::kind()),
        }
    }

    fn deserialize_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        _: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Wrong> {
        match self.kind() {
            Kind::Object(object) => visitor.visit_map(Keys {
                keys: Object::keys(&object),
                object,
                at: 0,
            }),
            _ => Err(Wrong::kind()),
        }
    }

    fn deserialize_identifier<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Wrong> {
        match self.kind() {
            Kind::Text(text) => visitor.visit_str(&text),
            _ => Err(Wrong::kind()),
        }
    }

    serde::forward_to_deserialize_any! {
        i8 i16 i32 i64 u8 u16 u64 f32 f64 char str string bytes byte_buf unit unit_struct
        newtype_struct tuple tuple_struct map enum ignored_any
    }
}

struct List {
    list: Array,
    at: u32,
}

impl<'de> SeqAccess<'de> for List {
    type Error = Wrong;

    fn next_element_seed<T: DeserializeSeed<'de>>(
        &mut self,
        seed: T,
    ) -> Result<Option<T::Value>, Wrong> {
        if self.at >= self.list.length().min(LONGEST) {
            return Ok(None);
        }
        let at = self.at;
        self.at += 1;
        let value = seed.deserialize(Js(self.list.get(at)));
        value.map(Some).map_err(|wrong| {
            let number = calc_view::measure::number(at);
            wrong.under(&["[", &number, "]"].concat())
        })
    }
}

struct Keys {
    object: Object,
    keys: Array,
    at: u32,
}

impl<'de> MapAccess<'de> for Keys {
    type Error = Wrong;

    fn next_key_seed<K: DeserializeSeed<'de>>(
        &mut self,
        seed: K,
    ) -> Result<Option<K::Value>, Wrong> {
        if self.at >= self.keys.length() {
            return Ok(None);
        }
        seed.deserialize(Js(self.keys.get(self.at))).map(Some)
    }

    fn next_value_seed<V: DeserializeSeed<'de>>(&mut self, seed: V) -> Result<V::Value, Wrong> {
        let key = self.keys.get(self.at);
        self.at += 1;
        let value = Reflect::get(&self.object, &key).unwrap_or(JsValue::UNDEFINED);
        seed.deserialize(Js(value))
            .map_err(|wrong| wrong.under(&key.as_string().unwrap_or_default()))
    }
}
