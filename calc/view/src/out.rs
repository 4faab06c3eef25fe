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

/// Shorthands over [`Out`].
pub trait OutExt: Out {
    /// Opens an element with a class.
    #[inline(never)]
    fn open_class(&mut self, tag: &'static str, class: &str) {
        self.open(tag);
        self.attr("class", class);
    }
    /// An element that holds only text.
    #[inline(never)]
    fn leaf(&mut self, tag: &'static str, text: &str) {
        self.open(tag);
        self.text(text);
        self.close();
    }
    /// An element with a class that holds only text.
    #[inline(never)]
    fn leaf_class(&mut self, tag: &'static str, class: &str, text: &str) {
        self.open_class(tag, class);
        self.text(text);
        self.close();
    }
}

impl<T: Out + ?Sized> OutExt for T {}

/// A sink behind one plain reference: the answer calls it some hundreds of times, and a trait object costs two
/// values and a look-up at each call. A text that is given by value is used up, so that no caller drops it.
pub struct Page<'a> {
    sink: &'a mut dyn Out,
    /// The table that is being written.
    pub(crate) table: Cells,
}

/// Words at hand, or words just made, which are used up.
pub trait Words: AsRef<str> {}
impl Words for &str {}
impl Words for String {}

/// Where a table stands that is written cell by cell.
#[derive(Default)]
pub(crate) struct Cells {
    /// Cells of a row.
    pub columns: usize,
    /// Cells written of this row.
    pub at: usize,
    /// Elements around the rows.
    pub around: usize,
}

impl<'a> Page<'a> {
    /// Over a sink.
    pub fn new(sink: &'a mut dyn Out) -> Self {
        Self {
            sink,
            table: Cells::default(),
        }
    }
    /// The sink itself, for drawings.
    pub fn sink(&mut self) -> &mut dyn Out {
        self.sink
    }
    /// As [`Out::open`].
    #[inline(never)]
    pub fn open(&mut self, tag: &'static str) {
        self.sink.open(tag);
    }
    /// As [`Out::attr`].
    #[inline(never)]
    pub fn attr(&mut self, key: &'static str, value: &str) {
        self.sink.attr(key, value);
    }
    /// As [`Out::text`].
    #[inline(never)]
    pub fn text(&mut self, text: impl Words) {
        self.sink.text(text.as_ref());
    }
    /// As [`Out::close`].
    #[inline(never)]
    pub fn close(&mut self) {
        self.sink.close();
    }
    /// As [`OutExt::open_class`]; no class where it is empty.
    #[inline(never)]
    pub fn open_class(&mut self, tag: &'static str, class: &str) {
        self.open(tag);
        if !class.is_empty() {
            self.attr("class", class);
        }
    }
    /// As [`OutExt::leaf`].
    #[inline(never)]
    pub fn leaf(&mut self, tag: &'static str, text: impl Words) {
        self.sink.leaf(tag, text.as_ref());
    }
    /// As [`OutExt::leaf_class`].
    #[inline(never)]
    pub fn leaf_class(&mut self, tag: &'static str, class: &str, text: &str) {
        self.sink.leaf_class(tag, class, text);
    }
    /// A plain paragraph.
    #[inline(never)]
    pub fn p(&mut self, text: impl Words) {
        self.sink.leaf("p", text.as_ref());
    }
    /// A paragraph with a class.
    #[inline(never)]
    pub fn p_class(&mut self, class: &str, text: impl Words) {
        self.sink.leaf_class("p", class, text.as_ref());
    }
    /// Closes two elements.
    #[inline(never)]
    pub fn close_two(&mut self) {
        self.close_all(2);
    }
    /// Closes so many elements.
    #[inline(never)]
    pub fn close_all(&mut self, count: usize) {
        for _ in 0..count {
            self.close();
        }
    }
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
