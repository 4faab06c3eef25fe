//! Numbers written with a fixed count of decimals. The library's printing of floats is 9 kB in the browser.

/// Writes `value` with `places` decimals (at most 6), halves away from zero, as `-12.50`.
/// A value that is no number is written as a dash: it can't happen in an answer, and must not read as a figure.
#[must_use]
pub fn fixed(value: f64, places: u32) -> String {
    let scale = 10_u64.pow(places.min(6));
    let scaled = libm::fabs(value) * scale as f64;
    if scaled.is_nan() || scaled >= 9.0e15 {
        return String::from("-");
    }
    let units = libm::floor(scaled + 0.5) as u64;
    let mut text = String::new();
    if value < 0.0 && units > 0 {
        text.push('-');
    }
    push_digits(&mut text, units / scale, 1);
    if places > 0 {
        text.push('.');
        push_digits(&mut text, units % scale, places as usize);
    }
    text
}

fn push_digits(text: &mut String, mut value: u64, width: usize) {
    let mut digits = [b'0'; 20];
    let mut at = digits.len();
    while value > 0 || digits.len() - at < width {
        at -= 1;
        digits[at] = b'0' + (value % 10) as u8;
        value /= 10;
    }
    text.extend(digits[at..].iter().map(|digit| char::from(*digit)));
}

#[cfg(test)]
mod tests {
    use super::fixed;

    #[test]
    fn halves_go_away_from_zero_and_minus_nothing_is_nothing() {
        assert_eq!(fixed(12.5, 0), "13");
        assert_eq!(fixed(-0.04, 1), "0.0");
        assert_eq!(fixed(-12.34, 1), "-12.3");
        assert_eq!(fixed(0.05, 3), "0.050");
        assert_eq!(fixed(f64::NAN, 2), "-");
    }
}
