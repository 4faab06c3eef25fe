//! What a species is mistaken for, beside each other: a drawing of each that has marks, and the mark that tells it apart. Native
//! ones stand first, since killing one by mistake is the worst error.

use calc::terms::species::{LookAlike, Species};
use calc_view::answer::look_alike;
use calc_view::draw::plate::{self, Marks};
use calc_view::page::Page;
use calc_view::words::m;
use std::collections::BTreeMap;

/// So many are in view.
const IN_VIEW: usize = 2;

/// Writes them.
pub(super) fn write(out: &mut Page<'_>, species: &Species, all: &BTreeMap<String, Marks>) {
    let mut alike: Vec<&LookAlike> = species.look_alikes.iter().collect();
    alike.sort_by_key(|it| !it.native);
    let (view, rest) = alike.split_at(alike.len().min(IN_VIEW));
    if !view.is_empty() {
        list(out, view, all);
    }
    if !rest.is_empty() {
        out.open("details");
        out.leaf("summary", m::CONFIDENCE_MORE_ALIKE);
        list(out, rest, all);
        out.close();
    }
}

fn list(out: &mut Page<'_>, alike: &[&LookAlike], all: &BTreeMap<String, Marks>) {
    out.open_class("ul", "cands");
    for it in alike {
        out.open("li");
        if let Some(marks) = all.get(it.scientific) {
            // Of many leaflets each weighs as much as a leaf: such a tree shows its fruit.
            match marks.is_compound() {
                true => plate::fruit(out.sink(), marks, ""),
                false => plate::leaf(out.sink(), marks, ""),
            }
        }
        out.open("div");
        one(out, it);
        out.close_two();
    }
    out.close();
}

/// Its name and the mark.
pub(super) fn one(out: &mut Page<'_>, it: &LookAlike) {
    out.open("p");
    look_alike(out, it);
    out.close();
}
