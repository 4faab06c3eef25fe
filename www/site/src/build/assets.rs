//! Files of the built site, and names that change with their content.

use crate::build::interface;
use anyhow::{Context, Result, bail};
use base64::Engine as _;
use sha2::{Digest as _, Sha256};
use std::collections::BTreeMap;
use std::path::Path;

/// One file of the site.
#[derive(Clone)]
pub(crate) struct File {
    /// Where it lies in the built folder, with forward slashes: `sources/index.html`.
    pub path: String,
    /// What it holds.
    pub bytes: Vec<u8>,
}

impl File {
    /// A file whose name stays the same from build to build.
    pub(crate) fn named(path: &str, bytes: impl Into<Vec<u8>>) -> Self {
        Self {
            path: path.to_owned(),
            bytes: bytes.into(),
        }
    }

    /// The address below the site's base: folders for pages, else the path.
    pub(crate) fn address(&self) -> &str {
        match self.path.strip_suffix("index.html") {
            Some(folder) if folder.is_empty() || folder.ends_with('/') => folder,
            _ => &self.path,
        }
    }

    /// The SHA-256 as the `integrity` option of a request wants it.
    pub(crate) fn integrity(&self) -> String {
        let digest = Sha256::digest(&self.bytes);
        format!(
            "sha256-{}",
            base64::engine::general_purpose::STANDARD.encode(digest)
        )
    }
}

/// A digest of all paths and bytes, in hexadecimal: equal for equal sites.
pub(crate) fn digest<'a>(files: impl IntoIterator<Item = (&'a str, &'a [u8])>) -> String {
    let mut all: Vec<_> = files.into_iter().collect();
    all.sort_unstable();
    let mut hasher = Sha256::new();
    for (path, bytes) in all {
        // The lengths keep one file's end from passing for the next one's beginning.
        hasher.update((path.len() as u64).to_le_bytes());
        hasher.update(path);
        hasher.update((bytes.len() as u64).to_le_bytes());
        hasher.update(bytes);
    }
    hex(&hasher.finalize())
}

/// Bytes in hexadecimal.
pub(crate) fn hex(bytes: &[u8]) -> String {
    bytes.iter().map(|byte| format!("{byte:02x}")).collect()
}

/// The assets of one build: plain name to hashed file.
#[derive(Default)]
pub(crate) struct Assets {
    files: BTreeMap<String, File>,
}

impl Assets {
    /// Adds `bytes` as `name` (`site.css`), to lie under `assets/` with a piece
    /// of its digest in its name.
    pub(crate) fn add(&mut self, name: &str, bytes: impl Into<Vec<u8>>) {
        let bytes = bytes.into();
        let piece = &hex(&Sha256::digest(&bytes))[..12];
        let (stem, ending) = name.rsplit_once('.').unwrap_or((name, "bin"));
        let file = File {
            path: format!("assets/{stem}.{piece}.{ending}"),
            bytes,
        };
        self.files.insert(name.to_owned(), file);
    }

    /// Where the asset lies under the base: `assets/site.0123456789ab.css`.
    ///
    /// # Errors
    /// When no asset of that name was added.
    pub(crate) fn path(&self, name: &str) -> Result<&str> {
        self.files
            .get(name)
            .map(|file| file.path.as_str())
            .with_context(|| format!("no asset is called {name}"))
    }

    /// What the asset holds.
    ///
    /// # Errors
    /// When no asset of that name was added.
    pub(crate) fn bytes(&self, name: &str) -> Result<Vec<u8>> {
        let file = self.files.get(name);
        Ok(file
            .with_context(|| format!("no asset is called {name}"))?
            .bytes
            .clone())
    }

    /// The hashed name without its folder, for one asset to name another.
    ///
    /// # Errors
    /// When no asset of that name was added.
    pub(crate) fn name(&self, name: &str) -> Result<&str> {
        Ok(self.path(name)?.trim_start_matches("assets/"))
    }

    /// All of them.
    pub(crate) fn into_files(self) -> impl Iterator<Item = File> {
        self.files.into_values()
    }
}

/// The functions that several scripts hold, each in a file of that name: why a file can't be used; what is pressed before
/// the module is there. A script has a string literal in its place, `"@@cause@@"`.
const SHARED: [&str; 2] = ["cause", "early"];

/// Reads a script and puts names in: each of `names` stands in it as a string
/// literal to be replaced, at least once, so that the source is a script too.
/// What several scripts hold goes into each that has its mark.
///
/// # Errors
/// When the file can't be read, or does not hold one of the literals.
pub(crate) fn script(path: &Path, names: &[(&str, &str)]) -> Result<String> {
    let mut text = std::fs::read_to_string(path)
        .with_context(|| format!("{} could not be read", path.display()))?;
    for name in SHARED {
        let mark = format!("\"@@{name}@@\"");
        if !text.contains(&mark) {
            continue;
        }
        let file = path.with_file_name(name).with_extension("js");
        let code = std::fs::read_to_string(&file)
            .with_context(|| format!("{} could not be read", file.display()))?;
        // Its comment stands in front of it there, and would part it from its name here.
        let code = code
            .lines()
            .skip_while(|line| line.starts_with("/**") || line.starts_with(" *"));
        text = text.replace(&mark, &code.collect::<Vec<_>>().join("\n"));
    }
    for (mark, made) in [
        ("ATTRIBUTES = {}", interface::attributes()),
        ("PASSED = []", interface::passed()),
    ] {
        text = text.replace(mark, &format!("{}{made}", &mark[..mark.len() - 2]));
    }
    for (literal, name) in names {
        if !text.contains(literal) {
            bail!(
                "{} does not hold {literal}, which the build replaces",
                path.display()
            );
        }
        text = text.replace(literal, name);
    }
    Ok(text)
}

/// A script or a style sheet as browsers get it, without indents, blank lines and comments that have lines to themselves. No text
/// of ours goes over several lines.
pub(crate) fn tidy(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    let mut comment = false;
    for line in text.lines().map(str::trim) {
        let begins = line.starts_with("/*");
        let ends = line.ends_with("*/");
        if comment || begins {
            // What follows a comment on its last line is kept, with the comment.
            comment = !line.contains("*/");
            if comment || ends {
                continue;
            }
        }
        if !line.is_empty() && !line.starts_with("//") {
            out.push_str(line);
            out.push('\n');
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    /// SHA-256 of "abc": FIPS 180-4, the example in NIST's published test values.
    #[test]
    fn integrity_is_the_published_sha256() {
        let file = File::named("x", "abc");
        assert_eq!(
            file.integrity(),
            "sha256-ungWv48Bz+pBQUDeXa4iI7ADYaOWF3qctBD/YfIAFa0="
        );
    }

    #[test]
    fn a_name_changes_with_its_content() {
        let mut assets = Assets::default();
        assets.add("site.css", "a{}");
        let before = assets.path("site.css").unwrap().to_owned();
        assets.add("site.css", "b{}");
        let after = assets.path("site.css").unwrap();
        assert_ne!(before, after);
        assert!(after.starts_with("assets/site.") && after.ends_with(".css"));
    }

    #[test]
    fn the_digest_sees_paths_and_bytes_but_not_the_order() {
        let one = digest([("a", b"1".as_slice()), ("b", b"2".as_slice())]);
        assert_eq!(
            one,
            digest([("b", b"2".as_slice()), ("a", b"1".as_slice())])
        );
        assert_ne!(
            one,
            digest([("a", b"12".as_slice()), ("b", b"".as_slice())])
        );
        assert_ne!(
            one,
            digest([("c", b"1".as_slice()), ("b", b"2".as_slice())])
        );
    }

    #[test]
    fn pages_are_addressed_by_their_folder() {
        assert_eq!(File::named("index.html", "").address(), "");
        assert_eq!(File::named("sources/index.html", "").address(), "sources/");
        assert_eq!(File::named("404.html", "").address(), "404.html");
    }

    #[test]
    fn tidying_takes_comments_and_keeps_rules_and_code() {
        let text = "/** a\n * b\n */\n  let x = 1; // kept\n// gone\n\n/* one */\n* { margin: 0 }\n/* c */ p { }\n";
        assert_eq!(
            tidy(text),
            "let x = 1; // kept\n* { margin: 0 }\n/* c */ p { }\n"
        );
    }
}
