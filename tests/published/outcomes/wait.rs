//! Waiting: for the bark, for a month, or not at all.

use super::{beside, day, head, on, said};
use crate::support::*;
use calc::answer::{AlsoKind, Outcome};
use calc::terms::method::Method;
use serde_json::json;

#[test]
fn wait_names_a_day_on_which_the_ring_is_the_answer() {
    let answer = ask(&on(tree("Norway maple", "14"), "2027-11-20"));
    assert_eq!(head(&answer), (Outcome::Wait, Method::BarkRing));
    assert_eq!(
        day(&answer),
        "2028-05-01",
        "the first day of the best months"
    );
    let then = ask(&on(tree("Norway maple", "14"), &day(&answer)));
    assert_eq!(head(&then), (Outcome::Do, Method::BarkRing));
    assert_eq!(day(&then), day(&answer));
    assert_eq!(then.timing.verdict, answer.timing.verdict);
    assert_ne!(answer.asked_verdict, Some(answer.timing.verdict));
}

#[test]
fn a_wait_of_over_120_days_yields_to_a_recommended_method_only_where_herbicide_is_allowed() {
    let licensed = said(tree("Norway maple", "14"), "herbicide", "licensed");
    let long = ask(&on(licensed.clone(), "2027-11-20"));
    assert_eq!(head(&long), (Outcome::OtherMethod, Method::Frill));
    assert_eq!(
        beside(&long, AlsoKind::RingLater),
        Some(Method::BarkRing),
        "the wait in the next line"
    );
    let short = ask(&on(licensed, "2028-02-20"));
    assert_eq!(head(&short), (Outcome::Wait, Method::BarkRing), "71 days");
    let unsaid = ask(&on(tree("Norway maple", "14"), "2027-11-20"));
    assert_eq!(unsaid.outcome, Outcome::Wait);
}

#[test]
fn who_cannot_wait_is_never_told_to() {
    for date in ["2027-01-10", "2027-08-20", "2027-11-20"] {
        for name in [
            "Norway maple",
            "Scots pine",
            "northern red oak",
            "tree-of-heaven",
        ] {
            let asked = with(
                tree(name, "14"),
                json!({ "date": date, "cannot_wait": true, "region": "US-WI" }),
            );
            let answer = ask(&asked);
            assert_ne!(answer.outcome, Outcome::Wait, "{name} {date}");
            assert_eq!(day(&answer), date);
        }
    }
}

#[test]
fn the_year_is_asked_without_a_day_and_answered_for_its_best_day() {
    let asked = with(
        tree("Norway maple", "14"),
        json!({ "date": "year", "today": "2027-02-01" }),
    );
    let answer = ask(&asked);
    assert_eq!(head(&answer), (Outcome::Do, Method::BarkRing));
    assert_eq!(day(&answer), "2027-05-01");
    assert!(answer.asked_day.is_none() && answer.asked_verdict.is_none());
}

/// The months of oak wilt close a stretch, or the answer rests on their not being there; never both.
#[test]
fn an_oak_without_a_state_is_shown_no_window_under_a_closed_month() {
    for region in [None, Some("US")] {
        let asked = with(
            tree("northern red oak", "14"),
            json!({ "date": "2027-06-12", "region": region }),
        );
        let answer = ask(&asked);
        assert_eq!(answer.outcome, Outcome::CannotTell, "{region:?}");
        let closes = |answer: &calc::answer::Answer| {
            let oak =
                |rule: &&calc::models::season::Rules| rule.topic == calc::timing::Topic::OakWilt;
            answer.rules.iter().find(oak).expect("told").closes
        };
        assert!(closes(&answer));
        assert_eq!(answer.timing.next_good, None);
        let without = &answer
            .conditional
            .as_ref()
            .expect("an answer if it is so")
            .answer;
        assert!(!closes(without));
        assert!(without.timing.next_good.is_some());
    }
}

/// A dry spell of this summer does not shorten the season that the answer waits for.
#[test]
fn the_season_waited_for_is_not_shortened_by_this_summer_s_dry_spell() {
    let asked = with(
        tree("Norway maple", "14"),
        json!({ "date": "2027-07-25", "leafed_out": { "stage": "buds_open", "date": "2027-04-30" } }),
    );
    let (plain, dry) = (ask(&asked), ask(&said(asked.clone(), "dry_spell", "month")));
    assert_eq!((plain.outcome, dry.outcome), (Outcome::Wait, Outcome::Wait));
    assert_eq!(plain.timing.closes, dry.timing.closes);
    assert!(plain.asked_probability > dry.asked_probability);
}
