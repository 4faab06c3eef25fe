//! Nothing nearer and nothing more is ever milder.

use crate::make::{Maker, plain_of};
use crate::support::{level, speaks};
use calc::answer::Outcome as Answered;
use calc::models::reach::ReachOutcome;
use calc::terms::method::{Level, Method};
use serde_json::{Value, json};

/// From mild to severe; what is not checked stands outside.
fn rank(outcome: ReachOutcome) -> Option<u8> {
    match outcome {
        ReachOutcome::Clear => Some(0),
        ReachOutcome::ClearPeopleOut => Some(1),
        ReachOutcome::Inside => Some(2),
        ReachOutcome::Professional => Some(3),
        ReachOutcome::Line => Some(4),
        ReachOutcome::NotChecked => None,
    }
}

fn reach(typed: &Value) -> u8 {
    let outcome = plain_of(typed).reach.outcome;
    rank(outcome).unwrap_or_else(|| panic!("not checked: {typed}"))
}

fn feet(target: &Value) -> f64 {
    let text = target["distance"].as_str().expect("a distance");
    text.trim_end_matches(" ft").parse().expect("feet")
}

#[test]
fn a_nearer_target_never_gives_a_milder_reach() {
    let mut make = Maker::new(31);
    for _ in 0..700 {
        let typed = make.listed();
        let before = reach(&typed);
        let mut nearer = typed.clone();
        let count = nearer["targets"].as_array().expect("targets").len();
        let at = make.one(&(0..count).collect::<Vec<_>>());
        let share = make.between(0.0, 1.0);
        let now = feet(&nearer["targets"][at]) * share;
        nearer["targets"][at]["distance"] = json!(format!("{now:.1} ft"));
        let after = reach(&nearer);
        assert!(
            after >= before,
            "milder by coming nearer:\n{typed}\n{nearer}"
        );
    }
}

#[test]
fn an_added_target_never_gives_a_milder_reach() {
    let mut make = Maker::new(32);
    for _ in 0..700 {
        let typed = make.listed();
        let before = reach(&typed);
        let mut more = typed.clone();
        let mut added = make.target();
        if added["distance"].is_null() {
            added["distance"] = json!("33 ft");
        }
        more["targets"].as_array_mut().expect("targets").push(added);
        assert!(
            reach(&more) >= before,
            "milder by one more:\n{typed}\n{more}"
        );
    }
}

#[test]
fn a_taller_tree_never_has_a_milder_reach() {
    let mut make = Maker::new(33);
    for _ in 0..500 {
        let mut typed = make.listed();
        let low = make.between(10.0, 90.0);
        typed["height"] = json!(format!("{low:.0} ft"));
        typed["height_confirmed"] = json!(true);
        // A height too low for the trunk is judged by a taller one, confirmed or not.
        if plain_of(&typed).height.too_low {
            continue;
        }
        let before = reach(&typed);
        let mut taller = typed.clone();
        taller["height"] = json!(format!("{:.0} ft", low + make.between(1.0, 60.0)));
        assert!(
            reach(&taller) >= before,
            "milder by being taller:\n{typed}\n{taller}"
        );
    }
}

#[test]
fn downhill_a_steeper_slope_or_a_weak_point_never_makes_it_milder() {
    let mut make = Maker::new(34);
    for _ in 0..500 {
        let typed = make.listed();
        let before = reach(&typed);
        let mut worse = typed.clone();
        if make.chance(0.5) {
            worse["targets"][0]["downhill"] = json!(true);
            worse["targets"][0]["slope"] = json!("60 %");
        } else {
            worse["signs"] = json!([make.one(&["cavity", "lean_toward", "dead_top"])]);
        }
        assert!(reach(&worse) >= before, "milder:\n{typed}\n{worse}");
    }
}

/// Leaving something out is never better than saying that it is clear.
#[test]
fn what_is_not_checked_is_never_answered_with_do() {
    let mut make = Maker::new(35);
    let mut open = 0;
    for _ in 0..900 {
        let (typed, question) = make.good();
        let answer = crate::make::plain(&question);
        if answer.reach.outcome == ReachOutcome::NotChecked {
            open += 1;
            assert_ne!(answer.outcome, Answered::Do, "{typed}");
            assert_ne!(answer.outcome, Answered::Wait, "{typed}");
        }
        if matches!(
            answer.reach.outcome,
            ReachOutcome::Professional | ReachOutcome::Line
        ) {
            assert_eq!(answer.outcome, Answered::Professional, "{typed}");
        }
        if answer.outcome == Answered::Do || answer.outcome == Answered::Wait {
            let clear = matches!(
                answer.reach.outcome,
                ReachOutcome::Clear | ReachOutcome::ClearPeopleOut
            );
            let standing = answer.headline_method.leaves_standing();
            assert!(clear || !standing, "left standing inside the zone: {typed}");
        }
    }
    assert!(open > 100, "{open}");
}

/// The line question comes first of all: while it is open no first line, no step, no row and no change offers cutting,
/// pulling, ringing or felling by the reader; what would stand without a line is folded behind it.
#[test]
fn while_the_line_question_is_open_nobody_is_told_to_work() {
    let mut make = Maker::new(37);
    let (mut open, mut stopped) = (0, 0);
    for turn in 0..2500 {
        let (mut typed, _) = make.aided();
        typed["line_within_reach"] = json!(make.one(&["cant_tell", "cant_tell", ""]));
        if make.chance(0.5) {
            typed["none_in_reach"] = json!(false);
        }
        let Ok(question) = crate::support::try_read(&typed) else {
            continue;
        };
        let answer = crate::make::plain(&question);
        if !answer.reach.line_open() {
            continue;
        }
        if answer.outcome == Answered::Professional {
            stopped += 1;
            continue;
        }
        open += 1;
        assert_eq!(
            (answer.outcome, answer.headline_method),
            (Answered::CannotTell, Method::LeaveIt),
            "{typed}"
        );
        let rows = answer.stems.iter().flat_map(|stem| &stem.methods);
        for line in answer.methods.iter().chain(rows) {
            let left = line.method == Method::LeaveIt;
            assert!(left || line.level == Level::RuledOut, "{typed}");
        }
        for also in answer.next_line.iter().chain(&answer.also) {
            assert_eq!(also.method, Method::LeaveIt, "{typed}");
        }
        for stem in &answer.stems {
            assert_eq!(stem.headline_method, Method::LeaveIt, "{typed}");
        }
        assert!(
            answer.effort.is_none() && answer.visits.is_empty(),
            "{typed}"
        );
        assert!(
            answer.near_limit.is_none() && answer.outlook.is_none(),
            "{typed}"
        );
        assert!(answer.conditional.is_some(), "{typed}");
        if turn % 25 != 0 {
            continue;
        }
        // As people read it: what stands before the fold, and behind it.
        let local = crate::make::local(&question);
        let whole = calc::answer::answer(crate::support::reference(), &question, &local);
        assert!(whole.changes.is_empty(), "{typed}");
        let mut told = whole.clone();
        told.conditional = None;
        let text = calc_view::text::answer(crate::support::reference(), &question, &told, None);
        for word in [
            "Ring this tree",
            "Use another method",
            "Who may do it: you",
            "Score two level lines",
            "pull or dig it out",
            "Fell it",
        ] {
            assert!(!text.contains(word), "{word}: {typed}\n{text}");
        }
    }
    assert!(open > 500 && stopped > 50, "{open} {stopped}");
}

#[test]
fn allowing_herbicide_removes_no_stop_and_no_caution_of_hazard_line_or_law() {
    let mut make = Maker::new(36);
    for _ in 0..700 {
        let (mut typed, _) = make.good();
        typed["herbicide"] = json!(make.one(&["no", "not_said"]));
        let before = plain_of(&typed);
        let mut allowed = typed.clone();
        allowed["herbicide"] = json!(make.one(&["licensed", "yes"]));
        let after = plain_of(&allowed);
        if before.outcome == Answered::Professional {
            assert_eq!(after.outcome, Answered::Professional, "{typed}");
        }
        assert_eq!(before.reach, after.reach, "{typed}");
        for caution in &before.cautions {
            // HZ6 is of a ringed stem. Published guidance rings tree-of-heaven and princess tree only where herbicide
            // is refused: where it is allowed nothing is ringed, and nothing can snap at a ring.
            let no_ring_now = [Method::BarkRing, Method::SawRing, Method::Frill]
                .iter()
                .all(|method| level(&after, *method) >= Level::NotAdvised);
            let ringed_only_without = caution.id == "HZ6" && no_ring_now;
            let kept = matches!(&caution.id[..2], "HZ" | "PL" | "LW") && !ringed_only_without;
            assert!(
                !kept || speaks(&after, caution.id),
                "{} is gone with herbicide: {typed}",
                caution.id
            );
        }
    }
}
