//! Labels and values of the fields, as they stand in lists and tables.

use crate::measure;
use calc::models::height_aid::HeightBy;
use calc::terms::tree::{Condition, DrySpell, Herbicide, Limbs, Reply, Setting, Stage, Vigour};

/// How a height was measured from the ground.
pub fn height_by(by: HeightBy) -> &'static str {
    match by {
        HeightBy::Shadow => "by its shadow",
        HeightBy::Angles => "by a distance and two angles",
        HeightBy::Stick => "by a stick held upright",
    }
}

/// Not given.
pub const NOT_GIVEN: &str = "not given";

/// The label of a field by its path.
pub fn field(path: &str) -> String {
    let (head, rest) = path.split_once(['[', '.']).unwrap_or((path, ""));
    let (at, last) = match rest.split_once(']') {
        Some((at, last)) => (at, last.trim_start_matches('.')),
        None => ("", rest),
    };
    let name = crate::words::named(FIELDS, &cat!(head, ".", last))
        .or_else(|| crate::words::named(FIELDS, head))
        .unwrap_or(head);
    // The first of a list is what a short form shows; the others carry their number.
    let number = at.bytes().fold(None, |sum: Option<u32>, digit| {
        digit
            .is_ascii_digit()
            .then(|| sum.unwrap_or(0).saturating_mul(10) + u32::from(digit - b'0'))
    });
    match number {
        Some(at) if at > 0 && matches!(head, "stems" | "targets") => {
            let of = if head == "stems" {
                ", stem "
            } else {
                ", thing "
            };
            cat!(name, of, measure::number(at + 1))
        }
        _ => name.into(),
    }
}

/// Parts of lists and groups by both their names; a group alone is for the rest of it.
const FIELDS: &str = concat!(
    "stems.diameter=Trunk size|",
    "stems.girth=Trunk girth|",
    "stems.live_share=Live bark|",
    "stems.bark=Bark thickness|",
    "stems=Stems|",
    "targets.kind=What it could hit|",
    "targets.distance=Distance|",
    "targets.slope=Slope|",
    "targets.voltage=Voltage|",
    "targets=What it could hit|",
    "place.latitude=Latitude|",
    "place.longitude=Longitude|",
    "place.elevation=Elevation|",
    "place.hemisphere=Half of the world|",
    "place=Place|",
    "leafed_out.stage=What you saw of the leaves|",
    "leafed_out.date=Day you saw the leaves|",
    "leafed_out=Place where you saw the leaves|",
    "species=Species|",
    "date=Day of the work|",
    "today=Today|",
    "units=Units|",
    "version=Version|",
    "region=State or country|",
    "height=Tree height|",
    "line_within_reach=Overhead line|",
    "none_in_reach=Nothing in reach|",
    "setting=Where it grew|",
    "condition=Condition|",
    "signs=Signs on the tree|",
    "herbicide=Herbicide|",
    "goal=Goal|",
    "spare=Stem to keep|",
    "whole_clone=Every stem of the clone|",
    "same_genus_near=Living trees of its kind near|",
    "vigour=Growth|",
    "dry_spell=Dry spell|",
    "limbs=Limbs below the ring|",
    "walk=Walk from the last tree|",
    "practised=Practised crew|",
    "cannot_wait=Can't wait|",
    "rate=Your own rate|",
    "height_aid.tree_shadow=The tree's shadow|",
    "height_aid.stick=Length of the stick|",
    "height_aid.stick_shadow=Shadow of the stick|",
    "height_aid.distance=Distance to the trunk|",
    "height_aid.top=Angle to the top|",
    "height_aid.foot=Angle to the foot|",
    "height_aid.eye_to_stick=From the eye to the stick|",
    "height_aid=How you measure the height|",
    "timed.minutes=Minutes of your own trees|",
    "timed.width=Ring width of your own trees|",
    "timed.species=Species of your own trees|",
    "timed=Your own trees|",
    "visit.at=Day of the visit|",
    "visit.ringed=Day of the ring|",
    "visit=What you see at the visit|",
    "spring_scale=Unit of the temperatures|",
    "spring=This spring's temperatures",
);

/// Setting.
pub fn setting(setting: Setting) -> &'static str {
    match setting {
        Setting::Woods => "woods",
        Setting::Open => "open: yard, street or hedgerow",
    }
}

/// Condition.
pub fn life(condition: Condition) -> &'static str {
    match condition {
        Condition::Alive => "alive",
        Condition::Declining => "declining",
        Condition::Dead => "dead",
    }
}

/// Herbicide.
pub fn herbicide(herbicide: Herbicide) -> &'static str {
    match herbicide {
        Herbicide::NotSaid => "not said",
        Herbicide::No => "no",
        Herbicide::Licensed => "by a licensed applicator",
        Herbicide::Yes => "yes",
    }
}

/// The line question.
pub fn reply(reply: Reply) -> &'static str {
    match reply {
        Reply::Yes => "yes",
        Reply::No => "no",
        Reply::CantTell => "can't tell",
    }
}

/// Growth.
pub fn vigour(vigour: Vigour) -> &'static str {
    match vigour {
        Vigour::Slow => "slow",
        Vigour::Ordinary => "ordinary",
        Vigour::Fast => "fast",
    }
}

/// Dry spell.
pub fn dry(dry: DrySpell) -> &'static str {
    match dry {
        DrySpell::None => "none",
        DrySpell::TwoWeeks => "two weeks",
        DrySpell::Month => "a month or more",
    }
}

/// Limbs below the ring.
pub fn limbs(limbs: Limbs) -> &'static str {
    match limbs {
        Limbs::None => "none",
        Limbs::Some => "some",
        Limbs::Many => "many",
    }
}

/// What was seen of the leaves.
pub fn stage(stage: Stage) -> &'static str {
    match stage {
        Stage::BudsOpen => "half the buds open",
        Stage::LeavesFull => "leaves nearly full size",
        Stage::FirstLeaf => "the first leaf",
    }
}

/// Yes or no.
pub fn yes_no(yes: bool) -> &'static str {
    if yes { "yes" } else { "no" }
}
