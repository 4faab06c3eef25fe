//! Objects in and out. Keys that we don't know are named, since a slip of the pen in a key would
//! otherwise be taken for a field left out.

use crate::today::today;
use calc::answer::{Answer, iso};
use calc::model::season::Local;
use calc::question::{
    Code, LeafOutTyped, PlaceTyped, Problem, StemTyped, TargetTyped, Text, Typed, read,
};
use calc_view::problem_text;
use js_sys::{Array, Object, Reflect};
use serde::Serialize;
use serde::de::{DeserializeOwned, Deserializer, Visitor, value::Error as Stop};
use serde_wasm_bindgen::{Serializer, from_value};
use wasm_bindgen::{JsCast, JsValue};

/// For what is no question at all.
const NO_OBJECT: &str =
    "The question can't be read. Give an object, such as {version: 1, species: \"ash\", …}.";

/// Answers a question as an object.
pub fn answer(question: &JsValue) -> JsValue {
    let mut typed = match typed(question) {
        Ok(typed) => typed,
        Err(problems) => return problems_object(&problems),
    };
    if typed.today.is_none() {
        typed.today = Some(Text(iso(today())));
    }
    let reference = calc_data::reference();
    match read(reference, &typed) {
        Ok(question) => to_js(&calc::answer::answer(
            reference,
            &question,
            &Local::default(),
        )),
        Err(problems) => problems_object(&problems),
    }
}

/// An answer, or any other part of the interface, as plain objects.
pub fn to_js<T: Serialize>(value: &T) -> JsValue {
    // Numbers stay numbers and what is missing is null, as JSON has it.
    value
        .serialize(&Serializer::json_compatible())
        .unwrap_or(JsValue::NULL)
}

/// The answer of a question that can be answered.
pub fn answer_object(answer: &Answer) -> JsValue {
    let object = to_js(answer);
    freeze(&object);
    object
}

/// Nobody may write in an answer that others read too.
fn freeze(value: &JsValue) {
    if let Some(object) = value.dyn_ref::<Object>() {
        Object::freeze(object);
        for inner in Object::values(object).iter() {
            freeze(&inner);
        }
    }
}

/// Problems as `{problems: [{field, code, message}]}`.
pub fn problems_object(problems: &[Problem]) -> JsValue {
    let list = Array::new();
    for problem in problems {
        let object = Object::new();
        set(&object, "field", &problem.field.as_str().into());
        set(&object, "code", &problem.code.name().into());
        let message = if problem.field.is_empty() {
            NO_OBJECT.to_owned()
        } else {
            problem_text(problem)
        };
        set(&object, "message", &message.into());
        list.push(&object);
    }
    let object = Object::new();
    set(&object, "problems", &list);
    object.into()
}

/// Sets a key of an object of ours.
pub fn set(object: &Object, key: &str, value: &JsValue) {
    let _ = Reflect::set(object, &key.into(), value);
}

/// A question without what was left out of it.
pub fn question_object(typed: &Typed) -> JsValue {
    let value = to_js(typed);
    prune(&value);
    value
}

/// Takes out keys whose value is null, or a list with nothing in it.
fn prune(value: &JsValue) {
    let Some(object) = value.dyn_ref::<Object>() else {
        return;
    };
    for key in Object::keys(object).iter() {
        let inner = Reflect::get(object, &key).unwrap_or(JsValue::NULL);
        let empty = inner
            .dyn_ref::<Array>()
            .is_some_and(|list| list.length() == 0);
        if inner.is_null() || empty {
            let _ = Reflect::delete_property(object, &key);
        } else {
            prune(&inner);
        }
    }
}

/// Reads a question out of an object.
///
/// # Errors
/// Every key that we don't know; or else the first value of a wrong type.
pub fn typed(value: &JsValue) -> Result<Typed, Vec<Problem>> {
    if !is_record(value) {
        return Err(vec![Problem::new("", Code::WrongType, "")]);
    }
    let mut problems = Vec::new();
    let mut place = Place {
        path: String::new(),
        problems: &mut problems,
        unknown: true,
    };
    place.question(value);
    if !problems.is_empty() {
        return Err(problems);
    }
    if let Ok(typed) = from_value::<Typed>(value.clone()) {
        return Ok(typed);
    }
    let mut place = Place {
        path: String::new(),
        problems: &mut problems,
        unknown: false,
    };
    place.question(value);
    if problems.is_empty() {
        problems.push(Problem::new("", Code::WrongType, ""));
    }
    Err(problems)
}

fn is_record(value: &JsValue) -> bool {
    value.is_object() && !Array::is_array(value) && !value.is_function()
}

/// Looks at one level of a question after the other: for keys that are not known, or for values that
/// can't be read.
struct Place<'a> {
    path: String,
    problems: &'a mut Vec<Problem>,
    unknown: bool,
}

impl Place<'_> {
    fn question(&mut self, value: &JsValue) {
        self.level::<Typed>(value, &|place, key, value| match key {
            "stems" => place.list(value, |place, value| place.flat::<StemTyped>(value)),
            "targets" => place.list(value, |place, value| place.flat::<TargetTyped>(value)),
            "place" => place.flat::<PlaceTyped>(value),
            "leafed_out" => place.level::<LeafOutTyped>(value, &|place, key, value| {
                if key == "place" {
                    place.flat::<PlaceTyped>(value);
                }
            }),
            _ => {}
        });
    }

    fn flat<T: DeserializeOwned>(&mut self, value: &JsValue) {
        self.level::<T>(value, &|_, _, _| {});
    }

    /// The keys of an object; `inner` looks into their values.
    fn level<T: DeserializeOwned>(
        &mut self,
        value: &JsValue,
        inner: &dyn Fn(&mut Self, &str, &JsValue),
    ) {
        if !is_record(value) {
            return;
        }
        let known = fields_of::<T>();
        let object: &Object = value.unchecked_ref();
        for key in Object::keys(object).iter() {
            let name = key.as_string().unwrap_or_default();
            let value = Reflect::get(object, &key).unwrap_or(JsValue::UNDEFINED);
            let length = self.path.len();
            if length > 0 {
                self.path.push('.');
            }
            // A key may be as long as anybody likes; a message is not.
            self.path.extend(name.chars().take(60));
            if !known.contains(&&*name) {
                if self.unknown {
                    self.problems
                        .push(Problem::new(self.path.clone(), Code::UnknownKey, &name));
                }
            } else {
                let before = self.problems.len();
                inner(self, &name, &value);
                let found = self.problems.len() > before;
                if !self.unknown && !found && !alone::<T>(&key, &value) {
                    self.problems
                        .push(Problem::new(self.path.clone(), Code::WrongType, ""));
                }
            }
            self.path.truncate(length);
        }
    }

    fn list(&mut self, value: &JsValue, look: impl Fn(&mut Self, &JsValue)) {
        if !Array::is_array(value) {
            return;
        }
        let list: &Array = value.unchecked_ref();
        // A longer list is refused by its length; its entries need no look.
        for at in 0..list.length().min(100) {
            let length = self.path.len();
            self.path
                .push_str(&["[", &calc_view::measure::number(at), "]"].concat());
            look(self, &list.get(at));
            self.path.truncate(length);
        }
    }
}

/// Whether a value can be read under its key alone.
fn alone<T: DeserializeOwned>(key: &JsValue, value: &JsValue) -> bool {
    let object = Object::new();
    let _ = Reflect::set(&object, key, value);
    from_value::<T>(object.into()).is_ok()
}

/// The keys that a type takes, as its reader names them.
fn fields_of<T: DeserializeOwned>() -> &'static [&'static str] {
    struct Keys<'a>(&'a mut &'static [&'static str]);
    impl<'de> Deserializer<'de> for Keys<'_> {
        type Error = Stop;
        fn deserialize_any<V: Visitor<'de>>(self, _: V) -> Result<V::Value, Stop> {
            Err(serde::de::Error::custom(""))
        }
        fn deserialize_struct<V: Visitor<'de>>(
            self,
            _: &'static str,
            fields: &'static [&'static str],
            _: V,
        ) -> Result<V::Value, Stop> {
            *self.0 = fields;
            Err(serde::de::Error::custom(""))
        }
        serde::forward_to_deserialize_any! {
            bool i8 i16 i32 i64 u8 u16 u32 u64 f32 f64 char str string bytes byte_buf option unit
            unit_struct newtype_struct seq tuple tuple_struct map enum identifier ignored_any
        }
    }
    let mut fields: &'static [&'static str] = &[];
    let _ = T::deserialize(Keys(&mut fields));
    fields
}
