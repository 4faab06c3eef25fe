//! One name, one thing: a public type of one package is not another type elsewhere, nor goes by a second name.

use std::collections::BTreeMap;

/// What people read side by side: the packages whose types one file may name together.
const PACKAGES: [&str; 7] = [
    "calc/core/src",
    "calc/data/src",
    "calc/list/src",
    "calc/plan/src",
    "calc/view/src",
    "www/element/src",
    "www/list/src",
];

/// The type that a line declares for everybody: `pub struct Tree {` gives `Tree`.
fn declared(line: &str) -> Option<&str> {
    let behind = line.trim_start().strip_prefix("pub ")?;
    let name = ["struct ", "enum ", "trait ", "type "]
        .iter()
        .find_map(|word| behind.strip_prefix(word))?;
    let name = name.split(|c: char| !c.is_ascii_alphanumeric()).next();
    // A macro's `$name` is none yet.
    name.filter(|name| !name.is_empty())
}

/// The types that a line hands on under another name: `pub use table::{Row as Line};` gives `Line`.
fn renamed(line: &str) -> Vec<&str> {
    if !line.trim_start().starts_with("pub use ") {
        return Vec::new();
    }
    line.split(" as ")
        .skip(1)
        .filter_map(|behind| behind.split([',', '}', ';']).next())
        .filter(|name| name.starts_with(char::is_uppercase) && *name != name.to_uppercase())
        .collect()
}

#[test]
fn a_public_type_has_one_name_and_its_name_is_no_other_s() {
    let mut known: BTreeMap<String, String> = BTreeMap::new();
    for file in crate::files(&PACKAGES) {
        for (at, line) in file.text.lines().enumerate() {
            let here = format!("{}:{}", file.path, at + 1);
            let second = renamed(line);
            assert!(
                second.is_empty(),
                "{here}: a type gets a second name: {second:?}"
            );
            let Some(name) = declared(line) else { continue };
            if let Some(there) = known.insert(name.to_owned(), here.clone()) {
                panic!("{name} is two things, {there} and {here}: say which in its name");
            }
        }
    }
    assert!(known.contains_key("Answer") && known.len() > 300);
}

#[test]
fn declarations_and_second_names_are_found() {
    assert_eq!(declared("pub struct Season<'a> {"), Some("Season"));
    assert_eq!(declared("    pub enum Sign {"), Some("Sign"));
    assert_eq!(declared("pub(crate) struct Own;"), None);
    assert_eq!(declared("pub fn season() {"), None);
    assert_eq!(declared("pub struct $name {"), None);
    assert_eq!(
        renamed("pub use table::{Row as Line, At as Place};"),
        ["Line", "Place"]
    );
    assert!(renamed("pub use file::FILE as REGIONAL;").is_empty());
    assert!(renamed("pub use read::answer as read_answer;").is_empty());
}
