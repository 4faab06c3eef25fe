//! Whose work is in what browsers get: each crate that was compiled into the module, by cargo's own record of that build,
//! with its licence and that licence's words.

use crate::build::assets::File;
use anyhow::{Context, Result, bail};
use calc_view::out::escaped;
use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::path::Path;

/// The file with all licences, at the top of the site and in the kit.
pub(crate) const NAME: &str = "notices.txt";

/// A crate in the module.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) struct Crate {
    name: String,
    version: String,
    /// As its manifest states it: SPDX, or the older way with a slash.
    licence: String,
    repository: String,
    /// Its files of licences and notices, by name.
    texts: Vec<(String, String)>,
}

/// The crates of others in a build for `target`, from the messages of cargo (`--message-format=json`); what lies in the
/// project at `root` is our own.
///
/// # Errors
/// A message that is no JSON, a manifest that can't be read or states no licence, a crate without the licence's words
/// whose repository is not stated.
pub(crate) fn read(messages: &str, target: &str, root: &Path) -> Result<Vec<Crate>> {
    let mut crates = BTreeMap::new();
    for line in messages.lines().filter(|line| line.starts_with('{')) {
        let message: serde_json::Value =
            serde_json::from_str(line).context("a message of cargo is no JSON")?;
        let Some(manifest) = message["manifest_path"].as_str() else {
            continue;
        };
        let files = message["filenames"].as_array().into_iter().flatten();
        // What is compiled for this machine only helps to build.
        let mut for_target = files
            .filter_map(|file| file.as_str())
            .map(|file| Path::new(file).iter().any(|part| part == target));
        if message["reason"] != "compiler-artifact" || !for_target.any(|is| is) {
            continue;
        }
        let manifest = Path::new(manifest);
        if manifest.starts_with(root) {
            continue;
        }
        let one = one(manifest)?;
        crates.insert((one.name.clone(), one.version.clone()), one);
    }
    if crates.is_empty() {
        bail!("cargo told of no crate that is in the module");
    }
    Ok(crates.into_values().collect())
}

/// A crate by its manifest, which cargo writes in one way when a crate is published: `key = "value"` in `[package]`.
fn one(manifest: &Path) -> Result<Crate> {
    let text = std::fs::read_to_string(manifest)
        .with_context(|| format!("{} could not be read", manifest.display()))?;
    let package = text
        .split("\n[")
        .find(|part| part.trim_start_matches('[').starts_with("package]"));
    let value = |key: &str| {
        let mut lines = package.unwrap_or_default().lines();
        lines.find_map(|line| {
            let (name, value) = line.split_once(" = ")?;
            (name == key).then(|| value.trim_matches('"').to_owned())
        })
    };
    let folder = manifest.parent().unwrap_or(manifest);
    let needed =
        |key: &str| value(key).with_context(|| format!("{} states no {key}", manifest.display()));
    let mut texts = Vec::new();
    for entry in std::fs::read_dir(folder)?.flatten() {
        let name = entry.file_name().to_string_lossy().into_owned();
        let is_one = [
            "LICENSE",
            "LICENCE",
            "COPYING",
            "COPYRIGHT",
            "NOTICE",
            "UNLICENSE",
        ]
        .iter()
        .any(|start| name.to_uppercase().starts_with(start));
        if is_one && entry.path().is_file() {
            texts.push((name, std::fs::read_to_string(entry.path())?));
        }
    }
    texts.sort();
    Ok(Crate {
        name: needed("name")?,
        version: needed("version")?,
        licence: needed("license")?,
        repository: value("repository").unwrap_or_default(),
        texts,
    })
}

/// All licences in one text. Words that several crates have stand once.
pub(crate) fn text(crates: &[Crate]) -> File {
    let mut out = String::from(
        "The calculator's modules hold code of these crates, and of Rust's standard library (MIT OR Apache-2.0,\n\
         https://github.com/rust-lang/rust). Made from cargo's record of the build that they came from.\n",
    );
    let mut told: BTreeMap<&str, String> = BTreeMap::new();
    for one in crates {
        let title = format!("{} {}", one.name, one.version);
        let _ = write!(
            out,
            "\n\n{}\n{title}: {}\n{}\n",
            "=".repeat(72),
            one.licence,
            one.repository
        );
        if one.texts.is_empty() {
            out.push_str(
                "Its package has no file with the licence's words; the address above has.\n",
            );
        }
        for (name, words) in &one.texts {
            let words = words.trim();
            match told.get(words) {
                Some(first) => {
                    let _ = writeln!(out, "\n{name}: the same words as {first}.");
                }
                None => {
                    let _ = writeln!(out, "\n{name}:\n\n{words}");
                    told.insert(words, format!("{name} of {title}"));
                }
            }
        }
    }
    File::named(NAME, out)
}

/// The rows of the page's table.
pub(crate) fn rows(crates: &[Crate]) -> String {
    let row = |one: &Crate| {
        let name = escaped(&one.name);
        let name = if one.repository.starts_with("https://") {
            format!("<a href=\"{}\">{name}</a>", escaped(&one.repository))
        } else {
            name
        };
        format!(
            "<tr><th scope=\"row\">{name}</th><td>{}</td><td>{}</td></tr>\n",
            escaped(&one.version),
            escaped(&one.licence)
        )
    };
    crates.iter().map(row).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_crate_is_told_by_the_record_of_the_build_and_its_own_files() {
        let folder = std::env::temp_dir().join(format!("slipbark-notices-{}", std::process::id()));
        let make = |name: &str, licence: &str| {
            let own = folder.join(name);
            std::fs::create_dir_all(&own).unwrap();
            let manifest = format!(
                "# made\n[package]\nedition = \"2021\"\nname = \"{name}\"\nversion = \"1.2.3\"\n{licence}repository = \"https://example.org/{name}\"\n\n[lib]\nname = \"other\"\n"
            );
            std::fs::write(own.join("Cargo.toml"), manifest).unwrap();
            std::fs::write(own.join("LICENSE-MIT"), "Permission is granted.\n").unwrap();
            own.join("Cargo.toml")
        };
        let message = |manifest: &Path, target: &str| {
            serde_json::json!({ "reason": "compiler-artifact", "manifest_path": manifest, "filenames": [format!("/t/{target}/wasm/libx.rlib")] }).to_string()
        };
        let mit = "license = \"MIT\"\n";
        let (a, b, host) = (make("a", mit), make("b", mit), make("host", mit));
        let messages = format!(
            "{}\nnot JSON, and no message\n{}\n{}\n{}",
            message(&b, "wasm32-unknown-unknown"),
            message(&a, "wasm32-unknown-unknown"),
            message(&host, "release"),
            message(Path::new("/project/Cargo.toml"), "wasm32-unknown-unknown")
        );
        let crates = read(&messages, "wasm32-unknown-unknown", Path::new("/project")).unwrap();
        let names: Vec<_> = crates.iter().map(|one| one.name.as_str()).collect();
        assert_eq!(names, ["a", "b"]);
        let text = String::from_utf8(text(&crates).bytes).unwrap();
        assert_eq!(text.matches("Permission is granted.").count(), 1, "{text}");
        assert!(
            text.contains("LICENSE-MIT: the same words as LICENSE-MIT of a 1.2.3."),
            "{text}"
        );
        assert!(
            rows(&crates)
                .contains("<a href=\"https://example.org/a\">a</a></th><td>1.2.3</td><td>MIT</td>")
        );
        let without = message(&make("c", ""), "wasm32-unknown-unknown");
        let error = read(&without, "wasm32-unknown-unknown", Path::new("/project")).unwrap_err();
        assert!(error.to_string().contains("states no license"), "{error}");
        std::fs::remove_dir_all(&folder).unwrap();
    }
}
