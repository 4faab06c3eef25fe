//! Sine, cosine and tangent of angles within a few turns. The library's take any number, and the part that brings a large one
//! into the first turn is 4 kB in the browser. The same on every target, as all arithmetic here.

use core::f64::consts::{FRAC_PI_2, PI};

/// Terms of the series: beyond them nothing changes for an angle up to a right one.
const TERMS: u32 = 12;

/// Sine of an angle in radians, to about 1e-15 within a few turns.
#[must_use]
pub fn sin(angle: f64) -> f64 {
    let halves = libm::floor(angle / PI + 0.5);
    // What is left lies within a right angle on both sides; each half turn changes the sign.
    let rest = angle - halves * PI;
    let sign = if halves % 2.0 == 0.0 { 1.0 } else { -1.0 };
    let (mut sum, mut term) = (rest, rest);
    for at in 1..TERMS {
        let two = f64::from(2 * at);
        term *= -rest * rest / (two * (two + 1.0));
        sum += term;
    }
    sign * sum
}

/// Cosine of an angle in radians, as [`sin`].
#[must_use]
pub fn cos(angle: f64) -> f64 {
    sin(angle + FRAC_PI_2)
}

/// Tangent of an angle in radians, as [`sin`].
#[must_use]
pub fn tan(angle: f64) -> f64 {
    sin(angle) / cos(angle)
}

#[cfg(test)]
mod tests {
    use super::{cos, sin, tan};

    /// Against the standard library's.
    #[test]
    fn they_are_sine_and_cosine_within_three_turns() {
        for at in -6000..=6000 {
            let angle = f64::from(at) / 300.0;
            assert!((sin(angle) - angle.sin()).abs() < 3e-15, "sin {angle}");
            assert!((cos(angle) - angle.cos()).abs() < 5e-15, "cos {angle}");
        }
        assert_eq!(sin(1e-9), 1e-9);
        for at in -150..=150 {
            let angle = f64::from(at) / 100.0;
            assert!((tan(angle) - angle.tan()).abs() < 1e-12, "tan {angle}");
        }
    }
}
