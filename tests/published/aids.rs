//! The small aids in a question: readings of a height, trees that were timed, a visit; what contradicts itself gets a
//! code of its own and never an answer that hides it.
//! Mostly our own rules, compared with themselves: the arithmetic is held against print in follow_up.rs.

use crate::support::*;
use calc::models::at_visit::{Act, NoAdvice, RingJudged};
use calc::models::calibrate::{NoRate, Rate, update};
use calc::models::effort::{StemWork, minutes};
use calc::models::effort_constants::Three;
use calc::models::height_aid::HeightBy;
use calc::terms::source;
use serde_json::{Value, json};

fn asked(fields: Value) -> Value {
    with(tree("Norway maple", "12 in"), fields)
}

#[track_caller]
fn only(fields: Value) -> (String, &'static str) {
    let asked = asked(fields);
    let problems = try_read(&asked).expect_err("a problem");
    assert_eq!(problems.len(), 1, "{problems:?}");
    let text = calc_view::problem_text(&problems[0]);
    assert!(text.ends_with(['.', '?']) && text.len() > 20, "{text}");
    (problems[0].field.clone(), problems[0].code.name())
}

fn aid(fields: Value) -> Value {
    json!({ "height_aid": fields })
}

/// tan 40° 0.8391, tan 5° 0.0875 (any four-figure table); similar triangles are exact.
#[test]
fn readings_give_the_height_where_none_is_typed() {
    for (fields, by, m) in [
        (
            json!({ "by": "angles", "distance": "30 m", "top": "40", "foot": "-5" }),
            HeightBy::Angles,
            30.0 * (0.8391 + 0.0875),
        ),
        (
            json!({ "by": "shadow", "tree_shadow": "18 m", "stick": "150 cm", "stick_shadow": "2 m" }),
            HeightBy::Shadow,
            13.5,
        ),
        (
            json!({ "by": "stick", "distance": "25 m", "stick": "50 cm", "eye_to_stick": "62.5 cm" }),
            HeightBy::Stick,
            20.0,
        ),
    ] {
        let question = question(&asked(aid(fields)));
        near_to(
            question.tree.height.expect("a height").m(),
            m,
            0.005,
            "height",
        );
        assert_eq!(question.height_by, Some(by));
        let answer = ask_plain(&asked(aid(json!({ "by": "stick", "distance": "25 m",
            "stick": "50 cm", "eye_to_stick": "62.5 cm" }))));
        assert!(answer.height.measured);
    }
    // Beside a height, the readings only say how it was measured, and only where they make it.
    let beside = |height: &str| {
        let fields = json!({ "height": height, "height_aid":
            { "by": "angles", "distance": "100 ft", "top": "45", "foot": "0" } });
        question(&asked(fields))
    };
    assert_eq!(beside("100 ft").height_by, Some(HeightBy::Angles));
    let other = beside("80 ft");
    assert_eq!(other.height_by, None);
    near_to(
        other.tree.height.expect("as typed").m(),
        24.384,
        1e-9,
        "as typed",
    );
}

#[test]
fn readings_that_make_no_height_are_a_problem_of_their_field() {
    let angles = |top: &str, foot: &str| {
        only(aid(
            json!({ "by": "angles", "distance": "60 ft", "top": top, "foot": foot }),
        ))
    };
    assert_eq!(angles("5", "40"), ("height_aid.top".into(), "no_height"));
    assert_eq!(angles("20", "20"), ("height_aid.top".into(), "no_height"));
    assert_eq!(angles("90", "0"), ("height_aid.top".into(), "no_height"));
    assert_eq!(angles("89.99", "0"), ("height_aid.top".into(), "no_height"));
    assert_eq!(angles("up", "0"), ("height_aid.top".into(), "not_a_number"));
    assert_eq!(angles("40", ""), ("height_aid.foot".into(), "missing"));
    let shadow = |tree: &str, shadow: &str| {
        only(aid(
            json!({ "by": "shadow", "tree_shadow": tree, "stick": "5 ft", "stick_shadow": shadow }),
        ))
    };
    assert_eq!(
        shadow("60 ft", "0"),
        ("height_aid.stick_shadow".into(), "not_positive")
    );
    assert_eq!(
        shadow("0", "3 ft"),
        ("height_aid.tree_shadow".into(), "not_positive")
    );
    assert_eq!(
        shadow("60 ft", "1 mm"),
        ("height_aid.tree_shadow".into(), "no_height")
    );
    assert_eq!(only(aid(json!({}))), ("height_aid.by".into(), "missing"));
    assert_eq!(
        only(aid(json!({ "by": "eye" }))),
        ("height_aid.by".into(), "not_one_of")
    );
}

fn timed(trees: &[&str], minutes: &str) -> Value {
    json!({ "timed": { "trees": trees, "minutes": minutes } })
}

/// The rate is that of the conjugate update (held against SciPy in follow_up.rs) over the model's own minutes for a
/// ring of 6 in on bark of middling thickness, without walking.
#[test]
fn timed_trees_give_the_rate_that_the_update_gives_and_the_minutes_follow_it() {
    let constants = &reference().constants.effort;
    let plain = question(&asked(json!({ "walk": "0" })));
    let predicted: Vec<Three> = [10.0, 12.0, 16.0]
        .map(|inches| {
            let work = StemWork {
                dbh_mm: inches * 25.4,
                bark_mm: 12.7,
                width_mm: 150.0,
                live_share: 1.0,
            };
            let effort =
                minutes(constants, plain.tree.limbs, &plain.pace, &[work], 1.0).expect("a stem");
            Three {
                low: effort.low_min,
                likely: effort.likely_min,
                high: effort.high_min,
            }
        })
        .to_vec();
    let want = update(constants, Rate::prior(constants), &predicted, 26.0).expect("a rate");
    let mut fields = timed(&["10 in", "12", "16"], "26");
    fields["walk"] = json!("0");
    let got = question(&asked(fields.clone())).pace.rate.expect("a rate");
    assert_eq!(got, want);
    let usual = ask_plain(&asked(json!({ "walk": "0" })))
        .effort
        .expect("a ring");
    let slow = ask_plain(&asked(fields)).effort.expect("a ring");
    assert!(slow.likely_min > usual.likely_min * 1.2);
    assert!(slow.high_min / slow.low_min < usual.high_min / usual.low_min);
    let own = slow.own.expect("their own rate");
    assert_eq!(own.timed, Some((3, 26.0)));
    assert!(own.factor.low > 1.0 && own.factor.low < own.factor.likely);
    assert!(slow.because.iter().any(|cite| cite.source == source::YOU));
    // A practised crew's own rate holds its practice already.
    let mut practised = timed(&["10 in", "12", "16"], "26");
    practised["practised"] = json!(true);
    practised["walk"] = json!("0");
    let practised = ask_plain(&asked(practised)).effort.expect("a ring");
    assert_eq!(practised.likely_min, slow.likely_min);
    // Limbs and walking of this tree are no part of what was timed.
    let mut limby = timed(&["10 in", "12", "16"], "26");
    limby["limbs"] = json!("many");
    limby["walk"] = json!("30 min");
    assert_eq!(question(&asked(limby)).pace.rate, Some(want));
}

#[test]
fn one_tree_tells_nothing_yet_and_zero_or_absurd_minutes_are_a_problem() {
    for trees in [&["12"][..], &[]] {
        let answer = ask_plain(&asked(timed(trees, "9")));
        let effort = answer.effort.expect("a ring");
        assert_eq!(effort.timed, Some((trees.len(), NoRate::TooFewTrees)));
        assert!(effort.own.is_none());
        let usual = ask_plain(&asked(json!({}))).effort.expect("a ring");
        assert_eq!(effort.likely_min, usual.likely_min, "our own rate is used");
        let question = question(&asked(timed(trees, "9")));
        let said = calc_view::text::answer(
            reference(),
            &question,
            &ask_plain(&asked(timed(trees, "9"))),
            None,
        );
        assert!(said.contains("Can't tell yet from"), "{said}");
    }
    let minutes = |text: &str| only(timed(&["12", "14"], text));
    assert_eq!(minutes("0"), ("timed.minutes".into(), "not_positive"));
    assert_eq!(minutes("-4"), ("timed.minutes".into(), "out_of_range"));
    assert_eq!(
        minutes("2000"),
        ("timed.minutes".into(), "far_from_any_crew")
    );
    assert_eq!(
        minutes("0.2"),
        ("timed.minutes".into(), "far_from_any_crew")
    );
    assert_eq!(minutes("soon"), ("timed.minutes".into(), "not_a_number"));
    assert_eq!(minutes(""), ("timed.minutes".into(), "missing"));
    assert_eq!(
        only(timed(&["12", "wide"], "9")),
        ("timed.trees[1]".into(), "not_a_number")
    );
    assert_eq!(
        only(timed(&["12"; 101], "90")),
        ("timed.trees".into(), "too_many_stems")
    );
    let mut other = timed(&["12", "14"], "9");
    other["timed"]["species"] = json!("no such tree");
    assert_eq!(only(other), ("timed.species".into(), "unknown_species"));
}

fn visit(at: &str, seen: &[&str]) -> calc::models::at_visit::VisitAnswer {
    let fields = json!({ "visit": { "at": at, "seen": seen } });
    ask_plain(&asked(fields)).visit.expect("a visit")
}

/// Response notes E: judge no earlier than the second autumn (S09); ring again where the crown is full in season 3.
#[test]
fn a_visit_gets_what_to_do_when_to_come_back_and_how_the_ring_stands() {
    let plan = ask_plain(&asked(json!({}))).visits;
    let first = visit("1", &["bridge"]);
    assert_eq!(first.day, Some(plan[0].to));
    let advice = first.advice.expect("advice");
    assert_eq!(advice.acts, [Act::ReopenBridge]);
    assert_eq!(advice.judged, RingJudged::TooSoon);
    let late = visit("2029-08-01", &["crown_full", "sprouts"]);
    let advice = late.advice.expect("advice");
    assert_eq!(advice.acts, [Act::RingAgain, Act::TakeSprouts]);
    assert_eq!(advice.judged, RingJudged::Failed);
    // The third season begins with its spring, not three years after the ring.
    let spring = visit("2029-05-20", &["crown_full"]).advice.expect("advice");
    assert_eq!(spring.judged, RingJudged::Failed);
    let silent = visit("2029-08-01", &[]).advice.expect("advice");
    assert_eq!(silent.judged, RingJudged::LookAtCrown);
    // A ring of another day, asked about where none is advised: in winter, on a dead tree.
    let fields = json!({ "condition": "dead", "visit":
        { "at": "2028-10-01", "ringed": "2027-06-10", "seen": ["crown_bare"] } });
    let other = ask_plain(&asked(fields)).visit.expect("a visit");
    assert_eq!(other.advice.expect("advice").judged, RingJudged::Dead);
}

/// In the south the seasons are turned over: a ring of November, a bare crown in the second autumn, which is March.
#[test]
fn in_the_south_the_second_autumn_is_in_march() {
    let at = |day: &str| {
        let fields = json!({ "region": "NZ", "date": "2027-11-10", "visit":
            { "at": day, "ringed": "2027-11-10", "seen": ["crown_bare"] } });
        let visit = ask_plain(&asked(fields)).visit.expect("a visit");
        visit.advice.expect("advice").judged
    };
    assert_eq!(at("2028-01-10"), RingJudged::TooSoon);
    assert_eq!(at("2028-11-10"), RingJudged::TooSoon);
    assert_eq!(at("2029-03-20"), RingJudged::Dead);
}

#[test]
fn a_visit_before_the_ring_and_what_can_t_both_be_are_said() {
    let why = |at: &str, seen: &[&str]| visit(at, seen).why_not;
    assert_eq!(
        why("2027-05-01", &["sprouts"]),
        Some(NoAdvice::BeforeTheRing)
    );
    assert_eq!(
        why("2028-07-01", &["crown_full", "crown_bare"]),
        Some(NoAdvice::Contradiction)
    );
    assert_eq!(
        why("2028-07-01", &["nothing", "bridge"]),
        Some(NoAdvice::Contradiction)
    );
    assert_eq!(why("40", &[]), Some(NoAdvice::NoSuchVisit));
    assert_eq!(why("0", &[]), Some(NoAdvice::NoSuchVisit));
    let fields = json!({ "condition": "dead", "visit": { "at": "2028-10-01" } });
    let none = ask_plain(&asked(fields.clone())).visit.expect("a visit");
    assert_eq!(none.why_not, Some(NoAdvice::NoRing));
    let said = |fields: Value| {
        let question = question(&asked(fields.clone()));
        calc_view::text::answer(reference(), &question, &ask_plain(&asked(fields)), None)
    };
    assert!(said(fields).contains("Give the day on which it was ringed."));
    let before = said(json!({ "visit": { "at": "2027-05-01" } }));
    assert!(before.contains("The visit is before the ring."), "{before}");
    // No step under a stop, beside a target inside the zone, under a hollow tree, or where nothing is checked yet: not
    // at a visit either, whatever day of the ring is given.
    let seen =
        json!({ "at": "2029-08-01", "ringed": "2027-06-05", "seen": ["bridge", "crown_full"] });
    for fields in [
        json!({ "none_in_reach": false, "line_within_reach": "no", "targets": [{ "kind": "path", "distance": "20 ft" }] }),
        json!({ "none_in_reach": false, "line_within_reach": "no", "targets": [{ "kind": "path", "distance": "90 ft" }] }),
        json!({ "none_in_reach": false, "targets": [{ "kind": "line", "distance": "20 ft" }] }),
        json!({ "signs": ["cavity"] }),
        json!({ "none_in_reach": false }),
    ] {
        let asked = with(
            with(tree("Norway maple", "12 in"), fields.clone()),
            json!({ "visit": seen }),
        );
        let visit = ask_plain(&asked).visit.expect("a visit");
        assert_eq!(
            (visit.why_not, visit.advice),
            (Some(NoAdvice::Stopped), None),
            "{fields}"
        );
    }
    let wrong = |fields: Value| only(json!({ "visit": fields }));
    assert_eq!(
        wrong(json!({ "at": "soon" })),
        ("visit.at".into(), "year_missing")
    );
    assert_eq!(
        wrong(json!({ "at": "2028-07-01", "seen": ["birds"] })),
        ("visit.seen[0]".into(), "not_one_of")
    );
    assert_eq!(
        wrong(json!({ "at": "2028-07-01", "ringed": "2027-13-01" })),
        ("visit.ringed".into(), "month_missing")
    );
}
