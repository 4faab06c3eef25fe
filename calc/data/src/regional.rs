//! What differs by country: the file beside the module, for programs that fetch it and for those that have it inside.

use crate::container;
use crate::unpack::{Streams, Unpack};
use calc::terms::regional::Regional;
use calc::terms::source::SourceLine;

/// The file, as the build made it. A program that doesn't name it doesn't carry it.
pub static FILE: &[u8] = include_bytes!(concat!(env!("OUT_DIR"), "/regional"));

/// Reads a file, whose sources come after those of the tables. None where the bytes are not a whole one of this kind.
pub(crate) fn read(bytes: &[u8], sources: &[SourceLine]) -> Option<Regional> {
    // The tables live as long as the program.
    let bytes: &'static [u8] = bytes.to_vec().leak();
    let [ints, tags, texts] = container::read(bytes)?;
    let texts = core::str::from_utf8(texts).ok()?;
    let mut streams = Streams::new(ints, tags, texts).after(sources);
    Some(Regional::unpack(&mut streams))
}
