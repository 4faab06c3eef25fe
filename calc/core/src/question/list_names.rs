//! Which tree a cell of a list means. Stricter than a form that a person can look at: exact names alone, after what
//! stands behind a name was cut off. Nothing like it is ever taken, and no genus stands for the one species of it that is known here.

mod cuts;

use super::Found;
use super::species::{by_place, plain};
use crate::reference::Reference;
use crate::terms::regional::OtherTree;
use crate::terms::small::order::sort_by;
use crate::terms::species::Species;
use cuts::{is_capital, is_initial, tidied, without_authors, without_brackets, without_cultivar};
use std::collections::BTreeMap;

/// What a cell of a list names.
#[derive(Clone, Debug)]
pub enum InList {
    /// One species of the list.
    One(&'static Species),
    /// A tree that is known and is not on the list.
    Other(&'static OtherTree),
    /// Several trees that people of different countries call so.
    Several(Vec<&'static str>),
    /// A genus, or a word for one: the listed names that are of it.
    Genus(Vec<&'static str>),
    /// Two names that are not of one tree: as they were found.
    Two(&'static str, &'static str),
    /// A first word that is shortened, as `A. platanoides`.
    Shortened,
    /// None of them.
    None,
}

/// A name as found, and whether the cell doubts it.
#[derive(Clone, Debug)]
pub struct FoundName {
    /// What it names.
    pub found: InList,
    /// The cell has a question mark, or says `maybe`.
    pub doubted: bool,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Target {
    Listed(usize),
    Other(usize),
}

/// Every name that is known, sorted, so that a name of a list is found without going through all of them.
#[derive(Debug)]
pub struct ListNames {
    reference: &'static Reference,
    /// Plain names.
    names: Vec<(String, Target)>,
    /// The same without their spaces; none where that would mean two trees.
    joined: Vec<(String, Option<Target>)>,
    /// Genera, and words that stand for one (`maple`), with the listed names that are of it.
    genera: BTreeMap<String, Vec<&'static str>>,
}

impl ListNames {
    /// The names of the tables.
    #[must_use]
    pub fn new(reference: &'static Reference) -> Self {
        let mut names: Vec<(String, Target)> = Vec::new();
        let mut genera: BTreeMap<String, Vec<&'static str>> = BTreeMap::new();
        let mut add = |name: &str, target: Target| {
            let name = plain(name);
            // A hybrid may be written without its sign; another tree is never called so.
            let bare = name.replace(" x ", " ");
            if bare != name {
                names.push((bare, target));
            }
            names.push((name, target));
        };
        for (at, species) in reference.species.iter().enumerate() {
            add(species.scientific, Target::Listed(at));
            for name in species.names {
                add(name, Target::Listed(at));
            }
        }
        let others = reference.regional.get().map_or(&[][..], |it| it.others);
        for (at, other) in others.iter().enumerate() {
            add(other.scientific, Target::Other(at));
            for name in other.names {
                add(name, Target::Other(at));
            }
        }
        // The list stands before other trees.
        sort_by(&mut names, |a, b| {
            a.0.cmp(&b.0).then(rank(a.1).cmp(&rank(b.1)))
        });
        names.dedup_by(|later, first| later.0 == first.0);
        let mut genus = |word: String, name: Option<&'static str>| {
            // Some words that end names are no kind of tree.
            if word.len() < 3 || NO_GENUS.contains(&word.as_str()) {
                return;
            }
            let of = genera.entry(word).or_default();
            if let Some(name) = name
                && !of.contains(&name)
            {
                of.push(name);
            }
        };
        let first = |name: &str| plain(name.split([' ', ':']).next().unwrap_or(""));
        let last = |name: &str| {
            let name = plain(name);
            name.rsplit_once(' ').map(|(_, word)| word.to_owned())
        };
        for species in reference.species.iter().filter(|species| !species.unknown) {
            genus(first(species.scientific), Some(species.name));
            for name in species
                .names
                .iter()
                .filter(|name| **name != species.scientific)
            {
                if let Some(word) = last(name) {
                    genus(word, Some(species.name));
                }
            }
        }
        for other in others {
            genus(first(other.scientific), None);
            for name in other.names {
                if let Some(word) = last(name) {
                    genus(word, None);
                }
            }
        }
        let mut joined: Vec<(String, Option<Target>)> = names
            .iter()
            .map(|(name, target)| (name.replace(' ', ""), Some(*target)))
            .collect();
        sort_by(&mut joined, |a, b| a.0.cmp(&b.0));
        joined.dedup_by(|later, first| {
            let same = later.0 == first.0;
            if same && later.1 != first.1 {
                first.1 = None;
            }
            same
        });
        Self {
            reference,
            names,
            joined,
            genera,
        }
    }

    /// The same with names of another language: a name, and the scientific one of its tree. One word alone is left out, it
    /// may be a genus there; so is a name that means two trees, or one that is known already.
    #[must_use]
    pub fn with<'n>(mut self, names: impl IntoIterator<Item = (&'n str, &'n str)>) -> Self {
        let mut more: BTreeMap<String, Option<Target>> = BTreeMap::new();
        for (name, scientific) in names {
            let name = plain(name);
            let target = self.exact(&plain(scientific));
            if !name.contains(' ') || self.exact(&name).is_some() {
                continue;
            }
            let known = more.entry(name).or_insert(target);
            if *known != target {
                *known = None;
            }
        }
        let more = more
            .into_iter()
            .filter_map(|(name, target)| Some((name, target?)));
        self.names.extend(more);
        sort_by(&mut self.names, |a, b| a.0.cmp(&b.0));
        self
    }

    fn exact(&self, plain: &str) -> Option<Target> {
        let at = self
            .names
            .binary_search_by(|(name, _)| name.as_str().cmp(plain));
        at.ok().map(|at| self.names[at].1)
    }

    fn together(&self, plain: &str) -> Option<Target> {
        let joined = plain.replace(' ', "");
        let at = self
            .joined
            .binary_search_by(|(name, _)| name.as_str().cmp(joined.as_str()));
        self.joined[at.ok()?].1
    }

    fn genus(&self, plain: &str) -> Option<&[&'static str]> {
        let find = |word: &str| self.genera.get(word);
        let of = find(plain).or_else(|| find(plain.strip_suffix('s')?));
        of.map(Vec::as_slice)
    }

    fn found(&self, target: Target) -> InList {
        match target {
            Target::Listed(at) => InList::One(&self.reference.species[at]),
            Target::Other(at) => {
                let others = self
                    .reference
                    .regional
                    .get()
                    .map_or(&[][..], |it| it.others);
                others.get(at).map_or(InList::None, InList::Other)
            }
        }
    }

    /// A whole name: by region where that decides, else exactly one tree. A genus is none.
    fn whole(&self, name: &str, region: Option<&str>) -> Option<InList> {
        let name = plain(name);
        if name.is_empty() {
            return None;
        }
        match by_place(self.reference, &name, region) {
            Some(Found::One(species)) => return Some(InList::One(species)),
            Some(Found::Other(other)) => return Some(InList::Other(other)),
            Some(Found::Like(names)) => {
                return Some(InList::Several(names.iter().map(|it| it.name).collect()));
            }
            Some(Found::NotHere) | None => {}
        }
        // A genus that is a name of one species too stays a genus.
        if !name.contains(' ') && self.is_scientific_genus(&name) {
            return None;
        }
        let single = || name.strip_suffix('s').and_then(|name| self.exact(name));
        let short = || name.strip_suffix(" tree").and_then(|name| self.exact(name));
        let target = self
            .exact(&name)
            .or_else(short)
            .or_else(single)
            .or_else(|| self.together(&name))?;
        Some(self.found(target))
    }

    fn is_scientific_genus(&self, word: &str) -> bool {
        let is = |scientific: &str| {
            let genus = plain(scientific);
            genus.split(' ').next() == Some(word) && genus.contains(' ')
        };
        let others = self
            .reference
            .regional
            .get()
            .map_or(&[][..], |it| it.others);
        self.reference
            .species
            .iter()
            .any(|species| is(species.scientific))
            || others.iter().any(|other| is(other.scientific))
    }
}

/// Words at the end of names that say nothing of the kind.
const NO_GENUS: [&str; 6] = ["tree", "bush", "shrub", "heaven", "plant", "wood"];

fn rank(target: Target) -> usize {
    match target {
        Target::Listed(_) => 0,
        Target::Other(_) => 1,
    }
}

/// The longest cell that is looked at, in characters: a longer one is no name.
const LONGEST: usize = 160;

/// Words that doubt a name.
const DOUBTS: [&str; 18] = [
    "maybe",
    "possibly",
    "possible",
    "probably",
    "probable",
    "perhaps",
    "likely",
    "unsure",
    "cf",
    "cf.",
    "aff.",
    "quizás",
    "quizá",
    "peut-être",
    "vielleicht",
    "vermutlich",
    "talvez",
    "provável",
];
/// Words that stand for an epithet which nobody knew.
const ONLY_GENUS: [&str; 12] = [
    "sp", "sp.", "spp", "spp.", "species", "spec.", "genus", "especie", "espèce", "art", "espécie",
    ".",
];

/// Finds the tree that a cell of a list names. What is cut, in this order, each time looked up again: brackets, a
/// cultivar in quotes, a second name, authors, ranks below the species. The sign of a hybrid never is.
#[must_use]
pub fn find_in_list(names: &ListNames, typed: &str, region: Option<&str>) -> FoundName {
    if typed.chars().count() > LONGEST {
        return FoundName {
            found: InList::None,
            doubted: false,
        };
    }
    let text = tidied(typed);
    let mark = text.contains('?');
    let text = text.replace('?', " ");
    let words: Vec<&str> = text.split_whitespace().collect();
    let kept = words
        .iter()
        .filter(|word| !DOUBTS.contains(&word.to_lowercase().as_str()));
    let kept: Vec<&str> = kept.copied().collect();
    let doubted = mark || kept.len() < words.len();
    FoundName {
        found: find(names, &kept.join(" "), region),
        doubted,
    }
}

fn find(names: &ListNames, text: &str, region: Option<&str>) -> InList {
    if let Some(found) = names.whole(text, region) {
        return found;
    }
    let (outside, inside) = without_brackets(text);
    if outside != text {
        let found = find(names, &outside, region);
        if is_strange(&found, &outside) {
            return InList::None;
        }
        let also = names.whole(&inside, region);
        return agreed(found, also.unwrap_or(InList::None));
    }
    let bare = without_cultivar(text);
    if bare != text {
        return find(names, &bare, region);
    }
    if let Some(found) = two_names(names, text, region) {
        return found;
    }
    let words: Vec<&str> = text.split_whitespace().collect();
    if let [first, _, ..] = words.as_slice()
        && is_initial(first)
    {
        return InList::Shortened;
    }
    if let Some(short) = without_authors(&words)
        && let Some(found) = names.whole(&short, region)
        // Of a common name what follows may make it another tree.
        && (looks_scientific(&short) || is_scientific(&found, &short))
    {
        return found;
    }
    genus(names, &words)
}

/// The genus question: a genus or a word for one, alone or with a word for an unknown epithet.
fn genus(names: &ListNames, words: &[&str]) -> InList {
    let is_only = |word: &&&str| ONLY_GENUS.contains(&word.to_lowercase().as_str());
    let known: Vec<&str> = words
        .iter()
        .filter(|word| !is_only(word))
        .copied()
        .collect();
    let [word] = known.as_slice() else {
        return InList::None;
    };
    match names.genus(&plain(word)) {
        Some(of) => InList::Genus(of.to_vec()),
        None => InList::None,
    }
}

/// What two readings of one cell come to: the known one; where both are known they must be one tree.
fn agreed(first: InList, second: InList) -> InList {
    match (&first, &second) {
        (InList::None, _) => second,
        (_, InList::None) => first,
        (InList::Genus(_), InList::Genus(_)) => first,
        (InList::Genus(of), InList::One(species)) if of.contains(&species.name) => second,
        (InList::One(species), InList::Genus(of)) if of.contains(&species.name) => first,
        _ => match (shown(&first), shown(&second)) {
            (Some(a), Some(b)) if a.1 == b.1 => first,
            (Some(a), Some(b)) => InList::Two(a.0, b.0),
            // A genus beside a tree of another one, or a name of several trees: nobody but the writer knows.
            (Some(a), None) => InList::Two(a.0, a.0),
            (None, Some(b)) => InList::Two(b.0, b.0),
            (None, None) => first,
        },
    }
}

/// The shown name and the scientific one.
fn shown(found: &InList) -> Option<(&'static str, &'static str)> {
    match found {
        InList::One(species) => Some((species.name, species.scientific)),
        InList::Other(other) => Some((other.names[0], other.scientific)),
        _ => None,
    }
}

/// Two names in one cell, between a dash, a slash, colons or a comma, or a name that was turned round.
fn two_names(names: &ListNames, text: &str, region: Option<&str>) -> Option<InList> {
    for or in [
        " or ", " and ", " & ", " oder ", " und ", " ou ", " o ", " y ",
    ] {
        if let Some((a, b)) = text.split_once(or)
            && !a.trim().is_empty()
            && (names.whole(b, region).is_some() || names.genus(&plain(b)).is_some())
        {
            return Some(apart(names, a, b, region));
        }
    }
    for mark in [" :: ", "::", " - ", " / ", "/", ": ", " | "] {
        if let Some((a, b)) = text.split_once(mark) {
            return Some(apart(names, a, b, region));
        }
    }
    if let Some((a, b)) = text.split_once(',') {
        return Some(turned(names, a.trim(), b.trim(), region));
    }
    // "MAPLE-NORWAY": the kind in front.
    if let Some((a, b)) = text.split_once('-')
        && !a.contains(' ')
        && names.genus(&plain(a)).is_some()
    {
        return names.whole(&[b, " ", a].concat(), region);
    }
    None
}

/// Both names; where one is not known it must not be another tree's.
fn apart(names: &ListNames, a: &str, b: &str, region: Option<&str>) -> InList {
    let (a, b) = (a.trim(), b.trim());
    if a.is_empty() || b.is_empty() {
        return find(names, if a.is_empty() { b } else { a }, region);
    }
    let (first, second) = (find(names, a, region), find(names, b, region));
    if is_strange(&first, a) || is_strange(&second, b) {
        return InList::None;
    }
    agreed(first, second)
}

/// A scientific name that is not known here is another tree than the one beside it.
fn is_strange(found: &InList, text: &str) -> bool {
    matches!(found, InList::None) && looks_scientific(text)
}

/// Whether a name is the scientific one of the tree that it found.
fn is_scientific(found: &InList, name: &str) -> bool {
    let bare = |name: &str| plain(name).replace(" x ", " ");
    shown(found).is_some_and(|(_, scientific)| bare(scientific) == bare(name))
}

/// Endings of genera and of epithets in Latin.
const GENUS_ENDS: [&str; 13] = [
    "a", "us", "um", "is", "er", "ix", "es", "ex", "ar", "go", "os", "on", "ys",
];
const EPITHET_ENDS: [&str; 15] = [
    "a", "us", "um", "is", "i", "ns", "es", "or", "er", "ix", "o", "os", "e", "on", "ar",
];

/// Two words or more, the first two as Latin ends them; a capital in front alone, or capitals all through.
fn looks_scientific(text: &str) -> bool {
    let words: Vec<&str> = text
        .split_whitespace()
        .filter(|word| !matches!(*word, "x" | "X" | "×"))
        .collect();
    let [genus, epithet, ..] = words.as_slice() else {
        return false;
    };
    let ends = |word: &str, ends: &[&str]| {
        let word = word.to_lowercase();
        word.len() > 3 && ends.iter().any(|end| word.ends_with(end))
    };
    let plain = |word: &str| word.chars().all(|c| c.is_ascii_alphabetic() || c == '-');
    is_capital(genus)
        && plain(genus)
        && plain(epithet)
        && ends(genus, &GENUS_ENDS)
        && ends(epithet, &EPITHET_ENDS)
}

/// "Maple, Norway" and "Maple, Norway Crimson King"; else two names.
fn turned(names: &ListNames, noun: &str, rest: &str, region: Option<&str>) -> InList {
    if rest.is_empty() || noun.is_empty() {
        return find(names, if noun.is_empty() { rest } else { noun }, region);
    }
    // "Oak, red, northern": the last word first.
    let mut parts: Vec<&str> = rest.split(',').map(str::trim).collect();
    parts.reverse();
    let turned = [&parts.join(" "), " ", noun].concat();
    if let Some(found) = names.whole(&turned, region) {
        return found;
    }
    let is_noun = names.genus(&plain(noun)).is_some() && !looks_scientific(noun);
    if is_noun && parts.len() == 1 {
        let words: Vec<&str> = rest.split_whitespace().collect();
        for count in (1..words.len()).rev() {
            let name = [&words[..count].join(" "), " ", noun].concat();
            let Some(found) = names.whole(&name, region) else {
                continue;
            };
            // What is left over may make it another tree: "Maple, red Japanese" is no red maple.
            let left = [&words[count..].join(" "), " ", noun].concat();
            return match names.whole(&left, region) {
                Some(other) => agreed(found, other),
                None if words[count..].iter().all(|word| is_capital(word)) => found,
                None => InList::None,
            };
        }
        return InList::None;
    }
    apart(names, noun, rest, region)
}
