//! The licences of every crate that any part of the project is built with or tested by, against the short list of
//! `.ci/deny.toml`. cargo-deny holds the same list in `tests/all licences`, with sources and versions; this needs nothing
//! installed, and knows besides which crates go to browsers and into the program.

use std::process::Command;

/// Licences that ask no more than to keep a notice (SPDX names).
fn fine() -> Vec<String> {
    let file = concat!(env!("CARGO_MANIFEST_DIR"), "/../.ci/deny.toml");
    let text = std::fs::read_to_string(file).expect("it is there");
    let list = text.split_once("\nallow = [").expect("a list").1;
    let list = list.split_once(']').expect("it ends").0;
    let found: Vec<String> = list
        .split('"')
        .skip(1)
        .step_by(2)
        .map(str::to_owned)
        .collect();
    assert!(found.len() > 5, "{found:?}");
    found
}

/// What asks that changes to its own files are shared, and is only in what runs the tests.
const ONLY_IN_TESTS: &str = "MPL-2.0";
/// What browsers get, and the program.
const GIVEN_AWAY: [&str; 3] = ["www-element", "www-list", "slipbark"];

/// Whether an expression can be met by licences on the list: `OR` by one of them (the older `/` too), `AND` by all.
fn can_be_met(expression: &str, fine: &dyn Fn(&str) -> bool) -> bool {
    let plain = expression.replace(['(', ')'], " ").replace('/', " OR ");
    // Of no expression here both words stand without brackets, so AND of what brackets hold is read first.
    plain.split(" AND ").all(|all| {
        all.split(" OR ").any(|one| {
            let one = one.trim();
            fine(one.split(" WITH ").next().unwrap_or(one).trim())
        })
    })
}

#[test]
fn an_expression_of_licences_is_met_by_one_of_or_and_all_of_and() {
    let list = fine();
    let fine = |one: &str| list.iter().any(|it| it == one);
    for good in [
        "MIT OR Apache-2.0",
        "MIT/Apache-2.0",
        "GPL-3.0 OR MIT",
        "(MIT OR Apache-2.0) AND Unicode-3.0",
        "Apache-2.0 WITH LLVM-exception",
    ] {
        assert!(can_be_met(good, &fine), "{good}");
    }
    for bad in [
        "GPL-3.0",
        "MIT AND GPL-3.0",
        "(MIT OR Apache-2.0) AND MPL-2.0",
        "",
    ] {
        assert!(!can_be_met(bad, &fine), "{bad}");
    }
}

#[test]
fn every_crate_has_a_licence_on_the_list() {
    let host = Command::new("rustc")
        .arg("-vV")
        .output()
        .expect("rustc can be started");
    let list = fine();
    let host = String::from_utf8(host.stdout).expect("text");
    let host = host
        .lines()
        .find_map(|line| line.strip_prefix("host: "))
        .expect("it names its host");
    for platform in [host, "wasm32-unknown-unknown"] {
        let metadata = crate::arrows::cargo(&[
            "metadata",
            "--format-version",
            "1",
            "--locked",
            "--filter-platform",
            platform,
        ]);
        let metadata: serde_json::Value = serde_json::from_str(&metadata).expect("JSON");
        let packages = metadata["packages"].as_array().expect("packages");
        assert!(packages.len() > 100, "{} packages", packages.len());
        let given = given_away(&metadata);
        for package in packages {
            let (name, licence) = (&package["name"], package["license"].as_str().unwrap_or(""));
            let inside = given.contains(&package["id"]);
            let listed = |one: &str| list.iter().any(|it| it == one);
            let fine = |one: &str| listed(one) || !inside && one == ONLY_IN_TESTS;
            assert!(
                can_be_met(licence, &fine),
                "{name}: \"{licence}\" is not on the list"
            );
        }
    }
}

/// The ids of what is in the program or the module, by the normal dependencies of both.
fn given_away(metadata: &serde_json::Value) -> Vec<serde_json::Value> {
    let packages = metadata["packages"].as_array().expect("packages");
    let nodes = metadata["resolve"]["nodes"].as_array().expect("nodes");
    let named =
        |package: &&serde_json::Value| GIVEN_AWAY.iter().any(|name| package["name"] == *name);
    let mut open: Vec<_> = packages
        .iter()
        .filter(named)
        .map(|it| it["id"].clone())
        .collect();
    assert_eq!(open.len(), GIVEN_AWAY.len());
    let mut found = Vec::new();
    while let Some(id) = open.pop() {
        if found.contains(&id) {
            continue;
        }
        let node = nodes.iter().find(|node| node["id"] == id).expect("a node");
        for dependency in node["deps"].as_array().into_iter().flatten() {
            let kinds = dependency["dep_kinds"].as_array().into_iter().flatten();
            if kinds.into_iter().any(|kind| kind["kind"].is_null()) {
                open.push(dependency["pkg"].clone());
            }
        }
        found.push(id);
    }
    found
}
