//! Writes a language's pack: a head, then every wording in the order of the first language, a NUL between.

use crate::file::{Ask, Part, asked};

/// Stands for gap 1; gap 7 is U+0007.
const FIRST_GAP: u8 = 1;
/// The most gaps of a message.
pub(crate) const MOST_GAPS: usize = 7;
/// Around a choice.
const CHOICE: char = '\u{e}';
/// Behind the key of a case.
const KEY: char = '\u{f}';
/// Behind the text of a case.
const CASE: char = '\u{10}';

/// One wording, its gaps by their place in `gaps`.
pub(crate) fn wording(parts: &[Part], gaps: &[&str]) -> String {
    let mut text = String::new();
    write(parts, gaps, &mut text);
    text
}

fn sign(name: &str, gaps: &[&str]) -> char {
    let at = gaps.iter().position(|gap| *gap == name).unwrap_or(0);
    char::from(FIRST_GAP + at as u8)
}

fn write(parts: &[Part], gaps: &[&str], into: &mut String) {
    for part in parts {
        match part {
            Part::Text(text) | Part::Other(text) => into.push_str(text),
            Part::Gap(name) => into.push(sign(name, gaps)),
            Part::Choice { name, cases } => {
                let (gap, ask) = asked(name);
                into.push(CHOICE);
                into.push(sign(gap, gaps));
                into.push(match ask {
                    Ask::Number => 'n',
                    Ask::Gender => 'g',
                    Ask::Sound => 's',
                });
                for (at, (key, parts)) in cases.iter().enumerate() {
                    into.push_str(if at + 1 == cases.len() { "*" } else { key });
                    into.push(KEY);
                    write(parts, gaps, into);
                    into.push(CASE);
                }
                into.push(CHOICE);
            }
        }
    }
}

/// The file: the language, the mark of the build, the decimal sign, names of trees, texts of tables, then the wordings.
pub(crate) fn file(
    language: &str,
    mark: u32,
    decimal: char,
    names: &[[String; 3]],
    prose: &str,
    wordings: &[String],
) -> String {
    let names: Vec<String> = names.iter().map(|row| row.join("=")).collect();
    let names = names.join("|");
    let mut file = format!("{language}\0{mark:08x}\0{decimal}\0{names}\0{prose}");
    for wording in wordings {
        file.push('\0');
        file.push_str(wording);
    }
    file
}

/// FNV-1a: a pack of another build has another mark, and is refused.
pub(crate) fn mark(names: &str) -> u32 {
    names.bytes().fold(0x811c_9dc5, |mark, byte| {
        (mark ^ u32::from(byte)).wrapping_mul(0x0100_0193)
    })
}

/// A text two in five longer and with accents everywhere: what doesn't fit shows, and so does what is not a message.
pub(crate) fn stretched(parts: &[Part]) -> Vec<Part> {
    parts
        .iter()
        .map(|part| match part {
            Part::Text(text) => Part::Text(stretch(text)),
            Part::Choice { name, cases } => Part::Choice {
                name: name.clone(),
                cases: cases
                    .iter()
                    .map(|(key, parts)| (key.clone(), stretched(parts)))
                    .collect(),
            },
            other => other.clone(),
        })
        .collect()
}

pub(crate) fn stretch(text: &str) -> String {
    let mut longer = String::new();
    let mut letters = 0;
    for c in text.chars() {
        let accented = match c {
            'a' => 'á',
            'e' => 'é',
            'i' => 'í',
            'o' => 'ó',
            'u' => 'ú',
            'c' => 'ç',
            'n' => 'ñ',
            's' => 'š',
            'y' => 'ý',
            c => c,
        };
        longer.push(accented);
        if c.is_alphabetic() {
            letters += 1;
            if letters % 2 == 0 {
                longer.extend(accented.to_lowercase());
            }
        }
    }
    longer
}
