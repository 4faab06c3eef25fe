//! What is known, compiled in from `content/`: see `build/`.

#[cfg(feature = "table")]
pub mod table;
#[macro_use]
mod unpack;
mod container;
pub mod list;
mod list_tables;
pub mod places;
mod regional;
mod tables;

use calc::reference::Reference;
use std::sync::OnceLock;
use unpack::{Streams, Unpack};

fn read() -> (Reference, bool) {
    let mut streams = Streams::new(
        include_bytes!(concat!(env!("OUT_DIR"), "/ints")),
        include_bytes!(concat!(env!("OUT_DIR"), "/tags")),
        include_str!(concat!(env!("OUT_DIR"), "/texts")),
    );
    let reference = Reference::unpack(&mut streams);
    (reference, streams.is_done())
}

/// The packed tables with the names of their files, for a crate that carries them to other programs.
pub static TABLES: [(&str, &[u8]); 6] = [
    ("ints", include_bytes!(concat!(env!("OUT_DIR"), "/ints"))),
    ("tags", include_bytes!(concat!(env!("OUT_DIR"), "/tags"))),
    ("texts", include_bytes!(concat!(env!("OUT_DIR"), "/texts"))),
    (
        "list-ints",
        include_bytes!(concat!(env!("OUT_DIR"), "/list-ints")),
    ),
    (
        "list-tags",
        include_bytes!(concat!(env!("OUT_DIR"), "/list-tags")),
    ),
    (
        "list-texts",
        include_bytes!(concat!(env!("OUT_DIR"), "/list-texts")),
    ),
];

/// The file beside the module: what differs by country. A program that doesn't name it doesn't carry it.
pub use regional::FILE as REGIONAL;

/// The file of natives that may be planted where trees died, as the build made it (`build/content/natives.rs` has its form):
/// the page fetches it once somebody asks. A program that doesn't name it doesn't carry it.
pub static NATIVES: &str = include_str!(concat!(env!("OUT_DIR"), "/natives"));

/// The tables, unpacked at the first call. What differs by country comes with [`take_regional`].
#[must_use]
pub fn reference() -> &'static Reference {
    static REFERENCE: OnceLock<Reference> = OnceLock::new();
    REFERENCE.get_or_init(|| read().0)
}

/// Takes the file beside the module. False where the bytes are not a whole file of this kind.
pub fn take_regional(bytes: &[u8]) -> bool {
    let reference = reference();
    if reference.regional.get().is_some() {
        return true;
    }
    match regional::read(bytes, reference.sources) {
        Some(regional) => reference.regional.set(regional).is_ok(),
        None => false,
    }
}

/// The tables as the module has them before the file beside it is here, for checks.
#[must_use]
pub fn reference_alone() -> &'static Reference {
    static ALONE: OnceLock<Reference> = OnceLock::new();
    ALONE.get_or_init(|| read().0)
}

/// All tables, with what differs by country: for programs that have the whole inside.
#[must_use]
pub fn whole() -> &'static Reference {
    let reference = reference();
    if reference.regional.get().is_none() {
        take_regional(REGIONAL);
    }
    reference
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_the_build_packed_is_read_to_the_end() {
        assert!(
            read().1,
            "the reader and the build do not agree on the order"
        );
    }
}
