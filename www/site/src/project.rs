//! Where things are: the project's root, and where built files go.

use anyhow::{Result, bail};
use std::path::{Path, PathBuf};

/// The folder that holds the workspace: the current one or one above it.
///
/// # Errors
/// When no folder upwards holds the pages: the message says where to run it.
pub(crate) fn root() -> Result<PathBuf> {
    let here = std::env::current_dir()?;
    // Cargo sets this one when it runs the program, from wherever that was asked.
    let by_cargo = std::env::var_os("CARGO_MANIFEST_DIR").map(PathBuf::from);
    for start in std::iter::once(here).chain(by_cargo) {
        for folder in start.ancestors() {
            if folder.join("www/pages/shell.html").is_file() && folder.join("Cargo.toml").is_file()
            {
                return Ok(folder.to_path_buf());
            }
        }
    }
    bail!(
        "The project's files are not here. Go to the folder with Cargo.toml and www/ in it and run it there."
    )
}

/// Cargo's target folder for this workspace.
pub(crate) fn target(root: &Path) -> PathBuf {
    match std::env::var_os("CARGO_TARGET_DIR") {
        Some(folder) => root.join(folder),
        None => root.join("target"),
    }
}
