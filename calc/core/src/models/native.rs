//! Is the species native where the tree stands? By full region code: a state of one country is not one of another.

use crate::terms::region::{country, lies_in, lies_in_any};
use crate::terms::species::NativeRange;
use crate::terms::words::words;

words! {
    /// Whether a species is native where a tree stands.
    pub enum Native {
        /// It is: make sure what it is, and ask why it must go.
        Here,
        /// It is native in the country, but not in this part of it.
        Elsewhere,
        /// It is native in a part of the country, and which part was not said.
        InParts,
        /// It is not, in the whole country.
        NotHere,
        /// Doubtful: ask.
        Ask,
        /// No region was said, or we know nothing of that country.
        NotKnown,
    }
}

/// Whether a species of this range is native in a region (ISO 3166 code).
///
/// ```
/// # use calc::question::read;
/// # let reference = calc_data::whole();
/// let question = read(reference, &examples::named("do")).expect("a good question");
/// use calc::models::native::{Native, native};
/// assert_eq!(native(&question.tree.species.native, Some("US-MA")), Native::NotHere);
/// ```
#[must_use]
pub fn native(range: &NativeRange, region: Option<&str>) -> Native {
    let Some(region) = region else {
        return Native::NotKnown;
    };
    if lies_in_any(region, range.codes) {
        return Native::Here;
    }
    if range.codes.iter().any(|code| lies_in(code, region)) {
        return Native::InParts;
    }
    let land = country(region);
    if range.not_in.contains(&land) {
        Native::NotHere
    } else if range.doubtful.contains(&land) {
        Native::Ask
    } else if range.codes.iter().any(|code| country(code) == land) {
        Native::Elsewhere
    } else {
        Native::NotKnown
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_state_is_not_the_state_of_another_country() {
        let fir = NativeRange {
            codes: &["US-WA", "US-OR"],
            not_in: &["AU"],
            doubtful: &["IE"],
        };
        for (region, wanted) in [
            (Some("US-WA"), Native::Here),
            (Some("AU-WA"), Native::NotHere),
            (Some("US-WI"), Native::Elsewhere),
            (Some("US"), Native::InParts),
            (Some("IE"), Native::Ask),
            (Some("MX"), Native::NotKnown),
            (None, Native::NotKnown),
        ] {
            assert_eq!(native(&fir, region), wanted, "{region:?}");
        }
    }
}
