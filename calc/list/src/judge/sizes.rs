//! Sizes: diameter or girth, in which unit, of which year; classes; values that stand for nothing.

use super::kinds::LEAST_ROWS;
use super::stats::median;
use super::{Judge, NotRead, Note};
use crate::ask::ListQuestion;
use crate::bytes::NotList;
use crate::header::LengthUnit;
use crate::reading::SizeColumn;
use calc::terms::number::read_number;
use calc::terms::quantity::Units;
use calc::terms::small::order::{sort_by, sort_by_key};
use calc_data::list::Column;
use core::f64::consts::PI;

/// A median above this in millimetres is that of a girth, unless the owner says otherwise: 60 cm.
const GIRTH_MM: f64 = 600.0;
/// Diameters above this in millimetres stand for nothing in a list, as 999 does: 5 m.
const IMPOSSIBLE_MM: f64 = 5000.0;
/// Trees whose height is less than so many diameters are absurdly stout.
const STOUT: f64 = 15.0;
/// Two columns agree where nine rows of ten do, within a hundredth.
const AGREE: f64 = 0.01;

impl Judge<'_> {
    pub(super) fn sizes(&mut self) -> Result<(), NotList> {
        let diameters = self.all(Column::Dbh);
        let girths = self.all(Column::Girth);
        let classes = self.all(Column::SizeClass);
        let of_stems = |judge: &Self, at: &usize| {
            judge.layout.headers[*at].of_stem && judge.layout.headers[*at].index.is_some()
        };
        let main = if diameters.is_empty() {
            girths.clone()
        } else {
            diameters.clone()
        };
        let mut columns = if main.is_empty() { classes } else { main };
        if columns.is_empty() {
            if !self.all(Column::Count).is_empty() && self.reading.id.is_none() {
                return Err(NotList::Counts);
            }
            if !self.reading.of_a_piece {
                self.ask_file(ListQuestion::NoSize);
            }
            return Ok(());
        }
        self.order(&mut columns, of_stems);
        if !self.reading.stems_in_columns {
            // One taken at breast height stands before one at the foot.
            sort_by_key(&mut columns, |at| self.off_breast(*at).is_some());
        }
        if let Some((at, metres)) = columns
            .first()
            .and_then(|at| Some((*at, self.off_breast(*at)?)))
        {
            let header = self.reading.columns[at].header.clone();
            self.notes.push(Note::MeasuredOff { header, metres });
        }
        for at in &columns {
            let girth = self.reading.columns[*at].is == Column::Girth;
            self.unit_of(*at, girth);
        }
        let made = |judge: &Self, at: usize| {
            let column = &judge.reading.columns[at];
            SizeColumn {
                at,
                girth: column.is == Column::Girth,
                unit: column.unit,
                year: column.year,
                classes: judge.decided[at].classes.clone(),
                no_years: false,
            }
        };
        let mut sizes: Vec<SizeColumn> = columns.iter().map(|at| made(self, *at)).collect();
        for size in &mut sizes {
            self.judge_one(size);
        }
        // A second diameter without a year is another measure of the same: it only proves.
        let years = sizes.iter().filter(|size| size.year.is_some()).count();
        if years == 0 && !self.reading.stems_in_columns && self.numbered(&columns).is_none() {
            for size in sizes.drain(1..) {
                if self.reading.columns[size.at].unit == self.reading.columns[columns[0]].unit {
                    self.not_read(size.at, NotRead::Doubled);
                }
            }
        } else if sizes.len() > 1 && !self.reading.stems_in_columns {
            let headers = sizes
                .iter()
                .map(|size| self.reading.columns[size.at].header.clone())
                .collect();
            self.notes.push(Note::Newest { headers });
        }
        if !diameters.is_empty() {
            self.reading.beside = girths.first().map(|at| {
                self.unit_of(*at, true);
                made(self, *at)
            });
        }
        self.reading.sizes = sizes;
        Ok(())
    }

    /// How high up a header says that its sizes were taken, where that is not about breast height.
    fn off_breast(&self, at: usize) -> Option<f64> {
        let metres = self.layout.headers[at].at_m?;
        (!crate::row::BREAST_M.contains(&metres)).then_some(metres)
    }

    /// The newest first; numbered columns without a year are asked.
    fn order(&mut self, columns: &mut [usize], of_stems: impl Fn(&Self, &usize) -> bool) {
        let stems = columns.len() > 1 && columns.iter().all(|at| of_stems(self, at));
        let said = |judge: &Self, at: &usize| judge.decided[*at].order.clone().unwrap_or_default();
        let all_said =
            columns.len() > 1 && columns.iter().all(|at| !said(self, at).trim().is_empty());
        if stems || (all_said && columns.iter().all(|at| said(self, at) == "stems")) {
            self.reading.stems_in_columns = true;
            return;
        }
        if let Some(numbered) = self.numbered(columns) {
            if all_said {
                let place =
                    |at: &usize| read_number(&said(self, at)).map_or(0.0, |number| number.value);
                let mut placed: Vec<(f64, usize)> =
                    columns.iter().map(|at| (place(at), *at)).collect();
                sort_by(&mut placed, |a, b| a.0.total_cmp(&b.0));
                for (to, (_, at)) in columns.iter_mut().zip(placed) {
                    *to = at;
                }
                return;
            }
            if !self.reading.of_a_piece {
                let headers: Vec<String> = numbered
                    .iter()
                    .map(|at| self.reading.columns[*at].header.clone())
                    .collect();
                let filled = self.stats(numbered[0]).filled;
                self.ask(numbered[0], filled, ListQuestion::Numbered { headers });
            }
        }
        sort_by_key(columns, |at| {
            std::cmp::Reverse(self.reading.columns[*at].year.unwrap_or(0))
        });
    }

    /// Columns that differ by a number behind the same name.
    fn numbered(&self, columns: &[usize]) -> Option<Vec<usize>> {
        let numbered: Vec<usize> = columns
            .iter()
            .copied()
            .filter(|at| {
                self.layout.headers[*at].index.is_some() && self.layout.headers[*at].year.is_none()
            })
            .collect();
        (numbered.len() > 1).then_some(numbered)
    }

    /// Settles the unit of a column: said, in a column of its own, in its cells, proven by another column, or the page's.
    fn unit_of(&mut self, at: usize, girth: bool) {
        if self.reading.columns[at].unit.is_some() || !self.all(Column::DbhUnit).is_empty() {
            return;
        }
        let stats = self.stats(at);
        if stats.with_unit * 2 > stats.filled {
            // Bare numbers among them stay those of the page.
        } else if let Some((unit, by)) = self.proven(at, girth) {
            let header = self.reading.columns[at].header.clone();
            self.reading.columns[at].unit = Some(unit);
            self.notes.push(Note::UnitProven { header, unit, by });
            return;
        } else if self.layout.headers[at].cut && !self.reading.of_a_piece {
            let neighbour = self.reading.columns.iter().enumerate();
            let proposal = neighbour
                .filter(|(other, column)| {
                    *other != at && matches!(column.is, Column::Dbh | Column::Girth)
                })
                .find_map(|(_, column)| column.unit);
            self.ask(at, stats.filled, ListQuestion::UnitLost { proposal });
            return;
        }
        let unit = match self.reading.options.units {
            Units::Us => LengthUnit::Inch,
            Units::Metric => LengthUnit::Centimetre,
        };
        self.reading.columns[at].unit = Some(unit);
        self.reading.columns[at].assumed = true;
    }

    /// The unit that another column proves: basal area, girth beside diameter, the same size in another unit.
    fn proven(&self, at: usize, girth: bool) -> Option<(LengthUnit, String)> {
        let units = [
            LengthUnit::Inch,
            LengthUnit::Centimetre,
            LengthUnit::Millimetre,
            LengthUnit::Metre,
        ];
        let header = |other: usize| self.reading.columns[other].header.clone();
        let number = |cell: &str| {
            read_number(cell)
                .ok()
                .filter(|it| it.value > 0.0 && it.unit.is_none())
                .map(|it| it.value)
        };
        let agrees = |other: usize, factor: f64, squared: bool| {
            let (mut rows, mut agree) = (0, 0);
            for row in self.rows {
                let (Some(size), Some(beside)) = (number(row.cell(at)), number(row.cell(other)))
                else {
                    continue;
                };
                rows += 1;
                let expected = if squared {
                    size * size * factor
                } else {
                    size * factor
                };
                // A printed number is rounded at its last digit.
                let apart = (expected - beside).abs();
                agree += usize::from(apart <= beside * AGREE || apart <= 0.006 && beside < 0.5);
            }
            rows >= LEAST_ROWS && agree * 10 >= rows * 9
        };
        let diameter = if girth { 1.0 / PI } else { 1.0 };
        for other in self.all(Column::BasalArea) {
            for unit in units {
                let metres = unit.mm() / 1000.0 * diameter;
                let square_metres = PI / 4.0 * metres * metres;
                // Square metres, and square feet of 0.3048 m.
                for area in [
                    1.0,
                    1.0 / (calc::terms::quantity::M_PER_FT * calc::terms::quantity::M_PER_FT),
                ] {
                    let feet = area > 1.0;
                    let named = match self.layout.headers[other].unit {
                        Some(LengthUnit::Foot) => feet,
                        Some(LengthUnit::Metre) => !feet,
                        _ => true,
                    };
                    if named && agrees(other, square_metres * area, true) {
                        return Some((unit, header(other)));
                    }
                }
            }
        }
        for (other, column) in self.reading.columns.iter().enumerate() {
            let is_girth = match column.is {
                Column::Girth => true,
                Column::Dbh => false,
                _ => continue,
            };
            let (Some(known), false) = (column.unit, other == at || column.assumed) else {
                continue;
            };
            for unit in units {
                let mut factor = unit.mm() / known.mm();
                if girth && !is_girth {
                    factor /= PI;
                } else if !girth && is_girth {
                    factor *= PI;
                }
                if agrees(other, factor, false) {
                    return Some((unit, header(other)));
                }
            }
        }
        None
    }

    /// Girth that is called diameter, metres, classes, values that stand for nothing.
    fn judge_one(&mut self, size: &mut SizeColumn) {
        let at = size.at;
        let column = self.reading.columns[at].clone();
        let stats = self.stats(at);
        let middle = stats.median();
        size.no_years = middle > 0.0 && middle < 100.0;
        if self.reading.of_a_piece || stats.numbers.is_empty() {
            return;
        }
        let classed = column.is == Column::SizeClass;
        let unsaid = !self.layout.headers[at].unit_said && self.decided[at].unit.is_none();
        if size.classes.is_none()
            && (classed
                || (unsaid
                    && column.assumed
                    && stats.numbers.len() >= LEAST_ROWS
                    && stats.are_classes()))
        {
            let values = stats.frequent();
            self.ask(at, stats.filled, ListQuestion::Classes { values });
            // Until it is decided no row has a size.
            size.classes = Some(std::collections::BTreeMap::new());
            return;
        }
        if classed {
            return;
        }
        self.missing_values(at, size, &stats.numbers, &stats.frequent());
        if column.assumed {
            let unit = column.unit.unwrap_or(LengthUnit::Inch);
            let header = column.header.clone();
            self.notes.push(Note::UnitAssumed {
                header,
                unit,
                median: middle,
            });
        }
        if size.girth || self.is_decided(at) || stats.numbers.len() < 3 {
            return;
        }
        let (heights, metres) = self.heights_beside();
        if unsaid
            && middle < 3.0
            && median(&heights) > 5.0
            && stats.numbers.len() >= 3
            && self.decided[at].unit.is_none()
        {
            self.ask(at, stats.filled, ListQuestion::Metres { median: middle });
            return;
        }
        let Some(unit) = column.unit else {
            return;
        };
        let mm = middle * unit.mm();
        let stout = heights.len() >= LEAST_ROWS
            && metres.is_some_and(|metres| median(&heights) * metres * 1000.0 / mm < STOUT);
        if mm > GIRTH_MM || stout {
            self.ask(
                at,
                stats.filled,
                ListQuestion::Girth {
                    median: middle,
                    // 94 with no unit is hardly inches.
                    unit: if column.assumed && unit == LengthUnit::Inch && mm > 2.0 * GIRTH_MM {
                        LengthUnit::Centimetre
                    } else {
                        unit
                    },
                    said: !column.assumed,
                },
            );
        }
    }

    /// Bare heights, sorted, and metres in their unit where it is known.
    fn heights_beside(&self) -> (Vec<f64>, Option<f64>) {
        let Some(at) = self.all(Column::Height).first().copied() else {
            return (Vec::new(), None);
        };
        let metres = self.reading.columns[at].unit.map(|unit| unit.mm() / 1000.0);
        (self.stats(at).numbers.clone(), metres)
    }

    /// A value that no tree has, or 999 and the like far above all others, in several rows.
    fn missing_values(
        &mut self,
        at: usize,
        size: &SizeColumn,
        sorted: &[f64],
        frequent: &[(String, usize)],
    ) {
        let round = if size.girth { PI } else { 1.0 };
        let scale = size.unit.map_or(1.0, LengthUnit::mm);
        let high = sorted[(sorted.len() - 1) * 9 / 10];
        for (value, rows) in frequent {
            if *rows < 3 {
                continue;
            }
            let Some(number) = read_number(value)
                .ok()
                .filter(|number| number.unit.is_none())
            else {
                continue;
            };
            let impossible = number.value * scale > IMPOSSIBLE_MM * round;
            let digits: Vec<char> = value.chars().collect();
            let nines = digits.len() >= 2
                && (digits.iter().all(|c| *c == '9') || digits.iter().all(|c| *c == '8'));
            let usual = |number: f64| sorted.iter().filter(|other| **other < number).count();
            let below = usual(number.value);
            let far = below * 2 > sorted.len()
                && number.value > 3.0 * sorted[below.saturating_sub(1)].max(1.0);
            if impossible || (nines && far && number.value >= high) {
                self.ask(
                    at,
                    *rows,
                    ListQuestion::Missing {
                        value: value.clone(),
                        rows: *rows,
                    },
                );
            }
        }
    }
}
