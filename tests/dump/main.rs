//! What `tests/same` compares: answers written out, by this tree's own code.
//!
//!     dump questions COUNT           random questions, one a line
//!     dump digests QUESTIONS COUNT   a digest of each of the first COUNT answers, one a line
//!     dump answer QUESTIONS LINE     one of those answers in full: JSON, then text
//!     dump named EXAMPLES OUT        answers to the named questions, as files: JSON, text and HTML
//!
//! Questions come from a file, so that a change of their maker is no change of an answer.

#[path = "../property/make.rs"]
#[allow(dead_code, reason = "only the maker of questions is used")]
mod make;
#[path = "../published/support.rs"]
mod support;

use calc::answer::{Answer, answer};
use calc::question::{Problem, Question, Typed, read};
use calc_view::answer::{self as view, HostOptions};
use calc_view::kind::Kind;
use calc_view::out::Html;
use sha2::{Digest, Sha256};
use std::path::Path;
use support::reference;

/// So that the questions are the same on every run.
const SEED: u64 = 20_270_612;

fn main() {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let words: Vec<&str> = arguments.iter().map(String::as_str).collect();
    match words[..] {
        ["questions", count] => questions(number_of(count)),
        ["digests", file, count] => digests(&lines(file, number_of(count))),
        ["answer", file, line] => {
            let lines = lines(file, number_of(line));
            println!("{}", printed(lines.last().expect("a question")));
        }
        ["named", examples, out] => named(Path::new(examples), Path::new(out)),
        _ => panic!("no such command: {words:?}; the head of this file tells them"),
    }
}

fn number_of(text: &str) -> usize {
    text.parse()
        .unwrap_or_else(|_| panic!("{text} is no number"))
}

/// Nine of ten are good questions; the tenth may have problems.
fn questions(count: usize) {
    let mut maker = make::Maker::new(SEED);
    for at in 0..count {
        let question = if at % 10 == 9 {
            let species = maker.species();
            maker.about(species)
        } else {
            maker.aided().0
        };
        println!("{question}");
    }
}

/// The first lines of a file, as many as asked for.
fn lines(file: &str, count: usize) -> Vec<String> {
    let text = std::fs::read_to_string(file).unwrap_or_else(|e| panic!("{file}: {e}"));
    let lines: Vec<String> = text.lines().take(count).map(str::to_owned).collect();
    assert_eq!(lines.len(), count, "{file} has fewer questions");
    lines
}

fn digests(questions: &[String]) {
    let threads = std::thread::available_parallelism().map_or(1, usize::from);
    let part = questions.len().div_ceil(threads).max(1);
    let digested = |part: &[String]| -> Vec<String> {
        part.iter()
            .map(|line| format!("{:x}", Sha256::digest(printed(line))))
            .collect()
    };
    std::thread::scope(|scope| {
        let running: Vec<_> = questions
            .chunks(part)
            .map(|part| scope.spawn(move || digested(part)))
            .collect();
        for thread in running {
            for digest in thread.join().expect("every question is answered") {
                println!("{digest}");
            }
        }
    });
}

/// The answer to one line as JSON and as text; what is wrong with the question if it is no good one.
fn printed(line: &str) -> String {
    let typed: Typed = serde_json::from_str(line).unwrap_or_else(|e| panic!("{e} in {line}"));
    match answered(&typed) {
        Ok((question, answer)) => format!("{}\n\n{}", json(&answer), text(&question, &answer)),
        Err(problems) => worded(&problems),
    }
}

fn answered(typed: &Typed) -> Result<(Question, Answer), Vec<Problem>> {
    let question = read(reference(), typed)?;
    let answer = answer(reference(), &question, &make::local(&question));
    Ok((question, answer))
}

fn json(answer: &Answer) -> String {
    serde_json::to_string_pretty(answer).expect("an answer is JSON")
}

fn text(question: &Question, answer: &Answer) -> String {
    let status = calc_view::status(Kind::TreePlan, reference(), question, answer);
    let whole = calc_view::text::answer(reference(), question, answer, None);
    format!("{status}\n\n{whole}")
}

/// Each problem in a line: field, code, message.
fn worded(problems: &[Problem]) -> String {
    let line = |problem: &Problem| {
        let (field, code) = (&problem.field, problem.code.name());
        format!("{field} {code} {}", calc_view::problem_text(problem))
    };
    problems.iter().map(line).collect::<Vec<_>>().join("\n")
}

fn named(folder: &Path, out: &Path) {
    for (name, typed) in examples::all(folder) {
        let write = |end: &str, text: String| {
            let file = out.join(format!("{name}.{end}"));
            std::fs::write(&file, text + "\n")
                .unwrap_or_else(|e| panic!("{}: {e}", file.display()));
        };
        match answered(&typed) {
            Ok((question, answer)) => {
                write("json", json(&answer));
                write("txt", text(&question, &answer));
                write("html", markup(&question, &answer));
            }
            Err(problems) => write("txt", worded(&problems)),
        }
    }
}

/// The answer as a page has it, each element on a line so that a difference can be read.
fn markup(question: &Question, answer: &Answer) -> String {
    let mut out = Html::default();
    view::answer(
        &mut out,
        reference(),
        question,
        answer,
        &HostOptions {
            sources_base: "sources/",
            with_form: true,
            with_buttons: true,
            ..HostOptions::default()
        },
    );
    out.into_string().replace("><", ">\n<")
}
