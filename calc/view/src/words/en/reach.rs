//! What the tree could hit.

use super::{either, row};
use crate::measure;
use calc::answer::Conditional;
use calc::model::reach::{Outcome, Why};
use calc::terms::tree::{Sign, TargetKind};

/// What counts, in the question of the reach.
pub const COUNTS: &str = "building, road, path, power line, property line or neighbour's tree";

/// A kind of thing with its article.
#[must_use]
pub fn target(kind: TargetKind) -> &'static str {
    match kind {
        TargetKind::Building => "a building",
        TargetKind::Road => "a road",
        TargetKind::Path => "a path",
        TargetKind::Line => "a power or phone line",
        TargetKind::PropertyLine => "a property line or neighbour's tree",
        TargetKind::Fence => "a fence or field",
        TargetKind::KeepTree => "a tree to keep",
    }
}

/// A kind of thing on a label.
#[must_use]
pub fn target_short(kind: TargetKind) -> &'static str {
    match kind {
        TargetKind::Building => "building",
        TargetKind::Road => "road",
        TargetKind::Path => "path",
        TargetKind::Line => "line",
        TargetKind::PropertyLine => "property line",
        TargetKind::Fence => "fence",
        TargetKind::KeepTree => "tree to keep",
    }
}

/// A kind of thing, known.
#[must_use]
pub fn the_target(kind: TargetKind) -> String {
    cat!("the ", target_short(kind))
}

/// A sign on the tree.
#[must_use]
pub fn sign(sign: Sign) -> &'static str {
    match sign {
        Sign::Cavity => "a cavity",
        Sign::Cracks => "cracks",
        Sign::Conks => "fungus at the base",
        Sign::HungLimbs => "hung limbs",
        Sign::LeanToward => "a lean toward a target",
        Sign::LeanAway => "a lean away",
        Sign::DeadTop => "a dead top",
        Sign::Vines => "vines into the crown",
    }
}

/// Signs in a row.
#[must_use]
pub fn signs(list: &[Sign]) -> String {
    let words: Vec<&str> = list.iter().map(|it| sign(*it)).collect();
    row(&words)
}

/// What a target comes to, in a table.
#[must_use]
pub fn judged(outcome: Option<Outcome>, damage: bool) -> &'static str {
    match outcome {
        None if damage => "may be damaged",
        None => "outside the reach",
        Some(Outcome::Clear) => "beyond 2 heights",
        Some(Outcome::ClearPeopleOut) => "outside the reach; close it while working",
        Some(Outcome::NotChecked) => "not checked",
        Some(Outcome::Inside) => "inside: nothing may be left standing",
        Some(Outcome::Professional) => "inside: a professional's tree",
        Some(Outcome::Line) => "inside: call the line's owner",
    }
}

/// The heading's question of a stop: why it holds.
#[must_use]
pub fn why(why: Why) -> &'static str {
    match why {
        Why::LineWithin => "a line is inside the reach",
        Why::LineNoDistance => "a line within reach, distance not known",
        Why::WeakTree => "the tree is weak, and something is near",
        Why::CanLand => "it can land on what stands there",
        Why::TooSteep => "the ground is very steep",
        Why::InZone => "it can throw wood that far",
        Why::SmallStem => "a small stem: leave nothing standing",
        Why::DistanceUnknown => "a distance is not known",
        Why::LineOpen => "the line question is open",
        Why::ListOpen => "what stands near is not said",
        Why::HeightUnknown => "the height is not known",
        Why::PeopleOut => "it may stand; people out while you work",
        Why::Nothing => "nothing that counts is near",
    }
}

/// What is missing, as a clause; `within` is two heights.
#[must_use]
pub fn missing(why: Why, within: &str) -> String {
    match why {
        Why::ListOpen => cat!("what stands within ", within, " is not checked"),
        Why::DistanceUnknown => "how far away it stands is not known".into(),
        Why::LineOpen => cat!(
            "whether an overhead line is within ",
            within,
            " is not answered"
        ),
        Why::HeightUnknown => "how tall it is, is not measured".into(),
        Why::LineWithin
        | Why::LineNoDistance
        | Why::WeakTree
        | Why::CanLand
        | Why::TooSteep
        | Why::InZone
        | Why::SmallStem
        | Why::PeopleOut
        | Why::Nothing => self::why(why).into(),
    }
}

/// What to do about it: the row of a list, and the field that settles it.
#[must_use]
pub fn settle(why: Why, within: &str) -> Option<(String, &'static str)> {
    Some(match why {
        Why::ListOpen => (
            cat!(
                "List the nearest thing it could hit, or say that no ",
                COUNTS,
                " stands within ",
                within,
                "."
            ),
            "targets",
        ),
        Why::DistanceUnknown => ("Measure how far away each thing stands.".into(), "targets"),
        Why::LineOpen => (
            cat!("Look up: is any overhead line within ", within, "?"),
            "line_within_reach",
        ),
        Why::HeightUnknown => ("Measure the height.".into(), "height"),
        Why::LineWithin
        | Why::LineNoDistance
        | Why::WeakTree
        | Why::CanLand
        | Why::TooSteep
        | Why::InZone
        | Why::SmallStem
        | Why::PeopleOut
        | Why::Nothing => return None,
    })
}

/// An open condition, as the clause behind "If".
#[must_use]
pub fn condition(condition: Conditional, units: calc::terms::quantity::Units) -> String {
    match condition {
        Conditional::NothingInReach { within_m } => cat!(
            "no ",
            COUNTS,
            " lies within ",
            measure::reach(within_m).text(units)
        ),
        Conditional::HeightUnder { height_m } => cat!(
            "the tree is under ",
            measure::length(height_m).text(units),
            " tall"
        ),
        Conditional::WholeClone => "every stem of the clone can be ringed".into(),
        Conditional::NoOakWilt => "oak wilt is not in your state".into(),
        Conditional::SpeciesSuits => "it is a species that a ring suits".into(),
    }
}

/// An open condition, as what is not known.
#[must_use]
pub fn open(condition: Conditional, units: calc::terms::quantity::Units) -> String {
    match condition {
        Conditional::NothingInReach { within_m } => {
            missing(Why::ListOpen, &measure::reach(within_m).text(units))
        }
        Conditional::HeightUnder { height_m } => cat!(
            "whether it is under ",
            measure::length(height_m).text(units),
            " tall is not measured"
        ),
        Conditional::WholeClone => {
            "whether every stem of the clone can be ringed is not said".into()
        }
        Conditional::NoOakWilt => "whether oak wilt is in your state is not known".into(),
        Conditional::SpeciesSuits => "which species it is, is not known".into(),
    }
}

/// What to do about an open condition, and the field that settles it.
#[must_use]
pub fn settle_condition(condition: Conditional) -> Option<(&'static str, &'static str)> {
    match condition {
        // The reach says what is missing in more detail.
        Conditional::NothingInReach { .. } => None,
        Conditional::HeightUnder { .. } => Some(("Measure the height.", "height")),
        Conditional::WholeClone => Some((
            "Find every stem of the clone, and say whether all can be ringed.",
            "whole_clone",
        )),
        Conditional::NoOakWilt => Some((
            "Ask your state forester whether oak wilt is there, and choose the state.",
            "region",
        )),
        Conditional::SpeciesSuits => Some(("Find out the species.", "species")),
    }
}

/// What lies near, beside a reach that does not stop the answer.
pub struct Near<'a> {
    /// What the reach comes to.
    pub outcome: Outcome,
    /// The nearest thing that counts, with its distance.
    pub nearest: Option<(TargetKind, &'a str)>,
    /// The zone.
    pub zone: &'a str,
    /// Two heights.
    pub out: &'a str,
    /// The asker said that nothing is in reach.
    pub none_said: bool,
}

/// What lies near, in a sentence.
#[must_use]
pub fn clear(near: &Near<'_>) -> String {
    let nearest = |kind: TargetKind, distance: &str| {
        cat!(
            super::sentence(&the_target(kind)),
            " is ",
            distance,
            " away, "
        )
    };
    match (near.outcome, near.nearest) {
        (Outcome::NotChecked, _) => cat!(
            "What stands within ",
            near.out,
            " is not checked yet. Until it is, do not start."
        ),
        (Outcome::ClearPeopleOut, Some((kind, distance))) => cat!(
            nearest(kind, distance),
            "outside the ",
            near.zone,
            " in which this tree could throw wood. ",
            match kind {
                TargetKind::Road | TargetKind::Path => "Close it while you work.",
                _ => "Keep people away from it while you work.",
            }
        ),
        (Outcome::Inside, Some((kind, distance))) => cat!(
            nearest(kind, distance),
            "inside the ",
            near.zone,
            " in which this tree could throw wood. Leave nothing standing."
        ),
        (_, Some((kind, distance))) => cat!(nearest(kind, distance), "farther than that."),
        (_, None) if near.none_said => cat!(
            "You said that no ",
            COUNTS,
            " stands within ",
            near.out,
            ". This answer relies on it."
        ),
        (_, None) => cat!(
            "This holds only if no ",
            COUNTS,
            " stands within ",
            near.out,
            "."
        ),
    }
}

/// The zone counts from the day of treatment.
pub const FROM_TODAY: &str = "The zone counts from the day of treatment, dead or alive.";
/// The same for a tree that is left.
pub const FROM_NOW: &str = "The zone counts now.";

/// Under the reach drawing.
#[must_use]
pub fn reach_caption(targets: usize) -> String {
    let ring = match targets {
        0 => "",
        1 => " We don't know its direction, so the dotted ring stands for it all the way round.",
        _ => " We don't know directions, so dotted rings stand for them all the way round.",
    };
    cat!(
        "Side view above the tape, plan below it, one scale.",
        ring,
        " Person drawn 5 ft 7 in (1.7 m) tall."
    )
}

/// The ends of a zone in the key; the unit stands once.
#[must_use]
pub fn zone(from: &str, to: &str) -> String {
    let bare = from.rsplit_once(' ').map_or(from, |(number, _)| number);
    cat!(bare, " to ", to)
}

/// In the first zone.
pub const CAN_LAND: &str = "can land here";
/// In the second.
pub const CAN_THROW: &str = "can throw wood";
/// In the third.
pub const PEOPLE_OUT: &str = "keep people out";
/// Key of the three zones.
pub const KEY_REACH: [&str; 3] = [
    "it can land here",
    "it can throw wood",
    "keep people out while anyone works",
];

/// Heights under the plan; the second is the end of the zone.
#[must_use]
pub fn heights(zone_over_height: f64) -> [&'static str; 3] {
    let zone = if zone_over_height > 1.75 {
        "2 heights"
    } else {
        "1½ heights"
    };
    ["1 height", zone, "2 heights"]
}

/// Ways to measure a height.
pub const HEIGHT_AID: &str = "Three ways: the length of its shadow against that of a stick; \
two angles and a distance; a stick held upright at arm's length.";

/// The list of things that are near, for a phone call.
#[must_use]
pub fn near(list: &[String]) -> String {
    either(list)
}

/// The lead of the reach: nobody works at a tree that is left.
#[must_use]
pub fn people_out(within: &str, zone: &str, left: bool) -> String {
    if left {
        return cat!("It can throw wood as far as ", zone, ".");
    }
    cat!("Keep people ", within, " away while you work.")
}

/// A fence, a field, a tree to keep.
#[must_use]
pub fn may_damage(target: &str) -> String {
    cat!(super::sentence(target), " may be damaged.")
}

/// At the arc.
#[must_use]
pub fn height_used(height: &str) -> String {
    cat!(height, ", the height used")
}

/// At the arc, in short.
#[must_use]
pub fn height_used_short(height: &str) -> String {
    cat!(height, " used")
}

/// The drawing for those who do not see it.
#[must_use]
pub fn reach_aria<'a>(used: &str, zone: &str, targets: impl Iterator<Item = &'a str>) -> String {
    let mut text = cat!("Height used ", used, ", reach ", zone);
    for target in targets {
        text = cat!(text, ", ", target);
    }
    text
}
