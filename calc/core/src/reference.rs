//! What is known, as data: passed in, never global. The data crate compiles it from `content/`.

use crate::evidence::Cite;
use crate::timing::WoodClass;
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

/// Growth form, as the response table groups species.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
#[serde(rename_all = "snake_case")]
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

/// How strongly it sprouts from the base or suckers from the roots.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Vigor {
    /// It does not.
    None,
    /// Seldom.
    Weak,
    /// Often.
    Moderate,
    /// As a rule.
    Strong,
}

/// Whether a ring alone suits the species.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
#[serde(rename_all = "snake_case")]
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

/// How far a bark estimate can be trusted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
#[serde(rename_all = "snake_case")]
pub enum Confidence {
    /// The species' own value, near an independent one.
    Good,
    /// The species' own value, no such check.
    Fair,
    /// A stand-in or catch-all: measure it.
    Poor,
}

/// How long the standing dead wood lasts.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
#[serde(rename_all = "snake_case")]
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

/// A species, with the row of each table that it uses.
#[derive(Debug)]
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
    pub basal: Vigor,
    /// Suckers from the roots.
    pub suckering: Vigor,
    /// Whether a ring alone suits it.
    pub suitability: Suitability,
    /// What the response row rests on.
    pub response: Cite,
    /// Bark: inches a side for each inch of dbh; none where there is no bark to speak of.
    pub bark: Option<Bark>,
    /// Height rows that may be used.
    pub heights: &'static [HeightRow],
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
    /// States and provinces (codes without country) where it is native: a warning.
    pub warn_states: &'static [&'static str],
    /// Native look-alikes with the one mark that tells them apart.
    pub look_alikes: &'static [LookAlike],
    /// Rows of deaths counted after girdling.
    pub deaths: &'static [DeathRow],
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

macro_rules! traits {
    ($($(#[$doc:meta])* $name:ident = $word:literal),+ $(,)?) => {
        /// A mark of a species that rules ask for; content/rules/species_traits.csv gives each with its source.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
        #[serde(rename_all = "snake_case")]
        pub enum Trait { $($(#[$doc])* $name),+ }

        impl Trait {
            /// Reads a mark as the table writes it.
            #[must_use]
            pub fn parse(word: &str) -> Option<Self> {
                match word { $($word => Some(Self::$name),)+ _ => None }
            }
        }
    };
}

traits! {
    /// Bridges over a ring.
    Bridges = "bridges",
    /// An oak.
    Oak = "oak",
    /// A red oak.
    RedOak = "red_oak",
    /// A white oak.
    WhiteOak = "white_oak",
    /// A hickory.
    Hickory = "hickory",
    /// An ash.
    Ash = "ash",
    /// A pine.
    Pine = "pine",
    /// An elm.
    Elm = "elm",
    /// American elm.
    AmericanElm = "american_elm",
    /// A cut into the wood makes it sprout.
    DeepCutResprouts = "deep_cut_resprouts",
    /// A saw ring was tried with some success.
    SawRingTried = "saw_ring_tried",
    /// Guidance for a ring is published though it suckers.
    RingGuidance = "ring_guidance",
    /// Tree-of-heaven: herbicide has a season of its own.
    TreeOfHeaven = "tree_of_heaven",
    /// Dust or bark irritates.
    Dust = "dust",
    /// Bark that bats roost under, alive too.
    BatBark = "bat_bark",
    /// Guides say it slips longer than the model.
    GuideSaysLonger = "guide_says_longer",
}

/// A place in a source that was read in its own text.
#[must_use]
pub const fn cite(source: &'static str, place: &'static str) -> Cite {
    Cite {
        source,
        place,
        grade: crate::evidence::Grade::Published,
    }
}

/// Bark from diameter.
#[derive(Clone, Copy, Debug)]
pub struct Bark {
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
    /// `exp(b1 + b2 ln(ln(D+1)) + g(D) b3/2)`, centimetres to metres; g by the number: 1, sqrt D, D, D^2.
    LogLog(u8),
    /// `exp(b1 + b2 D + g(D) b3/2)`, likewise.
    Exp(u8),
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

/// Probability of sprouting after cutting, at 4, 8, 12 and 20 in dbh.
#[derive(Clone, Copy, Debug, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct SproutRow {
    /// Variant of the growth model.
    pub variant: &'static str,
    /// The four probabilities.
    pub p: [f64; 4],
}

/// A look-alike.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct LookAlike {
    /// Its scientific name.
    pub scientific: &'static str,
    /// The mark that tells them apart.
    pub mark: &'static str,
    /// Whether it is native to North America.
    pub native: bool,
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
    /// Percent dead.
    pub dead: &'static str,
    /// Source.
    pub source: &'static str,
}

/// Nine cells of one row of the method table.
#[derive(Clone, Copy, Debug)]
pub struct MethodRule {
    /// Name of the row; also the reason that is kept.
    pub id: &'static str,
    /// Its condition.
    pub condition: crate::model::method::Condition,
    /// What the row does to each method, in the order of [`crate::model::method::Method::ALL`].
    pub cells: [crate::model::method::Cell; 9],
    /// What it rests on.
    pub cites: &'static [Cite],
}

/// When a caution speaks.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
#[serde(rename_all = "snake_case")]
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
}

/// Classes of the outlook table.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
#[serde(rename_all = "snake_case")]
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

/// Size classes of the outlook table.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
#[serde(rename_all = "snake_case")]
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
