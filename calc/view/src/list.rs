//! The columns that a list gains: a cell each of what its row's answer comes to. They are written anew each time, and
//! never read back.

use calc::answer::Answer;
use calc::question::Question;
use calc::terms::cite::Grade;
use calc::terms::day::iso;
use calc::terms::method::Method;
use calc::terms::small::decimals::fixed;
use calc::timing::Verdict;
use calc_list::{Line, RowProblem};

/// The columns, in order.
pub const COLUMNS: [&str; 27] = [
    "plan_verdict",
    "plan_method",
    "plan_by_professional",
    "plan_ring_cm",
    "plan_ring_in",
    "plan_minutes_low",
    "plan_minutes_mid",
    "plan_minutes_high",
    "plan_minutes_mean",
    "plan_timing",
    "plan_window_start",
    "plan_window_end",
    "plan_do_on",
    "plan_batch",
    "plan_check_1",
    "plan_check_2",
    "plan_check_3",
    "plan_reach_m",
    "plan_zone_m",
    "plan_habitat",
    "plan_confidence",
    "plan_assumed",
    "plan_cautions",
    "plan_reason",
    "plan_message",
    "plan_version",
    "plan_made_on",
];

/// How the bark slips on a day, in one word: `good`, `possible`, `poor` or `unknown`.
#[must_use]
pub fn timing_word(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Best => "good",
        Verdict::OpeningTest | Verdict::ClosingTest => "possible",
        Verdict::Dormant | Verdict::TooEarly | Verdict::Late | Verdict::Bonded => "poor",
        Verdict::TestFirst | Verdict::Unknown => "unknown",
    }
}

/// The four grades of a column: `measured`, `related`, `practice` or `rule_of_thumb`.
#[must_use]
pub fn grade_word(grade: Grade) -> &'static str {
    match grade {
        Grade::Measured | Grade::Published => "measured",
        Grade::Related | Grade::Derived | Grade::Secondary => "related",
        Grade::Practice => "practice",
        Grade::Assumption | Grade::Memory => "rule_of_thumb",
    }
}

/// Cells of an answer for [`COLUMNS`], those of `plan_reason` on left out: they are the row's own.
#[must_use]
pub fn cells(question: &Question, answer: &Answer, line: &Line) -> Vec<String> {
    let number = |value: Option<f64>, places: u32| {
        value.map_or(String::new(), |value| {
            let text = fixed(value, places);
            if text.contains('.') {
                text.trim_end_matches('0').trim_end_matches('.').to_owned()
            } else {
                text
            }
        })
    };
    let minutes = line.minutes.as_ref();
    let ring = line.ring_mm;
    let window = |end: bool| {
        let span = line.window.as_ref();
        span.map_or(String::new(), |span| {
            if end { &span.to } else { &span.from }.clone()
        })
    };
    let check = |at: usize| {
        answer.visits.get(at).map_or(String::new(), |visit| {
            [iso(visit.from).as_str(), "/", &iso(visit.to)].concat()
        })
    };
    let stands = matches!(
        answer.headline_method,
        Method::BarkRing | Method::SawRing | Method::Frill | Method::LeaveIt
    );
    let habitat = answer.habitat.as_ref().filter(|_| stands);
    let heading = question.tree.heading();
    let bark = question
        .tree
        .stems
        .iter()
        .position(|stem| std::ptr::eq(stem, heading))
        .and_then(|at| answer.stems.get(at)?.bark.as_ref());
    let grade = bark
        .and_then(|bark| bark.because.iter().map(|cite| cite.grade).max())
        .filter(|_| ring.is_some());
    vec![
        line.outcome.to_owned(),
        line.method.to_owned(),
        if line.by_professional { "yes" } else { "no" }.to_owned(),
        // A width that is too small kills nothing: up, to the centimetre and half an inch.
        number(ring.map(|mm| (mm / 10.0).ceil()), 0),
        number(
            ring.map(|mm| (mm / calc::terms::quantity::MM_PER_IN * 2.0).ceil() / 2.0),
            1,
        ),
        number(minutes.map(|it| it.low), 1),
        number(minutes.and_then(|it| it.likely), 1),
        number(minutes.map(|it| it.high), 1),
        number(minutes.and_then(|it| it.mean), 1),
        timing_word(answer.timing.verdict).to_owned(),
        window(false),
        window(true),
        String::new(),
        String::new(),
        check(0),
        check(1),
        check(2),
        number(Some(line.reach_m), 1),
        number(Some(line.zone_m), 1),
        habitat
            .map_or("", |it| {
                if it.feeding_wood_only {
                    "feeding_wood"
                } else {
                    "feeding_wood_and_cavities"
                }
            })
            .to_owned(),
        grade.map_or("", grade_word).to_owned(),
        line.assumed.join(";"),
        line.cautions.join(";"),
    ]
}

/// What is wrong with a row, as its cells `problem_1` to `problem_3` have it: `D: dbh: …`.
#[must_use]
pub fn problem_cell(problem: &RowProblem, header: &str) -> String {
    let column = problem.column.map_or(String::new(), calc_list::letter);
    [
        column.as_str(),
        ": ",
        header,
        ": ",
        &crate::words::list::what(problem),
    ]
    .concat()
}
