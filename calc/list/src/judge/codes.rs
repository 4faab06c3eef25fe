//! Codes of species: trusted as the plant list's symbols only if the whole column is of them.

use super::{Judge, Stats};
use crate::ask::ListQuestion;
use crate::decisions::{Codes, PLANTS};
use crate::reading::CodeMeaning;
use calc_data::list::{Column, WordKind};

/// The longest code, in characters.
const LONGEST: usize = 8;

/// Whether a value looks like a code: capitals and digits, perhaps small letters or `_` behind; or a number.
fn is_code(value: &str) -> bool {
    let value = value.trim_end_matches('?').trim();
    let long = (2..=LONGEST).contains(&value.chars().count());
    let signs = value.chars().all(|c| c.is_ascii_alphanumeric() || c == '_');
    let capitals = value.chars().filter(char::is_ascii_uppercase).count();
    let number = value.chars().all(|c| c.is_ascii_digit());
    let begins = value.starts_with(|c: char| c.is_ascii_uppercase());
    long && signs && (number || (begins && capitals >= 2))
}

/// Words in capitals that are names, not codes.
const NAMES: [&str; 14] = [
    "ASH", "OAK", "ELM", "FIR", "PINE", "MAPLE", "BIRCH", "BEECH", "CHERRY", "SPRUCE", "POPLAR",
    "LARCH", "ASPEN", "LOCUST",
];

/// Whether the values of a column are codes.
pub(super) fn are_codes(stats: &Stats) -> bool {
    let named = stats
        .values
        .keys()
        .any(|value| NAMES.contains(&value.as_str()));
    let codes = stats.values.keys().filter(|value| is_code(value)).count();
    !named && codes > 0 && codes * 10 >= stats.values.len() * 9
}

impl Judge<'_> {
    pub(super) fn codes(&mut self) {
        let names = &self.reading.names;
        let Some(at) = names.code else {
            return;
        };
        match &self.decided[at].codes {
            Some(Codes::Known(word)) if word == PLANTS => {
                self.reading.codes = CodeMeaning::Plants;
                return;
            }
            Some(Codes::Own(table)) => {
                self.reading.codes = CodeMeaning::Own(table.clone());
                return;
            }
            _ => {}
        }
        // Names beside the codes say more than the codes do.
        if names.scientific.is_some()
            || names.common.is_some()
            || names.genus.is_some()
            || names.species.is_some()
        {
            self.reading.names.code = None;
            self.reading.columns[at].is = Column::Keep;
            return;
        }
        if self.reading.of_a_piece {
            self.reading.codes = CodeMeaning::Undecided;
            return;
        }
        let stats = self.stats(at);
        let unknown = |value: &str| {
            self.words.means(WordKind::UnknownName, value).is_some()
                || self.words.not_tree(value).is_some()
        };
        let symbol = |value: &str| {
            let code = value.trim_end_matches('?').trim().to_ascii_uppercase();
            self.tables.is_symbol(&code) || GENERA.contains(&code.as_str())
        };
        let all: Vec<(String, usize)> = stats
            .frequent()
            .into_iter()
            .filter(|(value, _)| !unknown(value))
            .collect();
        let rows: usize = all.iter().map(|(_, rows)| rows).sum();
        let known: usize = all
            .iter()
            .filter(|(value, _)| symbol(value))
            .map(|(_, rows)| rows)
            .sum();
        let commonest = all.iter().take(COMMONEST).all(|(value, _)| symbol(value));
        // Our tables do not have every symbol of the plant list. A column with one that they lack is asked; a
        // column that has only known ones can be nothing else.
        if rows > 0 && commonest && known * 100 >= rows * 98 {
            self.reading.codes = CodeMeaning::Plants;
            return;
        }
        self.reading.codes = CodeMeaning::Undecided;
        let stranger = all.iter().find(|(value, _)| !symbol(value));
        let stranger = stranger.map_or(String::new(), |(value, _)| value.clone());
        self.ask(
            at,
            stats.filled,
            ListQuestion::Codes {
                codes: all,
                stranger,
            },
        );
    }
}

/// The commonest codes must all be symbols.
const COMMONEST: usize = 10;

/// Symbols of genera alone, of the same list: from memory.
const GENERA: [&str; 24] = [
    "ACER", "AESCU", "ALNUS", "BETUL", "CARYA", "CATAL", "CELTI", "CORNU", "CRATA", "FAGUS",
    "FRAXI", "JUGLA", "LARIX", "MALUS", "MORUS", "PICEA", "PINUS", "POPUL", "PRUNU", "QUERC",
    "SALIX", "TILIA", "ULMUS", "TSUGA",
];
