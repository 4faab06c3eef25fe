//! Markup as a row of texts, for a script that makes the elements: a worker has no document.

use calc_view::out::Out;
use calc_view::page::Page;

/// A row of texts; the first letter of each tells what it is: `<` opens an element, `=` is the name of an attribute,
/// whose value comes next as it is, `'` is text, `>` closes the element that was opened last.
#[derive(Default)]
pub(crate) struct Recorded(Vec<String>);

impl Out for Recorded {
    fn open(&mut self, tag: &'static str) {
        self.0.push(["<", tag].concat());
    }

    fn attr(&mut self, key: &'static str, value: &str) {
        self.0.push(["=", key].concat());
        self.0.push(value.to_owned());
    }

    fn text(&mut self, text: &str) {
        self.0.push(["'", text].concat());
    }

    fn close(&mut self) {
        self.0.push(">".to_owned());
    }
}

/// What is drawn, recorded.
pub(crate) fn recorded(draw: impl FnOnce(&mut Page<'_>)) -> Vec<String> {
    let mut recorded = Recorded::default();
    draw(&mut Page::new(&mut recorded));
    recorded.0
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_a_person_typed_stays_text() {
        let ops = recorded(|out| out.leaf_class("p", "a", "<b>&"));
        assert_eq!(ops, ["<p", "=class", "a", "'<b>&", ">"]);
    }
}
