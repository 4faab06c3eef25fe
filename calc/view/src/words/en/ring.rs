//! The ring: its numbers, its steps, the words of the trunk drawing.

use super::{phrase, stop};
use crate::measure;
use calc::terms::tree::Limbs;

/// The stem that is spared.
pub const SPARED_UNPROVEN: &str = "Common practice says that the stem you leave lives on and the ringed ones die. \
We found no trial of it, so it is unproven.";
/// Numbers to carry.
pub const DO: &str = "Do";
/// The question that this part answers.
pub const DO_ASKED: &str = "the numbers to carry";
/// A drawing as a table.
pub const TWIN_TRUNK: &str = "The trunk drawing as a table";
/// Table heads.
pub const HEAD_PART: [&str; 4] = ["Part", "US", "Metric", "Standing"];
/// Stems.
pub const HEAD_STEMS: [&str; 5] = ["Stem", "Across", "Ring, at least", "Better", "What to do"];
/// Stems without rings.
pub const HEAD_STEMS_ONLY: [&str; 3] = ["Stem", "Across", "What to do"];
/// Rows of the trunk table.
pub const ROW_ACROSS: &str = "Trunk across";
/// The row of the bark.
pub const ROW_BARK: &str = "Bark, one side";
/// The row of the wood.
pub const ROW_INSIDE: &str = "Inside the bark";
/// The row of the least ring.
pub const ROW_AT_LEAST: &str = "Ring, at least";
/// The row of the better ring.
pub const ROW_BETTER: &str = "Ring, better";
/// Words of the trunk drawing.
pub const LIVING_LAYER: [&str; 2] = ["living", "layer"];
/// Bark.
pub const BARK: &str = "bark";
/// Wood.
pub const WOOD: &str = "wood";
/// Dead bark.
pub const DEAD_BARK: [&str; 2] = ["dead bark,", "leave it"];
/// In the ring.
pub const BARE_WOOD: &str = "bare wood";
/// In the better part.
pub const BETTER_TOO: &str = "better: this too";
/// Beside the least ring.
pub const AT_LEAST: &str = "at least";
/// Beside the better ring.
pub const BETTER: &str = "better";
/// Over the hand.
pub const HAND: &str = "your hand";
/// How wide it is.
pub const HAND_SIZE: &str = "7 in, 18 cm";

/// An estimate with its range, and what to do where it is poor.
pub fn estimated(low: &str, high: &str, confidence: calc::terms::species::Confidence) -> String {
    let end = match confidence {
        calc::terms::species::Confidence::Good | calc::terms::species::Confidence::Fair => "",
        calc::terms::species::Confidence::Poor => "; poor: measure it",
    };
    cat!(stop::estimated_from(low, high), end)
}

/// Several stems.
pub const STEMS: &str = "Stem by stem";
/// The one to keep.
pub const KEEP_STEM: &str = "leave alone: the one to keep";

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

/// Before any work on a stem with thorns.
pub const THORNS: &str = "Trim the thorns from the work band. Heavy gloves, eye protection.";

/// Steps of a bark ring.
pub fn ring_steps(ring: &Ringing<'_>) -> Vec<String> {
    let mut steps: Vec<String> = Vec::new();
    if ring.thorns {
        steps.push(THORNS.into());
    }
    steps.push(match ring.limbs {
        Limbs::None => "Cut every branch and green shoot below the ring.".into(),
        Limbs::Some | Limbs::Many => {
            "Cut every branch and green shoot below the ring first. One live branch below it keeps the tree alive.".into()
        }
    });
    steps.push(
        "Open a patch the size of your hand. If it tears instead of peeling, stop: not today."
            .into(),
    );
    steps.push(match ring.thick {
        Some(bark) => cat!(
            "Score two level lines, ",
            ring.width,
            " apart, through the bark and not into the wood. The bark is about ",
            bark,
            " thick: use a mallet and chisel."
        ),
        None => cat!(
            "Score two level lines, ",
            ring.width,
            " apart, through the bark and not into the wood."
        ),
    });
    steps.push(match ring.live {
        Some(live) => cat!(
            "Peel off the live bark, about ",
            measure::percent(live),
            " in 100 of the way round, and a little over its edges. Dead bark needs no ring."
        ),
        None => "Peel all the way round. A missed strip keeps the tree alive.".into(),
    });
    steps.push(
        "Scrape the slippery film off the bare wood. Leave it bare: do not wrap or cover it."
            .into(),
    );
    steps.push(
        "Check all the way round, seams and folds too, that no bark bridges the ring.".into(),
    );
    if let Some(spared) = ring.spared {
        steps.push(cat!(
            "Do the same on the other stems. Leave stem ",
            measure::number(spared as u32),
            " alone: it is the one to keep."
        ));
    } else if ring.stems > 1 {
        steps.push(cat!(
            "Do the same on all ",
            phrase::small(ring.stems),
            " stems. One stem left keeps the roots alive."
        ));
    }
    steps
}

/// Tools for a ring.
pub fn ring_tools(thick: bool, thin: bool) -> &'static str {
    if thick {
        "Tools: hand saw, mallet and bark chisel, bark spud, scraper; gloves and eye protection."
    } else if thin {
        "Tools: knife or drawknife, scraper; gloves and eye protection."
    } else {
        "Tools: hand saw or drawknife, bark spud, scraper; gloves and eye protection."
    }
}

/// Names of the numbers to carry.
pub const RING_AT_LEAST: &str = "Ring, at least";
/// The better width.
pub const RING_BETTER: &str = "Better";
/// Where on the trunk.
pub const RING_HEIGHT: &str = "Height on the trunk";
/// Waist to chest, in both units (common practice, no source).
pub const WAIST_TO_CHEST_FT: &str = "3 to 4½ ft";
/// The same in metres.
pub const WAIST_TO_CHEST_M: &str = "0.9 to 1.4 m";
/// Which stretch.
pub const SMOOTH: &str = "On a smooth stretch, below the lowest live branch.";
