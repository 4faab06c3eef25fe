//! Names: common, scientific and plant codes find a species; a near miss gets suggestions, never a silent guess.
//! Our own list, compared with itself; no outside source but where a check names one.

use crate::support::*;
use calc::question::{Code, Found, find_species};
use serde_json::json;

fn found(name: &str) -> Option<&'static str> {
    match find_species(reference(), name, Some("US-MA")) {
        Found::One(species) => Some(species.scientific),
        Found::Other(_) | Found::Like(_) | Found::NotHere => None,
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
        match find_species(reference(), word, None) {
            Found::One(species) => panic!("{word} found {}", species.name),
            Found::Other(other) => panic!("{word} found {}", other.names[0]),
            Found::NotHere => panic!("{word}: the names are here"),
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
        assert!(names.iter().any(|it| it.name == like), "{typed}: {names:?}");
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

fn other(name: &str) -> &'static str {
    match find_species(reference(), name, None) {
        Found::Other(other) => other.scientific,
        found => panic!("{name}: {found:?}"),
    }
}

fn not_listed(name: &str, region: &str) -> calc::question::NotListed {
    let problems = try_read(&with(tree(name, "10"), json!({ "region": region }))).expect_err(name);
    match problems.into_iter().next().map(|problem| problem.code) {
        Some(Code::NotListed(told)) => told,
        code => panic!("{name}: {code:?}"),
    }
}

/// The 261 trees of other_names.csv that are not on the list, by each of their names.
#[test]
fn a_tree_that_is_not_on_the_list_is_never_answered_by_a_look_alike() {
    let mut count = 0;
    for row in rows("content/evidence/other_names.csv") {
        if row["status"] == "listed" {
            continue;
        }
        count += 1;
        let names = row["also"].split(';').chain([row["name"].as_str()]);
        for name in names.map(str::trim).filter(|name| !name.is_empty()) {
            assert_eq!(other(name), row["scientific_name"], "{name}");
        }
        // A letter off, it is offered itself, and none of the trees that it is mistaken for.
        let typed = format!("{}e", row["name"]);
        let Found::Like(like) = find_species(reference(), &typed, None) else {
            continue;
        };
        for never in row["lookalike_of"].split(';').map(str::trim) {
            let listed = reference()
                .species
                .iter()
                .find(|species| species.scientific == never);
            assert!(
                listed.is_none_or(|species| like.iter().all(|it| it.name != species.name)),
                "{typed}: {like:?}"
            );
        }
    }
    assert!(count > 250, "{count}");
}

/// Little's range maps (NAT02): sugar maple is native in Wisconsin and not in Oregon.
#[test]
fn sugar_maple_is_native_in_wisconsin_and_not_on_the_list() {
    let told = not_listed("sugar maple", "US-WI");
    assert_eq!((told.name, told.native), ("sugar maple", Some(true)));
    assert_eq!(told.group, "unknown broadleaf");
    assert_eq!(not_listed("Sugar maples", "US-OR").native, Some(false));
    assert_eq!(
        not_listed("white ash", "US-WI").mind,
        "It is an ash: the ash-borer line holds."
    );
}

/// An ash, an oak, a pine keep their cautions and their rules though their own rows are not written.
#[test]
fn a_tree_that_is_not_on_the_list_keeps_the_cautions_of_its_genus() {
    for (name, region, caution) in [
        ("white ash", "US-WI", "DZ2"),
        ("pin oak", "US-IL", "DZ1"),
        ("red pine", "US-WI", "DZ4"),
        ("slippery elm", "US-WI", "DZ3"),
        ("chokecherry", "US-WI", "DZ7"),
    ] {
        let told = not_listed(name, region);
        let answer = ask(&with(tree(&told.choose, "10"), json!({ "region": region })));
        assert!(speaks(&answer, caution), "{name}");
        let plain = ask(&with(tree(told.group, "10"), json!({ "region": region })));
        assert!(!speaks(&plain, caution), "{name}");
        assert_eq!(answer.species.scientific, told.scientific);
        assert!(
            told.native == Some(true) && answer.species.native_here,
            "{name}"
        );
    }
    let oak = ask(&with(
        tree("unknown broadleaf (pin oak)", "10"),
        json!({ "region": "US-WI", "cannot_wait": true }),
    ));
    let ring = level(&oak, calc::terms::method::Method::BarkRing);
    assert_eq!(
        ring,
        calc::terms::method::Level::RuledOut,
        "June in Wisconsin"
    );
}

/// Common practice, no source: British sycamore is a maple, American sycamore a plane.
#[test]
fn a_name_that_means_two_trees_goes_by_the_place_and_is_asked_where_none_is_said() {
    let meant = |name: &str, region: Option<&str>| match find_species(reference(), name, region) {
        Found::One(species) => species.scientific.to_owned(),
        Found::Other(other) => other.scientific.to_owned(),
        Found::Like(names) => {
            let names: Vec<&str> = names.iter().map(|it| it.name).collect();
            names.join(", ")
        }
        Found::NotHere => "not here".to_owned(),
    };
    assert_eq!(meant("sycamore", Some("GB-ENG")), "Acer pseudoplatanus");
    assert_eq!(meant("sycamore", Some("US-PA")), "Platanus occidentalis");
    assert_eq!(meant("Sycamore", None), "American sycamore, Sycamore maple");
    assert_eq!(meant("aspen", Some("GB")), "Populus tremula");
    assert_eq!(meant("aspen", Some("US-CO")), "Populus tremuloides");
    assert_eq!(meant("red cedar", Some("US-WA")), "Thuja plicata");
    assert_eq!(meant("red cedar", Some("US-KY")), "Juniperus virginiana");
    assert_eq!(meant("camphor laurel", Some("AU")), "Cinnamomum camphora");
}

/// Until the file with other names is here nothing is offered in place of a name that may be one of them.
#[test]
fn before_the_names_are_here_nothing_is_offered_and_nothing_wrong_is_said() {
    let bare = calc_data::reference_alone();
    assert!(bare.regional.get().is_none());
    for name in ["sugar maple", "white ash", "norwey mapel"] {
        assert!(
            matches!(find_species(bare, name, None), Found::NotHere),
            "{name}"
        );
    }
    assert!(matches!(
        find_species(bare, "Norway maple", None),
        Found::One(_)
    ));
    let typed: calc::question::Typed =
        serde_json::from_value(tree("sugar maple", "10")).expect("typed");
    let problems = calc::question::read(bare, &typed).expect_err("a problem");
    assert_eq!(problems[0].code, Code::NamesNotHere);
}

/// The sentences that other_names.csv gives for each tree, where it is native and elsewhere, are those that are told.
#[test]
fn what_is_told_of_a_tree_that_is_not_on_the_list_is_what_the_table_says() {
    for row in rows("content/evidence/other_names.csv") {
        if row["status"] == "listed" {
            continue;
        }
        let first = row["native_codes"].split_whitespace().next();
        for region in first.into_iter().chain(["MX"]) {
            let told = not_listed(&row["name"], region);
            let problem = calc::question::Problem::new(
                "species",
                Code::NotListed(told.clone()),
                &row["name"],
            );
            let native = first == Some(region);
            let says = if native {
                &row["say_where_native"]
            } else {
                &row["say_elsewhere"]
            };
            // The entry is told with the tree's name in it, which keeps what holds for it.
            let says = says.replace(told.group, &told.choose);
            let (before, after) = says.split_once("{place}").unwrap_or((&says, ""));
            let text = calc_view::problem_text(&problem);
            assert!(text.starts_with(before), "{text}\nnot {says}");
            let after =
                [after, row["mind"].as_str()].join(if row["mind"].is_empty() { "" } else { " " });
            assert!(
                text.ends_with(after.trim()),
                "{text}\nnot {says} {}",
                row["mind"]
            );
        }
    }
}
