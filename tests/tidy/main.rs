//! What holds the whole together, held by checks: the arrows between the parts, a source for each number, what files
//! hold and what they must not say. Each list of exceptions fails in both directions: an exception that is no longer
//! needed must go.

mod arrows;
mod articles;
mod content;
mod family;
mod files;
mod licences;
mod memory;
mod messages;
mod names;
mod numbers;
mod reading;
#[path = "../published/support.rs"]
mod support;
mod words;

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

/// A file of the repository: where it is and what it holds.
pub struct File {
    /// From the root, with `/`.
    pub path: String,
    /// All of it.
    pub text: String,
}

/// Folders that hold what is built or kept for one's own.
const NOT_OURS: [&str; 4] = ["target", "dist", ".git", "node_modules"];

fn walk(folder: &Path, found: &mut Vec<PathBuf>) {
    let entries = std::fs::read_dir(folder).unwrap_or_else(|e| panic!("{}: {e}", folder.display()));
    for entry in entries.flatten() {
        let (path, name) = (entry.path(), entry.file_name());
        if NOT_OURS.iter().any(|not| name == *not) {
            continue;
        }
        if path.is_dir() {
            walk(&path, found);
        } else {
            found.push(path);
        }
    }
}

/// Every file of text under these folders, or under the root.
pub fn files(under: &[&str]) -> Vec<File> {
    let root = support::root();
    let mut paths = Vec::new();
    for folder in under {
        walk(&root.join(folder), &mut paths);
    }
    paths.sort();
    let files: Vec<File> = paths
        .into_iter()
        .filter_map(|path| {
            let text = std::fs::read_to_string(&path).ok()?;
            let path = path
                .strip_prefix(&root)
                .ok()?
                .to_string_lossy()
                .replace('\\', "/");
            Some(File { path, text })
        })
        .collect();
    assert!(!files.is_empty(), "{under:?} holds no file");
    files
}

/// A list of exceptions, one a line: `what: why`. Lines with # are remarks.
pub fn exceptions(name: &str) -> BTreeMap<String, String> {
    let path = support::root().join("tests/tidy").join(name);
    let text = std::fs::read_to_string(&path).unwrap_or_else(|e| panic!("{name}: {e}"));
    let mut list = BTreeMap::new();
    for line in text
        .lines()
        .filter(|line| !line.trim().is_empty() && !line.starts_with('#'))
    {
        let (what, why) = line
            .split_once(": ")
            .unwrap_or_else(|| panic!("{name}: no reason in \"{line}\""));
        assert!(
            why.trim().len() > 8,
            "{name}: a reason is a sentence: \"{line}\""
        );
        let before = list.insert(what.trim().to_owned(), why.trim().to_owned());
        assert!(before.is_none(), "{name}: {what} stands twice");
    }
    list
}
