//! What is known, as data: passed in, never global. The data crate compiles it from `content/`.

use crate::terms::cite::Cite;
use crate::terms::species::{Group, Species};
use crate::terms::words::words;
use crate::timing::restrictions::Restriction;
use serde::Serialize;

/// Everything that the models read.
#[derive(Debug)]
pub struct Reference {
    /// Species, sorted by scientific name; unknown ones and palms last.
    pub species: &'static [Species],
    /// The table of nine methods, in order.
    pub method_rules: &'static [MethodRule],
    /// Cautions, in the order of the page.
    pub cautions: &'static [Caution],
    /// Share dead by season, by class and size.
    pub outlook: &'static [OutlookRow],
    /// Rows of single species that override them.
    pub outlook_species: &'static [OutlookOverride],
    /// Animals that may use the snag.
    pub cavity_users: &'static [CavityUser],
    /// Snags an acre that guidelines ask for.
    pub snag_guides: &'static [SnagGuide],
    /// Minutes of other methods, as printed.
    pub method_minutes: &'static [MethodMinutes],
    /// Months that law or biology names.
    pub restrictions: &'static [Restriction],
    /// Where diseases and pests are known at all.
    pub disease_regions: &'static [crate::timing::restrictions::DiseaseRegion],
    /// Short labels of the sources, sorted by id.
    pub sources: &'static [Source],
    /// The constants that are our own or published and tunable.
    pub constants: &'static Constants,
    /// Version of the tables.
    pub data_version: &'static str,
}

impl Reference {
    /// The label of a source.
    #[must_use]
    pub fn source(&self, id: &str) -> Option<&'static Source> {
        self.sources
            .binary_search_by(|source| source.id.cmp(id))
            .ok()
            .map(|at| &self.sources[at])
    }
}

/// A source: who and when. The whole entry stands on the sources page.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Source {
    /// Its id.
    pub id: &'static str,
    /// Author or body, year.
    pub label: &'static str,
}

/// Nine cells of one row of the method table.
#[derive(Clone, Copy, Debug)]
pub struct MethodRule {
    /// Name of the row; also the reason that is kept.
    pub id: &'static str,
    /// Its condition.
    pub condition: crate::model::method::Condition,
    /// What the row does to each method, in the order of [`crate::terms::method::Method::ALL`].
    pub cells: [crate::terms::method::Cell; 9],
    /// What it rests on.
    pub cites: &'static [Cite],
}

words! {
    /// When a caution speaks.
    pub enum When {
        /// It stops the work.
        Stop,
        /// Before the start.
        Before,
        /// While working.
        Work,
        /// Afterwards.
        After,
        /// Law and permission.
        Law,
    }
}

/// A caution as written in content.
#[derive(Clone, Copy, Debug)]
pub struct Caution {
    /// Its id.
    pub id: &'static str,
    /// What it says.
    pub text: &'static str,
    /// Who decides.
    pub defers_to: &'static str,
    /// When it speaks.
    pub when: When,
    /// Whether any input decides it; if not it goes into the merged line.
    pub decided: bool,
    /// What it rests on.
    pub cites: &'static [Cite],
}

/// Low, likely, high shares in percent; likely may be unknown.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Share {
    /// Low end.
    pub low: f64,
    /// Likely value, where the source gives one.
    pub likely: Option<f64>,
    /// High end.
    pub high: f64,
}

/// A cell of the outlook table.
#[derive(Clone, Copy, Debug)]
pub struct OutlookRow {
    /// Class of species.
    pub class: OutlookClass,
    /// Size class.
    pub size: SizeClass,
    /// Share dead by the end of seasons 1, 2 and 3.
    pub seasons: [Share; 3],
    /// Share that needs a second ring: low, high.
    pub second_ring: (f64, f64),
    /// The counts that bound it.
    pub anchors: &'static str,
    /// What of it is our own assumption.
    pub own: &'static str,
    /// The sources that its anchors name, and our own assumption where there is one.
    pub cites: &'static [Cite],
}

words! {
    /// Classes of the outlook table.
    pub enum OutlookClass {
        /// Suitable conifers.
        SuitableConifer,
        /// Suitable hardwoods.
        SuitableHardwood,
        /// Hardwoods that need follow-up.
        Followup,
        /// Red oaks.
        RedOak,
        /// White oaks.
        WhiteOak,
        /// Clones and shrubs: the ringed stem.
        CloneOrShrub,
        /// Not alone: the ringed stem; roots live on.
        NotAlone,
        /// Any ring with a bridge of live bark.
        Partial,
    }
}

words! {
    /// Size classes of the outlook table.
    pub enum SizeClass {
        /// Any size.
        All,
        /// Under 6 in (15 cm).
        Small,
        /// 6 to 10 in.
        Middle,
        /// Over 10 in (25 cm).
        Large,
        /// Under 10 in.
        UnderTen,
    }
}

/// A species' own row for one season.
#[derive(Clone, Copy, Debug)]
pub struct OutlookOverride {
    /// Scientific name; several share a row where split.
    pub scientific: &'static str,
    /// Size class.
    pub size: SizeClass,
    /// Season as printed: 1, 2, 4, `end`, `5 years`.
    pub season: &'static str,
    /// The share.
    pub share: Share,
    /// How many trees.
    pub n: &'static str,
    /// Remark.
    pub note: &'static str,
    /// Sources.
    pub cites: &'static [Cite],
}

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

/// Minutes of another method, as printed.
#[derive(Clone, Copy, Debug)]
pub struct MethodMinutes {
    /// The method.
    pub method: crate::terms::method::Method,
    /// Only trees of this group, where the source says so.
    pub group: Option<Group>,
    /// Diameters that it speaks of, inches.
    pub dbh_in: (f64, f64),
    /// Person-minutes a tree: low, high.
    pub minutes: (f64, f64),
    /// What was timed.
    pub of: &'static str,
    /// Source.
    pub cite: Cite,
}

/// Tunable constants. Each stands once, in `content/rules/constants.csv`, with its source or as our own assumption.
#[derive(Clone, Copy, Debug)]
pub struct Constants {
    /// Ring: see the model of the ring.
    pub ring: crate::model::ring::RingConstants,
    /// Heights.
    pub height: crate::model::height::HeightConstants,
    /// Reach.
    pub reach: crate::model::reach::ReachConstants,
    /// Minutes.
    pub effort: crate::model::effort::EffortConstants,
    /// The base of a stem over its dbh.
    pub base_over_dbh: f64,
    /// The season.
    pub timing: crate::timing::Constants,
}
