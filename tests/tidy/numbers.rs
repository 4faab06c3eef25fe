//! No number in the core, or in the planner, without a source: numbers live in content/. What stands in the code is 0, 1, 2 and 0.5, the
//! length of an array, a place in a list, or a line of allowed_numbers.txt that says what it is, by its constant's name or
//! by the number.

use proc_macro2::{Delimiter, TokenStream, TokenTree};
use std::collections::BTreeSet;

/// What decides and computes. What only reads or packs what it is given, and the question's own limits (each the range
/// of a kind of quantity), are not here.
const LAYERS: [&str; 4] = [
    "calc/core/src/answer",
    "calc/core/src/models",
    "calc/core/src/timing",
    "calc/plan/src",
];

/// Numbers of packed files: a format, which is read back and compared, and no fact.
const PACKED: &str = "timing/places/";

/// A number of the code, as written without underscores and type, its line, and the constant that it is part of.
#[derive(Debug, PartialEq)]
struct Literal {
    number: String,
    line: usize,
    constant: Option<String>,
}

/// The numbers of some code but for lengths, places in a list and what stands in checks.
fn literals(code: &str) -> Vec<Literal> {
    let tokens: TokenStream = code.parse().unwrap_or_else(|e| panic!("{e} in {code}"));
    let mut found = Vec::new();
    walk(tokens, None, None, &mut found);
    found
}

fn walk(
    tokens: TokenStream,
    inside: Option<Delimiter>,
    part_of: Option<&str>,
    found: &mut Vec<Literal>,
) {
    let tokens: Vec<TokenTree> = tokens.into_iter().collect();
    let sign = |at: Option<usize>, sign: char| matches!(at.and_then(|at| tokens.get(at)), Some(TokenTree::Punct(p)) if p.as_char() == sign);
    let mut skip = false;
    let mut constant = part_of.map(str::to_owned);
    for (at, token) in tokens.iter().enumerate() {
        let before = at.checked_sub(1);
        match token {
            TokenTree::Group(group) => {
                let attribute = group.delimiter() == Delimiter::Bracket && sign(before, '#');
                if attribute {
                    // What follows is a check: its module or function is left out with its body.
                    let text = group.stream().to_string();
                    skip |= text == "test" || text.replace(' ', "") == "cfg(test)";
                } else if !(skip && group.delimiter() == Delimiter::Brace) {
                    let part_of = constant.as_deref();
                    walk(group.stream(), Some(group.delimiter()), part_of, found);
                } else {
                    skip = false;
                }
            }
            TokenTree::Literal(literal) => {
                let bracket = inside == Some(Delimiter::Bracket);
                let last = at + 1 == tokens.len();
                let length = bracket && last && sign(before, ';');
                let place = bracket && last && at == 0 || field(&tokens, at);
                let number = number(&literal.to_string());
                if let Some(number) = number.filter(|_| !length && !place) {
                    let line = literal.span().start().line;
                    found.push(Literal {
                        number,
                        line,
                        constant: constant.clone(),
                    });
                }
            }
            TokenTree::Ident(word) if word == "const" => {
                if let (Some(TokenTree::Ident(name)), true) =
                    (tokens.get(at + 1), sign(Some(at + 2), ':'))
                {
                    constant = Some(name.to_string());
                }
            }
            TokenTree::Punct(end) if end.as_char() == ';' => constant = part_of.map(str::to_owned),
            TokenTree::Ident(_) | TokenTree::Punct(_) => {}
        }
    }
}

/// Whether a literal is a field of a tuple, as in `pair.1`; in `0..1` it is the end of a range.
fn field(tokens: &[TokenTree], at: usize) -> bool {
    let dot = |back: usize| {
        let token = at.checked_sub(back).and_then(|at| tokens.get(at));
        matches!(token, Some(TokenTree::Punct(p)) if p.as_char() == '.')
    };
    dot(1) && !dot(2)
}

/// A literal's number without underscores and type; none for a text or a letter.
fn number(literal: &str) -> Option<String> {
    let plain = literal.replace('_', "");
    let plain = [
        "f32", "f64", "usize", "isize", "u8", "u16", "u32", "u64", "i8", "i16", "i32", "i64",
    ]
    .iter()
    .find_map(|kind| plain.strip_suffix(kind))
    .unwrap_or(&plain);
    plain.parse::<f64>().ok()?;
    Some(plain.to_owned())
}

#[test]
fn no_part_of_the_core_holds_a_number_that_is_not_told() {
    let told = crate::exceptions("allowed_numbers.txt");
    let mut met = BTreeSet::new();
    let mut untold = Vec::new();
    let mut looked_at = 0;
    for file in crate::files(&LAYERS) {
        let name = file.path.trim_start_matches("calc/core/src/");
        let name = name.replace("calc/plan/src/", "plan/");
        if name.starts_with(PACKED) {
            continue;
        }
        for literal in literals(&file.text) {
            let Literal { number, line, .. } = &literal;
            looked_at += 1;
            let value: f64 = number.parse().expect("a number");
            if [0.0, 0.5, 1.0, 2.0].contains(&value) {
                continue;
            }
            let constant = literal.constant.as_deref().unwrap_or(number);
            let key = [constant, number]
                .map(|what| format!("{name} {what}"))
                .into_iter()
                .chain([format!("any {number}")])
                .find(|key| told.contains_key(key));
            match key {
                Some(key) => _ = met.insert(key),
                None => untold.push(format!("{}:{line} has {number}", file.path)),
            }
        }
    }
    assert!(
        untold.is_empty(),
        "put it into content/, or say what it is in allowed_numbers.txt:\n{}",
        untold.join("\n")
    );
    assert!(looked_at > 300, "{looked_at}");
    for key in told.keys() {
        assert!(
            met.contains(key),
            "{key} stands nowhere: take its line out of allowed_numbers.txt"
        );
    }
}

#[test]
fn numbers_are_found_as_they_are_written() {
    let found = |code| -> Vec<String> {
        let found = literals(code);
        found.into_iter().map(|literal| literal.number).collect()
    };
    assert_eq!(found("let a = 43_560.0 * b; // 9.5"), ["43560.0"]);
    assert_eq!(found("(6.0..=10.0).contains(&x)"), ["6.0", "10.0"]);
    assert_eq!(found("max(1e-6) + x.0 + 7_u8"), ["1e-6", "7"]);
    assert_eq!(found("say(\"4.5 ft\", 4.5, '8')"), ["4.5"]);
    assert_eq!(found("days(120) && (3..9).contains(&m)"), ["120", "3", "9"]);
    assert_eq!(
        found("let a: [f64; 12] = [5; 12]; a[7] + a[7 + m]"),
        ["5", "7"]
    );
    assert_eq!(
        found("fn a() { 3 } #[cfg(test)] mod tests { fn b() { 4 } }"),
        ["3"]
    );
    assert_eq!(found("#[test] fn b() { 4 } const C: u8 = 5;"), ["5"]);
    assert_eq!(literals("a\n+ 60")[0].line, 2);
    let constant = literals("const DAYS: [u8; 2] = [31, 30]; fn a() { 7 }");
    let names: Vec<_> = constant
        .iter()
        .map(|literal| literal.constant.as_deref())
        .collect();
    assert_eq!(names, [Some("DAYS"), Some("DAYS"), None]);
}
