// The file beside the module: what it begins with, the lengths of its streams, a checksum, the streams. The build writes
// it, a page fetches it and reads it back.

/// What a file of this kind begins with, and its version.
const KIND: &[u8; 8] = b"REGION\0\x01";

/// How many streams it has.
pub(crate) const STREAMS: usize = 3;

/// FNV-1a of 32 bits (Fowler, Noll, Vo): a file that came in part, or is another, is refused.
fn checksum(bytes: &[u8]) -> u32 {
    bytes.iter().fold(0x811c_9dc5, |sum, byte| {
        (sum ^ u32::from(*byte)).wrapping_mul(0x0100_0193)
    })
}

/// Writes a file.
#[allow(dead_code, reason = "the build writes, the program reads")]
pub(crate) fn write(streams: &[Vec<u8>; STREAMS]) -> Vec<u8> {
    let mut file = KIND.to_vec();
    let body = streams.concat();
    for stream in streams {
        let length = u32::try_from(stream.len()).expect("a stream is short");
        file.extend(length.to_le_bytes());
    }
    file.extend(checksum(&body).to_le_bytes());
    file.extend(body);
    file
}

/// The streams of a file; none where the bytes are not a whole one of this kind.
#[allow(dead_code, reason = "the build writes, the program reads")]
pub(crate) fn read(bytes: &[u8]) -> Option<[&[u8]; STREAMS]> {
    let mut rest = bytes.strip_prefix(KIND)?;
    let mut lengths = [0; STREAMS];
    for length in &mut lengths {
        let (bytes, after) = rest.split_first_chunk::<4>()?;
        *length = u32::from_le_bytes(*bytes) as usize;
        rest = after;
    }
    let (sum, mut body) = rest.split_first_chunk::<4>()?;
    if checksum(body) != u32::from_le_bytes(*sum) {
        return None;
    }
    let mut streams: [&[u8]; STREAMS] = [&[]; STREAMS];
    for (stream, length) in streams.iter_mut().zip(lengths) {
        (*stream, body) = body.split_at_checked(length)?;
    }
    body.is_empty().then_some(streams)
}
