//! What the reader of lists knows, packed in a file of its own. A program that doesn't name it doesn't carry it.

pub use crate::list_tables::{
    AssumedNumber, Column, ListTables, PlanConstants, WordKind, fold, header_key,
};
use crate::list_tables::{CellWord, HeaderWord};
use crate::unpack::{Streams, Unpack};
use calc::terms::constants::Constant;
use std::sync::OnceLock;

fn read() -> (ListTables, bool) {
    let mut streams = Streams::new(
        include_bytes!(concat!(env!("OUT_DIR"), "/list-ints")),
        include_bytes!(concat!(env!("OUT_DIR"), "/list-tags")),
        include_str!(concat!(env!("OUT_DIR"), "/list-texts")),
    );
    let tables = ListTables::unpack(&mut streams);
    (tables, streams.is_done())
}

/// The tables, unpacked at the first call.
#[must_use]
pub fn tables() -> &'static ListTables {
    static TABLES: OnceLock<ListTables> = OnceLock::new();
    TABLES.get_or_init(|| read().0)
}

/// What a plan of many trees assumes, each number found by its name. The build saw that none is missing.
#[must_use]
pub fn plan_constants() -> &'static PlanConstants {
    static CONSTANTS: OnceLock<PlanConstants> = OnceLock::new();
    CONSTANTS.get_or_init(|| {
        let assumed = tables().assumed;
        PlanConstants::by_name("", &mut |name| {
            let known = assumed.iter().find(|number| number.name == name);
            known.map_or(f64::NAN, |number| number.value)
        })
    })
}

impl ListTables {
    /// What a header's key means.
    #[must_use]
    pub fn header(&self, key: &str) -> Option<&'static HeaderWord> {
        let at = self
            .headers
            .binary_search_by(|word| word.key.cmp(key))
            .ok()?;
        self.headers.get(at)
    }

    /// What a folded word means as one of a kind; an empty text where the kind says all.
    #[must_use]
    pub fn word(&self, kind: WordKind, word: &str) -> Option<&'static str> {
        let at = self
            .words
            .binary_search_by(|known| (known.kind, known.word).cmp(&(kind, word)))
            .ok()?;
        self.words.get(at).map(|known| known.means)
    }

    /// The same of a word that may stand in the plural: `roads`.
    #[must_use]
    pub fn one_or_several(&self, kind: WordKind, word: &str) -> Option<&'static str> {
        let one = || self.word(kind, word.strip_suffix('s')?);
        self.word(kind, word).or_else(one)
    }

    /// The words of a kind.
    #[must_use]
    pub fn words_of(&self, kind: WordKind) -> &'static [CellWord] {
        let first = self.words.partition_point(|word| word.kind < kind);
        let behind = self.words.partition_point(|word| word.kind <= kind);
        &self.words[first..behind]
    }

    /// Whether a table of ours names a symbol, in capitals.
    #[must_use]
    pub fn is_symbol(&self, code: &str) -> bool {
        self.symbols.binary_search(&code).is_ok()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_the_build_packed_is_read_to_the_end_and_found() {
        assert!(
            read().1,
            "the reader and the build do not agree on the order"
        );
        let tables = tables();
        let column = |header: &str| tables.header(&header_key(header)).map(|word| word.column);
        assert_eq!(column("Diámetro"), Some(Column::Dbh));
        assert_eq!(column("Stammumfang"), Some(Column::Girth));
        assert_eq!(column("tree_id"), Some(Column::TreeId));
        assert_eq!(column("Photo"), None);
        assert_eq!(
            tables.word(WordKind::NotTree, &fold("Tocón")),
            Some("stump")
        );
        assert_eq!(tables.word(WordKind::Line, "unknown"), Some("cant_tell"));
        assert!(tables.words_of(WordKind::StemWord).len() > 5);
        assert!(tables.is_symbol("ACPL") && !tables.is_symbol("ACSA1"));
        let mut numbers = 0;
        plan_constants().each(&mut |number| {
            assert!(number > 0.0, "{number}");
            numbers += 1;
        });
        assert_eq!(numbers, tables.assumed.len());
    }
}
