//! Values of fields and grades, as they stand in lists and tables.

use calc::reference::When;
use calc::terms::cite::Grade;
use calc::terms::tree::{Condition, Dry, Herbicide, Limbs, Reply, Setting, Stage, Vigour};

/// How well a value is known.
#[must_use]
pub fn grade(grade: Grade) -> &'static str {
    match grade {
        Grade::Measured => "measured by you",
        Grade::Published => "published",
        Grade::Related => "related trees",
        Grade::Derived => "worked out from published numbers",
        Grade::Secondary => "quoted elsewhere",
        Grade::Practice => "field practice",
        Grade::Assumption => "our own assumption",
        Grade::Memory => "from memory, no source",
    }
}

/// When a caution speaks.
#[must_use]
pub fn when(when: When) -> &'static str {
    match when {
        When::Stop => "Stop.",
        When::Before => "Before you start.",
        When::Work => "While you work.",
        When::After => "Afterwards.",
        When::Law => "Law and permission.",
    }
}

/// Setting.
#[must_use]
pub fn setting(setting: Setting) -> &'static str {
    match setting {
        Setting::Woods => "woods",
        Setting::Open => "open: yard, street or hedgerow",
    }
}

/// Condition.
#[must_use]
pub fn life(condition: Condition) -> &'static str {
    match condition {
        Condition::Alive => "alive",
        Condition::Declining => "declining",
        Condition::Dead => "dead",
    }
}

/// Herbicide.
#[must_use]
pub fn herbicide(herbicide: Herbicide) -> &'static str {
    match herbicide {
        Herbicide::NotSaid => "not said",
        Herbicide::No => "no",
        Herbicide::Licensed => "by a licensed applicator",
        Herbicide::Yes => "yes",
    }
}

/// The line question.
#[must_use]
pub fn reply(reply: Reply) -> &'static str {
    match reply {
        Reply::Yes => "yes",
        Reply::No => "no",
        Reply::CantTell => "can't tell",
    }
}

/// Growth.
#[must_use]
pub fn vigour(vigour: Vigour) -> &'static str {
    match vigour {
        Vigour::Slow => "slow",
        Vigour::Ordinary => "ordinary",
        Vigour::Fast => "fast",
    }
}

/// Dry spell.
#[must_use]
pub fn dry(dry: Dry) -> &'static str {
    match dry {
        Dry::None => "none",
        Dry::TwoWeeks => "two weeks",
        Dry::Month => "a month or more",
    }
}

/// Limbs below the ring.
#[must_use]
pub fn limbs(limbs: Limbs) -> &'static str {
    match limbs {
        Limbs::None => "none",
        Limbs::Some => "some",
        Limbs::Many => "many",
    }
}

/// What was seen of the leaves.
#[must_use]
pub fn stage(stage: Stage) -> &'static str {
    match stage {
        Stage::BudsOpen => "half the buds open",
        Stage::LeavesFull => "leaves nearly full size",
        Stage::FirstLeaf => "the first leaf",
    }
}

/// Yes or no.
#[must_use]
pub fn yes_no(yes: bool) -> &'static str {
    if yes { "yes" } else { "no" }
}
