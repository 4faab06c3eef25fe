//! What the dead tree offers, and how long it may stand.

use super::phrase;
use crate::measure;
use calc::terms::small::find;
use calc::terms::species::Durability;

/// A durability class.
pub fn durability(class: Durability) -> &'static str {
    match class {
        Durability::A => "longest-lasting wood",
        Durability::B => "long-lasting wood",
        Durability::C => "middling wood",
        Durability::D => "short-lived wood",
    }
}

/// What it leaves, in a sentence.
pub fn leaves_lead(feeding_only: bool, users: usize, region_known: bool, size: &str) -> String {
    if feeding_only {
        return cat!(
            "Feeding wood, no cavities: ",
            size,
            " is under the 6 in (15 cm) at which the smallest cavity nesters begin."
        );
    }
    if !region_known {
        return cat!(
            "Thick enough for cavities at ",
            size,
            ". Give the state, and the animals that may use it stand here."
        );
    }
    match users {
        0 => cat!(
            "At ",
            size,
            " no cavity nester of the table reaches its size here; it is still feeding wood."
        ),
        1 => "One cavity user of this region may use a tree of this size.".into(),
        users => cat!(
            phrase::sentence(&phrase::small(users)),
            " cavity users of this region may use a tree of this size."
        ),
    }
}

/// Half-life, in words.
pub fn standing(low: f64, likely: f64, high: f64) -> String {
    cat!(
        "Half of such trees are down ",
        measure::years(low),
        " to ",
        measure::years(high),
        " years after death, typically ",
        measure::years(likely),
        ". Death comes 1 to 3 years after the ring. Our own assumption."
    )
}

/// What a snag does not do.
pub const NOT_GOOD_FOR: &str =
    "A dying tree can shed limbs before it looks dead. Keep paths, seats and camps away.";
/// Snags an acre, folded.
pub const SNAG_GUIDES: &str = "How many such trees an acre? What guidelines ask for";
/// Its heads.
pub const HEAD_GUIDES: [&str; 3] = ["Whose", "Snags an acre", "Source"];

/// The region's own guideline.
pub fn snag_guide(guidance: &str, per_acre: &str) -> String {
    cat!(guidance, ": ", per_acre, " snags an acre.")
}

/// How each animal uses a tree, folded.
pub const USERS_HOW: &str = "How each of them uses a dead tree";

/// The part of a remark that says how an animal uses a tree; the rest names size classes and rows.
pub fn user_note(note: &'static str) -> &'static str {
    let end = [";", ": see also"]
        .iter()
        .filter_map(|mark| find::place(note, mark))
        .min()
        .unwrap_or(note.len());
    find::cut(note, end).0
}

/// Habitat.
pub const LEAVES: &str = "What it leaves";
/// What it leaves, of a snag.
pub const LEAVES_SNAG: &str = "a standing dead tree";
/// The same where nothing is left standing.
pub const LEAVES_STANDING: &str = "if it were left standing dead";
