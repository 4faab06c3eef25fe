//! A template and what fills its gaps; written with `cat!`. Plain joining would take 5.6 kB more in the browser.

/// A text that is being put together: what stands so far, and what of the template is to come.
pub(crate) struct Filled {
    text: String,
    rest: &'static str,
}

impl Filled {
    /// A template, whose gaps are marked by U+0001, up to its first gap.
    pub(crate) fn new(template: &'static str) -> Self {
        let mut filled = Self {
            text: String::new(),
            rest: template,
        };
        filled.piece();
        filled
    }

    /// Goes on to the next gap.
    fn piece(&mut self) {
        let (piece, rest) = self.rest.split_once('\u{1}').unwrap_or((self.rest, ""));
        self.text.push_str(piece);
        self.rest = rest;
    }

    fn put(&mut self, text: &str) {
        self.text.push_str(text);
        self.piece();
    }

    fn take(&mut self, text: String) {
        self.put(&text);
    }

    /// The whole text.
    pub(crate) fn done(self) -> String {
        self.text
    }
}

/// What fills a gap: a text that is used up, or one that stays.
pub(crate) trait Piece {
    /// Writes it, and what follows it up to the next gap.
    fn fill(self, filled: &mut Filled);
}

impl Piece for String {
    fn fill(self, filled: &mut Filled) {
        filled.take(self);
    }
}

impl Piece for &str {
    fn fill(self, filled: &mut Filled) {
        filled.put(self);
    }
}

/// What can be made a piece.
pub(crate) trait Gap {
    /// As one of the two.
    type Piece: Piece;
    /// Makes it.
    fn piece(self) -> Self::Piece;
}

impl Gap for String {
    type Piece = Self;
    fn piece(self) -> Self {
        self
    }
}

impl<'a, T: AsRef<str> + ?Sized> Gap for &'a T {
    type Piece = &'a str;
    fn piece(self) -> &'a str {
        self.as_ref()
    }
}

/// A template with one gap. Most have one or two, and for each of those one call costs less than a call for each piece.
pub(crate) fn one(template: &'static str, gap: impl Piece) -> String {
    let mut filled = Filled::new(template);
    gap.fill(&mut filled);
    filled.text
}

/// A template with two gaps.
pub(crate) fn two(template: &'static str, first: impl Piece, second: impl Piece) -> String {
    let mut filled = Filled::new(template);
    first.fill(&mut filled);
    second.fill(&mut filled);
    filled.text
}

#[cfg(test)]
mod tests {
    #[test]
    fn gaps_are_filled_in_order_and_a_text_is_never_a_template() {
        let typed = String::from("\u{1}");
        assert_eq!(cat!("a ", &typed, ", ", &typed, "b"), "a \u{1}, \u{1}b");
        assert_eq!(cat!("a ", typed), "a \u{1}");
        let last = String::from("2");
        assert_eq!(cat!("1", &&"b", &last, ", ", last.clone(), "4"), "1b2, 24");
    }
}
