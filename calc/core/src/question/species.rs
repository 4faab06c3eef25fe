//! Which species is meant: any of its names finds it; a near miss gets suggestions, never a silent guess.

use crate::terms::small::find::{holds, is_letter};
use crate::terms::small::sort::sort;
use crate::terms::species::Species;

/// What a name finds.
#[derive(Clone, Debug)]
pub enum Found {
    /// Exactly one species.
    One(&'static Species),
    /// None, but these names are like it, the likest first.
    Like(Vec<&'static str>),
}

/// The most suggestions given.
const MOST: usize = 6;
/// The longest name looked at, in characters: a longer one is no name.
const LONGEST: usize = 80;

/// Finds a species by common name, scientific name or plant code.
#[must_use]
pub fn find_species(all: &'static [Species], typed: &str) -> Found {
    if typed.chars().count() > LONGEST {
        return Found::Like(Vec::new());
    }
    let wanted = plain(typed);
    if wanted.is_empty() {
        return Found::Like(Vec::new());
    }
    for species in all {
        let code = !species.code.is_empty() && species.code.eq_ignore_ascii_case(typed.trim());
        if code || species.names.iter().any(|name| plain(name) == wanted) {
            return Found::One(species);
        }
    }
    let mut near: Vec<(usize, &'static str)> = Vec::new();
    for species in all {
        let best = species
            .names
            .iter()
            .filter_map(|name| likeness(&plain(name), &wanted))
            .min();
        if let Some(score) = best {
            near.push((score, species.name));
        }
    }
    sort(&mut near, |a, b| a < b);
    near.truncate(MOST);
    Found::Like(near.into_iter().map(|(_, name)| name).collect())
}

/// Lower case, letters and digits only, single spaces between words.
fn plain(name: &str) -> String {
    let mut text = String::with_capacity(name.len());
    for c in name.chars() {
        let c = fold(c);
        if is_letter(c) || c.is_ascii_digit() {
            text.push(c);
        } else if c != '\'' && c != '’' && !text.ends_with(' ') && !text.is_empty() {
            text.push(' ');
        }
    }
    if text.ends_with(' ') {
        text.pop();
    }
    text
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

/// How far two names are apart; none when they are not alike. A shared word counts as near.
fn likeness(name: &str, wanted: &str) -> Option<usize> {
    let whole = distance(name, wanted);
    let near = whole <= 1 + wanted.chars().count() / 4;
    if near {
        return Some(whole);
    }
    if wanted.len() >= 3 && holds(name, wanted) {
        return Some(10);
    }
    // A word of it, spelt alike: "norwegian maple" shares "maple".
    wanted
        .split(' ')
        .filter(|word| word.len() >= 4)
        .flat_map(|word| name.split(' ').map(move |other| distance(other, word)))
        .filter(|apart| *apart <= 1)
        .min()
        .map(|apart| 20 + apart)
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
