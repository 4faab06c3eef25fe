//! The messages in `content/words`: each is used, no language promises or scolds, and no sentence stands in the view's
//! code beside them.

use crate::{File, files};
use std::collections::BTreeMap;

/// A message as its file has it: where it stands, its id, and its text with what follows on more lines.
struct Message {
    place: String,
    id: String,
    text: String,
}

fn messages(language: &str) -> Vec<Message> {
    let mut all: Vec<Message> = Vec::new();
    for file in files(&[&format!("content/words/{language}")]) {
        for (at, line) in file.text.lines().enumerate() {
            let place = format!("{}:{}", file.path, at + 1);
            let begins = line.starts_with(|c: char| c.is_ascii_lowercase());
            if begins && let Some((id, text)) = line.split_once(" =") {
                all.push(Message {
                    place,
                    id: id.to_owned(),
                    text: text.trim_start().to_owned(),
                });
            } else if line.starts_with(' ')
                && let Some(message) = all.last_mut()
            {
                message.text.push('\n');
                message.text.push_str(line);
            }
        }
    }
    assert!(all.len() > 500, "{language}: {}", all.len());
    all
}

/// Languages that stand there, beside English.
const OTHERS: [&str; 1] = ["es"];

#[test]
fn every_language_is_held_here() {
    let folders =
        std::fs::read_dir(crate::support::root().join("content/words")).expect("a folder");
    let mut found: Vec<String> = folders
        .flatten()
        .filter(|folder| folder.path().is_dir())
        .map(|folder| folder.file_name().to_string_lossy().into_owned())
        .collect();
    found.sort();
    let mut held = vec!["en"];
    held.extend(OTHERS);
    assert_eq!(found, held);
}

/// Whether a text has a name in it, and not as a part of a longer one.
fn names(text: &str, name: &str) -> bool {
    let part = |c: char| c.is_ascii_alphanumeric() || c == '_';
    text.match_indices(name).any(|(at, _)| {
        let behind = text[at + name.len()..].chars().next();
        text[..at].ends_with("m::") && !behind.is_some_and(part)
    })
}

#[test]
fn every_message_is_used() {
    let code: Vec<File> = files(&["calc/view/src", "www"]);
    let english = messages("en");
    let mut unused = Vec::new();
    for message in &english {
        let name = message.id.replace('-', "_");
        let capitals = name.to_uppercase();
        let in_code = code
            .iter()
            .any(|file| names(&file.text, &name) || names(&file.text, &capitals));
        let put_in = format!("{{ {} }}", message.id);
        let in_words = || english.iter().any(|other| other.text.contains(&put_in));
        if !in_code && !in_words() {
            unused.push(format!("{}: {} is not used", message.place, message.id));
        }
    }
    assert!(unused.is_empty(), "{}", unused.join("\n"));
}

/// Words that promise, scold or beg, by language: as whole words, in small letters.
const UNWANTED: [(&str, &[&str]); 2] = [
    (
        "en",
        &[
            "safe",
            "safely",
            "approved",
            "guaranteed",
            "guarantee",
            "ok",
            "okay",
            "invalid",
            "valid",
            "please",
            "sorry",
            "oops",
            "forbidden",
            "invader",
            "alien",
            "war",
            "approx",
        ],
    ),
    (
        "es",
        &[
            "seguro",
            "segura",
            "seguros",
            "seguras",
            "garantizado",
            "garantizada",
            "aprobado",
            "aprobada",
            "inválido",
            "inválida",
            "válido",
            "válida",
            "perdón",
            "favor",
            "prohibido",
            "prohibida",
            "invasor",
            "invasora",
            "plaga",
            "maleza",
            "guerra",
            "ok",
            "permitido",
            // What the trade does not say, or what means another thing.
            "cinchar",
            "ladrido",
            "muñón",
            "chupón",
            "cicuta",
            "rango",
            "asunción",
            "haz",
            "tú",
        ],
    ),
];

#[test]
fn no_language_promises_scolds_or_begs() {
    for (language, unwanted) in UNWANTED {
        for message in messages(language) {
            assert!(!message.text.contains("may vary"), "{}", message.place);
            for word in message.text.split(|c: char| !c.is_alphanumeric()) {
                let word = word.to_lowercase();
                assert!(
                    !unwanted.contains(&word.as_str()),
                    "{}: {word:?} in {}",
                    message.place,
                    message.text
                );
            }
        }
    }
}

/// Messages that are the same in two languages for a reason: a format, names of programs' own words.
const SAME: [&str; 0] = [];

#[test]
fn no_sentence_is_left_in_english() {
    let english: BTreeMap<String, String> = messages("en")
        .into_iter()
        .map(|it| (it.id, it.text))
        .collect();
    for language in OTHERS {
        for message in messages(language) {
            let letters = message.text.chars().filter(|c| c.is_alphabetic()).count();
            let same = english.get(&message.id) == Some(&message.text);
            // A text of gaps alone has none but their names.
            let words = message.text.split(['{', '}']).step_by(2);
            let spoken: usize = words.map(|it| it.trim().len()).sum();
            assert!(
                !same || letters < 12 || spoken < 12 || SAME.contains(&message.id.as_str()),
                "{}: {} is as in English",
                message.place,
                message.id
            );
        }
    }
}

/// Files whose texts no reader of an answer sees: what a broken drawing or page says while it is tried, and a place in a
/// source.
const NOT_READ: [&str; 4] = [
    "calc/view/src/draw/number.rs",
    "calc/view/src/draw/pen.rs",
    "calc/view/src/out.rs",
    "calc/view/src/words/en/formulas.rs",
];

/// Whether a literal reads as a sentence or a piece of one, and not as classes of an element.
fn reads_as_words(literal: &str) -> bool {
    let is_word = |word: &&str| {
        let bare = word.trim_matches(|c: char| "(“”,.:;?)!".contains(c));
        !bare.is_empty() && bare.chars().all(|c| c.is_alphabetic() || "’'-".contains(c))
    };
    let words = literal.split(' ').filter(is_word).count();
    let begins = literal.trim_start().starts_with(char::is_uppercase);
    let joins = literal.starts_with(' ') || literal.ends_with(' ');
    words >= 2 && (begins || joins || words >= 3)
}

#[test]
fn no_sentence_stands_in_the_code_of_the_view() {
    let mut found: BTreeMap<String, String> = BTreeMap::new();
    for file in files(&["calc/view/src"]) {
        if file.path.ends_with("tests.rs") || file.path.contains("/tests/") {
            continue;
        }
        let code = file.text.split("#[cfg(test)]").next().unwrap_or("");
        let lines = code
            .lines()
            .filter(|line| !line.trim_start().starts_with("//"));
        let mut literals = lines.flat_map(|line| line.split('"').skip(1).step_by(2));
        if let Some(literal) = literals.find(|literal| reads_as_words(literal)) {
            found.insert(file.path.clone(), literal.to_owned());
        }
    }
    for (path, literal) in &found {
        let path = path.as_str();
        assert!(
            NOT_READ.contains(&path),
            "{path}: {literal:?} belongs into content/words"
        );
    }
    for path in &NOT_READ {
        assert!(
            found.contains_key(*path),
            "{path} has no sentence any more: take it off the list"
        );
    }
}
