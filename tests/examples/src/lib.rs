//! The named questions of `content/examples`, for programs that show answers and for checks.

use calc::question::Typed;
use std::path::{Path, PathBuf};

/// The folder of the named questions.
pub fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../content/examples")
}

/// Every question of a folder with its name, the file's name without `.json`; in the order of the names.
///
/// # Panics
/// If the folder holds no question, or a file that is none; the message names it.
pub fn all(folder: &Path) -> Vec<(String, Typed)> {
    let entries = std::fs::read_dir(folder).unwrap_or_else(|e| panic!("{}: {e}", folder.display()));
    let mut files: Vec<PathBuf> = entries
        .flatten()
        .map(|entry| entry.path())
        .filter(|path| path.extension().is_some_and(|end| end == "json"))
        .collect();
    files.sort();
    assert!(!files.is_empty(), "{} holds no question", folder.display());
    files
        .iter()
        .map(|path| {
            let name = path.file_stem().unwrap_or_default().to_string_lossy();
            (name.into_owned(), read(path))
        })
        .collect()
}

/// The question of this name.
///
/// # Panics
/// If there is none, or it is no question; the message names the file.
pub fn named(name: &str) -> Typed {
    read(&folder().join(name).with_extension("json"))
}

fn read(path: &Path) -> Typed {
    let text = std::fs::read_to_string(path).unwrap_or_else(|e| panic!("{}: {e}", path.display()));
    serde_json::from_str(&text).unwrap_or_else(|e| panic!("{}: {e}", path.display()))
}
