//! How wide the ring of bark must be.

use crate::terms::cite::{Cite, cite};
use crate::terms::constants::constants;
use crate::terms::source;
use crate::terms::species::{Group, Suitability, Trait};
use crate::terms::tree::Tree;
use crate::terms::tree::{Stem, Vigour};
use crate::terms::words::words;
use serde::Serialize;

constants! {
    /// Constants of the ring; content/rules/constants.csv says where each comes from.
    pub struct RingConstants {
        /// Least width for any tree, mm.
        pub least_mm: f64,
        /// Upper width, mm.
        pub most_mm: f64,
        /// Closure of both edges together in a season, mm, of a tree that grows slowly.
        pub closure_slow_mm: f64,
        /// The same of one that grows as most do.
        pub closure_ordinary_mm: f64,
        /// The same of one that grows fast.
        pub closure_fast_mm: f64,
        /// Factor over closure of small wounds.
        pub closure_factor: f64,
        /// Seasons that conifers and red oaks may stay alive.
        pub seasons_short: f64,
        /// Seasons that others may.
        pub seasons_long: f64,
        /// Seasons more over the large size, unless suitable.
        pub seasons_large: f64,
        /// The large size, mm.
        pub large_mm: f64,
        /// Seasons more when one stem is spared.
        pub seasons_spared: f64,
        /// Least share of the diameter.
        pub least_share: f64,
    }
}

/// The two widths of a stem.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Ring {
    /// At least, mm.
    #[serde(serialize_with = "crate::terms::lengths::mm")]
    pub at_least_mm: f64,
    /// Better, mm.
    #[serde(serialize_with = "crate::terms::lengths::mm")]
    pub better_mm: f64,
    /// What decided the better width.
    pub decided_by: WidthRule,
    /// Bark taken off at the better width, square millimetres.
    pub area_mm2: f64,
    /// What it rests on.
    pub because: Vec<Cite>,
}

words! {
    /// Which of the widths won.
    pub enum WidthRule {
        /// The least width.
        Least,
        /// To outlast callus.
        OutlastsCallus,
        /// Half the diameter.
        HalfDiameter,
        /// The whole diameter, for a species that bridges.
        WholeDiameter,
        /// The upper width.
        Most,
    }
}

/// Width of the ring on one stem. `None` for a dead stem or one without a bark ring: there is nothing to cut.
///
/// better = min(most, max(at least, F r n, D/2, D where the species bridges)).
///
/// ```
/// # use calc::question::read;
/// # let reference = calc_data::whole();
/// let question = read(reference, &examples::named("do")).expect("a good question");
/// use calc::models::ring::width;
/// let stem = question.tree.heading();
/// let ring = width(&reference.constants.ring, &question.tree, stem, 12.0).expect("there is bark");
/// assert_eq!(ring.at_least_mm.round(), 150.0);
/// ```
#[must_use]
pub fn width(constants: &RingConstants, tree: &Tree, stem: &Stem, bark_mm: f64) -> Option<Ring> {
    let species = tree.species;
    if species.suitability == Suitability::NotApplicable || stem.live_share <= 0.0 {
        return None;
    }
    let dbh = stem.dbh.mm();
    let at_least = constants
        .least_mm
        .max(species.ring_minimum_mm.unwrap_or(0.0));
    let closure = match tree.vigour {
        Vigour::Slow => constants.closure_slow_mm,
        Vigour::Ordinary => constants.closure_ordinary_mm,
        Vigour::Fast => constants.closure_fast_mm,
    };
    let quick = species.group == Group::Conifer || species.has(Trait::RedOak);
    let mut seasons = if quick {
        constants.seasons_short
    } else {
        constants.seasons_long
    };
    if dbh > constants.large_mm && species.suitability != Suitability::Suitable {
        seasons += constants.seasons_large;
    }
    if tree.spared().is_some() {
        seasons += constants.seasons_spared;
    }
    let outlasts = constants.closure_factor * closure * seasons;
    let mut better = (at_least, WidthRule::Least);
    let mut widths = vec![
        (outlasts, WidthRule::OutlastsCallus),
        (dbh * constants.least_share, WidthRule::HalfDiameter),
    ];
    if species.has(Trait::Bridges) {
        widths.push((dbh, WidthRule::WholeDiameter));
    }
    for width in widths {
        if width.0 > better.0 {
            better = width;
        }
    }
    if better.0 > constants.most_mm {
        better = (constants.most_mm, WidthRule::Most);
    }
    let mut because = vec![
        Cite::practice("a ring of at least 6 in"),
        cite(source::NATNOE, "vertical extent"),
        cite(source::TPE2016, "span"),
    ];
    because.push(match better.1 {
        WidthRule::Least | WidthRule::Most => cite(source::NATNOE, "vertical extent"),
        WidthRule::OutlastsCallus => cite(source::S35, "abstract"),
        WidthRule::HalfDiameter | WidthRule::WholeDiameter => cite(source::KANE2019, "abstract"),
    });
    if better.1 == WidthRule::OutlastsCallus {
        because.push(Cite::own("ring: seasons and factor over closure"));
    }
    if species.ring_minimum_mm.is_some() {
        because.push(cite(source::NRCSCA, "coastal zone"));
    }
    because.dedup();
    Some(Ring {
        at_least_mm: at_least,
        better_mm: better.0,
        decided_by: better.1,
        area_mm2: super::bark::strip_area_mm2(dbh, bark_mm, better.0, stem.live_share),
        because,
    })
}
