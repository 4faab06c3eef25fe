//! Data taken apart: a small tree of what its object has, which one short function then writes. Written straight
//! to objects, each field of each type would bring calls of its own and its own way out of errors that can't come.

use core::fmt::{self, Display};
use serde::ser::{self, Impossible, Serialize, SerializeStruct, Serializer};

/// A part of an object.
pub(crate) enum Part {
    /// Nothing.
    Null,
    /// Whether something holds.
    Held(bool),
    /// A number.
    Number(f64),
    /// A word of the interface.
    Word(&'static str),
    /// Any other text.
    Text(String),
    /// A list; none of its entries has a key.
    List(Vec<Entry>),
    /// Keys with their values, in order.
    Record(Vec<Entry>),
}

/// A part under its key.
type Entry = (&'static str, Part);

impl Part {
    /// Takes data apart.
    pub(crate) fn of<T: Serialize>(data: &T) -> Self {
        let mut parts = Parts {
            key: "",
            open: Vec::new(),
            whole: Self::Null,
        };
        let Ok(()) = data.serialize(&mut parts);
        parts.whole
    }
}

impl Serialize for Part {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match self {
            Self::Null => serializer.serialize_none(),
            Self::Held(held) => serializer.serialize_bool(*held),
            Self::Number(number) => serializer.serialize_f64(*number),
            Self::Word(word) => serializer.serialize_unit_variant("", 0, word),
            Self::Text(text) => serializer.serialize_str(text),
            Self::List(entries) => serializer.collect_seq(entries.iter().map(|(_, part)| part)),
            Self::Record(entries) => {
                let mut record = serializer.serialize_struct("", entries.len())?;
                for (key, part) in entries {
                    record.serialize_field(key, part)?;
                }
                record.end()
            }
        }
    }
}

/// What is being put together.
struct Parts {
    /// The key of the part that comes next.
    key: &'static str,
    /// Lists and records that are not whole yet, each with its own key.
    open: Vec<(&'static str, Vec<Entry>)>,
    whole: Part,
}

// Each step stands once: in place of its calls it would be larger than they are.
impl Parts {
    #[inline(never)]
    fn key(&mut self, key: &'static str) {
        self.key = key;
    }

    #[inline(never)]
    fn put(&mut self, part: Part) -> Done {
        match self.open.last_mut() {
            Some((_, entries)) => entries.push((self.key, part)),
            None => self.whole = part,
        }
        Ok(())
    }

    #[inline(never)]
    fn open(&mut self) {
        self.open.push((self.key, Vec::new()));
        self.key = "";
    }

    #[inline(never)]
    fn close(&mut self, whole: fn(Vec<Entry>) -> Part) -> Done {
        let (key, entries) = self.open.pop().unwrap_or_default();
        self.key = key;
        self.put(whole(entries))
    }
}

/// Nothing goes wrong where data is taken apart.
#[derive(Debug)]
enum Never {}

impl Display for Never {
    fn fmt(&self, _: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {}
    }
}

impl core::error::Error for Never {}

impl ser::Error for Never {
    fn custom<T: Display>(what: T) -> Self {
        unreachable!("{what}")
    }
}

type Done = Result<(), Never>;

macro_rules! numbers {
    ($($name:ident: $number:ty),+) => {
        $(fn $name(self, number: $number) -> Done {
            self.serialize_f64(number as f64)
        })+
    };
}

impl<'p> Serializer for &'p mut Parts {
    type Ok = ();
    type Error = Never;
    type SerializeSeq = Self;
    type SerializeTuple = Self;
    type SerializeTupleStruct = Self;
    type SerializeTupleVariant = Impossible<(), Never>;
    type SerializeMap = Impossible<(), Never>;
    type SerializeStruct = Self;
    type SerializeStructVariant = Variant<'p>;

    numbers!(
        serialize_i8: i8, serialize_i16: i16, serialize_i32: i32, serialize_i64: i64,
        serialize_u8: u8, serialize_u16: u16, serialize_u32: u32, serialize_u64: u64,
        serialize_f32: f32
    );

    #[inline(never)]
    fn serialize_f64(self, number: f64) -> Done {
        self.put(Part::Number(number))
    }

    #[inline(never)]
    fn serialize_bool(self, held: bool) -> Done {
        self.put(Part::Held(held))
    }

    #[inline(never)]
    fn serialize_str(self, text: &str) -> Done {
        self.put(Part::Text(text.to_owned()))
    }

    fn serialize_char(self, c: char) -> Done {
        self.serialize_str(c.encode_utf8(&mut [0; 4]))
    }

    fn serialize_bytes(self, bytes: &[u8]) -> Done {
        self.collect_seq(bytes)
    }

    #[inline(never)]
    fn serialize_unit(self) -> Done {
        self.put(Part::Null)
    }

    fn serialize_none(self) -> Done {
        self.serialize_unit()
    }

    fn serialize_unit_struct(self, _: &'static str) -> Done {
        self.serialize_unit()
    }

    fn serialize_some<T: ?Sized + Serialize>(self, value: &T) -> Done {
        value.serialize(self)
    }

    fn serialize_newtype_struct<T: ?Sized + Serialize>(self, _: &'static str, value: &T) -> Done {
        value.serialize(self)
    }

    #[inline(never)]
    fn serialize_unit_variant(self, _: &'static str, _: u32, word: &'static str) -> Done {
        self.put(Part::Word(word))
    }

    fn serialize_newtype_variant<T: ?Sized + Serialize>(
        self,
        _: &'static str,
        _: u32,
        word: &'static str,
        value: &T,
    ) -> Done {
        self.open();
        self.key(word);
        value.serialize(&mut *self)?;
        self.close(Part::Record)
    }

    fn serialize_seq(self, _: Option<usize>) -> Result<Self, Never> {
        self.open();
        Ok(self)
    }

    fn serialize_tuple(self, _: usize) -> Result<Self, Never> {
        self.serialize_seq(None)
    }

    fn serialize_tuple_struct(self, _: &'static str, _: usize) -> Result<Self, Never> {
        self.serialize_seq(None)
    }

    fn serialize_tuple_variant(
        self,
        _: &'static str,
        _: u32,
        _: &'static str,
        _: usize,
    ) -> Result<Self::SerializeTupleVariant, Never> {
        unreachable!("the interface has no such variant")
    }

    fn serialize_map(self, _: Option<usize>) -> Result<Self::SerializeMap, Never> {
        unreachable!("the interface has no maps")
    }

    fn serialize_struct(self, _: &'static str, _: usize) -> Result<Self, Never> {
        self.open();
        Ok(self)
    }

    fn serialize_struct_variant(
        self,
        _: &'static str,
        _: u32,
        word: &'static str,
        _: usize,
    ) -> Result<Variant<'p>, Never> {
        self.open();
        self.key(word);
        self.open();
        Ok(Variant(self))
    }
}

macro_rules! lists {
    ($($of:ident: $next:ident),+) => {
        $(impl ser::$of for &mut Parts {
            type Ok = ();
            type Error = Never;

            fn $next<T: ?Sized + Serialize>(&mut self, value: &T) -> Done {
                value.serialize(&mut **self)
            }

            fn end(self) -> Done {
                self.close(Part::List)
            }
        })+
    };
}

lists!(
    SerializeSeq: serialize_element,
    SerializeTuple: serialize_element,
    SerializeTupleStruct: serialize_field
);

impl SerializeStruct for &mut Parts {
    type Ok = ();
    type Error = Never;

    fn serialize_field<T: ?Sized + Serialize>(&mut self, key: &'static str, value: &T) -> Done {
        self.key(key);
        value.serialize(&mut **self)
    }

    fn end(self) -> Done {
        self.close(Part::Record)
    }
}

/// A record inside one with a single key.
struct Variant<'p>(&'p mut Parts);

impl ser::SerializeStructVariant for Variant<'_> {
    type Ok = ();
    type Error = Never;

    fn serialize_field<T: ?Sized + Serialize>(&mut self, key: &'static str, value: &T) -> Done {
        self.0.serialize_field(key, value)
    }

    fn end(self) -> Done {
        self.0.close(Part::Record)?;
        self.0.close(Part::Record)
    }
}
