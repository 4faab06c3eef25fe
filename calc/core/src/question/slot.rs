//! A question by the names of its fields, for those who read one key by key. A test holds the keys here
//! against those of the question.

use super::{
    HeightAidTyped, LeafOutTyped, PlaceTyped, StemTyped, TargetTyped, Text, TimedTyped, Typed,
    VisitTyped,
};
use crate::model::calibrate::Rate;

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
    /// A place.
    Place(&'a mut Option<PlaceTyped>),
    /// Leaf-out.
    LeafOut(&'a mut Option<LeafOutTyped>),
    /// Readings of a height.
    HeightAid(&'a mut Option<HeightAidTyped>),
    /// Trees that were timed.
    Timed(&'a mut Option<TimedTyped>),
    /// A visit.
    Visit(&'a mut Option<VisitTyped>),
    /// Stems.
    Stems(&'a mut Vec<StemTyped>),
    /// Things that it could hit.
    Targets(&'a mut Vec<TargetTyped>),
}

/// An object of the interface.
pub trait Record {
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
            "height_aid" => Slot::HeightAid(&mut self.height_aid),
            "timed" => Slot::Timed(&mut self.timed),
            "visit" => Slot::Visit(&mut self.visit),
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

impl Record for HeightAidTyped {
    fn slot(&mut self, key: &str) -> Option<Slot<'_>> {
        Some(Slot::Text(match key {
            "by" => &mut self.by,
            "tree_shadow" => &mut self.tree_shadow,
            "stick" => &mut self.stick,
            "stick_shadow" => &mut self.stick_shadow,
            "distance" => &mut self.distance,
            "top" => &mut self.top,
            "foot" => &mut self.foot,
            "eye_to_stick" => &mut self.eye_to_stick,
            _ => return None,
        }))
    }
}

impl Record for TimedTyped {
    fn slot(&mut self, key: &str) -> Option<Slot<'_>> {
        Some(Slot::Text(match key {
            "minutes" => &mut self.minutes,
            "width" => &mut self.width,
            "species" => &mut self.species,
            "trees" => return Some(Slot::Texts(&mut self.trees)),
            _ => return None,
        }))
    }
}

impl Record for VisitTyped {
    fn slot(&mut self, key: &str) -> Option<Slot<'_>> {
        Some(Slot::Text(match key {
            "at" => &mut self.at,
            "ringed" => &mut self.ringed,
            "seen" => return Some(Slot::Texts(&mut self.seen)),
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
