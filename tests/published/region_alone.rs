//! A state or country without a town: what is asked, what is answered, what is said. Which half of the world a country
//! lies in, and what a state is called, anyone knows; dates are those of tests/published/timing/region.rs.

use crate::support::*;
use calc::answer::{Answer, without_changes};
use calc::models::season::Local;
use calc::question::Question;
use calc::terms::place::{Hemisphere, Place};
use calc::timing::places::climate::Places;
use calc::timing::{Basis, Flag, Verdict};
use serde_json::{Value, json};
use std::sync::OnceLock;

fn all() -> &'static Places {
    static ALL: OnceLock<Places> = OnceLock::new();
    ALL.get_or_init(climate_file)
}

fn in_region(region: &str) -> Value {
    with(tree("Norway maple", "14"), json!({ "region": region }))
}

fn local_of(question: &Question, places: &Places) -> Local {
    let constants = &reference().constants.timing;
    Local::of(
        constants,
        &question.place,
        question.region.as_deref(),
        places,
    )
}

/// Asks with the climate at hand.
fn ask_with(asked: &Value) -> Answer {
    let question = question(asked);
    let local = local_of(&question, all());
    without_changes(reference(), &question, &local)
}

fn said(asked: &Value) -> String {
    calc_view::text::answer(reference(), &question(asked), &ask_with(asked), None)
}

#[test]
fn a_name_is_read_as_its_code_whatever_its_capitals() {
    for (name, code) in [
        ("Wisconsin", "US-WI"),
        ("wisconsin", "US-WI"),
        ("US-WI", "US-WI"),
        ("us-wi", "US-WI"),
        ("New Zealand", "NZ"),
        ("British Columbia", "CA-BC"),
    ] {
        assert_eq!(
            question(&in_region(name)).region.as_deref(),
            Some(code),
            "{name}"
        );
    }
}

#[test]
fn a_country_settles_the_half_of_the_world_even_against_what_was_said_of_it() {
    for (region, south) in [
        ("NZ", true),
        ("AU-VIC", true),
        ("US-WI", false),
        ("DE-BY", false),
    ] {
        for word in ["north", "south"] {
            let asked = with(
                in_region(region),
                json!({ "place": { "hemisphere": word } }),
            );
            let place = question(&asked).place;
            let half = if south {
                Hemisphere::South
            } else {
                Hemisphere::North
            };
            assert_eq!(place, Place::Hemisphere(half), "{region} {word}");
        }
    }
    // A country that the table lacks leaves it as said.
    let asked = with(
        in_region("ZA"),
        json!({ "place": { "hemisphere": "south" } }),
    );
    assert_eq!(question(&asked).place, Place::Hemisphere(Hemisphere::South));
}

#[test]
fn wisconsin_alone_gives_its_window_with_its_spread() {
    let answer = ask_with(&in_region("Wisconsin"));
    let timing = &answer.timing;
    assert_eq!(timing.basis, Some(Basis::Climate));
    assert!(timing.probability.is_some() && timing.opens.is_some());
    let region = timing.region.as_ref().expect("its places");
    assert_eq!(region.spread_days, 3.3);
    let opens = timing.opens.expect("a day");
    assert!(
        region.warm_opens < opens && opens < region.cold_opens,
        "{region:?}"
    );
    assert_eq!((timing.nearest_km, timing.table_missing), (None, false));
    assert!(
        answer.assumed.iter().all(|it| it.field != "place"),
        "{:?}",
        answer.assumed
    );
    let text = said(&in_region("Wisconsin"));
    for words in [
        &region.middle,
        &region.warm,
        &region.cold,
        "in the middle of Wisconsin",
    ] {
        assert!(text.contains(words), "{words} is missing in:\n{text}");
    }
}

#[test]
fn no_place_was_given_is_never_said_after_a_state_or_country_was_chosen() {
    for region in [
        "US-WI", "US-NV", "US-AK", "US", "CA-YT", "NZ", "NO", "JP", "ZA",
    ] {
        for species in [
            "Norway maple",
            "Scots pine",
            "northern red oak",
            "English holly",
        ] {
            let asked = with(tree(species, "14"), json!({ "region": region }));
            for answer in [ask_with(&asked), ask_plain(&asked)] {
                let flags = &answer.timing.flags;
                assert!(
                    !flags.contains(&Flag::NoPlace),
                    "{species} {region}: {flags:?}"
                );
            }
            assert!(
                !said(&asked).contains("No place was given"),
                "{species} {region}"
            );
        }
    }
    let nowhere = ask_with(&with(tree("Norway maple", "14"), json!({ "region": null })));
    assert!(nowhere.timing.flags.contains(&Flag::NoPlace));
}

#[test]
fn nevada_has_the_months_of_the_north_and_new_zealand_its_own_window_in_november() {
    let nevada = ask_with(&in_region("US-NV"));
    assert!(nevada.timing.flags.contains(&Flag::RegionTooWide));
    assert_eq!(
        (nevada.timing.verdict, nevada.timing.probability),
        (Verdict::TestFirst, None)
    );
    let asked = with(in_region("NZ"), json!({ "date": "2027-11-15" }));
    let zealand = ask_with(&asked);
    assert_eq!(zealand.timing.verdict, Verdict::Best);
    let june = ask_with(&in_region("NZ"));
    assert!(june.asked_probability.expect("a number") < 0.05);
}

/// Where the file of the climate is not at hand it is asked for by a state too.
#[test]
fn a_state_without_the_climate_at_hand_says_that_the_table_is_missing() {
    let question = question(&in_region("US-WI"));
    let local = local_of(&question, &Places::default());
    assert!(local.table_missing);
    let answer = without_changes(reference(), &question, &local);
    assert!(answer.timing.flags.contains(&Flag::RegionWithoutDates));
    let bare = with(tree("Norway maple", "14"), json!({ "region": null }));
    let question = crate::support::question(&bare);
    let local = local_of(&question, &Places::default());
    assert!(
        !local.table_missing,
        "nothing to fetch for half of the world"
    );
}

/// Leaf-out seen at the tree does not depend on where in its state it stands.
#[test]
fn a_leaf_out_seen_here_takes_the_spread_of_the_state_away() {
    let seen = with(
        in_region("US-CO"),
        json!({ "leafed_out": { "stage": "buds_open", "date": "2027-04-24" } }),
    );
    let with_it = ask_with(&seen);
    assert_eq!(with_it.timing.basis, Some(Basis::ObservedHere));
    assert!(with_it.timing.region.is_none());
    let joined = |a: f64, b: f64| (a * a + b * b).sqrt();
    let open = with_it.timing.sd_open.expect("a spread");
    near_to(open, joined(4.0, 6.0), 1e-9, "seen here");
    let without = ask_with(&in_region("US-CO"))
        .timing
        .sd_open
        .expect("a spread");
    assert!(without > open + 8.0, "{without}");
}

/// Wisconsin's oaks must not be wounded from April to July (oak_wilt_regions.csv), when alone their bark slips.
#[test]
fn a_line_beside_names_its_stretch_and_december_s_reason_is_the_closed_months() {
    let oak = |date: &str| {
        with(
            tree("northern red oak", "12 in"),
            json!({ "region": "US-WI", "date": date }),
        )
    };
    let summer = said(&oak("2027-07-20"));
    let line = "Without herbicide: fell it (by a professional, possible), August to October 2027.";
    assert!(summer.contains(line), "{summer}");
    let december = said(&oak("2027-12-10"));
    let why = "Oaks must not be wounded here from 1 April to 31 July, and the bark slips at no other time.";
    assert!(december.contains(why), "{december}");
    assert!(!december.contains("No ring here"), "said twice: {december}");
}
