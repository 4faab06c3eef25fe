//! What is not known yet: what to find out, and the answer if it is so.

use super::phrase;
use super::say::Say;
use crate::measure;
use crate::words::{Word, m};
use calc::answer::Conditional;
use calc::models::reach::Why;

/// How many steps a distance is; a step of 2½ ft or 0.75 m (common practice, no source).
pub fn pace_it(m: f64, units: calc::terms::quantity::Units) -> String {
    let us = units == calc::terms::quantity::Units::Us;
    let step_m = if us {
        2.5 * calc::terms::quantity::M_PER_FT
    } else {
        0.75
    };
    let steps = (libm::ceil(m / step_m / 5.0) * 5.0) as u32;
    if us {
        m::missing_pace_ft(steps)
    } else {
        m::missing_pace_m(steps)
    }
}

/// What is missing, as a clause; `within` is two heights.
pub fn missing(why: Why, within: &str) -> String {
    match why {
        Why::ListOpen => m::missing_list(within),
        Why::DistanceUnknown => m::MISSING_DISTANCE.into(),
        Why::LineOpen => m::missing_line(within),
        Why::HeightUnknown => m::MISSING_HEIGHT.into(),
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
        Why::ListOpen => (m::missing_do_list(within), "targets"),
        Why::DistanceUnknown => (m::MISSING_DO_DISTANCE.into(), "targets"),
        Why::LineOpen => (m::missing_do_line(within), "line_within_reach"),
        Why::HeightUnknown => (m::MISSING_DO_HEIGHT.into(), "height"),
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
        Conditional::NothingInReach { within_m } => {
            m::missing_if_nothing(measure::reach(within_m).text(units))
        }
        Conditional::NoLine { within_m } => {
            m::missing_if_no_line(measure::reach(within_m).text(units))
        }
        Conditional::HeightUnder { height_m } => {
            m::missing_if_under(measure::length(height_m).text(units))
        }
        Conditional::WholeClone => m::MISSING_IF_CLONE.into(),
        Conditional::NoOakWilt => m::MISSING_IF_NO_WILT.into(),
        Conditional::SpeciesSuits => m::MISSING_IF_SUITS.into(),
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
        Conditional::HeightUnder { height_m } => {
            m::missing_under(measure::length(height_m).text(units))
        }
        Conditional::WholeClone => m::MISSING_CLONE.into(),
        Conditional::NoOakWilt => m::MISSING_WILT.into(),
        Conditional::SpeciesSuits => m::MISSING_SPECIES.into(),
    }
}

/// What to do about an open condition, and the field that settles it.
pub fn settle_condition(condition: Conditional) -> Option<(Word, &'static str)> {
    match condition {
        // The reach says what is missing in more detail.
        Conditional::NothingInReach { .. } | Conditional::NoLine { .. } => None,
        Conditional::HeightUnder { .. } => Some((m::MISSING_DO_HEIGHT, "height")),
        Conditional::WholeClone => Some((m::MISSING_DO_CLONE, "whole_clone")),
        Conditional::NoOakWilt => Some((m::MISSING_DO_WILT, "region")),
        Conditional::SpeciesSuits => Some((m::MISSING_DO_SPECIES, "species")),
    }
}

impl Say<'_> {
    /// What counts on the ground that is looked over.
    pub fn what_counts(&self) -> String {
        m::missing_what_counts(self.reach(self.answer.reach.two_heights_m))
    }

    /// The question of the ground: `How far is 163 ft?`.
    pub fn how_far_is(&self) -> String {
        let within = measure::reach(self.answer.reach.two_heights_m);
        m::missing_how_far(within.first(self.units()))
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
                Conditional::NothingInReach { within_m } if self.nearest().is_some() => {
                    m::missing_if_nothing_else(self.reach(*within_m))
                }
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
