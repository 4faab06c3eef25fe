//! Each target judged alone, and what is missing from the list.

use super::{Judged, Outcome, ReachConstants, Why, approach_m, counts, hollow};
use crate::question::Question;
use crate::terms::small::sort::sort;
use crate::terms::tree::{Reply, Sign, Target, TargetKind};

pub(super) struct Context<'a> {
    pub(super) constants: &'a ReachConstants,
    pub(super) question: &'a Question,
    pub(super) height_m: f64,
    pub(super) height_known: bool,
    pub(super) shortest_m: f64,
    pub(super) small: bool,
}

impl Context<'_> {
    pub(super) fn targets(&self) -> Vec<Judged> {
        let mut judged: Vec<Judged> = self
            .question
            .targets
            .iter()
            .enumerate()
            .map(|(index, target)| self.target(Some(index), target))
            .collect();
        let listed = self
            .question
            .targets
            .iter()
            .any(|target| target.kind == TargetKind::Line);
        // "Yes" without a listed line is a line without a distance.
        if self.question.line_within_reach == Some(Reply::Yes) && !listed {
            let line = Target {
                kind: TargetKind::Line,
                distance: None,
                slope: None,
                downhill: false,
                voltage: None,
            };
            judged.push(self.target(None, &line));
        }
        // The worst first, then the nearest: the order of the list as given decides nothing.
        let key = |t: &Judged| {
            let far = t.distance_m.unwrap_or(-1.0);
            (core::cmp::Reverse(t.outcome), far, t.kind, t.zone_m)
        };
        sort(&mut judged, |a, b| key(a) < key(b));
        judged
    }

    fn target(&self, index: Option<usize>, target: &Target) -> Judged {
        let constants = self.constants;
        let slope = target.slope.map_or(0.0, |slope| slope.percent());
        let downhill = target.downhill && slope >= constants.steep;
        let zone = if downhill {
            constants.zone_downhill
        } else {
            constants.zone
        };
        let mut zone_m = self.height_m * zone;
        if target.kind == TargetKind::Line {
            let kv = target.voltage.map(|v| v.kv());
            let factor = self.question.tighten().distance_factor;
            zone_m = zone_m.max(approach_m(constants, kv) * factor);
        }
        let distance_m = target.distance.map(|distance| distance.m());
        let outcome = counts(target.kind).then(|| match (target.kind, distance_m) {
            (TargetKind::Line, None) => Outcome::Line,
            (TargetKind::Line, Some(d)) if d < zone_m => Outcome::Line,
            (_, None) => Outcome::NotChecked,
            (_, Some(d)) => self.distance(d, zone_m, target, slope),
        });
        let damage = !counts(target.kind) && distance_m.is_none_or(|d| d < zone_m);
        Judged {
            index,
            kind: target.kind,
            distance_m,
            downhill,
            zone_m,
            outcome,
            damage,
        }
    }

    fn distance(&self, d: f64, zone_m: f64, target: &Target, slope: f64) -> Outcome {
        let constants = self.constants;
        let line = target.kind == TargetKind::Line;
        let lands = if self.height_known {
            self.height_m
        } else {
            self.shortest_m
        };
        let too_steep = target.downhill
            && slope >= constants.too_steep
            && d < self.height_m * constants.too_steep_heights;
        if !line && too_steep {
            return Outcome::Professional;
        }
        if !line && d < lands * constants.can_land {
            return if self.small {
                Outcome::Inside
            } else {
                Outcome::Professional
            };
        }
        if !self.height_known {
            return Outcome::NotChecked;
        }
        if d < zone_m {
            Outcome::Inside
        } else if d < self.height_m * constants.people_out {
            Outcome::ClearPeopleOut
        } else {
            Outcome::Clear
        }
    }

    /// What keeps the list from being complete, the most telling first.
    pub(super) fn missing(&self) -> Vec<Why> {
        let question = self.question;
        let none = question.none_in_reach;
        let mut missing = Vec::new();
        let listed_line = question
            .targets
            .iter()
            .any(|target| target.kind == TargetKind::Line);
        let complete = none
            || question
                .targets
                .iter()
                .any(|target| counts(target.kind) && target.kind != TargetKind::Line);
        let unknown = question
            .targets
            .iter()
            .any(|target| counts(target.kind) && target.distance.is_none());
        if !complete {
            missing.push(Why::ListOpen);
        }
        if unknown {
            missing.push(Why::DistanceUnknown);
        }
        let answered = match question.line_within_reach {
            Some(Reply::No | Reply::Yes) => true,
            Some(Reply::CantTell) => false,
            None => listed_line || none,
        };
        if !answered {
            missing.push(Why::LineOpen);
        }
        // Who says that nothing is within twice the tallest tree of the table needs no height.
        if !self.height_known && !none {
            missing.push(Why::HeightUnknown);
        }
        missing
    }

    /// Whether weak points and something near make it a professional's tree.
    pub(super) fn weak(&self, missing: &[Why]) -> bool {
        let two = self.height_m * self.constants.people_out;
        let signs = &self.question.signs;
        let strong = signs
            .iter()
            .any(|sign| hollow(*sign) || *sign == Sign::LeanToward);
        let mild = signs
            .iter()
            .any(|sign| matches!(sign, Sign::DeadTop | Sign::Vines | Sign::LeanAway));
        let mut near = self
            .question
            .targets
            .iter()
            .filter(|target| counts(target.kind))
            .filter_map(|target| target.distance);
        let within = near.any(|distance| distance.m() < two);
        (strong && (within || !missing.is_empty())) || (mild && within)
    }

    pub(super) fn why(&self, target: &Judged, outcome: Outcome) -> Why {
        match outcome {
            Outcome::Line if target.distance_m.is_none() => Why::LineNoDistance,
            Outcome::Line => Why::LineWithin,
            Outcome::Professional => {
                let lands = if self.height_known {
                    self.height_m
                } else {
                    self.shortest_m
                };
                if target
                    .distance_m
                    .is_some_and(|d| d < lands * self.constants.can_land)
                {
                    Why::CanLand
                } else {
                    Why::TooSteep
                }
            }
            Outcome::Inside if self.small => Why::SmallStem,
            Outcome::Inside => Why::InZone,
            Outcome::NotChecked if target.distance_m.is_none() => Why::DistanceUnknown,
            Outcome::NotChecked => Why::HeightUnknown,
            Outcome::ClearPeopleOut => Why::PeopleOut,
            Outcome::Clear => Why::Nothing,
        }
    }
}
