//! What is not known yet: what to find out, and the answer if it is so.

use super::phrase;
use super::say::Say;
use crate::measure;
use crate::words::m;
use calc::answer::Conditional;
use calc::models::reach::Why;

/// Links to an empty field.
pub const GIVE: &str = "Give";
/// The ground to look over.
pub const LOOK_THIS_FAR: &str = "Look this far";
/// How it is looked over, behind the pacing.
pub const LOOK_ROUND: [&str; 2] = [
    "Go all the way round, uphill and down.",
    "Look up: lines hide in crowns.",
];

/// How many steps a distance is; a step of 2½ ft or 0.75 m (common practice, no source).
pub fn pace_it(m: f64, units: calc::terms::quantity::Units) -> String {
    let us = units == calc::terms::quantity::Units::Us;
    let step_m = if us {
        2.5 * calc::terms::quantity::M_PER_FT
    } else {
        0.75
    };
    cat!(
        "Pace it: about ",
        measure::plain(libm::ceil(m / step_m / 5.0) * 5.0, 0),
        " steps of ",
        if us { "2½ ft." } else { "0.75 m." }
    )
}
/// If it were so.
pub const IF: &str = "If ";
/// A conditional answer is not this tree's answer yet.
pub const ONLY_IF: &str =
    "This holds only if it is so. Until you know, it is not this tree's answer.";
/// What stands either way.
pub const OTHERWISE_HOLDS: &str = "This stands if it is not so.";
/// Otherwise, where a line or what it could hit is not known.
pub const OR_PROFESSIONAL: &str =
    "If something is: leave it to a professional, or to the line's owner.";
/// Heads the table of methods, where what it could hit is not checked.
pub const METHODS_IF_CLEAR: &str = "only if nothing that it could hit stands near";

/// What is missing, as a clause; `within` is two heights.
pub fn missing(why: Why, within: &str) -> String {
    match why {
        Why::ListOpen => cat!("what stands within ", within, " is not checked"),
        Why::DistanceUnknown => "how far away it stands is not known".into(),
        Why::LineOpen => cat!(
            "whether an overhead line is within ",
            within,
            " is not answered"
        ),
        Why::HeightUnknown => {
            "measure its height first: without it we can't tell what it could hit".into()
        }
        Why::LineWithin
        | Why::LineNoDistance
        | Why::WeakTree
        | Why::CanLand
        | Why::TooSteep
        | Why::InZone
        | Why::SmallStem
        | Why::TrailTree
        | Why::PeopleOut
        | Why::Nothing => m::reach_why(why).into(),
    }
}

/// What to do about it: the row of a list, and the field that settles it.
pub fn settle(why: Why, within: &str) -> Option<(String, &'static str)> {
    Some(match why {
        Why::ListOpen => (
            cat!(
                "List the nearest thing it could hit, or say that no ",
                &m::REACH_COUNTS,
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
        | Why::TrailTree
        | Why::PeopleOut
        | Why::Nothing => return None,
    })
}

/// An open condition, as the clause behind "If".
pub fn condition(condition: Conditional, units: calc::terms::quantity::Units) -> String {
    match condition {
        Conditional::NothingInReach { within_m } => cat!(
            "no ",
            &m::REACH_COUNTS,
            " lies within ",
            measure::reach(within_m).text(units)
        ),
        Conditional::NoLine { within_m } => cat!(
            "no overhead line is within ",
            measure::reach(within_m).text(units)
        ),
        Conditional::HeightUnder { height_m } => cat!(
            "the tree is under ",
            measure::length(height_m).text(units),
            " tall"
        ),
        Conditional::WholeClone => "every stem of the clone can be ringed".into(),
        Conditional::NoOakWilt => "oak wilt is not where it stands".into(),
        Conditional::SpeciesSuits => "it is a species that a ring suits".into(),
    }
}

/// An open condition, as what is not known.
pub fn open(condition: Conditional, units: calc::terms::quantity::Units) -> String {
    match condition {
        Conditional::NothingInReach { within_m } => {
            missing(Why::ListOpen, &measure::reach(within_m).text(units))
        }
        Conditional::NoLine { within_m } => {
            missing(Why::LineOpen, &measure::reach(within_m).text(units))
        }
        Conditional::HeightUnder { height_m } => cat!(
            "whether it is under ",
            measure::length(height_m).text(units),
            " tall is not measured"
        ),
        Conditional::WholeClone => {
            "whether every stem of the clone can be ringed is not said".into()
        }
        Conditional::NoOakWilt => {
            "which state or province it stands in is not said, and oak wilt may be there".into()
        }
        Conditional::SpeciesSuits => "which species it is, is not known".into(),
    }
}

/// What to do about an open condition, and the field that settles it.
pub fn settle_condition(condition: Conditional) -> Option<(&'static str, &'static str)> {
    match condition {
        // The reach says what is missing in more detail.
        Conditional::NothingInReach { .. } | Conditional::NoLine { .. } => None,
        Conditional::HeightUnder { .. } => Some(("Measure the height.", "height")),
        Conditional::WholeClone => Some((
            "Find every stem of the clone, and say whether all can be ringed.",
            "whole_clone",
        )),
        Conditional::NoOakWilt => {
            Some(("Choose the state or province: that answers it.", "region"))
        }
        Conditional::SpeciesSuits => Some(("Find out the species.", "species")),
    }
}

impl Say<'_> {
    /// What counts on the ground that is looked over.
    pub fn what_counts(&self) -> String {
        cat!(
            "Everything within ",
            self.reach(self.answer.reach.two_heights_m),
            " of the trunk counts: buildings, roads, paths, lines, the neighbour’s land and trees."
        )
    }

    /// The question of the ground: `How far is 163 ft?`.
    pub fn how_far_is(&self) -> String {
        let within = measure::reach(self.answer.reach.two_heights_m);
        cat!("How far is ", within.first(self.units()), "?")
    }

    /// Behind "If": the open conditions in one sentence.
    pub fn conditions(&self) -> String {
        let list: Vec<String> = self
            .answer
            .conditional
            .iter()
            .flat_map(|open_if| &open_if.conditions)
            .map(|it| match it {
                // Beside what is known to stand there.
                Conditional::NothingInReach { within_m } if self.nearest().is_some() => cat!(
                    "nothing else that it could hit lies within ",
                    self.reach(*within_m)
                ),
                it => condition(*it, self.units()),
            })
            .collect();
        phrase::row(&list)
    }

    /// What is not known yet.
    pub(super) fn why_open(&self) -> String {
        let answer = self.answer;
        let within = self.reach(answer.reach.two_heights_m);
        let Some(open_if) = &answer.conditional else {
            return self::missing(answer.reach.why, &within);
        };
        let mut list: Vec<String> = Vec::new();
        // The line question is the first of all, and then the only one.
        if answer.reach.line_open() {
            return self::missing(Why::LineOpen, &within);
        }
        for it in &open_if.conditions {
            match it {
                calc::answer::Conditional::NothingInReach { .. }
                | calc::answer::Conditional::HeightUnder { .. }
                    if !answer.reach.missing.is_empty() =>
                {
                    list.extend(
                        answer
                            .reach
                            .missing
                            .iter()
                            .take(1)
                            .map(|why| self::missing(*why, &within)),
                    );
                }
                other => list.push(open(*other, self.units())),
            }
        }
        phrase::row(&list)
    }
}
