//! A question by the names of its keys, for those who read one key by key: the form, a link, an object of JavaScript.

use super::Text;
use crate::models::calibrate::Rate;

/// Where the value of a key goes.
pub enum Slot<'a> {
    /// A text as typed.
    Text(&'a mut Option<Text>),
    /// Some of them.
    Texts(&'a mut Vec<Text>),
    /// Whether it holds.
    Held(&'a mut bool),
    /// A whole number.
    Number(&'a mut u32),
    /// One that may be left out.
    MaybeNumber(&'a mut Option<u32>),
    /// Any number.
    Float(&'a mut f64),
    /// A crew's own rate.
    Rate(&'a mut Option<Rate>),
    /// An object that may be left out.
    Record(&'a mut dyn Maybe),
    /// A list of objects.
    Records(&'a mut dyn Many),
}

/// An object that may be left out.
pub trait Maybe {
    /// The object, where it is there.
    fn there(&mut self) -> Option<&mut dyn Keyed>;
    /// The object, an empty one where it was not there.
    fn made(&mut self) -> &mut dyn Keyed;
    /// Leaves it out.
    fn clear(&mut self);
}

impl<T: Keyed + Default> Maybe for Option<T> {
    fn there(&mut self) -> Option<&mut dyn Keyed> {
        Some(self.as_mut()?)
    }

    fn made(&mut self) -> &mut dyn Keyed {
        self.get_or_insert_default()
    }

    fn clear(&mut self) {
        *self = None;
    }
}

/// A list of objects.
pub trait Many {
    /// An object of the list, by its place in it.
    fn nth(&mut self, at: usize) -> Option<&mut dyn Keyed>;
    /// Puts an empty one behind the others.
    fn add(&mut self);
    /// Takes all of them out.
    fn clear(&mut self);
}

impl<T: Keyed + Default> Many for Vec<T> {
    fn nth(&mut self, at: usize) -> Option<&mut dyn Keyed> {
        Some(self.get_mut(at)?)
    }

    fn add(&mut self) {
        self.push(T::default());
    }

    fn clear(&mut self) {
        self.clear();
    }
}

/// A key of a record, and who else tells it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Key {
    /// Its name.
    pub name: &'static str,
    /// Whether a control of the form has the path of the field as its name.
    pub in_form: bool,
    /// Its name in a link, where a link tells it. What a name of version 1 means never changes.
    pub in_link: Option<&'static str>,
    /// Whether it belongs to the place, the day or the crew, and so holds for the next tree too.
    pub stays: bool,
    /// Whether it is picked from a list, so that only a host can have set what is not known.
    pub picked: bool,
}

impl Key {
    pub(super) const fn new(name: &'static str) -> Self {
        Self {
            name,
            in_form: false,
            in_link: None,
            stays: false,
            picked: false,
        }
    }

    pub(super) const fn picked(self) -> Self {
        Self {
            picked: true,
            ..self
        }
    }

    pub(super) const fn form(self) -> Self {
        Self {
            in_form: true,
            ..self
        }
    }

    pub(super) const fn stays(self) -> Self {
        Self {
            stays: true,
            ..self
        }
    }

    pub(super) const fn link(self) -> Self {
        self.link_as(self.name)
    }

    pub(super) const fn link_as(self, name: &'static str) -> Self {
        Self {
            in_link: Some(name),
            ..self
        }
    }
}

/// An object of the interface.
pub trait Keyed {
    /// Its keys, in order.
    fn keys(&self) -> &'static [Key];

    /// The place of the value of a key, by the place of that key among [`Keyed::keys`].
    fn at(&mut self, key: usize) -> Option<Slot<'_>>;
}

/// The place of a key's value; none for a key that is not known.
pub fn slot_of<'a>(record: &'a mut dyn Keyed, key: &str) -> Option<Slot<'a>> {
    let at = record.keys().iter().position(|known| known.name == key)?;
    record.at(at)
}

/// The place of a value by the name that a link has for it; none for a name that is not of this record.
pub fn slot_of_link<'a>(record: &'a mut dyn Keyed, name: &str) -> Option<Slot<'a>> {
    let at = record
        .keys()
        .iter()
        .position(|known| known.in_link == Some(name))?;
    record.at(at)
}

/// Declares a record: `key: Kind;`, with `of Other` for records in it, and `form`, `link`,
/// `link_as("name")`, `stays` or `picked` behind.
macro_rules! record {
    ($(#[$of:meta])* pub struct $name:ident { $(
        $(#[$doc:meta])* $key:ident: $kind:ident $(of $inner:ident)? $(, $told:ident $(($told_as:literal))?)*;
    )+ }) => {
        $(#[$of])*
        #[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
        #[serde(deny_unknown_fields, default, remote = "Self", expecting = "an object")]
        pub struct $name { $(
            $(#[$doc])*
            #[serde(deserialize_with = "crate::terms::object::null_is_left_out")]
            pub $key: record!(@type $kind $($inner)?)
        ),+ }

        crate::terms::object::object_only!($name);
        record!(@slots $name $($key: $kind $(, $told $(($told_as))?)*;)+);
    };
    (@slots $name:ident $($key:ident: $kind:ident $(, $told:ident $(($told_as:literal))?)*;)+) => {
        impl crate::question::Keyed for $name {
            fn keys(&self) -> &'static [crate::question::Key] {
                const KEYS: &[crate::question::Key] =
                    &[$(crate::question::Key::new(stringify!($key))$(.$told($($told_as)?))*),+];
                KEYS
            }

            fn at(&mut self, key: usize) -> Option<crate::question::Slot<'_>> {
                let mut keys = 0..;
                $(if keys.next() == Some(key) {
                    return Some(crate::question::Slot::$kind(&mut self.$key));
                })+
                None
            }
        }
    };
    (@type Text) => { Option<Text> };
    (@type Texts) => { Vec<Text> };
    (@type Held) => { bool };
    (@type Number) => { u32 };
    (@type MaybeNumber) => { Option<u32> };
    (@type Rate) => { Option<Rate> };
    (@type Record $of:ident) => { Option<$of> };
    (@type Records $of:ident) => { Vec<$of> };
}

pub(super) use record;

record!(@slots Rate log_mean: Float; log_sd: Float;);
