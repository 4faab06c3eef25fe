//! The season's law and biology: nesting birds, roosting bats, oak wilt and the pests that a dying tree draws.
//!
//! Months with their authority, by state or country; where a region has none of its own, or is not known, the cautious
//! default of its half of the world, marked. Nothing here is ever folded into the bark's verdict, and no day is ever
//! said to be allowed. The rows stand in content/rules/seasonal_restrictions.csv; where a disease is stands in `disease`.

use crate::terms::cite::{Cite, Grade};
use crate::terms::months::Months;
use crate::terms::place::Hemisphere;
use crate::terms::region::lies_in_any;
use crate::terms::words::words;
use chrono::{Datelike, NaiveDate};
use serde::Serialize;

words! {
    /// What the months are about.
    pub enum Topic {
        /// Nesting birds; any tree.
        Birds,
        /// Bats that roost in trees; any tree.
        Bats,
        /// Snags to be kept for bats; dead trees.
        Snags,
        /// Oak wilt; oaks.
        OakWilt,
        /// Dutch elm disease and its beetles; elms.
        Elm,
        /// Engraver beetles; pines with living pines near.
        PineBeetles,
        /// Emerald ash borer; ashes.
        AshBorer,
        /// Laurel wilt; the laurel family.
        LaurelWilt,
        /// The group's own months; any tree.
        Group,
    }
}

words! {
    /// How much of a region a row speaks for.
    pub enum Scope {
        /// The whole of each region in `codes`: the default is not needed there.
        Whole,
        /// A part of it, a project or a condition: shown beside the default.
        Part,
        /// The cautious default of the northern half of the world.
        North,
        /// The cautious default of the southern half.
        South,
    }
}

/// One row: months, who says so, how binding it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Restriction {
    /// Where, in the source's words.
    pub jurisdiction: &'static str,
    /// ISO 3166 codes that it applies to (`US` means all of it, `US-WI` one state); our own reading of `jurisdiction`.
    pub codes: &'static [&'static str],
    /// What it is about.
    pub topic: Topic,
    /// How much of the region it speaks for.
    pub scope: Scope,
    /// First month and day, counted.
    pub from_md: (u8, u8),
    /// Last month and day, counted; before `from_md` where the months run over the new year.
    pub to_md: (u8, u8),
    /// Law, advice, guidance.
    pub force: &'static str,
    /// Where it is from.
    pub cite: Cite,
}

/// A row that applies to a region.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Applied {
    /// The row.
    pub restriction: &'static Restriction,
    /// It is the cautious default: the region has no months of its own in the table, or is not known.
    pub is_default: bool,
}

/// The cautious months of a pest, each whole, those of the north: a table without a row for it has no month that is
/// free of it.
#[must_use]
pub fn cautious(restrictions: &[Restriction], topic: Topic) -> Months {
    restrictions
        .iter()
        .find(|row| row.topic == topic && row.scope == Scope::North)
        .map_or(Months::ALL, |row| Months {
            from: row.from_md.0.into(),
            to: row.to_md.0.into(),
        })
}

impl Restriction {
    /// True on a day of its months. Works over the new year; 29 February counts as the 28th.
    #[must_use]
    pub fn covers(&self, day: NaiveDate) -> bool {
        let of = |(month, day): (u8, u8)| (month, if month == 2 { day.min(28) } else { day });
        let (from, to) = (of(self.from_md), of(self.to_md));
        let day = of((day.month() as u8, day.day() as u8));
        if from <= to {
            from <= day && day <= to
        } else {
            day >= from || day <= to
        }
    }

    /// Its spans in a calendar year, both ends counted: one, or two where the months run over the new year.
    #[must_use]
    pub fn spans(&self, year: i32) -> Vec<(NaiveDate, NaiveDate)> {
        let on = |(m, d): (u8, u8)| {
            NaiveDate::from_ymd_opt(year, u32::from(m), u32::from(d)).unwrap_or_default()
        };
        let (from, to) = (on(self.from_md), on(self.to_md));
        if from <= to {
            vec![(from, to)]
        } else {
            vec![(on((1, 1)), to), (from, on((12, 31)))]
        }
    }

    /// True where the row names the region: the region itself, or a country that holds it.
    #[must_use]
    pub fn names(&self, region: &str) -> bool {
        lies_in_any(region, self.codes)
    }
}

/// The rows that apply, in the order of the table: those that name the region, and for every topic the cautious
/// default of the hemisphere where no row speaks for the whole region. A default with codes serves only these
/// countries, and regions that are not known. Rows from memory are left out: they are never shown as sourced.
#[must_use]
pub fn for_region(
    records: &'static [Restriction],
    region: Option<&str>,
    hemisphere: Hemisphere,
    wanted: &[Topic],
) -> Vec<Applied> {
    let fallback = match hemisphere {
        Hemisphere::North => Scope::North,
        Hemisphere::South => Scope::South,
    };
    let settled = |topic| {
        region.is_some_and(|r| {
            records
                .iter()
                .filter(|row| row.topic == topic && row.cite.grade != Grade::Memory)
                .any(|row| row.scope == Scope::Whole && row.names(r))
        })
    };
    records
        .iter()
        .filter(|row| wanted.contains(&row.topic) && row.cite.grade != Grade::Memory)
        .filter_map(|row| match row.scope {
            Scope::Whole | Scope::Part => region.filter(|r| row.names(r)).map(|_| Applied {
                restriction: row,
                is_default: false,
            }),
            _ if row.scope != fallback || settled(row.topic) => None,
            _ if !row.codes.is_empty() && region.is_some_and(|r| !row.names(r)) => None,
            _ => Some(Applied {
                restriction: row,
                is_default: true,
            }),
        })
        .collect()
}
