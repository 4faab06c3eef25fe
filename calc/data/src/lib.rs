//! What is known, compiled in from `content/`: see `build/`.

#[cfg(feature = "table")]
pub mod table;
#[macro_use]
mod unpack;
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

/// The tables, unpacked at the first call.
#[must_use]
pub fn reference() -> &'static Reference {
    static REFERENCE: OnceLock<Reference> = OnceLock::new();
    REFERENCE.get_or_init(|| read().0)
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
