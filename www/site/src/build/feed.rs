//! The feed of what changed (Atom, RFC 4287), from `content/changes.md`: each second-level heading with what stands under it is an
//! entry. `## 0.1.0, November 2026`: what it is called, and its month.

use crate::build::assets::{File, hex};
use crate::build::{addresses, languages, markdown};
use anyhow::{Context as _, Result, bail};
use calc_view::out::escaped;
use calc_view::words::m;
use chrono::NaiveDate;
use sha2::{Digest as _, Sha256};
use std::fmt::Write as _;
use std::path::Path;

/// Where it lies under the base.
pub(crate) const NAME: &str = "changes.atom";
const FILE: &str = "content/changes.md";

struct Entry<'a> {
    title: &'a str,
    day: NaiveDate,
    text: &'a str,
}

/// Makes the feed.
///
/// # Errors
/// A list of changes that can't be read, or a heading in it without its month: with file and line.
pub(crate) fn make(root: &Path) -> Result<File> {
    let text = std::fs::read_to_string(root.join(FILE))
        .with_context(|| format!("{FILE} could not be read"))?;
    Ok(File::named(NAME, atom(&entries(&text)?)))
}

fn entries(text: &str) -> Result<Vec<Entry<'_>>> {
    let mut all = Vec::new();
    for (at, part) in text.match_indices("\n## ") {
        let rest = &text[at + part.len()..];
        let end = rest.find("\n## ").unwrap_or(rest.len());
        let (title, body) = rest[..end].split_once('\n').unwrap_or((&rest[..end], ""));
        let month = title.rsplit_once(", ").map_or("", |(_, month)| month);
        let Ok(day) = NaiveDate::parse_from_str(&format!("1 {month}"), "%d %B %Y") else {
            let line = 2 + text[..at].matches('\n').count();
            bail!(
                "{FILE}:{line}: \"{title}\" does not end with its month, as 0.1.0, November 2026"
            );
        };
        all.push(Entry {
            title,
            day,
            text: body,
        });
    }
    if all.is_empty() {
        bail!("{FILE}:1: there is no heading of the second level");
    }
    Ok(all)
}

fn atom(entries: &[Entry<'_>]) -> String {
    let (origin, base) = (addresses::ORIGIN, addresses::MARK);
    let home = format!("{origin}{base}");
    let updated = entries
        .iter()
        .map(|entry| entry.day)
        .max()
        .unwrap_or_default();
    let (title, app) = languages::speaking(languages::FIRST, || {
        (m::SHELL_CHANGES.to_string(), m::SHELL_APP.to_string())
    });
    let mut out = format!(
        "<?xml version=\"1.0\" encoding=\"utf-8\"?>\n\
         <feed xmlns=\"http://www.w3.org/2005/Atom\" xml:lang=\"{}\">\n\
         <id>{}</id>\n<title>{}: {}</title>\n<updated>{}</updated>\n\
         <author><name>Slipbark</name></author>\n\
         <link rel=\"self\" type=\"application/atom+xml\" href=\"{home}{NAME}\"/>\n\
         <link rel=\"alternate\" type=\"text/html\" href=\"{home}changes/\"/>\n",
        languages::FIRST,
        id("feed"),
        escaped(&app),
        escaped(&title),
        moment(updated),
    );
    for entry in entries {
        // Memory takes whatever is written to it.
        let _ = write!(
            out,
            "<entry>\n<id>{}</id>\n<title>{}</title>\n<updated>{}</updated>\n\
             <link rel=\"alternate\" type=\"text/html\" href=\"{home}changes/\"/>\n\
             <content type=\"html\">{}</content>\n</entry>\n",
            id(entry.title),
            escaped(entry.title),
            moment(entry.day),
            escaped(&markdown::render(entry.text)),
        );
    }
    out.push_str("</feed>\n");
    out
}

/// A day as RFC 3339 has moments.
fn moment(day: NaiveDate) -> String {
    format!("{day}T00:00:00Z")
}

/// A name that stays the same wherever the site lives (RFC 9562, version 8: made of a digest of what it names).
fn id(of: &str) -> String {
    let mut bytes = Sha256::digest(format!("slipbark changes {of}"));
    bytes[6] = bytes[6] & 0x0f | 0x80;
    bytes[8] = bytes[8] & 0x3f | 0x80;
    let hex = hex(&bytes[..16]);
    let parts = [
        &hex[..8],
        &hex[8..12],
        &hex[12..16],
        &hex[16..20],
        &hex[20..],
    ];
    format!("urn:uuid:{}", parts.join("-"))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The crate `atom_syndication` reads feeds for readers of news.
    #[test]
    fn a_library_of_its_own_reads_the_feed() {
        let root = crate::project::root().expect("the project");
        let file = make(&root).expect("a feed");
        let files = addresses::under("https://example.org", "/t/", &[file]);
        let text = std::str::from_utf8(&files[0].bytes).expect("text");
        let feed: atom_syndication::Feed = text.parse().expect("it is Atom");
        assert!(feed.id().starts_with("urn:uuid:"));
        assert_eq!(feed.links()[0].href(), "https://example.org/t/changes.atom");
        let list = std::fs::read_to_string(root.join(FILE)).expect("the list");
        let titles = list.lines().filter_map(|line| line.strip_prefix("## "));
        assert!(
            feed.entries()
                .iter()
                .map(|entry| entry.title().as_str())
                .eq(titles)
        );
        for entry in feed.entries() {
            let html = entry
                .content()
                .and_then(|content| content.value())
                .unwrap_or_default();
            assert!(html.contains("<li>") && !html.contains("## "), "{html}");
            assert!(entry.updated() <= feed.updated());
        }
    }

    #[test]
    fn a_heading_without_its_month_is_told_with_its_line() {
        let said = entries("# What changed\n\n## 0.2.0, soon\n\n- x\n")
            .err()
            .map(|it| it.to_string());
        let said = said.unwrap_or_default();
        assert!(
            said.starts_with("content/changes.md:3: ") && said.contains("soon"),
            "{said}"
        );
    }
}
