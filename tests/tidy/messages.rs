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
    let least = if language.contains('-') { 50 } else { 500 };
    assert!(all.len() > least, "{language}: {}", all.len());
    all
}

/// Languages that stand there, beside English.
const OTHERS: [&str; 1] = ["es"];
/// What a region says in other words than its language.
const REGIONS: [&str; 1] = ["es-ES"];

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
    held.extend(REGIONS);
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
        let on_a_page = || {
            let named = [
                format!("{{{{{}}}}}", message.id),
                format!("{{{{said:{}}}}}", message.id),
            ];
            let head = [
                format!("title: {}\n", message.id),
                format!("description: {}\n", message.id),
            ];
            let shown = |file: &File| {
                named.iter().any(|it| file.text.contains(it))
                    || (file.text.starts_with("<!--")
                        && head.iter().any(|it| file.text.contains(it)))
            };
            code.iter()
                .filter(|file| file.path.ends_with(".html"))
                .any(shown)
        };
        let in_words = || english.iter().any(|other| other.text.contains(&put_in));
        if !in_code && !in_words() && !on_a_page() {
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
            "chupones",
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
    let regions = REGIONS.map(|region| (region, UNWANTED[1].1));
    for (language, unwanted) in UNWANTED.into_iter().chain(regions) {
        for message in messages(language) {
            assert!(!message.text.contains("may vary"), "{}", message.place);
            // Between backticks stand names of programs.
            let spoken: String = message.text.split('`').step_by(2).collect();
            for word in spoken.split(|c: char| !c.is_alphanumeric()) {
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

#[test]
fn a_region_says_only_what_it_says_in_other_words() {
    for region in REGIONS {
        let (language, _) = region.split_once('-').expect("a region of a language");
        let of_language: BTreeMap<String, String> = messages(language)
            .into_iter()
            .map(|it| (it.id, it.text))
            .collect();
        for message in messages(region) {
            let same = of_language.get(&message.id) == Some(&message.text);
            assert!(
                !same,
                "{}: {} is as in {language}",
                message.place, message.id
            );
        }
    }
}

/// Messages that are the same in two languages for a reason: signs of units, a format, names of programs' own words.
const SAME: [&str; 1] = ["form-scales"];

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

/// What may stand in a page's file as it is: names, and what is code in any language.
const NO_WORDS: [&str; 2] = ["Slipbark", "assets/"];

/// The words that stand in a page's file beside its messages: between tags, and in attributes that are read.
fn own_words(page: &str) -> Vec<String> {
    let (head, rest) = page.split_once("-->\n").unwrap_or(("", page));
    let body = if head.starts_with("<!--") { rest } else { page };
    let mut found = Vec::new();
    let mut in_code = false;
    for piece in body.split('<') {
        let (tag, text) = piece.split_once('>').unwrap_or(("", piece));
        in_code = match tag {
            "code" => true,
            "/code" => false,
            _ => in_code,
        };
        let attribute = |name: &str| {
            let (_, rest) = tag.split_once(&format!(" {name}=\""))?;
            rest.split_once('"').map(|(value, _)| value.to_owned())
        };
        let read = ["aria-label", "title", "alt", "placeholder"];
        found.extend(read.into_iter().filter_map(attribute));
        if tag.contains("name=\"description\"") {
            found.extend(attribute("content"));
        }
        if !in_code && tag != "style" && !tag.starts_with("script") {
            found.push(text.to_owned());
        }
    }
    for text in &mut found {
        while let Some((before, rest)) = text.split_once("{{") {
            let behind = rest.split_once("}}").map_or("", |(_, behind)| behind);
            *text = format!("{before} {behind}");
        }
        for name in NO_WORDS {
            *text = text.replace(name, "");
        }
    }
    let entities = |text: &String| !text.replace("&amp;", "").contains(char::is_alphabetic);
    found.retain(|text| !entities(text));
    found
}

#[test]
fn no_word_stands_in_a_page_beside_its_messages() {
    let pages = files(&["www/pages"]);
    let pages: Vec<&File> = pages
        .iter()
        .filter(|it| it.path.ends_with(".html"))
        .collect();
    assert!(pages.len() > 15, "{}", pages.len());
    for page in pages {
        let found: Vec<String> = own_words(&page.text)
            .into_iter()
            .filter(|text| text.trim() != ".wasm")
            .collect();
        assert!(found.is_empty(), "{}: {found:?}", page.path);
    }
    let damaged = "<!--\ntitle: a\n-->\n<p title=\"Hello\">{{a}} and <code>code</code></p>";
    assert_eq!(own_words(damaged).len(), 2);
}

#[test]
fn no_script_of_a_page_says_words_of_its_own() {
    let mut said = 0;
    for file in files(&["www/pages/js"]) {
        for (at, line) in file.text.lines().enumerate() {
            for sets in ["textContent = ", ".title = ", "new Option("] {
                let Some((_, value)) = line.split_once(sets) else {
                    continue;
                };
                said += 1;
                let mut literals = value.split(['"', '`']).skip(1).step_by(2);
                let words =
                    literals.find(|it| it.contains(' ') && it.contains(char::is_alphabetic));
                let place = format!("{}:{}", file.path, at + 1);
                assert!(
                    words.is_none_or(|it| it.contains("${")),
                    "{place}: {words:?}"
                );
            }
        }
    }
    assert!(said > 10, "{said}");
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
