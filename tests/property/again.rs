//! What an answer says of another day, distance or size holds when that is asked.

use crate::make::{Maker, local, on_day, plain, plain_of};
use crate::support::{reference, tree, with};
use calc::answer::{Answer, Changed, Outcome, answer};
use calc::question::{Day, Question};
use calc::terms::method::Method;
use calc::terms::quantity::{Dbh, TargetDistance, TotalHeight};
use calc::terms::tree::{Herbicide, TargetKind};
use serde_json::json;

#[test]
fn the_day_that_a_wait_names_answers_with_do_or_with_its_method_on_that_day() {
    let mut make = Maker::new(61);
    let (mut rings, mut others) = (0, 0);
    for _ in 0..2500 {
        let (typed, question) = make.good();
        let first = plain(&question);
        if first.outcome != Outcome::Wait {
            continue;
        }
        let day = first.advised_day.expect("a day");
        let start = question.day.start();
        assert!(
            day > start && (day - start).num_days() <= 366,
            "{day}: {typed}"
        );
        let then = on_day(&question, day);
        let again = plain(&then);
        assert_eq!(again.advised_day, Some(day), "{typed}");
        assert_eq!(
            again.headline_method, first.headline_method,
            "on {day}: {typed}"
        );
        if first.headline_method == Method::BarkRing {
            rings += 1;
            assert_eq!(again.outcome, Outcome::Do, "on {day}: {typed}");
            assert_eq!(again.effort, first.effort, "{typed}");
            assert_eq!(again.visits, first.visits, "{typed}");
        } else {
            others += 1;
            // Where nothing stands today whatever is near, what is near may still decide on that day.
            let open = again.outcome == Outcome::CannotTell
                && again.reach.outcome == calc::models::reach::ReachOutcome::NotChecked;
            assert!(
                open || again.outcome == Outcome::OtherMethod,
                "on {day}: {typed}"
            );
        }
    }
    assert!(rings > 60 && others > 5, "{rings} rings, {others} others");
}

/// The question with one change made, as the change says it.
fn changed(question: &Question, change: &Changed) -> Question {
    let mut other = question.clone();
    let counts = |kind: TargetKind| !matches!(kind, TargetKind::Fence | TargetKind::KeepTree);
    match *change {
        Changed::Date { to } => other.day = Day::On(to),
        Changed::Distance { to_m } => {
            let all = question
                .tree
                .targets
                .iter()
                .filter(|target| counts(target.kind));
            let distances = all.filter_map(|target| target.distance.map(TargetDistance::m));
            let nearest = distances.fold(f64::INFINITY, f64::min);
            for target in other
                .tree
                .targets
                .iter_mut()
                .filter(|target| counts(target.kind))
            {
                // Farther: all that stood nearer; nearer: what was nearest.
                let moves = target.distance.is_some_and(|distance| {
                    if to_m > nearest {
                        distance.m() < to_m
                    } else {
                        distance.m() == nearest
                    }
                });
                if moves {
                    target.distance = TargetDistance::new(to_m);
                }
            }
        }
        Changed::Height { to_m } => {
            other.tree.height = TotalHeight::new(to_m);
            other.tree.height_confirmed = true;
        }
        Changed::Herbicide { allowed } => {
            other.tree.herbicide = if allowed {
                Herbicide::Licensed
            } else {
                Herbicide::No
            };
        }
        Changed::WholeClone { to } => other.tree.whole_clone = Some(to),
        Changed::Diameter { to_mm } => {
            let largest = question.tree.heading().dbh;
            for stem in other
                .tree
                .stems
                .iter_mut()
                .filter(|stem| stem.dbh == largest)
            {
                stem.dbh = Dbh::new(to_mm).expect("a size in range");
            }
        }
    }
    other
}

#[test]
fn every_change_that_an_answer_names_flips_it_as_it_says() {
    let mut make = Maker::new(62);
    let mut kinds = [0_usize; 6];
    for _ in 0..450 {
        let (typed, question) = make.good();
        let first = answer(reference(), &question, &local(&question));
        for change in &first.changes {
            let kind = match change.changed {
                Changed::Date { .. } => 0,
                Changed::Distance { .. } => 1,
                Changed::Height { .. } => 2,
                Changed::Herbicide { .. } => 3,
                Changed::WholeClone { .. } => 4,
                Changed::Diameter { .. } => 5,
            };
            kinds[kind] += 1;
            let then = plain(&changed(&question, &change.changed));
            assert_eq!(
                (then.outcome, then.headline_method),
                (change.outcome, change.headline_method),
                "{:?}: {typed}",
                change.changed
            );
            assert!(
                then.outcome != first.outcome || then.headline_method != first.headline_method,
                "{:?} changes nothing: {typed}",
                change.changed
            );
        }
    }
    assert!(kinds.iter().all(|count| *count > 3), "{kinds:?}");
}

/// The answer under an open condition is the one that is given when the condition is said to hold.
#[test]
fn the_answer_if_the_whole_clone_can_be_ringed_is_the_one_given_when_it_is_said() {
    let mut make = Maker::new(63);
    let mut compared = 0;
    for _ in 0..300 {
        let name = make.one(&[
            "Populus tremuloides",
            "Robinia pseudoacacia",
            "Populus alba",
        ]);
        let mut typed = make.about(name);
        typed["whole_clone"] = serde_json::json!("not_said");
        let Ok(question) = crate::support::try_read(&typed) else {
            continue;
        };
        let open = plain(&question);
        let Some(settled) = &open.conditional else {
            continue;
        };
        if settled.condition != "whole_clone" {
            continue;
        }
        let mut said = question.clone();
        said.tree.whole_clone = Some(true);
        let told = plain(&said);
        compared += 1;
        assert_eq!(told.outcome, settled.answer.outcome, "{typed}");
        assert_eq!(
            told.headline_method, settled.answer.headline_method,
            "{typed}"
        );
        assert_eq!(told.advised_day, settled.answer.advised_day, "{typed}");
    }
    assert!(compared > 20, "{compared}");
}

/// What is said of the other side of a size limit is so when it is asked: one stem, on the day asked about.
#[test]
fn the_other_side_of_a_size_limit_has_the_method_that_is_named() {
    let sizes = [
        "0.95", "1.1", "2.3", "2.7", "3.8", "4.3", "5.5", "6", "6.5", "9", "10", "11",
    ];
    let (mut met, mut wrong) = (0, Vec::new());
    for (turn, species) in reference().species.iter().enumerate() {
        for (step, size) in sizes.iter().enumerate() {
            let herbicide = ["not_said", "no", "licensed"][(turn + step) % 3];
            let goal = ["wildlife", "kill"][(turn + step / 3) % 2];
            let date = ["2027-05-25", "2027-11-20", "2027-03-10"][(turn + step / 2) % 3];
            let typed = with(
                tree(species.scientific, size),
                json!({ "herbicide": herbicide, "goal": goal, "date": date, "line_within_reach": "no", "height": "30 ft",
                    "height_confirmed": true, "whole_clone": "yes" }),
            );
            let answer = plain_of(&typed);
            let Some(near) = answer.near_limit else {
                continue;
            };
            let step = if near.over { 1.002 } else { 0.998 };
            let other = format!("{:.2} mm", near.limit_mm * step);
            let then = plain_of(&with(
                typed.clone(),
                json!({ "stems": [{ "diameter": other }] }),
            ));
            let settled =
                |answer: &Answer| matches!(answer.outcome, Outcome::Do | Outcome::OtherMethod);
            if !settled(&answer) || !settled(&then) {
                continue;
            }
            met += 1;
            if then.headline_method != near.method {
                wrong.push(format!("{near:?} is {:?}: {typed}", then.headline_method));
            }
        }
    }
    assert!(met > 100, "{met}");
    assert!(
        wrong.is_empty(),
        "{} of {met}\n{}",
        wrong.len(),
        wrong.join("\n")
    );
}
