//! What the snag leaves: who may use it, how long it may stand.

use crate::terms::cite::cite;
use crate::terms::cite::{Cite, Grade};
use crate::terms::constants::constants;
use crate::terms::quantity::{M_PER_FT, inches};
use crate::terms::source;
use crate::terms::species::{Durability, Species};
use serde::Serialize;

/// An animal that may use a cavity.
#[derive(Clone, Copy, Debug)]
pub struct CavityUser {
    /// Common name.
    pub name: &'static str,
    /// Region codes (states, or a country).
    pub regions: &'static [&'static str],
    /// Smallest dbh, inches.
    pub min_dbh_in: Option<f64>,
    /// Smallest height, feet.
    pub min_height_ft: Option<f64>,
    /// Remark.
    pub note: &'static str,
    /// Source.
    pub cite: Cite,
}

/// Snags an acre that a guideline asks for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct SnagGuide {
    /// Whose it is.
    pub guidance: &'static str,
    /// How many an acre, as printed.
    pub per_acre: &'static str,
    /// Region codes (states, or a country).
    pub regions: &'static [&'static str],
    /// Remark.
    pub note: &'static str,
    /// Source.
    pub because: Cite,
}

/// Habitat of a snag.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Habitat {
    /// Under the smallest size for cavities: feeding wood only.
    pub feeding_wood_only: bool,
    /// Animals that may use it at this size and height in this region.
    pub users: Vec<User>,
    /// Whether the region has rows at all.
    pub region_known: bool,
    /// Half-life of standing, years after death: low, likely, high.
    pub half_life_years: (f64, f64, f64),
    /// Durability class used, after the caps for small stems.
    pub durability: Durability,
    /// Snags an acre that guidelines ask for: those of the region first, then the others.
    pub guides: Vec<&'static SnagGuide>,
    /// How many of the guides are of the region.
    pub guides_here: usize,
    /// What it rests on.
    pub because: Vec<Cite>,
}

/// An animal.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct User {
    /// Common name.
    pub name: &'static str,
    /// Remark.
    pub note: &'static str,
    /// Source.
    pub because: Cite,
}

constants! {
    /// Constants of it; content/rules/constants.csv says where each comes from.
    pub struct HabitatConstants {
        /// Half-life of standing after death, years, of the durable.
        pub half_life_a: f64,
        /// Of the moderately durable.
        pub half_life_b: f64,
        /// Of the others, and of the unknown.
        pub half_life_c: f64,
        /// Of what decays fast.
        pub half_life_d: f64,
        /// Under this diameter, inches, a snag is of the class that decays fast.
        pub fast_under_in: f64,
        /// Under this one it is not durable, whatever its wood.
        pub not_durable_under_in: f64,
        /// Low end of a half-life over the likely one.
        pub range_low: f64,
        /// High end.
        pub range_high: f64,
        /// Shape of the curve of standing.
        pub shape: f64,
    }
}

impl HabitatConstants {
    /// The half-life of a class, years after death.
    #[must_use]
    pub fn half_life(&self, class: Durability) -> f64 {
        match class {
            Durability::A => self.half_life_a,
            Durability::B => self.half_life_b,
            Durability::C => self.half_life_c,
            Durability::D => self.half_life_d,
        }
    }

    /// The class of a snag of this diameter: thin ones decay faster.
    fn capped(&self, class: Durability, inches: f64) -> Durability {
        match class {
            _ if inches < self.fast_under_in => Durability::D,
            Durability::A | Durability::B if inches < self.not_durable_under_in => Durability::C,
            class => class,
        }
    }

    /// Share still standing `years` after death, 0 to 1, for a half-life: `exp(-(t/b)^shape)` with b such that half
    /// stand at the half-life.
    #[must_use]
    pub fn standing(&self, half_life: f64, years: f64) -> f64 {
        let to_half = libm::pow(core::f64::consts::LN_2, 1.0 / self.shape);
        libm::exp(-libm::pow(years * to_half / half_life, self.shape))
    }
}

/// A tree that is to stand dead, and where it stands.
pub struct Snag<'a> {
    /// Its species.
    pub species: &'a Species,
    /// Its diameter at breast height, mm.
    pub dbh_mm: f64,
    /// Its likely height, metres; none where nobody knows.
    pub height_m: Option<f64>,
    /// Code of its country or state.
    pub region: Option<&'a str>,
}

/// What a snag of this size and height leaves. Under `cavities_in` inches it is feeding wood alone.
///
/// ```
/// # use calc::question::read;
/// # let reference = calc_data::whole();
/// let question = read(reference, &examples::named("do")).expect("a good question");
/// use calc::models::habitat::{Snag, judge};
/// let species = question.tree.species;
/// let snag = Snag { species, dbh_mm: 368.0, height_m: Some(15.0), region: Some("US-MA") };
/// let (users, guides) = (reference.cavity_users, reference.snag_guides);
/// let habitat = judge(&reference.constants.habitat, users, guides, 6.0, &snag);
/// assert_eq!(habitat.half_life_years, (1.5, 3.0, 6.0));
/// ```
#[must_use]
pub fn judge(
    constants: &HabitatConstants,
    cavity_users: &'static [CavityUser],
    snag_guides: &'static [SnagGuide],
    cavities_in: f64,
    snag: &Snag<'_>,
) -> Habitat {
    let inches = inches(snag.dbh_mm);
    let feet = snag.height_m.map(|m| m / M_PER_FT);
    let region = snag.region;
    let country = region.map(|code| code.split('-').next().unwrap_or(code));
    let here = |regions: &[&str]| {
        region.is_some_and(|code| regions.contains(&code))
            || country.is_some_and(|code| regions.contains(&code))
    };
    let mut users: Vec<User> = Vec::new();
    for row in cavity_users {
        let fits = row.min_dbh_in.is_some_and(|least| inches >= least)
            && row
                .min_height_ft
                .is_none_or(|least| feet.is_none_or(|feet| feet >= least));
        let known = row.cite.grade != Grade::Memory;
        if known && fits && here(row.regions) && !users.iter().any(|user| user.name == row.name) {
            users.push(User {
                name: row.name,
                note: row.note,
                because: row.cite,
            });
        }
    }
    // Two passes, not a sort.
    let of = |own: bool| {
        let guides = snag_guides.iter();
        guides.filter(move |guide| here(guide.regions) == own)
    };
    let guides_here = of(true).count();
    let durability = constants.capped(snag.species.durability, inches);
    let half = constants.half_life(durability);
    Habitat {
        feeding_wood_only: inches < cavities_in,
        users,
        region_known: cavity_users.iter().any(|row| here(row.regions)),
        half_life_years: (
            half * constants.range_low,
            half,
            half * constants.range_high,
        ),
        durability,
        guides: of(true).chain(of(false)).collect(),
        guides_here,
        because: vec![
            cite(source::A01, "Table 1"),
            Cite::own("half-lives by durability class"),
        ],
    }
}
