//! Several stems: the largest living one that is to die heads, the others are named. Common practice, no source: every
//! stem is ringed, or all but the one to keep; herbicide passes through shared roots.

use super::head;
use crate::support::*;
use calc::answer::{Answer, Outcome};
use calc::terms::method::{Level, Method};
use serde_json::{Value, json};

fn clump(stems: Value, spare: usize) -> Value {
    with(
        tree("Norway maple", "1"),
        json!({ "stems": stems, "goal": "spare_one", "spare": spare }),
    )
}

/// The card's sentence: it stands behind the line of the tag.
fn first_line(asked: &Value, answer: &Answer) -> String {
    let text = calc_view::text::answer(reference(), &question(asked), answer, None);
    text.lines()
        .skip(1)
        .find(|line| !line.is_empty())
        .unwrap_or_default()
        .to_owned()
}

#[test]
fn the_largest_living_stem_that_is_to_die_heads_and_the_one_to_keep_is_named() {
    let stems = json!([{ "diameter": "12" }, { "diameter": "9" }, { "diameter": "8" }]);
    let asked = clump(stems, 0);
    let answer = ask(&asked);
    assert_eq!(head(&answer), (Outcome::Do, Method::BarkRing));
    assert!(
        first_line(&asked, &answer).starts_with("Ring stems 2 and 3; leave stem 1."),
        "{}",
        first_line(&asked, &answer)
    );
    let alone = ask(&tree("Norway maple", "9"));
    assert_eq!(
        answer.outlook.map(|outlook| outlook.seasons),
        alone.outlook.map(|outlook| outlook.seasons),
        "the outlook is that of the 9-in stem"
    );
    let whole = ask(&tree("Norway maple", "12"));
    assert_eq!(
        answer.reach.zone_m, whole.reach.zone_m,
        "height and reach stay with the largest"
    );
}

#[test]
fn a_dead_stem_never_heads_and_no_stem_left_to_ring_is_not_do() {
    let stems = json!([{ "diameter": "14", "live_share": "0" }, { "diameter": "9" }]);
    let asked = with(tree("Norway maple", "1"), json!({ "stems": stems }));
    let answer = ask(&asked);
    assert_eq!(head(&answer), (Outcome::Do, Method::BarkRing));
    assert!(first_line(&asked, &answer).starts_with("Ring stem 2."));
    // All that may die is dead: nothing is left to ring.
    let asked = clump(stems, 1);
    let answer = ask(&asked);
    assert_eq!(head(&answer), (Outcome::OtherMethod, Method::LeaveIt));
    let text = calc_view::text::answer(reference(), &question(&asked), &answer, None);
    assert!(text.contains("No living stem is left to ring"), "{text}");
}

#[test]
fn herbicide_is_not_advised_on_a_clump_with_a_stem_to_keep() {
    for herbicide in ["not_said", "licensed", "yes"] {
        for diameter in ["2", "5", "8", "14"] {
            let stems = json!([{ "diameter": diameter }, { "diameter": "3" }]);
            let asked = with(clump(stems, 1), json!({ "herbicide": herbicide }));
            let answer = ask(&asked);
            for method in [Method::Frill, Method::BasalBark, Method::CutStump] {
                assert!(level(&answer, method) >= Level::NotAdvised, "{method:?}");
            }
            assert!(!answer.headline_method.needs_herbicide());
        }
    }
}
