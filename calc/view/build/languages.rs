//! Reads every language: a folder of `content/words` each.

use crate::file::{self, Message, Problems};
use std::path::Path;

/// The language in which everything stands, and which the module has inside.
pub const FIRST: &str = "en";

/// A language as it was read.
pub struct Language {
    pub name: String,
    /// As problems say it: `content/words/es`.
    pub folder: String,
    pub messages: Vec<Message>,
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
pub fn read(words: &Path) -> Result<Vec<Language>, Problems> {
    let mut problems = Problems::new();
    let mut all = Vec::new();
    for name in names(words)? {
        if !words.join(&name).is_dir() {
            continue;
        }
        let folder = format!("content/words/{name}");
        let mut messages = Vec::new();
        for file in names(&words.join(&name))? {
            if !file.ends_with(".ftl") {
                continue;
            }
            let shown = format!("{folder}/{file}");
            let read = std::fs::read_to_string(words.join(&name).join(&file))
                .map_err(|error| vec![format!("{shown}: {error}")])
                .and_then(|text| file::read(&shown, &text));
            match read {
                Ok(read) => messages.extend(read),
                Err(wrong) => problems.extend(wrong),
            }
        }
        all.push(Language {
            name,
            folder,
            messages,
        });
    }
    all.sort_by_key(|language| (language.name != FIRST, language.name.clone()));
    if problems.is_empty() {
        Ok(all)
    } else {
        Err(problems)
    }
}
