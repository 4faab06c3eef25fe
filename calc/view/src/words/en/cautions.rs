//! Each caution in two or three words, for the line that it is folded under.

use crate::words::{Word, m};

/// A caution in short.
pub fn caution_short(id: &str) -> Option<Word> {
    m::cautions_short(id)
}
