//! How JSON becomes a record of the interface, so that a file is read as the page reads an object of JavaScript:
//! an object is an object and never a list of its values, and what is null is left out.

use serde::de::{Deserialize, Deserializer, Visitor};
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
    Option::<T>::deserialize(deserializer).map(Option::unwrap_or_default)
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
