//! Controls and the question: a control has the path of its field as name, and what stands in it goes there and back.
//! Which fields have a control is told by the list of fields itself.

use super::{entry, path};
use calc::question::{Keyed, Slot, StemTyped, TargetTyped, Typed, slot_of};

/// The names of all controls that hold just what their field holds, with so many stems and things that it could hit.
pub(crate) fn names(stems: usize, targets: usize) -> Vec<String> {
    let mut names = Vec::new();
    of_record(&mut Typed::default(), "", &mut names);
    let stem = StemTyped::default();
    let target = TargetTyped::default();
    for (list, count, keys) in [
        ("stems", stems, stem.keys()),
        ("targets", targets, target.keys()),
    ] {
        for at in 0..count {
            for key in keys.iter().filter(|key| key.in_form) {
                names.push(path(list, at, key.name));
            }
        }
    }
    names
}

/// The names of a record's own fields, then those of the records in it.
fn of_record(record: &mut dyn Keyed, before: &str, names: &mut Vec<String>) {
    let keys = record.keys();
    let in_form = || keys.iter().enumerate().filter(|(_, key)| key.in_form);
    for (at, key) in in_form() {
        match record.at(at) {
            Some(Slot::Record(_) | Slot::Records(_)) | None => {}
            Some(_) => names.push([before, key.name].concat()),
        }
    }
    for (at, key) in in_form() {
        if let Some(Slot::Record(inner)) = record.at(at) {
            of_record(inner.made(), &[before, key.name, "."].concat(), names);
        }
    }
}

/// The slot of a field of a question by its path. A record on the way to it is made where there is none; none for an
/// entry that its list does not have.
pub(crate) fn slot<'t>(record: &'t mut dyn Keyed, name: &str) -> Option<Slot<'t>> {
    let Some((head, key)) = name.split_once('.') else {
        return slot_of(record, name);
    };
    let list = head.split('[').next().unwrap_or(head);
    match slot_of(record, list)? {
        Slot::Record(inner) => slot(inner.made(), key),
        Slot::Records(inner) => slot_of(inner.nth(entry(name, list)?)?, key),
        _ => None,
    }
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
