//! Every line of species_join.csv has a wood class or a reason for none, from gdd_thresholds.csv or its own line.

use crate::support::{Row, number, rows};
use calc::terms::species::WoodClass;

fn class(join: &Row, sums: &[Row]) -> Option<WoodClass> {
    let row = sums.iter().find(|r| {
        r["species"] == join["gdd_species"]
            && r["event"] == join["gdd_event"]
            && r["unit"] == "degC.d"
            && r["base"] == "5 C"
    });
    if let Some(row) = row {
        assert_eq!(
            number(row, "value"),
            number(join, "gdd_value"),
            "{}",
            join["scientific_name"]
        );
    }
    let word = row.map_or(&join["wood_class"], |row| &row["wood_class"]);
    let class = WoodClass::parse(word);
    assert!(
        class.is_some() || word.starts_with("none, because "),
        "{}: {word}",
        join["scientific_name"]
    );
    class
}

#[test]
fn every_species_has_a_wood_class_and_only_palms_bamboo_and_yucca_have_none() {
    let (joins, sums) = (
        rows("content/evidence/species_join.csv"),
        rows("content/evidence/gdd_thresholds.csv"),
    );
    let untimed: Vec<&str> = joins
        .iter()
        .filter(|join| class(join, &sums).is_none())
        .map(|join| join["scientific_name"].as_str())
        .collect();
    assert_eq!(
        untimed,
        ["Arecaceae", "Poaceae: Bambusoideae", "Asparagaceae"]
    );
}

/// Wood anatomy as every handbook has it; the classes by genus are common knowledge, no source was read for this list.
#[test]
fn oaks_ashes_elms_and_locusts_are_ring_porous_and_maples_birches_poplars_and_beeches_diffuse() {
    let (joins, sums) = (
        rows("content/evidence/species_join.csv"),
        rows("content/evidence/gdd_thresholds.csv"),
    );
    for join in &joins {
        let want = match join["scientific_name"].split(' ').next().expect("a genus") {
            "Quercus" | "Fraxinus" | "Ulmus" | "Robinia" | "Gleditsia" | "Morus" | "Ailanthus" => {
                WoodClass::Ring
            }
            "Acer" | "Betula" | "Populus" | "Salix" | "Fagus" | "Alnus" | "Platanus" => {
                WoodClass::Diffuse
            }
            "Pinus" | "Larix" | "Juniperus" | "Pseudotsuga" => WoodClass::Conifer,
            _ => continue,
        };
        assert_eq!(
            class(join, &sums),
            Some(want),
            "{}",
            join["scientific_name"]
        );
    }
}
