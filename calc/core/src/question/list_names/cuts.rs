//! What is cut from a cell before its name is looked up again: brackets, a cultivar, authors. The sign of a hybrid never is.

/// Ranks below the species: they and what follows are cut.
const RANKS: [&str; 10] = [
    "var.", "var", "ssp.", "ssp", "subsp.", "subsp", "f.", "cv.", "cv", "forma",
];

/// One kind of quote, of space and of dash; `_` and a dot between letters are spaces.
pub(super) fn tidied(typed: &str) -> String {
    let mut text = String::with_capacity(typed.len());
    let letters: Vec<char> = typed.chars().collect();
    for (at, c) in letters.iter().enumerate() {
        let next = letters.get(at + 1).copied().unwrap_or(' ');
        let before = if at > 0 { letters[at - 1] } else { ' ' };
        text.push(match c {
            '‘' | '’' | '´' | '`' | '‚' => '\'',
            '“' | '”' | '„' | '«' | '»' => '"',
            '–' | '—' | '‐' | '‑' => '-',
            '_' => ' ',
            '.' if before.is_lowercase() && next.is_lowercase() => ' ',
            '\u{a0}' | '\t' | '\n' | '\r' => ' ',
            c => *c,
        });
    }
    text
}

/// The text outside brackets and the text inside; a bracket that is not closed goes to the end.
pub(super) fn without_brackets(text: &str) -> (String, String) {
    let (mut outside, mut inside) = (String::new(), String::new());
    let mut depth = 0_usize;
    for c in text.chars() {
        match c {
            '(' | '[' | '{' => {
                depth += 1;
                outside.push(' ');
                inside.push(' ');
            }
            ')' | ']' | '}' => depth = depth.saturating_sub(1),
            c if depth > 0 => inside.push(c),
            c => outside.push(c),
        }
    }
    if inside.trim().is_empty() && !text.contains(['(', '[', '{', ')', ']', '}']) {
        return (text.to_owned(), String::new());
    }
    let words = |text: &str| text.split_whitespace().collect::<Vec<_>>().join(" ");
    (words(&outside), words(&inside))
}

/// The text in front of the first quote that is no apostrophe; whole where there is none, or nothing stands in front.
pub(super) fn without_cultivar(text: &str) -> String {
    let letters: Vec<(usize, char)> = text.char_indices().collect();
    for (at, (place, c)) in letters.iter().enumerate() {
        if !matches!(c, '\'' | '"') {
            continue;
        }
        let letter = |at: Option<usize>| {
            at.and_then(|at| letters.get(at))
                .is_some_and(|(_, c)| c.is_alphabetic())
        };
        let inside = letter(at.checked_sub(1)) && letter(Some(at + 1));
        if inside {
            continue;
        }
        let front = text[..*place].trim();
        if front.is_empty() {
            return text.to_owned();
        }
        // A quote that only closes leaves the cultivar in front: its first word begins with a capital.
        if letter(at.checked_sub(1)) {
            let words: Vec<&str> = front.split_whitespace().collect();
            let begins = words.iter().skip(1).position(|word| is_capital(word));
            return begins.map_or_else(|| front.to_owned(), |at| words[..=at].join(" "));
        }
        return front.to_owned();
    }
    text.to_owned()
}

/// Whether a word begins with a capital.
pub(super) fn is_capital(word: &str) -> bool {
    word.chars().next().is_some_and(char::is_uppercase)
}

/// Whether a word is shortened: `A.`, `Ac.`.
pub(super) fn is_initial(word: &str) -> bool {
    let letters: Vec<char> = word.trim_end_matches('.').chars().collect();
    let short = letters.len() == 1 || (letters.len() <= 3 && word.ends_with('.'));
    short && letters.iter().all(|c| c.is_alphabetic()) && !word.eq_ignore_ascii_case("x")
}

/// Genus and epithet in front of authors, a year, a rank below the species or a third small word; none where what
/// follows could make it another tree: the sign of a hybrid, or a word that joins two.
pub(super) fn without_authors(words: &[&str]) -> Option<String> {
    let hybrid = |word: &str| matches!(word, "x" | "X" | "×");
    let end = match words {
        [_, sign, _, ..] if hybrid(sign) => 3,
        [_, epithet, ..] if epithet.chars().all(|c| c.is_lowercase() || c == '-') => 2,
        // "ACER NEGUNDO L."
        [_, _, ..] => 2,
        _ => return None,
    };
    let rest = &words[end..];
    if rest.is_empty() || rest.iter().any(|word| hybrid(word) || word.contains('×')) {
        return None;
    }
    let joins = |word: &&str| {
        matches!(
            *word,
            "or" | "and" | "oder" | "und" | "ou" | "with" | "hybrid" | "+"
        )
    };
    if rest.iter().any(joins) {
        return None;
    }
    let short = words[..end].join(" ");
    let rank = RANKS.contains(&rest[0]);
    let author = rest[0].starts_with(|c: char| c.is_uppercase() || c.is_ascii_digit() || c == '\'');
    let trinomial = rest.len() == 1 && rest[0].chars().all(|c| c.is_ascii_lowercase());
    (rank || author || trinomial).then_some(short)
}
