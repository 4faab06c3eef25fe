//! A list's id: the same bytes have the same one.

use calc::terms::fingerprint::fnv1a;

/// [`fnv1a`] as 16 small hexadecimal digits.
///
/// ```
/// // The draft's own test values.
/// assert_eq!(calc_plan::fingerprint(b""), "cbf29ce484222325");
/// assert_eq!(calc_plan::fingerprint(b"a"), "af63dc4c8601ec8c");
/// assert_eq!(calc_plan::fingerprint(b"foobar"), "85944171f73967e8");
/// ```
#[must_use]
pub fn fingerprint(bytes: &[u8]) -> String {
    format!("{:016x}", fnv1a(&[bytes]))
}
