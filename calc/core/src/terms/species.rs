//! A species, with the row of each table that it uses.

use crate::terms::cite::{Cite, Grade};
use crate::terms::source::SourceId;
use crate::terms::words::words;
use serde::Serialize;

words! {
    /// Growth form, as the response table groups species.
    pub enum Group {
        /// A broadleaved tree.
        Hardwood,
        /// A conifer.
        Conifer,
        /// A shrub or small tree, often with many stems.
        Shrub,
        /// A palm, bamboo or yucca: no bark ring to cut.
        Monocot,
    }
}

words! {
    /// How strongly it sprouts from the base or suckers from the roots.
    pub enum SproutVigor {
        /// It does not.
        None,
        /// Seldom.
        Weak,
        /// Often.
        Moderate,
        /// As a rule.
        Strong,
    }
}

words! {
    /// Whether a ring alone suits the species.
    pub enum Suitability {
        /// No or few sprouts, or guidance is positive.
        Suitable,
        /// Works with checks: sprouts or bridges are to be expected.
        Followup,
        /// Clone, disease or growth form decides.
        Conditional,
        /// A ring alone leads to sprouts or suckers.
        NotAlone,
        /// No ring to cut.
        NotApplicable,
        /// The species is not known.
        Unknown,
    }
}

words! {
    /// How far a bark estimate can be trusted.
    pub enum Confidence {
        /// The species' own value, near an independent one.
        Good,
        /// The species' own value, no such check.
        Fair,
        /// A stand-in or catch-all: measure it.
        Poor,
    }
}

words! {
    /// How long the standing dead wood lasts.
    pub enum Durability {
        /// Longest.
        A,
        /// Long.
        B,
        /// Middling; also the default for the unknown.
        C,
        /// Shortest.
        D,
    }
}

words! {
    /// How the wood is built, which decides when the bark lets go and binds again.
    /// `wood_class` of gdd_thresholds.csv gives it for every species that has a budbreak sum.
    pub enum WoodClass {
        /// Ring-porous: oaks, ashes, elms, black locust.
        Ring,
        /// Diffuse-porous: maples, birches, poplars, beech.
        Diffuse,
        /// Conifers, larch included.
        Conifer,
        /// Evergreen broadleaf: there is no date model, the envelope one month longer serves.
        EvergreenBroadleaf,
        /// A broadleaf or shrub whose wood class is not known (an unknown species): the envelope serves.
        Unknown,
    }
}

/// Where a species is native, by full region code (ISO 3166).
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct NativeRange {
    /// Countries, states and provinces where it is native.
    pub codes: &'static [&'static str],
    /// Countries where it is not native anywhere.
    pub not_in: &'static [&'static str],
    /// Countries where that is doubtful.
    pub doubtful: &'static [&'static str],
}

/// Where a tree stands among those that a form names before any is typed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct AskedFor {
    /// Its place in the order, from 1; our own.
    pub rank: u8,
    /// Countries, states and provinces where it is named. A country stands for all of it where the tree is not native.
    pub codes: &'static [&'static str],
}

/// A species, with the row of each table that it uses.
#[derive(Clone, Copy, Debug)]
pub struct Species {
    /// Scientific name, or our key for an unknown one.
    pub scientific: &'static str,
    /// The common name shown.
    pub name: &'static str,
    /// All names that find it, the shown one first.
    pub names: &'static [&'static str],
    /// Plant code of the national list; empty where it has none.
    pub code: &'static str,
    /// Whether it is one of the entries for a species that the asker can't name.
    pub unknown: bool,
    /// Growth form.
    pub group: Group,
    /// Sprouts from the base.
    pub basal: SproutVigor,
    /// Suckers from the roots.
    pub suckering: SproutVigor,
    /// Whether a ring alone suits it.
    pub suitability: Suitability,
    /// How well that is known.
    pub response: Grade,
    /// Bark: inches a side for each inch of dbh; none where there is no bark to speak of.
    pub bark: Option<BarkRatio>,
    /// Height rows that may be used.
    pub heights: &'static [HeightRow],
    /// Whether it is a small tree, for which the least hazard height of tall trees does not hold.
    pub small: bool,
    /// Whether the height rows are borrowed from another species.
    pub heights_borrowed: bool,
    /// Crown rows that may be used.
    pub crowns: &'static [CrownRow],
    /// Mature height of the national list, feet.
    pub mature_height_ft: Option<f64>,
    /// Tallest urban tree measured, feet.
    pub urban_height_ft: Option<f64>,
    /// Wood class for timing; none for palms.
    pub wood: Option<WoodClass>,
    /// Degree-day sum to budbreak, degC-day over 5 degC from 1 March.
    pub budbreak_sum: Option<f64>,
    /// What that sum rests on.
    pub budbreak: Cite,
    /// Probability that a cut stem sprouts, by dbh 4, 8, 12 and 20 in, lowest and highest row.
    pub sprouting: &'static [SproutRow],
    /// Durability class of the wood.
    pub durability: Durability,
    /// Where it is native: a warning there.
    pub native: NativeRange,
    /// Native look-alikes with the one mark that tells them apart.
    pub look_alikes: &'static [LookAlike],
    /// Rows of deaths counted after a ring alone.
    pub deaths: &'static [DeathRow],
    /// What other trials said of it, in a sentence each.
    pub trials_told: &'static [TrialTold],
    /// Where it stands among those that are named first; none where it is never.
    pub asked_for: Option<AskedFor>,
    /// Marks that rules ask for.
    pub traits: &'static [Trait],
    /// Least ring width of its own, mm.
    pub ring_minimum_mm: Option<f64>,
    /// Ids of cautions that name the species.
    pub cautions: &'static [&'static str],
}

impl Species {
    /// Whether it carries a mark.
    #[must_use]
    pub fn has(&self, mark: Trait) -> bool {
        self.traits.contains(&mark)
    }
}

words! {
    /// A mark of a species that rules ask for; content/rules/species_traits.csv gives each with its source.
    pub enum Trait {
    /// Bridges over a ring.
    Bridges,
    /// An oak.
    Oak,
    /// A red oak.
    RedOak,
    /// A white oak.
    WhiteOak,
    /// A hickory.
    Hickory,
    /// An ash.
    Ash,
    /// A pine.
    Pine,
    /// An elm.
    Elm,
    /// American elm.
    AmericanElm,
    /// A cut into the wood makes it sprout.
    DeepCutResprouts,
    /// A saw ring was tried with some success.
    SawRingTried,
    /// Guidance for a ring is published though it suckers.
    RingGuidance,
    /// Tree-of-heaven: herbicide has a season of its own.
    TreeOfHeaven,
    /// Dust or bark irritates.
    Dust,
    /// Bark that bats roost under, alive too.
    BatBark,
    /// Guides say it slips longer than the model.
    GuideSaysLonger,
    }
}

/// Bark from diameter.
#[derive(Clone, Copy, Debug)]
pub struct BarkRatio {
    /// Thickness over dbh, one side.
    pub coefficient: f64,
    /// How far to trust it.
    pub confidence: Confidence,
    /// Where it is printed.
    pub cite: Cite,
}

/// The form of a height or crown curve; each is stated in the allometry notes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Form {
    /// `4.5 + exp(b1 + b2/(D+1))`, inches to feet.
    Wykoff,
    /// `4.5 + b1 exp(-b2 D^b3)`, inches to feet; linear below 3 in.
    CurtisArney,
    /// `b1 + b2 D + b3 D^2`, inches to feet (crown of forest trees).
    Quad,
    /// Polynomial, centimetres to metres.
    Polynomial,
    /// `exp(b1 + b2 ln(ln(D+1)) + g(D) b3/2)`, centimetres to metres; g by the number: sqrt D, D, D^2 for 2 to 4.
    /// For 1 it is printed as `exp(b1 + b2 ln(ln(D+1) + b3/2))`.
    LogLog(u8),
    /// `exp(b1 + b2 D + g(D) b3/2)`, likewise.
    Exp(u8),
}

impl Form {
    /// Every form that a table names.
    pub const ALL: &'static [Self] = &[
        Self::Wykoff,
        Self::CurtisArney,
        Self::Quad,
        Self::Polynomial,
        Self::LogLog(1),
        Self::LogLog(2),
        Self::LogLog(3),
        Self::LogLog(4),
        Self::Exp(1),
    ];
}

/// One curve.
#[derive(Clone, Copy, Debug)]
pub struct HeightRow {
    /// Its form.
    pub form: Form,
    /// Coefficients b1 to b5, as printed.
    pub b: [f64; 5],
    /// Smallest and largest value that it may give, metres, where the source bounds it.
    pub out: Option<(f64, f64)>,
    /// Diameter beyond which it is held, in the form's unit, where it turns down.
    pub peak: Option<f64>,
    /// Region as the source calls it.
    pub region: &'static str,
    /// Where it is printed.
    pub cite: Cite,
}

/// A crown curve has the shape of a height curve.
pub type CrownRow = HeightRow;

/// Probability of sprouting after cutting, by diameter.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct SproutRow {
    /// Variant of the growth model.
    pub variant: &'static str,
    /// Diameters at breast height, inches, and the probability at each; the thinnest first.
    pub at: [(f64, f64); 4],
}

/// A look-alike.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct LookAlike {
    /// Its common name, or empty.
    pub name: &'static str,
    /// Its scientific name.
    pub scientific: &'static str,
    /// The mark that tells them apart.
    pub mark: &'static str,
    /// Whether it is native to North America.
    pub native: bool,
}

/// What a trial said that counted something else than deaths by a ring, or more.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TrialTold {
    /// A sentence.
    pub text: &'static str,
    /// Source.
    pub source: SourceId,
}

/// A count of deaths after girdling, as printed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct DeathRow {
    /// How many trees.
    pub n: &'static str,
    /// Their diameters.
    pub dbh: &'static str,
    /// The ring.
    pub ring: &'static str,
    /// When it was done.
    pub season: &'static str,
    /// When they were looked at.
    pub after: &'static str,
    /// Percent dead, and what was counted where it is more than that.
    pub dead: &'static str,
    /// Source.
    #[cfg_attr(
        feature = "schema",
        schemars(with = "&'static str"),
        ts(type = "string")
    )]
    pub source: SourceId,
}
