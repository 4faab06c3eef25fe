//! What people read: nothing that promises, and words for every row of the table.

use crate::support::{reference, rows};
use calc::terms::method::{Cell, Method};

/// Words that promise what nobody can, whatever stands round them.
const BANNED: [&str; 4] = ["safe", "safely", "approved", "guaranteed"];

#[track_caller]
fn promises_nothing(text: &str, place: &str) {
    for word in text.split(|c: char| !c.is_alphabetic()) {
        let word = word.to_lowercase();
        assert!(
            !BANNED.contains(&word.as_str()),
            "{place}: \"{word}\" in: {text}"
        );
    }
}

/// What stands between quotes on a line of code.
fn quoted(line: &str) -> impl Iterator<Item = &str> {
    line.split('"').skip(1).step_by(2)
}

#[test]
fn no_word_of_the_interface_promises() {
    let mut looked_at = 0;
    for file in crate::files(&[
        "calc/view/src",
        "www/site/src",
        "www/element/src",
        "www/list/src",
    ]) {
        if file.path.ends_with("tests.rs") || file.path.contains("/tests/") {
            continue;
        }
        let code = file.text.split("#[cfg(test)]").next().unwrap_or("");
        for line in code
            .lines()
            .filter(|line| !line.trim_start().starts_with("//"))
        {
            for text in quoted(line) {
                promises_nothing(text, &file.path);
                looked_at += 1;
            }
        }
    }
    assert!(looked_at > 1000, "{looked_at}");
}

#[test]
fn no_page_promises() {
    for file in crate::files(&["www/pages"]) {
        promises_nothing(&file.text, &file.path);
    }
}

/// Columns of the tables that answers and pages print.
const PRINTED: &[(&str, &[&str])] = &[
    (
        "content/evidence/cautions.csv",
        &["plain_text_in_your_own_words", "defers_to"],
    ),
    (
        "content/evidence/outlook.csv",
        &["anchors", "our_own_assumption"],
    ),
    ("content/evidence/outlook_species.csv", &["note"]),
    ("content/evidence/cavity_users.csv", &["note"]),
    ("content/evidence/identification.csv", &["telling_mark"]),
    (
        "content/rules/seasonal_restrictions.csv",
        &["jurisdiction", "force"],
    ),
    ("content/rules/methods.csv", &["words"]),
    ("content/rules/constants.csv", &["place", "note"]),
    ("content/rules/plan_constants.csv", &["place", "note"]),
];

#[test]
fn no_printed_cell_of_a_table_promises() {
    for (table, columns) in PRINTED {
        for row in rows(table) {
            for column in *columns {
                let cell = row
                    .get(*column)
                    .unwrap_or_else(|| panic!("{table} has no {column}"));
                promises_nothing(cell, table);
            }
        }
    }
}

#[test]
fn every_row_of_the_method_table_has_words_for_each_method_that_it_touches() {
    for rule in reference().method_rules {
        for (cell, method) in rule.cells.into_iter().zip(Method::ALL) {
            if cell == Cell::NOTHING {
                continue;
            }
            let words = calc_view::words::method::rule(rule.id, *method);
            let words = words.unwrap_or_else(|| panic!("no words for {} on {method:?}", rule.id));
            assert!(words.len() > 8, "{}: {words}", rule.id);
            promises_nothing(&words, rule.id);
        }
    }
    assert!(
        calc_view::words::method::rule("no such row", Method::Fell).is_none(),
        "words for anything are none"
    );
}
