//! The same question asked in another way has the same answer.

use crate::make::{Maker, plain_of};
use crate::support::as_json;
use serde_json::{Value, json};

/// Two answers are alike: same words, numbers equal to about the last digits.
pub(crate) fn alike(a: &Value, b: &Value, path: &str) -> Result<(), String> {
    match (a, b) {
        (Value::Number(a), Value::Number(b)) => {
            let (a, b) = (a.as_f64().unwrap_or(0.0), b.as_f64().unwrap_or(0.0));
            // A length is written to a tenth of a millimetre, which may fall to either side of a half.
            let tenth = if path.ends_with("mm") { 0.11 } else { 0.000_11 };
            let near = (a - b).abs() <= (1e-6 * a.abs().max(b.abs()).max(1.0)).max(tenth);
            near.then_some(())
                .ok_or_else(|| format!("{path}: {a} and {b}"))
        }
        (Value::Array(a), Value::Array(b)) if a.len() == b.len() => {
            (0..a.len()).try_for_each(|at| alike(&a[at], &b[at], &format!("{path}[{at}]")))
        }
        (Value::Object(a), Value::Object(b)) if a.len() == b.len() => {
            a.iter().try_for_each(|(name, value)| {
                let other = b.get(name).unwrap_or(&Value::Null);
                alike(value, other, &format!("{path}.{name}"))
            })
        }
        _ if a == b => Ok(()),
        _ => Err(format!("{path}: {a} and {b}")),
    }
}

/// Takes out keys at any depth.
fn without(value: &mut Value, keys: &[&str]) {
    match value {
        Value::Object(fields) => {
            fields.retain(|name, _| !keys.contains(&name.as_str()));
            fields.values_mut().for_each(|field| without(field, keys));
        }
        Value::Array(items) => items.iter_mut().for_each(|item| without(item, keys)),
        _ => {}
    }
}

#[test]
fn a_girth_and_its_diameter_give_the_same_answer() {
    let mut make = Maker::new(51);
    for _ in 0..300 {
        let (mut typed, _) = make.good();
        let stems = typed["stems"].as_array_mut().expect("stems");
        let mut girths = stems.clone();
        for (stem, girth) in stems.iter_mut().zip(&mut girths) {
            let text = stem["diameter"]
                .as_str()
                .expect("a diameter")
                .trim_end_matches(" in");
            let inches: f64 = text.parse().expect("inches");
            // The girth is what the tape says; its diameter is worked out, to more places than it matters.
            let tape = (inches * std::f64::consts::PI * 100.0).round() / 100.0;
            stem["diameter"] = json!(format!("{:.11} in", tape / std::f64::consts::PI));
            girth["girth"] = json!(format!("{tape} in"));
            girth.as_object_mut().expect("a stem").remove("diameter");
        }
        let mut by_girth = typed.clone();
        by_girth["stems"] = json!(girths);
        let (mut a, mut b) = (as_json(&plain_of(&typed)), as_json(&plain_of(&by_girth)));
        // The one thing that may say which it was.
        without(&mut a, &["from_girth"]);
        without(&mut b, &["from_girth"]);
        alike(&a, &b, "").unwrap_or_else(|apart| panic!("{apart}\n{typed}\n{by_girth}"));
    }
}

#[test]
fn a_size_in_inches_and_in_millimetres_gives_the_same_answer() {
    let mut make = Maker::new(52);
    for _ in 0..200 {
        let (typed, _) = make.good();
        let mut metric = typed.clone();
        for stem in metric["stems"].as_array_mut().expect("stems") {
            let text = stem["diameter"]
                .as_str()
                .expect("a diameter")
                .trim_end_matches(" in");
            let inches: f64 = text.parse().expect("inches");
            stem["diameter"] = json!(format!("{:.4} mm", inches * 25.4));
        }
        let (a, b) = (as_json(&plain_of(&typed)), as_json(&plain_of(&metric)));
        alike(&a, &b, "").unwrap_or_else(|apart| panic!("{apart}\n{typed}"));
    }
}

/// The stems of an answer stand in the order given: they turn with the list, nothing else does.
#[test]
fn the_order_of_stems_and_targets_changes_nothing_but_the_order_of_the_stems() {
    let mut make = Maker::new(53);
    let mut turned_lists = 0;
    for _ in 0..700 {
        let (typed, _) = make.good();
        let mut turned = typed.clone();
        turned_lists += usize::from(typed["stems"].as_array().map_or(0, Vec::len) > 1);
        for list in ["stems", "targets"] {
            if let Some(items) = turned.get_mut(list).and_then(Value::as_array_mut) {
                items.reverse();
            }
        }
        if let Some(spare) = typed.get("spare").and_then(Value::as_u64) {
            let last = typed["stems"].as_array().expect("stems").len() as u64 - 1;
            turned["spare"] = json!(last - spare);
        }
        let (a, mut b) = (as_json(&plain_of(&typed)), as_json(&plain_of(&turned)));
        unturn(&mut b);
        assert_eq!(a, b, "\n{typed}\n{turned}");
    }
    assert!(turned_lists > 150, "{turned_lists}");
}

/// Turns the stems of an answer and of the answers inside it.
fn unturn(answer: &mut Value) {
    if let Some(stems) = answer["stems"].as_array_mut() {
        stems.reverse();
    }
    if answer["if"]["answer"].is_object() {
        unturn(&mut answer["if"]["answer"]);
    }
}

#[test]
fn the_same_question_has_the_same_answer_every_time() {
    let mut make = Maker::new(54);
    for _ in 0..60 {
        let (typed, _) = make.good();
        assert_eq!(as_json(&plain_of(&typed)), as_json(&plain_of(&typed)));
    }
}
