//! Every line of species_join.csv has a wood class or a reason for none, from gdd_thresholds.csv.

use crate::support::{Row, number, rows};
use calc::terms::species::WoodClass;
use std::collections::BTreeMap;

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
    WoodClass::of_join(&join["gdd_kind"], row.map(|r| r["wood_class"].as_str()))
        .unwrap_or_else(|e| panic!("{}: {e}", join["scientific_name"]))
}

#[test]
fn all_78_species_have_a_wood_class_and_only_palms_bamboo_and_yucca_have_none() {
    let (joins, sums) = (
        rows("content/evidence/species_join.csv"),
        rows("content/evidence/gdd_thresholds.csv"),
    );
    assert_eq!(joins.len(), 78);
    let mut count: BTreeMap<String, usize> = BTreeMap::new();
    let mut untimed = Vec::new();
    for join in &joins {
        match class(join, &sums) {
            Some(c) => *count.entry(format!("{c:?}")).or_default() += 1,
            None => untimed.push(join["scientific_name"].clone()),
        }
    }
    assert_eq!(
        untimed,
        ["Arecaceae", "Poaceae: Bambusoideae", "Asparagaceae"]
    );
    let count: Vec<(&str, usize)> = count.iter().map(|(k, v)| (k.as_str(), *v)).collect();
    assert_eq!(
        count,
        [
            ("Conifer", 11),
            ("Diffuse", 33),
            ("EvergreenBroadleaf", 4),
            ("Ring", 27)
        ]
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
