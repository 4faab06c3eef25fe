//! States, provinces and countries by name: what is typed, beside the codes (ISO 3166-1 and 3166-2; names from memory).

/// Codes with their names, in the order of the names: states, then provinces, then the countries that have a list of
/// towns.
#[must_use = "an iterator does nothing by itself"]
pub fn region_names() -> impl Iterator<Item = (&'static str, &'static str)> {
    NAMES.split('|').filter_map(|row| row.split_once('='))
}

/// The code of a name, whatever its capitals.
#[must_use]
pub fn region_code(name: &str) -> Option<&'static str> {
    let at = region_names().find(|(_, known)| known.eq_ignore_ascii_case(name));
    at.map(|(code, _)| code)
}

/// Whether a code of a state or province can be one: of the United States and Canada all are known, of other countries
/// none is listed here.
#[must_use]
pub(super) fn may_be_part(country: &str, part: &str) -> bool {
    let code = |known: &str| known.split_once('-') == Some((country, part));
    match country {
        "US" if US_OUTLYING.contains(&part) => true,
        "US" | "CA" => region_names().any(|(known, _)| code(known)),
        _ => true,
    }
}

/// The outlying areas that have a code of the United States too (ISO 3166-2:US; from memory).
const US_OUTLYING: [&str; 6] = ["AS", "GU", "MP", "PR", "UM", "VI"];

/// One string: a table of pairs would cost a relocation each.
const NAMES: &str = "US-AL=Alabama|US-AK=Alaska|US-AZ=Arizona|US-AR=Arkansas|US-CA=California|\
US-CO=Colorado|US-CT=Connecticut|US-DE=Delaware|US-DC=District of Columbia|US-FL=Florida|US-GA=Georgia|\
US-HI=Hawaii|US-ID=Idaho|US-IL=Illinois|US-IN=Indiana|US-IA=Iowa|US-KS=Kansas|US-KY=Kentucky|\
US-LA=Louisiana|US-ME=Maine|US-MD=Maryland|US-MA=Massachusetts|US-MI=Michigan|US-MN=Minnesota|\
US-MS=Mississippi|US-MO=Missouri|US-MT=Montana|US-NE=Nebraska|US-NV=Nevada|US-NH=New Hampshire|\
US-NJ=New Jersey|US-NM=New Mexico|US-NY=New York|US-NC=North Carolina|US-ND=North Dakota|US-OH=Ohio|\
US-OK=Oklahoma|US-OR=Oregon|US-PA=Pennsylvania|US-RI=Rhode Island|US-SC=South Carolina|\
US-SD=South Dakota|US-TN=Tennessee|US-TX=Texas|US-UT=Utah|US-VT=Vermont|US-VA=Virginia|\
US-WA=Washington|US-WV=West Virginia|US-WI=Wisconsin|US-WY=Wyoming|CA-AB=Alberta|\
CA-BC=British Columbia|CA-MB=Manitoba|CA-NB=New Brunswick|CA-NL=Newfoundland and Labrador|\
CA-NT=Northwest Territories|CA-NS=Nova Scotia|CA-NU=Nunavut|CA-ON=Ontario|CA-PE=Prince Edward Island|\
CA-QC=Quebec|CA-SK=Saskatchewan|CA-YT=Yukon|AU=Australia|AT=Austria|CA=Canada|FR=France|DE=Germany|\
IE=Ireland|NZ=New Zealand|CH=Switzerland|GB=United Kingdom|US=United States";

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_part_of_a_country_whose_parts_are_listed_is_one_of_them() {
        for (country, part, may) in [
            ("US", "MA", true),
            ("US", "PR", true),
            ("US", "ZZ", false),
            ("CA", "ON", true),
            ("CA", "MA", false),
            ("FR", "75", true),
        ] {
            assert_eq!(may_be_part(country, part), may, "{country}-{part}");
        }
    }

    #[test]
    fn a_name_has_one_code_and_no_name_is_a_code() {
        assert_eq!(region_code("wisconsin"), Some("US-WI"));
        assert_eq!(region_code("New Zealand"), Some("NZ"));
        assert_eq!(region_code("Atlantis"), None);
        for (code, name) in region_names() {
            assert_eq!(
                region_code(name),
                Some(code),
                "two regions are called {name}"
            );
        }
    }
}
