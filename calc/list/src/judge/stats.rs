//! What a column looks like: how many cells are filled, which read as numbers, which stand often.

use crate::record::Record;
use crate::words::WordFinder;
use calc::terms::number::read_number;
use calc::terms::small::order::sort_by;
use calc_data::list::fold;
use std::collections::{BTreeMap, BTreeSet};

/// How many different values are counted.
const MOST_VALUES: usize = 5_000;

/// A column at a glance.
#[derive(Clone, Debug, Default)]
pub struct Stats {
    /// Cells that hold something.
    pub filled: usize,
    /// The bare numbers above zero, sorted.
    pub numbers: Vec<f64>,
    /// Numbers with a unit of their own.
    pub with_unit: usize,
    /// Bare numbers with decimals or fractions.
    pub with_part: usize,
    /// The values as typed, without space round them, and how often each stands.
    pub values: BTreeMap<String, usize>,
}

impl Stats {
    /// Of one column.
    #[must_use]
    pub fn of(words: WordFinder, missing: &BTreeSet<String>, rows: &[Record], at: usize) -> Self {
        let mut stats = Self::default();
        for row in rows {
            let cell = row.cell(at).trim();
            if words.is_missing(cell) || missing.contains(&fold(cell)) {
                continue;
            }
            stats.filled += 1;
            if stats.values.len() < MOST_VALUES {
                *stats.values.entry(cell.to_owned()).or_default() += 1;
            } else if let Some(count) = stats.values.get_mut(cell) {
                *count += 1;
            }
            match read_number(cell) {
                Ok(number) if number.unit.is_some() => stats.with_unit += 1,
                Ok(number) if number.value > 0.0 => {
                    stats.numbers.push(number.value);
                    stats.with_part +=
                        usize::from(has_part(number.value) || cell.contains(['.', ',']));
                }
                _ => {}
            }
        }
        sort_by(&mut stats.numbers, f64::total_cmp);
        stats
    }

    /// The middle number; zero where there is none.
    #[must_use]
    pub fn median(&self) -> f64 {
        median(&self.numbers)
    }

    /// The most frequent values, the first first.
    #[must_use]
    pub fn frequent(&self) -> Vec<(String, usize)> {
        let mut all: Vec<(String, usize)> = self
            .values
            .iter()
            .map(|(value, count)| (value.clone(), *count))
            .collect();
        sort_by(&mut all, |a, b| b.1.cmp(&a.1).then(a.0.cmp(&b.0)));
        all
    }
}

/// The middle of sorted numbers; zero where there is none.
#[must_use]
pub(crate) fn median(sorted: &[f64]) -> f64 {
    let count = sorted.len();
    if count == 0 {
        return 0.0;
    }
    let middle = sorted[count / 2];
    if count % 2 == 1 {
        middle
    } else {
        f64::midpoint(sorted[count / 2 - 1], middle)
    }
}

fn has_part(value: f64) -> bool {
    value % 1.0 != 0.0
}
