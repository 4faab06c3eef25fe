//! All wording, one module a language, one file a part of the answer. Every enum of the core is worded by one
//! `match` without a catch-all, so a missing wording does not compile.

mod en;
pub mod message;

pub use en::{
    calculators, card, cautions, confidence, device, effort, fields, formulas, group, habitat,
    key_lines, method, missing, outlook, phrase, problem, reach, recap, region, ring, say, season,
    spring, stop, verdict, visits, working,
};
pub use message::{Word, m, within};

pub(crate) use en::say::Say;

// Words under keys, in rows of `key=words|`. All rows are one text: a comparison for each key would cost more bytes in
// the browser, and so would an entry of a table.

fn each(rows: &'static str) -> impl Iterator<Item = (&'static str, &'static str)> {
    rows.split('|').filter_map(|row| row.split_once('='))
}

/// The words of a key.
pub(crate) fn named(rows: &'static str, key: &str) -> Option<&'static str> {
    each(rows)
        .find(|(known, _)| *known == key)
        .map(|(_, words)| words)
}
