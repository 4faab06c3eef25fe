//! What is known, compiled in from `content/`: see `build/`.

// Written by the build from tables that carry their own sources.
include!(concat!(env!("OUT_DIR"), "/reference.rs"));

static REFERENCE: Reference = Reference {
    species: SPECIES,
    method_rules: METHOD_RULES,
    cautions: CAUTIONS,
    outlook: OUTLOOK,
    outlook_species: OUTLOOK_SPECIES,
    cavity_users: CAVITY_USERS,
    restrictions: RESTRICTIONS,
    disease_regions: DISEASE_REGIONS,
    sources: SOURCES,
    constants: &CONSTANTS,
    data_version: "2026-11-25",
};

/// The tables.
#[must_use]
pub fn reference() -> &'static Reference {
    &REFERENCE
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_species_has_what_the_models_ask_for() {
        let reference = reference();
        assert_eq!(reference.species.len(), 78 + 3);
        for species in reference.species {
            let monocot = species.group == Group::Monocot;
            assert_eq!(species.bark.is_none(), monocot, "{}", species.name);
            assert!(
                monocot || species.unknown || !species.heights.is_empty(),
                "{}",
                species.name
            );
        }
    }

    #[test]
    fn no_two_species_answer_to_one_name() {
        let mut names: Vec<String> = reference()
            .species
            .iter()
            .flat_map(|species| species.names.iter().map(|name| name.to_lowercase()))
            .collect();
        names.sort();
        let twice: Vec<_> = names.windows(2).filter(|pair| pair[0] == pair[1]).collect();
        assert!(twice.is_empty(), "{twice:?}");
    }
}
