//! Outlook: what share of such stems is dead by the end of season 1, 2 and 3. Never a single point.

use crate::terms::cite::Cite;
use crate::terms::cite::cite;
use crate::terms::quantity::inches;
use crate::terms::small::find::holds as holds_word;
use crate::terms::small::sort::sort;
use crate::terms::source;
use crate::terms::species::{Group, Species, SproutRow, SproutVigor, Suitability, Trait};
use crate::terms::words::words;
use serde::Serialize;

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

/// Outlook of one stem.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Outlook {
    /// Class of the table.
    pub class: OutlookClass,
    /// Size class.
    pub size: SizeClass,
    /// Seasons 1, 2 and 3.
    pub seasons: Vec<SeasonShare>,
    /// Share that needs a second ring, percent: low, high.
    pub second_ring: Ends,
    /// The counts that bound the cell, as the table says them.
    pub anchors: &'static str,
    /// What of the cell is our own assumption, as the table says it.
    pub own: &'static str,
    /// Rows of the species beyond season 3, or for the end.
    pub later: Vec<LaterShare>,
    /// Whether it speaks of the stem only, since roots live on.
    pub stem_only: bool,
    /// Sprouting after cutting at this size: an upper bound for a ring, lowest and highest row.
    pub sprouting: Option<Ends>,
}

/// Two ends, and what they rest on.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Ends {
    /// Low end.
    pub low: f64,
    /// High end.
    pub high: f64,
    /// What they rest on.
    pub because: Vec<Cite>,
}

/// Share dead by the end of one season.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct SeasonShare {
    /// 1, 2 or 3.
    pub season: u8,
    /// Percent dead.
    pub share: Share,
    /// The species' own row, where one overrides the class: n and remark.
    pub species_row: Option<SpeciesRow>,
    /// What it rests on: that row's sources, or those of the class's cell; our own assumption alone where the table
    /// says that the season is.
    pub because: Vec<Cite>,
}

/// What a species' own row rests on.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct SpeciesRow {
    /// How many trees.
    pub n: &'static str,
    /// Remark.
    pub note: &'static str,
}

/// A share at another time.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct LaterShare {
    /// When, as printed.
    pub when: &'static str,
    /// Percent dead.
    pub share: Share,
    /// The species' own row.
    pub row: SpeciesRow,
    /// What it rests on.
    pub because: &'static [Cite],
}

/// Class of a species in the outlook table; none for what has no ring.
#[must_use]
pub fn class(species: &Species) -> Option<OutlookClass> {
    Some(match species.suitability {
        Suitability::NotApplicable => return None,
        Suitability::NotAlone => OutlookClass::NotAlone,
        _ if species.has(Trait::RedOak) => OutlookClass::RedOak,
        _ if species.has(Trait::WhiteOak) => OutlookClass::WhiteOak,
        Suitability::Conditional => OutlookClass::CloneOrShrub,
        Suitability::Suitable if species.group == Group::Conifer => OutlookClass::SuitableConifer,
        Suitability::Suitable => OutlookClass::SuitableHardwood,
        Suitability::Unknown if species.group == Group::Conifer => OutlookClass::SuitableConifer,
        Suitability::Unknown | Suitability::Followup => OutlookClass::Followup,
    })
}

/// Outlook of a stem with a complete, clean, peeled ring of 4 in or more, sprouts taken off: the row of its class and
/// size, and what rows of the species itself put in its place.
///
/// ```
/// # use calc::question::read;
/// # let reference = calc_data::whole();
/// let question = read(reference, &examples::named("do")).expect("a good question");
/// use calc::models::outlook::judge;
/// let (rows, own) = (reference.outlook, reference.outlook_species);
/// let outlook = judge(rows, own, question.tree.species, 368.0).expect("a ring suits it");
/// assert_eq!(outlook.seasons[2].share.likely, Some(40.0));
/// ```
#[must_use]
pub fn judge(
    rows: &'static [OutlookRow],
    of_species: &'static [OutlookOverride],
    species: &Species,
    dbh_mm: f64,
) -> Option<Outlook> {
    let class = class(species)?;
    let inches = inches(dbh_mm);
    let row = row_of(rows, class, inches)?;
    let mut own: Vec<&'static OutlookOverride> = of_species
        .iter()
        .filter(|row| speaks_of(row, species, inches))
        .collect();
    // A row for the very size goes before one for all sizes.
    sort(&mut own, |a, b| {
        a.size != SizeClass::All && b.size == SizeClass::All
    });
    Some(Outlook {
        class,
        size: row.size,
        seasons: seasons(row, &own),
        second_ring: known(row.second_ring, row.cites.to_vec()),
        anchors: row.anchors,
        own: row.own,
        later: own
            .iter()
            .filter(|row| !SEASONS.contains(&row.season))
            .map(|row| LaterShare {
                when: row.season,
                share: row.share,
                row: species_row(row),
                because: row.cites,
            })
            .collect(),
        stem_only: class == OutlookClass::NotAlone
            || class == OutlookClass::CloneOrShrub
            || species.suckering == SproutVigor::Strong,
        sprouting: sprouting(species, inches).map(|ends| {
            known(
                ends,
                vec![cite(source::S30, "sprouting after cutting, by diameter")],
            )
        }),
    })
}

/// The likely share dead at the end of season 3, percent; none where no table says one.
#[must_use]
pub fn likely_dead(
    rows: &'static [OutlookRow],
    of_species: &'static [OutlookOverride],
    species: &Species,
    dbh_mm: f64,
) -> Option<f64> {
    let inches = inches(dbh_mm);
    let row = row_of(rows, class(species)?, inches)?;
    let season = row.seasons.len();
    let mut own = of_species
        .iter()
        .filter(|row| speaks_of(row, species, inches));
    // As in the outlook itself: a row for the very size goes before one for all sizes.
    let named = |row: &&OutlookOverride| row.season == SEASONS[season - 1];
    let all = own.clone().find(named);
    let over = own
        .find(|row| named(row) && row.size != SizeClass::All)
        .or(all);
    over.map_or(row.seasons[season - 1], |row| row.share).likely
}

/// How rows of a species name the seasons.
const SEASONS: [&str; 3] = ["1", "2", "3"];

/// The row of a class for a size.
fn row_of(
    rows: &'static [OutlookRow],
    class: OutlookClass,
    inches: f64,
) -> Option<&'static OutlookRow> {
    rows.iter()
        .find(|row| row.class == class && holds(row.size, inches))
}

/// Whether a row of a species speaks of it at a size.
fn speaks_of(row: &OutlookOverride, species: &Species, inches: f64) -> bool {
    row.scientific == species.scientific && holds(row.size, inches)
}

fn seasons(row: &OutlookRow, own: &[&'static OutlookOverride]) -> Vec<SeasonShare> {
    row.seasons
        .iter()
        .zip(SEASONS)
        .zip(1..)
        .map(|((share, name), season)| {
            let over = own.iter().find(|row| row.season == name);
            SeasonShare {
                season,
                share: over.map_or(*share, |row| row.share),
                because: over.map_or_else(|| cell(row, season), |row| row.cites.to_vec()),
                species_row: over.map(|row| species_row(row)),
            }
        })
        .collect()
}

fn known(ends: (f64, f64), because: Vec<Cite>) -> Ends {
    let (low, high) = ends;
    Ends { low, high, because }
}

/// What one season of a class's cell rests on.
fn cell(row: &OutlookRow, season: u8) -> Vec<Cite> {
    let ours = row.cites.iter().filter(|cite| cite.source == source::OWN);
    if is_own(row.own, season) {
        ours.copied().collect()
    } else {
        row.cites.to_vec()
    }
}

/// Whether the table says that the whole season is our own assumption.
#[must_use]
pub fn is_own(own: &str, season: u8) -> bool {
    let name = ["S1", "S2", "S3"][usize::from(season.clamp(1, 3)) - 1];
    holds_word(own, "everything") || holds_word(own, name)
}

fn species_row(row: &'static OutlookOverride) -> SpeciesRow {
    SpeciesRow {
        n: row.n,
        note: row.note,
    }
}

/// The size class that trees of a list are counted by: under 6 in, 6 to 10, over 10; `dbh_mm` is across at breast height.
#[must_use]
pub fn size_class(dbh_mm: f64) -> SizeClass {
    let inches = inches(dbh_mm);
    let holding = [SizeClass::Small, SizeClass::Middle]
        .into_iter()
        .find(|size| holds(*size, inches));
    holding.unwrap_or(SizeClass::Large)
}

fn holds(size: SizeClass, inches: f64) -> bool {
    match size {
        SizeClass::All => true,
        SizeClass::Small => inches < 6.0,
        SizeClass::Middle => (6.0..=10.0).contains(&inches),
        SizeClass::Large => inches > 10.0,
        SizeClass::UnderTen => inches < 10.0,
    }
}

/// Probability that a cut stem of this size sprouts, lowest and highest row, linear between the printed sizes.
fn sprouting(species: &Species, inches: f64) -> Option<(f64, f64)> {
    let between = |row: &SproutRow| {
        let above = row.at.iter().position(|(size, _)| *size >= inches);
        match above {
            Some(0) => row.at[0].1,
            None => row.at[row.at.len() - 1].1,
            Some(i) => {
                let [(under, low), (over, high)] = [row.at[i - 1], row.at[i]];
                low + (high - low) * ((inches - under) / (over - under))
            }
        }
    };
    species.sprouting.iter().map(between).fold(None, |ends, p| {
        Some(ends.map_or((p, p), |(low, high): (f64, f64)| (low.min(p), high.max(p))))
    })
}
