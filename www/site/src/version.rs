//! The addresses that other people's pages name: `v1/`, which follows the newest version, and a folder of the
//! full version, whose files never change, so that a page can hold them to their digests.

use crate::assets::{Assets, File, script};
use crate::schema;
use anyhow::Result;
use base64::Engine as _;
use sha2::{Digest as _, Sha384};
use std::path::Path;

/// The full version, and the name of its folder.
pub const FULL: &str = env!("CARGO_PKG_VERSION");

/// The scripts that pages name, and the files that each of them names in turn.
const NAMED: [(&str, &[&str]); 2] = [
    ("embed.js", &["element.js", "stepdown.js"]),
    ("slipbark.js", &["element.js"]),
];

/// Whether a path lies in the folder of a full version: `0.1.0/…`.
pub fn is_full(path: &str) -> bool {
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
pub fn newest(scripts: &Path, assets: &Assets) -> Result<Vec<File>> {
    let mut files = scripts_in(scripts, "v1", |name| {
        Ok(format!("\"../{}\"", assets.path(name)?))
    })?;
    for (name, text) in [
        ("slipbark.d.ts", schema::typescript()?),
        ("question.schema.json", schema::question()?),
        ("answer.schema.json", schema::answer()?),
        ("config.schema.json", schema::settings()?),
    ] {
        files.push(File::named(&format!("v1/{name}"), text));
    }
    Ok(files)
}

/// The folder of the full version: all that its scripts load lies beside them. `named` are the files that the
/// element's script loads.
///
/// # Errors
/// As [`newest`].
pub fn full(scripts: &Path, assets: &Assets, named: &[String]) -> Result<Vec<File>> {
    let mut files = scripts_in(scripts, FULL, |name| Ok(format!("\"./{name}\"")))?;
    let path = |name: &str| format!("{FULL}/{name}");
    for name in ["element.js", "stepdown.js"] {
        // As written: there they name their neighbours plainly.
        files.push(File::named(&path(name), script(&scripts.join(name), &[])?));
    }
    for name in named {
        files.push(File::named(&path(name), assets.bytes(name)?));
    }
    Ok(files)
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
            names.push(("/v1/embed.js'".to_owned(), format!("/{folder}/embed.js'")));
        }
        let names: Vec<_> = names.iter().map(|(a, b)| (&**a, &**b)).collect();
        let text = script(&scripts.join(file), &names)?;
        files.push(File::named(&format!("{folder}/{file}"), text));
    }
    let height = script(&scripts.join("frame-height.js"), &[])?;
    files.push(File::named(&format!("{folder}/frame-height.js"), height));
    Ok(files)
}

/// The digest of a file, as the `integrity` attribute of a script takes it.
pub fn integrity(bytes: &[u8]) -> String {
    let digest = base64::engine::general_purpose::STANDARD.encode(Sha384::digest(bytes));
    format!("sha384-{digest}")
}

/// `v1/integrity.json`: the newest full version, and the digest of each of its files by its path.
///
/// # Errors
/// None that a list of texts can have.
pub fn list(files: &[File]) -> Result<File> {
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
