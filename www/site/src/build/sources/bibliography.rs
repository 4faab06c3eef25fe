//! The sources as files that programs for references read: BibTeX, and CSL-JSON (the schema of the Citation Style Language,
//! 1.0.2). A paper that stands under two ids stands once, under the id that is cited.

use super::Source;
use calc_data::table::{RowAt, Table};
use serde_json::{Map, Value, json};
use std::fmt::Write as _;

/// What a source is, for programs.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Kind {
    Paper,
    Book,
    Data,
    Other,
}

/// Somebody who wrote.
#[derive(Debug, PartialEq, Eq)]
enum Author<'a> {
    /// A person: family name, initials.
    Person(&'a str, String),
    /// An office, a society.
    Body(&'a str),
    /// Behind the first ones.
    Others,
}

/// Words of an office that wrote: such a name is no person's.
const OFFICES: [&str; 24] = [
    "service",
    "department",
    "departamento",
    "council",
    "committee",
    "university",
    "universidad",
    "instituto",
    "association",
    "sociedad",
    "gobierno",
    "govern",
    "ministerio",
    "escuela",
    "observatorio",
    "ayuntamiento",
    "comunidad",
    "congreso",
    "network",
    "analysis",
    "forest",
    "resources",
    "agency",
    "editorial",
];

impl Source {
    fn kind(&self) -> Kind {
        match self.kind.as_str() {
            "paper" if !self.container.is_empty() => Kind::Paper,
            "book" | "flora" | "handbook" => Kind::Book,
            "dataset" | "software data" => Kind::Data,
            _ => Kind::Other,
        }
    }

    fn authors(&self) -> Vec<Author<'_>> {
        let mut all = Vec::new();
        let names = self.authors.split(';').map(str::trim);
        for name in names.filter(|name| !name.is_empty()) {
            let (name, others) = match name
                .strip_suffix(" et al.")
                .or(name.strip_suffix(" and others"))
            {
                Some(first) => (first, true),
                None => (name, false),
            };
            all.push(author(name));
            if others {
                all.push(Author::Others);
            }
        }
        all
    }

    /// Its title, or what people know it by.
    fn called(&self) -> &str {
        match self.title.trim_end_matches('.') {
            "" => &self.label,
            title => title,
        }
    }

    /// `5(6):135-140`: volume, issue, pages. None of another form.
    fn in_volume(&self) -> Option<[&str; 3]> {
        let (volume, pages) = self.volume_pages.split_once(':')?;
        let (volume, issue) = match volume.split_once('(') {
            Some((volume, issue)) => (volume, issue.strip_suffix(')')?),
            None => (volume, ""),
        };
        let counts = |text: &str| {
            text.chars()
                .all(|c| c.is_ascii_digit() || matches!(c, '-' | '/' | ' '))
        };
        let pages = pages.trim().trim_end_matches('-');
        let good = !volume.is_empty() && counts(volume) && counts(issue) && counts(pages);
        good.then_some([volume.trim(), issue, pages])
    }

    /// What was read of it, and what a number from it may be called at best; and a year that is only remembered.
    fn remark(&self) -> String {
        let read = match self.part_read.as_str() {
            "" => "not noted",
            part => part,
        };
        let mut said = format!(
            "Part read: {read}. Best grade of a number from it: {}.",
            self.grade_ceiling
        );
        if self.year_basis == "MEMORY" {
            said.push_str(" The year is from memory.");
        }
        said
    }
}

/// `Neely D`, `van Doorn`, `USDA NRCS`.
fn author(name: &str) -> Author<'_> {
    let capitals = |word: &str| word.chars().all(|c| c.is_ascii_uppercase());
    let plain = name.strip_suffix(" Jr").unwrap_or(name);
    if let Some((family, initials)) = plain.rsplit_once(' ')
        && capitals(initials)
        && initials.len() <= 3
        && !family.split(' ').all(capitals)
    {
        let initials: Vec<String> = initials.chars().map(|c| format!("{c}.")).collect();
        return Author::Person(family, initials.join(" "));
    }
    let words = name.split([' ', ',']);
    let office = words.clone().any(|word| {
        OFFICES.contains(&word.to_lowercase().as_str()) || (word.len() > 2 && capitals(word))
    });
    if office || name.contains(['(', ',']) {
        Author::Body(name)
    } else {
        Author::Person(name, String::new())
    }
}

/// Rows of the table that stand for themselves.
fn once(table: &Table<Source>) -> impl Iterator<Item = &RowAt<Source>> {
    table.rows.iter().filter(|row| row.same_as.is_empty())
}

/// The sources as BibTeX, in UTF-8.
pub(crate) fn bibtex(table: &Table<Source>) -> String {
    let mut out = String::from(
        "% Every source that a number or a caution rests on. Made from content/evidence/sources.csv.\n",
    );
    for source in once(table) {
        let kind = match source.kind() {
            Kind::Paper => "article",
            Kind::Book => "book",
            Kind::Data | Kind::Other => "misc",
        };
        let _ = writeln!(out, "\n@{kind}{{{},", source.id);
        let mut field = |name: &str, value: &str| {
            if !value.is_empty() {
                let _ = writeln!(out, "  {name} = {{{value}}},");
            }
        };
        let authors: Vec<String> = source
            .authors()
            .iter()
            .map(|author| match author {
                Author::Person(family, given) if given.is_empty() => format!("{{{}}}", tex(family)),
                Author::Person(family, given) => format!("{}, {given}", tex(family)),
                Author::Body(name) => format!("{{{}}}", tex(name)),
                Author::Others => "others".to_owned(),
            })
            .collect();
        field("author", &authors.join(" and "));
        field("title", &format!("{{{}}}", tex(source.called())));
        let holder = match source.kind() {
            Kind::Paper => "journal",
            Kind::Book => "publisher",
            Kind::Data | Kind::Other => "howpublished",
        };
        field(holder, &tex(&source.container));
        field("year", &source.year);
        match source.in_volume() {
            Some([volume, issue, pages]) => {
                field("volume", volume);
                field("number", issue);
                field("pages", &pages.replace('-', "--"));
            }
            None => field("addendum", &tex(&source.volume_pages)),
        }
        field("doi", &source.doi);
        field("note", &tex(&source.remark()));
        out.push_str("}\n");
    }
    out
}

/// What TeX takes for a command, as a letter.
fn tex(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '&' | '%' | '$' | '#' | '_' => out.extend(['\\', c]),
            '{' | '}' => {}
            '\\' => out.push('/'),
            '~' => out.push_str("\\textasciitilde{}"),
            '^' => out.push_str("\\textasciicircum{}"),
            c => out.push(c),
        }
    }
    out
}

/// The sources as CSL-JSON.
pub(crate) fn csl(table: &Table<Source>) -> String {
    let items: Vec<Value> = once(table).map(|source| item(source)).collect();
    let mut text = serde_json::to_string_pretty(&items).unwrap_or_default();
    text.push('\n');
    text
}

fn item(source: &Source) -> Value {
    let mut item = Map::new();
    let mut put = |name: &str, value: Value| item.insert(name.to_owned(), value);
    put("id", json!(source.id));
    let kind = match source.kind() {
        Kind::Paper => "article-journal",
        Kind::Book => "book",
        Kind::Data => "dataset",
        Kind::Other => "document",
    };
    put("type", json!(kind));
    put("title", json!(source.called()));
    let authors: Vec<Value> = source
        .authors()
        .iter()
        .map(|author| match author {
            Author::Person(family, given) if given.is_empty() => json!({ "family": family }),
            Author::Person(family, given) => json!({ "family": family, "given": given }),
            Author::Body(name) => json!({ "literal": name }),
            Author::Others => json!({ "literal": "et al." }),
        })
        .collect();
    if !authors.is_empty() {
        put("author", json!(authors));
    }
    let holder = match source.kind() {
        Kind::Paper => "container-title",
        Kind::Book | Kind::Data | Kind::Other => "publisher",
    };
    if !source.container.is_empty() {
        put(holder, json!(source.container));
    }
    // Two years, as 1966-1978, are a span.
    let years: Vec<Value> = source
        .year
        .split('-')
        .filter_map(|year| Some(json!([year.trim().parse::<i32>().ok()?])))
        .collect();
    if !years.is_empty() {
        put("issued", json!({ "date-parts": years }));
    }
    match source.in_volume() {
        Some([volume, issue, pages]) => {
            for (name, value) in [("volume", volume), ("issue", issue), ("page", pages)] {
                if !value.is_empty() {
                    put(name, json!(value));
                }
            }
        }
        None if !source.volume_pages.is_empty() => {
            put("number", json!(source.volume_pages));
        }
        None => {}
    }
    if !source.doi.is_empty() {
        put("DOI", json!(source.doi));
    }
    put("note", json!(source.remark()));
    Value::Object(item)
}

#[cfg(test)]
mod tests {
    use super::super::table;
    use super::*;
    use std::collections::BTreeSet;

    fn sources() -> Table<Source> {
        table(&crate::project::root().expect("the project"), None).expect("the table")
    }

    /// The crate `biblatex` reads BibTeX for a typesetting program.
    #[test]
    fn a_library_of_its_own_reads_every_entry_of_the_bibtex() {
        let table = sources();
        let read = biblatex::Bibliography::parse(&bibtex(&table)).expect("it is BibTeX");
        let ids: BTreeSet<&str> = read.iter().map(|entry| entry.key.as_str()).collect();
        assert_eq!(ids, once(&table).map(|row| row.id.as_str()).collect());
        let neely = read.get("S35").expect("it is there");
        let authors = neely.author().expect("authors");
        assert_eq!(
            (authors[0].name.as_str(), authors[0].given_name.as_str()),
            ("Neely", "D.")
        );
        use biblatex::ChunksExt as _;
        let title = neely.title().expect("a title").format_verbatim();
        assert_eq!(title, "Tree wounds and wound closure");
        let journal = neely.get("journaltitle").or(neely.get("journal"));
        let journal = journal.expect("a journal").format_verbatim();
        assert_eq!(journal, "Journal of Arboriculture");
        let agency = read
            .get("NAT01")
            .expect("it is there")
            .author()
            .expect("authors");
        assert_eq!(agency[0].name, "USDA NRCS");
        for entry in read.iter() {
            assert!(entry.title().is_ok(), "{}", entry.key);
            // Where there are names they are read.
            assert!(
                entry.get("author").is_none() || entry.author().is_ok(),
                "{}",
                entry.key
            );
        }
    }

    /// The crate `citationberg` has the types of the Citation Style Language.
    #[test]
    fn a_library_of_its_own_reads_every_item_of_the_csl_json() {
        let table = sources();
        let read: Vec<citationberg::json::Item> =
            serde_json::from_str(&csl(&table)).expect("it is CSL-JSON");
        assert_eq!(read.len(), once(&table).count());
        let raw: Value = serde_json::from_str(&csl(&table)).expect("JSON");
        let neely = raw
            .as_array()
            .expect("a list")
            .iter()
            .find(|item| item["id"] == "S35");
        let neely = neely.expect("it is there");
        assert_eq!(neely["issued"]["date-parts"], json!([[1979]]));
        assert_eq!(
            [&neely["volume"], &neely["issue"], &neely["page"]],
            ["5", "6", "135-140"]
        );
    }

    #[test]
    fn names_are_of_people_or_of_offices() {
        for (name, person) in [
            ("Neely D", true),
            ("van der Linden PJ", true),
            ("Kyser", true),
            ("Schumacher Sant'Anna", true),
            ("USDA NRCS", false),
            ("NIOSH", false),
            ("Utility Arborist Association", false),
            (
                "Departamento del Trabajo y Recursos Humanos (Puerto Rico)",
                false,
            ),
        ] {
            assert_eq!(matches!(author(name), Author::Person(..)), person, "{name}");
        }
        assert_eq!(
            author("Little EL Jr"),
            Author::Person("Little", "E. L.".to_owned())
        );
    }
}
