//! The text of an article: Markdown (CommonMark, with tables) to the sections of its page. `[S02]` names a source, a quote
//! is a note at the side, a paragraph that is bold as a whole stands out, `{picture}` and `{calculator}` say where those are.

use crate::build::lines::Lines;
use anyhow::Result;
use calc_view::out::escaped;
use calc_view::words::m;
use pulldown_cmark::{BrokenLink, CowStr, Event, HeadingLevel, Options, Parser, Tag, TagEnd, html};
use std::collections::BTreeSet;
use std::ops::Range;

/// What a claim may rest on without a source: the terms of the page of sources, where they are told.
pub(crate) const BARE: [&str; 2] = ["own", "practice"];

/// A section: from one heading to the next. The first may have none.
#[derive(Default)]
pub(crate) struct Section {
    pub(crate) title: String,
    pub(crate) id: String,
    /// Its text, as HTML.
    pub(crate) body: String,
    /// What stands at its side, as HTML.
    pub(crate) side: String,
    pub(crate) pictured: bool,
    pub(crate) calculates: bool,
}

/// What the text is made into.
pub(crate) struct Around<'a> {
    /// Where the pages of the language begin.
    pub(crate) home: &'a str,
    /// The ids of the sources, in the order of their numbers.
    pub(crate) sources: &'a [String],
    /// Whether each number must have its source: in the project's own articles.
    pub(crate) strict: bool,
}

type Spot<'a> = (Event<'a>, Range<usize>);

/// Reads the text of a file, which begins at a byte of it, in the language in use.
///
/// # Errors
/// A source that the head does not name, or one that the text does not; markup that is not read; a number without a source: with file
/// and line.
pub(crate) fn read(lines: &Lines<'_>, begin: usize, around: &Around<'_>) -> Result<Vec<Section>> {
    let text = &lines.text[begin..];
    let mut cite = |link: BrokenLink<'_>| {
        let to = CowStr::from(format!("{CITE}{}", link.reference));
        Some((to, CowStr::from("")))
    };
    let parser =
        Parser::new_with_broken_link_callback(text, Options::ENABLE_TABLES, Some(&mut cite));
    let events: Vec<Spot<'_>> = parser.into_offset_iter().collect();
    let mut reader = Reader {
        lines,
        begin,
        around,
        cited: BTreeSet::new(),
    };
    let sections = reader.sections(&events)?;
    for id in around.sources {
        if !reader.cited.contains(id.as_str()) {
            let what = format!("the head names the source {id}, which the text does not cite");
            return Err(lines.problem(0, what));
        }
    }
    Ok(sections)
}

const CITE: &str = "cite:";

struct Reader<'a> {
    lines: &'a Lines<'a>,
    begin: usize,
    around: &'a Around<'a>,
    cited: BTreeSet<&'a str>,
}

impl<'a> Reader<'a> {
    fn problem(&self, at: usize, what: impl std::fmt::Display) -> anyhow::Error {
        self.lines.problem(self.begin + at, what)
    }

    fn sections(&mut self, events: &[Spot<'a>]) -> Result<Vec<Section>> {
        let mut sections = vec![Section::default()];
        let mut at = 0;
        while at < events.len() {
            let (event, place) = &events[at];
            let end = at + end_of(&events[at..]);
            let inside = &events[at..end];
            let section = sections.last_mut().expect("there is always one");
            match event {
                Event::Start(Tag::Heading {
                    level: HeadingLevel::H2,
                    ..
                }) => {
                    let title = plain(inside);
                    let id = slug(&title);
                    if sections.iter().any(|known| known.id == id) {
                        let what = format!("two headings read \"{title}\"");
                        return Err(self.problem(place.start, what));
                    }
                    sections.push(Section {
                        title,
                        id,
                        ..Section::default()
                    });
                }
                Event::Start(Tag::BlockQuote(_)) => {
                    for part in blocks(&inside[1..inside.len() - 1]) {
                        self.block(part, "h3", "", &mut section.side)?;
                    }
                }
                // A wide one scrolls inside its own region.
                Event::Start(Tag::Table(_)) => {
                    let label = escaped(&m::articles_table(section.title.as_str()));
                    section.body.push_str(&format!(
                        "<div class=\"tw\" tabindex=\"0\" role=\"region\" aria-label=\"{label}\">"
                    ));
                    self.block(inside, "p", "", &mut section.body)?;
                    section.body.push_str("</div>\n");
                }
                _ => match &*plain(inside) {
                    "{picture}" => section.pictured = true,
                    "{calculator}" => section.calculates = true,
                    _ => self.block(inside, "p", " class=\"pull\"", &mut section.body)?,
                },
            }
            at = end;
        }
        Ok(sections)
    }

    /// Writes one block. One that is bold as a whole becomes an element of its own kind.
    fn block(
        &mut self,
        events: &[Spot<'a>],
        bold: &str,
        class: &str,
        out: &mut String,
    ) -> Result<()> {
        let inline = match events {
            [
                (Event::Start(Tag::Paragraph), _),
                (Event::Start(Tag::Strong), _),
                inside @ ..,
                (Event::End(TagEnd::Strong), _),
                (Event::End(TagEnd::Paragraph), _),
            ] if !inside
                .iter()
                .any(|(event, _)| matches!(event, Event::End(TagEnd::Strong))) =>
            {
                Some(inside)
            }
            _ => None,
        };
        let mapped = self.mapped(inline.unwrap_or(events))?;
        if inline.is_some() {
            out.push_str(&format!("<{bold}{class}>"));
        }
        html::push_html(out, mapped.into_iter());
        if inline.is_some() {
            out.push_str(&format!("</{bold}>\n"));
        }
        Ok(())
    }

    /// The events with links and sources as the page has them.
    fn mapped(&mut self, events: &[Spot<'a>]) -> Result<Vec<Event<'a>>> {
        let mut out = Vec::with_capacity(events.len());
        let mut claim = Claim::default();
        let mut skip = false;
        for (event, place) in events {
            match event {
                Event::Html(_) | Event::InlineHtml(_) => {
                    return Err(self.problem(place.start, "markup of HTML is not read"));
                }
                Event::Start(Tag::Image { .. }) => {
                    let what = "pictures are drawn: name one in the head";
                    return Err(self.problem(place.start, what));
                }
                Event::Start(Tag::Heading { level, .. }) if *level != HeadingLevel::H3 => {
                    let what = "headings are of two levels: ## and ###";
                    return Err(self.problem(place.start, what));
                }
                Event::Start(Tag::Link { dest_url, .. }) if dest_url.starts_with(CITE) => {
                    let id = &dest_url[CITE.len()..];
                    let cite = self
                        .cite(id)
                        .map_err(|what| self.problem(place.start, what))?;
                    out.push(Event::InlineHtml(cite.into()));
                    claim.cites = true;
                    skip = true;
                }
                Event::End(TagEnd::Link) if skip => skip = false,
                _ if skip => {}
                Event::Start(Tag::Link {
                    link_type,
                    dest_url,
                    title,
                    id,
                }) => out.push(Event::Start(Tag::Link {
                    link_type: *link_type,
                    dest_url: self
                        .address(dest_url)
                        .map_err(|what| self.problem(place.start, what))?
                        .into(),
                    title: title.clone(),
                    id: id.clone(),
                })),
                other => {
                    match other {
                        Event::Start(Tag::Paragraph | Tag::Item | Tag::TableRow) => {
                            claim = Claim {
                                at: place.start,
                                ..Claim::default()
                            };
                        }
                        Event::Text(said) => {
                            claim.counts |= said.contains(|c: char| c.is_ascii_digit());
                        }
                        Event::End(TagEnd::Paragraph | TagEnd::Item | TagEnd::TableRow)
                            if self.around.strict && claim.counts && !claim.cites =>
                        {
                            let what = "a number without its source: end with one, as [S02], [own] or [practice]";
                            return Err(self.problem(claim.at, what));
                        }
                        _ => {}
                    }
                    out.push(other.clone());
                }
            }
        }
        Ok(out)
    }

    /// How a source is cited: by its number in the list under the text.
    fn cite(&mut self, id: &str) -> Result<String, String> {
        if let Some(bare) = BARE.into_iter().find(|bare| *bare == id) {
            let words = match bare {
                "own" => m::ARTICLES_OWN,
                _ => m::ARTICLES_PRACTICE,
            };
            let home = self.around.home;
            return Ok(format!(
                "<a class=\"cite\" href=\"{home}sources/#{bare}\">({})</a>",
                escaped(&words)
            ));
        }
        let Some(at) = self.around.sources.iter().position(|known| known == id) else {
            return Err(format!(
                "[{id}] is no source of the head, nor {}",
                BARE.join(" or ")
            ));
        };
        self.cited.insert(&self.around.sources[at]);
        let number = at + 1;
        Ok(format!(
            "<a class=\"cite\" href=\"#source-{number}\">[{number}]</a>"
        ))
    }

    /// Where a link leads: to a page of the site in the language of the reader, or out of it.
    fn address(&self, to: &str) -> Result<String, String> {
        if to.starts_with("https://") || to.starts_with("tel:") || to.starts_with('#') {
            Ok(to.to_owned())
        } else if !to.contains(':')
            && !to.starts_with('/')
            && (to.ends_with('/') || to.contains("/#"))
        {
            Ok(format!("{}{to}", self.around.home))
        } else {
            Err(format!(
                "\"{to}\" is no link: a page of the site as species/, an address as https://…, or tel:"
            ))
        }
    }
}

/// What is known of a block of text on its way.
#[derive(Default)]
struct Claim {
    at: usize,
    counts: bool,
    cites: bool,
}

/// How many events belong to the first one, itself and its end counted.
fn end_of(events: &[Spot<'_>]) -> usize {
    let mut depth = 0_usize;
    for (at, (event, _)) in events.iter().enumerate() {
        match event {
            Event::Start(_) => depth += 1,
            Event::End(_) => depth -= 1,
            _ => {}
        }
        if depth == 0 {
            return at + 1;
        }
    }
    events.len()
}

/// The blocks of some events.
fn blocks<'e, 'a>(events: &'e [Spot<'a>]) -> impl Iterator<Item = &'e [Spot<'a>]> {
    let mut rest = events;
    std::iter::from_fn(move || {
        let (block, after) = rest.split_at_checked(end_of(rest))?;
        rest = after;
        (!block.is_empty()).then_some(block)
    })
}

/// The words of some events.
fn plain(events: &[Spot<'_>]) -> String {
    let said = events.iter().filter_map(|(event, _)| match event {
        Event::Text(said) | Event::Code(said) => Some(said.as_ref()),
        Event::SoftBreak => Some(" "),
        _ => None,
    });
    said.collect()
}

/// An anchor of a heading: its letters and digits.
fn slug(title: &str) -> String {
    let words: String = title
        .to_lowercase()
        .chars()
        .map(|c| if c.is_alphanumeric() { c } else { ' ' })
        .collect();
    words.split_whitespace().collect::<Vec<_>>().join("-")
}

#[cfg(test)]
mod tests {
    use super::*;

    fn made(text: &str) -> Result<Vec<Section>> {
        let sources = ["S02".to_owned()];
        let around = Around {
            home: "/es/",
            sources: &sources,
            strict: true,
        };
        read(&Lines::of("a.md", text), 0, &around)
    }

    #[test]
    fn sections_notes_sources_and_places_are_read() {
        let text = "First, 3 of 4 [S02].\n\n## Whose?\n\nAsk [all](species/). [own]\n\n{picture}\n\n**Stop.**\n\n> **A note**\n>\n> Read it.\n";
        let sections = made(text).expect("good");
        assert_eq!(sections.len(), 2);
        assert!(
            sections[0]
                .body
                .contains("<a class=\"cite\" href=\"#source-1\">[1]</a>")
        );
        let second = &sections[1];
        assert_eq!(
            (second.title.as_str(), second.id.as_str()),
            ("Whose?", "whose")
        );
        assert!(second.pictured && !second.calculates);
        for part in [
            "href=\"/es/species/\"",
            "<p class=\"pull\">Stop.</p>",
            "/es/sources/#own",
        ] {
            assert!(second.body.contains(part), "{part}: {}", second.body);
        }
        assert_eq!(second.side.trim(), "<h3>A note</h3>\n<p>Read it.</p>");
    }

    #[test]
    fn what_is_not_read_is_told_with_its_line() {
        for (text, line, part) in [
            ("a [S02]\n\nb [S03]\n", 3, "S03"),
            ("a [S02]\n\nin 9 years\n", 3, "without its source"),
            ("a [S02]\n\n- one\n- in 9 years\n", 4, "without its source"),
            ("a [S02]\n\n<div>x</div>\n", 3, "HTML"),
            ("a [S02]\n\n![x](y.png)\n", 3, "drawn"),
            ("a [S02]\n\n[x](javascript:alert)\n", 3, "no link"),
            ("a [S02]\n\n# Big\n", 3, "two levels"),
            ("a [S02]\n\n## Same\n\n## Same\n", 5, "two headings"),
            ("a\n", 1, "does not cite"),
        ] {
            let said = made(text)
                .err()
                .map(|it| it.to_string())
                .unwrap_or_default();
            assert!(
                said.starts_with(&format!("a.md:{line}: ")),
                "{text}: {said}"
            );
            assert!(said.contains(part), "{text}: {said}");
        }
    }
}
