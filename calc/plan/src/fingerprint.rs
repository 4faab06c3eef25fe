//! A list's id: the same bytes have the same one.

/// FNV-1a with 64 bits, as 16 small hexadecimal digits (Fowler, Noll and Vo, "The FNV Non-Cryptographic Hash Algorithm",
/// draft-eastlake-fnv: offset basis cbf29ce484222325, prime 100000001b3).
///
/// ```
/// // The draft's own test values.
/// assert_eq!(calc_plan::fingerprint(b""), "cbf29ce484222325");
/// assert_eq!(calc_plan::fingerprint(b"a"), "af63dc4c8601ec8c");
/// assert_eq!(calc_plan::fingerprint(b"foobar"), "85944171f73967e8");
/// ```
#[must_use]
pub fn fingerprint(bytes: &[u8]) -> String {
    const OFFSET: u64 = 0xcbf2_9ce4_8422_2325;
    const PRIME: u64 = 0x0100_0000_01b3;
    let hash = bytes.iter().fold(OFFSET, |hash, byte| {
        (hash ^ u64::from(*byte)).wrapping_mul(PRIME)
    });
    format!("{hash:016x}")
}
