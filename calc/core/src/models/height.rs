//! Total height from diameter: what is shown, and the taller one that hazard is judged by.

use crate::terms::cite::{Cite, Finding};
use crate::terms::constants::constants;
use crate::terms::quantity::M_PER_FT;
use crate::terms::species::{Form, Group, HeightRow, Species};
use crate::terms::tree::Setting;
use crate::terms::tree::Tree;
use libm::{exp, fmax, fmin, log, pow, sqrt};
use serde::Serialize;

constants! {
    /// Constants of the height model; content/rules/constants.csv says where each comes from.
    pub struct HeightConstants {
        /// Hazard height over the tallest row.
        pub hazard: f64,
        /// The tall case of "measure the height first".
        pub tall: f64,
        /// Shrubs: the most over mature height.
        pub shrub: f64,
        /// Shrubs without a mature height: feet.
        pub shrub_default_ft: f64,
        /// A measured height below this share of the smallest row is asked again.
        pub ask_below: f64,
        /// A measured height above this multiple of the tallest row is asked again.
        pub ask_above: f64,
    }
}

/// Heights of one tree.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Height {
    /// The height shown, metres; none where nothing is known.
    pub shown_m: Option<f64>,
    /// Lowest of the rows behind it, metres.
    pub low_m: Option<f64>,
    /// Highest of the rows behind it, metres.
    pub high_m: Option<f64>,
    /// The height that hazard is judged by, metres.
    pub hazard_m: f64,
    /// Whether it was measured.
    pub measured: bool,
    /// Whether the hazard height is that of the tallest tree of the whole table, since the species is unknown.
    pub whole_table: bool,
    /// Whether the measured height looks odd and waits to be confirmed.
    pub ask_again: bool,
    /// Whether a shrub is larger than its kind grows.
    pub larger_than_grows: bool,
    /// Set by the reach: a measured height would change the answer, and at which height, metres.
    pub measure_first: bool,
    /// The height at which the answer changes, metres, where measuring matters.
    pub changes_at_m: Option<f64>,
    /// What it rests on.
    pub because: Vec<Cite>,
    /// Smallest admissible row, metres.
    #[serde(skip)]
    pub smallest_m: f64,
    /// Tallest admissible row, metres.
    #[serde(skip)]
    pub tallest_m: f64,
}

/// One curve at one diameter, metres.
#[must_use]
pub fn curve_m(row: &HeightRow, dbh_mm: f64) -> f64 {
    let [b1, b2, b3, b4, _] = row.b;
    let inches = dbh_mm / crate::terms::quantity::MM_PER_IN;
    let cm = dbh_mm / 10.0;
    let held = |d: f64| row.peak.map_or(d, |peak| fmin(d, peak));
    let value = match row.form {
        Form::Wykoff => (4.5 + exp(b1 + b2 / (inches + 1.0))) * M_PER_FT,
        Form::CurtisArney => curtis_arney_ft(b1, b2, b3, b4, inches) * M_PER_FT,
        Form::Quad => {
            let d = held(inches);
            // Below 5 in the source scales the 5-in crown.
            let at = fmax(d, 5.0);
            let width = b1 + b2 * at + b3 * at * at;
            width * fmin(d / 5.0, 1.0) * M_PER_FT
        }
        Form::Polynomial => {
            let d = held(cm);
            row.b.iter().rev().fold(0.0, |sum, b| sum * d + b)
        }
        // The first of these curves is printed with its correction inside the outer logarithm.
        Form::LogLog(1) => exp(b1 + b2 * log(log(held(cm) + 1.0) + b3 / 2.0)),
        Form::LogLog(variant) => {
            let d = held(cm);
            exp(b1 + b2 * log(log(d + 1.0)) + correction(variant, d) * b3 / 2.0)
        }
        Form::Exp(variant) => {
            let d = held(cm);
            exp(b1 + b2 * d + correction(variant, d) * b3 / 2.0)
        }
    };
    row.out
        .map_or(value, |(low, high)| fmax(low, fmin(high, value)))
}

/// The bias correction of the urban curves: the mean squared error is weighted by the fit's own weight.
fn correction(variant: u8, d: f64) -> f64 {
    match variant {
        1 => 1.0,
        2 => sqrt(d),
        3 => d,
        _ => d * d,
    }
}

fn curtis_arney_ft(b1: f64, b2: f64, b3: f64, bud: f64, inches: f64) -> f64 {
    let at = |d: f64| 4.5 + b1 * exp(-b2 * pow(d, b3));
    if inches >= 3.0 {
        return at(inches);
    }
    let share = fmax(0.0, (inches - bud) / (3.0 - bud));
    4.51 + (at(3.0) - 4.51) * share
}

/// Whether a row may be used. The southern Curtis-Arney rows run away at large diameters, so they count
/// only where the species has no Wykoff row.
fn admissible(species: &Species, row: &HeightRow) -> bool {
    let southern = row.form == Form::CurtisArney && row.region == "FVS-SN";
    !(southern && species.heights.iter().any(|row| row.form == Form::Wykoff))
}

fn rows(species: &Species) -> impl Iterator<Item = &HeightRow> {
    species
        .heights
        .iter()
        .filter(|row| admissible(species, row))
}

/// What the rows of the picked forms give at a diameter, metres.
fn heights_m(species: &Species, dbh: f64, picked: fn(Form) -> bool) -> Vec<f64> {
    rows(species)
        .filter(|row| picked(row.form))
        .map(|row| curve_m(row, dbh))
        .collect()
}

/// Smallest and largest of some values; none of none.
fn ends(values: &[f64]) -> Option<(f64, f64)> {
    let first = *values.first()?;
    let (mut low, mut high) = (first, first);
    for m in values {
        low = fmin(low, *m);
        high = fmax(high, *m);
    }
    Some((low, high))
}

/// The height that hazard is judged by, metres. The spared stem counts too, so it is the largest of all stems.
#[must_use]
pub fn hazard_m(constants: &HeightConstants, all: &[Species], tree: &Tree) -> f64 {
    judge(constants, all, tree).hazard_m
}

/// The heights that a measurement is believed in without asking again, metres; any, for an unknown species.
#[must_use]
pub fn likely_m(constants: &HeightConstants, tree: &Tree) -> (f64, f64) {
    let dbh = tree.largest().dbh.mm();
    ends(&heights_m(tree.species, dbh, |_| true)).map_or(
        (0.0, f64::INFINITY),
        |(smallest, tallest)| {
            (
                smallest * constants.ask_below,
                tallest * constants.ask_above,
            )
        },
    )
}

/// All heights of the tree: those of its largest stem. `all` is the whole table of species, for one that is unknown.
#[must_use]
pub fn judge(constants: &HeightConstants, all: &[Species], tree: &Tree) -> Height {
    let species = tree.species;
    let dbh = tree.largest().dbh.mm();
    let known = ends(&heights_m(species, dbh, |_| true));
    let whole_table = known.is_none() && tree.height.is_none();
    let (smallest, tallest) = known.unwrap_or_else(|| of_whole_table(all, dbh));
    let mut hazard = tallest * constants.hazard;
    let mut larger_than_grows = false;
    if species.group == Group::Shrub && !species.unknown {
        let mature = species
            .mature_height_ft
            .unwrap_or(constants.shrub_default_ft);
        let cap = mature * M_PER_FT * constants.shrub * constants.hazard;
        larger_than_grows = hazard > cap;
        hazard = fmin(hazard, cap);
    }
    let mut because: Vec<Cite> = Vec::new();
    for row in rows(species) {
        if !because.contains(&row.cite) {
            because.push(row.cite);
        }
    }
    because.push(Cite::own("hazard height: tallest row x 1.15"));
    let mut height = shown(tree.setting, species, dbh);
    height.hazard_m = hazard;
    height.smallest_m = smallest;
    height.tallest_m = tallest;
    height.larger_than_grows = larger_than_grows;
    height.whole_table = whole_table;
    height.because = because;
    if let Some(measured) = tree.height {
        let m = measured.m();
        let odd = known.is_some()
            && (m < smallest * constants.ask_below || m > tallest * constants.ask_above);
        height.ask_again = odd && !tree.height_confirmed;
        height.shown_m = Some(m);
        height.low_m = Some(m);
        height.high_m = Some(m);
        height.measured = true;
        height.hazard_m = if height.ask_again { fmax(m, hazard) } else { m };
        height.because.insert(0, Cite::measured("height"));
    }
    height
}

/// What is shown: the mean of the Wykoff rows in the woods, of the urban rows in the open, with their spread;
/// capped at the larger of mature height and tallest urban tree.
fn shown(setting: Setting, species: &Species, dbh: f64) -> Height {
    let urban = |form| matches!(form, Form::Polynomial | Form::LogLog(_) | Form::Exp(_));
    let wykoff = |form| form == Form::Wykoff;
    let arney = |form| form == Form::CurtisArney;
    let order: [fn(Form) -> bool; 3] = match setting {
        Setting::Woods => [wykoff, arney, urban],
        Setting::Open => [urban, wykoff, arney],
    };
    let mut picked = Vec::new();
    for pick in order {
        if picked.is_empty() {
            picked = heights_m(species, dbh, pick);
        }
    }
    let cap = match (species.mature_height_ft, species.urban_height_ft) {
        // A blank mature height is no cap.
        (None, _) => f64::INFINITY,
        (Some(mature), urban) => fmax(mature, urban.unwrap_or(0.0)) * M_PER_FT,
    };
    let mean =
        (!picked.is_empty()).then(|| fmin(cap, picked.iter().sum::<f64>() / picked.len() as f64));
    let spread = ends(&picked).map(|(low, high)| (fmin(cap, low), fmin(cap, high)));
    Height {
        shown_m: mean,
        low_m: spread.map(|ends| ends.0),
        high_m: spread.map(|ends| ends.1),
        hazard_m: 0.0,
        measured: false,
        whole_table: false,
        ask_again: false,
        larger_than_grows: false,
        measure_first: false,
        changes_at_m: None,
        because: Vec::new(),
        smallest_m: 0.0,
        tallest_m: 0.0,
    }
}

/// Smallest and tallest row of the whole table at a diameter, metres.
fn of_whole_table(species: &[Species], dbh: f64) -> (f64, f64) {
    let mut all = Vec::new();
    for species in species {
        all.extend(heights_m(species, dbh, |_| true));
    }
    ends(&all).unwrap_or((0.0, 0.0))
}

/// Crown width, metres, of a stem of the given diameter: mean, lowest and highest row for the setting.
#[must_use]
pub fn crown_m(species: &Species, setting: Setting, dbh_mm: f64) -> Option<Finding<f64>> {
    let of_setting = |row: &HeightRow| (row.form == Form::Quad) == (setting == Setting::Woods);
    let has_own = species.crowns.iter().any(of_setting);
    let (mut widths, mut because) = (Vec::new(), Vec::new());
    for row in species.crowns {
        if !has_own || of_setting(row) {
            widths.push(curve_m(row, dbh_mm));
            because.push(row.cite);
        }
    }
    let (low, high) = ends(&widths)?;
    Some(Finding::ranged(
        widths.iter().sum::<f64>() / widths.len() as f64,
        low,
        high,
        because,
    ))
}
