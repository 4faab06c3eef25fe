//! Trees of a part of the property that are on no sheet, by the reason: asked of each sheet, so they are laid out once.

use super::Sheets;
use crate::page::Page;
use crate::words::{Word, m, phrase};
use std::collections::BTreeMap;

/// Trees that are named; the others are counted.
const NAMED: usize = 4;

/// Why a tree is on no sheet, as it is said, and the reasons of a plan that come to it.
const REASONS: [(Word, &[&str]); 4] = [
    (m::SHEETS_NOT_PROFESSIONAL, &["professional"]),
    (m::SHEETS_NOT_KNOWN, &["cannot_tell"]),
    (m::SHEETS_NOT_OTHER, &["other_method", "leave_it"]),
    (m::SHEETS_NOT_FIXED, &["to_fix"]),
];

/// Tags with their place in the list, in order, of each of [`REASONS`].
type Tags<'a> = [Vec<(usize, &'a str)>; REASONS.len()];

/// Trees that are on no sheet.
pub(super) struct NotHere<'a> {
    of_unit: BTreeMap<&'a str, Tags<'a>>,
}

impl<'a> NotHere<'a> {
    /// Of all the list.
    pub(super) fn of(sheets: &Sheets<'a>) -> Self {
        let trees = sheets.file.trees.iter();
        let trees = trees.map(|tree| (tree.reason, tree.unit.as_str(), tree.tree_id.as_str()));
        let to_fix = sheets.to_fix.iter();
        let to_fix = to_fix.map(|row| ("to_fix", row.unit.as_str(), row.tree_id.as_str()));
        let mut of_unit: BTreeMap<&str, Tags<'_>> = BTreeMap::new();
        for (at, (reason, unit, tag)) in trees.chain(to_fix).enumerate() {
            let why = REASONS.iter().position(|(_, of)| of.contains(&reason));
            if let Some(why) = why {
                of_unit.entry(unit).or_default()[why].push((at, tag));
            }
        }
        Self { of_unit }
    }

    /// What is said of them on a sheet of these units; of all units where it names none.
    pub(super) fn told(&self, page: &mut Page<'_>, units: &[&str]) {
        let of_sheet: Vec<&Tags<'_>> = match units {
            [] => self.of_unit.values().collect(),
            _ => units
                .iter()
                .filter_map(|unit| self.of_unit.get(unit))
                .collect(),
        };
        let mut said = Vec::new();
        for (at, (why, _)) in REASONS.iter().enumerate() {
            let all: usize = of_sheet.iter().map(|of| of[at].len()).sum();
            if all == 0 {
                continue;
            }
            let first = of_sheet.iter().flat_map(|of| of[at].iter().take(NAMED));
            let mut first: Vec<(usize, &str)> = first.copied().collect();
            first.sort_unstable();
            let named = first.iter().take(NAMED).map(|(_, tag)| *tag);
            let named = named.collect::<Vec<_>>().join(", ");
            let tags = match all.saturating_sub(NAMED) {
                0 => named,
                more => m::sheets_and_more(named, more.to_string()),
            };
            said.push([phrase::sentence(why.text()).as_str(), ": ", &tags].concat());
        }
        if said.is_empty() {
            return;
        }
        page.open("p");
        page.leaf("b", m::SHEETS_NOT_HERE);
        page.text(" ");
        page.text([&phrase::joined_by(&said, ". "), "."].concat());
        page.close();
    }
}
