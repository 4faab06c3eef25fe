//! Sources: a number each, by which an answer counts and compares them, and a line of the table of sources.

use super::cite::Grade;
use serde::{Serialize, Serializer};

/// A source by its number: its place in `Reference::sources`, or behind its end in the file of what differs by country.
/// Its id goes with it only to be printed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct SourceId {
    number: u16,
    id: &'static str,
}

impl SourceId {
    /// The source whose line of the table has this number.
    #[must_use]
    pub const fn new(number: u16, id: &'static str) -> Self {
        Self { number, id }
    }

    /// Its place in the table.
    #[must_use]
    pub fn number(self) -> usize {
        usize::from(self.number)
    }

    /// Its id, for what is printed: a line of the sources page.
    #[must_use]
    pub const fn text(self) -> &'static str {
        self.id
    }
}

impl Serialize for SourceId {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(self.id)
    }
}

/// A source that something rests on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct SourceLine {
    /// Its id: a line of the sources page.
    #[cfg_attr(
        feature = "schema",
        schemars(with = "&'static str"),
        ts(type = "string")
    )]
    pub id: SourceId,
    /// Who and when.
    pub label: &'static str,
}

/// Declares the sources that code cites itself, each with the best grade of what the code takes from it. The table
/// begins with them, in this order; the build stops at one that `sources.csv` does not have, or not for such a value.
macro_rules! cited_in_code {
    ($($name:ident = $id:literal $grade:ident),+ $(,)?) => {
        #[allow(clippy::upper_case_acronyms, reason = "ids are written so")]
        enum Number { $($name),+ }
        $(
            #[doc = concat!("The source `", $id, "`.")]
            pub const $name: SourceId = SourceId::new(Number::$name as u16, $id);
        )+
        /// All sources that code cites, in the order of their numbers.
        pub const CITED_IN_CODE: &[(SourceId, Grade)] = &[$(($name, Grade::$grade)),+];
    };
}

cited_in_code! {
    // What needs no line in sources.csv: our own assumptions, the trade, what the asker told, the group's settings.
    OWN = "own" Assumption,
    PRACTICE = "practice" Practice,
    YOU = "you" Measured,
    GROUP = "group" Practice,
    A01 = "A01" Published,
    AUSDEA1915 = "AUSDEA1915" Published,
    BEECH = "BEECH" Published,
    C01 = "C01" Published,
    C03 = "C03" Published,
    C05 = "C05" Published,
    CANNON1982 = "CANNON1982" Published,
    D02 = "D02" Published,
    DOW2022 = "DOW2022" Published,
    FOWLER = "FOWLER" Published,
    HOLLEY2005 = "HOLLEY2005" Published,
    KANE2019 = "KANE2019" Published,
    LOGPEEL2014 = "LOGPEEL2014" Secondary,
    M01 = "M01" Published,
    NATNOE = "NATNOE" Published,
    NRCSCA = "NRCSCA" Published,
    PEREZ2001 = "PEREZ2001" Published,
    REQUE2007 = "REQUE2007" Published,
    S02 = "S02" Published,
    S30 = "S30" Published,
    S35 = "S35" Published,
    TPE2016 = "TPE2016" Published,
    WORLDCLIM14 = "WORLDCLIM14" Published,
}
