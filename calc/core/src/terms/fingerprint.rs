//! A number for bytes: the same bytes have the same one.

/// FNV-1a with 64 bits over all parts in order (Fowler, Noll and Vo, "The FNV Non-Cryptographic Hash Algorithm",
/// draft-eastlake-fnv: offset basis cbf29ce484222325, prime 100000001b3).
///
/// ```
/// use calc::terms::fingerprint::fnv1a;
/// // The draft's own test values.
/// assert_eq!(fnv1a(&[b""]), 0xcbf2_9ce4_8422_2325);
/// assert_eq!(fnv1a(&[b"a"]), 0xaf63_dc4c_8601_ec8c);
/// assert_eq!(fnv1a(&[b"foo", b"bar"]), 0x8594_4171_f739_67e8);
/// ```
#[must_use]
pub fn fnv1a(parts: &[&[u8]]) -> u64 {
    const OFFSET: u64 = 0xcbf2_9ce4_8422_2325;
    const PRIME: u64 = 0x0100_0000_01b3;
    let bytes = parts.iter().copied().flatten();
    bytes.fold(OFFSET, |hash, byte| {
        (hash ^ u64::from(*byte)).wrapping_mul(PRIME)
    })
}
