//! The days on which a plan may ring a tree are those on which the single answer rings it.

use crate::make::{Maker, local};
use crate::support::reference;
use calc::answer::{Outcome, ring_days, without_changes};
use calc::question::Day;
use chrono::{Days, NaiveDate};
use rand::Rng;

/// Trees asked.
const TREES: usize = 2000;
/// Days asked of each: a day in ten or so, over three quarters of a year.
const DAYS: u64 = 24;

/// Compares the program with itself: what is settled once for many days against one question a day.
#[test]
fn the_days_of_a_ring_are_those_of_one_answer_a_day() {
    let mut make = Maker::new(67);
    let (mut rings, mut none, mut some_not_all) = (0, 0, 0);
    for tree in 0..TREES {
        let (typed, mut question) = make.good();
        let first = NaiveDate::from_ymd_opt(2027, 1 + (tree % 12) as u32, 1).expect("a day");
        let days: Vec<NaiveDate> = (0..DAYS)
            .map(|k| first + Days::new(k * 11 + make.0.random_range(0..11)))
            .collect();
        let local = local(&question);
        let found = ring_days(reference(), &question, &local, &days);
        question.cannot_wait = true;
        // One day in three is asked singly: the rest costs a minute and found nothing.
        for (day, found) in days.iter().zip(&found).skip(tree % 3).step_by(3) {
            question.day = Day::On(*day);
            let answer = without_changes(reference(), &question, &local);
            let rings = answer.outcome == Outcome::Do;
            assert_eq!(found.is_some(), rings, "on {day}: {typed}");
            if let (Some(found), Some(p)) = (found, answer.asked_probability) {
                assert_eq!(*found, p, "on {day}: {typed}");
            }
        }
        let ringed = found.iter().flatten().count();
        rings += ringed;
        none += usize::from(ringed == 0);
        some_not_all += usize::from(ringed > 0 && ringed < found.len());
    }
    assert!(
        rings > 2000 && none > 500 && some_not_all > 200,
        "{rings} rings; {none} trees with none, {some_not_all} with some"
    );
}
