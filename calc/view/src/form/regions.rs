//! States and countries as the form groups them.

use super::words as w;
use crate::words::regions;

/// The groups of the list: a heading, and what the codes in it begin with.
pub(super) const GROUPS: [(&str, &str); 3] = [
    (w::STATES, "US-"),
    (w::PROVINCES, "CA-"),
    (w::COUNTRIES, ""),
];

/// Codes and names of a group. A country whose parts are listed is not listed itself.
pub(super) fn of(begin: &str) -> impl Iterator<Item = (&'static str, &'static str)> {
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
