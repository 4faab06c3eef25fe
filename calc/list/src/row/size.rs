//! The size of a row: the newest that is filled, one stem or several, held against girth and earlier years.

use super::{Rows, Told, with_unit};
use crate::cell::{NoSize, Size, size};
use crate::header::LengthUnit;
use crate::problem::{RowFault, Severity};
use crate::reading::SizeColumn;
use crate::record::Record;
use calc::question::{StemTyped, Text, Typed};
use calc::terms::number::read_number;
use calc_data::list::{Column, fold};
use core::f64::consts::PI;

/// What a row's sizes come to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Found {
    /// Stems were filled in.
    Some,
    /// Nothing is filled; told.
    Missing,
    /// What is filled is no size; told.
    Bad,
    /// No tree stands there.
    NotTree(&'static str),
}

/// How far girth and diameter may be apart: two hundredths.
const APART: f64 = 0.02;
/// A trunk that lost more than a tenth.
const SHRUNK: f64 = 0.9;
/// Breast height in metres, and how far off it a measure may be.
pub(crate) const BREAST_M: std::ops::RangeInclusive<f64> = 1.0..=1.7;

impl Rows {
    pub(super) fn size(&self, record: &Record, typed: &mut Typed, told: &mut Told<'_>) -> Found {
        if self.reading.stems_in_columns {
            return self.stems_in_columns(record, typed, told);
        }
        let filled = |it: &&SizeColumn| self.filled_at(record, it.at).is_some();
        let Some(column) = self.reading.sizes.iter().find(filled) else {
            return self.size_of_girth(record, typed, told);
        };
        let cell = record.cell(column.at).trim();
        let unit = self.unit_for(record, column);
        let cell = match &column.classes {
            None => cell.to_owned(),
            Some(table) => match table.iter().find(|(class, _)| class.trim() == cell) {
                Some((_, Some(use_it))) if !use_it.trim().is_empty() => use_it.trim().to_owned(),
                _ => {
                    told.add(column.at, Severity::Fix, RowFault::ClassUndecided);
                    return Found::Bad;
                }
            },
        };
        let found = size(self.words, &cell);
        let (stems, estimate) = match found {
            Size::Stems(stems) => (stems, false),
            Size::Estimate(stems) => (stems, true),
            Size::None(why) => return self.no_size(column.at, why, told),
        };
        if column.no_years && is_year(&stems) {
            told.add(column.at, Severity::Fix, RowFault::Year);
            return Found::Bad;
        }
        if estimate {
            let read = stems.iter().all(|stem| read_number(stem).is_ok());
            if read {
                told.add(column.at, Severity::Check, RowFault::Estimate);
            }
        }
        self.fill(record, typed, &stems, column.girth, unit);
        self.held_against_girth(record, column, unit, &stems, told);
        self.held_against_years(record, column, unit, &stems, told);
        self.stem_count(record, stems.len(), told);
        self.measured_at(record, told);
        Found::Some
    }

    /// A girth beside an empty diameter.
    fn size_of_girth(&self, record: &Record, typed: &mut Typed, told: &mut Told<'_>) -> Found {
        let first = self.reading.sizes.first().map(|size| size.at);
        let beside = self
            .reading
            .beside
            .as_ref()
            .filter(|it| self.filled_at(record, it.at).is_some());
        if let Some(column) = beside {
            match size(self.words, record.cell(column.at).trim()) {
                Size::Stems(stems) | Size::Estimate(stems) => {
                    let unit = self.unit_for(record, column);
                    self.fill(record, typed, &stems, true, unit);
                    return Found::Some;
                }
                Size::None(why) => return self.no_size(column.at, why, told),
            }
        }
        if let Some(at) = first {
            told.add(at, Severity::Fix, self.size_missing(at));
        }
        Found::Missing
    }

    fn stems_in_columns(&self, record: &Record, typed: &mut Typed, told: &mut Told<'_>) -> Found {
        let mut found = Found::Missing;
        for column in &self.reading.sizes {
            if self.filled_at(record, column.at).is_none() {
                continue;
            }
            match size(self.words, record.cell(column.at).trim()) {
                Size::Stems(stems) | Size::Estimate(stems) => {
                    self.fill(
                        record,
                        typed,
                        &stems,
                        column.girth,
                        self.unit_for(record, column),
                    );
                    found = Found::Some;
                }
                Size::None(NoSize::Missing) => {}
                Size::None(why) => return self.no_size(column.at, why, told),
            }
        }
        if found == Found::Missing
            && let Some(first) = self.reading.sizes.first()
        {
            told.add(first.at, Severity::Fix, self.size_missing(first.at));
        }
        found
    }

    fn no_size(&self, at: usize, why: NoSize, told: &mut Told<'_>) -> Found {
        let code = match why {
            NoSize::Missing => {
                told.add(at, Severity::Fix, self.size_missing(at));
                return Found::Missing;
            }
            NoSize::NotTree(what) if self.reading.trees.contains(what) => self.size_missing(at),
            NoSize::NotTree(what) => return Found::NotTree(what),
            NoSize::Broken => RowFault::Broken,
            NoSize::Formula => RowFault::Formula,
            NoSize::SeveralStems => RowFault::StemSizes { stems: None },
            NoSize::Range => RowFault::Range,
            NoSize::Open => RowFault::Open,
            NoSize::Day => RowFault::MadeADay,
            NoSize::TwoNumbers => RowFault::TwoNumbers,
        };
        told.add(at, Severity::Fix, code);
        Found::Bad
    }

    /// That a cell of a column has no size: it tells what to type there.
    fn size_missing(&self, at: usize) -> RowFault {
        let mut sizes = self.reading.sizes.iter().chain(&self.reading.beside);
        RowFault::SizeMissing {
            girth: sizes.any(|column| column.at == at && column.girth),
        }
    }

    /// The unit of a cell: of its row, of its column.
    fn unit_for(&self, record: &Record, column: &SizeColumn) -> Option<LengthUnit> {
        let of_row = self
            .reading
            .unit_column
            .and_then(|at| LengthUnit::parse(record.cell(at)));
        of_row.or(column.unit)
    }

    fn fill(
        &self,
        record: &Record,
        typed: &mut Typed,
        stems: &[String],
        girth: bool,
        unit: Option<LengthUnit>,
    ) {
        let bark = self.filled(record, Column::Bark).map(|(at, cell)| {
            let unit = self.reading.columns[at].unit;
            Text(with_unit(cell, unit))
        });
        for stem in stems {
            let size = Some(Text(with_unit(stem, unit)));
            let mut made = StemTyped {
                bark: bark.clone(),
                ..StemTyped::default()
            };
            if girth {
                made.girth = size;
            } else {
                made.diameter = size;
            }
            typed.stems.push(made);
        }
    }

    fn held_against_girth(
        &self,
        record: &Record,
        column: &SizeColumn,
        unit: Option<LengthUnit>,
        stems: &[String],
        told: &mut Told<'_>,
    ) {
        let (Some(beside), [stem]) = (&self.reading.beside, stems) else {
            return;
        };
        let Some(cell) = self.filled_at(record, beside.at).filter(|_| !column.girth) else {
            return;
        };
        if let (Some(diameter), Some(girth)) = (mm(stem, unit), mm(cell, self.unit_for(record, beside)))
            && (girth / PI - diameter).abs() > diameter * APART
            // A small trunk is rounded more.
            && (girth / PI - diameter).abs() > 5.0
        {
            told.add(beside.at, Severity::Fix, RowFault::SizesDisagree);
        }
    }

    fn held_against_years(
        &self,
        record: &Record,
        column: &SizeColumn,
        unit: Option<LengthUnit>,
        stems: &[String],
        told: &mut Told<'_>,
    ) {
        let [stem] = stems else {
            return;
        };
        let Some(now) = mm(stem, unit) else {
            return;
        };
        for earlier in self
            .reading
            .sizes
            .iter()
            .filter(|it| it.at != column.at && it.year < column.year)
        {
            let cell = self.filled_at(record, earlier.at);
            let before = cell.and_then(|cell| mm(cell, self.unit_for(record, earlier)));
            if let (Some(before), Some(year)) = (before, earlier.year)
                && now < before * SHRUNK
            {
                told.add(column.at, Severity::Check, RowFault::Shrunk { year });
                return;
            }
        }
    }

    /// Three stems with one size are a question, never three times that size.
    fn stem_count(&self, record: &Record, sizes: usize, told: &mut Told<'_>) {
        let Some((at, cell)) = self.filled(record, Column::Stems) else {
            return;
        };
        match read_number(cell) {
            Ok(number)
                if number.unit.is_none()
                    && number.value % 1.0 == 0.0
                    && (0.0..=50.0).contains(&number.value) =>
            {
                let count = number.value as usize;
                if count > 1 && count != sizes {
                    let stems = Some(count as u32);
                    told.add(at, Severity::Fix, RowFault::StemSizes { stems });
                } else if sizes > 1 && count != sizes {
                    told.add(at, Severity::Check, RowFault::StemCount);
                }
            }
            _ if self.words.yes(cell) == Some(true)
                || self
                    .words
                    .means(calc_data::list::WordKind::SeveralStems, cell)
                    .is_some() =>
            {
                if sizes == 1 {
                    told.add(at, Severity::Fix, RowFault::StemSizes { stems: None });
                }
            }
            _ if self.words.yes(cell) == Some(false) => {}
            _ => told.add(at, Severity::Check, RowFault::StemCount),
        }
    }

    /// Where the tape went: over 30 cm off breast height is looked at; the size is used as it is.
    fn measured_at(&self, record: &Record, told: &mut Told<'_>) {
        let Some((at, cell)) = self.filled(record, Column::MeasuredAt) else {
            return;
        };
        let unit = self.reading.columns[at].unit;
        let Some(metres) = metres(cell, unit) else {
            return;
        };
        if !BREAST_M.contains(&metres) {
            told.add(at, Severity::Check, RowFault::MeasuredOff);
        }
    }
}

/// Metres of a height on the trunk; a bare number is read by its size: 130 is centimetres, 4.5 feet, 1.3 metres.
fn metres(cell: &str, unit: Option<LengthUnit>) -> Option<f64> {
    let number = read_number(cell).ok()?;
    let scale = match (number.unit, unit) {
        (Some(unit), _) => unit.in_mm()?,
        (None, Some(unit)) => unit.mm(),
        (None, None) if number.value > 20.0 => 10.0,
        (None, None) if number.value > 2.0 => LengthUnit::Foot.mm(),
        (None, None) => 1000.0,
    };
    Some(number.value * scale / 1000.0)
}

/// Millimetres of a size; none where it has no unit or is no number.
fn mm(cell: &str, unit: Option<LengthUnit>) -> Option<f64> {
    let number = read_number(cell.trim()).ok()?;
    let scale = match number.unit {
        Some(unit) => unit.in_mm()?,
        None => unit?.mm(),
    };
    Some(number.value * scale)
}

fn is_year(stems: &[String]) -> bool {
    let [stem] = stems else {
        return false;
    };
    let year = fold(stem);
    year.len() == 4
        && (year.starts_with("19") || year.starts_with("20"))
        && year.bytes().all(|c| c.is_ascii_digit())
}

#[cfg(test)]
mod tests {
    use crate::problem::RowFault;
    use crate::reading::ListContext;
    use crate::{Decisions, read_whole};

    #[test]
    fn a_row_without_a_size_is_told_which_one_its_column_has() {
        for (header, girth) in [("Girth (cm)", true), ("DBH (cm)", false)] {
            let file = [
                "Tag,Species,",
                header,
                "\n1,Norway maple,\n2,Norway maple,44\n",
            ]
            .concat();
            let options = ListContext {
                today: "2027-05-01".into(),
                ..ListContext::default()
            };
            let decisions = Decisions::default();
            let list = read_whole(calc_data::whole(), file.as_bytes(), &options, &decisions);
            let rows = list.expect("a list").rows;
            let codes: Vec<_> = rows[0].problems.iter().map(|it| &it.code).collect();
            assert_eq!(codes, [&RowFault::SizeMissing { girth }], "{header}");
        }
    }
}
