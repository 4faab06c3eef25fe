//! Waiting: for the bark, for a month, or not at all.

use super::{beside, day, head, on, said};
use crate::support::*;
use calc::answer::{AlsoKind, Outcome};
use calc::terms::method::Method;
use serde_json::json;

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

/// RUTGERS: herbicide suits tree-of-heaven from mid July to mid October. S20, S24: cut alive it suckers.
#[test]
fn tree_of_heaven_is_never_told_to_be_cut_alive_and_waits_for_its_months() {
    for (date, until) in [
        ("2027-06-15", "2027-07-15"),
        ("2027-10-16", "2028-07-15"),
        ("2027-12-16", "2028-07-15"),
    ] {
        let answer = ask(&on(tree("tree-of-heaven", "8"), date));
        assert_eq!(head(&answer), (Outcome::Wait, Method::Frill), "{date}");
        assert_eq!(day(&answer), until, "{date}");
        assert_eq!(
            answer
                .advised_to
                .map(calc::terms::day::iso)
                .map(|to| to[5..].to_owned()),
            Some("10-15".to_owned())
        );
        assert_eq!(answer.waits_for, Some("heaven_out_of_season"));
        // The ring is refused by the species, not by the place.
        assert_eq!(beside(&answer, AlsoKind::NoRingHere), None);
        let today = answer.next_line.expect("today's in the next line");
        assert_eq!(today.kind, AlsoKind::Today);
    }
    for inches in ["0.3", "0.8", "2", "4", "6", "8", "12", "30"] {
        for month in 1..=12 {
            for herbicide in ["not_said", "no", "licensed"] {
                let asked = said(tree("tree-of-heaven", inches), "herbicide", herbicide);
                let answer = ask_plain(&on(asked, &format!("2027-{month}-10")));
                let named = answer.next_line.iter().chain(&answer.also);
                let named = named.map(|also| also.method);
                for method in named.chain([answer.headline_method]) {
                    let cut = matches!(
                        method,
                        Method::CutStump | Method::Fell | Method::RepeatCutting
                    );
                    assert!(!cut, "{inches} {month} {herbicide}: {method:?}");
                }
            }
        }
    }
}

/// S05, S14: cutting alone multiplies what suckers. It heads only where herbicide is refused and nothing else stands.
#[test]
fn cutting_alone_heads_for_no_suckering_species_while_anything_else_stands() {
    use calc::terms::species::SproutVigor;
    let mut last_resort = 0;
    for species in reference().species {
        if species.suckering != SproutVigor::Strong
            || species.group == calc::terms::species::Group::Monocot
        {
            continue;
        }
        for inches in ["0.7", "2", "4", "8", "9.5"] {
            for herbicide in ["not_said", "no", "licensed"] {
                for (whole, date) in [
                    ("no", "2027-06-05"),
                    ("yes", "2027-09-10"),
                    ("no", "2027-12-01"),
                ] {
                    let asked = with(
                        said(tree(species.name, inches), "herbicide", herbicide),
                        json!({ "whole_clone": whole, "date": date, "cannot_wait": true }),
                    );
                    let answer = ask_plain(&asked);
                    if !matches!(answer.headline_method, Method::RepeatCutting | Method::Fell) {
                        continue;
                    }
                    last_resort += 1;
                    assert_eq!(herbicide, "no", "{} {inches} {date}", species.name);
                    let others = answer.methods.iter().filter(|line| {
                        !matches!(
                            line.method,
                            Method::RepeatCutting | Method::Fell | Method::LeaveIt
                        )
                    });
                    for line in others {
                        assert!(line.level > calc::terms::method::Level::Possible, "{asked}");
                    }
                }
            }
        }
    }
    assert!(last_resort > 10, "{last_resort}");
}

/// S51, S54: fresh pine breeds beetles from March to September; logs go or are peeled within three weeks.
#[test]
fn pine_felled_beside_living_pines_in_the_beetles_months_is_taken_away_or_peeled() {
    use calc::models::provisos::Proviso;
    let pine = |inches: &str, date: &str| {
        let asked = said(tree("Scots pine", inches), "same_genus_near", "yes");
        on(asked, date)
    };
    let asked = pine("8", "2027-06-12");
    let answer = ask(&asked);
    assert_eq!(head(&answer), (Outcome::OtherMethod, Method::Fell));
    assert!(answer.provisos.contains(&Proviso::TakeAwayOrPeel));
    let text = calc_view::text::answer(reference(), &question(&asked), &answer, None);
    assert!(text.contains("peel it within three weeks, or wait for October"));
    assert!(!text.contains("log on the ground") && !text.contains("Keep wood where it falls"));
    let small = ask(&pine("4", "2027-06-12"));
    assert_eq!(head(&small), (Outcome::Wait, Method::Fell));
    assert_eq!(day(&small), "2027-10-01");
    assert!(small.next_line.is_some_and(|today| today.take_away_or_peel));
    let october = ask(&pine("8", "2027-10-12"));
    assert!(!october.provisos.contains(&Proviso::TakeAwayOrPeel));
}

/// Common practice, no source: a margin of a week before a closed month and before the end of the window (the week is
/// our own assumption). No day stands alone.
#[test]
fn a_day_that_is_named_lies_a_week_before_a_closed_month_and_before_the_end_of_the_window() {
    let places = climate_file();
    let mut named = 0;
    for species in reference().species {
        for (place, region) in [
            (Some(("43.07", "-89.40")), "US-WI"),
            (Some(("42.28", "-83.74")), "US-MI"),
            (None, "US-TX"),
            (Some(("51.5", "-0.1")), "GB"),
        ] {
            for date in ["2027-02-10", "2027-07-20", "2027-11-20"] {
                let mut asked = with(
                    tree(species.name, "12"),
                    json!({ "region": region, "date": date, "whole_clone": "yes" }),
                );
                if let Some((latitude, longitude)) = place {
                    asked["place"] = json!({ "latitude": latitude, "longitude": longitude });
                }
                let asked = question(&asked);
                let local = calc::models::season::Local::of(
                    &reference().constants.timing,
                    &asked.place,
                    asked.region.as_deref(),
                    &places,
                );
                let answer = calc::answer::without_changes(reference(), &asked, &local);
                if answer.outcome != Outcome::Wait {
                    continue;
                }
                named += 1;
                let from = answer.advised_day.expect("a day");
                let Some(to) = answer.advised_to else {
                    continue;
                };
                assert!(to > from, "{} {region} {date}: one day alone", species.name);
                for day in [from, to] {
                    for by in 0..7 {
                        let day = day + chrono::Days::new(by);
                        for rule in answer.rules.iter().filter(|rule| rule.closes) {
                            use chrono::Datelike;
                            let md = (day.month() as u8, day.day() as u8);
                            let inside = rule.from_md <= md && md <= rule.to_md;
                            assert!(!inside, "{} {region} {date}: {day}", species.name);
                        }
                        if answer.headline_method == Method::BarkRing {
                            let mut then = asked.clone();
                            then.day = calc::question::Day::On(day);
                            let then = calc::answer::without_changes(reference(), &then, &local);
                            assert_eq!(head(&then), (Outcome::Do, Method::BarkRing), "{day}");
                        }
                    }
                }
            }
        }
    }
    assert!(named > 300, "{named}");
}

/// The months of oak wilt close a stretch, or the answer rests on their not being there; never both.
#[test]
fn an_oak_without_a_state_is_shown_no_window_under_a_closed_month() {
    for region in [None, Some("US")] {
        let asked = with(
            tree("northern red oak", "14"),
            json!({ "date": "2027-06-12", "region": region }),
        );
        let answer = ask(&asked);
        assert_eq!(answer.outcome, Outcome::CannotTell, "{region:?}");
        let closes = |answer: &calc::answer::Answer| {
            let oak =
                |rule: &&calc::models::season::Rules| rule.topic == calc::timing::Topic::OakWilt;
            answer.rules.iter().find(oak).expect("told").closes
        };
        assert!(closes(&answer));
        assert_eq!(answer.timing.next_good, None);
        let without = &answer
            .conditional
            .as_ref()
            .expect("an answer if it is so")
            .answer;
        assert!(!closes(without));
        assert!(without.timing.next_good.is_some());
    }
}

/// A dry spell of this summer does not shorten the season that the answer waits for.
#[test]
fn the_season_waited_for_is_not_shortened_by_this_summer_s_dry_spell() {
    let asked = with(
        tree("Norway maple", "14"),
        json!({ "date": "2027-07-25", "leafed_out": { "stage": "buds_open", "date": "2027-04-30" } }),
    );
    let (plain, dry) = (ask(&asked), ask(&said(asked.clone(), "dry_spell", "month")));
    assert_eq!((plain.outcome, dry.outcome), (Outcome::Wait, Outcome::Wait));
    assert_eq!(plain.timing.closes, dry.timing.closes);
    assert!(plain.asked_probability > dry.asked_probability);
}

/// Own rule: a better method is worth waiting for, one that stands no higher is not.
#[test]
fn in_a_year_what_stands_today_is_not_put_off_for_what_stands_no_higher() {
    for today in ["2027-03-02", "2027-09-02"] {
        let asked = with(
            near(tree("common buckthorn", "4"), "path", "15 ft"),
            json!({ "height": "22 ft", "height_confirmed": true, "herbicide": "no", "date": "year",
                "today": today }),
        );
        let answer = ask(&asked);
        assert_eq!(head(&answer), (Outcome::OtherMethod, Method::RepeatCutting));
        assert_eq!(day(&answer), today);
    }
    for (today, best) in [("2027-03-02", "2027-07-15"), ("2027-12-02", "2028-07-15")] {
        let answer = ask(&with(
            tree("tree-of-heaven", "8"),
            json!({ "date": "year", "today": today }),
        ));
        assert_eq!(head(&answer), (Outcome::OtherMethod, Method::Frill));
        assert_eq!(day(&answer), best);
    }
}

/// Own rule: a stem over the size that a group leaves to volunteers is a professional's on the day that was asked about;
/// the months that the method would have waited for are then nobody's reason.
#[test]
fn a_professional_s_stem_waits_for_no_month() {
    let mut asked = question(&on(tree("tree-of-heaven", "8"), "2027-06-15"));
    asked.tree.tighten.volunteers_mm = Some(100.0);
    let answer =
        calc::answer::without_changes(reference(), &asked, &calc::models::season::Local::default());
    assert_eq!(answer.outcome, Outcome::Professional);
    assert_eq!(
        (day(&answer), answer.waits_for),
        ("2027-06-15".into(), None)
    );
}

/// Own rule: of what keeps a method from the asked day alone the worst is the reason for the wait: in March the months of oak
/// wilt stand before the sap that washes herbicide out.
#[test]
fn a_wait_names_the_worst_of_what_ends_with_it() {
    let asked = with(
        on(tree("white oak", "3"), "2027-03-08"),
        json!({ "herbicide": "licensed", "region": "US-TX" }),
    );
    let answer = ask(&asked);
    assert_eq!(head(&answer), (Outcome::Wait, Method::CutStump));
    assert_eq!(answer.waits_for, Some("oak_wilt_months"));
}

/// What the later day has as well is no reason to wait: Amur maple sprouts from below the ring in every month, and in
/// January its bark does not slip.
#[test]
fn a_wait_does_not_name_what_stands_on_the_later_day_as_well() {
    let maple = with(
        on(tree("Amur maple", "19"), "2027-01-14"),
        json!({ "goal": "kill", "herbicide": "no", "region": "US-WI" }),
    );
    let answer = ask(&maple);
    assert_eq!(head(&answer), (Outcome::Wait, Method::BarkRing));
    assert_eq!(answer.waits_for, Some("bark_not_slipping"));
    let oak = with(
        on(tree("northern red oak", "20"), "2027-05-26"),
        json!({ "region": "US-PA" }),
    );
    assert_eq!(ask(&oak).waits_for, Some("oak_wilt_months"));
}

/// Own rule: of two that are as bad the first row of the table is named. In March sap washes herbicide out of a frill, and it is
/// not yet the season of tree-of-heaven: both rule it out alike.
#[test]
fn of_two_reasons_to_wait_that_are_as_bad_the_first_is_named() {
    let asked = with(
        on(tree("tree-of-heaven", "14"), "2027-03-10"),
        json!({ "herbicide": "licensed", "goal": "kill", "region": "US-MI" }),
    );
    let answer = ask(&asked);
    assert_eq!(head(&answer), (Outcome::Wait, Method::Frill));
    assert_eq!(answer.waits_for, Some("sap_flow"));
}
