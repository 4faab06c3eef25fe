//! What is known, compiled in from `content/`: see `build/`.

mod reader;
mod tags;
mod unpack;

use calc::reference::Reference;
use std::sync::OnceLock;

/// The day of the tables.
const DATA_VERSION: &str = "2026-11-25";

fn read() -> (Reference, bool) {
    let mut reader = reader::Reader::new(
        include_bytes!(concat!(env!("OUT_DIR"), "/ints")),
        include_bytes!(concat!(env!("OUT_DIR"), "/tags")),
        include_str!(concat!(env!("OUT_DIR"), "/texts")),
        include_str!(concat!(env!("OUT_DIR"), "/prose")),
    );
    let reference = reader.reference(DATA_VERSION);
    (reference, reader.is_done())
}

/// The tables, unpacked at the first call.
#[must_use]
pub fn reference() -> &'static Reference {
    static REFERENCE: OnceLock<Reference> = OnceLock::new();
    REFERENCE.get_or_init(|| read().0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use calc::terms::species::Group;

    #[test]
    fn what_the_build_packed_is_read_to_the_end() {
        assert!(
            read().1,
            "the reader and the build do not agree on the order"
        );
    }

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
