//! What files there are, how long they are, and what they must not name.

use crate::support::root;
use std::collections::BTreeSet;

/// The top level, fixed by the design: parts, and what cargo, licences and a reader need.
const TOP: [&str; 10] = [
    "Cargo.lock",
    "Cargo.toml",
    "DEVELOPERS.md",
    "LICENSE-APACHE",
    "LICENSE-MIT",
    "README.md",
    "calc",
    "content",
    "rust-toolchain.toml",
    "tests",
];

#[test]
fn the_top_level_is_the_one_of_the_design() {
    let mut wanted: BTreeSet<String> = TOP.map(str::to_owned).into();
    wanted.insert("www".into());
    let entries = std::fs::read_dir(root()).expect("the root");
    let found: BTreeSet<String> = entries
        .flatten()
        .map(|entry| entry.file_name().to_string_lossy().into_owned())
        // Hidden files, and what is built and never kept.
        .filter(|name| {
            !name.starts_with('.') && name != "target" && name != "dist" && !name.ends_with(".tmp")
        })
        .collect();
    let apart: Vec<_> = found.symmetric_difference(&wanted).collect();
    assert!(apart.is_empty(), "{apart:?}");
}

/// Longest file without a reason, in lines.
const LONGEST: usize = 600;

#[test]
fn no_file_of_code_is_longer_than_600_lines_without_a_reason() {
    let excused = crate::exceptions("long_files.txt");
    let mut long = BTreeSet::new();
    for file in crate::files(&["calc", "www", "tests"]) {
        let code = [".rs", ".js", ".css"]
            .iter()
            .any(|end| file.path.ends_with(end));
        if code && file.text.lines().count() > LONGEST {
            assert!(
                excused.contains_key(&file.path),
                "{} has {} lines: part it, or give a reason in tests/tidy/long_files.txt",
                file.path,
                file.text.lines().count()
            );
            long.insert(file.path);
        }
    }
    for path in excused.keys() {
        assert!(
            long.contains(path),
            "{path} is no longer long: take its line out of long_files.txt"
        );
    }
}

#[test]
fn no_file_names_a_machine_s_own_folders_or_a_registry_s_host() {
    // Put together here, so that this file does not name them.
    let folders = [
        "/wo|rk/", "/t|mp/", "/ro|ot/", "/ho|me/", "/Us|ers/", "C:|\\",
    ];
    let hosts = [
        "index.cra|tes.io",
        "static.cra|tes.io",
        "registry.np|mjs.org",
        "files.pythonhos|ted.org",
        "py|pi.org",
    ];
    let named: Vec<String> = folders
        .iter()
        .chain(&hosts)
        .map(|name| name.replace('|', ""))
        .collect();
    for file in crate::files(&["."]) {
        if file.path.ends_with("Cargo.lock") {
            continue;
        }
        for name in &named {
            for (at, line) in file.text.lines().enumerate() {
                assert!(
                    !line.contains(name.as_str()),
                    "{}:{} names {name}",
                    file.path,
                    at + 1
                );
            }
        }
    }
}

#[test]
fn no_unsafe_code_is_written_and_lints_are_those_of_the_workspace() {
    let manifest = std::fs::read_to_string(root().join("Cargo.toml")).expect("Cargo.toml");
    assert!(manifest.contains("unsafe_code = \"forbid\""));
    for file in crate::files(&["calc", "www", "tests"]) {
        if file.path.ends_with("Cargo.toml") {
            assert!(
                file.text.contains("[lints]\nworkspace = true"),
                "{} has lints of its own",
                file.path
            );
        }
    }
}

#[test]
fn no_code_is_a_stub() {
    let marks = ["to|do!(", "unimpl|emented!(", "FIX|ME", "TO|DO", "XX|X"]
        .map(|mark| mark.replace('|', ""));
    for file in crate::files(&["calc", "www", "tests"]) {
        let code = [".rs", ".js", ".css", ".html"]
            .iter()
            .any(|end| file.path.ends_with(end));
        for mark in marks.iter().filter(|_| code) {
            assert!(
                !file.text.contains(mark.as_str()),
                "{} has {mark}",
                file.path
            );
        }
    }
}
