//! Words under keys, in rows of `key=words|`. All rows are one text: a comparison for each key would cost more bytes in
//! the browser, and so would an entry of a table.

fn each(rows: &'static str) -> impl Iterator<Item = (&'static str, &'static str)> {
    rows.split('|').filter_map(|row| row.split_once('='))
}

/// All keys with their words, in order.
pub fn all(rows: &'static str) -> Vec<(&'static str, &'static str)> {
    each(rows).collect()
}

/// The words of a key.
pub fn named(rows: &'static str, key: &str) -> Option<&'static str> {
    each(rows)
        .find(|(known, _)| *known == key)
        .map(|(_, words)| words)
}
