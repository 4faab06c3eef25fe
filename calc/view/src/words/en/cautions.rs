//! Titles of the cautions.

use calc::models::cautions::When;

/// Cautions.
pub const CAUTIONS: &str = "Cautions";
/// The question that this part answers.
pub const CAUTIONS_ASKED: &str = "who decides, and who to ask";
/// Cautions folded.
pub const MORE_CAUTIONS: &str = "More cautions: ";
/// Merged line.
pub const CHECK_TOO: &str = "Check these too: ";
/// Who decides.
pub const DECIDES: &str = "Who decides: ";

/// Behind who decides, where the law's words are not told.
pub const ASK: &str = " Ask there.";

/// A caution of the merged line in two or three words; none for one that never goes there.
pub fn caution_short(id: &str) -> Option<&'static str> {
    crate::words::named(CAUTIONS_SHORT, id)
}

const CAUTIONS_SHORT: &str = concat!(
    "HZ8=wind, ice, wet ground|",
    "PL3=a branch on a line|",
    "ED3=working alone|",
    "ED5=ladders and climbing|",
    "ED6=heat|",
    "ED7=ticks|",
    "TX1=poison ivy and its kin|",
    "LW2=town and neighbourhood rules|",
    "LW3=water and wetland edges|",
    "LW7=moving wood|",
    "LW11=native and listed trees|",
    "LW12=public land and easements|",
    "LW13=woods, forests, native vegetation",
);
/// A caution from the trade or from memory.
pub const NO_SOURCE: &str = "No source: from the trade, or from memory.";

/// When a caution speaks.
pub fn when(when: When) -> &'static str {
    match when {
        When::Stop => "Stop.",
        When::Before => "Before you start.",
        When::Work => "While you work.",
        When::After => "Afterwards.",
        When::Law => "Law and permission.",
    }
}
