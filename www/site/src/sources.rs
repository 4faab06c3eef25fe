//! The table of sources, made from `content/evidence/sources.csv`.

use crate::template::escape;
use anyhow::{Context, Result, bail};
use std::fmt::Write as _;
use std::path::Path;

/// One source, as its row says.
struct Source {
    id: String,
    authors: String,
    year: String,
    title: String,
    container: String,
    volume_pages: String,
    doi: String,
    part_read: String,
    grade: String,
}

/// The sources as an HTML table body with their count, or nothing when the
/// file is not there.
///
/// # Errors
/// A column that is missing, a row without id or title, an id twice: each with
/// file and line.
pub fn table(root: &Path) -> Result<Option<(usize, String)>> {
    let path = root.join("content/evidence/sources.csv");
    if !path.is_file() {
        return Ok(None);
    }
    let text = std::fs::read(&path).context("content/evidence/sources.csv could not be read")?;
    let sources = read(&text)?;
    Ok(Some((sources.len(), rows(&sources))))
}

fn read(text: &[u8]) -> Result<Vec<Source>> {
    const FILE: &str = "content/evidence/sources.csv";
    let mut reader = csv::Reader::from_reader(text);
    let headers = reader
        .headers()
        .with_context(|| format!("{FILE}:1"))?
        .clone();
    let column = |name: &str| {
        headers
            .iter()
            .position(|header| header == name)
            .with_context(|| format!("{FILE}:1: there is no column `{name}`"))
    };
    let columns = [
        column("id")?,
        column("authors")?,
        column("year")?,
        column("title")?,
        column("container")?,
        column("volume_pages")?,
        column("doi")?,
        column("part_read")?,
        column("grade_ceiling")?,
    ];
    let mut seen = std::collections::BTreeSet::new();
    let mut sources = Vec::new();
    for record in reader.records() {
        let record = record.with_context(|| FILE.to_owned())?;
        let line = record.position().map_or(0, csv::Position::line);
        let [
            id,
            authors,
            year,
            title,
            container,
            volume_pages,
            doi,
            part_read,
            grade,
        ] = columns.map(|column| record.get(column).unwrap_or_default().trim().to_owned());
        if id.is_empty() || (title.is_empty() && container.is_empty()) {
            bail!("{FILE}:{line}: a source needs an id, and a title or what it appeared in");
        }
        if !seen.insert(id.clone()) {
            bail!("{FILE}:{line}: the id {id} stands there twice");
        }
        sources.push(Source {
            id,
            authors,
            year,
            title,
            container,
            volume_pages,
            doi,
            part_read,
            grade,
        });
    }
    sources.sort_by_key(|source| {
        let by = if source.authors.is_empty() {
            &source.container
        } else {
            &source.authors
        };
        (by.to_lowercase(), source.year.clone(), source.id.clone())
    });
    Ok(sources)
}

fn rows(sources: &[Source]) -> String {
    let mut out = String::new();
    for source in sources {
        let mut whole = String::new();
        for part in [&source.authors, &source.year] {
            if !part.is_empty() {
                let _ = write!(whole, "{}. ", escape(part.trim_end_matches('.')));
            }
        }
        // Of some only the journal, volume and pages are known.
        if !source.title.is_empty() {
            let _ = write!(
                whole,
                "<cite>{}</cite>.",
                escape(source.title.trim_end_matches('.'))
            );
        }
        let place: Vec<String> = [&source.container, &source.volume_pages]
            .into_iter()
            .filter(|part| !part.is_empty())
            .map(|part| escape(part))
            .collect();
        if !place.is_empty() {
            let _ = write!(whole, " {}.", place.join(", "));
        }
        if !source.doi.is_empty() {
            let _ = write!(whole, " doi:{}", escape(&source.doi));
        }
        let _ = writeln!(
            out,
            "<tr id=\"{id}\"><th scope=\"row\">{id}</th><td>{whole}</td><td>{part}</td><td>{grade}</td></tr>",
            id = escape(&source.id),
            part = escape(&source.part_read.replace('_', " ")),
            grade = escape(&source.grade.to_lowercase().replace('_', " ")),
        );
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    const HEAD: &str = "id,authors,year,title,container,volume_pages,doi,part_read,grade_ceiling\n";

    #[test]
    fn each_source_has_its_anchor_and_is_escaped() {
        let text =
            format!("{HEAD}AB1,A & B,2001,On <bark>,J. Trees,\"1, 2-3\",10.1/x,full,MEASURED\n");
        let page = rows(&read(text.as_bytes()).unwrap());
        assert!(page.contains("id=\"AB1\""), "{page}");
        assert!(
            page.contains("A &amp; B. 2001. <cite>On &lt;bark&gt;</cite>. J. Trees, 1, 2-3."),
            "{page}"
        );
    }

    #[test]
    fn a_broken_row_is_named_by_its_line() {
        for (row, part) in [
            ("A,,,,,,,,\n", ":2"),
            ("A,,,t,,,,,\nA,,,t,,,,,\n", ":3"),
            ("A,b\n", "line: 2"),
        ] {
            let Err(error) = read(format!("{HEAD}{row}").as_bytes()) else {
                panic!("{row} was read");
            };
            assert!(format!("{error:#}").contains(part), "{error:#}");
        }
        let Err(error) = read(b"id,title\n") else {
            panic!("read")
        };
        assert!(error.to_string().contains("`authors`"), "{error}");
    }
}
