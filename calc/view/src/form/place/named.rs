//! The place as it is written in one field: a state, a province, a country, or a town with one of these behind it.

use crate::words::region::regions;
use calc::question::region_names;

/// A name and what can be taken for it: small letters, without marks.
fn plain(text: &str) -> String {
    crate::form::species::plain(text).trim().to_owned()
}

/// Countries whose states stand in the form by their two letters too.
const SHORT: [&str; 2] = ["US-", "CA-"];

/// What people call a country that goes by another name here.
const ALSO: [(&str, &str); 6] = [
    ("england", "GB"),
    ("scotland", "GB"),
    ("wales", "GB"),
    ("britain", "GB"),
    ("usa", "US"),
    ("america", "US"),
];

/// Whether a text is the whole name of a region, in the language of the page or in English, or its two letters: asked of
/// a region's code and name.
fn names(wanted: &str) -> impl Fn(&str, &str) -> bool {
    let english = region_names().find(|(_, english)| plain(english) == wanted);
    let english = english.map_or("", |(code, _)| code);
    move |code, name| {
        let short = SHORT.iter().find_map(|land| code.strip_prefix(land));
        code == english
            || short.is_some_and(|short| short.eq_ignore_ascii_case(wanted))
            || plain(name) == wanted
    }
}

/// The code of the region that a text names: all of it, or what stands behind its last comma. Only those of the form.
#[must_use]
pub fn region_of(text: &str) -> Option<&'static str> {
    let whole = plain(text);
    let behind = text.rsplit_once(',').map(|(_, behind)| plain(behind));
    [Some(whole), behind]
        .into_iter()
        .flatten()
        .filter(|wanted| !wanted.is_empty())
        .find_map(|wanted| {
            let named = names(&wanted);
            let fits =
                |(code, name): &(&str, &str)| super::region::in_form(code) && named(code, name);
            let also = || ALSO.iter().find(|(name, _)| *name == wanted);
            regions()
                .find(fits)
                .map(|(code, _)| code)
                .or_else(|| also().map(|(_, code)| *code))
        })
}

/// The text in front of the last comma, where a region stands behind it; else all of it: what is looked up as a town.
pub(crate) fn town_of(text: &str) -> &str {
    match text.rsplit_once(',') {
        Some((town, behind)) if region_of(behind).is_some() => town.trim(),
        _ => text.trim(),
    }
}

/// Regions of the form of which a word begins so, the one that is named whole first.
pub(crate) fn like(text: &str) -> Vec<(&'static str, &'static str)> {
    let wanted = plain(text);
    let mut found: Vec<(&str, &str)> = Vec::new();
    if wanted.len() < 2 {
        return found;
    }
    let spaced = cat!(" ", &wanted);
    let named = names(&wanted);
    for (code, name) in regions().filter(|(code, _)| super::region::in_form(code)) {
        let plain = plain(name);
        if named(code, name) {
            found.insert(0, (code, name));
        } else if plain.starts_with(&*wanted) || calc::terms::small::find::holds(&plain, &spaced) {
            found.push((code, name));
        }
    }
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_region_is_read_from_its_name_its_letters_or_behind_a_town() {
        for (text, code) in [
            ("Wisconsin", "US-WI"),
            (" new york ", "US-NY"),
            ("NY", "US-NY"),
            ("Sample Falls, NY", "US-NY"),
            ("Madison, Wisconsin", "US-WI"),
            ("Ontario", "CA-ON"),
            ("Germany", "DE"),
            ("Quebec", "CA-QC"),
            ("England", "GB"),
            ("USA", "US"),
        ] {
            assert_eq!(region_of(text), Some(code), "{text}");
        }
        for text in ["", "wisc", "Sample Falls", "Canada", "XX"] {
            assert_eq!(region_of(text), None, "{text}");
        }
        assert_eq!(town_of("Sample Falls, NY"), "Sample Falls");
        assert_eq!(town_of("Bath"), "Bath");
    }

    #[test]
    fn regions_are_found_while_they_are_typed() {
        let codes = |text: &str| {
            like(text)
                .into_iter()
                .map(|(code, _)| code)
                .collect::<Vec<_>>()
        };
        assert_eq!(codes("wis"), ["US-WI"]);
        assert!(codes("new").contains(&"US-NH") && codes("new").contains(&"CA-NB"));
        assert_eq!(codes("york"), ["US-NY"]);
        assert!(codes("w").is_empty());
    }
}
