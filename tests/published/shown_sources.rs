//! What is printed of trials and of sources: only deaths that a ring alone brought are printed as such
//! (mortality.csv: `shown`, `what_counted`, `say_instead`), and a source is named once, by the label that sources.csv
//! gives it.

use crate::support::*;
use calc::terms::cite::Grade;
use calc::terms::source::{OWN, PRACTICE, YOU};
use std::collections::{BTreeMap, BTreeSet};

/// The species that a row of trials is of.
fn is_of(row: &Row, scientific: &str) -> bool {
    let listed = row["species"].replace(", ", ";").replace(" and ", ";");
    let genus = scientific.split(' ').next().unwrap_or_default();
    let epithet = scientific.split_once(' ').map_or("", |(_, rest)| rest);
    let short = format!("{}. {epithet}", &genus[..1]);
    listed
        .split(';')
        .map(str::trim)
        .any(|name| name == scientific || (name == short && listed.starts_with(genus)))
}

#[test]
fn only_deaths_by_a_ring_alone_are_printed_as_deaths() {
    let table = rows("content/evidence/mortality.csv");
    let (mut printed, mut told) = (0, 0);
    for species in reference()
        .species
        .iter()
        .filter(|species| !species.unknown)
    {
        let of = |column: &str, wanted: fn(&str) -> bool| -> Vec<&Row> {
            table
                .iter()
                .filter(|row| is_of(row, species.scientific) && wanted(&row[column]))
                .collect()
        };
        let shown = of("shown", |cell| cell == "yes");
        let counts: Vec<&str> = species.deaths.iter().map(|row| row.n).collect();
        let wanted: Vec<&str> = shown.iter().map(|row| row["n"].as_str()).collect();
        assert_eq!(counts, wanted, "{}", species.name);
        let said: Vec<&str> = species.trials_told.iter().map(|told| told.text).collect();
        let wanted: Vec<&str> = of("say_instead", |cell| !cell.is_empty())
            .iter()
            .map(|row| row["say_instead"].as_str())
            .collect();
        assert_eq!(said, wanted, "{}", species.name);
        printed += shown.len();
        told += said.len();
    }
    assert!(
        printed >= 20 && told >= 8,
        "{printed} rows, {told} sentences"
    );
}

/// A strap is no ring (M24, 1966), cuts counted with rings are no rings (M04), and a share without sprouts is no death
/// (M05): none of these stands in a table of deaths any more, and what is said of them says what it was.
#[test]
fn norway_maple_and_black_cherry_have_no_deaths_that_a_ring_did_not_bring() {
    assert!(species("Acer platanoides").deaths.is_empty());
    let maple = species("Acer platanoides").trials_told;
    assert!(maple.iter().any(|told| told.text.contains("strap")));
    let cherry = species("Prunus serotina");
    assert!(
        cherry
            .deaths
            .iter()
            .all(|row| !matches!(row.source.text(), "M04" | "M05"))
    );
    let page = calc_view::text::answer(
        reference(),
        &question(&tree("Norway maple", "12")),
        &ask(&tree("Norway maple", "12")),
        None,
    );
    assert!(!page.contains("Deaths counted on this species"), "{page}");
}

#[test]
fn an_answer_names_each_source_once_and_by_its_own_label() {
    let lines: BTreeMap<String, Row> = rows("content/evidence/sources.csv")
        .into_iter()
        .map(|row| (row["id"].clone(), row))
        .collect();
    let mut named = BTreeSet::new();
    for species in reference().species {
        for size in ["4", "14"] {
            let answer = ask_plain(&tree(species.name, size));
            let labels: Vec<&str> = answer.sources.iter().map(|line| line.label).collect();
            let once: BTreeSet<&&str> = labels.iter().collect();
            assert_eq!(once.len(), labels.len(), "{}: {labels:?}", species.name);
            for line in &answer.sources {
                if matches!(line.id, OWN | PRACTICE | YOU) {
                    continue;
                }
                let row = &lines[line.id.text()];
                assert_eq!(line.label, row["label"], "{}", line.id.text());
                assert!(
                    row["same_as"].is_empty(),
                    "{} is {}",
                    line.id.text(),
                    row["same_as"]
                );
                named.insert(line.id.text());
            }
        }
    }
    assert!(named.len() > 60, "{}", named.len());
}

/// A blog, a forum, a news report or a single account is read where it tells of another's work at best.
#[test]
fn a_weak_source_never_gives_a_published_value() {
    for row in rows("content/evidence/sources.csv") {
        let ceiling = Grade::of_table(&row["grade_ceiling"]).expect("a grade");
        let label = row["label"].chars().count();
        assert!((1..=40).contains(&label), "{}: {}", row["id"], row["label"]);
        if row["strength"] == "weak" {
            assert!(ceiling >= Grade::Secondary, "{}", row["id"]);
        }
    }
    let ceilings: BTreeMap<String, Grade> = rows("content/evidence/sources.csv")
        .into_iter()
        .map(|row| {
            (
                row["id"].clone(),
                Grade::of_table(&row["grade_ceiling"]).expect("a grade"),
            )
        })
        .collect();
    let holds = |source: &str, grade: Grade| ceilings.get(source).is_none_or(|best| grade >= *best);
    for species in reference().species {
        let answer = ask_plain(&tree(species.name, "14"));
        let stems = answer.stems.iter().flat_map(|stem| {
            let bark = stem.bark.iter().flat_map(|bark| &bark.because);
            bark.chain(stem.ring.iter().flat_map(|ring| &ring.because))
        });
        let effort = answer.effort.iter().flat_map(|effort| &effort.because);
        let all = stems
            .chain(effort)
            .chain(&answer.height.because)
            .chain(&answer.timing.because)
            .chain(&answer.reach.because);
        for cite in all {
            assert!(
                holds(cite.source.text(), cite.grade),
                "{}: {cite:?}",
                species.name
            );
        }
    }
}
