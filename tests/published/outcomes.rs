//! The order of outcomes: the first that holds. Each case is a question and what must come first, as model and
//! cautions have it; the sources stand with the rows of the method table and the reach.

use crate::support::*;
use calc::answer::{AlsoKind, Answer, Outcome, iso};
use calc::model::method::{Level, Method};
use calc::model::reach;
use serde_json::{Value, json};

fn day(answer: &Answer) -> String {
    answer.advised_day.map(iso).unwrap_or_default()
}

fn head(answer: &Answer) -> (Outcome, Method) {
    (answer.outcome, answer.headline_method)
}

/// What stands beside the headline, of a kind.
fn beside(answer: &Answer, kind: AlsoKind) -> Option<Method> {
    answer
        .next_line
        .iter()
        .chain(&answer.also)
        .find(|also| also.kind == kind)
        .map(|also| also.method)
}

fn on(question: Value, date: &str) -> Value {
    with(question, json!({ "date": date }))
}

fn said(question: Value, field: &str, word: &str) -> Value {
    with(question, json!({ field: word }))
}

fn in_region(species: &str, region: &str) -> Value {
    said(tree(species, "14"), "region", region)
}

/// A tree of 50 ft with a target.
fn of_50_ft(species: &str, diameter: &str, kind: &str, distance: &str) -> Value {
    let tall = json!({ "height": "50 ft", "height_confirmed": true });
    near(with(tree(species, diameter), tall), kind, distance)
}

fn not_checked(question: Value) -> Value {
    with(question, json!({ "none_in_reach": null }))
}

#[test]
fn professional_comes_before_everything_else() {
    let stop = of_50_ft("quaking aspen", "14", "building", "30 ft");
    let answer = ask(&on(stop, "2027-11-20"));
    assert_eq!(
        answer.outcome,
        Outcome::Professional,
        "before an open clone, a wait and a method"
    );
    assert!(answer.effort.is_none() && answer.visits.is_empty() && answer.outlook.is_none());
    assert!(answer.conditional.is_none());
    for caution in &answer.cautions {
        let family = &caution.id[..2];
        assert!(
            matches!(family, "HZ" | "PL" | "LW"),
            "{} under a stop",
            caution.id
        );
    }
    let line = of_50_ft("Norway maple", "14", "line", "70 ft");
    let answer = ask(&line);
    assert_eq!(
        head(&answer),
        (Outcome::Professional, Method::LeaveIt),
        "a line at 1.4 heights"
    );
    for row in &answer.methods {
        assert!(row.method == Method::LeaveIt || row.level == Level::RuledOut);
    }
    assert!(speaks(&answer, "PL1"));
}

#[test]
fn inside_with_nothing_but_felling_left_is_for_a_professional_and_with_another_method_it_is_not() {
    let large = ask(&of_50_ft("Norway maple", "14", "path", "60 ft"));
    assert_eq!(head(&large), (Outcome::Professional, Method::CutStump));
    assert!(large.headline_by_professional);
    // Downhill at 25 percent the same path is inside up to two heights.
    let mut downhill = of_50_ft("Norway maple", "14", "path", "95 ft");
    downhill["targets"][0]["slope"] = json!("25 %");
    downhill["targets"][0]["downhill"] = json!(true);
    assert_eq!(ask(&downhill).outcome, Outcome::Professional);
    downhill["targets"][0]["slope"] = json!("15 %");
    assert_eq!(ask(&downhill).outcome, Outcome::Do);
    // A stem of 5 in there can be cut again and again, or cut with herbicide on the stump.
    let small = ask(&of_50_ft("Norway maple", "5", "path", "60 ft"));
    assert_eq!(head(&small), (Outcome::OtherMethod, Method::CutStump));
    assert_eq!(
        beside(&small, AlsoKind::WithoutHerbicide),
        Some(Method::RepeatCutting)
    );
    assert_eq!(level(&small, Method::BarkRing), Level::RuledOut);
}

#[test]
fn what_is_not_checked_cannot_be_told_and_says_what_would_settle_it() {
    let answer = ask(&not_checked(tree("Norway maple", "14")));
    assert_eq!(answer.outcome, Outcome::CannotTell);
    assert_eq!(answer.reach.outcome, reach::Outcome::NotChecked);
    let settled = answer.conditional.as_ref().expect("a condition");
    assert_eq!(settled.condition, "nothing_in_reach");
    assert_eq!(head(&settled.answer), (Outcome::Do, Method::BarkRing));
    assert!(settled.answer.conditional.is_none());
    assert_eq!(answer.next_line.expect("a line").kind, AlsoKind::Otherwise);
    for method in [
        Method::BarkRing,
        Method::SawRing,
        Method::Frill,
        Method::BasalBark,
    ] {
        assert_eq!(
            level(&answer, method),
            Level::RuledOut,
            "nothing is left standing otherwise"
        );
    }
    // "Can't tell" to the line question is the same.
    let line = said(
        of_50_ft("Norway maple", "14", "path", "300 ft"),
        "line_within_reach",
        "cant_tell",
    );
    assert_eq!(ask(&line).outcome, Outcome::CannotTell);
    // Pulling and leaving are the same whatever stands near.
    let thin = ask(&not_checked(tree("Norway maple", "1.5")));
    assert_eq!(head(&thin), (Outcome::OtherMethod, Method::PullOrDig));
}

#[test]
fn nothing_in_reach_answers_it_and_prints_the_distance_that_it_relied_on() {
    let answer = ask(&tree("Norway maple", "14"));
    assert_eq!(head(&answer), (Outcome::Do, Method::BarkRing));
    near_to(
        answer.reach.people_out_m,
        2.0 * answer.height.hazard_m,
        1e-9,
        "two heights",
    );
}

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
fn do_at_possible_names_the_next_method_beside_it() {
    let answer = ask(&in_region("white oak", "US-WA"));
    assert_eq!(head(&answer), (Outcome::Do, Method::BarkRing));
    assert_eq!(level(&answer, Method::BarkRing), Level::Possible);
    assert_eq!(answer.next_line.expect("a line").kind, AlsoKind::NextMethod);
    let recommended = ask(&tree("Norway maple", "14"));
    assert_eq!(level(&recommended, Method::BarkRing), Level::Recommended);
    assert!(recommended.next_line.is_none());
}

/// A08: keep hollow trees; one with nothing within two heights is habitat already, and no place to work under.
#[test]
fn a_hollow_tree_with_nothing_near_is_left_alone_with_its_caution() {
    for sign in ["cavity", "cracks", "conks", "hung_limbs"] {
        let answer = ask(&with(
            tree("Norway maple", "14"),
            json!({ "signs": [sign] }),
        ));
        assert_eq!(
            head(&answer),
            (Outcome::OtherMethod, Method::LeaveIt),
            "{sign}"
        );
        assert!(speaks(&answer, "HZ7"), "{sign}");
        let near = with(
            of_50_ft("Norway maple", "14", "path", "90 ft"),
            json!({ "signs": [sign] }),
        );
        assert_eq!(
            ask(&near).outcome,
            Outcome::Professional,
            "{sign} near a path"
        );
        let far = with(
            of_50_ft("Norway maple", "14", "path", "100 ft"),
            json!({ "signs": [sign] }),
        );
        assert_eq!(
            head(&ask(&far)),
            (Outcome::OtherMethod, Method::LeaveIt),
            "{sign} far from it"
        );
    }
    for sign in ["lean_toward", "dead_top", "vines", "lean_away"] {
        let answer = ask(&with(
            tree("Norway maple", "14"),
            json!({ "signs": [sign] }),
        ));
        assert_eq!(head(&answer), (Outcome::Do, Method::BarkRing), "{sign}");
    }
}

/// A08: keep snags; cautions LW6.
#[test]
fn a_dead_tree_is_left_standing_and_near_a_target_felled_by_a_professional() {
    let dead = |asked: Value| ask(&said(asked, "condition", "dead"));
    let far = dead(tree("Norway maple", "14"));
    assert_eq!(head(&far), (Outcome::OtherMethod, Method::LeaveIt));
    assert!(speaks(&far, "LW6") && far.effort.is_none());
    let near = dead(of_50_ft("Norway maple", "14", "path", "60 ft"));
    assert_eq!(head(&near), (Outcome::Professional, Method::Fell));
    let share = with(
        tree("Norway maple", "1"),
        json!({ "stems": [{ "diameter": "14", "live_share": "0" }] }),
    );
    let answer = ask(&share);
    assert_eq!(
        head(&answer),
        (Outcome::OtherMethod, Method::LeaveIt),
        "live share 0 is a dead tree"
    );
    assert!(speaks(&answer, "LW6") && answer.effort.is_none());
}

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
        "2028-03-31",
        "the months of the bark without those of the beetles: the best of March"
    );
    assert!(speaks(&answer, "DZ1"));
    assert_eq!(
        head(&ask(&on(
            in_region("northern red oak", "US-WI"),
            "2028-03-31"
        ))),
        (Outcome::Do, Method::BarkRing)
    );
    assert_eq!(
        ask(&on(in_region("northern red oak", "US-WI"), "2028-04-01")).outcome,
        Outcome::Wait
    );
}

#[test]
fn an_oak_without_a_state_row_is_asked_about_oak_wilt_first() {
    for region in [json!(null), json!("US-MA"), json!("CA-ON")] {
        let answer = ask(&with(
            tree("northern red oak", "14"),
            json!({ "region": region }),
        ));
        assert_eq!(answer.outcome, Outcome::CannotTell, "{region}");
        let settled = answer.conditional.as_ref().expect("a condition");
        assert_eq!(settled.condition, "no_oak_wilt", "{region}");
        assert_eq!(
            head(&settled.answer),
            (Outcome::Do, Method::BarkRing),
            "{region}"
        );
        assert!(speaks(&answer, "DZ1"), "{region}");
    }
}

/// From memory: oak wilt is not known there. It is one line, "ask your state", and no stop.
#[test]
fn an_oak_where_oak_wilt_is_not_known_is_ringed_in_season() {
    for region in ["US-OR", "US-CA", "CA-BC", "GB", "NZ"] {
        let answer = ask(&in_region("northern red oak", region));
        assert_eq!(head(&answer), (Outcome::Do, Method::BarkRing), "{region}");
        assert!(!speaks(&answer, "DZ1"), "{region}");
    }
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

/// S47: ringed ash draws the borer. Where it is: memory, on the cautious side.
#[test]
fn an_ash_is_ringed_in_washington_and_not_in_pennsylvania() {
    let there = ask(&in_region("green ash", "US-PA"));
    assert_eq!(head(&there), (Outcome::OtherMethod, Method::Frill));
    assert_eq!(level(&there, Method::BarkRing), Level::NotAdvised);
    assert!(speaks(&there, "DZ2"));
    let not = ask(&in_region("green ash", "US-WA"));
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

#[test]
fn a_herbicide_method_at_the_head_has_the_best_one_without_beside_it_unless_something_was_said() {
    let pear = |word: &str| ask(&said(tree("Callery pear", "8"), "herbicide", word));
    let unsaid = pear("not_said");
    assert_eq!(head(&unsaid), (Outcome::OtherMethod, Method::Frill));
    assert_eq!(
        beside(&unsaid, AlsoKind::WithoutHerbicide),
        Some(Method::RepeatCutting)
    );
    for word in ["licensed", "yes"] {
        let allowed = pear(word);
        assert_eq!(
            head(&allowed),
            (Outcome::OtherMethod, Method::Frill),
            "{word} judges alike"
        );
        assert_eq!(beside(&allowed, AlsoKind::WithoutHerbicide), None);
    }
    let refused = pear("no");
    assert_eq!(
        head(&refused),
        (Outcome::OtherMethod, Method::RepeatCutting)
    );
    for method in [Method::Frill, Method::BasalBark, Method::CutStump] {
        assert_eq!(level(&refused, method), Level::RuledOut);
    }
}

#[test]
fn a_small_stem_near_a_path_is_cut_or_pulled_by_whoever_asks() {
    let small = |diameter: &str| {
        ask(&near(
            with(tree("Norway maple", diameter), json!({ "height": "20 ft" })),
            "path",
            "5 ft",
        ))
    };
    assert_eq!(head(&small("2")), (Outcome::OtherMethod, Method::PullOrDig));
    let thicker = small("2.5");
    assert_eq!(head(&thicker), (Outcome::OtherMethod, Method::CutStump));
    assert!(!thicker.headline_by_professional);
}

/// TPE2016: too small to ring. practice.md E: pulled by hand to half an inch at the base, by a lever to 2.5.
#[test]
fn a_sapling_is_pulled_in_any_month() {
    for month in 1..=12 {
        let answer = ask(&on(
            tree("Norway maple", "0.8"),
            &format!("2027-{month}-12"),
        ));
        assert_eq!(
            head(&answer),
            (Outcome::OtherMethod, Method::PullOrDig),
            "month {month}"
        );
    }
}

#[test]
fn leaving_it_is_never_at_the_head_while_another_method_stands_and_is_when_none_does() {
    for species in reference().species {
        for inches in ["0.7", "2", "4", "8", "14", "30"] {
            for date in ["2027-01-15", "2027-06-05", "2027-09-10"] {
                let answer = ask(&on(tree(species.name, inches), date));
                if answer.outcome == Outcome::CannotTell {
                    continue;
                }
                let stands = answer
                    .methods
                    .iter()
                    .any(|line| line.method != Method::LeaveIt && line.level <= Level::Possible);
                assert_eq!(
                    answer.headline_method == Method::LeaveIt,
                    !stands,
                    "{} {inches} {date}",
                    species.name
                );
            }
        }
    }
}

#[test]
fn ties_go_by_the_goal() {
    let kill = said(tree("Scots pine", "8"), "goal", "kill");
    assert_eq!(
        ask(&tree("Scots pine", "8")).headline_method,
        Method::BarkRing
    );
    assert_eq!(ask(&kill).headline_method, Method::BarkRing);
    // Under 6 in a conifer is felled, below its lowest branch.
    assert_eq!(
        head(&ask(&tree("Scots pine", "5"))),
        (Outcome::OtherMethod, Method::Fell)
    );
}

#[test]
fn within_15_percent_of_a_size_limit_the_method_on_its_other_side_is_named() {
    let near = ask(&tree("Scots pine", "6.5")).near_limit.expect("a limit");
    near_to(near.limit_mm, 152.4, 1e-9, "6 in");
    assert_eq!(near.method, Method::Fell);
    assert!(ask(&tree("Scots pine", "7")).near_limit.is_none());
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

#[test]
fn the_always_cautions_stand_with_every_ring() {
    for species in reference().species {
        let answer = ask(&tree(species.name, "14"));
        if answer.outcome != Outcome::Do {
            continue;
        }
        for id in ["HZ3", "HZ5", "LW5"] {
            let line = answer.cautions.iter().find(|line| line.id == id);
            assert!(
                line.is_some_and(|line| !line.folded),
                "{} {id}",
                species.name
            );
        }
        for line in answer
            .cautions
            .iter()
            .filter(|line| line.id.starts_with("DZ"))
        {
            assert!(!line.folded, "{} {}", species.name, line.id);
        }
    }
}
