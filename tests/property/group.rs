//! A group's own settings never make an answer milder: whatever the question and whatever was accepted.

use crate::make::{Maker, local, on_day, plain};
use crate::support::{reference, settings_of};
use calc::answer::{Answer, Changed, Outcome, answer};
use calc::models::reach;
use calc::question::Question;
use calc::terms::method::{Level, Method};
use chrono::{Datelike, NaiveDate};
use rand::Rng;
use serde_json::{Value, json};
use std::collections::BTreeSet;

/// Settings that tighten in one, two or three ways.
fn tight(make: &mut Maker) -> Value {
    let mut tighten = json!({});
    while tighten == json!({}) {
        if make.chance(0.5) {
            let factor = make.between(1.0, 3.0);
            tighten["min_distance_factor"] = json!((factor * 100.0).round() / 100.0);
        }
        if make.chance(0.4) {
            tighten["max_size_for_volunteers_cm"] = json!(make.between(5.0, 80.0).round());
        }
        if make.chance(0.5) {
            let months: BTreeSet<u32> = (0..make.0.random_range(1..=7))
                .map(|_| make.0.random_range(1..=12))
                .collect();
            tighten["months_blocked"] = json!(months);
        }
    }
    json!({ "schema": 1, "name": "River Friends", "tighten": tighten })
}

fn asked_for(question: &Question, settings: &Value) -> Question {
    let mut question = question.clone();
    settings_of(settings).apply(&mut question);
    question
}

/// From mild to severe. What is not checked may be anything, and stands where the models put it.
fn rank(outcome: reach::ReachOutcome) -> u8 {
    match outcome {
        reach::ReachOutcome::Clear => 0,
        reach::ReachOutcome::ClearPeopleOut => 1,
        reach::ReachOutcome::NotChecked => 2,
        reach::ReachOutcome::Inside => 3,
        reach::ReachOutcome::Professional => 4,
        reach::ReachOutcome::Line => 5,
    }
}

fn level(answer: &Answer, method: Method) -> Level {
    let line = answer.methods.iter().find(|line| line.method == method);
    line.expect("nine methods").level
}

/// The days that an answer names for a ring, its conditional one's too.
fn ring_days(answer: &Answer) -> Vec<NaiveDate> {
    let mut days = Vec::new();
    let ring = answer.headline_method == Method::BarkRing;
    if ring && matches!(answer.outcome, Outcome::Do | Outcome::Wait) {
        days.extend(answer.advised_day);
    }
    let beside = answer.next_line.iter().chain(&answer.also);
    days.extend(
        beside
            .filter(|line| line.method == Method::BarkRing)
            .filter_map(|line| line.day),
    );
    let timing = &answer.timing;
    days.extend(
        [timing.next_good, timing.next_good_to, timing.after_next]
            .into_iter()
            .flatten(),
    );
    days.extend(timing.after_next_to);
    if let Some(inner) = &answer.conditional {
        days.extend(ring_days(&inner.answer));
    }
    days
}

#[test]
fn whatever_a_group_asks_for_no_answer_gets_milder() {
    let mut make = Maker::new(81);
    let mut turned = BTreeSet::new();
    for _ in 0..1500 {
        let (typed, question) = make.good();
        let settings = tight(&mut make);
        turned.insert(not_milder(&typed, &question, &settings));
    }
    assert!(
        turned.len() > 12,
        "the settings hardly turn anything: {turned:?}"
    );
}

/// The day that "year" picks, and a day beside a blocked month, don't depend on how the group loosens or tightens the
/// search: a small buckthorn once was ringed on 30 April because May and June were blocked.
#[test]
fn around_blocked_months_and_over_a_whole_year_no_answer_gets_milder() {
    let mut make = Maker::new(85);
    let mut turned = BTreeSet::new();
    for _ in 0..3000 {
        let (mut typed, _) = make.good();
        typed["none_in_reach"] = json!(true);
        typed["line_within_reach"] = json!("no");
        typed["targets"] = json!([]);
        typed["signs"] = json!([]);
        typed["condition"] = json!("alive");
        let from = make.0.random_range(1..=12_u32);
        let months: Vec<u32> = (0..make.0.random_range(1..=4))
            .map(|by| (from + by - 1) % 12 + 1)
            .collect();
        if make.chance(0.6) {
            typed["today"] = json!(make.date());
            typed["date"] = json!("year");
        } else {
            // Within the week before the blocked months, or the week after they begin.
            let year = make.one(&[2027, 2028]);
            let first = NaiveDate::from_ymd_opt(year, from, 1).expect("a day");
            let by = chrono::Days::new(make.0.random_range(0..=14));
            let day = first - chrono::Days::new(7) + by;
            typed["date"] = json!(calc::terms::day::iso(day));
        }
        typed
            .as_object_mut()
            .expect("an object")
            .remove("leafed_out");
        let Ok(question) = crate::support::try_read(&typed) else {
            continue;
        };
        let settings = json!({
            "schema": 1, "name": "River Friends", "tighten": { "months_blocked": months },
        });
        turned.insert(not_milder(&typed, &question, &settings));
    }
    assert!(turned.len() > 6, "{turned:?}");
}

/// Holds one answer with a group's settings against the one without; both outcomes.
fn not_milder(typed: &Value, question: &Question, settings: &Value) -> (String, String) {
    let before = plain(question);
    let grouped = asked_for(question, settings);
    let after = plain(&grouped);
    let told = format!("{typed}\n{settings}");
    let tighten = grouped.tree.tighten;

    // The reach, target by target and as a whole.
    assert!(
        rank(after.reach.outcome) >= rank(before.reach.outcome),
        "{told}"
    );
    for target in &before.reach.targets {
        let same = after
            .reach
            .targets
            .iter()
            .find(|it| it.index == target.index);
        let same = same.unwrap_or_else(|| panic!("a target is gone: {told}"));
        assert!(same.outcome.map(rank) >= target.outcome.map(rank), "{told}");
        assert!(
            same.zone_m >= target.zone_m && same.damage >= target.damage,
            "{told}"
        );
    }
    assert!(
        after.reach.two_heights_m >= before.reach.two_heights_m,
        "{told}"
    );

    // Stops and cautions stay.
    if before.outcome == Outcome::Professional {
        assert_eq!(after.outcome, Outcome::Professional, "{told}");
    }
    let ringed = |answer: &Answer| {
        answer.headline_method == Method::BarkRing
            && matches!(answer.outcome, Outcome::Do | Outcome::Wait)
    };
    if after.outcome == Outcome::Do {
        assert_eq!(before.outcome, Outcome::Do, "{told}");
    }
    if ringed(&after) {
        assert!(ringed(&before), "{told}");
    }
    // A day to wait for is one on which the models alone, asked for it, ring the tree.
    if let (Outcome::Wait, Method::BarkRing, Some(day)) =
        (after.outcome, after.headline_method, after.advised_day)
    {
        let then = on_day(question, day);
        assert_eq!(plain(&then).outcome, Outcome::Do, "{day}: {told}");
    }
    let speaks = |answer: &Answer, id: &str| answer.cautions.iter().any(|it| it.id == id);
    let inner = before.conditional.iter().flat_map(|it| &it.answer.cautions);
    for caution in before.cautions.iter().chain(inner) {
        assert!(speaks(&after, caution.id), "{} is gone: {told}", caution.id);
    }
    for rule in &before.rules {
        assert!(
            after.rules.contains(rule)
                || after
                    .rules
                    .iter()
                    .any(|it| it.topic == rule.topic && it.from_md == rule.from_md),
            "{told}"
        );
    }

    // On the same day no method stands better.
    if after.advised_day == before.advised_day && after.outcome != Outcome::CannotTell {
        for method in Method::ALL.iter().copied() {
            // Near an empty reach leaving it alone is what all else falls back on.
            if method != Method::LeaveIt {
                assert!(
                    level(&after, method) >= level(&before, method)
                        || rank(after.reach.outcome) > rank(before.reach.outcome),
                    "{method:?}: {told}"
                );
            }
        }
    }

    // No ring is named in a blocked month, nor for a tree over the size.
    for day in ring_days(&after) {
        assert!(!tighten.blocks(day.month()), "{day}: {told}");
    }
    if tighten.too_large(question.tree.largest().dbh.mm()) {
        let alone = after.headline_method == Method::LeaveIt;
        assert!(after.outcome == Outcome::Professional || alone, "{told}");
    }
    (
        format!("{:?}", before.outcome),
        format!("{:?}", after.outcome),
    )
}

/// Texts that try to get markup, a script or another kind of link into the page, and values of wrong kinds.
fn nasty(make: &mut Maker) -> Value {
    let texts = [
        "<b>x</b>",
        "</p><script>alert(1)</script>",
        "\"><img src=x onerror=alert(1)>",
        "javascript:alert(1)",
        "JAVASCRIPT:x",
        "data:text/html,<b>",
        "https://example.org/\" onclick=\"x",
        "vbscript:x",
        "https://example.org/a",
        "tel:+1555",
        "tel:<b>",
        "plain words",
        "",
        " ",
        "AIAL",
        "no such tree",
        "\u{0}",
        "2026-05-01",
        "professional",
        "nesting",
        "555 0100",
        "code,first,note_en\nAIAL,yes,<i>x</i>\n",
        "code,first,note_en\nAIAL,yes,come back\n",
        "en",
    ];
    match make.0.random_range(0..9) {
        0 => json!(make.between(-5.0, 600.0)),
        1 => json!(make.chance(0.5)),
        2 => json!([nasty_text(make, &texts), make.0.random_range(0..14)]),
        3 => json!({ "en": nasty_text(make, &texts), "es": nasty_text(make, &texts) }),
        4 => Value::Null,
        _ => json!(nasty_text(make, &texts)),
    }
}

fn nasty_text(make: &mut Maker, texts: &[&str]) -> String {
    make.one(texts).to_owned()
}

#[test]
fn whatever_is_typed_no_accepted_text_is_markup_and_no_accepted_link_runs() {
    let mut make = Maker::new(84);
    let (mut accepted, mut refused) = (0, 0);
    for _ in 0..6000 {
        let mut settings = json!({
            "schema": 1, "name": "River Friends", "checked": "2026-05-01",
            "species": { "first": ["AIAL"], "aliases": { "stink tree": "AIAL" }, "notes": { "AIAL": "Come back." } },
            "contacts": [{ "kind": "professional", "name": "Elm Street", "phone": "555 0100", "url": "https://example.org" }],
            "codes": [{ "topic": "nesting", "text": "Wait.", "authority": "Town", "url": "https://example.org" }],
        });
        for _ in 0..make.0.random_range(1..=3) {
            let path = make.one(&[
                "/name",
                "/checked",
                "/id",
                "/species/first",
                "/species/aliases",
                "/species/notes",
                "/species/notes/AIAL",
                "/species/csv",
                "/species",
                "/contacts/0/name",
                "/contacts/0/phone",
                "/contacts/0/url",
                "/contacts/0/kind",
                "/contacts/0",
                "/contacts",
                "/codes/0/text",
                "/codes/0/authority",
                "/codes/0/url",
                "/codes/0/topic",
                "/codes",
                "/units",
                "/region",
                "/place",
            ]);
            let value = nasty(&mut make);
            let (front, key) = path.rsplit_once('/').expect("a path");
            match settings.pointer_mut(front) {
                Some(Value::Object(map)) => drop(map.insert(key.to_owned(), value)),
                Some(Value::Array(list)) if !list.is_empty() => list[0] = value,
                _ => {}
            }
        }
        let value = crate::support::value_of(&settings);
        let Ok((taken, _)) = calc::question::settings::read(reference(), &value, None) else {
            refused += 1;
            continue;
        };
        accepted += 1;
        let species = &taken.species;
        let mut texts: Vec<&str> = vec![&taken.name, &taken.id];
        texts.extend(species.aliases.iter().map(|it| &*it.0));
        texts.extend(species.notes.iter().map(|it| &*it.1));
        for contact in &taken.contacts {
            texts.extend(
                [Some(&*contact.name), contact.phone.as_deref()]
                    .into_iter()
                    .flatten(),
            );
        }
        for code in &taken.codes {
            texts.extend([&*code.text, &*code.authority]);
        }
        for text in texts {
            let low = text.to_lowercase();
            assert!(
                !low.contains(['<', '>', '\0']) && !low.contains("javascript:"),
                "{settings}"
            );
        }
        let links = taken
            .contacts
            .iter()
            .map(|it| &it.url)
            .chain(taken.codes.iter().map(|it| &it.url));
        for link in links.flatten() {
            let good = ["https://", "http://", "tel:"]
                .iter()
                .any(|start| link.starts_with(start));
            assert!(good && !link.contains(['"', '<', ' ']), "{settings}");
        }
    }
    assert!(accepted > 300 && refused > 300, "{accepted} {refused}");
}

#[test]
fn a_factor_of_one_and_no_months_change_nothing() {
    let mut make = Maker::new(82);
    let settings = json!({ "schema": 1, "name": "River Friends", "tighten": { "min_distance_factor": 1, "months_blocked": [] } });
    for _ in 0..200 {
        let (typed, question) = make.good();
        let grouped = asked_for(&question, &settings);
        assert_eq!(plain(&grouped), plain(&question), "{typed}");
    }
}

#[test]
fn what_would_change_the_answer_is_asked_under_the_same_settings() {
    let mut make = Maker::new(83);
    let mut met = 0;
    for _ in 0..120 {
        let (typed, question) = make.good();
        let settings = tight(&mut make);
        let grouped = asked_for(&question, &settings);
        let whole = answer(reference(), &grouped, &local(&grouped));
        for change in &whole.changes {
            let Changed::Date { to } = change.changed else {
                continue;
            };
            met += 1;
            if change.outcome == Outcome::Do {
                assert!(
                    !grouped.tree.tighten.blocks(to.month()),
                    "{to}: {typed}\n{settings}"
                );
            }
        }
    }
    assert!(met > 10, "{met}");
}
