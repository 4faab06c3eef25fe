//! Bytes packed for a page: one LZMA stream, in letters of windows-1252.
//!
//! LZMA packs the WebAssembly a fifth smaller than gzip does. The page unpacks it with a script of ours
//! (`www/pages/js/lzma.js`), which costs it 4 kB and a tenth of a second.
//!
//! In windows-1252 each of the 256 bytes is a letter of its own, so that a page in it can hold a byte in a letter:
//! 0.4 % more than the bytes, where base64 takes 33 %, and letters that UTF-8 has in one byte 14 %. What a page would
//! lose are NUL, CR and the `<` that may end the element; see [`letters`].

use anyhow::Result;
use lzma_rust2::{EncodeMode, LzmaOptions, LzmaWriter, MfType};
use std::io::Write as _;

/// A file in the .lzma format. Most of the bytes are WebAssembly, which has no places of 4 or 8 that look alike: so the
/// byte before counts (4 bits), and the position does not. Measured: 0.1 % less than the usual 3, 0, 2.
///
/// # Errors
/// None in memory.
pub fn lzma(bytes: &[u8]) -> Result<Vec<u8>> {
    let options = LzmaOptions {
        dict_size: u32::try_from(bytes.len())?.next_power_of_two(),
        lc: 4,
        lp: 0,
        pb: 0,
        mode: EncodeMode::Normal,
        nice_len: LzmaOptions::NICE_LEN_MAX,
        mf: MfType::Bt4,
        depth_limit: 0,
        preset_dict: None,
    };
    let size = Some(bytes.len() as u64);
    let mut packer = LzmaWriter::new_use_header(Vec::new(), &options, size)?;
    packer.write_all(bytes)?;
    Ok(packer.finish()?)
}

/// What no letter may be: a page reads NUL and CR as something else, and `<` could end the element.
const NEVER: [u8; 3] = [0, b'\r', b'<'];

/// Bytes as letters: a line holds its key, then each byte with the key added (mod 256). Gives the bytes of a line too,
/// which are as many as may be for every line to have a key that makes none of the letters that may not be.
pub fn letters(bytes: &[u8]) -> (Vec<u8>, usize) {
    // A line of 84 always has one: its bytes rule out 3 times 84 keys, NEVER 3 more.
    let longest = (84..=512)
        .rev()
        .find_map(|line| Some((in_lines(bytes, line)?, line)));
    longest.expect("a short line has a key")
}

fn in_lines(bytes: &[u8], line: usize) -> Option<Vec<u8>> {
    let mut letters = Vec::with_capacity(bytes.len() + bytes.len() / line + 1);
    for bytes in bytes.chunks(line) {
        let mut there = [false; 256];
        bytes
            .iter()
            .for_each(|byte| there[usize::from(*byte)] = true);
        let key = (0..=255_u8).find(|key| {
            NEVER
                .iter()
                .all(|never| never != key && !there[usize::from(never.wrapping_sub(*key))])
        })?;
        letters.push(key);
        letters.extend(bytes.iter().map(|byte| byte.wrapping_add(key)));
    }
    Some(letters)
}

#[cfg(test)]
pub(super) mod tests {
    use super::*;

    /// What the page does with letters.
    pub fn bytes_of(letters: &[u8], line: usize) -> Vec<u8> {
        letters
            .chunks(line + 1)
            .flat_map(|line| line[1..].iter().map(|letter| letter.wrapping_sub(line[0])))
            .collect()
    }

    /// A packed file unpacked by the library's own reader.
    pub fn unpacked(file: &[u8]) -> Vec<u8> {
        let mut reader = lzma_rust2::LzmaReader::new_mem_limit(file, u32::MAX, None).unwrap();
        let mut out = Vec::new();
        std::io::Read::read_to_end(&mut reader, &mut out).unwrap();
        out
    }

    #[test]
    fn no_letter_is_one_that_a_page_changes_and_all_come_back() {
        // Whole rounds of all bytes are the hardest: they leave the fewest keys. Then noise, then nothing at all.
        let rounds: Vec<u8> = (0..1000_u32).map(|n| (n * 7 % 256) as u8).collect();
        let noise: Vec<u8> = (1..300_000_u32)
            .map(|n| (n.wrapping_mul(2_654_435_761).rotate_left(n % 31) >> 11) as u8)
            .collect();
        for (bytes, least) in [(rounds, 84), (noise, 200), (Vec::new(), 512)] {
            let (letters, line) = letters(&bytes);
            assert!(line >= least, "{line}");
            assert!(letters.iter().all(|letter| !NEVER.contains(letter)));
            assert!(bytes_of(&letters, line) == bytes);
        }
    }

    /// The head as the "LZMA specification" (Igor Pavlov, 2015-06-14) lays it out; the rest by the library's own reader.
    #[test]
    fn what_is_packed_has_its_size_in_the_head_and_unpacks() {
        let bytes: Vec<u8> = b"bark ".iter().copied().cycle().take(3000).collect();
        let file = lzma(&bytes).unwrap();
        assert_eq!(file[0], 4, "(pb * 5 + lp) * 9 + lc");
        assert_eq!(file[1..5], 4096_u32.to_le_bytes());
        assert_eq!(file[5..13], 3000_u64.to_le_bytes());
        assert!(unpacked(&file) == bytes);
    }
}
