//! The key under which a pack has a table's text: its build and its reader make it in the same way.

/// Six signs from `0` to `o`: FNV-1a of the English, so that the English need not stand in the pack too.
pub(super) fn text_key(english: &str) -> [u8; 6] {
    let mut mark: u32 = 0x811c_9dc5;
    for byte in english.bytes() {
        mark = (mark ^ u32::from(byte)).wrapping_mul(0x0100_0193);
    }
    let mut key = [0; 6];
    for sign in &mut key {
        *sign = b'0' + (mark & 63) as u8;
        mark >>= 6;
    }
    key
}
