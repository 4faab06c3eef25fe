//! Total height from diameter: what is shown, and the taller one that hazard is judged by.

use super::height_hazard::{HazardCase, HazardRow, HazardTable};
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
        /// Up to here stems are thin for the factors of the hazard height, mm.
        pub thin_mm: f64,
        /// From here on they are thick, mm.
        pub thick_mm: f64,
        /// Shrubs: hazard height over the tallest row.
        pub shrub_factor: f64,
        /// Shrubs: the most over mature height.
        pub shrub: f64,
        /// Shrubs without a mature height: feet.
        pub shrub_default_ft: f64,
        /// A measured height below this share of the smallest row is asked again.
        pub ask_below: f64,
        /// A measured height above this multiple of the hazard height is asked again.
        pub ask_above: f64,
        /// A height below this share of the smallest row can't be confirmed.
        pub confirm_floor: f64,
        /// No tree with a diameter at breast height is lower, metres.
        pub least_m: f64,
    }
}

/// What heights are judged by.
#[derive(Clone, Copy, Debug)]
pub struct HeightTables<'a> {
    /// Constants.
    pub constants: &'a HeightConstants,
    /// How much taller than their curves trees stand.
    pub hazard: &'static [HazardRow],
    /// The whole table of species, for one that is unknown.
    pub species: &'static [Species],
}

impl HeightTables<'_> {
    /// The table of what measured trees stand above their curves by.
    #[must_use]
    pub fn above(&self) -> HazardTable {
        HazardTable {
            thin_mm: self.constants.thin_mm,
            thick_mm: self.constants.thick_mm,
            rows: self.hazard,
        }
    }
}

/// Heights of one tree.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema, ts_rs::TS))]
pub struct Height {
    /// The height shown, metres; none where nothing is known.
    #[serde(serialize_with = "crate::terms::lengths::maybe_m")]
    pub shown_m: Option<f64>,
    /// Low end of eight trees in ten, metres.
    #[serde(serialize_with = "crate::terms::lengths::maybe_m")]
    pub low_m: Option<f64>,
    /// High end of eight trees in ten, metres; never above the hazard height.
    #[serde(serialize_with = "crate::terms::lengths::maybe_m")]
    pub high_m: Option<f64>,
    /// The height that hazard is judged by, metres.
    #[serde(serialize_with = "crate::terms::lengths::m")]
    pub hazard_m: f64,
    /// Whether it was measured.
    pub measured: bool,
    /// Whether the hazard height is that of the tallest tree of the whole table, since the species is unknown.
    pub whole_table: bool,
    /// Whether the measured height looks odd and waits to be confirmed.
    pub ask_again: bool,
    /// Whether a confirmed height is so low for the trunk that the taller one rules all the same.
    pub too_low: bool,
    /// Whether a shrub is larger than its kind grows.
    pub larger_than_grows: bool,
    /// Set by the reach: a measured height would change the answer, and at which height, metres.
    pub measure_first: bool,
    /// The height at which the answer changes, metres, where measuring matters.
    #[serde(serialize_with = "crate::terms::lengths::maybe_m")]
    pub changes_at_m: Option<f64>,
    /// What it rests on.
    pub because: Vec<Cite>,
    /// Smallest admissible row, metres; of the whole table the smallest hazard height.
    #[serde(skip)]
    pub smallest_m: f64,
    /// Tallest admissible row, metres.
    #[serde(skip)]
    pub tallest_m: f64,
    /// The hazard height over the tallest row; none where another rule gives it.
    #[serde(skip)]
    pub over_tallest: Option<f64>,
}

impl Height {
    /// What the reach is judged by.
    #[must_use]
    pub fn for_reach(&self) -> ForReach {
        ForReach {
            m: self.hazard_m,
            smallest_m: self.smallest_m,
            whole_table: self.whole_table,
        }
    }
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
fn ends(values: impl Iterator<Item = f64>) -> Option<(f64, f64)> {
    values.fold(None, |ends, m| {
        let (low, high) = ends.unwrap_or((m, m));
        Some((fmin(low, m), fmax(high, m)))
    })
}

/// The height that hazard is judged by, metres. The spared stem counts too, so it is the largest of all stems.
#[must_use]
pub fn hazard_m(tables: &HeightTables<'_>, tree: &Tree) -> f64 {
    for_reach(tables, tree).m
}

/// What the reach is judged by.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ForReach {
    /// The height that hazard is judged by, metres.
    pub m: f64,
    /// The smallest that it may have, metres.
    pub smallest_m: f64,
    /// Whether both are those of the whole table, since the species is unknown.
    pub whole_table: bool,
}

/// What the reach is judged by, without what is shown: as [`judge`] has it.
#[must_use]
pub fn for_reach(tables: &HeightTables<'_>, tree: &Tree) -> ForReach {
    let dbh = tree.largest().dbh.mm();
    let known = hazard(tables, tree, tree.species, dbh);
    match tree.height {
        // A measured height of an unknown species stands for itself.
        Some(measured) if known.is_none() => ForReach {
            m: measured.m(),
            smallest_m: measured.m(),
            whole_table: false,
        },
        _ => {
            let whole_table = known.is_none();
            let hazard = known.unwrap_or_else(|| of_whole_table(tables, tree, dbh));
            let measured = tree.height.map(|measured| measured.m());
            ForReach {
                m: measured.map_or(hazard.m, |m| {
                    Believed::of(tables.constants, &hazard, tree, m).used_m
                }),
                smallest_m: hazard.smallest_m,
                whole_table,
            }
        }
    }
}

/// What is made of a measured height of a species that has rows.
struct Believed {
    ask_again: bool,
    too_low: bool,
    used_m: f64,
}

impl Believed {
    fn of(constants: &HeightConstants, hazard: &Hazard, tree: &Tree, m: f64) -> Self {
        let odd = m < hazard.smallest_m * constants.ask_below || m > hazard.m * constants.ask_above;
        let ask_again = odd && !tree.height_confirmed;
        let too_low = tree.height_confirmed && m < hazard.smallest_m * constants.confirm_floor;
        Self {
            ask_again,
            too_low,
            used_m: if ask_again || too_low {
                fmax(m, hazard.m)
            } else {
                m
            },
        }
    }
}

/// By which share of it an open-grown tree's hazard height lies under that of a tree of the woods, 0 to 1: what saying
/// so is worth. A measured height is left aside.
#[must_use]
pub fn open_lowers(tables: &HeightTables<'_>, tree: &Tree) -> f64 {
    let of = |setting: Setting| {
        let tree = Tree {
            setting,
            height: None,
            ..tree.clone()
        };
        hazard_m(tables, &tree)
    };
    1.0 - of(Setting::Open) / of(Setting::Woods)
}

/// The heights that a measurement is believed in without asking again, metres; any, for an unknown species.
#[must_use]
pub fn likely_m(tables: &HeightTables<'_>, tree: &Tree) -> (f64, f64) {
    let constants = tables.constants;
    let dbh = tree.largest().dbh.mm();
    hazard(tables, tree, tree.species, dbh).map_or((0.0, f64::INFINITY), |known| {
        (
            known.smallest_m * constants.ask_below,
            known.m * constants.ask_above,
        )
    })
}

/// The hazard height of a species, as far as its rows tell.
struct Hazard {
    m: f64,
    smallest_m: f64,
    tallest_m: f64,
    over_tallest: Option<f64>,
    larger_than_grows: bool,
    because: &'static [Cite],
}

/// The height that hazard is judged by for a species as if it stood there: none without rows.
/// A shrub's is the tallest row with its factor, held at a multiple of its mature height; any other's the tallest row
/// with the factor that measured trees give, or the floor if that is higher, and is never held.
fn hazard(tables: &HeightTables<'_>, tree: &Tree, species: &Species, dbh: f64) -> Option<Hazard> {
    let constants = tables.constants;
    let (smallest_m, tallest_m) = ends(rows(species).map(|row| curve_m(row, dbh)))?;
    let mut hazard = Hazard {
        m: tallest_m * constants.shrub_factor,
        smallest_m,
        tallest_m,
        over_tallest: Some(constants.shrub_factor),
        larger_than_grows: false,
        because: OF_SHRUB,
    };
    if species.group == Group::Shrub {
        let mature = species
            .mature_height_ft
            .unwrap_or(constants.shrub_default_ft);
        let cap = mature * M_PER_FT * constants.shrub * constants.shrub_factor;
        if hazard.m > cap {
            hazard.larger_than_grows = true;
            hazard.over_tallest = None;
            hazard.m = cap;
        }
        return Some(hazard);
    }
    let case = case(tree, species);
    let above = tables.above();
    let (factor, because) = above.factor(&case, dbh);
    hazard.m = tallest_m * factor;
    hazard.over_tallest = Some(factor);
    hazard.because = because;
    let floor = above.floor_m(&case, dbh);
    if let Some((floor, because)) = floor.filter(|(floor, _)| !species.small && *floor > hazard.m) {
        hazard.m = floor;
        hazard.over_tallest = None;
        hazard.because = because;
    }
    Some(hazard)
}

/// What the height of a shrub rests on.
const OF_SHRUB: &[Cite] = &[Cite::own("hazard height of a shrub")];

/// How and where a tree of the species grew, for the table of factors.
fn case(tree: &Tree, species: &Species) -> HazardCase {
    let mut heights = rows(species);
    HazardCase {
        conifer: species.group == Group::Conifer,
        urban_rows_only: heights.all(|row| is_urban(row.form)),
        setting: tree.setting,
        band: tree.grown.band,
    }
}

/// Whether a form is one of street trees.
fn is_urban(form: Form) -> bool {
    matches!(form, Form::Polynomial | Form::LogLog(_) | Form::Exp(_))
}

/// All heights of the tree: those of its largest stem.
///
/// ```
/// # use calc::question::read;
/// # let reference = calc_data::whole();
/// let question = read(reference, &examples::named("do")).expect("a good question");
/// use calc::models::height::judge;
/// let height = judge(&reference.heights(), &question.tree);
/// assert_eq!((height.shown_m.map(f64::round), height.hazard_m.round()), (Some(22.0), 27.0));
/// ```
#[must_use]
pub fn judge(tables: &HeightTables<'_>, tree: &Tree) -> Height {
    let species = tree.species;
    let dbh = tree.largest().dbh.mm();
    let constants = tables.constants;
    let known = hazard(tables, tree, species, dbh);
    let is_known = known.is_some();
    let whole_table = !is_known && tree.height.is_none();
    let hazard = known.unwrap_or_else(|| of_whole_table(tables, tree, dbh));
    let mut because: Vec<Cite> = Vec::new();
    for row in rows(species) {
        if !because.contains(&row.cite) {
            because.push(row.cite);
        }
    }
    because.extend(hazard.because);
    let mut height = shown(tree.setting, species, dbh);
    let (low, high) = tables.above().shown(&case(tree, species), dbh);
    // Nothing is shown taller than the height that hazard is judged by.
    let most = |m: f64| fmin(m, hazard.m);
    height.low_m = height.shown_m.map(|m| most(m) * low);
    height.high_m = height.shown_m.map(|m| most(m * high));
    height.shown_m = height.shown_m.map(most);
    height.hazard_m = hazard.m;
    height.smallest_m = hazard.smallest_m;
    height.tallest_m = hazard.tallest_m;
    height.over_tallest = hazard.over_tallest;
    height.larger_than_grows = hazard.larger_than_grows;
    height.whole_table = whole_table;
    height.because = because;
    if let Some(measured) = tree.height {
        let m = measured.m();
        height.shown_m = Some(m);
        height.low_m = Some(m);
        height.high_m = Some(m);
        height.measured = true;
        height.hazard_m = m;
        if is_known {
            let believed = Believed::of(constants, &hazard, tree, m);
            height.ask_again = believed.ask_again;
            height.too_low = believed.too_low;
            height.hazard_m = believed.used_m;
        }
        height.because.insert(0, Cite::measured("height"));
    }
    height
}

/// What is shown: the mean of the Wykoff rows in the woods, of the urban rows in the open, capped at the larger of
/// mature height and tallest urban tree.
fn shown(setting: Setting, species: &Species, dbh: f64) -> Height {
    let wykoff = |form| form == Form::Wykoff;
    let arney = |form| form == Form::CurtisArney;
    let order: [fn(Form) -> bool; 3] = match setting {
        Setting::Woods => [wykoff, arney, is_urban],
        Setting::Open => [is_urban, wykoff, arney],
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
    Height {
        shown_m: mean,
        low_m: None,
        high_m: None,
        hazard_m: 0.0,
        measured: false,
        whole_table: false,
        ask_again: false,
        too_low: false,
        larger_than_grows: false,
        measure_first: false,
        changes_at_m: None,
        because: Vec::new(),
        smallest_m: 0.0,
        tallest_m: 0.0,
        over_tallest: None,
    }
}

/// The tallest hazard height of the whole table at a diameter, and the smallest, which even the smallest species has.
fn of_whole_table(tables: &HeightTables<'_>, tree: &Tree, dbh: f64) -> Hazard {
    let mut all = Hazard {
        m: 0.0,
        smallest_m: f64::INFINITY,
        tallest_m: 0.0,
        over_tallest: None,
        larger_than_grows: false,
        because: &[],
    };
    for species in tables.species {
        if let Some(one) = hazard(tables, tree, species, dbh) {
            all.smallest_m = fmin(all.smallest_m, one.m);
            all.tallest_m = fmax(all.tallest_m, one.tallest_m);
            if one.m > all.m {
                (all.m, all.because) = (one.m, one.because);
            }
        }
    }
    all
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
    let (low, high) = ends(widths.iter().copied())?;
    Some(Finding::ranged(
        widths.iter().sum::<f64>() / widths.len() as f64,
        low,
        high,
        because,
    ))
}
