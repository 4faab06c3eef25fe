//! How long an answer takes, natively: `cargo bench -p tests`. It prints microseconds a question, and the one comparison
//! that holds on any machine, a ratio inside this run: an answer with its search for changes over one without.
//! `cargo bench -p tests -- NAME [plain]` asks one question alone, a thousand times, for a profiler; NAME `all` asks each
//! in turn.

#[path = "../property/make.rs"]
#[allow(dead_code, reason = "only the maker of questions is used")]
mod make;
#[path = "../published/support.rs"]
mod support;

use calc::answer::{answer, without_changes};
use calc::models::season::Local;
use calc::question::{Question, Typed, read};
use std::hint::black_box;
use std::time::Instant;
use support::reference;

/// The search costs under 4 answers as measured; more than this over one answer would be a search gone wild.
const MOST_RATIO: f64 = 12.0;

/// Beside the named questions: two answers nested, a professional's, many stems, a tree without a height of its own, a
/// point with its climate.
const MORE: &[(&str, &str)] = &[
    (
        "two answers",
        r#"{"version":1,"species":"Norway maple","stems":[{"diameter":"12"}],"date":"2027-06-12"}"#,
    ),
    (
        "path at 40 ft",
        r#"{"version":1,"species":"Norway maple","stems":[{"diameter":"12"}],"date":"2027-06-12","targets":[{"kind":"path","distance":"40 ft"}],"line_within_reach":"no"}"#,
    ),
    (
        "twelve stems",
        r#"{"version":1,"species":"Boxelder","stems":[{"diameter":"4"},{"diameter":"5"},{"diameter":"6"},{"diameter":"7"},{"diameter":"8"},{"diameter":"9"},{"diameter":"4"},{"diameter":"5"},{"diameter":"6"},{"diameter":"7"},{"diameter":"8"},{"diameter":"9"}],"date":"2027-06-12","none_in_reach":true}"#,
    ),
    (
        "bamboo, path",
        r#"{"version":1,"species":"bamboo","stems":[{"diameter":"2"}],"date":"2027-06-12","targets":[{"kind":"path","distance":"60 ft"}],"line_within_reach":"no"}"#,
    ),
    (
        "a point",
        r#"{"version":1,"species":"Norway maple","stems":[{"diameter":"14"}],"date":"2027-09-12","place":{"latitude":"43.1","longitude":"-89.4"},"none_in_reach":true}"#,
    ),
];

/// Random questions, of which the mean is told; the same on every run.
const RANDOM: usize = 400;
const SEED: u64 = 20_270_612;

/// How often one question is asked.
const TIMES: usize = 1_000;

type Asked = (Question, Local);

fn asked(typed: &Typed) -> Asked {
    let question = read(reference(), typed).expect("a good question");
    let local = make::local(&question);
    (question, local)
}

fn plain((question, local): &Asked) {
    black_box(without_changes(reference(), black_box(question), local));
}

fn whole((question, local): &Asked) {
    black_box(answer(reference(), black_box(question), local));
}

fn main() {
    let mut questions: Vec<(String, Asked)> = examples::all(&examples::folder())
        .iter()
        .map(|(name, typed)| (name.clone(), asked(typed)))
        .collect();
    questions.extend(MORE.iter().map(|(name, text)| {
        let typed: Typed = serde_json::from_str(text).expect("a question");
        ((*name).to_owned(), asked(&typed))
    }));
    let words: Vec<String> = std::env::args().skip(1).collect();
    if let Some(name) = words.iter().find(|word| !word.starts_with('-')) {
        let mut asked = questions;
        asked.retain(|(known, _)| known == name || name == "all");
        assert!(!asked.is_empty(), "there is no question {name}");
        let without = words.iter().any(|word| word == "plain");
        for (_, asked) in asked.iter().cycle().take(TIMES) {
            if without { plain(asked) } else { whole(asked) }
        }
        return;
    }
    println!(
        "{:<26} {:>10} {:>14} {:>7}",
        "question", "plain, us", "with changes", "ratio"
    );
    let mut worst: f64 = 0.0;
    let (mut plains, mut wholes) = (Vec::new(), Vec::new());
    for (name, asked) in &questions {
        let (plain, whole) = (best(60, 10, || plain(asked)), best(60, 10, || whole(asked)));
        let ratio = whole / plain;
        worst = worst.max(ratio);
        println!("{name:<26} {plain:>10.1} {whole:>14.1} {ratio:>7.1}");
        plains.push(plain);
        wholes.push(whole);
    }
    let last = |mut times: Vec<f64>| {
        times.sort_by(f64::total_cmp);
        (times[times.len() / 2], times[times.len() - 1])
    };
    let (plains, wholes) = (last(plains), last(wholes));
    println!(
        "{:<26} {:>10.1} {:>14.1}",
        "the middle one", plains.0, wholes.0
    );
    println!(
        "{:<26} {:>10.1} {:>14.1}",
        "the slowest", plains.1, wholes.1
    );
    let mut maker = make::Maker::new(SEED);
    let random: Vec<Asked> = (0..RANDOM)
        .map(|_| {
            let question = maker.aided().1;
            let local = make::local(&question);
            (question, local)
        })
        .collect();
    let mean = |call: fn(&Asked)| {
        let times = random.iter().map(|asked| best(12, 1, || call(asked)));
        let times: Vec<f64> = times.collect();
        (times.iter().sum::<f64>() / RANDOM as f64, last(times).1)
    };
    let (plains, wholes) = (mean(plain), mean(whole));
    println!(
        "{:<26} {:>10.1} {:>14.1}",
        "random, mean", plains.0, wholes.0
    );
    println!(
        "{:<26} {:>10.1} {:>14.1}",
        "random, the slowest", plains.1, wholes.1
    );
    assert!(
        worst < MOST_RATIO,
        "the search for changes costs {worst:.0} answers"
    );
}

fn once(call: &mut impl FnMut(), times: u32) -> f64 {
    let start = Instant::now();
    for _ in 0..times {
        call();
    }
    start.elapsed().as_secs_f64() * 1e6 / f64::from(times)
}

/// The best of some rounds, microseconds a call: what other work on the machine slows down is not counted.
fn best(rounds: u32, times: u32, mut call: impl FnMut()) -> f64 {
    (0..rounds)
        .map(|_| once(&mut call, times))
        .fold(f64::INFINITY, f64::min)
}
