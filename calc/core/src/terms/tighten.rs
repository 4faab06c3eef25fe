//! What a group may make more cautious, and nothing else.

/// What a group asks for beyond the models. Each part may only make advice more cautious.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tighten {
    /// All distances are judged with the height times this: 1 or more.
    pub distance_factor: f64,
    /// A thicker tree is a professional's, mm at breast height.
    pub volunteers_mm: Option<f64>,
    /// Months in which no ring is cut: bit 0 is January.
    pub months: u16,
}

impl Default for Tighten {
    fn default() -> Self {
        Self {
            distance_factor: 1.0,
            volunteers_mm: None,
            months: 0,
        }
    }
}

impl Tighten {
    /// Whether no ring is cut in a month, 1 to 12.
    #[must_use]
    pub fn blocks(self, month: u32) -> bool {
        self.months >> (month.wrapping_sub(1) & 15) & 1 == 1
    }

    /// Whether a tree of this diameter is a professional's.
    #[must_use]
    pub fn too_large(self, dbh_mm: f64) -> bool {
        self.volunteers_mm.is_some_and(|most| dbh_mm > most)
    }

    /// The blocked months as runs, first and last month; one over the new year is one.
    #[must_use]
    pub fn runs(self) -> Vec<(u8, u8)> {
        let mut runs: Vec<(u8, u8)> = Vec::new();
        for month in (1..=12).filter(|month| self.blocks(*month)) {
            let month = month as u8;
            match runs.last_mut() {
                Some(last) if last.1 + 1 == month => last.1 = month,
                _ => runs.push((month, month)),
            }
        }
        if let [first, .., last] = runs[..]
            && first.0 == 1
            && last.1 == 12
        {
            runs[0].0 = last.0;
            runs.pop();
        }
        runs
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn months_become_runs_and_the_new_year_cuts_none() {
        let of = |months: &[u16]| Tighten {
            months: months.iter().map(|m| 1 << (m - 1)).sum(),
            ..Tighten::default()
        };
        assert_eq!(of(&[4, 5, 6]).runs(), [(4, 6)]);
        assert_eq!(of(&[1, 2, 11, 12]).runs(), [(11, 2)]);
        assert_eq!(of(&[1, 3, 12]).runs(), [(12, 1), (3, 3)]);
        assert_eq!(of(&(1..=12).collect::<Vec<_>>()).runs(), [(1, 12)]);
        assert!(of(&[]).runs().is_empty());
        assert!(of(&[12]).blocks(12) && !of(&[12]).blocks(11));
    }
}
