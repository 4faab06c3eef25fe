//! Numbers in markup: at most one decimal, without the float formatter (bytes in the browser bundle).

/// `v` kept between two bounds. The library's own check of the bounds would bring the float formatter.
pub(crate) fn within(v: f64, low: f64, high: f64) -> f64 {
    if v < low {
        low
    } else if v > high {
        high
    } else {
        v
    }
}

/// `v` in whole tenths, rounded half up. Values beyond ±9·10¹⁴ are clamped; not a number is a fault of
/// the caller and counts as 0.
pub(crate) fn tenths(v: f64) -> i64 {
    debug_assert!(v.is_finite(), "a coordinate that is no number");
    let t = within(v * 10.0 + 0.5, -9e15, 9e15);
    // The cast truncates towards zero, so step down below zero to floor.
    let n = t as i64;
    if (n as f64) > t { n - 1 } else { n }
}

/// Appends a number of tenths, a trailing `.0` left off.
pub(crate) fn push_tenths(into: &mut String, n: i64) {
    if n < 0 {
        into.push('-');
    }
    let n = n.unsigned_abs();
    whole(into, n / 10);
    if !n.is_multiple_of(10) {
        into.push('.');
        into.push((b'0' + (n % 10) as u8) as char);
    }
}

/// Appends the digits of a whole number.
pub fn whole(into: &mut String, n: u64) {
    if n > 9 {
        whole(into, n / 10);
    }
    into.push((b'0' + (n % 10) as u8) as char);
}

/// `v` with at most one decimal, never `-0`.
#[must_use]
pub fn num(v: f64) -> String {
    let mut s = String::new();
    push_tenths(&mut s, tenths(v));
    s
}

#[cfg(test)]
mod tests {
    use super::num;

    #[test]
    fn numbers_are_short_and_rounded() {
        for (v, want) in [
            (0.0, "0"),
            (-0.04, "0"),
            (12.0, "12"),
            (12.34, "12.3"),
            (12.35, "12.4"),
            (-0.25, "-0.2"),
            (-7.55, "-7.5"),
            (-12.0, "-12"),
            (99.96, "100"),
            (1234.5, "1234.5"),
        ] {
            assert_eq!(num(v), want, "{v}");
        }
    }

    #[test]
    fn the_text_read_back_is_within_half_a_tenth() {
        for i in -5000..5000 {
            let v = f64::from(i) * 0.0371;
            let back: f64 = num(v).parse().unwrap();
            assert!((back - v).abs() <= 0.0500001, "{v} {back}");
        }
    }
}
