//! Facts of the trade: common practice, no source. What everyone who rings trees says, held against the answers.

use crate::support::*;
use calc::answer::{Answer, Outcome, answer};
use calc::models::at_visit::{Act, RingJudged, Seen, advise};
use calc::models::season::Local;
use calc::models::visits::VisitKind;
use calc::terms::day::iso;
use calc::terms::method::{Level, Method};
use calc::terms::place::Hemisphere;
use calc::timing::Verdict;
use calc::timing::places::climate::Places;
use chrono::{Datelike, NaiveDate};
use serde_json::{Value, json};

/// The answer as people read it.
fn text(asked: &Value) -> String {
    calc_view::text::answer(reference(), &question(asked), &ask(asked), None)
}

/// Asks of a tree in Boston, with the climate of the place.
fn in_boston(name: &str, date: &str, places: &Places) -> Answer {
    let place = json!({ "latitude": "42.36", "longitude": "-71.06", "elevation": "15 m" });
    let asked = question(&with(
        tree(name, "14"),
        json!({ "place": place, "date": date }),
    ));
    let local = Local::of(
        &reference().constants.timing,
        &asked.place,
        asked.region.as_deref(),
        places,
    );
    answer(reference(), &asked, &local)
}

#[test]
fn a_ring_is_at_least_6_in_all_the_way_round_waist_to_chest_high_on_a_smooth_stretch() {
    let asked = tree("Siberian elm", "8");
    let ring = ask(&asked).stems[0].ring.clone().expect("a ring");
    assert!(ring.at_least_mm >= 150.0);
    let text = text(&asked);
    for words in ["6 in", "3 to 4½ ft", "smooth stretch", "all the way round"] {
        assert!(text.contains(words), "{words} is missing in:\n{text}");
    }
}

#[test]
fn no_live_branch_stays_below_the_ring() {
    for limbs in ["none", "some", "many"] {
        let asked = with(tree("Siberian elm", "8"), json!({ "limbs": limbs }));
        let text = text(&asked);
        assert!(text.contains("below the lowest live branch"), "{limbs}");
        assert!(
            text.contains("Cut every branch and green shoot below the ring"),
            "{limbs}"
        );
    }
}

#[test]
fn the_bark_comes_off_to_the_sapwood_and_the_sapwood_stays_unharmed() {
    let asked = tree("Norway maple", "14");
    let text = text(&asked);
    assert!(text.contains("through the bark only"));
    assert!(text.contains("Scrape"));
    // A cut into the wood is another method, and never stands above the ring.
    let answer = ask(&asked);
    assert!(level(&answer, Method::SawRing) > level(&answer, Method::BarkRing));
}

#[test]
fn without_a_place_bark_peels_from_late_winter_to_early_summer_and_not_in_autumn_or_early_winter() {
    for (month, slips) in [
        (3, true),
        (4, true),
        (5, true),
        (6, true),
        (9, false),
        (10, false),
        (11, false),
        (12, false),
    ] {
        let asked = with(
            tree("Norway maple", "14"),
            json!({ "date": format!("2027-{month}-15") }),
        );
        let answer = ask(&asked);
        let verdict = answer.asked_verdict.expect("a verdict");
        assert_eq!(
            verdict == Verdict::TestFirst,
            slips,
            "month {month}: {verdict:?}"
        );
        if !slips {
            assert_ne!(answer.outcome, Outcome::Do, "month {month}");
        }
    }
}

#[test]
fn in_boston_bark_peels_in_spring_begins_to_bind_in_summer_and_is_bound_in_autumn_and_early_winter()
{
    let places = climate_file();
    for name in ["Norway maple", "Siberian elm", "Scots pine"] {
        let p = |date: &str| {
            let answer = in_boston(name, date, &places);
            answer.asked_probability.expect("a probability")
        };
        assert!(p("2027-05-25") >= 0.8, "{name} in late May");
        for autumn in ["2027-10-01", "2027-11-01", "2027-12-01", "2027-12-31"] {
            assert!(p(autumn) < 0.1, "{name} {autumn}");
        }
        assert!(
            p("2027-08-01") < p("2027-06-01"),
            "{name} binds over the summer"
        );
    }
    // "Binds by early summer" holds for ring-porous trees; conifers stay open longer (practice.md C2, C9).
    let ring = in_boston("Siberian elm", "2027-07-10", &places);
    let conifer = in_boston("Scots pine", "2027-07-10", &places);
    assert!(
        ring.asked_probability < Some(0.5),
        "{:?}",
        ring.asked_probability
    );
    assert!(
        conifer.asked_probability > Some(0.5),
        "{:?}",
        conifer.asked_probability
    );
}

#[test]
fn death_takes_one_or_two_growing_seasons_small_trees_sooner_and_large_ones_often_leaf_out_once_more()
 {
    let likely = |name: &str, inches: &str, season: usize| {
        let outlook = ask(&tree(name, inches)).outlook.expect("an outlook");
        let share = outlook.seasons[season - 1].share;
        share.likely.unwrap_or((share.low + share.high) / 2.0)
    };
    for name in ["Siberian elm", "Scots pine", "European beech"] {
        for inches in ["5", "8", "16"] {
            assert!(
                likely(name, inches, 1) <= likely(name, inches, 2),
                "{name} {inches}"
            );
            assert!(
                likely(name, inches, 2) <= likely(name, inches, 3),
                "{name} {inches}"
            );
        }
        for season in 1..=3 {
            assert!(
                likely(name, "5", season) >= likely(name, "16", season),
                "{name} season {season}"
            );
        }
        // Large ones leaf out once more: fewer than half are dead after the first season.
        assert!(likely(name, "16", 1) < 50.0, "{name}");
        assert!(likely(name, "5", 3) >= 50.0, "{name}");
    }
}

#[test]
fn sprouts_below_the_ring_come_off_in_the_second_year_too() {
    let answer = ask(&tree("Norway maple", "14"));
    let advised = answer.advised_day.expect("a day");
    let first = answer.visits.first().expect("a visit");
    assert_eq!(first.kind, VisitKind::Recheck);
    let weeks = (first.from - advised).num_days()..=(first.to - advised).num_days();
    assert_eq!(weeks, 14..=42, "two to six weeks on");
    let second: Vec<_> = answer
        .visits
        .iter()
        .filter(|visit| visit.kind == VisitKind::Sprouts && visit.season == 2)
        .collect();
    assert_eq!(second.len(), 3, "late spring, midsummer, early autumn");
    assert!(second.iter().all(|visit| visit.from.year() == 2028));
    let day = NaiveDate::from_ymd_opt(2028, 7, 10).expect("a day");
    let advice = advise(
        &reference().constants.visits,
        advised,
        day,
        &answer.visits,
        &[Seen::Sprouts],
        Hemisphere::North,
    )
    .expect("advice");
    assert!(advice.acts.contains(&Act::TakeSprouts));
}

#[test]
fn new_bark_across_the_ring_comes_off_and_is_looked_at_again_within_six_weeks() {
    let answer = ask(&tree("Norway maple", "14"));
    let ringed = answer.advised_day.expect("a day");
    let day = NaiveDate::from_ymd_opt(2027, 7, 1).expect("a day");
    let advice = advise(
        &reference().constants.visits,
        ringed,
        day,
        &answer.visits,
        &[Seen::Bridge],
        Hemisphere::North,
    )
    .expect("advice");
    assert!(advice.acts.contains(&Act::ReopenBridge));
    let back = advice.come_back.expect("a day");
    assert!((1..=42).contains(&(back - day).num_days()), "{}", iso(back));
}

#[test]
fn a_full_crown_in_the_first_summer_is_no_failure_and_in_the_third_it_is() {
    let answer = ask(&tree("Norway maple", "14"));
    let ringed = answer.advised_day.expect("a day");
    let judged = |year: i32| {
        let day = NaiveDate::from_ymd_opt(year, 7, 10).expect("a day");
        advise(
            &reference().constants.visits,
            ringed,
            day,
            &answer.visits,
            &[Seen::CrownFull],
            Hemisphere::North,
        )
        .expect("advice")
        .judged
    };
    assert_eq!(judged(2027), RingJudged::TooSoon);
    assert_eq!(judged(2028), RingJudged::TooSoon);
    assert_eq!(judged(2029), RingJudged::Failed);
}

#[test]
fn every_trunk_is_ringed_or_all_but_one_to_keep_the_tree_alive() {
    let stems = json!([{ "diameter": "8" }, { "diameter": "11" }, { "diameter": "6" }]);
    let all = with(tree("Norway maple", "1"), json!({ "stems": stems }));
    assert!(ask(&all).stems.iter().all(|stem| stem.ring.is_some()));
    assert!(text(&all).contains("Do the same on each of the"));
    let but_one = with(all, json!({ "goal": "spare_one", "spare": 1 }));
    let ringed: Vec<bool> = ask(&but_one)
        .stems
        .iter()
        .map(|stem| stem.ring.is_some())
        .collect();
    assert_eq!(ringed, [true, false, true]);
    assert!(text(&but_one).contains("Leave stem 2 alone"));
}

#[test]
fn where_part_of_the_bark_is_dead_only_the_live_part_is_taken() {
    let share = |live: &str| {
        let stems = json!([{ "diameter": "14", "live_share": live }]);
        ask(&with(
            tree("Norway maple", "1"),
            json!({ "stems": stems, "walk": "0" }),
        ))
    };
    let (whole, half) = (share("100 %"), share("50 %"));
    let area = |answer: &Answer| answer.stems[0].ring.as_ref().expect("a ring").area_mm2;
    near_to(area(&half), area(&whole) / 2.0, 1e-6, "bark taken off");
    let minutes = |answer: &Answer| answer.effort.as_ref().expect("minutes").likely_min;
    assert!(minutes(&half) < minutes(&whole));
    let asked = with(
        tree("Norway maple", "1"),
        json!({ "stems": [{ "diameter": "14", "live_share": "50 %" }] }),
    );
    assert!(text(&asked).contains("Peel off the live bark"));
}

#[test]
fn thick_bark_needs_a_mallet_and_more_minutes() {
    let barked = |bark: &str| {
        let stems = json!([{ "diameter": "14", "bark": bark }]);
        with(tree("Norway maple", "1"), json!({ "stems": stems }))
    };
    let (thin, thick) = (barked("0.2 in"), barked("1.2 in"));
    assert!(text(&thick).contains("mallet"));
    assert!(!text(&thin).contains("mallet"));
    let minutes = |asked: &Value| ask(asked).effort.expect("minutes").likely_min;
    assert!(minutes(&thick) > minutes(&thin));
}

#[test]
fn species_that_sucker_may_answer_with_more_stems() {
    for name in ["black locust", "quaking aspen", "white poplar"] {
        let asked = with(tree(name, "8"), json!({ "whole_clone": "yes" }));
        let answer = ask(&asked);
        assert!(
            answer.outlook.expect("an outlook").stem_only,
            "{name}: the roots live on"
        );
        let part = ask(&with(tree(name, "8"), json!({ "whole_clone": "no" })));
        assert!(
            level(&part, Method::BarkRing) >= Level::NotAdvised,
            "{name}, part of it left"
        );
        assert!(
            level(&part, Method::Fell) >= Level::NotAdvised,
            "{name}: felling makes it sucker"
        );
    }
}

#[test]
fn a_tree_is_never_ringed_near_structures_or_where_people_often_are() {
    for kind in ["building", "road", "path", "line", "property_line"] {
        for inches in ["4", "8", "14", "30"] {
            let asked = near(tree("Norway maple", inches), kind, "20 ft");
            let answer = ask(&asked);
            for method in [
                Method::BarkRing,
                Method::SawRing,
                Method::Frill,
                Method::BasalBark,
            ] {
                assert_eq!(
                    level(&answer, method),
                    Level::RuledOut,
                    "{kind} {inches} {method:?}"
                );
            }
            assert!(answer.effort.is_none() && answer.outlook.is_none());
            assert!(
                !text(&asked).contains("Score two level lines"),
                "no procedure is shown"
            );
        }
    }
}
