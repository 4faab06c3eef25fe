//! The folder that a build goes to: written, replaced, read back.

use crate::build::assets::File;
use crate::build::version;
use anyhow::{Context, Result, bail};
use std::collections::BTreeSet;
use std::path::Path;

/// Lists what a build wrote into a folder: the next one removes what it no
/// longer makes, and a folder with other things in it is left alone.
const MARKER: &str = ".slipbark-files";

/// Refuses a folder that holds something which no build of ours wrote.
pub(crate) fn may_write(out: &Path) -> Result<()> {
    if out.is_file() {
        bail!(
            "{} is a file. Give --out the name of a folder.",
            out.display()
        );
    }
    let empty = std::fs::read_dir(out).map_or(true, |mut entries| entries.next().is_none());
    if !empty && !out.join(MARKER).is_file() {
        bail!(
            "{} holds files that no build of this site wrote. Give --out an empty or a new folder, or empty that one.",
            out.display()
        );
    }
    Ok(())
}

/// Whether a file of the full version stands in `out` with other bytes: it should never change.
pub(crate) fn changes_full(out: &Path, files: &[File]) -> bool {
    files.iter().any(|file| {
        version::is_full(&file.path)
            && std::fs::read(out.join(&file.path)).is_ok_and(|bytes| bytes != file.bytes)
    })
}

/// Writes the files into `out` and removes what an earlier build left there.
///
/// # Errors
/// A folder with other things in it, or one that can't be written.
pub(crate) fn write(out: &Path, files: &[File]) -> Result<()> {
    may_write(out)?;
    let marker = out.join(MARKER);
    let before = std::fs::read_to_string(&marker).unwrap_or_default();
    let now: BTreeSet<&str> = files.iter().map(|file| file.path.as_str()).collect();
    std::fs::create_dir_all(out).with_context(|| format!("{} could not be made", out.display()))?;
    let mut listed: BTreeSet<&str> = before.lines().collect();
    listed.extend(&now);
    // Both lists stand in the marker while files change, so that a build that
    // breaks half-way leaves nothing unaccounted for.
    std::fs::write(&marker, lines(&listed))?;
    for file in files {
        let path = out.join(&file.path);
        if let Some(folder) = path.parent() {
            std::fs::create_dir_all(folder)?;
        }
        std::fs::write(&path, &file.bytes)
            .with_context(|| format!("{} could not be written", path.display()))?;
    }
    let own = format!("{}/", version::FULL);
    // Folders of other full versions stay: somebody's page may name them.
    let gone = |old: &&str| !now.contains(old) && (old.starts_with(&own) || !version::is_full(old));
    for old in before.lines().filter(gone) {
        // Only names that a build can have written: never upwards, never absolute.
        let inside = Path::new(old)
            .components()
            .all(|part| matches!(part, std::path::Component::Normal(_)));
        if inside {
            let _ = std::fs::remove_file(out.join(old));
        }
    }
    std::fs::write(&marker, lines(&now))?;
    Ok(())
}

/// Reads a folder that was built before, for `serve --dir`.
///
/// # Errors
/// When it can't be read or has no page in it.
pub(crate) fn read(folder: &Path) -> Result<Vec<File>> {
    let mut files = Vec::new();
    let mut folders = vec![folder.to_path_buf()];
    while let Some(next) = folders.pop() {
        let entries = std::fs::read_dir(&next)
            .with_context(|| format!("{} could not be read", next.display()))?;
        for entry in entries {
            let path = entry?.path();
            if path.is_dir() {
                folders.push(path);
                continue;
            }
            let inside = path.strip_prefix(folder)?;
            let names: Vec<_> = inside.iter().map(|name| name.to_string_lossy()).collect();
            if names.last().is_some_and(|name| !name.starts_with('.')) {
                let mut file = File::named(&names.join("/"), std::fs::read(&path)?);
                file.hashed = file.path.starts_with("assets/");
                files.push(file);
            }
        }
    }
    if !files.iter().any(|file| file.path == "index.html") {
        bail!(
            "{} has no index.html in it. Build into it first: build --out {}",
            folder.display(),
            folder.display()
        );
    }
    Ok(files)
}

fn lines(names: &BTreeSet<&str>) -> String {
    names.iter().flat_map(|name| [name, "\n"]).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A new folder under the system's own for such things; removed at the end.
    struct Folder(std::path::PathBuf);

    impl Folder {
        fn new(name: &str) -> Self {
            let folder =
                std::env::temp_dir().join(format!("slipbark-{name}-{}", std::process::id()));
            let _ = std::fs::remove_dir_all(&folder);
            std::fs::create_dir_all(&folder).unwrap();
            Self(folder)
        }
    }

    impl Drop for Folder {
        fn drop(&mut self) {
            let _ = std::fs::remove_dir_all(&self.0);
        }
    }

    #[test]
    fn a_build_replaces_the_one_before_and_nothing_else() {
        let folder = Folder::new("replace");
        let out = folder.0.join("site");
        write(
            &out,
            &[
                File::named("index.html", "1"),
                File::named("a/old.css", "x"),
            ],
        )
        .unwrap();
        std::fs::write(out.join("mine.txt"), "kept").unwrap();
        write(&out, &[File::named("index.html", "2")]).unwrap();
        assert_eq!(
            std::fs::read_to_string(out.join("index.html")).unwrap(),
            "2"
        );
        assert!(
            !out.join("a/old.css").exists(),
            "what is no longer made is removed"
        );
        assert_eq!(
            std::fs::read_to_string(out.join("mine.txt")).unwrap(),
            "kept"
        );
    }

    #[test]
    fn folders_of_other_full_versions_stay_and_a_change_in_this_one_is_seen() {
        let folder = Folder::new("versions");
        let out = folder.0.join("site");
        let here = format!("{}/embed.js", version::FULL);
        let first = [
            File::named("index.html", "1"),
            File::named("99.0.1/embed.js", "then"),
            File::named(&here, "1"),
            File::named(&format!("{}/gone.js", version::FULL), "1"),
        ];
        write(&out, &first).unwrap();
        let next = [File::named("index.html", "2"), File::named(&here, "2")];
        assert!(!changes_full(&out, &first[..3]), "nothing has changed yet");
        assert!(changes_full(&out, &next));
        for _ in 0..2 {
            write(&out, &next).unwrap();
        }
        assert!(out.join("99.0.1/embed.js").is_file());
        assert!(!out.join(format!("{}/gone.js", version::FULL)).exists());
    }

    #[test]
    fn a_folder_of_something_else_is_left_alone() {
        let folder = Folder::new("other");
        std::fs::write(folder.0.join("thesis.txt"), "years").unwrap();
        let error = write(&folder.0, &[File::named("index.html", "1")]).unwrap_err();
        assert!(error.to_string().contains("--out"), "{error}");
        assert!(!folder.0.join("index.html").exists());
        let error = may_write(&folder.0.join("thesis.txt")).unwrap_err();
        assert!(error.to_string().contains("is a file"), "{error}");
    }

    #[test]
    fn a_list_of_old_files_can_not_reach_out_of_the_folder() {
        let folder = Folder::new("outside");
        let out = folder.0.join("site");
        std::fs::create_dir_all(&out).unwrap();
        std::fs::write(folder.0.join("outside.txt"), "kept").unwrap();
        std::fs::write(out.join(MARKER), "../outside.txt\n").unwrap();
        write(&out, &[File::named("index.html", "1")]).unwrap();
        assert!(folder.0.join("outside.txt").exists());
    }

    #[test]
    fn a_built_folder_is_read_back_as_it_was() {
        let folder = Folder::new("back");
        let out = folder.0.join("site");
        let hashed = File {
            path: "assets/a.0.js".into(),
            bytes: b"1".to_vec(),
            hashed: true,
        };
        write(&out, &[File::named("index.html", "page"), hashed]).unwrap();
        let mut files = read(&out).unwrap();
        files.sort_by(|a, b| a.path.cmp(&b.path));
        let seen: Vec<_> = files
            .iter()
            .map(|file| (file.path.as_str(), file.hashed))
            .collect();
        assert_eq!(seen, [("assets/a.0.js", true), ("index.html", false)]);
        assert!(read(&folder.0).is_err(), "no page, no site");
    }
}
