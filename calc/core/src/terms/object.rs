//! How JSON becomes a record of the interface, so that a file is read as the page reads an object of JavaScript:
//! an object is an object and never a list of its values, what is null is left out, and 1.0 is the whole number 1.

use core::fmt;
use core::marker::PhantomData;
use serde::de::{Deserialize, Deserializer, Error, Visitor};
use serde::forward_to_deserialize_any;

/// Takes objects alone: the derived reader of a structure would take a list of its values in order too.
pub(crate) struct ObjectOnly<D>(pub(crate) D);

impl<'de, D: Deserializer<'de>> Deserializer<'de> for ObjectOnly<D> {
    type Error = D::Error;

    fn deserialize_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, D::Error> {
        self.0.deserialize_map(visitor)
    }

    forward_to_deserialize_any! {
        bool i8 i16 i32 i64 i128 u8 u16 u32 u64 u128 f32 f64 char str string bytes byte_buf option unit
        unit_struct newtype_struct seq tuple tuple_struct map struct enum identifier ignored_any
    }
}

/// What is null stands for what a value is when it is left out.
pub(crate) fn null_is_left_out<'de, D, T>(deserializer: D) -> Result<T, D::Error>
where
    D: Deserializer<'de>,
    T: Deserialize<'de> + Default,
{
    deserializer.deserialize_option(NullIsLeftOut(PhantomData))
}

struct NullIsLeftOut<T>(PhantomData<T>);

impl<'de, T: Deserialize<'de> + Default> Visitor<'de> for NullIsLeftOut<T> {
    type Value = T;

    fn expecting(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        formatter.write_str("a value or null")
    }

    fn visit_none<E: Error>(self) -> Result<T, E> {
        Ok(T::default())
    }

    fn visit_unit<E: Error>(self) -> Result<T, E> {
        Ok(T::default())
    }

    fn visit_some<D: Deserializer<'de>>(self, deserializer: D) -> Result<T, D::Error> {
        T::deserialize(WholeNumbers(deserializer))
    }
}

/// Reads a value that is not null. JSON writes a whole number as 1 or as 1.0 (RFC 8259, section 6), and JavaScript has
/// one kind of number: both are read.
struct WholeNumbers<D>(D);

impl<'de, D: Deserializer<'de>> Deserializer<'de> for WholeNumbers<D> {
    type Error = D::Error;

    fn deserialize_u32<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, D::Error> {
        let number = f64::deserialize(self.0)?;
        let whole = number as u32;
        if f64::from(whole) == number {
            visitor.visit_u32(whole)
        } else {
            visitor.visit_f64(number)
        }
    }

    fn deserialize_option<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, D::Error> {
        visitor.visit_some(self)
    }

    fn deserialize_map<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, D::Error> {
        self.0.deserialize_map(visitor)
    }

    fn deserialize_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, D::Error> {
        self.0.deserialize_any(visitor)
    }

    forward_to_deserialize_any! {
        bool i8 i16 i32 i64 i128 u8 u16 u64 u128 f32 f64 char str string bytes byte_buf unit
        unit_struct newtype_struct seq tuple tuple_struct struct enum identifier ignored_any
    }
}

/// Reads and writes a record whose derived code is `remote = "Self"`, as an object alone.
macro_rules! object_only {
    ($name:ident) => {
        impl serde::Serialize for $name {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                Self::serialize(self, serializer)
            }
        }

        impl<'de> serde::Deserialize<'de> for $name {
            fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
                Self::deserialize(crate::terms::object::ObjectOnly(deserializer))
            }
        }
    };
}

pub(crate) use object_only;
