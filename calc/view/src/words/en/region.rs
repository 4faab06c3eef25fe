//! Names of states and provinces, where one is named in an answer.

/// The name of a region by its ISO 3166-2 code, or the code itself.
#[must_use]
pub fn region(code: &str) -> &str {
    let at = NAMES
        .split('|')
        .find_map(|row| row.split_once('=').filter(|(key, _)| *key == code));
    at.map_or(code, |(_, name)| name)
}

/// One string: a table of pairs would cost a relocation each.
const NAMES: &str = "US-AL=Alabama|US-AK=Alaska|US-AZ=Arizona|US-AR=Arkansas|US-CA=California|\
US-CO=Colorado|US-CT=Connecticut|US-DE=Delaware|US-DC=Washington, D.C.|US-FL=Florida|US-GA=Georgia|\
US-HI=Hawaii|US-ID=Idaho|US-IL=Illinois|US-IN=Indiana|US-IA=Iowa|US-KS=Kansas|US-KY=Kentucky|\
US-LA=Louisiana|US-ME=Maine|US-MD=Maryland|US-MA=Massachusetts|US-MI=Michigan|US-MN=Minnesota|\
US-MS=Mississippi|US-MO=Missouri|US-MT=Montana|US-NE=Nebraska|US-NV=Nevada|US-NH=New Hampshire|\
US-NJ=New Jersey|US-NM=New Mexico|US-NY=New York|US-NC=North Carolina|US-ND=North Dakota|US-OH=Ohio|\
US-OK=Oklahoma|US-OR=Oregon|US-PA=Pennsylvania|US-RI=Rhode Island|US-SC=South Carolina|\
US-SD=South Dakota|US-TN=Tennessee|US-TX=Texas|US-UT=Utah|US-VT=Vermont|US-VA=Virginia|\
US-WA=Washington|US-WV=West Virginia|US-WI=Wisconsin|US-WY=Wyoming|CA-AB=Alberta|\
CA-BC=British Columbia|CA-MB=Manitoba|CA-NB=New Brunswick|CA-NL=Newfoundland and Labrador|\
CA-NS=Nova Scotia|CA-NT=Northwest Territories|CA-NU=Nunavut|CA-ON=Ontario|CA-PE=Prince Edward Island|\
CA-QC=Quebec|CA-SK=Saskatchewan|CA-YT=Yukon|US=United States|CA=Canada|GB=United Kingdom|IE=Ireland|\
DE=Germany|AT=Austria|CH=Switzerland|FR=France|NZ=New Zealand|AU=Australia";

#[cfg(test)]
mod tests {
    #[test]
    fn codes_have_names_and_unknown_ones_stay() {
        assert_eq!(super::region("US-WI"), "Wisconsin");
        assert_eq!(super::region("GB"), "United Kingdom");
        assert_eq!(super::region("XX-YY"), "XX-YY");
    }
}
