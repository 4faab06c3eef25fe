//! Pieces of text, in little code. The library's search for a text in a text, its cutting by bytes and its
//! classes of letters bring some 12 kB into the browser: tables of every script, and a report for each wrong cut.

/// Where a piece begins in a text, in bytes.
#[must_use]
pub fn place(text: &str, piece: &str) -> Option<usize> {
    let starts = |at: &usize| {
        text.as_bytes()
            .iter()
            .skip(*at)
            .zip(piece.bytes())
            .all(|(a, b)| *a == b)
    };
    let last = text.len().checked_sub(piece.len())?;
    (0..=last).find(starts)
}

/// Whether a piece stands in a text.
#[must_use]
pub fn holds(text: &str, piece: &str) -> bool {
    place(text, piece).is_some()
}

/// A text in two, cut at a place that was found in it; whole where no letter begins there.
#[must_use]
pub fn cut(text: &str, at: usize) -> (&str, &str) {
    text.split_at_checked(at).unwrap_or((text, ""))
}

/// What stands behind so many bytes; nothing where no letter begins there.
#[must_use]
pub fn behind(text: &str, at: usize) -> &str {
    cut(text, at).1
}

/// Whether it is a letter. Of signs beyond ASCII, those that people put beside numbers and names are told
/// from letters: Latin signs, punctuation, arrows, symbols.
#[must_use]
pub fn is_letter(c: char) -> bool {
    match c {
        'ª' | 'µ' | 'º' => true,
        '×' | '÷' => false,
        '\0'..='\u{7f}' => c.is_ascii_alphabetic(),
        '\u{80}'..='\u{bf}' | '\u{2000}'..='\u{206f}' | '\u{20a0}'..='\u{20cf}' => false,
        '\u{2190}'..='\u{2bff}' | '\u{3000}'..='\u{3004}' | '\u{fe00}'..='\u{fe0f}' => false,
        '\u{1f000}'.. => false,
        _ => true,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn pieces_are_found_as_the_library_finds_them() {
        let texts = [
            "",
            "a",
            "ab",
            "aab",
            "½ in",
            "red oak",
            ": see also",
            "aaab",
            "’’x",
        ];
        for text in texts {
            for piece in texts {
                assert_eq!(
                    place(text, piece),
                    text.find(piece),
                    "{piece:?} in {text:?}"
                );
            }
            for at in 0..=text.len() + 1 {
                let (front, back) = cut(text, at);
                assert_eq!(front.to_owned() + back, text);
                assert!(front.len() == at || back.is_empty());
            }
        }
    }

    #[test]
    fn letters_of_the_languages_of_names_are_letters() {
        for c in ('\0'..='\u{24f}')
            .chain('\u{370}'..='\u{373}')
            .chain('α'..='ω')
            .chain('а'..='я')
        {
            assert_eq!(is_letter(c), c.is_alphabetic(), "{c:?}");
        }
        for c in "’‘“”–—…″′°½×→€\u{a0}\u{2009}🌳".chars() {
            assert!(!is_letter(c), "{c:?}");
        }
    }
}
