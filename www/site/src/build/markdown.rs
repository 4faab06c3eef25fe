//! Markdown to HTML, for the changes page and articles. The files are our own;
//! raw HTML in them is shown as text all the same, so that none slips in.

use calc_view::out::escaped;
use pulldown_cmark::{Event, Options, Parser, html};

/// Renders one Markdown text.
pub(crate) fn render(text: &str) -> String {
    let events = Parser::new_ext(text, Options::ENABLE_TABLES).map(|event| match event {
        Event::Html(raw) | Event::InlineHtml(raw) => Event::Text(raw),
        other => other,
    });
    let mut out = String::with_capacity(text.len() * 2);
    html::push_html(&mut out, events);
    out
}

/// The first heading's text, escaped, and the rest of the file.
pub(crate) fn title_and_rest(text: &str) -> Option<(String, &str)> {
    let (first, rest) = text.split_once('\n')?;
    Some((escaped(first.strip_prefix("# ")?.trim()), rest))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn markdown_is_rendered_and_raw_html_is_not() {
        let page = render("## One\n\nA *word* <script>x</script>\n");
        assert!(
            page.contains("<h2>One</h2>") && page.contains("<em>word</em>"),
            "{page}"
        );
        assert!(!page.contains("<script"), "{page}");
    }
}
