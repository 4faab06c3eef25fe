//! Oak wilt and the emerald ash borer, state by state. Known closes its months; near is a caution with "ask whether it
//! has arrived"; not known is one line. The rows stand in content/evidence/oak_wilt_regions.csv and
//! ash_borer_regions.csv; outside the United States and Canada neither is known.

use super::closed_months::{Restriction, Topic};
use crate::terms::cite::Cite;
use crate::terms::region::{country, lies_in};
use crate::terms::words::words;
use chrono::NaiveDate;

words! {
    /// What is known of a disease or pest in a region.
    pub enum DiseaseStatus {
        /// It is there.
        Known,
        /// It is in a region beside it, or the state asks people to look out for it.
        Near,
        /// Nobody has found it there.
        NotKnown,
        /// No state or province was said: it is taken to be there.
        Assumed,
    }
}

/// A disease or pest in one state or province.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DiseaseRegion {
    /// ISO 3166-2 code.
    pub code: &'static str,
    /// Which disease or pest.
    pub topic: Topic,
    /// Whether it is there.
    pub status: DiseaseStatus,
    /// Who decides there; never a company.
    pub authority: &'static str,
    /// Its months, where it has any: closed where it is known, told where it is near.
    pub months: Option<Restriction>,
    /// What the status rests on.
    pub cite: Cite,
}

/// A disease or pest where a tree stands.
#[derive(Debug, Clone, Copy)]
pub struct Disease {
    /// Whether it is there.
    pub status: DiseaseStatus,
    /// The row of the state or province; none where no state was said, and in countries that don't have it.
    pub region: Option<&'static DiseaseRegion>,
    /// Its months: the state's, or the cautious ones where no state was said.
    pub months: Option<&'static Restriction>,
}

impl Disease {
    /// Whether its months close a day: only where it is known, or taken to be there.
    #[must_use]
    pub fn closed(&self, day: NaiveDate) -> bool {
        matches!(self.status, DiseaseStatus::Known | DiseaseStatus::Assumed) && self.covers(day)
    }

    /// Whether a day lies in its months and it is near: nothing is closed, and it is asked whether it has arrived.
    #[must_use]
    pub fn near(&self, day: NaiveDate) -> bool {
        self.status == DiseaseStatus::Near && self.covers(day)
    }

    fn covers(&self, day: NaiveDate) -> bool {
        self.months.is_some_and(|months| months.covers(day))
    }

    /// Who decides, where a row says so.
    #[must_use]
    pub fn authority(&self) -> &'static str {
        self.region.map_or("", |region| region.authority)
    }
}

/// What is known of a disease in a region. `cautious` are the months where no state or province was said.
///
/// A state or province of the table has its own row. Elsewhere in the same countries, and where nothing was said, it
/// is taken to be there; in every other country it is not known.
#[must_use]
pub fn disease(
    rows: &'static [DiseaseRegion],
    cautious: Option<&'static Restriction>,
    topic: Topic,
    region: Option<&str>,
) -> Disease {
    let of_topic = || rows.iter().filter(move |row| row.topic == topic);
    let own = region.and_then(|region| of_topic().find(|row| lies_in(region, row.code)));
    let elsewhere =
        region.is_some_and(|region| !of_topic().any(|row| country(row.code) == country(region)));
    let (status, months) = match own {
        Some(row) => (row.status, row.months.as_ref()),
        None if elsewhere => (DiseaseStatus::NotKnown, None),
        None => (DiseaseStatus::Assumed, cautious),
    };
    Disease {
        status,
        region: own,
        months,
    }
}
