//! The nine methods, how each may stand, and what a row of the table does to one.

use crate::terms::words::words;

words! {
    /// The nine methods, in the order of the table.
    pub enum Method {
        /// A ring of bark off.
        BarkRing,
        /// A ring sawn into the wood.
        SawRing,
        /// Cuts with herbicide.
        Frill,
        /// Herbicide on the bark at the base.
        BasalBark,
        /// Cut, and herbicide on the stump.
        CutStump,
        /// Pulled or dug out.
        PullOrDig,
        /// Felled.
        Fell,
        /// Cut again and again.
        RepeatCutting,
        /// Left alone.
        LeaveIt,
    }
}

impl Method {
    /// Whether the tree stays standing.
    #[must_use]
    pub fn leaves_standing(self) -> bool {
        matches!(
            self,
            Self::BarkRing | Self::SawRing | Self::Frill | Self::BasalBark
        )
    }

    /// Whether it needs herbicide.
    #[must_use]
    pub fn needs_herbicide(self) -> bool {
        matches!(self, Self::Frill | Self::BasalBark | Self::CutStump)
    }
}

words! {
    /// How a method stands, from best to worst.
    pub enum Level {
        /// Recommended.
        Recommended,
        /// Possible.
        Possible,
        /// Not advised.
        NotAdvised,
        /// Ruled out.
        RuledOut,
    }
}

/// What one row does to one method.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Cell {
    /// At most this level.
    pub at_most: Level,
    /// Only by a professional.
    pub by_professional: bool,
    /// No later row lowers it, but that of a dead tree.
    pub holds: bool,
}

impl Cell {
    /// A cell that changes nothing.
    pub const NOTHING: Self = Self {
        at_most: Level::Recommended,
        by_professional: false,
        holds: false,
    };

    /// Reads a cell: `.` nothing, `P`, `N` or `R`; with `*` by a professional, with `!` no later row lowers it.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        let mut cell = Self::NOTHING;
        for (at, c) in text.trim().chars().enumerate() {
            match (at, c) {
                (0, '.') => {}
                (0, 'P') => cell.at_most = Level::Possible,
                (0, 'N') => cell.at_most = Level::NotAdvised,
                (0, 'R') => cell.at_most = Level::RuledOut,
                (1.., '*') => cell.by_professional = true,
                (1.., '!') => cell.holds = true,
                _ => return None,
            }
        }
        (!text.trim().is_empty()).then_some(cell)
    }
}
