//! A group's note in one of the project's articles: a few sentences of its own in `notes/LANG/ARTICLE.md` of its folder, marked
//! as the group's, over the article or under it.

use super::head::{keys, reviewed};
use super::text::{self, Around};
use crate::build::languages;
use crate::build::lines::Lines;
use anyhow::{Context as _, Result, bail};
use calc_view::measure;
use calc_view::out::escaped;
use calc_view::words::m;
use chrono::NaiveDate;
use std::collections::BTreeMap;
use std::path::Path;

/// Where they are in a group's folder.
const FOLDER: &str = "notes";
/// Every key of a note's head, and whether it must be there.
const KEYS: [(&str, bool); 3] = [("by", true), ("reviewed", true), ("at", false)];
/// A note is short: what is longer is an article. So many words at most.
const MOST_WORDS: usize = 120;

/// Where a note stands.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum At {
    Top,
    Foot,
}

/// A note in one language.
pub(super) struct Note {
    file: String,
    text: String,
    /// Where the text begins behind the head, at which byte.
    begin: usize,
    by: String,
    reviewed: NaiveDate,
    at: At,
}

/// The notes on an article by language.
pub(super) type Notes = BTreeMap<&'static str, Note>;

/// Reads the notes in a group's folder, by the name of the article.
///
/// # Errors
/// A note on an article that is none of `known`, or one that can't be read: with file and line.
pub(super) fn gather(own: &Path, known: &[&str]) -> Result<BTreeMap<String, Notes>> {
    let folder = own.join(FOLDER);
    let mut all: BTreeMap<String, Notes> = BTreeMap::new();
    if !folder.is_dir() {
        return Ok(all);
    }
    for entry in entries(&folder)? {
        let language = entry.file_name().unwrap_or_default().to_string_lossy();
        let Some(language) = languages::all().find(|it| *it == language) else {
            let languages: Vec<&str> = languages::all().collect();
            bail!(
                "{}: notes are in a folder of their language: {}",
                entry.display(),
                languages.join(", ")
            );
        };
        for path in entries(&entry)? {
            let file = path.display().to_string();
            if path.extension().is_none_or(|ending| ending != "md") {
                bail!("{file}: a note is a file of Markdown, as before-you-start.md");
            }
            let id = path.file_stem().unwrap_or_default().to_string_lossy();
            if !known.contains(&&*id) {
                bail!(
                    "{file}:1: no article is called {id}; there are: {}",
                    known.join(", ")
                );
            }
            let text = std::fs::read_to_string(&path)
                .with_context(|| format!("{file} can't be read"))?
                .replace("\r\n", "\n");
            let note = read(file, text)?;
            all.entry(id.into_owned())
                .or_default()
                .insert(language, note);
        }
    }
    Ok(all)
}

/// What is in a folder, in the order of names.
fn entries(folder: &Path) -> Result<Vec<std::path::PathBuf>> {
    let told = || format!("{} can't be read: a folder is wanted", folder.display());
    let mut all = Vec::new();
    for entry in std::fs::read_dir(folder).with_context(told)? {
        all.push(entry.with_context(told)?.path());
    }
    all.sort();
    Ok(all)
}

fn read(file: String, text: String) -> Result<Note> {
    let lines = Lines::of(&file, &text);
    let (found, begin) = keys(&lines, &KEYS, "a note")?;
    let reviewed = reviewed(&lines, found["reviewed"])?;
    let at = match found.get("at") {
        None | Some(("foot", _)) => At::Foot,
        Some(("top", _)) => At::Top,
        Some((other, at)) => {
            let what = format!("at: \"{other}\" is neither top nor foot");
            return Err(lines.problem(*at, what));
        }
    };
    let words = text[begin..].split_whitespace().count();
    if words == 0 {
        return Err(lines.problem(begin, "the note says nothing"));
    }
    if words > MOST_WORDS {
        let what = format!(
            "a note has {MOST_WORDS} words at most, and this one {words}: write an article of your own"
        );
        return Err(lines.problem(begin, what));
    }
    let by = found["by"].0.to_owned();
    Ok(Note {
        file,
        text,
        begin,
        by,
        reviewed,
        at,
    })
}

/// The note at a place of an article as markup, in the language in use, or in one that it is written in.
///
/// # Errors
/// What is wrong in its text, with file and line.
pub(super) fn shown(notes: Option<&Notes>, at: At, language: &str, home: &str) -> Result<String> {
    let Some(notes) = notes else {
        return Ok(String::new());
    };
    let found = notes.get_key_value(language).or(notes.first_key_value());
    let Some((spoken, note)) = found.filter(|(_, note)| note.at == at) else {
        return Ok(String::new());
    };
    let lines = Lines::of(&note.file, &note.text);
    let around = Around {
        home,
        sources: &[],
        strict: false,
    };
    let sections = text::read(&lines, note.begin, &around)?;
    let [section] = &sections[..] else {
        return Err(lines.problem(note.begin, "a note has no headings"));
    };
    if section.pictured || section.calculates {
        let what = "a note has neither {picture} nor {calculator}";
        return Err(lines.problem(note.begin, what));
    }
    let title = escaped(&m::articles_note_of(note.by.as_str()));
    let read = escaped(&m::shell_reviewed(measure::day_year(note.reviewed)));
    let own = match *spoken == language {
        true => String::new(),
        false => format!(" lang=\"{spoken}\""),
    };
    Ok(format!(
        "<aside class=\"group note\" aria-label=\"{title}\"><h2>{title}</h2><div{own}>{}{}</div><p class=\"soft\">{read}</p></aside>\n",
        section.body, section.side
    ))
}

#[cfg(test)]
mod tests {
    use super::*;

    const NOTE: &str = "---\nby: The <b> trust\nreviewed: 2026-11-01\nat: top\n---\nAsk at the [gate](help/) in May.\n";

    /// A group's folder with one note, gone with the value.
    struct Folder(std::path::PathBuf);

    impl Folder {
        fn with(path: &str, text: &str) -> Self {
            let name = format!("slipbark-note-{}-{}", std::process::id(), text.len());
            let own = std::env::temp_dir().join(name + &path.replace('/', "-"));
            let file = own.join(FOLDER).join(path);
            std::fs::create_dir_all(file.parent().unwrap()).unwrap();
            std::fs::write(file, text).unwrap();
            Self(own)
        }

        fn made(&self, at: At, language: &str) -> Result<String> {
            let all = gather(&self.0, &["when-bark-slips"])?;
            let home = languages::folder(language);
            languages::speaking(language, || {
                shown(
                    all.get("when-bark-slips"),
                    at,
                    language,
                    &format!("/{home}"),
                )
            })
        }
    }

    impl Drop for Folder {
        fn drop(&mut self) {
            let _ = std::fs::remove_dir_all(&self.0);
        }
    }

    #[test]
    fn a_note_stands_where_it_says_marked_as_the_groups() -> Result<()> {
        let folder = Folder::with("en/when-bark-slips.md", NOTE);
        let top = folder.made(At::Top, "en")?;
        for part in [
            "<aside class=\"group note\" aria-label=\"Local note, by The &lt;b&gt; trust\">",
            "<a href=\"/help/\">gate</a> in May.",
            "1 November 2026",
        ] {
            assert!(top.contains(part), "{part}: {top}");
        }
        assert_eq!(folder.made(At::Foot, "en")?, "");
        let spanish = folder.made(At::Top, "es")?;
        assert!(spanish.contains("Nota local, de The"), "{spanish}");
        assert!(spanish.contains("<div lang=\"en\"><p>Ask"), "{spanish}");
        assert!(spanish.contains("href=\"/es/help/\""), "{spanish}");
        let foot = Folder::with("en/when-bark-slips.md", &NOTE.replace("at: top\n", ""));
        assert_ne!(foot.made(At::Foot, "en")?, "");
        Ok(())
    }

    #[test]
    fn what_is_wrong_with_a_note_is_told_with_file_and_line() {
        let long = "word ".repeat(MOST_WORDS + 1);
        for (was, now, line, part) in [
            ("---\nby", "by", 1, "a note begins with a line ---"),
            ("by: The <b> trust\n", "", 1, "the head has no by"),
            ("2026-11-01", "May", 3, "no day"),
            ("at: top", "at: side", 4, "neither top nor foot"),
            ("at: top", "title: x", 4, "no key of a head"),
            ("Ask at", &long, 6, "120 words at most"),
            ("Ask at", "<b>Ask</b> at", 6, "HTML"),
            ("(help/)", "(javascript:x)", 6, "no link"),
            ("Ask at", "## Ask\n\nat", 6, "no headings"),
            ("Ask at", "{picture}\n\nAsk", 6, "neither {picture}"),
            ("Ask at", "[S02] Ask at", 6, "S02"),
        ] {
            let text = NOTE.replacen(was, now, 1);
            let folder = Folder::with("en/when-bark-slips.md", &text);
            let said = folder.made(At::Top, "en").err();
            let said = said.map(|it| it.to_string()).unwrap_or_default();
            let place = format!("en/when-bark-slips.md:{line}: ");
            assert!(
                said.contains(&place) && said.contains(part),
                "{now}: {said}"
            );
        }
        for (path, part) in [
            (
                "en/no-such.md",
                "en/no-such.md:1: no article is called no-such; there are: when-bark-slips",
            ),
            (
                "xx/when-bark-slips.md",
                "a folder of their language: en, es",
            ),
            ("en/when-bark-slips.txt", "a file of Markdown"),
            ("when-bark-slips.md", "a folder of their language"),
        ] {
            let said = Folder::with(path, NOTE).made(At::Top, "en").err();
            let said = said.map(|it| it.to_string()).unwrap_or_default();
            assert!(said.contains(part), "{path}: {said}");
        }
    }
}
