//! A question by the names of its fields, for those who read one key by key. A test holds the keys here
//! against those of the question.

use super::{
    HeightAidTyped, LeafOutTyped, PlaceTyped, StemTyped, TargetTyped, Text, TimedTyped, Typed,
    VisitTyped,
};
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
    fn there(&mut self) -> Option<&mut dyn Record>;
    /// The object, an empty one where it was not there.
    fn made(&mut self) -> &mut dyn Record;
    /// Leaves it out.
    fn clear(&mut self);
}

impl<T: Record + Default> Maybe for Option<T> {
    fn there(&mut self) -> Option<&mut dyn Record> {
        Some(self.as_mut()?)
    }

    fn made(&mut self) -> &mut dyn Record {
        self.get_or_insert_default()
    }

    fn clear(&mut self) {
        *self = None;
    }
}

/// A list of objects.
pub trait Many {
    /// An object of the list, by its place in it.
    fn nth(&mut self, at: usize) -> Option<&mut dyn Record>;
    /// Puts an empty one behind the others.
    fn add(&mut self);
    /// Takes all of them out.
    fn clear(&mut self);
}

impl<T: Record + Default> Many for Vec<T> {
    fn nth(&mut self, at: usize) -> Option<&mut dyn Record> {
        Some(self.get_mut(at)?)
    }

    fn add(&mut self) {
        self.push(T::default());
    }

    fn clear(&mut self) {
        self.clear();
    }
}

/// An object of the interface.
pub trait Record {
    /// Its keys, in order.
    fn keys(&self) -> &'static [&'static str];

    /// The place of the value of a key, by the place of that key among [`Record::keys`].
    fn at(&mut self, key: usize) -> Option<Slot<'_>>;
}

/// The place of a key's value; none for a key that is not known.
pub fn slot_of<'a>(record: &'a mut dyn Record, key: &str) -> Option<Slot<'a>> {
    let at = record.keys().iter().position(|known| *known == key)?;
    record.at(at)
}

macro_rules! record {
    ($name:ident { $($key:ident: $kind:ident),+ $(,)? }) => {
        impl Record for $name {
            fn keys(&self) -> &'static [&'static str] {
                &[$(stringify!($key)),+]
            }

            fn at(&mut self, key: usize) -> Option<Slot<'_>> {
                let mut keys = 0..;
                $(if keys.next() == Some(key) {
                    return Some(Slot::$kind(&mut self.$key));
                })+
                None
            }
        }
    };
}

record!(Typed {
    version: Number,
    units: Text,
    species: Text,
    stems: Records,
    setting: Text,
    date: Text,
    today: Text,
    place: Record,
    region: Text,
    leafed_out: Record,
    spring: Text,
    spring_scale: Text,
    height: Text,
    height_aid: Record,
    height_confirmed: Held,
    targets: Records,
    line_within_reach: Text,
    none_in_reach: Held,
    condition: Text,
    signs: Texts,
    herbicide: Text,
    goal: Text,
    spare: MaybeNumber,
    whole_clone: Text,
    same_genus_near: Text,
    vigour: Text,
    dry_spell: Text,
    limbs: Text,
    walk: Text,
    practised: Held,
    rate: Rate,
    timed: Record,
    cannot_wait: Held,
    visit: Record,
});
record!(StemTyped {
    diameter: Text,
    girth: Text,
    live_share: Text,
    bark: Text,
});
record!(TargetTyped {
    kind: Text,
    distance: Text,
    slope: Text,
    downhill: Held,
    voltage: Text,
});
record!(PlaceTyped {
    latitude: Text,
    longitude: Text,
    elevation: Text,
    hemisphere: Text,
});
record!(LeafOutTyped {
    stage: Text,
    date: Text,
    place: Record,
    rates: Text,
});
record!(HeightAidTyped {
    by: Text,
    tree_shadow: Text,
    stick: Text,
    stick_shadow: Text,
    distance: Text,
    top: Text,
    foot: Text,
    eye_to_stick: Text,
});
record!(TimedTyped {
    trees: Texts,
    minutes: Text,
    width: Text,
    species: Text,
});
record!(VisitTyped {
    at: Text,
    ringed: Text,
    seen: Texts,
});
record!(Rate {
    log_mean: Float,
    log_sd: Float,
});
