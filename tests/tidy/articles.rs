//! The articles: both languages say the same things, in few and plain words.

use crate::reading::{count, in_english, in_spanish};
use crate::support::root;
use std::collections::BTreeMap;
use std::fs;

/// A file: its head, and its text.
struct Written {
    head: BTreeMap<String, String>,
    text: String,
}

fn articles(language: &str) -> BTreeMap<String, Written> {
    let folder = root().join("content/articles").join(language);
    let entries = fs::read_dir(&folder).expect("there are articles");
    let read = |entry: fs::DirEntry| {
        let path = entry.path();
        let text = fs::read_to_string(&path).expect("a text");
        let (head, text) = text
            .strip_prefix("---\n")
            .and_then(|rest| rest.split_once("\n---\n"))
            .unwrap_or_else(|| panic!("{}: no head", path.display()));
        let head = head.lines().filter_map(|line| line.split_once(':'));
        let head = head.map(|(key, value)| (key.to_owned(), value.trim().to_owned()));
        let name = path.file_stem().expect("a name").to_string_lossy();
        let written = Written {
            head: head.collect(),
            text: text.to_owned(),
        };
        (name.into_owned(), written)
    };
    entries
        .map(|entry| read(entry.expect("an entry")))
        .collect()
}

#[test]
fn articles_are_short_and_read_at_grade_eight_at_most() {
    let english = articles("en");
    assert!(english.len() >= 10, "{}", english.len());
    for (name, article) in &english {
        let counted = count(&article.text, in_english);
        println!("{name}: {counted:?}, grade {:.1}", counted.grade());
        assert!(counted.words <= 900, "{name}: {} words", counted.words);
        assert!(
            counted.grade() <= 8.0,
            "{name}: grade {:.1}",
            counted.grade()
        );
    }
    for (name, article) in articles("es") {
        let counted = count(&article.text, in_spanish);
        let ease = counted.ease_in_spanish();
        println!("{name}: {counted:?}, ease {ease:.0}");
        assert!(counted.words <= 1000, "{name}: {} words", counted.words);
        assert!(ease >= 60.0, "{name}: {ease:.0}");
    }
}

/// What is taken from the other language: the sources of each paragraph, the drawing, the calculator, the order.
#[test]
fn both_languages_rest_on_the_same() {
    let (english, spanish) = (articles("en"), articles("es"));
    assert!(english.keys().eq(spanish.keys()), "a language lacks one");
    for (name, article) in &english {
        let other = &spanish[name];
        for key in ["order", "sources", "reviewed", "calculator", "picture"] {
            assert_eq!(article.head.get(key), other.head.get(key), "{name}: {key}");
        }
        let cited = |text: &str| {
            let mut ids: Vec<String> = text
                .split('[')
                .filter_map(|part| part.split_once(']'))
                .filter(|(id, after)| !after.starts_with('(') && !id.contains(' '))
                .map(|(id, _)| id.to_owned())
                .collect();
            ids.sort();
            ids
        };
        assert_eq!(cited(&article.text), cited(&other.text), "{name}");
        let headings = |text: &str| text.lines().filter(|line| line.starts_with("## ")).count();
        assert_eq!(headings(&article.text), headings(&other.text), "{name}");
        let blocks = |text: &str| {
            text.split("\n\n")
                .filter(|it| !it.trim().is_empty())
                .count()
        };
        assert_eq!(
            blocks(&article.text),
            blocks(&other.text),
            "{name}: paragraphs"
        );
    }
}
