//! Reads every language's messages, holds them against each other, and writes their Rust and a pack a language.
//! The build stops at a file and a line.

mod check;
mod enums;
mod file;
mod generate;
mod languages;
mod markup;
mod pack;
mod tables;
#[path = "../src/words/text_key.rs"]
mod text_key;

use calc::models::condition::RowCondition;
use calc::models::trigger::Trigger;
use check::Whole;
use file::Problems;
use languages::{FIRST, Language, is_beside, is_of_lists};
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use tables::{Said, Text};

/// The language that is made for checks of the layout.
const STRETCHED: &str = "qps";

fn main() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
    println!("cargo::rerun-if-changed=build");
    println!(
        "cargo::rerun-if-changed={}",
        root.join("content/words").display()
    );
    let out = PathBuf::from(std::env::var("OUT_DIR").expect("cargo sets OUT_DIR"));
    let texts = tables::read(&root);
    let all = languages::read(&root.join("content/words"));
    match texts.and_then(|texts| made(all?, &texts, &out)) {
        Ok(()) => {}
        Err(problems) => {
            // Cargo shows an error of a build script whole; a panic would bury it in a backtrace.
            for problem in problems.iter().take(40) {
                println!("cargo::error={problem}");
            }
            std::process::exit(1);
        }
    }
}

/// Writes what the view includes.
fn made(all: Vec<Language>, texts: &[Text], out: &Path) -> Result<(), Problems> {
    let enums = enums::all();
    let unsaid = unsaid(&all);
    let checked = check::languages(all, &enums, texts);
    let (messages, mut languages) = match checked {
        Ok(checked) if unsaid.is_empty() => checked,
        Ok(_) => return Err(unsaid),
        Err(problems) => return Err([unsaid, problems].concat()),
    };
    let mut code = generate::code(&messages, &enums);
    let mut told = String::new();
    let mut gaps: Vec<Vec<&str>> = Vec::new();
    let mut on_pages = String::new();
    let (mut answers, mut lists) = (0, 0);
    for message in &messages {
        let names: Vec<&str> = message.gaps.iter().map(|gap| &*gap.name).collect();
        let first = message.wordings.first();
        if first.is_some_and(|it| is_of_lists(&it.place)) {
            lists += message.wordings.len();
        } else if !first.is_some_and(|it| is_beside(&it.place)) {
            answers += message.wordings.len();
        } else if message.wordings.len() == 1 {
            on_pages += &format!("({:?}, Word({}), &{names:?}), ", message.id, gaps.len());
        }
        for wording in &message.wordings {
            let kinds = message.gaps.iter().map(|gap| check::KINDS[gap.kind].name);
            let kinds: Vec<&str> = kinds.collect();
            told += &format!("{} {} {names:?} {kinds:?}\n", message.id, wording.word);
            gaps.push(names.clone());
        }
    }
    let first = &languages[0];
    languages.push(Whole {
        name: STRETCHED.to_owned(),
        decimal: first.decimal,
        names: Vec::new(),
        prose: stretched_prose(texts),
        wordings: first
            .wordings
            .iter()
            .enumerate()
            .map(|(at, parts)| match at < answers + lists {
                true => pack::stretched(parts),
                false => markup::stretched(parts),
            })
            .collect(),
    });
    let mark = pack::mark(&told);
    let mut files = String::new();
    for language in &languages {
        let wordings = language.wordings.iter().zip(&gaps);
        let wordings: Vec<String> = wordings
            .map(|(parts, gaps)| pack::wording(parts, gaps))
            .collect();
        let name = format!("words-{}.bin", language.name);
        let (answers, others) = wordings.split_at(answers);
        let (lists, pages) = others.split_at(lists);
        let text = pack::file(
            &language.name,
            mark,
            language.decimal,
            &language.names,
            &tables::packed(&language.prose),
            answers,
        );
        std::fs::write(out.join(&name), text).expect("OUT_DIR takes a file");
        let of_lists = format!("lists-{}.bin", language.name);
        std::fs::write(out.join(&of_lists), lists.join("\0")).expect("OUT_DIR takes a file");
        let of_pages = format!("pages-{}.bin", language.name);
        std::fs::write(out.join(&of_pages), pages.join("\0")).expect("OUT_DIR takes a file");
        if language.name != FIRST {
            let file = |name| format!("include_str!(concat!(env!(\"OUT_DIR\"), \"/{name}\"))");
            let (words, lists, pages) = (file(&name), file(&of_lists), file(&of_pages));
            files += &format!("({:?}, {words}, [{lists}, {pages}]), ", language.name);
        }
    }
    code += &format!(
        "/// Every pack but the first, by its language, and what it says of lists of trees and on the pages around the calculator. A program that doesn't name it doesn't carry it.\npub const FILES: &[(&str, &str, [&str; 2])] = &[{files}];\n/// Messages of the pages, by their ids, with their gaps.\npub const PAGES: &[(&str, Word, &[&str])] = &[{on_pages}];\n"
    );
    std::fs::write(out.join("messages.rs"), code).expect("OUT_DIR takes a file");
    Ok(())
}

/// The texts of tables as the language for the layout says them.
fn stretched_prose(texts: &[Text]) -> Vec<Said> {
    let all = texts.iter().map(|text| {
        let mut said = String::new();
        for (at, piece) in text.english.split_inclusive(['{', '}']).enumerate() {
            // Every other piece is a gap.
            match at % 2 {
                0 => said.push_str(&pack::stretch(piece)),
                _ => said.push_str(piece),
            }
        }
        (text.english.clone(), said)
    });
    all.collect::<BTreeMap<_, _>>().into_iter().collect()
}

/// Messages of words under keys whose keys calc lists: every one of them must have words.
fn unsaid(all: &[Language]) -> Problems {
    let cautions: Vec<&str> = Trigger::ALL.iter().map(|it| it.id()).collect();
    let listed = [
        ("method-rule", "the row", RowCondition::IDS),
        ("cautions-short", "the caution", cautions.as_slice()),
    ];
    let messages = all.first().map_or(&[][..], |first| &first.messages);
    let mut problems = Problems::new();
    for (id, what, keys) in listed {
        let Some(message) = messages.iter().find(|message| message.id == id) else {
            problems.push(format!("content/words/en: there is no {id}"));
            continue;
        };
        for wanted in keys {
            if !message
                .wordings
                .iter()
                .any(|said| generate::key(&said.word) == *wanted)
            {
                problems.push(format!(
                    "{}: {id} has no words for {what} {wanted}",
                    message.place
                ));
            }
        }
    }
    problems
}
