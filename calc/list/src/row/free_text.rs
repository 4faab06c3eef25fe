//! Free text of a row. It is never made a value: where it speaks of a wire, of something that the tree could hit or of a
//! broken part, the row waits for its owner, or is looked at.
//!
//! ```text
//! spoken(words, "wire overhead! do not touch")   a wire
//! spoken(words, "Wires checked: none")           nothing: what the clause denies is not there
//! ```

use super::{Rows, Tag, Told};
use crate::problem::{RowFault, Severity, repeated};
use crate::record::Record;
use crate::words::WordFinder;
use calc::question::{Text, Typed};
use calc_data::list::{Column, WordKind, fold};
use std::collections::BTreeSet;
use std::sync::OnceLock;

/// What a text speaks of.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) struct Spoken {
    /// A wire overhead.
    pub wire: bool,
    /// A building, a road, a path.
    pub thing: bool,
    /// A broken, hung, hollow or rotten part, a trunk that splits, a root plate that lifts.
    pub fault: bool,
    /// That the tree is to be left.
    pub keep: bool,
}

impl Rows {
    /// What the free text of a row speaks of. A wire keeps the tree out until the row itself says how far off it is, or that
    /// none is in reach; a thing that it could hit, out of what is said of the whole part; a broken part, until it stands
    /// where it is read. A crew gets the note along.
    pub(super) fn free_texts(
        &self,
        record: &Record,
        typed: &mut Typed,
        tag: &mut Tag,
        told: &mut Told<'_>,
    ) {
        for at in &self.reading.texts {
            let at = *at;
            let Some(cell) = self.filled_at(record, at) else {
                continue;
            };
            let is_note = self.reading.columns[at].is == Column::Notes;
            let gone = is_note && self.note(at, cell, told);
            let spoken = spoken(self.words, cell);
            let waits = spoken.wire && self.wire_spoken(record, at, typed, tag, told);
            let thing = spoken.thing && is_note;
            if thing && (!tag.says_targets || typed.none_in_reach) {
                let open = !tag.says_targets;
                tag.says_targets = true;
                told.add(at, Severity::Check, RowFault::NoteThing { open });
            }
            let fault = spoken.fault && !self.reading.states.contains(&at);
            if fault && typed.signs.is_empty() {
                told.add(at, Severity::Fix, RowFault::NoteFault);
            }
            // "Wire overhead! Do not touch" waits for the wire.
            let keep = spoken.keep && is_note && !waits;
            if keep && matches!(tag.status, "" | "planned") {
                told.add(at, Severity::Fix, RowFault::NoteKeep);
            }
            if (spoken.wire || thing || fault || gone) && tag.note.is_empty() {
                tag.note = repeated(cell);
            }
        }
    }

    /// A wire that a text speaks of: nobody can tell how near it is, unless the row says it itself. Whether the row waits.
    fn wire_spoken(
        &self,
        record: &Record,
        at: usize,
        typed: &mut Typed,
        tag: &mut Tag,
        told: &mut Told<'_>,
    ) -> bool {
        let says = |answer: &str| {
            let line = typed.line_within_reach.as_ref();
            line.is_some_and(|line| line.0 == answer)
        };
        let own = self.filled(record, Column::LineWithinReach).is_some() && says("no");
        let measured = typed.targets.iter().any(|target| {
            target.kind.as_ref().is_some_and(|kind| kind.0 == "line") && target.distance.is_some()
        });
        let open = !(own || measured || says("yes"));
        if open {
            typed.line_within_reach = Some(Text::from("cant_tell"));
            tag.says_targets = true;
        }
        told.add(at, Severity::Check, RowFault::NoteWire { open });
        open
    }

    /// Words that say that the tree may be gone, dead or ringed, and a number in front of trunks, are looked at. Whether it
    /// may be gone.
    fn note(&self, at: usize, cell: &str, told: &mut Told<'_>) -> bool {
        if cell.len() > LONGEST {
            return false;
        }
        let folded = fold(cell);
        let words: Vec<&str> = folded
            .split(|c: char| !c.is_ascii_alphanumeric())
            .filter(|word| !word.is_empty())
            .collect();
        let is_gone = |word: &str| self.words.word(WordKind::NoteGone, word).is_some();
        let mut pairs = words.windows(2);
        let gone =
            words.iter().any(|word| is_gone(word)) || pairs.any(|pair| is_gone(&pair.join(" ")));
        if gone {
            told.add(at, Severity::Check, RowFault::NoteGone);
        }
        let stems = words.windows(2).any(|pair| {
            let number = pair[0].len() < 3 && pair[0].bytes().all(|c| c.is_ascii_digit());
            number && pair[0] != "1" && self.words.means(WordKind::StemWord, pair[1]).is_some()
        });
        if stems {
            told.add(at, Severity::Check, RowFault::NoteStems);
        }
        gone
    }
}

/// The longest text that is looked at, in bytes.
const LONGEST: usize = 2_000;
/// The most words of an expression in the table.
const MOST_WORDS: usize = 3;

/// A clause: its words, and whether a later one may answer it (`Wires - none`).
type Clause<'a> = Vec<&'a str>;

/// What a text speaks of and does not deny.
pub(crate) fn spoken(words: WordFinder, text: &str) -> Spoken {
    let mut spoken = Spoken::default();
    if text.len() > LONGEST || !text.bytes().any(|c| c.is_ascii_alphabetic()) {
        return spoken;
    }
    let folded = without_short_points(&fold(text));
    let clauses = clauses(&folded);
    for (at, clause) in clauses.iter().enumerate() {
        let mut from = 0;
        while from < clause.len() {
            let Some((kind, long)) = expression(words, &clause[from..]) else {
                from += 1;
                continue;
            };
            let found = match kind {
                Some(Speaks::Wire) => Some(&mut spoken.wire),
                Some(Speaks::Thing) => Some(&mut spoken.thing),
                Some(Speaks::Fault) => Some(&mut spoken.fault),
                Some(Speaks::Keep) => Some(&mut spoken.keep),
                None => None,
            };
            if let Some(found) = found {
                let next = clauses.get(at + 1).map_or(&[][..], Vec::as_slice);
                *found |= !is_denied(words, clause, (from, from + long), next);
            }
            from += long;
        }
    }
    spoken
}

/// What an expression speaks of.
#[derive(Clone, Copy)]
enum Speaks {
    Wire,
    Thing,
    Fault,
    Keep,
}

/// `h.v. line` without the points behind single letters.
fn without_short_points(folded: &str) -> String {
    let mut kept = String::with_capacity(folded.len());
    let mut letters = 0;
    for c in folded.chars() {
        if c == '.' && letters == 1 {
            // The next letter goes on with the same word.
            letters = 0;
            continue;
        }
        letters = if c.is_ascii_alphabetic() {
            letters + 1
        } else {
            0
        };
        kept.push(c);
    }
    kept
}

/// The words between signs that part clauses; a point inside a number or a shortened word parts nothing.
fn clauses(folded: &str) -> Vec<Clause<'_>> {
    let mut clauses = Vec::new();
    let parts = |c: char| ",;:!?()[]/\"".contains(c);
    for part in folded.split(parts) {
        for part in part.split(". ").flat_map(|part| part.split(" - ")) {
            let split = part.split(|c: char| !c.is_ascii_alphanumeric());
            let words: Vec<&str> = split.filter(|word| !word.is_empty()).collect();
            if !words.is_empty() {
                clauses.push(words);
            }
        }
    }
    clauses
}

/// Kinds of words that a text is looked through for.
const HEARD: [WordKind; 5] = [
    WordKind::NoteNoWire,
    WordKind::NoteWire,
    WordKind::NoteFault,
    WordKind::NoteKeep,
    WordKind::Target,
];

/// Whether an expression begins with a word, which may be in the plural. Few words of a text do: the rest is not looked up
/// kind by kind.
fn begins_one(words: WordFinder, word: &str) -> bool {
    static FIRST: OnceLock<BTreeSet<&'static str>> = OnceLock::new();
    let first = FIRST.get_or_init(|| {
        let all = HEARD.into_iter().flat_map(|kind| words.of_kind(kind));
        all.filter_map(|known| known.split(' ').next()).collect()
    });
    let one = || {
        word.strip_suffix('s')
            .is_some_and(|one| first.contains(one))
    };
    first.contains(word) || one()
}

/// The longest expression that some words begin with, and of how many words; none in it is one that only looks like a wire.
fn expression(words: WordFinder, from: &[&str]) -> Option<(Option<Speaks>, usize)> {
    if !begins_one(words, from.first()?) {
        return None;
    }
    for long in (1..=MOST_WORDS.min(from.len())).rev() {
        let text = from[..long].join(" ");
        let means = |kind| words.word(kind, &text);
        if means(WordKind::NoteNoWire).is_some() {
            return Some((None, long));
        }
        if means(WordKind::NoteWire).is_some() {
            return Some((Some(Speaks::Wire), long));
        }
        if means(WordKind::NoteFault).is_some() {
            return Some((Some(Speaks::Fault), long));
        }
        if means(WordKind::NoteKeep).is_some() {
            return Some((Some(Speaks::Keep), long));
        }
        if is_thing(words, &text) {
            return Some((Some(Speaks::Thing), long));
        }
    }
    None
}

/// Whether it is something with people in it or on it that the tree could hit; one or several.
fn is_thing(words: WordFinder, text: &str) -> bool {
    matches!(
        words.one_or_several(WordKind::Target, text),
        Some("building" | "road" | "path")
    )
}

/// Whether a clause denies what stands in some of its words, and says no more than that: `no power lines near`. The clause
/// behind may do so too: `wires: none`. Two denials, a figure or any other word leave it as it is: `keep clear of wires`.
fn is_denied(
    words: WordFinder,
    clause: &[&str],
    (from, to): (usize, usize),
    next: &[&str],
) -> bool {
    let rest = clause[..from].iter().chain(&clause[to..]);
    let here = denials(words, rest.copied());
    here == Some(1) || here == Some(0) && denials(words, next.iter().copied()) == Some(1)
}

/// How many words of a clause deny; none where one is neither a denial nor a word without weight beside one.
fn denials<'a>(words: WordFinder, rest: impl Iterator<Item = &'a str>) -> Option<usize> {
    let mut denials = 0;
    for word in rest {
        match words.word(WordKind::Denial, word) {
            Some("no") => denials += 1,
            Some(_) => {}
            // Things in one breath: "no wires or roads".
            None if words.word(WordKind::NoteWire, word).is_some() || is_thing(words, word) => {}
            None => return None,
        }
    }
    Some(denials)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn of(text: &str) -> Spoken {
        spoken(WordFinder::new(calc_data::list::tables()), text)
    }

    #[test]
    fn a_text_that_speaks_of_a_wire_is_heard_in_five_languages() {
        for text in [
            "wire overhead! do not touch",
            "hv line",
            "H.V. line 40 ft N",
            "power line above",
            "powerlines",
            "under the power lines",
            "do not ring, wires",
            "keep clear of wires",
            "no power line clearance",
            "not clear of wires",
            "no wires within 20 ft",
            "no wires but phone line above",
            "fence wire in trunk, electric line above",
            "Service drop to house",
            "limb on cables",
            "Wires? don't know",
            "wires: no touch",
            "needs line clearance crew",
            "cables encima",
            "tendido eléctrico",
            "línea de alta tensión",
            "debajo de la línea eléctrica",
            "cuidado: cables de luz",
            "unter Freileitung",
            "Stromleitung drüber",
            "ligne électrique au-dessus",
            "sous les fils électriques",
            "rede elétrica",
            "pole with transformer",
            "1 m from conductors",
            "telephone pole",
            "under the street light",
        ] {
            assert!(of(text).wire, "{text}");
        }
    }

    #[test]
    fn a_text_that_denies_a_wire_and_one_of_fences_are_none() {
        for text in [
            "no wires",
            "No overhead wires.",
            "wires checked: none",
            "Wires - none",
            "Wires? No.",
            "clear of wires",
            "tree is clear of power lines",
            "free of overhead lines",
            "without wires near",
            "no wires or roads",
            "nice tree; no power lines nearby; tall",
            "there are no wires here",
            "sin cables",
            "no hay cables cerca",
            "cables: ninguno",
            "sin tendido eléctrico",
            "keine Leitung",
            "pas de fils électriques",
            "sem fios",
            "underground cables",
            "barbed wire in trunk",
            "old fence wire",
            "wire fence grown in",
            "property line",
            "line of trees",
            "near fence line",
            "",
            "old",
        ] {
            assert!(!of(text).wire, "{text}");
        }
    }

    #[test]
    fn things_and_broken_parts_are_heard_too() {
        for text in [
            "leans over road",
            "kids' playground behind",
            "propane tank beside",
            "chicken coop 15 ft",
            "horses next door",
            "house 20'",
            "junto al camino",
        ] {
            assert!(of(text).thing, "{text}");
        }
        for text in ["no house near", "old tree", "no roads", "field edge"] {
            assert!(!of(text).thing, "{text}");
        }
        for text in [
            "hanging top",
            "split trunk, be careful",
            "hung limb",
            "widow-maker",
            "root plate lifting",
            "rama colgada",
            "hollow at base, conks",
            "birds nest in cavity",
            "rotten at the butt",
        ] {
            assert!(of(text).fault, "{text}");
        }
        for text in [
            "Do not ring!",
            "don't cut",
            "heritage tree",
            "no tocar",
            "save this one",
            "landowner objects",
            "eagle nest",
        ] {
            assert!(of(text).keep, "{text}");
        }
        for text in [
            "no hanging limbs",
            "split rail fence",
            "crack willow",
            "no cavities",
            "down in the hollow",
            "Hollow Brook",
        ] {
            assert!(!of(text).fault, "{text}");
        }
    }
}
