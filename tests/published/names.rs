//! Names: common, scientific and plant codes find a species; a near miss gets suggestions, never a silent guess.

use crate::support::*;
use calc::question::{Code, Found, find_species};

fn found(name: &str) -> Option<&'static str> {
    match find_species(reference().species, name) {
        Found::One(species) => Some(species.scientific),
        Found::Like(_) => None,
    }
}

#[test]
fn every_line_of_the_species_table_is_found_by_each_of_its_names_and_its_code() {
    let lines = rows("content/evidence/species_join.csv");
    let known = reference()
        .species
        .iter()
        .filter(|species| !species.unknown);
    assert_eq!(lines.len(), known.count());
    for line in &lines {
        let name = line["scientific_name"].as_str();
        assert_eq!(found(name), Some(name));
        let code = line["plants_code"].as_str();
        if !code.is_empty() {
            assert_eq!(found(code), Some(name), "{code}");
            assert_eq!(found(&code.to_lowercase()), Some(name), "{code}");
        }
        for spelling in species(name).names {
            assert_eq!(found(spelling), Some(name), "{spelling}");
            assert_eq!(
                found(&format!("  {} ", spelling.to_uppercase())),
                Some(name),
                "{spelling}"
            );
        }
    }
    for name in [
        "unknown broadleaf",
        "unknown conifer",
        "unknown shrub",
        "palm",
        "bamboo",
    ] {
        assert!(found(name).is_some(), "{name}");
    }
}

#[test]
fn no_name_finds_two_species() {
    let mut all: Vec<(String, &str)> = Vec::new();
    for species in reference().species {
        for name in species.names {
            all.push((name.to_lowercase(), species.scientific));
        }
    }
    all.sort();
    for pair in all.windows(2) {
        assert!(pair[0].0 != pair[1].0 || pair[0].1 == pair[1].1, "{pair:?}");
    }
}

/// Half a name, or that of a genus, could be several trees.
#[test]
fn a_word_that_is_no_whole_name_finds_nothing_and_gets_suggestions() {
    for word in [
        "maple",
        "oak",
        "pine",
        "elm",
        "ash",
        "birch",
        "willow",
        "poplar",
        "hickory",
        "locust",
        "cherry",
        "Sweet",
        "Chinese",
        "European",
        "Black",
        "Clumping)",
        "norwey mapel",
        "Acer",
        "Quercus",
    ] {
        match find_species(reference().species, word) {
            Found::One(species) => panic!("{word} found {}", species.name),
            Found::Like(names) => assert!(
                !names.is_empty() || matches!(word, "Clumping)"),
                "{word} gets no suggestion"
            ),
        }
    }
}

#[test]
fn a_misspelling_is_a_problem_that_names_what_is_like_it() {
    for (typed, like) in [
        ("norway mapel", "Norway maple"),
        ("siberian elmm", "Siberian elm"),
        ("tree of heven", "Tree-of-heaven"),
        ("doglas fir", "Douglas-fir"),
        ("buckthorn", "Common buckthorn"),
    ] {
        let problems = try_read(&tree(typed, "10")).expect_err(typed);
        assert_eq!(problems.len(), 1);
        assert_eq!(
            (problems[0].field.as_str(), problems[0].typed.as_str()),
            ("species", typed)
        );
        let Code::UnknownSpecies(names) = &problems[0].code else {
            panic!("{typed}: {:?}", problems[0].code);
        };
        assert!(names.contains(&like), "{typed}: {names:?}");
    }
}

#[test]
fn accents_hyphens_and_old_scientific_names_find_the_same_tree() {
    for (typed, scientific) in [
        ("tree of heaven", "Ailanthus altissima"),
        ("Tree-Of-Heaven", "Ailanthus altissima"),
        ("douglas fir", "Pseudotsuga menziesii"),
        ("sweet birch", "Betula lenta"),
        ("black birch", "Betula lenta"),
        ("Chinese elm", "Ulmus parvifolia"),
        ("lacebark elm", "Ulmus parvifolia"),
        ("black alder", "Alnus glutinosa"),
        ("eastern hophornbeam", "Ostrya virginiana"),
        ("Rhamnus frangula", "Frangula alnus"),
        ("Sapium sebiferum", "Triadica sebifera"),
    ] {
        assert_eq!(found(typed), Some(scientific), "{typed}");
    }
}
