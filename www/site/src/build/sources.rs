//! The list of sources, made from `content/evidence/sources.csv`: by what they are used for, in the language in use.

mod bibliography;

use crate::build::assets::File;
use anyhow::Result;
use calc::terms::cite::Grade;
use calc_data::table::{Defect, RowAt, Table};
use calc_view::out::Html;
use calc_view::page::Page;
use calc_view::words::m;
use calc_view::words::message::in_use;
use calc_view::words::prose::english;
use serde::Deserialize;
use std::collections::BTreeMap;
use std::path::Path;

const FILE: &str = "content/evidence/sources.csv";
/// The same of a group, in its own folder.
const OWN: &str = "sources.csv";
/// What sources are used for, in the order of the page, as the table has it; a blank in it is written `_`.
const GROUPS: [&str; 13] = [
    "response",
    "practice",
    "timing",
    "allometry",
    "effort",
    "habitat_safety",
    "identification",
    "natives",
    "law",
    "oak_wilt",
    "ash_borer",
    "disease",
    "terms",
];

/// One source, as its row says.
#[derive(Deserialize)]
struct Source {
    id: String,
    table_group: String,
    label: String,
    same_as: String,
    superseded_by: String,
    authors: String,
    year: String,
    title: String,
    container: String,
    volume_pages: String,
    doi: String,
    kind: String,
    part_read: String,
    grade_ceiling: String,
    year_basis: String,
}

/// The page's parts: how many sources, links to their groups, the list.
pub(crate) struct SourceList {
    pub(crate) count: usize,
    pub(crate) groups: String,
    pub(crate) list: String,
}

/// Makes them.
///
/// # Errors
/// A column that is missing, a row without id or title, an id twice, a group, part or grade without words: each with
/// file and line.
pub(crate) fn make(root: &Path, own: Option<&Path>) -> Result<SourceList> {
    Ok(list(&table(root, own)?)?)
}

/// The sources as files for programs for references: BibTeX and CSL-JSON.
///
/// # Errors
/// A table that can't be read.
pub(crate) fn files(root: &Path, own: Option<&Path>) -> Result<[File; 2]> {
    let table = table(root, own)?;
    Ok([
        File::named("sources/slipbark.bib", bibliography::bibtex(&table)),
        File::named("sources/slipbark.json", bibliography::csl(&table)),
    ])
}

/// The table of sources, with that in the folder of a group behind it.
fn table(root: &Path, own: Option<&Path>) -> Result<Table<Source>, Defect> {
    let mut table = Table::<Source>::read(root, FILE)?;
    if let Some(own) = own.filter(|own| own.join(OWN).is_file()) {
        table.rows.extend(Table::<Source>::read(own, OWN)?.rows);
    }
    Ok(table)
}

/// What a text that cites a source needs to know of it.
pub(crate) struct Known {
    /// What people know it by.
    pub(crate) label: String,
    /// Whether it is only remembered, so that nothing may rest on it.
    pub(crate) remembered: bool,
}

/// All sources by id.
///
/// # Errors
/// A table that can't be read.
pub(crate) fn known(root: &Path, own: Option<&Path>) -> Result<BTreeMap<String, Known>> {
    let table = table(root, own)?;
    let known = |row: &RowAt<Source>| {
        let remembered = row.grade_ceiling == "MEMORY" || row.id.ends_with("MEM");
        let label = row.label.clone();
        (row.id.clone(), Known { label, remembered })
    };
    Ok(table.rows.iter().map(known).collect())
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

/// By author, else what it appeared in, else its name, then year; what is only remembered stands last. A paper that stands under two ids is shown once, under the id that is
/// cited.
fn sorted(table: &Table<Source>) -> Result<Vec<&RowAt<Source>>, Defect> {
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
    let mut sources: Vec<_> = table
        .rows
        .iter()
        .filter(|row| row.same_as.is_empty())
        .collect();
    sources.sort_by_key(|source| {
        let names = [&source.authors, &source.container, &source.label];
        let by = names.into_iter().find(|name| !name.is_empty());
        (
            source.id.ends_with("MEM"),
            by.map(|name| name.to_lowercase()),
            source.year.clone(),
            source.id.clone(),
        )
    });
    Ok(sources)
}

fn list(table: &Table<Source>) -> Result<SourceList, Defect> {
    let sources = sorted(table)?;
    let labels: BTreeMap<&str, &str> = table
        .rows
        .iter()
        .map(|row| (row.id.as_str(), row.label.as_str()))
        .collect();
    let group_of = |source: &Source| source.table_group.replace(' ', "_");
    if let Some(row) = sources
        .iter()
        .find(|row| !GROUPS.contains(&group_of(row).as_str()))
    {
        return Err(row.at.problem(format!(
            "table_group: \"{}\" has no place on the page of sources",
            row.table_group
        )));
    }
    let (mut links, mut html) = (Html::default(), Html::default());
    let nav = &mut Page::new(&mut links);
    let out = &mut Page::new(&mut html);
    for group in GROUPS {
        let of: Vec<_> = sources
            .iter()
            .filter(|row| group_of(row) == group)
            .collect();
        let (Some(words), false) = (m::sources_group(group), of.is_empty()) else {
            continue;
        };
        let id = format!("for-{}", group.replace('_', "-"));
        nav.open("li");
        nav.open("a");
        nav.attr("href", &format!("#{id}"));
        nav.text(m::sources_of(words, of.len()));
        nav.close_two();
        out.open("section");
        out.heading(2, "", &id, &words);
        out.open("ul");
        for source in of {
            let same = table.rows.iter().filter(|row| row.same_as == source.id);
            entry(out, source, same.map(|row| row.id.as_str()), &labels)?;
        }
        out.close_two();
    }
    Ok(SourceList {
        count: sources.len(),
        groups: links.into_string(),
        list: html.into_string(),
    })
}

/// One source, with an anchor for its id and for each other id of the same paper.
fn entry<'a>(
    out: &mut Page<'_>,
    source: &RowAt<Source>,
    same: impl Iterator<Item = &'a str>,
    labels: &BTreeMap<&str, &str>,
) -> Result<(), Defect> {
    out.open("li");
    out.attr("id", &source.id);
    for id in same {
        out.open("a");
        out.attr("id", id);
        out.close();
    }
    // What is printed stays as it is, whatever the page speaks.
    let open = |out: &mut Page<'_>, name, language| {
        out.open(name);
        if language != in_use().language() {
            out.attr("lang", language);
        }
    };
    open(out, "b", "en");
    out.text(source.label.as_str());
    out.close();
    open(out, "p", "en");
    for part in [&source.authors, &source.year] {
        if !part.is_empty() {
            out.text(format!("{}. ", part.trim_end_matches('.')));
        }
    }
    // Of some only the journal, volume and pages are known.
    if !source.title.is_empty() {
        let language = language_of(source);
        out.open("cite");
        if language != "en" {
            out.attr("lang", language);
        }
        out.text(source.title.trim_end_matches('.'));
        out.close();
        out.text(". ");
    }
    let place = [source.container.as_str(), &source.volume_pages];
    let place: Vec<&str> = place.into_iter().filter(|part| !part.is_empty()).collect();
    if !place.is_empty() {
        out.text(format!("{}. ", place.join(", ").trim_end_matches('.')));
    }
    if !source.doi.is_empty() {
        let address = format!("https://doi.org/{}", source.doi);
        out.open("a");
        out.attr("href", &address);
        out.text(address.trim_start_matches("https://"));
        out.close();
    }
    out.close();
    out.open_class("p", "soft");
    if !source.superseded_by.is_empty() {
        let by = english(&named(&source.superseded_by, labels));
        out.text(m::sources_superseded(by));
        out.text(" ");
    }
    let part = match source.part_read.as_str() {
        "" => "not_noted".to_owned(),
        part => part.replace(' ', "_"),
    };
    let (Some(read), Some(grade)) = (
        m::sources_read(&part),
        Grade::of_table(&source.grade_ceiling),
    ) else {
        let what = format!(
            "part_read \"{}\" or grade_ceiling \"{}\" has no words",
            source.part_read, source.grade_ceiling
        );
        return Err(source.at.problem(what));
    };
    out.text(read);
    out.text(" ");
    out.text(m::sources_best(m::confidence_grade(grade)));
    out.close_two();
    Ok(())
}

/// The language of a title: sources of words in Spanish are mostly in Spanish.
fn language_of(source: &Source) -> &'static str {
    let title = source.title.to_lowercase();
    let english = [" of ", " and ", " to ", " on ", "names"];
    match source.table_group == "terms" && !english.iter().any(|it| title.contains(it)) {
        true => "es",
        false => "en",
    }
}

/// A text with the ids in it as what people know their sources by.
fn named(text: &str, labels: &BTreeMap<&str, &str>) -> String {
    let end = |c: char| !c.is_ascii_alphanumeric();
    let parts = text.split_inclusive(end).map(|part| {
        let word = part.trim_end_matches(end);
        match labels.get(word) {
            Some(label) => part.replacen(word, label, 1),
            None => part.to_owned(),
        }
    });
    parts.collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    const HEAD: &str = "id,table_group,label,same_as,superseded_by,authors,year,title,container,volume_pages,doi,kind,part_read,grade_ceiling,year_basis\n";

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
    fn each_source_stands_in_its_group_with_its_anchors_and_link_and_is_escaped() {
        let text = format!(
            "{HEAD}AB1,oak wilt,A & B 2001,,CD2 (a later one),A & B,2001,On <bark>,J. Trees,\"1, 2-3\",10.1/x,paper,whole,PUBLISHED,read\n\
             CD2,timing,C & D 2002,,,,,On dates,J. Trees,,,paper,page,SECONDARY,read\n\
             CD3,timing,C & D 2002,CD2,,,,On dates,J. Trees,,,paper,page,SECONDARY,read\n"
        );
        let made = list(&Table::of(FILE, text.as_bytes()).unwrap()).unwrap();
        assert_eq!(made.count, 2);
        assert!(made.groups.find("When the bark slips (1)") < made.groups.find("Oak wilt (1)"));
        for part in [
            "<li id=\"AB1\">",
            "A &amp; B. 2001. <cite>On &lt;bark&gt;</cite>. J. Trees, 1, 2-3.",
            "<a href=\"https://doi.org/10.1/x\">doi.org/10.1/x</a>",
            "Superseded by C &amp; D 2002 (a later one).",
            "<li id=\"CD2\"><a id=\"CD3\"></a>",
        ] {
            assert!(made.list.contains(part), "{part}: {}", made.list);
        }
    }

    #[test]
    fn a_source_for_something_without_words_is_named_by_its_line() {
        let root = crate::project::root().expect("the project");
        let made = make(&root, None).expect("the table");
        for group in GROUPS {
            assert!(
                made.list
                    .contains(&format!("id=\"for-{}\"", group.replace('_', "-"))),
                "{group}"
            );
        }
        for (row, part) in [
            ("A,gossip,,,,,,t,,,,paper,page,PUBLISHED,read", "gossip"),
            ("A,timing,,,,,,t,,,,paper,cover,PUBLISHED,read", "cover"),
            ("A,timing,,,,,,t,,,,paper,page,SURE,read", "SURE"),
        ] {
            let table = Table::of(FILE, format!("{HEAD}{row}\n").as_bytes()).expect("columns");
            let said = list(&table)
                .err()
                .map(|problem| problem.to_string())
                .unwrap_or_default();
            assert!(said.contains(":2: ") && said.contains(part), "{said}");
        }
    }

    #[test]
    fn a_broken_row_is_named_by_its_line() {
        let problem = |text: String| match Table::of(FILE, text.as_bytes()) {
            Ok(table) => sorted(&table).err().map(|problem| problem.to_string()),
            Err(problem) => Some(problem.to_string()),
        };
        for (row, part) in [
            ("A,,,,,,,,,,,,,,\n", ":2: "),
            ("A,,,,,,,t,,,,,,,\nA,,,,,,,t,,,,,,,\n", ":3: "),
            ("A,b\n", ":2: "),
        ] {
            let said = problem(format!("{HEAD}{row}")).unwrap_or_else(|| panic!("{row} was read"));
            assert!(said.contains(part), "{said}");
        }
        let said = problem("id,title\nA,t\n".into()).expect("a column is missing");
        assert!(said.contains("\"table_group\""), "{said}");
    }
}
