//! Words in cells: what stands for nothing, where no tree stands, and the contract's words as the question has them.

use calc_data::list::{ListTables, WordKind, fold};

/// Looks words up; a cell is folded once.
#[derive(Clone, Copy, Debug)]
pub struct WordFinder {
    tables: &'static ListTables,
}

impl WordFinder {
    /// Of the tables.
    #[must_use]
    pub fn new(tables: &'static ListTables) -> Self {
        Self { tables }
    }

    /// What a cell means as a word of a kind.
    #[must_use]
    pub fn means(self, kind: WordKind, cell: &str) -> Option<&'static str> {
        let folded = fold(cell.trim());
        self.tables.word(kind, folded.trim())
    }

    /// What a folded word means as one of a kind.
    #[must_use]
    pub(crate) fn word(self, kind: WordKind, folded: &str) -> Option<&'static str> {
        self.tables.word(kind, folded)
    }

    /// The same of a folded word that may stand in the plural.
    #[must_use]
    pub(crate) fn one_or_several(self, kind: WordKind, folded: &str) -> Option<&'static str> {
        self.tables.one_or_several(kind, folded)
    }

    /// The folded words of a kind.
    pub(crate) fn of_kind(self, kind: WordKind) -> impl Iterator<Item = &'static str> {
        self.tables.words_of(kind).iter().map(|known| known.word)
    }

    /// Whether a cell stands for nothing: empty, space, or a word for it.
    #[must_use]
    pub fn is_missing(self, cell: &str) -> bool {
        let cell =
            cell.trim_matches(|c: char| c.is_whitespace() || c == '\u{a0}' || c == '\u{feff}');
        if cell.is_empty() {
            return true;
        }
        // What software writes for no number.
        if cell.eq_ignore_ascii_case("nan") || cell.eq_ignore_ascii_case("inf") {
            return true;
        }
        cell.len() < 40 && self.means(WordKind::Missing, cell).is_some()
    }

    /// What stands where no tree does, by the word for it: `stump`, `vacant`. The cell is such a word or begins with
    /// one; a word that denies something behind it makes no tree of it. A word in front that denies it does.
    #[must_use]
    pub fn not_tree(self, cell: &str) -> Option<&'static str> {
        if cell.is_empty() || cell.len() > 80 {
            return None;
        }
        let folded = fold(cell);
        let text = folded.trim();
        if let Some(means) = self.tables.word(WordKind::NotTree, text) {
            return Some(means);
        }
        for part in text.split([';', '/', '(', ')', ':', ',']) {
            let part = part.trim();
            let begins = |word: &str| {
                part.strip_prefix(word).is_some_and(|rest| {
                    rest.is_empty() || (rest.starts_with(' ') && LONG_ENOUGH <= word.len())
                })
            };
            let words = self.tables.words_of(WordKind::NotTree);
            if let Some(word) = words.iter().find(|word| begins(word.word)) {
                // "Cut leaf birch" and "bank willow" are trees: only words that say no more than their state go on.
                let rest = part[word.word.len()..].trim();
                if rest.is_empty() || says_state(rest) {
                    return Some(word.means);
                }
            }
        }
        None
    }

    /// `dead` or `fallen`, in a status or in place of a name.
    #[must_use]
    pub fn dead(self, cell: &str) -> Option<&'static str> {
        self.means(WordKind::Dead, cell)
    }

    /// A target and the distance behind it: `path 60 ft`.
    #[must_use]
    pub fn target(self, part: &str) -> Option<(&'static str, Option<&str>)> {
        if let Some(kind) = self.means(WordKind::Target, part) {
            return Some((kind, None));
        }
        let at = part.find(|c: char| c.is_ascii_digit() || matches!(c, '½' | '¼' | '¾'))?;
        let (word, distance) = part.split_at(at);
        let word = word.trim_end_matches(|c: char| {
            c.is_whitespace() || matches!(c, ':' | ',' | '-' | '–' | '—' | '@')
        });
        let word = word.strip_suffix(" at").unwrap_or(word);
        let kind = self.means(WordKind::Target, word)?;
        (kind != "none").then_some((kind, Some(distance)))
    }

    /// Whether it is a symbol of the plant list that our tables have.
    #[must_use]
    pub fn is_symbol(self, code: &str) -> bool {
        self.tables.is_symbol(code)
    }

    /// Yes or no; none for anything else.
    #[must_use]
    pub fn yes(self, cell: &str) -> Option<bool> {
        match self.means(WordKind::YesNo, cell)? {
            "yes" => Some(true),
            "no" => Some(false),
            _ => None,
        }
    }
}

/// The shortest word that may have more behind it.
const LONG_ENOUGH: usize = 4;

/// Whether what stands behind a word such as `stump` or `removed` tells its state: a year, a day, or a small word.
fn says_state(rest: &str) -> bool {
    const STATE: [&str; 22] = [
        "not", "no", "in", "on", "by", "since", "taken", "out", "only", "left", "tree", "site",
        "sin", "no", "en", "nicht", "pas", "nao", "am", "le", "by", "-",
    ];
    rest.split([' ', '-', '.', ','])
        .filter(|word| !word.is_empty())
        .all(|word| {
            word.chars().any(|c| c.is_ascii_digit())
                || STATE.contains(&word)
                || MONTHS.contains(&word)
        })
}

const MONTHS: [&str; 24] = [
    "jan",
    "feb",
    "mar",
    "apr",
    "may",
    "jun",
    "jul",
    "aug",
    "sep",
    "oct",
    "nov",
    "dec",
    "january",
    "february",
    "march",
    "april",
    "june",
    "july",
    "august",
    "september",
    "october",
    "november",
    "december",
    "sept",
];

/// Whether a cell names a month in three letters or in full: `6-Dec` is a range that a spreadsheet made a day.
#[must_use]
pub(crate) fn has_month(cell: &str) -> bool {
    let folded = fold(cell);
    folded
        .split(|c: char| !c.is_ascii_alphabetic())
        .any(|word| MONTHS.contains(&word))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_tree_stands_there_in_five_languages_and_a_name_stays_a_name() {
        let words = WordFinder::new(calc_data::list::tables());
        for (cell, means) in [
            ("Vacant site", "vacant"),
            ("STUMP", "stump"),
            ("stump not taken out", "stump"),
            ("Removed 2021", "removed"),
            ("dead - removed", "removed"),
            ("tocón", "stump"),
            ("Alcorque vacío", "vacant"),
            ("souche", "stump"),
            ("gefällt", "removed"),
            ("toco", "stump"),
            ("seto", "hedge"),
        ] {
            assert_eq!(words.not_tree(cell), Some(means), "{cell}");
        }
        for cell in [
            "not removed",
            "Cutleaf birch",
            "Cut leaf maple",
            "bank willow",
            "Norway maple",
            "bush honeysuckle",
            "",
            "Removed oak",
        ] {
            assert_eq!(words.not_tree(cell), None, "{cell}");
        }
    }

    #[test]
    fn nothing_is_nothing_however_it_is_written() {
        let words = WordFinder::new(calc_data::list::tables());
        for cell in [
            "",
            " ",
            "\u{a0}",
            "N/A",
            "<Null>",
            "NaN",
            "-",
            "--",
            "?",
            "Inconnue",
            "Keine Angabe",
            "s/d",
        ] {
            assert!(words.is_missing(cell), "{cell}");
        }
        for cell in ["0", "none known", "14", "Nandina"] {
            assert!(!words.is_missing(cell), "{cell}");
        }
    }
}
