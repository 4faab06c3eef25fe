//! The state or country of a point, proposed from the towns near it. Law and diseases hang on it, so it is never
//! filled in by itself: the reader takes it, or picks another.

use super::field::button;
use super::regions::known;
use super::{View, words as w};
use crate::page::Page;
use crate::words::phrase::either;
use crate::words::region::region;
use calc::terms::place::Place;
use calc::terms::small::sort::sort;

/// The line that tells.
pub(super) const LINE_ID: &str = "near-a";
/// At most so many are proposed.
const MOST: usize = 3;

/// Codes of the form for the point, nearest first; none where it can't be told, or where one of them stands already.
pub(super) fn look(view: &View<'_>) -> Vec<&'static str> {
    let question = view.draft.question.as_ref();
    let place = question.map(|question| &question.place);
    let Some(Place::Point {
        latitude,
        longitude,
        ..
    }) = place
    else {
        return Vec::new();
    };
    let stands = view.sheet.get("region");
    let constants = &view.reference.constants.timing;
    let mut near: Vec<(&'static str, f64)> = Vec::new();
    for (region, km) in (view.options.near)(*latitude, *longitude, stands) {
        near.push((known(&region), km));
    }
    sort(&mut near, |a, b| a.1 < b.1);
    let least = near.first().map_or(f64::INFINITY, |(_, km)| *km);
    let most = (least * 2.0).max(least + constants.region_border());
    let mut codes: Vec<&'static str> = Vec::new();
    for (code, km) in near {
        let in_reach = km <= most && least <= constants.max_place_distance();
        if in_reach && !code.is_empty() && !codes.contains(&code) {
            codes.push(code);
        }
    }
    if codes.contains(&stands) {
        codes.clear();
    }
    codes.truncate(MOST);
    codes
}

/// What the towns near say, and how the region stands.
pub(super) fn line(view: &View<'_>) -> String {
    let mut names: Vec<&str> = Vec::new();
    for code in &view.near {
        names.push(region(code));
    }
    let lead = match names.len() {
        0 => return String::new(),
        1 => w::NEAR_ONE,
        _ => w::NEAR_MORE,
    };
    let end = if view.sheet.is("region", "") {
        w::NEAR_OPEN
    } else {
        w::NEAR_OTHER
    };
    cat!(lead, either(&names), end)
}

/// A button a proposal.
pub(super) fn list(view: &View<'_>, out: &mut Page<'_>) {
    out.open_class("div", "keep");
    for (at, code) in view.near.iter().enumerate() {
        let words = cat!(w::NEAR_USE, region(code));
        button(out, "region", Some(at), &words, false);
    }
    out.close();
}
