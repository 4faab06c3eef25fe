//! The folder that a build goes to: written, replaced, read back.
//!
//! Assets of earlier builds stay for a while: a page or a script that somebody's browser still has names them.

use crate::build::assets::File;
use crate::build::{packed, version};
use anyhow::{Context, Result, bail};
use chrono::NaiveDate;
use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

/// Lists what a build wrote into a folder: the next one removes what it no
/// longer makes, and a folder with other things in it is left alone.
/// A line is a file's path; of an asset that only an earlier build has, a tab and the last day on which a build had it follow.
const MARKER: &str = ".slipbark-files";
/// How long an asset stays that no build has any more, days: our own assumption of how long a copy is kept elsewhere.
const STAYS: i64 = 90;

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

/// The folder of a group, as a whole path.
pub(crate) fn of_a_group(own: &Path) -> Result<PathBuf> {
    if !own.is_dir() {
        bail!(
            "{} is no folder. Give --own the folder with your articles.",
            own.display()
        );
    }
    Ok(std::path::absolute(own)?)
}

/// Whether a file of the full version stands in `out` with other bytes: it should never change.
pub(crate) fn changes_full(out: &Path, files: &[File]) -> bool {
    files.iter().any(|file| {
        version::is_full(&file.path)
            && std::fs::read(out.join(&file.path)).is_ok_and(|bytes| bytes != file.bytes)
    })
}

/// Writes the files into `out`, each text, module and table also packed beside itself, and removes what an earlier build
/// left there, but for assets that one of the last 90 days before `today` had. A file that stands there already with the same
/// bytes stays as it is, with what was packed of it. `kept` is the folder that keeps what was packed.
///
/// # Errors
/// A folder with other things in it, or one that can't be written.
pub(crate) fn write(out: &Path, files: &[File], today: NaiveDate, kept: &Path) -> Result<()> {
    may_write(out)?;
    let marker = out.join(MARKER);
    let before = std::fs::read_to_string(&marker).unwrap_or_default();
    let worth = |file: &&File| packed::is_worth_it(&file.path);
    let names = |file: &File| packed::WAYS.map(|(ending, _)| format!("{}{ending}", file.path));
    let beside: Vec<String> = files.iter().filter(worth).flat_map(names).collect();
    let mut now: BTreeSet<&str> = files.iter().map(|file| file.path.as_str()).collect();
    now.extend(beside.iter().map(String::as_str));
    std::fs::create_dir_all(out).with_context(|| format!("{} could not be made", out.display()))?;
    let before: BTreeMap<&str, NaiveDate> =
        before.lines().map(|line| listed(line, today)).collect();
    // Both lists stand in the marker while files change, so that a build that
    // breaks half-way leaves nothing unaccounted for.
    std::fs::write(&marker, lines(&now, &before))?;
    let stands = |file: &&File| {
        std::fs::read(out.join(&file.path)).is_ok_and(|bytes| bytes == file.bytes)
            && (!worth(file) || names(file).iter().any(|name| out.join(name).is_file()))
    };
    let (_, changed): (Vec<&File>, Vec<&File>) = files.iter().partition(stands);
    let (to_pack, plain): (Vec<&File>, Vec<&File>) = changed.into_iter().partition(worth);
    for file in plain {
        put(&out.join(&file.path), &file.bytes)?;
    }
    let texts: Vec<_> = to_pack.iter().map(|file| packed::Text::of(file)).collect();
    for (file, packed) in to_pack.iter().zip(packed::pack(&texts, kept)) {
        // A build that breaks here leaves nothing packed that is not of its file.
        for name in names(file) {
            let _ = std::fs::remove_file(out.join(name));
        }
        put(&out.join(&file.path), &file.bytes)?;
        for (name, packed) in names(file).iter().zip(packed) {
            if let Some(packed) = packed {
                put(&out.join(name), &packed)?;
            }
        }
    }
    let own = format!("{}/", version::FULL);
    let mut stay = BTreeMap::new();
    for (old, day) in before {
        if now.contains(old) || !is_inside(old) {
            continue;
        }
        // Folders of other full versions stay: somebody's page may name them.
        if version::is_full(old) && !old.starts_with(&own) {
            continue;
        }
        let young = (today - day).num_days() < STAYS;
        if old.starts_with("assets/") && young && out.join(old).is_file() {
            stay.insert(old, day);
        } else {
            let _ = std::fs::remove_file(out.join(old));
        }
    }
    std::fs::write(&marker, lines(&now, &stay))?;
    Ok(())
}

/// Writes the files of a package into `out`, in the place of those that an earlier build wrote there.
///
/// # Errors
/// As [`write`].
pub(crate) fn write_plain(out: &Path, files: &[File]) -> Result<()> {
    may_write(out)?;
    let marker = out.join(MARKER);
    let before = std::fs::read_to_string(&marker).unwrap_or_default();
    let before = before.lines().map(|line| listed(line, NaiveDate::MAX).0);
    for old in before.filter(|old| is_inside(old)) {
        let _ = std::fs::remove_file(out.join(old));
    }
    // First the marker: a build that breaks half-way leaves nothing that the next one would not touch.
    std::fs::create_dir_all(out).with_context(|| format!("{} could not be made", out.display()))?;
    let now = files.iter().map(|file| file.path.as_str()).collect();
    std::fs::write(&marker, lines(&now, &BTreeMap::new()))?;
    for file in files {
        put(&out.join(&file.path), &file.bytes)?;
    }
    Ok(())
}

/// Whether a build can have written a file of this name: never upwards, never absolute.
fn is_inside(path: &str) -> bool {
    let mut parts = Path::new(path).components();
    parts.all(|part| matches!(part, std::path::Component::Normal(_)))
}

/// A line of the marker: the path, and the last day on which a build had it.
fn listed(line: &str, today: NaiveDate) -> (&str, NaiveDate) {
    let (path, day) = line.split_once('\t').unwrap_or((line, ""));
    (
        path,
        NaiveDate::parse_from_str(day, "%Y-%m-%d").unwrap_or(today),
    )
}

fn put(path: &Path, bytes: &[u8]) -> Result<()> {
    if let Some(folder) = path.parent() {
        std::fs::create_dir_all(folder)?;
    }
    std::fs::write(path, bytes).with_context(|| format!("{} could not be written", path.display()))
}

/// Checks that a folder can be served as it is, for `serve --dir`.
///
/// # Errors
/// When it has no page in it.
pub(crate) fn holds_a_site(folder: &Path) -> Result<()> {
    if folder.join("index.html").is_file() {
        return Ok(());
    }
    bail!(
        "{} has no index.html in it. Build into it first: build --out {}",
        folder.display(),
        folder.display()
    )
}

/// The marker's text: what a build has now, and what an earlier one had.
fn lines(now: &BTreeSet<&str>, earlier: &BTreeMap<&str, NaiveDate>) -> String {
    let now = now.iter().map(|name| format!("{name}\n"));
    let earlier = earlier.iter();
    now.chain(earlier.map(|(name, day)| format!("{name}\t{day}\n")))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// As a build of a day on which nothing has become old.
    fn write(out: &Path, files: &[File]) -> Result<()> {
        super::write(out, files, day(0), &kept())
    }

    fn kept() -> std::path::PathBuf {
        std::env::temp_dir().join("slipbark-tests-packed")
    }

    /// A day, so many after the first build of a test.
    fn day(after: u64) -> NaiveDate {
        NaiveDate::from_ymd_opt(2027, 1, 31).unwrap() + chrono::Days::new(after)
    }

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
    fn an_old_asset_stays_until_no_build_of_90_days_had_it() {
        let folder = Folder::new("assets");
        let out = folder.0.join("site");
        let script = "step()".repeat(50);
        let build = |name: &str, after: u64| {
            let path = format!("assets/{name}.js");
            let files = [
                File::named("index.html", name),
                File::named(&path, script.clone()),
            ];
            super::write(&out, &files, day(after), &kept()).unwrap();
        };
        let held = |name: &str| out.join(format!("assets/{name}")).is_file();
        build("old", 0);
        let list = std::fs::read_to_string(out.join(MARKER)).unwrap();
        assert!(
            !list.contains('\t'),
            "a fresh folder holds one build: {list}"
        );
        std::fs::write(out.join("assets/not-listed.js"), "kept").unwrap();
        // A hundred days later the first is replaced: it was in use until then.
        build("old", 100);
        build("new", 100);
        assert!(held("old.js") && held("old.js.gz") && held("old.js.br") && held("new.js"));
        build("newer", 189);
        assert!(held("old.js") && held("new.js") && held("newer.js"));
        // An asset that a build has again is one of its own.
        build("new", 190);
        assert!(!held("old.js") && !held("old.js.gz"), "90 days are over");
        assert!(held("new.js") && held("newer.js") && held("not-listed.js"));
        build("last", 279);
        assert!(held("new.js") && held("newer.js"));
        let list = std::fs::read_to_string(out.join(MARKER)).unwrap();
        assert!(list.contains("assets/new.js\t2027-"), "{list}");
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
    fn texts_are_packed_beside_themselves_and_again_only_when_they_change() {
        let folder = Folder::new("packed");
        let out = folder.0.join("site");
        let page = |text: &str| {
            [
                File::named("index.html", text.repeat(100)),
                File::named("a.png", "picture"),
            ]
        };
        let changed = |name: &str| out.join(name).metadata().unwrap().modified().unwrap();
        write(&out, &page("maple ")).unwrap();
        let first = changed("index.html.br");
        assert!(
            first >= changed("index.html"),
            "what is packed is newer than its file"
        );
        assert!(out.join("index.html.gz").is_file() && !out.join("a.png.gz").exists());
        let packed = std::fs::read(out.join("index.html.gz")).unwrap();
        std::thread::sleep(std::time::Duration::from_millis(20));
        write(&out, &page("maple ")).unwrap();
        assert_eq!(changed("index.html.br"), first, "nothing has changed");
        write(&out, &page("beech ")).unwrap();
        assert_ne!(changed("index.html.br"), first);
        assert_ne!(std::fs::read(out.join("index.html.gz")).unwrap(), packed);
        write(&out, &[File::named("index.html", "x")]).unwrap();
        assert!(
            !out.join("index.html.br").exists(),
            "one letter does not become smaller"
        );
        assert!(holds_a_site(&out).is_ok());
        assert!(holds_a_site(&folder.0).is_err(), "no page, no site");
        write(&out, &[File::named("404.html", "gone".repeat(50))]).unwrap();
        let left: Vec<_> = std::fs::read_dir(&out)
            .unwrap()
            .flatten()
            .map(|it| it.file_name())
            .collect();
        assert_eq!(
            left.len(),
            4,
            "a page, packed twice, and the list: {left:?}"
        );
    }
}
