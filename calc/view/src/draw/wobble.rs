//! A small repeatable sequence, so that twigs and plates of bark do not all look alike and every build draws the same.

/// Numbers from -1 to 1, each made from the one before.
pub(crate) struct Wobble(pub(crate) u32);

impl Wobble {
    /// The next one.
    pub(crate) fn next(&mut self) -> f64 {
        self.0 = self.0.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        f64::from(self.0 >> 8) / 8_388_608.0 - 1.0
    }
}
