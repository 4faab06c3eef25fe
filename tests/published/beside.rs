//! What stands beside the plan: minutes of other methods, snags an acre, look-alikes by name, what reads alike said
//! once. The minutes against the rates that were printed (CAMPU2017, CORONEL2014: effort.csv);
//! the sentences against our own rules, which is no check from outside.

use crate::support::*;
use calc::answer::Changed;
use calc::terms::method::Method;
use serde_json::json;

fn printed(source: &str, measure: &str) -> f64 {
    rows("content/evidence/effort.csv")
        .iter()
        .find(|row| row["source_id"] == source && row["unit"].starts_with(measure))
        .map_or_else(|| panic!("{source} {measure}"), |row| number(row, "value"))
}

fn page(asked: &serde_json::Value) -> String {
    let mut out = calc_view::out::Html::default();
    let options = calc_view::answer::HostOptions::default();
    calc_view::answer::answer(
        &mut out,
        reference(),
        &question(asked),
        &ask(asked),
        &options,
    );
    out.into_string()
}

fn said(asked: &serde_json::Value) -> String {
    calc_view::text::answer(reference(), &question(asked), &ask(asked), None)
}

/// What the page shows before anything is unfolded.
fn short(asked: &serde_json::Value) -> String {
    calc_view::text::short(reference(), &question(asked), &ask(asked), None)
}

/// A feller and an assistant: two people over 4.55 and 4.33 trees an hour.
#[test]
fn felling_takes_what_was_timed_and_what_nobody_timed_has_no_number() {
    let pair = |stand: &str| 2.0 * 60.0 / printed("CAMPU2017", &format!("trees per hour, {stand}"));
    let small = printed("CORONEL2014", "operating minutes");
    let work = |species: &str, inches: &str, method: Method| {
        let answer = ask_plain(&tree(species, inches));
        let at = answer.work.iter().find(|work| work.method == method);
        at.expect("nine methods").clone()
    };
    let large = work("Douglas-fir", "20 in", Method::Fell);
    let now = large.now.expect("a conifer of 20 in");
    near_to(now.low, pair("stand S1"), 0.05, "stand S1");
    near_to(now.high, pair("stand S2"), 0.05, "stand S2");
    assert_eq!(
        (large.visits, large.three_years),
        (0, large.now),
        "it does not sprout"
    );
    let thin = work("Norway maple", "5 in", Method::Fell);
    assert_eq!(
        thin.now.map(|now| (now.low, now.high)),
        Some((small, small))
    );
    assert!(
        thin.visits > 0 && thin.three_years.is_none(),
        "sprouts, and no number for them"
    );
    for (species, inches, method) in [
        ("Norway maple", "14 in", Method::Fell),
        ("Douglas-fir", "9 in", Method::Fell),
        ("Norway maple", "14 in", Method::Frill),
        ("Norway maple", "14 in", Method::SawRing),
        ("Norway maple", "2 in", Method::PullOrDig),
    ] {
        let none = work(species, inches, method);
        assert_eq!(
            (none.now, none.three_years),
            (None, None),
            "{species} {method:?}"
        );
    }
    let text = said(&tree("Norway maple", "14 in"));
    for part in [
        "Without herbicide\n",
        "With herbicide, by a licensed applicator\n",
        "Minutes: no number found, now or over three years.",
        "over three years: about",
    ] {
        assert!(text.contains(part), "{part:?} in {text}");
    }
}

/// S27: conifers do not sprout. What one leaves when it is felled is looked at: no visit looks for sprouts of its stump,
/// and none costs minutes.
#[test]
fn a_felled_conifer_gets_looks_and_no_visits_for_sprouts() {
    use calc::models::visits::VisitKind;
    let asked = with(
        tree("Austrian pine", "22 in"),
        json!({ "same_genus_near": "yes", "date": "2027-06-10" }),
    );
    let answer = ask_plain(&asked);
    assert_eq!(answer.headline_method, Method::Fell);
    assert!(!answer.visits.is_empty());
    for visit in &answer.visits {
        assert!(
            visit.kind == VisitKind::Look && !visit.is_work(),
            "{visit:?}"
        );
    }
    let fell = answer.work.iter().find(|work| work.method == Method::Fell);
    assert_eq!(fell.map(|work| work.visits), Some(0));
}

#[test]
fn snags_an_acre_stand_with_their_source_and_the_region_s_own_first() {
    let all = rows("content/evidence/snag_guides.csv");
    let at = |region: &str| {
        let asked = with(tree("Norway maple", "14 in"), json!({ "region": region }));
        (ask_plain(&asked).habitat.expect("a snag"), said(&asked))
    };
    let (vermont, text) = at("US-VT");
    assert_eq!(vermont.guides.len(), all.len());
    assert_eq!(vermont.guides_here, 1);
    assert!(vermont.guides[0].guidance.starts_with("Vermont"));
    assert!(
        text.contains("Vermont cavity-nester guidance: 2.4 to 3.6 over 12 in"),
        "{text}"
    );
    for guide in &vermont.guides {
        assert!(reference().source(guide.because.source).is_some());
        let row = all.iter().find(|row| row["guidance"] == guide.guidance);
        let row = row.expect("a row of the table");
        assert_eq!(row["per_acre"], guide.per_acre);
        assert!(!row["grade"].starts_with("MEMORY"));
    }
    assert_eq!(at("US-TX").0.guides_here, 0);
    assert_eq!(at("GB").0.guides_here, 1);
}

#[test]
fn every_look_alike_has_a_common_name_and_natives_stand_first() {
    let mut others = 0;
    for species in reference().species {
        for alike in species.look_alikes {
            assert!(!alike.name.is_empty(), "{}", alike.scientific);
            assert!(
                alike.name.chars().next().is_some_and(char::is_uppercase),
                "{}",
                alike.name
            );
            // Half of its name would be that of several trees. A whole one finds it, in one country at least.
            let mut listed = reference().species.iter();
            if let Some(it) = listed.find(|it| it.scientific == alike.scientific) {
                let mut by_place = reference().names_by_place.iter();
                let is_whole = it.names.contains(&alike.name)
                    || by_place.any(|row| row.name.eq_ignore_ascii_case(alike.name));
                assert!(is_whole, "{}", alike.name);
            }
            others += usize::from(!alike.native);
        }
    }
    assert!(
        others > 10,
        "look-alikes that are not native are told apart too"
    );
    let text = said(&tree("Tree-of-heaven", "9 in"));
    assert!(
        text.contains("Staghorn sumac Rhus typhina (native)"),
        "{text}"
    );
    for species in reference().species {
        let text = said(&tree(species.scientific, "9 in"));
        let part = text.split("IS IT THIS TREE?").nth(1).unwrap_or_default();
        let part = part.split("WORKING").next().unwrap_or_default();
        let native: Vec<bool> = part
            .lines()
            .filter(|line| line.starts_with("- "))
            .map(|line| line.contains("(native)"))
            .collect();
        assert!(
            native.is_sorted_by(|a, b| a >= b),
            "{}: {part}",
            species.name
        );
    }
}

#[test]
fn two_targets_that_read_alike_are_said_and_drawn_once() {
    let paths = |feet: &str| {
        with(
            tree("Norway maple", "14 in"),
            json!({ "none_in_reach": false, "line_within_reach": "no", "targets": [
                { "kind": "path", "distance": feet }, { "kind": "path", "distance": feet }] }),
        )
    };
    // The drawing is made twice, wide and narrow.
    let page = page(&paths("150 ft"));
    assert_eq!(page.matches("path, 150 ft</text>").count(), 2, "{page}");
    let text = said(&paths("40 ft"));
    assert!(
        text.contains("Near: A path, 40 ft (12 m) away.\n"),
        "{text}"
    );
}

/// Far inside the reach of a tall tree the way out is found too, and it is one: asked again, nothing stops.
#[test]
fn a_stop_far_inside_the_reach_says_how_far_off_it_would_be_another_answer() {
    let at = |feet: f64| {
        with(
            tree("Siberian elm", "48 in"),
            json!({ "none_in_reach": false, "line_within_reach": "no", "date": "2027-05-20",
                "targets": [{ "kind": "building", "distance": format!("{feet:.1} ft") }] }),
        )
    };
    let answer = ask(&at(40.0));
    let far = answer
        .changes
        .iter()
        .find_map(|change| match change.changed {
            Changed::Distance { to_m } => Some(to_m),
            _ => None,
        });
    let far = far.expect("a distance") / 0.3048;
    assert_ne!(
        ask_plain(&at(far + 0.1)).outcome,
        answer.outcome,
        "{far} ft"
    );
    assert_eq!(
        ask_plain(&at(far - 2.0)).outcome,
        answer.outcome,
        "{far} ft"
    );
}

/// Common practice, no source: thorns come off before hands work there, whatever the method; who asks a professional
/// needs no such step.
#[test]
fn thorns_are_trimmed_before_any_work_by_hand() {
    let step = "Trim the thorns from the work band.";
    let locust = |fields: serde_json::Value| said(&with(tree("Black locust", "8 in"), fields));
    assert!(locust(json!({ "whole_clone": "yes", "date": "2027-06-15" })).contains(step));
    assert!(
        locust(json!({ "whole_clone": "no", "herbicide": "no", "date": "2027-06-15" }))
            .contains(step)
    );
    assert!(!locust(json!({ "condition": "dead" })).contains(step));
    assert!(!said(&tree("Norway maple", "8 in")).contains(step));
}

/// A path 22 ft from a buckthorn of 20 ft: inside, measured, under 6 in, so someone trained to fell may (model of the
/// trail crew's tree, our own). Each line that tells somebody to cut it down says so, not the first alone.
#[test]
fn every_line_that_cuts_a_tree_down_beside_something_names_who_is_trained() {
    let small = with(
        near(tree("common buckthorn", "4 in"), "path", "22 ft"),
        json!({ "height": "20 ft", "date": "2027-04-20" }),
    );
    let answer = ask(&small);
    let beside = answer.next_line.iter().chain(&answer.also);
    let cutting: Vec<_> = beside
        .filter(|also| also.method == Method::RepeatCutting)
        .collect();
    assert!(!cutting.is_empty() && cutting.iter().all(|also| also.trained_to_fell));
    let said = said(&small);
    for line in [
        "Today instead: cut it again and again (by someone trained to fell, possible).",
        "Without herbicide: cut it again and again (by someone trained to fell, possible).",
    ] {
        assert!(said.contains(line), "{said}");
    }
    let clear = with(small, json!({ "targets": [], "none_in_reach": true }));
    assert!(!self::said(&clear).contains("trained to fell"));
}

/// "A ring alone makes it sprout" and "ring its bark" don't stand one under the other: who rings a tree-of-heaven without
/// herbicide cuts its sprouts for years (the guidance for its ring, S18 and S21 in sources.csv).
#[test]
fn a_ring_without_herbicide_of_a_tree_that_sprouts_goes_with_years_of_sprouts() {
    let line = "Without herbicide: ring its bark, then cut its sprouts for 3 years.";
    for (species, date) in [
        ("tree-of-heaven", "2027-08-15"),
        ("common buckthorn", "2027-06-12"),
    ] {
        let card = page(&with(tree(species, "4 in"), json!({ "date": date })));
        assert!(card.contains(line), "{card}");
    }
}

/// The line of a folded part tells of what leads; days and minutes of a ring that does not lead are said to be a ring's,
/// and none in months that are closed to it. A tree too thin to ring is not told that a ring is possible.
#[test]
fn lines_of_folded_parts_say_when_they_are_about_a_ring_that_does_not_lead() {
    let buckthorn = with(
        tree("common buckthorn", "4 in"),
        json!({ "date": "2027-06-12" }),
    );
    let card = short(&buckthorn);
    assert!(card.contains("WHEN\nFor a ring: "), "{card}");
    assert!(
        card.contains("Not timed. For a ring: about 4 minutes"),
        "{card}"
    );
    let oak = with(
        tree("northern red oak", "15 in"),
        json!({ "date": "2027-11-20", "region": "US-WI", "leafed_out": { "stage": "buds_open", "date": "2027-05-10" } }),
    );
    let card = short(&oak);
    assert!(card.contains("Its slip months are closed"), "{card}");
    assert!(!card.contains("For a ring"), "{card}");
    let thin = with(
        tree("Norway maple", "2 in"),
        json!({ "date": "2027-06-12" }),
    );
    let card = short(&thin);
    assert!(card.contains("too thin to ring"), "{card}");
    assert!(!card.contains("A ring is possible too"), "{card}");
}

#[test]
fn a_wait_names_the_method_of_today_and_countries_have_their_article() {
    let november = said(&with(
        tree("Norway maple", "12 in"),
        json!({ "date": "2027-11-10" }),
    ));
    let today =
        "Today instead: frill, cuts with herbicide (by a licensed applicator, recommended).";
    assert!(november.contains(today), "{november}");
    assert!(
        november.contains("Not native in the United States."),
        "{november}"
    );
}

#[test]
fn a_thing_at_the_very_end_of_the_zone_is_not_outside_as_many_feet_as_it_is_away() {
    let edge = with(
        near(tree("Scots pine", "12 in"), "road", "90 ft"),
        json!({ "height": "60 ft" }),
    );
    let said = said(&edge);
    assert!(
        said.contains("The road is 90 ft (27 m) away, at the end of the 90 ft (28 m) in which"),
        "{said}"
    );
}

/// At 6 in exactly the rows for stems under 6 in and those over 6 in both leave off: the other side is named truly.
#[test]
fn at_a_size_limit_itself_the_side_that_is_another_answer_is_named() {
    let pear = said(&tree("Callery pear", "6 in"));
    let line = "Near a size limit: under 6 in (15.2 cm) across, the answer would be to cut it";
    assert!(pear.contains(line) && !pear.contains("past 6 in"), "{pear}");
}

/// Herbicide in tree-of-heaven has months of its own (RUTGERS, S20): the months of other trees are not told beside them.
#[test]
fn a_frill_of_tree_of_heaven_is_told_its_own_months() {
    let north = said(&tree("tree of heaven", "8 in"));
    assert!(
        north.contains("15 July to 15 October, then it stands for at least 30 days"),
        "{north}"
    );
    assert!(!north.contains("best autumn to winter"), "{north}");
    let south = said(&with(
        tree("tree of heaven", "8 in"),
        json!({ "region": "NZ" }),
    ));
    assert!(
        south.contains("15 January to 15 April, then it stands"),
        "{south}"
    );
    assert!(said(&tree("Callery pear", "8 in")).contains("best autumn to winter"));
}

/// Blue gum is native in Tasmania and Victoria, from memory: a state that has no name here is not told by its code.
#[test]
fn no_code_of_a_state_stands_in_a_sentence() {
    let gum = said(&with(
        tree("blue gum", "20 in"),
        json!({ "region": "AU-NSW" }),
    ));
    assert!(
        gum.contains("Native in other parts of Australia, not in this part of Australia."),
        "{gum}"
    );
    assert!(!gum.contains("AU-NSW."), "{gum}");
}

/// Woods may need a permit, by the law of their own country: a tree of Vermont cites no law of Ireland or Switzerland.
#[test]
fn no_other_country_s_law_is_a_source() {
    let answer = ask_plain(&with(
        tree("Norway maple", "12"),
        json!({ "region": "US-VT" }),
    ));
    for source in ["LR58", "LR61", "LR63", "LR68", "LR69"] {
        assert!(
            answer.sources.iter().all(|line| line.id.text() != source),
            "{source}"
        );
    }
}

/// A stem of a clone whose rest can't be ringed is left: it lives, so nobody is told to stay out from under it from now
/// on, as from under a dead one. Common practice, no source.
#[test]
fn a_sound_tree_that_is_left_is_no_dead_one() {
    let left = json!({ "goal": "spare_one", "spare": 1, "whole_clone": "no", "stems": [{ "diameter": "6 in" }, { "diameter": "5 in" }] });
    let locust = with(tree("black locust", "6 in"), left);
    assert_eq!(ask_plain(&locust).headline_method, Method::LeaveIt);
    let sound = said(&locust);
    for words in [
        "Stay out",
        "stay out",
        "The zone counts now",
        "no known day",
    ] {
        assert!(!sound.contains(words), "{words}: {sound}");
    }
    assert!(sound.contains("A living tree sheds limbs too."), "{sound}");
    let dead = said(&with(
        tree("Norway maple", "12 in"),
        json!({ "condition": "dead" }),
    ));
    assert!(
        dead.contains("Stay out from under it. It sheds limbs on no known day."),
        "{dead}"
    );
}

/// Poplars of 9 in stand 80 ft tall: who cuts one again and again fells it first. Common practice, no source.
#[test]
fn a_tree_that_is_cut_down_by_hand_says_that_felling_needs_training() {
    let words = "Felling needs training: if in doubt, ask a professional.";
    let poplar = |size: &str| {
        with(
            tree("white poplar", size),
            json!({ "whole_clone": "no", "herbicide": "no" }),
        )
    };
    let thick = poplar("9 in");
    assert_eq!(ask_plain(&thick).headline_method, Method::RepeatCutting);
    assert!(said(&thick).contains(words));
    let thin = with(
        tree("autumn olive", "2.9 in"),
        json!({ "herbicide": "yes" }),
    );
    assert_eq!(ask_plain(&thin).headline_method, Method::CutStump);
    assert!(!said(&thin).contains(words), "a small stem");
}

/// Under Scots pines in May beetles fly: who does not wait takes the wood away (S51), in the first lines too.
#[test]
fn the_first_lines_keep_what_a_line_beside_must_carry() {
    let first = |asked: &serde_json::Value| -> String {
        said(asked).lines().take(6).collect::<Vec<_>>().join("\n")
    };
    let pine = first(&with(
        near(tree("Scots pine", "5 in"), "path", "90 ft"),
        json!({ "same_genus_near": "yes", "date": "2027-05-25" }),
    ));
    assert!(
        pine.contains("its wood away or peeled in 3 weeks"),
        "{pine}"
    );
    let small = first(&with(
        near(tree("common buckthorn", "4 in"), "path", "22 ft"),
        json!({ "height": "20 ft", "date": "2027-04-20" }),
    ));
    assert!(small.contains("(trained to fell)"), "{small}");
}

/// A stem that is dead, or kept, is not ringed: the last step counts the others.
#[test]
fn the_last_step_counts_the_stems_that_are_ringed() {
    let maple = |fields| said(&with(tree("Norway maple", "8 in"), fields));
    let two = json!([{ "diameter": "8 in" }, { "diameter": "6 in" }]);
    let dead = maple(
        json!({ "stems": [{ "diameter": "8 in", "live_share": "0 %" }, { "diameter": "6 in" }] }),
    );
    assert!(
        dead.contains("Ring stem 2.") && !dead.contains("Do the same"),
        "{dead}"
    );
    let spared = maple(json!({ "stems": two, "goal": "spare_one", "spare": 0 }));
    assert!(
        spared.contains("Leave stem 1 alone: it is the one to keep."),
        "{spared}"
    );
    assert!(!spared.contains("Do the same"), "{spared}");
    let both = maple(json!({ "stems": two }));
    assert!(
        both.contains("Do the same on each of the two stems that are ringed."),
        "{both}"
    );
}
