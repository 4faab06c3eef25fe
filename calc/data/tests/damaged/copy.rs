//! A copy of content that a check may damage.

use super::content;
use std::fs;
use std::path::{Path, PathBuf};

/// A copy of content that goes when the check is done.
pub(crate) struct Copy {
    pub folder: PathBuf,
}

/// Copies a folder with all that is in it.
fn copy_all(from: &Path, to: &Path) {
    fs::create_dir_all(to).expect("a folder for the copy");
    for entry in fs::read_dir(from).expect("a folder").flatten() {
        let (from, to) = (entry.path(), to.join(entry.file_name()));
        if from.is_dir() {
            copy_all(&from, &to);
        } else {
            fs::copy(&from, &to).expect("a copy");
        }
    }
}

impl Copy {
    /// `name` is that of the check.
    pub(crate) fn new(name: &str) -> Self {
        let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
        let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
        for part in ["content/evidence", "content/rules"] {
            copy_all(&root.join(part), &folder.join(part));
        }
        Self { folder }
    }

    pub(crate) fn text(&self, table: &str) -> String {
        fs::read_to_string(self.folder.join(format!("content/{table}.csv"))).expect("a table")
    }

    pub(crate) fn write(&self, table: &str, text: &str) {
        fs::write(self.folder.join(format!("content/{table}.csv")), text).expect("a table");
    }

    /// Puts one text in the place of another in the line that begins so.
    #[track_caller]
    pub(crate) fn replace(&self, table: &str, line: &str, from: &str, to: &str) {
        let text = self.text(table);
        let found = text.lines().find(|of| of.starts_with(line)).expect(line);
        assert!(found.contains(from), "{found} has no {from}");
        let new = found.replacen(from, to, 1);
        self.write(table, &text.replacen(found, &new, 1));
    }

    /// Takes out every line that begins so.
    #[track_caller]
    pub(crate) fn without(&self, table: &str, line: &str) {
        let text = self.text(table);
        let kept: Vec<&str> = text.lines().filter(|of| !of.starts_with(line)).collect();
        assert!(kept.len() < text.lines().count(), "{table} has no {line}");
        self.write(table, &(kept.join("\n") + "\n"));
    }

    pub(crate) fn add(&self, table: &str, line: &str) {
        self.write(table, &format!("{}{line}\n", self.text(table)));
    }

    /// What stops the build.
    #[track_caller]
    pub(crate) fn problem(&self) -> String {
        match content::read(&self.folder) {
            Ok(_) => panic!("the damage goes unnoticed"),
            Err(problem) => problem.to_string(),
        }
    }

    /// The build stops at the line of a table that begins so, and says these.
    #[track_caller]
    pub(crate) fn stops_at(&self, table: &str, line: &str, says: &[&str]) {
        let at = self.text(table).lines().position(|of| of.starts_with(line));
        let at = at.expect(line) + 1;
        let problem = self.problem();
        let place = format!("content/{table}.csv:{at}: ");
        assert!(problem.starts_with(&place), "{problem}\nis not at {place}");
        for words in says {
            assert!(problem.contains(words), "{problem}\ndoes not say {words}");
        }
    }

    /// The build stops at the last line of a table, where a row is missing.
    #[track_caller]
    pub(crate) fn stops_at_the_end(&self, table: &str, says: &str) {
        let text = self.text(table);
        let last = text.lines().last().expect("a line");
        self.stops_at(table, last, &[says]);
    }
}

impl Drop for Copy {
    fn drop(&mut self) {
        let _ = fs::remove_dir_all(&self.folder);
    }
}
