//! What a group tightens, in whole answers: a size from which a tree is a professional's, a factor for all distances.
//! Own rules (content/cautions and the page for groups say them); the approach distance of a line is that of 29 CFR
//! 1910.269 (D02).

use crate::support::*;
use calc::answer::{Answer, Outcome, answer};
use calc::models::reach::{ReachOutcome, Why};
use calc::models::season::Local;
use calc::terms::method::Method;
use calc::terms::tighten::Tighten;
use serde_json::{Value, json};

/// Asks as the page of a group with these rules does.
fn ask_in_group(tighten: Tighten, asked: &Value) -> Answer {
    let mut question = question(asked);
    question.tree.tighten = tighten;
    answer(reference(), &question, &Local::default())
}

fn up_to_40_cm(asked: &Value) -> Answer {
    let volunteers_mm = Some(400.0);
    ask_in_group(
        Tighten {
            volunteers_mm,
            ..Tighten::default()
        },
        asked,
    )
}

#[test]
fn a_tree_over_the_group_s_size_is_a_professional_s_whatever_the_method_and_no_other_line_offers_it()
 {
    // 20 in are 50.8 cm; without the group's rule its answer has other methods beside the first line.
    let asked = with(
        tree("Norway maple", "20"),
        json!({ "date": "2027-11-20", "herbicide": "licensed" }),
    );
    let plain = ask(&asked);
    assert_eq!(plain.outcome, Outcome::OtherMethod);
    assert!(plain.next_line.is_some());
    let answer = up_to_40_cm(&asked);
    assert_eq!(answer.outcome, Outcome::Professional);
    assert!(answer.next_line.is_none() && answer.also.is_empty());
    for line in &answer.methods {
        let work = line.method != Method::LeaveIt;
        assert_eq!(line.by_professional, work, "{:?}", line.method);
    }
    // One that waits has more than one line beside it.
    let heaven = with(
        tree("tree-of-heaven", "20"),
        json!({ "date": "2027-06-15" }),
    );
    assert!(!ask(&heaven).also.is_empty());
    assert!(up_to_40_cm(&heaven).also.is_empty());
    // A tree of that size itself is no larger: 40 cm.
    let at_the_limit = with(asked, json!({ "stems": [{ "diameter": "40 cm" }] }));
    assert_ne!(up_to_40_cm(&at_the_limit).outcome, Outcome::Professional);
}

#[test]
fn a_tree_that_is_left_alone_is_no_professional_s_for_its_size_and_one_that_cannot_be_told_is() {
    let dead = with(tree("Norway maple", "20"), json!({ "condition": "dead" }));
    let answer = up_to_40_cm(&dead);
    assert_eq!(
        (answer.outcome, answer.headline_method),
        (Outcome::OtherMethod, Method::LeaveIt)
    );
    let open = with(
        tree("Norway maple", "20"),
        json!({ "none_in_reach": false, "line_within_reach": "cant_tell", "height": "50 ft",
            "targets": [{ "kind": "path", "distance": "300 ft" }] }),
    );
    let plain = ask(&open);
    assert_eq!(
        (plain.outcome, plain.headline_method),
        (Outcome::CannotTell, Method::LeaveIt)
    );
    assert_eq!(up_to_40_cm(&open).outcome, Outcome::Professional);
}

/// A sapling of 6 ft reaches 9 ft, a group's factor of 1.25 makes that 11 ft 3 in; the 10 ft to a line become 12½.
#[test]
fn a_group_s_factor_widens_the_approach_distance_to_a_line() {
    let line = |distance: &str| {
        with(
            tree("Norway maple", "1"),
            json!({ "none_in_reach": false, "height": "6 ft",
                "targets": [{ "kind": "line", "distance": distance }] }),
        )
    };
    let distance_factor = 1.25;
    let tighten = Tighten {
        distance_factor,
        ..Tighten::default()
    };
    let wider = |distance| ask_in_group(tighten, &line(distance)).reach;
    assert_eq!(
        (wider("12 ft").outcome, wider("12 ft").why),
        (ReachOutcome::Line, Why::LineWithin)
    );
    assert_ne!(wider("13 ft").outcome, ReachOutcome::Line);
    assert_ne!(ask(&line("12 ft")).reach.outcome, ReachOutcome::Line);
}
