//! By how much trees stand above their curves: factors and floors of the hazard height, and the range shown, as
//! measured trees give them (content/evidence/height_hazard.csv).

use crate::terms::cite::Cite;
use crate::terms::place::HeightBand;
use crate::terms::quantity::{M_PER_FT, MM_PER_IN};
use crate::terms::tree::Setting;
use crate::terms::words::words;

words! {
    /// What a row gives.
    pub enum Measure {
        /// Hazard height over the tallest row, for thin stems and for thick ones.
        Factor,
        /// The least hazard height: a and b of `4.5 + exp(a + b/(D + 1))`, inches to feet.
        Floor,
        /// Low and high end over the height shown, each for thin stems and for thick ones.
        Shown,
    }
}

words! {
    /// The trees that a row speaks of.
    pub enum Trees {
        /// Broadleaves.
        Broadleaf,
        /// Conifers.
        Conifer,
        /// Either.
        Both,
        /// Species that have rows of street trees only.
        UrbanRowsOnly,
    }
}

/// A row of the table.
#[derive(Clone, Copy, Debug)]
pub struct HazardRow {
    /// What it gives.
    pub measure: Measure,
    /// Of which trees.
    pub trees: Trees,
    /// In which setting; none for either.
    pub setting: Option<Setting>,
    /// In which part of the world; none for anywhere.
    pub band: Option<HeightBand>,
    /// The numbers, in the order that [`Measure`] tells; the rest is 0.
    pub values: [f64; 4],
    /// What it rests on.
    pub cites: &'static [Cite],
}

/// The table, and the diameters between which a factor runs from its first value to its second.
#[derive(Clone, Copy, Debug)]
pub struct HazardTable {
    /// Up to here stems are thin, mm.
    pub thin_mm: f64,
    /// From here on they are thick, mm.
    pub thick_mm: f64,
    /// The rows.
    pub rows: &'static [HazardRow],
}

/// A case: which trees, how and where they grew.
#[derive(Clone, Copy, Debug)]
pub struct HazardCase {
    /// Whether it is a conifer.
    pub conifer: bool,
    /// Whether the species has rows of street trees only.
    pub urban_rows_only: bool,
    /// Woods or open-grown.
    pub setting: Setting,
    /// Where.
    pub band: HeightBand,
}

impl HazardTable {
    /// The row of a case; where its part of the world has none, that of elsewhere.
    fn row(&self, measure: Measure, case: &HazardCase) -> Option<&'static HazardRow> {
        let own = if case.conifer {
            Trees::Conifer
        } else {
            Trees::Broadleaf
        };
        let urban = measure == Measure::Factor && case.urban_rows_only;
        let fits = |row: &&HazardRow, band: HeightBand| {
            let trees = if urban {
                row.trees == Trees::UrbanRowsOnly
            } else {
                row.trees == own || row.trees == Trees::Both
            };
            row.measure == measure
                && trees
                && row.setting.is_none_or(|setting| setting == case.setting)
                && row.band.is_none_or(|at| at == band)
        };
        let find = |band| self.rows.iter().find(|row| fits(row, band));
        find(case.band).or_else(|| find(HeightBand::Elsewhere))
    }

    /// From the value of thin stems to that of thick ones, in a straight line between.
    fn between(&self, thin: f64, thick: f64, dbh_mm: f64) -> f64 {
        let share = (dbh_mm - self.thin_mm) / (self.thick_mm - self.thin_mm);
        thin + (thick - thin) * libm::fmax(0.0, libm::fmin(1.0, share))
    }

    /// Hazard height over the tallest row, with what it rests on. Without a row: the tallest row itself.
    #[must_use]
    pub fn factor(&self, case: &HazardCase, dbh_mm: f64) -> (f64, &'static [Cite]) {
        self.row(Measure::Factor, case).map_or((1.0, &[]), |row| {
            (
                self.between(row.values[0], row.values[1], dbh_mm),
                row.cites,
            )
        })
    }

    /// The least hazard height, metres, with what it rests on; none where the table has no floor.
    #[must_use]
    pub fn floor_m(&self, case: &HazardCase, dbh_mm: f64) -> Option<(f64, &'static [Cite])> {
        let row = self.row(Measure::Floor, case)?;
        let [a, b, ..] = row.values;
        let feet = 4.5 + libm::exp(a + b / (dbh_mm / MM_PER_IN + 1.0));
        Some((feet * M_PER_FT, row.cites))
    }

    /// Low and high end over the height shown. Without a row: no range.
    #[must_use]
    pub fn shown(&self, case: &HazardCase, dbh_mm: f64) -> (f64, f64) {
        self.row(Measure::Shown, case).map_or((1.0, 1.0), |row| {
            let [low_thin, low_thick, high_thin, high_thick] = row.values;
            (
                self.between(low_thin, low_thick, dbh_mm),
                self.between(high_thin, high_thick, dbh_mm),
            )
        })
    }
}
