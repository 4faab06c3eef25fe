//! Where rendered markup goes: one walk of the view writes text for a static page or nodes for a live one.

/// A sink for markup. The same calls make an HTML string at build time and DOM nodes in the browser,
/// so both show the same thing. Names and attribute keys are fixed words of ours; only values and text
/// carry what a person typed, and every sink must treat those as text, never as markup.
pub trait Out {
    /// Opens an element. SVG elements are told apart by standing inside `svg`.
    fn open(&mut self, tag: &'static str);
    /// Sets an attribute of the element opened last; must come before its text and children.
    fn attr(&mut self, key: &'static str, value: &str);
    /// Adds text.
    fn text(&mut self, text: &str);
    /// Closes the element opened last.
    fn close(&mut self);
}

/// Writes an HTML string. Everything that is not a fixed word is escaped.
#[derive(Default)]
pub struct Html {
    text: String,
    open: Vec<(&'static str, bool)>,
}

/// Elements that HTML never closes.
const VOID: [&str; 6] = ["br", "hr", "img", "input", "link", "meta"];

impl Html {
    /// The markup so far.
    #[must_use]
    pub fn into_string(self) -> String {
        debug_assert!(self.open.is_empty(), "an element was left open");
        self.text
    }

    fn finish_tag(&mut self) {
        if let Some((_, started)) = self.open.last_mut()
            && !*started
        {
            *started = true;
            self.text.push('>');
        }
    }
}

impl Out for Html {
    fn open(&mut self, tag: &'static str) {
        self.finish_tag();
        self.text.push('<');
        self.text.push_str(tag);
        self.open.push((tag, false));
    }

    fn attr(&mut self, key: &'static str, value: &str) {
        debug_assert!(
            self.open.last().is_some_and(|(_, started)| !started),
            "attribute after content"
        );
        self.text.push(' ');
        self.text.push_str(key);
        self.text.push_str("=\"");
        escape(&mut self.text, value);
        self.text.push('"');
    }

    fn text(&mut self, text: &str) {
        self.finish_tag();
        escape(&mut self.text, text);
    }

    fn close(&mut self) {
        self.finish_tag();
        if let Some((tag, _)) = self.open.pop()
            && !VOID.contains(&tag)
        {
            self.text.push_str("</");
            self.text.push_str(tag);
            self.text.push('>');
        }
    }
}

/// Text as HTML, within an element or an attribute in double quotes.
#[must_use]
pub fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    escape(&mut out, text);
    out
}

fn escape(into: &mut String, text: &str) {
    for c in text.chars() {
        match c {
            '&' => into.push_str("&amp;"),
            '<' => into.push_str("&lt;"),
            '>' => into.push_str("&gt;"),
            '"' => into.push_str("&quot;"),
            c => into.push(c),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_a_person_typed_never_becomes_markup() {
        let mut html = Html::default();
        html.open("p");
        html.attr("title", "\"><script>");
        html.text("<b>&");
        html.close();
        assert_eq!(
            html.into_string(),
            "<p title=\"&quot;&gt;&lt;script&gt;\">&lt;b&gt;&amp;</p>"
        );
    }
}
