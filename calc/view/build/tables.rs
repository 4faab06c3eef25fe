//! Prose of the tables of evidence in other languages. The English stands in the table; `content/words/LANG/tables` has a
//! message a row, and each is held against its row.

use crate::file::{Message, Part, Place, Problems};
use crate::text_key::text_key;
use std::collections::BTreeMap;
use std::path::Path;

/// A table with prose in it.
struct Table {
    file: &'static str,
    /// The first part of the ids of its messages.
    words: &'static str,
    /// The columns that tell its rows apart: they make the rest of an id.
    id: &'static [&'static str],
    /// Columns with prose, and the attribute that says each.
    prose: &'static [(&'static str, &'static str)],
    kind: Kind,
}

/// Which rows and which part of a cell people read.
#[derive(Clone, Copy, PartialEq)]
enum Kind {
    /// All of it.
    Whole,
    /// Of the United States and of every place; who decides may be told by another table.
    Authorities,
    /// Of rows that a source says, up to the first remark on sizes.
    Animals,
    /// A list beside that of look-alikes, whose names stand in front: `Acer rubrum: shallow lobes`.
    LookAlikes,
}

const TABLES: [Table; 7] = [
    Table {
        file: "content/evidence/cautions.csv",
        words: "caution",
        id: &["id"],
        prose: &[
            ("subject", "subject"),
            ("sentence", "sentence"),
            ("who_elsewhere", "who"),
        ],
        kind: Kind::Whole,
    },
    Table {
        file: "content/evidence/caution_authorities.csv",
        words: "authority",
        id: &["caution", "region"],
        prose: &[("who_decides", "who"), ("law_in_plain_words", "law")],
        kind: Kind::Authorities,
    },
    Table {
        file: "content/rules/seasonal_restrictions.csv",
        words: "months",
        id: &["kind", "from_md", "jurisdiction"],
        prose: &[("jurisdiction", "where"), ("force", "force")],
        kind: Kind::Whole,
    },
    Table {
        file: "content/evidence/cavity_users.csv",
        words: "animal",
        id: &["common_name", "region"],
        prose: &[("common_name", "name"), ("note", "note")],
        kind: Kind::Animals,
    },
    Table {
        file: "content/evidence/snag_guides.csv",
        words: "guide",
        id: &["guidance"],
        prose: &[
            ("guidance", "whose"),
            ("per_acre", "snags"),
            ("note", "note"),
        ],
        kind: Kind::Whole,
    },
    Table {
        file: "content/evidence/identification.csv",
        words: "alike",
        id: &["scientific_name"],
        prose: &[("telling_mark", "mark")],
        kind: Kind::LookAlikes,
    },
    Table {
        file: "content/rules/method_minutes.csv",
        words: "minutes",
        id: &["source_id"],
        prose: &[("of_what", "of")],
        kind: Kind::Whole,
    },
];

/// Labels of what is no source, which the build of the data gives.
const LABELS: [(&str, &str); 3] = [
    ("own", "our own assumption"),
    ("practice", "common practice, no source"),
    ("you", "what you told us"),
];
const LABELLED: &str = "calc/data/build/content/sources.rs";

/// A text of a table: where it stands, and the message and the attribute that say it.
pub(crate) struct Text {
    pub place: Place,
    pub id: String,
    pub attribute: &'static str,
    pub english: String,
}

/// A text, and what a language says for it.
pub(crate) type Said = (String, String);

/// Every text of every table.
pub(crate) fn read(root: &Path) -> Result<Vec<Text>, Problems> {
    let mut texts = Vec::new();
    for table in &TABLES {
        println!(
            "cargo::rerun-if-changed={}",
            root.join(table.file).display()
        );
        rows(root, table, &mut texts).map_err(|error| vec![format!("{}: {error}", table.file)])?;
    }
    for (id, label) in LABELS {
        texts.push(Text {
            place: Place {
                file: LABELLED.to_owned(),
                line: 1,
            },
            id: format!("source-{id}"),
            attribute: "label",
            english: label.to_owned(),
        });
    }
    Ok(texts)
}

fn rows(root: &Path, table: &Table, texts: &mut Vec<Text>) -> Result<(), csv::Error> {
    let mut reader = csv::Reader::from_path(root.join(table.file))?;
    let head = reader.headers()?.clone();
    let cell = |row: &csv::StringRecord, column: &str| {
        let at = head.iter().position(|name| name == column);
        let at = at.unwrap_or_else(|| panic!("{} has no column {column}", table.file));
        row.get(at).unwrap_or("").trim().to_owned()
    };
    for row in reader.records() {
        let row = row?;
        let line = row.position().map_or(0, |place| place.line() as usize);
        let left_out = match table.kind {
            Kind::Whole => false,
            Kind::Authorities => !["US", "*"].contains(&cell(&row, "region").as_str()),
            Kind::Animals | Kind::LookAlikes => cell(&row, "grade") == "MEMORY",
        };
        if left_out {
            continue;
        }
        let ids = table.id.iter().map(|column| slug(&cell(&row, column)));
        let ids = ids.filter(|id| !id.is_empty());
        let id = [table.words.to_owned()].into_iter().chain(ids);
        let id = id.collect::<Vec<_>>().join("-");
        for (column, attribute) in table.prose {
            let cell = |column: &str| cell(&row, column);
            for (id, english) in read_of(table.kind, &id, column, cell) {
                if !english.is_empty() {
                    texts.push(Text {
                        place: Place {
                            file: table.file.to_owned(),
                            line,
                        },
                        id,
                        attribute,
                        english,
                    });
                }
            }
        }
    }
    Ok(())
}

/// What people read of a cell, with the id of its message.
fn read_of(
    kind: Kind,
    id: &str,
    column: &str,
    cell: impl Fn(&str) -> String,
) -> Vec<(String, String)> {
    let text = cell(column);
    let read = match kind {
        Kind::Authorities if text.starts_with("see ") => String::new(),
        Kind::Animals if column == "note" => {
            let ends = [";", ": see also"]
                .iter()
                .filter_map(|mark| text.find(mark));
            let end = ends.min().unwrap_or(text.len());
            text[..end].to_owned()
        }
        Kind::LookAlikes => {
            let others = cell("lookalikes");
            let pairs = others.split(';').zip(text.split(';'));
            return pairs
                .map(|(other, mark)| {
                    let mark = mark.split_once(": ").map_or(mark, |(_, mark)| mark);
                    (format!("{id}-{}", slug(other)), mark.trim().to_owned())
                })
                .collect();
        }
        _ => text,
    };
    vec![(id.to_owned(), read)]
}

/// A cell as a part of an id: `Acer rubrum` is `acer-rubrum`.
fn slug(cell: &str) -> String {
    let words = cell.split(|c: char| !c.is_ascii_alphanumeric());
    let words = words.filter(|word| !word.is_empty());
    words.collect::<Vec<_>>().join("-").to_lowercase()
}

/// What a language says for the texts. A text that stands in several rows is said once, at any of them; what the language
/// that it changes says is its own where it tells nothing else.
pub(crate) fn said(
    folder: &str,
    messages: &[Message],
    texts: &[Text],
    base: Option<&[Said]>,
) -> Result<Vec<Said>, Problems> {
    let mut problems = Problems::new();
    let mut all: BTreeMap<&str, String> = BTreeMap::new();
    for (english, said) in base.into_iter().flatten() {
        all.insert(english, said.clone());
    }
    let mut own: BTreeMap<&str, &Place> = BTreeMap::new();
    for message in messages {
        for wording in &message.wordings {
            let (place, name) = (&wording.place, format!("{}.{}", message.id, wording.word));
            let of = |text: &&Text| text.id == message.id && text.attribute == wording.word;
            let Some(text) = texts.iter().find(of) else {
                problems.push(format!("{place}: {name} says no text of a table"));
                continue;
            };
            let said = match plain(&wording.parts) {
                Some(said) => said,
                None => {
                    problems.push(format!(
                        "{place}: {name}: only text and the gaps of its row"
                    ));
                    continue;
                }
            };
            for gap in gaps(&text.english) {
                if !said.contains(gap) {
                    problems.push(format!(
                        "{place}: {name}: {gap} of {} is missing",
                        text.place
                    ));
                }
            }
            if let Some(known) = own.insert(&text.english, place) {
                problems.push(format!("{place}: {name}: the same text is said at {known}"));
            }
            all.insert(&text.english, said);
        }
    }
    let mut lacking: Vec<&str> = Vec::new();
    for text in texts {
        if !all.contains_key(text.english.as_str()) && !lacking.contains(&&*text.english) {
            lacking.push(&text.english);
            problems.push(format!(
                "{}: no words for it in {folder}/tables: {}.{}",
                text.place, text.id, text.attribute
            ));
        }
    }
    if problems.is_empty() {
        Ok(all
            .into_iter()
            .map(|(english, said)| (english.to_owned(), said))
            .collect())
    } else {
        Err(problems)
    }
}

/// A wording without choices; a gap as tables write it: `{people_out}`.
fn plain(parts: &[Part]) -> Option<String> {
    let mut said = String::new();
    for part in parts {
        match part {
            Part::Text(text) => said.push_str(text),
            Part::Gap(name) => said = format!("{said}{{{}}}", name.replace('-', "_")),
            Part::Other(_) | Part::Choice { .. } => return None,
        }
    }
    Some(said)
}

/// The gaps in a text of a table.
fn gaps(english: &str) -> impl Iterator<Item = &str> {
    let found = english.match_indices('{').map(|(at, _)| &english[at..]);
    found.filter_map(|rest| rest.find('}').map(|end| &rest[..=end]))
}

/// As the pack has them: a line each, the key of the English in front.
pub(crate) fn packed(said: &[Said]) -> String {
    let mut keys = BTreeMap::new();
    let mut lines = Vec::new();
    for (english, said) in said {
        let key = text_key(english);
        if let Some(other) = keys.insert(key, english) {
            panic!("two texts of tables have one key: {other:?} and {english:?}");
        }
        lines.push(format!("{}{said}", String::from_utf8_lossy(&key)));
    }
    lines.join("\n")
}
