//! Files packed beforehand, as a server sends them: brotli (RFC 7932) and gzip (RFC 1952), each at its best level but for
//! the many pages of species, of the key and of plates, which would take a minute for three bytes in a hundred. What was packed once is kept by its
//! digest, since that takes seconds.

use crate::build::assets::{File, hex};
use crate::build::device::is_read_first;
use crate::build::kept::kept;
use crate::project;
use flate2::{Compression, write::GzEncoder};
use rayon::prelude::*;
use sha2::{Digest as _, Sha256};
use std::collections::HashMap;
use std::convert::Infallible;
use std::io::Write as _;
use std::path::{Path, PathBuf};

/// A way to pack: the ending of the packed file's name, and how.
type Way = (&'static str, fn(&Text<'_>) -> Vec<u8>);

/// What is packed.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(crate) struct Text<'a> {
    bytes: &'a [u8],
    /// Whether the best level is worth its time.
    best: bool,
}

impl<'a> Text<'a> {
    /// A file of the site.
    pub(crate) fn of(file: &'a File) -> Self {
        Self {
            bytes: &file.bytes,
            best: !is_read_first(&file.path),
        }
    }
}

/// The ways that a file is packed.
pub(crate) const WAYS: [Way; 2] = [(".br", brotli), (".gz", gzip)];

/// Whether a file is worth packing, by its name: text, the module, tables. Pictures and archives are packed already.
pub(crate) fn is_worth_it(path: &str) -> bool {
    let ending = path.rsplit_once('.').map_or("", |(_, ending)| ending);
    matches!(
        ending,
        "html"
            | "css"
            | "js"
            | "wasm"
            | "bin"
            | "json"
            | "webmanifest"
            | "svg"
            | "csv"
            | "ts"
            | "txt"
            | "md"
    )
}

fn brotli(Text { bytes, best }: &Text<'_>) -> Vec<u8> {
    let params = brotli::enc::BrotliEncoderParams {
        quality: if *best { 11 } else { 9 },
        // The largest window that every browser takes.
        lgwin: 24,
        size_hint: bytes.len(),
        ..Default::default()
    };
    let mut packed = Vec::new();
    // Memory takes whatever is written to it.
    let _ = brotli::BrotliCompress(&mut &**bytes, &mut packed, &params);
    packed
}

fn gzip(text: &Text<'_>) -> Vec<u8> {
    if text.best {
        return smallest_gzip(text.bytes);
    }
    let mut packer = GzEncoder::new(Vec::new(), Compression::best());
    let done = packer.write_all(text.bytes).and_then(|()| packer.finish());
    done.unwrap_or_default()
}

/// Bytes by gzip, five in a hundred smaller than its usual best level makes them: this tries longer.
fn smallest_gzip(bytes: &[u8]) -> Vec<u8> {
    let mut packed = Vec::new();
    let options = zopfli::Options::default();
    // Memory takes whatever is written to it.
    let _ = zopfli::compress(options, zopfli::Format::Gzip, bytes, &mut packed);
    packed
}

/// The same, from the folder `kept` if it is there, else put there.
pub(crate) fn kept_gzip(bytes: &[u8], kept: &Path) -> Vec<u8> {
    packed(&Text { bytes, best: true }, WAYS[1], kept)
}

/// The folder that keeps what was packed for the project at `root`.
pub(crate) fn cache(root: &Path) -> PathBuf {
    project::target(root).join("packed-smallest")
}

/// A text packed in one way, from the folder that keeps them if it is there, else put there.
fn packed(text: &Text<'_>, (ending, way): Way, folder: &Path) -> Vec<u8> {
    let file = folder.join(hex(&Sha256::digest(text.bytes)) + ending);
    let Ok(packed) = kept(&file, || Ok::<_, Infallible>(way(text)));
    packed
}

/// Packs each of `texts` in every way of [`WAYS`], on all processors; none where it does not become smaller. The same
/// bytes are packed once: `kept` is the folder that keeps them.
pub(crate) fn pack(texts: &[Text<'_>], kept: &Path) -> Vec<[Option<Vec<u8>>; WAYS.len()]> {
    let mut once: Vec<Text<'_>> = texts.to_vec();
    // The longest first, so that the last ones to end are short.
    once.sort_by(|a, b| {
        b.bytes
            .len()
            .cmp(&a.bytes.len())
            .then_with(|| a.bytes.cmp(b.bytes))
    });
    once.dedup_by(|a, b| a.bytes == b.bytes);
    let each = once.par_iter().map(|text| {
        let packed = WAYS.map(|way| {
            Some(packed(text, way, kept))
                .filter(|packed| !packed.is_empty() && packed.len() < text.bytes.len())
        });
        (text.bytes, packed)
    });
    let done: HashMap<&[u8], _> = each.collect();
    let of = |text: &Text<'_>| done.get(text.bytes).cloned().unwrap_or_default();
    texts.iter().map(of).collect()
}

/// Checks that a page of which only the body is at hand weighs no more than any page without the calculator may.
#[cfg(test)]
pub(crate) fn expect_light(what: &str, body: &str) -> std::io::Result<()> {
    /// Packed bytes of a page.
    const MOST: usize = 60_000;
    /// Its head and its foot are less.
    const AROUND: usize = 2_000;
    let mut packer = GzEncoder::new(Vec::new(), Compression::new(6));
    packer.write_all(body.as_bytes())?;
    let bytes = packer.finish()?.len();
    println!("{what}: {} bytes, {bytes} packed", body.len());
    assert!(bytes + AROUND <= MOST, "{what}: {bytes} bytes packed");
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::io::Read as _;

    #[test]
    fn what_is_packed_is_unpacked_to_the_same_bytes() {
        let long = "bark and sapwood, ".repeat(500);
        let texts = [long.as_bytes(), b"x", long.as_bytes(), b"\0asm\x01\0\0\0"];
        let kept = std::env::temp_dir().join(format!("slipbark-kept-{}", std::process::id()));
        let texts = texts.map(|bytes| Text { bytes, best: true });
        let packed = pack(&texts, &kept);
        let again = pack(&texts, &kept);
        let _ = std::fs::remove_dir_all(&kept);
        assert_eq!(packed, again, "what was kept is what was packed");
        assert_eq!(packed[0], packed[2]);
        assert!(
            packed[1].iter().all(Option::is_none),
            "a letter does not become smaller"
        );
        let [Some(br), Some(gz)] = &packed[0] else {
            panic!("a long text becomes smaller");
        };
        let mut out = Vec::new();
        brotli::BrotliDecompress(&mut br.as_slice(), &mut out).unwrap();
        assert_eq!(out, long.as_bytes());
        let mut out = Vec::new();
        flate2::read::GzDecoder::new(gz.as_slice())
            .read_to_end(&mut out)
            .unwrap();
        assert_eq!(out, long.as_bytes());
    }
}
