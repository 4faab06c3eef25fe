//! Names of states, provinces and countries, by their codes (ISO 3166-1 and 3166-2, from memory).

/// Codes with their names, in the order of the names: states, then provinces, then the countries that have a list of
/// towns.
pub use calc::question::region_names as regions;

/// The name of a region by its code, or the code itself.
pub fn region(code: &str) -> &str {
    let at = regions().find(|(key, _)| *key == code);
    at.map_or(code, |(_, name)| name)
}

/// The name inside a sentence: `the United States`, `Wisconsin`.
pub fn in_sentence(code: &str) -> String {
    let the = matches!(
        code,
        "US" | "GB" | "NL" | "PH" | "AE" | "BS" | "US-DC" | "CA-NT"
    );
    cat!(if the { "the " } else { "" }, region(code))
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
    }

    #[test]
    fn codes_have_names_and_unknown_ones_stay() {
        assert_eq!(super::region("US-WI"), "Wisconsin");
        assert_eq!(super::region("GB"), "United Kingdom");
        assert_eq!(super::region("XX-YY"), "XX-YY");
        assert_eq!(super::regions().count(), 51 + 13 + 10);
    }
}
