//! The addresses that other people's pages name: `v1/`, which follows the newest version, and a folder of the
//! full version, whose files never change, so that a page can hold them to their digests.

use crate::build::assets::{Assets, File, script, tidy};
use crate::build::{languages, schema};
use anyhow::{Context, Result};
use base64::Engine as _;
use calc_view::words::m;
use sha2::{Digest as _, Sha384};
use std::path::Path;

/// The full version, and the name of its folder.
pub(crate) const FULL: &str = env!("CARGO_PKG_VERSION");

/// The scripts that pages name, and the files that each of them names in turn.
const NAMED: [(&str, &[&str]); 2] = [
    (
        "embed.js",
        &[
            "element.js",
            "engine.js",
            "engine.wasm",
            "calculator.css",
            "stepdown.js",
        ],
    ),
    ("slipbark.js", &["element.js"]),
];

/// Whether a path lies in the folder of a full version: `0.1.0/…`.
pub(crate) fn is_full(path: &str) -> bool {
    let folder = path.split_once('/').map_or("", |(folder, _)| folder);
    let parts: Vec<_> = folder.split('.').collect();
    parts.len() == 3
        && parts
            .iter()
            .all(|part| !part.is_empty() && part.bytes().all(|byte| byte.is_ascii_digit()))
}

/// `v1/`: the scripts of the newest version, by addresses that stay.
///
/// # Errors
/// A script that can't be read, or does not name what it should.
pub(crate) fn newest(scripts: &Path, assets: &Assets) -> Result<Vec<File>> {
    let mut files = scripts_in(scripts, "v1", |name| {
        Ok(format!("\"../{}\"", assets.path(name)?))
    })?;
    for (name, text) in [
        ("slipbark.d.ts", schema::typescript()?),
        ("question.schema.json", schema::question()?),
        ("answer.schema.json", schema::answer()?),
        ("config.schema.json", schema::settings()?),
        ("plan.schema.json", schema::plan()?),
    ] {
        files.push(File::named(&format!("v1/{name}"), text));
    }
    Ok(files)
}

/// The folder of the full version: all that its scripts load lies beside them, and each holds the next to its
/// digest. `named` are the files that the element's script loads.
///
/// # Errors
/// As [`newest`].
pub(crate) fn full(scripts: &Path, assets: &Assets, named: &[String]) -> Result<Vec<File>> {
    let mut files = Vec::new();
    for name in named {
        files.push(File::named(&format!("{FULL}/{name}"), assets.bytes(name)?));
    }
    // As written: there they name their neighbours plainly.
    let fetched = digests(files.iter().filter(|file| !file.path.ends_with(".js")));
    let names = [("DIGESTS = {}", format!("DIGESTS = {fetched}"))];
    let names = names.each_ref().map(|(a, b)| (*a, &**b));
    let element = script(&scripts.join("element.js"), &names)?;
    files.push(File::named(&format!("{FULL}/element.js"), tidy(&element)));
    let stepdown = assets.bytes("stepdown.js")?;
    files.push(File::named(&format!("{FULL}/stepdown.js"), stepdown));
    let modules = digests(files.iter().filter(|file| file.path.ends_with(".js")));
    let mut all = scripts_in(scripts, FULL, |name| Ok(format!("\"./{name}\"")))?;
    for file in &mut all {
        let text = String::from_utf8(std::mem::take(&mut file.bytes))?;
        file.bytes = text
            .replace("HELD = {}", &format!("HELD = {modules}"))
            .into_bytes();
    }
    all.extend(files);
    Ok(all)
}

/// The script that puts a frame in the place of an element that can't start, with the frame's title in every language.
///
/// # Errors
/// As [`newest`].
pub(crate) fn stepdown(scripts: &Path) -> Result<String> {
    let titles = languages::by_language(languages::asked_by_kind);
    let titles = format!("WORDS = {titles}");
    script(&scripts.join("stepdown.js"), &[("WORDS = {}", &titles)])
}

/// The digest of a file of the full version, by its name.
///
/// # Errors
/// If it was not made.
pub(crate) fn digest_of(files: &[File], name: &str) -> Result<String> {
    let path = format!("{FULL}/{name}");
    let file = files.iter().find(|file| file.path == path);
    let file = file.with_context(|| format!("{path} was not made"))?;
    Ok(integrity(&file.bytes))
}

/// Digests by name, as a script's object: `{"./engine.wasm":"sha384-…"}`.
fn digests<'a>(files: impl Iterator<Item = &'a File>) -> serde_json::Value {
    files
        .map(|file| {
            let name = file.path.rsplit('/').next().unwrap_or_default();
            (format!("./{name}"), integrity(&file.bytes).into())
        })
        .collect::<serde_json::Map<_, _>>()
        .into()
}

fn scripts_in(
    scripts: &Path,
    folder: &str,
    address: impl Fn(&str) -> Result<String>,
) -> Result<Vec<File>> {
    let mut files = Vec::new();
    for (file, named) in NAMED {
        let mut names = Vec::new();
        for name in named {
            names.push((format!("\"../{name}\""), address(name)?));
        }
        if file == "embed.js" {
            let words = languages::by_language(|| m::SHELL_PLAN.to_string().into());
            names.push(("WORDS = {}".to_owned(), format!("WORDS = {words}")));
            names.push(("/v1/embed.js'".to_owned(), format!("/{folder}/embed.js'")));
            // Left as it is here, but it must be there to be filled in.
            names.push(("HELD = {}".to_owned(), "HELD = {}".to_owned()));
        }
        let names: Vec<_> = names.iter().map(|(a, b)| (&**a, &**b)).collect();
        let text = script(&scripts.join(file), &names)?;
        files.push(File::named(&format!("{folder}/{file}"), tidy(&text)));
    }
    let height = script(&scripts.join("frame-height.js"), &[])?;
    files.push(File::named(&format!("{folder}/frame-height.js"), height));
    Ok(files)
}

/// The digest of a file, as the `integrity` attribute of a script takes it.
pub(crate) fn integrity(bytes: &[u8]) -> String {
    let digest = base64::engine::general_purpose::STANDARD.encode(Sha384::digest(bytes));
    format!("sha384-{digest}")
}

/// `v1/integrity.json`: the newest full version, and the digest of each of its files by its path.
///
/// # Errors
/// None that a list of texts can have.
pub(crate) fn list(files: &[File]) -> Result<File> {
    let digests: serde_json::Map<_, _> = files
        .iter()
        .map(|file| (file.path.clone(), integrity(&file.bytes).into()))
        .collect();
    let list = serde_json::json!({ "version": FULL, "files": digests });
    let text = serde_json::to_string_pretty(&list)?;
    Ok(File::named("v1/integrity.json", text + "\n"))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// SHA-384 of "abc": FIPS 180-4, the example in NIST's published test values, as hexadecimal
    /// cb00753f45a35e8b b5a03d699ac65007 272c32ab0eded163 1a8b605a43ff5bed 8086072ba1e7cc23 58baeca134c825a7.
    #[test]
    fn integrity_is_the_published_sha384() {
        assert_eq!(
            integrity(b"abc"),
            "sha384-ywB1P0WjXou1oD1pmsZQBycsMqsO3tFjGotgWkP/W+2AhgcroefMI1i67KE0yCWn"
        );
    }

    #[test]
    fn a_folder_of_a_full_version_is_told_from_others() {
        assert!(is_full(&format!("{FULL}/embed.js")) && is_full("1.4.2/a/b.js"));
        for path in [
            "v1/embed.js",
            "1.4/x.js",
            "1.4.2",
            "1.4.x/a",
            "1..2/a",
            "assets/1.4.2.js",
        ] {
            assert!(!is_full(path), "{path}");
        }
    }
}
