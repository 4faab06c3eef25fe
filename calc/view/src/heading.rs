//! Headings, whose level the host sets.

use crate::out::Page;

const HEADINGS: [&str; 6] = ["h1", "h2", "h3", "h4", "h5", "h6"];

/// A heading; nothing is below `h6`.
pub fn heading(out: &mut Page<'_>, level: u8, class: &str, id: &str, text: &str) {
    open_heading(out, level, class);
    if !id.is_empty() {
        out.attr("id", id);
    }
    out.text(text);
    out.close();
}

/// Opens one; nothing is below `h6`.
pub fn open_heading(out: &mut Page<'_>, level: u8, class: &str) {
    out.open_class(HEADINGS[usize::from(level.clamp(1, 6)) - 1], class);
}
