//! How long an answer takes, natively: `cargo bench -p tests`. It prints microseconds, and the one comparison that
//! holds on any machine, a ratio inside this run: an answer with its search for changes over one without.

use calc::answer::{answer, without_changes};
use calc::models::season::Local;
use calc::question::{Typed, read};
use std::hint::black_box;
use std::time::Instant;

/// The search stays under 15 answers as measured; more than this over one answer would be a search gone wild.
const MOST_RATIO: f64 = 40.0;

const QUESTIONS: &[(&str, &str)] = &[
    (
        "do, leaf-out seen",
        r#"{"version":1,"species":"Norway maple","stems":[{"diameter":"14 1/2 in"}],"date":"2027-06-12","leafed_out":{"stage":"buds_open","date":"2027-04-30"},"targets":[{"kind":"path","distance":"200 ft"}],"line_within_reach":"no"}"#,
    ),
    (
        "wait, November",
        r#"{"version":1,"species":"Norway maple","stems":[{"diameter":"12"}],"date":"2027-11-20","none_in_reach":true}"#,
    ),
    (
        "can't tell, two answers",
        r#"{"version":1,"species":"Norway maple","stems":[{"diameter":"12"}],"date":"2027-06-12"}"#,
    ),
    (
        "professional",
        r#"{"version":1,"species":"Norway maple","stems":[{"diameter":"12"}],"date":"2027-06-12","targets":[{"kind":"path","distance":"40 ft"}],"line_within_reach":"no"}"#,
    ),
    (
        "oak, no state",
        r#"{"version":1,"species":"Northern red oak","stems":[{"diameter":"12"}],"date":"2027-06-12","none_in_reach":true}"#,
    ),
    (
        "twelve stems",
        r#"{"version":1,"species":"Boxelder","stems":[{"diameter":"4"},{"diameter":"5"},{"diameter":"6"},{"diameter":"7"},{"diameter":"8"},{"diameter":"9"},{"diameter":"4"},{"diameter":"5"},{"diameter":"6"},{"diameter":"7"},{"diameter":"8"},{"diameter":"9"}],"date":"2027-06-12","none_in_reach":true}"#,
    ),
];

fn main() {
    let reference = calc_data::whole();
    println!(
        "{:<26} {:>10} {:>14} {:>7}",
        "question", "plain, us", "with changes", "ratio"
    );
    let mut worst: f64 = 0.0;
    for (name, text) in QUESTIONS {
        let typed: Typed = serde_json::from_str(text).expect("a question");
        let question = read(reference, &typed).expect("a good question");
        let local = Local::default();
        let plain = median(|| {
            black_box(without_changes(reference, black_box(&question), &local));
        });
        let whole = median(|| {
            black_box(answer(reference, black_box(&question), &local));
        });
        worst = worst.max(whole / plain);
        println!(
            "{name:<26} {plain:>10.1} {whole:>14.1} {:>7.1}",
            whole / plain
        );
    }
    assert!(
        worst < MOST_RATIO,
        "the search for changes costs {worst:.0} answers"
    );
}

/// Median of 41 rounds of 20 calls, microseconds a call.
fn median(mut call: impl FnMut()) -> f64 {
    let mut rounds: Vec<f64> = (0..41)
        .map(|_| {
            let start = Instant::now();
            for _ in 0..20 {
                call();
            }
            start.elapsed().as_secs_f64() * 1e6 / 20.0
        })
        .collect();
    rounds.sort_by(f64::total_cmp);
    rounds[20]
}
