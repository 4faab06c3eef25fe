//! A cell of the condition: `Fair; split trunk`.

use crate::words::WordFinder;
use calc_data::list::WordKind;

/// What it says.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(crate) struct Condition {
    /// Alive, declining or unknown, the first that is said.
    pub condition: Option<&'static str>,
    /// Faults of trunk and crown, as the question has them.
    pub signs: Vec<&'static str>,
    /// A word of it is none that we read.
    pub strange: bool,
}

impl Condition {
    /// Of a cell.
    pub(crate) fn of(words: WordFinder, cell: &str) -> Self {
        let mut read = Self::default();
        read.take(words, cell);
        if read.strange {
            read = Self::default();
            for part in cell.split([';', ',', '/', '(', ')', '+']) {
                for part in part.split(" - ").flat_map(|part| part.split(" and ")) {
                    if !part.trim().is_empty() {
                        read.take(words, part);
                    }
                }
            }
        }
        read
    }

    fn take(&mut self, words: WordFinder, part: &str) {
        if let Some(condition) = words.means(WordKind::Condition, part) {
            self.condition.get_or_insert(condition);
        } else if let Some(sign) = words.means(WordKind::Sign, part) {
            if !self.signs.contains(&sign) {
                self.signs.push(sign);
            }
        } else {
            self.strange = true;
        }
    }
}

/// Whether a cell has a word that is none of a condition.
pub(crate) fn is_strange(words: WordFinder, cell: &str) -> bool {
    Condition::of(words, cell).strange
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_condition_and_its_faults_are_read_part_by_part() {
        let read = |cell| Condition::of(WordFinder::new(calc_data::list::tables()), cell);
        let of = |cell| {
            let it = read(cell);
            (it.condition.unwrap_or(""), it.signs.join(" "), it.strange)
        };
        for (cell, condition, signs, strange) in [
            ("Fair", "alive", "", false),
            ("hanging top", "", "hung_limbs", false),
            ("Fair; split", "alive", "cracks", false),
            ("poor - dead top", "declining", "dead_top", false),
            ("Poor (cavity, conks)", "declining", "cavity conks", false),
            ("rajado", "", "cracks", false),
            ("leaning", "", "", true),
            ("Fair, leaning", "alive", "", true),
            ("B+", "", "", true),
        ] {
            assert_eq!(of(cell), (condition, signs.to_owned(), strange), "{cell}");
        }
    }
}
