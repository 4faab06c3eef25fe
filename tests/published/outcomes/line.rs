//! The line question comes first of all. Near a line only its owner's people work (29 CFR 1910.269(x), 1910.333: D01,
//! D02); that nobody is told anything before it is answered is our own assumption, on the cautious side.

use super::{head, not_checked, said};
use crate::support::*;
use calc::answer::{AlsoKind, Answer, Outcome};
use calc::models::reach;
use calc::terms::method::{Level, Method};
use serde_json::{Value, json};

fn maple_5_in() -> Value {
    with(
        near(tree("Norway maple", "5"), "path", "50 ft"),
        json!({ "height": "40 ft" }),
    )
}

/// Nothing in an answer offers work to the reader.
fn offers_nothing(answer: &Answer) {
    assert_eq!(head(answer), (Outcome::CannotTell, Method::LeaveIt));
    for line in &answer.methods {
        let left = line.method == Method::LeaveIt;
        assert!(left || line.level == Level::RuledOut, "{:?}", line.method);
    }
    let next = answer.next_line.expect("a line");
    assert_eq!(
        (next.kind, next.method, answer.also.len()),
        (AlsoKind::OrProfessional, Method::LeaveIt, 0)
    );
    assert!(answer.effort.is_none() && answer.visits.is_empty() && answer.changes.is_empty());
}

#[test]
fn a_line_that_nobody_can_tell_is_asked_about_and_nothing_else_is_said() {
    let answer = ask(&said(maple_5_in(), "line_within_reach", "cant_tell"));
    assert_eq!(
        answer.reach.outcome,
        reach::ReachOutcome::Inside,
        "the path is not forgotten"
    );
    offers_nothing(&answer);
    let open = answer.conditional.as_ref().expect("a condition");
    assert_eq!(open.condition, "no_line");
    assert_eq!(
        head(&open.answer),
        (Outcome::OtherMethod, Method::CutStump),
        "folded: what would stand without a line"
    );
    offers_nothing(&ask(&with(
        maple_5_in(),
        json!({ "line_within_reach": null }),
    )));
    assert_eq!(
        head(&ask(&maple_5_in())),
        (Outcome::OtherMethod, Method::CutStump)
    );
}

#[test]
fn a_stop_outranks_the_line_question() {
    let near_house = with(
        near(tree("Norway maple", "14"), "building", "10 ft"),
        json!({ "line_within_reach": "cant_tell" }),
    );
    assert_eq!(ask(&near_house).outcome, Outcome::Professional);
}

/// Our own assumption: nobody pulls a line down with a seedling under half an inch.
#[test]
fn a_seedling_is_pulled_without_the_line_question_and_a_stem_of_half_an_inch_is_not() {
    let open = |diameter: &str| ask(&not_checked(tree("Norway maple", diameter)));
    assert_eq!(
        head(&open("0.4")),
        (Outcome::OtherMethod, Method::PullOrDig)
    );
    offers_nothing(&open("0.5"));
}

/// Palms and trees without a name: without a height nothing can be said of what they reach.
#[test]
fn an_unknown_tree_without_a_height_is_told_to_be_measured_first() {
    for name in ["unknown broadleaf", "palm"] {
        let asked = near(tree(name, "14"), "path", "200 ft");
        let answer = ask(&asked);
        assert_eq!(answer.outcome, Outcome::CannotTell, "{name}");
        assert_eq!(
            answer.reach.missing.first(),
            Some(&reach::Why::HeightUnknown)
        );
        let text = calc_view::text::answer(reference(), &question(&asked), &answer, None);
        let first = text
            .lines()
            .find(|line| line.starts_with("We can't tell yet."))
            .expect("a verdict");
        assert!(first.contains("Measure its height first"), "{first}");
    }
}
