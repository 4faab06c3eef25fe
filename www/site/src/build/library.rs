//! The crate for other Rust programs: `calc` and the packed tables in one package, which needs nothing of this project.

use crate::build::assets::File;
use crate::build::kit;
use anyhow::{Context, Result};
use calc_data::places::{CLIMATE, TOWNS};
use std::fmt::Write as _;
use std::path::Path;

/// The sources of `calc-data` that read what its build packed.
const READERS: [&str; 7] = [
    "container.rs",
    "list.rs",
    "list_tables.rs",
    "places.rs",
    "regional.rs",
    "tables.rs",
    "unpack.rs",
];
/// What `calc` names of other crates, and the program that reads the named questions.
const DEPENDENCIES: [&str; 4] = ["chrono", "libm", "serde", "serde_json"];

/// Makes the files of the crate from the project at `root`.
///
/// # Errors
/// A source that can't be read, or is not where it is expected.
pub(crate) fn files(root: &Path) -> Result<Vec<File>> {
    let read = |path: &Path| {
        std::fs::read_to_string(path)
            .with_context(|| format!("{} could not be read", path.display()))
    };
    let mut files = Vec::new();
    let core = root.join("calc/core/src");
    for path in rust_files(&core)? {
        let mut text = read(&path)?
            .replace("examples::named", "calc::examples::named")
            .replace("calc_data", "calc::data")
            .replace("`calc-data` holds", "[`data`] holds");
        if path == core.join("lib.rs") {
            text += "\nextern crate self as calc;\npub mod data;\npub mod examples;\n";
        }
        let inside = path
            .strip_prefix(&core)?
            .to_string_lossy()
            .replace('\\', "/");
        files.push(File::named(&format!("src/{inside}"), text));
    }
    let data = root.join("calc/data/src");
    for name in READERS.iter().copied().chain(["lib.rs"]) {
        let text = read(&data.join(name))?
            .replace("#[cfg(feature = \"table\")]\npub mod table;\n", "")
            .replace(": see `build/`", "")
            .replace("crate::", "crate::data::")
            .replace(
                "concat!(env!(\"OUT_DIR\"), \"/towns-\"",
                "concat!(\"tables/towns-\"",
            )
            .replace("concat!(env!(\"OUT_DIR\"), \"/", "concat!(\"tables/");
        let name = if name == "lib.rs" { "mod.rs" } else { name };
        files.push(File::named(&format!("src/data/{name}"), text));
    }
    let mut tables: Vec<(String, &[u8])> = vec![
        ("climate".to_owned(), CLIMATE),
        ("regional".to_owned(), calc_data::REGIONAL),
        ("natives".to_owned(), calc_data::NATIVES.as_bytes()),
    ];
    tables.extend(calc_data::TABLES.map(|(name, bytes)| (name.to_owned(), bytes)));
    tables.extend(
        TOWNS
            .iter()
            .map(|(country, bytes)| (format!("towns-{country}"), *bytes)),
    );
    for (name, bytes) in tables {
        files.push(File::named(&format!("src/data/tables/{name}"), bytes));
    }
    files.extend(examples(&root.join("content/examples"))?);
    let versions = read(&root.join("Cargo.toml"))?;
    let also = read(&root.join("calc/core/Cargo.toml"))?;
    files.push(File::named("Cargo.toml", manifest(&versions, &also)?));
    files.push(File::named("README.md", README));
    files.extend(kit::licences(root)?);
    Ok(files)
}

/// Every source in a folder and below, in order.
fn rust_files(folder: &Path) -> Result<Vec<std::path::PathBuf>> {
    let mut found = Vec::new();
    let mut open = vec![folder.to_path_buf()];
    while let Some(folder) = open.pop() {
        let entries = std::fs::read_dir(&folder)
            .with_context(|| format!("{} could not be read", folder.display()))?;
        for path in entries.flatten().map(|entry| entry.path()) {
            if path.is_dir() {
                open.push(path);
            } else if path.extension().is_some_and(|ending| ending == "rs") {
                found.push(path);
            }
        }
    }
    found.sort();
    Ok(found)
}

/// The named questions, and what finds one by its name.
fn examples(folder: &Path) -> Result<Vec<File>> {
    let mut files = Vec::new();
    let mut arms = String::new();
    let mut paths: Vec<_> = std::fs::read_dir(folder)?
        .flatten()
        .map(|it| it.path())
        .collect();
    paths.sort();
    for path in paths
        .iter()
        .filter(|path| path.extension().is_some_and(|it| it == "json"))
    {
        let name = path.file_stem().unwrap_or_default().to_string_lossy();
        let _ = writeln!(
            arms,
            "        \"{name}\" => include_str!(\"examples/{name}.json\"),"
        );
        files.push(File::named(
            &format!("src/examples/{name}.json"),
            std::fs::read(path)?,
        ));
    }
    let code = format!(
        "//! Named questions about invented trees, for the examples of this documentation.\n\n\
         /// The question of this name.\n///\n/// # Panics\n/// If there is none.\n\
         pub fn named(name: &str) -> crate::question::Typed {{\n    let text = match name {{\n{arms}\
         \x20       _ => panic!(\"no question is called {{name}}\"),\n    }};\n\
         \x20   serde_json::from_str(text).unwrap_or_else(|error| panic!(\"{{name}}: {{error}}\"))\n}}\n"
    );
    files.push(File::named("src/examples.rs", code));
    Ok(files)
}

/// The manifest, with the versions that the project's own states.
fn manifest(versions: &str, core: &str) -> Result<String> {
    let line = |text: &str, name: &str| {
        let found = text
            .lines()
            .find(|line| line.starts_with(&format!("{name} = ")));
        found
            .map(str::to_owned)
            .with_context(|| format!("no manifest states {name}"))
    };
    let mut out = format!(
        "[package]\nname = \"slipbark-calc\"\nversion = \"{}\"\nedition = \"2024\"\nrust-version = \"1.95\"\n\
         description = \"What about my tree? A ring on one unwanted tree that is to die standing: width, day, effort, cautions.\"\n\
         license = \"MIT OR Apache-2.0\"\nreadme = \"README.md\"\n\n[lib]\nname = \"calc\"\n\n[dependencies]\n",
        env!("CARGO_PKG_VERSION")
    );
    for name in DEPENDENCIES {
        let _ = writeln!(out, "{}", line(versions, name)?);
    }
    for name in ["schemars", "ts-rs", "\n[features]\nschema"] {
        let (before, name) = name
            .rsplit_once('\n')
            .map_or(("", name), |(before, name)| (before, name));
        let _ = writeln!(
            out,
            "{before}{}{}",
            if before.is_empty() { "" } else { "\n" },
            line(core, name)?
        );
    }
    // It belongs to no other workspace, wherever it is written.
    Ok(out + "\n[workspace]\n")
}

const README: &str = r#"# slipbark-calc

What about my tree? From species, size, date and what the tree could hit to method, ring width, effort, a verdict on the
date and cautions, each with its reason and its source. The tables are inside. Nothing here says that anything is free of
danger, legal or permitted: it says who decides.

```rust
use calc::{answer::answer, models::season::Local, question::read};
let reference = calc::data::whole();
let question = read(reference, &calc::examples::named("do")).expect("a good question");
assert_eq!(answer(reference, &question, &Local::default()).outcome.word(), "do");
```

The library's name is `calc`. Code: MIT or Apache-2.0, as you like. Data: see `data/README.md`.
"#;
