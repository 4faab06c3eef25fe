//! Controls and the question: a control has the path of its field as name, and what stands in it goes there and back.

use super::{entry, path};
use calc::question::{Record, Slot, Typed, slot_of};

/// The fields whose control holds just what they hold, beside those of the lists.
const NAMES: [&str; 44] = [
    "setting",
    "region",
    "spring",
    "spring_scale",
    "height",
    "height_confirmed",
    "line_within_reach",
    "none_in_reach",
    "condition",
    "signs",
    "herbicide",
    "goal",
    "spare",
    "whole_clone",
    "same_genus_near",
    "vigour",
    "dry_spell",
    "limbs",
    "walk",
    "practised",
    "cannot_wait",
    "place.latitude",
    "place.longitude",
    "place.elevation",
    "place.hemisphere",
    "leafed_out.stage",
    "leafed_out.rates",
    "leafed_out.place.latitude",
    "leafed_out.place.longitude",
    "leafed_out.place.elevation",
    "height_aid.by",
    "height_aid.tree_shadow",
    "height_aid.stick",
    "height_aid.stick_shadow",
    "height_aid.distance",
    "height_aid.top",
    "height_aid.foot",
    "height_aid.eye_to_stick",
    "timed.minutes",
    "timed.width",
    "timed.species",
    "visit.at",
    "visit.ringed",
    "visit.seen",
];
/// The same of a stem, whose girth stands in the control of its diameter.
const STEM: [&str; 3] = ["diameter", "live_share", "bark"];
/// The same of a thing that it could hit.
const TARGET: [&str; 5] = ["kind", "distance", "slope", "downhill", "voltage"];

/// All such names, with so many stems and things that it could hit.
pub(crate) fn names(stems: usize, targets: usize) -> Vec<String> {
    let mut names: Vec<String> = Vec::new();
    for name in &NAMES {
        names.push((*name).to_owned());
    }
    for (list, count, keys) in [
        ("stems", stems, &STEM[..]),
        ("targets", targets, &TARGET[..]),
    ] {
        for at in 0..count {
            for key in keys {
                names.push(path(list, at, key));
            }
        }
    }
    names
}

/// The slot of a field of a question by its path. A record on the way to it is made where there is none; none for an
/// entry that its list does not have.
pub(crate) fn slot<'t>(typed: &'t mut Typed, name: &str) -> Option<Slot<'t>> {
    let Some((head, key)) = name.split_once('.') else {
        return slot_of(typed, name);
    };
    let record: &mut dyn Record = match head {
        "place" => typed.place.get_or_insert_default(),
        "height_aid" => typed.height_aid.get_or_insert_default(),
        "timed" => typed.timed.get_or_insert_default(),
        "visit" => typed.visit.get_or_insert_default(),
        "leafed_out" => {
            let seen = typed.leafed_out.get_or_insert_default();
            match key.strip_prefix("place.") {
                Some(key) => return slot_of(seen.place.get_or_insert_default(), key),
                None => seen,
            }
        }
        _ => match entry(name, "stems") {
            Some(at) => typed.stems.get_mut(at)?,
            None => typed.targets.get_mut(entry(name, "targets")?)?,
        },
    };
    slot_of(record, key)
}

/// Takes out what is in a slot.
pub(crate) fn clear(slot: Option<Slot<'_>>) {
    match slot {
        Some(Slot::Text(text)) => *text = None,
        Some(Slot::Texts(texts)) => texts.clear(),
        Some(Slot::Held(held)) => *held = false,
        Some(Slot::MaybeNumber(number)) => *number = None,
        Some(Slot::Rate(rate)) => *rate = None,
        Some(Slot::Record(record)) => record.clear(),
        Some(Slot::Records(records)) => records.clear(),
        Some(Slot::Number(_) | Slot::Float(_)) | None => {}
    }
}
