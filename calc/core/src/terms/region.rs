//! Countries and their states by ISO 3166 code: which code holds which.

/// The country of a code: `US` of `US-WI`.
#[must_use]
pub fn country(code: &str) -> &str {
    code.split('-').next().unwrap_or(code)
}

/// Whether a region is that of the code or a part of it: `DE-BY` lies in `DE`, `AU-WA` does not lie in `US-WA`.
#[must_use]
pub fn lies_in(region: &str, code: &str) -> bool {
    region == code || (region.starts_with(code) && region.as_bytes().get(code.len()) == Some(&b'-'))
}

/// Whether a region is or lies in one of the codes.
#[must_use]
pub fn lies_in_any(region: &str, codes: &[&str]) -> bool {
    codes.iter().any(|code| lies_in(region, code))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_code_holds_itself_and_its_parts_and_nothing_else() {
        assert!(lies_in("DE-BY", "DE") && lies_in("US-WI", "US-WI"));
        assert!(!lies_in("AU-WA", "US-WA") && !lies_in("US", "US-WI") && !lies_in("DEX", "DE"));
        assert_eq!((country("US-WI"), country("GB")), ("US", "GB"));
    }
}
