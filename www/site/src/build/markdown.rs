//! Markdown to HTML, for the changes page and for messages on pages. The files are our own;
//! raw HTML in them is shown as text all the same, so that none slips in.

use crate::build::single;
use anyhow::{Result, bail};
use calc_view::out::escaped;
use pulldown_cmark::{Event, Options, Parser, Tag, TagEnd, html};

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

/// Renders one message: its links, code and bold. A link to a folder leads to that page under `home`, one to a file to
/// that file under `base`; a page that is one file is downloaded, in the language of `home`.
///
/// # Errors
/// Where there is anything else in it.
pub(crate) fn inline(text: &str, home: &str, base: &str) -> Result<String> {
    let mut out = String::with_capacity(text.len() + 16);
    for event in Parser::new(text) {
        match event {
            Event::Start(Tag::Paragraph) | Event::End(TagEnd::Paragraph) => {}
            Event::Text(text) => out.push_str(&escaped(&text)),
            Event::Code(code) => out.extend(["<code>", &escaped(&code), "</code>"]),
            Event::Start(Tag::Strong) => out.push_str("<b>"),
            Event::End(TagEnd::Strong) => out.push_str("</b>"),
            Event::Start(Tag::Link { dest_url, .. }) => {
                let at = if dest_url.ends_with('/') { home } else { base };
                let language = home.strip_prefix(base).unwrap_or_default();
                let (file, download) = if *dest_url == *single::NAME {
                    (single::name(language.trim_end_matches('/')), " download")
                } else {
                    (dest_url.into_string(), "")
                };
                out.extend(["<a href=\"", at, &escaped(&file), "\"", download, ">"]);
            }
            Event::End(TagEnd::Link) => out.push_str("</a>"),
            other => bail!("only links, code and bold are read in it, not {other:?}"),
        }
    }
    Ok(out)
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

    #[test]
    fn a_message_has_links_code_and_bold_and_nothing_else() {
        let html = inline("**A** [b & c](d/), `e<f`, \"g\"", "/es/", "/").unwrap();
        let expected =
            "<b>A</b> <a href=\"/es/d/\">b &amp; c</a>, <code>e&lt;f</code>, &quot;g&quot;";
        assert_eq!(html, expected);
        let one = inline("[one](slipbark-single.html)", "/t/es/", "/t/").unwrap();
        assert_eq!(
            one,
            "<a href=\"/t/slipbark-single-es.html\" download>one</a>"
        );
        for block in ["- a", "# a", "1. a", "![a](b)", "*a*"] {
            assert!(inline(block, "/", "/").is_err(), "{block}");
        }
    }
}
