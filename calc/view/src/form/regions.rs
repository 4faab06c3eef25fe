//! States and countries as the form groups them.

use super::{View, words as w};
use crate::control::{open_select, option};
use crate::page::Page;
use crate::words::region::regions;

/// The groups of the list: a heading, and what the codes in it begin with.
const GROUPS: [(&str, &str); 3] = [
    (w::STATES, "US-"),
    (w::PROVINCES, "CA-"),
    (w::COUNTRIES, ""),
];

/// Codes and names of a group. A country whose parts are listed is not listed itself.
fn of(begin: &str) -> impl Iterator<Item = (&'static str, &'static str)> {
    regions().filter(move |(code, _)| {
        in_form(code) && code.starts_with(begin) && (begin.is_empty() != code.contains('-'))
    })
}

fn in_form(code: &str) -> bool {
    code != "US" && code != "CA"
}

/// Countries that have a list of towns (ISO 3166-1).
pub(super) fn countries() -> impl Iterator<Item = (&'static str, &'static str)> {
    regions().filter(|(code, _)| !code.contains('-'))
}

/// The code of the form for a region: its own, else that of its country; empty where the form has neither.
pub(super) fn known(region: &str) -> &'static str {
    let country = region.split('-').next().unwrap_or_default();
    [region, country]
        .into_iter()
        .find_map(|code| regions().find(|(other, _)| *other == code && in_form(code)))
        .map_or("", |(code, _)| code)
}

/// States and countries by name; a code that a host has set and we have no name for stays as it is.
pub(super) fn field(view: &View<'_>, out: &mut Page<'_>) {
    let picked = view.sheet.get("region");
    open_select(out, "region", w::REGION, w::REGION_HINT);
    option(out, "", w::REGION_OPEN, picked.is_empty());
    let mut known = picked.is_empty();
    for (group, begin) in GROUPS {
        out.open("optgroup");
        out.attr("label", group);
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
