//! Every number in content has a source, a place in it and a grade.

use crate::support::{Row, root, rows};
use calc::terms::cite::Grade;
use std::collections::BTreeSet;

/// Tables without a grade of their own, and why.
const NO_GRADE: &[(&str, &str)] = &[
    (
        "evidence/ash_borer_regions.csv",
        "status_grade grades it; the months are those of S47",
    ),
    (
        "rules/curve_regions.csv",
        "abbreviations of regions in words; basis says from where",
    ),
    (
        "evidence/next_species.csv",
        "a ranking of our own; basis says so",
    ),
    (
        "evidence/oak_wilt_regions.csv",
        "status_grade and months_grade grade its two parts",
    ),
    (
        "rules/mark_of_caution.csv",
        "words to marks; basis says on what",
    ),
    (
        "rules/names_by_place.csv",
        "names, no numbers; basis says from where",
    ),
    (
        "evidence/degree_days_daily_2016.csv",
        "one printed table; its source stands in the notes",
    ),
    (
        "evidence/outlook.csv",
        "each cell names its counts and what is our own assumption",
    ),
    (
        "evidence/regions.csv",
        "region words to codes; basis says on what",
    ),
    (
        "evidence/sources.csv",
        "the sources themselves, with the best grade that each allows",
    ),
    (
        "evidence/species_join.csv",
        "keys of the other tables; no value of its own",
    ),
    (
        "evidence/timing_examples.csv",
        "our own earlier run beside published windows",
    ),
    (
        "rules/caution_species.csv",
        "which caution names which species; basis says why",
    ),
    (
        "rules/genus_marks.csv",
        "marks that a genus must have; the marks themselves are graded",
    ),
    (
        "rules/key.csv",
        "questions; where an answer ends is our own cut, the marks it asks for are graded",
    ),
    (
        "rules/list_headers.csv",
        "headers of lists, no numbers; basis says from where",
    ),
    (
        "rules/list_words.csv",
        "words in cells of lists, no numbers; basis says from where",
    ),
    (
        "rules/look_alike_names.csv",
        "names, no numbers; basis says from where",
    ),
    (
        "rules/methods.csv",
        "each row cites sources with their place",
    ),
    (
        "rules/species_names.csv",
        "names, no numbers; basis says from where",
    ),
    (
        "rules/unknown_species.csv",
        "the group value of the bark table; basis says what is assumed",
    ),
];

/// Tables with a grade whose rows may lack a source, and why.
const NO_SOURCE: &[(&str, &str)] = &[
    (
        "evidence/leaf_marks.csv",
        "marks of look-alikes are remembered",
    ),
    (
        "evidence/listed_site.csv",
        "light and moisture of many are remembered",
    ),
    (
        "evidence/mature_height.csv",
        "a species that the list does not have: all its cells are empty",
    ),
    (
        "rules/durability.csv",
        "from memory, shown as our own assumption",
    ),
    ("rules/asked_for.csv", "the order is our own"),
];

fn tables() -> Vec<String> {
    let mut names = Vec::new();
    for folder in ["evidence", "rules"] {
        let entries = std::fs::read_dir(root().join("content").join(folder)).expect("a folder");
        for entry in entries.flatten() {
            let name = entry.file_name().to_string_lossy().into_owned();
            if name.ends_with(".csv") {
                names.push(format!("{folder}/{name}"));
            }
        }
    }
    names.sort();
    assert!(names.len() > 30, "{names:?}");
    names
}

fn known_sources() -> BTreeSet<String> {
    let ids = rows("content/evidence/sources.csv")
        .into_iter()
        .map(|row| row["id"].clone());
    ids.chain(["own".to_owned(), "practice".to_owned(), "you".to_owned()])
        .collect()
}

fn read(table: &str) -> Vec<Row> {
    rows(&format!("content/{table}"))
}

fn filled(row: &Row, column: &str) -> bool {
    row.get(column).is_some_and(|cell| !cell.trim().is_empty())
}

/// The ids of a cell: parts between `;` and `+`.
fn ids(row: &Row, column: &str) -> Vec<String> {
    let cell = row.get(column).cloned().unwrap_or_default();
    let parts = cell
        .split([';', '+'])
        .map(str::trim)
        .filter(|part| !part.is_empty());
    parts.map(str::to_owned).collect()
}

#[test]
fn every_row_of_every_table_has_a_grade_that_can_be_read() {
    for table in tables() {
        let without = NO_GRADE.iter().any(|(name, _)| *name == table);
        let all = read(&table);
        let has = all[0].contains_key("grade");
        assert!(
            has != without,
            "{table}: a grade, or a line in NO_GRADE, and not both"
        );
        if !has {
            continue;
        }
        for row in &all {
            let cell = row["grade"].as_str();
            // Where a cell grades several fields each part has a name: `B=PUBLISHED|R=MEMORY`.
            for part in cell.split('|') {
                let grade = part.rsplit_once('=').map_or(part, |(_, grade)| grade);
                // A cell without a value grades nothing.
                let none = matches!(grade, "NONE" | "none");
                assert!(
                    none || Grade::of_table(grade).is_some(),
                    "{table}: \"{cell}\" is no grade in {row:?}"
                );
            }
        }
    }
    for (name, _) in NO_GRADE {
        assert!(
            tables().contains(&(*name).to_owned()),
            "{name} is no table: take it off the list"
        );
    }
}

#[test]
fn every_source_that_a_table_names_is_a_line_of_the_sources() {
    let known = known_sources();
    for table in tables() {
        for row in read(&table) {
            for column in ["source_id", "source_ids"] {
                for id in ids(&row, column) {
                    assert!(
                        known.contains(&id),
                        "{table}: the source {id} is not in sources.csv: {row:?}"
                    );
                }
            }
        }
    }
}

#[test]
fn every_graded_row_names_a_source_or_says_in_words_where_it_is_from() {
    for table in tables() {
        let all = read(&table);
        if !all[0].contains_key("grade") {
            continue;
        }
        let bare = all
            .iter()
            .filter(|row| {
                !["source_id", "source_ids", "source"]
                    .iter()
                    .any(|column| filled(row, column))
            })
            .count();
        let excused = NO_SOURCE.iter().any(|(name, _)| *name == table);
        assert!(
            (bare > 0) == excused,
            "{table}: {bare} rows without a source; NO_SOURCE says {excused}"
        );
    }
}

#[test]
fn every_constant_has_value_source_place_and_grade_and_stands_once() {
    let mut names = BTreeSet::new();
    let tables = ["rules/constants.csv", "rules/plan_constants.csv"];
    for row in tables.iter().flat_map(|table| read(table)) {
        let name = row["name"].as_str();
        for column in ["value", "unit", "source_id", "place", "grade"] {
            assert!(filled(&row, column), "{name}: {column} is empty");
        }
        assert!(row["value"].parse::<f64>().is_ok(), "{name}");
        assert!(names.insert(name.to_owned()), "{name} stands twice");
        let own = ids(&row, "source_id") == ["own"];
        let assumed = Grade::of_table(&row["grade"]) == Some(Grade::Assumption);
        assert_eq!(
            own, assumed,
            "{name}: our own is an assumption, and an assumption is our own"
        );
    }
    for row in read("rules/timing_constants.csv") {
        let name = row["name"].as_str();
        for column in ["value", "unit", "grade"] {
            assert!(filled(&row, column), "{name}: {column} is empty");
        }
        assert!(
            filled(&row, "source") || filled(&row, "source_id"),
            "{name} has no source"
        );
        assert!(names.insert(name.to_owned()), "{name} stands twice");
    }
}

#[test]
fn every_mark_of_a_species_and_every_row_of_the_methods_says_where_it_is_from() {
    for row in read("rules/species_traits.csv") {
        for column in ["scientific_name", "trait", "source_id", "place", "grade"] {
            assert!(filled(&row, column), "{column} is empty in {row:?}");
        }
    }
    let known = known_sources();
    for row in read("rules/methods.csv") {
        let id = row["id"].as_str();
        assert!(
            filled(&row, "cites") && filled(&row, "basis") && filled(&row, "words"),
            "{id}"
        );
        for cite in row["cites"].split(';') {
            let (source, place) = cite
                .split_once('@')
                .unwrap_or_else(|| panic!("{id}: no place in {cite}"));
            assert!(
                known.contains(source.trim()),
                "{id}: {source} is not in sources.csv"
            );
            assert!(!place.trim().is_empty(), "{id}: no place in {cite}");
        }
    }
}

/// The build lowers what claims more than its source allows; here the tables are held to the same.
#[test]
fn no_constant_claims_a_better_grade_than_its_source_allows() {
    let mut ceilings = std::collections::BTreeMap::new();
    for row in read("evidence/sources.csv") {
        let grade = Grade::of_table(&row["grade_ceiling"]).unwrap_or_else(|| panic!("{row:?}"));
        assert!(
            ceilings.insert(row["id"].clone(), grade).is_none(),
            "{} stands twice",
            row["id"]
        );
    }
    for table in [
        "rules/constants.csv",
        "rules/plan_constants.csv",
        "rules/species_traits.csv",
        "rules/timing_constants.csv",
    ] {
        for row in read(table) {
            let grade = Grade::of_table(&row["grade"]).expect("a grade");
            for id in ids(&row, "source_id") {
                if let Some(ceiling) = ceilings.get(&id) {
                    assert!(
                        grade >= *ceiling,
                        "{table}: {grade:?} is better than {id} allows: {row:?}"
                    );
                }
            }
        }
    }
}

#[test]
fn every_grade_is_one_that_the_readme_explains() {
    let readme =
        std::fs::read_to_string(root().join("content/README.md")).expect("content/README.md");
    for table in tables() {
        for row in read(&table) {
            let Some(cell) = row.get("grade") else {
                continue;
            };
            for part in cell.split('|') {
                let grade = part.rsplit_once('=').map_or(part, |(_, grade)| grade);
                let word = grade
                    .split(|c: char| !c.is_ascii_alphabetic())
                    .next()
                    .unwrap_or("");
                // A species' own mark is OWN; NONE and none grade a cell that is empty.
                let told = readme.contains(word) || matches!(word, "NONE" | "none" | "OWN");
                assert!(
                    told,
                    "{table}: the readme does not explain {word} in {cell}"
                );
            }
        }
    }
}
