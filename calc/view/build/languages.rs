//! Reads every language: a folder of `content/words` each.

use crate::file::{self, Message, Problems};
use std::path::Path;

/// The language in which everything stands, and which the module has inside.
pub(crate) const FIRST: &str = "en";

/// A language as it was read.
pub(crate) struct Language {
    pub name: String,
    /// As problems say it: `content/words/es`.
    pub folder: String,
    pub messages: Vec<Message>,
    /// What it says for texts of tables.
    pub tables: Vec<Message>,
    /// Names of trees: scientific name, name, gender.
    pub names: Vec<[String; 3]>,
}

/// The names in a folder, in order.
fn names(folder: &Path) -> Result<Vec<String>, Problems> {
    let entries = std::fs::read_dir(folder)
        .map_err(|error| vec![format!("{}: {error}", folder.display())])?;
    let mut names: Vec<String> = entries
        .flatten()
        .map(|entry| entry.file_name().to_string_lossy().into_owned())
        .collect();
    names.sort();
    Ok(names)
}

/// Every language: a folder each, the first one in front, one that only changes another behind it.
pub(crate) fn read(words: &Path) -> Result<Vec<Language>, Problems> {
    let mut problems = Problems::new();
    let mut all = Vec::new();
    for name in names(words)? {
        if !words.join(&name).is_dir() {
            continue;
        }
        let folder = format!("content/words/{name}");
        let mut folder_of = |part: &str| match words.join(format!("{name}{part}")).is_dir() {
            true => messages(words, &format!("{name}{part}"), &mut problems),
            false => Ok(Vec::new()),
        };
        let mut messages = folder_of("")?;
        messages.sort_by_key(|message| is_of_lists(&message.place));
        // Behind all others, so that the module goes without them.
        for part in BESIDE {
            messages.extend(folder_of(part)?);
        }
        let tables = folder_of("/tables")?;
        let names = match tree_names(words, &name) {
            Ok(names) => names,
            Err(wrong) => {
                problems.extend(wrong);
                Vec::new()
            }
        };
        all.push(Language {
            name,
            folder,
            messages,
            tables,
            names,
        });
    }
    all.sort_by_key(|language| (language.name != FIRST, language.name.clone()));
    if problems.is_empty() {
        Ok(all)
    } else {
        Err(problems)
    }
}

/// Whether a message is of lists of trees: what answers one tree goes without them.
pub(crate) fn is_of_lists(message: &file::Place) -> bool {
    let of_lists = |file: &&str| message.file.ends_with(*file);
    [
        "/after.ftl",
        "/list.ftl",
        "/plan.ftl",
        "/property.ftl",
        "/sheets.ftl",
    ]
    .iter()
    .any(of_lists)
        && !is_beside(message)
}

/// Folders of messages that no calculator says: those of the pages around it, and of the command line.
const BESIDE: [&str; 2] = ["/pages", "/program"];

/// Whether a message is one that no calculator says.
pub(crate) fn is_beside(message: &file::Place) -> bool {
    let folder = message
        .file
        .rsplit_once('/')
        .map_or("", |(folder, _)| folder);
    BESIDE.iter().any(|part| folder.ends_with(part))
}

/// The messages in a folder under `content/words`.
fn messages(words: &Path, name: &str, problems: &mut Problems) -> Result<Vec<Message>, Problems> {
    let folder = words.join(name);
    let mut messages = Vec::new();
    for file in names(&folder)?.iter().filter(|file| file.ends_with(".ftl")) {
        let shown = format!("content/words/{name}/{file}");
        let read = std::fs::read_to_string(folder.join(file))
            .map_err(|error| vec![format!("{shown}: {error}")])
            .and_then(|text| file::read(&shown, &text));
        match read {
            Ok(read) => messages.extend(read),
            Err(wrong) => problems.extend(wrong),
        }
    }
    Ok(messages)
}

/// The table of names of a language, where it has one: `names_es.csv`.
fn tree_names(words: &Path, language: &str) -> Result<Vec<[String; 3]>, Problems> {
    let file = format!("names_{language}.csv");
    let path = words.join(&file);
    let mut names = Vec::new();
    if !path.exists() {
        return Ok(names);
    }
    let shown = format!("content/words/{file}");
    let wrong = |line: usize, what: &str| vec![format!("{shown}:{line}: {what}")];
    let mut reader = csv::Reader::from_path(&path).map_err(|error| wrong(1, &error.to_string()))?;
    for (at, row) in reader.records().enumerate() {
        let line = at + 2;
        let row = row.map_err(|error| wrong(line, &error.to_string()))?;
        let [scientific, name, gender] = [0, 1, 2].map(|cell| row.get(cell).unwrap_or("").trim());
        if scientific.is_empty() || name.is_empty() {
            return Err(wrong(line, "a name is missing"));
        }
        if !matches!(gender, "m" | "f" | "f-el") {
            return Err(wrong(
                line,
                "the gender is m, f or f-el (feminine, behind \"el\")",
            ));
        }
        names.push([scientific, name, gender].map(str::to_owned));
    }
    Ok(names)
}
