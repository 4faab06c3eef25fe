//! What to do at the tree: numbered steps, made for this stem.

use crate::measure;
use calc::terms::method::Method;
use calc::terms::tree::Limbs;

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
#[must_use]
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
            super::small(ring.stems),
            " stems. One stem left keeps the roots alive."
        ));
    }
    steps
}

/// Tools for a ring.
#[must_use]
pub fn ring_tools(thick: bool, thin: bool) -> &'static str {
    if thick {
        "Tools: hand saw, mallet and bark chisel, bark spud, scraper; gloves and eye protection."
    } else if thin {
        "Tools: knife or drawknife, scraper; gloves and eye protection."
    } else {
        "Tools: hand saw or drawknife, bark spud, scraper; gloves and eye protection."
    }
}

/// Steps of another method. The label and the law stand above all of them.
#[must_use]
pub fn other_steps(method: Method, dead: bool, by_professional: bool) -> &'static [&'static str] {
    if by_professional {
        return &[
            "Ask a professional, and say what you told us here.",
            "Say what you want left: a tall stump or log on the ground feeds wildlife too.",
        ];
    }
    match method {
        // The ring has steps of its own, made for the stem.
        Method::BarkRing => &[],
        Method::SawRing => &[
            "Cut every branch and green shoot below the cut.",
            "Saw one level line all the way round, through the bark and ¾ in (2 cm) into the wood; 2 in (5 cm) at most.",
            "Expect it to die a season later than a peeled ring, and to need a second ring more often.",
            "A tree with cut wood is weaker there. Keep people out from under it.",
        ],
        Method::Frill => &[
            "Ask a licensed applicator, unless you are one.",
            "The product label decides place, season and amount. We give no rates.",
            "Cuts go round the stem, waist high or lower, and are treated at once.",
        ],
        Method::BasalBark => &[
            "Ask a licensed applicator, unless you are one.",
            "The product label decides place, season and amount. We give no rates.",
            "The lowest part of the stem is treated all the way round, on dry bark.",
        ],
        Method::CutStump => &[
            "Cut low and level.",
            "The stump is treated at once, by a licensed applicator or as the label says. We give no rates.",
            "Keep wood where it falls.",
        ],
        Method::PullOrDig => &[
            "Wait for moist soil.",
            "Have buried lines located before you break ground.",
            "Loosen the root crown, pull or lever it out with its main roots.",
            "Shake off the soil, hang the roots up to dry, press the soil back.",
        ],
        Method::Fell => &[
            "Walk all round, look up, and clear two ways out.",
            "Keep everyone two tree lengths away.",
            "Cut it below the lowest live branch, or low where it sprouts.",
            "Felling needs training: if in doubt, ask a professional.",
        ],
        Method::RepeatCutting => &[
            "Cut it low, below the lowest live branch.",
            "Cut the sprouts each time that they are back: 3 times a year or more.",
            "Go on for 3 years or more, until nothing comes.",
        ],
        Method::LeaveIt if dead => &[
            "Leave it standing: it is a snag already.",
            "Keep people out from under it, and look at it once a year and after storms.",
        ],
        Method::LeaveIt => &[
            "Do nothing to it, and stay out from under it.",
            "Look at it once a year and after storms.",
        ],
    }
}

/// Names of the numbers to carry.
pub const RING_AT_LEAST: &str = "Ring, at least";
/// The better width.
pub const RING_BETTER: &str = "Better";
/// Where on the trunk.
pub const RING_HEIGHT: &str = "Height on the trunk";
/// Waist to chest, in both units (common practice, no source).
pub const WAIST_TO_CHEST: [&str; 2] = ["3 to 4½ ft", "0.9 to 1.4 m"];
/// Which stretch.
pub const SMOOTH: &str = "On a smooth stretch, below the lowest live branch.";
/// Share of trees that a missed strip saves.
pub const MISSED: &str = "Even a tenth of the bark left can keep a vigorous young tree alive.";

/// A dead tree has nothing to ring.
pub const NO_RING_DEAD: &str = "There is nothing to ring: the bark is dead.";
