//! Every question has a whole answer: no crash, no missing number, no figure without a reason, no source unknown.

use crate::make::{Maker, local, plain};
use crate::support::{as_json, reference};
use calc::answer::answer;
use calc::terms::method::Method;
use serde_json::Value;
use std::collections::BTreeSet;

/// Fields that may be empty, each since nothing is known or nothing applies: the type of the answer says so.
const MAY_BE_NULL: &[&str] = &[
    "inside_bark_mm",
    "ring",
    "bark",
    "shown_m",
    "low_m",
    "high_m",
    "changes_at_m",
    "crown_m",
    "distance_m",
    "decided_by",
    "probability",
    "budbreak",
    "opens",
    "best_from",
    "best_to",
    "closes",
    "sd_open",
    "sd_close",
    "next_good",
    "next_good_to",
    "after_next",
    "after_next_to",
    "basis",
    "before",
    "region",
    "spring",
    "meant",
    "nearest_km",
    "elevation_m",
    "meant",
    "asked_day",
    "asked_verdict",
    "asked_probability",
    "effort",
    "outlook",
    "habitat",
    "if",
    "next_line",
    "group",
    "near_limit",
    "day",
    "value",
    "word",
    "likely",
    "visit",
    "advice",
    "why_not",
    "ringed",
    "now",
    "three_years",
    "own",
    "timed",
    "species_row",
    "sprouting",
    "advised_to",
    "to",
    "waits_for",
    "people_out_m",
];

fn nulls(value: &Value, path: &str, found: &mut Vec<String>, met: &mut BTreeSet<String>) {
    match value {
        Value::Object(fields) => {
            for (name, field) in fields {
                let judged = path.ends_with("reach.targets[]") && name == "outcome";
                if field.is_null() && !MAY_BE_NULL.contains(&name.as_str()) && !judged {
                    found.push(format!("{path}.{name}"));
                }
                if field.is_null() {
                    met.insert(name.clone());
                }
                nulls(field, &format!("{path}.{name}"), found, met);
            }
        }
        Value::Array(items) => {
            for item in items {
                if item.is_null() {
                    found.push(format!("{path}[]"));
                }
                nulls(item, &format!("{path}[]"), found, met);
            }
        }
        _ => {}
    }
}

#[test]
fn every_question_has_an_answer_and_no_number_is_missing() {
    let mut make = Maker::new(71);
    let mut outcomes = BTreeSet::new();
    let mut met = BTreeSet::new();
    for _ in 0..1200 {
        let (typed, question) = make.aided();
        let first = plain(&question);
        outcomes.insert(format!("{:?}", first.outcome));
        let whole = as_json(&first);
        let mut found = Vec::new();
        nulls(&whole, "", &mut found, &mut met);
        assert!(found.is_empty(), "null at {found:?}: {typed}");
        assert_eq!(first.methods.len(), 9, "{typed}");
        assert!(
            first
                .methods
                .iter()
                .map(|line| line.method)
                .eq(Method::ALL.iter().copied()),
            "{typed}"
        );
        assert_eq!(first.stems.len(), question.tree.stems.len(), "{typed}");
        for (answered, asked) in first.stems.iter().zip(&question.tree.stems) {
            assert_eq!(
                answered.dbh_mm,
                asked.dbh.mm(),
                "in the order given: {typed}"
            );
        }
        if let Some(effort) = &first.effort {
            assert!(
                0.0 < effort.low_min && effort.low_min <= effort.likely_min,
                "{typed}"
            );
            assert!(effort.likely_min <= effort.high_min, "{typed}");
        }
        let p = [first.timing.probability, first.asked_probability];
        assert!(
            p.iter().flatten().all(|p| (0.0..=1.0).contains(p)),
            "{typed}"
        );
        assert!(
            first
                .visits
                .windows(2)
                .all(|pair| pair[0].from <= pair[1].from),
            "{typed}"
        );
    }
    assert_eq!(outcomes.len(), 5, "{outcomes:?}");
    let never: Vec<&&str> = MAY_BE_NULL
        .iter()
        .filter(|name| !met.contains(**name))
        .collect();
    assert!(
        never.is_empty(),
        "never empty, so take it off the list: {never:?}"
    );
}

/// Every species, size class and month, each asked once with everything else left out.
#[test]
fn every_species_is_answered_at_every_size_in_every_month() {
    for (turn, species) in reference().species.iter().enumerate() {
        for (step, inches) in ["0.12", "0.9", "2.4", "5", "9.9", "24", "190"]
            .iter()
            .enumerate()
        {
            let month = (turn + step * 5) % 12 + 1;
            let typed = serde_json::json!({
                "version": 1,
                "species": species.scientific,
                "stems": [{ "diameter": inches }],
                "date": format!("2027-{month}-15"),
            });
            let question = crate::support::question(&typed);
            let first = answer(reference(), &question, &local(&question));
            assert_eq!(first.methods.len(), 9);
            assert!(!first.sources.is_empty(), "{typed}");
        }
    }
}

/// Numbers that stand without a `because` round them, and why.
const WITHOUT: &[(&str, &str)] = &[
    (".version", "the version of the names"),
    (
        ".asked_probability",
        "the reasons stand with timing.probability, which is the same curve",
    ),
    (".stems[].dbh_mm", "what was asked"),
    (".stems[].live_share", "what was asked"),
    (
        ".stems[].inside_bark_mm",
        "arithmetic on the size asked and on bark, whose reasons stand beside it",
    ),
    (".visits[].season", "a count of growing seasons"),
    (
        ".near_limit.limit_mm",
        "a limit of the method table, whose row names its sources",
    ),
    (
        ".changes[].",
        "found by asking again; the reasons stand in that answer",
    ),
    (
        ".assumed[].value",
        "the figure stands with its reasons in its own part",
    ),
    (
        ".people_out_m",
        "one or two heights of reach, whose reasons stand there",
    ),
    (
        ".if.conditions[].",
        "a distance or height of reach, whose reasons stand there",
    ),
];

/// Looks at every number: it, or something that it stands in, gives reasons; every reason is whole.
fn reasons(
    value: &Value,
    path: &str,
    covered: bool,
    found: &mut Vec<String>,
    met: &mut BTreeSet<&str>,
) {
    match value {
        Value::Number(_) => {
            // The answer under a condition has the same parts.
            let plain = path.replace(".if.answer", "");
            let told = WITHOUT.iter().find(|(known, _)| plain.starts_with(known));
            match told {
                _ if covered => {}
                Some((known, _)) => {
                    met.insert(known);
                }
                None => found.push(format!("{path} has no reason")),
            }
        }
        Value::Array(items) => {
            for item in items {
                reasons(item, &format!("{path}[]"), covered, found, met);
            }
        }
        Value::Object(fields) => {
            let mut covered = covered;
            match fields.get("because") {
                None => {}
                Some(Value::Array(cites)) if cites.is_empty() => {
                    found.push(format!("{path}.because is empty"))
                }
                Some(_) => covered = true,
            }
            if let (Some(Value::String(source)), Some(Value::String(place)), Some(grade)) = (
                fields.get("source"),
                fields.get("place"),
                fields.get("grade"),
            ) {
                if !reference()
                    .all_sources()
                    .any(|line| line.id.text() == source)
                {
                    found.push(format!("{path}: the source {source} is not known"));
                }
                if source == "own" && place.is_empty() {
                    found.push(format!("{path}: our own assumption without a place"));
                }
                if grade == "memory" {
                    found.push(format!("{path}: {source} is from memory"));
                }
            }
            for (name, field) in fields {
                reasons(field, &format!("{path}.{name}"), covered, found, met);
            }
        }
        _ => {}
    }
}

/// Every id of every cite in an answer.
fn cited(value: &Value, ids: &mut BTreeSet<String>) {
    match value {
        Value::Array(items) => items.iter().for_each(|item| cited(item, ids)),
        Value::Object(fields) => {
            if let (Some(Value::String(source)), true) =
                (fields.get("source"), fields.contains_key("grade"))
            {
                ids.insert(source.clone());
            }
            for (name, field) in fields {
                // The answer under a condition lists its own.
                if name != "if" && name != "stems" {
                    cited(field, ids);
                }
            }
        }
        _ => {}
    }
}

#[test]
fn no_number_stands_without_a_reason_and_no_reason_without_a_known_source() {
    let mut make = Maker::new(72);
    let mut met = BTreeSet::new();
    for turn in 0..700 {
        let (typed, question) = make.aided();
        let first = if turn % 7 == 0 {
            answer(reference(), &question, &local(&question))
        } else {
            plain(&question)
        };
        let whole = as_json(&first);
        let mut found = Vec::new();
        reasons(&whole, "", false, &mut found, &mut met);
        found.sort();
        found.dedup();
        assert!(found.is_empty(), "{found:#?}\n{typed}");
        let mut ids = BTreeSet::new();
        cited(&whole, &mut ids);
        for id in ids {
            let line = first.sources.iter().find(|line| line.id.text() == id);
            let line =
                line.unwrap_or_else(|| panic!("{id} is cited and not among the sources: {typed}"));
            assert!(!line.label.is_empty(), "{id} has no label");
        }
    }
    for (known, why) in WITHOUT {
        assert!(
            met.contains(known),
            "no number stands at {known} ({why}): take it off the list"
        );
    }
}

/// Above a stop no procedure: nothing of a ring is in the answer.
#[test]
fn an_answer_that_stops_has_no_minutes_no_visits_and_no_outlook() {
    let mut make = Maker::new(73);
    let mut stops = 0;
    for _ in 0..1200 {
        let (typed, question) = make.good();
        let first = plain(&question);
        if first.outcome != calc::answer::Outcome::Professional {
            continue;
        }
        stops += 1;
        assert!(first.effort.is_none() && first.visits.is_empty(), "{typed}");
        assert!(
            first.outlook.is_none() && first.habitat.is_none(),
            "{typed}"
        );
        assert!(
            first
                .cautions
                .iter()
                .all(|line| matches!(&line.id[..2], "HZ" | "PL" | "LW")),
            "{typed}"
        );
        assert!(first.conditional.is_none(), "{typed}");
    }
    assert!(stops > 100, "{stops}");
}
