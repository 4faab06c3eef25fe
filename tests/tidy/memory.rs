//! Nothing of grade MEMORY is shown as sourced.

use crate::support::{reference, rows};
use calc::terms::cite::Grade;

#[test]
fn no_look_alike_is_from_memory() {
    let lines = rows("content/evidence/identification.csv");
    for species in reference().species {
        let Some(line) = lines
            .iter()
            .find(|line| line["scientific_name"] == species.scientific)
        else {
            continue;
        };
        let remembered = line["grade"].contains("MEMORY") && !line["grade"].contains("PUBLISHED");
        assert!(
            !remembered || species.look_alikes.is_empty(),
            "{}",
            species.name
        );
        for alike in species.look_alikes {
            assert!(
                line["lookalikes"].contains(alike.scientific),
                "{} {}",
                species.name,
                alike.scientific
            );
            assert!(
                line["telling_mark"].contains(alike.mark),
                "{} {}",
                species.name,
                alike.mark
            );
            let only_remembered = line["more_lookalikes_memory"].contains(alike.scientific)
                && !line["lookalikes"].contains(alike.scientific);
            assert!(
                !only_remembered,
                "{}: {} is from memory",
                species.name, alike.scientific
            );
        }
    }
    let all: usize = reference()
        .species
        .iter()
        .map(|species| species.look_alikes.len())
        .sum();
    assert!(all > 80, "{all}");
}

#[test]
fn no_animal_that_is_shown_is_from_memory() {
    let shown: Vec<&str> = reference()
        .cavity_users
        .iter()
        .filter(|user| user.cite.grade != Grade::Memory)
        .map(|user| user.name)
        .collect();
    assert!(shown.len() > 40, "{}", shown.len());
    for row in rows("content/evidence/cavity_users.csv") {
        if row["grade"] != "MEMORY" {
            continue;
        }
        let kept = reference().cavity_users.iter().any(|user| {
            user.name == row["common_name"]
                && user.note == row["note"]
                && user.cite.grade != Grade::Memory
        });
        assert!(
            !kept,
            "{} of {} lost its grade",
            row["common_name"], row["region"]
        );
    }
}

/// Every line of every answer is held to it in tests/property; here the tables that answers quote.
#[test]
fn no_month_outlook_height_bark_or_rule_that_answers_quote_is_from_memory() {
    use calc::terms::place::Hemisphere;
    use calc::timing::Topic;
    use calc::timing::closed_months::for_region;
    let topics = [
        Topic::Birds,
        Topic::Bats,
        Topic::OakWilt,
        Topic::Elm,
        Topic::PineBeetles,
        Topic::AshBorer,
        Topic::LaurelWilt,
    ];
    for region in [
        None,
        Some("US-WI"),
        Some("AU-VIC"),
        Some("GB"),
        Some("NZ"),
        Some("CA-AB"),
    ] {
        for hemisphere in [Hemisphere::North, Hemisphere::South] {
            for applied in for_region(reference().restrictions, region, hemisphere, &topics) {
                let row = applied.restriction;
                assert_ne!(row.cite.grade, Grade::Memory, "{}", row.jurisdiction);
            }
        }
    }
    for rule in reference().method_rules {
        assert!(!rule.cites.is_empty(), "{}", rule.id);
        assert!(
            rule.cites.iter().all(|cite| cite.grade != Grade::Memory),
            "{}",
            rule.id
        );
    }
    for row in reference().outlook_species {
        assert!(
            row.cites.iter().all(|cite| cite.grade != Grade::Memory),
            "{}",
            row.scientific
        );
    }
    for species in reference().species {
        for cite in species
            .bark
            .iter()
            .map(|bark| bark.cite)
            .chain(species.heights.iter().map(|row| row.cite))
        {
            assert_ne!(cite.grade, Grade::Memory, "{}", species.name);
        }
    }
}
