//! The site as people get it: built once for all tests, served by its own
//! program, each test on a port of its own.

use std::ffi::OsStr;
use std::io::{BufRead as _, BufReader};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::sync::OnceLock;

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
        .parent()
        .expect("the tests lie in the project")
}

/// Where test runs may write.
pub(crate) fn scratch() -> PathBuf {
    let target = std::env::var_os("CARGO_TARGET_DIR")
        .map_or_else(|| root().join("target"), |folder| root().join(folder));
    target.join("tests")
}

fn run(command: &mut Command) {
    let status = command
        .current_dir(root())
        .status()
        .expect("cargo can be started");
    assert!(status.success(), "{command:?} failed");
}

/// The site's program.
pub(crate) fn program() -> &'static Path {
    static PROGRAM: OnceLock<PathBuf> = OnceLock::new();
    PROGRAM.get_or_init(|| {
        run(Command::new(env!("CARGO")).args(["build", "--quiet", "--package", "slipbark"]));
        scratch()
            .with_file_name("debug")
            .join(format!("slipbark{}", std::env::consts::EXE_SUFFIX))
    })
}

/// A folder for one build: over an earlier one it would keep what that had.
fn emptied(name: &str) -> PathBuf {
    let folder = scratch().join(name);
    let _ = std::fs::remove_dir_all(&folder);
    folder
}

/// Builds the site into a folder of this name, as options say.
pub(crate) fn built_with(name: &str, options: &[&OsStr]) -> PathBuf {
    let folder = emptied(name);
    run(Command::new(program())
        .args(["build", "--quiet"])
        .args(options)
        .arg("--out")
        .arg(&folder));
    folder
}

/// The folder with the site, built for the root of an origin.
pub(crate) fn built() -> &'static Path {
    static BUILT: OnceLock<PathBuf> = OnceLock::new();
    BUILT.get_or_init(|| built_with("site", &[]))
}

/// The folder with the site built to keep nothing on the device.
pub(crate) fn built_without_offline() -> &'static Path {
    static BUILT: OnceLock<PathBuf> = OnceLock::new();
    BUILT.get_or_init(|| built_with("site-without-offline", &["--no-offline".as_ref()]))
}

/// What `answer` prints for a question.
pub(crate) fn answer_on_the_command_line(question: &str) -> String {
    let file = scratch().join(format!("question-{}.json", std::process::id()));
    std::fs::write(&file, question).expect("the target folder can be written");
    let output = Command::new(program())
        .arg("answer")
        .arg(&file)
        .output()
        .expect("the program can be started");
    let text = String::from_utf8(output.stdout).expect("it prints UTF-8");
    assert!(output.status.success(), "{question}: {text}");
    text
}

/// The folder with the files of a season for the sample property, in a language.
pub(crate) fn plan_of_the_sample(language: &str) -> PathBuf {
    let folder = folder(&format!("season-{language}"));
    let output = Command::new(program())
        .current_dir(root())
        .args(["plan", "content/sample/trees.csv", "--region", "US-MA"])
        .args(["--from", "2027-05-01", "--to", "2027-07-31", "--on", "sat"])
        .args(["--today", "2027-04-01", "--lang", language, "--out"])
        .arg(&folder)
        .output()
        .expect("the program can be started");
    let error = String::from_utf8_lossy(&output.stderr);
    assert!(output.status.success(), "{error}");
    folder
}

/// Runs the program with these words; it must do what it is told.
pub(crate) fn on_the_command_line(words: &[String]) {
    let output = Command::new(program())
        .args(words)
        .output()
        .expect("the program can be started");
    let told = String::from_utf8_lossy(&output.stderr);
    assert!(output.status.success(), "{words:?}: {told}");
}

/// A folder of this test's own, empty.
pub(crate) fn folder(test: &str) -> PathBuf {
    let folder = scratch().join("folders").join(test);
    let _ = std::fs::remove_dir_all(&folder);
    std::fs::create_dir_all(&folder).expect("the target folder can be written");
    folder
}

/// A copy of the built site that a test may change.
pub(crate) fn copy(test: &str) -> PathBuf {
    fn copy_into(from: &Path, to: &Path) -> std::io::Result<()> {
        std::fs::create_dir_all(to)?;
        for entry in std::fs::read_dir(from)? {
            let entry = entry?;
            let to = to.join(entry.file_name());
            if entry.path().is_dir() {
                copy_into(&entry.path(), &to)?;
            } else if !entry
                .path()
                .extension()
                .is_some_and(|ending| ending == "br" || ending == "gz")
            {
                // Without the packed files: a test changes the others.
                std::fs::copy(entry.path(), to)?;
            }
        }
        Ok(())
    }
    let to = folder(test);
    copy_into(built(), &to).expect("the built site can be copied");
    to
}

/// A running server; it ends with the test.
pub(crate) struct Server {
    process: Child,
    /// Its origin with a slash: `http://127.0.0.1:40000/`.
    pub address: String,
}

impl Server {
    /// Serves the built site on a free port.
    pub(crate) fn of_the_site() -> Self {
        Self::of(built(), 0)
    }

    /// Serves a folder on a port; 0 takes a free one.
    pub(crate) fn of(folder: &Path, port: u16) -> Self {
        let mut process = Command::new(program())
            .current_dir(root())
            .args(["serve", "--quiet", "--port", &port.to_string(), "--dir"])
            .arg(folder)
            .stdout(Stdio::piped())
            .spawn()
            .expect("the site's program can be started");
        let mut address = String::new();
        let output = process.stdout.take().expect("a pipe");
        BufReader::new(output)
            .read_line(&mut address)
            .expect("the server prints its address");
        let address = address.trim().to_owned();
        assert!(
            address.starts_with("http://127.0.0.1:"),
            "the server should print its address, not {address:?}"
        );
        Self { process, address }
    }

    /// The port it listens on.
    pub(crate) fn port(&self) -> u16 {
        let port = self
            .address
            .trim_end_matches('/')
            .rsplit_once(':')
            .expect("an address has a port")
            .1;
        port.parse().expect("a port is a number")
    }

    /// Its origin without the slash.
    pub(crate) fn origin(&self) -> &str {
        self.address.trim_end_matches('/')
    }

    /// Stops it and waits until it is gone.
    pub(crate) fn stop(&mut self) {
        self.process.kill().expect("the server can be stopped");
        self.process.wait().expect("the server ends");
    }
}

impl Drop for Server {
    fn drop(&mut self) {
        let _ = self.process.kill();
        let _ = self.process.wait();
    }
}

/// Of some 160 pages of one template these stand for all: a tree that asks for visits, one that answers by suckers, a
/// group without plates.
const SPECIES: [&str; 3] = ["norway-maple", "tree-of-heaven", "palms"];

/// Whether an address is the page of one species.
pub(crate) fn is_species(page: &str) -> bool {
    let own = page.strip_prefix("es/").unwrap_or(page);
    own.strip_prefix("species/")
        .is_some_and(|rest| !rest.is_empty())
}

/// Of the articles, one template too: one without a calculator, one with it and a drawing, one with a table.
const ARTICLES: [&str; 3] = ["what-a-ring-does", "before-you-start", "how-wide-and-why"];

/// Whether an address is an article.
pub(crate) fn is_article(page: &str) -> bool {
    let own = page.strip_prefix("es/").unwrap_or(page);
    own.strip_prefix("articles/")
        .is_some_and(|rest| !rest.is_empty())
}

/// Of the key behind its first page, and of the plates: one with a warning, one with few steps; one with the most leaflets.
const KEY_AND_PLATES: [&str; 4] = ["alternate-pinnate", "scales-scale", "plates", "leaflets"];

/// Whether an address is a page of the key behind its first one, or one of plates.
pub(crate) fn is_key_or_plates(page: &str) -> bool {
    let own = page.strip_prefix("es/").unwrap_or(page);
    let is_key = own
        .strip_prefix("key/")
        .is_some_and(|rest| !rest.is_empty());
    is_key || own.starts_with("plates/")
}

/// Whether a page is kept for no signal only once it was read: one of many of its kind.
pub(crate) fn is_kept_once_read(page: &str) -> bool {
    is_species(page) || is_article(page) || is_key_or_plates(page)
}

/// The pages of the site, with some for those that are many of a kind, as addresses below its origin.
pub(crate) fn pages() -> Vec<String> {
    let stands = |page: &String| {
        let mut names = SPECIES.iter().chain(&ARTICLES).chain(&KEY_AND_PLATES);
        names.any(|name| format!("/{page}").ends_with(&format!("/{name}/")))
    };
    let mut pages = every_page();
    pages.retain(|page| !is_kept_once_read(page) || stands(page));
    pages
}

/// Every page of the site, as addresses below its origin.
pub(crate) fn every_page() -> Vec<String> {
    let mut pages = vec![String::new()];
    let mut folders = vec![built().to_path_buf()];
    while let Some(folder) = folders.pop() {
        for entry in std::fs::read_dir(folder).expect("the built site can be read") {
            let path = entry.expect("an entry").path();
            if path.is_dir() {
                if path.join("index.html").is_file() {
                    let inside = path
                        .strip_prefix(built())
                        .expect("inside")
                        .to_string_lossy()
                        .replace('\\', "/");
                    pages.push(format!("{inside}/"));
                }
                folders.push(path);
            }
        }
    }
    pages.sort();
    assert!(pages.len() > 5, "the site has pages: {pages:?}");
    pages
}
