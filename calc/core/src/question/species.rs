//! Which tree is meant: any of its names finds it; a name that means another tree is said to; a near miss gets
//! suggestions, never a silent guess.

use crate::reference::Reference;
use crate::terms::region::lies_in_any;
use crate::terms::regional::{OtherTree, Regional};
use crate::terms::small::find::{holds, is_letter};
use crate::terms::small::sort::sort;
use crate::terms::species::Species;
use serde::{Serialize, Serializer};

/// What a name finds.
#[derive(Clone, Debug)]
pub enum Found {
    /// Exactly one species.
    One(&'static Species),
    /// A tree that is not on the list.
    Other(&'static OtherTree),
    /// None, but these names are like it, the likest first.
    Like(Vec<Like>),
    /// No species of the list, and the names of other trees are not here yet: nothing is offered.
    NotHere,
}

/// A tree whose name is like what was typed. In the interface it is its name.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Like {
    /// Its common name.
    pub name: &'static str,
    /// Its scientific name, by which other languages know it.
    pub scientific: &'static str,
}

impl Like {
    fn of(name: &'static str, scientific: &'static str) -> Self {
        Self { name, scientific }
    }
}

impl Serialize for Like {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(self.name)
    }
}

/// The most suggestions given.
const MOST: usize = 6;
/// The longest name looked at, in characters: a longer one is no name.
const LONGEST: usize = 80;

/// Finds a tree by common name, scientific name or plant code. A name that people of different countries give to
/// different trees goes by the region; where none was said, the trees that may be meant are offered.
#[must_use]
pub fn find_species(reference: &'static Reference, typed: &str, region: Option<&str>) -> Found {
    if typed.chars().count() > LONGEST {
        return Found::Like(Vec::new());
    }
    let wanted = plain(typed);
    if wanted.is_empty() {
        return Found::Like(Vec::new());
    }
    let regional = reference.regional.get();
    if let Some(found) = by_place(reference, &wanted, region) {
        return found;
    }
    for species in reference.species {
        let code = !species.code.is_empty() && species.code.eq_ignore_ascii_case(typed.trim());
        if code || species.names.iter().any(|name| is_plainly(name, &wanted)) {
            return Found::One(species);
        }
    }
    let Some(regional) = regional else {
        return Found::NotHere;
    };
    if let Some(other) = other_named(regional, &wanted) {
        return Found::Other(other);
    }
    // As one of the entries for a species without a name: `unknown broadleaf (white ash)`.
    if let Some((entry, name)) = typed.split_once('(')
        && let Some(group) = unknown_named(reference, &plain(entry))
        && let Some(other) = other_named(regional, &plain(name))
    {
        return Found::One(other.species(group));
    }
    Found::Like(near(reference, regional, &wanted))
}

/// The entry for a species without a name that another tree is taken as.
#[must_use]
pub fn entry_of(
    reference: &'static Reference,
    other: &'static OtherTree,
) -> Option<&'static Species> {
    let group = unknown_named(reference, other.group)?;
    Some(other.species(group))
}

fn unknown_named(reference: &'static Reference, name: &str) -> Option<&'static Species> {
    let mut unknown = reference.species.iter().filter(|species| species.unknown);
    unknown.find(|species| species.names.contains(&name))
}

fn other_named(regional: &'static Regional, wanted: &str) -> Option<&'static OtherTree> {
    // "Sugar maple tree" and "sugar maples" mean the same.
    let short = wanted.strip_suffix(" tree").unwrap_or(wanted);
    let single = wanted.strip_suffix('s').unwrap_or(wanted);
    regional.others.iter().find(|other| {
        let is = |name: &str| {
            [wanted, short, single]
                .iter()
                .any(|it| is_plainly(name, it))
        };
        is(other.scientific) || other.names.iter().any(|name| is(name))
    })
}

/// What a name means in a region, where that differs by country; none for any other name.
pub(super) fn by_place(
    reference: &'static Reference,
    wanted: &str,
    region: Option<&str>,
) -> Option<Found> {
    let rows = || {
        let all = reference.names_by_place.iter();
        all.filter(|row| row.name == wanted)
    };
    rows().next()?;
    let here = region.and_then(|region| rows().find(|row| lies_in_any(region, row.codes)));
    if let Some(row) = here {
        return Some(scientific(reference, row.scientific));
    }
    let mut names = Vec::new();
    for row in rows() {
        match scientific(reference, row.scientific) {
            Found::One(species) => names.push(Like::of(species.name, species.scientific)),
            Found::Other(other) => names.push(Like::of(other.names[0], other.scientific)),
            other => return Some(other),
        }
    }
    Some(Found::Like(names))
}

fn scientific(reference: &'static Reference, name: &str) -> Found {
    let mut species = reference.species.iter();
    if let Some(species) = species.find(|species| species.scientific == name) {
        return Found::One(species);
    }
    let Some(regional) = reference.regional.get() else {
        return Found::NotHere;
    };
    let mut others = regional.others.iter();
    others
        .find(|other| other.scientific == name)
        .map_or(Found::NotHere, Found::Other)
}

/// Names that are like what was typed, on the list or not; never a tree that must not be offered for another that is
/// like it too.
fn near(reference: &'static Reference, regional: &'static Regional, wanted: &str) -> Vec<Like> {
    let mut near: Vec<(usize, Like)> = Vec::new();
    let mut barred: Vec<&'static str> = Vec::new();
    let best = |names: &[&'static str]| {
        let alike = names
            .iter()
            .filter_map(|name| likeness(&plain(name), wanted));
        alike.min()
    };
    for other in regional.others {
        if let Some(score) = best(other.names) {
            near.push((score, Like::of(other.names[0], other.scientific)));
            if score < SHARED {
                barred.extend(other.never_offer);
            }
        }
    }
    for species in reference.species {
        if let Some(score) = best(species.names)
            && !barred.contains(&species.name)
            && !barred.contains(&species.scientific)
        {
            near.push((score, Like::of(species.name, species.scientific)));
        }
    }
    sort(&mut near, |a, b| (a.0, a.1.name) < (b.0, b.1.name));
    near.truncate(MOST);
    near.into_iter().map(|(_, name)| name).collect()
}

/// Lower case, letters and digits only, single spaces between words.
pub(crate) fn plain(name: &str) -> String {
    plain_letters(name).collect()
}

/// Whether a name is that plain one. A list asks this of every known name, row by row.
fn is_plainly(name: &str, plain: &str) -> bool {
    plain_letters(name).eq(plain.chars())
}

fn plain_letters(name: &str) -> impl Iterator<Item = char> {
    let (mut begun, mut apart) = (false, false);
    name.chars().map(fold).flat_map(move |c| {
        let mut letters = [None; 2];
        if is_letter(c) || c.is_ascii_digit() {
            // A space stands between two words alone.
            letters = [(begun && apart).then_some(' '), Some(c)];
            (begun, apart) = (true, false);
        } else if c != '\'' && c != '’' {
            apart = true;
        }
        letters.into_iter().flatten()
    })
}

/// Lower case without accents, for the letters that tree names use.
fn fold(c: char) -> char {
    match c.to_ascii_lowercase() {
        'á' | 'à' | 'â' | 'Á' => 'a',
        'é' | 'è' | 'ê' | 'É' => 'e',
        'í' | 'î' | 'Í' => 'i',
        'ó' | 'ô' | 'Ó' => 'o',
        'ú' | 'ü' | 'Ú' | 'Ü' => 'u',
        'ñ' | 'Ñ' => 'n',
        '×' => 'x',
        c => c,
    }
}

/// Names that only have what was typed inside, or share a word with it, stand this far away or farther.
const SHARED: usize = 10;

/// How far two names are apart; none when they are not alike. A shared word counts as near.
fn likeness(name: &str, wanted: &str) -> Option<usize> {
    let whole = distance(name, wanted);
    let near = whole <= 1 + wanted.chars().count() / 4;
    if near {
        return Some(whole.min(SHARED - 1));
    }
    if wanted.len() >= 3 && holds(name, wanted) {
        return Some(SHARED);
    }
    // A word of it, spelt alike: "norwegian maple" shares "maple".
    wanted
        .split(' ')
        .filter(|word| word.len() >= 4)
        .flat_map(|word| name.split(' ').map(move |other| distance(other, word)))
        .filter(|apart| *apart <= 1)
        .min()
        .map(|apart| 2 * SHARED + apart)
}

/// Edits between two words (Levenshtein 1966): insert, delete, replace.
fn distance(a: &str, b: &str) -> usize {
    let b: Vec<char> = b.chars().collect();
    let mut row: Vec<usize> = (0..=b.len()).collect();
    for (i, ca) in a.chars().enumerate() {
        let mut diagonal = row[0];
        row[0] = i + 1;
        for (j, cb) in b.iter().enumerate() {
            let replaced = diagonal + usize::from(ca != *cb);
            diagonal = row[j + 1];
            row[j + 1] = replaced.min(row[j] + 1).min(diagonal + 1);
        }
    }
    row[b.len()]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn edits_are_counted() {
        assert_eq!(distance("maple", "mapel"), 2);
        assert_eq!(distance("norway maple", "norway mapl"), 1);
        assert_eq!(distance("", "ash"), 3);
    }

    #[test]
    fn names_are_compared_without_accents_and_marks() {
        assert_eq!(plain("  Tree-of-Heaven "), "tree of heaven");
        assert_eq!(plain("Árbol del cielo"), "arbol del cielo");
        assert_eq!(plain("Platanus × hispanica"), "platanus x hispanica");
    }
}
