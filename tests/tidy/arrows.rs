//! The arrows run one way: content, calc, www. calc knows no web; one crate alone names the binding.

use crate::support::root;
use serde_json::Value;
use std::collections::BTreeSet;
use std::process::Command;

pub(crate) fn cargo(arguments: &[&str]) -> String {
    let cargo = std::env::var("CARGO").unwrap_or_else(|_| "cargo".into());
    let output = Command::new(cargo)
        .args(arguments)
        .current_dir(root())
        .output()
        .expect("cargo runs");
    let error = String::from_utf8_lossy(&output.stderr);
    assert!(output.status.success(), "cargo {arguments:?}: {error}");
    String::from_utf8(output.stdout).expect("text")
}

/// What a package is built from for the browser, itself included.
fn built_from(package: &str) -> Vec<String> {
    let text = cargo(&[
        "tree",
        "--locked",
        "--package",
        package,
        "--target",
        "wasm32-unknown-unknown",
        "--edges",
        "normal,build",
        "--prefix",
        "none",
        "--format",
        "{p}",
    ]);
    let mut names: Vec<String> = text
        .lines()
        .filter_map(|line| line.split(' ').next().map(str::to_owned))
        .filter(|name| !name.is_empty())
        .collect();
    names.sort();
    names.dedup();
    names
}

const WEB: [&str; 6] = [
    "wasm-bindgen",
    "js-sys",
    "web-sys",
    "serde-wasm-bindgen",
    "gloo",
    "wasm-bindgen-futures",
];

#[test]
fn calc_knows_no_web() {
    for package in ["calc", "calc-data", "calc-list", "calc-plan", "calc-view"] {
        let names = built_from(package);
        assert!(names.iter().any(|name| name == "calc"), "{names:?}");
        for web in WEB {
            assert!(
                !names.iter().any(|name| name == web),
                "{package} is built with {web}"
            );
        }
    }
    // The check can fail: the element is built with them.
    assert!(
        built_from("www-element")
            .iter()
            .any(|name| name == "wasm-bindgen")
    );
}

/// The packages of the workspace with what each names: (package, dependency, kind).
fn named() -> Vec<(String, String, String)> {
    let text = cargo(&["metadata", "--locked", "--no-deps", "--format-version", "1"]);
    let whole: Value = serde_json::from_str(&text).expect("JSON");
    let word = |value: &Value| value.as_str().unwrap_or("normal").to_owned();
    let packages = whole["packages"].as_array().expect("packages");
    packages
        .iter()
        .flat_map(|package| {
            let name = word(&package["name"]);
            let all = package["dependencies"]
                .as_array()
                .expect("dependencies")
                .clone();
            all.into_iter().map(move |dependency| {
                (
                    name.clone(),
                    word(&dependency["name"]),
                    word(&dependency["kind"]),
                )
            })
        })
        .collect()
}

#[test]
fn only_the_two_modules_name_the_binding_and_the_tests_of_it() {
    let named = named();
    for (package, dependency, kind) in &named {
        if !WEB.contains(&dependency.as_str()) {
            continue;
        }
        // The element's own tests run in a browser and speak with it; they are no part of what is built.
        let test = package == "boundary" && kind == "dev";
        // The module of lists runs in a worker: it binds calls, and knows no page.
        let of_lists = package == "www-list" && dependency == "wasm-bindgen";
        assert!(
            package == "www-element" || of_lists || test,
            "{package} names {dependency} ({kind})"
        );
    }
    let names = |package: &str, dependency: &str| {
        named
            .iter()
            .any(|(name, other, _)| name == package && other == dependency)
    };
    assert!(names("www-element", "wasm-bindgen"));
    assert!(
        names("slipbark", "wasm-bindgen-cli-support"),
        "the site uses the binding's library"
    );
}

#[test]
fn the_arrows_run_from_calc_to_www_and_never_back() {
    let ours = [
        "calc",
        "calc-data",
        "calc-list",
        "calc-plan",
        "calc-view",
        "www-element",
        "www-list",
        "slipbark",
    ];
    let may = |package: &str| -> &[&str] {
        match package {
            "calc" => &[],
            "calc-data" | "calc-list" | "calc-plan" => &["calc", "calc-data"],
            "calc-view" => &["calc", "calc-data", "calc-list", "calc-plan"],
            "www-element" => &["calc", "calc-data", "calc-view"],
            "www-list" => &["calc", "calc-data", "calc-list", "calc-plan", "calc-view"],
            "slipbark" => &[
                "calc",
                "calc-data",
                "calc-list",
                "calc-plan",
                "calc-view",
                "www-element",
            ],
            _ => &ours,
        }
    };
    for (package, dependency, kind) in named() {
        // The examples of the core's documentation ask what is known; they are no part of what is built.
        let example = package == "calc" && dependency == "calc-data" && kind == "dev";
        if ours.contains(&dependency.as_str()) && !example {
            assert!(
                may(&package).contains(&dependency.as_str()),
                "{package} names {dependency} ({kind})"
            );
        }
    }
}

/// No clock, no files, no threads of its own: what makes the same answer everywhere.
#[test]
fn the_core_reads_no_clock_no_file_and_no_environment() {
    for file in crate::files(&[
        "calc/core/src",
        "calc/list/src",
        "calc/plan/src",
        "calc/view/src",
    ]) {
        let code = file.text.split("#[cfg(test)]").next().unwrap_or("");
        for word in [
            "std::fs",
            "std::env",
            "std::time",
            "SystemTime",
            "Utc::now",
            "Local::now",
            "std::net",
            "std::thread",
        ] {
            assert!(
                !code.contains(word) || file.path.ends_with("tests.rs"),
                "{} names {word}",
                file.path
            );
        }
    }
}

/// The layers of the core: each may name those in front of it.
const LAYERS: [&str; 6] = [
    "terms",
    "timing",
    "models",
    "reference",
    "question",
    "answer",
];

/// The layers that a file names, each with its line: behind `crate::`, and behind as many `super::` as lead to the root.
/// `module` is the file's own path from the root, as `["models", "ring"]`.
fn layers_named(module: &[&str], text: &str) -> Vec<(usize, String)> {
    let mut named = Vec::new();
    for (at, line) in text.lines().enumerate() {
        let code = line.split("//").next().unwrap_or("");
        let mut rest = code;
        while let Some(begin) = ["crate::", "super::"]
            .iter()
            .filter_map(|word| rest.find(word))
            .min()
        {
            let path = &rest[begin..];
            let mut steps = path.split("::").map(str::trim_start);
            let ups = path
                .split("::")
                .take_while(|step| matches!(*step, "super" | "self"))
                .filter(|step| *step == "super")
                .count();
            // A module of checks inside a file stands one deeper.
            let to_root = path.starts_with("crate::") || ups >= module.len();
            let next = if path.starts_with("crate::") {
                steps.nth(1)
            } else {
                steps.nth(ups)
            };
            let next = next.unwrap_or("");
            assert!(
                !(to_root && next.starts_with('{')),
                "{module:?}, line {}: name one layer a line",
                at + 1
            );
            let name: String = next
                .chars()
                .take_while(|c| c.is_ascii_alphanumeric() || *c == '_')
                .collect();
            if to_root && LAYERS.contains(&name.as_str()) {
                named.push((at + 1, name));
            }
            rest = &path["crate::".len()..];
            while let Some(more) = rest.strip_prefix("super::") {
                rest = more;
            }
        }
    }
    named
}

#[test]
fn each_layer_of_the_core_names_only_those_in_front_of_it() {
    let place = |layer: &str| LAYERS.iter().position(|known| *known == layer);
    let mut met = std::collections::BTreeSet::new();
    for file in crate::files(&["calc/core/src"]) {
        let inside = file.path.trim_start_matches("calc/core/src/");
        if inside == "lib.rs" {
            continue;
        }
        let module: Vec<&str> = inside
            .trim_end_matches(".rs")
            .split('/')
            .filter(|part| *part != "mod")
            .collect();
        let own =
            place(module[0]).unwrap_or_else(|| panic!("{inside} stands in no layer: {LAYERS:?}"));
        for (line, named) in layers_named(&module, &file.text) {
            met.insert((module[0].to_owned(), named.clone()));
            assert!(
                place(&named) <= Some(own),
                "{}:{line}: {} names {named}, which stands behind it: {LAYERS:?}",
                file.path,
                module[0]
            );
        }
        // A group's settings know the question; the question does not know them.
        if module[0] == "question" && module.get(1) != Some(&"settings") {
            for (at, line) in file.text.lines().enumerate() {
                assert!(
                    !line.contains("settings::") && !line.contains("use settings"),
                    "{}:{}: the question names the settings",
                    file.path,
                    at + 1
                );
            }
        }
    }
    for (from, to) in [
        ("models", "terms"),
        ("answer", "models"),
        ("question", "models"),
    ] {
        assert!(
            met.contains(&(from.to_owned(), to.to_owned())),
            "no file of {from} names {to}: is the reading of `use` lines broken?"
        );
    }
}

#[test]
fn layers_are_found_as_they_are_named() {
    let named = |text: &str| -> Vec<String> {
        layers_named(&["models", "ring"], text)
            .into_iter()
            .map(|(_, name)| name)
            .collect()
    };
    assert_eq!(named("use crate::question::Question;"), ["question"]);
    assert_eq!(
        named("fn f(of: &crate::reference::Reference) {}"),
        ["reference"]
    );
    assert_eq!(named("use super::super::answer::Answer;"), ["answer"]);
    assert_eq!(
        named("    use super::super::super::answer::Answer;"),
        ["answer"]
    );
    assert_eq!(
        named("let a = crate::terms::A; let b = crate::question::B;"),
        ["terms", "question"]
    );
    assert!(named("use super::bark::Bark; // crate::question").is_empty());
}

/// The parts of a folder that a file of one part names: a part is a file or a folder in it, `inside` the file's path from
/// there, as `["ring", "drawing"]`. What stands in checks doesn't count.
fn parts_named(folder: &str, inside: &[&str], text: &str, parts: &BTreeSet<String>) -> Vec<String> {
    let code = text.split("#[cfg(test)]").next().unwrap_or("");
    let lines = code
        .lines()
        .map(|line| line.split("//").next().unwrap_or(""));
    let code: String = lines.flat_map(|line| [line.trim(), " "]).collect();
    let ways = [
        format!("crate::{folder}::"),
        format!(" {}", "super::".repeat(inside.len())),
    ];
    let mut named = Vec::new();
    for way in &ways {
        for behind in code.split(way.as_str()).skip(1) {
            // `use super::{frame, ring::{a, b}};`: what follows a comma of the outer braces, or the one name.
            let (mut deep, mut begins) = (0, true);
            for word in behind.split_inclusive(|c: char| !c.is_ascii_alphanumeric() && c != '_') {
                let name = word.trim_end_matches(|c: char| !c.is_ascii_alphanumeric() && c != '_');
                if !name.is_empty() {
                    if begins && parts.contains(name) {
                        named.push(name.to_owned());
                    }
                    begins = false;
                }
                deep += word.matches('{').count() as i32 - word.matches('}').count() as i32;
                begins |= deep == 1 && word.ends_with(['{', ',']);
                if deep == 0 && !begins {
                    break;
                }
            }
        }
    }
    named
}

#[test]
fn no_two_models_and_no_two_parts_of_the_answer_name_each_other() {
    for (root, folder) in [
        ("calc/core/src/models/", "models"),
        ("calc/view/src/answer/", "answer"),
    ] {
        let files = crate::files(&[root]);
        let inside = |path: &str| -> Vec<String> {
            let path = path.trim_start_matches(root).trim_end_matches(".rs");
            let steps = path.split('/').filter(|step| *step != "mod");
            steps.map(str::to_owned).collect()
        };
        let parts: BTreeSet<String> = files
            .iter()
            .filter_map(|file| inside(&file.path).into_iter().next())
            .collect();
        let mut names: BTreeSet<(String, String)> = BTreeSet::new();
        for file in &files {
            let steps = inside(&file.path);
            let steps: Vec<&str> = steps.iter().map(String::as_str).collect();
            let Some(own) = steps.first().filter(|_| !steps.contains(&"tests")) else {
                continue;
            };
            for other in parts_named(folder, &steps, &file.text, &parts) {
                names.insert(((*own).to_owned(), other));
            }
        }
        assert!(names.len() > 10, "{folder}: the reading of paths is broken");
        for (one, other) in &names {
            assert!(
                !names.contains(&(other.clone(), one.clone())) || one == other,
                "{folder}: {one} and {other} name each other: move down what both need"
            );
        }
    }
}

#[test]
fn parts_are_found_as_they_are_named() {
    let parts: BTreeSet<String> = ["ring", "bark", "reach", "drawing"]
        .map(str::to_owned)
        .into();
    let named = |inside: &[&str], text: &str| parts_named("models", inside, text, &parts);
    assert_eq!(
        named(&["visits"], "use crate::models::ring::Ring;"),
        ["ring"]
    );
    assert_eq!(
        named(
            &["visits"],
            "use super::{\n    bark,\n    ring::{Ring, reach},\n};"
        ),
        ["bark", "ring"]
    );
    assert_eq!(
        named(&["visits"], "let a = crate::models::bark::of(reach);"),
        ["bark"]
    );
    // From a file of a folder `super` is the folder itself.
    assert!(named(&["ring", "drawing"], "use super::bark;").is_empty());
    assert_eq!(
        named(&["ring", "drawing"], "use super::super::bark;"),
        ["bark"]
    );
    assert!(named(&["visits"], "use calc::other::ring; // crate::models::ring").is_empty());
    assert!(named(&["visits"], "fn f() {}\n#[cfg(test)]\nuse super::ring;").is_empty());
}
