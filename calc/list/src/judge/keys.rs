//! Tags that repeat: the smallest set of columns that is unique, or nearly, is proposed.

use super::Judge;
use crate::ask::ListQuestion;
use calc_data::list::{Column, header_key};
use std::collections::BTreeSet;

/// Fewer repeats than this are slips, told row by row.
const FEWEST: usize = 5;

impl Judge<'_> {
    pub(super) fn keys(&mut self) {
        let decided: Vec<usize> = self
            .decisions
            .key
            .iter()
            .filter_map(|name| {
                let key = header_key(name);
                self.reading
                    .columns
                    .iter()
                    .position(|column| header_key(&column.header) == key)
            })
            .collect();
        if !decided.is_empty() {
            self.reading.key = decided;
            return;
        }
        let Some(id) = self.reading.id else {
            return;
        };
        if self.reading.of_a_piece {
            return;
        }
        let repeats = self.repeats(&[id]);
        if repeats < FEWEST || repeats * 20 < self.rows.len() {
            return;
        }
        // What groups trees: a place, a unit, then any column of a few values.
        let mut others: Vec<usize> = [Column::Site, Column::Unit, Column::Crew]
            .iter()
            .flat_map(|column| self.all(*column))
            .collect();
        for at in 0..self.reading.columns.len() {
            let stats = self.stats(at);
            let groups =
                (2..=500).contains(&stats.values.len()) && stats.values.len() * 2 < stats.filled;
            let text = matches!(
                self.reading.columns[at].is,
                Column::Keep | Column::Unit | Column::Site | Column::Region
            );
            if groups && text && !others.contains(&at) {
                others.push(at);
            }
        }
        let best = others
            .iter()
            .map(|at| (self.repeats(&[*at, id]), vec![*at, id]))
            .min_by_key(|(repeats, _)| *repeats);
        if let Some((left, columns)) = best
            && left * 100 <= self.rows.len()
        {
            let columns = columns
                .iter()
                .map(|at| self.reading.columns[*at].header.clone())
                .collect();
            self.ask(id, repeats, ListQuestion::Key { columns, repeats });
        }
    }

    /// How many rows repeat what an earlier one has in these columns.
    fn repeats(&self, columns: &[usize]) -> usize {
        let mut seen: BTreeSet<String> = BTreeSet::new();
        let mut repeats = 0;
        for row in self.rows {
            let tag = row.cell(columns[columns.len() - 1]);
            if self.words.is_missing(tag) {
                continue;
            }
            let key: Vec<&str> = columns.iter().map(|at| row.cell(*at).trim()).collect();
            repeats += usize::from(!seen.insert(key.join("\u{1f}")));
        }
        repeats
    }
}
