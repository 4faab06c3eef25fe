//! A wrong species in silence is the worst fault of a list: what must never be taken for another stands here.

use calc::question::{InList, ListNames, find_in_list};
use std::sync::OnceLock;

fn names() -> &'static ListNames {
    static NAMES: OnceLock<ListNames> = OnceLock::new();
    NAMES.get_or_init(|| ListNames::new(calc_data::whole()))
}

/// The scientific name that a cell comes to; `genus`, `two` and the like where it comes to none.
fn found_in(typed: &str, region: Option<&str>) -> String {
    match find_in_list(names(), typed, region).found {
        InList::One(species) => species.scientific.to_owned(),
        InList::Other(other) => format!("other: {}", other.scientific),
        InList::Several(_) => "several".to_owned(),
        InList::Genus(_) => "genus".to_owned(),
        InList::Two(..) => "two".to_owned(),
        InList::Shortened => "shortened".to_owned(),
        InList::None => "none".to_owned(),
    }
}

fn found(typed: &str) -> String {
    found_in(typed, None)
}

#[test]
fn one_tree_is_never_another() {
    for (typed, scientific) in [
        ("sugar maple", "other: Acer saccharum"),
        ("Acer saccharum", "other: Acer saccharum"),
        ("Maple, sugar", "other: Acer saccharum"),
        ("Acer saccharum Marshall", "other: Acer saccharum"),
        ("silver maple", "Acer saccharinum"),
        ("Acer saccharinum L.", "Acer saccharinum"),
        ("Pinus nigra", "Pinus nigra"),
        ("Populus nigra", "Populus nigra"),
        ("Juglans nigra", "other: Juglans nigra"),
        ("Acer rubrum", "Acer rubrum"),
        ("Quercus rubra", "Quercus rubra"),
        ("Tilia americana", "other: Tilia americana"),
    ] {
        assert_eq!(found(typed), scientific, "{typed}");
    }
    for (a, b) in [
        ("sugar maple", "silver maple"),
        ("Pinus nigra", "Populus nigra"),
        ("Pinus nigra", "Betula nigra"),
        ("Pinus nigra", "Juglans nigra"),
        ("Betula nigra", "Juglans nigra"),
        ("Acer rubrum", "Quercus rubra"),
        ("Tilia cordata", "Tilia americana"),
        ("Carya glabra", "Carya ovata"),
        ("pignut hickory", "shagbark hickory"),
        ("red maple", "red oak"),
    ] {
        for end in ["", " L.", " 'Fine Form'", " (planted)", ", old", " var. x"] {
            let (a, b) = (found(&format!("{a}{end}")), found(&format!("{b}{end}")));
            let known = |found: &str| found.contains(' ');
            assert!(!(known(&a) && a == b), "{a} {b}{end}");
        }
    }
}

#[test]
fn a_genus_is_never_the_one_species_of_it_that_is_known() {
    for typed in [
        "Fraxinus",
        "Fraxinus sp.",
        "fraxinus spp",
        "FRAXINUS SPECIES",
        "Acer",
        "Malus sp. 'Donald Wyman'",
        "ash",
        "maple",
        "Maples",
        "Ailanthus",
        "Ginkgo sp.",
        "Oak",
        "Acer .",
    ] {
        let found = found(typed);
        assert!(!found.contains(' '), "{typed}: {found}");
    }
    assert_eq!(found("Fraxinus sp."), "genus");
    assert_eq!(found("ash"), "genus");
}

#[test]
fn what_stands_behind_a_name_is_cut() {
    for typed in [
        "Acer platanoides",
        "ACER PLATANOIDES",
        "acer platanoides",
        "Acer_platanoides",
        "Acer.platanoides",
        "Acer  platanoides L.",
        "Acer platanoides L. 1753",
        "Acer platanoides 'Crimson King'",
        "Acer platanoides ''Crimson King''",
        "Acer platanoides ‘Crimson King’",
        "Acer platanoides \"Crimson King\"",
        "Acer platanoides 'Crimson King",
        "Acer platanoides ´Emerald Queen`",
        "Acer platanoides 'Globosum' 'Nanum'",
        "Acer platanoides (L.)",
        "Acer platanoides (planted 1990",
        "Acer platanoides [street]",
        "Acer platanoides var. schwedleri",
        "Acer platanoides f. globosum",
        "Acer platanoides schwedleri",
        "Acer platanoides :: Norway Maple",
        "Acer platanoides ::",
        ":: Norway Maple",
        "Norway maple (Acer platanoides)",
        "Norway Maple / Acer platanoides",
        "Acer platanoides - Norway maple",
        "Norway maple - Érable plane",
        "Maple, Norway",
        "MAPLE, NORWAY",
        "Maple, Norway Crimson King",
        "MAPLE-NORWAY",
        "Maple - Norway",
        "Norwaymaple",
        "norway-maple",
        "Norway maples",
    ] {
        let found = found(typed);
        let may_ask = typed == "Maple - Norway";
        assert!(
            found == "Acer platanoides" || (may_ask && !found.contains(' ')),
            "{typed}: {found}"
        );
    }
    assert_eq!(found("Acer negundo L."), "Acer negundo");
    assert_eq!(found("ACER NEGUNDO L."), "Acer negundo");
    assert_eq!(found("Robinia pseudoacacia L."), "Robinia pseudoacacia");
    assert_eq!(
        found("Ailanthus altissima (Mill.) Swingle"),
        "Ailanthus altissima"
    );
    assert_eq!(
        found("Ailanthus altissima (Mill.) Sw?ngle"),
        "Ailanthus altissima"
    );
    assert_eq!(found("Treeofheaven"), "Ailanthus altissima");
    assert_eq!(
        found("Gleditsia triacanthos f. inermis"),
        "Gleditsia triacanthos"
    );
    assert_eq!(found("Poplar, black Lombardy"), "Populus nigra");
    assert_eq!(found("Platanus × acerifolia"), "Platanus x hispanica");
    assert_eq!(found("Platanus x hispanica"), "Platanus x hispanica");
    assert_eq!(found("Platanus hispanica"), "Platanus x hispanica");
}

#[test]
fn a_cut_never_makes_another_tree() {
    for typed in [
        "Populus deltoides x nigra",
        "Populus deltoides × nigra",
        "Acer rubrum x saccharinum",
        "Maple, red Japanese",
        "Norway maple / Sugar maple",
        "Norway maple or ash",
        "Oak/Ash",
        "Black Locust and Honey Locust",
        "Acer platanoides / Zelkova serrata",
        "Zelkova serrata (Norway maple)",
        "Acer platanoides (Acer rubrum)",
        "Robinia (Gleditsia triacanthos)",
        "A. platanoides",
        "Q rubra",
        "P. nigra",
        "N. maple",
        "Nor. maple",
        "Zelcova serrata",
        "Picea flexilis",
        "Norwegian spruce maple",
        "Red maple Japanese",
        "NM",
        "ACPL",
        "unknown",
        "",
    ] {
        let found = found(typed);
        assert!(!found.contains(' '), "{typed}: {found}");
    }
}

#[test]
fn a_name_that_means_two_trees_goes_by_the_place() {
    assert_eq!(found("Sycamore"), "several");
    assert_eq!(found_in("Sycamore", Some("US-MA")), "Platanus occidentalis");
    assert_eq!(found_in("Sycamore", Some("GB")), "Acer pseudoplatanus");
}

#[test]
fn a_question_mark_is_a_doubt() {
    for (typed, doubted) in [
        ("Norway maple?", true),
        ("Acer platanoides ?", true),
        ("maybe Norway maple", true),
        ("cf. Acer platanoides", true),
        ("Norway maple", false),
    ] {
        let named = find_in_list(names(), typed, None);
        assert_eq!(named.doubted, doubted, "{typed}");
        assert!(
            matches!(named.found, InList::One(species) if species.scientific == "Acer platanoides"),
            "{typed}"
        );
    }
}

#[test]
fn every_own_name_finds_its_own_tree_or_asks() {
    for species in calc_data::whole()
        .species
        .iter()
        .filter(|species| !species.unknown)
    {
        let scientific = found(species.scientific);
        assert!(
            scientific == species.scientific || !scientific.contains(' '),
            "{}: {scientific}",
            species.scientific
        );
        for name in species.names {
            let found = found(name);
            let own = found == species.scientific || !found.contains(' ');
            assert!(own, "{name}: {found}, not {}", species.scientific);
        }
    }
}
