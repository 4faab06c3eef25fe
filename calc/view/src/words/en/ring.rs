//! The ring: its numbers, its steps, the words of the trunk drawing.

use super::stop;
use crate::words::{Word, m};
use calc::terms::species::Confidence;
use calc::terms::tree::Limbs;

/// Table heads.
pub const HEAD_PART: [Word; 4] = [
    m::RING_HEAD_PART_PART,
    m::RING_HEAD_PART_US,
    m::RING_HEAD_PART_METRIC,
    m::RING_HEAD_PART_STANDING,
];
/// Stems.
pub const HEAD_STEMS: [Word; 5] = [
    m::RING_HEAD_STEMS_STEM,
    m::RING_HEAD_STEMS_ACROSS,
    m::RING_HEAD_STEMS_RING_AT_LEAST,
    m::RING_HEAD_STEMS_BETTER,
    m::RING_HEAD_STEMS_WHAT_TO_DO,
];
/// Stems without rings.
pub const HEAD_STEMS_ONLY: [Word; 3] = [
    m::RING_HEAD_STEMS_STEM,
    m::RING_HEAD_STEMS_ACROSS,
    m::RING_HEAD_STEMS_WHAT_TO_DO,
];
/// An estimate with its range, and what to do where it is poor.
pub fn estimated(low: &str, high: &str, confidence: Confidence) -> String {
    let estimate = stop::estimated_from(low, high);
    match confidence {
        Confidence::Good | Confidence::Fair => estimate,
        Confidence::Poor => m::ring_estimated_poor(estimate),
    }
}

/// What the steps of a ring look at.
pub struct Ringing<'a> {
    /// Better width in words.
    pub width: &'a str,
    /// Limbs below the ring.
    pub limbs: Limbs,
    /// Share of live bark, in 100, where part is dead.
    pub live: Option<f64>,
    /// Bark thickness in words, where it is thick.
    pub thick: Option<&'a str>,
    /// Stems to ring.
    pub stems: usize,
    /// The stem that is spared, counted from 1.
    pub spared: Option<usize>,
    /// It has thorns.
    pub thorns: bool,
}

/// Steps of a bark ring.
pub fn ring_steps(ring: &Ringing<'_>) -> Vec<String> {
    let mut steps: Vec<String> = Vec::new();
    if ring.thorns {
        steps.push(m::RING_THORNS.into());
    }
    steps.push(match ring.limbs {
        Limbs::None => m::RING_STEP_SHOOTS.into(),
        Limbs::Some | Limbs::Many => m::RING_STEP_LIMBS.into(),
    });
    steps.push(m::RING_STEP_TEST.into());
    steps.push(match ring.thick {
        Some(bark) => m::ring_step_score_thick(m::RingStepScoreThick {
            width: ring.width,
            bark,
        }),
        None => m::ring_step_score(ring.width),
    });
    steps.push(match ring.live {
        Some(live) => m::ring_step_peel_live(live),
        None => m::RING_STEP_PEEL.into(),
    });
    steps.push(m::RING_STEP_SCRAPE.into());
    steps.push(m::RING_STEP_CHECK.into());
    match (ring.spared, ring.stems) {
        (Some(spared), 0 | 1) => steps.push(m::ring_step_leave(spared)),
        (Some(spared), _) => steps.push(m::ring_step_others(spared)),
        (None, 0 | 1) => {}
        (None, stems) => steps.push(m::ring_step_all(stems)),
    }
    steps
}

/// Tools for a ring.
pub fn ring_tools(thick: bool, thin: bool) -> Word {
    if thick {
        m::RING_TOOLS_THICK
    } else if thin {
        m::RING_TOOLS_THIN
    } else {
        m::RING_TOOLS
    }
}
