//! The tables that a species is put together from: what a row of each holds.

use super::bark_and_height::{self, HazardCells};
use super::cells::{Cell, Codes, List, Told, Usable, cell, maybe};
use super::curves::{CurveRegion, CurveRow};
use super::leaf_marks::{LeafMarks, SiteRow};
use super::trials::DeathCells;
use crate::table::{Defect, RowAt, Table};
use calc::models::trigger::Trigger;
use calc::terms::cite::Grade;
use calc::terms::species::{
    Confidence, Durability, Group, SproutVigor, Suitability, Trait, WoodClass,
};
use serde::Deserialize;
use std::collections::BTreeMap;
use std::path::Path;

/// A row of `evidence/species_join.csv`: the keys of a species in the other tables.
#[derive(Deserialize)]
pub(crate) struct JoinRow {
    pub scientific_name: String,
    #[serde(deserialize_with = "cell")]
    pub synonyms: List,
    pub response_row: String,
    pub plants_code: String,
    #[serde(deserialize_with = "cell")]
    pub bark_row: Told<String>,
    #[serde(deserialize_with = "cell")]
    pub height_rows: Told<List>,
    pub height_borrowed_from: String,
    #[serde(deserialize_with = "cell")]
    pub crown_rows: Told<List>,
    pub crown_borrowed_from: String,
    #[serde(deserialize_with = "cell")]
    pub mature_height_row: Told<String>,
    #[serde(deserialize_with = "cell")]
    pub gdd_species: Told<String>,
    pub gdd_event: String,
    pub gdd_value: Option<f64>,
    #[serde(deserialize_with = "maybe")]
    pub wood_class: Option<Told<WoodClass>>,
    pub sprout_symbol: String,
    #[serde(deserialize_with = "cell")]
    pub sprout_variants: Told<List>,
}

/// A row of `evidence/species_response.csv`; several species may share one.
#[derive(Deserialize)]
pub(crate) struct ResponseRow {
    pub common_name: String,
    pub scientific_name: String,
    #[serde(deserialize_with = "cell")]
    pub group: Group,
    #[serde(deserialize_with = "cell")]
    pub basal_sprouting: SproutVigor,
    #[serde(deserialize_with = "cell")]
    pub root_suckering: SproutVigor,
    #[serde(deserialize_with = "cell")]
    pub girdle_class: Suitability,
    #[serde(deserialize_with = "cell")]
    pub source_ids: List,
    #[serde(deserialize_with = "cell")]
    pub grade: ResponseGrades,
}

/// `B=SECONDARY|R=SECONDARY|G=PUBLISHED|C=NONE`: the grade of the guidance counts here.
pub(crate) struct ResponseGrades {
    pub guidance: Grade,
}

impl Cell for ResponseGrades {
    fn of(text: &str) -> Result<Self, String> {
        let part = text.split('|').find_map(|part| part.strip_prefix("G="));
        match part.and_then(Grade::of_table) {
            Some(guidance) => Ok(Self { guidance }),
            None => Err(format!("\"{text}\" grades no guidance")),
        }
    }
}

/// A row of `evidence/bark.csv`.
#[derive(Deserialize)]
pub(crate) struct BarkRow {
    pub scientific_name: String,
    pub common_name: String,
    pub coef_in_per_in: f64,
    pub class: String,
    #[serde(deserialize_with = "cell")]
    pub confidence: Confidence,
    pub source_id: String,
    #[serde(deserialize_with = "cell")]
    pub grade: Grade,
}

/// A name in a table: `evidence/bark_all_species.csv`.
#[derive(Deserialize)]
pub(crate) struct CommonNameRow {
    pub scientific_name: String,
    pub common_name: String,
}

/// A name of our own: `rules/species_names.csv`, `rules/look_alike_names.csv`.
#[derive(Deserialize)]
pub(crate) struct NameRow {
    pub scientific_name: String,
    pub name: String,
}

/// A row of `evidence/mature_height.csv`.
#[derive(Deserialize)]
pub(crate) struct MatureRow {
    pub scientific_name: String,
    pub height_mature_ft: Option<f64>,
    pub utd_max_height_ft: Option<f64>,
}

/// A row of `evidence/gdd_thresholds.csv`.
#[derive(Deserialize)]
pub(crate) struct SumRow {
    pub species: String,
    pub event: String,
    #[serde(deserialize_with = "maybe")]
    pub wood_class: Option<WoodClass>,
    pub value: Option<f64>,
    pub unit: String,
    pub base: String,
    #[serde(deserialize_with = "cell")]
    pub source_id: List,
    #[serde(deserialize_with = "cell")]
    pub grade: Grade,
}

/// A row of `evidence/sprout_probability.csv`.
#[derive(Deserialize)]
pub(crate) struct SproutCells {
    pub usda_symbol: String,
    pub fvs_variant: String,
    pub p_sprout_dbh4in: f64,
    pub p_sprout_dbh8in: f64,
    pub p_sprout_dbh12in: f64,
    pub p_sprout_dbh20in: f64,
    #[serde(deserialize_with = "cell")]
    pub usable: Usable,
}

/// A row of `evidence/status.csv`.
#[derive(Deserialize)]
pub(crate) struct StatusRow {
    pub scientific_name: String,
    #[serde(deserialize_with = "cell")]
    pub status_in_lower_48: Told<Origin>,
    pub introduced_states: String,
    pub introduced_provinces: String,
}

/// A row of `rules/asked_for.csv`: a tree that is named before any is typed, and the countries where it is.
#[derive(Deserialize)]
pub(crate) struct AskedForRow {
    pub asked_for: u8,
    pub scientific_name: String,
    #[serde(deserialize_with = "cell")]
    pub codes: Codes,
}

/// A row of `rules/names_by_place.csv`: a name that means another tree elsewhere.
#[derive(Deserialize)]
pub(crate) struct ByPlaceRow {
    pub name: String,
    #[serde(deserialize_with = "cell")]
    pub codes: Codes,
    pub scientific_name: String,
}

/// A row of `evidence/native_range.csv`.
#[derive(Deserialize)]
pub(crate) struct RangeRow {
    pub scientific_name: String,
    #[serde(deserialize_with = "cell")]
    pub native_codes: Codes,
    #[serde(deserialize_with = "cell")]
    pub not_native_countries: Codes,
    #[serde(deserialize_with = "cell")]
    pub doubtful_countries: Codes,
}

#[derive(PartialEq)]
pub(crate) enum Origin {
    Native,
    Introduced,
}

impl Cell for Origin {
    fn of(text: &str) -> Result<Self, String> {
        match text {
            "native" => Ok(Self::Native),
            "introduced" => Ok(Self::Introduced),
            _ => Err(format!("\"{text}\" is no status: native, introduced")),
        }
    }
}

/// A row of `evidence/identification.csv`; its three lists have as many parts.
#[derive(Deserialize)]
pub(crate) struct MarksRow {
    pub scientific_name: String,
    #[serde(deserialize_with = "cell")]
    pub lookalikes: Told<List>,
    #[serde(deserialize_with = "cell")]
    pub telling_mark: List,
    #[serde(deserialize_with = "cell")]
    pub lookalike_is_native: List,
    #[serde(deserialize_with = "cell")]
    pub grade: Grade,
}

/// A row of `rules/species_traits.csv`.
#[derive(Deserialize)]
pub(crate) struct TraitRow {
    pub scientific_name: String,
    #[serde(rename = "trait", deserialize_with = "cell")]
    pub mark: Told<Mark>,
    pub value: Option<f64>,
    pub source_id: String,
    #[serde(deserialize_with = "cell")]
    pub grade: Grade,
}

pub(crate) enum Mark {
    Is(Trait),
    RingMinimum,
}

impl Cell for Mark {
    fn of(text: &str) -> Result<Self, String> {
        if text == "ring_minimum_mm" {
            return Ok(Self::RingMinimum);
        }
        let known = Trait::parse(text).map(Self::Is);
        known.ok_or_else(|| format!("\"{text}\" is no mark that a rule asks for"))
    }
}

/// A row of `rules/durability.csv`.
#[derive(Deserialize)]
pub(crate) struct DurabilityRow {
    pub scientific_name: String,
    #[serde(deserialize_with = "cell")]
    pub class: Told<Durability>,
    #[serde(deserialize_with = "cell")]
    #[allow(dead_code, reason = "read to be checked")]
    pub grade: Grade,
}

/// A row of `rules/caution_species.csv`.
#[derive(Deserialize)]
pub(crate) struct CautionRow {
    pub scientific_name: String,
    #[serde(deserialize_with = "cell")]
    pub caution: Trigger,
}

/// A row of `rules/genus_marks.csv`: what each species of a genus must carry, a mark or a caution.
#[derive(Deserialize)]
pub(crate) struct GenusRow {
    pub genus: String,
    pub marks: String,
}

/// A row of `rules/unknown_species.csv`.
#[derive(Deserialize)]
pub(crate) struct UnknownRow {
    pub key: String,
    pub name: String,
    #[serde(deserialize_with = "cell")]
    pub names: List,
    #[serde(deserialize_with = "cell")]
    pub group: Group,
    #[serde(deserialize_with = "cell")]
    pub basal_sprouting: SproutVigor,
    #[serde(deserialize_with = "cell")]
    pub root_suckering: SproutVigor,
    #[serde(deserialize_with = "cell")]
    pub wood: WoodClass,
    pub bark_coefficient: f64,
    pub bark_source: String,
    pub bark_place: String,
}

pub(crate) struct Tables {
    pub response: Table<ResponseRow>,
    pub bark: Table<BarkRow>,
    pub all_bark: Table<CommonNameRow>,
    pub height: Table<CurveRow>,
    pub hazard: Table<HazardCells>,
    pub crown: Table<CurveRow>,
    pub curve_regions: Table<CurveRegion>,
    pub mature: Table<MatureRow>,
    pub sums: Table<SumRow>,
    pub sprouts: Table<SproutCells>,
    pub status: Table<StatusRow>,
    pub ranges: Table<RangeRow>,
    pub asked_for: Table<AskedForRow>,
    pub by_place: Table<ByPlaceRow>,
    pub marks: Table<MarksRow>,
    pub leaves: Table<LeafMarks>,
    pub sites: Table<SiteRow>,
    pub deaths: Table<DeathCells>,
    pub traits: Table<TraitRow>,
    pub durability: Table<DurabilityRow>,
    pub cautions: Table<CautionRow>,
    pub genera: Table<GenusRow>,
    pub names: Table<NameRow>,
    pub alike_names: Table<NameRow>,
}

impl Tables {
    pub(crate) fn read(root: &Path) -> Result<Self, Defect> {
        Ok(Self {
            response: Table::read(root, "content/evidence/species_response.csv")?,
            bark: Table::read(root, "content/evidence/bark.csv")?,
            all_bark: Table::read(root, "content/evidence/bark_all_species.csv")?,
            height: Table::read(root, "content/evidence/height.csv")?,
            hazard: bark_and_height::hazard_table(root)?,
            crown: Table::read(root, "content/evidence/crown.csv")?,
            curve_regions: Table::read(root, "content/rules/curve_regions.csv")?,
            mature: Table::read(root, "content/evidence/mature_height.csv")?,
            sums: Table::read(root, "content/evidence/gdd_thresholds.csv")?,
            sprouts: Table::read(root, "content/evidence/sprout_probability.csv")?,
            status: Table::read(root, "content/evidence/status.csv")?,
            ranges: Table::read(root, "content/evidence/native_range.csv")?,
            asked_for: Table::read(root, "content/rules/asked_for.csv")?,
            by_place: Table::read(root, "content/rules/names_by_place.csv")?,
            marks: Table::read(root, "content/evidence/identification.csv")?,
            leaves: Table::read(root, "content/evidence/leaf_marks.csv")?,
            sites: Table::read(root, "content/evidence/listed_site.csv")?,
            deaths: Table::read(root, "content/evidence/mortality.csv")?,
            traits: Table::read(root, "content/rules/species_traits.csv")?,
            durability: Table::read(root, "content/rules/durability.csv")?,
            cautions: Table::read(root, "content/rules/caution_species.csv")?,
            genera: Table::read(root, "content/rules/genus_marks.csv")?,
            names: Table::read(root, "content/rules/species_names.csv")?,
            alike_names: Table::read(root, "content/rules/look_alike_names.csv")?,
        })
    }

    /// Rows of our own tables that speak of a species that is not in the list.
    pub(crate) fn strangers(&self, listed: &BTreeMap<&str, &RowAt<JoinRow>>) -> Result<(), Defect> {
        stranger(&self.traits, |row| &row.scientific_name, listed)?;
        stranger(&self.sites, |row| &row.scientific_name, listed)?;
        stranger(&self.names, |row| &row.scientific_name, listed)?;
        stranger(&self.cautions, |row| &row.scientific_name, listed)?;
        stranger(&self.asked_for, |row| &row.scientific_name, listed)?;
        self.asked_for.by(|row| &row.scientific_name)?;
        let mut last = 0;
        for row in &self.asked_for.rows {
            if row.asked_for <= last {
                return Err(row
                    .at
                    .problem("asked_for: the rows stand in its order, no number twice"));
            }
            last = row.asked_for;
        }
        stranger(&self.durability, |row| &row.scientific_name, listed)
    }
}

/// The first row of a table that speaks of a species that is not in the list.
fn stranger<T>(
    table: &Table<T>,
    name: fn(&T) -> &str,
    listed: &BTreeMap<&str, &RowAt<JoinRow>>,
) -> Result<(), Defect> {
    let mut rows = table.rows.iter();
    rows.find(|row| !listed.contains_key(name(row)))
        .map_or(Ok(()), |row| {
            let name = name(row);
            Err(row
                .at
                .problem(format!("{name} is no species of species_join.csv")))
        })
}
