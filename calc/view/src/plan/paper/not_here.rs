//! Trees of a part of the property that are on no sheet, by the reason, and those under which nobody goes: asked of each
//! sheet, so they are laid out once.

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

/// The reasons of a plan of trees that are dead or were ringed before, and how many of them are named.
const STANDING: (&[&str], usize) = (&["dead", "done"], 12);

/// Whether a tree is dead or was ringed before, by its reason.
fn is_standing(reason: &str) -> bool {
    STANDING.0.contains(&reason)
}

/// Tags with their place in the list, in order, of each of [`REASONS`].
type Tags<'a> = [Vec<(usize, &'a str)>; REASONS.len()];

/// Trees that are on no sheet.
pub(super) struct NotHere<'a> {
    of_unit: BTreeMap<&'a str, Tags<'a>>,
    /// Those that are dead or were ringed before.
    standing: BTreeMap<&'a str, Vec<(usize, &'a str)>>,
}

impl<'a> NotHere<'a> {
    /// Of all the list.
    pub(super) fn of(sheets: &Sheets<'a>) -> Self {
        let trees = sheets.file.trees.iter();
        let trees = trees.map(|tree| (tree.reason, tree.unit.as_str(), tree.tree_id.as_str()));
        let to_fix = sheets.to_fix.iter();
        let to_fix = to_fix.map(|row| ("to_fix", row.unit.as_str(), row.tree_id.as_str()));
        let mut of_unit: BTreeMap<&str, Tags<'_>> = BTreeMap::new();
        let mut standing: BTreeMap<&str, Vec<(usize, &str)>> = BTreeMap::new();
        for (at, (reason, unit, tag)) in trees.chain(to_fix).enumerate() {
            if is_standing(reason) {
                standing.entry(unit).or_default().push((at, tag));
            }
            let why = REASONS.iter().position(|(_, of)| of.contains(&reason));
            if let Some(why) = why {
                of_unit.entry(unit).or_default()[why].push((at, tag));
            }
        }
        Self { of_unit, standing }
    }

    /// Which trees of these units stand dead or ringed, but those that somebody is sent to by this sheet: `sent_to` has
    /// tags with their reasons. Of all units where the sheet names none.
    pub(super) fn keep_out(&self, page: &mut Page<'_>, units: &[&str], sent_to: &[(&str, &str)]) {
        let of = self.standing.iter();
        let of = of.filter(|(unit, _)| units.is_empty() || units.contains(unit));
        let mut all: Vec<(usize, &str)> = of.flat_map(|(_, tags)| tags).copied().collect();
        all.sort_unstable();
        let sent_to = sent_to.iter().filter(|(_, reason)| is_standing(reason));
        let sent_to: Vec<&str> = sent_to.map(|(tag, _)| *tag).collect();
        let others = all.len().saturating_sub(sent_to.len());
        let named = all.iter().filter(|(_, tag)| !sent_to.contains(tag));
        let named: Vec<&str> = named.take(STANDING.1).map(|(_, tag)| *tag).collect();
        if named.is_empty() {
            return;
        }
        let more = others.saturating_sub(named.len());
        let tags = match more {
            0 => named.join(", "),
            more => m::sheets_and_more(named.join(", "), more.to_string()),
        };
        page.open("p");
        page.leaf("b", m::SHEETS_KEEP_OUT);
        page.text(" ");
        page.text([&tags, "."].concat());
        page.close();
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
