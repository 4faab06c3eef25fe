//! The table of sources, made from `content/evidence/sources.csv`.

use anyhow::Result;
use calc_data::table::{Problem, Table};
use calc_view::out::escaped;
use serde::Deserialize;
use std::fmt::Write as _;
use std::path::Path;

const FILE: &str = "content/evidence/sources.csv";

/// One source, as its row says.
#[derive(Deserialize)]
struct Source {
    id: String,
    label: String,
    same_as: String,
    superseded_by: String,
    authors: String,
    year: String,
    title: String,
    container: String,
    volume_pages: String,
    doi: String,
    part_read: String,
    grade_ceiling: String,
}

/// The sources as an HTML table body with their count, or nothing when the
/// file is not there.
///
/// # Errors
/// A column that is missing, a row without id or title, an id twice: each with
/// file and line.
pub(crate) fn table(root: &Path) -> Result<Option<(usize, String)>> {
    if !root.join(FILE).is_file() {
        return Ok(None);
    }
    let table = Table::read(root, FILE)?;
    let sources = sorted(&table)?;
    Ok(Some((sources.len(), rows(&sources))))
}

const METHODS: &str = "content/rules/methods.csv";

/// What a row of the table of methods rests on.
#[derive(Deserialize)]
struct Rule {
    basis: String,
}

/// How many rows the table of methods has, and how many of them rest on print, on common practice, on nobody but us.
///
/// # Errors
/// A table that can't be read.
pub(crate) fn rules(root: &Path) -> Result<[usize; 4]> {
    let table = Table::<Rule>::read(root, METHODS)?;
    let count = |basis: &str| table.rows.iter().filter(|row| row.basis == basis).count();
    Ok([
        table.rows.len(),
        count("print"),
        count("practice"),
        count("own"),
    ])
}

/// By author, or what it appeared in, then year.
fn sorted(table: &Table<Source>) -> Result<Vec<&Source>, Problem> {
    table.by(|source| &source.id)?;
    let nameless = |source: &Source| source.title.is_empty() && source.container.is_empty();
    if let Some(row) = table
        .rows
        .iter()
        .find(|row| row.id.is_empty() || nameless(row))
    {
        let what = "a source needs an id, and a title or what it appeared in";
        return Err(row.at.problem(what));
    }
    // A paper that stands under two ids is shown once, under the id that is cited.
    let rows = table.rows.iter().filter(|row| row.same_as.is_empty());
    let mut sources: Vec<&Source> = rows.map(|row| &**row).collect();
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

fn rows(sources: &[&Source]) -> String {
    let mut out = String::new();
    for source in sources {
        let mut whole = String::new();
        for part in [&source.authors, &source.year] {
            if !part.is_empty() {
                let _ = write!(whole, "{}. ", escaped(part.trim_end_matches('.')));
            }
        }
        // Of some only the journal, volume and pages are known.
        if !source.title.is_empty() {
            let _ = write!(
                whole,
                "<cite>{}</cite>.",
                escaped(source.title.trim_end_matches('.'))
            );
        }
        let place: Vec<String> = [&source.container, &source.volume_pages]
            .into_iter()
            .filter(|part| !part.is_empty())
            .map(|part| escaped(part))
            .collect();
        if !place.is_empty() {
            let _ = write!(whole, " {}.", place.join(", "));
        }
        if !source.doi.is_empty() {
            let _ = write!(whole, " doi:{}", escaped(&source.doi));
        }
        if !source.superseded_by.is_empty() {
            let _ = write!(whole, " Superseded by {}.", escaped(&source.superseded_by));
        }
        let _ = writeln!(
            out,
            "<tr id=\"{id}\"><th scope=\"row\">{label}</th><td>{whole}</td><td>{part}</td><td>{grade}</td></tr>",
            id = escaped(&source.id),
            label = escaped(&source.label),
            part = escaped(&source.part_read.replace('_', " ")),
            grade = escaped(&source.grade_ceiling.to_lowercase().replace('_', " ")),
        );
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    const HEAD: &str = "id,label,same_as,superseded_by,authors,year,title,container,volume_pages,doi,part_read,grade_ceiling\n";

    #[test]
    fn every_row_of_the_methods_is_counted_once() {
        let [all, print, practice, own] =
            rules(&crate::project::root().expect("the project")).expect("a table");
        assert_eq!(all, print + practice + own);
        assert!(
            print > 0 && practice > 0 && own > 0,
            "{print} {practice} {own}"
        );
    }

    #[test]
    fn each_source_has_its_anchor_and_is_escaped() {
        let text = format!(
            "{HEAD}AB1,A & B 2001,,,A & B,2001,On <bark>,J. Trees,\"1, 2-3\",10.1/x,full,MEASURED\n"
        );
        let page = rows(&sorted(&Table::of(FILE, text.as_bytes()).unwrap()).unwrap());
        assert!(page.contains("id=\"AB1\""), "{page}");
        assert!(
            page.contains("A &amp; B. 2001. <cite>On &lt;bark&gt;</cite>. J. Trees, 1, 2-3."),
            "{page}"
        );
    }

    #[test]
    fn a_broken_row_is_named_by_its_line() {
        let problem = |text: String| match Table::of(FILE, text.as_bytes()) {
            Ok(table) => sorted(&table).err().map(|problem| problem.to_string()),
            Err(problem) => Some(problem.to_string()),
        };
        for (row, part) in [
            ("A,,,,,,,,,,,\n", ":2: "),
            ("A,,,,,,t,,,,,\nA,,,,,,t,,,,,\n", ":3: "),
            ("A,b\n", ":2: "),
        ] {
            let said = problem(format!("{HEAD}{row}")).unwrap_or_else(|| panic!("{row} was read"));
            assert!(said.contains(part), "{said}");
        }
        let said = problem("id,title\nA,t\n".into()).expect("a column is missing");
        assert!(said.contains("\"label\""), "{said}");
    }
}
