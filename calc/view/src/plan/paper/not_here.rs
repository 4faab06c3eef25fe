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

/// The reasons of a plan of trees that are dead or were ringed before.
const STANDING: [&str; 2] = ["dead", "done"];
/// Those of them that are named: people keep out from under each, so more than of the others.
const STANDING_NAMED: usize = 12;

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
            if STANDING.contains(&reason) {
                standing.entry(unit).or_default().push((at, tag));
            }
            let why = REASONS.iter().position(|(_, of)| of.contains(&reason));
            if let Some(why) = why {
                of_unit.entry(unit).or_default()[why].push((at, tag));
            }
        }
        Self { of_unit, standing }
    }

    /// Which trees of these units stand dead or ringed, but those that somebody is sent to by this sheet, by their tags. Of
    /// all units where the sheet names none.
    pub(super) fn keep_out(&self, page: &mut Page<'_>, units: &[&str], sent_to: &[&str]) {
        let of = self.standing.iter();
        let of = of.filter(|(unit, _)| units.is_empty() || units.contains(unit));
        let others = of
            .flat_map(|(_, tags)| tags)
            .filter(|(_, tag)| !sent_to.contains(tag));
        let others: Vec<(usize, &str)> = others.copied().collect();
        if others.is_empty() {
            return;
        }
        let all = others.len();
        line(
            page,
            m::SHEETS_KEEP_OUT,
            &first(others, all, STANDING_NAMED),
        );
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
            let tags = of_sheet.iter().flat_map(|of| of[at].iter().take(NAMED));
            let tags = first(tags.copied().collect(), all, NAMED);
            said.push([phrase::sentence(why.text()).as_str(), ": ", &tags].concat());
        }
        if said.is_empty() {
            return;
        }
        line(page, m::SHEETS_NOT_HERE, &phrase::joined_by(&said, ". "));
    }
}

/// The first of some tags in the order of the list, and how many more of all there are.
fn first(mut tags: Vec<(usize, &str)>, all: usize, most: usize) -> String {
    tags.sort_unstable();
    let named: Vec<&str> = tags.iter().take(most).map(|(_, tag)| *tag).collect();
    let named = named.join(", ");
    match all.saturating_sub(most) {
        0 => named,
        more => m::sheets_and_more(named, more.to_string()),
    }
}

/// A paragraph behind its title.
fn line(page: &mut Page<'_>, title: Word, says: &str) {
    page.open("p");
    page.leaf("b", title);
    page.text(" ");
    page.text([says, "."].concat());
    page.close();
}
