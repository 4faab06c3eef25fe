//! Names of states, provinces and countries, by their codes (ISO 3166-1 and 3166-2, from memory).

use crate::words::m;
use calc::question::region_names;

/// Codes with their names, in the order of the English names: states, then provinces, then the countries that have a
/// list of towns.
pub fn regions() -> impl Iterator<Item = (&'static str, &'static str)> {
    region_names().map(|(code, english)| (code, name(code, english)))
}

/// The name in the language in use, of a region with this name in English.
fn name(code: &str, english: &'static str) -> &'static str {
    m::region_name(code).map_or(english, |it| it.text())
}

/// The name of a region by its code, or the code itself.
pub fn region(code: &str) -> &str {
    let known = region_names().find(|(known, _)| *known == code);
    known.map_or(code, |(code, english)| name(code, english))
}

/// The name inside a sentence: `the United States`, `Wisconsin`.
pub fn in_sentence(code: &str) -> String {
    match m::region_in_sentence(code) {
        Some(word) => word.into(),
        None => match code.split_once('-') {
            // Its country has a name, and it has none of its own here.
            Some((land, _)) if region(code) == code && region(land) != land => {
                m::region_part_of(in_sentence(land)).to_string()
            }
            _ => region(code).into(),
        },
    }
}

#[cfg(test)]
mod tests {
    #[test]
    fn some_names_have_an_article_inside_a_sentence() {
        assert_eq!(super::in_sentence("US"), "the United States");
        assert_eq!(super::in_sentence("GB"), "the United Kingdom");
        assert_eq!(super::in_sentence("CA-NT"), "the Northwest Territories");
        assert_eq!(super::in_sentence("US-WI"), "Wisconsin");
        assert_eq!(super::in_sentence("DE"), "Germany");
        assert_eq!(super::in_sentence("AU-NSW"), "this part of Australia");
    }

    #[test]
    fn codes_have_names_and_unknown_ones_stay() {
        assert_eq!(super::region("US-WI"), "Wisconsin");
        assert_eq!(super::region("GB"), "United Kingdom");
        assert_eq!(super::region("XX-YY"), "XX-YY");
        assert_eq!(super::regions().count(), 51 + 13 + 10);
    }
}
