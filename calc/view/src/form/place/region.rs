//! The state or country: the field, and what is proposed from the towns near a point. Law and diseases hang on it, so it
//! is never filled in by itself: the reader takes it, or picks another.

use crate::control::{open_select, option};
use crate::form::View;
use crate::form::field::button;
use crate::page::Page;
use crate::words::phrase::either;
use crate::words::region::{region, regions};
use crate::words::{Word, m};
use calc::question::region_names;
use calc::terms::place::Place;
use calc::terms::small::sort::sort;

/// The groups of the list: a heading, and what the codes in it begin with.
const GROUPS: [(Word, &str); 3] = [
    (m::FORM_STATES, "US-"),
    (m::FORM_PROVINCES, "CA-"),
    (m::FORM_COUNTRIES, ""),
];

/// Codes and names of a group. A country whose parts are listed is not listed itself.
fn of(begin: &str) -> impl Iterator<Item = (&'static str, &'static str)> {
    regions().filter(move |(code, _)| {
        in_form(code) && code.starts_with(begin) && (begin.is_empty() != code.contains('-'))
    })
}

pub(super) fn in_form(code: &str) -> bool {
    code != "US" && code != "CA"
}

/// Codes of the countries that have a list of towns (ISO 3166-1).
pub(crate) fn country_codes() -> impl Iterator<Item = &'static str> {
    let codes = region_names().map(|(code, _)| code);
    codes.filter(|code| !code.contains('-'))
}

/// The code of the form for a region: its own, else that of its country; empty where the form has neither.
pub(crate) fn known(region: &str) -> &'static str {
    let country = region.split('-').next().unwrap_or_default();
    [region, country]
        .into_iter()
        .find_map(|code| {
            let mut codes = region_names().map(|(known, _)| known);
            codes.find(|known| *known == code && in_form(code))
        })
        .unwrap_or_default()
}

/// States and countries by name; a code that a host has set and we have no name for stays as it is.
pub(crate) fn field(view: &View<'_>, out: &mut Page<'_>) {
    let picked = view.sheet.get("region");
    open_select(out, "region", &m::FORM_REGION, &m::FORM_REGION_HINT);
    option(out, "", &m::FORM_REGION_OPEN, picked.is_empty());
    let mut known = picked.is_empty();
    for (group, begin) in GROUPS {
        out.open("optgroup");
        out.attr("label", &group);
        for (code, name) in of(begin) {
            known |= code == picked;
            option(out, code, name, code == picked);
        }
        out.close();
    }
    if !known {
        option(out, picked, picked, true);
    }
    out.close_two();
}

/// The line that tells.
pub(crate) const LINE_ID: &str = "near-a";
/// At most so many are proposed.
const MOST: usize = 3;

/// Codes of the form for the point, nearest first; none where it can't be told, or where one of them stands already.
pub(crate) fn look(view: &View<'_>) -> Vec<&'static str> {
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
    let most = (least * 2.0).max(least + constants.region_border);
    let mut codes: Vec<&'static str> = Vec::new();
    for (code, km) in near {
        let in_reach = km <= most && least <= constants.max_place_distance;
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
pub(crate) fn line(view: &View<'_>) -> String {
    let mut names: Vec<&str> = Vec::new();
    for code in &view.near {
        names.push(region(code));
    }
    let regions = either(&names);
    let near = match names.len() {
        0 => return String::new(),
        1 => m::form_near_one(regions),
        _ => m::form_near_more(regions),
    };
    let stands = if view.sheet.is("region", "") {
        m::FORM_NEAR_OPEN
    } else {
        m::FORM_NEAR_OTHER
    };
    cat!(near, " ", &stands)
}

/// A button a proposal.
pub(crate) fn list(view: &View<'_>, out: &mut Page<'_>) {
    out.open_class("div", "keep");
    for (at, code) in view.near.iter().enumerate() {
        let words = m::form_near_use(region(code));
        button(out, "region", Some(at), &words, false);
    }
    out.close();
}
