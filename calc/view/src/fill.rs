//! A template and what fills its gaps; written with `cat!`.

/// A text that is being put together: what stands so far, and what of the template is to come.
pub(crate) struct Filled {
    text: String,
    rest: &'static str,
}

impl Filled {
    /// A template, whose gaps are marked by U+0001, up to its first gap.
    #[inline(never)]
    pub fn new(template: &'static str) -> Self {
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

    #[inline(never)]
    fn put(&mut self, text: &str) {
        self.text.push_str(text);
        self.piece();
    }

    #[inline(never)]
    fn take(&mut self, text: String) {
        self.put(&text);
    }

    /// The whole text.
    #[inline(never)]
    pub fn done(self) -> String {
        self.text
    }
}

/// What fills a gap.
pub(crate) trait Gap {
    /// Writes it, and what follows it up to the next gap.
    fn fill(self, filled: &mut Filled);
}

impl Gap for String {
    fn fill(self, filled: &mut Filled) {
        filled.take(self);
    }
}

impl<T: AsRef<str> + ?Sized> Gap for &T {
    fn fill(self, filled: &mut Filled) {
        filled.put(self.as_ref());
    }
}

#[cfg(test)]
mod tests {
    #[test]
    fn gaps_are_filled_in_order_and_a_text_is_never_a_template() {
        let typed = String::from("\u{1}");
        assert_eq!(cat!("a ", &typed, ", ", typed, "b"), "a \u{1}, \u{1}b");
        assert_eq!(cat!("1", String::from("2"), &&"3", "4"), "1234");
    }
}
