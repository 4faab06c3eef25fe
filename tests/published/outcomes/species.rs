//! Species with rules of their own: palms, oaks, elm, ash, aspens, tree-of-heaven.

use super::{beside, day, head, in_region, not_checked, on, said};
use crate::support::*;
use calc::answer::{AlsoKind, Outcome};
use calc::terms::method::{Level, Method};
use serde_json::json;

/// S85: no cambium, so no ring.
#[test]
fn palms_bamboo_and_yucca_are_never_ringed_on_any_day() {
    for name in ["palm", "bamboo", "yucca"] {
        for date in ["2027-02-10", "2027-06-05", "2027-11-20"] {
            for inches in ["0.5", "2", "8", "16"] {
                let answer = ask(&on(tree(name, inches), date));
                assert_eq!(level(&answer, Method::BarkRing), Level::RuledOut);
                assert_ne!(answer.headline_method, Method::BarkRing);
                assert_eq!(
                    answer.outcome,
                    Outcome::OtherMethod,
                    "{name} {inches} {date}"
                );
                assert!(answer.effort.is_none());
            }
        }
    }
    let palm = ask(&tree("palm", "8"));
    assert_eq!(palm.headline_method, Method::Fell);
    assert!(palm.headline_by_professional);
    assert_eq!(ask(&tree("bamboo", "1")).headline_method, Method::PullOrDig);
}

/// Wisconsin DNR by way of NEWS8000 and WIWOODLANDS2016: do not wound oaks from April to July.
#[test]
fn an_oak_in_wisconsin_waits_for_a_day_outside_april_to_july() {
    let answer = ask(&in_region("northern red oak", "US-WI"));
    assert_eq!(head(&answer), (Outcome::Wait, Method::BarkRing));
    assert_eq!(
        day(&answer),
        "2028-03-12",
        "the months of the bark without those of the beetles: two weeks of March"
    );
    assert_eq!(
        answer.advised_to.map(calc::terms::day::iso).as_deref(),
        Some("2028-03-25"),
        "a week before the months in which oaks must not be wounded"
    );
    assert!(speaks(&answer, "DZ1"));
    assert_eq!(
        head(&ask(&on(
            in_region("northern red oak", "US-WI"),
            "2028-03-25"
        ))),
        (Outcome::Do, Method::BarkRing)
    );
    assert_eq!(
        ask(&on(in_region("northern red oak", "US-WI"), "2028-04-01")).outcome,
        Outcome::Wait
    );
}

/// S48 to S50: dying elm with its bark on breeds the beetles that carry Dutch elm disease.
#[test]
fn american_elm_is_not_ringed_in_any_month() {
    for month in 1..=12 {
        let answer = ask(&on(tree("American elm", "14"), &format!("2027-{month}-10")));
        assert_eq!(level(&answer, Method::BarkRing), Level::NotAdvised);
        assert_eq!(answer.outcome, Outcome::OtherMethod, "month {month}");
        assert_ne!(answer.headline_method, Method::BarkRing);
    }
    let june = ask(&tree("American elm", "14"));
    assert_eq!(june.headline_method, Method::CutStump);
    assert_eq!(
        beside(&june, AlsoKind::WithoutHerbicide),
        Some(Method::Fell)
    );
}

/// S47: ringed ash draws the borer. Where it is: the lists of 2022 to 2025 (LR30, LR32, LR33).
#[test]
fn an_ash_is_ringed_in_alaska_and_not_in_pennsylvania() {
    let there = ask(&in_region("green ash", "US-PA"));
    assert_eq!(head(&there), (Outcome::OtherMethod, Method::Frill));
    assert_eq!(level(&there, Method::BarkRing), Level::NotAdvised);
    assert!(speaks(&there, "DZ2"));
    let not = ask(&in_region("green ash", "US-AK"));
    assert_eq!(head(&not), (Outcome::Do, Method::BarkRing));
    assert_eq!(level(&not, Method::BarkRing), Level::Recommended);
    assert!(!speaks(&not, "DZ2"));
    let unsaid = ask(&with(tree("green ash", "14"), json!({ "region": null })));
    assert_eq!(
        level(&unsaid, Method::BarkRing),
        Level::NotAdvised,
        "taken as present"
    );
}

/// S13, S14: ring every stem of the clone.
#[test]
fn an_aspen_is_ringed_when_the_whole_clone_is_and_not_when_part_of_it_is_left() {
    let clone = |word: &str| ask(&said(tree("quaking aspen", "14"), "whole_clone", word));
    let whole = clone("yes");
    assert_eq!(head(&whole), (Outcome::Do, Method::BarkRing));
    assert_eq!(level(&whole, Method::BarkRing), Level::Recommended);
    let part = clone("no");
    assert_eq!(head(&part), (Outcome::OtherMethod, Method::Frill));
    assert_eq!(level(&part, Method::BarkRing), Level::NotAdvised);
    let unsaid = clone("not_said");
    assert_eq!(unsaid.outcome, Outcome::CannotTell);
    let settled = unsaid.conditional.as_ref().expect("a condition");
    assert_eq!(settled.condition, "whole_clone");
    assert_eq!(head(&settled.answer), (Outcome::Do, Method::BarkRing));
    assert_eq!(
        level(&unsaid, Method::BarkRing),
        Level::NotAdvised,
        "judged as if it did not hold"
    );
}

#[test]
fn two_open_conditions_go_into_one_sentence_and_their_answer_takes_both() {
    let answer = ask(&not_checked(tree("quaking aspen", "14")));
    let settled = answer.conditional.expect("a condition");
    assert_eq!(settled.condition, "nothing_in_reach+whole_clone");
    assert_eq!(head(&settled.answer), (Outcome::Do, Method::BarkRing));
}

/// RUTGERS: herbicide suits tree-of-heaven from mid July to mid October. S18, S21: guidance for a ring is published.
#[test]
fn tree_of_heaven_waits_for_its_months_and_is_ringed_only_where_herbicide_is_refused() {
    let heaven = |date: &str, herbicide: &str| {
        ask(&on(
            said(tree("tree-of-heaven", "14"), "herbicide", herbicide),
            date,
        ))
    };
    for herbicide in ["not_said", "licensed", "yes"] {
        let early = heaven("2027-06-05", herbicide);
        assert_eq!(head(&early), (Outcome::Wait, Method::Frill), "{herbicide}");
        assert_eq!(day(&early), "2027-07-15");
        for date in ["2027-07-15", "2027-10-15"] {
            assert_eq!(
                head(&heaven(date, herbicide)),
                (Outcome::OtherMethod, Method::Frill),
                "{date}"
            );
        }
        assert_eq!(heaven("2027-10-16", herbicide).outcome, Outcome::Wait);
    }
    let refused = heaven("2027-06-05", "no");
    assert_eq!(head(&refused), (Outcome::Do, Method::BarkRing));
    assert_eq!(
        level(&refused, Method::BarkRing),
        Level::Possible,
        "sprouts cut at least 3 times a year"
    );
}

/// Nobody rings a tree that has no name: at every size and in every month the answer to an unknown tree is another method
/// or "can't tell", never a ring now or later. Our own rule, no source.
#[test]
fn a_tree_without_a_name_is_never_ringed() {
    for name in ["unknown broadleaf", "unknown conifer", "unknown shrub"] {
        for inches in ["1 in", "2 1/4 in", "2 1/2 in", "4 in", "8 in", "20 in"] {
            for date in ["2027-05-20", "2027-11-20"] {
                for herbicide in [json!(null), json!("no"), json!("licensed")] {
                    let fields = json!({ "date": date, "herbicide": herbicide, "height": "30 ft" });
                    let answer = ask_plain(&with(tree(name, inches), fields));
                    assert_ne!(
                        answer.headline_method,
                        Method::BarkRing,
                        "{name} {inches} {date} {herbicide}"
                    );
                    let another =
                        matches!(answer.outcome, Outcome::OtherMethod | Outcome::CannotTell);
                    assert!(another, "{name} {inches} {date} {herbicide}");
                }
            }
        }
    }
}
