//! No number in a model without a source: numbers live in content/. What stands in the code is 0, 1, 2 and 0.5, or a
//! line of allowed_numbers.txt that says what it is.

use std::collections::BTreeSet;

/// The float literals of a line of code, as written, without underscores.
fn literals(line: &str) -> Vec<String> {
    let code = line.split("//").next().unwrap_or("");
    let outside: String = code.split('"').step_by(2).collect::<Vec<_>>().join(" ");
    let mut found = Vec::new();
    let mut word = String::new();
    for c in outside.chars().chain([' ']) {
        if c.is_ascii_alphanumeric()
            || matches!(c, '.' | '_')
            || (c == '-' && word.ends_with('e') && word.starts_with(|d: char| d.is_ascii_digit()))
        {
            word.push(c);
            continue;
        }
        // A range of numbers: 6.0..=10.0.
        for part in word.split("..") {
            let number = part.replace('_', "");
            let float = number.starts_with(|d: char| d.is_ascii_digit())
                && (number.contains('.') || number.contains("e-"))
                && number.parse::<f64>().is_ok();
            if float {
                found.push(number);
            }
        }
        word.clear();
    }
    found
}

#[test]
fn no_formula_of_a_model_holds_a_number_that_is_not_told() {
    let told = crate::exceptions("allowed_numbers.txt");
    let mut met = BTreeSet::new();
    let mut looked_at = 0;
    for file in crate::files(&["calc/core/src/models"]) {
        let name = file.path.trim_start_matches("calc/core/src/models/");
        let code = file.text.split("#[cfg(test)]").next().unwrap_or("");
        for (at, line) in code.lines().enumerate() {
            for number in literals(line) {
                looked_at += 1;
                let value: f64 = number.parse().expect("a number");
                if [0.0, 0.5, 1.0, 2.0].contains(&value) {
                    continue;
                }
                let key = [format!("{name} {number}"), format!("any {number}")]
                    .into_iter()
                    .find(|key| told.contains_key(key));
                let key = key.unwrap_or_else(|| {
                    panic!("{}:{} has {number}: put it into content/, or say what it is in allowed_numbers.txt", file.path, at + 1)
                });
                met.insert(key);
            }
        }
    }
    assert!(looked_at > 100, "{looked_at}");
    for key in told.keys() {
        assert!(
            met.contains(key),
            "{key} stands in no model: take its line out of allowed_numbers.txt"
        );
    }
}

#[test]
fn numbers_are_found_as_they_are_written() {
    assert_eq!(literals("let a = 43_560.0 * b; // 9.5"), ["43560.0"]);
    assert_eq!(literals("(6.0..=10.0).contains(&x)"), ["6.0", "10.0"]);
    assert_eq!(literals("max(1e-6) + x.0 + 7"), ["1e-6"]);
    assert_eq!(literals("say(\"4.5 ft\", 4.5)"), ["4.5"]);
}
