//! What the dead tree offers, and how long it may stand.

use super::phrase;
use crate::words::{Word, m};
use calc::terms::small::find;

/// What it leaves, in a sentence.
pub fn leaves_lead(feeding_only: bool, users: usize, region_known: bool, size: &str) -> String {
    if feeding_only {
        return m::habitat_feeding_only(size);
    }
    if !region_known {
        return m::habitat_give_the_state(size);
    }
    match users {
        0 => m::habitat_no_user(size),
        users => phrase::sentence(&m::habitat_users(users)),
    }
}

/// Half-life, in words.
pub fn standing(low: f64, likely: f64, high: f64) -> String {
    m::habitat_standing(m::HabitatStanding { low, high, likely })
}

/// Its heads.
pub const HEAD_GUIDES: [Word; 3] = [
    m::HABITAT_HEAD_GUIDES_WHOSE,
    m::HABITAT_HEAD_GUIDES_SNAGS_AN_ACRE,
    m::HABITAT_HEAD_GUIDES_SOURCE,
];

/// The region's own guideline.
pub fn snag_guide(guidance: &str, per_acre: &str) -> String {
    m::habitat_guide(m::HabitatGuide {
        whose: guidance,
        snags: per_acre,
    })
}

/// The part of a remark that says how an animal uses a tree; the rest names size classes and rows.
pub fn user_note(note: &'static str) -> &'static str {
    let end = [";", ": see also"]
        .iter()
        .filter_map(|mark| find::place(note, mark))
        .min()
        .unwrap_or(note.len());
    find::cut(note, end).0
}
