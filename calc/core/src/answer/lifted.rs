//! What is taken as met, to see what would follow.

/// Conditions taken as met, which no field of the question carries.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Lifted {
    /// Every stem of the clone can be ringed.
    pub whole_clone: bool,
    /// Oak wilt is not in the state.
    pub no_oak_wilt: bool,
    /// An unknown species is one that a ring suits.
    pub species_suits: bool,
}
