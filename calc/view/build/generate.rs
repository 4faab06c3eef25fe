//! Writes the Rust of the messages: a constant where there is no gap, else a function with typed gaps.

use crate::check::{Asked, Checked, Enum, Gap, KINDS, UNSAID};
use crate::file::{Part, Wording};
use std::fmt::Write;

/// Words of Rust that a gap may be called.
const KEYWORDS: [&str; 12] = [
    "as", "for", "if", "in", "loop", "match", "move", "of", "ref", "type", "use", "where",
];

/// The whole file.
pub(crate) fn code(messages: &[Checked], enums: &[Enum]) -> String {
    let mut code = String::new();
    let mut number = 0;
    for message in messages {
        one(&mut code, message, number, enums);
        number += message.wordings.len();
    }
    code
}

fn snake(id: &str) -> String {
    id.replace('-', "_")
}

/// The key of an attribute: no attribute begins with a digit, so `of-10` stands for `10`.
pub(crate) fn key(word: &str) -> &str {
    match word.strip_prefix("of-") {
        Some(rest) if rest.starts_with(|c: char| c.is_ascii_digit()) => rest,
        _ => word,
    }
}

fn variable(name: &str) -> String {
    let mut name = snake(name);
    if KEYWORDS.contains(&&*name) {
        name.push('_');
    }
    name
}

/// `crown-full` as the enum has it: `CrownFull`.
pub(crate) fn pascal(kebab: &str) -> String {
    kebab
        .split('-')
        .map(|word| {
            let mut letters = word.chars();
            letters.next().map_or_else(String::new, |first| {
                first.to_uppercase().collect::<String>() + letters.as_str()
            })
        })
        .collect()
}

/// The English of a wording, as it is written.
fn said(parts: &[Part]) -> String {
    let mut text = String::new();
    for part in parts {
        match part {
            Part::Text(words) | Part::Other(words) => text.push_str(words),
            Part::Gap(name) => _ = write!(text, "{{ ${name} }}"),
            Part::Choice { cases, .. } => {
                let last = cases.last().map(|(_, parts)| said(parts));
                text.push_str(&last.unwrap_or_default());
            }
        }
    }
    text
}

fn doc(code: &mut String, wordings: &[Wording]) {
    let Some(first) = wordings.first() else {
        return;
    };
    let text = said(&first.parts).replace(['[', ']'], "|");
    let _ = writeln!(code, "/// “{text}”: `{}`", first.place);
}

fn one(code: &mut String, message: &Checked, number: usize, enums: &[Enum]) {
    let name = snake(&message.id);
    let of = message.of.map(|of| &enums[of]);
    if message.asked == Asked::AsLines {
        doc(code, &message.wordings);
        let mut lines = String::new();
        for (at, wording) in message.wordings.iter().enumerate() {
            let value = match &*wording.word {
                UNSAID => String::new(),
                word => snake(word),
            };
            let _ = write!(lines, "({value:?}, Word({})), ", number + at);
        }
        let name = name.to_uppercase();
        let _ = writeln!(code, "pub const {name}: Lines = &[{lines}];");
        return;
    }
    if message.asked == Asked::ByKey {
        doc(code, &message.wordings);
        let keys: Vec<&str> = message.wordings.iter().map(|it| key(&it.word)).collect();
        let _ = writeln!(
            code,
            "pub fn {name}(of: &str) -> Option<Word> {{ keyed({:?}, of, {number}) }}",
            keys.join("|")
        );
        return;
    }
    if message.gaps.is_empty() && of.is_none() {
        doc(code, &message.wordings);
        let name = name.to_uppercase();
        let _ = writeln!(code, "pub const {name}: Word = Word({number});");
        return;
    }
    let mut params: Vec<String> = Vec::new();
    let mut word = format!("Word({number})");
    if let Some(of) = of {
        params.push(format!("of: {}", of.path));
        let mut arms = String::new();
        for (at, variant) in of.variants.iter().enumerate() {
            let _ = write!(
                arms,
                "{}::{} => {}, ",
                of.path,
                pascal(variant),
                number + at
            );
        }
        word = format!("Word(match of {{ {arms}}})");
    }
    let nodes = message.gaps.iter().filter(|gap| is_node(gap)).count();
    let filled: Vec<&Gap> = message.gaps.iter().filter(|gap| !is_node(gap)).collect();
    // Two gaps of one type change places unseen: then each has its name where it is filled.
    let named = filled
        .iter()
        .enumerate()
        .any(|(at, gap)| filled[..at].iter().any(|other| rust(other) == rust(gap)));
    let from = if named { "gaps." } else { "" };
    if named {
        gaps_struct(code, message, &filled);
        let types: Vec<String> = filled.iter().map(|gap| into_type(gap)).collect();
        params.push(format!(
            "gaps: {}<{}>",
            pascal(&message.id),
            types.join(", ")
        ));
    } else {
        for gap in &filled {
            params.push(format!("{}: {}", variable(&gap.name), into_type(gap)));
        }
    }
    let mut node = 0;
    let gaps: Vec<String> = message
        .gaps
        .iter()
        .map(|gap| {
            if is_node(gap) {
                node += 1;
                return format!("Gap::Node({})", node - 1);
            }
            let rust = rust(gap);
            format!("Into::<{rust}<'_>>::into({from}{}).0", variable(&gap.name))
        })
        .collect();
    let lifetime = if filled.is_empty() { "" } else { "<'a>" };
    if nodes > 0 {
        params.push("parts: Parts<'_>".to_owned());
    }
    doc(code, &message.wordings);
    if nodes > 0 {
        let list: Vec<&str> = message
            .gaps
            .iter()
            .filter(|gap| is_node(gap))
            .map(|gap| &*gap.name)
            .collect();
        let _ = writeln!(
            code,
            "///\n/// Drawn by the caller, from 0: {}.",
            list.join(", ")
        );
    }
    let (result, body) = if nodes > 0 {
        ("", format!("nodes({word}, &[{}], parts);", gaps.join(", ")))
    } else {
        match &*gaps {
            [] => (" -> Word", word),
            [one] => (" -> String", format!("one({word}, {one})")),
            [one, two] => (" -> String", format!("two({word}, {one}, {two})")),
            all => (" -> String", format!("many({word}, [{}])", all.join(", "))),
        }
    };
    let _ = writeln!(
        code,
        "pub fn {name}{lifetime}({}){result} {{ {body} }}",
        params.join(", ")
    );
}

fn is_node(gap: &Gap) -> bool {
    rust(gap) == "Node"
}

fn rust(gap: &Gap) -> &'static str {
    KINDS[gap.kind].rust
}

fn into_type(gap: &Gap) -> String {
    format!("impl Into<{}<'a>>", rust(gap))
}

fn gaps_struct(code: &mut String, message: &Checked, filled: &[&Gap]) {
    let letters: Vec<String> = (0..filled.len())
        .map(|at| char::from(b'A' + at as u8).to_string())
        .collect();
    let _ = writeln!(
        code,
        "/// What fills [`{}`].\npub struct {}<{}> {{",
        snake(&message.id),
        pascal(&message.id),
        letters.join(", ")
    );
    for (gap, letter) in filled.iter().zip(&letters) {
        let (name, kind) = (variable(&gap.name), KINDS[gap.kind].name);
        let _ = writeln!(code, "/// {kind}\npub {name}: {letter},");
    }
    code.push_str("}\n");
}
