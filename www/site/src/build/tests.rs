//! Folders that a build writes, replaces and leaves alone.

use super::*;

/// A new folder under the system's own for such things; removed at the end.
struct Folder(std::path::PathBuf);

impl Folder {
    fn new(name: &str) -> Self {
        let folder = std::env::temp_dir().join(format!("slipbark-{name}-{}", std::process::id()));
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
    let mut files = read_folder(&out).unwrap();
    files.sort_by(|a, b| a.path.cmp(&b.path));
    let seen: Vec<_> = files
        .iter()
        .map(|file| (file.path.as_str(), file.hashed))
        .collect();
    assert_eq!(seen, [("assets/a.0.js", true), ("index.html", false)]);
    assert!(read_folder(&folder.0).is_err(), "no page, no site");
}
